// How do the figures of a leak travel as JSON, and the rules of thumb for temperature?
// Follows the types of pressure-test. Does not cover verdicts: pressure-test.ts.
import type {
  compareTemperatureRules,
  LeakingGas,
  massFlowOfThroughput,
  RefrigerantEquivalent,
  RuleComparison,
  refrigerantEquivalent,
  ScaledLeak,
  scaleLeak,
  TemperatureRule,
  throughputOfDrop,
} from "../pressure-test/index.ts";
import type { InputOf } from "./arguments-of.ts";
import { type Codec, codecOf } from "./codec.ts";
import { gas, refrigerantEquivalentShape } from "./pressure-test.ts";
import { citation } from "./verdict.ts";
import { list, type ObjectOf, of, words } from "./wire-shape.ts";

/** JSON of what `refrigerantEquivalent` takes. Source: the library's own format. */
export const refrigerantEquivalentInput: Codec<InputOf<typeof refrigerantEquivalent>> =
  /* @__PURE__ */ codecOf<InputOf<typeof refrigerantEquivalent>>({
    name: "leak",
    shape: () =>
      of<InputOf<typeof refrigerantEquivalent>>({
        nitrogenLeak: "throughput",
        testPressure: "absolutePressure",
        refrigerant: gas(),
        refrigerantPressure: "absolutePressure",
        outside: "absolutePressure",
        temperature: "temperature",
      }),
  });

/** JSON of what `refrigerantEquivalent` gives. Source: the library's own format. */
export const refrigerantEquivalentResult: Codec<RefrigerantEquivalent> =
  /* @__PURE__ */ codecOf<RefrigerantEquivalent>({
    name: "result",
    shape: refrigerantEquivalentShape,
  });

const leaking = (): ObjectOf<LeakingGas> =>
  of<LeakingGas>({
    pressure: "absolutePressure",
    outside: "absolutePressure",
    gramsPerMole: "number",
    viscosity: "number",
  });

/** JSON of what `scaleLeak` takes. Source: the library's own format. */
export const scaleLeakInput: Codec<InputOf<typeof scaleLeak>> = /* @__PURE__ */ codecOf<
  InputOf<typeof scaleLeak>
>({
  name: "leak",
  shape: () =>
    of<InputOf<typeof scaleLeak>>({ throughput: "throughput", from: leaking(), to: leaking() }),
});

/** JSON of what `scaleLeak` gives. Source: the library's own format. */
export const scaleLeakResult: Codec<ScaledLeak> = /* @__PURE__ */ codecOf<ScaledLeak>({
  name: "result",
  shape: () => of<ScaledLeak>({ viscous: "throughput", molecular: "throughput" }),
});

/** JSON of what `compareTemperatureRules` takes. Source: the library's own format. */
export const compareTemperatureRulesInput: Codec<InputOf<typeof compareTemperatureRules>> =
  /* @__PURE__ */ codecOf<InputOf<typeof compareTemperatureRules>>({
    name: "change",
    shape: () =>
      of<InputOf<typeof compareTemperatureRules>>({
        pressure: "gaugePressure",
        temperature: "temperature",
        laterTemperature: "temperature",
        atmosphere: "absolutePressure",
      }),
  });

/** JSON of what `compareTemperatureRules` gives. Source: the library's own format. */
export const compareTemperatureRulesResult: Codec<readonly RuleComparison[]> =
  /* @__PURE__ */ codecOf<readonly RuleComparison[]>({
    name: "result",
    shape: () =>
      list(
        of<RuleComparison>({
          rule: words<TemperatureRule>({
            "ideal gas, absolute pressure": true,
            "ideal gas, gauge pressure": true,
            "0.3 psi per °F": true,
            "2 kPa per °C": true,
            "0.01 MPa per °C": true,
            "no correction": true,
          }),
          expected: "gaugePressure",
          error: "pressureDifference",
          source: citation(),
        }),
      ),
  });

/** JSON of what `throughputOfDrop` takes. Source: the library's own format. */
export const throughputOfDropInput: Codec<InputOf<typeof throughputOfDrop>> =
  /* @__PURE__ */ codecOf<InputOf<typeof throughputOfDrop>>({
    name: "loss",
    shape: () =>
      of<InputOf<typeof throughputOfDrop>>({
        volume: "volume",
        drop: "pressureDifference",
        elapsed: "duration",
      }),
  });

/** JSON of what `massFlowOfThroughput` takes. Source: the library's own format. */
export const massFlowOfThroughputInput: Codec<InputOf<typeof massFlowOfThroughput>> =
  /* @__PURE__ */ codecOf<InputOf<typeof massFlowOfThroughput>>({
    name: "leak",
    shape: () =>
      of<InputOf<typeof massFlowOfThroughput>>({
        throughput: "throughput",
        temperature: "temperature",
        gramsPerMole: "number",
      }),
  });
