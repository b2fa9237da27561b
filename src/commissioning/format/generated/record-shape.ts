// Which fields has a record, and of which form?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { frozenInPlace } from "../../../quantity/frozen.ts";
import type { FieldsShape, Shape } from "../../../shapes/index.ts";

const SiteShape: Shape = {
  type: "Site",
  fields: { "name?": "text", "altitude?": "length", "atmosphere?": "absolutePressure" },
};

const OnFileShape: Shape = {
  type: "OnFile",
  fields: { "equipment?": "text", "instruments?": "text" },
};

const UnitPlatePortsShape: Shape = {
  type: "UnitPlatePorts",
  fields: {
    "liquid?": {
      words: [
        "1/4",
        "5/16",
        "3/8",
        "1/2",
        "5/8",
        "3/4",
        "7/8",
        "1-1/8",
        "6 mm",
        "8 mm",
        "10 mm",
        "12 mm",
        "15 mm",
        "18 mm",
      ],
    },
    "vapor?": {
      words: [
        "1/4",
        "5/16",
        "3/8",
        "1/2",
        "5/8",
        "3/4",
        "7/8",
        "1-1/8",
        "6 mm",
        "8 mm",
        "10 mm",
        "12 mm",
        "15 mm",
        "18 mm",
      ],
    },
  },
};

const UnitPlateShape: Shape = {
  type: "UnitPlate",
  fields: {
    "model?": "text",
    "serialNumber?": "text",
    "ports?": UnitPlatePortsShape,
    "capacity?": "power",
  },
};

const EquipmentVoltageRangeShape: Shape = {
  type: "EquipmentVoltageRange",
  fields: { "minimum?": "voltage", "maximum?": "voltage" },
};

const ManualRunOilTrapsShape: Shape = {
  type: "ManualRunOilTraps",
  fields: { "above?": "length", "spacing?": "length" },
};

const ManualRunExtraOilShape: Shape = {
  type: "ManualRunExtraOil",
  fields: { "beyond?": "length", "per?": "length", "volume?": "volume" },
};

const ManualRunShape: Shape = {
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
};

const ManualChargeRateShape: Shape = {
  type: "ManualChargeRate",
  fields: { "mass?": "mass", "per?": "length" },
};

const ManualShape: Shape = {
  type: "Manual",
  fields: {
    "run?": ManualRunShape,
    "preChargedLength?": "length",
    "chargeRate?": { either: ["massPerLength", ManualChargeRateShape] },
    "preChargedFor?": { words: ["each-run", "sum"] },
    "shortLineRule?": { words: ["add-only", "add-and-subtract", "net-add-only", "not-stated"] },
    "unusedPortAllowance?": "mass",
    "chargeAllowance?": "mass",
    "leastConnected?": "power",
    "mostConnected?": "power",
    "linkCable?": "text",
    "maximumTotalLength?": "length",
    "maximumIndoorLift?": "length",
    "testPressure?": "gaugePressure",
    "testHold?": "duration",
  },
};

const EquipmentShape: Shape = {
  type: "Equipment",
  fields: {
    "construction?": { words: ["split", "quick-connect", "monobloc"] },
    "duty?": { words: ["cooling", "heating", "both"] },
    "capacity?": "power",
    "outdoorUnit?": UnitPlateShape,
    "portPairs?": "number",
    "refrigerant?": "text",
    "factoryCharge?": "mass",
    "maximumCharge?": "mass",
    "lowestMarkedPressure?": "gaugePressure",
    "minimumCircuitAmpacity?": "current",
    "maximumOvercurrentProtection?": "current",
    "ratedCurrent?": "current",
    "maximumFuse?": "current",
    "protectionMarking?": {
      words: ["fuse only", "fuse or HACR breaker", "fuse or breaker", "max overcurrent protection"],
    },
    "ratedLoadCurrent?": "current",
    "lockedRotorCurrent?": "current",
    "ratedVoltages?": { list: "voltage" },
    "voltageRange?": EquipmentVoltageRangeShape,
    "meteringDevice?": { words: ["orifice", "thermostatic-valve", "electronic-valve"] },
    "compressor?": { words: ["single-speed", "inverter"] },
    "expansion?": { words: ["outdoor-unit", "evaporating-unit"] },
    "manual?": ManualShape,
  },
};

const InstrumentsTestGaugeShape: Shape = {
  type: "InstrumentsTestGauge",
  fields: {
    "name?": "text",
    "serialNumber?": "text",
    "calibratedOn?": "time",
    "calibrationDue?": "time",
    "drift?": "pressureDifference",
    "separateInstruments?": "flag",
    "accuracy?": "pressureDifference",
    "resolution?": "pressureDifference",
    "repeatability?": "pressureDifference",
  },
};

const InstrumentsGasThermometerShape: Shape = {
  type: "InstrumentsGasThermometer",
  fields: {
    "name?": "text",
    "serialNumber?": "text",
    "calibratedOn?": "time",
    "calibrationDue?": "time",
    "followsGasWithin?": "temperatureDifference",
    "separateInstruments?": "flag",
    "accuracy?": "temperatureDifference",
    "resolution?": "temperatureDifference",
    "repeatability?": "temperatureDifference",
  },
};

const InstrumentsVacuumGaugeResolutionItemShape: Shape = {
  type: "InstrumentsVacuumGaugeResolutionItem",
  fields: { "upTo?": "absolutePressure", "resolution?": "pressureDifference" },
};

const InstrumentsVacuumGaugeShape: Shape = {
  type: "InstrumentsVacuumGauge",
  fields: {
    "name?": "text",
    "serialNumber?": "text",
    "calibratedOn?": "time",
    "calibrationDue?": "time",
    "resolution?": {
      either: ["pressureDifference", { list: InstrumentsVacuumGaugeResolutionItemShape }],
    },
    "accuracy?": "ratio",
    "range?": "absolutePressure",
  },
};

const InstrumentsScaleShape: Shape = {
  type: "InstrumentsScale",
  fields: {
    "name?": "text",
    "serialNumber?": "text",
    "calibratedOn?": "time",
    "calibrationDue?": "time",
    "accuracy?": "mass",
    "resolution?": "mass",
    "repeatability?": "mass",
  },
};

const InstrumentsTapeShape: Shape = {
  type: "InstrumentsTape",
  fields: {
    "name?": "text",
    "serialNumber?": "text",
    "calibratedOn?": "time",
    "calibrationDue?": "time",
    "accuracy?": "length",
    "resolution?": "length",
    "repeatability?": "length",
  },
};

const InstrumentsTorqueWrenchShape: Shape = {
  type: "InstrumentsTorqueWrench",
  fields: {
    "name?": "text",
    "serialNumber?": "text",
    "calibratedOn?": "time",
    "calibrationDue?": "time",
    "relativeAccuracy?": "ratio",
    "accuracy?": "torque",
    "resolution?": "torque",
  },
};

const InstrumentsVoltmeterShape: Shape = {
  type: "InstrumentsVoltmeter",
  fields: {
    "name?": "text",
    "serialNumber?": "text",
    "calibratedOn?": "time",
    "calibrationDue?": "time",
    "accuracyOfReading?": "ratio",
    "accuracy?": "voltage",
    "resolution?": "voltage",
    "repeatability?": "voltage",
  },
};

const InstrumentsServiceGaugeShape: Shape = {
  type: "InstrumentsServiceGauge",
  fields: {
    "name?": "text",
    "serialNumber?": "text",
    "calibratedOn?": "time",
    "calibrationDue?": "time",
    "accuracy?": "pressureDifference",
    "resolution?": "pressureDifference",
    "repeatability?": "pressureDifference",
  },
};

const InstrumentsLineThermometerShape: Shape = {
  type: "InstrumentsLineThermometer",
  fields: {
    "name?": "text",
    "serialNumber?": "text",
    "calibratedOn?": "time",
    "calibrationDue?": "time",
    "accuracy?": "temperatureDifference",
    "resolution?": "temperatureDifference",
    "repeatability?": "temperatureDifference",
  },
};

const InstrumentIdentityShape: Shape = {
  type: "InstrumentIdentity",
  fields: {
    "name?": "text",
    "serialNumber?": "text",
    "calibratedOn?": "time",
    "calibrationDue?": "time",
  },
};

const InstrumentsClampMeterShape: Shape = {
  type: "InstrumentsClampMeter",
  fields: {
    "name?": "text",
    "serialNumber?": "text",
    "calibratedOn?": "time",
    "calibrationDue?": "time",
    "accuracyOfReading?": "ratio",
    "accuracy?": "current",
    "resolution?": "current",
    "repeatability?": "current",
  },
};

const InstrumentsShape: Shape = {
  type: "Instruments",
  fields: {
    "testGauge?": InstrumentsTestGaugeShape,
    "gasThermometer?": InstrumentsGasThermometerShape,
    "vacuumGauge?": InstrumentsVacuumGaugeShape,
    "scale?": InstrumentsScaleShape,
    "tape?": InstrumentsTapeShape,
    "torqueWrench?": InstrumentsTorqueWrenchShape,
    "voltmeter?": InstrumentsVoltmeterShape,
    "serviceGauge?": InstrumentsServiceGaugeShape,
    "lineThermometer?": InstrumentsLineThermometerShape,
    "level?": InstrumentIdentityShape,
    "airThermometer?": InstrumentsLineThermometerShape,
    "clampMeter?": InstrumentsClampMeterShape,
  },
};

const PlannedCylinderShape: Shape = {
  type: "PlannedCylinder",
  fields: { "waterVolume?": "volume", "pressure?": "gaugePressure", "temperature?": "temperature" },
};

const PlannedShape: Shape = {
  type: "Planned",
  fields: {
    "stock?": { list: "length" },
    "cuttable?": "flag",
    "slack?": "length",
    "serviceLoop?": "length",
    "insulation?": "length",
    "drainDiameter?": "length",
    "cableDiameter?": "length",
    "fillTemperature?": "temperature",
    "laterTemperature?": "temperature",
    "warmest?": "temperature",
    "fillPressure?": "gaugePressure",
    "hold?": "duration",
    "leakRate?": "throughput",
    "cylinder?": PlannedCylinderShape,
    "pump?": "volumeFlow",
  },
};

const TubingLiquidShape: Shape = {
  type: "TubingLiquid",
  fields: { "outsideDiameter?": "length", "wall?": "length" },
};

const TubingShape: Shape = {
  type: "Tubing",
  fields: {
    "liquid?": TubingLiquidShape,
    "vapor?": TubingLiquidShape,
    "way?": "length",
    "length?": "length",
    "lengthIs?": { words: ["measured", "nominal"] },
    "lift?": "length",
    "outdoorUnit?": { words: ["above", "below", "level"] },
    "bends?": "number",
    "jointCount?": "number",
    "otherVolume?": "volume",
    "at?": "time",
  },
};

const JointTorqueWindowShape: Shape = {
  type: "JointTorqueWindow",
  fields: { "low?": "torque", "high?": "torque" },
};

const JointShape: Shape = {
  type: "Joint",
  fields: {
    "name?": "text",
    "line?": { words: ["liquid", "vapor"] },
    "end?": { words: ["indoor", "outdoor", "between"] },
    "kind?": { words: ["flare", "brazed", "pressed", "coupling"] },
    "tube?": {
      words: [
        "1/4",
        "5/16",
        "3/8",
        "1/2",
        "5/8",
        "3/4",
        "6 mm",
        "8 mm",
        "10 mm",
        "12 mm",
        "15 mm",
        "18 mm",
      ],
    },
    "torque?": "torque",
    "torqueWindow?": JointTorqueWindowShape,
    "manualReadAgain?": "flag",
    "turn?": "angle",
    "flareDiameter?": "length",
    "nitrogenFlowed?": "flag",
    "inspected?": "flag",
    "at?": "time",
  },
};

const RunManualShape: Shape = {
  type: "RunManual",
  fields: {
    "run?": ManualRunShape,
    "preChargedLength?": "length",
    "chargeRate?": { either: ["massPerLength", ManualChargeRateShape] },
    "chargeAllowance?": "mass",
  },
};

const DrainSlope1Shape: Shape = {
  type: "DrainSlope1",
  fields: { "slope?": "ratio", "accuracy?": "ratio" },
};

const DrainSlope2Shape: Shape = {
  type: "DrainSlope2",
  fields: { "angle?": "angle", "accuracy?": "angle" },
};

const DrainSlope3Shape: Shape = {
  type: "DrainSlope3",
  fields: { "gap?": "length", "levelLength?": "length", "accuracy?": "length" },
};

const DrainSlope4Shape: Shape = {
  type: "DrainSlope4",
  fields: {
    "heightAtStart?": "length",
    "heightAtEnd?": "length",
    "run?": "length",
    "accuracy?": "length",
  },
};

const DrainRouteShape: Shape = {
  type: "DrainRoute",
  fields: {
    "outdoors?": "flag",
    "lowestOutdoorTemperature?": "temperature",
    "aboveFinishedSpace?": "flag",
    "pumped?": "flag",
  },
};

const DrainPumpCurveItemShape: Shape = {
  type: "DrainPumpCurveItem",
  fields: { "lift?": "length", "flow?": "volumeFlow" },
};

const DrainPumpShape: Shape = {
  type: "DrainPump",
  fields: {
    "condensate?": "volumeFlow",
    "lift?": "length",
    "curve?": { list: DrainPumpCurveItemShape },
    "reservoir?": "volume",
    "margin?": "number",
  },
};

const DrainShape: Shape = {
  type: "Drain",
  fields: {
    "slope?": { either: [DrainSlope1Shape, DrainSlope2Shape, DrainSlope3Shape, DrainSlope4Shape] },
    "vertical?": "flag",
    "requiredSlope?": "ratio",
    "run?": "length",
    "fall?": "length",
    "panPressure?": "pressureDifference",
    "route?": DrainRouteShape,
    "unitPitch?": {
      either: [DrainSlope1Shape, DrainSlope2Shape, DrainSlope3Shape, DrainSlope4Shape],
    },
    "pump?": DrainPumpShape,
    "waterRanOff?": "flag",
    "at?": "time",
  },
};

const RoomShape: Shape = {
  type: "Room",
  fields: {
    "floorArea?": "area",
    "volume?": "volume",
    "ceilingHeight?": "length",
    "place?": { words: ["wall", "ceiling", "floor", "window"] },
    "installationHeight?": "length",
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
    "floorAreaAccuracy?": "area",
    "volumeAccuracy?": "volume",
  },
};

const RunShape: Shape = {
  type: "Run",
  fields: {
    "name?": "text",
    "port?": "text",
    "serves?": { words: ["indoor-unit", "branch-box"] },
    "indoorUnits?": { list: UnitPlateShape },
    "tubing?": TubingShape,
    "joints?": { list: JointShape },
    "manual?": RunManualShape,
    "drain?": DrainShape,
    "room?": RoomShape,
  },
};

const PressureTestPartReadingsItemShape: Shape = {
  type: "PressureTestPartReadingsItem",
  fields: {
    "pressure?": { either: ["absolutePressure", "gaugePressure"] },
    "temperature?": { either: ["temperature", { list: "temperature" }] },
    "elapsed?": "duration",
    "atmosphere?": "absolutePressure",
  },
};

const PressureTestPartCriterion1Shape: Shape = {
  type: "PressureTestPartCriterion1",
  fields: { "maximumDrop?": "pressureDifference", "per?": "duration" },
};

const PressureTestPartCriterion2Shape: Shape = {
  type: "PressureTestPartCriterion2",
  fields: { "maximumLeakRate?": "throughput" },
};

const TestRequirementShape: Shape = {
  type: "TestRequirement",
  fields: {
    "pressure?": "gaugePressure",
    "hold?": "duration",
    "standing?": { words: ["common-practice", "adopted-code", "manufacturer"] },
  },
};

const PressureTestPartElsewhereShape: Shape = {
  type: "PressureTestPartElsewhere",
  fields: { "share?": "ratio", "change?": "temperatureDifference" },
};

const PressureTestPartShape: Shape = {
  type: "PressureTestPart",
  fields: {
    "covers?": { list: "text" },
    "readings?": { list: PressureTestPartReadingsItemShape },
    "criterion?": { either: [PressureTestPartCriterion1Shape, PressureTestPartCriterion2Shape] },
    "requirement?": TestRequirementShape,
    "wall?": { words: ["rigid", "copper", "aluminum"] },
    "sinceFill?": "duration",
    "elsewhere?": PressureTestPartElsewhereShape,
    "zoneShares?": { list: "ratio" },
    "at?": "time",
  },
};

const EvacuationReadingsItemShape: Shape = {
  type: "EvacuationReadingsItem",
  fields: { "elapsed?": "duration", "pressure?": "absolutePressure" },
};

const EvacuationHosesShape: Shape = {
  type: "EvacuationHoses",
  fields: { "material?": { words: ["rubber", "low-permeation", "metal"] }, "length?": "length" },
};

const EvacuationBlankTestShape: Shape = {
  type: "EvacuationBlankTest",
  fields: { "rate?": "pressureRate", "volume?": "volume" },
};

const EvacuationShape: Shape = {
  type: "Evacuation",
  fields: {
    "covers?": { list: "text" },
    "readings?": { list: EvacuationReadingsItemShape },
    "policy?": {
      words: [
        "guideSpec15182",
        "guideSpec15741N",
        "splitManualA",
        "splitManualB",
        "closeControlManual",
        "multiSplitManualC",
        "multiSplitManualD",
        "distributorAdvice",
        "ashrae15Memory",
        "commonPractice500",
        "provenEarly500",
      ],
    },
    "ambient?": "temperature",
    "coldest?": "temperature",
    "leakLimit?": { either: ["pressureRate", "throughput"] },
    "isolation?": { words: ["isolation-valve", "hose-removed", "pump-valve"] },
    "hoses?": EvacuationHosesShape,
    "blankTest?": EvacuationBlankTestShape,
    "at?": "time",
  },
};

const ChargeShape: Shape = {
  type: "Charge",
  fields: {
    "added?": "mass",
    "tolerance?": "mass",
    "fedAs?": { words: ["liquid", "vapor"] },
    "at?": "time",
  },
};

const ValvesShape: Shape = { type: "Valves", fields: { "openedAt?": "time" } };

const CircuitPlateShape: Shape = {
  type: "CircuitPlate",
  fields: {
    "minimumCircuitAmpacity?": "current",
    "maximumOvercurrentProtection?": "current",
    "ratedCurrent?": "current",
    "maximumFuse?": "current",
    "protectionMarking?": {
      words: ["fuse only", "fuse or HACR breaker", "fuse or breaker", "max overcurrent protection"],
    },
    "ratedLoadCurrent?": "current",
  },
};

const CircuitSharedWithItemShape: Shape = {
  type: "CircuitSharedWithItem",
  fields: {
    "kind?": { words: ["other", "unit"] },
    "current?": "current",
    "maximumOvercurrentProtection?": "current",
    "continuous?": "flag",
  },
};

const TShape: Shape = { type: "T", words: ["TT", "TN"] };

const CircuitWiring1Shape: Shape = {
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
};

const CircuitWiring2Shape: Shape = {
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
};

const CircuitInstalledDeviceShape: Shape = {
  type: "CircuitInstalledDevice",
  fields: {
    "kind?": { words: ["breaker", "fuse"] },
    "rating?": "current",
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
};

const CircuitInstalledWhipShape: Shape = {
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
};

const CircuitInstalledFault1Shape: Shape = {
  type: "CircuitInstalledFault1",
  fields: { "current?": "current", "clearingTime?": "duration" },
};

const CircuitInstalledFault2Shape: Shape = {
  type: "CircuitInstalledFault2",
  fields: { "letThrough?": "number" },
};

const CircuitInstalledDisconnectWorkingSpaceShape: Shape = {
  type: "CircuitInstalledDisconnectWorkingSpace",
  fields: {
    "depth?": "length",
    "width?": "length",
    "height?": "length",
    "equipmentWidth?": "length",
    "condition?": { words: [2, 1, 3] },
  },
};

const CircuitInstalledDisconnectShape: Shape = {
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
};

const CircuitInstalledServiceReceptacleShape: Shape = {
  type: "CircuitInstalledServiceReceptacle",
  fields: { "distance?": "length", "onLoadSide?": "flag" },
};

const CircuitInstalledShape: Shape = {
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
    "compressionFittings?": "flag",
    "fault?": { either: [CircuitInstalledFault1Shape, CircuitInstalledFault2Shape] },
    "disconnect?": CircuitInstalledDisconnectShape,
    "residualCurrent?": { either: ["current", "flag"] },
    "serviceReceptacle?": CircuitInstalledServiceReceptacleShape,
  },
};

const CircuitVerificationsItemShape: Shape = {
  type: "CircuitVerificationsItem",
  fields: { "clause?": "text", "complies?": "flag", "by?": "text", "at?": "text" },
};

const CircuitShape: Shape = {
  type: "Circuit",
  fields: {
    "name?": "text",
    "plate?": CircuitPlateShape,
    "nameplateReadAgain?": "flag",
    "feeds?": { words: ["other", "motor-compressor"] },
    "sharedWith?": { list: CircuitSharedWithItemShape },
    "earthing?": TShape,
    "rules?": {
      words: [
        "japan-interpretation",
        "nfpa-70-2020",
        "nfpa-70-2023",
        "nfpa-70-2026",
        "csa-c22.1-2024",
        "iec-60364",
        "bs-7671-2018",
        "as-nzs-3000-2018-australia",
        "as-nzs-3000-2018-new-zealand",
      ],
    },
    "wiring?": { either: [CircuitWiring1Shape, CircuitWiring2Shape] },
    "installed?": CircuitInstalledShape,
    "powerFactor?": "number",
    "occupancy?": { words: ["dwelling", "other"] },
    "groundFaultText?": "text",
    "verifications?": { list: CircuitVerificationsItemShape },
    "at?": "time",
  },
};

const SupplyPartReadingsItem1Shape: Shape = {
  type: "SupplyPartReadingsItem1",
  fields: {
    "voltage?": "voltage",
    "current?": "current",
    "lineToGround?": { list: "voltage" },
    "state?": { words: ["start", "load", "rest"] },
    "elapsed?": "duration",
  },
};

const SupplyPartReadingsItem2Shape: Shape = {
  type: "SupplyPartReadingsItem2",
  fields: {
    "lineToLine?": { list: "voltage" },
    "currents?": { list: "current" },
    "state?": { words: ["start", "load", "rest"] },
    "elapsed?": "duration",
  },
};

const SupplyPartShape: Shape = {
  type: "SupplyPart",
  fields: {
    "readings?": { list: { either: [SupplyPartReadingsItem1Shape, SupplyPartReadingsItem2Shape] } },
    "measuredAt?": { words: ["service", "unit"] },
    "standard?": { words: ["esqcr-2002", "iec-60038", "japan-article-38", "ansi-c84.1-2020"] },
    "range?": EquipmentVoltageRangeShape,
    "unbalanceLimit?": "ratio",
    "at?": "time",
  },
};

const PowerShape: Shape = {
  type: "Power",
  fields: {
    "voltage?": "voltage",
    "phases?": { words: [1, 3] },
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
    "circuits?": { list: CircuitShape },
    "supply?": SupplyPartShape,
    "energizedAt?": "time",
  },
};

const OperatingReadingEvaporatorApproachShape: Shape = {
  type: "OperatingReadingEvaporatorApproach",
  fields: { "low?": "temperatureDifference", "high?": "temperatureDifference" },
};

const ChargeReadingShape: Shape = {
  type: "ChargeReading",
  fields: {
    "pressure?": "gaugePressure",
    "lineTemperature?": "temperature",
    "pressureDrop?": "pressureDifference",
    "target?": "temperatureDifference",
    "tolerance?": "temperatureDifference",
  },
};

const AirSideReadingShape: Shape = {
  type: "AirSideReading",
  fields: {
    "supplyAir?": "temperature",
    "least?": "temperatureDifference",
    "largest?": "temperatureDifference",
    "current?": "current",
    "fullSpeed?": "flag",
  },
};

const OperatingReadingShape: Shape = {
  type: "OperatingReading",
  fields: {
    "covers?": { list: "text" },
    "mode?": { words: ["cooling", "heating"] },
    "indoorTemperature?": "temperature",
    "outdoorTemperature?": "temperature",
    "evaporatorApproach?": OperatingReadingEvaporatorApproachShape,
    "condenserApproach?": OperatingReadingEvaporatorApproachShape,
    "pressure?": "gaugePressure",
    "port?": { words: ["liquid", "vapor", "commonSuction"] },
    "charge?": ChargeReadingShape,
    "airSide?": AirSideReadingShape,
    "at?": "time",
  },
};

const OptionalStepShape: Shape = {
  type: "OptionalStep",
  words: ["line-run", "joints", "room-limit", "drain"],
};

const WaiverShape: Shape = {
  type: "Waiver",
  fields: {
    step: OptionalStepShape,
    "reason?": { words: ["factory-line-set", "existing-lines", "no-enclosed-room", "heats-only"] },
    "run?": "text",
    "note?": "text",
    by: "text",
    at: "time",
  },
};

const PhotoShape: Shape = {
  type: "Photo",
  fields: {
    reference: "text",
    "of?": "text",
    "caption?": "text",
    "at?": "time",
    "digest?": "text",
  },
};

const SignatureShape: Shape = {
  type: "Signature",
  fields: { name: "text", "role?": "text", at: "time" },
};

const AmendmentShape: Shape = {
  type: "Amendment",
  fields: {
    path: "path",
    "previous?": { at: "path" },
    "kind?": { words: ["correction", "rework"] },
    by: "text",
    at: "time",
    reason: "text",
  },
};

/** The form of a record, as data: for forms, reports and codecs. */
export const recordShape: FieldsShape = /* @__PURE__ */ frozenInPlace({
  type: "InstallationRecord",
  fields: {
    version: { words: [2] },
    "name?": "text",
    "site?": SiteShape,
    "onFile?": OnFileShape,
    "equipment?": EquipmentShape,
    "instruments?": InstrumentsShape,
    "plan?": PlannedShape,
    "runs?": { list: RunShape },
    "pressureTests?": { list: PressureTestPartShape },
    "evacuations?": { list: EvacuationShape },
    "charge?": ChargeShape,
    "valves?": ValvesShape,
    "power?": PowerShape,
    "operation?": { list: OperatingReadingShape },
    "waivers?": { list: WaiverShape },
    "photos?": { list: PhotoShape },
    "signatures?": { list: SignatureShape },
    "history?": { list: AmendmentShape },
  },
});
