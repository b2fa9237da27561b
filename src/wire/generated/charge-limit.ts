// How do the inputs and results of charge-limit travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type {
  areaFromRoomTable,
  assessConcentration,
  assessRoomCharge,
  blendWarmingPotential,
  carbonDioxideEquivalent,
  chargeFromRoomTable,
  chargeThresholds,
  concentrationChargeLimit,
  massConcentration,
  minimumFloorArea,
  minimumRoomVolume,
  refrigerantSafety,
  roomChargeLimit,
} from "../../charge-limit/index.ts";
import type { InputOf, ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import { byDesignation } from "../named.ts";
import {
  AreaFromRoomTableInputShape,
  BlendWarmingPotentialInputShape,
  CarbonDioxideEquivalentInputShape,
  ChargeFromRoomTableInputShape,
  ChargeThresholdsShape,
  ConcentrationAnswerOfMassShape,
  ConcentrationAnswerOfVolumeShape,
  ConcentrationAssessmentShape,
  ConcentrationChargeLimitInputShape,
  ConcentrationInputShape,
  MassConcentrationInputShape,
  MinimumFloorAreaInputShape,
  MinimumFloorAreaShape,
  MinimumRoomVolumeInputShape,
  RefrigerantSafetyShape,
  RoomChargeAssessmentShape,
  RoomChargeInputShape,
  RoomChargeLimitInputShape,
  RoomChargeLimitShape,
  RoomRefrigerantShape,
} from "./charge-limit.shapes.ts";

/** JSON of what `chargeThresholds` gives. Source: the library's own format. */
export const chargeThresholdsResult: Codec<ResultOf<typeof chargeThresholds>> =
  /* @__PURE__ */ codecOf({
    id: "chargeThresholdsResult",
    name: "result",
    shape: ChargeThresholdsShape,
  });

/** JSON of what `refrigerantSafety` takes. Source: the library's own format. */
export const refrigerantSafetyInput: Codec<InputOf<typeof refrigerantSafety>> =
  /* @__PURE__ */ codecOf({
    id: "refrigerantSafetyInput",
    name: "refrigerant",
    shape: { either: [byDesignation, RoomRefrigerantShape] },
  });

/** JSON of what `refrigerantSafety` gives. Source: the library's own format. */
export const refrigerantSafetyResult: Codec<ResultOf<typeof refrigerantSafety>> =
  /* @__PURE__ */ codecOf({
    id: "refrigerantSafetyResult",
    name: "result",
    shape: RefrigerantSafetyShape,
  });

/** JSON of what `assessConcentration` takes. Source: the library's own format. */
export const assessConcentrationInput: Codec<InputOf<typeof assessConcentration>> =
  /* @__PURE__ */ codecOf({
    id: "assessConcentrationInput",
    name: "input",
    shape: ConcentrationInputShape,
  });

/** JSON of what `assessConcentration` gives. Source: the library's own format. */
export const assessConcentrationResult: Codec<ResultOf<typeof assessConcentration>> =
  /* @__PURE__ */ codecOf({
    id: "assessConcentrationResult",
    name: "result",
    shape: ConcentrationAssessmentShape,
  });

/** JSON of what `assessRoomCharge` takes. Source: the library's own format. */
export const assessRoomChargeInput: Codec<InputOf<typeof assessRoomCharge>> =
  /* @__PURE__ */ codecOf({
    id: "assessRoomChargeInput",
    name: "input",
    shape: RoomChargeInputShape,
  });

/** JSON of what `assessRoomCharge` gives. Source: the library's own format. */
export const assessRoomChargeResult: Codec<ResultOf<typeof assessRoomCharge>> =
  /* @__PURE__ */ codecOf({
    id: "assessRoomChargeResult",
    name: "result",
    shape: RoomChargeAssessmentShape,
  });

/** JSON of what `carbonDioxideEquivalent` takes. Source: the library's own format. */
export const carbonDioxideEquivalentInput: Codec<InputOf<typeof carbonDioxideEquivalent>> =
  /* @__PURE__ */ codecOf({
    id: "carbonDioxideEquivalentInput",
    name: "input",
    shape: CarbonDioxideEquivalentInputShape,
  });

/** JSON of what `blendWarmingPotential` takes. Source: the library's own format. */
export const blendWarmingPotentialInput: Codec<InputOf<typeof blendWarmingPotential>> =
  /* @__PURE__ */ codecOf({
    id: "blendWarmingPotentialInput",
    name: "input",
    shape: BlendWarmingPotentialInputShape,
  });

/** JSON of what `concentrationChargeLimit` takes. Source: the library's own format. */
export const concentrationChargeLimitInput: Codec<InputOf<typeof concentrationChargeLimit>> =
  /* @__PURE__ */ codecOf({
    id: "concentrationChargeLimitInput",
    name: "room",
    shape: ConcentrationChargeLimitInputShape,
  });

/** JSON of what `concentrationChargeLimit` gives. Source: the library's own format. */
export const concentrationChargeLimitResult: Codec<ResultOf<typeof concentrationChargeLimit>> =
  /* @__PURE__ */ codecOf({
    id: "concentrationChargeLimitResult",
    name: "result",
    shape: ConcentrationAnswerOfMassShape,
  });

/** JSON of what `minimumRoomVolume` takes. Source: the library's own format. */
export const minimumRoomVolumeInput: Codec<InputOf<typeof minimumRoomVolume>> =
  /* @__PURE__ */ codecOf({
    id: "minimumRoomVolumeInput",
    name: "unit",
    shape: MinimumRoomVolumeInputShape,
  });

/** JSON of what `minimumRoomVolume` gives. Source: the library's own format. */
export const minimumRoomVolumeResult: Codec<ResultOf<typeof minimumRoomVolume>> =
  /* @__PURE__ */ codecOf({
    id: "minimumRoomVolumeResult",
    name: "result",
    shape: ConcentrationAnswerOfVolumeShape,
  });

/** JSON of what `massConcentration` takes. Source: the library's own format. */
export const massConcentrationInput: Codec<InputOf<typeof massConcentration>> =
  /* @__PURE__ */ codecOf({
    id: "massConcentrationInput",
    name: "gas",
    shape: MassConcentrationInputShape,
  });

/** JSON of what `minimumFloorArea` takes. Source: the library's own format. */
export const minimumFloorAreaInput: Codec<InputOf<typeof minimumFloorArea>> =
  /* @__PURE__ */ codecOf({
    id: "minimumFloorAreaInput",
    name: "room",
    shape: MinimumFloorAreaInputShape,
  });

/** JSON of what `minimumFloorArea` gives. Source: the library's own format. */
export const minimumFloorAreaResult: Codec<ResultOf<typeof minimumFloorArea>> =
  /* @__PURE__ */ codecOf({
    id: "minimumFloorAreaResult",
    name: "result",
    shape: MinimumFloorAreaShape,
  });

/** JSON of what `roomChargeLimit` takes. Source: the library's own format. */
export const roomChargeLimitInput: Codec<InputOf<typeof roomChargeLimit>> = /* @__PURE__ */ codecOf(
  { id: "roomChargeLimitInput", name: "room", shape: RoomChargeLimitInputShape },
);

/** JSON of what `roomChargeLimit` gives. Source: the library's own format. */
export const roomChargeLimitResult: Codec<ResultOf<typeof roomChargeLimit>> =
  /* @__PURE__ */ codecOf({
    id: "roomChargeLimitResult",
    name: "result",
    shape: RoomChargeLimitShape,
  });

/** JSON of what `chargeFromRoomTable` takes. Source: the library's own format. */
export const chargeFromRoomTableInput: Codec<InputOf<typeof chargeFromRoomTable>> =
  /* @__PURE__ */ codecOf({
    id: "chargeFromRoomTableInput",
    name: "table",
    shape: ChargeFromRoomTableInputShape,
  });

/** JSON of what `areaFromRoomTable` takes. Source: the library's own format. */
export const areaFromRoomTableInput: Codec<InputOf<typeof areaFromRoomTable>> =
  /* @__PURE__ */ codecOf({
    id: "areaFromRoomTableInput",
    name: "table",
    shape: AreaFromRoomTableInputShape,
  });
