// Which shapes have the types of charge-limit?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import { byDesignation } from "../named.ts";
import {
  InstrumentOfAreaShape,
  InstrumentOfLengthShape,
  InstrumentOfMassShape,
  InstrumentOfVolumeShape,
  VerbatimShape,
} from "./assessment.shapes.ts";
import {
  CitationShape,
  RefrigerantComponentShape,
  WarmingBasisShape,
} from "./refrigerants.shapes.ts";

export const FlammableClassShape: Shape = {
  type: "FlammableClass",
  words: ["A2L", "A2", "A3", "B2L", "B2", "B3"],
};

export const ChargeThresholdsInputShape: Shape = {
  type: "ChargeThresholdsInput",
  fields: {
    lowerFlammabilityLimit: "density",
    safetyClass: FlammableClassShape,
    "edition?": {
      words: [
        "en-378-1",
        "iec-60335-2-40-2013",
        "iec-60335-2-40-2018",
        "iec-60335-2-40-2022",
        "ul-60335-2-40-2019",
        "ul-60335-2-40-2022",
      ],
    },
  },
  about: {
    lowerFlammabilityLimit: "LFL of the refrigerant.",
    safetyClass: "Safety class of the refrigerant.",
    edition: "Edition of the rule.",
  },
};

export const ChargeThresholdsShape: Shape = {
  type: "ChargeThresholds",
  fields: {
    m1: "mass",
    m2: "mass",
    m3: "mass",
    standing: { words: ["from-memory", "published"] },
    citation: CitationShape,
  },
  says: "The charges at which the rule changes.",
  about: {
    m1: "Up to here the room does not matter.",
    m2: "The most by the rule of the floor area, for one indoor unit.",
    m3: "The most for a system at all: above it the edition has no rule.",
    standing: "Whether the factors were read in the source or are from memory.",
    citation: "Where they stand.",
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
    safetyClass: "ASHRAE 34 safety class: A lower, B higher toxicity; 1, 2L, 2, 3 by flammability.",
  },
};

export const LimitStandingShape: Shape = {
  type: "LimitStanding",
  words: ["published", "secondary", "from-memory", "stated"],
};

export const SafetyLimitShape: Shape = {
  type: "SafetyLimit",
  fields: { value: "density", "citation?": CitationShape, standing: LimitStandingShape },
  says: "A limit with its source: editions differ.",
  about: {
    value: "The limit.",
    citation: "Where it stands; nowhere for a limit that the caller stated.",
    standing:
      "Whether it was read there, in another text that names it, remembered, or stated by the caller.",
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
      "Lower flammability limits, first the one that is used; empty for what does not burn.",
    concentrationLimits: "Concentration limits (RCL, practical limit), first the one that is used.",
    concentrationLimitByVolume: "The RCL as a share of the volume.",
  },
};

export const VentilationOpeningInputShape: Shape = {
  type: "VentilationOpeningInput",
  fields: {
    refrigerant: { either: [byDesignation, RoomRefrigerantShape] },
    "lowerFlammabilityLimit?": "density",
    "place?": { words: ["wall", "ceiling", "floor", "window"] },
    "installationHeight?": "length",
    "releaseOffset?": "length",
    "edition?": {
      words: [
        "en-378-1",
        "iec-60335-2-40-2013",
        "iec-60335-2-40-2018",
        "iec-60335-2-40-2022",
        "ul-60335-2-40-2019",
        "ul-60335-2-40-2022",
      ],
    },
    "smallRoomCap?": { words: ["none", "strictest", "release-height", "room-height"] },
    "altitude?": "length",
    floorArea: "area",
    charge: "mass",
    "molarMass?": "number",
  },
  about: {
    refrigerant: "A flammable refrigerant, class A2L, A2 or A3.",
    lowerFlammabilityLimit:
      "LFL in place of the first figure that the module holds, above 0 to 1 kg/m³. Needed where none is held.",
    place: "Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m.",
    installationHeight:
      "Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m.",
    releaseOffset:
      "From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out.",
    edition: "The edition that applies; IEC 60335-2-40:2018 when left out, and the answer says so.",
    smallRoomCap:
      "The cap that the unit's manual prints for small rooms; the strictest when left out.",
    altitude:
      "Altitude of the site, −500 m to 3200 m: thin air needs a larger room. At most 600 m when left out.",
    floorArea: "Floor area of the room with the unit.",
    charge: "Total charge, factory charge and what was added.",
    molarMass: "Molar mass, g/mol.",
  },
};

export const VentilationOpeningShape: Shape = {
  type: "VentilationOpening",
  fields: {
    lower: "area",
    upper: "area",
    lowerEdge: "length",
    lowerHeight: "length",
    upperEdge: "length",
    withoutOpening: "mass",
  },
  says: "The two permanent openings between a room and the next.",
  about: {
    lower: "Least area of the lower opening; nothing above 300 mm over the floor counts.",
    upper: "Least area of the upper opening: half of it.",
    lowerEdge: "Largest height of the lower opening's bottom edge above the floor.",
    lowerHeight: "Least height of the lower opening itself.",
    upperEdge: "Least height of the upper opening's bottom edge above the floor.",
    withoutOpening: "The charge that the room could hold without openings, by formula.",
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

export const ChargeLimitNoValueByBasisValuesShape: Shape = {
  type: "ChargeLimitNoValueByBasisValues",
  fields: { basis: VerbatimShape },
};

export const ChargeLimitWithinLimitValuesShape: Shape = {
  type: "ChargeLimitWithinLimitValues",
  fields: { charge: "mass", limit: "mass" },
};

export const ChargeLimitTooCloseToCallValuesShape: Shape = {
  type: "ChargeLimitTooCloseToCallValues",
  fields: { charge: "mass", limit: "mass", uncertainty: "mass" },
};

export const ChargeLimitProtectionNotStatedValuesShape: Shape = {
  type: "ChargeLimitProtectionNotStatedValues",
  fields: {
    missing: {
      list: {
        words: [
          "charge-limit.missing.openings-placed",
          "charge-limit.missing.enhanced-tightness",
          "charge-limit.missing.detector",
        ],
      },
    },
  },
};

export const ChargeLimitEveryRoomPassesValuesShape: Shape = {
  type: "ChargeLimitEveryRoomPassesValues",
  fields: { count: "number" },
};

export const ChargeLimitRoomFailsValuesShape: Shape = {
  type: "ChargeLimitRoomFailsValues",
  fields: { room: VerbatimShape },
};

export const ChargeLimitRoomInconclusiveValuesShape: Shape = {
  type: "ChargeLimitRoomInconclusiveValues",
  fields: { room: VerbatimShape },
};

export const ChargeLimitClearOfOpeningsValuesShape: Shape = {
  type: "ChargeLimitClearOfOpeningsValues",
  fields: { distance: "length", required: "length" },
};

export const ChargeLimitTooNearAnOpeningValuesShape: Shape = {
  type: "ChargeLimitTooNearAnOpeningValues",
  fields: { distance: "length", required: "length" },
};

export const ChargeLimitDistanceTooCloseToCallValuesShape: Shape = {
  type: "ChargeLimitDistanceTooCloseToCallValues",
  fields: { distance: "length", required: "length" },
};

export const ChargeLimitEditionUsedValuesShape: Shape = {
  type: "ChargeLimitEditionUsedValues",
  fields: {
    edition: {
      words: [
        "charge-limit.edition.en-378-1",
        "charge-limit.edition.iec-60335-2-40-2013",
        "charge-limit.edition.iec-60335-2-40-2018",
        "charge-limit.edition.iec-60335-2-40-2022",
        "charge-limit.edition.ul-60335-2-40-2019",
        "charge-limit.edition.ul-60335-2-40-2022",
      ],
    },
  },
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
        "charge-limit.standing.secondary",
      ],
    },
  },
};

export const ChargeLimitFromMemoryValuesShape: Shape = {
  type: "ChargeLimitFromMemoryValues",
  fields: {
    rules: {
      list: {
        words: [
          "charge-limit.rule.enhanced-tightness",
          "charge-limit.rule.thresholds",
          "charge-limit.rule.flammability-limit",
          "charge-limit.rule.concentration-limit",
          "charge-limit.rule.altitude-factor",
          "charge-limit.rule.openings",
          "charge-limit.rule.circulation",
          "charge-limit.rule.dispersal",
          "charge-limit.rule.ventilation-limits",
        ],
      },
    },
  },
};

export const ChargeLimitFindLargerRoomValuesShape: Shape = {
  type: "ChargeLimitFindLargerRoomValues",
  fields: { area: "area" },
};

export const ChargeLimitFindLargerVolumeValuesShape: Shape = {
  type: "ChargeLimitFindLargerVolumeValues",
  fields: { volume: "volume" },
};

export const ChargeLimitUseOtherClausesValuesShape: Shape = {
  type: "ChargeLimitUseOtherClausesValues",
  fields: { maximum: "mass" },
};

export const ChargeLimitDivideTheSystemValuesShape: Shape = {
  type: "ChargeLimitDivideTheSystemValues",
  fields: { maximum: "mass" },
};

export const ChargeLimitStateProtectionValuesShape: Shape = {
  type: "ChargeLimitStateProtectionValues",
  fields: {
    missing: {
      list: {
        words: [
          "charge-limit.missing.openings-placed",
          "charge-limit.missing.enhanced-tightness",
          "charge-limit.missing.detector",
        ],
      },
    },
  },
};

export const ChargeLimitActOnRoomValuesShape: Shape = {
  type: "ChargeLimitActOnRoomValues",
  fields: { room: VerbatimShape },
};

export const ChargeLimitMoveOutdoorUnitValuesShape: Shape = {
  type: "ChargeLimitMoveOutdoorUnitValues",
  fields: { required: "length" },
};

export const ChargeLimitStatementShape: Shape = {
  type: "ChargeLimitStatement",
  statements: {
    "charge-limit.shares-make-100": { fields: {} },
    "charge-limit.other-clauses": { fields: {} },
    "charge-limit.no-value-by-basis": ChargeLimitNoValueByBasisValuesShape,
    "charge-limit.others-by-concentration": { fields: {} },
    "charge-limit.give-its-own-limit": { fields: {} },
    "charge-limit.within-limit": ChargeLimitWithinLimitValuesShape,
    "charge-limit.above-limit": ChargeLimitWithinLimitValuesShape,
    "charge-limit.too-close-to-call": ChargeLimitTooCloseToCallValuesShape,
    "charge-limit.room-does-not-matter": ChargeLimitWithinLimitValuesShape,
    "charge-limit.beyond-m2": ChargeLimitWithinLimitValuesShape,
    "charge-limit.beyond-m3": ChargeLimitWithinLimitValuesShape,
    "charge-limit.protection-not-stated": ChargeLimitProtectionNotStatedValuesShape,
    "charge-limit.every-room-passes": ChargeLimitEveryRoomPassesValuesShape,
    "charge-limit.room-fails": ChargeLimitRoomFailsValuesShape,
    "charge-limit.room-inconclusive": ChargeLimitRoomInconclusiveValuesShape,
    "charge-limit.clear-of-openings": ChargeLimitClearOfOpeningsValuesShape,
    "charge-limit.too-near-an-opening": ChargeLimitTooNearAnOpeningValuesShape,
    "charge-limit.distance-too-close-to-call": ChargeLimitDistanceTooCloseToCallValuesShape,
    "charge-limit.protection-zone-not-stated": { fields: {} },
    "charge-limit.distances-not-stated": { fields: {} },
    "charge-limit.closed-in-outdoors": { fields: {} },
    "charge-limit.one-closed-room": { fields: {} },
    "charge-limit.edition-used": ChargeLimitEditionUsedValuesShape,
    "charge-limit.low-altitude": { fields: {} },
    "charge-limit.above-reference-height": ChargeLimitAboveReferenceHeightValuesShape,
    "charge-limit.flammability-limit-used": ChargeLimitFlammabilityLimitUsedValuesShape,
    "charge-limit.concentration-limit-used": ChargeLimitFlammabilityLimitUsedValuesShape,
    "charge-limit.exact-charge": { fields: {} },
    "charge-limit.exact-size": { fields: {} },
    "charge-limit.exact-distance": { fields: {} },
    "charge-limit.flammability-too": { fields: {} },
    "charge-limit.from-memory": ChargeLimitFromMemoryValuesShape,
    "charge-limit.refrigerant-in-water": { fields: {} },
    "charge-limit.add-no-refrigerant": { fields: {} },
    "charge-limit.find-larger-room": ChargeLimitFindLargerRoomValuesShape,
    "charge-limit.find-larger-volume": ChargeLimitFindLargerVolumeValuesShape,
    "charge-limit.use-other-clauses": ChargeLimitUseOtherClausesValuesShape,
    "charge-limit.divide-the-system": ChargeLimitDivideTheSystemValuesShape,
    "charge-limit.enlarge-openings": { fields: {} },
    "charge-limit.raise-airflow": { fields: {} },
    "charge-limit.weigh-or-measure-better": { fields: {} },
    "charge-limit.state-protection": ChargeLimitStateProtectionValuesShape,
    "charge-limit.act-on-room": ChargeLimitActOnRoomValuesShape,
    "charge-limit.move-outdoor-unit": ChargeLimitMoveOutdoorUnitValuesShape,
    "charge-limit.state-protection-zone": { fields: {} },
    "charge-limit.measure-distances": { fields: {} },
    "charge-limit.move-to-open-air": { fields: {} },
  },
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
    "charge-limit.no-value-by-basis": ChargeLimitNoValueByBasisValuesShape,
    "charge-limit.others-by-concentration": { fields: {} },
    "charge-limit.give-its-own-limit": { fields: {} },
    "charge-limit.within-limit": ChargeLimitWithinLimitValuesShape,
    "charge-limit.above-limit": ChargeLimitWithinLimitValuesShape,
    "charge-limit.too-close-to-call": ChargeLimitTooCloseToCallValuesShape,
    "charge-limit.room-does-not-matter": ChargeLimitWithinLimitValuesShape,
    "charge-limit.beyond-m2": ChargeLimitWithinLimitValuesShape,
    "charge-limit.beyond-m3": ChargeLimitWithinLimitValuesShape,
    "charge-limit.protection-not-stated": ChargeLimitProtectionNotStatedValuesShape,
    "charge-limit.every-room-passes": ChargeLimitEveryRoomPassesValuesShape,
    "charge-limit.room-fails": ChargeLimitRoomFailsValuesShape,
    "charge-limit.room-inconclusive": ChargeLimitRoomInconclusiveValuesShape,
    "charge-limit.clear-of-openings": ChargeLimitClearOfOpeningsValuesShape,
    "charge-limit.too-near-an-opening": ChargeLimitTooNearAnOpeningValuesShape,
    "charge-limit.distance-too-close-to-call": ChargeLimitDistanceTooCloseToCallValuesShape,
    "charge-limit.protection-zone-not-stated": { fields: {} },
    "charge-limit.distances-not-stated": { fields: {} },
    "charge-limit.closed-in-outdoors": { fields: {} },
    "charge-limit.one-closed-room": { fields: {} },
    "charge-limit.edition-used": ChargeLimitEditionUsedValuesShape,
    "charge-limit.low-altitude": { fields: {} },
    "charge-limit.above-reference-height": ChargeLimitAboveReferenceHeightValuesShape,
    "charge-limit.flammability-limit-used": ChargeLimitFlammabilityLimitUsedValuesShape,
    "charge-limit.concentration-limit-used": ChargeLimitFlammabilityLimitUsedValuesShape,
    "charge-limit.exact-charge": { fields: {} },
    "charge-limit.exact-size": { fields: {} },
    "charge-limit.exact-distance": { fields: {} },
    "charge-limit.flammability-too": { fields: {} },
    "charge-limit.from-memory": ChargeLimitFromMemoryValuesShape,
    "charge-limit.refrigerant-in-water": { fields: {} },
    "charge-limit.add-no-refrigerant": { fields: {} },
    "charge-limit.find-larger-room": ChargeLimitFindLargerRoomValuesShape,
    "charge-limit.find-larger-volume": ChargeLimitFindLargerVolumeValuesShape,
    "charge-limit.use-other-clauses": ChargeLimitUseOtherClausesValuesShape,
    "charge-limit.divide-the-system": ChargeLimitDivideTheSystemValuesShape,
    "charge-limit.enlarge-openings": { fields: {} },
    "charge-limit.raise-airflow": { fields: {} },
    "charge-limit.weigh-or-measure-better": { fields: {} },
    "charge-limit.state-protection": ChargeLimitStateProtectionValuesShape,
    "charge-limit.act-on-room": ChargeLimitActOnRoomValuesShape,
    "charge-limit.move-outdoor-unit": ChargeLimitMoveOutdoorUnitValuesShape,
    "charge-limit.state-protection-zone": { fields: {} },
    "charge-limit.measure-distances": { fields: {} },
    "charge-limit.move-to-open-air": { fields: {} },
  },
  with: { "kind?": { words: ["finding", "danger", "governing"] } },
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
    "charge-limit.no-value-by-basis": ChargeLimitNoValueByBasisValuesShape,
    "charge-limit.others-by-concentration": { fields: {} },
    "charge-limit.give-its-own-limit": { fields: {} },
    "charge-limit.within-limit": ChargeLimitWithinLimitValuesShape,
    "charge-limit.above-limit": ChargeLimitWithinLimitValuesShape,
    "charge-limit.too-close-to-call": ChargeLimitTooCloseToCallValuesShape,
    "charge-limit.room-does-not-matter": ChargeLimitWithinLimitValuesShape,
    "charge-limit.beyond-m2": ChargeLimitWithinLimitValuesShape,
    "charge-limit.beyond-m3": ChargeLimitWithinLimitValuesShape,
    "charge-limit.protection-not-stated": ChargeLimitProtectionNotStatedValuesShape,
    "charge-limit.every-room-passes": ChargeLimitEveryRoomPassesValuesShape,
    "charge-limit.room-fails": ChargeLimitRoomFailsValuesShape,
    "charge-limit.room-inconclusive": ChargeLimitRoomInconclusiveValuesShape,
    "charge-limit.clear-of-openings": ChargeLimitClearOfOpeningsValuesShape,
    "charge-limit.too-near-an-opening": ChargeLimitTooNearAnOpeningValuesShape,
    "charge-limit.distance-too-close-to-call": ChargeLimitDistanceTooCloseToCallValuesShape,
    "charge-limit.protection-zone-not-stated": { fields: {} },
    "charge-limit.distances-not-stated": { fields: {} },
    "charge-limit.closed-in-outdoors": { fields: {} },
    "charge-limit.one-closed-room": { fields: {} },
    "charge-limit.edition-used": ChargeLimitEditionUsedValuesShape,
    "charge-limit.low-altitude": { fields: {} },
    "charge-limit.above-reference-height": ChargeLimitAboveReferenceHeightValuesShape,
    "charge-limit.flammability-limit-used": ChargeLimitFlammabilityLimitUsedValuesShape,
    "charge-limit.concentration-limit-used": ChargeLimitFlammabilityLimitUsedValuesShape,
    "charge-limit.exact-charge": { fields: {} },
    "charge-limit.exact-size": { fields: {} },
    "charge-limit.exact-distance": { fields: {} },
    "charge-limit.flammability-too": { fields: {} },
    "charge-limit.from-memory": ChargeLimitFromMemoryValuesShape,
    "charge-limit.refrigerant-in-water": { fields: {} },
    "charge-limit.add-no-refrigerant": { fields: {} },
    "charge-limit.find-larger-room": ChargeLimitFindLargerRoomValuesShape,
    "charge-limit.find-larger-volume": ChargeLimitFindLargerVolumeValuesShape,
    "charge-limit.use-other-clauses": ChargeLimitUseOtherClausesValuesShape,
    "charge-limit.divide-the-system": ChargeLimitDivideTheSystemValuesShape,
    "charge-limit.enlarge-openings": { fields: {} },
    "charge-limit.raise-airflow": { fields: {} },
    "charge-limit.weigh-or-measure-better": { fields: {} },
    "charge-limit.state-protection": ChargeLimitStateProtectionValuesShape,
    "charge-limit.act-on-room": ChargeLimitActOnRoomValuesShape,
    "charge-limit.move-outdoor-unit": ChargeLimitMoveOutdoorUnitValuesShape,
    "charge-limit.state-protection-zone": { fields: {} },
    "charge-limit.measure-distances": { fields: {} },
    "charge-limit.move-to-open-air": { fields: {} },
  },
  with: { "kind?": { words: ["finding", "danger", "governing"] } },
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

export const OutdoorUnitInputShape: Shape = {
  type: "OutdoorUnitInput",
  fields: {
    refrigerant: { either: [byDesignation, RoomRefrigerantShape] },
    surroundings: { words: ["closed-in", "open-air"] },
    "protectionZone?": "length",
    "distances?": { list: "length" },
    "tape?": InstrumentOfLengthShape,
    "confidence?": "number",
  },
  says: "A unit whose refrigerant stays outdoors, such as a monobloc heat pump: only water enters the building.",
  about: {
    refrigerant: "The refrigerant: flammable, or the question does not arise.",
    surroundings:
      "Where it stands: in open air, or closed in by walls on three sides or more, in a pit or below ground.",
    protectionZone: "Radius of the protection zone in the unit's manual, above 0.",
    distances:
      "Distances from the unit to every door, window, air intake, drain, cellar opening and ignition source near it, 0 or more; an empty list where there is none.",
    tape: "What is known of the tape; counted as exact when left out.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
  },
};

export const OutdoorUnitAssessmentShape: Shape = {
  type: "OutdoorUnitAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["too-near-an-opening", "closed-in"] },
    reasons: { list: ChargeLimitStatementShape },
    assumptions: { list: ChargeLimitStatementShape },
    cautions: { list: ConcentrationAssessmentCautionsItemShape },
    "actions?": { list: ChargeLimitStatementShape },
    sources: { list: CitationShape },
  },
  says: "The verdict on a unit outdoors.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
  },
};

export const ConnectedRoomsShape: Shape = {
  type: "ConnectedRooms",
  fields: {
    kind: { words: ["connected-rooms"] },
    adjoiningFloorArea: "area",
    lowerOpening: "area",
    upperOpening: "area",
    "placedAsRequired?": "flag",
    "molarMass?": "number",
  },
  says: "Two permanent openings to the next room, for natural ventilation.",
  about: {
    adjoiningFloorArea: "Floor area of the adjoining room, above 0.",
    lowerOpening:
      "Area of the lower opening that counts: what lies within 300 mm of the floor, half of it below 200 mm.",
    upperOpening: "Area of the upper opening.",
    placedAsRequired:
      "Whether both are permanent, the lower one begins at most 100 mm above the floor and is 20 mm high or more, and the upper one begins 1.5 m above the floor or higher. A pass needs true.",
    molarMass: "Molar mass in g/mol, above 29; needed where the module holds none.",
  },
};

export const EnhancedTightnessShape: Shape = {
  type: "EnhancedTightness",
  fields: {
    kind: { words: ["enhanced-tightness"] },
    "countedFloorArea?": "area",
    ceilingHeight: "length",
    measure: { words: ["none", "alarm", "ventilation", "shut-off"] },
    "declared?": "flag",
  },
  says: "A system that its maker declares as of enhanced tightness.",
  about: {
    countedFloorArea:
      "Floor area that counts, above 0, where it is not the room's own: by the 2022 text that of all rooms served, by the 2018 text that of the smallest; rooms that are joined by permanent openings count together.",
    ceilingHeight: "Ceiling height, above 0; what is above 2.2 m does not count.",
    measure: "Alarm, ventilation or shut-off valve on detection, or none of them.",
    declared: "Whether the maker declares it. A pass needs true.",
  },
};

export const CirculationShape: Shape = {
  type: "Circulation",
  fields: {
    kind: { words: ["circulation"] },
    totalFloorArea: "area",
    airflow: "volumeFlow",
    "detector?": "flag",
  },
  says: "A fan that circulates the air of a larger space as soon as a detector trips.",
  about: {
    totalFloorArea: "Floor area of the whole space that the fan serves, above 0.",
    airflow: "Airflow while it circulates, above 0.",
    detector:
      "Whether a detector of the unit trips at 25 % of the LFL or less, acts within 30 s and keeps the fan on for 5 minutes or more. A pass needs true.",
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
    "edition?": {
      words: [
        "en-378-1",
        "iec-60335-2-40-2013",
        "iec-60335-2-40-2018",
        "iec-60335-2-40-2022",
        "ul-60335-2-40-2019",
        "ul-60335-2-40-2022",
      ],
    },
    "smallRoomCap?": { words: ["none", "strictest", "release-height", "room-height"] },
    "altitude?": "length",
    charge: "mass",
    floorArea: "area",
    "protection?": {
      by: "kind",
      cases: {
        "connected-rooms": ConnectedRoomsShape,
        "enhanced-tightness": EnhancedTightnessShape,
        circulation: CirculationShape,
      },
    },
    "instruments?": RoomInstrumentsOfAreaShape,
    "confidence?": "number",
  },
  says: "A unit, its charge and its room.",
  about: {
    refrigerant: "A flammable refrigerant, class A2L, A2 or A3.",
    lowerFlammabilityLimit:
      "LFL in place of the first figure that the module holds, above 0 to 1 kg/m³. Needed where none is held.",
    place: "Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m.",
    installationHeight:
      "Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m.",
    releaseOffset:
      "From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out.",
    edition: "The edition that applies; IEC 60335-2-40:2018 when left out, and the answer says so.",
    smallRoomCap:
      "The cap that the unit's manual prints for small rooms; the strictest when left out.",
    altitude:
      "Altitude of the site, −500 m to 3200 m: thin air needs a larger room. At most 600 m when left out.",
    charge: "Total charge of the whole system, factory charge and what was added, above 0.",
    floorArea: "Floor area of the room, above 0.",
    protection: "What lets the room hold more than its own floor area.",
    instruments: "What is known of scale and tape; counted as exact when left out.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
  },
};

export const RoomEditionShape: Shape = {
  type: "RoomEdition",
  words: [
    "iec-60335-2-40-2013",
    "iec-60335-2-40-2018",
    "iec-60335-2-40-2022",
    "ul-60335-2-40-2019",
    "ul-60335-2-40-2022",
    "en-378-1",
  ],
};

export const ProtectedRoomLimitShape: Shape = {
  type: "ProtectedRoomLimit",
  fields: {
    limit: "mass",
    maximum: "mass",
    assumptions: { list: ChargeLimitStatementShape },
    cautions: { list: RoomCautionShape },
    sources: { list: CitationShape },
    edition: RoomEditionShape,
    byFormula: "mass",
    unrestricted: "mass",
    systemMaximum: "mass",
    releaseHeight: "length",
    lowerFlammabilityLimit: "density",
    altitudeFactor: "number",
    decidedBy: {
      words: [
        "openings",
        "unrestricted",
        "m2",
        "floor-area",
        "release-height-cap",
        "room-height-cap",
        "joined-area",
        "tightness",
        "circulated-area",
        "airflow",
      ],
    },
  },
  says: "The limit of a room with its protection.",
  about: {
    limit: "The largest charge allowed in the room.",
    maximum: "m2: the most by the rule of the floor area.",
    assumptions: "What was assumed.",
    cautions: "What can hurt someone, what is from memory, and what overrides the figure.",
    sources: "Where the rule and the figures stand.",
    edition: "The edition that was used.",
    byFormula:
      "m_max by the formula alone, as manuals tabulate it, also where the room does not matter.",
    unrestricted: "m1: the charge up to which the room does not matter.",
    systemMaximum: "m3: the most for a system at all.",
    releaseHeight: "h0, the release height that was used.",
    lowerFlammabilityLimit: "The lower flammability limit that was used.",
    altitudeFactor: "The factor on the floor area for altitude.",
    decidedBy: "What decides the limit.",
  },
};

export const RoomChargeAssessmentShape: Shape = {
  type: "RoomChargeAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": {
      words: [
        "room-too-small",
        "openings-too-small",
        "airflow-too-small",
        "beyond-m2",
        "beyond-m3",
      ],
    },
    reasons: { list: ChargeLimitStatementShape },
    assumptions: { list: ChargeLimitStatementShape },
    cautions: { list: ConcentrationAssessmentCautionsItemShape },
    "actions?": { list: ChargeLimitStatementShape },
    sources: { list: CitationShape },
    limit: ProtectedRoomLimitShape,
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

export const ServedRoomShape: Shape = {
  type: "ServedRoom",
  fields: {
    "instruments?": RoomInstrumentsOfAreaShape,
    floorArea: "area",
    "protection?": {
      by: "kind",
      cases: {
        "connected-rooms": ConnectedRoomsShape,
        "enhanced-tightness": EnhancedTightnessShape,
        circulation: CirculationShape,
      },
    },
    "place?": { words: ["wall", "ceiling", "floor", "window"] },
    "installationHeight?": "length",
    "releaseOffset?": "length",
    "smallRoomCap?": { words: ["none", "strictest", "release-height", "room-height"] },
    name: "text",
  },
  says: "One room that the system serves.",
  about: {
    instruments: "What is known of scale and tape; counted as exact when left out.",
    floorArea: "Floor area of the room, above 0.",
    protection: "What lets the room hold more than its own floor area.",
    place: "Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m.",
    installationHeight:
      "Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m.",
    releaseOffset:
      "From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out.",
    smallRoomCap:
      "The cap that the unit's manual prints for small rooms; the strictest when left out.",
    name: "Its name, once in the list.",
  },
};

export const AssessRoomsInputShape: Shape = {
  type: "AssessRoomsInput",
  fields: {
    refrigerant: { either: [byDesignation, RoomRefrigerantShape] },
    charge: "mass",
    "confidence?": "number",
    "edition?": {
      words: [
        "en-378-1",
        "iec-60335-2-40-2013",
        "iec-60335-2-40-2018",
        "iec-60335-2-40-2022",
        "ul-60335-2-40-2019",
        "ul-60335-2-40-2022",
      ],
    },
    "lowerFlammabilityLimit?": "density",
    "altitude?": "length",
    rooms: { list: ServedRoomShape },
  },
  about: {
    refrigerant: "A flammable refrigerant, class A2L, A2 or A3.",
    charge: "Total charge of the whole system, factory charge and what was added, above 0.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
    edition: "The edition that applies; IEC 60335-2-40:2018 when left out, and the answer says so.",
    lowerFlammabilityLimit:
      "LFL in place of the first figure that the module holds, above 0 to 1 kg/m³. Needed where none is held.",
    altitude:
      "Altitude of the site, −500 m to 3200 m: thin air needs a larger room. At most 600 m when left out.",
    rooms: "The rooms.",
  },
};

export const RoomsAssessmentRoomsItemShape: Shape = {
  type: "RoomsAssessmentRoomsItem",
  fields: { name: "text", assessment: RoomChargeAssessmentShape },
  about: { name: "Its name.", assessment: "Its verdict." },
};

export const RoomsAssessmentShape: Shape = {
  type: "RoomsAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": {
      words: [
        "room-too-small",
        "openings-too-small",
        "airflow-too-small",
        "beyond-m2",
        "beyond-m3",
      ],
    },
    reasons: { list: ChargeLimitStatementShape },
    assumptions: { list: ChargeLimitStatementShape },
    cautions: { list: ConcentrationAssessmentCautionsItemShape },
    "actions?": { list: ChargeLimitStatementShape },
    sources: { list: CitationShape },
    rooms: { list: RoomsAssessmentRoomsItemShape },
  },
  says: "The verdict on all rooms of a system.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    rooms: "The verdict on each room, in the order given.",
  },
};

export const BlendWarmingPotentialInputShape: Shape = {
  type: "BlendWarmingPotentialInput",
  fields: { composition: { list: RefrigerantComponentShape }, basis: WarmingBasisShape },
  about: {
    composition: "Components, shares that make up 100 % within 0.1.",
    basis: "Which potentials apply.",
  },
};

export const BlendWarmingPotentialShape: Shape = {
  type: "BlendWarmingPotential",
  fields: {
    value: "number",
    standing: { words: ["from-memory", "published"] },
    unlisted: { list: "text" },
    citation: CitationShape,
  },
  says: "A warming potential by a named basis.",
  about: {
    value: "Over 100 years, carbon dioxide being 1; not rounded.",
    standing: "Read there for every component, or partly from memory.",
    unlisted:
      "Components that the basis lists no value for: EU law counts them as 0, United States law leaves them out.",
    citation: "The basis.",
  },
};

export const ComposedShape: Shape = {
  type: "Composed",
  fields: { composition: { list: RefrigerantComponentShape } },
  says: "Components with their share of the mass; a refrigerant of refrigerants has them.",
  about: { composition: "Components, shares that make up 100 % within 0.1." },
};

export const CarbonDioxideEquivalentInputShape: Shape = {
  type: "CarbonDioxideEquivalentInput",
  fields: {
    refrigerant: { either: [byDesignation, ComposedShape] },
    charge: "mass",
    basis: WarmingBasisShape,
  },
  about: {
    refrigerant: "The refrigerant.",
    charge: "Total charge.",
    basis: "Which potentials apply.",
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

export const DispersalChargeLimitInputShape: Shape = {
  type: "DispersalChargeLimitInput",
  fields: {
    refrigerant: { either: [byDesignation, RoomRefrigerantShape] },
    volume: "volume",
    occupancy: { words: ["institutional", "other"] },
  },
  about: {
    refrigerant: "The refrigerant.",
    volume: "Effective dispersal volume.",
    occupancy: "Who is in the room.",
  },
};

export const DispersalLimitShape: Shape = {
  type: "DispersalLimit",
  fields: {
    limit: "mass",
    basis: SafetyLimitShape,
    factor: "number",
    standing: { words: ["from-memory"] },
    citation: CitationShape,
    cautions: { list: RoomCautionShape },
  },
  says: "The charge that may leave into a dispersal volume.",
  about: {
    limit: "EDVC: the largest releasable charge.",
    basis: "The concentration limit or LFL behind it.",
    factor: "The factors on it: occupancy, and for A2L the concentration factor of 0.5.",
    standing: "The rule itself is from memory.",
    citation: "Where the rule stands.",
    cautions: "What can hurt someone, and what overrides the figure.",
  },
};

export const DwellingChargeEstimateInputShape: Shape = {
  type: "DwellingChargeEstimateInput",
  fields: { lowerFlammabilityLimit: "density", floorArea: "area" },
  about: {
    lowerFlammabilityLimit: "LFL of the refrigerant.",
    floorArea: "Floor area of the space.",
  },
};

export const DwellingEstimateShape: Shape = {
  type: "DwellingEstimate",
  fields: {
    withoutDetector: "mass",
    estimate: "mass",
    standing: { words: ["from-memory"] },
    citation: CitationShape,
  },
  says: "What may be said of a dwelling without the tables of ASHRAE 15.2.",
  about: {
    withoutDetector: "Up to here no detector is asked for: 6 m³ · LFL, from memory.",
    estimate: "An estimate of M_max, 0.5 · LFL · 2.2 m · A: no limit of the standard.",
    standing: "Both are from memory.",
    citation: "The standard whose tables decide.",
  },
};

export const VentilationLimitsInputShape: Shape = {
  type: "VentilationLimitsInput",
  fields: {
    refrigerant: { either: [byDesignation, RoomRefrigerantShape] },
    charge: "mass",
    volume: "volume",
    lowestUndergroundFloor: "flag",
  },
  about: {
    refrigerant: "The refrigerant.",
    charge: "Total charge.",
    volume: "Volume of the room.",
    lowestUndergroundFloor: "Whether the room is in the lowest underground floor.",
  },
};

export const VentilationLimitsShape: Shape = {
  type: "VentilationLimits",
  fields: {
    underground: "density",
    minimumVentilation: "density",
    additionalVentilation: "density",
    standing: { words: ["from-memory"] },
  },
  says: "Limits of EN 378-1, C.3, kg/m³.",
  about: {
    underground: "RCL: the most in the lowest underground floor without a measure.",
    minimumVentilation: "QLMV: the most with minimum ventilation, without a measure.",
    additionalVentilation: "QLAV: the most with one measure; above it two are needed.",
    standing: "They are from memory.",
  },
};

export const VentilationLimitsResultShape: Shape = {
  type: "VentilationLimitsResult",
  fields: {
    measures: { words: [0, 2, 1] },
    limits: VentilationLimitsShape,
    cautions: { list: RoomCautionShape },
  },
  about: {
    measures: "Measures that are needed.",
    limits: "The limits.",
    cautions: "What can hurt someone, and what overrides the figure.",
  },
};

export const LeakCheckIntervalInputShape: Shape = {
  type: "LeakCheckIntervalInput",
  fields: {
    refrigerant: { either: [byDesignation, ComposedShape] },
    charge: "mass",
    "hermeticallySealed?": "flag",
    "residential?": "flag",
    "leakDetection?": "flag",
  },
  about: {
    refrigerant: "The refrigerant.",
    charge: "Total charge.",
    hermeticallySealed:
      "Whether every joint was made in the factory and the label says hermetically sealed; false when left out.",
    residential: "Whether it stands in a residential building; false when left out.",
    leakDetection: "Whether a leak detection system watches it; false when left out.",
  },
};

export const LeakCheckAnswerShape: Shape = {
  type: "LeakCheckAnswer",
  fields: {
    region: { words: ["EU", "GB", "US", "AU"] },
    from: "text",
    readOn: "text",
    citation: CitationShape,
    standing: { words: ["from-memory", "published", "secondary"] },
    required: "flag",
    "months?": { words: [3, 6, 12, 24] },
    carbonDioxide: "mass",
    unsaturated: "mass",
  },
  says: "Whether a leak check is due, and how often.",
  about: {
    region: "Where it holds.",
    from: "From which day on, year-month-day.",
    readOn: "State of the text that was read, year-month-day or year-month.",
    citation: "The text.",
    standing: "How it was come by.",
    required: "Whether the law asks for checks.",
    months: "The interval between them; missing where none is asked for.",
    carbonDioxide: "The charge of Annex I gases as carbon dioxide.",
    unsaturated: "The charge of HFOs of Annex II, section 1.",
  },
};

export const RuledEquipmentShape: Shape = {
  type: "RuledEquipment",
  words: [
    "single-split",
    "multi-split",
    "air-to-air-split",
    "air-to-water-split",
    "portable",
    "variable-refrigerant-flow",
  ],
};

export const MarketRulesInputShape: Shape = {
  type: "MarketRulesInput",
  fields: {
    region: { words: ["EU", "GB", "US", "AU"] },
    equipment: RuledEquipmentShape,
    refrigerant: { either: [byDesignation, ComposedShape] },
    charge: "mass",
    "capacity?": "power",
    date: "text",
    "componentsMade?": "text",
  },
  about: {
    region: "Where.",
    equipment: "What.",
    refrigerant: "The refrigerant.",
    charge: "Total charge.",
    capacity: "Rated cooling capacity.",
    date: "Day of the event that the region counts by, year-month-day.",
    componentsMade: "Day on which the last of all components was made, year-month-day.",
  },
};

export const MarketRuleShape: Shape = {
  type: "MarketRule",
  fields: {
    region: { words: ["EU", "GB", "US", "AU"] },
    from: "text",
    readOn: "text",
    citation: CitationShape,
    standing: { words: ["from-memory", "published", "secondary"] },
    event: { words: ["placing-on-the-market", "installation", "import"] },
    "below?": "number",
    "potential?": "number",
    barred: "flag",
    "exception?": { words: ["site-safety"] },
  },
  says: "A rule that applies to equipment.",
  about: {
    region: "Where it holds.",
    from: "From which day on, year-month-day.",
    readOn: "State of the text that was read, year-month-day or year-month.",
    citation: "The text.",
    standing: "How it was come by.",
    event: "What it dates by.",
    below:
      "Potentials have to be below this; missing where no F-gas is allowed or only the mass counts.",
    potential: "The potential by the rule's basis; missing where the basis has none.",
    barred: "Whether the rule bars this refrigerant on the date asked about.",
    exception:
      "site-safety: not where safety requirements at the site forbid what is allowed instead.",
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
    "edition?": {
      words: [
        "en-378-1",
        "iec-60335-2-40-2013",
        "iec-60335-2-40-2018",
        "iec-60335-2-40-2022",
        "ul-60335-2-40-2019",
        "ul-60335-2-40-2022",
      ],
    },
    "smallRoomCap?": { words: ["none", "strictest", "release-height", "room-height"] },
    "altitude?": "length",
    charge: "mass",
  },
  about: {
    refrigerant: "A flammable refrigerant, class A2L, A2 or A3.",
    lowerFlammabilityLimit:
      "LFL in place of the first figure that the module holds, above 0 to 1 kg/m³. Needed where none is held.",
    place: "Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m.",
    installationHeight:
      "Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m.",
    releaseOffset:
      "From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out.",
    edition: "The edition that applies; IEC 60335-2-40:2018 when left out, and the answer says so.",
    smallRoomCap:
      "The cap that the unit's manual prints for small rooms; the strictest when left out.",
    altitude:
      "Altitude of the site, −500 m to 3200 m: thin air needs a larger room. At most 600 m when left out.",
    charge: "Total charge, factory charge and what was added.",
  },
};

export const MinimumFloorAreaShape: Shape = {
  type: "MinimumFloorArea",
  fields: {
    edition: RoomEditionShape,
    unrestricted: "mass",
    maximum: "mass",
    systemMaximum: "mass",
    releaseHeight: "length",
    lowerFlammabilityLimit: "density",
    altitudeFactor: "number",
    assumptions: { list: ChargeLimitStatementShape },
    cautions: { list: RoomCautionShape },
    sources: { list: CitationShape },
    area: "area",
    byFormula: "area",
  },
  says: "The smallest room for a charge.",
  about: {
    edition: "The edition that was used.",
    unrestricted: "m1: the charge up to which the room does not matter.",
    maximum: "m2: the most by the rule of the floor area.",
    systemMaximum: "m3: the most for a system at all.",
    releaseHeight: "h0, the release height that was used.",
    lowerFlammabilityLimit: "The lower flammability limit that was used.",
    altitudeFactor: "The factor on the floor area for altitude.",
    assumptions: "What was assumed.",
    cautions: "What can hurt someone, what is from memory, and what overrides the figure.",
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
    "edition?": {
      words: [
        "en-378-1",
        "iec-60335-2-40-2013",
        "iec-60335-2-40-2018",
        "iec-60335-2-40-2022",
        "ul-60335-2-40-2019",
        "ul-60335-2-40-2022",
      ],
    },
    "smallRoomCap?": { words: ["none", "strictest", "release-height", "room-height"] },
    "altitude?": "length",
    floorArea: "area",
  },
  about: {
    refrigerant: "A flammable refrigerant, class A2L, A2 or A3.",
    lowerFlammabilityLimit:
      "LFL in place of the first figure that the module holds, above 0 to 1 kg/m³. Needed where none is held.",
    place: "Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m.",
    installationHeight:
      "Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m.",
    releaseOffset:
      "From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out.",
    edition: "The edition that applies; IEC 60335-2-40:2018 when left out, and the answer says so.",
    smallRoomCap:
      "The cap that the unit's manual prints for small rooms; the strictest when left out.",
    altitude:
      "Altitude of the site, −500 m to 3200 m: thin air needs a larger room. At most 600 m when left out.",
    floorArea: "Floor area of the room.",
  },
};

export const RoomLimitDeciderShape: Shape = {
  type: "RoomLimitDecider",
  words: ["unrestricted", "m2", "floor-area", "release-height-cap", "room-height-cap"],
};

export const RoomChargeLimitShape: Shape = {
  type: "RoomChargeLimit",
  fields: {
    edition: RoomEditionShape,
    unrestricted: "mass",
    maximum: "mass",
    systemMaximum: "mass",
    releaseHeight: "length",
    lowerFlammabilityLimit: "density",
    altitudeFactor: "number",
    assumptions: { list: ChargeLimitStatementShape },
    cautions: { list: RoomCautionShape },
    sources: { list: CitationShape },
    limit: "mass",
    byFormula: "mass",
    decidedBy: RoomLimitDeciderShape,
  },
  says: "The largest charge for a room, and what decides it.",
  about: {
    edition: "The edition that was used.",
    unrestricted: "m1: the charge up to which the room does not matter.",
    maximum: "m2: the most by the rule of the floor area.",
    systemMaximum: "m3: the most for a system at all.",
    releaseHeight: "h0, the release height that was used.",
    lowerFlammabilityLimit: "The lower flammability limit that was used.",
    altitudeFactor: "The factor on the floor area for altitude.",
    assumptions: "What was assumed.",
    cautions: "What can hurt someone, what is from memory, and what overrides the figure.",
    sources: "Where the rule and the figures stand.",
    limit: "The largest charge allowed in the room.",
    byFormula:
      "m_max by the formula alone, as manuals tabulate it, also where the room does not matter.",
    decidedBy: "What decides the limit.",
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
