// How do the inputs and results of an evacuation travel as JSON?
// Follows the types of vacuum-decay. A policy goes by its name, one of the caller's own by its fields.
// Does not cover the monitor's state: send its options and its readings.
import {
  type AcceptancePolicy,
  acceptancePolicies,
  type Checkpoint,
  type DecayCause,
  type DecayFit,
  type DecayReading,
  type DecayStep,
  type EvidenceShares,
  type Exclusion,
  type ExclusionReason,
  type GaugeRange,
  type Plateau,
  type PolicyStanding,
  type SlowShape,
  type VacuumDecayAssessment,
  type VacuumDecayInput,
  type VacuumDecayOptions,
  type VacuumGauge,
} from "../vacuum-decay/index.ts";
import { type Codec, codecOf } from "./codec.ts";
import { citation, estimate, verdict } from "./verdict.ts";
import { either, type FieldsOf, list, type ObjectOf, of, words } from "./wire-shape.ts";

const policy = () =>
  either(
    { named: acceptancePolicies },
    of<AcceptancePolicy>({
      name: "text",
      target: "absolutePressure",
      checkpoints: list(
        of<Checkpoint>({
          at: "duration",
          "limit?": "absolutePressure",
          "rise?": "pressureDifference",
          "failAbove?": "absolutePressure",
        }),
      ),
      earlyPass: "flag",
      standing: words<PolicyStanding>({ published: true, memory: true, practice: true }),
      source: citation(),
    }),
  );

const range = (): ObjectOf<GaugeRange> =>
  of<GaugeRange>({ upTo: "absolutePressure", resolution: "pressureDifference" });

const options = (): FieldsOf<VacuumDecayOptions> => ({
  ambient: "temperature",
  "coldest?": "temperature",
  "volume?": "volume",
  "gauge?": of<VacuumGauge>({
    "resolution?": either("pressureDifference", list(range())),
    "accuracy?": "ratio",
    "range?": "absolutePressure",
  }),
  policy: policy(),
  "leakLimit?": either("throughput", "pressureRate"),
  "confidence?": "number",
});

const reading = (): FieldsOf<DecayReading> => ({
  elapsed: "duration",
  pressure: "absolutePressure",
});

const plateau = (): ObjectOf<Plateau> =>
  of<Plateau>({
    pressure: estimate("absolutePressure", "pressureDifference"),
    saturationTemperature: "temperature",
    "waterMass?": "mass",
    aboveSaturation: "flag",
  });

const decayFit = (): ObjectOf<DecayFit> =>
  of<DecayFit>({
    "shape?": words<SlowShape>({
      saturating: true,
      spread: true,
      hyperbolic: true,
      halfOrder: true,
      logarithmic: true,
      mixed: true,
      squareRoot: true,
    }),
    "timeConstant?": "duration",
    line: "flag",
    equalisation: "flag",
    aicc: "number",
    from: "duration",
    to: "duration",
    coefficients: of<DecayFit["coefficients"]>({
      fast: "number",
      shape: "number",
      tau: "number",
      line: "flag",
      constant: "number",
      fast1: "number",
      fast2: "number",
      amplitude: "number",
      slope: "number",
      slopeU: "number",
      amplitudeU: "number",
      ahead: "number",
      aheadU: "number",
      aicc: "number",
      origin: "number",
    }),
  });

/** JSON of what `assessVacuumDecay` takes. Source: the library's own format. */
export const assessVacuumDecayInput: Codec<VacuumDecayInput> =
  /* @__PURE__ */ codecOf<VacuumDecayInput>({
    name: "input",
    shape: () =>
      of<VacuumDecayInput>({ readings: list(of<DecayReading>(reading())), ...options() }),
  });

/** JSON of what `createDecayMonitor` takes. Source: the library's own format. */
export const createDecayMonitorInput: Codec<VacuumDecayOptions> =
  /* @__PURE__ */ codecOf<VacuumDecayOptions>({
    name: "options",
    shape: () => of<VacuumDecayOptions>(options()),
  });

/**
 * JSON of what `assessVacuumDecay` and the monitor give.
 *
 * Source: the library's own format.
 */
export const assessVacuumDecayResult: Codec<VacuumDecayAssessment> =
  /* @__PURE__ */ codecOf<VacuumDecayAssessment>({
    name: "result",
    shape: () =>
      of<VacuumDecayAssessment>({
        ...verdict(),
        cause: words<DecayCause>({
          "dry-and-tight": true,
          leak: true,
          moisture: true,
          "leak-and-moisture": true,
          "moisture-leak-not-excluded": true,
          outgassing: true,
          undecided: true,
        }),
        evidence: "duration",
        atHoldEnd: estimate("absolutePressure", "pressureDifference"),
        leak: estimate("pressureRate", "pressureRate"),
        leakInterval: { items: "pressureRate", count: 2 },
        "leakThroughput?": estimate("throughput", "throughput"),
        smallestLeak: "pressureRate",
        "smallestLeakThroughput?": "throughput",
        "plateau?": plateau(),
        shares: of<EvidenceShares>({
          steady: "number",
          leak: "number",
          moisture: "number",
          outgassing: "number",
          both: "number",
        }),
        "fit?": decayFit(),
        excluded: list(
          of<Exclusion>({
            ...reading(),
            row: "number",
            reason: words<ExclusionReason>({
              zero: true,
              "over-range": true,
              "before-isolation": true,
              "repeated-time": true,
              "out-of-order": true,
              spike: true,
              "unconfirmed-jump": true,
              "other-side-of-step": true,
            }),
          }),
        ),
        excludedCount: of<Partial<Record<ExclusionReason, number>>>({
          "zero?": "number",
          "over-range?": "number",
          "before-isolation?": "number",
          "repeated-time?": "number",
          "out-of-order?": "number",
          "spike?": "number",
          "unconfirmed-jump?": "number",
          "other-side-of-step?": "number",
        }),
        steps: list(of<DecayStep>({ elapsed: "duration", change: "pressureDifference" })),
      }),
  });
