// How do slope, drain, trap and pump of condensate travel as JSON?
// Follows the types of condensate.
// Does not cover how much condensate there is: condensate-rate.ts.

import type { Caution, Estimate } from "../assessment/assessment.ts";
import type {
  CondensatePumpAssessment,
  CondensatePumpCause,
  CondensatePumpInput,
  CondensateTrap,
  condensateTrap,
  DrainPlan,
  DrainPlanInput,
  DrainPoint,
  DrainRoute,
  DrainSize,
  DrainSlopeAssessment,
  DrainSlopeCause,
  DrainSlopeInput,
  drainSize,
  IndoorUnitPitchAssessment,
  IndoorUnitPitchCause,
  IndoorUnitPitchInput,
  minimumFall,
  PumpPoint,
  SlopeReading,
} from "../condensate/index.ts";
import type { InputOf } from "./arguments-of.ts";
import { type Codec, codecOf } from "./codec.ts";
import { citation, estimate, statement, verdict } from "./verdict.ts";
import { either, type FormOf, list, type ObjectOf, of, words } from "./wire-shape.ts";

const route = (): ObjectOf<DrainRoute> =>
  of<DrainRoute>({
    "outdoors?": "flag",
    "lowestOutdoorTemperature?": "temperature",
    "aboveFinishedSpace?": "flag",
    "pumped?": "flag",
  });

/** JSON of what `drainCautions` takes. Source: the library's own format. */
export const drainCautionsInput: Codec<DrainRoute> = /* @__PURE__ */ codecOf<DrainRoute>({
  name: "route",
  shape: route,
});

/** JSON of what `drainCautions` gives. Source: the library's own format. */
export const drainCautionsResult: Codec<readonly Caution[]> = /* @__PURE__ */ codecOf<
  readonly Caution[]
>({ name: "result", shape: () => list(statement()) });

/** JSON of what `minimumFall` takes. Source: the library's own format. */
export const minimumFallInput: Codec<InputOf<typeof minimumFall>> = /* @__PURE__ */ codecOf<
  InputOf<typeof minimumFall>
>({
  name: "drain",
  shape: () => of<InputOf<typeof minimumFall>>({ run: "length", "slope?": "ratio" }),
});

type BySlope = Extract<SlopeReading, { readonly slope: unknown }>;
type ByAngle = Extract<SlopeReading, { readonly angle: unknown }>;
type ByGap = Extract<SlopeReading, { readonly gap: unknown }>;
type ByHeights = Extract<SlopeReading, { readonly run: unknown }>;
const slopeReading = (): FormOf<SlopeReading> =>
  either(
    of<BySlope>({ slope: "ratio", "accuracy?": "ratio" }),
    of<ByAngle>({ angle: "angle", "accuracy?": "angle" }),
    of<ByGap>({ gap: "length", levelLength: "length", "accuracy?": "length" }),
    of<ByHeights>({
      heightAtStart: "length",
      heightAtEnd: "length",
      run: "length",
      "accuracy?": "length",
    }),
  );

/** JSON of what `slopeOf` takes. Source: the library's own format. */
export const slopeOfInput: Codec<SlopeReading> = /* @__PURE__ */ codecOf<SlopeReading>({
  name: "reading",
  shape: slopeReading,
});

/** JSON of what `slopeOf` gives. Source: the library's own format. */
export const slopeOfResult: Codec<Estimate<"ratio">> = /* @__PURE__ */ codecOf<Estimate<"ratio">>({
  name: "result",
  shape: () => estimate("ratio", "ratio"),
});

/**
 * JSON of what `assessDrainSlope` takes.
 *
 * Source: the library's own format.
 *
 * @example
 * ```ts
 * import { assessDrainSlope } from "hvac-install-math/condensate";
 * import { percent } from "hvac-install-math/quantity";
 * import { assessDrainSlopeInput } from "hvac-install-math/wire";
 *
 * const sent = assessDrainSlopeInput.stringify({ reading: { slope: percent(2), accuracy: percent(0.1) } });
 * assessDrainSlope(assessDrainSlopeInput.parse(sent)).outcome; // => pass
 * ```
 */
export const assessDrainSlopeInput: Codec<DrainSlopeInput> =
  /* @__PURE__ */ codecOf<DrainSlopeInput>({
    name: "input",
    shape: () =>
      of<DrainSlopeInput>({
        reading: slopeReading(),
        "required?": "ratio",
        "run?": "length",
        "route?": route(),
        "confidence?": "number",
      }),
  });

/** JSON of what `assessDrainSlope` gives. Source: the library's own format. */
export const assessDrainSlopeResult: Codec<DrainSlopeAssessment> =
  /* @__PURE__ */ codecOf<DrainSlopeAssessment>({
    name: "result",
    shape: () =>
      of<DrainSlopeAssessment>({
        ...verdict(),
        "cause?": words<DrainSlopeCause>({ rises: true, "too-flat": true }),
        slope: estimate("ratio", "ratio"),
        required: "ratio",
        "missingFall?": "length",
      }),
  });

/** JSON of what `assessIndoorUnitPitch` takes. Source: the library's own format. */
export const assessIndoorUnitPitchInput: Codec<IndoorUnitPitchInput> =
  /* @__PURE__ */ codecOf<IndoorUnitPitchInput>({
    name: "input",
    shape: () =>
      of<IndoorUnitPitchInput>({
        reading: slopeReading(),
        "minimum?": "ratio",
        "maximum?": "ratio",
        "confidence?": "number",
      }),
  });

/** JSON of what `assessIndoorUnitPitch` gives. Source: the library's own format. */
export const assessIndoorUnitPitchResult: Codec<IndoorUnitPitchAssessment> =
  /* @__PURE__ */ codecOf<IndoorUnitPitchAssessment>({
    name: "result",
    shape: () =>
      of<IndoorUnitPitchAssessment>({
        ...verdict(),
        "cause?": words<IndoorUnitPitchCause>({
          "away-from-drain": true,
          "too-little": true,
          "too-much": true,
        }),
        pitch: estimate("ratio", "ratio"),
      }),
  });

/** JSON of what `planDrain` takes. Source: the library's own format. */
export const planDrainInput: Codec<DrainPlanInput> = /* @__PURE__ */ codecOf<DrainPlanInput>({
  name: "input",
  shape: () =>
    of<DrainPlanInput>({
      outletHeight: "length",
      points: list(of<DrainPoint>({ distance: "length", height: "length" })),
      "slope?": "ratio",
      "route?": route(),
    }),
});

/** JSON of what `planDrain` gives. Source: the library's own format. */
export const planDrainResult: Codec<DrainPlan> = /* @__PURE__ */ codecOf<DrainPlan>({
  name: "result",
  shape: () =>
    of<DrainPlan>({
      ...verdict(),
      "cause?": words<NonNullable<DrainPlan["cause"]>>({ "needs-pump": true }),
      method: words<DrainPlan["method"]>({ gravity: true, pump: true }),
      availableFall: "length",
      neededFall: "length",
      shortfall: "length",
      "worstPoint?": "number",
      lift: "length",
    }),
});

/** JSON of what `drainSize` takes. Source: the library's own format. */
export const drainSizeInput: Codec<InputOf<typeof drainSize>> = /* @__PURE__ */ codecOf<
  InputOf<typeof drainSize>
>({
  name: "input",
  shape: () => of<InputOf<typeof drainSize>>({ capacity: "power", "outletDiameter?": "length" }),
});

/** JSON of what `drainSize` gives. Source: the library's own format. */
export const drainSizeResult: Codec<DrainSize> = /* @__PURE__ */ codecOf<DrainSize>({
  name: "result",
  shape: () =>
    of<DrainSize>({
      nominal: "length",
      decidedBy: words<DrainSize["decidedBy"]>({ capacity: true, outlet: true }),
      cautions: list(statement()),
      citation: citation(),
    }),
});

/** JSON of what `condensateTrap` takes. Source: the library's own format. */
export const condensateTrapInput: Codec<InputOf<typeof condensateTrap>> = /* @__PURE__ */ codecOf<
  InputOf<typeof condensateTrap>
>({
  name: "input",
  shape: () =>
    of<InputOf<typeof condensateTrap>>({
      staticPressure: "pressureDifference",
      "margin?": "length",
    }),
});

/** JSON of what `condensateTrap` gives. Source: the library's own format. */
export const condensateTrapResult: Codec<CondensateTrap> = /* @__PURE__ */ codecOf<CondensateTrap>({
  name: "result",
  shape: () =>
    of<CondensateTrap>({
      kind: words<CondensateTrap["kind"]>({
        "draw-through": true,
        "blow-through": true,
        none: true,
      }),
      outletDrop: "length",
      seal: "length",
      height: "length",
      cautions: list(statement()),
      citations: list(citation()),
    }),
});

/** JSON of what `assessCondensatePump` takes. Source: the library's own format. */
export const assessCondensatePumpInput: Codec<CondensatePumpInput> =
  /* @__PURE__ */ codecOf<CondensatePumpInput>({
    name: "input",
    shape: () =>
      of<CondensatePumpInput>({
        condensate: "volumeFlow",
        lift: "length",
        curve: list(of<PumpPoint>({ lift: "length", flow: "volumeFlow" })),
        "reservoir?": "volume",
        "margin?": "number",
      }),
  });

/** JSON of what `assessCondensatePump` gives. Source: the library's own format. */
export const assessCondensatePumpResult: Codec<CondensatePumpAssessment> =
  /* @__PURE__ */ codecOf<CondensatePumpAssessment>({
    name: "result",
    shape: () =>
      of<CondensatePumpAssessment>({
        ...verdict(),
        "cause?": words<CondensatePumpCause>({ "lift-too-high": true, "too-slow": true }),
        flowAtLift: "volumeFlow",
        requiredFlow: "volumeFlow",
        "dutyCycle?": "ratio",
        "startInterval?": "duration",
      }),
  });
