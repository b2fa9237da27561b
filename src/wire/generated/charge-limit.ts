// How do the inputs and results of charge-limit travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import type {
  areaFromRoomTable,
  assessConcentration,
  assessOutdoorUnit,
  assessRoomCharge,
  assessRooms,
  blendWarmingPotential,
  carbonDioxideEquivalent,
  chargeFromRoomTable,
  chargeThresholds,
  concentrationChargeLimit,
  dispersalChargeLimit,
  dwellingChargeEstimate,
  leakCheckInterval,
  marketRules,
  massConcentration,
  minimumFloorArea,
  minimumRoomVolume,
  refrigerantSafety,
  roomChargeLimit,
  ventilationLimits,
  ventilationOpening,
} from "../../charge-limit/index.ts";
import type { InputOf, ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import { byDesignation } from "../named.ts";
import {
  AreaFromRoomTableInputShape,
  AssessRoomsInputShape,
  BlendWarmingPotentialInputShape,
  BlendWarmingPotentialShape,
  CarbonDioxideEquivalentInputShape,
  ChargeFromRoomTableInputShape,
  ChargeThresholdsInputShape,
  ChargeThresholdsShape,
  ConcentrationAnswerOfMassShape,
  ConcentrationAnswerOfVolumeShape,
  ConcentrationAssessmentShape,
  ConcentrationChargeLimitInputShape,
  ConcentrationInputShape,
  DispersalChargeLimitInputShape,
  DispersalLimitShape,
  DwellingChargeEstimateInputShape,
  DwellingEstimateShape,
  LeakCheckAnswerShape,
  LeakCheckIntervalInputShape,
  MarketAnswerShape,
  MarketRulesInputShape,
  MassConcentrationInputShape,
  MinimumFloorAreaInputShape,
  MinimumFloorAreaShape,
  MinimumRoomVolumeInputShape,
  OutdoorUnitAssessmentShape,
  OutdoorUnitInputShape,
  RefrigerantSafetyShape,
  RoomChargeAssessmentShape,
  RoomChargeInputShape,
  RoomChargeLimitInputShape,
  RoomChargeLimitShape,
  RoomRefrigerantShape,
  RoomsAssessmentShape,
  VentilationLimitsInputShape,
  VentilationLimitsResultShape,
  VentilationOpeningInputShape,
  VentilationOpeningShape,
} from "./charge-limit.shapes.ts";

/** JSON of what `blendWarmingPotential` takes. Source: the library's own format. */
export const blendWarmingPotentialInput: Codec<InputOf<typeof blendWarmingPotential>> =
  /* @__PURE__ */ codecOf({
    id: "blendWarmingPotentialInput",
    name: "input",
    shape: BlendWarmingPotentialInputShape,
  });

/** JSON of what `blendWarmingPotential` gives. Source: the library's own format. */
export const blendWarmingPotentialResult: Codec<ResultOf<typeof blendWarmingPotential>> =
  /* @__PURE__ */ codecOf({
    id: "blendWarmingPotentialResult",
    name: "result",
    shape: BlendWarmingPotentialShape,
  });

/** JSON of what `carbonDioxideEquivalent` takes. Source: the library's own format. */
export const carbonDioxideEquivalentInput: Codec<InputOf<typeof carbonDioxideEquivalent>> =
  /* @__PURE__ */ codecOf({
    id: "carbonDioxideEquivalentInput",
    name: "input",
    shape: CarbonDioxideEquivalentInputShape,
  });

/** JSON of what `chargeThresholds` takes. Source: the library's own format. */
export const chargeThresholdsInput: Codec<InputOf<typeof chargeThresholds>> =
  /* @__PURE__ */ codecOf({
    id: "chargeThresholdsInput",
    name: "rule",
    shape: ChargeThresholdsInputShape,
  });

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
    shape: () => ({ either: [byDesignation, RoomRefrigerantShape()] }),
  });

/** JSON of what `refrigerantSafety` gives. Source: the library's own format. */
export const refrigerantSafetyResult: Codec<ResultOf<typeof refrigerantSafety>> =
  /* @__PURE__ */ codecOf({
    id: "refrigerantSafetyResult",
    name: "result",
    shape: RefrigerantSafetyShape,
  });

/** JSON of what `ventilationOpening` takes. Source: the library's own format. */
export const ventilationOpeningInput: Codec<InputOf<typeof ventilationOpening>> =
  /* @__PURE__ */ codecOf({
    id: "ventilationOpeningInput",
    name: "room",
    shape: VentilationOpeningInputShape,
  });

/** JSON of what `ventilationOpening` gives. Source: the library's own format. */
export const ventilationOpeningResult: Codec<ResultOf<typeof ventilationOpening>> =
  /* @__PURE__ */ codecOf({
    id: "ventilationOpeningResult",
    name: "result",
    shape: VentilationOpeningShape,
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

/** JSON of what `assessOutdoorUnit` takes. Source: the library's own format. */
export const assessOutdoorUnitInput: Codec<InputOf<typeof assessOutdoorUnit>> =
  /* @__PURE__ */ codecOf({
    id: "assessOutdoorUnitInput",
    name: "input",
    shape: OutdoorUnitInputShape,
  });

/** JSON of what `assessOutdoorUnit` gives. Source: the library's own format. */
export const assessOutdoorUnitResult: Codec<ResultOf<typeof assessOutdoorUnit>> =
  /* @__PURE__ */ codecOf({
    id: "assessOutdoorUnitResult",
    name: "result",
    shape: OutdoorUnitAssessmentShape,
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

/** JSON of what `assessRooms` takes. Source: the library's own format. */
export const assessRoomsInput: Codec<InputOf<typeof assessRooms>> = /* @__PURE__ */ codecOf({
  id: "assessRoomsInput",
  name: "system",
  shape: AssessRoomsInputShape,
});

/** JSON of what `assessRooms` gives. Source: the library's own format. */
export const assessRoomsResult: Codec<ResultOf<typeof assessRooms>> = /* @__PURE__ */ codecOf({
  id: "assessRoomsResult",
  name: "result",
  shape: RoomsAssessmentShape,
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

/** JSON of what `dispersalChargeLimit` takes. Source: the library's own format. */
export const dispersalChargeLimitInput: Codec<InputOf<typeof dispersalChargeLimit>> =
  /* @__PURE__ */ codecOf({
    id: "dispersalChargeLimitInput",
    name: "space",
    shape: DispersalChargeLimitInputShape,
  });

/** JSON of what `dispersalChargeLimit` gives. Source: the library's own format. */
export const dispersalChargeLimitResult: Codec<ResultOf<typeof dispersalChargeLimit>> =
  /* @__PURE__ */ codecOf({
    id: "dispersalChargeLimitResult",
    name: "result",
    shape: DispersalLimitShape,
  });

/** JSON of what `dwellingChargeEstimate` takes. Source: the library's own format. */
export const dwellingChargeEstimateInput: Codec<InputOf<typeof dwellingChargeEstimate>> =
  /* @__PURE__ */ codecOf({
    id: "dwellingChargeEstimateInput",
    name: "dwelling",
    shape: DwellingChargeEstimateInputShape,
  });

/** JSON of what `dwellingChargeEstimate` gives. Source: the library's own format. */
export const dwellingChargeEstimateResult: Codec<ResultOf<typeof dwellingChargeEstimate>> =
  /* @__PURE__ */ codecOf({
    id: "dwellingChargeEstimateResult",
    name: "result",
    shape: DwellingEstimateShape,
  });

/** JSON of what `ventilationLimits` takes. Source: the library's own format. */
export const ventilationLimitsInput: Codec<InputOf<typeof ventilationLimits>> =
  /* @__PURE__ */ codecOf({
    id: "ventilationLimitsInput",
    name: "space",
    shape: VentilationLimitsInputShape,
  });

/** JSON of what `ventilationLimits` gives. Source: the library's own format. */
export const ventilationLimitsResult: Codec<ResultOf<typeof ventilationLimits>> =
  /* @__PURE__ */ codecOf({
    id: "ventilationLimitsResult",
    name: "result",
    shape: VentilationLimitsResultShape,
  });

/** JSON of what `leakCheckInterval` takes. Source: the library's own format. */
export const leakCheckIntervalInput: Codec<InputOf<typeof leakCheckInterval>> =
  /* @__PURE__ */ codecOf({
    id: "leakCheckIntervalInput",
    name: "system",
    shape: LeakCheckIntervalInputShape,
  });

/** JSON of what `leakCheckInterval` gives. Source: the library's own format. */
export const leakCheckIntervalResult: Codec<ResultOf<typeof leakCheckInterval>> =
  /* @__PURE__ */ codecOf({
    id: "leakCheckIntervalResult",
    name: "result",
    shape: LeakCheckAnswerShape,
  });

/** JSON of what `marketRules` takes. Source: the library's own format. */
export const marketRulesInput: Codec<InputOf<typeof marketRules>> = /* @__PURE__ */ codecOf({
  id: "marketRulesInput",
  name: "equipment",
  shape: MarketRulesInputShape,
});

/** JSON of what `marketRules` gives. Source: the library's own format. */
export const marketRulesResult: Codec<ResultOf<typeof marketRules>> = /* @__PURE__ */ codecOf({
  id: "marketRulesResult",
  name: "result",
  shape: MarketAnswerShape,
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
