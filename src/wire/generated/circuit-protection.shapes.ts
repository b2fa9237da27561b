// Which shapes have the types of circuit-protection?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import { byRules } from "../named.ts";
import { CitationShape, VerbatimShape } from "./assessment.shapes.ts";
import {
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

export const ProtectiveConductorAreaInputFault1Shape: Shape = {
  type: "ProtectiveConductorAreaInputFault1",
  fields: { current: "current", clearingTime: "duration" },
  about: {
    current: "Fault current, more than 0, from the impedance of the fault loop.",
    clearingTime: "Time until the device clears it, more than 0 up to 5 s.",
  },
};

export const ProtectiveConductorAreaInputFault2Shape: Shape = {
  type: "ProtectiveConductorAreaInputFault2",
  fields: { letThrough: "number" },
  about: { letThrough: "Let-through energy of the device, I²t, in A²s, more than 0." },
};

export const ProtectiveConductorShape: Shape = {
  type: "ProtectiveConductor",
  fields: {
    material: { words: ["copper", "aluminum"] },
    insulation: { words: ["70 °C", "90 °C"] },
    "separate?": "flag",
  },
  says: "What bears it.",
  about: {
    material: "Material.",
    insulation:
      'Insulation that touches it: "70 °C" for PVC (to 160 °C), "90 °C" for XLPE (to 250 °C).',
    separate:
      "Whether it runs apart from the cable, so that it starts at 30 °C; a core of the cable is assumed.",
  },
};

export const ProtectiveConductorAreaInputShape: Shape = {
  type: "ProtectiveConductorAreaInput",
  fields: {
    fault: {
      either: [ProtectiveConductorAreaInputFault1Shape, ProtectiveConductorAreaInputFault2Shape],
    },
    conductor: ProtectiveConductorShape,
  },
  about: { fault: "The fault.", conductor: "The conductor." },
};

export const ProtectiveConductorAreaResultShape: Shape = {
  type: "ProtectiveConductorAreaResult",
  fields: { area: "number", factor: "number" },
  about: {
    area: "Least area in mm².",
    factor: "The factor k of material and temperatures, A·√s/mm².",
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
        "1 mm²",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
        "25 mm²",
        "35 mm²",
        "50 mm²",
        "1.6 mm",
        "2.0 mm",
        "2.6 mm",
        "5.5 mm²",
        "8 mm²",
        "14 mm²",
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
        "1 mm²",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
        "25 mm²",
        "35 mm²",
        "50 mm²",
        "1.6 mm",
        "2.0 mm",
        "2.6 mm",
        "5.5 mm²",
        "8 mm²",
        "14 mm²",
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

export const SupplyShape: Shape = {
  type: "Supply",
  fields: {
    voltage: "voltage",
    phases: { words: [1, 3] },
    "system?": {
      words: [
        "120/240 V",
        "480Y/277 V",
        "600Y/347 V",
        "230/400 V",
        "100/200 V",
        "208Y/120 V",
        "240 V delta",
        "240/120 V high-leg delta",
        "480 V delta",
        "600 V delta",
        "220/380 V",
        "200 V delta",
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
    "220/380 V",
    "100/200 V",
    "200 V delta",
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
    "100 V",
    "100/200 V",
    "200 V",
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

export const EquipmentGroundingInputShape: Shape = {
  type: "EquipmentGroundingInput",
  fields: {
    rules: byRules,
    material: { words: ["copper", "aluminum"] },
    "groundingMaterial?": { words: ["copper", "aluminum"] },
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
        "1 mm²",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
        "25 mm²",
        "35 mm²",
        "50 mm²",
        "1.6 mm",
        "2.0 mm",
        "2.6 mm",
        "5.5 mm²",
        "8 mm²",
        "14 mm²",
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
        "1 mm²",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
        "25 mm²",
        "35 mm²",
        "50 mm²",
        "1.6 mm",
        "2.0 mm",
        "2.6 mm",
        "5.5 mm²",
        "8 mm²",
        "14 mm²",
      ],
    },
  },
  about: {
    rules: "The rule set.",
    material: "Material of the circuit conductors.",
    groundingMaterial:
      "Material of the grounding conductor; that of the circuit conductors when left out.",
    deviceRating: "Rating of the device that is fitted.",
    minimumConductor: "The smallest circuit conductor with enough ampacity as it runs.",
    conductor: "The circuit conductor that is fitted.",
  },
};

export const EquipmentGroundingResultShape: Shape = {
  type: "EquipmentGroundingResult",
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
        "1 mm²",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
        "25 mm²",
        "35 mm²",
        "50 mm²",
        "1.6 mm",
        "2.0 mm",
        "2.6 mm",
        "5.5 mm²",
        "8 mm²",
        "14 mm²",
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
        "1 mm²",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
        "25 mm²",
        "35 mm²",
        "50 mm²",
        "1.6 mm",
        "2.0 mm",
        "2.6 mm",
        "5.5 mm²",
        "8 mm²",
        "14 mm²",
      ],
    },
    areaFactor: "number",
    "ambiguous?": "flag",
  },
};

export const GroundFaultInputShape: Shape = {
  type: "GroundFaultInput",
  fields: {
    rules: byRules,
    supply: SupplyShape,
    rating: "current",
    "occupancy?": { words: ["dwelling", "other"] },
    "date?": "text",
    "powerConversion?": "flag",
    "text?": "text",
  },
  says: "What the answer rests on.",
  about: {
    rules: "A rule set with the clause, such as nec2023.",
    supply: "The supply.",
    rating: "Rating of the branch circuit, more than 0.",
    occupancy: "Where the outlet is; a dwelling is assumed, on the safe side.",
    date: 'Day of the work, as "2026-11-29".',
    powerConversion:
      "Whether the unit has power conversion (an inverter); it is taken as having it.",
    text: "Name of the text that is adopted; the last of the rule set's is taken.",
  },
};

export const GroundFaultAnswerShape: Shape = {
  type: "GroundFaultAnswer",
  fields: {
    answer: { words: ["required", "outside", "exempt", "by-date"] },
    "from?": "text",
    classC: "flag",
  },
  says: "What the clause says to one outlet. outside: not within its reach. exempt: within it, but not yet on that day. required: asked for. by-date: the day was not stated and decides.",
  about: {
    answer: "The answer.",
    from: "First day of the duty, where the text has one.",
    classC: "Whether a listed class C device is permitted.",
  },
};

export const HeaterCurrentInputShape: Shape = {
  type: "HeaterCurrentInput",
  fields: {
    power: "power",
    ratedVoltage: "voltage",
    "supplyVoltage?": "voltage",
    "phases?": { words: [1, 3] },
  },
  about: {
    power: "Marked power.",
    ratedVoltage: "Voltage for which it is marked; line to line for three phases.",
    supplyVoltage: "Voltage that it gets; the rated one when left out.",
    phases: "Phases that feed it; 1 when left out.",
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
        "1 mm²",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
        "25 mm²",
        "35 mm²",
        "50 mm²",
        "1.6 mm",
        "2.0 mm",
        "2.6 mm",
        "5.5 mm²",
        "8 mm²",
        "14 mm²",
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
    material: { words: ["copper", "aluminum"] },
    "ambient?": "temperature",
    "length?": "length",
    "stranding?": { words: ["solid", "stranded"] },
    insulation: { words: ["90 °C", "60 °C", "75 °C"] },
    "terminations?": { words: ["60 °C", "75 °C"] },
    "cable?": { words: ["other", "NM"] },
    "currentCarryingConductors?": "number",
    "aboveRoof?": "length",
    "conduit?": { words: ["aluminum", "PVC", "steel"] },
  },
  says: "Wiring by wire gauge.",
  about: {
    material: "Material of the conductors.",
    ambient:
      "Temperature around the cable at its hottest place; 30 °C is assumed when left out, 20 °C in the ground.",
    length: "One-way length, more than 0; without it no voltage drop is calculated.",
    stranding: "Solid or stranded, for the resistance; stranded is assumed, the higher of the two.",
    insulation: "Rating of the insulation. For NM cable (NM-B, NMD90) 90 °C.",
    terminations:
      "What the terminals at both ends are marked for; when left out, 60 °C up to 100 A and 75 °C above.",
    cable: '"NM" for non-metallic sheathed cable, which some rules hold to its 60 °C column.',
    currentCarryingConductors:
      "Loaded conductors in the same raceway or bundle, grounding conductors not counted; 3 or fewer are assumed.",
    aboveRoof: "Height above a roof in the sun; leave out where there is no roof.",
    conduit: "Conduit, for the alternating-current impedance; used together with a power factor.",
  },
};

export const InstallationMethodShape: Shape = {
  type: "InstallationMethod",
  words: ["A1", "A2", "B1", "B2", "C", "D1", "D2", "E", "A", "100", "101", "102", "103"],
};

export const MetricWiringShape: Shape = {
  type: "MetricWiring",
  fields: {
    material: { words: ["copper", "aluminum"] },
    "ambient?": "temperature",
    "length?": "length",
    "stranding?": { words: ["solid", "stranded"] },
    insulation: { words: ["70 °C", "90 °C"] },
    method: InstallationMethodShape,
    "groupedCircuits?": "number",
    "grouping?": { words: ["bunched", "single layer", "perforated tray"] },
    "soilResistivity?": "number",
    "insulationLength?": "length",
  },
  says: "Wiring by cross-section and method of installation.",
  about: {
    material: "Material of the conductors.",
    ambient:
      "Temperature around the cable at its hottest place; 30 °C is assumed when left out, 20 °C in the ground.",
    length: "One-way length, more than 0; without it no voltage drop is calculated.",
    stranding: "Solid or stranded, for the resistance; stranded is assumed, the higher of the two.",
    insulation: '"70 °C" for PVC, "90 °C" for XLPE and EPR.',
    method: "Reference method.",
    groupedCircuits: "Circuits that run together, this one included; 1 is assumed.",
    grouping: "How they run together; bunched or enclosed is assumed, in the ground touching.",
    soilResistivity: "Thermal resistivity of the soil in K·m/W, methods D1 and D2; 2.5 is assumed.",
    insulationLength: "Length over which the cable is surrounded by thermal insulation.",
  },
};

export const MinimumConductorInputShape: Shape = {
  type: "MinimumConductorInput",
  fields: {
    rules: byRules,
    wiring: { either: [AwgWiringShape, MetricWiringShape] },
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
        "1 mm²",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
        "25 mm²",
        "35 mm²",
        "50 mm²",
        "1.6 mm",
        "2.0 mm",
        "2.6 mm",
        "5.5 mm²",
        "8 mm²",
        "14 mm²",
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

export const OperatingModeShape: Shape = {
  type: "OperatingMode",
  words: ["cooling", "heating", "emergency heating", "defrost"],
};

export const LoadShape: Shape = {
  type: "Load",
  fields: {
    kind: { words: ["compressor", "other", "motor", "heater"] },
    "current?": "current",
    "branchCircuitSelectionCurrent?": "current",
    "lockedRotorCurrent?": "current",
    "power?": "power",
    "ratedVoltage?": "voltage",
    "supplyVoltage?": "voltage",
    "phases?": { words: [1, 3] },
    "count?": "number",
    "runsIn?": { list: OperatingModeShape },
  },
  says: "One load of a unit, or several alike.",
  about: {
    kind: "Compressor, fan or other motor, electric heater, or anything else.",
    current:
      "Rated-load current of a compressor, full-load current of a motor, current of the rest; above 0. A heater may state its power and voltage instead.",
    branchCircuitSelectionCurrent:
      "Branch-circuit selection current, where one is marked: it takes the place of the rated-load current.",
    lockedRotorCurrent: "Locked-rotor current, where it is marked.",
    power: "Power of a heater; from 50 kW in all another formula holds.",
    ratedVoltage: "Voltage for which a heater's power is marked, in place of its current.",
    supplyVoltage: "Voltage that the heater gets; the rated one when left out.",
    phases: "Phases that feed the heater; 1 when left out.",
    count: "How many alike; 1 when left out.",
    runsIn:
      "Modes in which it runs; every mode when left out. Loads that share no mode never add up.",
  },
};

export const MinimumDisconnectInputShape: Shape = {
  type: "MinimumDisconnectInput",
  fields: { rules: byRules, loads: { list: LoadShape } },
  about: { rules: "The rule set.", loads: "What it switches." },
};

export const UsableAmpacityInputShape: Shape = {
  type: "UsableAmpacityInput",
  fields: {
    rules: byRules,
    wiring: { either: [AwgWiringShape, MetricWiringShape] },
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
        "1 mm²",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
        "25 mm²",
        "35 mm²",
        "50 mm²",
        "1.6 mm",
        "2.0 mm",
        "2.6 mm",
        "5.5 mm²",
        "8 mm²",
        "14 mm²",
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

export const AssessNameplateInputShape: Shape = {
  type: "AssessNameplateInput",
  fields: {
    loads: { list: LoadShape },
    minimumCircuitAmpacity: "current",
    maximumOvercurrentProtection: "current",
    "printedTo?": "current",
    "standard?": { words: ["UL 1995", "UL 60335-2-40"] },
  },
  about: {
    loads: "The parts of the unit.",
    minimumCircuitAmpacity: "As marked.",
    maximumOvercurrentProtection: "As marked.",
    printedTo:
      "Last digit that is printed of the ampacity; 1 A is taken for a whole number, else 0.1 A.",
    standard: "The standard of the nameplate; UL 1995 when left out.",
  },
};

export const CircuitProtectionDeviceRatingMetValuesShape: Shape = {
  type: "CircuitProtectionDeviceRatingMetValues",
  fields: {
    device: { words: ["circuit-protection.device.breaker", "circuit-protection.device.fuse"] },
    rating: "current",
    limit: "current",
  },
};

export const CircuitProtectionDeviceRatingMetShape: Shape = {
  type: "CircuitProtectionDeviceRatingMet",
  fields: {
    code: { words: ["circuit-protection.device-rating-met"] },
    values: CircuitProtectionDeviceRatingMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDeviceTooLargeValuesShape: Shape = {
  type: "CircuitProtectionDeviceTooLargeValues",
  fields: {
    device: { words: ["circuit-protection.device.breaker", "circuit-protection.device.fuse"] },
    rating: "current",
    limit: "current",
  },
};

export const CircuitProtectionDeviceTooLargeShape: Shape = {
  type: "CircuitProtectionDeviceTooLarge",
  fields: {
    code: { words: ["circuit-protection.device-too-large"] },
    values: CircuitProtectionDeviceTooLargeValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDeviceBelowLoadValuesShape: Shape = {
  type: "CircuitProtectionDeviceBelowLoadValues",
  fields: {
    device: { words: ["circuit-protection.device.breaker", "circuit-protection.device.fuse"] },
    rating: "current",
    load: "current",
  },
};

export const CircuitProtectionDeviceBelowLoadShape: Shape = {
  type: "CircuitProtectionDeviceBelowLoad",
  fields: {
    code: { words: ["circuit-protection.device-below-load"] },
    values: CircuitProtectionDeviceBelowLoadValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDeviceBelowAmpacityValuesShape: Shape = {
  type: "CircuitProtectionDeviceBelowAmpacityValues",
  fields: {
    device: { words: ["circuit-protection.device.breaker", "circuit-protection.device.fuse"] },
    rating: "current",
    ampacity: "current",
  },
};

export const CircuitProtectionDeviceBelowAmpacityShape: Shape = {
  type: "CircuitProtectionDeviceBelowAmpacity",
  fields: {
    code: { words: ["circuit-protection.device-below-ampacity"] },
    values: CircuitProtectionDeviceBelowAmpacityValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDeviceKindMetValuesShape: Shape = {
  type: "CircuitProtectionDeviceKindMetValues",
  fields: {
    device: { words: ["circuit-protection.device.breaker", "circuit-protection.device.fuse"] },
  },
};

export const CircuitProtectionDeviceKindMetShape: Shape = {
  type: "CircuitProtectionDeviceKindMet",
  fields: {
    code: { words: ["circuit-protection.device-kind-met"] },
    values: CircuitProtectionDeviceKindMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFuseRequiredShape: Shape = {
  type: "CircuitProtectionFuseRequired",
  fields: {
    code: { words: ["circuit-protection.fuse-required"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionPolesMetValuesShape: Shape = {
  type: "CircuitProtectionPolesMetValues",
  fields: { poles: "number", needed: "number" },
};

export const CircuitProtectionPolesMetShape: Shape = {
  type: "CircuitProtectionPolesMet",
  fields: {
    code: { words: ["circuit-protection.poles-met"] },
    values: CircuitProtectionPolesMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionPolesTooFewValuesShape: Shape = {
  type: "CircuitProtectionPolesTooFewValues",
  fields: { poles: "number", needed: "number" },
};

export const CircuitProtectionPolesTooFewShape: Shape = {
  type: "CircuitProtectionPolesTooFew",
  fields: {
    code: { words: ["circuit-protection.poles-too-few"] },
    values: CircuitProtectionPolesTooFewValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionPolesNotStatedValuesShape: Shape = {
  type: "CircuitProtectionPolesNotStatedValues",
  fields: { needed: "number" },
};

export const CircuitProtectionPolesNotStatedShape: Shape = {
  type: "CircuitProtectionPolesNotStated",
  fields: {
    code: { words: ["circuit-protection.poles-not-stated"] },
    values: CircuitProtectionPolesNotStatedValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionVoltageMarkingMetValuesShape: Shape = {
  type: "CircuitProtectionVoltageMarkingMetValues",
  fields: { marking: VerbatimShape },
};

export const CircuitProtectionVoltageMarkingMetShape: Shape = {
  type: "CircuitProtectionVoltageMarkingMet",
  fields: {
    code: { words: ["circuit-protection.voltage-marking-met"] },
    values: CircuitProtectionVoltageMarkingMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionVoltageMarkingTooLowValuesShape: Shape = {
  type: "CircuitProtectionVoltageMarkingTooLowValues",
  fields: { marking: VerbatimShape, needed: VerbatimShape, system: VerbatimShape },
};

export const CircuitProtectionVoltageMarkingTooLowShape: Shape = {
  type: "CircuitProtectionVoltageMarkingTooLow",
  fields: {
    code: { words: ["circuit-protection.voltage-marking-too-low"] },
    values: CircuitProtectionVoltageMarkingTooLowValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionVoltageMarkingNotStatedValuesShape: Shape = {
  type: "CircuitProtectionVoltageMarkingNotStatedValues",
  fields: { system: VerbatimShape },
};

export const CircuitProtectionVoltageMarkingNotStatedShape: Shape = {
  type: "CircuitProtectionVoltageMarkingNotStated",
  fields: {
    code: { words: ["circuit-protection.voltage-marking-not-stated"] },
    values: CircuitProtectionVoltageMarkingNotStatedValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDeviceNotStatedShape: Shape = {
  type: "CircuitProtectionDeviceNotStated",
  fields: {
    code: { words: ["circuit-protection.device-not-stated"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionNoStandardDeviceValuesShape: Shape = {
  type: "CircuitProtectionNoStandardDeviceValues",
  fields: { maximum: "current", ampacity: "current" },
};

export const CircuitProtectionNoStandardDeviceShape: Shape = {
  type: "CircuitProtectionNoStandardDevice",
  fields: {
    code: { words: ["circuit-protection.no-standard-device"] },
    values: CircuitProtectionNoStandardDeviceValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionMaximumTooHighShape: Shape = {
  type: "CircuitProtectionMaximumTooHigh",
  fields: {
    code: { words: ["circuit-protection.maximum-too-high"] },
    values: CircuitProtectionNoStandardDeviceValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionMaximumNotStatedShape: Shape = {
  type: "CircuitProtectionMaximumNotStated",
  fields: {
    code: { words: ["circuit-protection.maximum-not-stated"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionConductorMetValuesShape: Shape = {
  type: "CircuitProtectionConductorMetValues",
  fields: {
    section: { words: ["circuit-protection.section.run", "circuit-protection.section.whip"] },
    size: VerbatimShape,
    usable: "current",
    ampacity: "current",
    rating: "current",
  },
};

export const CircuitProtectionConductorMetShape: Shape = {
  type: "CircuitProtectionConductorMet",
  fields: {
    code: { words: ["circuit-protection.conductor-met"] },
    values: CircuitProtectionConductorMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionConductorTooSmallShape: Shape = {
  type: "CircuitProtectionConductorTooSmall",
  fields: {
    code: { words: ["circuit-protection.conductor-too-small"] },
    values: CircuitProtectionConductorMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionConductorUnprotectedShape: Shape = {
  type: "CircuitProtectionConductorUnprotected",
  fields: {
    code: { words: ["circuit-protection.conductor-unprotected"] },
    values: CircuitProtectionConductorMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionConductorNotStatedShape: Shape = {
  type: "CircuitProtectionConductorNotStated",
  fields: {
    code: { words: ["circuit-protection.conductor-not-stated"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionConductorNotJudgedValuesShape: Shape = {
  type: "CircuitProtectionConductorNotJudgedValues",
  fields: { size: VerbatimShape, clause: VerbatimShape },
};

export const CircuitProtectionConductorNotJudgedShape: Shape = {
  type: "CircuitProtectionConductorNotJudged",
  fields: {
    code: { words: ["circuit-protection.conductor-not-judged"] },
    values: CircuitProtectionConductorNotJudgedValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionEquipmentNotStatedValuesShape: Shape = {
  type: "CircuitProtectionEquipmentNotStatedValues",
  fields: { size: VerbatimShape, rating: "current" },
};

export const CircuitProtectionEquipmentNotStatedShape: Shape = {
  type: "CircuitProtectionEquipmentNotStated",
  fields: {
    code: { words: ["circuit-protection.equipment-not-stated"] },
    values: CircuitProtectionEquipmentNotStatedValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionAluminumTerminalsMetShape: Shape = {
  type: "CircuitProtectionAluminumTerminalsMet",
  fields: {
    code: { words: ["circuit-protection.aluminum-terminals-met"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionAluminumTerminalsMissingShape: Shape = {
  type: "CircuitProtectionAluminumTerminalsMissing",
  fields: {
    code: { words: ["circuit-protection.aluminum-terminals-missing"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionAluminumTerminalsNotStatedShape: Shape = {
  type: "CircuitProtectionAluminumTerminalsNotStated",
  fields: {
    code: { words: ["circuit-protection.aluminum-terminals-not-stated"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionGroundingMetValuesShape: Shape = {
  type: "CircuitProtectionGroundingMetValues",
  fields: { fitted: VerbatimShape, size: VerbatimShape },
};

export const CircuitProtectionGroundingMetShape: Shape = {
  type: "CircuitProtectionGroundingMet",
  fields: {
    code: { words: ["circuit-protection.grounding-met"] },
    values: CircuitProtectionGroundingMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionGroundingTooSmallValuesShape: Shape = {
  type: "CircuitProtectionGroundingTooSmallValues",
  fields: { fitted: VerbatimShape, size: VerbatimShape },
};

export const CircuitProtectionGroundingTooSmallShape: Shape = {
  type: "CircuitProtectionGroundingTooSmall",
  fields: {
    code: { words: ["circuit-protection.grounding-too-small"] },
    values: CircuitProtectionGroundingTooSmallValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionGroundingByEnergyMetValuesShape: Shape = {
  type: "CircuitProtectionGroundingByEnergyMetValues",
  fields: { fitted: VerbatimShape, area: "number" },
};

export const CircuitProtectionGroundingByEnergyMetShape: Shape = {
  type: "CircuitProtectionGroundingByEnergyMet",
  fields: {
    code: { words: ["circuit-protection.grounding-by-energy-met"] },
    values: CircuitProtectionGroundingByEnergyMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionGroundingByEnergyShortValuesShape: Shape = {
  type: "CircuitProtectionGroundingByEnergyShortValues",
  fields: { fitted: VerbatimShape, area: "number" },
};

export const CircuitProtectionGroundingByEnergyShortShape: Shape = {
  type: "CircuitProtectionGroundingByEnergyShort",
  fields: {
    code: { words: ["circuit-protection.grounding-by-energy-short"] },
    values: CircuitProtectionGroundingByEnergyShortValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionGroundingNeedsEnergyValuesShape: Shape = {
  type: "CircuitProtectionGroundingNeedsEnergyValues",
  fields: { fitted: VerbatimShape, size: VerbatimShape },
};

export const CircuitProtectionGroundingNeedsEnergyShape: Shape = {
  type: "CircuitProtectionGroundingNeedsEnergy",
  fields: {
    code: { words: ["circuit-protection.grounding-needs-energy"] },
    values: CircuitProtectionGroundingNeedsEnergyValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionGroundingTwoReadingsValuesShape: Shape = {
  type: "CircuitProtectionGroundingTwoReadingsValues",
  fields: { size: VerbatimShape, clause: VerbatimShape },
};

export const CircuitProtectionGroundingTwoReadingsShape: Shape = {
  type: "CircuitProtectionGroundingTwoReadings",
  fields: {
    code: { words: ["circuit-protection.grounding-two-readings"] },
    values: CircuitProtectionGroundingTwoReadingsValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionGroundingWireMissingValuesShape: Shape = {
  type: "CircuitProtectionGroundingWireMissingValues",
  fields: { clause: VerbatimShape },
};

export const CircuitProtectionGroundingWireMissingShape: Shape = {
  type: "CircuitProtectionGroundingWireMissing",
  fields: {
    code: { words: ["circuit-protection.grounding-wire-missing"] },
    values: CircuitProtectionGroundingWireMissingValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectRatingMetValuesShape: Shape = {
  type: "CircuitProtectionDisconnectRatingMetValues",
  fields: { rating: "current", needed: "current" },
};

export const CircuitProtectionDisconnectRatingMetShape: Shape = {
  type: "CircuitProtectionDisconnectRatingMet",
  fields: {
    code: { words: ["circuit-protection.disconnect-rating-met"] },
    values: CircuitProtectionDisconnectRatingMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectTooSmallValuesShape: Shape = {
  type: "CircuitProtectionDisconnectTooSmallValues",
  fields: { rating: "current", needed: "current" },
};

export const CircuitProtectionDisconnectTooSmallShape: Shape = {
  type: "CircuitProtectionDisconnectTooSmall",
  fields: {
    code: { words: ["circuit-protection.disconnect-too-small"] },
    values: CircuitProtectionDisconnectTooSmallValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionLargestLoadNotStatedValuesShape: Shape = {
  type: "CircuitProtectionLargestLoadNotStatedValues",
  fields: { rating: "current", needed: "current" },
};

export const CircuitProtectionLargestLoadNotStatedShape: Shape = {
  type: "CircuitProtectionLargestLoadNotStated",
  fields: {
    code: { words: ["circuit-protection.largest-load-not-stated"] },
    values: CircuitProtectionLargestLoadNotStatedValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectFuseMetValuesShape: Shape = {
  type: "CircuitProtectionDisconnectFuseMetValues",
  fields: { fuse: "current", limit: "current" },
};

export const CircuitProtectionDisconnectFuseMetShape: Shape = {
  type: "CircuitProtectionDisconnectFuseMet",
  fields: {
    code: { words: ["circuit-protection.disconnect-fuse-met"] },
    values: CircuitProtectionDisconnectFuseMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectFuseTooLargeValuesShape: Shape = {
  type: "CircuitProtectionDisconnectFuseTooLargeValues",
  fields: { fuse: "current", limit: "current" },
};

export const CircuitProtectionDisconnectFuseTooLargeShape: Shape = {
  type: "CircuitProtectionDisconnectFuseTooLarge",
  fields: {
    code: { words: ["circuit-protection.disconnect-fuse-too-large"] },
    values: CircuitProtectionDisconnectFuseTooLargeValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectInSightShape: Shape = {
  type: "CircuitProtectionDisconnectInSight",
  fields: {
    code: { words: ["circuit-protection.disconnect-in-sight"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectOutOfSightShape: Shape = {
  type: "CircuitProtectionDisconnectOutOfSight",
  fields: {
    code: { words: ["circuit-protection.disconnect-out-of-sight"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectNearValuesShape: Shape = {
  type: "CircuitProtectionDisconnectNearValues",
  fields: { distance: "length", limit: "length" },
};

export const CircuitProtectionDisconnectNearShape: Shape = {
  type: "CircuitProtectionDisconnectNear",
  fields: {
    code: { words: ["circuit-protection.disconnect-near"] },
    values: CircuitProtectionDisconnectNearValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectTooFarValuesShape: Shape = {
  type: "CircuitProtectionDisconnectTooFarValues",
  fields: { distance: "length", limit: "length" },
};

export const CircuitProtectionDisconnectTooFarShape: Shape = {
  type: "CircuitProtectionDisconnectTooFar",
  fields: {
    code: { words: ["circuit-protection.disconnect-too-far"] },
    values: CircuitProtectionDisconnectTooFarValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectAccessibleShape: Shape = {
  type: "CircuitProtectionDisconnectAccessible",
  fields: {
    code: { words: ["circuit-protection.disconnect-accessible"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectNotAccessibleShape: Shape = {
  type: "CircuitProtectionDisconnectNotAccessible",
  fields: {
    code: { words: ["circuit-protection.disconnect-not-accessible"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectClearShape: Shape = {
  type: "CircuitProtectionDisconnectClear",
  fields: {
    code: { words: ["circuit-protection.disconnect-clear"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectInTheWayShape: Shape = {
  type: "CircuitProtectionDisconnectInTheWay",
  fields: {
    code: { words: ["circuit-protection.disconnect-in-the-way"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectLockableShape: Shape = {
  type: "CircuitProtectionDisconnectLockable",
  fields: {
    code: { words: ["circuit-protection.disconnect-lockable"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectNotLockableShape: Shape = {
  type: "CircuitProtectionDisconnectNotLockable",
  fields: {
    code: { words: ["circuit-protection.disconnect-not-lockable"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectOffUnitShape: Shape = {
  type: "CircuitProtectionDisconnectOffUnit",
  fields: {
    code: { words: ["circuit-protection.disconnect-off-unit"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDisconnectOnUnitShape: Shape = {
  type: "CircuitProtectionDisconnectOnUnit",
  fields: {
    code: { words: ["circuit-protection.disconnect-on-unit"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionWorkingSpaceMetValuesShape: Shape = {
  type: "CircuitProtectionWorkingSpaceMetValues",
  fields: { depth: "length", width: "length", height: "length" },
};

export const CircuitProtectionWorkingSpaceMetShape: Shape = {
  type: "CircuitProtectionWorkingSpaceMet",
  fields: {
    code: { words: ["circuit-protection.working-space-met"] },
    values: CircuitProtectionWorkingSpaceMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionWorkingSpaceShortShape: Shape = {
  type: "CircuitProtectionWorkingSpaceShort",
  fields: {
    code: { words: ["circuit-protection.working-space-short"] },
    values: CircuitProtectionWorkingSpaceMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionReceptacleMetValuesShape: Shape = {
  type: "CircuitProtectionReceptacleMetValues",
  fields: { distance: "length", limit: "length" },
};

export const CircuitProtectionReceptacleMetShape: Shape = {
  type: "CircuitProtectionReceptacleMet",
  fields: {
    code: { words: ["circuit-protection.receptacle-met"] },
    values: CircuitProtectionReceptacleMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionReceptacleTooFarValuesShape: Shape = {
  type: "CircuitProtectionReceptacleTooFarValues",
  fields: { distance: "length", limit: "length" },
};

export const CircuitProtectionReceptacleTooFarShape: Shape = {
  type: "CircuitProtectionReceptacleTooFar",
  fields: {
    code: { words: ["circuit-protection.receptacle-too-far"] },
    values: CircuitProtectionReceptacleTooFarValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionReceptacleOnLoadSideShape: Shape = {
  type: "CircuitProtectionReceptacleOnLoadSide",
  fields: {
    code: { words: ["circuit-protection.receptacle-on-load-side"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionVoltageDropMetValuesShape: Shape = {
  type: "CircuitProtectionVoltageDropMetValues",
  fields: { drop: "ratio", limit: "ratio" },
};

export const CircuitProtectionVoltageDropMetShape: Shape = {
  type: "CircuitProtectionVoltageDropMet",
  fields: {
    code: { words: ["circuit-protection.voltage-drop-met"] },
    values: CircuitProtectionVoltageDropMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionVoltageDropAboveLimitShape: Shape = {
  type: "CircuitProtectionVoltageDropAboveLimit",
  fields: {
    code: { words: ["circuit-protection.voltage-drop-above-limit"] },
    values: CircuitProtectionVoltageDropMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionResidualCurrentMetValuesShape: Shape = {
  type: "CircuitProtectionResidualCurrentMetValues",
  fields: { rated: "current" },
};

export const CircuitProtectionResidualCurrentMetShape: Shape = {
  type: "CircuitProtectionResidualCurrentMet",
  fields: {
    code: { words: ["circuit-protection.residual-current-met"] },
    values: CircuitProtectionResidualCurrentMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionResidualCurrentMissingShape: Shape = {
  type: "CircuitProtectionResidualCurrentMissing",
  fields: {
    code: { words: ["circuit-protection.residual-current-missing"] },
    values: CircuitProtectionGroundingWireMissingValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionResidualCurrentTooHighValuesShape: Shape = {
  type: "CircuitProtectionResidualCurrentTooHighValues",
  fields: { rated: "current", limit: "current" },
};

export const CircuitProtectionResidualCurrentTooHighShape: Shape = {
  type: "CircuitProtectionResidualCurrentTooHigh",
  fields: {
    code: { words: ["circuit-protection.residual-current-too-high"] },
    values: CircuitProtectionResidualCurrentTooHighValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionResidualCurrentNotStatedShape: Shape = {
  type: "CircuitProtectionResidualCurrentNotStated",
  fields: {
    code: { words: ["circuit-protection.residual-current-not-stated"] },
    values: CircuitProtectionGroundingWireMissingValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionNotConfirmedValuesShape: Shape = {
  type: "CircuitProtectionNotConfirmedValues",
  fields: {
    point: {
      words: [
        "circuit-protection.point.marked-values",
        "circuit-protection.point.device-ratings",
        "circuit-protection.point.poles",
        "circuit-protection.point.voltage-marking",
        "circuit-protection.point.overload",
        "circuit-protection.point.ampacity",
        "circuit-protection.point.terminations",
        "circuit-protection.point.sheathed-cable",
        "circuit-protection.point.ambient",
        "circuit-protection.point.grouping",
        "circuit-protection.point.rooftop",
        "circuit-protection.point.aluminum-terminals",
        "circuit-protection.point.grounding",
        "circuit-protection.point.enlarged-grounding",
        "circuit-protection.point.disconnect-rating",
        "circuit-protection.point.disconnect-place",
        "circuit-protection.point.working-space",
        "circuit-protection.point.voltage-drop",
        "circuit-protection.point.residual-current",
        "circuit-protection.point.service-receptacle",
        "circuit-protection.point.rooftop-raceway",
        "circuit-protection.point.compressor",
      ],
    },
    clause: VerbatimShape,
    rules: VerbatimShape,
  },
};

export const CircuitProtectionNotConfirmedShape: Shape = {
  type: "CircuitProtectionNotConfirmed",
  fields: {
    code: { words: ["circuit-protection.not-confirmed"] },
    values: CircuitProtectionNotConfirmedValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionAmpacityFitsValuesShape: Shape = {
  type: "CircuitProtectionAmpacityFitsValues",
  fields: { marked: "current", ampacity: "current" },
};

export const CircuitProtectionAmpacityFitsShape: Shape = {
  type: "CircuitProtectionAmpacityFits",
  fields: {
    code: { words: ["circuit-protection.ampacity-fits"] },
    values: CircuitProtectionAmpacityFitsValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionAmpacityTooLowValuesShape: Shape = {
  type: "CircuitProtectionAmpacityTooLowValues",
  fields: { marked: "current", ampacity: "current" },
};

export const CircuitProtectionAmpacityTooLowShape: Shape = {
  type: "CircuitProtectionAmpacityTooLow",
  fields: {
    code: { words: ["circuit-protection.ampacity-too-low"] },
    values: CircuitProtectionAmpacityTooLowValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionAmpacityUnexplainedValuesShape: Shape = {
  type: "CircuitProtectionAmpacityUnexplainedValues",
  fields: { marked: "current", ampacity: "current" },
};

export const CircuitProtectionAmpacityUnexplainedShape: Shape = {
  type: "CircuitProtectionAmpacityUnexplained",
  fields: {
    code: { words: ["circuit-protection.ampacity-unexplained"] },
    values: CircuitProtectionAmpacityUnexplainedValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionProtectionFitsValuesShape: Shape = {
  type: "CircuitProtectionProtectionFitsValues",
  fields: { maximum: "current", ceiling: "current" },
};

export const CircuitProtectionProtectionFitsShape: Shape = {
  type: "CircuitProtectionProtectionFits",
  fields: {
    code: { words: ["circuit-protection.protection-fits"] },
    values: CircuitProtectionProtectionFitsValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionProtectionTooHighValuesShape: Shape = {
  type: "CircuitProtectionProtectionTooHighValues",
  fields: { maximum: "current", ceiling: "current" },
};

export const CircuitProtectionProtectionTooHighShape: Shape = {
  type: "CircuitProtectionProtectionTooHigh",
  fields: {
    code: { words: ["circuit-protection.protection-too-high"] },
    values: CircuitProtectionProtectionTooHighValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionNextSizeDownValuesShape: Shape = {
  type: "CircuitProtectionNextSizeDownValues",
  fields: { calculated: "current" },
};

export const CircuitProtectionNextSizeDownShape: Shape = {
  type: "CircuitProtectionNextSizeDown",
  fields: {
    code: { words: ["circuit-protection.next-size-down"] },
    values: CircuitProtectionNextSizeDownValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionHeaterNeedsMoreValuesShape: Shape = {
  type: "CircuitProtectionHeaterNeedsMoreValues",
  fields: { rating: "current" },
};

export const CircuitProtectionHeaterNeedsMoreShape: Shape = {
  type: "CircuitProtectionHeaterNeedsMore",
  fields: {
    code: { words: ["circuit-protection.heater-needs-more"] },
    values: CircuitProtectionHeaterNeedsMoreValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionSmallestRatingValuesShape: Shape = {
  type: "CircuitProtectionSmallestRatingValues",
  fields: { rating: "current" },
};

export const CircuitProtectionSmallestRatingShape: Shape = {
  type: "CircuitProtectionSmallestRating",
  fields: {
    code: { words: ["circuit-protection.smallest-rating"] },
    values: CircuitProtectionSmallestRatingValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionAmpacityNeedsMoreValuesShape: Shape = {
  type: "CircuitProtectionAmpacityNeedsMoreValues",
  fields: { rating: "current" },
};

export const CircuitProtectionAmpacityNeedsMoreShape: Shape = {
  type: "CircuitProtectionAmpacityNeedsMore",
  fields: {
    code: { words: ["circuit-protection.ampacity-needs-more"] },
    values: CircuitProtectionAmpacityNeedsMoreValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionMarkingAssumedShape: Shape = {
  type: "CircuitProtectionMarkingAssumed",
  fields: {
    code: { words: ["circuit-protection.marking-assumed"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionServiceAssumedValuesShape: Shape = {
  type: "CircuitProtectionServiceAssumedValues",
  fields: { system: VerbatimShape },
};

export const CircuitProtectionServiceAssumedShape: Shape = {
  type: "CircuitProtectionServiceAssumed",
  fields: {
    code: { words: ["circuit-protection.service-assumed"] },
    values: CircuitProtectionServiceAssumedValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionAmbientAssumedValuesShape: Shape = {
  type: "CircuitProtectionAmbientAssumedValues",
  fields: { ambient: "temperature" },
};

export const CircuitProtectionAmbientAssumedShape: Shape = {
  type: "CircuitProtectionAmbientAssumed",
  fields: {
    code: { words: ["circuit-protection.ambient-assumed"] },
    values: CircuitProtectionAmbientAssumedValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionTerminationsAssumedShape: Shape = {
  type: "CircuitProtectionTerminationsAssumed",
  fields: {
    code: { words: ["circuit-protection.terminations-assumed"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionCableAssumedShape: Shape = {
  type: "CircuitProtectionCableAssumed",
  fields: {
    code: { words: ["circuit-protection.cable-assumed"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionRoofAssumedShape: Shape = {
  type: "CircuitProtectionRoofAssumed",
  fields: {
    code: { words: ["circuit-protection.roof-assumed"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionConductorsAssumedShape: Shape = {
  type: "CircuitProtectionConductorsAssumed",
  fields: {
    code: { words: ["circuit-protection.conductors-assumed"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionCircuitsAssumedShape: Shape = {
  type: "CircuitProtectionCircuitsAssumed",
  fields: {
    code: { words: ["circuit-protection.circuits-assumed"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionRatedLoadAssumedValuesShape: Shape = {
  type: "CircuitProtectionRatedLoadAssumedValues",
  fields: { ampacity: "current" },
};

export const CircuitProtectionRatedLoadAssumedShape: Shape = {
  type: "CircuitProtectionRatedLoadAssumed",
  fields: {
    code: { words: ["circuit-protection.rated-load-assumed"] },
    values: CircuitProtectionRatedLoadAssumedValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionVoltageMarkingAssumedValuesShape: Shape = {
  type: "CircuitProtectionVoltageMarkingAssumedValues",
  fields: { marking: VerbatimShape },
};

export const CircuitProtectionVoltageMarkingAssumedShape: Shape = {
  type: "CircuitProtectionVoltageMarkingAssumed",
  fields: {
    code: { words: ["circuit-protection.voltage-marking-assumed"] },
    values: CircuitProtectionVoltageMarkingAssumedValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionCompressorInferredShape: Shape = {
  type: "CircuitProtectionCompressorInferred",
  fields: {
    code: { words: ["circuit-protection.compressor-inferred"] },
    values: CircuitProtectionNoStandardDeviceValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionNotStatedValuesShape: Shape = {
  type: "CircuitProtectionNotStatedValues",
  fields: {
    parts: {
      list: {
        words: [
          "circuit-protection.unjudged.working-space",
          "circuit-protection.unjudged.voltage-drop",
          "circuit-protection.unjudged.service-receptacle",
          "circuit-protection.unjudged.lockable",
          "circuit-protection.unjudged.equipment-grounding",
          "circuit-protection.unjudged.disconnect",
          "circuit-protection.unjudged.in-sight",
          "circuit-protection.unjudged.near-enough",
          "circuit-protection.unjudged.accessible",
          "circuit-protection.unjudged.not-in-the-way",
          "circuit-protection.unjudged.not-on-unit",
          "circuit-protection.unjudged.short-circuit-rating",
          "circuit-protection.unjudged.horsepower-rating",
          "circuit-protection.unjudged.fault-loop",
          "circuit-protection.unjudged.breaking-capacity",
        ],
      },
    },
  },
};

export const CircuitProtectionNotStatedShape: Shape = {
  type: "CircuitProtectionNotStated",
  fields: {
    code: { words: ["circuit-protection.not-stated"] },
    values: CircuitProtectionNotStatedValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionNotJudgedValuesShape: Shape = {
  type: "CircuitProtectionNotJudgedValues",
  fields: {
    parts: {
      list: {
        words: [
          "circuit-protection.unjudged.working-space",
          "circuit-protection.unjudged.voltage-drop",
          "circuit-protection.unjudged.service-receptacle",
          "circuit-protection.unjudged.lockable",
          "circuit-protection.unjudged.equipment-grounding",
          "circuit-protection.unjudged.disconnect",
          "circuit-protection.unjudged.in-sight",
          "circuit-protection.unjudged.near-enough",
          "circuit-protection.unjudged.accessible",
          "circuit-protection.unjudged.not-in-the-way",
          "circuit-protection.unjudged.not-on-unit",
          "circuit-protection.unjudged.short-circuit-rating",
          "circuit-protection.unjudged.horsepower-rating",
          "circuit-protection.unjudged.fault-loop",
          "circuit-protection.unjudged.breaking-capacity",
        ],
      },
    },
  },
};

export const CircuitProtectionNotJudgedShape: Shape = {
  type: "CircuitProtectionNotJudged",
  fields: {
    code: { words: ["circuit-protection.not-judged"] },
    values: CircuitProtectionNotJudgedValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionHeaterBelow50KwShape: Shape = {
  type: "CircuitProtectionHeaterBelow50Kw",
  fields: {
    code: { words: ["circuit-protection.heater-below-50-kw"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionNotAUsualSizeValuesShape: Shape = {
  type: "CircuitProtectionNotAUsualSizeValues",
  fields: { maximum: "current" },
};

export const CircuitProtectionNotAUsualSizeShape: Shape = {
  type: "CircuitProtectionNotAUsualSize",
  fields: {
    code: { words: ["circuit-protection.not-a-usual-size"] },
    values: CircuitProtectionNotAUsualSizeValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionMaximumConfirmedShape: Shape = {
  type: "CircuitProtectionMaximumConfirmed",
  fields: {
    code: { words: ["circuit-protection.maximum-confirmed"] },
    values: CircuitProtectionNoStandardDeviceValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionRatedLoadLowValuesShape: Shape = {
  type: "CircuitProtectionRatedLoadLowValues",
  fields: { load: "current", ampacity: "current" },
};

export const CircuitProtectionRatedLoadLowShape: Shape = {
  type: "CircuitProtectionRatedLoadLow",
  fields: {
    code: { words: ["circuit-protection.rated-load-low"] },
    values: CircuitProtectionRatedLoadLowValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionDeviceNotStandardValuesShape: Shape = {
  type: "CircuitProtectionDeviceNotStandardValues",
  fields: {
    device: { words: ["circuit-protection.device.breaker", "circuit-protection.device.fuse"] },
    rating: "current",
  },
};

export const CircuitProtectionDeviceNotStandardShape: Shape = {
  type: "CircuitProtectionDeviceNotStandard",
  fields: {
    code: { words: ["circuit-protection.device-not-standard"] },
    values: CircuitProtectionDeviceNotStandardValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionNoStandardDeviceBetweenShape: Shape = {
  type: "CircuitProtectionNoStandardDeviceBetween",
  fields: {
    code: { words: ["circuit-protection.no-standard-device-between"] },
    values: CircuitProtectionNoStandardDeviceValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionHacrMarkShape: Shape = {
  type: "CircuitProtectionHacrMark",
  fields: {
    code: { words: ["circuit-protection.hacr-mark"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionCurveValuesShape: Shape = {
  type: "CircuitProtectionCurveValues",
  fields: { curve: VerbatimShape },
};

export const CircuitProtectionCurveShape: Shape = {
  type: "CircuitProtectionCurve",
  fields: {
    code: { words: ["circuit-protection.curve"] },
    values: CircuitProtectionCurveValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionStartMayTripValuesShape: Shape = {
  type: "CircuitProtectionStartMayTripValues",
  fields: { locked: "current", from: "current" },
};

export const CircuitProtectionStartMayTripShape: Shape = {
  type: "CircuitProtectionStartMayTrip",
  fields: {
    code: { words: ["circuit-protection.start-may-trip"] },
    values: CircuitProtectionStartMayTripValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionWorkingSpaceRecommendedShape: Shape = {
  type: "CircuitProtectionWorkingSpaceRecommended",
  fields: {
    code: { words: ["circuit-protection.working-space-recommended"] },
    values: CircuitProtectionWorkingSpaceMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionVoltageDropRecommendedShape: Shape = {
  type: "CircuitProtectionVoltageDropRecommended",
  fields: {
    code: { words: ["circuit-protection.voltage-drop-recommended"] },
    values: CircuitProtectionVoltageDropMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFromMemoryValuesShape: Shape = {
  type: "CircuitProtectionFromMemoryValues",
  fields: { clauses: { list: VerbatimShape } },
};

export const CircuitProtectionFromMemoryShape: Shape = {
  type: "CircuitProtectionFromMemory",
  fields: {
    code: { words: ["circuit-protection.from-memory"] },
    values: CircuitProtectionFromMemoryValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionRulesOlderValuesShape: Shape = {
  type: "CircuitProtectionRulesOlderValues",
  fields: { reviewed: VerbatimShape, date: VerbatimShape },
};

export const CircuitProtectionRulesOlderShape: Shape = {
  type: "CircuitProtectionRulesOlder",
  fields: {
    code: { words: ["circuit-protection.rules-older"] },
    values: CircuitProtectionRulesOlderValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionGroundFaultRequiredShape: Shape = {
  type: "CircuitProtectionGroundFaultRequired",
  fields: {
    code: { words: ["circuit-protection.ground-fault-required"] },
    values: CircuitProtectionGroundingWireMissingValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionGroundFaultClassCShape: Shape = {
  type: "CircuitProtectionGroundFaultClassC",
  fields: {
    code: { words: ["circuit-protection.ground-fault-class-c"] },
    values: CircuitProtectionGroundingWireMissingValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionGroundFaultExemptValuesShape: Shape = {
  type: "CircuitProtectionGroundFaultExemptValues",
  fields: { clause: VerbatimShape, from: VerbatimShape },
};

export const CircuitProtectionGroundFaultExemptShape: Shape = {
  type: "CircuitProtectionGroundFaultExempt",
  fields: {
    code: { words: ["circuit-protection.ground-fault-exempt"] },
    values: CircuitProtectionGroundFaultExemptValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionGroundFaultByDateValuesShape: Shape = {
  type: "CircuitProtectionGroundFaultByDateValues",
  fields: { clause: VerbatimShape, from: VerbatimShape },
};

export const CircuitProtectionGroundFaultByDateShape: Shape = {
  type: "CircuitProtectionGroundFaultByDate",
  fields: {
    code: { words: ["circuit-protection.ground-fault-by-date"] },
    values: CircuitProtectionGroundFaultByDateValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionAdviceValuesShape: Shape = {
  type: "CircuitProtectionAdviceValues",
  fields: {
    clause: VerbatimShape,
    advice: {
      words: [
        "circuit-protection.advice.enclosure-tool-or-lock",
        "circuit-protection.advice.enclosure-locked",
        "circuit-protection.advice.surge-protection",
        "circuit-protection.advice.buried-cable-residual-current",
        "circuit-protection.advice.own-circuit",
        "circuit-protection.advice.notifiable-work",
        "circuit-protection.advice.gas-clearance",
      ],
    },
  },
};

export const CircuitProtectionAdviceShape: Shape = {
  type: "CircuitProtectionAdvice",
  fields: {
    code: { words: ["circuit-protection.advice"] },
    values: CircuitProtectionAdviceValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionCalculatedNotMarkedShape: Shape = {
  type: "CircuitProtectionCalculatedNotMarked",
  fields: {
    code: { words: ["circuit-protection.calculated-not-marked"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionSharedCircuitValuesShape: Shape = {
  type: "CircuitProtectionSharedCircuitValues",
  fields: { count: "number" },
};

export const CircuitProtectionSharedCircuitShape: Shape = {
  type: "CircuitProtectionSharedCircuit",
  fields: {
    code: { words: ["circuit-protection.shared-circuit"] },
    values: CircuitProtectionSharedCircuitValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitAtMostValuesShape: Shape = {
  type: "CircuitProtectionFitAtMostValues",
  fields: { limit: "current" },
};

export const CircuitProtectionFitAtMostShape: Shape = {
  type: "CircuitProtectionFitAtMost",
  fields: {
    code: { words: ["circuit-protection.fit-at-most"] },
    values: CircuitProtectionFitAtMostValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitBetweenValuesShape: Shape = {
  type: "CircuitProtectionFitBetweenValues",
  fields: { from: "current", to: "current" },
};

export const CircuitProtectionFitBetweenShape: Shape = {
  type: "CircuitProtectionFitBetween",
  fields: {
    code: { words: ["circuit-protection.fit-between"] },
    values: CircuitProtectionFitBetweenValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitFusesShape: Shape = {
  type: "CircuitProtectionFitFuses",
  fields: {
    code: { words: ["circuit-protection.fit-fuses"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitPolesValuesShape: Shape = {
  type: "CircuitProtectionFitPolesValues",
  fields: { needed: "number" },
};

export const CircuitProtectionFitPolesShape: Shape = {
  type: "CircuitProtectionFitPoles",
  fields: {
    code: { words: ["circuit-protection.fit-poles"] },
    values: CircuitProtectionFitPolesValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitMarkingValuesShape: Shape = {
  type: "CircuitProtectionFitMarkingValues",
  fields: { needed: VerbatimShape },
};

export const CircuitProtectionFitMarkingShape: Shape = {
  type: "CircuitProtectionFitMarking",
  fields: {
    code: { words: ["circuit-protection.fit-marking"] },
    values: CircuitProtectionFitMarkingValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionAskManufacturerShape: Shape = {
  type: "CircuitProtectionAskManufacturer",
  fields: {
    code: { words: ["circuit-protection.ask-manufacturer"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionReadNameplateAgainShape: Shape = {
  type: "CircuitProtectionReadNameplateAgain",
  fields: {
    code: { words: ["circuit-protection.read-nameplate-again"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionStateMaximumShape: Shape = {
  type: "CircuitProtectionStateMaximum",
  fields: {
    code: { words: ["circuit-protection.state-maximum"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionStateDeviceShape: Shape = {
  type: "CircuitProtectionStateDevice",
  fields: {
    code: { words: ["circuit-protection.state-device"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionStatePolesShape: Shape = {
  type: "CircuitProtectionStatePoles",
  fields: {
    code: { words: ["circuit-protection.state-poles"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionStateMarkingShape: Shape = {
  type: "CircuitProtectionStateMarking",
  fields: {
    code: { words: ["circuit-protection.state-marking"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionStateConductorShape: Shape = {
  type: "CircuitProtectionStateConductor",
  fields: {
    code: { words: ["circuit-protection.state-conductor"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionStateEquipmentShape: Shape = {
  type: "CircuitProtectionStateEquipment",
  fields: {
    code: { words: ["circuit-protection.state-equipment"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionStateLargestLoadShape: Shape = {
  type: "CircuitProtectionStateLargestLoad",
  fields: {
    code: { words: ["circuit-protection.state-largest-load"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionSizeConductorElsewhereShape: Shape = {
  type: "CircuitProtectionSizeConductorElsewhere",
  fields: {
    code: { words: ["circuit-protection.size-conductor-elsewhere"] },
    values: CircuitProtectionGroundingWireMissingValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitConductorValuesShape: Shape = {
  type: "CircuitProtectionFitConductorValues",
  fields: { size: VerbatimShape },
};

export const CircuitProtectionFitConductorShape: Shape = {
  type: "CircuitProtectionFitConductor",
  fields: {
    code: { words: ["circuit-protection.fit-conductor"] },
    values: CircuitProtectionFitConductorValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitLargerConductorShape: Shape = {
  type: "CircuitProtectionFitLargerConductor",
  fields: {
    code: { words: ["circuit-protection.fit-larger-conductor"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitAluminumTerminalsShape: Shape = {
  type: "CircuitProtectionFitAluminumTerminals",
  fields: {
    code: { words: ["circuit-protection.fit-aluminum-terminals"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionLookAtTerminalsShape: Shape = {
  type: "CircuitProtectionLookAtTerminals",
  fields: {
    code: { words: ["circuit-protection.look-at-terminals"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitGroundingValuesShape: Shape = {
  type: "CircuitProtectionFitGroundingValues",
  fields: { size: VerbatimShape },
};

export const CircuitProtectionFitGroundingShape: Shape = {
  type: "CircuitProtectionFitGrounding",
  fields: {
    code: { words: ["circuit-protection.fit-grounding"] },
    values: CircuitProtectionFitGroundingValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitGroundingAreaValuesShape: Shape = {
  type: "CircuitProtectionFitGroundingAreaValues",
  fields: { area: "number" },
};

export const CircuitProtectionFitGroundingAreaShape: Shape = {
  type: "CircuitProtectionFitGroundingArea",
  fields: {
    code: { words: ["circuit-protection.fit-grounding-area"] },
    values: CircuitProtectionFitGroundingAreaValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionStateFaultEnergyShape: Shape = {
  type: "CircuitProtectionStateFaultEnergy",
  fields: {
    code: { words: ["circuit-protection.state-fault-energy"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitGroundingWireShape: Shape = {
  type: "CircuitProtectionFitGroundingWire",
  fields: {
    code: { words: ["circuit-protection.fit-grounding-wire"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitDisconnectValuesShape: Shape = {
  type: "CircuitProtectionFitDisconnectValues",
  fields: { needed: "current" },
};

export const CircuitProtectionFitDisconnectShape: Shape = {
  type: "CircuitProtectionFitDisconnect",
  fields: {
    code: { words: ["circuit-protection.fit-disconnect"] },
    values: CircuitProtectionFitDisconnectValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitDisconnectFusesValuesShape: Shape = {
  type: "CircuitProtectionFitDisconnectFusesValues",
  fields: { limit: "current" },
};

export const CircuitProtectionFitDisconnectFusesShape: Shape = {
  type: "CircuitProtectionFitDisconnectFuses",
  fields: {
    code: { words: ["circuit-protection.fit-disconnect-fuses"] },
    values: CircuitProtectionFitDisconnectFusesValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionMoveDisconnectShape: Shape = {
  type: "CircuitProtectionMoveDisconnect",
  fields: {
    code: { words: ["circuit-protection.move-disconnect"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionMoveDisconnectWithinValuesShape: Shape = {
  type: "CircuitProtectionMoveDisconnectWithinValues",
  fields: { limit: "length" },
};

export const CircuitProtectionMoveDisconnectWithinShape: Shape = {
  type: "CircuitProtectionMoveDisconnectWithin",
  fields: {
    code: { words: ["circuit-protection.move-disconnect-within"] },
    values: CircuitProtectionMoveDisconnectWithinValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitLockableDisconnectShape: Shape = {
  type: "CircuitProtectionFitLockableDisconnect",
  fields: {
    code: { words: ["circuit-protection.fit-lockable-disconnect"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionClearSpaceShape: Shape = {
  type: "CircuitProtectionClearSpace",
  fields: {
    code: { words: ["circuit-protection.clear-space"] },
    values: CircuitProtectionWorkingSpaceMetValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionAddReceptacleValuesShape: Shape = {
  type: "CircuitProtectionAddReceptacleValues",
  fields: { limit: "length" },
};

export const CircuitProtectionAddReceptacleShape: Shape = {
  type: "CircuitProtectionAddReceptacle",
  fields: {
    code: { words: ["circuit-protection.add-receptacle"] },
    values: CircuitProtectionAddReceptacleValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitConductorForDropValuesShape: Shape = {
  type: "CircuitProtectionFitConductorForDropValues",
  fields: { size: VerbatimShape },
};

export const CircuitProtectionFitConductorForDropShape: Shape = {
  type: "CircuitProtectionFitConductorForDrop",
  fields: {
    code: { words: ["circuit-protection.fit-conductor-for-drop"] },
    values: CircuitProtectionFitConductorForDropValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionShortenRunValuesShape: Shape = {
  type: "CircuitProtectionShortenRunValues",
  fields: { longest: "length" },
};

export const CircuitProtectionShortenRunShape: Shape = {
  type: "CircuitProtectionShortenRun",
  fields: {
    code: { words: ["circuit-protection.shorten-run"] },
    values: CircuitProtectionShortenRunValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionFitResidualCurrentValuesShape: Shape = {
  type: "CircuitProtectionFitResidualCurrentValues",
  fields: { limit: "current" },
};

export const CircuitProtectionFitResidualCurrentShape: Shape = {
  type: "CircuitProtectionFitResidualCurrent",
  fields: {
    code: { words: ["circuit-protection.fit-residual-current"] },
    values: CircuitProtectionFitResidualCurrentValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionStateEarthingShape: Shape = {
  type: "CircuitProtectionStateEarthing",
  fields: {
    code: { words: ["circuit-protection.state-earthing"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionAskAuthorityValuesShape: Shape = {
  type: "CircuitProtectionAskAuthorityValues",
  fields: { clause: VerbatimShape, rules: VerbatimShape },
};

export const CircuitProtectionAskAuthorityShape: Shape = {
  type: "CircuitProtectionAskAuthority",
  fields: {
    code: { words: ["circuit-protection.ask-authority"] },
    values: CircuitProtectionAskAuthorityValuesShape,
    "text?": "text",
  },
};

export const CircuitProtectionStatementShape: Shape = {
  type: "CircuitProtectionStatement",
  by: "code",
  cases: {
    "circuit-protection.device-rating-met": CircuitProtectionDeviceRatingMetShape,
    "circuit-protection.device-too-large": CircuitProtectionDeviceTooLargeShape,
    "circuit-protection.device-below-load": CircuitProtectionDeviceBelowLoadShape,
    "circuit-protection.device-below-ampacity": CircuitProtectionDeviceBelowAmpacityShape,
    "circuit-protection.device-kind-met": CircuitProtectionDeviceKindMetShape,
    "circuit-protection.fuse-required": CircuitProtectionFuseRequiredShape,
    "circuit-protection.poles-met": CircuitProtectionPolesMetShape,
    "circuit-protection.poles-too-few": CircuitProtectionPolesTooFewShape,
    "circuit-protection.poles-not-stated": CircuitProtectionPolesNotStatedShape,
    "circuit-protection.voltage-marking-met": CircuitProtectionVoltageMarkingMetShape,
    "circuit-protection.voltage-marking-too-low": CircuitProtectionVoltageMarkingTooLowShape,
    "circuit-protection.voltage-marking-not-stated": CircuitProtectionVoltageMarkingNotStatedShape,
    "circuit-protection.device-not-stated": CircuitProtectionDeviceNotStatedShape,
    "circuit-protection.no-standard-device": CircuitProtectionNoStandardDeviceShape,
    "circuit-protection.maximum-too-high": CircuitProtectionMaximumTooHighShape,
    "circuit-protection.maximum-not-stated": CircuitProtectionMaximumNotStatedShape,
    "circuit-protection.conductor-met": CircuitProtectionConductorMetShape,
    "circuit-protection.conductor-too-small": CircuitProtectionConductorTooSmallShape,
    "circuit-protection.conductor-unprotected": CircuitProtectionConductorUnprotectedShape,
    "circuit-protection.conductor-not-stated": CircuitProtectionConductorNotStatedShape,
    "circuit-protection.conductor-not-judged": CircuitProtectionConductorNotJudgedShape,
    "circuit-protection.equipment-not-stated": CircuitProtectionEquipmentNotStatedShape,
    "circuit-protection.aluminum-terminals-met": CircuitProtectionAluminumTerminalsMetShape,
    "circuit-protection.aluminum-terminals-missing": CircuitProtectionAluminumTerminalsMissingShape,
    "circuit-protection.aluminum-terminals-not-stated":
      CircuitProtectionAluminumTerminalsNotStatedShape,
    "circuit-protection.grounding-met": CircuitProtectionGroundingMetShape,
    "circuit-protection.grounding-too-small": CircuitProtectionGroundingTooSmallShape,
    "circuit-protection.grounding-by-energy-met": CircuitProtectionGroundingByEnergyMetShape,
    "circuit-protection.grounding-by-energy-short": CircuitProtectionGroundingByEnergyShortShape,
    "circuit-protection.grounding-needs-energy": CircuitProtectionGroundingNeedsEnergyShape,
    "circuit-protection.grounding-two-readings": CircuitProtectionGroundingTwoReadingsShape,
    "circuit-protection.grounding-wire-missing": CircuitProtectionGroundingWireMissingShape,
    "circuit-protection.disconnect-rating-met": CircuitProtectionDisconnectRatingMetShape,
    "circuit-protection.disconnect-too-small": CircuitProtectionDisconnectTooSmallShape,
    "circuit-protection.largest-load-not-stated": CircuitProtectionLargestLoadNotStatedShape,
    "circuit-protection.disconnect-fuse-met": CircuitProtectionDisconnectFuseMetShape,
    "circuit-protection.disconnect-fuse-too-large": CircuitProtectionDisconnectFuseTooLargeShape,
    "circuit-protection.disconnect-in-sight": CircuitProtectionDisconnectInSightShape,
    "circuit-protection.disconnect-out-of-sight": CircuitProtectionDisconnectOutOfSightShape,
    "circuit-protection.disconnect-near": CircuitProtectionDisconnectNearShape,
    "circuit-protection.disconnect-too-far": CircuitProtectionDisconnectTooFarShape,
    "circuit-protection.disconnect-accessible": CircuitProtectionDisconnectAccessibleShape,
    "circuit-protection.disconnect-not-accessible": CircuitProtectionDisconnectNotAccessibleShape,
    "circuit-protection.disconnect-clear": CircuitProtectionDisconnectClearShape,
    "circuit-protection.disconnect-in-the-way": CircuitProtectionDisconnectInTheWayShape,
    "circuit-protection.disconnect-lockable": CircuitProtectionDisconnectLockableShape,
    "circuit-protection.disconnect-not-lockable": CircuitProtectionDisconnectNotLockableShape,
    "circuit-protection.disconnect-off-unit": CircuitProtectionDisconnectOffUnitShape,
    "circuit-protection.disconnect-on-unit": CircuitProtectionDisconnectOnUnitShape,
    "circuit-protection.working-space-met": CircuitProtectionWorkingSpaceMetShape,
    "circuit-protection.working-space-short": CircuitProtectionWorkingSpaceShortShape,
    "circuit-protection.receptacle-met": CircuitProtectionReceptacleMetShape,
    "circuit-protection.receptacle-too-far": CircuitProtectionReceptacleTooFarShape,
    "circuit-protection.receptacle-on-load-side": CircuitProtectionReceptacleOnLoadSideShape,
    "circuit-protection.voltage-drop-met": CircuitProtectionVoltageDropMetShape,
    "circuit-protection.voltage-drop-above-limit": CircuitProtectionVoltageDropAboveLimitShape,
    "circuit-protection.residual-current-met": CircuitProtectionResidualCurrentMetShape,
    "circuit-protection.residual-current-missing": CircuitProtectionResidualCurrentMissingShape,
    "circuit-protection.residual-current-too-high": CircuitProtectionResidualCurrentTooHighShape,
    "circuit-protection.residual-current-not-stated":
      CircuitProtectionResidualCurrentNotStatedShape,
    "circuit-protection.not-confirmed": CircuitProtectionNotConfirmedShape,
    "circuit-protection.ampacity-fits": CircuitProtectionAmpacityFitsShape,
    "circuit-protection.ampacity-too-low": CircuitProtectionAmpacityTooLowShape,
    "circuit-protection.ampacity-unexplained": CircuitProtectionAmpacityUnexplainedShape,
    "circuit-protection.protection-fits": CircuitProtectionProtectionFitsShape,
    "circuit-protection.protection-too-high": CircuitProtectionProtectionTooHighShape,
    "circuit-protection.next-size-down": CircuitProtectionNextSizeDownShape,
    "circuit-protection.heater-needs-more": CircuitProtectionHeaterNeedsMoreShape,
    "circuit-protection.smallest-rating": CircuitProtectionSmallestRatingShape,
    "circuit-protection.ampacity-needs-more": CircuitProtectionAmpacityNeedsMoreShape,
    "circuit-protection.marking-assumed": CircuitProtectionMarkingAssumedShape,
    "circuit-protection.service-assumed": CircuitProtectionServiceAssumedShape,
    "circuit-protection.ambient-assumed": CircuitProtectionAmbientAssumedShape,
    "circuit-protection.terminations-assumed": CircuitProtectionTerminationsAssumedShape,
    "circuit-protection.cable-assumed": CircuitProtectionCableAssumedShape,
    "circuit-protection.roof-assumed": CircuitProtectionRoofAssumedShape,
    "circuit-protection.conductors-assumed": CircuitProtectionConductorsAssumedShape,
    "circuit-protection.circuits-assumed": CircuitProtectionCircuitsAssumedShape,
    "circuit-protection.rated-load-assumed": CircuitProtectionRatedLoadAssumedShape,
    "circuit-protection.voltage-marking-assumed": CircuitProtectionVoltageMarkingAssumedShape,
    "circuit-protection.compressor-inferred": CircuitProtectionCompressorInferredShape,
    "circuit-protection.not-stated": CircuitProtectionNotStatedShape,
    "circuit-protection.not-judged": CircuitProtectionNotJudgedShape,
    "circuit-protection.heater-below-50-kw": CircuitProtectionHeaterBelow50KwShape,
    "circuit-protection.not-a-usual-size": CircuitProtectionNotAUsualSizeShape,
    "circuit-protection.maximum-confirmed": CircuitProtectionMaximumConfirmedShape,
    "circuit-protection.rated-load-low": CircuitProtectionRatedLoadLowShape,
    "circuit-protection.device-not-standard": CircuitProtectionDeviceNotStandardShape,
    "circuit-protection.no-standard-device-between": CircuitProtectionNoStandardDeviceBetweenShape,
    "circuit-protection.hacr-mark": CircuitProtectionHacrMarkShape,
    "circuit-protection.curve": CircuitProtectionCurveShape,
    "circuit-protection.start-may-trip": CircuitProtectionStartMayTripShape,
    "circuit-protection.working-space-recommended": CircuitProtectionWorkingSpaceRecommendedShape,
    "circuit-protection.voltage-drop-recommended": CircuitProtectionVoltageDropRecommendedShape,
    "circuit-protection.from-memory": CircuitProtectionFromMemoryShape,
    "circuit-protection.rules-older": CircuitProtectionRulesOlderShape,
    "circuit-protection.ground-fault-required": CircuitProtectionGroundFaultRequiredShape,
    "circuit-protection.ground-fault-class-c": CircuitProtectionGroundFaultClassCShape,
    "circuit-protection.ground-fault-exempt": CircuitProtectionGroundFaultExemptShape,
    "circuit-protection.ground-fault-by-date": CircuitProtectionGroundFaultByDateShape,
    "circuit-protection.advice": CircuitProtectionAdviceShape,
    "circuit-protection.calculated-not-marked": CircuitProtectionCalculatedNotMarkedShape,
    "circuit-protection.shared-circuit": CircuitProtectionSharedCircuitShape,
    "circuit-protection.fit-at-most": CircuitProtectionFitAtMostShape,
    "circuit-protection.fit-between": CircuitProtectionFitBetweenShape,
    "circuit-protection.fit-fuses": CircuitProtectionFitFusesShape,
    "circuit-protection.fit-poles": CircuitProtectionFitPolesShape,
    "circuit-protection.fit-marking": CircuitProtectionFitMarkingShape,
    "circuit-protection.ask-manufacturer": CircuitProtectionAskManufacturerShape,
    "circuit-protection.read-nameplate-again": CircuitProtectionReadNameplateAgainShape,
    "circuit-protection.state-maximum": CircuitProtectionStateMaximumShape,
    "circuit-protection.state-device": CircuitProtectionStateDeviceShape,
    "circuit-protection.state-poles": CircuitProtectionStatePolesShape,
    "circuit-protection.state-marking": CircuitProtectionStateMarkingShape,
    "circuit-protection.state-conductor": CircuitProtectionStateConductorShape,
    "circuit-protection.state-equipment": CircuitProtectionStateEquipmentShape,
    "circuit-protection.state-largest-load": CircuitProtectionStateLargestLoadShape,
    "circuit-protection.size-conductor-elsewhere": CircuitProtectionSizeConductorElsewhereShape,
    "circuit-protection.fit-conductor": CircuitProtectionFitConductorShape,
    "circuit-protection.fit-larger-conductor": CircuitProtectionFitLargerConductorShape,
    "circuit-protection.fit-aluminum-terminals": CircuitProtectionFitAluminumTerminalsShape,
    "circuit-protection.look-at-terminals": CircuitProtectionLookAtTerminalsShape,
    "circuit-protection.fit-grounding": CircuitProtectionFitGroundingShape,
    "circuit-protection.fit-grounding-area": CircuitProtectionFitGroundingAreaShape,
    "circuit-protection.state-fault-energy": CircuitProtectionStateFaultEnergyShape,
    "circuit-protection.fit-grounding-wire": CircuitProtectionFitGroundingWireShape,
    "circuit-protection.fit-disconnect": CircuitProtectionFitDisconnectShape,
    "circuit-protection.fit-disconnect-fuses": CircuitProtectionFitDisconnectFusesShape,
    "circuit-protection.move-disconnect": CircuitProtectionMoveDisconnectShape,
    "circuit-protection.move-disconnect-within": CircuitProtectionMoveDisconnectWithinShape,
    "circuit-protection.fit-lockable-disconnect": CircuitProtectionFitLockableDisconnectShape,
    "circuit-protection.clear-space": CircuitProtectionClearSpaceShape,
    "circuit-protection.add-receptacle": CircuitProtectionAddReceptacleShape,
    "circuit-protection.fit-conductor-for-drop": CircuitProtectionFitConductorForDropShape,
    "circuit-protection.shorten-run": CircuitProtectionShortenRunShape,
    "circuit-protection.fit-residual-current": CircuitProtectionFitResidualCurrentShape,
    "circuit-protection.state-earthing": CircuitProtectionStateEarthingShape,
    "circuit-protection.ask-authority": CircuitProtectionAskAuthorityShape,
  },
};

export const CircuitProtectionDeviceRatingMet2Shape: Shape = {
  type: "CircuitProtectionDeviceRatingMet2",
  fields: {
    code: { words: ["circuit-protection.device-rating-met"] },
    values: CircuitProtectionDeviceRatingMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionDeviceTooLarge2Shape: Shape = {
  type: "CircuitProtectionDeviceTooLarge2",
  fields: {
    code: { words: ["circuit-protection.device-too-large"] },
    values: CircuitProtectionDeviceTooLargeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionDeviceBelowLoad2Shape: Shape = {
  type: "CircuitProtectionDeviceBelowLoad2",
  fields: {
    code: { words: ["circuit-protection.device-below-load"] },
    values: CircuitProtectionDeviceBelowLoadValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionDeviceBelowAmpacity2Shape: Shape = {
  type: "CircuitProtectionDeviceBelowAmpacity2",
  fields: {
    code: { words: ["circuit-protection.device-below-ampacity"] },
    values: CircuitProtectionDeviceBelowAmpacityValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionDeviceKindMet2Shape: Shape = {
  type: "CircuitProtectionDeviceKindMet2",
  fields: {
    code: { words: ["circuit-protection.device-kind-met"] },
    values: CircuitProtectionDeviceKindMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionFuseRequired2Shape: Shape = {
  type: "CircuitProtectionFuseRequired2",
  fields: {
    code: { words: ["circuit-protection.fuse-required"] },
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

export const CircuitProtectionPolesMet2Shape: Shape = {
  type: "CircuitProtectionPolesMet2",
  fields: {
    code: { words: ["circuit-protection.poles-met"] },
    values: CircuitProtectionPolesMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionPolesTooFew2Shape: Shape = {
  type: "CircuitProtectionPolesTooFew2",
  fields: {
    code: { words: ["circuit-protection.poles-too-few"] },
    values: CircuitProtectionPolesTooFewValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionPolesNotStated2Shape: Shape = {
  type: "CircuitProtectionPolesNotStated2",
  fields: {
    code: { words: ["circuit-protection.poles-not-stated"] },
    values: CircuitProtectionPolesNotStatedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionVoltageMarkingMet2Shape: Shape = {
  type: "CircuitProtectionVoltageMarkingMet2",
  fields: {
    code: { words: ["circuit-protection.voltage-marking-met"] },
    values: CircuitProtectionVoltageMarkingMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionVoltageMarkingTooLow2Shape: Shape = {
  type: "CircuitProtectionVoltageMarkingTooLow2",
  fields: {
    code: { words: ["circuit-protection.voltage-marking-too-low"] },
    values: CircuitProtectionVoltageMarkingTooLowValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionVoltageMarkingNotStated2Shape: Shape = {
  type: "CircuitProtectionVoltageMarkingNotStated2",
  fields: {
    code: { words: ["circuit-protection.voltage-marking-not-stated"] },
    values: CircuitProtectionVoltageMarkingNotStatedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionDeviceNotStated2Shape: Shape = {
  type: "CircuitProtectionDeviceNotStated2",
  fields: {
    code: { words: ["circuit-protection.device-not-stated"] },
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

export const CircuitProtectionNoStandardDevice2Shape: Shape = {
  type: "CircuitProtectionNoStandardDevice2",
  fields: {
    code: { words: ["circuit-protection.no-standard-device"] },
    values: CircuitProtectionNoStandardDeviceValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionMaximumTooHigh2Shape: Shape = {
  type: "CircuitProtectionMaximumTooHigh2",
  fields: {
    code: { words: ["circuit-protection.maximum-too-high"] },
    values: CircuitProtectionNoStandardDeviceValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionMaximumNotStated2Shape: Shape = {
  type: "CircuitProtectionMaximumNotStated2",
  fields: {
    code: { words: ["circuit-protection.maximum-not-stated"] },
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

export const CircuitProtectionConductorMet2Shape: Shape = {
  type: "CircuitProtectionConductorMet2",
  fields: {
    code: { words: ["circuit-protection.conductor-met"] },
    values: CircuitProtectionConductorMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionConductorTooSmall2Shape: Shape = {
  type: "CircuitProtectionConductorTooSmall2",
  fields: {
    code: { words: ["circuit-protection.conductor-too-small"] },
    values: CircuitProtectionConductorMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionConductorUnprotected2Shape: Shape = {
  type: "CircuitProtectionConductorUnprotected2",
  fields: {
    code: { words: ["circuit-protection.conductor-unprotected"] },
    values: CircuitProtectionConductorMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionConductorNotStated2Shape: Shape = {
  type: "CircuitProtectionConductorNotStated2",
  fields: {
    code: { words: ["circuit-protection.conductor-not-stated"] },
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

export const CircuitProtectionConductorNotJudged2Shape: Shape = {
  type: "CircuitProtectionConductorNotJudged2",
  fields: {
    code: { words: ["circuit-protection.conductor-not-judged"] },
    values: CircuitProtectionConductorNotJudgedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionEquipmentNotStated2Shape: Shape = {
  type: "CircuitProtectionEquipmentNotStated2",
  fields: {
    code: { words: ["circuit-protection.equipment-not-stated"] },
    values: CircuitProtectionEquipmentNotStatedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionAluminumTerminalsMet2Shape: Shape = {
  type: "CircuitProtectionAluminumTerminalsMet2",
  fields: {
    code: { words: ["circuit-protection.aluminum-terminals-met"] },
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

export const CircuitProtectionAluminumTerminalsMissing2Shape: Shape = {
  type: "CircuitProtectionAluminumTerminalsMissing2",
  fields: {
    code: { words: ["circuit-protection.aluminum-terminals-missing"] },
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

export const CircuitProtectionAluminumTerminalsNotStated2Shape: Shape = {
  type: "CircuitProtectionAluminumTerminalsNotStated2",
  fields: {
    code: { words: ["circuit-protection.aluminum-terminals-not-stated"] },
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

export const CircuitProtectionGroundingMet2Shape: Shape = {
  type: "CircuitProtectionGroundingMet2",
  fields: {
    code: { words: ["circuit-protection.grounding-met"] },
    values: CircuitProtectionGroundingMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionGroundingTooSmall2Shape: Shape = {
  type: "CircuitProtectionGroundingTooSmall2",
  fields: {
    code: { words: ["circuit-protection.grounding-too-small"] },
    values: CircuitProtectionGroundingTooSmallValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionGroundingByEnergyMet2Shape: Shape = {
  type: "CircuitProtectionGroundingByEnergyMet2",
  fields: {
    code: { words: ["circuit-protection.grounding-by-energy-met"] },
    values: CircuitProtectionGroundingByEnergyMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionGroundingByEnergyShort2Shape: Shape = {
  type: "CircuitProtectionGroundingByEnergyShort2",
  fields: {
    code: { words: ["circuit-protection.grounding-by-energy-short"] },
    values: CircuitProtectionGroundingByEnergyShortValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionGroundingNeedsEnergy2Shape: Shape = {
  type: "CircuitProtectionGroundingNeedsEnergy2",
  fields: {
    code: { words: ["circuit-protection.grounding-needs-energy"] },
    values: CircuitProtectionGroundingNeedsEnergyValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionGroundingTwoReadings2Shape: Shape = {
  type: "CircuitProtectionGroundingTwoReadings2",
  fields: {
    code: { words: ["circuit-protection.grounding-two-readings"] },
    values: CircuitProtectionGroundingTwoReadingsValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionGroundingWireMissing2Shape: Shape = {
  type: "CircuitProtectionGroundingWireMissing2",
  fields: {
    code: { words: ["circuit-protection.grounding-wire-missing"] },
    values: CircuitProtectionGroundingWireMissingValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionDisconnectRatingMet2Shape: Shape = {
  type: "CircuitProtectionDisconnectRatingMet2",
  fields: {
    code: { words: ["circuit-protection.disconnect-rating-met"] },
    values: CircuitProtectionDisconnectRatingMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionDisconnectTooSmall2Shape: Shape = {
  type: "CircuitProtectionDisconnectTooSmall2",
  fields: {
    code: { words: ["circuit-protection.disconnect-too-small"] },
    values: CircuitProtectionDisconnectTooSmallValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionLargestLoadNotStated2Shape: Shape = {
  type: "CircuitProtectionLargestLoadNotStated2",
  fields: {
    code: { words: ["circuit-protection.largest-load-not-stated"] },
    values: CircuitProtectionLargestLoadNotStatedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionDisconnectFuseMet2Shape: Shape = {
  type: "CircuitProtectionDisconnectFuseMet2",
  fields: {
    code: { words: ["circuit-protection.disconnect-fuse-met"] },
    values: CircuitProtectionDisconnectFuseMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionDisconnectFuseTooLarge2Shape: Shape = {
  type: "CircuitProtectionDisconnectFuseTooLarge2",
  fields: {
    code: { words: ["circuit-protection.disconnect-fuse-too-large"] },
    values: CircuitProtectionDisconnectFuseTooLargeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionDisconnectInSight2Shape: Shape = {
  type: "CircuitProtectionDisconnectInSight2",
  fields: {
    code: { words: ["circuit-protection.disconnect-in-sight"] },
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

export const CircuitProtectionDisconnectOutOfSight2Shape: Shape = {
  type: "CircuitProtectionDisconnectOutOfSight2",
  fields: {
    code: { words: ["circuit-protection.disconnect-out-of-sight"] },
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

export const CircuitProtectionDisconnectNear2Shape: Shape = {
  type: "CircuitProtectionDisconnectNear2",
  fields: {
    code: { words: ["circuit-protection.disconnect-near"] },
    values: CircuitProtectionDisconnectNearValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionDisconnectTooFar2Shape: Shape = {
  type: "CircuitProtectionDisconnectTooFar2",
  fields: {
    code: { words: ["circuit-protection.disconnect-too-far"] },
    values: CircuitProtectionDisconnectTooFarValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionDisconnectAccessible2Shape: Shape = {
  type: "CircuitProtectionDisconnectAccessible2",
  fields: {
    code: { words: ["circuit-protection.disconnect-accessible"] },
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

export const CircuitProtectionDisconnectNotAccessible2Shape: Shape = {
  type: "CircuitProtectionDisconnectNotAccessible2",
  fields: {
    code: { words: ["circuit-protection.disconnect-not-accessible"] },
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

export const CircuitProtectionDisconnectClear2Shape: Shape = {
  type: "CircuitProtectionDisconnectClear2",
  fields: {
    code: { words: ["circuit-protection.disconnect-clear"] },
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

export const CircuitProtectionDisconnectInTheWay2Shape: Shape = {
  type: "CircuitProtectionDisconnectInTheWay2",
  fields: {
    code: { words: ["circuit-protection.disconnect-in-the-way"] },
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

export const CircuitProtectionDisconnectLockable2Shape: Shape = {
  type: "CircuitProtectionDisconnectLockable2",
  fields: {
    code: { words: ["circuit-protection.disconnect-lockable"] },
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

export const CircuitProtectionDisconnectNotLockable2Shape: Shape = {
  type: "CircuitProtectionDisconnectNotLockable2",
  fields: {
    code: { words: ["circuit-protection.disconnect-not-lockable"] },
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

export const CircuitProtectionDisconnectOffUnit2Shape: Shape = {
  type: "CircuitProtectionDisconnectOffUnit2",
  fields: {
    code: { words: ["circuit-protection.disconnect-off-unit"] },
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

export const CircuitProtectionDisconnectOnUnit2Shape: Shape = {
  type: "CircuitProtectionDisconnectOnUnit2",
  fields: {
    code: { words: ["circuit-protection.disconnect-on-unit"] },
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

export const CircuitProtectionWorkingSpaceMet2Shape: Shape = {
  type: "CircuitProtectionWorkingSpaceMet2",
  fields: {
    code: { words: ["circuit-protection.working-space-met"] },
    values: CircuitProtectionWorkingSpaceMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionWorkingSpaceShort2Shape: Shape = {
  type: "CircuitProtectionWorkingSpaceShort2",
  fields: {
    code: { words: ["circuit-protection.working-space-short"] },
    values: CircuitProtectionWorkingSpaceMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionReceptacleMet2Shape: Shape = {
  type: "CircuitProtectionReceptacleMet2",
  fields: {
    code: { words: ["circuit-protection.receptacle-met"] },
    values: CircuitProtectionReceptacleMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionReceptacleTooFar2Shape: Shape = {
  type: "CircuitProtectionReceptacleTooFar2",
  fields: {
    code: { words: ["circuit-protection.receptacle-too-far"] },
    values: CircuitProtectionReceptacleTooFarValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionReceptacleOnLoadSide2Shape: Shape = {
  type: "CircuitProtectionReceptacleOnLoadSide2",
  fields: {
    code: { words: ["circuit-protection.receptacle-on-load-side"] },
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

export const CircuitProtectionVoltageDropMet2Shape: Shape = {
  type: "CircuitProtectionVoltageDropMet2",
  fields: {
    code: { words: ["circuit-protection.voltage-drop-met"] },
    values: CircuitProtectionVoltageDropMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionVoltageDropAboveLimit2Shape: Shape = {
  type: "CircuitProtectionVoltageDropAboveLimit2",
  fields: {
    code: { words: ["circuit-protection.voltage-drop-above-limit"] },
    values: CircuitProtectionVoltageDropMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionResidualCurrentMet2Shape: Shape = {
  type: "CircuitProtectionResidualCurrentMet2",
  fields: {
    code: { words: ["circuit-protection.residual-current-met"] },
    values: CircuitProtectionResidualCurrentMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionResidualCurrentMissing2Shape: Shape = {
  type: "CircuitProtectionResidualCurrentMissing2",
  fields: {
    code: { words: ["circuit-protection.residual-current-missing"] },
    values: CircuitProtectionGroundingWireMissingValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionResidualCurrentTooHigh2Shape: Shape = {
  type: "CircuitProtectionResidualCurrentTooHigh2",
  fields: {
    code: { words: ["circuit-protection.residual-current-too-high"] },
    values: CircuitProtectionResidualCurrentTooHighValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionResidualCurrentNotStated2Shape: Shape = {
  type: "CircuitProtectionResidualCurrentNotStated2",
  fields: {
    code: { words: ["circuit-protection.residual-current-not-stated"] },
    values: CircuitProtectionGroundingWireMissingValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionNotConfirmed2Shape: Shape = {
  type: "CircuitProtectionNotConfirmed2",
  fields: {
    code: { words: ["circuit-protection.not-confirmed"] },
    values: CircuitProtectionNotConfirmedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionAmpacityFits2Shape: Shape = {
  type: "CircuitProtectionAmpacityFits2",
  fields: {
    code: { words: ["circuit-protection.ampacity-fits"] },
    values: CircuitProtectionAmpacityFitsValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionAmpacityTooLow2Shape: Shape = {
  type: "CircuitProtectionAmpacityTooLow2",
  fields: {
    code: { words: ["circuit-protection.ampacity-too-low"] },
    values: CircuitProtectionAmpacityTooLowValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionAmpacityUnexplained2Shape: Shape = {
  type: "CircuitProtectionAmpacityUnexplained2",
  fields: {
    code: { words: ["circuit-protection.ampacity-unexplained"] },
    values: CircuitProtectionAmpacityUnexplainedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionProtectionFits2Shape: Shape = {
  type: "CircuitProtectionProtectionFits2",
  fields: {
    code: { words: ["circuit-protection.protection-fits"] },
    values: CircuitProtectionProtectionFitsValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionProtectionTooHigh2Shape: Shape = {
  type: "CircuitProtectionProtectionTooHigh2",
  fields: {
    code: { words: ["circuit-protection.protection-too-high"] },
    values: CircuitProtectionProtectionTooHighValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionNextSizeDown2Shape: Shape = {
  type: "CircuitProtectionNextSizeDown2",
  fields: {
    code: { words: ["circuit-protection.next-size-down"] },
    values: CircuitProtectionNextSizeDownValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionHeaterNeedsMore2Shape: Shape = {
  type: "CircuitProtectionHeaterNeedsMore2",
  fields: {
    code: { words: ["circuit-protection.heater-needs-more"] },
    values: CircuitProtectionHeaterNeedsMoreValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionSmallestRating2Shape: Shape = {
  type: "CircuitProtectionSmallestRating2",
  fields: {
    code: { words: ["circuit-protection.smallest-rating"] },
    values: CircuitProtectionSmallestRatingValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionAmpacityNeedsMore2Shape: Shape = {
  type: "CircuitProtectionAmpacityNeedsMore2",
  fields: {
    code: { words: ["circuit-protection.ampacity-needs-more"] },
    values: CircuitProtectionAmpacityNeedsMoreValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionMarkingAssumed2Shape: Shape = {
  type: "CircuitProtectionMarkingAssumed2",
  fields: {
    code: { words: ["circuit-protection.marking-assumed"] },
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

export const CircuitProtectionServiceAssumed2Shape: Shape = {
  type: "CircuitProtectionServiceAssumed2",
  fields: {
    code: { words: ["circuit-protection.service-assumed"] },
    values: CircuitProtectionServiceAssumedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionAmbientAssumed2Shape: Shape = {
  type: "CircuitProtectionAmbientAssumed2",
  fields: {
    code: { words: ["circuit-protection.ambient-assumed"] },
    values: CircuitProtectionAmbientAssumedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionTerminationsAssumed2Shape: Shape = {
  type: "CircuitProtectionTerminationsAssumed2",
  fields: {
    code: { words: ["circuit-protection.terminations-assumed"] },
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

export const CircuitProtectionCableAssumed2Shape: Shape = {
  type: "CircuitProtectionCableAssumed2",
  fields: {
    code: { words: ["circuit-protection.cable-assumed"] },
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

export const CircuitProtectionRoofAssumed2Shape: Shape = {
  type: "CircuitProtectionRoofAssumed2",
  fields: {
    code: { words: ["circuit-protection.roof-assumed"] },
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

export const CircuitProtectionConductorsAssumed2Shape: Shape = {
  type: "CircuitProtectionConductorsAssumed2",
  fields: {
    code: { words: ["circuit-protection.conductors-assumed"] },
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

export const CircuitProtectionCircuitsAssumed2Shape: Shape = {
  type: "CircuitProtectionCircuitsAssumed2",
  fields: {
    code: { words: ["circuit-protection.circuits-assumed"] },
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

export const CircuitProtectionRatedLoadAssumed2Shape: Shape = {
  type: "CircuitProtectionRatedLoadAssumed2",
  fields: {
    code: { words: ["circuit-protection.rated-load-assumed"] },
    values: CircuitProtectionRatedLoadAssumedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionVoltageMarkingAssumed2Shape: Shape = {
  type: "CircuitProtectionVoltageMarkingAssumed2",
  fields: {
    code: { words: ["circuit-protection.voltage-marking-assumed"] },
    values: CircuitProtectionVoltageMarkingAssumedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionCompressorInferred2Shape: Shape = {
  type: "CircuitProtectionCompressorInferred2",
  fields: {
    code: { words: ["circuit-protection.compressor-inferred"] },
    values: CircuitProtectionNoStandardDeviceValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionNotStated2Shape: Shape = {
  type: "CircuitProtectionNotStated2",
  fields: {
    code: { words: ["circuit-protection.not-stated"] },
    values: CircuitProtectionNotStatedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionNotJudged2Shape: Shape = {
  type: "CircuitProtectionNotJudged2",
  fields: {
    code: { words: ["circuit-protection.not-judged"] },
    values: CircuitProtectionNotJudgedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionHeaterBelow50Kw2Shape: Shape = {
  type: "CircuitProtectionHeaterBelow50Kw2",
  fields: {
    code: { words: ["circuit-protection.heater-below-50-kw"] },
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

export const CircuitProtectionNotAUsualSize2Shape: Shape = {
  type: "CircuitProtectionNotAUsualSize2",
  fields: {
    code: { words: ["circuit-protection.not-a-usual-size"] },
    values: CircuitProtectionNotAUsualSizeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionMaximumConfirmed2Shape: Shape = {
  type: "CircuitProtectionMaximumConfirmed2",
  fields: {
    code: { words: ["circuit-protection.maximum-confirmed"] },
    values: CircuitProtectionNoStandardDeviceValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionRatedLoadLow2Shape: Shape = {
  type: "CircuitProtectionRatedLoadLow2",
  fields: {
    code: { words: ["circuit-protection.rated-load-low"] },
    values: CircuitProtectionRatedLoadLowValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionDeviceNotStandard2Shape: Shape = {
  type: "CircuitProtectionDeviceNotStandard2",
  fields: {
    code: { words: ["circuit-protection.device-not-standard"] },
    values: CircuitProtectionDeviceNotStandardValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionNoStandardDeviceBetween2Shape: Shape = {
  type: "CircuitProtectionNoStandardDeviceBetween2",
  fields: {
    code: { words: ["circuit-protection.no-standard-device-between"] },
    values: CircuitProtectionNoStandardDeviceValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionHacrMark2Shape: Shape = {
  type: "CircuitProtectionHacrMark2",
  fields: {
    code: { words: ["circuit-protection.hacr-mark"] },
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

export const CircuitProtectionCurve2Shape: Shape = {
  type: "CircuitProtectionCurve2",
  fields: {
    code: { words: ["circuit-protection.curve"] },
    values: CircuitProtectionCurveValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionStartMayTrip2Shape: Shape = {
  type: "CircuitProtectionStartMayTrip2",
  fields: {
    code: { words: ["circuit-protection.start-may-trip"] },
    values: CircuitProtectionStartMayTripValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionWorkingSpaceRecommended2Shape: Shape = {
  type: "CircuitProtectionWorkingSpaceRecommended2",
  fields: {
    code: { words: ["circuit-protection.working-space-recommended"] },
    values: CircuitProtectionWorkingSpaceMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionVoltageDropRecommended2Shape: Shape = {
  type: "CircuitProtectionVoltageDropRecommended2",
  fields: {
    code: { words: ["circuit-protection.voltage-drop-recommended"] },
    values: CircuitProtectionVoltageDropMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionFromMemory2Shape: Shape = {
  type: "CircuitProtectionFromMemory2",
  fields: {
    code: { words: ["circuit-protection.from-memory"] },
    values: CircuitProtectionFromMemoryValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionRulesOlder2Shape: Shape = {
  type: "CircuitProtectionRulesOlder2",
  fields: {
    code: { words: ["circuit-protection.rules-older"] },
    values: CircuitProtectionRulesOlderValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionGroundFaultRequired2Shape: Shape = {
  type: "CircuitProtectionGroundFaultRequired2",
  fields: {
    code: { words: ["circuit-protection.ground-fault-required"] },
    values: CircuitProtectionGroundingWireMissingValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionGroundFaultClassC2Shape: Shape = {
  type: "CircuitProtectionGroundFaultClassC2",
  fields: {
    code: { words: ["circuit-protection.ground-fault-class-c"] },
    values: CircuitProtectionGroundingWireMissingValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionGroundFaultExempt2Shape: Shape = {
  type: "CircuitProtectionGroundFaultExempt2",
  fields: {
    code: { words: ["circuit-protection.ground-fault-exempt"] },
    values: CircuitProtectionGroundFaultExemptValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionGroundFaultByDate2Shape: Shape = {
  type: "CircuitProtectionGroundFaultByDate2",
  fields: {
    code: { words: ["circuit-protection.ground-fault-by-date"] },
    values: CircuitProtectionGroundFaultByDateValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionAdvice2Shape: Shape = {
  type: "CircuitProtectionAdvice2",
  fields: {
    code: { words: ["circuit-protection.advice"] },
    values: CircuitProtectionAdviceValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionCalculatedNotMarked2Shape: Shape = {
  type: "CircuitProtectionCalculatedNotMarked2",
  fields: {
    code: { words: ["circuit-protection.calculated-not-marked"] },
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

export const CircuitProtectionSharedCircuit2Shape: Shape = {
  type: "CircuitProtectionSharedCircuit2",
  fields: {
    code: { words: ["circuit-protection.shared-circuit"] },
    values: CircuitProtectionSharedCircuitValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionFitAtMost2Shape: Shape = {
  type: "CircuitProtectionFitAtMost2",
  fields: {
    code: { words: ["circuit-protection.fit-at-most"] },
    values: CircuitProtectionFitAtMostValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionFitBetween2Shape: Shape = {
  type: "CircuitProtectionFitBetween2",
  fields: {
    code: { words: ["circuit-protection.fit-between"] },
    values: CircuitProtectionFitBetweenValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionFitFuses2Shape: Shape = {
  type: "CircuitProtectionFitFuses2",
  fields: {
    code: { words: ["circuit-protection.fit-fuses"] },
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

export const CircuitProtectionFitPoles2Shape: Shape = {
  type: "CircuitProtectionFitPoles2",
  fields: {
    code: { words: ["circuit-protection.fit-poles"] },
    values: CircuitProtectionFitPolesValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionFitMarking2Shape: Shape = {
  type: "CircuitProtectionFitMarking2",
  fields: {
    code: { words: ["circuit-protection.fit-marking"] },
    values: CircuitProtectionFitMarkingValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionAskManufacturer2Shape: Shape = {
  type: "CircuitProtectionAskManufacturer2",
  fields: {
    code: { words: ["circuit-protection.ask-manufacturer"] },
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

export const CircuitProtectionReadNameplateAgain2Shape: Shape = {
  type: "CircuitProtectionReadNameplateAgain2",
  fields: {
    code: { words: ["circuit-protection.read-nameplate-again"] },
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

export const CircuitProtectionStateMaximum2Shape: Shape = {
  type: "CircuitProtectionStateMaximum2",
  fields: {
    code: { words: ["circuit-protection.state-maximum"] },
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

export const CircuitProtectionStateDevice2Shape: Shape = {
  type: "CircuitProtectionStateDevice2",
  fields: {
    code: { words: ["circuit-protection.state-device"] },
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

export const CircuitProtectionStatePoles2Shape: Shape = {
  type: "CircuitProtectionStatePoles2",
  fields: {
    code: { words: ["circuit-protection.state-poles"] },
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

export const CircuitProtectionStateMarking2Shape: Shape = {
  type: "CircuitProtectionStateMarking2",
  fields: {
    code: { words: ["circuit-protection.state-marking"] },
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

export const CircuitProtectionStateConductor2Shape: Shape = {
  type: "CircuitProtectionStateConductor2",
  fields: {
    code: { words: ["circuit-protection.state-conductor"] },
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

export const CircuitProtectionStateEquipment2Shape: Shape = {
  type: "CircuitProtectionStateEquipment2",
  fields: {
    code: { words: ["circuit-protection.state-equipment"] },
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

export const CircuitProtectionStateLargestLoad2Shape: Shape = {
  type: "CircuitProtectionStateLargestLoad2",
  fields: {
    code: { words: ["circuit-protection.state-largest-load"] },
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

export const CircuitProtectionSizeConductorElsewhere2Shape: Shape = {
  type: "CircuitProtectionSizeConductorElsewhere2",
  fields: {
    code: { words: ["circuit-protection.size-conductor-elsewhere"] },
    values: CircuitProtectionGroundingWireMissingValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionFitConductor2Shape: Shape = {
  type: "CircuitProtectionFitConductor2",
  fields: {
    code: { words: ["circuit-protection.fit-conductor"] },
    values: CircuitProtectionFitConductorValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionFitLargerConductor2Shape: Shape = {
  type: "CircuitProtectionFitLargerConductor2",
  fields: {
    code: { words: ["circuit-protection.fit-larger-conductor"] },
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

export const CircuitProtectionFitAluminumTerminals2Shape: Shape = {
  type: "CircuitProtectionFitAluminumTerminals2",
  fields: {
    code: { words: ["circuit-protection.fit-aluminum-terminals"] },
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

export const CircuitProtectionLookAtTerminals2Shape: Shape = {
  type: "CircuitProtectionLookAtTerminals2",
  fields: {
    code: { words: ["circuit-protection.look-at-terminals"] },
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

export const CircuitProtectionFitGrounding2Shape: Shape = {
  type: "CircuitProtectionFitGrounding2",
  fields: {
    code: { words: ["circuit-protection.fit-grounding"] },
    values: CircuitProtectionFitGroundingValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionFitGroundingArea2Shape: Shape = {
  type: "CircuitProtectionFitGroundingArea2",
  fields: {
    code: { words: ["circuit-protection.fit-grounding-area"] },
    values: CircuitProtectionFitGroundingAreaValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionStateFaultEnergy2Shape: Shape = {
  type: "CircuitProtectionStateFaultEnergy2",
  fields: {
    code: { words: ["circuit-protection.state-fault-energy"] },
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

export const CircuitProtectionFitGroundingWire2Shape: Shape = {
  type: "CircuitProtectionFitGroundingWire2",
  fields: {
    code: { words: ["circuit-protection.fit-grounding-wire"] },
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

export const CircuitProtectionFitDisconnect2Shape: Shape = {
  type: "CircuitProtectionFitDisconnect2",
  fields: {
    code: { words: ["circuit-protection.fit-disconnect"] },
    values: CircuitProtectionFitDisconnectValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionFitDisconnectFuses2Shape: Shape = {
  type: "CircuitProtectionFitDisconnectFuses2",
  fields: {
    code: { words: ["circuit-protection.fit-disconnect-fuses"] },
    values: CircuitProtectionFitDisconnectFusesValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionMoveDisconnect2Shape: Shape = {
  type: "CircuitProtectionMoveDisconnect2",
  fields: {
    code: { words: ["circuit-protection.move-disconnect"] },
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

export const CircuitProtectionMoveDisconnectWithin2Shape: Shape = {
  type: "CircuitProtectionMoveDisconnectWithin2",
  fields: {
    code: { words: ["circuit-protection.move-disconnect-within"] },
    values: CircuitProtectionMoveDisconnectWithinValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionFitLockableDisconnect2Shape: Shape = {
  type: "CircuitProtectionFitLockableDisconnect2",
  fields: {
    code: { words: ["circuit-protection.fit-lockable-disconnect"] },
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

export const CircuitProtectionClearSpace2Shape: Shape = {
  type: "CircuitProtectionClearSpace2",
  fields: {
    code: { words: ["circuit-protection.clear-space"] },
    values: CircuitProtectionWorkingSpaceMetValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionAddReceptacle2Shape: Shape = {
  type: "CircuitProtectionAddReceptacle2",
  fields: {
    code: { words: ["circuit-protection.add-receptacle"] },
    values: CircuitProtectionAddReceptacleValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionFitConductorForDrop2Shape: Shape = {
  type: "CircuitProtectionFitConductorForDrop2",
  fields: {
    code: { words: ["circuit-protection.fit-conductor-for-drop"] },
    values: CircuitProtectionFitConductorForDropValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionShortenRun2Shape: Shape = {
  type: "CircuitProtectionShortenRun2",
  fields: {
    code: { words: ["circuit-protection.shorten-run"] },
    values: CircuitProtectionShortenRunValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionFitResidualCurrent2Shape: Shape = {
  type: "CircuitProtectionFitResidualCurrent2",
  fields: {
    code: { words: ["circuit-protection.fit-residual-current"] },
    values: CircuitProtectionFitResidualCurrentValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const CircuitProtectionStateEarthing2Shape: Shape = {
  type: "CircuitProtectionStateEarthing2",
  fields: {
    code: { words: ["circuit-protection.state-earthing"] },
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

export const CircuitProtectionAskAuthority2Shape: Shape = {
  type: "CircuitProtectionAskAuthority2",
  fields: {
    code: { words: ["circuit-protection.ask-authority"] },
    values: CircuitProtectionAskAuthorityValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NameplateAssessmentCautionsItemShape: Shape = {
  type: "NameplateAssessmentCautionsItem",
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
    "circuit-protection.device-rating-met": CircuitProtectionDeviceRatingMet2Shape,
    "circuit-protection.device-too-large": CircuitProtectionDeviceTooLarge2Shape,
    "circuit-protection.device-below-load": CircuitProtectionDeviceBelowLoad2Shape,
    "circuit-protection.device-below-ampacity": CircuitProtectionDeviceBelowAmpacity2Shape,
    "circuit-protection.device-kind-met": CircuitProtectionDeviceKindMet2Shape,
    "circuit-protection.fuse-required": CircuitProtectionFuseRequired2Shape,
    "circuit-protection.poles-met": CircuitProtectionPolesMet2Shape,
    "circuit-protection.poles-too-few": CircuitProtectionPolesTooFew2Shape,
    "circuit-protection.poles-not-stated": CircuitProtectionPolesNotStated2Shape,
    "circuit-protection.voltage-marking-met": CircuitProtectionVoltageMarkingMet2Shape,
    "circuit-protection.voltage-marking-too-low": CircuitProtectionVoltageMarkingTooLow2Shape,
    "circuit-protection.voltage-marking-not-stated": CircuitProtectionVoltageMarkingNotStated2Shape,
    "circuit-protection.device-not-stated": CircuitProtectionDeviceNotStated2Shape,
    "circuit-protection.no-standard-device": CircuitProtectionNoStandardDevice2Shape,
    "circuit-protection.maximum-too-high": CircuitProtectionMaximumTooHigh2Shape,
    "circuit-protection.maximum-not-stated": CircuitProtectionMaximumNotStated2Shape,
    "circuit-protection.conductor-met": CircuitProtectionConductorMet2Shape,
    "circuit-protection.conductor-too-small": CircuitProtectionConductorTooSmall2Shape,
    "circuit-protection.conductor-unprotected": CircuitProtectionConductorUnprotected2Shape,
    "circuit-protection.conductor-not-stated": CircuitProtectionConductorNotStated2Shape,
    "circuit-protection.conductor-not-judged": CircuitProtectionConductorNotJudged2Shape,
    "circuit-protection.equipment-not-stated": CircuitProtectionEquipmentNotStated2Shape,
    "circuit-protection.aluminum-terminals-met": CircuitProtectionAluminumTerminalsMet2Shape,
    "circuit-protection.aluminum-terminals-missing":
      CircuitProtectionAluminumTerminalsMissing2Shape,
    "circuit-protection.aluminum-terminals-not-stated":
      CircuitProtectionAluminumTerminalsNotStated2Shape,
    "circuit-protection.grounding-met": CircuitProtectionGroundingMet2Shape,
    "circuit-protection.grounding-too-small": CircuitProtectionGroundingTooSmall2Shape,
    "circuit-protection.grounding-by-energy-met": CircuitProtectionGroundingByEnergyMet2Shape,
    "circuit-protection.grounding-by-energy-short": CircuitProtectionGroundingByEnergyShort2Shape,
    "circuit-protection.grounding-needs-energy": CircuitProtectionGroundingNeedsEnergy2Shape,
    "circuit-protection.grounding-two-readings": CircuitProtectionGroundingTwoReadings2Shape,
    "circuit-protection.grounding-wire-missing": CircuitProtectionGroundingWireMissing2Shape,
    "circuit-protection.disconnect-rating-met": CircuitProtectionDisconnectRatingMet2Shape,
    "circuit-protection.disconnect-too-small": CircuitProtectionDisconnectTooSmall2Shape,
    "circuit-protection.largest-load-not-stated": CircuitProtectionLargestLoadNotStated2Shape,
    "circuit-protection.disconnect-fuse-met": CircuitProtectionDisconnectFuseMet2Shape,
    "circuit-protection.disconnect-fuse-too-large": CircuitProtectionDisconnectFuseTooLarge2Shape,
    "circuit-protection.disconnect-in-sight": CircuitProtectionDisconnectInSight2Shape,
    "circuit-protection.disconnect-out-of-sight": CircuitProtectionDisconnectOutOfSight2Shape,
    "circuit-protection.disconnect-near": CircuitProtectionDisconnectNear2Shape,
    "circuit-protection.disconnect-too-far": CircuitProtectionDisconnectTooFar2Shape,
    "circuit-protection.disconnect-accessible": CircuitProtectionDisconnectAccessible2Shape,
    "circuit-protection.disconnect-not-accessible": CircuitProtectionDisconnectNotAccessible2Shape,
    "circuit-protection.disconnect-clear": CircuitProtectionDisconnectClear2Shape,
    "circuit-protection.disconnect-in-the-way": CircuitProtectionDisconnectInTheWay2Shape,
    "circuit-protection.disconnect-lockable": CircuitProtectionDisconnectLockable2Shape,
    "circuit-protection.disconnect-not-lockable": CircuitProtectionDisconnectNotLockable2Shape,
    "circuit-protection.disconnect-off-unit": CircuitProtectionDisconnectOffUnit2Shape,
    "circuit-protection.disconnect-on-unit": CircuitProtectionDisconnectOnUnit2Shape,
    "circuit-protection.working-space-met": CircuitProtectionWorkingSpaceMet2Shape,
    "circuit-protection.working-space-short": CircuitProtectionWorkingSpaceShort2Shape,
    "circuit-protection.receptacle-met": CircuitProtectionReceptacleMet2Shape,
    "circuit-protection.receptacle-too-far": CircuitProtectionReceptacleTooFar2Shape,
    "circuit-protection.receptacle-on-load-side": CircuitProtectionReceptacleOnLoadSide2Shape,
    "circuit-protection.voltage-drop-met": CircuitProtectionVoltageDropMet2Shape,
    "circuit-protection.voltage-drop-above-limit": CircuitProtectionVoltageDropAboveLimit2Shape,
    "circuit-protection.residual-current-met": CircuitProtectionResidualCurrentMet2Shape,
    "circuit-protection.residual-current-missing": CircuitProtectionResidualCurrentMissing2Shape,
    "circuit-protection.residual-current-too-high": CircuitProtectionResidualCurrentTooHigh2Shape,
    "circuit-protection.residual-current-not-stated":
      CircuitProtectionResidualCurrentNotStated2Shape,
    "circuit-protection.not-confirmed": CircuitProtectionNotConfirmed2Shape,
    "circuit-protection.ampacity-fits": CircuitProtectionAmpacityFits2Shape,
    "circuit-protection.ampacity-too-low": CircuitProtectionAmpacityTooLow2Shape,
    "circuit-protection.ampacity-unexplained": CircuitProtectionAmpacityUnexplained2Shape,
    "circuit-protection.protection-fits": CircuitProtectionProtectionFits2Shape,
    "circuit-protection.protection-too-high": CircuitProtectionProtectionTooHigh2Shape,
    "circuit-protection.next-size-down": CircuitProtectionNextSizeDown2Shape,
    "circuit-protection.heater-needs-more": CircuitProtectionHeaterNeedsMore2Shape,
    "circuit-protection.smallest-rating": CircuitProtectionSmallestRating2Shape,
    "circuit-protection.ampacity-needs-more": CircuitProtectionAmpacityNeedsMore2Shape,
    "circuit-protection.marking-assumed": CircuitProtectionMarkingAssumed2Shape,
    "circuit-protection.service-assumed": CircuitProtectionServiceAssumed2Shape,
    "circuit-protection.ambient-assumed": CircuitProtectionAmbientAssumed2Shape,
    "circuit-protection.terminations-assumed": CircuitProtectionTerminationsAssumed2Shape,
    "circuit-protection.cable-assumed": CircuitProtectionCableAssumed2Shape,
    "circuit-protection.roof-assumed": CircuitProtectionRoofAssumed2Shape,
    "circuit-protection.conductors-assumed": CircuitProtectionConductorsAssumed2Shape,
    "circuit-protection.circuits-assumed": CircuitProtectionCircuitsAssumed2Shape,
    "circuit-protection.rated-load-assumed": CircuitProtectionRatedLoadAssumed2Shape,
    "circuit-protection.voltage-marking-assumed": CircuitProtectionVoltageMarkingAssumed2Shape,
    "circuit-protection.compressor-inferred": CircuitProtectionCompressorInferred2Shape,
    "circuit-protection.not-stated": CircuitProtectionNotStated2Shape,
    "circuit-protection.not-judged": CircuitProtectionNotJudged2Shape,
    "circuit-protection.heater-below-50-kw": CircuitProtectionHeaterBelow50Kw2Shape,
    "circuit-protection.not-a-usual-size": CircuitProtectionNotAUsualSize2Shape,
    "circuit-protection.maximum-confirmed": CircuitProtectionMaximumConfirmed2Shape,
    "circuit-protection.rated-load-low": CircuitProtectionRatedLoadLow2Shape,
    "circuit-protection.device-not-standard": CircuitProtectionDeviceNotStandard2Shape,
    "circuit-protection.no-standard-device-between": CircuitProtectionNoStandardDeviceBetween2Shape,
    "circuit-protection.hacr-mark": CircuitProtectionHacrMark2Shape,
    "circuit-protection.curve": CircuitProtectionCurve2Shape,
    "circuit-protection.start-may-trip": CircuitProtectionStartMayTrip2Shape,
    "circuit-protection.working-space-recommended": CircuitProtectionWorkingSpaceRecommended2Shape,
    "circuit-protection.voltage-drop-recommended": CircuitProtectionVoltageDropRecommended2Shape,
    "circuit-protection.from-memory": CircuitProtectionFromMemory2Shape,
    "circuit-protection.rules-older": CircuitProtectionRulesOlder2Shape,
    "circuit-protection.ground-fault-required": CircuitProtectionGroundFaultRequired2Shape,
    "circuit-protection.ground-fault-class-c": CircuitProtectionGroundFaultClassC2Shape,
    "circuit-protection.ground-fault-exempt": CircuitProtectionGroundFaultExempt2Shape,
    "circuit-protection.ground-fault-by-date": CircuitProtectionGroundFaultByDate2Shape,
    "circuit-protection.advice": CircuitProtectionAdvice2Shape,
    "circuit-protection.calculated-not-marked": CircuitProtectionCalculatedNotMarked2Shape,
    "circuit-protection.shared-circuit": CircuitProtectionSharedCircuit2Shape,
    "circuit-protection.fit-at-most": CircuitProtectionFitAtMost2Shape,
    "circuit-protection.fit-between": CircuitProtectionFitBetween2Shape,
    "circuit-protection.fit-fuses": CircuitProtectionFitFuses2Shape,
    "circuit-protection.fit-poles": CircuitProtectionFitPoles2Shape,
    "circuit-protection.fit-marking": CircuitProtectionFitMarking2Shape,
    "circuit-protection.ask-manufacturer": CircuitProtectionAskManufacturer2Shape,
    "circuit-protection.read-nameplate-again": CircuitProtectionReadNameplateAgain2Shape,
    "circuit-protection.state-maximum": CircuitProtectionStateMaximum2Shape,
    "circuit-protection.state-device": CircuitProtectionStateDevice2Shape,
    "circuit-protection.state-poles": CircuitProtectionStatePoles2Shape,
    "circuit-protection.state-marking": CircuitProtectionStateMarking2Shape,
    "circuit-protection.state-conductor": CircuitProtectionStateConductor2Shape,
    "circuit-protection.state-equipment": CircuitProtectionStateEquipment2Shape,
    "circuit-protection.state-largest-load": CircuitProtectionStateLargestLoad2Shape,
    "circuit-protection.size-conductor-elsewhere": CircuitProtectionSizeConductorElsewhere2Shape,
    "circuit-protection.fit-conductor": CircuitProtectionFitConductor2Shape,
    "circuit-protection.fit-larger-conductor": CircuitProtectionFitLargerConductor2Shape,
    "circuit-protection.fit-aluminum-terminals": CircuitProtectionFitAluminumTerminals2Shape,
    "circuit-protection.look-at-terminals": CircuitProtectionLookAtTerminals2Shape,
    "circuit-protection.fit-grounding": CircuitProtectionFitGrounding2Shape,
    "circuit-protection.fit-grounding-area": CircuitProtectionFitGroundingArea2Shape,
    "circuit-protection.state-fault-energy": CircuitProtectionStateFaultEnergy2Shape,
    "circuit-protection.fit-grounding-wire": CircuitProtectionFitGroundingWire2Shape,
    "circuit-protection.fit-disconnect": CircuitProtectionFitDisconnect2Shape,
    "circuit-protection.fit-disconnect-fuses": CircuitProtectionFitDisconnectFuses2Shape,
    "circuit-protection.move-disconnect": CircuitProtectionMoveDisconnect2Shape,
    "circuit-protection.move-disconnect-within": CircuitProtectionMoveDisconnectWithin2Shape,
    "circuit-protection.fit-lockable-disconnect": CircuitProtectionFitLockableDisconnect2Shape,
    "circuit-protection.clear-space": CircuitProtectionClearSpace2Shape,
    "circuit-protection.add-receptacle": CircuitProtectionAddReceptacle2Shape,
    "circuit-protection.fit-conductor-for-drop": CircuitProtectionFitConductorForDrop2Shape,
    "circuit-protection.shorten-run": CircuitProtectionShortenRun2Shape,
    "circuit-protection.fit-residual-current": CircuitProtectionFitResidualCurrent2Shape,
    "circuit-protection.state-earthing": CircuitProtectionStateEarthing2Shape,
    "circuit-protection.ask-authority": CircuitProtectionAskAuthority2Shape,
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
    steps: { list: CircuitProtectionStatementShape },
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
    assumptions: { list: CircuitProtectionStatementShape },
    cautions: { list: NameplateAssessmentCautionsItemShape },
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
    reasons: { list: CircuitProtectionStatementShape },
    assumptions: { list: CircuitProtectionStatementShape },
    cautions: { list: NameplateAssessmentCautionsItemShape },
    "actions?": { list: CircuitProtectionStatementShape },
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

export const SharedLoadShape: Shape = {
  type: "SharedLoad",
  fields: {
    kind: { words: ["other", "unit"] },
    current: "current",
    "maximumOvercurrentProtection?": "current",
    "continuous?": "flag",
  },
  says: "Something else on the same circuit: another unit by its nameplate, or another load by its current.",
  about: {
    kind: "unit: the current is its minimum circuit ampacity. other: it is the load's rated current.",
    current: "The current, more than 0.",
    maximumOvercurrentProtection: "Largest protection that its nameplate allows.",
    continuous:
      "Whether another load runs for three hours or more, so that it counts 125 %; assumed, on the safe side.",
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
        "100 V",
        "100/200 V",
        "200 V",
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

export const CircuitFromNameplateInputInstalledWhipShape: Shape = {
  type: "CircuitFromNameplateInputInstalledWhip",
  fields: {
    conductor: {
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
        "1 mm²",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
        "25 mm²",
        "35 mm²",
        "50 mm²",
        "1.6 mm",
        "2.0 mm",
        "2.6 mm",
        "5.5 mm²",
        "8 mm²",
        "14 mm²",
      ],
    },
    "wiring?": { either: [AwgWiringShape, MetricWiringShape] },
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
    "lockable?": "flag",
    "onUnit?": "flag",
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
    lockable: "Whether it can be locked open.",
    onUnit: "Whether it is mounted on the unit itself.",
    workingSpace: "Clear space in front of it.",
  },
};

export const ServiceReceptacleShape: Shape = {
  type: "ServiceReceptacle",
  fields: { distance: "length", "onLoadSide?": "flag" },
  says: "A 125 V service receptacle near the unit.",
  about: {
    distance: "How far it is from the unit, on the same level.",
    onLoadSide: "Whether it is fed from the load side of the unit's disconnect.",
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
        "1 mm²",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
        "25 mm²",
        "35 mm²",
        "50 mm²",
        "1.6 mm",
        "2.0 mm",
        "2.6 mm",
        "5.5 mm²",
        "8 mm²",
        "14 mm²",
      ],
    },
    "whip?": CircuitFromNameplateInputInstalledWhipShape,
    "aluminumTerminals?": "flag",
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
        "1 mm²",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
        "25 mm²",
        "35 mm²",
        "50 mm²",
        "1.6 mm",
        "2.0 mm",
        "2.6 mm",
        "5.5 mm²",
        "8 mm²",
        "14 mm²",
      ],
    },
    "groundingMaterial?": { words: ["copper", "aluminum"] },
    "groundingByRaceway?": "flag",
    "fault?": {
      either: [ProtectiveConductorAreaInputFault1Shape, ProtectiveConductorAreaInputFault2Shape],
    },
    "disconnect?": FittedDisconnectShape,
    "residualCurrent?": { either: ["current", "flag"] },
    "serviceReceptacle?": ServiceReceptacleShape,
  },
};

export const CircuitFromNameplateInputShape: Shape = {
  type: "CircuitFromNameplateInput",
  fields: {
    rules: byRules,
    "minimumCircuitAmpacity?": "current",
    "ratedCurrent?": "current",
    "maximumOvercurrentProtection?": "current",
    "maximumFuse?": "current",
    "printedTo?": "current",
    "nameplateReadAgain?": "flag",
    "protectionMarking?": {
      words: ["fuse only", "fuse or HACR breaker", "fuse or breaker", "max overcurrent protection"],
    },
    "ratedLoadCurrent?": "current",
    "largestLoadCurrent?": "current",
    "lockedRotorCurrent?": "current",
    "sharedWith?": { list: SharedLoadShape },
    "powerFactor?": "number",
    "equipment?": { words: ["other", "motor-compressor"] },
    "occupancy?": { words: ["dwelling", "other"] },
    "date?": "text",
    "powerConversion?": "flag",
    "groundFaultText?": "text",
    "earthing?": { words: ["TT", "TN"] },
    supply: SupplyShape,
    wiring: { either: [AwgWiringShape, MetricWiringShape] },
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
    minimumRating:
      "115 % of the rated-load currents, of all or of the largest (metric rules: the currents themselves).",
    madeSize: "The next made size; common practice, no source. Left out above the largest.",
    nonFusedAllowed:
      "Whether one without fuses will do: the device ahead already is of the marked kind.",
    withinSight: "Largest distance from the unit, where the rules have one.",
    workingSpace: "Working space in front, where the rules have one.",
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
        "1 mm²",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
        "25 mm²",
        "35 mm²",
        "50 mm²",
        "1.6 mm",
        "2.0 mm",
        "2.6 mm",
        "5.5 mm²",
        "8 mm²",
        "14 mm²",
      ],
    },
  },
};

export const CircuitFromNameplateResultShape: Shape = {
  type: "CircuitFromNameplateResult",
  fields: {
    rules: "text",
    device: CircuitFromNameplateResultDeviceShape,
    "conductor?": MinimumConductorResultShape,
    "fittedConductor?": MinimumConductorResultShape,
    "fittedWhip?": MinimumConductorResultShape,
    "equipmentGrounding?": EquipmentGroundingResultShape,
    disconnect: RequiredDisconnectShape,
    "voltageDrop?": CircuitFromNameplateResultVoltageDropShape,
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": {
      words: [
        "disconnect-rating",
        "disconnect-place",
        "working-space",
        "voltage-drop",
        "residual-current",
        "service-receptacle",
        "equipment-grounding",
        "device-rating",
        "device-kind",
        "device-poles",
        "device-voltage",
        "conductor",
        "terminals",
        "disconnect-fuse",
      ],
    },
    reasons: { list: CircuitProtectionStatementShape },
    assumptions: { list: CircuitProtectionStatementShape },
    cautions: { list: NameplateAssessmentCautionsItemShape },
    "actions?": { list: CircuitProtectionStatementShape },
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
    wiring: { either: [AwgWiringShape, MetricWiringShape] },
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
        "1 mm²",
        "1.5 mm²",
        "2.5 mm²",
        "4 mm²",
        "6 mm²",
        "10 mm²",
        "16 mm²",
        "25 mm²",
        "35 mm²",
        "50 mm²",
        "1.6 mm",
        "2.0 mm",
        "2.6 mm",
        "5.5 mm²",
        "8 mm²",
        "14 mm²",
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

export const NameplateFromPartsInputShape: Shape = {
  type: "NameplateFromPartsInput",
  fields: { loads: { list: LoadShape }, "standard?": { words: ["UL 1995", "UL 60335-2-40"] } },
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
