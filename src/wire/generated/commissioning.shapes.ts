// Which shapes have the types of commissioning?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import {
  NamedCheckOfChargeByGaugeAssessment2CautionsItem19Shape,
  NamedCheckOfChargeByGaugeAssessment2ReasonsItemShape,
  VerbatimShape,
} from "./assessment.shapes.ts";
import { ConcentrationAssessmentShape, RoomChargeAssessmentShape } from "./charge-limit.shapes.ts";
import { CircuitFromNameplateResultShape } from "./circuit-protection.shapes.ts";
import {
  CondensatePumpAssessmentShape,
  DrainSlopeAssessmentShape,
  IndoorUnitPitchAssessmentShape,
} from "./condensate.shapes.ts";
import {
  FlareAssessmentOfAngleFlareTorqueCauseShape,
  FlareAssessmentOfLengthFlareDiameterCauseShape,
  FlareAssessmentOfLengthWallTooThinShape,
  FlareTorqueAssessmentShape,
} from "./flare-joint.shapes.ts";
import {
  ChargeAssessmentShape,
  LineRunAssessmentShape,
  LiquidChargePlausibilityShape,
} from "./line-set.shapes.ts";
import {
  ChargeByGaugeAssessmentShape,
  ServiceReadingAssessmentShape,
} from "./operating-check.shapes.ts";
import { LogAssessmentShape, TwoReadingAssessmentShape } from "./pressure-test.shapes.ts";
import { CitationShape } from "./refrigerants.shapes.ts";
import {
  CircuitInstalledShape,
  CircuitSharedWithItemShape,
  CircuitWiring1Shape,
  CircuitWiring2Shape,
  DrainPumpShape,
  DrainRoute2Shape,
  DrainSlope1Shape,
  DrainSlope2Shape,
  DrainSlope3Shape,
  DrainSlope4Shape,
  EquipmentVoltageRangeShape,
  EvacuationBlankTestShape,
  EvacuationHosesShape,
  EvacuationReadingsItemShape,
  InstrumentsVacuumGaugeResolutionItemShape,
  JointTorqueWindowShape,
  ManualChargeRateShape,
  ManualRunShape,
  OperatingReadingEvaporatorApproachShape,
  PressureTestPartCriterion1Shape,
  PressureTestPartCriterion2Shape,
  PressureTestPartReadingsItemShape,
  SupplyPartReadingsItem1Shape,
  SupplyPartReadingsItem2Shape,
  TubingLiquidShape,
} from "./shapes.shapes.ts";
import { SupplyVoltageAssessmentShape } from "./supply-voltage.shapes.ts";
import { VacuumDecayAssessmentShape } from "./vacuum-decay.shapes.ts";

export const PlacedShape: Shape = {
  type: "Placed",
  fields: {
    code: "text",
    values: {
      each: {
        either: [
          "quantity",
          VerbatimShape,
          "text",
          "number",
          { list: { either: ["quantity", VerbatimShape, "text", "number"] } },
        ],
      },
    },
    "text?": "text",
    "step?": {
      words: [
        "charge",
        "supply",
        "line-run",
        "joints",
        "pressure-test",
        "evacuation",
        "room-limit",
        "valves",
        "circuit",
        "drain",
        "operation",
      ],
    },
    "part?": "text",
  },
  says: "A statement of a verdict on an installation, with the step and the part of the record of which it speaks.",
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    step: "The step; missing where it is about the whole record.",
    part: "Path of the part, such as joints[0].",
  },
};

export const PlacedCautionShape: Shape = {
  type: "PlacedCaution",
  fields: {
    "step?": {
      words: [
        "charge",
        "supply",
        "line-run",
        "joints",
        "pressure-test",
        "evacuation",
        "room-limit",
        "valves",
        "circuit",
        "drain",
        "operation",
      ],
    },
    "part?": "text",
    code: "text",
    values: {
      each: {
        either: [
          "quantity",
          VerbatimShape,
          "text",
          "number",
          { list: { either: ["quantity", VerbatimShape, "text", "number"] } },
        ],
      },
    },
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  says: "A caution with its place.",
  about: {
    step: "The step; missing where it is about the whole record.",
    part: "Path of the part, such as joints[0].",
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const StepNameShape: Shape = {
  type: "StepName",
  words: [
    "line-run",
    "joints",
    "pressure-test",
    "evacuation",
    "room-limit",
    "charge",
    "valves",
    "circuit",
    "supply",
    "drain",
    "operation",
  ],
};

export const StepStateShape: Shape = {
  type: "StepState",
  words: ["done", "partial", "missing", "not-applicable"],
};

export const OptionalStepShape: Shape = {
  type: "OptionalStep",
  words: ["line-run", "joints", "room-limit", "drain"],
};

export const WaiverShape: Shape = {
  type: "Waiver",
  fields: {
    step: OptionalStepShape,
    "reason?": { words: ["factory-line-set", "existing-lines", "no-enclosed-room", "heats-only"] },
    "run?": "text",
    "note?": "text",
    by: "text",
    at: "time",
  },
  says: "The word of a person that a step does not apply to this installation. It never makes the step pass: the assessment lists it among its first reasons and its assumptions.",
  about: {
    step: "Which step.",
    reason:
      "Why it does not apply: one of the reasons that fit the step and the equipment; without one it does not count.",
    run: "Name of the run for which it holds; all of them when left out.",
    note: "More about it, in one's own words; kept, never judged.",
    by: "Name of who declares it; a letter or a digit at least.",
    at: "When.",
  },
};

export const CommissioningNotRecordedValuesFieldsItemShape: Shape = {
  type: "CommissioningNotRecordedValuesFieldsItem",
  words: [
    "commissioning.field.charge",
    "commissioning.field.power",
    "commissioning.field.instruments",
    "commissioning.field.valves",
    "commissioning.field.operation",
    "commissioning.field.version",
    "commissioning.field.name",
    "commissioning.field.site",
    "commissioning.field.onFile",
    "commissioning.field.equipment",
    "commissioning.field.runs",
    "commissioning.field.pressureTests",
    "commissioning.field.evacuations",
    "commissioning.field.waivers",
    "commissioning.field.photos",
    "commissioning.field.signatures",
    "commissioning.field.history",
    "commissioning.field.charge.at",
    "commissioning.field.charge.tolerance",
    "commissioning.field.charge.added",
    "commissioning.field.charge.fedAs",
    "commissioning.field.power.voltage",
    "commissioning.field.power.phases",
    "commissioning.field.power.system",
    "commissioning.field.power.supply",
    "commissioning.field.power.circuits",
    "commissioning.field.power.energizedAt",
    "commissioning.field.power.supply.at",
    "commissioning.field.power.supply.standard",
    "commissioning.field.power.supply.readings",
    "commissioning.field.power.supply.measuredAt",
    "commissioning.field.power.supply.unbalanceLimit",
    "commissioning.field.power.supply.readings.elapsed",
    "commissioning.field.power.supply.readings.current",
    "commissioning.field.power.supply.readings.voltage",
    "commissioning.field.power.supply.readings.lineToGround",
    "commissioning.field.power.supply.readings.state",
    "commissioning.field.power.supply.readings.lineToLine",
    "commissioning.field.power.supply.readings.currents",
    "commissioning.field.power.circuits.at",
    "commissioning.field.power.circuits.installed",
    "commissioning.field.power.circuits.rules",
    "commissioning.field.power.circuits.wiring",
    "commissioning.field.power.circuits.powerFactor",
    "commissioning.field.power.circuits.name",
    "commissioning.field.power.circuits.plate",
    "commissioning.field.power.circuits.feeds",
    "commissioning.field.power.circuits.sharedWith",
    "commissioning.field.power.circuits.earthing",
    "commissioning.field.power.circuits.occupancy",
    "commissioning.field.power.circuits.wiring.length",
    "commissioning.field.power.circuits.wiring.ambient",
    "commissioning.field.power.circuits.wiring.terminations",
    "commissioning.field.power.circuits.wiring.grouping",
    "commissioning.field.power.circuits.wiring.material",
    "commissioning.field.power.circuits.wiring.method",
    "commissioning.field.power.circuits.wiring.insulation",
    "commissioning.field.power.circuits.wiring.cable",
    "commissioning.field.power.circuits.wiring.currentCarryingConductors",
    "commissioning.field.power.circuits.wiring.aboveRoof",
    "commissioning.field.power.circuits.wiring.conduit",
    "commissioning.field.power.circuits.wiring.stranding",
    "commissioning.field.power.circuits.wiring.groupedCircuits",
    "commissioning.field.power.circuits.wiring.soilResistivity",
    "commissioning.field.power.circuits.wiring.insulationLength",
    "commissioning.field.power.circuits.installed.device",
    "commissioning.field.power.circuits.installed.whip",
    "commissioning.field.power.circuits.installed.disconnect",
    "commissioning.field.power.circuits.installed.conductor",
    "commissioning.field.power.circuits.installed.aluminumTerminals",
    "commissioning.field.power.circuits.installed.equipmentGrounding",
    "commissioning.field.power.circuits.installed.groundingMaterial",
    "commissioning.field.power.circuits.installed.groundingByRaceway",
    "commissioning.field.power.circuits.installed.fault",
    "commissioning.field.power.circuits.installed.residualCurrent",
    "commissioning.field.power.circuits.installed.serviceReceptacle",
    "commissioning.field.power.circuits.installed.device.poles",
    "commissioning.field.power.circuits.installed.device.rating",
    "commissioning.field.power.circuits.installed.device.curve",
    "commissioning.field.power.circuits.installed.device.kind",
    "commissioning.field.power.circuits.installed.device.voltageRating",
    "commissioning.field.power.circuits.installed.device.hacr",
    "commissioning.field.power.circuits.installed.whip.wiring",
    "commissioning.field.power.circuits.installed.whip.conductor",
    "commissioning.field.power.circuits.installed.whip.wiring.length",
    "commissioning.field.power.circuits.installed.whip.wiring.ambient",
    "commissioning.field.power.circuits.installed.whip.wiring.terminations",
    "commissioning.field.power.circuits.installed.whip.wiring.grouping",
    "commissioning.field.power.circuits.installed.whip.wiring.material",
    "commissioning.field.power.circuits.installed.whip.wiring.method",
    "commissioning.field.power.circuits.installed.whip.wiring.insulation",
    "commissioning.field.power.circuits.installed.whip.wiring.cable",
    "commissioning.field.power.circuits.installed.whip.wiring.currentCarryingConductors",
    "commissioning.field.power.circuits.installed.whip.wiring.aboveRoof",
    "commissioning.field.power.circuits.installed.whip.wiring.conduit",
    "commissioning.field.power.circuits.installed.whip.wiring.stranding",
    "commissioning.field.power.circuits.installed.whip.wiring.groupedCircuits",
    "commissioning.field.power.circuits.installed.whip.wiring.soilResistivity",
    "commissioning.field.power.circuits.installed.whip.wiring.insulationLength",
    "commissioning.field.power.circuits.installed.disconnect.visible",
    "commissioning.field.power.circuits.installed.disconnect.readilyAccessible",
    "commissioning.field.power.circuits.installed.disconnect.lockable",
    "commissioning.field.power.circuits.installed.disconnect.fuse",
    "commissioning.field.power.circuits.installed.disconnect.rating",
    "commissioning.field.power.circuits.installed.disconnect.distance",
    "commissioning.field.power.circuits.installed.disconnect.inTheWay",
    "commissioning.field.power.circuits.installed.disconnect.onUnit",
    "commissioning.field.power.circuits.installed.disconnect.workingSpace",
    "commissioning.field.power.circuits.installed.disconnect.workingSpace.depth",
    "commissioning.field.power.circuits.installed.disconnect.workingSpace.width",
    "commissioning.field.power.circuits.installed.disconnect.workingSpace.height",
    "commissioning.field.power.circuits.installed.disconnect.workingSpace.equipmentWidth",
    "commissioning.field.power.circuits.installed.disconnect.workingSpace.condition",
    "commissioning.field.power.circuits.installed.fault.current",
    "commissioning.field.power.circuits.installed.fault.clearingTime",
    "commissioning.field.power.circuits.installed.fault.letThrough",
    "commissioning.field.power.circuits.installed.serviceReceptacle.distance",
    "commissioning.field.power.circuits.installed.serviceReceptacle.onLoadSide",
    "commissioning.field.power.circuits.plate.minimumCircuitAmpacity",
    "commissioning.field.power.circuits.plate.maximumOvercurrentProtection",
    "commissioning.field.power.circuits.plate.protectionMarking",
    "commissioning.field.power.circuits.plate.ratedLoadCurrent",
    "commissioning.field.power.circuits.sharedWith.current",
    "commissioning.field.power.circuits.sharedWith.kind",
    "commissioning.field.power.circuits.sharedWith.maximumOvercurrentProtection",
    "commissioning.field.power.circuits.sharedWith.continuous",
    "commissioning.field.instruments.level",
    "commissioning.field.instruments.testGauge",
    "commissioning.field.instruments.gasThermometer",
    "commissioning.field.instruments.vacuumGauge",
    "commissioning.field.instruments.scale",
    "commissioning.field.instruments.tape",
    "commissioning.field.instruments.torqueWrench",
    "commissioning.field.instruments.voltmeter",
    "commissioning.field.instruments.serviceGauge",
    "commissioning.field.instruments.lineThermometer",
    "commissioning.field.instruments.airThermometer",
    "commissioning.field.instruments.clampMeter",
    "commissioning.field.instruments.level.name",
    "commissioning.field.instruments.level.serialNumber",
    "commissioning.field.instruments.level.calibratedOn",
    "commissioning.field.instruments.level.calibrationDue",
    "commissioning.field.instruments.testGauge.drift",
    "commissioning.field.instruments.testGauge.accuracy",
    "commissioning.field.instruments.testGauge.name",
    "commissioning.field.instruments.testGauge.serialNumber",
    "commissioning.field.instruments.testGauge.calibratedOn",
    "commissioning.field.instruments.testGauge.calibrationDue",
    "commissioning.field.instruments.testGauge.separateInstruments",
    "commissioning.field.instruments.testGauge.resolution",
    "commissioning.field.instruments.testGauge.repeatability",
    "commissioning.field.instruments.gasThermometer.accuracy",
    "commissioning.field.instruments.gasThermometer.name",
    "commissioning.field.instruments.gasThermometer.serialNumber",
    "commissioning.field.instruments.gasThermometer.calibratedOn",
    "commissioning.field.instruments.gasThermometer.calibrationDue",
    "commissioning.field.instruments.gasThermometer.separateInstruments",
    "commissioning.field.instruments.gasThermometer.resolution",
    "commissioning.field.instruments.gasThermometer.repeatability",
    "commissioning.field.instruments.gasThermometer.followsGasWithin",
    "commissioning.field.instruments.vacuumGauge.range",
    "commissioning.field.instruments.vacuumGauge.accuracy",
    "commissioning.field.instruments.vacuumGauge.name",
    "commissioning.field.instruments.vacuumGauge.serialNumber",
    "commissioning.field.instruments.vacuumGauge.calibratedOn",
    "commissioning.field.instruments.vacuumGauge.calibrationDue",
    "commissioning.field.instruments.vacuumGauge.resolution",
    "commissioning.field.instruments.vacuumGauge.resolution.resolution",
    "commissioning.field.instruments.vacuumGauge.resolution.upTo",
    "commissioning.field.instruments.scale.accuracy",
    "commissioning.field.instruments.scale.name",
    "commissioning.field.instruments.scale.serialNumber",
    "commissioning.field.instruments.scale.calibratedOn",
    "commissioning.field.instruments.scale.calibrationDue",
    "commissioning.field.instruments.scale.resolution",
    "commissioning.field.instruments.scale.repeatability",
    "commissioning.field.instruments.tape.accuracy",
    "commissioning.field.instruments.tape.name",
    "commissioning.field.instruments.tape.serialNumber",
    "commissioning.field.instruments.tape.calibratedOn",
    "commissioning.field.instruments.tape.calibrationDue",
    "commissioning.field.instruments.tape.resolution",
    "commissioning.field.instruments.tape.repeatability",
    "commissioning.field.instruments.torqueWrench.accuracy",
    "commissioning.field.instruments.torqueWrench.name",
    "commissioning.field.instruments.torqueWrench.serialNumber",
    "commissioning.field.instruments.torqueWrench.calibratedOn",
    "commissioning.field.instruments.torqueWrench.calibrationDue",
    "commissioning.field.instruments.torqueWrench.resolution",
    "commissioning.field.instruments.torqueWrench.relativeAccuracy",
    "commissioning.field.instruments.voltmeter.accuracy",
    "commissioning.field.instruments.voltmeter.name",
    "commissioning.field.instruments.voltmeter.serialNumber",
    "commissioning.field.instruments.voltmeter.calibratedOn",
    "commissioning.field.instruments.voltmeter.calibrationDue",
    "commissioning.field.instruments.voltmeter.resolution",
    "commissioning.field.instruments.voltmeter.repeatability",
    "commissioning.field.instruments.voltmeter.accuracyOfReading",
    "commissioning.field.instruments.serviceGauge.accuracy",
    "commissioning.field.instruments.serviceGauge.name",
    "commissioning.field.instruments.serviceGauge.serialNumber",
    "commissioning.field.instruments.serviceGauge.calibratedOn",
    "commissioning.field.instruments.serviceGauge.calibrationDue",
    "commissioning.field.instruments.serviceGauge.resolution",
    "commissioning.field.instruments.serviceGauge.repeatability",
    "commissioning.field.instruments.lineThermometer.accuracy",
    "commissioning.field.instruments.lineThermometer.name",
    "commissioning.field.instruments.lineThermometer.serialNumber",
    "commissioning.field.instruments.lineThermometer.calibratedOn",
    "commissioning.field.instruments.lineThermometer.calibrationDue",
    "commissioning.field.instruments.lineThermometer.resolution",
    "commissioning.field.instruments.lineThermometer.repeatability",
    "commissioning.field.instruments.airThermometer.accuracy",
    "commissioning.field.instruments.airThermometer.name",
    "commissioning.field.instruments.airThermometer.serialNumber",
    "commissioning.field.instruments.airThermometer.calibratedOn",
    "commissioning.field.instruments.airThermometer.calibrationDue",
    "commissioning.field.instruments.airThermometer.resolution",
    "commissioning.field.instruments.airThermometer.repeatability",
    "commissioning.field.instruments.clampMeter.accuracy",
    "commissioning.field.instruments.clampMeter.name",
    "commissioning.field.instruments.clampMeter.serialNumber",
    "commissioning.field.instruments.clampMeter.calibratedOn",
    "commissioning.field.instruments.clampMeter.calibrationDue",
    "commissioning.field.instruments.clampMeter.resolution",
    "commissioning.field.instruments.clampMeter.repeatability",
    "commissioning.field.valves.openedAt",
    "commissioning.field.operation.at",
    "commissioning.field.operation.pressure",
    "commissioning.field.operation.charge",
    "commissioning.field.operation.port",
    "commissioning.field.operation.charge.tolerance",
    "commissioning.field.operation.covers",
    "commissioning.field.operation.mode",
    "commissioning.field.operation.indoorTemperature",
    "commissioning.field.operation.outdoorTemperature",
    "commissioning.field.operation.evaporatorApproach",
    "commissioning.field.operation.condenserApproach",
    "commissioning.field.operation.airSide",
    "commissioning.field.operation.charge.target",
    "commissioning.field.operation.charge.pressure",
    "commissioning.field.operation.charge.lineTemperature",
    "commissioning.field.operation.charge.pressureDrop",
    "commissioning.field.operation.evaporatorApproach.low",
    "commissioning.field.operation.evaporatorApproach.high",
    "commissioning.field.operation.condenserApproach.low",
    "commissioning.field.operation.condenserApproach.high",
    "commissioning.field.operation.airSide.largest",
    "commissioning.field.operation.airSide.least",
    "commissioning.field.operation.airSide.current",
    "commissioning.field.operation.airSide.supplyAir",
    "commissioning.field.operation.airSide.fullSpeed",
    "commissioning.field.site.atmosphere",
    "commissioning.field.site.altitude",
    "commissioning.field.site.name",
    "commissioning.field.onFile.instruments",
    "commissioning.field.onFile.equipment",
    "commissioning.field.equipment.refrigerant",
    "commissioning.field.equipment.compressor",
    "commissioning.field.equipment.capacity",
    "commissioning.field.equipment.minimumCircuitAmpacity",
    "commissioning.field.equipment.maximumOvercurrentProtection",
    "commissioning.field.equipment.protectionMarking",
    "commissioning.field.equipment.ratedLoadCurrent",
    "commissioning.field.equipment.construction",
    "commissioning.field.equipment.duty",
    "commissioning.field.equipment.outdoorUnit",
    "commissioning.field.equipment.factoryCharge",
    "commissioning.field.equipment.maximumCharge",
    "commissioning.field.equipment.lowestMarkedPressure",
    "commissioning.field.equipment.lockedRotorCurrent",
    "commissioning.field.equipment.ratedVoltages",
    "commissioning.field.equipment.voltageRange",
    "commissioning.field.equipment.meteringDevice",
    "commissioning.field.equipment.expansion",
    "commissioning.field.equipment.manual",
    "commissioning.field.equipment.outdoorUnit.serialNumber",
    "commissioning.field.equipment.outdoorUnit.model",
    "commissioning.field.equipment.outdoorUnit.ports",
    "commissioning.field.equipment.outdoorUnit.ports.liquid",
    "commissioning.field.equipment.outdoorUnit.ports.vapor",
    "commissioning.field.equipment.voltageRange.maximum",
    "commissioning.field.equipment.voltageRange.minimum",
    "commissioning.field.equipment.manual.run",
    "commissioning.field.equipment.manual.preChargedLength",
    "commissioning.field.equipment.manual.chargeRate",
    "commissioning.field.equipment.manual.preChargedFor",
    "commissioning.field.equipment.manual.shortLineRule",
    "commissioning.field.equipment.manual.unusedPortAllowance",
    "commissioning.field.equipment.manual.maximumTotalLength",
    "commissioning.field.equipment.manual.testPressure",
    "commissioning.field.equipment.manual.testHold",
    "commissioning.field.equipment.manual.run.maximumLength",
    "commissioning.field.equipment.manual.run.minimumLength",
    "commissioning.field.equipment.manual.run.maximumLift",
    "commissioning.field.equipment.manual.run.maximumLiftOutdoorAbove",
    "commissioning.field.equipment.manual.run.maximumBends",
    "commissioning.field.equipment.manual.run.bendEquivalentLength",
    "commissioning.field.equipment.manual.run.oilTraps",
    "commissioning.field.equipment.manual.run.extraOil",
    "commissioning.field.equipment.manual.run.oilTraps.above",
    "commissioning.field.equipment.manual.run.oilTraps.spacing",
    "commissioning.field.equipment.manual.run.extraOil.volume",
    "commissioning.field.equipment.manual.run.extraOil.beyond",
    "commissioning.field.equipment.manual.run.extraOil.per",
    "commissioning.field.equipment.manual.chargeRate.mass",
    "commissioning.field.equipment.manual.chargeRate.per",
    "commissioning.field.runs.room",
    "commissioning.field.runs.port",
    "commissioning.field.runs.joints",
    "commissioning.field.runs.drain",
    "commissioning.field.runs.name",
    "commissioning.field.runs.manual",
    "commissioning.field.runs.manual.run",
    "commissioning.field.runs.manual.preChargedLength",
    "commissioning.field.runs.manual.chargeRate",
    "commissioning.field.runs.manual.run.maximumLength",
    "commissioning.field.runs.manual.run.minimumLength",
    "commissioning.field.runs.manual.run.maximumLift",
    "commissioning.field.runs.manual.run.maximumLiftOutdoorAbove",
    "commissioning.field.runs.manual.run.maximumBends",
    "commissioning.field.runs.manual.run.bendEquivalentLength",
    "commissioning.field.runs.manual.run.oilTraps",
    "commissioning.field.runs.manual.run.extraOil",
    "commissioning.field.runs.manual.run.oilTraps.above",
    "commissioning.field.runs.manual.run.oilTraps.spacing",
    "commissioning.field.runs.manual.run.extraOil.volume",
    "commissioning.field.runs.manual.run.extraOil.beyond",
    "commissioning.field.runs.manual.run.extraOil.per",
    "commissioning.field.runs.manual.chargeRate.mass",
    "commissioning.field.runs.manual.chargeRate.per",
    "commissioning.field.runs.serves",
    "commissioning.field.runs.indoorUnits",
    "commissioning.field.runs.tubing",
    "commissioning.field.runs.room.volume",
    "commissioning.field.runs.room.edition",
    "commissioning.field.runs.room.floorArea",
    "commissioning.field.runs.room.place",
    "commissioning.field.runs.room.installationHeight",
    "commissioning.field.runs.room.ceilingHeight",
    "commissioning.field.runs.room.floorAreaAccuracy",
    "commissioning.field.runs.room.volumeAccuracy",
    "commissioning.field.runs.joints.at",
    "commissioning.field.runs.joints.tube",
    "commissioning.field.runs.joints.line",
    "commissioning.field.runs.joints.torque",
    "commissioning.field.runs.joints.turn",
    "commissioning.field.runs.joints.name",
    "commissioning.field.runs.joints.kind",
    "commissioning.field.runs.joints.end",
    "commissioning.field.runs.joints.torqueWindow",
    "commissioning.field.runs.joints.flareDiameter",
    "commissioning.field.runs.joints.nitrogenFlowed",
    "commissioning.field.runs.joints.inspected",
    "commissioning.field.runs.joints.torqueWindow.low",
    "commissioning.field.runs.joints.torqueWindow.high",
    "commissioning.field.runs.drain.at",
    "commissioning.field.runs.drain.slope",
    "commissioning.field.runs.drain.run",
    "commissioning.field.runs.drain.pump",
    "commissioning.field.runs.drain.vertical",
    "commissioning.field.runs.drain.requiredSlope",
    "commissioning.field.runs.drain.route",
    "commissioning.field.runs.drain.unitPitch",
    "commissioning.field.runs.drain.waterRanOff",
    "commissioning.field.runs.drain.slope.accuracy",
    "commissioning.field.runs.drain.slope.slope",
    "commissioning.field.runs.drain.slope.run",
    "commissioning.field.runs.drain.slope.angle",
    "commissioning.field.runs.drain.slope.gap",
    "commissioning.field.runs.drain.slope.levelLength",
    "commissioning.field.runs.drain.slope.heightAtStart",
    "commissioning.field.runs.drain.slope.heightAtEnd",
    "commissioning.field.runs.drain.pump.margin",
    "commissioning.field.runs.drain.pump.curve",
    "commissioning.field.runs.drain.pump.lift",
    "commissioning.field.runs.drain.pump.condensate",
    "commissioning.field.runs.drain.pump.reservoir",
    "commissioning.field.runs.drain.pump.curve.lift",
    "commissioning.field.runs.drain.pump.curve.flow",
    "commissioning.field.runs.drain.route.outdoors",
    "commissioning.field.runs.drain.route.lowestOutdoorTemperature",
    "commissioning.field.runs.drain.route.aboveFinishedSpace",
    "commissioning.field.runs.drain.route.pumped",
    "commissioning.field.runs.drain.unitPitch.accuracy",
    "commissioning.field.runs.drain.unitPitch.slope",
    "commissioning.field.runs.drain.unitPitch.run",
    "commissioning.field.runs.drain.unitPitch.angle",
    "commissioning.field.runs.drain.unitPitch.gap",
    "commissioning.field.runs.drain.unitPitch.levelLength",
    "commissioning.field.runs.drain.unitPitch.heightAtStart",
    "commissioning.field.runs.drain.unitPitch.heightAtEnd",
    "commissioning.field.runs.manual.chargeAllowance",
    "commissioning.field.runs.indoorUnits.serialNumber",
    "commissioning.field.runs.indoorUnits.model",
    "commissioning.field.runs.indoorUnits.ports",
    "commissioning.field.runs.indoorUnits.ports.liquid",
    "commissioning.field.runs.indoorUnits.ports.vapor",
    "commissioning.field.runs.tubing.length",
    "commissioning.field.runs.tubing.at",
    "commissioning.field.runs.tubing.lift",
    "commissioning.field.runs.tubing.liquid",
    "commissioning.field.runs.tubing.vapor",
    "commissioning.field.runs.tubing.outdoorUnit",
    "commissioning.field.runs.tubing.bends",
    "commissioning.field.runs.tubing.jointCount",
    "commissioning.field.runs.tubing.otherVolume",
    "commissioning.field.runs.tubing.liquid.wall",
    "commissioning.field.runs.tubing.liquid.outsideDiameter",
    "commissioning.field.runs.tubing.vapor.wall",
    "commissioning.field.runs.tubing.vapor.outsideDiameter",
    "commissioning.field.pressureTests.at",
    "commissioning.field.pressureTests.wall",
    "commissioning.field.pressureTests.criterion",
    "commissioning.field.pressureTests.readings",
    "commissioning.field.pressureTests.readings.elapsed",
    "commissioning.field.pressureTests.covers",
    "commissioning.field.pressureTests.requirement",
    "commissioning.field.pressureTests.criterion.per",
    "commissioning.field.pressureTests.criterion.maximumDrop",
    "commissioning.field.pressureTests.criterion.maximumLeakRate",
    "commissioning.field.pressureTests.readings.temperature",
    "commissioning.field.pressureTests.readings.pressure",
    "commissioning.field.pressureTests.readings.atmosphere",
    "commissioning.field.pressureTests.requirement.pressure",
    "commissioning.field.pressureTests.requirement.hold",
    "commissioning.field.pressureTests.requirement.standing",
    "commissioning.field.evacuations.at",
    "commissioning.field.evacuations.coldest",
    "commissioning.field.evacuations.ambient",
    "commissioning.field.evacuations.readings",
    "commissioning.field.evacuations.readings.elapsed",
    "commissioning.field.evacuations.covers",
    "commissioning.field.evacuations.readings.pressure",
    "commissioning.field.evacuations.policy",
    "commissioning.field.evacuations.leakLimit",
    "commissioning.field.evacuations.isolation",
    "commissioning.field.evacuations.hoses",
    "commissioning.field.evacuations.blankTest",
    "commissioning.field.evacuations.hoses.length",
    "commissioning.field.evacuations.hoses.material",
    "commissioning.field.evacuations.blankTest.rate",
    "commissioning.field.evacuations.blankTest.volume",
    "commissioning.field.waivers.at",
    "commissioning.field.waivers.step",
    "commissioning.field.waivers.run",
    "commissioning.field.waivers.reason",
    "commissioning.field.waivers.note",
    "commissioning.field.waivers.by",
    "commissioning.field.photos.at",
    "commissioning.field.photos.reference",
    "commissioning.field.photos.of",
    "commissioning.field.photos.caption",
    "commissioning.field.photos.digest",
    "commissioning.field.signatures.at",
    "commissioning.field.signatures.name",
    "commissioning.field.signatures.role",
    "commissioning.field.history.at",
    "commissioning.field.history.kind",
    "commissioning.field.history.reason",
    "commissioning.field.history.by",
    "commissioning.field.history.path",
    "commissioning.field.history.previous",
  ],
};

export const CommissioningNotRecordedValuesShape: Shape = {
  type: "CommissioningNotRecordedValues",
  fields: { fields: { list: CommissioningNotRecordedValuesFieldsItemShape } },
};

export const CommissioningUnusableValueValuesShape: Shape = {
  type: "CommissioningUnusableValueValues",
  fields: { field: CommissioningNotRecordedValuesFieldsItemShape, value: VerbatimShape },
};

export const CommissioningWaivedValuesShape: Shape = {
  type: "CommissioningWaivedValues",
  fields: {
    by: VerbatimShape,
    at: VerbatimShape,
    why: {
      words: [
        "commissioning.waiver.factory-line-set",
        "commissioning.waiver.existing-lines",
        "commissioning.waiver.no-enclosed-room",
        "commissioning.waiver.heats-only",
      ],
    },
  },
};

export const CommissioningWaiverContradictedValuesShape: Shape = {
  type: "CommissioningWaiverContradictedValues",
  fields: { field: CommissioningNotRecordedValuesFieldsItemShape },
};

export const CommissioningWaiverWithoutReasonValuesShape: Shape = {
  type: "CommissioningWaiverWithoutReasonValues",
  fields: {
    fits: {
      words: [
        "commissioning.waiver.factory-line-set",
        "commissioning.waiver.existing-lines",
        "commissioning.waiver.no-enclosed-room",
        "commissioning.waiver.heats-only",
      ],
    },
  },
};

export const CommissioningWaiverDoesNotFitValuesShape: Shape = {
  type: "CommissioningWaiverDoesNotFitValues",
  fields: {
    reason: {
      words: [
        "commissioning.waiver.factory-line-set",
        "commissioning.waiver.existing-lines",
        "commissioning.waiver.no-enclosed-room",
        "commissioning.waiver.heats-only",
      ],
    },
    fits: {
      words: [
        "commissioning.waiver.factory-line-set",
        "commissioning.waiver.existing-lines",
        "commissioning.waiver.no-enclosed-room",
        "commissioning.waiver.heats-only",
      ],
    },
  },
};

export const CommissioningFallsAwayValuesShape: Shape = {
  type: "CommissioningFallsAwayValues",
  fields: {
    construction: {
      words: [
        "commissioning.construction.split",
        "commissioning.construction.quick-connect",
        "commissioning.construction.monobloc",
      ],
    },
  },
};

export const CommissioningConstructionContradictedValuesShape: Shape = {
  type: "CommissioningConstructionContradictedValues",
  fields: {
    construction: {
      words: [
        "commissioning.construction.split",
        "commissioning.construction.quick-connect",
        "commissioning.construction.monobloc",
      ],
    },
    field: CommissioningNotRecordedValuesFieldsItemShape,
  },
};

export const CommissioningRunNotCoveredValuesShape: Shape = {
  type: "CommissioningRunNotCoveredValues",
  fields: { run: { either: ["quantity", VerbatimShape, "text", "number"] } },
  about: { run: "A name, or a number where there is none." },
};

export const CommissioningUnknownRunValuesShape: Shape = {
  type: "CommissioningUnknownRunValues",
  fields: { run: VerbatimShape },
};

export const CommissioningRulesNotPassedValuesShape: Shape = {
  type: "CommissioningRulesNotPassedValues",
  fields: { rules: VerbatimShape },
};

export const CommissioningDoneBeforeProofValuesShape: Shape = {
  type: "CommissioningDoneBeforeProofValues",
  fields: {
    hold: {
      words: [
        "commissioning.hold.open-valves",
        "commissioning.hold.add-charge",
        "commissioning.hold.power-on",
      ],
    },
    at: VerbatimShape,
    proof: VerbatimShape,
  },
};

export const CommissioningDoneWithoutProofValuesShape: Shape = {
  type: "CommissioningDoneWithoutProofValues",
  fields: {
    hold: {
      words: [
        "commissioning.hold.open-valves",
        "commissioning.hold.add-charge",
        "commissioning.hold.power-on",
      ],
    },
    steps: {
      list: {
        words: [
          "commissioning.step.charge",
          "commissioning.step.supply",
          "commissioning.step.line-run",
          "commissioning.step.joints",
          "commissioning.step.pressure-test",
          "commissioning.step.evacuation",
          "commissioning.step.room-limit",
          "commissioning.step.valves",
          "commissioning.step.circuit",
          "commissioning.step.drain",
          "commissioning.step.operation",
        ],
      },
    },
  },
};

export const CommissioningOrderNotShownValuesShape: Shape = {
  type: "CommissioningOrderNotShownValues",
  fields: {
    hold: {
      words: [
        "commissioning.hold.open-valves",
        "commissioning.hold.add-charge",
        "commissioning.hold.power-on",
      ],
    },
  },
};

export const CommissioningOlderThanWorkValuesShape: Shape = {
  type: "CommissioningOlderThanWorkValues",
  fields: { read: VerbatimShape, at: VerbatimShape },
};

export const CommissioningBegunBeforeWorkValuesShape: Shape = {
  type: "CommissioningBegunBeforeWorkValues",
  fields: { read: VerbatimShape, at: VerbatimShape },
};

export const CommissioningLinesSwappedValuesShape: Shape = {
  type: "CommissioningLinesSwappedValues",
  fields: { liquid: "length", vapor: "length" },
};

export const CommissioningLineOtherThanPortValuesShape: Shape = {
  type: "CommissioningLineOtherThanPortValues",
  fields: {
    line: { words: ["commissioning.line.liquid", "commissioning.line.vapor"] },
    diameter: "length",
    port: VerbatimShape,
  },
};

export const CommissioningTotalLengthWithinValuesShape: Shape = {
  type: "CommissioningTotalLengthWithinValues",
  fields: { total: "length", most: "length" },
};

export const CommissioningFewerJointsThanEndsValuesShape: Shape = {
  type: "CommissioningFewerJointsThanEndsValues",
  fields: { count: "number" },
};

export const CommissioningJointsCompleteValuesShape: Shape = {
  type: "CommissioningJointsCompleteValues",
  fields: { count: "number" },
};

export const CommissioningJointsIncompleteValuesShape: Shape = {
  type: "CommissioningJointsIncompleteValues",
  fields: { recorded: "number", count: "number" },
};

export const CommissioningNoFlareOfLineValuesShape: Shape = {
  type: "CommissioningNoFlareOfLineValues",
  fields: {
    line: { words: ["commissioning.line.liquid", "commissioning.line.vapor"] },
    diameter: "length",
    tubes: { list: VerbatimShape },
  },
};

export const CommissioningHeldLongEnoughValuesShape: Shape = {
  type: "CommissioningHeldLongEnoughValues",
  fields: { held: "duration", required: "duration" },
};

export const CommissioningWithinMarkedPressureValuesShape: Shape = {
  type: "CommissioningWithinMarkedPressureValues",
  fields: { pressure: "gaugePressure", limit: "gaugePressure" },
};

export const CommissioningAboveMarkedPressureValuesShape: Shape = {
  type: "CommissioningAboveMarkedPressureValues",
  fields: { pressure: "gaugePressure", limit: "gaugePressure" },
};

export const CommissioningTestPressureReachedValuesShape: Shape = {
  type: "CommissioningTestPressureReachedValues",
  fields: { pressure: "gaugePressure", limit: "gaugePressure" },
};

export const CommissioningTestPressureTooLowValuesShape: Shape = {
  type: "CommissioningTestPressureTooLowValues",
  fields: { pressure: "gaugePressure", limit: "gaugePressure" },
};

export const CommissioningTestBelowRefrigerantValuesShape: Shape = {
  type: "CommissioningTestBelowRefrigerantValues",
  fields: {
    pressure: "gaugePressure",
    own: "gaugePressure",
    refrigerant: VerbatimShape,
    temperature: "temperature",
  },
};

export const CommissioningManualSilentValuesShape: Shape = {
  type: "CommissioningManualSilentValues",
  fields: {
    standing: {
      words: [
        "commissioning.standing.common-practice",
        "commissioning.standing.adopted-code",
        "commissioning.standing.manufacturer",
      ],
    },
  },
};

export const CommissioningWeighedWithinValuesShape: Shape = {
  type: "CommissioningWeighedWithinValues",
  fields: { added: "mass", tolerance: "mass", asked: "mass" },
};

export const CommissioningAboveMaximumChargeValuesShape: Shape = {
  type: "CommissioningAboveMaximumChargeValues",
  fields: { total: "mass", most: "mass" },
};

export const CommissioningNearMaximumChargeValuesShape: Shape = {
  type: "CommissioningNearMaximumChargeValues",
  fields: { total: "mass", most: "mass" },
};

export const CommissioningToleranceTooWideValuesShape: Shape = {
  type: "CommissioningToleranceTooWideValues",
  fields: { tolerance: "mass", whole: "mass" },
};

export const CommissioningValvesOpenedValuesShape: Shape = {
  type: "CommissioningValvesOpenedValues",
  fields: { at: VerbatimShape },
};

export const CommissioningJointsUndatedValuesShape: Shape = {
  type: "CommissioningJointsUndatedValues",
  fields: { joints: { list: { either: [VerbatimShape, "number"] } } },
};

export const CommissioningUsualAirDifferenceValuesShape: Shape = {
  type: "CommissioningUsualAirDifferenceValues",
  fields: { low: "temperatureDifference", high: "temperatureDifference" },
};

export const CommissioningLiftAboveLengthValuesShape: Shape = {
  type: "CommissioningLiftAboveLengthValues",
  fields: { lift: "length", length: "length" },
};

export const CommissioningPreChargedAboveLongestValuesShape: Shape = {
  type: "CommissioningPreChargedAboveLongestValues",
  fields: { preCharged: "length", longest: "length" },
};

export const CommissioningAllowedDropLargeValuesShape: Shape = {
  type: "CommissioningAllowedDropLargeValues",
  fields: { limit: "pressureDifference" },
};

export const CommissioningTemperaturesApartValuesShape: Shape = {
  type: "CommissioningTemperaturesApartValues",
  fields: { test: "temperature", evacuation: "temperature", usual: "temperatureDifference" },
};

export const CommissioningAltitudeOddValuesShape: Shape = {
  type: "CommissioningAltitudeOddValues",
  fields: { altitude: "length" },
};

export const CommissioningBarometerOddValuesShape: Shape = {
  type: "CommissioningBarometerOddValues",
  fields: { atmosphere: "absolutePressure", altitude: "length", usual: "absolutePressure" },
};

export const CommissioningRoomHeightOddValuesShape: Shape = {
  type: "CommissioningRoomHeightOddValues",
  fields: { height: "length", low: "length", high: "length" },
};

export const CommissioningFloorAreaLargeValuesShape: Shape = {
  type: "CommissioningFloorAreaLargeValues",
  fields: { area: "area", usual: "area" },
};

export const CommissioningVolumeLargeValuesShape: Shape = {
  type: "CommissioningVolumeLargeValues",
  fields: { volume: "volume", usual: "volume" },
};

export const CommissioningUnitHighValuesShape: Shape = {
  type: "CommissioningUnitHighValues",
  fields: { height: "length", usual: "length" },
};

export const CommissioningFactoryChargeOddValuesShape: Shape = {
  type: "CommissioningFactoryChargeOddValues",
  fields: { charge: "mass", capacity: "power", low: "mass", high: "mass" },
};

export const CommissioningFactoryChargeIsMaximumValuesShape: Shape = {
  type: "CommissioningFactoryChargeIsMaximumValues",
  fields: { charge: "mass", most: "mass" },
};

export const CommissioningTotalAsAddedValuesShape: Shape = {
  type: "CommissioningTotalAsAddedValues",
  fields: { added: "mass" },
};

export const CommissioningAddedLargeValuesShape: Shape = {
  type: "CommissioningAddedLargeValues",
  fields: { added: "mass", charge: "mass" },
};

export const CommissioningRatedAboveAmpacityValuesShape: Shape = {
  type: "CommissioningRatedAboveAmpacityValues",
  fields: { rated: "current", ampacity: "current" },
};

export const CommissioningProtectionFarAboveAmpacityValuesShape: Shape = {
  type: "CommissioningProtectionFarAboveAmpacityValues",
  fields: { protection: "current", ampacity: "current" },
};

export const CommissioningCapacityOddValuesShape: Shape = {
  type: "CommissioningCapacityOddValues",
  fields: { capacity: "power", rated: "current", voltage: "voltage" },
};

export const CommissioningDrainSteepValuesShape: Shape = {
  type: "CommissioningDrainSteepValues",
  fields: { slope: "ratio", usual: "ratio" },
};

export const CommissioningAirDifferenceWithinValuesShape: Shape = {
  type: "CommissioningAirDifferenceWithinValues",
  fields: {
    mode: { words: ["commissioning.mode.cooling", "commissioning.mode.heating"] },
    difference: "temperatureDifference",
    low: "temperatureDifference",
    high: "temperatureDifference",
  },
};

export const CommissioningAirTheOtherWayValuesShape: Shape = {
  type: "CommissioningAirTheOtherWayValues",
  fields: {
    mode: { words: ["commissioning.mode.cooling", "commissioning.mode.heating"] },
    difference: "temperatureDifference",
  },
};

export const CommissioningCurrentWithinValuesShape: Shape = {
  type: "CommissioningCurrentWithinValues",
  fields: { current: "current", low: "current", rated: "current" },
};

export const CommissioningCurrentAboveAmpacityValuesShape: Shape = {
  type: "CommissioningCurrentAboveAmpacityValues",
  fields: { current: "current", most: "current" },
};

export const CommissioningTestedAgainValuesShape: Shape = {
  type: "CommissioningTestedAgainValues",
  fields: {
    step: {
      words: [
        "commissioning.step.charge",
        "commissioning.step.supply",
        "commissioning.step.line-run",
        "commissioning.step.joints",
        "commissioning.step.pressure-test",
        "commissioning.step.evacuation",
        "commissioning.step.room-limit",
        "commissioning.step.valves",
        "commissioning.step.circuit",
        "commissioning.step.drain",
        "commissioning.step.operation",
      ],
    },
    tests: "number",
  },
};

export const CommissioningSignedBeforeChangeValuesShape: Shape = {
  type: "CommissioningSignedBeforeChangeValues",
  fields: {
    fields: { list: CommissioningNotRecordedValuesFieldsItemShape },
    name: VerbatimShape,
    at: VerbatimShape,
  },
};

export const CommissioningOlderThanAYearValuesShape: Shape = {
  type: "CommissioningOlderThanAYearValues",
  fields: {
    fields: { list: CommissioningNotRecordedValuesFieldsItemShape },
    field: CommissioningNotRecordedValuesFieldsItemShape,
    at: VerbatimShape,
  },
};

export const CommissioningOpenedLongAfterEvacuationValuesShape: Shape = {
  type: "CommissioningOpenedLongAfterEvacuationValues",
  fields: { opened: VerbatimShape, evacuated: VerbatimShape },
};

export const CommissioningCalibrationExpiredValuesShape: Shape = {
  type: "CommissioningCalibrationExpiredValues",
  fields: {
    instrument: CommissioningNotRecordedValuesFieldsItemShape,
    due: VerbatimShape,
    at: VerbatimShape,
  },
};

export const CommissioningCalibratedAfterwardsValuesShape: Shape = {
  type: "CommissioningCalibratedAfterwardsValues",
  fields: {
    instrument: CommissioningNotRecordedValuesFieldsItemShape,
    on: VerbatimShape,
    at: VerbatimShape,
  },
};

export const CommissioningCorrectFieldValuesShape: Shape = {
  type: "CommissioningCorrectFieldValues",
  fields: { field: CommissioningNotRecordedValuesFieldsItemShape },
};

export const CommissioningCoverRunValuesShape: Shape = {
  type: "CommissioningCoverRunValues",
  fields: {
    run: { either: ["quantity", VerbatimShape, "text", "number"] },
    step: {
      words: [
        "commissioning.step.charge",
        "commissioning.step.supply",
        "commissioning.step.line-run",
        "commissioning.step.joints",
        "commissioning.step.pressure-test",
        "commissioning.step.evacuation",
        "commissioning.step.room-limit",
        "commissioning.step.valves",
        "commissioning.step.circuit",
        "commissioning.step.drain",
        "commissioning.step.operation",
      ],
    },
  },
  about: { run: "A name, or a number where there is none." },
};

export const CommissioningShortenRunsValuesShape: Shape = {
  type: "CommissioningShortenRunsValues",
  fields: { most: "length" },
};

export const CommissioningPassRulesValuesShape: Shape = {
  type: "CommissioningPassRulesValues",
  fields: { rules: VerbatimShape },
};

export const CommissioningRepeatStepValuesShape: Shape = {
  type: "CommissioningRepeatStepValues",
  fields: {
    step: {
      words: [
        "commissioning.step.charge",
        "commissioning.step.supply",
        "commissioning.step.line-run",
        "commissioning.step.joints",
        "commissioning.step.pressure-test",
        "commissioning.step.evacuation",
        "commissioning.step.room-limit",
        "commissioning.step.valves",
        "commissioning.step.circuit",
        "commissioning.step.drain",
        "commissioning.step.operation",
      ],
    },
  },
};

export const CommissioningRecordEachJointValuesShape: Shape = {
  type: "CommissioningRecordEachJointValues",
  fields: { count: "number" },
};

export const CommissioningSeeJointsOfLineValuesShape: Shape = {
  type: "CommissioningSeeJointsOfLineValues",
  fields: { line: { words: ["commissioning.line.liquid", "commissioning.line.vapor"] } },
};

export const CommissioningHoldLongerValuesShape: Shape = {
  type: "CommissioningHoldLongerValues",
  fields: { required: "duration" },
};

export const CommissioningLowerPressureValuesShape: Shape = {
  type: "CommissioningLowerPressureValues",
  fields: { limit: "gaugePressure" },
};

export const CommissioningTestHigherValuesShape: Shape = {
  type: "CommissioningTestHigherValues",
  fields: { limit: "gaugePressure" },
};

export const CommissioningCorrectChargeValuesShape: Shape = {
  type: "CommissioningCorrectChargeValues",
  fields: { asked: "mass", tolerance: "mass" },
};

export const CommissioningRecoverDownToValuesShape: Shape = {
  type: "CommissioningRecoverDownToValues",
  fields: { most: "mass" },
};

export const OwnVerdictReasonsItemShape: Shape = {
  type: "OwnVerdictReasonsItem",
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
    "commissioning.not-recorded": CommissioningNotRecordedValuesShape,
    "commissioning.unusable-value": CommissioningUnusableValueValuesShape,
    "commissioning.waived": CommissioningWaivedValuesShape,
    "commissioning.waived-by-nobody": { fields: {} },
    "commissioning.waived-twice": { fields: {} },
    "commissioning.waiver-contradicted": CommissioningWaiverContradictedValuesShape,
    "commissioning.waiver-without-reason": CommissioningWaiverWithoutReasonValuesShape,
    "commissioning.waiver-does-not-fit": CommissioningWaiverDoesNotFitValuesShape,
    "commissioning.waiver-needs-a1": { fields: {} },
    "commissioning.waiver-needs-heating-only": { fields: {} },
    "commissioning.falls-away": CommissioningFallsAwayValuesShape,
    "commissioning.construction-contradicted": CommissioningConstructionContradictedValuesShape,
    "commissioning.run-not-covered": CommissioningRunNotCoveredValuesShape,
    "commissioning.unknown-run": CommissioningUnknownRunValuesShape,
    "commissioning.rules-not-passed": CommissioningRulesNotPassedValuesShape,
    "commissioning.done-before-proof": CommissioningDoneBeforeProofValuesShape,
    "commissioning.done-without-proof": CommissioningDoneWithoutProofValuesShape,
    "commissioning.order-not-shown": CommissioningOrderNotShownValuesShape,
    "commissioning.held": CommissioningDoneWithoutProofValuesShape,
    "commissioning.released": CommissioningOrderNotShownValuesShape,
    "commissioning.released-by-declaration": CommissioningDoneWithoutProofValuesShape,
    "commissioning.older-than-work": CommissioningOlderThanWorkValuesShape,
    "commissioning.begun-before-work": CommissioningBegunBeforeWorkValuesShape,
    "commissioning.lines-swapped": CommissioningLinesSwappedValuesShape,
    "commissioning.line-other-than-port": CommissioningLineOtherThanPortValuesShape,
    "commissioning.line-with-adapter": CommissioningLineOtherThanPortValuesShape,
    "commissioning.total-length-within": CommissioningTotalLengthWithinValuesShape,
    "commissioning.total-length-above": CommissioningTotalLengthWithinValuesShape,
    "commissioning.total-length-too-close": CommissioningTotalLengthWithinValuesShape,
    "commissioning.fewer-joints-than-ends": CommissioningFewerJointsThanEndsValuesShape,
    "commissioning.joints-complete": CommissioningJointsCompleteValuesShape,
    "commissioning.joints-incomplete": CommissioningJointsIncompleteValuesShape,
    "commissioning.joint-defect": { fields: {} },
    "commissioning.joint-inspected": { fields: {} },
    "commissioning.brazed-with-nitrogen": { fields: {} },
    "commissioning.brazed-without-nitrogen": { fields: {} },
    "commissioning.no-flare-of-line": CommissioningNoFlareOfLineValuesShape,
    "commissioning.held-long-enough": CommissioningHeldLongEnoughValuesShape,
    "commissioning.held-too-short": CommissioningHeldLongEnoughValuesShape,
    "commissioning.within-marked-pressure": CommissioningWithinMarkedPressureValuesShape,
    "commissioning.above-marked-pressure": CommissioningAboveMarkedPressureValuesShape,
    "commissioning.test-pressure-reached": CommissioningTestPressureReachedValuesShape,
    "commissioning.test-pressure-too-low": CommissioningTestPressureTooLowValuesShape,
    "commissioning.test-below-refrigerant": CommissioningTestBelowRefrigerantValuesShape,
    "commissioning.manual-silent": CommissioningManualSilentValuesShape,
    "commissioning.weighed-within": CommissioningWeighedWithinValuesShape,
    "commissioning.weighed-outside": CommissioningWeighedWithinValuesShape,
    "commissioning.weighed-too-close": CommissioningWeighedWithinValuesShape,
    "commissioning.above-maximum-charge": CommissioningAboveMaximumChargeValuesShape,
    "commissioning.near-maximum-charge": CommissioningNearMaximumChargeValuesShape,
    "commissioning.tolerance-too-wide": CommissioningToleranceTooWideValuesShape,
    "commissioning.blend-fed-as-liquid": { fields: {} },
    "commissioning.blend-fed-as-vapor": { fields: {} },
    "commissioning.valves-opened": CommissioningValvesOpenedValuesShape,
    "commissioning.drain-falls-straight": { fields: {} },
    "commissioning.water-drained": { fields: {} },
    "commissioning.water-did-not-drain": { fields: {} },
    "commissioning.exact-scale": { fields: {} },
    "commissioning.joints-undated": CommissioningJointsUndatedValuesShape,
    "commissioning.calibration-taken-for-granted": CommissioningNotRecordedValuesShape,
    "commissioning.usual-air-difference": CommissioningUsualAirDifferenceValuesShape,
    "commissioning.lift-above-length": CommissioningLiftAboveLengthValuesShape,
    "commissioning.pre-charged-above-longest": CommissioningPreChargedAboveLongestValuesShape,
    "commissioning.allowed-drop-large": CommissioningAllowedDropLargeValuesShape,
    "commissioning.temperatures-apart": CommissioningTemperaturesApartValuesShape,
    "commissioning.log-copied": { fields: {} },
    "commissioning.altitude-odd": CommissioningAltitudeOddValuesShape,
    "commissioning.barometer-odd": CommissioningBarometerOddValuesShape,
    "commissioning.room-height-odd": CommissioningRoomHeightOddValuesShape,
    "commissioning.ceiling-odd": CommissioningRoomHeightOddValuesShape,
    "commissioning.floor-area-large": CommissioningFloorAreaLargeValuesShape,
    "commissioning.volume-large": CommissioningVolumeLargeValuesShape,
    "commissioning.unit-high": CommissioningUnitHighValuesShape,
    "commissioning.factory-charge-odd": CommissioningFactoryChargeOddValuesShape,
    "commissioning.factory-charge-is-maximum": CommissioningFactoryChargeIsMaximumValuesShape,
    "commissioning.total-as-added": CommissioningTotalAsAddedValuesShape,
    "commissioning.added-large": CommissioningAddedLargeValuesShape,
    "commissioning.rated-above-ampacity": CommissioningRatedAboveAmpacityValuesShape,
    "commissioning.protection-far-above-ampacity":
      CommissioningProtectionFarAboveAmpacityValuesShape,
    "commissioning.capacity-odd": CommissioningCapacityOddValuesShape,
    "commissioning.drain-steep": CommissioningDrainSteepValuesShape,
    "commissioning.air-difference-within": CommissioningAirDifferenceWithinValuesShape,
    "commissioning.air-difference-outside": CommissioningAirDifferenceWithinValuesShape,
    "commissioning.air-difference-too-close": CommissioningAirDifferenceWithinValuesShape,
    "commissioning.air-the-other-way": CommissioningAirTheOtherWayValuesShape,
    "commissioning.not-at-full-speed": { fields: {} },
    "commissioning.current-within": CommissioningCurrentWithinValuesShape,
    "commissioning.current-odd": CommissioningCurrentWithinValuesShape,
    "commissioning.current-above-ampacity": CommissioningCurrentAboveAmpacityValuesShape,
    "commissioning.heed-nitrogen": { fields: {} },
    "commissioning.heed-refrigerant": { fields: {} },
    "commissioning.heed-voltage": { fields: {} },
    "commissioning.heed-gauges": { fields: {} },
    "commissioning.heed-drain": { fields: {} },
    "commissioning.tested-again": CommissioningTestedAgainValuesShape,
    "commissioning.zones-mixed": { fields: {} },
    "commissioning.air-proves-no-charge": { fields: {} },
    "commissioning.not-signed": { fields: {} },
    "commissioning.signed-before-change": CommissioningSignedBeforeChangeValuesShape,
    "commissioning.amended": CommissioningNotRecordedValuesShape,
    "commissioning.unit-unknown": { fields: {} },
    "commissioning.older-than-a-year": CommissioningOlderThanAYearValuesShape,
    "commissioning.opened-long-after-evacuation": CommissioningOpenedLongAfterEvacuationValuesShape,
    "commissioning.instrument-without-error": CommissioningNotRecordedValuesShape,
    "commissioning.calibration-expired": CommissioningCalibrationExpiredValuesShape,
    "commissioning.calibrated-afterwards": CommissioningCalibratedAfterwardsValuesShape,
    "commissioning.record-fields": CommissioningNotRecordedValuesShape,
    "commissioning.correct-field": CommissioningCorrectFieldValuesShape,
    "commissioning.withdraw-waiver": { fields: {} },
    "commissioning.correct-construction": { fields: {} },
    "commissioning.cover-run": CommissioningCoverRunValuesShape,
    "commissioning.state-times": CommissioningOrderNotShownValuesShape,
    "commissioning.shorten-runs": CommissioningShortenRunsValuesShape,
    "commissioning.measure-runs-better": { fields: {} },
    "commissioning.recover-and-charge-anew": { fields: {} },
    "commissioning.read-air-again": { fields: {} },
    "commissioning.run-at-full-speed": { fields: {} },
    "commissioning.see-filter-and-fan": { fields: {} },
    "commissioning.state-air-difference": { fields: {} },
    "commissioning.stop-and-find-current": { fields: {} },
    "commissioning.read-current-again": { fields: {} },
    "commissioning.pass-rules": CommissioningPassRulesValuesShape,
    "commissioning.put-right": CommissioningOrderNotShownValuesShape,
    "commissioning.finish-first": CommissioningDoneWithoutProofValuesShape,
    "commissioning.repeat-step": CommissioningRepeatStepValuesShape,
    "commissioning.see-which-line": { fields: {} },
    "commissioning.record-each-joint": CommissioningRecordEachJointValuesShape,
    "commissioning.remake-joint": { fields: {} },
    "commissioning.see-joints-of-line": CommissioningSeeJointsOfLineValuesShape,
    "commissioning.hold-longer": CommissioningHoldLongerValuesShape,
    "commissioning.lower-pressure": CommissioningLowerPressureValuesShape,
    "commissioning.test-higher": CommissioningTestHigherValuesShape,
    "commissioning.correct-charge": CommissioningCorrectChargeValuesShape,
    "commissioning.weigh-better": { fields: {} },
    "commissioning.recover-down-to": CommissioningRecoverDownToValuesShape,
    "commissioning.state-tolerance": { fields: {} },
    "commissioning.clear-drain": { fields: {} },
  },
  with: { "text?": "text" },
};

export const OwnVerdictCautionsItemShape: Shape = {
  type: "OwnVerdictCautionsItem",
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
    "commissioning.not-recorded": CommissioningNotRecordedValuesShape,
    "commissioning.unusable-value": CommissioningUnusableValueValuesShape,
    "commissioning.waived": CommissioningWaivedValuesShape,
    "commissioning.waived-by-nobody": { fields: {} },
    "commissioning.waived-twice": { fields: {} },
    "commissioning.waiver-contradicted": CommissioningWaiverContradictedValuesShape,
    "commissioning.waiver-without-reason": CommissioningWaiverWithoutReasonValuesShape,
    "commissioning.waiver-does-not-fit": CommissioningWaiverDoesNotFitValuesShape,
    "commissioning.waiver-needs-a1": { fields: {} },
    "commissioning.waiver-needs-heating-only": { fields: {} },
    "commissioning.falls-away": CommissioningFallsAwayValuesShape,
    "commissioning.construction-contradicted": CommissioningConstructionContradictedValuesShape,
    "commissioning.run-not-covered": CommissioningRunNotCoveredValuesShape,
    "commissioning.unknown-run": CommissioningUnknownRunValuesShape,
    "commissioning.rules-not-passed": CommissioningRulesNotPassedValuesShape,
    "commissioning.done-before-proof": CommissioningDoneBeforeProofValuesShape,
    "commissioning.done-without-proof": CommissioningDoneWithoutProofValuesShape,
    "commissioning.order-not-shown": CommissioningOrderNotShownValuesShape,
    "commissioning.held": CommissioningDoneWithoutProofValuesShape,
    "commissioning.released": CommissioningOrderNotShownValuesShape,
    "commissioning.released-by-declaration": CommissioningDoneWithoutProofValuesShape,
    "commissioning.older-than-work": CommissioningOlderThanWorkValuesShape,
    "commissioning.begun-before-work": CommissioningBegunBeforeWorkValuesShape,
    "commissioning.lines-swapped": CommissioningLinesSwappedValuesShape,
    "commissioning.line-other-than-port": CommissioningLineOtherThanPortValuesShape,
    "commissioning.line-with-adapter": CommissioningLineOtherThanPortValuesShape,
    "commissioning.total-length-within": CommissioningTotalLengthWithinValuesShape,
    "commissioning.total-length-above": CommissioningTotalLengthWithinValuesShape,
    "commissioning.total-length-too-close": CommissioningTotalLengthWithinValuesShape,
    "commissioning.fewer-joints-than-ends": CommissioningFewerJointsThanEndsValuesShape,
    "commissioning.joints-complete": CommissioningJointsCompleteValuesShape,
    "commissioning.joints-incomplete": CommissioningJointsIncompleteValuesShape,
    "commissioning.joint-defect": { fields: {} },
    "commissioning.joint-inspected": { fields: {} },
    "commissioning.brazed-with-nitrogen": { fields: {} },
    "commissioning.brazed-without-nitrogen": { fields: {} },
    "commissioning.no-flare-of-line": CommissioningNoFlareOfLineValuesShape,
    "commissioning.held-long-enough": CommissioningHeldLongEnoughValuesShape,
    "commissioning.held-too-short": CommissioningHeldLongEnoughValuesShape,
    "commissioning.within-marked-pressure": CommissioningWithinMarkedPressureValuesShape,
    "commissioning.above-marked-pressure": CommissioningAboveMarkedPressureValuesShape,
    "commissioning.test-pressure-reached": CommissioningTestPressureReachedValuesShape,
    "commissioning.test-pressure-too-low": CommissioningTestPressureTooLowValuesShape,
    "commissioning.test-below-refrigerant": CommissioningTestBelowRefrigerantValuesShape,
    "commissioning.manual-silent": CommissioningManualSilentValuesShape,
    "commissioning.weighed-within": CommissioningWeighedWithinValuesShape,
    "commissioning.weighed-outside": CommissioningWeighedWithinValuesShape,
    "commissioning.weighed-too-close": CommissioningWeighedWithinValuesShape,
    "commissioning.above-maximum-charge": CommissioningAboveMaximumChargeValuesShape,
    "commissioning.near-maximum-charge": CommissioningNearMaximumChargeValuesShape,
    "commissioning.tolerance-too-wide": CommissioningToleranceTooWideValuesShape,
    "commissioning.blend-fed-as-liquid": { fields: {} },
    "commissioning.blend-fed-as-vapor": { fields: {} },
    "commissioning.valves-opened": CommissioningValvesOpenedValuesShape,
    "commissioning.drain-falls-straight": { fields: {} },
    "commissioning.water-drained": { fields: {} },
    "commissioning.water-did-not-drain": { fields: {} },
    "commissioning.exact-scale": { fields: {} },
    "commissioning.joints-undated": CommissioningJointsUndatedValuesShape,
    "commissioning.calibration-taken-for-granted": CommissioningNotRecordedValuesShape,
    "commissioning.usual-air-difference": CommissioningUsualAirDifferenceValuesShape,
    "commissioning.lift-above-length": CommissioningLiftAboveLengthValuesShape,
    "commissioning.pre-charged-above-longest": CommissioningPreChargedAboveLongestValuesShape,
    "commissioning.allowed-drop-large": CommissioningAllowedDropLargeValuesShape,
    "commissioning.temperatures-apart": CommissioningTemperaturesApartValuesShape,
    "commissioning.log-copied": { fields: {} },
    "commissioning.altitude-odd": CommissioningAltitudeOddValuesShape,
    "commissioning.barometer-odd": CommissioningBarometerOddValuesShape,
    "commissioning.room-height-odd": CommissioningRoomHeightOddValuesShape,
    "commissioning.ceiling-odd": CommissioningRoomHeightOddValuesShape,
    "commissioning.floor-area-large": CommissioningFloorAreaLargeValuesShape,
    "commissioning.volume-large": CommissioningVolumeLargeValuesShape,
    "commissioning.unit-high": CommissioningUnitHighValuesShape,
    "commissioning.factory-charge-odd": CommissioningFactoryChargeOddValuesShape,
    "commissioning.factory-charge-is-maximum": CommissioningFactoryChargeIsMaximumValuesShape,
    "commissioning.total-as-added": CommissioningTotalAsAddedValuesShape,
    "commissioning.added-large": CommissioningAddedLargeValuesShape,
    "commissioning.rated-above-ampacity": CommissioningRatedAboveAmpacityValuesShape,
    "commissioning.protection-far-above-ampacity":
      CommissioningProtectionFarAboveAmpacityValuesShape,
    "commissioning.capacity-odd": CommissioningCapacityOddValuesShape,
    "commissioning.drain-steep": CommissioningDrainSteepValuesShape,
    "commissioning.air-difference-within": CommissioningAirDifferenceWithinValuesShape,
    "commissioning.air-difference-outside": CommissioningAirDifferenceWithinValuesShape,
    "commissioning.air-difference-too-close": CommissioningAirDifferenceWithinValuesShape,
    "commissioning.air-the-other-way": CommissioningAirTheOtherWayValuesShape,
    "commissioning.not-at-full-speed": { fields: {} },
    "commissioning.current-within": CommissioningCurrentWithinValuesShape,
    "commissioning.current-odd": CommissioningCurrentWithinValuesShape,
    "commissioning.current-above-ampacity": CommissioningCurrentAboveAmpacityValuesShape,
    "commissioning.heed-nitrogen": { fields: {} },
    "commissioning.heed-refrigerant": { fields: {} },
    "commissioning.heed-voltage": { fields: {} },
    "commissioning.heed-gauges": { fields: {} },
    "commissioning.heed-drain": { fields: {} },
    "commissioning.tested-again": CommissioningTestedAgainValuesShape,
    "commissioning.zones-mixed": { fields: {} },
    "commissioning.air-proves-no-charge": { fields: {} },
    "commissioning.not-signed": { fields: {} },
    "commissioning.signed-before-change": CommissioningSignedBeforeChangeValuesShape,
    "commissioning.amended": CommissioningNotRecordedValuesShape,
    "commissioning.unit-unknown": { fields: {} },
    "commissioning.older-than-a-year": CommissioningOlderThanAYearValuesShape,
    "commissioning.opened-long-after-evacuation": CommissioningOpenedLongAfterEvacuationValuesShape,
    "commissioning.instrument-without-error": CommissioningNotRecordedValuesShape,
    "commissioning.calibration-expired": CommissioningCalibrationExpiredValuesShape,
    "commissioning.calibrated-afterwards": CommissioningCalibratedAfterwardsValuesShape,
    "commissioning.record-fields": CommissioningNotRecordedValuesShape,
    "commissioning.correct-field": CommissioningCorrectFieldValuesShape,
    "commissioning.withdraw-waiver": { fields: {} },
    "commissioning.correct-construction": { fields: {} },
    "commissioning.cover-run": CommissioningCoverRunValuesShape,
    "commissioning.state-times": CommissioningOrderNotShownValuesShape,
    "commissioning.shorten-runs": CommissioningShortenRunsValuesShape,
    "commissioning.measure-runs-better": { fields: {} },
    "commissioning.recover-and-charge-anew": { fields: {} },
    "commissioning.read-air-again": { fields: {} },
    "commissioning.run-at-full-speed": { fields: {} },
    "commissioning.see-filter-and-fan": { fields: {} },
    "commissioning.state-air-difference": { fields: {} },
    "commissioning.stop-and-find-current": { fields: {} },
    "commissioning.read-current-again": { fields: {} },
    "commissioning.pass-rules": CommissioningPassRulesValuesShape,
    "commissioning.put-right": CommissioningOrderNotShownValuesShape,
    "commissioning.finish-first": CommissioningDoneWithoutProofValuesShape,
    "commissioning.repeat-step": CommissioningRepeatStepValuesShape,
    "commissioning.see-which-line": { fields: {} },
    "commissioning.record-each-joint": CommissioningRecordEachJointValuesShape,
    "commissioning.remake-joint": { fields: {} },
    "commissioning.see-joints-of-line": CommissioningSeeJointsOfLineValuesShape,
    "commissioning.hold-longer": CommissioningHoldLongerValuesShape,
    "commissioning.lower-pressure": CommissioningLowerPressureValuesShape,
    "commissioning.test-higher": CommissioningTestHigherValuesShape,
    "commissioning.correct-charge": CommissioningCorrectChargeValuesShape,
    "commissioning.weigh-better": { fields: {} },
    "commissioning.recover-down-to": CommissioningRecoverDownToValuesShape,
    "commissioning.state-tolerance": { fields: {} },
    "commissioning.clear-drain": { fields: {} },
  },
  with: { "text?": "text", "kind?": { words: ["finding", "danger", "governing"] } },
};

export const OwnVerdictShape: Shape = {
  type: "OwnVerdict",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    reasons: { list: OwnVerdictReasonsItemShape },
    assumptions: { list: OwnVerdictReasonsItemShape },
    cautions: { list: OwnVerdictCautionsItemShape },
    "actions?": { list: OwnVerdictReasonsItemShape },
    sources: { list: CitationShape },
  },
  says: "The verdict of a check that this module makes by itself.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
  },
};

export const NamedCheckOfRulesShape: Shape = {
  type: "NamedCheckOfRules",
  fields: { name: { words: ["rules"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfLineRunShape: Shape = {
  type: "NamedCheckOfLineRun",
  fields: { name: { words: ["line-run"] }, path: "text", assessment: LineRunAssessmentShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfPressureTestShape: Shape = {
  type: "NamedCheckOfPressureTest",
  fields: {
    name: { words: ["pressure-test"] },
    path: "text",
    assessment: { either: [LogAssessmentShape, TwoReadingAssessmentShape] },
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfCircuitShape: Shape = {
  type: "NamedCheckOfCircuit",
  fields: {
    name: { words: ["circuit"] },
    path: "text",
    assessment: CircuitFromNameplateResultShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfLineSizesShape: Shape = {
  type: "NamedCheckOfLineSizes",
  fields: { name: { words: ["line-sizes"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfTotalLengthShape: Shape = {
  type: "NamedCheckOfTotalLength",
  fields: { name: { words: ["total-length"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfFlareTorqueShape: Shape = {
  type: "NamedCheckOfFlareTorque",
  fields: {
    name: { words: ["flare-torque"] },
    path: "text",
    assessment: FlareTorqueAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfFlareTurnShape: Shape = {
  type: "NamedCheckOfFlareTurn",
  fields: {
    name: { words: ["flare-turn"] },
    path: "text",
    assessment: FlareAssessmentOfAngleFlareTorqueCauseShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfFlareDiameterShape: Shape = {
  type: "NamedCheckOfFlareDiameter",
  fields: {
    name: { words: ["flare-diameter"] },
    path: "text",
    assessment: FlareAssessmentOfLengthFlareDiameterCauseShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfFlareWallShape: Shape = {
  type: "NamedCheckOfFlareWall",
  fields: {
    name: { words: ["flare-wall"] },
    path: "text",
    assessment: FlareAssessmentOfLengthWallTooThinShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfBrazedJointShape: Shape = {
  type: "NamedCheckOfBrazedJoint",
  fields: { name: { words: ["brazed-joint"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfPressedJointShape: Shape = {
  type: "NamedCheckOfPressedJoint",
  fields: { name: { words: ["pressed-joint"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfCouplingJointShape: Shape = {
  type: "NamedCheckOfCouplingJoint",
  fields: { name: { words: ["coupling-joint"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfJointInspectedShape: Shape = {
  type: "NamedCheckOfJointInspected",
  fields: { name: { words: ["joint-inspected"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfJointCountShape: Shape = {
  type: "NamedCheckOfJointCount",
  fields: { name: { words: ["joint-count"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfJointSizesShape: Shape = {
  type: "NamedCheckOfJointSizes",
  fields: { name: { words: ["joint-sizes"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfTestHoldShape: Shape = {
  type: "NamedCheckOfTestHold",
  fields: { name: { words: ["test-hold"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfMarkedPressureShape: Shape = {
  type: "NamedCheckOfMarkedPressure",
  fields: { name: { words: ["marked-pressure"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfTestPressureShape: Shape = {
  type: "NamedCheckOfTestPressure",
  fields: { name: { words: ["test-pressure"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfVacuumDecayShape: Shape = {
  type: "NamedCheckOfVacuumDecay",
  fields: {
    name: { words: ["vacuum-decay"] },
    path: "text",
    assessment: VacuumDecayAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfOrderShape: Shape = {
  type: "NamedCheckOfOrder",
  fields: { name: { words: ["order"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfRoomChargeShape: Shape = {
  type: "NamedCheckOfRoomCharge",
  fields: { name: { words: ["room-charge"] }, path: "text", assessment: RoomChargeAssessmentShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfRoomConcentrationShape: Shape = {
  type: "NamedCheckOfRoomConcentration",
  fields: {
    name: { words: ["room-concentration"] },
    path: "text",
    assessment: ConcentrationAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfAdditionalChargeShape: Shape = {
  type: "NamedCheckOfAdditionalCharge",
  fields: {
    name: { words: ["additional-charge"] },
    path: "text",
    assessment: ChargeAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfChargeRateShape: Shape = {
  type: "NamedCheckOfChargeRate",
  fields: {
    name: { words: ["charge-rate"] },
    path: "text",
    assessment: LiquidChargePlausibilityShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfWeighedChargeShape: Shape = {
  type: "NamedCheckOfWeighedCharge",
  fields: { name: { words: ["weighed-charge"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfFedAsLiquidShape: Shape = {
  type: "NamedCheckOfFedAsLiquid",
  fields: { name: { words: ["fed-as-liquid"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfValvesOpenedShape: Shape = {
  type: "NamedCheckOfValvesOpened",
  fields: { name: { words: ["valves-opened"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfSupplyVoltageShape: Shape = {
  type: "NamedCheckOfSupplyVoltage",
  fields: {
    name: { words: ["supply-voltage"] },
    path: "text",
    assessment: SupplyVoltageAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfDrainSlopeShape: Shape = {
  type: "NamedCheckOfDrainSlope",
  fields: {
    name: { words: ["drain-slope"] },
    path: "text",
    assessment: { either: [DrainSlopeAssessmentShape, OwnVerdictShape] },
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfCondensatePumpShape: Shape = {
  type: "NamedCheckOfCondensatePump",
  fields: {
    name: { words: ["condensate-pump"] },
    path: "text",
    assessment: CondensatePumpAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfUnitPitchShape: Shape = {
  type: "NamedCheckOfUnitPitch",
  fields: {
    name: { words: ["unit-pitch"] },
    path: "text",
    assessment: IndoorUnitPitchAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfWaterDrainedShape: Shape = {
  type: "NamedCheckOfWaterDrained",
  fields: { name: { words: ["water-drained"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfServiceReadingShape: Shape = {
  type: "NamedCheckOfServiceReading",
  fields: {
    name: { words: ["service-reading"] },
    path: "text",
    assessment: ServiceReadingAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem1Values",
  fields: {},
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem1Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem1",
  fields: {
    code: { words: ["safety.others-govern"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem2Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem2",
  fields: {
    code: { words: ["safety.dry-nitrogen-only"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem3Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem3",
  fields: {
    code: { words: ["safety.regulator-and-relief"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem4Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem4",
  fields: {
    code: { words: ["safety.raise-in-stages"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem5Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem5",
  fields: {
    code: { words: ["safety.lowest-rating"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem6Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem6",
  fields: {
    code: { words: ["safety.nitrogen-suffocates"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem7Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem7",
  fields: {
    code: { words: ["safety.open-under-pressure"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem8Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem8",
  fields: {
    code: { words: ["safety.refrigerant-contact"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem9Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem9",
  fields: {
    code: { words: ["safety.flammable-refrigerant"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem10Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem10",
  fields: {
    code: { words: ["safety.toxic-refrigerant"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem11Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem11",
  fields: {
    code: { words: ["safety.refrigerant-suffocates"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem12Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem12",
  fields: {
    code: { words: ["safety.charge-tight-system"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem13Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem13",
  fields: {
    code: { words: ["safety.refrigerant-air-mixture"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem14Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem14",
  fields: {
    code: { words: ["safety.compressor-in-vacuum"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem15Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem15",
  fields: {
    code: { words: ["safety.line-voltage"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem16Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem16",
  fields: {
    code: { words: ["safety.meter-category"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem17Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem17",
  fields: {
    code: { words: ["safety.running-unit"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItem18Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem18",
  fields: {
    code: { words: ["safety.work-at-height"] },
    values: NamedCheckOfChargeByGaugeAssessment2CautionsItem1ValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const NamedCheckOfChargeByGaugeAssessment2CautionsItemShape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2CautionsItem",
  either: [
    NamedCheckOfChargeByGaugeAssessment2CautionsItem1Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem2Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem3Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem4Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem5Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem6Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem7Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem8Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem9Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem10Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem11Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem12Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem13Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem14Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem15Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem16Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem17Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem18Shape,
    NamedCheckOfChargeByGaugeAssessment2CautionsItem19Shape,
  ],
};

export const NamedCheckOfChargeByGaugeAssessment2Shape: Shape = {
  type: "NamedCheckOfChargeByGaugeAssessment2",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    reasons: { list: NamedCheckOfChargeByGaugeAssessment2ReasonsItemShape },
    assumptions: { list: NamedCheckOfChargeByGaugeAssessment2ReasonsItemShape },
    cautions: { list: NamedCheckOfChargeByGaugeAssessment2CautionsItemShape },
    "actions?": { list: NamedCheckOfChargeByGaugeAssessment2ReasonsItemShape },
    sources: { list: CitationShape },
  },
};

export const NamedCheckOfChargeByGaugeShape: Shape = {
  type: "NamedCheckOfChargeByGauge",
  fields: {
    name: { words: ["charge-by-gauge"] },
    path: "text",
    assessment: {
      either: [ChargeByGaugeAssessmentShape, NamedCheckOfChargeByGaugeAssessment2Shape],
    },
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfAirDifferenceShape: Shape = {
  type: "NamedCheckOfAirDifference",
  fields: { name: { words: ["air-difference"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfRunningCurrentShape: Shape = {
  type: "NamedCheckOfRunningCurrent",
  fields: { name: { words: ["running-current"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfCoverageShape: Shape = {
  type: "NamedCheckOfCoverage",
  fields: { name: { words: ["coverage"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfPlausibilityShape: Shape = {
  type: "NamedCheckOfPlausibility",
  fields: { name: { words: ["plausibility"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfWaiverShape: Shape = {
  type: "NamedCheckOfWaiver",
  fields: { name: { words: ["waiver"] }, path: "text", assessment: OwnVerdictShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const StepCheckShape: Shape = {
  type: "StepCheck",
  by: "name",
  cases: {
    rules: NamedCheckOfRulesShape,
    "line-run": NamedCheckOfLineRunShape,
    "pressure-test": NamedCheckOfPressureTestShape,
    circuit: NamedCheckOfCircuitShape,
    "line-sizes": NamedCheckOfLineSizesShape,
    "total-length": NamedCheckOfTotalLengthShape,
    "flare-torque": NamedCheckOfFlareTorqueShape,
    "flare-turn": NamedCheckOfFlareTurnShape,
    "flare-diameter": NamedCheckOfFlareDiameterShape,
    "flare-wall": NamedCheckOfFlareWallShape,
    "brazed-joint": NamedCheckOfBrazedJointShape,
    "pressed-joint": NamedCheckOfPressedJointShape,
    "coupling-joint": NamedCheckOfCouplingJointShape,
    "joint-inspected": NamedCheckOfJointInspectedShape,
    "joint-count": NamedCheckOfJointCountShape,
    "joint-sizes": NamedCheckOfJointSizesShape,
    "test-hold": NamedCheckOfTestHoldShape,
    "marked-pressure": NamedCheckOfMarkedPressureShape,
    "test-pressure": NamedCheckOfTestPressureShape,
    "vacuum-decay": NamedCheckOfVacuumDecayShape,
    order: NamedCheckOfOrderShape,
    "room-charge": NamedCheckOfRoomChargeShape,
    "room-concentration": NamedCheckOfRoomConcentrationShape,
    "additional-charge": NamedCheckOfAdditionalChargeShape,
    "charge-rate": NamedCheckOfChargeRateShape,
    "weighed-charge": NamedCheckOfWeighedChargeShape,
    "fed-as-liquid": NamedCheckOfFedAsLiquidShape,
    "valves-opened": NamedCheckOfValvesOpenedShape,
    "supply-voltage": NamedCheckOfSupplyVoltageShape,
    "drain-slope": NamedCheckOfDrainSlopeShape,
    "condensate-pump": NamedCheckOfCondensatePumpShape,
    "unit-pitch": NamedCheckOfUnitPitchShape,
    "water-drained": NamedCheckOfWaterDrainedShape,
    "service-reading": NamedCheckOfServiceReadingShape,
    "charge-by-gauge": NamedCheckOfChargeByGaugeShape,
    "air-difference": NamedCheckOfAirDifferenceShape,
    "running-current": NamedCheckOfRunningCurrentShape,
    coverage: NamedCheckOfCoverageShape,
    plausibility: NamedCheckOfPlausibilityShape,
    waiver: NamedCheckOfWaiverShape,
  },
};

export const CheckNameShape: Shape = {
  type: "CheckName",
  words: [
    "line-run",
    "line-sizes",
    "total-length",
    "flare-torque",
    "flare-turn",
    "flare-diameter",
    "flare-wall",
    "brazed-joint",
    "pressed-joint",
    "coupling-joint",
    "joint-inspected",
    "joint-count",
    "joint-sizes",
    "pressure-test",
    "test-hold",
    "marked-pressure",
    "test-pressure",
    "vacuum-decay",
    "order",
    "room-charge",
    "room-concentration",
    "additional-charge",
    "charge-rate",
    "weighed-charge",
    "fed-as-liquid",
    "valves-opened",
    "circuit",
    "rules",
    "supply-voltage",
    "drain-slope",
    "condensate-pump",
    "unit-pitch",
    "water-drained",
    "service-reading",
    "charge-by-gauge",
    "air-difference",
    "running-current",
    "coverage",
    "plausibility",
    "waiver",
  ],
};

export const StepProblemShape: Shape = {
  type: "StepProblem",
  fields: { check: CheckNameShape, path: "text", value: "text", allowed: "text", hint: "text" },
  says: "A value that no check could use.",
  about: {
    check: "The check that could not be made.",
    path: "Path of the field of the record.",
    value: "What stands there.",
    allowed: "What would have been accepted.",
    hint: "What to do about it; empty when there is nothing to add.",
  },
};

export const InstallationStepShape: Shape = {
  type: "InstallationStep",
  fields: {
    name: StepNameShape,
    state: StepStateShape,
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "waiver?": WaiverShape,
    "fallsAway?": {
      statements: {
        "commissioning.not-recorded": CommissioningNotRecordedValuesShape,
        "commissioning.unusable-value": CommissioningUnusableValueValuesShape,
        "commissioning.waived": CommissioningWaivedValuesShape,
        "commissioning.waived-by-nobody": { fields: {} },
        "commissioning.waived-twice": { fields: {} },
        "commissioning.waiver-contradicted": CommissioningWaiverContradictedValuesShape,
        "commissioning.waiver-without-reason": CommissioningWaiverWithoutReasonValuesShape,
        "commissioning.waiver-does-not-fit": CommissioningWaiverDoesNotFitValuesShape,
        "commissioning.waiver-needs-a1": { fields: {} },
        "commissioning.waiver-needs-heating-only": { fields: {} },
        "commissioning.falls-away": CommissioningFallsAwayValuesShape,
        "commissioning.construction-contradicted": CommissioningConstructionContradictedValuesShape,
        "commissioning.run-not-covered": CommissioningRunNotCoveredValuesShape,
        "commissioning.unknown-run": CommissioningUnknownRunValuesShape,
        "commissioning.rules-not-passed": CommissioningRulesNotPassedValuesShape,
        "commissioning.done-before-proof": CommissioningDoneBeforeProofValuesShape,
        "commissioning.done-without-proof": CommissioningDoneWithoutProofValuesShape,
        "commissioning.order-not-shown": CommissioningOrderNotShownValuesShape,
        "commissioning.held": CommissioningDoneWithoutProofValuesShape,
        "commissioning.released": CommissioningOrderNotShownValuesShape,
        "commissioning.released-by-declaration": CommissioningDoneWithoutProofValuesShape,
        "commissioning.older-than-work": CommissioningOlderThanWorkValuesShape,
        "commissioning.begun-before-work": CommissioningBegunBeforeWorkValuesShape,
        "commissioning.lines-swapped": CommissioningLinesSwappedValuesShape,
        "commissioning.line-other-than-port": CommissioningLineOtherThanPortValuesShape,
        "commissioning.line-with-adapter": CommissioningLineOtherThanPortValuesShape,
        "commissioning.total-length-within": CommissioningTotalLengthWithinValuesShape,
        "commissioning.total-length-above": CommissioningTotalLengthWithinValuesShape,
        "commissioning.total-length-too-close": CommissioningTotalLengthWithinValuesShape,
        "commissioning.fewer-joints-than-ends": CommissioningFewerJointsThanEndsValuesShape,
        "commissioning.joints-complete": CommissioningJointsCompleteValuesShape,
        "commissioning.joints-incomplete": CommissioningJointsIncompleteValuesShape,
        "commissioning.joint-defect": { fields: {} },
        "commissioning.joint-inspected": { fields: {} },
        "commissioning.brazed-with-nitrogen": { fields: {} },
        "commissioning.brazed-without-nitrogen": { fields: {} },
        "commissioning.no-flare-of-line": CommissioningNoFlareOfLineValuesShape,
        "commissioning.held-long-enough": CommissioningHeldLongEnoughValuesShape,
        "commissioning.held-too-short": CommissioningHeldLongEnoughValuesShape,
        "commissioning.within-marked-pressure": CommissioningWithinMarkedPressureValuesShape,
        "commissioning.above-marked-pressure": CommissioningAboveMarkedPressureValuesShape,
        "commissioning.test-pressure-reached": CommissioningTestPressureReachedValuesShape,
        "commissioning.test-pressure-too-low": CommissioningTestPressureTooLowValuesShape,
        "commissioning.test-below-refrigerant": CommissioningTestBelowRefrigerantValuesShape,
        "commissioning.manual-silent": CommissioningManualSilentValuesShape,
        "commissioning.weighed-within": CommissioningWeighedWithinValuesShape,
        "commissioning.weighed-outside": CommissioningWeighedWithinValuesShape,
        "commissioning.weighed-too-close": CommissioningWeighedWithinValuesShape,
        "commissioning.above-maximum-charge": CommissioningAboveMaximumChargeValuesShape,
        "commissioning.near-maximum-charge": CommissioningNearMaximumChargeValuesShape,
        "commissioning.tolerance-too-wide": CommissioningToleranceTooWideValuesShape,
        "commissioning.blend-fed-as-liquid": { fields: {} },
        "commissioning.blend-fed-as-vapor": { fields: {} },
        "commissioning.valves-opened": CommissioningValvesOpenedValuesShape,
        "commissioning.drain-falls-straight": { fields: {} },
        "commissioning.water-drained": { fields: {} },
        "commissioning.water-did-not-drain": { fields: {} },
        "commissioning.exact-scale": { fields: {} },
        "commissioning.joints-undated": CommissioningJointsUndatedValuesShape,
        "commissioning.calibration-taken-for-granted": CommissioningNotRecordedValuesShape,
        "commissioning.usual-air-difference": CommissioningUsualAirDifferenceValuesShape,
        "commissioning.lift-above-length": CommissioningLiftAboveLengthValuesShape,
        "commissioning.pre-charged-above-longest": CommissioningPreChargedAboveLongestValuesShape,
        "commissioning.allowed-drop-large": CommissioningAllowedDropLargeValuesShape,
        "commissioning.temperatures-apart": CommissioningTemperaturesApartValuesShape,
        "commissioning.log-copied": { fields: {} },
        "commissioning.altitude-odd": CommissioningAltitudeOddValuesShape,
        "commissioning.barometer-odd": CommissioningBarometerOddValuesShape,
        "commissioning.room-height-odd": CommissioningRoomHeightOddValuesShape,
        "commissioning.ceiling-odd": CommissioningRoomHeightOddValuesShape,
        "commissioning.floor-area-large": CommissioningFloorAreaLargeValuesShape,
        "commissioning.volume-large": CommissioningVolumeLargeValuesShape,
        "commissioning.unit-high": CommissioningUnitHighValuesShape,
        "commissioning.factory-charge-odd": CommissioningFactoryChargeOddValuesShape,
        "commissioning.factory-charge-is-maximum": CommissioningFactoryChargeIsMaximumValuesShape,
        "commissioning.total-as-added": CommissioningTotalAsAddedValuesShape,
        "commissioning.added-large": CommissioningAddedLargeValuesShape,
        "commissioning.rated-above-ampacity": CommissioningRatedAboveAmpacityValuesShape,
        "commissioning.protection-far-above-ampacity":
          CommissioningProtectionFarAboveAmpacityValuesShape,
        "commissioning.capacity-odd": CommissioningCapacityOddValuesShape,
        "commissioning.drain-steep": CommissioningDrainSteepValuesShape,
        "commissioning.air-difference-within": CommissioningAirDifferenceWithinValuesShape,
        "commissioning.air-difference-outside": CommissioningAirDifferenceWithinValuesShape,
        "commissioning.air-difference-too-close": CommissioningAirDifferenceWithinValuesShape,
        "commissioning.air-the-other-way": CommissioningAirTheOtherWayValuesShape,
        "commissioning.not-at-full-speed": { fields: {} },
        "commissioning.current-within": CommissioningCurrentWithinValuesShape,
        "commissioning.current-odd": CommissioningCurrentWithinValuesShape,
        "commissioning.current-above-ampacity": CommissioningCurrentAboveAmpacityValuesShape,
        "commissioning.heed-nitrogen": { fields: {} },
        "commissioning.heed-refrigerant": { fields: {} },
        "commissioning.heed-voltage": { fields: {} },
        "commissioning.heed-gauges": { fields: {} },
        "commissioning.heed-drain": { fields: {} },
        "commissioning.tested-again": CommissioningTestedAgainValuesShape,
        "commissioning.zones-mixed": { fields: {} },
        "commissioning.air-proves-no-charge": { fields: {} },
        "commissioning.not-signed": { fields: {} },
        "commissioning.signed-before-change": CommissioningSignedBeforeChangeValuesShape,
        "commissioning.amended": CommissioningNotRecordedValuesShape,
        "commissioning.unit-unknown": { fields: {} },
        "commissioning.older-than-a-year": CommissioningOlderThanAYearValuesShape,
        "commissioning.opened-long-after-evacuation":
          CommissioningOpenedLongAfterEvacuationValuesShape,
        "commissioning.instrument-without-error": CommissioningNotRecordedValuesShape,
        "commissioning.calibration-expired": CommissioningCalibrationExpiredValuesShape,
        "commissioning.calibrated-afterwards": CommissioningCalibratedAfterwardsValuesShape,
        "commissioning.record-fields": CommissioningNotRecordedValuesShape,
        "commissioning.correct-field": CommissioningCorrectFieldValuesShape,
        "commissioning.withdraw-waiver": { fields: {} },
        "commissioning.correct-construction": { fields: {} },
        "commissioning.cover-run": CommissioningCoverRunValuesShape,
        "commissioning.state-times": CommissioningOrderNotShownValuesShape,
        "commissioning.shorten-runs": CommissioningShortenRunsValuesShape,
        "commissioning.measure-runs-better": { fields: {} },
        "commissioning.recover-and-charge-anew": { fields: {} },
        "commissioning.read-air-again": { fields: {} },
        "commissioning.run-at-full-speed": { fields: {} },
        "commissioning.see-filter-and-fan": { fields: {} },
        "commissioning.state-air-difference": { fields: {} },
        "commissioning.stop-and-find-current": { fields: {} },
        "commissioning.read-current-again": { fields: {} },
        "commissioning.pass-rules": CommissioningPassRulesValuesShape,
        "commissioning.put-right": CommissioningOrderNotShownValuesShape,
        "commissioning.finish-first": CommissioningDoneWithoutProofValuesShape,
        "commissioning.repeat-step": CommissioningRepeatStepValuesShape,
        "commissioning.see-which-line": { fields: {} },
        "commissioning.record-each-joint": CommissioningRecordEachJointValuesShape,
        "commissioning.remake-joint": { fields: {} },
        "commissioning.see-joints-of-line": CommissioningSeeJointsOfLineValuesShape,
        "commissioning.hold-longer": CommissioningHoldLongerValuesShape,
        "commissioning.lower-pressure": CommissioningLowerPressureValuesShape,
        "commissioning.test-higher": CommissioningTestHigherValuesShape,
        "commissioning.correct-charge": CommissioningCorrectChargeValuesShape,
        "commissioning.weigh-better": { fields: {} },
        "commissioning.recover-down-to": CommissioningRecoverDownToValuesShape,
        "commissioning.state-tolerance": { fields: {} },
        "commissioning.clear-drain": { fields: {} },
      },
      with: { "text?": "text" },
    },
    checks: { list: StepCheckShape },
    problems: { list: StepProblemShape },
    missing: { list: "text" },
    blockedBy: { list: StepNameShape },
  },
  says: "A step and what came of it.",
  about: {
    name: "Which step.",
    state: "How far it is recorded.",
    outcome:
      "pass only when done and all of its checks pass; inconclusive when not applicable, as nothing was proven.",
    waiver: "Who waived it and why; only where it is not applicable for that.",
    fallsAway: "Why it falls away; only where the construction of the unit leaves it out.",
    checks: "The checks that were made.",
    problems: "Values that could not be used.",
    missing: "Paths of the fields that are missing.",
    blockedBy: "Earlier steps that have to pass before this one may be done, and have not.",
  },
};

export const CommissioningStatementShape: Shape = {
  type: "CommissioningStatement",
  statements: {
    "commissioning.not-recorded": CommissioningNotRecordedValuesShape,
    "commissioning.unusable-value": CommissioningUnusableValueValuesShape,
    "commissioning.waived": CommissioningWaivedValuesShape,
    "commissioning.waived-by-nobody": { fields: {} },
    "commissioning.waived-twice": { fields: {} },
    "commissioning.waiver-contradicted": CommissioningWaiverContradictedValuesShape,
    "commissioning.waiver-without-reason": CommissioningWaiverWithoutReasonValuesShape,
    "commissioning.waiver-does-not-fit": CommissioningWaiverDoesNotFitValuesShape,
    "commissioning.waiver-needs-a1": { fields: {} },
    "commissioning.waiver-needs-heating-only": { fields: {} },
    "commissioning.falls-away": CommissioningFallsAwayValuesShape,
    "commissioning.construction-contradicted": CommissioningConstructionContradictedValuesShape,
    "commissioning.run-not-covered": CommissioningRunNotCoveredValuesShape,
    "commissioning.unknown-run": CommissioningUnknownRunValuesShape,
    "commissioning.rules-not-passed": CommissioningRulesNotPassedValuesShape,
    "commissioning.done-before-proof": CommissioningDoneBeforeProofValuesShape,
    "commissioning.done-without-proof": CommissioningDoneWithoutProofValuesShape,
    "commissioning.order-not-shown": CommissioningOrderNotShownValuesShape,
    "commissioning.held": CommissioningDoneWithoutProofValuesShape,
    "commissioning.released": CommissioningOrderNotShownValuesShape,
    "commissioning.released-by-declaration": CommissioningDoneWithoutProofValuesShape,
    "commissioning.older-than-work": CommissioningOlderThanWorkValuesShape,
    "commissioning.begun-before-work": CommissioningBegunBeforeWorkValuesShape,
    "commissioning.lines-swapped": CommissioningLinesSwappedValuesShape,
    "commissioning.line-other-than-port": CommissioningLineOtherThanPortValuesShape,
    "commissioning.line-with-adapter": CommissioningLineOtherThanPortValuesShape,
    "commissioning.total-length-within": CommissioningTotalLengthWithinValuesShape,
    "commissioning.total-length-above": CommissioningTotalLengthWithinValuesShape,
    "commissioning.total-length-too-close": CommissioningTotalLengthWithinValuesShape,
    "commissioning.fewer-joints-than-ends": CommissioningFewerJointsThanEndsValuesShape,
    "commissioning.joints-complete": CommissioningJointsCompleteValuesShape,
    "commissioning.joints-incomplete": CommissioningJointsIncompleteValuesShape,
    "commissioning.joint-defect": { fields: {} },
    "commissioning.joint-inspected": { fields: {} },
    "commissioning.brazed-with-nitrogen": { fields: {} },
    "commissioning.brazed-without-nitrogen": { fields: {} },
    "commissioning.no-flare-of-line": CommissioningNoFlareOfLineValuesShape,
    "commissioning.held-long-enough": CommissioningHeldLongEnoughValuesShape,
    "commissioning.held-too-short": CommissioningHeldLongEnoughValuesShape,
    "commissioning.within-marked-pressure": CommissioningWithinMarkedPressureValuesShape,
    "commissioning.above-marked-pressure": CommissioningAboveMarkedPressureValuesShape,
    "commissioning.test-pressure-reached": CommissioningTestPressureReachedValuesShape,
    "commissioning.test-pressure-too-low": CommissioningTestPressureTooLowValuesShape,
    "commissioning.test-below-refrigerant": CommissioningTestBelowRefrigerantValuesShape,
    "commissioning.manual-silent": CommissioningManualSilentValuesShape,
    "commissioning.weighed-within": CommissioningWeighedWithinValuesShape,
    "commissioning.weighed-outside": CommissioningWeighedWithinValuesShape,
    "commissioning.weighed-too-close": CommissioningWeighedWithinValuesShape,
    "commissioning.above-maximum-charge": CommissioningAboveMaximumChargeValuesShape,
    "commissioning.near-maximum-charge": CommissioningNearMaximumChargeValuesShape,
    "commissioning.tolerance-too-wide": CommissioningToleranceTooWideValuesShape,
    "commissioning.blend-fed-as-liquid": { fields: {} },
    "commissioning.blend-fed-as-vapor": { fields: {} },
    "commissioning.valves-opened": CommissioningValvesOpenedValuesShape,
    "commissioning.drain-falls-straight": { fields: {} },
    "commissioning.water-drained": { fields: {} },
    "commissioning.water-did-not-drain": { fields: {} },
    "commissioning.exact-scale": { fields: {} },
    "commissioning.joints-undated": CommissioningJointsUndatedValuesShape,
    "commissioning.calibration-taken-for-granted": CommissioningNotRecordedValuesShape,
    "commissioning.usual-air-difference": CommissioningUsualAirDifferenceValuesShape,
    "commissioning.lift-above-length": CommissioningLiftAboveLengthValuesShape,
    "commissioning.pre-charged-above-longest": CommissioningPreChargedAboveLongestValuesShape,
    "commissioning.allowed-drop-large": CommissioningAllowedDropLargeValuesShape,
    "commissioning.temperatures-apart": CommissioningTemperaturesApartValuesShape,
    "commissioning.log-copied": { fields: {} },
    "commissioning.altitude-odd": CommissioningAltitudeOddValuesShape,
    "commissioning.barometer-odd": CommissioningBarometerOddValuesShape,
    "commissioning.room-height-odd": CommissioningRoomHeightOddValuesShape,
    "commissioning.ceiling-odd": CommissioningRoomHeightOddValuesShape,
    "commissioning.floor-area-large": CommissioningFloorAreaLargeValuesShape,
    "commissioning.volume-large": CommissioningVolumeLargeValuesShape,
    "commissioning.unit-high": CommissioningUnitHighValuesShape,
    "commissioning.factory-charge-odd": CommissioningFactoryChargeOddValuesShape,
    "commissioning.factory-charge-is-maximum": CommissioningFactoryChargeIsMaximumValuesShape,
    "commissioning.total-as-added": CommissioningTotalAsAddedValuesShape,
    "commissioning.added-large": CommissioningAddedLargeValuesShape,
    "commissioning.rated-above-ampacity": CommissioningRatedAboveAmpacityValuesShape,
    "commissioning.protection-far-above-ampacity":
      CommissioningProtectionFarAboveAmpacityValuesShape,
    "commissioning.capacity-odd": CommissioningCapacityOddValuesShape,
    "commissioning.drain-steep": CommissioningDrainSteepValuesShape,
    "commissioning.air-difference-within": CommissioningAirDifferenceWithinValuesShape,
    "commissioning.air-difference-outside": CommissioningAirDifferenceWithinValuesShape,
    "commissioning.air-difference-too-close": CommissioningAirDifferenceWithinValuesShape,
    "commissioning.air-the-other-way": CommissioningAirTheOtherWayValuesShape,
    "commissioning.not-at-full-speed": { fields: {} },
    "commissioning.current-within": CommissioningCurrentWithinValuesShape,
    "commissioning.current-odd": CommissioningCurrentWithinValuesShape,
    "commissioning.current-above-ampacity": CommissioningCurrentAboveAmpacityValuesShape,
    "commissioning.heed-nitrogen": { fields: {} },
    "commissioning.heed-refrigerant": { fields: {} },
    "commissioning.heed-voltage": { fields: {} },
    "commissioning.heed-gauges": { fields: {} },
    "commissioning.heed-drain": { fields: {} },
    "commissioning.tested-again": CommissioningTestedAgainValuesShape,
    "commissioning.zones-mixed": { fields: {} },
    "commissioning.air-proves-no-charge": { fields: {} },
    "commissioning.not-signed": { fields: {} },
    "commissioning.signed-before-change": CommissioningSignedBeforeChangeValuesShape,
    "commissioning.amended": CommissioningNotRecordedValuesShape,
    "commissioning.unit-unknown": { fields: {} },
    "commissioning.older-than-a-year": CommissioningOlderThanAYearValuesShape,
    "commissioning.opened-long-after-evacuation": CommissioningOpenedLongAfterEvacuationValuesShape,
    "commissioning.instrument-without-error": CommissioningNotRecordedValuesShape,
    "commissioning.calibration-expired": CommissioningCalibrationExpiredValuesShape,
    "commissioning.calibrated-afterwards": CommissioningCalibratedAfterwardsValuesShape,
    "commissioning.record-fields": CommissioningNotRecordedValuesShape,
    "commissioning.correct-field": CommissioningCorrectFieldValuesShape,
    "commissioning.withdraw-waiver": { fields: {} },
    "commissioning.correct-construction": { fields: {} },
    "commissioning.cover-run": CommissioningCoverRunValuesShape,
    "commissioning.state-times": CommissioningOrderNotShownValuesShape,
    "commissioning.shorten-runs": CommissioningShortenRunsValuesShape,
    "commissioning.measure-runs-better": { fields: {} },
    "commissioning.recover-and-charge-anew": { fields: {} },
    "commissioning.read-air-again": { fields: {} },
    "commissioning.run-at-full-speed": { fields: {} },
    "commissioning.see-filter-and-fan": { fields: {} },
    "commissioning.state-air-difference": { fields: {} },
    "commissioning.stop-and-find-current": { fields: {} },
    "commissioning.read-current-again": { fields: {} },
    "commissioning.pass-rules": CommissioningPassRulesValuesShape,
    "commissioning.put-right": CommissioningOrderNotShownValuesShape,
    "commissioning.finish-first": CommissioningDoneWithoutProofValuesShape,
    "commissioning.repeat-step": CommissioningRepeatStepValuesShape,
    "commissioning.see-which-line": { fields: {} },
    "commissioning.record-each-joint": CommissioningRecordEachJointValuesShape,
    "commissioning.remake-joint": { fields: {} },
    "commissioning.see-joints-of-line": CommissioningSeeJointsOfLineValuesShape,
    "commissioning.hold-longer": CommissioningHoldLongerValuesShape,
    "commissioning.lower-pressure": CommissioningLowerPressureValuesShape,
    "commissioning.test-higher": CommissioningTestHigherValuesShape,
    "commissioning.correct-charge": CommissioningCorrectChargeValuesShape,
    "commissioning.weigh-better": { fields: {} },
    "commissioning.recover-down-to": CommissioningRecoverDownToValuesShape,
    "commissioning.state-tolerance": { fields: {} },
    "commissioning.clear-drain": { fields: {} },
  },
  with: { "text?": "text" },
};

export const HoldPointShape: Shape = {
  type: "HoldPoint",
  fields: {
    name: { words: ["open-valves", "add-charge", "power-on"] },
    state: { words: ["held", "released", "breached"] },
    waitsFor: { list: StepNameShape },
    reason: CommissioningStatementShape,
    actions: { list: CommissioningStatementShape },
  },
  says: "A point at which the work waits until steps have passed.",
  about: {
    name: "What waits.",
    state: "Whether it still waits.",
    waitsFor:
      "The steps that have not passed: those that have to, and joints where one of them fails.",
    reason: "Why.",
    actions: "What to do next where it was breached; empty otherwise.",
  },
};

export const InstallationAssessmentShape: Shape = {
  type: "InstallationAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": {
      words: [
        "charge",
        "supply",
        "line-run",
        "joints",
        "pressure-test",
        "evacuation",
        "room-limit",
        "valves",
        "circuit",
        "drain",
        "operation",
      ],
    },
    reasons: { list: PlacedShape },
    assumptions: { list: PlacedShape },
    cautions: { list: PlacedCautionShape },
    actions: { list: PlacedShape },
    sources: { list: CitationShape },
    deciding: { list: PlacedShape },
    steps: { list: InstallationStepShape },
    holds: { list: HoldPointShape },
    missing: { list: "text" },
  },
  says: "The verdict on an installation. cause is the first step that fails; a statement has the step and the part of the record of which it speaks beside it.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions: "Findings of the record and of its steps, each danger once, and who governs.",
    actions: "What to do next, in the order of the work; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    deciding: "The first of the reasons: all but those of checks that passed.",
    steps: "The steps in the order of the work.",
    holds: "What may not be done yet.",
    missing: "Paths of all fields that are missing.",
  },
};

export const SiteShape: Shape = {
  type: "Site",
  fields: { "name?": "text", "altitude?": "length", "atmosphere?": "absolutePressure" },
  says: "Where the installation is.",
  about: {
    name: "How the site is called.",
    altitude: "Altitude above sea level: gives the average atmosphere where none was measured.",
    atmosphere: "Station pressure by a barometer; goes before the altitude.",
  },
};

export const OnFileShape: Shape = {
  type: "OnFile",
  fields: { "equipment?": "text", "instruments?": "text" },
  says: "Under which names the equipment and the instruments are kept on file, apart from the record; what the record states itself goes before them. See completeRecord.",
  about: {
    equipment: "Name of the equipment: plates and manual.",
    instruments: "Name of the set of instruments.",
  },
};

export const UnitPlatePortsShape: Shape = {
  type: "UnitPlatePorts",
  fields: {
    "liquid?": { words: ["1/4", "5/16", "3/8", "1/2", "5/8", "3/4"] },
    "vapor?": { words: ["1/4", "5/16", "3/8", "1/2", "5/8", "3/4"] },
  },
};

export const UnitPlateShape: Shape = {
  type: "UnitPlate",
  fields: { "model?": "text", "serialNumber?": "text", "ports?": UnitPlatePortsShape },
  says: "A unit by its plate.",
  about: {
    model: "Model designation as printed.",
    serialNumber: "Serial number.",
    ports: "Flare sizes of its ports, in inches; for an indoor unit those of its own.",
  },
};

export const ManualShape: Shape = {
  type: "Manual",
  fields: {
    "run?": ManualRunShape,
    "preChargedLength?": "length",
    "chargeRate?": { either: ["massPerLength", ManualChargeRateShape] },
    "preChargedFor?": { words: ["each-run", "sum"] },
    "shortLineRule?": { words: ["add-only", "add-and-subtract", "not-stated"] },
    "unusedPortAllowance?": "mass",
    "maximumTotalLength?": "length",
    "testPressure?": "gaugePressure",
    "testHold?": "duration",
  },
  says: "What the unit's manual says.",
  about: {
    run: "Limits of the run.",
    preChargedLength: "Length of line that the factory charge covers.",
    chargeRate: "Added charge per length.",
    preChargedFor:
      "Whether the pre-charged length counts for each run or for the sum of them; asked for where there are several.",
    shortLineRule: "What happens below the pre-charged length.",
    unusedPortAllowance: "Mass that the manual adds, or takes off, for the ports that stay unused.",
    maximumTotalLength: "Largest length of all runs together.",
    testPressure: "Least pressure of the tightness test.",
    testHold: "Shortest hold of the tightness test.",
  },
};

export const EquipmentShape: Shape = {
  type: "Equipment",
  fields: {
    "construction?": { words: ["split", "quick-connect", "monobloc"] },
    "duty?": { words: ["cooling", "heating", "both"] },
    "capacity?": "power",
    "outdoorUnit?": UnitPlateShape,
    "refrigerant?": "text",
    "factoryCharge?": "mass",
    "maximumCharge?": "mass",
    "lowestMarkedPressure?": "gaugePressure",
    "minimumCircuitAmpacity?": "current",
    "maximumOvercurrentProtection?": "current",
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
  says: "The equipment as its plates describe it.",
  about: {
    construction: "How its circuit is closed; split when left out.",
    duty: "Whether it cools, heats or both.",
    capacity: "Rated capacity.",
    outdoorUnit: "Outdoor unit.",
    refrigerant: "Refrigerant by its ASHRAE 34 designation, however it is written.",
    factoryCharge: "Charge that the unit came with.",
    maximumCharge: "Most that the unit may hold.",
    lowestMarkedPressure: "The lowest pressure marked on anything under test.",
    minimumCircuitAmpacity: "Minimum circuit ampacity.",
    maximumOvercurrentProtection: "Largest overcurrent protection.",
    protectionMarking: "How the plate words it.",
    ratedLoadCurrent: "Sum of the rated-load currents that run together.",
    lockedRotorCurrent: "Locked-rotor current.",
    ratedVoltages: "Rated voltages: one, or both of a dual plate.",
    voltageRange: "Range of voltage that the plate prints.",
    meteringDevice: "What sets the flow of refrigerant.",
    compressor: "How the compressor runs.",
    expansion: "Where the refrigerant expands.",
    manual: "What the manual says.",
  },
};

export const InstrumentsTestGaugeShape: Shape = {
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
  about: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    drift:
      "How far zero and hysteresis may wander from the first to the last reading, ±. When left out, a quarter of the accuracy (at least one display step) and 2 % of it for each kelvin that the temperature moved are assumed.",
    separateInstruments:
      "Two different gauges read start and end, so that their errors do not cancel.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const InstrumentsGasThermometerShape: Shape = {
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
  about: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    followsGasWithin:
      "How far the reading may be from the mean gas temperature, differently at each reading, ±: sun on one pipe, indoor and outdoor parts, lag, warmth of the fill. When left out, a bound that grows with the swing, the time and the volume is assumed.",
    separateInstruments:
      "Two different thermometers read start and end, so that their errors do not cancel.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const InstrumentsVacuumGaugeShape: Shape = {
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
  about: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    resolution:
      "Smallest step of the display; one per range when it changes with the reading. Found from the readings when left out; a display that stands still is believed only with it.",
    accuracy: "Stated limits of error as a part of the reading; ±10 % is assumed when left out.",
    range: "Largest reading; readings at or above it are over range.",
  },
};

export const InstrumentsScaleShape: Shape = {
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
  about: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const InstrumentsTapeShape: Shape = {
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
  about: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const InstrumentsTorqueWrenchShape: Shape = {
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
  about: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    relativeAccuracy: "Limits of error as a fraction of the reading: percent(4).",
    accuracy: "Limits of error as a torque, ±.",
    resolution: "Smallest step of the scale.",
  },
};

export const InstrumentsVoltmeterShape: Shape = {
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
  about: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    accuracyOfReading: "Limits of error that grow with the reading, ±; added to accuracy.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const InstrumentsServiceGaugeShape: Shape = {
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
  about: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const InstrumentsLineThermometerShape: Shape = {
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
  about: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const InstrumentIdentityShape: Shape = {
  type: "InstrumentIdentity",
  fields: {
    "name?": "text",
    "serialNumber?": "text",
    "calibratedOn?": "time",
    "calibrationDue?": "time",
  },
  says: "Which instrument it is and how long its calibration holds.",
  about: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
  },
};

export const InstrumentsClampMeterShape: Shape = {
  type: "InstrumentsClampMeter",
  fields: {
    "name?": "text",
    "serialNumber?": "text",
    "calibratedOn?": "time",
    "calibrationDue?": "time",
    "accuracy?": "current",
    "resolution?": "current",
    "repeatability?": "current",
  },
  about: {
    name: "What it is.",
    serialNumber: "Serial number.",
    calibratedOn: "Date of its last calibration.",
    calibrationDue: "Last day on which that calibration holds.",
    accuracy: 'Stated limits of error, ±: "± 1 psi". Taken as a rectangular distribution.',
    resolution: "Smallest step that the display shows.",
    repeatability: "Standard deviation of repeated readings of the same thing.",
  },
};

export const InstrumentsShape: Shape = {
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
  says: "The instruments with their accuracy and calibration.",
  about: {
    testGauge: "Gauge of the pressure test.",
    gasThermometer: "Thermometer of the pressure test.",
    vacuumGauge: "Vacuum gauge.",
    scale: "Charging scale.",
    tape: "Tape or measuring wheel for the tubing.",
    torqueWrench: "Torque wrench.",
    voltmeter: "Voltmeter.",
    serviceGauge: "Gauge on the running unit.",
    lineThermometer: "Thermometer on the lines of the running unit.",
    level: "Level or laser of the drain; its limits of error stand beside each reading.",
    airThermometer: "Thermometer in the air of the running unit.",
    clampMeter: "Clamp meter on the running unit.",
  },
};

export const TubingShape: Shape = {
  type: "Tubing",
  fields: {
    "liquid?": TubingLiquidShape,
    "vapor?": TubingLiquidShape,
    "length?": "length",
    "lift?": "length",
    "outdoorUnit?": { words: ["above", "below", "level"] },
    "bends?": "number",
    "jointCount?": "number",
    "otherVolume?": "volume",
    "at?": "time",
  },
  says: "The lines as they run.",
  about: {
    liquid: "Liquid line.",
    vapor: "Vapor line.",
    length: "Length one way, with what is coiled up.",
    lift: "Height difference of the units.",
    outdoorUnit: "Where the outdoor unit stands.",
    bends: "Number of bends.",
    jointCount:
      "How many joints there are, where they are more than one at each end of each line: adapters, couplings.",
    otherVolume:
      "Inner volume of all else on this run that is tested together with the tubes: coils, manifold.",
    at: "When it was measured.",
  },
};

export const JointShape: Shape = {
  type: "Joint",
  fields: {
    "name?": "text",
    "line?": { words: ["liquid", "vapor"] },
    "end?": { words: ["indoor", "outdoor", "between"] },
    "kind?": { words: ["flare", "brazed", "pressed", "coupling"] },
    "tube?": { words: ["1/4", "5/16", "3/8", "1/2", "5/8", "3/4"] },
    "torque?": "torque",
    "torqueWindow?": JointTorqueWindowShape,
    "turn?": "angle",
    "flareDiameter?": "length",
    "nitrogenFlowed?": "flag",
    "inspected?": "flag",
    "at?": "time",
  },
  says: "One joint. A flare needs tube and torque or turn; a brazed joint nitrogenFlowed; a pressed joint and a pre-charged coupling inspected.",
  about: {
    name: "Where it is; by line and end where left out.",
    line: "The line on which it is.",
    end: "The end of the line at which it is.",
    kind: "How it was made; a flare where a torque or a turn is stated.",
    tube: "Outside diameter of a flared tube in inches; that of its line where left out.",
    torque: "Torque at which the wrench clicked.",
    torqueWindow: "The manual's window of torque.",
    turn: "Turn from the point where the torque rises, where there was no wrench.",
    flareDiameter: "Outside diameter of the flare.",
    nitrogenFlowed: "Whether nitrogen flowed through the tube while it was brazed.",
    inspected:
      "Whether it was looked at, or leak-tested once it held refrigerant, and found right.",
    at: "When it was made.",
  },
};

export const RunManualShape: Shape = {
  type: "RunManual",
  fields: {
    "run?": ManualRunShape,
    "preChargedLength?": "length",
    "chargeRate?": { either: ["massPerLength", ManualChargeRateShape] },
    "chargeAllowance?": "mass",
  },
  says: "Limits and charge rule of one run, where they differ from those of all.",
  about: {
    run: "Limits of the run.",
    preChargedLength: "Length of line that the factory charge covers on this run.",
    chargeRate: "Added charge per length.",
    chargeAllowance: "Mass that the manual adds for this indoor unit, whatever the length.",
  },
};

export const DrainShape: Shape = {
  type: "Drain",
  fields: {
    "slope?": { either: [DrainSlope1Shape, DrainSlope2Shape, DrainSlope3Shape, DrainSlope4Shape] },
    "vertical?": "flag",
    "requiredSlope?": "ratio",
    "run?": "length",
    "route?": DrainRoute2Shape,
    "unitPitch?": {
      either: [DrainSlope1Shape, DrainSlope2Shape, DrainSlope3Shape, DrainSlope4Shape],
    },
    "pump?": DrainPumpShape,
    "waterRanOff?": "flag",
    "at?": "time",
  },
  says: "The condensate drain: slope where it runs off by itself, pump where it is lifted.",
  about: {
    slope: "Measured slope of the pipe.",
    vertical:
      "Whether the pipe falls straight down from the unit, so that it has no slope to measure.",
    requiredSlope: "The slope asked for; that of the codes when left out.",
    run: "Horizontal length.",
    route: "Where it runs.",
    unitPitch: "Measured pitch of the indoor unit towards its drain.",
    pump: "The pump and what it has to do.",
    waterRanOff: "Whether water that was poured into the pan came out where it should.",
    at: "When it was measured.",
  },
};

export const RoomShape: Shape = {
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
  says: "The smallest room into which the charge can leak.",
  about: {
    floorArea: "Floor area, for flammable refrigerants.",
    volume: "Volume, for the concentration limit.",
    ceilingHeight: "Height of the ceiling: holds area and volume against each other.",
    place: "Where the indoor unit is.",
    installationHeight: "Height of its underside, in place of the reference height.",
    edition: "Edition of the rule.",
    floorAreaAccuracy: "Limits of error of the floor area, ±.",
    volumeAccuracy: "Limits of error of the volume, ±.",
  },
};

export const RunShape: Shape = {
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
  says: "One run: a liquid and a vapor line between the outdoor unit, or a branch box, and what stands at their other end.",
  about: {
    name: "Its own name, by which tests and readings refer to it: living room, A.",
    port: "Port of the outdoor unit or branch box, as it is marked.",
    serves:
      "What stands at its end; an indoor unit when left out. A run to a branch box has no room and drain to ask for.",
    indoorUnits: "The indoor unit; several where branches of this run serve them together.",
    tubing: "The lines.",
    joints: "Every joint of the lines.",
    manual: "What the manual says of this run in place of what it says of all.",
    drain: "The condensate drain of its indoor unit.",
    room: "The smallest room into which refrigerant can leak at its indoor unit.",
  },
};

export const PressureTestPartRequirementShape: Shape = {
  type: "PressureTestPartRequirement",
  fields: {
    "pressure?": "gaugePressure",
    "hold?": "duration",
    "standing?": { words: ["common-practice", "adopted-code", "manufacturer"] },
  },
  says: "What a test has to reach where the manual does not say, and on whose word.",
  about: {
    pressure: "Least pressure of the test.",
    hold: "Shortest hold.",
    standing: "Where these figures come from.",
  },
};

export const PressureTestPartShape: Shape = {
  type: "PressureTestPart",
  fields: {
    "covers?": { list: "text" },
    "readings?": { list: PressureTestPartReadingsItemShape },
    "criterion?": { either: [PressureTestPartCriterion1Shape, PressureTestPartCriterion2Shape] },
    "requirement?": PressureTestPartRequirementShape,
    "wall?": { words: ["rigid", "copper", "aluminum"] },
    "at?": "time",
  },
  says: "A nitrogen test.",
  about: {
    covers: "Names of the runs that it covers; all of them when left out.",
    readings: "Two readings or more, in order. Three or more need elapsed.",
    criterion: "The limit that was stated; without one nothing passes.",
    requirement: "Pressure and hold where the manual says nothing.",
    wall: "What the walls are made of.",
    at: "When the last reading was taken.",
  },
};

export const EvacuationShape: Shape = {
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
    "leakLimit?": { either: ["throughput", "pressureRate"] },
    "isolation?": { words: ["isolation-valve", "hose-removed", "pump-valve"] },
    "hoses?": EvacuationHosesShape,
    "blankTest?": EvacuationBlankTestShape,
    "at?": "time",
  },
  says: "The watch after an evacuation.",
  about: {
    covers: "Names of the runs that it covers; all of them when left out.",
    readings: "The log since the pump was valved off.",
    policy: "Name of the acceptance policy, a key of acceptancePolicies.",
    ambient: "Temperature of the warmest part.",
    coldest: "Temperature of the coldest part.",
    leakLimit: "Largest leak that is accepted.",
    isolation:
      "How the pump was shut off; a pressure that falls or stays flat is believed only where it is known.",
    hoses: "Hoses within the isolated part.",
    blankTest: "What hoses and gauge did by themselves.",
    at: "When the last reading was taken.",
  },
};

export const ChargeShape: Shape = {
  type: "Charge",
  fields: {
    "added?": "mass",
    "tolerance?": "mass",
    "fedAs?": { words: ["liquid", "vapor"] },
    "at?": "time",
  },
  says: "What was weighed in.",
  about: {
    added: "Added to the factory charge; negative when taken out.",
    tolerance: "How far from the manual's figure is still right.",
    fedAs: "How it was fed: a blend is charged as liquid, or its make-up shifts.",
    at: "When.",
  },
};

export const ValvesShape: Shape = {
  type: "Valves",
  fields: { "openedAt?": "time" },
  says: "The service valves.",
  about: { openedAt: "When they were opened; the first of them, where there are several pairs." },
};

export const CircuitPlateShape: Shape = {
  type: "CircuitPlate",
  fields: {
    "minimumCircuitAmpacity?": "current",
    "maximumOvercurrentProtection?": "current",
    "protectionMarking?": {
      words: ["fuse only", "fuse or HACR breaker", "fuse or breaker", "max overcurrent protection"],
    },
    "ratedLoadCurrent?": "current",
  },
  says: "The plate of a unit that is fed by a circuit of its own, such as an air handler with a heater.",
  about: {
    minimumCircuitAmpacity: "Minimum circuit ampacity.",
    maximumOvercurrentProtection: "Largest overcurrent protection.",
    protectionMarking: "How the plate words it.",
    ratedLoadCurrent: "Sum of the rated-load currents that run together.",
  },
};

export const CircuitShape: Shape = {
  type: "Circuit",
  fields: {
    "name?": "text",
    "plate?": CircuitPlateShape,
    "feeds?": { words: ["other", "motor-compressor"] },
    "sharedWith?": { list: CircuitSharedWithItemShape },
    "earthing?": { words: ["TT", "TN"] },
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
    "at?": "time",
  },
  says: "A branch circuit.",
  about: {
    name: "What it feeds: outdoor unit, air handler.",
    plate: "The plate of what it feeds, where that is not the outdoor unit.",
    feeds: "What kind of unit it feeds.",
    sharedWith: "What else is on it; an empty list where it feeds nothing else.",
    earthing: "Earthing of the supply, under metric rules.",
    rules: "The adopted rules by name.",
    wiring: "How the cable runs.",
    installed: "What is fitted.",
    powerFactor: "Power factor while running.",
    occupancy: "Where it stands.",
    at: "When it was inspected.",
  },
};

export const SupplyPartShape: Shape = {
  type: "SupplyPart",
  fields: {
    "readings?": { list: { either: [SupplyPartReadingsItem1Shape, SupplyPartReadingsItem2Shape] } },
    "measuredAt?": { words: ["service", "unit"] },
    "standard?": { words: ["esqcr-2002", "iec-60038", "ansi-c84.1-2020", "japan-article-38"] },
    "unbalanceLimit?": "ratio",
    "at?": "time",
  },
  says: "The readings of the supply.",
  about: {
    readings: "One reading or a log.",
    measuredAt: "At the service entrance or at the unit.",
    standard: "The standard of the supply by name.",
    unbalanceLimit: "Largest voltage unbalance that the maker allows.",
    at: "When the first reading was taken, the unit being off.",
  },
};

export const PowerShape: Shape = {
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
        "600 V delta",
        "220/380 V",
        "200 V delta",
      ],
    },
    "circuits?": { list: CircuitShape },
    "supply?": SupplyPartShape,
    "energizedAt?": "time",
  },
  says: "Circuits, supply and the moment of power.",
  about: {
    voltage: "Nominal voltage between the conductors that feed the unit.",
    phases: "Phases that feed the unit.",
    system: "The service.",
    circuits: "The branch circuits: one, or one per unit with a supply of its own.",
    supply: "The readings of the supply.",
    energizedAt: "When the unit was first switched on.",
  },
};

export const ChargeReadingShape: Shape = {
  type: "ChargeReading",
  fields: {
    "pressure?": "gaugePressure",
    "lineTemperature?": "temperature",
    "pressureDrop?": "pressureDifference",
    "target?": "temperatureDifference",
    "tolerance?": "temperatureDifference",
  },
  says: "Superheat or subcooling of a unit that can be checked by it.",
  about: {
    pressure: "Gauge reading.",
    lineTemperature: "Line temperature.",
    pressureDrop: "Pressure lost between gauge and thermometer.",
    target: "What it should be.",
    tolerance: "How far from it is still right.",
  },
};

export const AirSideReadingShape: Shape = {
  type: "AirSideReading",
  fields: {
    "supplyAir?": "temperature",
    "least?": "temperatureDifference",
    "largest?": "temperatureDifference",
    "current?": "current",
    "fullSpeed?": "flag",
  },
  says: "Readings in the air and on the supply, for a unit on which no gauge belongs.",
  about: {
    supplyAir: "Air that leaves the indoor coil; what enters it is indoorTemperature.",
    least: "Least difference of the two that the manual asks for.",
    largest: "Largest difference of the two that the manual allows.",
    current: "Current of the outdoor unit.",
    fullSpeed: "Whether the compressor ran at its full speed, or in the test mode of the manual.",
  },
};

export const OperatingReadingShape: Shape = {
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
  says: "A set of readings on the running system.",
  about: {
    covers: "Names of the runs whose indoor units ran; all of them when left out.",
    mode: "What the unit did.",
    indoorTemperature: "Air that enters the indoor coil.",
    outdoorTemperature: "Air that enters the outdoor coil.",
    evaporatorApproach: "How far the evaporating temperature may lie below its air.",
    condenserApproach: "How far the condensing temperature may lie above its air.",
    pressure: "What the gauge shows.",
    port: "The port that it is on.",
    charge: "Superheat or subcooling.",
    airSide: "Air and current, in place of a gauge.",
    at: "When.",
  },
};

export const PhotoShape: Shape = {
  type: "Photo",
  fields: {
    reference: "text",
    "of?": "text",
    "caption?": "text",
    "at?": "time",
    "digest?": "text",
  },
  says: "A photo, by reference: the record holds no pictures.",
  about: {
    reference: "File name, address or key where the app keeps it.",
    of: "Path of the part of the record that it shows, such as runs[0].joints[0].",
    caption: "What is to be seen.",
    at: "When it was taken.",
    digest: "Digest of the file, such as sha-256:…, so that an exchanged picture shows.",
  },
};

export const SignatureShape: Shape = {
  type: "Signature",
  fields: { name: "text", "role?": "text", at: "time" },
  says: "A signature by name and time, as the caller states them. The library verifies neither.",
  about: { name: "Name of who signs.", role: "As what: installer, inspector, owner.", at: "When." },
};

export const AmendmentShape: Shape = {
  type: "Amendment",
  fields: {
    path: "path",
    "previous?": { at: "path" },
    "kind?": { words: ["correction", "rework"] },
    by: "text",
    at: "time",
    reason: "text",
  },
  says: "One change of a record. What was there before is kept in previous; without previous nothing was.",
  about: {
    path: "The field, part or list that changed, such as runs[0].tubing.length or waivers.",
    previous: "What stood there before; missing when nothing did.",
    kind: "Whether the record was wrong, or the work was done anew; a joint of which it is not said counts as made anew.",
    by: "Who changed it.",
    at: "When.",
    reason: "Why.",
  },
};

export const InstallationRecordShape: Shape = {
  type: "InstallationRecord",
  fields: {
    version: { words: [2] },
    "name?": "text",
    "site?": SiteShape,
    "onFile?": OnFileShape,
    "equipment?": EquipmentShape,
    "instruments?": InstrumentsShape,
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
  says: "The record of one refrigerant system: one outdoor unit and one or more runs. Every part, and every field of a part, may still be missing: a half-filled record is valid, and assessInstallation says what is missing.",
  about: {
    version: "Version of the format.",
    name: "Name of the job.",
    site: "Where it is.",
    onFile: "Equipment and instruments that are kept on file.",
    equipment: "What the plates and the manual say.",
    instruments: "What was measured with.",
    runs: "The runs of line: one per indoor unit or per pair of ports.",
    pressureTests: "The nitrogen tests: one for all runs, or several that together cover them.",
    evacuations:
      "The evacuations and the watch after each: one for all runs, or several that together cover them.",
    charge: "The refrigerant that was weighed in.",
    valves: "The service valves.",
    power: "Circuits and supply.",
    operation: "Readings on the running system, which together cover the runs.",
    waivers: "The steps that do not apply here, each by the word of a person; never a pass.",
    photos: "Photos.",
    signatures: "Signatures.",
    history: "What was changed afterwards, the oldest first; written by amend.",
  },
};

export const FilesShape: Shape = {
  type: "Files",
  fields: { "equipment?": { each: EquipmentShape }, "instruments?": { each: InstrumentsShape } },
  says: "Equipment and instruments by the names under which records refer to them.",
  about: {
    equipment: "Plates and manuals: one entry per model.",
    instruments: "Sets of instruments: one entry per bag.",
  },
};

export const CompleteRecordInputShape: Shape = {
  type: "CompleteRecordInput",
  fields: { record: InstallationRecordShape, files: FilesShape },
};

export const ChangeShape: Shape = {
  type: "Change",
  fields: {
    path: "text",
    "value?": "any",
    "kind?": { words: ["correction", "rework"] },
    by: "text",
    at: "time",
    reason: "text",
  },
  says: "A change to a record.",
  about: {
    path: "The field, part or item, such as runs[0].tubing.length or runs[0].joints[2]. The position after the last item adds one.",
    value: "What it becomes; nothing takes it out.",
    kind: "Whether only the record was wrong, or the work was done anew: then what was tested before proves nothing of it.",
    by: "Who changes it; a letter or a digit at least.",
    at: "When, by ISO 8601; not before the change before it.",
    reason: "Why; a letter or a digit at least.",
  },
};
