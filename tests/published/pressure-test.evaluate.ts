import { propagate } from "hvac-install-math/assessment";
import {
  assessPressureTest,
  compareTemperatureRules,
  expectedTestPressure,
  leakGas,
  massFlowOfThroughput,
  pressurizationPlan,
  refrigerantEquivalent,
  scaleLeak,
  type TemperatureRule,
  throughputOfDrop,
} from "hvac-install-math/pressure-test";
import * as q from "hvac-install-math/quantity";
import type { Evaluators } from "./check.ts";

interface Change {
  readonly psig?: number;
  readonly MPag?: number;
  readonly degF?: [number, number];
  readonly degC?: [number, number];
  readonly psi?: number;
  readonly ft?: number;
}

/** Pressure and temperatures of a row, in the unit in which it states them. */
function change({ psig, MPag, degF, degC, psi, ft }: Change) {
  const [before, after] = degF ?? degC ?? [Number.NaN, Number.NaN];
  const temperature = degF ? q.degF : q.degC;
  const altitude = ft === undefined ? q.standardAtmosphere : q.atmosphereAtAltitude(q.ft(ft));
  return {
    pressure: psig === undefined ? q.MPag(MPag ?? Number.NaN) : q.psig(psig),
    temperature: temperature(before),
    laterTemperature: temperature(after),
    atmosphere: psi === undefined ? altitude : q.psia(psi),
  };
}
const rule = (row: Change, name: TemperatureRule) =>
  compareTemperatureRules(change(row)).find((one) => one.rule === name) ?? null;
const value = (quantity: q.Quantity<"gaugePressure"> | undefined) =>
  quantity?.in(quantity.unit) ?? "nothing";

/** TV13: every reading independent, 1 psi and 1 °F. */
const independent = ({ psig, degF }: { psig: [number, number]; degF: [number, number] }) =>
  assessPressureTest({
    start: { pressure: q.psig(psig[0]), temperature: q.degF(degF[0]) },
    end: {
      pressure: q.psig(psig[1]),
      temperature: q.degF(degF[1]),
      atmosphere: q.standardAtmosphere,
    },
    instruments: {
      pressure: { repeatability: q.psi(1) },
      temperature: { repeatability: q.deltaF(1), followsGasWithin: q.deltaF(0) },
    },
    wall: "rigid",
    atmosphere: q.standardAtmosphere,
  });

type Gas = keyof typeof leakGas;
const outside = q.kPaa(101.325);
const helium = (atm: number) => ({ ...leakGas.helium, pressure: q.kPaa(101.325 * atm), outside });

export const evaluators: Evaluators = {
  expected: (row: Change) => value(expectedTestPressure(change(row))),
  rule: ({ rule: name, ...row }: Change & { rule: TemperatureRule }) =>
    value(rule(row, name)?.expected),
  moles: ({ L, kPaa, K, s }: { L: number; kPaa: [number, number]; K: number; s: number }) => {
    const at = (p: number) => ({ pressure: q.kPaa(p), temperature: q.kelvin(K) });
    const { nitrogenLoss } = assessPressureTest({
      start: at(kPaa[0]),
      end: { ...at(kPaa[1]), elapsed: q.second(s) },
      volume: q.liter(L),
      instruments: { pressure: { accuracy: q.pascal(10) }, temperature: { accuracy: q.deltaK(1) } },
      atmosphere: q.standardAtmosphere,
    });
    return -(nitrogenLoss?.value.si ?? Number.NaN) / 28.0134e-3;
  },
  throughput: (row: { L: number; Pa?: number; micron?: number; days?: number; minutes?: number }) =>
    throughputOfDrop({
      volume: q.liter(row.L),
      drop: row.Pa === undefined ? q.micronDifference(row.micron ?? Number.NaN) : q.pascal(row.Pa),
      elapsed: row.days === undefined ? q.minute(row.minutes ?? Number.NaN) : q.day(row.days),
    }).si,
  throughputOfMass: (row: { g: number; years: number; gramsPerMole: number; K: number }) => {
    const { gramsPerMole } = row;
    const one = { throughput: q.paM3PerS(1), temperature: q.kelvin(row.K), gramsPerMole };
    return row.g / row.years / massFlowOfThroughput(one).in(q.gPerYear);
  },
  mass: ({ mbarLPerS, gas, K }: { mbarLPerS: number; gas: Gas; K: number }) =>
    massFlowOfThroughput({
      throughput: q.mbarLiterPerSecond(mbarLPerS),
      temperature: q.kelvin(K),
      gramsPerMole: leakGas[gas].gramsPerMole,
    }).in(q.gPerYear),
  viscous: ({ atmCm3PerS, atm, to }: { atmCm3PerS: number; atm: [number, number]; to: Gas }) =>
    scaleLeak({
      throughput: q.atmCm3PerSecond(atmCm3PerS),
      from: helium(atm[0]),
      to: { ...helium(atm[1]), ...leakGas[to] },
    }).viscous.in(q.atmCm3PerSecond),
  ratio: ({ to, law }: { to: Gas; law: "viscous" | "molecular" }) =>
    scaleLeak({
      throughput: q.paM3PerS(1),
      from: helium(2),
      to: { ...helium(2), ...leakGas[to] },
    })[law].si,
  assessedLeak: (row: { psig: [number, number]; degC: number; L: number; days: number }) =>
    assessPressureTest({
      start: { pressure: q.psig(row.psig[0]), temperature: q.degC(row.degC) },
      end: {
        pressure: q.psig(row.psig[1]),
        temperature: q.degC(row.degC),
        elapsed: q.day(row.days),
      },
      volume: q.liter(row.L),
      instruments: { pressure: { accuracy: q.psi(1) }, temperature: { accuracy: q.deltaK(1) } },
      atmosphere: q.standardAtmosphere,
    }).leakRate?.value.si ?? Number.NaN,
  equivalent: (row: {
    throughput: number;
    psig: number;
    MPaa: number;
    gas: Gas;
    as: "throughput" | "mass";
  }) => {
    const testPressure = q.toAbsolute(q.psig(row.psig), q.standardAtmosphere);
    const leak = q.paM3PerS(row.throughput);
    return row.as === "mass"
      ? refrigerantEquivalent({
          nitrogenLeak: leak,
          testPressure,
          refrigerant: leakGas[row.gas],
          refrigerantPressure: q.MPaa(row.MPaa),
          outside,
          temperature: q.degC(20),
        }).viscous.in(q.gPerYear)
      : scaleLeak({
          throughput: leak,
          from: { ...leakGas.nitrogen, pressure: testPressure, outside },
          to: { ...leakGas[row.gas], pressure: q.MPaa(row.MPaa), outside },
        }).viscous.si;
  },
  vacuumRise: (row: { throughput: number; psig: number; L: number; minutes: number }) => {
    const inwards = scaleLeak({
      throughput: q.paM3PerS(row.throughput),
      from: {
        ...leakGas.nitrogen,
        pressure: q.toAbsolute(q.psig(row.psig), q.standardAtmosphere),
        outside,
      },
      to: { ...leakGas.air, pressure: outside, outside: q.micron(0) },
    }).viscous.si;
    return q.pascal((inwards * row.minutes * 60) / (row.L * 1e-3)).in(q.micronDifference);
  },
  idealDrop: (row: { psig: [number, number]; degF: [number, number]; answer: string }) => {
    const air = q.standardAtmosphere.in(q.psia);
    // The library's own propagation over its ideal-gas rule, in psi and °F.
    const found = propagate(
      ([p1 = 0, T1 = 0, p2 = 0, T2 = 0]) => {
        const ideal = rule({ psig: p1, degF: [T1, T2] }, "ideal gas, absolute pressure");
        return (ideal?.expected.in(q.psig) ?? Number.NaN) + air - (p2 + air);
      },
      [row.psig[0], row.degF[0], row.psig[1], row.degF[1]].map((v) => ({
        value: v,
        uncertainty: 1,
      })),
    );
    return row.answer === "drop" ? found.value : found.uncertainty;
  },
  assessedDrop: (row: { psig: [number, number]; degF: [number, number]; answer: string }) => {
    const { outcome, correctedDrop } = independent(row);
    return row.answer === "outcome" ? outcome : correctedDrop.value.in(q.psi);
  },
  slope: ({ psig, rule: name }: { psig: number; rule: TemperatureRule }) => {
    const at = (degF: number) =>
      rule({ psig, degF: [70, degF] }, name)?.expected.in(q.psig) ?? Number.NaN;
    return (at(71) - at(69)) / 2;
  },
  slopeReal: ({ MPag, degC }: { MPag: number; degC: number }) => {
    const at = (later: number) =>
      expectedTestPressure(change({ MPag, degC: [degC, later] })).in(q.MPag);
    return at(degC + 0.5) - at(degC - 0.5);
  },
  gaugeMistake: (row: Change) => {
    const of = (name: TemperatureRule) => rule(row, name)?.expected.in(q.psig) ?? Number.NaN;
    return of("ideal gas, gauge pressure") - of("ideal gas, absolute pressure");
  },
  planWarm: ({ psig, degF }: { psig: number; degF: [number, number] }) =>
    pressurizationPlan({
      limits: [{ part: "component", pressure: q.psig(psig) }],
      temperature: q.degF(degF[0]),
      warmest: q.degF(degF[1]),
      atmosphere: q.standardAtmosphere,
    }).pressureWhenWarm.in(q.psig),
};
