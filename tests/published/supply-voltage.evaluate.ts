import { ampere, minute, ohm, percent, second, volt } from "hvac-install-math/quantity";
import * as sv from "hvac-install-math/supply-voltage";
import type { Evaluators } from "./check.ts";

type Plate = { rated: number[]; printed?: [number, number] };
type Output<T extends string> = { output: T };

const nameplate = ({ rated, printed }: Plate): sv.VoltageNameplate => ({
  rated: rated.map(volt),
  ...(printed && { range: { minimum: volt(printed[0]), maximum: volt(printed[1]) } }),
});
const span = ({ minimum, maximum }: sv.VoltageRange) =>
  `${minimum.in(volt)} to ${maximum.in(volt)}`;

/** Readings a minute apart, so many ten-minute intervals at each voltage. */
const weekOf = (plan: [intervals: number, volts: number][]) => {
  const volts = plan.flatMap(([intervals, v]) => Array<number>(intervals * 10).fill(v));
  return [...volts, volts.at(-1) ?? 0].map((v, i) => ({ elapsed: minute(i), voltage: volt(v) }));
};

export const evaluators: Evaluators = {
  voltageUnbalance: (i: { volts: number[] } & Output<keyof sv.VoltageUnbalance>) => {
    const result = sv.voltageUnbalance(i.volts.map(volt));
    switch (i.output) {
      case "average":
        return result.average.in(volt);
      case "deviation":
        return Math.abs(result.deviation.in(volt));
      case "deratingFactor":
        return result.deratingFactor ?? "do not operate";
      case "farthest":
        return result.farthest;
      default:
        return result[i.output]?.in(percent) ?? "none";
    }
  },
  currentUnbalance: (i: { amps: number[] } & Output<"unbalance" | "average">) => {
    const result = sv.currentUnbalance(i.amps.map(ampere));
    return i.output === "average" ? result.average.in(ampere) : result.unbalance.in(percent);
  },
  temperatureRise: ({ unbalancePercent: u }: { unbalancePercent: number }) =>
    // Two legs half as far below the average as the third lies above it.
    sv
      .voltageUnbalance([volt(100 + u), volt(100 - u / 2), volt(100 - u / 2)])
      .addedTemperatureRise.in(percent),
  derating: ({ unbalancePercent }: { unbalancePercent: number }) =>
    sv.unbalanceDerating(percent(unbalancePercent)),
  threePhase: (
    i: {
      nominal: number;
      rated: number;
      sets: number[][];
      amps?: number[];
      limitPercent?: number;
    } & Output<"unbalance" | "currentUnbalance">,
  ) =>
    sv.assessSupplyVoltage({
      nameplate: { rated: volt(i.rated) },
      supply: { voltage: volt(i.nominal), phases: 3 },
      readings: i.sets.map((set) => ({
        lineToLine: set.map(volt),
        state: "load",
        ...(i.amps && { currents: i.amps.map(ampere) }),
      })),
      measuredAt: "unit",
      ...(i.limitPercent && { unbalanceLimit: percent(i.limitPercent) }),
    }).parts[i.output] ?? "not judged",
  singlePhase: (
    i: Plate & { nominal: number; volts: number[]; at: sv.VoltageMeasuredAt } & Output<
        "range" | "outcome" | "marginBelow"
      >,
  ) => {
    const result = sv.assessSupplyVoltage({
      nameplate: nameplate(i),
      supply: { voltage: volt(i.nominal), phases: 1 },
      readings: i.volts.map((v) => ({ voltage: volt(v) })),
      measuredAt: i.at,
    });
    if (i.output === "range") return result.supplyRange?.name ?? "none";
    return i.output === "outcome" ? result.outcome : result.marginBelow.in(volt);
  },
  supplyRange: (i: {
    nominal: number;
    at: sv.VoltageMeasuredAt;
    range: number;
    standard?: "ansi" | "iec" | "japan" | "uk";
  }) => {
    const standards = {
      ansi: sv.ansiC84,
      iec: sv.iec60038,
      japan: sv.japaneseSupply,
      uk: sv.britishSupply,
    };
    const standard =
      standards[i.standard ?? (i.nominal === 230 || i.nominal === 400 ? "iec" : "ansi")];
    const supply = { voltage: volt(i.nominal), phases: 1, standard } as const;
    const range = sv.supplyVoltageRanges(supply, i.at)[i.range];
    return range ? span(range) : "none";
  },
  plate: (i: Plate) => span(sv.nameplateVoltageRange(nameplate(i))),
  ceiling: (i: Plate) => sv.nameplateVoltageRange(nameplate(i)).ceiling.in(volt),
  sag: (
    i: { rest: number; load: number; amps: number; atAmps?: number } & Output<
      "resistance" | "share" | "drop"
    >,
  ) => {
    const result = sv.supplySag({
      rest: volt(i.rest),
      load: volt(i.load),
      loadCurrent: ampere(i.amps),
      ...(i.atAmps && { atCurrent: ampere(i.atAmps) }),
    });
    if (i.output === "share") return result.share.in(percent);
    return i.output === "drop"
      ? i.rest - (result.voltageAtCurrent?.in(volt) ?? Number.NaN)
      : (result.sourceResistance?.value.in(ohm) ?? "none");
  },
  fullLoad: (i: { rest: number; load: number; amps: number; rated: number; minimum: number }) =>
    sv.assessSupplyVoltage({
      nameplate: {
        rated: volt(230),
        range: { minimum: volt(i.minimum), maximum: volt(253) },
        ratedCurrent: ampere(i.rated),
      },
      supply: { voltage: volt(240), phases: 1, standard: sv.ansiC84 },
      readings: [
        { voltage: volt(i.rest), current: ampere(0), state: "rest" },
        { voltage: volt(i.load), current: ampere(i.amps), state: "load" },
      ],
      measuredAt: "unit",
    }).parts.sag ?? "not judged",
  meterLimits: (i: {
    volts: number;
    ofReadingPercent: number;
    counts: number;
    resolution: number;
  }) => {
    // The limits of a rectangle are √3 times its standard deviation.
    const result = sv.assessSupplyVoltage({
      nameplate: { rated: volt(115) },
      supply: { voltage: volt(120), phases: 1 },
      readings: [{ voltage: volt(i.volts) }],
      measuredAt: "unit",
      meter: {
        accuracyOfReading: percent(i.ofReadingPercent),
        accuracy: volt(i.counts * i.resolution),
      },
    });
    return Math.sqrt(3) * result.lowest.standardUncertainty.in(volt);
  },
  heater: (i: { rated: number; actual: number } & Output<"powerShare" | "currentShare">) =>
    sv.resistanceHeatAt({ rated: volt(i.rated), actual: volt(i.actual) })[i.output],
  week: (i: { nominal: number; plan: [number, number][] } & Output<"outcome">) =>
    sv.assessSupplyWeek({ nominal: volt(i.nominal), readings: weekOf(i.plan) })[i.output],
  monitor: (
    i: Plate & { nominal: number } & Output<"lowCutOut" | "reconnectMinutes" | "tripSeconds">,
  ) => {
    const supply = { voltage: volt(i.nominal), phases: 1 } as const;
    const set = sv.voltageMonitorSettings({ nameplate: nameplate(i), supply });
    if (i.output === "lowCutOut") return set.lowCutOut.in(volt);
    return i.output === "tripSeconds" ? set.tripDelay.in(second) : set.reconnectDelay.in(minute);
  },
};
