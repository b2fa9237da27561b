// How do the inputs and results of flare-joint travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import type {
  assessFlareCone,
  assessFlareDiameter,
  assessFlareTorque,
  assessFlareTurn,
  assessFlareWall,
  flareDiameterLimits,
  flareNutSize,
  flareThread,
  flareTorque,
  flareTurn,
  servicePortAdapter,
  usualServicePort,
} from "../../flare-joint/index.ts";
import type { InputOf, ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import {
  FlareAssessmentOfAngleFlareConeCauseShape,
  FlareAssessmentOfAngleFlareTorqueCauseShape,
  FlareAssessmentOfLengthFlareDiameterCauseShape,
  FlareAssessmentOfLengthWallTooThinShape,
  FlareConeInputShape,
  FlareDiameterInputShape,
  FlareDiameterLimitsInputShape,
  FlareLimitsOfAngleShape,
  FlareLimitsOfLengthShape,
  FlareNutSizeInputShape,
  FlareThreadShape,
  FlareTorqueAssessmentShape,
  FlareTorqueInputShape,
  FlareTorqueShape,
  FlareTurnInputShape,
  FlareWallInputShape,
  ServicePortAdapterInputShape,
  ServicePortAdapterShape,
  UsualServicePortInputShape,
} from "./flare-joint.shapes.ts";

/** JSON of what `assessFlareCone` takes. Source: the library's own format. */
export const assessFlareConeInput: Codec<InputOf<typeof assessFlareCone>> = /* @__PURE__ */ codecOf(
  { id: "assessFlareConeInput", name: "input", shape: FlareConeInputShape },
);

/** JSON of what `assessFlareCone` gives. Source: the library's own format. */
export const assessFlareConeResult: Codec<ResultOf<typeof assessFlareCone>> =
  /* @__PURE__ */ codecOf({
    id: "assessFlareConeResult",
    name: "result",
    shape: FlareAssessmentOfAngleFlareConeCauseShape,
  });

/** JSON of what `flareDiameterLimits` takes. Source: the library's own format. */
export const flareDiameterLimitsInput: Codec<InputOf<typeof flareDiameterLimits>> =
  /* @__PURE__ */ codecOf({
    id: "flareDiameterLimitsInput",
    name: "joint",
    shape: FlareDiameterLimitsInputShape,
  });

/** JSON of what `flareDiameterLimits` gives. Source: the library's own format. */
export const flareDiameterLimitsResult: Codec<ResultOf<typeof flareDiameterLimits>> =
  /* @__PURE__ */ codecOf({
    id: "flareDiameterLimitsResult",
    name: "result",
    shape: FlareLimitsOfLengthShape,
  });

/** JSON of what `assessFlareDiameter` takes. Source: the library's own format. */
export const assessFlareDiameterInput: Codec<InputOf<typeof assessFlareDiameter>> =
  /* @__PURE__ */ codecOf({
    id: "assessFlareDiameterInput",
    name: "input",
    shape: FlareDiameterInputShape,
  });

/** JSON of what `assessFlareDiameter` gives. Source: the library's own format. */
export const assessFlareDiameterResult: Codec<ResultOf<typeof assessFlareDiameter>> =
  /* @__PURE__ */ codecOf({
    id: "assessFlareDiameterResult",
    name: "result",
    shape: FlareAssessmentOfLengthFlareDiameterCauseShape,
  });

/** JSON of what `assessFlareTorque` takes. Source: the library's own format. */
export const assessFlareTorqueInput: Codec<InputOf<typeof assessFlareTorque>> =
  /* @__PURE__ */ codecOf({
    id: "assessFlareTorqueInput",
    name: "input",
    shape: FlareTorqueInputShape,
  });

/** JSON of what `assessFlareTorque` gives. Source: the library's own format. */
export const assessFlareTorqueResult: Codec<ResultOf<typeof assessFlareTorque>> =
  /* @__PURE__ */ codecOf({
    id: "assessFlareTorqueResult",
    name: "result",
    shape: FlareTorqueAssessmentShape,
  });

/** JSON of what `assessFlareTurn` takes. Source: the library's own format. */
export const assessFlareTurnInput: Codec<InputOf<typeof assessFlareTurn>> = /* @__PURE__ */ codecOf(
  { id: "assessFlareTurnInput", name: "input", shape: FlareTurnInputShape },
);

/** JSON of what `assessFlareTurn` gives. Source: the library's own format. */
export const assessFlareTurnResult: Codec<ResultOf<typeof assessFlareTurn>> =
  /* @__PURE__ */ codecOf({
    id: "assessFlareTurnResult",
    name: "result",
    shape: FlareAssessmentOfAngleFlareTorqueCauseShape,
  });

/** JSON of what `assessFlareWall` takes. Source: the library's own format. */
export const assessFlareWallInput: Codec<InputOf<typeof assessFlareWall>> = /* @__PURE__ */ codecOf(
  { id: "assessFlareWallInput", name: "input", shape: FlareWallInputShape },
);

/** JSON of what `assessFlareWall` gives. Source: the library's own format. */
export const assessFlareWallResult: Codec<ResultOf<typeof assessFlareWall>> =
  /* @__PURE__ */ codecOf({
    id: "assessFlareWallResult",
    name: "result",
    shape: FlareAssessmentOfLengthWallTooThinShape,
  });

/** JSON of what `flareNutSize` takes. Source: the library's own format. */
export const flareNutSizeInput: Codec<InputOf<typeof flareNutSize>> = /* @__PURE__ */ codecOf({
  id: "flareNutSizeInput",
  name: "joint",
  shape: FlareNutSizeInputShape,
});

/** JSON of what `flareThread` gives. Source: the library's own format. */
export const flareThreadResult: Codec<ResultOf<typeof flareThread>> = /* @__PURE__ */ codecOf({
  id: "flareThreadResult",
  name: "result",
  shape: FlareThreadShape,
});

/** JSON of what `flareTorque` gives. Source: the library's own format. */
export const flareTorqueResult: Codec<ResultOf<typeof flareTorque>> = /* @__PURE__ */ codecOf({
  id: "flareTorqueResult",
  name: "result",
  shape: FlareTorqueShape,
});

/** JSON of what `flareTurn` gives. Source: the library's own format. */
export const flareTurnResult: Codec<ResultOf<typeof flareTurn>> = /* @__PURE__ */ codecOf({
  id: "flareTurnResult",
  name: "result",
  shape: FlareLimitsOfAngleShape,
});

/** JSON of what `servicePortAdapter` takes. Source: the library's own format. */
export const servicePortAdapterInput: Codec<InputOf<typeof servicePortAdapter>> =
  /* @__PURE__ */ codecOf({
    id: "servicePortAdapterInput",
    name: "input",
    shape: ServicePortAdapterInputShape,
  });

/** JSON of what `servicePortAdapter` gives. Source: the library's own format. */
export const servicePortAdapterResult: Codec<ResultOf<typeof servicePortAdapter>> =
  /* @__PURE__ */ codecOf({
    id: "servicePortAdapterResult",
    name: "result",
    shape: ServicePortAdapterShape,
  });

/** JSON of what `usualServicePort` takes. Source: the library's own format. */
export const usualServicePortInput: Codec<InputOf<typeof usualServicePort>> =
  /* @__PURE__ */ codecOf({
    id: "usualServicePortInput",
    name: "input",
    shape: UsualServicePortInputShape,
  });
