import {
  cfm,
  degC,
  degF,
  ft,
  inch,
  inHgAbsolute,
  inHgGauge,
  kelvin,
  liter,
  literPerSecond,
  m,
  m3PerSecond,
  mg,
  micron,
  micronDifference,
  micronPerMinute,
  minute,
  paM3PerS,
  pascalAbsolute,
  psig,
  second,
  standardAtmosphere,
  toAbsolute,
} from "hvac-install-math/quantity";
import * as vacuum from "hvac-install-math/vacuum-decay";
import {
  aiccOf,
  linearLeastSquares,
  separableLeastSquares,
} from "../vacuum-decay/qr-least-squares.ts";
import { strd } from "../vacuum-decay/strd.ts";
import type { Evaluators } from "./check.ts";

const line = (name: "norris" | "misra1a") => {
  const { x, y } = strd[name];
  return { ...linearLeastSquares([x.map(() => 1), x], y), n: y.length };
};
const curves = {
  misra1a: {
    data: strd.misra1a,
    f: (x: number, b: number) => -Math.expm1(-b * x),
    df: (x: number, b: number) => x * Math.exp(-b * x),
    range: [1e-5, 1e-1],
  },
  boxBOD: {
    data: strd.boxBOD,
    f: (x: number, b: number) => -Math.expm1(-b * x),
    df: (x: number, b: number) => x * Math.exp(-b * x),
    range: [1e-2, 1e2],
  },
  misra1b: {
    data: strd.misra1a,
    f: (x: number, b: number) => 1 - (1 + (b * x) / 2) ** -2,
    df: (x: number, b: number) => x * (1 + (b * x) / 2) ** -3,
    range: [1e-5, 1e-1],
  },
} as const;
const curve = (name: keyof typeof curves) => {
  const { data, f, df, range } = curves[name];
  return separableLeastSquares(
    data.y,
    (b) => [data.x.map((x) => f(x, b))],
    (b) => [data.x.map((x) => df(x, b))],
    range[0],
    range[1],
  );
};

export const evaluators: Evaluators = {
  saturation: ({ kelvin: T }: { kelvin: number }) =>
    vacuum.waterSaturationPressure(kelvin(T)).in(pascalAbsolute),
  saturationMicron: ({ celsius }: { celsius: number }) =>
    vacuum.waterSaturationPressure(degC(celsius)).in(micron),
  frostPoint: ({ micron: p, in: unit }: { micron: number; in: "C" | "F" }) =>
    vacuum.waterSaturationTemperature(micron(p)).in(unit === "C" ? degC : degF),
  compoundGauge: ({ inHgVacuum, barometer }: { inHgVacuum: number; barometer: number }) =>
    toAbsolute(inHgGauge(-inHgVacuum), inHgAbsolute(barometer)).in(micron),
  molecularConductance: ({ d, l, kelvin: T }: { d: number; l: number; kelvin: number }) =>
    vacuum
      .tubeConductance({
        bore: m(d),
        length: m(l),
        meanPressure: pascalAbsolute(1e-3),
        temperature: kelvin(T),
        gas: "nitrogen",
      })
      .molecular.in(m3PerSecond),
  effectiveSpeed: ({ pump, conductance }: { pump: number; conductance: number }) =>
    vacuum
      .effectivePumpingSpeed({ pump: m3PerSecond(pump), conductances: [m3PerSecond(conductance)] })
      .in(m3PerSecond),
  viscous: ({ d, l, meanPa, want }: { d: number; l: number; meanPa: number; want: string }) => {
    const { viscous, knudsenNumber } = vacuum.tubeConductance({
      bore: m(d),
      length: m(l),
      meanPressure: pascalAbsolute(meanPa),
      temperature: degC(20),
    });
    return want === "Kn" ? knudsenNumber : viscous.in(m3PerSecond);
  },
  hose: (input: { inch: number; micron: number }) => {
    const { conductance } = vacuum.tubeConductance({
      bore: inch(input.inch),
      length: ft(3),
      meanPressure: micron(input.micron),
      temperature: degC(20),
    });
    return vacuum.effectivePumpingSpeed({ pump: cfm(8), conductances: [conductance] }).in(cfm);
  },
  seriesLps: ({ pump, conductance }: { pump: number; conductance: number }) =>
    vacuum
      .effectivePumpingSpeed({
        pump: literPerSecond(pump),
        conductances: [literPerSecond(conductance)],
      })
      .in(literPerSecond),
  pumpDown: ({ liter: V, cfm: S, to }: { liter: number; cfm: number; to: number }) =>
    vacuum
      .pumpDownTime({ volume: liter(V), pump: cfm(S), from: micron(760_000), to: micron(to) })
      .in(second),
  dilution: () => {
    const cycle = { vacuum: micron(1500), brokenTo: toAbsolute(psig(2), standardAtmosphere) };
    return vacuum.residualGasFraction({
      cycles: [cycle, cycle],
      last: micron(500),
      start: standardAtmosphere,
    }).si;
  },
  vaporMass: ({
    micron: rise,
    liter: V,
    celsius,
  }: {
    micron: number;
    liter: number;
    celsius: number;
  }) =>
    vacuum
      .waterVaporMass({
        rise: micronDifference(rise),
        volume: liter(V),
        temperature: degC(celsius),
      })
      .in(mg),
  leakOfLog: ({
    liter: V,
    from,
    to,
    minutes,
  }: Record<"liter" | "from" | "to" | "minutes", number>) =>
    vacuum
      .assessVacuumDecay({
        readings: Array.from({ length: 121 }, (_, i) => ({
          elapsed: minute((minutes * i) / 120),
          pressure: micron(from + ((to - from) * i) / 120),
        })),
        ambient: degC(20),
        volume: liter(V),
        policy: vacuum.acceptancePolicies.commonPractice500,
      })
      .leakThroughput?.value.in(paM3PerS) ?? Number.NaN,
  vacuumRise: ({
    q,
    psig: p,
    liter: V,
    minutes,
  }: Record<"q" | "psig" | "liter" | "minutes", number>) =>
    vacuum
      .vacuumRiseOfLeak({
        leak: paM3PerS(q),
        testPressure: toAbsolute(psig(p), standardAtmosphere),
        atmosphere: standardAtmosphere,
        volume: liter(V),
      })
      .in(micronPerMinute) * minutes,
  line: ({ data, want }: { data: "norris"; want: string }) => {
    const { coefficients, rss, n, deviations } = line(data);
    if (want === "residual SD") return Math.sqrt(rss / (n - 2));
    if (want === "slope SD") return deviations[1] ?? Number.NaN;
    return coefficients[want === "slope" ? 1 : 0] ?? Number.NaN;
  },
  noIntercept: ({ want }: { want: string }) => {
    const { x, y } = strd.noInt1;
    const { coefficients, rss, deviations } = linearLeastSquares([x], y);
    return (want === "slope" ? coefficients[0] : want === "SD" ? deviations[0] : rss) ?? Number.NaN;
  },
  curve: ({ data, want }: { data: keyof typeof curves; want: string }) => {
    const { coefficients, parameter, rss, deviations } = curve(data);
    if (want === "b1") return coefficients[0] ?? Number.NaN;
    if (want === "b2") return parameter;
    if (want === "RSS") return rss;
    return deviations[want === "SD b1" ? 0 : 1] ?? Number.NaN;
  },
  aicc: ({ model }: { model: "line" | "saturating" }) =>
    aiccOf(model === "line" ? line("misra1a").rss : curve("misra1a").rss, 14, 3),
  policy: ({ name, want }: { name: vacuum.PolicyName; want: string }) => {
    const { target, checkpoints } = vacuum.acceptancePolicies[name];
    const last = checkpoints[checkpoints.length - 1];
    if (want === "target") return target.in(micron);
    if (want === "hold") return last?.at.in(minute) ?? Number.NaN;
    return (want === "limit" ? last?.limit : last?.failAbove)?.in(micron) ?? Number.NaN;
  },
};
