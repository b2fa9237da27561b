// Which shapes have the types of charge-limit?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { once } from "../../quantity/later.ts";
import type { Shape, StatementTable } from "../../shapes/index.ts";
import { byDesignation } from "../named.ts";
import {
  InstrumentOfAreaShape,
  InstrumentOfLengthShape,
  InstrumentOfMassShape,
  InstrumentOfVolumeShape,
  SafetyStatements,
  VerbatimShape,
} from "./assessment.shapes.ts";
import {
  CitationShape,
  RefrigerantComponentShape,
  WarmingBasisShape,
} from "./refrigerants.shapes.ts";

export function BlendWarmingPotentialInputShape(): Shape {
  return once(BlendWarmingPotentialInputShape, () => ({
    type: "BlendWarmingPotentialInput",
    fields: { composition: { list: RefrigerantComponentShape() }, basis: WarmingBasisShape() },
    docs: {
      composition: "Components, shares that make up 100 % within 0.1.",
      basis: "Which potentials apply.",
    },
  }));
}

export function BlendWarmingPotentialShape(): Shape {
  return once(BlendWarmingPotentialShape, () => ({
    type: "BlendWarmingPotential",
    fields: {
      value: "number",
      standing: { words: ["from-memory", "published"] },
      unlisted: { list: "text" },
      citation: CitationShape(),
    },
    docs: {
      "": "A warming potential by a named basis.",
      value: "Over 100 years, carbon dioxide being 1; not rounded.",
      standing: "Read there for every component, or partly from memory.",
      unlisted:
        "Components that the basis lists no value for: EU law counts them as 0, United States law leaves them out.",
      citation: "The basis.",
    },
  }));
}

export function ComposedShape(): Shape {
  return once(ComposedShape, () => ({
    type: "Composed",
    fields: { composition: { list: RefrigerantComponentShape() } },
    docs: {
      "": "Components with their share of the mass; a refrigerant of refrigerants has them.",
      composition: "Components, shares that make up 100 % within 0.1.",
    },
  }));
}

export function CarbonDioxideEquivalentInputShape(): Shape {
  return once(CarbonDioxideEquivalentInputShape, () => ({
    type: "CarbonDioxideEquivalentInput",
    fields: {
      refrigerant: { either: [byDesignation, ComposedShape()] },
      charge: "mass",
      basis: WarmingBasisShape(),
    },
    docs: {
      refrigerant: "The refrigerant.",
      charge: "Total charge.",
      basis: "Which potentials apply.",
    },
  }));
}

export function FlammableClassShape(): Shape {
  return once(FlammableClassShape, () => ({
    type: "FlammableClass",
    words: ["A2L", "A2", "A3", "B2L", "B2", "B3"],
  }));
}

export function ChargeThresholdsInputShape(): Shape {
  return once(ChargeThresholdsInputShape, () => ({
    type: "ChargeThresholdsInput",
    fields: {
      lowerFlammabilityLimit: "density",
      safetyClass: FlammableClassShape(),
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
    docs: {
      lowerFlammabilityLimit: "LFL of the refrigerant.",
      safetyClass: "Safety class of the refrigerant.",
      edition: "Edition of the rule.",
    },
  }));
}

export function ChargeThresholdsShape(): Shape {
  return once(ChargeThresholdsShape, () => ({
    type: "ChargeThresholds",
    fields: {
      m1: "mass",
      m2: "mass",
      m3: "mass",
      standing: { words: ["from-memory", "published"] },
      citation: CitationShape(),
    },
    docs: {
      "": "The charges at which the rule changes.",
      m1: "Up to here the room does not matter.",
      m2: "The most by the rule of the floor area, for one indoor unit.",
      m3: "The most for a system at all: above it the edition has no rule.",
      standing: "Whether the factors were read in the source or are from memory.",
      citation: "Where they stand.",
    },
  }));
}

export function RoomRefrigerantShape(): Shape {
  return once(RoomRefrigerantShape, () => ({
    type: "RoomRefrigerant",
    fields: {
      designation: "text",
      safetyClass: { words: ["A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3"] },
    },
    docs: {
      "": "What this module needs to know of a refrigerant; the objects of refrigerants have it.",
      designation: "ASHRAE 34 designation, such as R-410A.",
      safetyClass:
        "ASHRAE 34 safety class: A lower, B higher toxicity; 1, 2L, 2, 3 by flammability.",
    },
  }));
}

export function LimitStandingShape(): Shape {
  return once(LimitStandingShape, () => ({
    type: "LimitStanding",
    words: ["published", "secondary", "from-memory", "stated"],
  }));
}

export function SafetyLimitShape(): Shape {
  return once(SafetyLimitShape, () => ({
    type: "SafetyLimit",
    fields: { value: "density", "citation?": CitationShape(), standing: LimitStandingShape() },
    docs: {
      "": "A limit with its source: editions differ.",
      value: "The limit.",
      citation: "Where it stands; nowhere for a limit that the caller stated.",
      standing:
        "Whether it was read there, in another text that names it, remembered, or stated by the caller.",
    },
  }));
}

export function RefrigerantSafetyShape(): Shape {
  return once(RefrigerantSafetyShape, () => ({
    type: "RefrigerantSafety",
    fields: {
      safetyClass: { words: ["A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3"] },
      lowerFlammabilityLimits: { list: SafetyLimitShape() },
      concentrationLimits: { list: SafetyLimitShape() },
      concentrationLimitByVolume: "ratio",
    },
    docs: {
      "": "The limits of a refrigerant.",
      safetyClass: "ASHRAE 34 safety class.",
      lowerFlammabilityLimits:
        "Lower flammability limits, first the one that is used; empty for what does not burn.",
      concentrationLimits:
        "Concentration limits (RCL, practical limit), first the one that is used.",
      concentrationLimitByVolume: "The RCL as a share of the volume.",
    },
  }));
}

export function VentilationOpeningInputShape(): Shape {
  return once(VentilationOpeningInputShape, () => ({
    type: "VentilationOpeningInput",
    fields: {
      refrigerant: { either: [byDesignation, RoomRefrigerantShape()] },
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
    docs: {
      refrigerant: "A flammable refrigerant, class A2L, A2 or A3.",
      lowerFlammabilityLimit:
        "LFL in place of the first figure that the module holds, above 0 to 1 kg/m³. Needed where none is held.",
      place:
        "Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m. One of this and installationHeight.",
      installationHeight:
        "Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m. One of this and place.",
      releaseOffset:
        "From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out.",
      edition:
        "The edition that applies; IEC 60335-2-40:2018 when left out, and the answer says so.",
      smallRoomCap:
        "The cap that the unit's manual prints for small rooms; the strictest when left out.",
      altitude:
        "Altitude of the site, −500 m to 3200 m: thin air needs a larger room. At most 600 m when left out.",
      floorArea: "Floor area of the room with the unit.",
      charge: "Total charge, factory charge and what was added.",
      molarMass: "Molar mass, g/mol.",
    },
  }));
}

export function VentilationOpeningShape(): Shape {
  return once(VentilationOpeningShape, () => ({
    type: "VentilationOpening",
    fields: {
      lower: "area",
      upper: "area",
      lowerEdge: "length",
      lowerHeight: "length",
      upperEdge: "length",
      withoutOpening: "mass",
    },
    docs: {
      "": "The two permanent openings between a room and the next.",
      lower: "Least area of the lower opening; nothing above 300 mm over the floor counts.",
      upper: "Least area of the upper opening: half of it.",
      lowerEdge: "Largest height of the lower opening's bottom edge above the floor.",
      lowerHeight: "Least height of the lower opening itself.",
      upperEdge: "Least height of the upper opening's bottom edge above the floor.",
      withoutOpening: "The charge that the room could hold without openings, by formula.",
    },
  }));
}

export function RoomInstrumentsOfVolumeShape(): Shape {
  return once(RoomInstrumentsOfVolumeShape, () => ({
    type: "RoomInstrumentsOfVolume",
    fields: { "charge?": InstrumentOfMassShape(), "size?": InstrumentOfVolumeShape() },
    docs: {
      "": "What is known of the instruments behind a charge and the size of its room.",
      charge: "The charging scale, or the tolerance of the nameplate charge.",
      size: "How well the size of the room is known.",
    },
  }));
}

export function ConcentrationInputShape(): Shape {
  return once(ConcentrationInputShape, () => ({
    type: "ConcentrationInput",
    fields: {
      refrigerant: { either: [byDesignation, RoomRefrigerantShape()] },
      "concentrationLimit?": "density",
      charge: "mass",
      volume: "volume",
      "instruments?": RoomInstrumentsOfVolumeShape(),
      "confidence?": "number",
    },
    docs: {
      "": "A charge and its room.",
      refrigerant: "The refrigerant.",
      concentrationLimit:
        "Limit in place of the RCL that the module holds, above 0 to 1 kg/m³: a practical limit, another edition.",
      charge: "Total charge, factory charge and what was added, above 0.",
      volume: "Volume of the smallest room in which it can collect, above 0.",
      instruments: "What is known of scale and tape; counted as exact when left out.",
      confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
    },
  }));
}

export function ChargeLimitMissingShape(): Shape {
  return once(ChargeLimitMissingShape, () => ({
    type: "ChargeLimitMissing",
    words: [
      "charge-limit.missing.openings-placed",
      "charge-limit.missing.enhanced-tightness",
      "charge-limit.missing.detector",
    ],
  }));
}

export function ChargeLimitEditionShape(): Shape {
  return once(ChargeLimitEditionShape, () => ({
    type: "ChargeLimitEdition",
    words: [
      "charge-limit.edition.en-378-1",
      "charge-limit.edition.iec-60335-2-40-2013",
      "charge-limit.edition.iec-60335-2-40-2018",
      "charge-limit.edition.iec-60335-2-40-2022",
      "charge-limit.edition.ul-60335-2-40-2019",
      "charge-limit.edition.ul-60335-2-40-2022",
    ],
  }));
}

export function ChargeLimitStandingShape(): Shape {
  return once(ChargeLimitStandingShape, () => ({
    type: "ChargeLimitStanding",
    words: [
      "charge-limit.standing.from-memory",
      "charge-limit.standing.stated",
      "charge-limit.standing.published",
      "charge-limit.standing.secondary",
    ],
  }));
}

export function ChargeLimitRuleShape(): Shape {
  return once(ChargeLimitRuleShape, () => ({
    type: "ChargeLimitRule",
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
  }));
}

export function ChargeLimitStatements(): StatementTable {
  return once(ChargeLimitStatements, () => ({
    "charge-limit.above-limit": { charge: "mass", limit: "mass" },
    "charge-limit.above-reference-height": { height: "length" },
    "charge-limit.act-on-room": { room: VerbatimShape() },
    "charge-limit.add-no-refrigerant": {},
    "charge-limit.beyond-m2": { charge: "mass", limit: "mass" },
    "charge-limit.beyond-m3": { charge: "mass", limit: "mass" },
    "charge-limit.clear-of-openings": { distance: "length", required: "length" },
    "charge-limit.closed-in-outdoors": {},
    "charge-limit.concentration-limit-used": {
      limit: "density",
      standing: ChargeLimitStandingShape(),
    },
    "charge-limit.distance-too-close-to-call": { distance: "length", required: "length" },
    "charge-limit.distances-not-stated": {},
    "charge-limit.divide-the-system": { maximum: "mass" },
    "charge-limit.edition-used": { edition: ChargeLimitEditionShape() },
    "charge-limit.enlarge-openings": {},
    "charge-limit.every-room-passes": { count: "number" },
    "charge-limit.exact-charge": {},
    "charge-limit.exact-distance": {},
    "charge-limit.exact-size": {},
    "charge-limit.find-larger-room": { area: "area" },
    "charge-limit.find-larger-volume": { volume: "volume" },
    "charge-limit.flammability-limit-used": {
      limit: "density",
      standing: ChargeLimitStandingShape(),
    },
    "charge-limit.flammability-too": {},
    "charge-limit.from-memory": { rules: { list: ChargeLimitRuleShape() } },
    "charge-limit.give-its-own-limit": {},
    "charge-limit.low-altitude": {},
    "charge-limit.market-rules-older": { reviewed: VerbatimShape(), date: VerbatimShape() },
    "charge-limit.measure-distances": {},
    "charge-limit.move-outdoor-unit": { required: "length" },
    "charge-limit.move-to-open-air": {},
    "charge-limit.no-value-by-basis": { basis: VerbatimShape() },
    "charge-limit.nothing-near": { required: "length" },
    "charge-limit.one-closed-room": {},
    "charge-limit.other-clauses": {},
    "charge-limit.others-by-concentration": {},
    "charge-limit.place-or-height": {},
    "charge-limit.protection-not-stated": { missing: { list: ChargeLimitMissingShape() } },
    "charge-limit.protection-zone-not-stated": {},
    "charge-limit.raise-airflow": {},
    "charge-limit.refrigerant-in-water": {},
    "charge-limit.room-does-not-matter": { charge: "mass", limit: "mass" },
    "charge-limit.room-fails": { room: VerbatimShape() },
    "charge-limit.room-inconclusive": { room: VerbatimShape() },
    "charge-limit.shares-make-100": {},
    "charge-limit.state-protection": { missing: { list: ChargeLimitMissingShape() } },
    "charge-limit.state-protection-zone": {},
    "charge-limit.too-close-to-call": { charge: "mass", limit: "mass", uncertainty: "mass" },
    "charge-limit.too-near-an-opening": { distance: "length", required: "length" },
    "charge-limit.use-other-clauses": { maximum: "mass" },
    "charge-limit.weigh-or-measure-better": {},
    "charge-limit.within-limit": { charge: "mass", limit: "mass" },
  }));
}

export function ChargeLimitStatementShape(): Shape {
  return once(ChargeLimitStatementShape, () => ({
    type: "ChargeLimitStatement",
    statements: [ChargeLimitStatements()],
  }));
}

export function ConcentrationAssessmentCautionsItemShape(): Shape {
  return once(ConcentrationAssessmentCautionsItemShape, () => ({
    type: "ConcentrationAssessmentCautionsItem",
    statements: [SafetyStatements(), ChargeLimitStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function RoomCautionShape(): Shape {
  return once(RoomCautionShape, () => ({
    type: "RoomCaution",
    statements: [SafetyStatements(), ChargeLimitStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function ConcentrationAnswerOfMassShape(): Shape {
  return once(ConcentrationAnswerOfMassShape, () => ({
    type: "ConcentrationAnswerOfMass",
    fields: { value: "mass", basis: SafetyLimitShape(), cautions: { list: RoomCautionShape() } },
    docs: {
      "": "A charge or a volume by concentration.",
      value: "The largest charge, or the smallest volume.",
      basis: "The limit that was used, with its source.",
      cautions: "What can hurt someone, and what overrides the figure.",
    },
  }));
}

export function ConcentrationAssessmentShape(): Shape {
  return once(ConcentrationAssessmentShape, () => ({
    type: "ConcentrationAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["room-too-small"] },
      reasons: { list: ChargeLimitStatementShape() },
      assumptions: { list: ChargeLimitStatementShape() },
      cautions: { list: ConcentrationAssessmentCautionsItemShape() },
      "actions?": { list: ChargeLimitStatementShape() },
      sources: { list: CitationShape() },
      limit: ConcentrationAnswerOfMassShape(),
    },
    docs: {
      "": "The verdict on a charge by concentration.",
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
  }));
}

export function OutdoorUnitInputShape(): Shape {
  return once(OutdoorUnitInputShape, () => ({
    type: "OutdoorUnitInput",
    fields: {
      refrigerant: { either: [byDesignation, RoomRefrigerantShape()] },
      surroundings: { words: ["closed-in", "open-air"] },
      "protectionZone?": "length",
      "distances?": { list: "length" },
      "tape?": InstrumentOfLengthShape(),
      "confidence?": "number",
    },
    docs: {
      "": "A unit whose refrigerant stays outdoors, such as a monobloc heat pump: only water enters the building.",
      refrigerant: "The refrigerant: flammable, or the question does not arise.",
      surroundings:
        "Where it stands: in open air, or closed in by walls on three sides or more, in a pit or below ground.",
      protectionZone: "Radius of the protection zone in the unit's manual, above 0.",
      distances:
        "Distances from the unit to every door, window, air intake, drain, cellar opening and ignition source near it, 0 or more; an empty list where there is none.",
      tape: "What is known of the tape; counted as exact when left out.",
      confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
    },
  }));
}

export function OutdoorUnitAssessmentShape(): Shape {
  return once(OutdoorUnitAssessmentShape, () => ({
    type: "OutdoorUnitAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["too-near-an-opening", "closed-in"] },
      reasons: { list: ChargeLimitStatementShape() },
      assumptions: { list: ChargeLimitStatementShape() },
      cautions: { list: ConcentrationAssessmentCautionsItemShape() },
      "actions?": { list: ChargeLimitStatementShape() },
      sources: { list: CitationShape() },
    },
    docs: {
      "": "The verdict on a unit outdoors.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
    },
  }));
}

export function ConnectedRoomsShape(): Shape {
  return once(ConnectedRoomsShape, () => ({
    type: "ConnectedRooms",
    fields: {
      kind: { words: ["connected-rooms"] },
      adjoiningFloorArea: "area",
      lowerOpening: "area",
      upperOpening: "area",
      "placedAsRequired?": "flag",
      "molarMass?": "number",
    },
    docs: {
      "": "Two permanent openings to the next room, for natural ventilation.",
      adjoiningFloorArea: "Floor area of the adjoining room, above 0.",
      lowerOpening:
        "Area of the lower opening that counts: what lies within 300 mm of the floor, half of it below 200 mm.",
      upperOpening: "Area of the upper opening.",
      placedAsRequired:
        "Whether both are permanent, the lower one begins at most 100 mm above the floor and is 20 mm high or more, and the upper one begins 1.5 m above the floor or higher. A pass needs true.",
      molarMass: "Molar mass in g/mol, above 29; needed where the module holds none.",
    },
  }));
}

export function EnhancedTightnessShape(): Shape {
  return once(EnhancedTightnessShape, () => ({
    type: "EnhancedTightness",
    fields: {
      kind: { words: ["enhanced-tightness"] },
      "countedFloorArea?": "area",
      ceilingHeight: "length",
      measure: { words: ["none", "alarm", "ventilation", "shut-off"] },
      "declared?": "flag",
    },
    docs: {
      "": "A system that its maker declares as of enhanced tightness.",
      countedFloorArea:
        "Floor area that counts, above 0, where it is not the room's own: by the 2022 text that of all rooms served, by the 2018 text that of the smallest; rooms that are joined by permanent openings count together.",
      ceilingHeight: "Ceiling height, above 0; what is above 2.2 m does not count.",
      measure: "Alarm, ventilation or shut-off valve on detection, or none of them.",
      declared: "Whether the maker declares it. A pass needs true.",
    },
  }));
}

export function CirculationShape(): Shape {
  return once(CirculationShape, () => ({
    type: "Circulation",
    fields: {
      kind: { words: ["circulation"] },
      totalFloorArea: "area",
      airflow: "volumeFlow",
      "detector?": "flag",
    },
    docs: {
      "": "A fan that circulates the air of a larger space as soon as a detector trips.",
      totalFloorArea: "Floor area of the whole space that the fan serves, above 0.",
      airflow: "Airflow while it circulates, above 0.",
      detector:
        "Whether a detector of the unit trips at 25 % of the LFL or less, acts within 30 s and keeps the fan on for 5 minutes or more. A pass needs true.",
    },
  }));
}

export function RoomInstrumentsOfAreaShape(): Shape {
  return once(RoomInstrumentsOfAreaShape, () => ({
    type: "RoomInstrumentsOfArea",
    fields: { "charge?": InstrumentOfMassShape(), "size?": InstrumentOfAreaShape() },
    docs: {
      "": "What is known of the instruments behind a charge and the size of its room.",
      charge: "The charging scale, or the tolerance of the nameplate charge.",
      size: "How well the size of the room is known.",
    },
  }));
}

export function RoomChargeInputShape(): Shape {
  return once(RoomChargeInputShape, () => ({
    type: "RoomChargeInput",
    fields: {
      refrigerant: { either: [byDesignation, RoomRefrigerantShape()] },
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
          "connected-rooms": ConnectedRoomsShape(),
          "enhanced-tightness": EnhancedTightnessShape(),
          circulation: CirculationShape(),
        },
      },
      "instruments?": RoomInstrumentsOfAreaShape(),
      "confidence?": "number",
    },
    docs: {
      "": "A unit, its charge and its room.",
      refrigerant: "A flammable refrigerant, class A2L, A2 or A3.",
      lowerFlammabilityLimit:
        "LFL in place of the first figure that the module holds, above 0 to 1 kg/m³. Needed where none is held.",
      place:
        "Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m. One of this and installationHeight.",
      installationHeight:
        "Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m. One of this and place.",
      releaseOffset:
        "From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out.",
      edition:
        "The edition that applies; IEC 60335-2-40:2018 when left out, and the answer says so.",
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
  }));
}

export function RoomEditionShape(): Shape {
  return once(RoomEditionShape, () => ({
    type: "RoomEdition",
    words: [
      "iec-60335-2-40-2013",
      "iec-60335-2-40-2018",
      "iec-60335-2-40-2022",
      "ul-60335-2-40-2019",
      "ul-60335-2-40-2022",
      "en-378-1",
    ],
  }));
}

export function ProtectedRoomLimitShape(): Shape {
  return once(ProtectedRoomLimitShape, () => ({
    type: "ProtectedRoomLimit",
    fields: {
      limit: "mass",
      maximum: "mass",
      assumptions: { list: ChargeLimitStatementShape() },
      cautions: { list: RoomCautionShape() },
      sources: { list: CitationShape() },
      edition: RoomEditionShape(),
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
    docs: {
      "": "The limit of a room with its protection.",
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
  }));
}

export function RoomChargeAssessmentShape(): Shape {
  return once(RoomChargeAssessmentShape, () => ({
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
      reasons: { list: ChargeLimitStatementShape() },
      assumptions: { list: ChargeLimitStatementShape() },
      cautions: { list: ConcentrationAssessmentCautionsItemShape() },
      "actions?": { list: ChargeLimitStatementShape() },
      sources: { list: CitationShape() },
      limit: ProtectedRoomLimitShape(),
    },
    docs: {
      "": "The verdict on a charge in a room.",
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
  }));
}

export function ServedRoomShape(): Shape {
  return once(ServedRoomShape, () => ({
    type: "ServedRoom",
    fields: {
      "instruments?": RoomInstrumentsOfAreaShape(),
      floorArea: "area",
      "protection?": {
        by: "kind",
        cases: {
          "connected-rooms": ConnectedRoomsShape(),
          "enhanced-tightness": EnhancedTightnessShape(),
          circulation: CirculationShape(),
        },
      },
      "place?": { words: ["wall", "ceiling", "floor", "window"] },
      "installationHeight?": "length",
      "releaseOffset?": "length",
      "smallRoomCap?": { words: ["none", "strictest", "release-height", "room-height"] },
      name: "text",
    },
    docs: {
      "": "One room that the system serves.",
      instruments: "What is known of scale and tape; counted as exact when left out.",
      floorArea: "Floor area of the room, above 0.",
      protection: "What lets the room hold more than its own floor area.",
      place:
        "Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m. One of this and installationHeight.",
      installationHeight:
        "Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m. One of this and place.",
      releaseOffset:
        "From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out.",
      smallRoomCap:
        "The cap that the unit's manual prints for small rooms; the strictest when left out.",
      name: "Its name, once in the list.",
    },
  }));
}

export function AssessRoomsInputShape(): Shape {
  return once(AssessRoomsInputShape, () => ({
    type: "AssessRoomsInput",
    fields: {
      refrigerant: { either: [byDesignation, RoomRefrigerantShape()] },
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
      rooms: { list: ServedRoomShape() },
    },
    docs: {
      refrigerant: "A flammable refrigerant, class A2L, A2 or A3.",
      charge: "Total charge of the whole system, factory charge and what was added, above 0.",
      confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
      edition:
        "The edition that applies; IEC 60335-2-40:2018 when left out, and the answer says so.",
      lowerFlammabilityLimit:
        "LFL in place of the first figure that the module holds, above 0 to 1 kg/m³. Needed where none is held.",
      altitude:
        "Altitude of the site, −500 m to 3200 m: thin air needs a larger room. At most 600 m when left out.",
      rooms: "The rooms.",
    },
  }));
}

export function RoomsAssessmentRoomsItemShape(): Shape {
  return once(RoomsAssessmentRoomsItemShape, () => ({
    type: "RoomsAssessmentRoomsItem",
    fields: { name: "text", assessment: RoomChargeAssessmentShape() },
    docs: { name: "Its name.", assessment: "Its verdict." },
  }));
}

export function RoomsAssessmentShape(): Shape {
  return once(RoomsAssessmentShape, () => ({
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
      reasons: { list: ChargeLimitStatementShape() },
      assumptions: { list: ChargeLimitStatementShape() },
      cautions: { list: ConcentrationAssessmentCautionsItemShape() },
      "actions?": { list: ChargeLimitStatementShape() },
      sources: { list: CitationShape() },
      rooms: { list: RoomsAssessmentRoomsItemShape() },
    },
    docs: {
      "": "The verdict on all rooms of a system.",
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
  }));
}

export function ConcentrationChargeLimitInputShape(): Shape {
  return once(ConcentrationChargeLimitInputShape, () => ({
    type: "ConcentrationChargeLimitInput",
    fields: {
      refrigerant: { either: [byDesignation, RoomRefrigerantShape()] },
      "concentrationLimit?": "density",
      volume: "volume",
    },
    docs: {
      refrigerant: "The refrigerant.",
      concentrationLimit:
        "Limit in place of the RCL that the module holds, above 0 to 1 kg/m³: a practical limit, another edition.",
      volume: "Volume of the room.",
    },
  }));
}

export function MinimumRoomVolumeInputShape(): Shape {
  return once(MinimumRoomVolumeInputShape, () => ({
    type: "MinimumRoomVolumeInput",
    fields: {
      refrigerant: { either: [byDesignation, RoomRefrigerantShape()] },
      "concentrationLimit?": "density",
      charge: "mass",
    },
    docs: {
      refrigerant: "The refrigerant.",
      concentrationLimit:
        "Limit in place of the RCL that the module holds, above 0 to 1 kg/m³: a practical limit, another edition.",
      charge: "Total charge, factory charge and what was added.",
    },
  }));
}

export function ConcentrationAnswerOfVolumeShape(): Shape {
  return once(ConcentrationAnswerOfVolumeShape, () => ({
    type: "ConcentrationAnswerOfVolume",
    fields: { value: "volume", basis: SafetyLimitShape(), cautions: { list: RoomCautionShape() } },
    docs: {
      "": "A charge or a volume by concentration.",
      value: "The largest charge, or the smallest volume.",
      basis: "The limit that was used, with its source.",
      cautions: "What can hurt someone, and what overrides the figure.",
    },
  }));
}

export function DispersalChargeLimitInputShape(): Shape {
  return once(DispersalChargeLimitInputShape, () => ({
    type: "DispersalChargeLimitInput",
    fields: {
      refrigerant: { either: [byDesignation, RoomRefrigerantShape()] },
      volume: "volume",
      occupancy: { words: ["institutional", "other"] },
    },
    docs: {
      refrigerant: "The refrigerant.",
      volume: "Effective dispersal volume.",
      occupancy: "Who is in the room.",
    },
  }));
}

export function DispersalLimitShape(): Shape {
  return once(DispersalLimitShape, () => ({
    type: "DispersalLimit",
    fields: {
      limit: "mass",
      basis: SafetyLimitShape(),
      factor: "number",
      standing: { words: ["from-memory"] },
      citation: CitationShape(),
      cautions: { list: RoomCautionShape() },
    },
    docs: {
      "": "The charge that may leave into a dispersal volume.",
      limit: "EDVC: the largest releasable charge.",
      basis: "The concentration limit or LFL behind it.",
      factor: "The factors on it: occupancy, and for A2L the concentration factor of 0.5.",
      standing: "The rule itself is from memory.",
      citation: "Where the rule stands.",
      cautions: "What can hurt someone, and what overrides the figure.",
    },
  }));
}

export function DwellingChargeEstimateInputShape(): Shape {
  return once(DwellingChargeEstimateInputShape, () => ({
    type: "DwellingChargeEstimateInput",
    fields: { lowerFlammabilityLimit: "density", floorArea: "area" },
    docs: {
      lowerFlammabilityLimit: "LFL of the refrigerant.",
      floorArea: "Floor area of the space.",
    },
  }));
}

export function DwellingEstimateShape(): Shape {
  return once(DwellingEstimateShape, () => ({
    type: "DwellingEstimate",
    fields: {
      withoutDetector: "mass",
      estimate: "mass",
      standing: { words: ["from-memory"] },
      citation: CitationShape(),
    },
    docs: {
      "": "What may be said of a dwelling without the tables of ASHRAE 15.2.",
      withoutDetector: "Up to here no detector is asked for: 6 m³ · LFL, from memory.",
      estimate: "An estimate of M_max, 0.5 · LFL · 2.2 m · A: no limit of the standard.",
      standing: "Both are from memory.",
      citation: "The standard whose tables decide.",
    },
  }));
}

export function VentilationLimitsInputShape(): Shape {
  return once(VentilationLimitsInputShape, () => ({
    type: "VentilationLimitsInput",
    fields: {
      refrigerant: { either: [byDesignation, RoomRefrigerantShape()] },
      charge: "mass",
      volume: "volume",
      lowestUndergroundFloor: "flag",
    },
    docs: {
      refrigerant: "The refrigerant.",
      charge: "Total charge.",
      volume: "Volume of the room.",
      lowestUndergroundFloor: "Whether the room is in the lowest underground floor.",
    },
  }));
}

export function VentilationLimitsShape(): Shape {
  return once(VentilationLimitsShape, () => ({
    type: "VentilationLimits",
    fields: {
      underground: "density",
      minimumVentilation: "density",
      additionalVentilation: "density",
      standing: { words: ["from-memory"] },
    },
    docs: {
      "": "Limits of EN 378-1, C.3, kg/m³.",
      underground: "RCL: the most in the lowest underground floor without a measure.",
      minimumVentilation: "QLMV: the most with minimum ventilation, without a measure.",
      additionalVentilation: "QLAV: the most with one measure; above it two are needed.",
      standing: "They are from memory.",
    },
  }));
}

export function VentilationLimitsResultShape(): Shape {
  return once(VentilationLimitsResultShape, () => ({
    type: "VentilationLimitsResult",
    fields: {
      measures: { words: [0, 2, 1] },
      limits: VentilationLimitsShape(),
      cautions: { list: RoomCautionShape() },
    },
    docs: {
      measures: "Measures that are needed.",
      limits: "The limits.",
      cautions: "What can hurt someone, and what overrides the figure.",
    },
  }));
}

export function LeakCheckIntervalInputShape(): Shape {
  return once(LeakCheckIntervalInputShape, () => ({
    type: "LeakCheckIntervalInput",
    fields: {
      refrigerant: { either: [byDesignation, ComposedShape()] },
      charge: "mass",
      "hermeticallySealed?": "flag",
      "residential?": "flag",
      "leakDetection?": "flag",
      "region?": { words: ["EU", "GB"] },
    },
    docs: {
      refrigerant: "The refrigerant.",
      charge: "Total charge.",
      hermeticallySealed:
        "Whether every joint was made in the factory and the label says hermetically sealed; false when left out.",
      residential: "Whether it stands in a residential building; false when left out.",
      leakDetection: "Whether a leak detection system watches it; false when left out.",
      region:
        "Whose law: EU, also for Northern Ireland, or GB for England, Scotland and Wales; EU when left out.",
    },
  }));
}

export function LeakCheckAnswerShape(): Shape {
  return once(LeakCheckAnswerShape, () => ({
    type: "LeakCheckAnswer",
    fields: {
      region: { words: ["EU", "GB", "US", "AU"] },
      from: "text",
      readOn: "text",
      citation: CitationShape(),
      standing: { words: ["from-memory", "published", "secondary"] },
      required: "flag",
      "months?": { words: [3, 6, 12, 24] },
      carbonDioxide: "mass",
      unsaturated: "mass",
    },
    docs: {
      "": "Whether a leak check is due, and how often.",
      region: "Where it holds.",
      from: "From which day on, year-month-day.",
      readOn: "State of the text that was read, year-month-day or year-month.",
      citation: "The text.",
      standing: "How it was come by.",
      required: "Whether the law asks for checks.",
      months: "The interval between them; missing where none is asked for.",
      carbonDioxide:
        "What counts of the charge as carbon dioxide: its Annex I gases; in Great Britain the whole of a mixture with one.",
      unsaturated:
        "The charge of HFOs of Annex II, section 1, which counts by its mass in the European Union alone.",
    },
  }));
}

export function RuledEquipmentShape(): Shape {
  return once(RuledEquipmentShape, () => ({
    type: "RuledEquipment",
    words: [
      "single-split",
      "multi-split",
      "air-to-air-split",
      "air-to-water-split",
      "portable",
      "self-contained",
      "variable-refrigerant-flow",
    ],
  }));
}

export function MarketRulesInputShape(): Shape {
  return once(MarketRulesInputShape, () => ({
    type: "MarketRulesInput",
    fields: {
      region: { words: ["EU", "GB", "US", "AU"] },
      equipment: RuledEquipmentShape(),
      refrigerant: { either: [byDesignation, ComposedShape()] },
      charge: "mass",
      "capacity?": "power",
      date: "text",
      "componentsMade?": "text",
    },
    docs: {
      region: "Where.",
      equipment: "What.",
      refrigerant: "The refrigerant.",
      charge: "Total charge.",
      capacity: "Rated cooling capacity.",
      date: "Day of the event that the region counts by, year-month-day.",
      componentsMade: "Day on which the last of all components was made, year-month-day.",
    },
  }));
}

export function RuledEventShape(): Shape {
  return once(RuledEventShape, () => ({
    type: "RuledEvent",
    words: ["placing-on-the-market", "installation", "import", "manufacture-or-import"],
  }));
}

export function MarketRuleShape(): Shape {
  return once(MarketRuleShape, () => ({
    type: "MarketRule",
    fields: {
      region: { words: ["EU", "GB", "US", "AU"] },
      from: "text",
      readOn: "text",
      citation: CitationShape(),
      standing: { words: ["from-memory", "published", "secondary"] },
      event: RuledEventShape(),
      "below?": "number",
      "potential?": "number",
      barred: "flag",
      "exception?": { words: ["site-safety"] },
    },
    docs: {
      "": "A rule that applies to equipment.",
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
  }));
}

export function CautionOfChargeLimitStatementShape(): Shape {
  return once(CautionOfChargeLimitStatementShape, () => ({
    type: "CautionOfChargeLimitStatement",
    statements: [ChargeLimitStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function MarketAnswerShape(): Shape {
  return once(MarketAnswerShape, () => ({
    type: "MarketAnswer",
    fields: {
      region: { words: ["EU", "GB", "US", "AU"] },
      readOn: "text",
      rules: { list: MarketRuleShape() },
      cautions: { list: CautionOfChargeLimitStatementShape() },
    },
    docs: {
      "": "The rules of a region that speak of equipment, and how new they are.",
      region: "Where they hold.",
      readOn: "State of the texts that were read, year-month-day or year-month.",
      rules:
        "The rules, those that do not apply yet included; none means that none of this list applies.",
      cautions: "A finding where the date lies after that state: the law may have changed since.",
    },
  }));
}

export function MassConcentrationInputShape(): Shape {
  return once(MassConcentrationInputShape, () => ({
    type: "MassConcentrationInput",
    fields: {
      volumeFraction: "ratio",
      molarMass: "number",
      temperature: "temperature",
      atmosphere: "absolutePressure",
    },
    docs: {
      volumeFraction: "Share of the volume.",
      molarMass: "Molar mass, g/mol, above 0.",
      temperature: "Temperature of the air.",
      atmosphere: "Pressure of the air.",
    },
  }));
}

export function MinimumFloorAreaInputShape(): Shape {
  return once(MinimumFloorAreaInputShape, () => ({
    type: "MinimumFloorAreaInput",
    fields: {
      refrigerant: { either: [byDesignation, RoomRefrigerantShape()] },
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
    docs: {
      refrigerant: "A flammable refrigerant, class A2L, A2 or A3.",
      lowerFlammabilityLimit:
        "LFL in place of the first figure that the module holds, above 0 to 1 kg/m³. Needed where none is held.",
      place:
        "Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m. One of this and installationHeight.",
      installationHeight:
        "Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m. One of this and place.",
      releaseOffset:
        "From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out.",
      edition:
        "The edition that applies; IEC 60335-2-40:2018 when left out, and the answer says so.",
      smallRoomCap:
        "The cap that the unit's manual prints for small rooms; the strictest when left out.",
      altitude:
        "Altitude of the site, −500 m to 3200 m: thin air needs a larger room. At most 600 m when left out.",
      charge: "Total charge, factory charge and what was added.",
    },
  }));
}

export function MinimumFloorAreaShape(): Shape {
  return once(MinimumFloorAreaShape, () => ({
    type: "MinimumFloorArea",
    fields: {
      edition: RoomEditionShape(),
      unrestricted: "mass",
      maximum: "mass",
      systemMaximum: "mass",
      releaseHeight: "length",
      lowerFlammabilityLimit: "density",
      altitudeFactor: "number",
      assumptions: { list: ChargeLimitStatementShape() },
      cautions: { list: RoomCautionShape() },
      sources: { list: CitationShape() },
      area: "area",
      byFormula: "area",
    },
    docs: {
      "": "The smallest room for a charge.",
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
  }));
}

export function RoomChargeLimitInputShape(): Shape {
  return once(RoomChargeLimitInputShape, () => ({
    type: "RoomChargeLimitInput",
    fields: {
      refrigerant: { either: [byDesignation, RoomRefrigerantShape()] },
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
    docs: {
      refrigerant: "A flammable refrigerant, class A2L, A2 or A3.",
      lowerFlammabilityLimit:
        "LFL in place of the first figure that the module holds, above 0 to 1 kg/m³. Needed where none is held.",
      place:
        "Where the indoor unit is, for the reference height: 0, 1.0, 1.8 or 2.2 m. One of this and installationHeight.",
      installationHeight:
        "Height of the unit's underside above the floor, in place of the reference height; 0 to 10 m. One of this and place.",
      releaseOffset:
        "From there up to where a leak comes out of the unit, 0 to 10 m; 0 when left out.",
      edition:
        "The edition that applies; IEC 60335-2-40:2018 when left out, and the answer says so.",
      smallRoomCap:
        "The cap that the unit's manual prints for small rooms; the strictest when left out.",
      altitude:
        "Altitude of the site, −500 m to 3200 m: thin air needs a larger room. At most 600 m when left out.",
      floorArea: "Floor area of the room.",
    },
  }));
}

export function RoomLimitDeciderShape(): Shape {
  return once(RoomLimitDeciderShape, () => ({
    type: "RoomLimitDecider",
    words: ["unrestricted", "m2", "floor-area", "release-height-cap", "room-height-cap"],
  }));
}

export function RoomChargeLimitShape(): Shape {
  return once(RoomChargeLimitShape, () => ({
    type: "RoomChargeLimit",
    fields: {
      edition: RoomEditionShape(),
      unrestricted: "mass",
      maximum: "mass",
      systemMaximum: "mass",
      releaseHeight: "length",
      lowerFlammabilityLimit: "density",
      altitudeFactor: "number",
      assumptions: { list: ChargeLimitStatementShape() },
      cautions: { list: RoomCautionShape() },
      sources: { list: CitationShape() },
      limit: "mass",
      byFormula: "mass",
      decidedBy: RoomLimitDeciderShape(),
    },
    docs: {
      "": "The largest charge for a room, and what decides it.",
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
  }));
}

export function RoomTableRowShape(): Shape {
  return once(RoomTableRowShape, () => ({
    type: "RoomTableRow",
    fields: { area: "area", charge: "mass" },
    docs: {
      "": "A row of a manual's table: a floor area and the charge that goes with it.",
      area: "Floor area, rising from row to row.",
      charge: "Charge, not falling from row to row.",
    },
  }));
}

export function ChargeFromRoomTableInputShape(): Shape {
  return once(ChargeFromRoomTableInputShape, () => ({
    type: "ChargeFromRoomTableInput",
    fields: { rows: { list: RoomTableRowShape() }, floorArea: "area" },
    docs: { rows: "The manual's rows.", floorArea: "Floor area of the room." },
  }));
}

export function AreaFromRoomTableInputShape(): Shape {
  return once(AreaFromRoomTableInputShape, () => ({
    type: "AreaFromRoomTableInput",
    fields: { rows: { list: RoomTableRowShape() }, charge: "mass" },
    docs: { rows: "The manual's rows.", charge: "Total charge." },
  }));
}
