// How do the measured figures of a flare travel as JSON?
// Follows the types of flare-joint.
// Does not cover nuts, threads and service ports: flare-nut.ts.
import type {
  FlareAssessment,
  FlareConeCause,
  FlareConeInput,
  FlareDiameterCause,
  FlareDiameterInput,
  FlareLimits,
  FlareRefrigerant,
  FlareTube,
  FlareWallInput,
  flareDiameterLimits,
  flareNutSize,
} from "../flare-joint/index.ts";
import type { InputOf } from "./arguments-of.ts";
import { type Codec, codecOf } from "./codec.ts";
import { estimate, instrument, verdict } from "./verdict.ts";
import { type FieldsOf, type ObjectOf, of, words } from "./wire-shape.ts";

type FigureKind = "angle" | "length" | "torque";

/** The nominal size of a flared tube. */
export const tube = (): { readonly words: readonly FlareTube[] } =>
  words<FlareTube>({
    "1/4": true,
    "5/16": true,
    "3/8": true,
    "1/2": true,
    "5/8": true,
    "3/4": true,
  });

const joint = (): FieldsOf<InputOf<typeof flareNutSize>> => ({
  tube: tube(),
  refrigerant: words<FlareRefrigerant>({ R410A: true, R32: true, R22: true }),
});

/** The smallest and the largest figure. */
export const limits = <K extends FigureKind>(kind: K): ObjectOf<FlareLimits<K>> =>
  of<FlareLimits<"length">>({
    low: kind as "length",
    high: kind as "length",
  }) as unknown as ObjectOf<FlareLimits<K>>;

/** The fields of a verdict on a measured figure, but `cause`. */
export const measured = <K extends FigureKind>(
  kind: K,
): FieldsOf<Omit<FlareAssessment<K, never>, "cause">> => {
  const fields: FieldsOf<Omit<FlareAssessment<"length", never>, "cause">> = {
    ...verdict(),
    measured: estimate<"length">(kind as "length", kind as "length"),
    window: of<Partial<FlareLimits<"length">>>({
      "low?": kind as "length",
      "high?": kind as "length",
    }),
  };
  return fields as never; // the kinds of all are held together by the argument
};

/** JSON of what `assessFlareCone` takes. Source: the library's own format. */
export const assessFlareConeInput: Codec<FlareConeInput> = /* @__PURE__ */ codecOf<FlareConeInput>({
  name: "input",
  shape: () =>
    of<FlareConeInput>({
      seatAngle: "angle",
      "protractor?": instrument<"angle">("angle"),
      "confidence?": "number",
    }),
});

/** JSON of what `assessFlareCone` gives. Source: the library's own format. */
export const assessFlareConeResult: Codec<FlareAssessment<"angle", FlareConeCause>> =
  /* @__PURE__ */ codecOf<FlareAssessment<"angle", FlareConeCause>>({
    name: "result",
    shape: () =>
      of<FlareAssessment<"angle", FlareConeCause>>({
        ...measured("angle"),
        "cause?": words<FlareConeCause>({ "cone-too-steep": true, "cone-too-flat": true }),
      }),
  });

/** JSON of what `assessFlareDiameter` takes. Source: the library's own format. */
export const assessFlareDiameterInput: Codec<FlareDiameterInput> =
  /* @__PURE__ */ codecOf<FlareDiameterInput>({
    name: "input",
    shape: () =>
      of<FlareDiameterInput>({
        ...joint(),
        diameter: "length",
        "manual?": limits("length"),
        "caliper?": instrument<"length">("length"),
        "confidence?": "number",
      }),
  });

/** JSON of what `assessFlareDiameter` gives. Source: the library's own format. */
export const assessFlareDiameterResult: Codec<FlareAssessment<"length", FlareDiameterCause>> =
  /* @__PURE__ */ codecOf<FlareAssessment<"length", FlareDiameterCause>>({
    name: "result",
    shape: () =>
      of<FlareAssessment<"length", FlareDiameterCause>>({
        ...measured("length"),
        "cause?": words<FlareDiameterCause>({ "flare-too-small": true, "flare-too-large": true }),
      }),
  });

/** JSON of what `assessFlareWall` takes. Source: the library's own format. */
export const assessFlareWallInput: Codec<FlareWallInput> = /* @__PURE__ */ codecOf<FlareWallInput>({
  name: "input",
  shape: () =>
    of<FlareWallInput>({
      ...joint(),
      wall: "length",
      "manualMinimum?": "length",
      "micrometer?": instrument<"length">("length"),
      "confidence?": "number",
    }),
});

/** JSON of what `assessFlareWall` gives. Source: the library's own format. */
export const assessFlareWallResult: Codec<FlareAssessment<"length", "wall-too-thin">> =
  /* @__PURE__ */ codecOf<FlareAssessment<"length", "wall-too-thin">>({
    name: "result",
    shape: () =>
      of<FlareAssessment<"length", "wall-too-thin">>({
        ...measured("length"),
        "cause?": words<"wall-too-thin">({ "wall-too-thin": true }),
      }),
  });

/** JSON of what `flareDiameterLimits` takes. Source: the library's own format. */
export const flareDiameterLimitsInput: Codec<InputOf<typeof flareDiameterLimits>> =
  /* @__PURE__ */ codecOf<InputOf<typeof flareDiameterLimits>>({
    name: "joint",
    shape: () => of<InputOf<typeof flareDiameterLimits>>(joint()),
  });

/** JSON of what `flareDiameterLimits` gives. Source: the library's own format. */
export const flareDiameterLimitsResult: Codec<FlareLimits<"length">> = /* @__PURE__ */ codecOf<
  FlareLimits<"length">
>({ name: "result", shape: () => limits("length") });

/** JSON of what `flareNutSize` takes. Source: the library's own format. */
export const flareNutSizeInput: Codec<InputOf<typeof flareNutSize>> = /* @__PURE__ */ codecOf<
  InputOf<typeof flareNutSize>
>({ name: "joint", shape: () => of<InputOf<typeof flareNutSize>>(joint()) });
