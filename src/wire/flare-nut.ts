// How do the torque and the turn of a flare nut, its thread and its service port travel as JSON?
// Follows the types of flare-joint.
// Does not cover the flare itself: flare-joint.ts.
import type {
  FlareAssessment,
  FlareLimits,
  FlareThread,
  FlareTorque,
  FlareTorqueAssessment,
  FlareTorqueCause,
  FlareTorqueConflict,
  FlareTorqueInput,
  FlareTorqueSource,
  FlareTorqueWindow,
  FlareTurnInput,
  ServicePort,
  ServicePortAdapter,
  servicePortAdapter,
  TorqueWrench,
  usualServicePort,
} from "../flare-joint/index.ts";
import type { InputOf } from "./arguments-of.ts";
import { type Codec, codecOf } from "./codec.ts";
import { limits, measured, tube } from "./flare-joint.ts";
import { citation, instrument, statement } from "./verdict.ts";
import { list, type ObjectOf, of, words } from "./wire-shape.ts";

const cause = () => words<FlareTorqueCause>({ "under-tightened": true, "over-tightened": true });

const source = () =>
  words<FlareTorqueSource>({ "jis-type-manuals": true, "en-378-2": true, "manual-range": true });

const conflict = (): ObjectOf<FlareTorqueConflict> =>
  of<FlareTorqueConflict>({ between: { items: source(), count: 2 }, sharedFraction: "number" });

/** JSON of what `assessFlareTorque` takes. Source: the library's own format. */
export const assessFlareTorqueInput: Codec<FlareTorqueInput> =
  /* @__PURE__ */ codecOf<FlareTorqueInput>({
    name: "input",
    shape: () =>
      of<FlareTorqueInput>({
        tube: tube(),
        torque: "torque",
        "manual?": limits("torque"),
        "wrench?": of<TorqueWrench>({
          "relativeAccuracy?": "ratio",
          "accuracy?": "torque",
          "resolution?": "torque",
        }),
        "confidence?": "number",
      }),
  });

/** JSON of what `assessFlareTorque` gives. Source: the library's own format. */
export const assessFlareTorqueResult: Codec<FlareTorqueAssessment> =
  /* @__PURE__ */ codecOf<FlareTorqueAssessment>({
    name: "result",
    shape: () =>
      of<FlareTorqueAssessment>({
        ...measured("torque"),
        "cause?": cause(),
        conflicts: list(conflict()),
      }),
  });

/** JSON of what `assessFlareTurn` takes. Source: the library's own format. */
export const assessFlareTurnInput: Codec<FlareTurnInput> = /* @__PURE__ */ codecOf<FlareTurnInput>({
  name: "input",
  shape: () =>
    of<FlareTurnInput>({
      tube: tube(),
      turn: "angle",
      "protractor?": instrument<"angle">("angle"),
      "confidence?": "number",
    }),
});

/** JSON of what `assessFlareTurn` gives. Source: the library's own format. */
export const assessFlareTurnResult: Codec<FlareAssessment<"angle", FlareTorqueCause>> =
  /* @__PURE__ */ codecOf<FlareAssessment<"angle", FlareTorqueCause>>({
    name: "result",
    shape: () =>
      of<FlareAssessment<"angle", FlareTorqueCause>>({ ...measured("angle"), "cause?": cause() }),
  });

/** JSON of what `flareTorque` gives. Source: the library's own format. */
export const flareTorqueResult: Codec<FlareTorque> = /* @__PURE__ */ codecOf<FlareTorque>({
  name: "result",
  shape: () =>
    of<FlareTorque>({
      windows: list(
        of<FlareTorqueWindow>({
          low: "torque",
          high: "torque",
          source: source(),
          citation: citation(),
        }),
      ),
      overlap: limits("torque"),
      conflicts: list(conflict()),
      cautions: list(statement()),
    }),
});

/** JSON of what `flareTurn` gives. Source: the library's own format. */
export const flareTurnResult: Codec<FlareLimits<"angle">> = /* @__PURE__ */ codecOf<
  FlareLimits<"angle">
>({ name: "result", shape: () => limits("angle") });

const thread = (): ObjectOf<FlareThread> =>
  of<FlareThread>({
    name: "text",
    majorDiameter: "length",
    threadsPerInch: "number",
    citation: citation(),
  });

/** JSON of what `flareThread` gives. Source: the library's own format. */
export const flareThreadResult: Codec<FlareThread> = /* @__PURE__ */ codecOf<FlareThread>({
  name: "result",
  shape: thread,
});

const port = () => words<ServicePort>({ "1/4": true, "5/16": true });

/** JSON of what `servicePortAdapter` takes. Source: the library's own format. */
export const servicePortAdapterInput: Codec<InputOf<typeof servicePortAdapter>> =
  /* @__PURE__ */ codecOf<InputOf<typeof servicePortAdapter>>({
    name: "input",
    shape: () => of<InputOf<typeof servicePortAdapter>>({ port: port(), hose: port() }),
  });

/** JSON of what `servicePortAdapter` gives. Source: the library's own format. */
export const servicePortAdapterResult: Codec<ServicePortAdapter> =
  /* @__PURE__ */ codecOf<ServicePortAdapter>({
    name: "result",
    shape: () =>
      of<ServicePortAdapter>({
        needed: "flag",
        port: thread(),
        hose: thread(),
        advice: statement(),
        cautions: list(statement()),
      }),
  });

/** JSON of what `usualServicePort` takes. Source: the library's own format. */
export const usualServicePortInput: Codec<InputOf<typeof usualServicePort>> =
  /* @__PURE__ */ codecOf<InputOf<typeof usualServicePort>>({
    name: "input",
    shape: () =>
      of<InputOf<typeof usualServicePort>>({
        refrigerant: words<InputOf<typeof usualServicePort>["refrigerant"]>({
          R410A: true,
          R32: true,
          R22: true,
          R134a: true,
        }),
        equipment: words<InputOf<typeof usualServicePort>["equipment"]>({
          "mini-split": true,
          ducted: true,
        }),
      }),
  });
