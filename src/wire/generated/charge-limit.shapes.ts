// Which shapes have the types of charge-limit?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import { byDesignation } from "../named.ts";
import {
  CitationShape,
  InstrumentOfAreaShape,
  InstrumentOfMassShape,
  InstrumentOfVolumeShape,
} from "./assessment.shapes.ts";
import {
  CarbonDioxideEquivalentInputRefrigerantShape,
  RefrigerantComponentShape,
  RefrigerantsTableNeedsAtmosphereValuesShape,
  SafetyChargeTightSystemShape,
  SafetyCompressorInVacuumShape,
  SafetyDryNitrogenOnlyShape,
  SafetyFlammableRefrigerantShape,
  SafetyLineVoltageShape,
  SafetyLowestRatingShape,
  SafetyMeterCategoryShape,
  SafetyNitrogenSuffocatesShape,
  SafetyOpenUnderPressureShape,
  SafetyOthersGovernShape,
  SafetyRaiseInStagesShape,
  SafetyRefrigerantAirMixtureShape,
  SafetyRefrigerantContactShape,
  SafetyRefrigerantSuffocatesShape,
  SafetyRegulatorAndReliefShape,
  SafetyRunningUnitShape,
  SafetyToxicRefrigerantShape,
  SafetyWorkAtHeightShape,
} from "./refrigerants.shapes.ts";

export const ChargeThresholdsShape: Shape = {
  type: "ChargeThresholds",
  fields: { m1: "mass", m2: "mass", m3: "mass", unrestrictedA2L: "mass" },
  says: "The charges at which the rule changes.",
  about: {
    m1: "m1 = 4 m³·LFL.",
    m2: "m2 = 26 m³·LFL: the most without ventilation.",
    m3: "m3 = 130 m³·LFL: above it the standard has no rule.",
    unrestrictedA2L: "6 m³·LFL: no room restriction for A2L in fixed units, edition 6.",
  },
};

export const RoomRefrigerantShape: Shape = {
  type: "RoomRefrigerant",
  fields: {
    designation: "text",
    safetyClass: { words: ["A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3"] },
  },
  says: "What this module needs to know of a refrigerant; the objects of refrigerants have it.",
  about: {
    designation: "ASHRAE 34 designation, such as R-410A.",
    safetyClass:
      "ASHRAE 34 safety class, from memory: A lower, B higher toxicity; 1, 2L, 2, 3 by flammability.",
  },
};

export const SafetyLimitShape: Shape = {
  type: "SafetyLimit",
  fields: {
    value: "density",
    "citation?": CitationShape,
    standing: { words: ["published", "from-memory", "stated"] },
  },
  says: "A limit with its source: editions differ.",
  about: {
    value: "The limit.",
    citation: "Where it stands; nowhere for a limit that the caller stated.",
    standing: "Whether it was read there, remembered, or stated by the caller.",
  },
};

export const RefrigerantSafetyShape: Shape = {
  type: "RefrigerantSafety",
  fields: {
    safetyClass: { words: ["A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3"] },
    lowerFlammabilityLimits: { list: SafetyLimitShape },
    concentrationLimits: { list: SafetyLimitShape },
    concentrationLimitByVolume: "ratio",
  },
  says: "The limits of a refrigerant.",
  about: {
    safetyClass: "ASHRAE 34 safety class.",
    lowerFlammabilityLimits:
      "Lower flammability limits, the IEC figure first where one was read; empty for what does not burn.",
    concentrationLimits:
      "Concentration limits (RCL, practical limit), the newest ASHRAE 34 figure first.",
    concentrationLimitByVolume: "The RCL as a share of the volume.",
  },
};

export const RoomInstrumentsOfVolumeShape: Shape = {
  type: "RoomInstrumentsOfVolume",
  fields: { "charge?": InstrumentOfMassShape, "size?": InstrumentOfVolumeShape },
  says: "What is known of the instruments behind a charge and the size of its room.",
  about: {
    charge: "The charging scale, or the tolerance of the nameplate charge.",
    size: "How well the size of the room is known.",
  },
};

export const ConcentrationInputShape: Shape = {
  type: "ConcentrationInput",
  fields: {
    refrigerant: { either: [byDesignation, RoomRefrigerantShape] },
    "concentrationLimit?": "density",
    charge: "mass",
    volume: "volume",
    "instruments?": RoomInstrumentsOfVolumeShape,
    "confidence?": "number",
  },
  says: "A charge and its room.",
  about: {
    refrigerant: "The refrigerant.",
    concentrationLimit:
      "Limit in place of the RCL that the module holds, above 0 to 1 kg/m³: a practical limit, another edition.",
    charge: "Total charge, factory charge and what was added, above 0.",
    volume: "Volume of the smallest room in which it can collect, above 0.",
    instruments: "What is known of scale and tape; counted as exact when left out.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
  },
};

export const ChargeLimitSharesMake100Shape: Shape = {
  type: "ChargeLimitSharesMake100",
  fields: {
    code: { words: ["charge-limit.shares-make-100"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitOtherClausesShape: Shape = {
  type: "ChargeLimitOtherClauses",
  fields: {
    code: { words: ["charge-limit.other-clauses"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitWithinLimitValuesShape: Shape = {
  type: "ChargeLimitWithinLimitValues",
  fields: { charge: "mass", limit: "mass" },
};

export const ChargeLimitWithinLimitShape: Shape = {
  type: "ChargeLimitWithinLimit",
  fields: {
    code: { words: ["charge-limit.within-limit"] },
    values: ChargeLimitWithinLimitValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitAboveLimitShape: Shape = {
  type: "ChargeLimitAboveLimit",
  fields: {
    code: { words: ["charge-limit.above-limit"] },
    values: ChargeLimitWithinLimitValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitTooCloseToCallValuesShape: Shape = {
  type: "ChargeLimitTooCloseToCallValues",
  fields: { charge: "mass", limit: "mass", uncertainty: "mass" },
};

export const ChargeLimitTooCloseToCallShape: Shape = {
  type: "ChargeLimitTooCloseToCall",
  fields: {
    code: { words: ["charge-limit.too-close-to-call"] },
    values: ChargeLimitTooCloseToCallValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitUnventilatedShape: Shape = {
  type: "ChargeLimitUnventilated",
  fields: {
    code: { words: ["charge-limit.unventilated"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitAboveReferenceHeightValuesShape: Shape = {
  type: "ChargeLimitAboveReferenceHeightValues",
  fields: { height: "length" },
};

export const ChargeLimitAboveReferenceHeightShape: Shape = {
  type: "ChargeLimitAboveReferenceHeight",
  fields: {
    code: { words: ["charge-limit.above-reference-height"] },
    values: ChargeLimitAboveReferenceHeightValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitFlammabilityLimitUsedValuesShape: Shape = {
  type: "ChargeLimitFlammabilityLimitUsedValues",
  fields: {
    limit: "density",
    standing: {
      words: [
        "charge-limit.standing.from-memory",
        "charge-limit.standing.stated",
        "charge-limit.standing.published",
      ],
    },
  },
};

export const ChargeLimitFlammabilityLimitUsedShape: Shape = {
  type: "ChargeLimitFlammabilityLimitUsed",
  fields: {
    code: { words: ["charge-limit.flammability-limit-used"] },
    values: ChargeLimitFlammabilityLimitUsedValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitConcentrationLimitUsedShape: Shape = {
  type: "ChargeLimitConcentrationLimitUsed",
  fields: {
    code: { words: ["charge-limit.concentration-limit-used"] },
    values: ChargeLimitFlammabilityLimitUsedValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitExactChargeShape: Shape = {
  type: "ChargeLimitExactCharge",
  fields: {
    code: { words: ["charge-limit.exact-charge"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitExactSizeShape: Shape = {
  type: "ChargeLimitExactSize",
  fields: {
    code: { words: ["charge-limit.exact-size"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitFlammabilityTooShape: Shape = {
  type: "ChargeLimitFlammabilityToo",
  fields: {
    code: { words: ["charge-limit.flammability-too"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitAddNoRefrigerantShape: Shape = {
  type: "ChargeLimitAddNoRefrigerant",
  fields: {
    code: { words: ["charge-limit.add-no-refrigerant"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitFindLargerRoomShape: Shape = {
  type: "ChargeLimitFindLargerRoom",
  fields: {
    code: { words: ["charge-limit.find-larger-room"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitUseOtherClausesValuesShape: Shape = {
  type: "ChargeLimitUseOtherClausesValues",
  fields: { maximum: "mass" },
};

export const ChargeLimitUseOtherClausesShape: Shape = {
  type: "ChargeLimitUseOtherClauses",
  fields: {
    code: { words: ["charge-limit.use-other-clauses"] },
    values: ChargeLimitUseOtherClausesValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitWeighOrMeasureBetterShape: Shape = {
  type: "ChargeLimitWeighOrMeasureBetter",
  fields: {
    code: { words: ["charge-limit.weigh-or-measure-better"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const ChargeLimitStatementShape: Shape = {
  type: "ChargeLimitStatement",
  by: "code",
  cases: {
    "charge-limit.shares-make-100": ChargeLimitSharesMake100Shape,
    "charge-limit.other-clauses": ChargeLimitOtherClausesShape,
    "charge-limit.within-limit": ChargeLimitWithinLimitShape,
    "charge-limit.above-limit": ChargeLimitAboveLimitShape,
    "charge-limit.too-close-to-call": ChargeLimitTooCloseToCallShape,
    "charge-limit.unventilated": ChargeLimitUnventilatedShape,
    "charge-limit.above-reference-height": ChargeLimitAboveReferenceHeightShape,
    "charge-limit.flammability-limit-used": ChargeLimitFlammabilityLimitUsedShape,
    "charge-limit.concentration-limit-used": ChargeLimitConcentrationLimitUsedShape,
    "charge-limit.exact-charge": ChargeLimitExactChargeShape,
    "charge-limit.exact-size": ChargeLimitExactSizeShape,
    "charge-limit.flammability-too": ChargeLimitFlammabilityTooShape,
    "charge-limit.add-no-refrigerant": ChargeLimitAddNoRefrigerantShape,
    "charge-limit.find-larger-room": ChargeLimitFindLargerRoomShape,
    "charge-limit.use-other-clauses": ChargeLimitUseOtherClausesShape,
    "charge-limit.weigh-or-measure-better": ChargeLimitWeighOrMeasureBetterShape,
  },
};

export const ChargeLimitSharesMake1002Shape: Shape = {
  type: "ChargeLimitSharesMake1002",
  fields: {
    code: { words: ["charge-limit.shares-make-100"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitOtherClauses2Shape: Shape = {
  type: "ChargeLimitOtherClauses2",
  fields: {
    code: { words: ["charge-limit.other-clauses"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitWithinLimit2Shape: Shape = {
  type: "ChargeLimitWithinLimit2",
  fields: {
    code: { words: ["charge-limit.within-limit"] },
    values: ChargeLimitWithinLimitValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitAboveLimit2Shape: Shape = {
  type: "ChargeLimitAboveLimit2",
  fields: {
    code: { words: ["charge-limit.above-limit"] },
    values: ChargeLimitWithinLimitValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitTooCloseToCall2Shape: Shape = {
  type: "ChargeLimitTooCloseToCall2",
  fields: {
    code: { words: ["charge-limit.too-close-to-call"] },
    values: ChargeLimitTooCloseToCallValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitUnventilated2Shape: Shape = {
  type: "ChargeLimitUnventilated2",
  fields: {
    code: { words: ["charge-limit.unventilated"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitAboveReferenceHeight2Shape: Shape = {
  type: "ChargeLimitAboveReferenceHeight2",
  fields: {
    code: { words: ["charge-limit.above-reference-height"] },
    values: ChargeLimitAboveReferenceHeightValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitFlammabilityLimitUsed2Shape: Shape = {
  type: "ChargeLimitFlammabilityLimitUsed2",
  fields: {
    code: { words: ["charge-limit.flammability-limit-used"] },
    values: ChargeLimitFlammabilityLimitUsedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitConcentrationLimitUsed2Shape: Shape = {
  type: "ChargeLimitConcentrationLimitUsed2",
  fields: {
    code: { words: ["charge-limit.concentration-limit-used"] },
    values: ChargeLimitFlammabilityLimitUsedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitExactCharge2Shape: Shape = {
  type: "ChargeLimitExactCharge2",
  fields: {
    code: { words: ["charge-limit.exact-charge"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitExactSize2Shape: Shape = {
  type: "ChargeLimitExactSize2",
  fields: {
    code: { words: ["charge-limit.exact-size"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitFlammabilityToo2Shape: Shape = {
  type: "ChargeLimitFlammabilityToo2",
  fields: {
    code: { words: ["charge-limit.flammability-too"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitAddNoRefrigerant2Shape: Shape = {
  type: "ChargeLimitAddNoRefrigerant2",
  fields: {
    code: { words: ["charge-limit.add-no-refrigerant"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitFindLargerRoom2Shape: Shape = {
  type: "ChargeLimitFindLargerRoom2",
  fields: {
    code: { words: ["charge-limit.find-larger-room"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitUseOtherClauses2Shape: Shape = {
  type: "ChargeLimitUseOtherClauses2",
  fields: {
    code: { words: ["charge-limit.use-other-clauses"] },
    values: ChargeLimitUseOtherClausesValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeLimitWeighOrMeasureBetter2Shape: Shape = {
  type: "ChargeLimitWeighOrMeasureBetter2",
  fields: {
    code: { words: ["charge-limit.weigh-or-measure-better"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ConcentrationAssessmentCautionsItemShape: Shape = {
  type: "ConcentrationAssessmentCautionsItem",
  by: "code",
  cases: {
    "safety.others-govern": SafetyOthersGovernShape,
    "safety.dry-nitrogen-only": SafetyDryNitrogenOnlyShape,
    "safety.regulator-and-relief": SafetyRegulatorAndReliefShape,
    "safety.raise-in-stages": SafetyRaiseInStagesShape,
    "safety.lowest-rating": SafetyLowestRatingShape,
    "safety.nitrogen-suffocates": SafetyNitrogenSuffocatesShape,
    "safety.open-under-pressure": SafetyOpenUnderPressureShape,
    "safety.refrigerant-contact": SafetyRefrigerantContactShape,
    "safety.flammable-refrigerant": SafetyFlammableRefrigerantShape,
    "safety.toxic-refrigerant": SafetyToxicRefrigerantShape,
    "safety.refrigerant-suffocates": SafetyRefrigerantSuffocatesShape,
    "safety.charge-tight-system": SafetyChargeTightSystemShape,
    "safety.refrigerant-air-mixture": SafetyRefrigerantAirMixtureShape,
    "safety.compressor-in-vacuum": SafetyCompressorInVacuumShape,
    "safety.line-voltage": SafetyLineVoltageShape,
    "safety.meter-category": SafetyMeterCategoryShape,
    "safety.running-unit": SafetyRunningUnitShape,
    "safety.work-at-height": SafetyWorkAtHeightShape,
    "charge-limit.shares-make-100": ChargeLimitSharesMake1002Shape,
    "charge-limit.other-clauses": ChargeLimitOtherClauses2Shape,
    "charge-limit.within-limit": ChargeLimitWithinLimit2Shape,
    "charge-limit.above-limit": ChargeLimitAboveLimit2Shape,
    "charge-limit.too-close-to-call": ChargeLimitTooCloseToCall2Shape,
    "charge-limit.unventilated": ChargeLimitUnventilated2Shape,
    "charge-limit.above-reference-height": ChargeLimitAboveReferenceHeight2Shape,
    "charge-limit.flammability-limit-used": ChargeLimitFlammabilityLimitUsed2Shape,
    "charge-limit.concentration-limit-used": ChargeLimitConcentrationLimitUsed2Shape,
    "charge-limit.exact-charge": ChargeLimitExactCharge2Shape,
    "charge-limit.exact-size": ChargeLimitExactSize2Shape,
    "charge-limit.flammability-too": ChargeLimitFlammabilityToo2Shape,
    "charge-limit.add-no-refrigerant": ChargeLimitAddNoRefrigerant2Shape,
    "charge-limit.find-larger-room": ChargeLimitFindLargerRoom2Shape,
    "charge-limit.use-other-clauses": ChargeLimitUseOtherClauses2Shape,
    "charge-limit.weigh-or-measure-better": ChargeLimitWeighOrMeasureBetter2Shape,
  },
};

export const RoomCautionShape: Shape = {
  type: "RoomCaution",
  by: "code",
  cases: {
    "safety.others-govern": SafetyOthersGovernShape,
    "safety.dry-nitrogen-only": SafetyDryNitrogenOnlyShape,
    "safety.regulator-and-relief": SafetyRegulatorAndReliefShape,
    "safety.raise-in-stages": SafetyRaiseInStagesShape,
    "safety.lowest-rating": SafetyLowestRatingShape,
    "safety.nitrogen-suffocates": SafetyNitrogenSuffocatesShape,
    "safety.open-under-pressure": SafetyOpenUnderPressureShape,
    "safety.refrigerant-contact": SafetyRefrigerantContactShape,
    "safety.flammable-refrigerant": SafetyFlammableRefrigerantShape,
    "safety.toxic-refrigerant": SafetyToxicRefrigerantShape,
    "safety.refrigerant-suffocates": SafetyRefrigerantSuffocatesShape,
    "safety.charge-tight-system": SafetyChargeTightSystemShape,
    "safety.refrigerant-air-mixture": SafetyRefrigerantAirMixtureShape,
    "safety.compressor-in-vacuum": SafetyCompressorInVacuumShape,
    "safety.line-voltage": SafetyLineVoltageShape,
    "safety.meter-category": SafetyMeterCategoryShape,
    "safety.running-unit": SafetyRunningUnitShape,
    "safety.work-at-height": SafetyWorkAtHeightShape,
    "charge-limit.shares-make-100": ChargeLimitSharesMake1002Shape,
    "charge-limit.other-clauses": ChargeLimitOtherClauses2Shape,
    "charge-limit.within-limit": ChargeLimitWithinLimit2Shape,
    "charge-limit.above-limit": ChargeLimitAboveLimit2Shape,
    "charge-limit.too-close-to-call": ChargeLimitTooCloseToCall2Shape,
    "charge-limit.unventilated": ChargeLimitUnventilated2Shape,
    "charge-limit.above-reference-height": ChargeLimitAboveReferenceHeight2Shape,
    "charge-limit.flammability-limit-used": ChargeLimitFlammabilityLimitUsed2Shape,
    "charge-limit.concentration-limit-used": ChargeLimitConcentrationLimitUsed2Shape,
    "charge-limit.exact-charge": ChargeLimitExactCharge2Shape,
    "charge-limit.exact-size": ChargeLimitExactSize2Shape,
    "charge-limit.flammability-too": ChargeLimitFlammabilityToo2Shape,
    "charge-limit.add-no-refrigerant": ChargeLimitAddNoRefrigerant2Shape,
    "charge-limit.find-larger-room": ChargeLimitFindLargerRoom2Shape,
    "charge-limit.use-other-clauses": ChargeLimitUseOtherClauses2Shape,
    "charge-limit.weigh-or-measure-better": ChargeLimitWeighOrMeasureBetter2Shape,
  },
};

export const ConcentrationAnswerOfMassShape: Shape = {
  type: "ConcentrationAnswerOfMass",
  fields: { value: "mass", basis: SafetyLimitShape, cautions: { list: RoomCautionShape } },
  says: "A charge or a volume by concentration.",
  about: {
    value: "The largest charge, or the smallest volume.",
    basis: "The limit that was used, with its source.",
    cautions: "What can hurt someone, and what overrides the figure.",
  },
};

export const ConcentrationAssessmentShape: Shape = {
  type: "ConcentrationAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["room-too-small"] },
    reasons: { list: ChargeLimitStatementShape },
    assumptions: { list: ChargeLimitStatementShape },
    cautions: { list: ConcentrationAssessmentCautionsItemShape },
    "actions?": { list: ChargeLimitStatementShape },
    sources: { list: CitationShape },
    limit: ConcentrationAnswerOfMassShape,
  },
  says: "The verdict on a charge by concentration.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    limit: "The largest charge allowed, and the limit behind it.",
  },
};

export const RoomInstrumentsOfAreaShape: Shape = {
  type: "RoomInstrumentsOfArea",
  fields: { "charge?": InstrumentOfMassShape, "size?": InstrumentOfAreaShape },
  says: "What is known of the instruments behind a charge and the size of its room.",
  about: {
    charge: "The charging scale, or the tolerance of the nameplate charge.",
    size: "How well the size of the room is known.",
  },
};

export const RoomChargeInputShape: Shape = {
  type: "RoomChargeInput",
  fields: {
    refrigerant: { either: [byDesignation, RoomRefrigerantShape] },
    "lowerFlammabilityLimit?": "density",
    "place?": { words: ["wall", "ceiling", "floor", "window"] },
    "installationHeight?": "length",
    "releaseOffset?": "length",
    "edition?": { words: ["2018", "before-2018"] },
    charge: "mass",
    floorArea: "area",
    "instruments?": RoomInstrumentsOfAreaShape,
    "confidence?": "number",
  },
  says: "A unit, its charge and its room.",
  about: {
    refrigerant: "A flammable refrigerant, class A2L, A2 or A3.",
    lowerFlammabilityLimit:
      "LFL in place of the first figure that the module holds, above 0 to 1 kg/m³.",
    place: "Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m.",
    installationHeight:
      "Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m.",
    releaseOffset:
      "From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out.",
    edition: "2018 (edition 6) has the cap and the 6 m³·LFL for A2L; before-2018 has neither.",
    charge: "Total charge, factory charge and what was added, above 0.",
    floorArea: "Floor area of the room, above 0.",
    instruments: "What is known of scale and tape; counted as exact when left out.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
  },
};

export const RoomChargeLimitShape: Shape = {
  type: "RoomChargeLimit",
  fields: {
    unrestricted: "mass",
    maximum: "mass",
    releaseHeight: "length",
    lowerFlammabilityLimit: "density",
    assumptions: { list: ChargeLimitStatementShape },
    cautions: { list: RoomCautionShape },
    sources: { list: CitationShape },
    limit: "mass",
    byFormula: "mass",
    decidedBy: { words: ["unrestricted", "floor-area", "cap", "m2"] },
  },
  says: "The largest charge for a room, and what decides it.",
  about: {
    unrestricted: "The charge up to which the room does not matter.",
    maximum: "m2: the most that the rule allows at all.",
    releaseHeight: "h0, the release height that was used.",
    lowerFlammabilityLimit: "The lower flammability limit that was used.",
    assumptions: "What was assumed.",
    cautions: "What can hurt someone, and what overrides the figure.",
    sources: "Where the rule and the figures stand.",
    limit: "The largest charge allowed in the room.",
    byFormula:
      "m_max by the formula alone, as manuals tabulate it, also where the room does not matter.",
    decidedBy: "What decides the limit.",
  },
};

export const RoomChargeAssessmentShape: Shape = {
  type: "RoomChargeAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["room-too-small", "beyond-m2"] },
    reasons: { list: ChargeLimitStatementShape },
    assumptions: { list: ChargeLimitStatementShape },
    cautions: { list: ConcentrationAssessmentCautionsItemShape },
    "actions?": { list: ChargeLimitStatementShape },
    sources: { list: CitationShape },
    limit: RoomChargeLimitShape,
  },
  says: "The verdict on a charge in a room.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    limit: "The largest charge allowed, and what decides it.",
  },
};

export const CarbonDioxideEquivalentInputShape: Shape = {
  type: "CarbonDioxideEquivalentInput",
  fields: {
    refrigerant: { either: [byDesignation, CarbonDioxideEquivalentInputRefrigerantShape] },
    charge: "mass",
    report: { words: ["ar4", "ar5"] },
  },
  about: {
    refrigerant: "The refrigerant.",
    charge: "Total charge.",
    report: "Which potentials apply: EU law of 2014 and United States law use AR4.",
  },
};

export const BlendWarmingPotentialInputShape: Shape = {
  type: "BlendWarmingPotentialInput",
  fields: { composition: { list: RefrigerantComponentShape }, report: { words: ["ar4", "ar5"] } },
  about: {
    composition: "Components with their share of the mass.",
    report: "Which potentials apply.",
  },
};

export const ConcentrationChargeLimitInputShape: Shape = {
  type: "ConcentrationChargeLimitInput",
  fields: {
    refrigerant: { either: [byDesignation, RoomRefrigerantShape] },
    "concentrationLimit?": "density",
    volume: "volume",
  },
  about: {
    refrigerant: "The refrigerant.",
    concentrationLimit:
      "Limit in place of the RCL that the module holds, above 0 to 1 kg/m³: a practical limit, another edition.",
    volume: "Volume of the room.",
  },
};

export const MinimumRoomVolumeInputShape: Shape = {
  type: "MinimumRoomVolumeInput",
  fields: {
    refrigerant: { either: [byDesignation, RoomRefrigerantShape] },
    "concentrationLimit?": "density",
    charge: "mass",
  },
  about: {
    refrigerant: "The refrigerant.",
    concentrationLimit:
      "Limit in place of the RCL that the module holds, above 0 to 1 kg/m³: a practical limit, another edition.",
    charge: "Total charge, factory charge and what was added.",
  },
};

export const ConcentrationAnswerOfVolumeShape: Shape = {
  type: "ConcentrationAnswerOfVolume",
  fields: { value: "volume", basis: SafetyLimitShape, cautions: { list: RoomCautionShape } },
  says: "A charge or a volume by concentration.",
  about: {
    value: "The largest charge, or the smallest volume.",
    basis: "The limit that was used, with its source.",
    cautions: "What can hurt someone, and what overrides the figure.",
  },
};

export const MassConcentrationInputShape: Shape = {
  type: "MassConcentrationInput",
  fields: {
    volumeFraction: "ratio",
    molarMass: "number",
    temperature: "temperature",
    atmosphere: "absolutePressure",
  },
  about: {
    volumeFraction: "Share of the volume.",
    molarMass: "Molar mass, g/mol, above 0.",
    temperature: "Temperature of the air.",
    atmosphere: "Pressure of the air.",
  },
};

export const MinimumFloorAreaInputShape: Shape = {
  type: "MinimumFloorAreaInput",
  fields: {
    refrigerant: { either: [byDesignation, RoomRefrigerantShape] },
    "lowerFlammabilityLimit?": "density",
    "place?": { words: ["wall", "ceiling", "floor", "window"] },
    "installationHeight?": "length",
    "releaseOffset?": "length",
    "edition?": { words: ["2018", "before-2018"] },
    charge: "mass",
  },
  about: {
    refrigerant: "A flammable refrigerant, class A2L, A2 or A3.",
    lowerFlammabilityLimit:
      "LFL in place of the first figure that the module holds, above 0 to 1 kg/m³.",
    place: "Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m.",
    installationHeight:
      "Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m.",
    releaseOffset:
      "From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out.",
    edition: "2018 (edition 6) has the cap and the 6 m³·LFL for A2L; before-2018 has neither.",
    charge: "Total charge, factory charge and what was added.",
  },
};

export const MinimumFloorAreaShape: Shape = {
  type: "MinimumFloorArea",
  fields: {
    unrestricted: "mass",
    maximum: "mass",
    releaseHeight: "length",
    lowerFlammabilityLimit: "density",
    assumptions: { list: ChargeLimitStatementShape },
    cautions: { list: RoomCautionShape },
    sources: { list: CitationShape },
    area: "area",
    byFormula: "area",
  },
  says: "The smallest room for a charge.",
  about: {
    unrestricted: "The charge up to which the room does not matter.",
    maximum: "m2: the most that the rule allows at all.",
    releaseHeight: "h0, the release height that was used.",
    lowerFlammabilityLimit: "The lower flammability limit that was used.",
    assumptions: "What was assumed.",
    cautions: "What can hurt someone, and what overrides the figure.",
    sources: "Where the rule and the figures stand.",
    area: "The smallest floor area; 0 where the room does not matter.",
    byFormula:
      "A_min by the formula alone, as manuals tabulate it, also where the room does not matter.",
  },
};

export const RoomChargeLimitInputShape: Shape = {
  type: "RoomChargeLimitInput",
  fields: {
    refrigerant: { either: [byDesignation, RoomRefrigerantShape] },
    "lowerFlammabilityLimit?": "density",
    "place?": { words: ["wall", "ceiling", "floor", "window"] },
    "installationHeight?": "length",
    "releaseOffset?": "length",
    "edition?": { words: ["2018", "before-2018"] },
    floorArea: "area",
  },
  about: {
    refrigerant: "A flammable refrigerant, class A2L, A2 or A3.",
    lowerFlammabilityLimit:
      "LFL in place of the first figure that the module holds, above 0 to 1 kg/m³.",
    place: "Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m.",
    installationHeight:
      "Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m.",
    releaseOffset:
      "From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out.",
    edition: "2018 (edition 6) has the cap and the 6 m³·LFL for A2L; before-2018 has neither.",
    floorArea: "Floor area of the room.",
  },
};

export const RoomTableRowShape: Shape = {
  type: "RoomTableRow",
  fields: { area: "area", charge: "mass" },
  says: "A row of a manual's table: a floor area and the charge that goes with it.",
  about: {
    area: "Floor area, rising from row to row.",
    charge: "Charge, not falling from row to row.",
  },
};

export const ChargeFromRoomTableInputShape: Shape = {
  type: "ChargeFromRoomTableInput",
  fields: { rows: { list: RoomTableRowShape }, floorArea: "area" },
  about: { rows: "The manual's rows.", floorArea: "Floor area of the room." },
};

export const AreaFromRoomTableInputShape: Shape = {
  type: "AreaFromRoomTableInput",
  fields: { rows: { list: RoomTableRowShape }, charge: "mass" },
  about: { rows: "The manual's rows.", charge: "Total charge." },
};
