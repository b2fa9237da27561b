// Which shapes have the types of charge-limit?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import { byDesignation } from "../named.ts";
import {
  InstrumentOfAreaShape,
  InstrumentOfMassShape,
  InstrumentOfVolumeShape,
} from "./assessment.shapes.ts";
import {
  CarbonDioxideEquivalentInputRefrigerantShape,
  CitationShape,
  RefrigerantComponentShape,
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

export const ChargeLimitWithinLimitValuesShape: Shape = {
  type: "ChargeLimitWithinLimitValues",
  fields: { charge: "mass", limit: "mass" },
};

export const ChargeLimitTooCloseToCallValuesShape: Shape = {
  type: "ChargeLimitTooCloseToCallValues",
  fields: { charge: "mass", limit: "mass", uncertainty: "mass" },
};

export const ChargeLimitAboveReferenceHeightValuesShape: Shape = {
  type: "ChargeLimitAboveReferenceHeightValues",
  fields: { height: "length" },
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

export const ChargeLimitUseOtherClausesValuesShape: Shape = {
  type: "ChargeLimitUseOtherClausesValues",
  fields: { maximum: "mass" },
};

export const ChargeLimitStatementShape: Shape = {
  type: "ChargeLimitStatement",
  statements: {
    "charge-limit.shares-make-100": { fields: {} },
    "charge-limit.other-clauses": { fields: {} },
    "charge-limit.within-limit": ChargeLimitWithinLimitValuesShape,
    "charge-limit.above-limit": ChargeLimitWithinLimitValuesShape,
    "charge-limit.too-close-to-call": ChargeLimitTooCloseToCallValuesShape,
    "charge-limit.unventilated": { fields: {} },
    "charge-limit.above-reference-height": ChargeLimitAboveReferenceHeightValuesShape,
    "charge-limit.flammability-limit-used": ChargeLimitFlammabilityLimitUsedValuesShape,
    "charge-limit.concentration-limit-used": ChargeLimitFlammabilityLimitUsedValuesShape,
    "charge-limit.exact-charge": { fields: {} },
    "charge-limit.exact-size": { fields: {} },
    "charge-limit.flammability-too": { fields: {} },
    "charge-limit.add-no-refrigerant": { fields: {} },
    "charge-limit.find-larger-room": { fields: {} },
    "charge-limit.use-other-clauses": ChargeLimitUseOtherClausesValuesShape,
    "charge-limit.weigh-or-measure-better": { fields: {} },
  },
  with: { "text?": "text" },
};

export const ConcentrationAssessmentCautionsItemShape: Shape = {
  type: "ConcentrationAssessmentCautionsItem",
  statements: {
    "safety.others-govern": { fields: {} },
    "safety.dry-nitrogen-only": { fields: {} },
    "safety.regulator-and-relief": { fields: {} },
    "safety.raise-in-stages": { fields: {} },
    "safety.lowest-rating": { fields: {} },
    "safety.nitrogen-suffocates": { fields: {} },
    "safety.open-under-pressure": { fields: {} },
    "safety.refrigerant-contact": { fields: {} },
    "safety.flammable-refrigerant": { fields: {} },
    "safety.toxic-refrigerant": { fields: {} },
    "safety.refrigerant-suffocates": { fields: {} },
    "safety.charge-tight-system": { fields: {} },
    "safety.refrigerant-air-mixture": { fields: {} },
    "safety.compressor-in-vacuum": { fields: {} },
    "safety.line-voltage": { fields: {} },
    "safety.meter-category": { fields: {} },
    "safety.running-unit": { fields: {} },
    "safety.work-at-height": { fields: {} },
    "charge-limit.shares-make-100": { fields: {} },
    "charge-limit.other-clauses": { fields: {} },
    "charge-limit.within-limit": ChargeLimitWithinLimitValuesShape,
    "charge-limit.above-limit": ChargeLimitWithinLimitValuesShape,
    "charge-limit.too-close-to-call": ChargeLimitTooCloseToCallValuesShape,
    "charge-limit.unventilated": { fields: {} },
    "charge-limit.above-reference-height": ChargeLimitAboveReferenceHeightValuesShape,
    "charge-limit.flammability-limit-used": ChargeLimitFlammabilityLimitUsedValuesShape,
    "charge-limit.concentration-limit-used": ChargeLimitFlammabilityLimitUsedValuesShape,
    "charge-limit.exact-charge": { fields: {} },
    "charge-limit.exact-size": { fields: {} },
    "charge-limit.flammability-too": { fields: {} },
    "charge-limit.add-no-refrigerant": { fields: {} },
    "charge-limit.find-larger-room": { fields: {} },
    "charge-limit.use-other-clauses": ChargeLimitUseOtherClausesValuesShape,
    "charge-limit.weigh-or-measure-better": { fields: {} },
  },
  with: { "text?": "text", "kind?": { words: ["finding", "danger", "governing"] } },
};

export const RoomCautionShape: Shape = {
  type: "RoomCaution",
  statements: {
    "safety.others-govern": { fields: {} },
    "safety.dry-nitrogen-only": { fields: {} },
    "safety.regulator-and-relief": { fields: {} },
    "safety.raise-in-stages": { fields: {} },
    "safety.lowest-rating": { fields: {} },
    "safety.nitrogen-suffocates": { fields: {} },
    "safety.open-under-pressure": { fields: {} },
    "safety.refrigerant-contact": { fields: {} },
    "safety.flammable-refrigerant": { fields: {} },
    "safety.toxic-refrigerant": { fields: {} },
    "safety.refrigerant-suffocates": { fields: {} },
    "safety.charge-tight-system": { fields: {} },
    "safety.refrigerant-air-mixture": { fields: {} },
    "safety.compressor-in-vacuum": { fields: {} },
    "safety.line-voltage": { fields: {} },
    "safety.meter-category": { fields: {} },
    "safety.running-unit": { fields: {} },
    "safety.work-at-height": { fields: {} },
    "charge-limit.shares-make-100": { fields: {} },
    "charge-limit.other-clauses": { fields: {} },
    "charge-limit.within-limit": ChargeLimitWithinLimitValuesShape,
    "charge-limit.above-limit": ChargeLimitWithinLimitValuesShape,
    "charge-limit.too-close-to-call": ChargeLimitTooCloseToCallValuesShape,
    "charge-limit.unventilated": { fields: {} },
    "charge-limit.above-reference-height": ChargeLimitAboveReferenceHeightValuesShape,
    "charge-limit.flammability-limit-used": ChargeLimitFlammabilityLimitUsedValuesShape,
    "charge-limit.concentration-limit-used": ChargeLimitFlammabilityLimitUsedValuesShape,
    "charge-limit.exact-charge": { fields: {} },
    "charge-limit.exact-size": { fields: {} },
    "charge-limit.flammability-too": { fields: {} },
    "charge-limit.add-no-refrigerant": { fields: {} },
    "charge-limit.find-larger-room": { fields: {} },
    "charge-limit.use-other-clauses": ChargeLimitUseOtherClausesValuesShape,
    "charge-limit.weigh-or-measure-better": { fields: {} },
  },
  with: { "text?": "text", "kind?": { words: ["finding", "danger", "governing"] } },
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
