// How do the plans of a nitrogen test travel as JSON: fill, stages, hold, volume?
// Follows the types of pressure-test. Does not cover verdicts: pressure-test.ts.
import type {
  HoldPlan,
  HoldTime,
  holdTime,
  MarkedLimit,
  NitrogenCylinder,
  NitrogenNeed,
  nitrogenNeeded,
  PressurizationPlan,
  pressurizationPlan,
  Stage,
  StagePattern,
  TubeRun,
  testVolume,
} from "../pressure-test/index.ts";
import type { InputOf } from "./arguments-of.ts";
import { type Codec, codecOf } from "./codec.ts";
import { pressure, setup, temperature, uncertaintyShare } from "./pressure-test.ts";
import { citation, statement } from "./verdict.ts";
import { list, type ObjectOf, of, words } from "./wire-shape.ts";

/** JSON of what `holdTime` takes. Source: the library's own format. */
export const holdTimeInput: Codec<InputOf<typeof holdTime>> = /* @__PURE__ */ codecOf<HoldPlan>({
  name: "plan",
  shape: () => {
    const { "criterion?": _, "refrigerant?": __, ...rest } = setup();
    return of<HoldPlan>({
      ...rest,
      leakRate: "throughput",
      pressure: pressure(),
      temperature: temperature(),
      laterTemperature: temperature(),
    });
  },
});

/** JSON of what `holdTime` gives. Source: the library's own format. */
export const holdTimeResult: Codec<HoldTime> = /* @__PURE__ */ codecOf<HoldTime>({
  name: "result",
  shape: () =>
    of<HoldTime>({
      shortest: "duration",
      recommended: "duration",
      provableDrop: "pressureDifference",
      uncertaintyBudget: list(uncertaintyShare()),
    }),
});

/** JSON of what `nitrogenNeeded` takes. Source: the library's own format. */
export const nitrogenNeededInput: Codec<InputOf<typeof nitrogenNeeded>> = /* @__PURE__ */ codecOf<
  InputOf<typeof nitrogenNeeded>
>({
  name: "fill",
  shape: () =>
    of<InputOf<typeof nitrogenNeeded>>({
      volume: "volume",
      pressure: "gaugePressure",
      "startPressure?": "gaugePressure",
      temperature: "temperature",
      atmosphere: "absolutePressure",
      "fills?": "number",
      cylinder: of<NitrogenCylinder>({
        waterVolume: "volume",
        pressure: "gaugePressure",
        "temperature?": "temperature",
      }),
    }),
});

/** JSON of what `nitrogenNeeded` gives. Source: the library's own format. */
export const nitrogenNeededResult: Codec<NitrogenNeed> = /* @__PURE__ */ codecOf<NitrogenNeed>({
  name: "result",
  shape: () =>
    of<NitrogenNeed>({
      mass: "mass",
      enough: "flag",
      fills: "number",
      "cylinderPressureAfter?": "gaugePressure",
      cautions: list(statement()),
    }),
});

const limit = (): ObjectOf<MarkedLimit> =>
  of<MarkedLimit>({
    part: words<MarkedLimit["part"]>({
      "low side": true,
      "high side": true,
      component: true,
      "relief device": true,
    }),
    pressure: "gaugePressure",
  });

/** JSON of what `pressurizationPlan` takes. Source: the library's own format. */
export const pressurizationPlanInput: Codec<InputOf<typeof pressurizationPlan>> =
  /* @__PURE__ */ codecOf<InputOf<typeof pressurizationPlan>>({
    name: "plan",
    shape: () =>
      of<InputOf<typeof pressurizationPlan>>({
        limits: list(limit()),
        "wanted?": "gaugePressure",
        temperature: "temperature",
        warmest: "temperature",
        atmosphere: "absolutePressure",
        "pattern?": words<StagePattern>({ "three stages": true, "ten percent": true }),
      }),
  });

/** JSON of what `pressurizationPlan` gives. Source: the library's own format. */
export const pressurizationPlanResult: Codec<PressurizationPlan> =
  /* @__PURE__ */ codecOf<PressurizationPlan>({
    name: "result",
    shape: () =>
      of<PressurizationPlan>({
        stages: list(
          of<Stage>({
            pressure: "gaugePressure",
            "hold?": "duration",
            check: words<Stage["check"]>({
              "bubble solution on every joint": true,
              "watch and listen": true,
              test: true,
            }),
          }),
        ),
        fillPressure: "gaugePressure",
        pressureWhenWarm: "gaugePressure",
        lowestLimit: limit(),
        lowered: "flag",
        reasons: list(statement()),
        assumptions: list(statement()),
        cautions: list(statement()),
        sources: list(citation()),
      }),
  });

/** JSON of what `testVolume` takes. Source: the library's own format. */
export const testVolumeInput: Codec<InputOf<typeof testVolume>> = /* @__PURE__ */ codecOf<
  InputOf<typeof testVolume>
>({
  name: "parts",
  shape: () =>
    of<InputOf<typeof testVolume>>({
      "tubes?": list(of<TubeRun>({ insideDiameter: "length", length: "length" })),
      "vessels?": list("volume"),
    }),
});
