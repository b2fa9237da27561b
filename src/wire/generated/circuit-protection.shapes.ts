// Which shapes have the types of circuit-protection?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { once } from "../../quantity/later.ts";
import type { Shape, StatementTable } from "../../shapes/index.ts";
import { byRules } from "../named.ts";
import { SafetyStatements, VerbatimShape } from "./assessment.shapes.ts";
import { CitationShape } from "./refrigerants.shapes.ts";

export function ProtectiveConductorAreaInputFault1Shape(): Shape {
  return once(ProtectiveConductorAreaInputFault1Shape, () => ({
    type: "ProtectiveConductorAreaInputFault1",
    fields: { current: "current", clearingTime: "duration" },
    docs: {
      current: "Fault current, more than 0, from the impedance of the fault loop.",
      clearingTime: "Time until the device clears it, more than 0 up to 5 s.",
    },
  }));
}

export function ProtectiveConductorAreaInputFault2Shape(): Shape {
  return once(ProtectiveConductorAreaInputFault2Shape, () => ({
    type: "ProtectiveConductorAreaInputFault2",
    fields: { letThrough: "number" },
    docs: { letThrough: "Let-through energy of the device, I²t, in A²s, more than 0." },
  }));
}

export function ProtectiveConductorShape(): Shape {
  return once(ProtectiveConductorShape, () => ({
    type: "ProtectiveConductor",
    fields: {
      material: { words: ["copper", "aluminum"] },
      insulation: { words: ["70 °C", "90 °C"] },
      "separate?": "flag",
    },
    docs: {
      "": "What bears it.",
      material: "Material.",
      insulation:
        'Insulation that touches it: "70 °C" for PVC (to 160 °C), "90 °C" for XLPE (to 250 °C).',
      separate:
        "Whether it runs apart from the cable, so that it starts at 30 °C; a core of the cable is assumed.",
    },
  }));
}

export function ProtectiveConductorAreaInputShape(): Shape {
  return once(ProtectiveConductorAreaInputShape, () => ({
    type: "ProtectiveConductorAreaInput",
    fields: {
      fault: {
        either: [
          ProtectiveConductorAreaInputFault1Shape(),
          ProtectiveConductorAreaInputFault2Shape(),
        ],
      },
      conductor: ProtectiveConductorShape(),
    },
    docs: { fault: "The fault.", conductor: "The conductor." },
  }));
}

export function ProtectiveConductorAreaResultShape(): Shape {
  return once(ProtectiveConductorAreaResultShape, () => ({
    type: "ProtectiveConductorAreaResult",
    fields: { area: "number", factor: "number" },
    docs: {
      area: "Least area in mm².",
      factor: "The factor k of material and temperatures, A·√s/mm².",
    },
  }));
}

export function ConductorResistanceInputShape(): Shape {
  return once(ConductorResistanceInputShape, () => ({
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
    docs: {
      rules: "The rule set.",
      size: "The size.",
      material: "The material.",
      stranding: "Solid or stranded.",
      temperature: "Temperature of the conductor.",
    },
  }));
}

export function ConduitImpedanceInputShape(): Shape {
  return once(ConduitImpedanceInputShape, () => ({
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
    docs: {
      rules: "The rule set.",
      size: "The size.",
      material: "The material.",
      conduit: "The conduit.",
    },
  }));
}

export function ConduitImpedanceResultShape(): Shape {
  return once(ConduitImpedanceResultShape, () => ({
    type: "ConduitImpedanceResult",
    fields: { resistance: "resistancePerLength", reactance: "resistancePerLength" },
    docs: { resistance: "Resistance per length.", reactance: "Reactance per length." },
  }));
}

export function SupplyShape(): Shape {
  return once(SupplyShape, () => ({
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
          "220Y/127 V",
          "440Y/254 V",
          "600 V delta",
          "220/380 V",
          "127/220 V",
          "200 V delta",
        ],
      },
    },
    docs: {
      "": "The supply at the panel.",
      voltage:
        "Nominal voltage between the conductors that feed the unit, within 10 % of one of the service's.",
      phases: "Phases that feed the unit.",
      system:
        "The service; when left out, the first that fits is assumed, the stricter one where two do, and none of 127 V.",
    },
  }));
}

export function BreakerConnectionInputShape(): Shape {
  return once(BreakerConnectionInputShape, () => ({
    type: "BreakerConnectionInput",
    fields: { rules: byRules, supply: SupplyShape() },
    docs: { rules: "The rule set.", supply: "The supply." },
  }));
}

export function SupplySystemNameShape(): Shape {
  return once(SupplySystemNameShape, () => ({
    type: "SupplySystemName",
    words: [
      "120/240 V",
      "208Y/120 V",
      "240 V delta",
      "240/120 V high-leg delta",
      "480 V delta",
      "480Y/277 V",
      "220Y/127 V",
      "440Y/254 V",
      "600 V delta",
      "600Y/347 V",
      "230/400 V",
      "220/380 V",
      "127/220 V",
      "100/200 V",
      "200 V delta",
    ],
  }));
}

export function VoltageRatingShape(): Shape {
  return once(VoltageRatingShape, () => ({
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
  }));
}

export function ConnectionShape(): Shape {
  return once(ConnectionShape, () => ({
    type: "Connection",
    fields: {
      system: SupplySystemNameShape(),
      poles: { words: [2, 1, 3] },
      voltsToGround: "number",
      voltsBetween: "number",
      voltageRating: VoltageRatingShape(),
    },
    docs: {
      "": "What the service asks of the breaker.",
      system: "The service, as given or assumed.",
      poles: "Poles that open together; a neutral is not counted.",
      voltsToGround: "Nominal volts from the worst conductor to ground.",
      voltsBetween: "Nominal volts between the conductors.",
      voltageRating: "Lowest voltage marking that will do.",
    },
  }));
}

export function EquipmentGroundingInputShape(): Shape {
  return once(EquipmentGroundingInputShape, () => ({
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
    docs: {
      rules: "The rule set.",
      material: "Material of the circuit conductors.",
      groundingMaterial:
        "Material of the grounding conductor; that of the circuit conductors when left out.",
      deviceRating: "Rating of the device that is fitted.",
      minimumConductor: "The smallest circuit conductor with enough ampacity as it runs.",
      conductor: "The circuit conductor that is fitted.",
    },
  }));
}

export function EquipmentGroundingResultShape(): Shape {
  return once(EquipmentGroundingResultShape, () => ({
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
  }));
}

export function MetricSizeShape(): Shape {
  return once(MetricSizeShape, () => ({
    type: "MetricSize",
    words: [
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
  }));
}

export function LongestRunByFaultLoopInputShape(): Shape {
  return once(LongestRunByFaultLoopInputShape, () => ({
    type: "LongestRunByFaultLoopInput",
    fields: {
      rating: "current",
      curve: { words: ["B", "C", "D"] },
      "tripsAt?": "number",
      voltageToGround: "voltage",
      line: MetricSizeShape(),
      protective: MetricSizeShape(),
    },
    docs: {
      rating: "Rating of the breaker, above 0.",
      curve: "Its curve.",
      tripsAt:
        "Multiple of the rating at which it trips at once, 1 to 50, where the mean of the band is not to be taken.",
      voltageToGround: "Volts from line to ground, above 0.",
      line: "Line conductor, copper.",
      protective: "Protective conductor, copper.",
    },
  }));
}

export function GroundFaultInputShape(): Shape {
  return once(GroundFaultInputShape, () => ({
    type: "GroundFaultInput",
    fields: {
      rules: byRules,
      supply: SupplyShape(),
      rating: "current",
      "occupancy?": { words: ["dwelling", "other"] },
      "date?": "text",
      "powerConversion?": "flag",
      "text?": "text",
    },
    docs: {
      "": "What the answer rests on.",
      rules: "A rule set with the clause, such as nec2023.",
      supply: "The supply.",
      rating: "Rating of the branch circuit, more than 0.",
      occupancy: "Where the outlet is; a dwelling is assumed, on the safe side.",
      date: 'Day of the work, as "2026-11-29".',
      powerConversion:
        "Whether the unit has power conversion (an inverter); it is taken as having it.",
      text: 'Name of the text that is adopted, or "not adopted"; the last that was in force on the day is taken.',
    },
  }));
}

export function GroundFaultAnswerShape(): Shape {
  return once(GroundFaultAnswerShape, () => ({
    type: "GroundFaultAnswer",
    fields: {
      answer: { words: ["required", "outside", "exempt", "by-date"] },
      "from?": "text",
      classC: "flag",
    },
    docs: {
      "": "What the clause says to one outlet. outside: not within its reach. exempt: within it, but not yet on that day. required: asked for. by-date: the day was not stated and decides.",
      answer: "The answer.",
      from: "First day of the duty, where the text has one.",
      classC: "Whether a listed class C device is permitted.",
    },
  }));
}

export function HeaterCurrentInputShape(): Shape {
  return once(HeaterCurrentInputShape, () => ({
    type: "HeaterCurrentInput",
    fields: {
      power: "power",
      ratedVoltage: "voltage",
      "supplyVoltage?": "voltage",
      "phases?": { words: [1, 3] },
    },
    docs: {
      power: "Marked power.",
      ratedVoltage: "Voltage for which it is marked; line to line for three phases.",
      supplyVoltage: "Voltage that it gets; the rated one when left out.",
      phases: "Phases that feed it; 1 when left out.",
    },
  }));
}

export function LargestDeviceOnConductorInputShape(): Shape {
  return once(LargestDeviceOnConductorInputShape, () => ({
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
    docs: {
      rules: "The rule set.",
      size: "The size.",
      material: "The material.",
      usable: "What the conductor carries as it runs.",
      device: "Fuse or breaker.",
    },
  }));
}

export function AwgWiringShape(): Shape {
  return once(AwgWiringShape, () => ({
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
    docs: {
      "": "Wiring by wire gauge.",
      material: "Material of the conductors.",
      ambient:
        "Temperature around the cable at its hottest place; 30 °C is assumed when left out, 20 °C in the ground.",
      length: "One-way length, more than 0; without it no voltage drop is calculated.",
      stranding:
        "Solid or stranded, for the resistance; stranded is assumed, the higher of the two.",
      insulation: "Rating of the insulation. For NM cable (NM-B, NMD90) 90 °C.",
      terminations:
        "What the terminals at both ends are marked for; when left out, 60 °C up to 100 A and 75 °C above.",
      cable: '"NM" for non-metallic sheathed cable, which some rules hold to its 60 °C column.',
      currentCarryingConductors:
        "Loaded conductors in the same raceway or bundle, grounding conductors not counted; 3 or fewer are assumed.",
      aboveRoof: "Height above a roof in the sun; leave out where there is no roof.",
      conduit: "Conduit, for the alternating-current impedance; used together with a power factor.",
    },
  }));
}

export function InstallationMethodShape(): Shape {
  return once(InstallationMethodShape, () => ({
    type: "InstallationMethod",
    words: ["A1", "A2", "B1", "B2", "C", "D1", "D2", "E", "A", "100", "101", "102", "103"],
  }));
}

export function MetricWiringShape(): Shape {
  return once(MetricWiringShape, () => ({
    type: "MetricWiring",
    fields: {
      material: { words: ["copper", "aluminum"] },
      "ambient?": "temperature",
      "length?": "length",
      "stranding?": { words: ["solid", "stranded"] },
      insulation: { words: ["70 °C", "90 °C"] },
      method: InstallationMethodShape(),
      "groupedCircuits?": "number",
      "grouping?": { words: ["bunched", "single layer", "perforated tray"] },
      "soilResistivity?": "number",
      "insulationLength?": "length",
    },
    docs: {
      "": "Wiring by cross-section and method of installation.",
      material: "Material of the conductors.",
      ambient:
        "Temperature around the cable at its hottest place; 30 °C is assumed when left out, 20 °C in the ground.",
      length: "One-way length, more than 0; without it no voltage drop is calculated.",
      stranding:
        "Solid or stranded, for the resistance; stranded is assumed, the higher of the two.",
      insulation: '"70 °C" for PVC, "90 °C" for XLPE and EPR.',
      method: "Reference method.",
      groupedCircuits: "Circuits that run together, this one included; 1 is assumed.",
      grouping: "How they run together; bunched or enclosed is assumed, in the ground touching.",
      soilResistivity:
        "Thermal resistivity of the soil in K·m/W, methods D1 and D2; 2.5 is assumed.",
      insulationLength: "Length over which the cable is surrounded by thermal insulation.",
    },
  }));
}

export function MinimumConductorInputShape(): Shape {
  return once(MinimumConductorInputShape, () => ({
    type: "MinimumConductorInput",
    fields: {
      rules: byRules,
      wiring: { either: [AwgWiringShape(), MetricWiringShape()] },
      phases: { words: [1, 3] },
      "deviceRating?": "current",
      ampacity: "current",
      "device?": { words: ["breaker", "fuse"] },
      "equipment?": { words: ["other", "motor-compressor"] },
    },
    docs: {
      rules: "The rule set.",
      wiring: "How the cable runs.",
      phases: "Phases that feed the unit: two or three loaded conductors in metric tables.",
      deviceRating:
        "Rating of the device ahead, more than 0; decides the termination column where it is not marked.",
      ampacity: "Least ampacity, such as the marked minimum circuit ampacity; more than 0.",
      device: "Kind of the device ahead; a breaker when left out.",
      equipment: "What the circuit feeds; motor-compressor when left out.",
    },
  }));
}

export function MinimumConductorResultShape(): Shape {
  return once(MinimumConductorResultShape, () => ({
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
  }));
}

export function OperatingModeShape(): Shape {
  return once(OperatingModeShape, () => ({
    type: "OperatingMode",
    words: ["cooling", "heating", "emergency heating", "defrost"],
  }));
}

export function LoadShape(): Shape {
  return once(LoadShape, () => ({
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
      "runsIn?": { list: OperatingModeShape() },
    },
    docs: {
      "": "One load of a unit, or several alike.",
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
  }));
}

export function MinimumDisconnectInputShape(): Shape {
  return once(MinimumDisconnectInputShape, () => ({
    type: "MinimumDisconnectInput",
    fields: { rules: byRules, loads: { list: LoadShape() } },
    docs: { rules: "The rule set.", loads: "What it switches." },
  }));
}

export function UsableAmpacityInputShape(): Shape {
  return once(UsableAmpacityInputShape, () => ({
    type: "UsableAmpacityInput",
    fields: {
      rules: byRules,
      wiring: { either: [AwgWiringShape(), MetricWiringShape()] },
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
    docs: {
      rules: "The rule set.",
      wiring: "How the cable runs.",
      phases: "Phases that feed the unit: two or three loaded conductors in metric tables.",
      deviceRating:
        "Rating of the device ahead, more than 0; decides the termination column where it is not marked.",
      size: "The size.",
    },
  }));
}

export function LongestRunInputShape(): Shape {
  return once(LongestRunInputShape, () => ({
    type: "LongestRunInput",
    fields: {
      current: "current",
      voltage: "voltage",
      phases: { words: [1, 3] },
      resistance: "resistancePerLength",
      "reactance?": "resistancePerLength",
      "powerFactor?": "number",
      limit: "ratio",
    },
    docs: {
      current:
        "Current, more than 0: the running current for the drop while running, locked-rotor current for the start.",
      voltage: "Voltage at the start of the run, more than 0; line to line for three phases.",
      phases: "Phases: 1 counts the way there and back, 3 counts √3.",
      resistance: "Resistance of one conductor per length, hot.",
      reactance: "Reactance of one conductor per length; 0 when left out.",
      powerFactor:
        "Power factor, more than 0 up to 1; 1 when left out, which is on the safe side for small conductors.",
      limit: "Largest drop as a share of the voltage.",
    },
  }));
}

export function VoltageDropInputShape(): Shape {
  return once(VoltageDropInputShape, () => ({
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
    docs: {
      "": "A run and the current in it.",
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
  }));
}

export function VoltageDropShape(): Shape {
  return once(VoltageDropShape, () => ({
    type: "VoltageDrop",
    fields: { drop: "voltage", ratio: "ratio", atUnit: "voltage" },
    docs: {
      "": "What is lost and what is left.",
      drop: "Voltage lost.",
      ratio: "Share of the voltage at the start.",
      atUnit: "Voltage at the unit.",
    },
  }));
}

export function AssessNameplateInputShape(): Shape {
  return once(AssessNameplateInputShape, () => ({
    type: "AssessNameplateInput",
    fields: {
      loads: { list: LoadShape() },
      minimumCircuitAmpacity: "current",
      maximumOvercurrentProtection: "current",
      "printedTo?": "current",
      "standard?": { words: ["UL 1995", "UL 60335-2-40"] },
    },
    docs: {
      loads: "The parts of the unit.",
      minimumCircuitAmpacity: "As marked.",
      maximumOvercurrentProtection: "As marked.",
      printedTo:
        "Last digit that is printed of the ampacity; 1 A is taken for a whole number, else 0.1 A.",
      standard: "The standard of the nameplate; UL 1995 when left out.",
    },
  }));
}

export function CircuitProtectionDeviceShape(): Shape {
  return once(CircuitProtectionDeviceShape, () => ({
    type: "CircuitProtectionDevice",
    words: ["circuit-protection.device.breaker", "circuit-protection.device.fuse"],
  }));
}

export function CircuitProtectionSectionShape(): Shape {
  return once(CircuitProtectionSectionShape, () => ({
    type: "CircuitProtectionSection",
    words: ["circuit-protection.section.run", "circuit-protection.section.whip"],
  }));
}

export function CircuitProtectionPointShape(): Shape {
  return once(CircuitProtectionPointShape, () => ({
    type: "CircuitProtectionPoint",
    words: [
      "circuit-protection.point.ambient",
      "circuit-protection.point.marked-values",
      "circuit-protection.point.device-ratings",
      "circuit-protection.point.poles",
      "circuit-protection.point.voltage-marking",
      "circuit-protection.point.overload",
      "circuit-protection.point.small-fuse",
      "circuit-protection.point.ampacity",
      "circuit-protection.point.terminations",
      "circuit-protection.point.sheathed-cable",
      "circuit-protection.point.grouping",
      "circuit-protection.point.thermal-insulation",
      "circuit-protection.point.rooftop",
      "circuit-protection.point.aluminum-terminals",
      "circuit-protection.point.grounding",
      "circuit-protection.point.enlarged-grounding",
      "circuit-protection.point.disconnect-rating",
      "circuit-protection.point.disconnect-place",
      "circuit-protection.point.working-space",
      "circuit-protection.point.voltage-drop",
      "circuit-protection.point.residual-current",
      "circuit-protection.point.ground-fault",
      "circuit-protection.point.service-receptacle",
      "circuit-protection.point.rooftop-raceway",
      "circuit-protection.point.compressor",
    ],
  }));
}

export function CircuitProtectionUnjudgedShape(): Shape {
  return once(CircuitProtectionUnjudgedShape, () => ({
    type: "CircuitProtectionUnjudged",
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
  }));
}

export function CircuitProtectionAdviceShape(): Shape {
  return once(CircuitProtectionAdviceShape, () => ({
    type: "CircuitProtectionAdvice",
    words: [
      "circuit-protection.advice.enclosure-tool-or-lock",
      "circuit-protection.advice.enclosure-locked",
      "circuit-protection.advice.surge-protection",
      "circuit-protection.advice.buried-cable-residual-current",
      "circuit-protection.advice.own-circuit",
      "circuit-protection.advice.earth-class-d",
      "circuit-protection.advice.notifiable-work",
      "circuit-protection.advice.gas-clearance",
    ],
  }));
}

export function CircuitProtectionStatements(): StatementTable {
  return once(CircuitProtectionStatements, () => ({
    "circuit-protection.add-compressor": {},
    "circuit-protection.add-receptacle": { limit: "length" },
    "circuit-protection.advice": {
      clause: VerbatimShape(),
      advice: CircuitProtectionAdviceShape(),
    },
    "circuit-protection.allowed": {
      kinds: { list: CircuitProtectionDeviceShape() },
      ratings: { list: "current" },
      poles: "number",
      size: VerbatimShape(),
      rating: "current",
    },
    "circuit-protection.aluminum-terminals-met": {},
    "circuit-protection.aluminum-terminals-missing": {},
    "circuit-protection.aluminum-terminals-not-stated": {},
    "circuit-protection.ambient-assumed": { ambient: "temperature" },
    "circuit-protection.ampacity-fits": { marked: "current", ampacity: "current" },
    "circuit-protection.ampacity-needs-more": { rating: "current" },
    "circuit-protection.ampacity-too-low": { marked: "current", ampacity: "current" },
    "circuit-protection.ampacity-unexplained": { marked: "current", ampacity: "current" },
    "circuit-protection.ask-authority": { clause: VerbatimShape(), rules: VerbatimShape() },
    "circuit-protection.ask-manufacturer": {},
    "circuit-protection.cable-assumed": {},
    "circuit-protection.calculated-not-marked": {},
    "circuit-protection.check-service": {},
    "circuit-protection.circuits-assumed": {},
    "circuit-protection.clause-not-asked-for": { clause: VerbatimShape() },
    "circuit-protection.clear-space": { depth: "length", width: "length", height: "length" },
    "circuit-protection.comply-and-verify": { clause: VerbatimShape(), rules: VerbatimShape() },
    "circuit-protection.compressor-inferred": { maximum: "current", ampacity: "current" },
    "circuit-protection.conductor-met": {
      section: CircuitProtectionSectionShape(),
      size: VerbatimShape(),
      usable: "current",
      ampacity: "current",
      rating: "current",
    },
    "circuit-protection.conductor-not-judged": { size: VerbatimShape(), clause: VerbatimShape() },
    "circuit-protection.conductor-not-stated": {},
    "circuit-protection.conductor-too-small": {
      section: CircuitProtectionSectionShape(),
      size: VerbatimShape(),
      usable: "current",
      ampacity: "current",
      rating: "current",
    },
    "circuit-protection.conductor-unprotected": {
      size: VerbatimShape(),
      section: CircuitProtectionSectionShape(),
      usable: "current",
      rating: "current",
    },
    "circuit-protection.conductors-assumed": {},
    "circuit-protection.curve": { curve: VerbatimShape() },
    "circuit-protection.device-allowed": {
      kinds: { list: CircuitProtectionDeviceShape() },
      ratings: { list: "current" },
      poles: "number",
    },
    "circuit-protection.device-below-ampacity": {
      device: CircuitProtectionDeviceShape(),
      rating: "current",
      ampacity: "current",
    },
    "circuit-protection.device-below-load": {
      device: CircuitProtectionDeviceShape(),
      rating: "current",
      load: "current",
    },
    "circuit-protection.device-below-loads": {
      device: CircuitProtectionDeviceShape(),
      rating: "current",
      load: "current",
    },
    "circuit-protection.device-kind-met": { device: CircuitProtectionDeviceShape() },
    "circuit-protection.device-not-standard": {
      device: CircuitProtectionDeviceShape(),
      rating: "current",
    },
    "circuit-protection.device-not-stated": {},
    "circuit-protection.device-rating-met": {
      device: CircuitProtectionDeviceShape(),
      rating: "current",
      limit: "current",
    },
    "circuit-protection.device-too-large": {
      device: CircuitProtectionDeviceShape(),
      rating: "current",
      limit: "current",
    },
    "circuit-protection.disconnect-accessible": {},
    "circuit-protection.disconnect-clear": {},
    "circuit-protection.disconnect-fuse-met": { fuse: "current", limit: "current" },
    "circuit-protection.disconnect-fuse-too-large": { fuse: "current", limit: "current" },
    "circuit-protection.disconnect-in-sight": {},
    "circuit-protection.disconnect-in-the-way": {},
    "circuit-protection.disconnect-lockable": {},
    "circuit-protection.disconnect-near": { distance: "length", limit: "length" },
    "circuit-protection.disconnect-not-accessible": {},
    "circuit-protection.disconnect-not-lockable": {},
    "circuit-protection.disconnect-off-unit": {},
    "circuit-protection.disconnect-on-unit": {},
    "circuit-protection.disconnect-out-of-sight": {},
    "circuit-protection.disconnect-rating-met": { rating: "current", needed: "current" },
    "circuit-protection.disconnect-too-far": { distance: "length", limit: "length" },
    "circuit-protection.disconnect-too-small": { rating: "current", needed: "current" },
    "circuit-protection.equipment-not-stated": { size: VerbatimShape(), rating: "current" },
    "circuit-protection.fit-aluminum-terminals": {},
    "circuit-protection.fit-at-most": { limit: "current" },
    "circuit-protection.fit-between": { from: "current", to: "current" },
    "circuit-protection.fit-conductor": { size: VerbatimShape() },
    "circuit-protection.fit-conductor-for-drop": { size: VerbatimShape() },
    "circuit-protection.fit-disconnect": { needed: "current" },
    "circuit-protection.fit-disconnect-fuses": { limit: "current" },
    "circuit-protection.fit-fuses": {},
    "circuit-protection.fit-ground-fault": { limit: "current" },
    "circuit-protection.fit-grounding": { size: VerbatimShape() },
    "circuit-protection.fit-grounding-area": { area: "number" },
    "circuit-protection.fit-grounding-wire": {},
    "circuit-protection.fit-larger-conductor": {},
    "circuit-protection.fit-lockable-disconnect": {},
    "circuit-protection.fit-marking": { needed: VerbatimShape() },
    "circuit-protection.fit-poles": { needed: "number" },
    "circuit-protection.fit-residual-current": { limit: "current" },
    "circuit-protection.found-not-to-comply": {
      rules: VerbatimShape(),
      by: VerbatimShape(),
      date: VerbatimShape(),
      clause: VerbatimShape(),
    },
    "circuit-protection.from-memory": { clauses: { list: VerbatimShape() } },
    "circuit-protection.fuse-every-line": { needed: "number" },
    "circuit-protection.fuse-required": {},
    "circuit-protection.give-own-circuit": {},
    "circuit-protection.ground-fault-by-date": { clause: VerbatimShape(), from: VerbatimShape() },
    "circuit-protection.ground-fault-class-c": { clause: VerbatimShape() },
    "circuit-protection.ground-fault-exempt": {
      clause: VerbatimShape(),
      from: VerbatimShape(),
      date: VerbatimShape(),
    },
    "circuit-protection.ground-fault-met": { clause: VerbatimShape(), rated: "current" },
    "circuit-protection.ground-fault-missing": { clause: VerbatimShape() },
    "circuit-protection.ground-fault-not-adopted": { clause: VerbatimShape() },
    "circuit-protection.ground-fault-not-stated": { clause: VerbatimShape() },
    "circuit-protection.ground-fault-open": { clause: VerbatimShape() },
    "circuit-protection.ground-fault-required": { clause: VerbatimShape() },
    "circuit-protection.grounding-by-energy-met": { fitted: VerbatimShape(), area: "number" },
    "circuit-protection.grounding-by-energy-short": { fitted: VerbatimShape(), area: "number" },
    "circuit-protection.grounding-by-exception": {
      fitted: VerbatimShape(),
      size: VerbatimShape(),
      clause: VerbatimShape(),
    },
    "circuit-protection.grounding-met": { fitted: VerbatimShape(), size: VerbatimShape() },
    "circuit-protection.grounding-needs-energy": { fitted: VerbatimShape(), size: VerbatimShape() },
    "circuit-protection.grounding-too-small": { fitted: VerbatimShape(), size: VerbatimShape() },
    "circuit-protection.grounding-two-readings": { size: VerbatimShape(), clause: VerbatimShape() },
    "circuit-protection.grounding-wire-missing": { clause: VerbatimShape() },
    "circuit-protection.hacr-mark": {},
    "circuit-protection.heater-below-50-kw": {},
    "circuit-protection.heater-needs-more": { rating: "current" },
    "circuit-protection.largest-load-not-stated": { rating: "current", needed: "current" },
    "circuit-protection.look-at-fittings": {},
    "circuit-protection.look-at-terminals": {},
    "circuit-protection.marking-assumed": {},
    "circuit-protection.maximum-below-ampacity": {},
    "circuit-protection.maximum-confirmed": { maximum: "current", ampacity: "current" },
    "circuit-protection.maximum-not-stated": {},
    "circuit-protection.maximum-too-high": { maximum: "current", ampacity: "current" },
    "circuit-protection.move-disconnect": {},
    "circuit-protection.move-disconnect-within": { limit: "length" },
    "circuit-protection.next-size-down": { calculated: "current" },
    "circuit-protection.no-standard-device": { maximum: "current", ampacity: "current" },
    "circuit-protection.no-standard-device-between": { maximum: "current", ampacity: "current" },
    "circuit-protection.not-a-usual-size": { maximum: "current" },
    "circuit-protection.not-confirmed": {
      point: CircuitProtectionPointShape(),
      clause: VerbatimShape(),
      rules: VerbatimShape(),
    },
    "circuit-protection.not-judged": { parts: { list: CircuitProtectionUnjudgedShape() } },
    "circuit-protection.not-stated": { parts: { list: CircuitProtectionUnjudgedShape() } },
    "circuit-protection.poles-met": { poles: "number", needed: "number" },
    "circuit-protection.poles-not-stated": { needed: "number" },
    "circuit-protection.poles-too-few": { poles: "number", needed: "number" },
    "circuit-protection.protection-fits": { maximum: "current", ceiling: "current" },
    "circuit-protection.protection-too-high": { maximum: "current", ceiling: "current" },
    "circuit-protection.raceway-fittings-met": { clause: VerbatimShape() },
    "circuit-protection.raceway-fittings-not-stated": { clause: VerbatimShape() },
    "circuit-protection.rated-load-assumed": { ampacity: "current" },
    "circuit-protection.rated-load-low": { load: "current", ampacity: "current" },
    "circuit-protection.read-nameplate-again": {},
    "circuit-protection.receptacle-met": { distance: "length", limit: "length" },
    "circuit-protection.receptacle-on-load-side": {},
    "circuit-protection.receptacle-too-far": { distance: "length", limit: "length" },
    "circuit-protection.residual-current-met": { rated: "current" },
    "circuit-protection.residual-current-missing": { clause: VerbatimShape() },
    "circuit-protection.residual-current-not-stated": { clause: VerbatimShape() },
    "circuit-protection.residual-current-too-high": { rated: "current", limit: "current" },
    "circuit-protection.roof-assumed": {},
    "circuit-protection.rules-older": { reviewed: VerbatimShape(), date: VerbatimShape() },
    "circuit-protection.service-assumed": { system: VerbatimShape() },
    "circuit-protection.shared-circuit": { count: "number" },
    "circuit-protection.shorten-run": { longest: "length" },
    "circuit-protection.size-conductor-elsewhere": { clause: VerbatimShape() },
    "circuit-protection.smallest-rating": { rating: "current" },
    "circuit-protection.start-may-trip": { locked: "current", from: "current" },
    "circuit-protection.state-conductor": {},
    "circuit-protection.state-date": {},
    "circuit-protection.state-device": {},
    "circuit-protection.state-earthing": {},
    "circuit-protection.state-equipment": {},
    "circuit-protection.state-fault-energy": {},
    "circuit-protection.state-ground-fault": { clause: VerbatimShape(), limit: "current" },
    "circuit-protection.state-largest-load": {},
    "circuit-protection.state-marking": {},
    "circuit-protection.state-maximum": {},
    "circuit-protection.state-poles": {},
    "circuit-protection.terminations-assumed": {},
    "circuit-protection.verified": {
      rules: VerbatimShape(),
      by: VerbatimShape(),
      date: VerbatimShape(),
      clause: VerbatimShape(),
    },
    "circuit-protection.voltage-drop-above-limit": { drop: "ratio", limit: "ratio" },
    "circuit-protection.voltage-drop-met": { drop: "ratio", limit: "ratio" },
    "circuit-protection.voltage-drop-recommended": { drop: "ratio", limit: "ratio" },
    "circuit-protection.voltage-marking-assumed": { marking: VerbatimShape() },
    "circuit-protection.voltage-marking-met": { marking: VerbatimShape() },
    "circuit-protection.voltage-marking-not-stated": { system: VerbatimShape() },
    "circuit-protection.voltage-marking-too-low": {
      marking: VerbatimShape(),
      needed: VerbatimShape(),
      system: VerbatimShape(),
    },
    "circuit-protection.withdraw-verification": { clause: VerbatimShape() },
    "circuit-protection.working-space-met": { depth: "length", width: "length", height: "length" },
    "circuit-protection.working-space-recommended": {
      depth: "length",
      width: "length",
      height: "length",
    },
    "circuit-protection.working-space-short": {
      depth: "length",
      width: "length",
      height: "length",
    },
  }));
}

export function CircuitProtectionStatementShape(): Shape {
  return once(CircuitProtectionStatementShape, () => ({
    type: "CircuitProtectionStatement",
    statements: [CircuitProtectionStatements()],
  }));
}

export function NameplateAssessmentCautionsItemShape(): Shape {
  return once(NameplateAssessmentCautionsItemShape, () => ({
    type: "NameplateAssessmentCautionsItem",
    statements: [SafetyStatements(), CircuitProtectionStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function NameplateModeShape(): Shape {
  return once(NameplateModeShape, () => ({
    type: "NameplateMode",
    fields: {
      mode: { words: ["cooling", "heating", "emergency heating", "defrost", "any"] },
      minimumCircuitAmpacity: "current",
      calculatedProtection: "current",
      maximumOvercurrentProtection: "current",
      ratedLoadCurrent: "current",
      steps: { list: CircuitProtectionStatementShape() },
    },
    docs: {
      "": "The nameplate figures of one operating mode.",
      mode: "The mode; any when no load names one.",
      minimumCircuitAmpacity: "Minimum circuit ampacity, unrounded.",
      calculatedProtection:
        "2.25 × largest motor + everything else, before rounding to a standard size.",
      maximumOvercurrentProtection: "Largest standard size of overcurrent protection.",
      ratedLoadCurrent:
        "Sum of the currents at rated load, without the small loads that do not count.",
      steps: "How the size was come by.",
    },
  }));
}

export function NameplateFromPartsShape(): Shape {
  return once(NameplateFromPartsShape, () => ({
    type: "NameplateFromParts",
    fields: {
      assumptions: { list: CircuitProtectionStatementShape() },
      cautions: { list: NameplateAssessmentCautionsItemShape() },
      sources: { list: CitationShape() },
      minimumCircuitAmpacity: "current",
      maximumOvercurrentProtection: "current",
      disconnectRating: "current",
      modes: { list: NameplateModeShape() },
    },
    docs: {
      "": "Nameplate figures from the parts of a unit.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      sources: "Where the rules and figures come from.",
      minimumCircuitAmpacity:
        "The largest of the modes. A maker prints it rounded to 0.1 A or 1 A.",
      maximumOvercurrentProtection: "The largest of the modes. A maker may mark less.",
      disconnectRating: "Smallest disconnect: 115 % of the largest sum of rated-load currents.",
      modes: "Each mode by itself.",
    },
  }));
}

export function NameplateAssessmentShape(): Shape {
  return once(NameplateAssessmentShape, () => ({
    type: "NameplateAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["ampacity-too-low", "protection-too-high"] },
      reasons: { list: CircuitProtectionStatementShape() },
      assumptions: { list: CircuitProtectionStatementShape() },
      cautions: { list: NameplateAssessmentCautionsItemShape() },
      "actions?": { list: CircuitProtectionStatementShape() },
      sources: { list: CitationShape() },
      calculated: NameplateFromPartsShape(),
    },
    docs: {
      "": "The plate's figures against those from the parts.",
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
  }));
}

export function SharedLoadShape(): Shape {
  return once(SharedLoadShape, () => ({
    type: "SharedLoad",
    fields: {
      kind: { words: ["other", "unit"] },
      current: "current",
      "maximumOvercurrentProtection?": "current",
      "continuous?": "flag",
    },
    docs: {
      "": "Something else on the same circuit: another unit by its nameplate, or another load by its current.",
      kind: "unit: the current is its minimum circuit ampacity. other: it is the load's rated current.",
      current: "The current, more than 0.",
      maximumOvercurrentProtection: "Largest protection that its nameplate allows.",
      continuous:
        "Whether another load runs for three hours or more, so that it counts 125 %; assumed, on the safe side.",
    },
  }));
}

export function ClauseVerificationShape(): Shape {
  return once(ClauseVerificationShape, () => ({
    type: "ClauseVerification",
    fields: { clause: "text", complies: "flag", by: "text", at: "text" },
    docs: {
      "": "What a person found who checked the circuit by the text of a clause that this library does not know well enough.",
      clause: "The clause, as the verdict names it in toVerify.",
      complies: "Whether the circuit complies with it.",
      by: "Name of who checked it.",
      at: 'The day on which it was checked, as "2026-11-29", or a time of that day.',
    },
  }));
}

export function TShape(): Shape {
  return once(TShape, () => ({ type: "T", words: ["TT", "TN"] }));
}

export function FittedDeviceShape(): Shape {
  return once(FittedDeviceShape, () => ({
    type: "FittedDevice",
    fields: {
      kind: { words: ["breaker", "fuse"] },
      rating: "current",
      "poles?": { words: [2, 1, 3, 4] },
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
    docs: {
      "": "The breaker or the fuses at the start of the circuit.",
      kind: "Breaker or fuse.",
      rating: "Rating, more than 0.",
      poles: "Poles that open together; 4 where a device for three phases opens the neutral too.",
      voltageRating: "Voltage marking.",
      hacr: "Whether a breaker is marked HACR.",
      curve: "Curve of a miniature breaker.",
    },
  }));
}

export function CircuitFromNameplateInputInstalledWhipShape(): Shape {
  return once(CircuitFromNameplateInputInstalledWhipShape, () => ({
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
      "wiring?": { either: [AwgWiringShape(), MetricWiringShape()] },
    },
  }));
}

export function FittedDisconnectWorkingSpaceShape(): Shape {
  return once(FittedDisconnectWorkingSpaceShape, () => ({
    type: "FittedDisconnectWorkingSpace",
    fields: {
      depth: "length",
      width: "length",
      height: "length",
      "equipmentWidth?": "length",
      "condition?": { words: [2, 1, 3] },
    },
    docs: {
      depth: "Depth in front.",
      width: "Width.",
      height: "Clear height from the ground or platform.",
      equipmentWidth: "Width of the equipment, where it is wider than the least width.",
      condition:
        "Opposite the live parts: 1 nothing grounded, 2 grounded parts, 3 other live parts; 3 is assumed.",
    },
  }));
}

export function FittedDisconnectShape(): Shape {
  return once(FittedDisconnectShape, () => ({
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
      "workingSpace?": FittedDisconnectWorkingSpaceShape(),
    },
    docs: {
      "": "The disconnect at the unit.",
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
  }));
}

export function ServiceReceptacleShape(): Shape {
  return once(ServiceReceptacleShape, () => ({
    type: "ServiceReceptacle",
    fields: { distance: "length", "onLoadSide?": "flag" },
    docs: {
      "": "A 125 V service receptacle near the unit.",
      distance: "How far it is from the unit, on the same level.",
      onLoadSide: "Whether it is fed from the load side of the unit's disconnect.",
    },
  }));
}

export function CircuitFromNameplateInputInstalledShape(): Shape {
  return once(CircuitFromNameplateInputInstalledShape, () => ({
    type: "CircuitFromNameplateInputInstalled",
    fields: {
      "device?": FittedDeviceShape(),
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
      "whip?": CircuitFromNameplateInputInstalledWhipShape(),
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
      "compressionFittings?": "flag",
      "fault?": {
        either: [
          ProtectiveConductorAreaInputFault1Shape(),
          ProtectiveConductorAreaInputFault2Shape(),
        ],
      },
      "disconnect?": FittedDisconnectShape(),
      "residualCurrent?": { either: ["current", "flag"] },
      "serviceReceptacle?": ServiceReceptacleShape(),
    },
  }));
}

export function CircuitFromNameplateInputShape(): Shape {
  return once(CircuitFromNameplateInputShape, () => ({
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
        words: [
          "fuse only",
          "fuse or HACR breaker",
          "fuse or breaker",
          "max overcurrent protection",
        ],
      },
      "ratedLoadCurrent?": "current",
      "largestLoadCurrent?": "current",
      "lockedRotorCurrent?": "current",
      "sharedWith?": { list: SharedLoadShape() },
      "powerFactor?": "number",
      "equipment?": { words: ["other", "motor-compressor"] },
      "occupancy?": { words: ["dwelling", "other"] },
      "date?": "text",
      "powerConversion?": "flag",
      "groundFaultText?": "text",
      "verifications?": { list: ClauseVerificationShape() },
      "earthing?": TShape(),
      supply: SupplyShape(),
      wiring: { either: [AwgWiringShape(), MetricWiringShape()] },
      "installed?": CircuitFromNameplateInputInstalledShape(),
    },
  }));
}

export function CircuitFromNameplateResultDeviceShape(): Shape {
  return once(CircuitFromNameplateResultDeviceShape, () => ({
    type: "CircuitFromNameplateResultDevice",
    fields: {
      rating: "current",
      ratings: { list: "current" },
      kind: { words: ["fuse", "fuse or breaker"] },
      system: SupplySystemNameShape(),
      poles: { words: [2, 1, 3] },
      voltsToGround: "number",
      voltsBetween: "number",
      voltageRating: VoltageRatingShape(),
    },
    docs: {
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
  }));
}

export function WorkingSpaceShape(): Shape {
  return once(WorkingSpaceShape, () => ({
    type: "WorkingSpace",
    fields: { depth: "length", width: "length", height: "length" },
    docs: {
      "": "Clear space in front of the disconnect.",
      depth: "Depth in front, for the deepest condition or the one stated.",
      width: "Width; the width of the equipment where that is more.",
      height: "Height from the ground; the height of the equipment where that is more.",
    },
  }));
}

export function RequiredDisconnectShape(): Shape {
  return once(RequiredDisconnectShape, () => ({
    type: "RequiredDisconnect",
    fields: {
      minimumRating: "current",
      "madeSize?": "current",
      nonFusedAllowed: "flag",
      "withinSight?": "length",
      "workingSpace?": WorkingSpaceShape(),
    },
    docs: {
      "": "What the disconnect has to be.",
      minimumRating:
        "115 % of the rated-load currents, of all or of the largest (metric rules: the currents themselves).",
      madeSize: "The next made size; common practice, no source. Left out above the largest.",
      nonFusedAllowed:
        "Whether one without fuses will do: the device ahead already is of the marked kind.",
      withinSight: "Largest distance from the unit, where the rules have one.",
      workingSpace: "Working space in front, where the rules have one.",
    },
  }));
}

export function CircuitFromNameplateResultVoltageDropShape(): Shape {
  return once(CircuitFromNameplateResultVoltageDropShape, () => ({
    type: "CircuitFromNameplateResultVoltageDrop",
    fields: {
      running: VoltageDropShape(),
      "starting?": VoltageDropShape(),
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
  }));
}

export function CircuitFromNameplateResultShape(): Shape {
  return once(CircuitFromNameplateResultShape, () => ({
    type: "CircuitFromNameplateResult",
    fields: {
      rules: "text",
      device: CircuitFromNameplateResultDeviceShape(),
      "conductor?": MinimumConductorResultShape(),
      "fittedConductor?": MinimumConductorResultShape(),
      "fittedWhip?": MinimumConductorResultShape(),
      "equipmentGrounding?": EquipmentGroundingResultShape(),
      disconnect: RequiredDisconnectShape(),
      toVerify: { list: "text" },
      "residualCurrent?": "current",
      "voltageDrop?": CircuitFromNameplateResultVoltageDropShape(),
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
          "not-confirmed",
        ],
      },
      reasons: { list: CircuitProtectionStatementShape() },
      assumptions: { list: CircuitProtectionStatementShape() },
      cautions: { list: NameplateAssessmentCautionsItemShape() },
      "actions?": { list: CircuitProtectionStatementShape() },
      sources: { list: CitationShape() },
    },
  }));
}

export function CompareSuppliesInputShape(): Shape {
  return once(CompareSuppliesInputShape, () => ({
    type: "CompareSuppliesInput",
    fields: {
      rules: byRules,
      power: "power",
      "powerFactor?": "number",
      supplies: { list: SupplyShape() },
      wiring: { either: [AwgWiringShape(), MetricWiringShape()] },
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
    docs: {
      rules: "The rule set.",
      power: "Power of the load.",
      powerFactor: "Its power factor.",
      supplies: "The supplies to compare.",
      wiring: "How the cable runs.",
      conductor: "One conductor on which all supplies are compared.",
    },
  }));
}

export function CompareSuppliesResultItemShape(): Shape {
  return once(CompareSuppliesResultItemShape, () => ({
    type: "CompareSuppliesResultItem",
    fields: {
      supply: SupplyShape(),
      connection: ConnectionShape(),
      current: "current",
      ampacity: "current",
      conductor: MinimumConductorResultShape(),
      "drop?": VoltageDropShape(),
      "dropWithSameConductor?": VoltageDropShape(),
    },
  }));
}

export function CompressorProtectionInputShape(): Shape {
  return once(CompressorProtectionInputShape, () => ({
    type: "CompressorProtectionInput",
    fields: { rules: byRules, loads: { list: LoadShape() } },
    docs: { rules: "The rule set.", loads: "What the circuit feeds." },
  }));
}

export function ProtectionCeilingShape(): Shape {
  return once(ProtectionCeilingShape, () => ({
    type: "ProtectionCeiling",
    fields: { calculated: "current", rating: "current" },
    docs: {
      "": "A ceiling and the standard size under it.",
      calculated: "The ceiling, unrounded.",
      rating:
        "Largest standard size that does not exceed it; not required to be below the smallest of the rules.",
    },
  }));
}

export function CompressorProtectionShape(): Shape {
  return once(CompressorProtectionShape, () => ({
    type: "CompressorProtection",
    fields: { normal: ProtectionCeilingShape(), "ifItWillNotStart?": ProtectionCeilingShape() },
    docs: {
      "": "Ceilings of the protection of a compressor circuit.",
      normal:
        "The first choice: 175 % of the rated-load current, or 50 % of the locked-rotor current.",
      ifItWillNotStart:
        "Where the compressor will not start on it: 225 %; left out where the rules have no such step.",
    },
  }));
}

export function NameplateFromPartsInputShape(): Shape {
  return once(NameplateFromPartsInputShape, () => ({
    type: "NameplateFromPartsInput",
    fields: { loads: { list: LoadShape() }, "standard?": { words: ["UL 1995", "UL 60335-2-40"] } },
  }));
}

export function TripBandInputShape(): Shape {
  return once(TripBandInputShape, () => ({
    type: "TripBandInput",
    fields: { rules: byRules, rating: "current", curve: { words: ["B", "C", "D"] } },
    docs: { rules: "The rule set.", rating: "Rating of the breaker.", curve: "Its curve." },
  }));
}

export function TripBandShape(): Shape {
  return once(TripBandShape, () => ({
    type: "TripBand",
    fields: {
      noTrip: "current",
      trip: "current",
      instantaneousFrom: "current",
      instantaneousTo: "current",
    },
    docs: {
      "": "Currents of a breaker's characteristic.",
      noTrip: "Does not trip within the conventional time (1 h up to 63 A).",
      trip: "Trips within the conventional time.",
      instantaneousFrom: "Does not trip at once below this.",
      instantaneousTo: "Trips at once above this.",
    },
  }));
}
