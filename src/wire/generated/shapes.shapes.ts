// Which shapes have the types of shapes?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";

export const EquipmentVoltageRangeShape: Shape = {
  type: "EquipmentVoltageRange",
  fields: { "minimum?": "voltage", "maximum?": "voltage" },
  about: { minimum: "Lowest voltage allowed.", maximum: "Highest voltage allowed." },
};

export const ManualRunOilTrapsShape: Shape = {
  type: "ManualRunOilTraps",
  fields: { "above?": "length", "spacing?": "length" },
  about: { above: "Lift that still needs none.", spacing: "Height between traps." },
};

export const ManualRunExtraOilShape: Shape = {
  type: "ManualRunExtraOil",
  fields: { "beyond?": "length", "per?": "length", "volume?": "volume" },
  about: {
    beyond: "Length that the factory's oil covers.",
    per: "Step of length.",
    volume: "Oil for a step.",
  },
};

export const ManualRunShape: Shape = {
  type: "ManualRun",
  fields: {
    "maximumLength?": "length",
    "minimumLength?": "length",
    "maximumLift?": "length",
    "maximumLiftOutdoorAbove?": "length",
    "maximumBends?": "number",
    "bendEquivalentLength?": "length",
    "oilTraps?": ManualRunOilTrapsShape,
    "extraOil?": ManualRunExtraOilShape,
  },
  about: {
    maximumLength: "Longest run, one way.",
    minimumLength: "Shortest run: below it come noise, vibration and liquid return.",
    maximumLift: "Largest height difference of the two units.",
    maximumLiftOutdoorAbove:
      "Largest height difference where the outdoor unit is the higher one, if the manual tells the two apart.",
    maximumBends: "Most bends, a whole number.",
    bendEquivalentLength:
      "Length of straight tube that a bend counts for; maximumLength then holds the equivalent length.",
    oilTraps:
      "Oil traps in the vapor riser: one for every spacing where the lift is more than above.",
    extraOil: "Oil to add: volume for every started per beyond beyond.",
  },
};

export const ManualChargeRateShape: Shape = {
  type: "ManualChargeRate",
  fields: { "mass?": "mass", "per?": "length" },
  about: { mass: "Mass, 0 or more.", per: "For this much length, more than 0." },
};

export const InstrumentsVacuumGaugeResolutionItemShape: Shape = {
  type: "InstrumentsVacuumGaugeResolutionItem",
  fields: { "upTo?": "absolutePressure", "resolution?": "pressureDifference" },
  about: {
    upTo: "Largest reading of the range.",
    resolution: "Smallest step of the display in it.",
  },
};

export const TubingLiquidShape: Shape = {
  type: "TubingLiquid",
  fields: { "outsideDiameter?": "length", "wall?": "length" },
  about: {
    outsideDiameter: "Outside diameter, 1 mm to 300 mm.",
    wall: "Wall thickness, more than 0 and less than half the outside diameter.",
  },
};

export const JointTorqueWindowShape: Shape = {
  type: "JointTorqueWindow",
  fields: { "low?": "torque", "high?": "torque" },
  about: { low: "Smallest figure allowed.", high: "Largest figure allowed." },
};

export const DrainSlope1Shape: Shape = {
  type: "DrainSlope1",
  fields: { "slope?": "ratio", "accuracy?": "ratio" },
  about: {
    slope: "From a digital level that shows per cent or mm/m.",
    accuracy: "Limits of error, ±.",
  },
};

export const DrainSlope2Shape: Shape = {
  type: "DrainSlope2",
  fields: { "angle?": "angle", "accuracy?": "angle" },
  about: { angle: "From a digital level that shows degrees.", accuracy: "Limits of error, ±." },
};

export const DrainSlope3Shape: Shape = {
  type: "DrainSlope3",
  fields: { "gap?": "length", "levelLength?": "length", "accuracy?": "length" },
  about: {
    gap: "Gap below a spirit level when its bubble is centerd.",
    levelLength: "Length of that level.",
    accuracy: "Limits of error of the gap, ±.",
  },
};

export const DrainSlope4Shape: Shape = {
  type: "DrainSlope4",
  fields: {
    "heightAtStart?": "length",
    "heightAtEnd?": "length",
    "run?": "length",
    "accuracy?": "length",
  },
  about: {
    heightAtStart: "Height where the water starts, from a datum such as a laser line.",
    heightAtEnd: "Height where it leaves, from the same datum.",
    run: "Horizontal distance between the two.",
    accuracy: "Limits of error of each height, ±.",
  },
};

export const DrainRoute2Shape: Shape = {
  type: "DrainRoute2",
  fields: {
    "outdoors?": "flag",
    "lowestOutdoorTemperature?": "temperature",
    "aboveFinishedSpace?": "flag",
    "pumped?": "flag",
  },
  about: {
    outdoors: "Whether part of it is outdoors.",
    lowestOutdoorTemperature: "Coldest outdoor temperature to be expected.",
    aboveFinishedSpace: "Whether the unit hangs above finished space.",
    pumped: "Whether a pump lifts the water.",
  },
};

export const DrainPumpCurveItemShape: Shape = {
  type: "DrainPumpCurveItem",
  fields: { "lift?": "length", "flow?": "volumeFlow" },
  about: { lift: "Lift, 0 or more.", flow: "Flow at that lift, 0 or more." },
};

export const DrainPumpShape: Shape = {
  type: "DrainPump",
  fields: {
    "condensate?": "volumeFlow",
    "lift?": "length",
    "curve?": { list: DrainPumpCurveItemShape },
    "reservoir?": "volume",
    "margin?": "number",
  },
  about: {
    condensate: "Water that comes, above 0: from condensateRate, at the wettest conditions.",
    lift: "Height from the water to the highest point of the hose, 0 or more.",
    curve: "At least two points, by rising lift, the flow not rising.",
    reservoir: "Volume between the switch points of its float, above 0.",
    margin: "How many times the condensate the pump has to move, 1 or more; 2 when left out.",
  },
};

export const PressureTestPartReadingsItemShape: Shape = {
  type: "PressureTestPartReadingsItem",
  fields: {
    "pressure?": { either: ["absolutePressure", "gaugePressure"] },
    "temperature?": { either: ["temperature", { list: "temperature" }] },
    "elapsed?": "duration",
    "atmosphere?": "absolutePressure",
  },
  about: {
    pressure: "What the gauge or absolute sensor shows; the same kind in all readings of a test.",
    temperature: "Gas temperature, per zone where zones differ, −40 °C to 70 °C.",
    elapsed: "Time since the test began; needed for a leak rate.",
    atmosphere:
      "Station pressure at this reading, where it differs from the one given for the whole test.",
  },
};

export const PressureTestPartCriterion1Shape: Shape = {
  type: "PressureTestPartCriterion1",
  fields: { "maximumDrop?": "pressureDifference", "per?": "duration" },
  about: {
    maximumDrop: "Largest drop, above 0; more than 1 % of the fill pressure counts as 1 %.",
    per: "The time for which the drop is allowed, so that the limit is a rate; the whole test when left out.",
  },
};

export const PressureTestPartCriterion2Shape: Shape = {
  type: "PressureTestPartCriterion2",
  fields: { "maximumLeakRate?": "throughput" },
  about: {
    maximumLeakRate:
      "Largest nitrogen throughput at the temperature of the test, above 0; one that lets more than 1 % of the fill pressure go in the test counts as 1 %.",
  },
};

export const EvacuationReadingsItemShape: Shape = {
  type: "EvacuationReadingsItem",
  fields: { "elapsed?": "duration", "pressure?": "absolutePressure" },
  about: {
    elapsed: "Time since the system was isolated from the pump.",
    pressure: "What the gauge shows.",
  },
};

export const EvacuationHosesShape: Shape = {
  type: "EvacuationHoses",
  fields: { "material?": { words: ["rubber", "low-permeation", "metal"] }, "length?": "length" },
  about: {
    material: "rubber lets air through, low-permeation has a barrier, metal lets none through.",
    length: "Length of all of them together, 0 to 30 m.",
  },
};

export const EvacuationBlankTestShape: Shape = {
  type: "EvacuationBlankTest",
  fields: { "rate?": "pressureRate", "volume?": "volume" },
  about: {
    rate: "Rise of the pressure by the end of the blank test, 0 or more.",
    volume: "Inner volume of hoses and gauge.",
  },
};

export const CircuitSharedWithItemShape: Shape = {
  type: "CircuitSharedWithItem",
  fields: {
    "kind?": { words: ["other", "unit"] },
    "current?": "current",
    "maximumOvercurrentProtection?": "current",
    "continuous?": "flag",
  },
  about: {
    kind: "unit: the current is its minimum circuit ampacity. other: it is the load's rated current.",
    current: "The current, more than 0.",
    maximumOvercurrentProtection: "Largest protection that its nameplate allows.",
    continuous:
      "Whether another load runs for three hours or more, so that it counts 125 %; assumed, on the safe side.",
  },
};

export const CircuitWiring1Shape: Shape = {
  type: "CircuitWiring1",
  fields: {
    "insulation?": { words: ["90 °C", "60 °C", "75 °C"] },
    "terminations?": { words: ["60 °C", "75 °C"] },
    "cable?": { words: ["other", "NM"] },
    "currentCarryingConductors?": "number",
    "aboveRoof?": "length",
    "conduit?": { words: ["aluminum", "PVC", "steel"] },
    "material?": { words: ["copper", "aluminum"] },
    "ambient?": "temperature",
    "length?": "length",
    "stranding?": { words: ["solid", "stranded"] },
  },
  about: {
    insulation: "Rating of the insulation. For NM cable (NM-B, NMD90) 90 °C.",
    terminations:
      "What the terminals at both ends are marked for; when left out, 60 °C up to 100 A and 75 °C above.",
    cable: '"NM" for non-metallic sheathed cable, which some rules hold to its 60 °C column.',
    currentCarryingConductors:
      "Loaded conductors in the same raceway or bundle, grounding conductors not counted; 3 or fewer are assumed.",
    aboveRoof: "Height above a roof in the sun; leave out where there is no roof.",
    conduit: "Conduit, for the alternating-current impedance; used together with a power factor.",
    material: "Material of the conductors.",
    ambient:
      "Temperature around the cable at its hottest place; 30 °C is assumed when left out, 20 °C in the ground.",
    length: "One-way length, more than 0; without it no voltage drop is calculated.",
    stranding: "Solid or stranded, for the resistance; stranded is assumed, the higher of the two.",
  },
};

export const CircuitWiring2Shape: Shape = {
  type: "CircuitWiring2",
  fields: {
    "insulation?": { words: ["70 °C", "90 °C"] },
    "method?": {
      words: ["A1", "A2", "B1", "B2", "C", "D1", "D2", "E", "A", "100", "101", "102", "103"],
    },
    "groupedCircuits?": "number",
    "grouping?": { words: ["bunched", "single layer", "perforated tray"] },
    "soilResistivity?": "number",
    "insulationLength?": "length",
    "material?": { words: ["copper", "aluminum"] },
    "ambient?": "temperature",
    "length?": "length",
    "stranding?": { words: ["solid", "stranded"] },
  },
  about: {
    insulation: '"70 °C" for PVC, "90 °C" for XLPE and EPR.',
    method: "Reference method.",
    groupedCircuits: "Circuits that run together, this one included; 1 is assumed.",
    grouping: "How they run together; bunched or enclosed is assumed, in the ground touching.",
    soilResistivity: "Thermal resistivity of the soil in K·m/W, methods D1 and D2; 2.5 is assumed.",
    insulationLength: "Length over which the cable is surrounded by thermal insulation.",
    material: "Material of the conductors.",
    ambient:
      "Temperature around the cable at its hottest place; 30 °C is assumed when left out, 20 °C in the ground.",
    length: "One-way length, more than 0; without it no voltage drop is calculated.",
    stranding: "Solid or stranded, for the resistance; stranded is assumed, the higher of the two.",
  },
};

export const CircuitInstalledDeviceShape: Shape = {
  type: "CircuitInstalledDevice",
  fields: {
    "kind?": { words: ["breaker", "fuse"] },
    "rating?": "current",
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
  about: {
    kind: "Breaker or fuse.",
    rating: "Rating, more than 0.",
    poles: "Poles that open together.",
    voltageRating: "Voltage marking.",
    hacr: "Whether a breaker is marked HACR.",
    curve: "Curve of a miniature breaker.",
  },
};

export const CircuitInstalledWhipShape: Shape = {
  type: "CircuitInstalledWhip",
  fields: {
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
    "wiring?": { either: [CircuitWiring1Shape, CircuitWiring2Shape] },
  },
  about: { conductor: "Its conductors.", wiring: "How it runs; like the run when left out." },
};

export const CircuitInstalledFault1Shape: Shape = {
  type: "CircuitInstalledFault1",
  fields: { "current?": "current", "clearingTime?": "duration" },
  about: {
    current: "Fault current, more than 0, from the impedance of the fault loop.",
    clearingTime: "Time until the device clears it, more than 0 up to 5 s.",
  },
};

export const CircuitInstalledFault2Shape: Shape = {
  type: "CircuitInstalledFault2",
  fields: { "letThrough?": "number" },
  about: { letThrough: "Let-through energy of the device, I²t, in A²s, more than 0." },
};

export const CircuitInstalledDisconnectWorkingSpaceShape: Shape = {
  type: "CircuitInstalledDisconnectWorkingSpace",
  fields: {
    "depth?": "length",
    "width?": "length",
    "height?": "length",
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

export const CircuitInstalledDisconnectShape: Shape = {
  type: "CircuitInstalledDisconnect",
  fields: {
    "rating?": "current",
    "fuse?": "current",
    "visible?": "flag",
    "distance?": "length",
    "readilyAccessible?": "flag",
    "inTheWay?": "flag",
    "lockable?": "flag",
    "onUnit?": "flag",
    "workingSpace?": CircuitInstalledDisconnectWorkingSpaceShape,
  },
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

export const CircuitInstalledServiceReceptacleShape: Shape = {
  type: "CircuitInstalledServiceReceptacle",
  fields: { "distance?": "length", "onLoadSide?": "flag" },
  about: {
    distance: "How far it is from the unit, on the same level.",
    onLoadSide: "Whether it is fed from the load side of the unit's disconnect.",
  },
};

export const CircuitInstalledShape: Shape = {
  type: "CircuitInstalled",
  fields: {
    "device?": CircuitInstalledDeviceShape,
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
    "whip?": CircuitInstalledWhipShape,
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
    "fault?": { either: [CircuitInstalledFault1Shape, CircuitInstalledFault2Shape] },
    "disconnect?": CircuitInstalledDisconnectShape,
    "residualCurrent?": { either: ["current", "flag"] },
    "serviceReceptacle?": CircuitInstalledServiceReceptacleShape,
  },
  about: {
    device: "Breaker or fuses.",
    conductor: "Circuit conductors.",
    whip: "The whip, where it differs from the run.",
    aluminumTerminals:
      "Whether all terminals are marked for aluminum; asked for with aluminum conductors.",
    equipmentGrounding: "Equipment grounding (protective) conductor.",
    groundingMaterial:
      "Material of the grounding conductor; that of the circuit conductors when left out.",
    groundingByRaceway: "Whether the metal raceway alone serves as grounding path.",
    fault: "Heat of a fault to ground, for a protective conductor below the table's size.",
    disconnect: "Disconnect at the unit.",
    residualCurrent:
      "Rated residual current of the residual-current device; false where there is none.",
    serviceReceptacle: "The service receptacle.",
  },
};

export const SupplyPartReadingsItem1Shape: Shape = {
  type: "SupplyPartReadingsItem1",
  fields: {
    "voltage?": "voltage",
    "current?": "current",
    "lineToGround?": { list: "voltage" },
    "state?": { words: ["start", "load", "rest"] },
    "elapsed?": "duration",
  },
  about: {
    voltage: "Voltage between the two conductors that feed the unit.",
    current: "Current of the unit at that moment.",
    lineToGround: "Voltages from each of the two conductors to ground, where they were read too.",
    state: "What the unit did.",
    elapsed: "Time since the first reading of a log; on all readings or on none, and growing.",
  },
};

export const SupplyPartReadingsItem2Shape: Shape = {
  type: "SupplyPartReadingsItem2",
  fields: {
    "lineToLine?": { list: "voltage" },
    "currents?": { list: "current" },
    "state?": { words: ["start", "load", "rest"] },
    "elapsed?": "duration",
  },
  about: {
    lineToLine: "Voltages between lines 1 and 2, 2 and 3, 3 and 1.",
    currents: "Currents of lines 1, 2 and 3 at that moment.",
    state: "What the unit did.",
    elapsed: "Time since the first reading of a log; on all readings or on none, and growing.",
  },
};

export const OperatingReadingEvaporatorApproachShape: Shape = {
  type: "OperatingReadingEvaporatorApproach",
  fields: { "low?": "temperatureDifference", "high?": "temperatureDifference" },
  about: { low: "Smallest difference.", high: "Largest difference." },
};
