// How do the figures of a pump, its hoses and what a rise means travel as JSON?
// Follows the types of vacuum-decay. Does not cover verdicts: vacuum-decay.ts.
import type {
  Conductance,
  ConductanceInput,
  compareLineAndSaturating,
  DecayReading,
  EvacuationCycle,
  effectivePumpingSpeed,
  PumpDownInput,
  PumpedGas,
  residualGasFraction,
  ShapeComparison,
  VacuumTube,
  vacuumRiseOfLeak,
  waterVapourMass,
} from "../vacuum-decay/index.ts";
import type { InputOf } from "./arguments-of.ts";
import { type Codec, codecOf } from "./codec.ts";
import { list, of, words } from "./wire-shape.ts";

/** JSON of what `tubeConductance` takes. Source: the library's own format. */
export const tubeConductanceInput: Codec<ConductanceInput> =
  /* @__PURE__ */ codecOf<ConductanceInput>({
    name: "input",
    shape: () =>
      of<ConductanceInput>({
        bore: "length",
        length: "length",
        meanPressure: "absolutePressure",
        temperature: "temperature",
        "gas?": words<PumpedGas>({ air: true, nitrogen: true }),
      }),
  });

/** JSON of what `tubeConductance` gives. Source: the library's own format. */
export const tubeConductanceResult: Codec<Conductance> = /* @__PURE__ */ codecOf<Conductance>({
  name: "result",
  shape: () =>
    of<Conductance>({
      conductance: "volumeFlow",
      viscous: "volumeFlow",
      molecular: "volumeFlow",
      knudsenNumber: "number",
      regime: words<Conductance["regime"]>({ viscous: true, transition: true, molecular: true }),
    }),
});

/** JSON of what `effectivePumpingSpeed` takes. Source: the library's own format. */
export const effectivePumpingSpeedInput: Codec<InputOf<typeof effectivePumpingSpeed>> =
  /* @__PURE__ */ codecOf<InputOf<typeof effectivePumpingSpeed>>({
    name: "input",
    shape: () =>
      of<InputOf<typeof effectivePumpingSpeed>>({
        pump: "volumeFlow",
        conductances: list("volumeFlow"),
      }),
  });

/** JSON of what `pumpDownTime` takes. Source: the library's own format. */
export const pumpDownTimeInput: Codec<PumpDownInput> = /* @__PURE__ */ codecOf<PumpDownInput>({
  name: "input",
  shape: () =>
    of<PumpDownInput>({
      volume: "volume",
      pump: "volumeFlow",
      "tubes?": list(of<VacuumTube>({ bore: "length", length: "length" })),
      from: "absolutePressure",
      to: "absolutePressure",
      "ultimate?": "absolutePressure",
      "temperature?": "temperature",
    }),
});

/** JSON of what `residualGasFraction` takes. Source: the library's own format. */
export const residualGasFractionInput: Codec<InputOf<typeof residualGasFraction>> =
  /* @__PURE__ */ codecOf<InputOf<typeof residualGasFraction>>({
    name: "input",
    shape: () =>
      of<InputOf<typeof residualGasFraction>>({
        cycles: list(
          of<EvacuationCycle>({ vacuum: "absolutePressure", brokenTo: "absolutePressure" }),
        ),
        last: "absolutePressure",
        start: "absolutePressure",
      }),
  });

/** JSON of what `vacuumRiseOfLeak` takes. Source: the library's own format. */
export const vacuumRiseOfLeakInput: Codec<InputOf<typeof vacuumRiseOfLeak>> =
  /* @__PURE__ */ codecOf<InputOf<typeof vacuumRiseOfLeak>>({
    name: "input",
    shape: () =>
      of<InputOf<typeof vacuumRiseOfLeak>>({
        leak: "throughput",
        testPressure: "absolutePressure",
        atmosphere: "absolutePressure",
        volume: "volume",
      }),
  });

/** JSON of what `waterVapourMass` takes. Source: the library's own format. */
export const waterVapourMassInput: Codec<InputOf<typeof waterVapourMass>> = /* @__PURE__ */ codecOf<
  InputOf<typeof waterVapourMass>
>({
  name: "input",
  shape: () =>
    of<InputOf<typeof waterVapourMass>>({
      rise: "pressureDifference",
      volume: "volume",
      temperature: "temperature",
    }),
});

/** JSON of what `compareLineAndSaturating` takes. Source: the library's own format. */
export const compareLineAndSaturatingInput: Codec<InputOf<typeof compareLineAndSaturating>> =
  /* @__PURE__ */ codecOf<readonly DecayReading[]>({
    name: "readings",
    shape: () => list(of<DecayReading>({ elapsed: "duration", pressure: "absolutePressure" })),
  });

/** JSON of what `compareLineAndSaturating` gives. Source: the library's own format. */
export const compareLineAndSaturatingResult: Codec<ShapeComparison> =
  /* @__PURE__ */ codecOf<ShapeComparison>({
    name: "result",
    shape: () =>
      of<ShapeComparison>({
        line: of<ShapeComparison["line"]>({
          rate: "pressureRate",
          rateDeviation: "pressureRate",
          aicc: "number",
        }),
        saturating: of<ShapeComparison["saturating"]>({
          plateau: "absolutePressure",
          timeConstant: "duration",
          aicc: "number",
        }),
        preferred: words<ShapeComparison["preferred"]>({
          line: true,
          saturating: true,
          indistinguishable: true,
        }),
      }),
  });
