import { blendWarmingPotential } from "hvac-install-math/charge-limit";
import {
  standardAtmosphere as atmosphere,
  degC,
  degF,
  deltaF,
  kelvin,
  kgPerM3,
  kPaa,
  psig,
  toGauge,
} from "hvac-install-math/quantity";
import * as refrigerants from "hvac-install-math/refrigerants";
import type { Evaluators } from "./check.ts";

interface Row {
  refrigerant: string;
}
type Gauge = Row & { psig: number };
type AtK = Row & { K: number };

const named = ({ refrigerant }: Row) =>
  (refrigerants as unknown as Record<string, refrigerants.Refrigerant>)[
    refrigerant
  ] as refrigerants.Refrigerant;
const reading = (row: Gauge) => ({ pressure: psig(row.psig), atmosphere });

export const evaluators: Evaluators = {
  bubbleTemperature: (row: Gauge) =>
    refrigerants.bubbleTemperature(named(row), psig(row.psig), atmosphere).in(degF),
  dewTemperature: (row: Gauge) =>
    refrigerants.dewTemperature(named(row), psig(row.psig), atmosphere).in(degF),
  meanCoilTemperature: (row: Gauge) =>
    refrigerants.meanCoilTemperature(named(row), reading(row)).in(degF),
  temperatureGlide: (row: Gauge) =>
    refrigerants.temperatureGlide(named(row), reading(row)).in(deltaF),
  subcooling: (row: Gauge & { lineF: number }) =>
    refrigerants
      .subcooling(named(row), { ...reading(row), lineTemperature: degF(row.lineF) })
      .in(deltaF),
  bubblePressure: (row: Row & { F: number }) =>
    toGauge(refrigerants.bubblePressure(named(row), degF(row.F)), atmosphere).in(psig),
  bubblePressureC: (row: Row & { C: number }) =>
    refrigerants.bubblePressure(named(row), degC(row.C)).in(kPaa),
  dewPressureC: (row: Row & { C: number }) =>
    refrigerants.dewPressure(named(row), degC(row.C)).in(kPaa),
  bubblePressureK: (row: AtK) => refrigerants.bubblePressure(named(row), kelvin(row.K)).in(kPaa),
  dewPressureK: (row: AtK) => refrigerants.dewPressure(named(row), kelvin(row.K)).in(kPaa),
  liquidDensityK: (row: AtK) =>
    refrigerants.saturatedLiquidDensity(named(row), kelvin(row.K)).in(kgPerM3),
  vaporDensityK: (row: AtK) =>
    refrigerants.saturatedVaporDensity(named(row), kelvin(row.K)).in(kgPerM3),
  gwpAr4: (row: Row) => named(row).gwp.ar4?.value ?? "no such value",
  gwpAr5: (row: Row) => named(row).gwp.ar5?.value ?? "no such value",
  gwpEu517: (row: Row) =>
    blendWarmingPotential({ composition: named(row).composition, basis: "eu-517-2014" }).value,
  composition: (row: Row) =>
    named(row)
      .composition.map(({ massPercent }) => massPercent)
      .join("/"),
};
