// Which shapes have the types of circuit-protection?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import { byRules } from "../named.ts";
import {
  CitationShape,
  LineAssessmentCautionsItemShape,
  LineAssessmentReasonsItemShape,
} from "./assessment.shapes.ts";

export const SupplyShape: Shape = {
  type: "Supply",
  fields: {
    voltage: "voltage",
    phases: { words: [1, 3] },
    "system?": {
      words: [
        "120/240 V",
        "208Y/120 V",
        "240 V delta",
        "240/120 V high-leg delta",
        "480 V delta",
        "480Y/277 V",
        "600 V delta",
        "600Y/347 V",
        "230/400 V",
      ],
    },
  },
  says: "The supply at the panel.",
  about: {
    voltage:
      "Nominal voltage between the conductors that feed the unit, within 10 % of one of the service's.",
    phases: "Phases that feed the unit.",
    system:
      "The service; when left out, the first that fits is assumed, the stricter one where two do.",
  },
};

export const BreakerConnectionInputShape: Shape = {
  type: "BreakerConnectionInput",
  fields: { rules: byRules, supply: SupplyShape },
  about: { rules: "The rule set.", supply: "The supply." },
};

export const SupplySystemNameShape: Shape = {
  type: "SupplySystemName",
  words: [
    "120/240 V",
    "208Y/120 V",
    "240 V delta",
    "240/120 V high-leg delta",
    "480 V delta",
    "480Y/277 V",
    "600 V delta",
    "600Y/347 V",
    "230/400 V",
  ],
};

export const VoltageRatingShape: Shape = {
  type: "VoltageRating",
  words: [
    "120 V",
    "120/240 V",
    "240 V",
    "277 V",
    "480Y/277 V",
    "480 V",
    "600Y/347 V",
    "600 V",
    "230 V",
    "230/400 V",
    "400 V",
  ],
};

export const ConnectionShape: Shape = {
  type: "Connection",
  fields: {
    system: SupplySystemNameShape,
    poles: { words: [2, 1, 3] },
    voltsToGround: "number",
    voltsBetween: "number",
    voltageRating: VoltageRatingShape,
  },
  says: "What the service asks of the breaker.",
  about: {
    system: "The service, as given or assumed.",
    poles: "Poles that open together; a neutral is not counted.",
    voltsToGround: "Nominal volts from the worst conductor to ground.",
    voltsBetween: "Nominal volts between the conductors.",
    voltageRating: "Lowest voltage marking that will do.",
  },
};

export const LargestDeviceOnConductorInputShape: Shape = {
  type: "LargestDeviceOnConductorInput",
  fields: {
    rules: byRules,
    size: {
      words: [
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "8 AWG",
        "6 AWG",
        "4 AWG",
        "3 AWG",
        "2 AWG",
        "1 AWG",
        "1/0 AWG",
        "2/0 AWG",
        "3/0 AWG",
        "4/0 AWG",
        "250 kcmil",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
      ],
    },
    material: { words: ["copper", "aluminum"] },
    usable: "current",
    "device?": { words: ["breaker", "fuse"] },
  },
  about: {
    rules: "The rule set.",
    size: "The size.",
    material: "The material.",
    usable: "What the conductor carries as it runs.",
    device: "Fuse or breaker.",
  },
};

export const AwgWiringShape: Shape = {
  type: "AwgWiring",
  fields: {
    "ambient?": "temperature",
    "length?": "length",
    "stranding?": { words: ["solid", "stranded"] },
    material: { words: ["copper", "aluminum"] },
    insulation: { words: ["60 °C", "75 °C", "90 °C"] },
    "terminations?": { words: ["60 °C", "75 °C"] },
    "cable?": { words: ["NM", "other"] },
    "currentCarryingConductors?": "number",
    "aboveRoof?": "length",
    "conduit?": { words: ["aluminum", "PVC", "steel"] },
  },
  says: "Wiring by wire gauge.",
  about: {
    ambient:
      "Temperature around the cable at its hottest place, from the lowest to the highest of the table; 30 °C is assumed when left out.",
    length:
      "One-way length from the device to the unit, more than 0; without it no voltage drop is calculated.",
    stranding: "Solid or stranded, for the resistance; stranded is assumed, the higher of the two.",
    material: "Material of the conductors.",
    insulation: "Rating of the insulation. For NM cable (NM-B) 90 °C.",
    terminations:
      "What the terminals at both ends are marked for; when left out, 60 °C up to 100 A and 75 °C above.",
    cable: '"NM" for non-metallic sheathed cable, which never carries more than its 60 °C column.',
    currentCarryingConductors:
      "Loaded conductors in the same raceway or bundle, grounding conductors not counted; 3 or fewer are assumed.",
    aboveRoof: "Height above a roof in the sun; leave out where there is no roof.",
    conduit: "Conduit, for the alternating-current impedance; used together with a power factor.",
  },
};

export const MetricWiringShape: Shape = {
  type: "MetricWiring",
  fields: {
    "ambient?": "temperature",
    "length?": "length",
    "stranding?": { words: ["solid", "stranded"] },
    material: { words: ["copper"] },
    insulation: { words: ["70 °C"] },
    method: { words: ["A1", "A2", "B1", "B2", "C"] },
    "groupedCircuits?": "number",
  },
  says: "Wiring by cross-section and method of installation, PVC insulated copper.",
  about: {
    ambient:
      "Temperature around the cable at its hottest place, from the lowest to the highest of the table; 30 °C is assumed when left out.",
    length:
      "One-way length from the device to the unit, more than 0; without it no voltage drop is calculated.",
    stranding: "Solid or stranded, for the resistance; stranded is assumed, the higher of the two.",
    material: "Material of the conductors.",
    insulation: "PVC.",
    method:
      "A1, A2: conduit in an insulated wall (single-core, multi-core); B1, B2: conduit on a wall; C: clipped direct.",
    groupedCircuits: "Circuits that run together, this one included; 1 is assumed.",
  },
};

export const MinimumConductorInputShape: Shape = {
  type: "MinimumConductorInput",
  fields: {
    rules: byRules,
    wiring: {
      by: "insulation",
      cases: {
        "60 °C": AwgWiringShape,
        "75 °C": AwgWiringShape,
        "90 °C": AwgWiringShape,
        "70 °C": MetricWiringShape,
      },
    },
    phases: { words: [1, 3] },
    "deviceRating?": "current",
    ampacity: "current",
    "device?": { words: ["breaker", "fuse"] },
    "equipment?": { words: ["other", "motor-compressor"] },
  },
  about: {
    rules: "The rule set.",
    wiring: "How the cable runs.",
    phases: "Phases that feed the unit: two or three loaded conductors in metric tables.",
    deviceRating:
      "Rating of the device ahead, more than 0; decides the termination column where it is not marked.",
    ampacity: "Least ampacity, such as the marked minimum circuit ampacity; more than 0.",
    device: "Kind of the device ahead; a breaker when left out.",
    equipment: "What the circuit feeds; motor-compressor when left out.",
  },
};

export const MinimumConductorResultShape: Shape = {
  type: "MinimumConductorResult",
  fields: {
    size: {
      words: [
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "8 AWG",
        "6 AWG",
        "4 AWG",
        "3 AWG",
        "2 AWG",
        "1 AWG",
        "1/0 AWG",
        "2/0 AWG",
        "3/0 AWG",
        "4/0 AWG",
        "250 kcmil",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
      ],
    },
    column: "text",
    tableAmpacity: "current",
    ambient: "temperature",
    ambientFactor: "number",
    adjustmentFactor: "number",
    derated: "current",
    "terminationLimit?": "current",
    usable: "current",
  },
};

export const UsableAmpacityInputShape: Shape = {
  type: "UsableAmpacityInput",
  fields: {
    rules: byRules,
    wiring: {
      by: "insulation",
      cases: {
        "60 °C": AwgWiringShape,
        "75 °C": AwgWiringShape,
        "90 °C": AwgWiringShape,
        "70 °C": MetricWiringShape,
      },
    },
    phases: { words: [1, 3] },
    "deviceRating?": "current",
    size: {
      words: [
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "8 AWG",
        "6 AWG",
        "4 AWG",
        "3 AWG",
        "2 AWG",
        "1 AWG",
        "1/0 AWG",
        "2/0 AWG",
        "3/0 AWG",
        "4/0 AWG",
        "250 kcmil",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
      ],
    },
  },
  about: {
    rules: "The rule set.",
    wiring: "How the cable runs.",
    phases: "Phases that feed the unit: two or three loaded conductors in metric tables.",
    deviceRating:
      "Rating of the device ahead, more than 0; decides the termination column where it is not marked.",
    size: "The size.",
  },
};

export const OperatingModeShape: Shape = {
  type: "OperatingMode",
  words: ["cooling", "heating", "emergency heating", "defrost"],
};

export const LoadShape: Shape = {
  type: "Load",
  fields: {
    kind: { words: ["other", "compressor", "motor", "heater"] },
    current: "current",
    "branchCircuitSelectionCurrent?": "current",
    "lockedRotorCurrent?": "current",
    "power?": "power",
    "count?": "number",
    "runsIn?": { list: OperatingModeShape },
  },
  says: "One load of a unit, or several alike.",
  about: {
    kind: "Compressor, fan or other motor, electric heater, or anything else.",
    current:
      "Rated-load current of a compressor, full-load current of a motor, current of the rest; above 0.",
    branchCircuitSelectionCurrent:
      "Branch-circuit selection current, where one is marked: it takes the place of the rated-load current.",
    lockedRotorCurrent: "Locked-rotor current, where it is marked.",
    power: "Power of a heater; from 50 kW in all another formula holds.",
    count: "How many alike; 1 when left out.",
    runsIn:
      "Modes in which it runs; every mode when left out. Loads that share no mode never add up.",
  },
};

export const AssessNameplateInputShape: Shape = {
  type: "AssessNameplateInput",
  fields: {
    loads: { list: LoadShape },
    minimumCircuitAmpacity: "current",
    maximumOvercurrentProtection: "current",
  },
  about: {
    loads: "The parts of the unit.",
    minimumCircuitAmpacity: "As marked.",
    maximumOvercurrentProtection: "As marked.",
  },
};

export const NameplateModeShape: Shape = {
  type: "NameplateMode",
  fields: {
    mode: { words: ["cooling", "heating", "emergency heating", "defrost", "any"] },
    minimumCircuitAmpacity: "current",
    calculatedProtection: "current",
    maximumOvercurrentProtection: "current",
    ratedLoadCurrent: "current",
    steps: { list: LineAssessmentReasonsItemShape },
  },
  says: "The nameplate figures of one operating mode.",
  about: {
    mode: "The mode; any when no load names one.",
    minimumCircuitAmpacity: "Minimum circuit ampacity, unrounded.",
    calculatedProtection:
      "2.25 × largest motor + everything else, before rounding to a standard size.",
    maximumOvercurrentProtection: "Largest standard size of overcurrent protection.",
    ratedLoadCurrent:
      "Sum of the currents at rated load, without the small loads that do not count.",
    steps: "How the size was come by.",
  },
};

export const NameplateFromPartsShape: Shape = {
  type: "NameplateFromParts",
  fields: {
    assumptions: { list: LineAssessmentReasonsItemShape },
    cautions: { list: LineAssessmentCautionsItemShape },
    sources: { list: CitationShape },
    minimumCircuitAmpacity: "current",
    maximumOvercurrentProtection: "current",
    disconnectRating: "current",
    modes: { list: NameplateModeShape },
  },
  says: "Nameplate figures from the parts of a unit.",
  about: {
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    sources: "Where the rules and figures come from.",
    minimumCircuitAmpacity: "The largest of the modes. A maker prints it rounded to 0.1 A or 1 A.",
    maximumOvercurrentProtection: "The largest of the modes. A maker may mark less.",
    disconnectRating: "Smallest disconnect: 115 % of the largest sum of rated-load currents.",
    modes: "Each mode by itself.",
  },
};

export const NameplateAssessmentShape: Shape = {
  type: "NameplateAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["ampacity-too-low", "protection-too-high"] },
    reasons: { list: LineAssessmentReasonsItemShape },
    assumptions: { list: LineAssessmentReasonsItemShape },
    cautions: { list: LineAssessmentCautionsItemShape },
    "actions?": { list: LineAssessmentReasonsItemShape },
    sources: { list: CitationShape },
    calculated: NameplateFromPartsShape,
  },
  says: "The plate's figures against those from the parts.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    calculated: "The figures from the parts.",
  },
};

export const FittedDeviceShape: Shape = {
  type: "FittedDevice",
  fields: {
    kind: { words: ["breaker", "fuse"] },
    rating: "current",
    "poles?": { words: [2, 1, 3] },
    "voltageRating?": {
      words: [
        "120/240 V",
        "480Y/277 V",
        "600Y/347 V",
        "230/400 V",
        "120 V",
        "240 V",
        "277 V",
        "480 V",
        "600 V",
        "230 V",
        "400 V",
      ],
    },
    "hacr?": "flag",
    "curve?": { words: ["B", "C", "D"] },
  },
  says: "The breaker or the fuses at the start of the circuit.",
  about: {
    kind: "Breaker or fuse.",
    rating: "Rating, more than 0.",
    poles: "Poles that open together.",
    voltageRating: "Voltage marking.",
    hacr: "Whether a breaker is marked HACR.",
    curve: "Curve of a miniature breaker.",
  },
};

export const FittedDisconnectWorkingSpaceShape: Shape = {
  type: "FittedDisconnectWorkingSpace",
  fields: {
    depth: "length",
    width: "length",
    height: "length",
    "equipmentWidth?": "length",
    "condition?": { words: [2, 1, 3] },
  },
  about: {
    depth: "Depth in front.",
    width: "Width.",
    height: "Clear height from the ground or platform.",
    equipmentWidth: "Width of the equipment, where it is wider than the least width.",
    condition:
      "Opposite the live parts: 1 nothing grounded, 2 grounded parts, 3 other live parts; 3 is assumed.",
  },
};

export const FittedDisconnectShape: Shape = {
  type: "FittedDisconnect",
  fields: {
    rating: "current",
    "fuse?": "current",
    "visible?": "flag",
    "distance?": "length",
    "readilyAccessible?": "flag",
    "inTheWay?": "flag",
    "workingSpace?": FittedDisconnectWorkingSpaceShape,
  },
  says: "The disconnect at the unit.",
  about: {
    rating: "Rating, more than 0.",
    fuse: "Rating of the fuses in it; leave out for a non-fused one.",
    visible: "Whether it can be seen from the unit.",
    distance: "How far it is from the unit.",
    readilyAccessible: "Whether it can be reached without a ladder and without moving anything.",
    inTheWay: "Whether it hides the nameplate or hangs on a panel that has to come off.",
    workingSpace: "Clear space in front of it.",
  },
};

export const CircuitFromNameplateInputInstalledShape: Shape = {
  type: "CircuitFromNameplateInputInstalled",
  fields: {
    "device?": FittedDeviceShape,
    "conductor?": {
      words: [
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "8 AWG",
        "6 AWG",
        "4 AWG",
        "3 AWG",
        "2 AWG",
        "1 AWG",
        "1/0 AWG",
        "2/0 AWG",
        "3/0 AWG",
        "4/0 AWG",
        "250 kcmil",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
      ],
    },
    "equipmentGrounding?": {
      words: [
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "8 AWG",
        "6 AWG",
        "4 AWG",
        "3 AWG",
        "2 AWG",
        "1 AWG",
        "1/0 AWG",
        "2/0 AWG",
        "3/0 AWG",
        "4/0 AWG",
        "250 kcmil",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
      ],
    },
    "disconnect?": FittedDisconnectShape,
  },
};

export const CircuitFromNameplateInputShape: Shape = {
  type: "CircuitFromNameplateInput",
  fields: {
    rules: byRules,
    minimumCircuitAmpacity: "current",
    maximumOvercurrentProtection: "current",
    "protectionMarking?": {
      words: ["fuse only", "fuse or HACR breaker", "fuse or breaker", "max overcurrent protection"],
    },
    "ratedLoadCurrent?": "current",
    "lockedRotorCurrent?": "current",
    "powerFactor?": "number",
    "equipment?": { words: ["other", "motor-compressor"] },
    "occupancy?": { words: ["other", "dwelling"] },
    supply: SupplyShape,
    wiring: {
      by: "insulation",
      cases: {
        "60 °C": AwgWiringShape,
        "75 °C": AwgWiringShape,
        "90 °C": AwgWiringShape,
        "70 °C": MetricWiringShape,
      },
    },
    "installed?": CircuitFromNameplateInputInstalledShape,
  },
};

export const CircuitFromNameplateResultDeviceShape: Shape = {
  type: "CircuitFromNameplateResultDevice",
  fields: {
    rating: "current",
    ratings: { list: "current" },
    kind: { words: ["fuse", "fuse or breaker"] },
    system: SupplySystemNameShape,
    poles: { words: [2, 1, 3] },
    voltsToGround: "number",
    voltsBetween: "number",
    voltageRating: VoltageRatingShape,
  },
  about: {
    rating:
      "The one proposed: the largest standard size that the plate allows, or the smallest under metric rules.",
    ratings:
      "Every standard size from the minimum circuit ampacity up to the marked maximum; empty where none lies between.",
    kind: "What the plate asks for.",
    system: "The service, as given or assumed.",
    poles: "Poles that open together; a neutral is not counted.",
    voltsToGround: "Nominal volts from the worst conductor to ground.",
    voltsBetween: "Nominal volts between the conductors.",
    voltageRating: "Lowest voltage marking that will do.",
  },
};

export const CircuitFromNameplateResultEquipmentGroundingShape: Shape = {
  type: "CircuitFromNameplateResultEquipmentGrounding",
  fields: {
    size: {
      words: [
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "8 AWG",
        "6 AWG",
        "4 AWG",
        "3 AWG",
        "2 AWG",
        "1 AWG",
        "1/0 AWG",
        "2/0 AWG",
        "3/0 AWG",
        "4/0 AWG",
        "250 kcmil",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
      ],
    },
    tableSize: {
      words: [
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "8 AWG",
        "6 AWG",
        "4 AWG",
        "3 AWG",
        "2 AWG",
        "1 AWG",
        "1/0 AWG",
        "2/0 AWG",
        "3/0 AWG",
        "4/0 AWG",
        "250 kcmil",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
      ],
    },
    areaFactor: "number",
  },
};

export const WorkingSpaceShape: Shape = {
  type: "WorkingSpace",
  fields: { depth: "length", width: "length", height: "length" },
  says: "Clear space in front of the disconnect.",
  about: {
    depth: "Depth in front, for the deepest condition or the one stated.",
    width: "Width; the width of the equipment where that is more.",
    height: "Height from the ground; the height of the equipment where that is more.",
  },
};

export const RequiredDisconnectShape: Shape = {
  type: "RequiredDisconnect",
  fields: {
    minimumRating: "current",
    "madeSize?": "current",
    nonFusedAllowed: "flag",
    "withinSight?": "length",
    "workingSpace?": WorkingSpaceShape,
  },
  says: "What the disconnect has to be.",
  about: {
    minimumRating: "115 % of the rated-load currents (metric rules: the currents themselves).",
    madeSize: "The next made size; common practice, no source. Left out above the largest.",
    nonFusedAllowed:
      "Whether one without fuses will do: the device ahead already is of the marked kind.",
    withinSight: "Largest distance that counts as within sight, where the rules have one.",
    workingSpace: "Working space in front, where the rules have one.",
  },
};

export const VoltageDropShape: Shape = {
  type: "VoltageDrop",
  fields: { drop: "voltage", ratio: "ratio", atUnit: "voltage" },
  says: "What is lost and what is left.",
  about: {
    drop: "Voltage lost.",
    ratio: "Share of the voltage at the start.",
    atUnit: "Voltage at the unit.",
  },
};

export const CircuitFromNameplateResultVoltageDropShape: Shape = {
  type: "CircuitFromNameplateResultVoltageDrop",
  fields: {
    running: VoltageDropShape,
    "starting?": VoltageDropShape,
    limit: "ratio",
    longestRun: "length",
    "conductorWithinLimit?": {
      words: [
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "8 AWG",
        "6 AWG",
        "4 AWG",
        "3 AWG",
        "2 AWG",
        "1 AWG",
        "1/0 AWG",
        "2/0 AWG",
        "3/0 AWG",
        "4/0 AWG",
        "250 kcmil",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
      ],
    },
  },
};

export const CircuitFromNameplateResultShape: Shape = {
  type: "CircuitFromNameplateResult",
  fields: {
    rules: "text",
    device: CircuitFromNameplateResultDeviceShape,
    conductor: MinimumConductorResultShape,
    "fittedConductor?": MinimumConductorResultShape,
    equipmentGrounding: CircuitFromNameplateResultEquipmentGroundingShape,
    disconnect: RequiredDisconnectShape,
    "voltageDrop?": CircuitFromNameplateResultVoltageDropShape,
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": {
      words: [
        "device-rating",
        "device-kind",
        "device-poles",
        "device-voltage",
        "conductor",
        "equipment-grounding",
        "disconnect-rating",
        "disconnect-fuse",
        "disconnect-place",
        "working-space",
        "voltage-drop",
      ],
    },
    reasons: { list: LineAssessmentReasonsItemShape },
    assumptions: { list: LineAssessmentReasonsItemShape },
    cautions: { list: LineAssessmentCautionsItemShape },
    "actions?": { list: LineAssessmentReasonsItemShape },
    sources: { list: CitationShape },
  },
};

export const CompareSuppliesInputShape: Shape = {
  type: "CompareSuppliesInput",
  fields: {
    rules: byRules,
    power: "power",
    "powerFactor?": "number",
    supplies: { list: SupplyShape },
    wiring: {
      by: "insulation",
      cases: {
        "60 °C": AwgWiringShape,
        "75 °C": AwgWiringShape,
        "90 °C": AwgWiringShape,
        "70 °C": MetricWiringShape,
      },
    },
    "conductor?": {
      words: [
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "8 AWG",
        "6 AWG",
        "4 AWG",
        "3 AWG",
        "2 AWG",
        "1 AWG",
        "1/0 AWG",
        "2/0 AWG",
        "3/0 AWG",
        "4/0 AWG",
        "250 kcmil",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
      ],
    },
  },
  about: {
    rules: "The rule set.",
    power: "Power of the load.",
    powerFactor: "Its power factor.",
    supplies: "The supplies to compare.",
    wiring: "How the cable runs.",
    conductor: "One conductor on which all supplies are compared.",
  },
};

export const CompareSuppliesResultItemShape: Shape = {
  type: "CompareSuppliesResultItem",
  fields: {
    supply: SupplyShape,
    connection: ConnectionShape,
    current: "current",
    ampacity: "current",
    conductor: MinimumConductorResultShape,
    "drop?": VoltageDropShape,
    "dropWithSameConductor?": VoltageDropShape,
  },
};

export const CompressorProtectionInputShape: Shape = {
  type: "CompressorProtectionInput",
  fields: { rules: byRules, loads: { list: LoadShape } },
  about: { rules: "The rule set.", loads: "What the circuit feeds." },
};

export const ProtectionCeilingShape: Shape = {
  type: "ProtectionCeiling",
  fields: { calculated: "current", rating: "current" },
  says: "A ceiling and the standard size under it.",
  about: {
    calculated: "The ceiling, unrounded.",
    rating:
      "Largest standard size that does not exceed it; not required to be below the smallest of the rules.",
  },
};

export const CompressorProtectionShape: Shape = {
  type: "CompressorProtection",
  fields: { normal: ProtectionCeilingShape, "ifItWillNotStart?": ProtectionCeilingShape },
  says: "Ceilings of the protection of a compressor circuit.",
  about: {
    normal:
      "The first choice: 175 % of the rated-load current, or 50 % of the locked-rotor current.",
    ifItWillNotStart:
      "Where the compressor will not start on it: 225 %; left out where the rules have no such step.",
  },
};

export const ConductorResistanceInputShape: Shape = {
  type: "ConductorResistanceInput",
  fields: {
    rules: byRules,
    size: {
      words: [
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "8 AWG",
        "6 AWG",
        "4 AWG",
        "3 AWG",
        "2 AWG",
        "1 AWG",
        "1/0 AWG",
        "2/0 AWG",
        "3/0 AWG",
        "4/0 AWG",
        "250 kcmil",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
      ],
    },
    material: { words: ["copper", "aluminum"] },
    "stranding?": { words: ["solid", "stranded"] },
    "temperature?": "temperature",
  },
  about: {
    rules: "The rule set.",
    size: "The size.",
    material: "The material.",
    stranding: "Solid or stranded.",
    temperature: "Temperature of the conductor.",
  },
};

export const ConduitImpedanceInputShape: Shape = {
  type: "ConduitImpedanceInput",
  fields: {
    rules: byRules,
    size: {
      words: [
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "8 AWG",
        "6 AWG",
        "4 AWG",
        "3 AWG",
        "2 AWG",
        "1 AWG",
        "1/0 AWG",
        "2/0 AWG",
        "3/0 AWG",
        "4/0 AWG",
        "250 kcmil",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
      ],
    },
    material: { words: ["copper", "aluminum"] },
    conduit: { words: ["aluminum", "PVC", "steel"] },
  },
  about: {
    rules: "The rule set.",
    size: "The size.",
    material: "The material.",
    conduit: "The conduit.",
  },
};

export const ConduitImpedanceResultShape: Shape = {
  type: "ConduitImpedanceResult",
  fields: { resistance: "resistancePerLength", reactance: "resistancePerLength" },
  about: { resistance: "Resistance per length.", reactance: "Reactance per length." },
};

export const EquipmentGroundingInputShape: Shape = {
  type: "EquipmentGroundingInput",
  fields: {
    rules: byRules,
    material: { words: ["copper", "aluminum"] },
    deviceRating: "current",
    minimumConductor: {
      words: [
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "8 AWG",
        "6 AWG",
        "4 AWG",
        "3 AWG",
        "2 AWG",
        "1 AWG",
        "1/0 AWG",
        "2/0 AWG",
        "3/0 AWG",
        "4/0 AWG",
        "250 kcmil",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
      ],
    },
    "conductor?": {
      words: [
        "14 AWG",
        "12 AWG",
        "10 AWG",
        "8 AWG",
        "6 AWG",
        "4 AWG",
        "3 AWG",
        "2 AWG",
        "1 AWG",
        "1/0 AWG",
        "2/0 AWG",
        "3/0 AWG",
        "4/0 AWG",
        "250 kcmil",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
      ],
    },
  },
  about: {
    rules: "The rule set.",
    material: "Material of the circuit and grounding conductors.",
    deviceRating: "Rating of the device that is fitted.",
    minimumConductor: "The smallest circuit conductor with enough ampacity as it runs.",
    conductor: "The circuit conductor that is fitted.",
  },
};

export const TripBandInputShape: Shape = {
  type: "TripBandInput",
  fields: { rules: byRules, rating: "current", curve: { words: ["B", "C", "D"] } },
  about: { rules: "The rule set.", rating: "Rating of the breaker.", curve: "Its curve." },
};

export const TripBandShape: Shape = {
  type: "TripBand",
  fields: {
    noTrip: "current",
    trip: "current",
    instantaneousFrom: "current",
    instantaneousTo: "current",
  },
  says: "Currents of a breaker's characteristic.",
  about: {
    noTrip: "Does not trip within the conventional time (1 h up to 63 A).",
    trip: "Trips within the conventional time.",
    instantaneousFrom: "Does not trip at once below this.",
    instantaneousTo: "Trips at once above this.",
  },
};

export const VoltageDropInputShape: Shape = {
  type: "VoltageDropInput",
  fields: {
    current: "current",
    voltage: "voltage",
    phases: { words: [1, 3] },
    length: "length",
    resistance: "resistancePerLength",
    "reactance?": "resistancePerLength",
    "powerFactor?": "number",
  },
  says: "A run and the current in it.",
  about: {
    current:
      "Current, more than 0: the running current for the drop while running, locked-rotor current for the start.",
    voltage: "Voltage at the start of the run, more than 0; line to line for three phases.",
    phases: "Phases: 1 counts the way there and back, 3 counts √3.",
    length: "One-way length, more than 0.",
    resistance: "Resistance of one conductor per length, hot.",
    reactance: "Reactance of one conductor per length; 0 when left out.",
    powerFactor:
      "Power factor, more than 0 up to 1; 1 when left out, which is on the safe side for small conductors.",
  },
};

export const LongestRunInputShape: Shape = {
  type: "LongestRunInput",
  fields: {
    voltage: "voltage",
    current: "current",
    resistance: "resistancePerLength",
    phases: { words: [1, 3] },
    "reactance?": "resistancePerLength",
    "powerFactor?": "number",
    limit: "ratio",
  },
  about: {
    voltage: "Voltage at the start of the run, more than 0; line to line for three phases.",
    current:
      "Current, more than 0: the running current for the drop while running, locked-rotor current for the start.",
    resistance: "Resistance of one conductor per length, hot.",
    phases: "Phases: 1 counts the way there and back, 3 counts √3.",
    reactance: "Reactance of one conductor per length; 0 when left out.",
    powerFactor:
      "Power factor, more than 0 up to 1; 1 when left out, which is on the safe side for small conductors.",
    limit: "Largest drop as a share of the voltage.",
  },
};
