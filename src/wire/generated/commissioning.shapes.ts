// Which shapes have the types of commissioning?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { once } from "../../quantity/later.ts";
import type { Shape, StatementTable } from "../../shapes/index.ts";
import {
  NamedCheckOfChargeByGaugeAssessment2ReasonsItemShape,
  SafetyStatements,
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
import { CitationShape, NamedCheckOfChargeByGaugeAssessment2Shape } from "./refrigerants.shapes.ts";
import { SupplyVoltageAssessmentShape } from "./supply-voltage.shapes.ts";
import { VacuumDecayAssessmentShape } from "./vacuum-decay.shapes.ts";

export function PlacedShape(): Shape {
  return once(PlacedShape, () => ({
    type: "Placed",
    fields: {
      code: "text",
      values: {
        each: {
          either: [
            "quantity",
            VerbatimShape(),
            "text",
            "number",
            { list: { either: ["quantity", VerbatimShape(), "text", "number"] } },
          ],
        },
      },
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
    docs: {
      "": "A statement of a verdict on an installation, with the step and the part of the record of which it speaks.",
      code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
      values: "What stands in the sentence, by name.",
      step: "The step; missing where it is about the whole record.",
      part: "Path of the part, such as joints[0].",
    },
  }));
}

export function PlacedCautionShape(): Shape {
  return once(PlacedCautionShape, () => ({
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
            VerbatimShape(),
            "text",
            "number",
            { list: { either: ["quantity", VerbatimShape(), "text", "number"] } },
          ],
        },
      },
      "kind?": { words: ["finding", "danger", "governing"] },
    },
    docs: {
      "": "A caution with its place.",
      step: "The step; missing where it is about the whole record.",
      part: "Path of the part, such as joints[0].",
      code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
      values: "What stands in the sentence, by name.",
      kind: "Whether it is found in this case, can hurt someone, or governs.",
    },
  }));
}

export function StepNameShape(): Shape {
  return once(StepNameShape, () => ({
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
  }));
}

export function StepStateShape(): Shape {
  return once(StepStateShape, () => ({
    type: "StepState",
    words: ["done", "partial", "missing", "not-applicable"],
  }));
}

export function OptionalStepShape(): Shape {
  return once(OptionalStepShape, () => ({
    type: "OptionalStep",
    words: ["line-run", "joints", "room-limit", "drain"],
  }));
}

export function WaiverShape(): Shape {
  return once(WaiverShape, () => ({
    type: "Waiver",
    fields: {
      step: OptionalStepShape(),
      "reason?": {
        words: ["factory-line-set", "existing-lines", "no-enclosed-room", "heats-only"],
      },
      "run?": "text",
      "note?": "text",
      by: "text",
      at: "time",
    },
    docs: {
      "": "The word of a person that a step does not apply to this installation. It never makes the step pass: the assessment lists it among its first reasons and its assumptions.",
      step: "Which step.",
      reason:
        "Why it does not apply: one of the reasons that fit the step and the equipment; without one it does not count.",
      run: "Name of the run for which it holds; all of them when left out.",
      note: "More about it, in one's own words; kept, never judged.",
      by: "Name of who declares it; a letter or a digit at least.",
      at: "When.",
    },
  }));
}

export function CommissioningNotRecordedFieldsItemShape(): Shape {
  return once(CommissioningNotRecordedFieldsItemShape, () => ({
    type: "CommissioningNotRecordedFieldsItem",
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
      "commissioning.field.plan",
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
      "commissioning.field.power.supply.range",
      "commissioning.field.power.supply.standard",
      "commissioning.field.power.supply.readings",
      "commissioning.field.power.supply.measuredAt",
      "commissioning.field.power.supply.unbalanceLimit",
      "commissioning.field.power.supply.range.maximum",
      "commissioning.field.power.supply.range.minimum",
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
      "commissioning.field.power.circuits.nameplateReadAgain",
      "commissioning.field.power.circuits.feeds",
      "commissioning.field.power.circuits.sharedWith",
      "commissioning.field.power.circuits.earthing",
      "commissioning.field.power.circuits.occupancy",
      "commissioning.field.power.circuits.groundFaultText",
      "commissioning.field.power.circuits.verifications",
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
      "commissioning.field.power.circuits.installed.compressionFittings",
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
      "commissioning.field.power.circuits.plate.ratedCurrent",
      "commissioning.field.power.circuits.plate.maximumFuse",
      "commissioning.field.power.circuits.plate.protectionMarking",
      "commissioning.field.power.circuits.plate.ratedLoadCurrent",
      "commissioning.field.power.circuits.sharedWith.current",
      "commissioning.field.power.circuits.sharedWith.kind",
      "commissioning.field.power.circuits.sharedWith.maximumOvercurrentProtection",
      "commissioning.field.power.circuits.sharedWith.continuous",
      "commissioning.field.power.circuits.verifications.at",
      "commissioning.field.power.circuits.verifications.clause",
      "commissioning.field.power.circuits.verifications.by",
      "commissioning.field.power.circuits.verifications.complies",
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
      "commissioning.field.instruments.clampMeter.accuracyOfReading",
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
      "commissioning.field.equipment.ratedCurrent",
      "commissioning.field.equipment.maximumFuse",
      "commissioning.field.equipment.protectionMarking",
      "commissioning.field.equipment.ratedLoadCurrent",
      "commissioning.field.equipment.construction",
      "commissioning.field.equipment.duty",
      "commissioning.field.equipment.outdoorUnit",
      "commissioning.field.equipment.portPairs",
      "commissioning.field.equipment.factoryCharge",
      "commissioning.field.equipment.maximumCharge",
      "commissioning.field.equipment.lowestMarkedPressure",
      "commissioning.field.equipment.lockedRotorCurrent",
      "commissioning.field.equipment.ratedVoltages",
      "commissioning.field.equipment.voltageRange",
      "commissioning.field.equipment.meteringDevice",
      "commissioning.field.equipment.expansion",
      "commissioning.field.equipment.manual",
      "commissioning.field.equipment.outdoorUnit.capacity",
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
      "commissioning.field.equipment.manual.chargeAllowance",
      "commissioning.field.equipment.manual.leastConnected",
      "commissioning.field.equipment.manual.mostConnected",
      "commissioning.field.equipment.manual.linkCable",
      "commissioning.field.equipment.manual.maximumTotalLength",
      "commissioning.field.equipment.manual.maximumIndoorLift",
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
      "commissioning.field.plan.stock",
      "commissioning.field.plan.hold",
      "commissioning.field.plan.laterTemperature",
      "commissioning.field.plan.pump",
      "commissioning.field.plan.insulation",
      "commissioning.field.plan.cuttable",
      "commissioning.field.plan.slack",
      "commissioning.field.plan.serviceLoop",
      "commissioning.field.plan.drainDiameter",
      "commissioning.field.plan.cableDiameter",
      "commissioning.field.plan.fillTemperature",
      "commissioning.field.plan.warmest",
      "commissioning.field.plan.fillPressure",
      "commissioning.field.plan.leakRate",
      "commissioning.field.plan.cylinder",
      "commissioning.field.plan.cylinder.temperature",
      "commissioning.field.plan.cylinder.pressure",
      "commissioning.field.plan.cylinder.waterVolume",
      "commissioning.field.runs.room",
      "commissioning.field.runs.port",
      "commissioning.field.runs.joints",
      "commissioning.field.runs.drain",
      "commissioning.field.runs.name",
      "commissioning.field.runs.manual",
      "commissioning.field.runs.manual.run",
      "commissioning.field.runs.manual.preChargedLength",
      "commissioning.field.runs.manual.chargeRate",
      "commissioning.field.runs.manual.chargeAllowance",
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
      "commissioning.field.runs.joints.manualReadAgain",
      "commissioning.field.runs.joints.flareDiameter",
      "commissioning.field.runs.joints.nitrogenFlowed",
      "commissioning.field.runs.joints.inspected",
      "commissioning.field.runs.joints.torqueWindow.low",
      "commissioning.field.runs.joints.torqueWindow.high",
      "commissioning.field.runs.drain.at",
      "commissioning.field.runs.drain.fall",
      "commissioning.field.runs.drain.slope",
      "commissioning.field.runs.drain.run",
      "commissioning.field.runs.drain.pump",
      "commissioning.field.runs.drain.vertical",
      "commissioning.field.runs.drain.requiredSlope",
      "commissioning.field.runs.drain.panPressure",
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
      "commissioning.field.runs.indoorUnits.capacity",
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
      "commissioning.field.runs.tubing.way",
      "commissioning.field.runs.tubing.lengthIs",
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
      "commissioning.field.pressureTests.zoneShares",
      "commissioning.field.pressureTests.sinceFill",
      "commissioning.field.pressureTests.elsewhere",
      "commissioning.field.pressureTests.readings",
      "commissioning.field.pressureTests.readings.elapsed",
      "commissioning.field.pressureTests.covers",
      "commissioning.field.pressureTests.requirement",
      "commissioning.field.pressureTests.criterion.per",
      "commissioning.field.pressureTests.criterion.maximumDrop",
      "commissioning.field.pressureTests.criterion.maximumLeakRate",
      "commissioning.field.pressureTests.elsewhere.share",
      "commissioning.field.pressureTests.elsewhere.change",
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
      "commissioning.field.waivers.by",
      "commissioning.field.waivers.reason",
      "commissioning.field.waivers.note",
      "commissioning.field.photos.at",
      "commissioning.field.photos.reference",
      "commissioning.field.photos.of",
      "commissioning.field.photos.caption",
      "commissioning.field.photos.digest",
      "commissioning.field.signatures.at",
      "commissioning.field.signatures.name",
      "commissioning.field.signatures.role",
      "commissioning.field.history.at",
      "commissioning.field.history.by",
      "commissioning.field.history.kind",
      "commissioning.field.history.reason",
      "commissioning.field.history.path",
      "commissioning.field.history.previous",
    ],
  }));
}

export function CommissioningWaiverShape(): Shape {
  return once(CommissioningWaiverShape, () => ({
    type: "CommissioningWaiver",
    words: [
      "commissioning.waiver.factory-line-set",
      "commissioning.waiver.existing-lines",
      "commissioning.waiver.no-enclosed-room",
      "commissioning.waiver.heats-only",
    ],
  }));
}

export function CommissioningConstructionShape(): Shape {
  return once(CommissioningConstructionShape, () => ({
    type: "CommissioningConstruction",
    words: ["commissioning.construction.quick-connect", "commissioning.construction.monobloc"],
  }));
}

export function CommissioningHoldShape(): Shape {
  return once(CommissioningHoldShape, () => ({
    type: "CommissioningHold",
    words: [
      "commissioning.hold.open-valves",
      "commissioning.hold.add-charge",
      "commissioning.hold.power-on",
    ],
  }));
}

export function CommissioningStepShape(): Shape {
  return once(CommissioningStepShape, () => ({
    type: "CommissioningStep",
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
  }));
}

export function CommissioningLineShape(): Shape {
  return once(CommissioningLineShape, () => ({
    type: "CommissioningLine",
    words: ["commissioning.line.liquid", "commissioning.line.vapor"],
  }));
}

export function CommissioningStandingShape(): Shape {
  return once(CommissioningStandingShape, () => ({
    type: "CommissioningStanding",
    words: [
      "commissioning.standing.common-practice",
      "commissioning.standing.adopted-code",
      "commissioning.standing.manufacturer",
    ],
  }));
}

export function CommissioningModeShape(): Shape {
  return once(CommissioningModeShape, () => ({
    type: "CommissioningMode",
    words: ["commissioning.mode.cooling", "commissioning.mode.heating"],
  }));
}

export function CommissioningStatements(): StatementTable {
  return once(CommissioningStatements, () => ({
    "commissioning.above-marked-pressure": { pressure: "gaugePressure", limit: "gaugePressure" },
    "commissioning.above-maximum-charge": { total: "mass", most: "mass" },
    "commissioning.added-large": { added: "mass", charge: "mass" },
    "commissioning.air-difference-outside": {
      mode: CommissioningModeShape(),
      difference: "temperatureDifference",
      low: "temperatureDifference",
      high: "temperatureDifference",
    },
    "commissioning.air-difference-too-close": {
      mode: CommissioningModeShape(),
      difference: "temperatureDifference",
      low: "temperatureDifference",
      high: "temperatureDifference",
    },
    "commissioning.air-difference-within": {
      mode: CommissioningModeShape(),
      difference: "temperatureDifference",
      low: "temperatureDifference",
      high: "temperatureDifference",
    },
    "commissioning.air-proves-no-charge": {},
    "commissioning.air-the-other-way": {
      mode: CommissioningModeShape(),
      difference: "temperatureDifference",
    },
    "commissioning.allowed-drop-large": { limit: "pressureDifference" },
    "commissioning.altitude-odd": { altitude: "length" },
    "commissioning.amended": { fields: { list: CommissioningNotRecordedFieldsItemShape() } },
    "commissioning.amended-before-work": {
      first: VerbatimShape(),
      fields: { list: CommissioningNotRecordedFieldsItemShape() },
    },
    "commissioning.area-odd": {
      field: CommissioningNotRecordedFieldsItemShape(),
      value: "area",
      low: "area",
      high: "area",
    },
    "commissioning.barometer-in-hectopascal": {
      atmosphere: "absolutePressure",
      altitude: "length",
      usual: "absolutePressure",
    },
    "commissioning.barometer-odd": {
      atmosphere: "absolutePressure",
      altitude: "length",
      usual: "absolutePressure",
    },
    "commissioning.begun-before-work": { read: VerbatimShape(), at: VerbatimShape() },
    "commissioning.blend-fed-as-liquid": {},
    "commissioning.blend-fed-as-vapor": {},
    "commissioning.brazed-with-nitrogen": {},
    "commissioning.brazed-without-nitrogen": {},
    "commissioning.bring-indoor-units-closer": { most: "length" },
    "commissioning.cable-short": { length: "length" },
    "commissioning.calibrated-afterwards": {
      instrument: CommissioningNotRecordedFieldsItemShape(),
      on: VerbatimShape(),
      at: VerbatimShape(),
    },
    "commissioning.calibration-expired": {
      instrument: CommissioningNotRecordedFieldsItemShape(),
      due: VerbatimShape(),
      at: VerbatimShape(),
    },
    "commissioning.calibration-taken-for-granted": {
      fields: { list: CommissioningNotRecordedFieldsItemShape() },
    },
    "commissioning.capacity-odd": { capacity: "power", rated: "current", voltage: "voltage" },
    "commissioning.ceiling-odd": { height: "length", low: "length", high: "length" },
    "commissioning.circuit-long-before": {
      circuit: VerbatimShape(),
      first: VerbatimShape(),
      field: CommissioningNotRecordedFieldsItemShape(),
    },
    "commissioning.clear-drain": {},
    "commissioning.connect-less": { limit: "power" },
    "commissioning.connect-more": { limit: "power" },
    "commissioning.connected-above": { total: "power", limit: "power" },
    "commissioning.connected-below": { total: "power", limit: "power" },
    "commissioning.connected-enough": { total: "power", limit: "power" },
    "commissioning.connected-within": { total: "power", limit: "power" },
    "commissioning.construction-contradicted": {
      construction: CommissioningConstructionShape(),
      field: CommissioningNotRecordedFieldsItemShape(),
    },
    "commissioning.correct-charge": { asked: "mass", tolerance: "mass" },
    "commissioning.correct-construction": {},
    "commissioning.correct-field": { field: CommissioningNotRecordedFieldsItemShape() },
    "commissioning.cover-run": {
      run: { either: ["quantity", VerbatimShape(), "text", "number"] },
      step: CommissioningStepShape(),
    },
    "commissioning.current-above-plate": {
      current: "current",
      most: "current",
      field: CommissioningNotRecordedFieldsItemShape(),
    },
    "commissioning.current-odd": {
      current: "current",
      rated: "current",
      field: CommissioningNotRecordedFieldsItemShape(),
    },
    "commissioning.current-too-close": {
      current: "current",
      most: "current",
      field: CommissioningNotRecordedFieldsItemShape(),
    },
    "commissioning.current-unusual": {
      current: "current",
      rated: "current",
      field: CommissioningNotRecordedFieldsItemShape(),
      low: "current",
    },
    "commissioning.current-within": {
      current: "current",
      most: "current",
      field: CommissioningNotRecordedFieldsItemShape(),
    },
    "commissioning.current-within-deviation": {
      current: "current",
      most: "current",
      field: CommissioningNotRecordedFieldsItemShape(),
    },
    "commissioning.done-before-proof": {
      hold: CommissioningHoldShape(),
      at: VerbatimShape(),
      proof: VerbatimShape(),
    },
    "commissioning.done-without-proof": {
      hold: CommissioningHoldShape(),
      steps: { list: CommissioningStepShape() },
    },
    "commissioning.drain-fall": { fall: "length", needed: "length" },
    "commissioning.drain-falls-straight": {},
    "commissioning.drain-steep": { slope: "ratio", usual: "ratio" },
    "commissioning.entered-twice": {
      field: CommissioningNotRecordedFieldsItemShape(),
      value: VerbatimShape(),
    },
    "commissioning.exact-scale": {},
    "commissioning.factory-charge-is-maximum": { charge: "mass", most: "mass" },
    "commissioning.factory-charge-odd": {
      charge: "mass",
      capacity: "power",
      low: "mass",
      high: "mass",
    },
    "commissioning.falls-away": { construction: CommissioningConstructionShape() },
    "commissioning.fewer-joints-than-ends": { count: "number" },
    "commissioning.finish-first": {
      hold: CommissioningHoldShape(),
      steps: { list: CommissioningStepShape() },
    },
    "commissioning.grounding-thick": { grounding: VerbatimShape(), conductor: VerbatimShape() },
    "commissioning.heed-drain": {},
    "commissioning.heed-gauges": {},
    "commissioning.heed-nitrogen": {},
    "commissioning.heed-refrigerant": {},
    "commissioning.heed-voltage": {},
    "commissioning.held": {
      hold: CommissioningHoldShape(),
      steps: { list: CommissioningStepShape() },
    },
    "commissioning.held-long-enough": { held: "duration", required: "duration" },
    "commissioning.held-too-short": { held: "duration", required: "duration" },
    "commissioning.hold-longer": { required: "duration" },
    "commissioning.indoor-lift-above": { lift: "length", most: "length" },
    "commissioning.indoor-lift-too-close": { lift: "length", most: "length" },
    "commissioning.indoor-lift-within": { lift: "length", most: "length" },
    "commissioning.instrument-coarse": {
      fields: { list: CommissioningNotRecordedFieldsItemShape() },
    },
    "commissioning.instrument-unknown": {
      fields: { list: CommissioningNotRecordedFieldsItemShape() },
    },
    "commissioning.instrument-without-error": {
      fields: { list: CommissioningNotRecordedFieldsItemShape() },
    },
    "commissioning.joint-defect": {},
    "commissioning.joint-inspected": {},
    "commissioning.joint-recorded-twice": {
      joints: { list: { either: [VerbatimShape(), "number"] } },
    },
    "commissioning.joints-complete": { count: "number" },
    "commissioning.joints-incomplete": { recorded: "number", count: "number" },
    "commissioning.joints-undated": { joints: { list: { either: [VerbatimShape(), "number"] } } },
    "commissioning.left-to-verify": { steps: { list: CommissioningStepShape() } },
    "commissioning.length-odd": {
      field: CommissioningNotRecordedFieldsItemShape(),
      value: "length",
      low: "length",
      high: "length",
    },
    "commissioning.lift-above-length": { lift: "length", length: "length" },
    "commissioning.line-other-than-port": {
      line: CommissioningLineShape(),
      diameter: "length",
      port: VerbatimShape(),
    },
    "commissioning.line-with-adapter": {
      line: CommissioningLineShape(),
      diameter: "length",
      port: VerbatimShape(),
    },
    "commissioning.lines-swapped": { liquid: "length", vapor: "length" },
    "commissioning.log-copied": {},
    "commissioning.lower-drain": {},
    "commissioning.lower-pressure": { limit: "gaugePressure" },
    "commissioning.manual-silent": { standing: CommissioningStandingShape() },
    "commissioning.mass-odd": {
      field: CommissioningNotRecordedFieldsItemShape(),
      value: "mass",
      low: "mass",
      high: "mass",
    },
    "commissioning.measure-runs-better": {},
    "commissioning.near-maximum-charge": { total: "mass", most: "mass" },
    "commissioning.no-flare-of-line": {
      line: CommissioningLineShape(),
      diameter: "length",
      tubes: { list: VerbatimShape() },
    },
    "commissioning.not-at-full-speed": {},
    "commissioning.not-recorded": { fields: { list: CommissioningNotRecordedFieldsItemShape() } },
    "commissioning.not-signed": {},
    "commissioning.nothing-added": {},
    "commissioning.older-than-a-year": {
      fields: { list: CommissioningNotRecordedFieldsItemShape() },
      field: CommissioningNotRecordedFieldsItemShape(),
      at: VerbatimShape(),
    },
    "commissioning.older-than-work": { read: VerbatimShape(), at: VerbatimShape() },
    "commissioning.opened-long-after-evacuation": {
      opened: VerbatimShape(),
      evacuated: VerbatimShape(),
    },
    "commissioning.order-not-shown": { hold: CommissioningHoldShape() },
    "commissioning.pass-rules": { rules: VerbatimShape() },
    "commissioning.pass-what-is-on-file": {},
    "commissioning.power-odd": {
      field: CommissioningNotRecordedFieldsItemShape(),
      value: "power",
      low: "power",
      high: "power",
    },
    "commissioning.pre-charged-above-longest": { preCharged: "length", longest: "length" },
    "commissioning.pressure-odd": {
      field: CommissioningNotRecordedFieldsItemShape(),
      value: "gaugePressure",
      low: "gaugePressure",
      high: "gaugePressure",
    },
    "commissioning.protection-far-above-ampacity": { protection: "current", ampacity: "current" },
    "commissioning.put-right": { hold: CommissioningHoldShape() },
    "commissioning.rated-above-ampacity": { rated: "current", ampacity: "current" },
    "commissioning.rated-as-ampacity": { rated: "current" },
    "commissioning.read-air-again": {},
    "commissioning.read-current-again": {},
    "commissioning.read-vacuum-again": {},
    "commissioning.record-each-joint": { count: "number" },
    "commissioning.record-fields": { fields: { list: CommissioningNotRecordedFieldsItemShape() } },
    "commissioning.recover-and-charge-anew": {},
    "commissioning.recover-down-to": { most: "mass" },
    "commissioning.released": { hold: CommissioningHoldShape() },
    "commissioning.released-by-declaration": {
      hold: CommissioningHoldShape(),
      steps: { list: CommissioningStepShape() },
    },
    "commissioning.remake-joint": {},
    "commissioning.repeat-step": { step: CommissioningStepShape() },
    "commissioning.rework-not-ordered": { read: VerbatimShape(), at: VerbatimShape() },
    "commissioning.room-height-odd": { height: "length", low: "length", high: "length" },
    "commissioning.rules-not-passed": { rules: VerbatimShape() },
    "commissioning.run-at-full-speed": {},
    "commissioning.run-not-covered": {
      run: { either: ["quantity", VerbatimShape(), "text", "number"] },
    },
    "commissioning.see-filter-and-fan": {},
    "commissioning.see-joints-of-line": { line: CommissioningLineShape() },
    "commissioning.see-which-line": {},
    "commissioning.shorten-runs": { most: "length" },
    "commissioning.signed-before-change": {
      fields: { list: CommissioningNotRecordedFieldsItemShape() },
      name: VerbatimShape(),
      at: VerbatimShape(),
    },
    "commissioning.stands-outdoors": {},
    "commissioning.state-air-difference": {},
    "commissioning.state-times": { hold: CommissioningHoldShape() },
    "commissioning.state-tolerance": {},
    "commissioning.stop-and-find-current": {},
    "commissioning.temperature-odd": {
      field: CommissioningNotRecordedFieldsItemShape(),
      value: "temperature",
      low: "temperature",
      high: "temperature",
    },
    "commissioning.temperatures-apart": {
      test: "temperature",
      evacuation: "temperature",
      usual: "temperatureDifference",
    },
    "commissioning.test-below-refrigerant": {
      pressure: "gaugePressure",
      own: "gaugePressure",
      refrigerant: VerbatimShape(),
      temperature: "temperature",
    },
    "commissioning.test-higher": { limit: "gaugePressure" },
    "commissioning.test-pressure-reached": { pressure: "gaugePressure", limit: "gaugePressure" },
    "commissioning.test-pressure-too-low": { pressure: "gaugePressure", limit: "gaugePressure" },
    "commissioning.tested-again": { step: CommissioningStepShape(), tests: "number" },
    "commissioning.tolerance-too-wide": { tolerance: "mass", whole: "mass" },
    "commissioning.too-few-entries": {
      field: CommissioningNotRecordedFieldsItemShape(),
      count: "number",
      limit: "number",
    },
    "commissioning.too-many-entries": {
      field: CommissioningNotRecordedFieldsItemShape(),
      count: "number",
      limit: "number",
    },
    "commissioning.total-as-added": { added: "mass" },
    "commissioning.total-length-above": { total: "length", most: "length" },
    "commissioning.total-length-too-close": { total: "length", most: "length" },
    "commissioning.total-length-within": { total: "length", most: "length" },
    "commissioning.unit-high": { height: "length", usual: "length" },
    "commissioning.unit-unknown": {},
    "commissioning.unknown-run": { run: VerbatimShape() },
    "commissioning.unusable-part": { field: CommissioningNotRecordedFieldsItemShape() },
    "commissioning.unusable-value": {
      field: CommissioningNotRecordedFieldsItemShape(),
      value: { either: ["quantity", VerbatimShape(), "number"] },
    },
    "commissioning.usual-air-difference": {
      low: "temperatureDifference",
      high: "temperatureDifference",
    },
    "commissioning.value-not-above": {
      field: CommissioningNotRecordedFieldsItemShape(),
      value: { either: ["quantity", "number"] },
      limit: { either: ["quantity", "number"] },
    },
    "commissioning.value-not-below": {
      field: CommissioningNotRecordedFieldsItemShape(),
      value: { either: ["quantity", "number"] },
      limit: { either: ["quantity", "number"] },
    },
    "commissioning.value-too-high": {
      field: CommissioningNotRecordedFieldsItemShape(),
      value: { either: ["quantity", "number"] },
      limit: { either: ["quantity", "number"] },
    },
    "commissioning.value-too-low": {
      field: CommissioningNotRecordedFieldsItemShape(),
      value: { either: ["quantity", "number"] },
      limit: { either: ["quantity", "number"] },
    },
    "commissioning.valves-opened": { at: VerbatimShape() },
    "commissioning.voltage-odd": {
      field: CommissioningNotRecordedFieldsItemShape(),
      value: "voltage",
      low: "voltage",
      high: "voltage",
    },
    "commissioning.volume-odd": {
      field: CommissioningNotRecordedFieldsItemShape(),
      value: "volume",
      low: "volume",
      high: "volume",
    },
    "commissioning.waived": {
      by: VerbatimShape(),
      at: VerbatimShape(),
      why: CommissioningWaiverShape(),
    },
    "commissioning.waived-by-nobody": {},
    "commissioning.waived-for-run": {
      run: VerbatimShape(),
      by: VerbatimShape(),
      at: VerbatimShape(),
      why: CommissioningWaiverShape(),
    },
    "commissioning.waived-twice": {},
    "commissioning.waiver-contradicted": { field: CommissioningNotRecordedFieldsItemShape() },
    "commissioning.waiver-does-not-fit": {
      reason: CommissioningWaiverShape(),
      fits: CommissioningWaiverShape(),
    },
    "commissioning.waiver-needs-a1": {},
    "commissioning.waiver-needs-heating-only": {},
    "commissioning.waiver-without-reason": { fits: CommissioningWaiverShape() },
    "commissioning.water-did-not-drain": {},
    "commissioning.water-drained": {},
    "commissioning.weather-unusual": { mode: CommissioningModeShape(), outdoor: "temperature" },
    "commissioning.weigh-better": {},
    "commissioning.weighed-outside": { added: "mass", tolerance: "mass", asked: "mass" },
    "commissioning.weighed-too-close": { added: "mass", tolerance: "mass", asked: "mass" },
    "commissioning.weighed-within": { added: "mass", tolerance: "mass", asked: "mass" },
    "commissioning.withdraw-waiver": {},
    "commissioning.within-marked-pressure": { pressure: "gaugePressure", limit: "gaugePressure" },
    "commissioning.zones-mixed": {},
  }));
}

export function OwnVerdictReasonsItemShape(): Shape {
  return once(OwnVerdictReasonsItemShape, () => ({
    type: "OwnVerdictReasonsItem",
    statements: [SafetyStatements(), CommissioningStatements()],
  }));
}

export function OwnVerdictCautionsItemShape(): Shape {
  return once(OwnVerdictCautionsItemShape, () => ({
    type: "OwnVerdictCautionsItem",
    statements: [SafetyStatements(), CommissioningStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function OwnVerdictShape(): Shape {
  return once(OwnVerdictShape, () => ({
    type: "OwnVerdict",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      reasons: { list: OwnVerdictReasonsItemShape() },
      assumptions: { list: OwnVerdictReasonsItemShape() },
      cautions: { list: OwnVerdictCautionsItemShape() },
      "actions?": { list: OwnVerdictReasonsItemShape() },
      sources: { list: CitationShape() },
    },
    docs: {
      "": "The verdict of a check that this module makes by itself.",
      outcome: "Proven good, proven bad, or inconclusive.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
    },
  }));
}

export function NamedCheckOfRulesShape(): Shape {
  return once(NamedCheckOfRulesShape, () => ({
    type: "NamedCheckOfRules",
    fields: { name: { words: ["rules"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfLineRunShape(): Shape {
  return once(NamedCheckOfLineRunShape, () => ({
    type: "NamedCheckOfLineRun",
    fields: { name: { words: ["line-run"] }, path: "text", assessment: LineRunAssessmentShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfPressureTestShape(): Shape {
  return once(NamedCheckOfPressureTestShape, () => ({
    type: "NamedCheckOfPressureTest",
    fields: {
      name: { words: ["pressure-test"] },
      path: "text",
      assessment: { either: [LogAssessmentShape(), TwoReadingAssessmentShape()] },
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfCircuitShape(): Shape {
  return once(NamedCheckOfCircuitShape, () => ({
    type: "NamedCheckOfCircuit",
    fields: {
      name: { words: ["circuit"] },
      path: "text",
      assessment: CircuitFromNameplateResultShape(),
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfLineSizesShape(): Shape {
  return once(NamedCheckOfLineSizesShape, () => ({
    type: "NamedCheckOfLineSizes",
    fields: { name: { words: ["line-sizes"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfTotalLengthShape(): Shape {
  return once(NamedCheckOfTotalLengthShape, () => ({
    type: "NamedCheckOfTotalLength",
    fields: { name: { words: ["total-length"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfIndoorLiftShape(): Shape {
  return once(NamedCheckOfIndoorLiftShape, () => ({
    type: "NamedCheckOfIndoorLift",
    fields: { name: { words: ["indoor-lift"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfConnectedUnitsShape(): Shape {
  return once(NamedCheckOfConnectedUnitsShape, () => ({
    type: "NamedCheckOfConnectedUnits",
    fields: { name: { words: ["connected-units"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfFlareTorqueShape(): Shape {
  return once(NamedCheckOfFlareTorqueShape, () => ({
    type: "NamedCheckOfFlareTorque",
    fields: {
      name: { words: ["flare-torque"] },
      path: "text",
      assessment: FlareTorqueAssessmentShape(),
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfFlareTurnShape(): Shape {
  return once(NamedCheckOfFlareTurnShape, () => ({
    type: "NamedCheckOfFlareTurn",
    fields: {
      name: { words: ["flare-turn"] },
      path: "text",
      assessment: FlareAssessmentOfAngleFlareTorqueCauseShape(),
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfFlareDiameterShape(): Shape {
  return once(NamedCheckOfFlareDiameterShape, () => ({
    type: "NamedCheckOfFlareDiameter",
    fields: {
      name: { words: ["flare-diameter"] },
      path: "text",
      assessment: FlareAssessmentOfLengthFlareDiameterCauseShape(),
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfFlareWallShape(): Shape {
  return once(NamedCheckOfFlareWallShape, () => ({
    type: "NamedCheckOfFlareWall",
    fields: {
      name: { words: ["flare-wall"] },
      path: "text",
      assessment: FlareAssessmentOfLengthWallTooThinShape(),
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfBrazedJointShape(): Shape {
  return once(NamedCheckOfBrazedJointShape, () => ({
    type: "NamedCheckOfBrazedJoint",
    fields: { name: { words: ["brazed-joint"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfPressedJointShape(): Shape {
  return once(NamedCheckOfPressedJointShape, () => ({
    type: "NamedCheckOfPressedJoint",
    fields: { name: { words: ["pressed-joint"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfCouplingJointShape(): Shape {
  return once(NamedCheckOfCouplingJointShape, () => ({
    type: "NamedCheckOfCouplingJoint",
    fields: { name: { words: ["coupling-joint"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfJointInspectedShape(): Shape {
  return once(NamedCheckOfJointInspectedShape, () => ({
    type: "NamedCheckOfJointInspected",
    fields: { name: { words: ["joint-inspected"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfJointCountShape(): Shape {
  return once(NamedCheckOfJointCountShape, () => ({
    type: "NamedCheckOfJointCount",
    fields: { name: { words: ["joint-count"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfJointSizesShape(): Shape {
  return once(NamedCheckOfJointSizesShape, () => ({
    type: "NamedCheckOfJointSizes",
    fields: { name: { words: ["joint-sizes"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfTestHoldShape(): Shape {
  return once(NamedCheckOfTestHoldShape, () => ({
    type: "NamedCheckOfTestHold",
    fields: { name: { words: ["test-hold"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfMarkedPressureShape(): Shape {
  return once(NamedCheckOfMarkedPressureShape, () => ({
    type: "NamedCheckOfMarkedPressure",
    fields: { name: { words: ["marked-pressure"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfTestPressureShape(): Shape {
  return once(NamedCheckOfTestPressureShape, () => ({
    type: "NamedCheckOfTestPressure",
    fields: { name: { words: ["test-pressure"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfVacuumDecayShape(): Shape {
  return once(NamedCheckOfVacuumDecayShape, () => ({
    type: "NamedCheckOfVacuumDecay",
    fields: {
      name: { words: ["vacuum-decay"] },
      path: "text",
      assessment: VacuumDecayAssessmentShape(),
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfOrderShape(): Shape {
  return once(NamedCheckOfOrderShape, () => ({
    type: "NamedCheckOfOrder",
    fields: { name: { words: ["order"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfRoomChargeShape(): Shape {
  return once(NamedCheckOfRoomChargeShape, () => ({
    type: "NamedCheckOfRoomCharge",
    fields: {
      name: { words: ["room-charge"] },
      path: "text",
      assessment: RoomChargeAssessmentShape(),
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfRoomConcentrationShape(): Shape {
  return once(NamedCheckOfRoomConcentrationShape, () => ({
    type: "NamedCheckOfRoomConcentration",
    fields: {
      name: { words: ["room-concentration"] },
      path: "text",
      assessment: ConcentrationAssessmentShape(),
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfAdditionalChargeShape(): Shape {
  return once(NamedCheckOfAdditionalChargeShape, () => ({
    type: "NamedCheckOfAdditionalCharge",
    fields: {
      name: { words: ["additional-charge"] },
      path: "text",
      assessment: ChargeAssessmentShape(),
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfChargeRateShape(): Shape {
  return once(NamedCheckOfChargeRateShape, () => ({
    type: "NamedCheckOfChargeRate",
    fields: {
      name: { words: ["charge-rate"] },
      path: "text",
      assessment: LiquidChargePlausibilityShape(),
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfWeighedChargeShape(): Shape {
  return once(NamedCheckOfWeighedChargeShape, () => ({
    type: "NamedCheckOfWeighedCharge",
    fields: { name: { words: ["weighed-charge"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfFedAsLiquidShape(): Shape {
  return once(NamedCheckOfFedAsLiquidShape, () => ({
    type: "NamedCheckOfFedAsLiquid",
    fields: { name: { words: ["fed-as-liquid"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfValvesOpenedShape(): Shape {
  return once(NamedCheckOfValvesOpenedShape, () => ({
    type: "NamedCheckOfValvesOpened",
    fields: { name: { words: ["valves-opened"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfSupplyVoltageShape(): Shape {
  return once(NamedCheckOfSupplyVoltageShape, () => ({
    type: "NamedCheckOfSupplyVoltage",
    fields: {
      name: { words: ["supply-voltage"] },
      path: "text",
      assessment: SupplyVoltageAssessmentShape(),
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfDrainSlopeShape(): Shape {
  return once(NamedCheckOfDrainSlopeShape, () => ({
    type: "NamedCheckOfDrainSlope",
    fields: {
      name: { words: ["drain-slope"] },
      path: "text",
      assessment: { either: [DrainSlopeAssessmentShape(), OwnVerdictShape()] },
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfCondensatePumpShape(): Shape {
  return once(NamedCheckOfCondensatePumpShape, () => ({
    type: "NamedCheckOfCondensatePump",
    fields: {
      name: { words: ["condensate-pump"] },
      path: "text",
      assessment: CondensatePumpAssessmentShape(),
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfUnitPitchShape(): Shape {
  return once(NamedCheckOfUnitPitchShape, () => ({
    type: "NamedCheckOfUnitPitch",
    fields: {
      name: { words: ["unit-pitch"] },
      path: "text",
      assessment: IndoorUnitPitchAssessmentShape(),
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfWaterDrainedShape(): Shape {
  return once(NamedCheckOfWaterDrainedShape, () => ({
    type: "NamedCheckOfWaterDrained",
    fields: { name: { words: ["water-drained"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfServiceReadingShape(): Shape {
  return once(NamedCheckOfServiceReadingShape, () => ({
    type: "NamedCheckOfServiceReading",
    fields: {
      name: { words: ["service-reading"] },
      path: "text",
      assessment: ServiceReadingAssessmentShape(),
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfChargeByGaugeShape(): Shape {
  return once(NamedCheckOfChargeByGaugeShape, () => ({
    type: "NamedCheckOfChargeByGauge",
    fields: {
      name: { words: ["charge-by-gauge"] },
      path: "text",
      assessment: {
        either: [ChargeByGaugeAssessmentShape(), NamedCheckOfChargeByGaugeAssessment2Shape()],
      },
    },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfAirDifferenceShape(): Shape {
  return once(NamedCheckOfAirDifferenceShape, () => ({
    type: "NamedCheckOfAirDifference",
    fields: { name: { words: ["air-difference"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfRunningCurrentShape(): Shape {
  return once(NamedCheckOfRunningCurrentShape, () => ({
    type: "NamedCheckOfRunningCurrent",
    fields: { name: { words: ["running-current"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfCoverageShape(): Shape {
  return once(NamedCheckOfCoverageShape, () => ({
    type: "NamedCheckOfCoverage",
    fields: { name: { words: ["coverage"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfPlausibilityShape(): Shape {
  return once(NamedCheckOfPlausibilityShape, () => ({
    type: "NamedCheckOfPlausibility",
    fields: { name: { words: ["plausibility"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function NamedCheckOfWaiverShape(): Shape {
  return once(NamedCheckOfWaiverShape, () => ({
    type: "NamedCheckOfWaiver",
    fields: { name: { words: ["waiver"] }, path: "text", assessment: OwnVerdictShape() },
    docs: {
      "": "The check of one name.",
      name: "What was checked.",
      path: "Path of the part of the record that was checked.",
      assessment: "The verdict of the module, with all its own figures.",
    },
  }));
}

export function StepCheckShape(): Shape {
  return once(StepCheckShape, () => ({
    type: "StepCheck",
    by: "name",
    cases: {
      rules: NamedCheckOfRulesShape(),
      "line-run": NamedCheckOfLineRunShape(),
      "pressure-test": NamedCheckOfPressureTestShape(),
      circuit: NamedCheckOfCircuitShape(),
      "line-sizes": NamedCheckOfLineSizesShape(),
      "total-length": NamedCheckOfTotalLengthShape(),
      "indoor-lift": NamedCheckOfIndoorLiftShape(),
      "connected-units": NamedCheckOfConnectedUnitsShape(),
      "flare-torque": NamedCheckOfFlareTorqueShape(),
      "flare-turn": NamedCheckOfFlareTurnShape(),
      "flare-diameter": NamedCheckOfFlareDiameterShape(),
      "flare-wall": NamedCheckOfFlareWallShape(),
      "brazed-joint": NamedCheckOfBrazedJointShape(),
      "pressed-joint": NamedCheckOfPressedJointShape(),
      "coupling-joint": NamedCheckOfCouplingJointShape(),
      "joint-inspected": NamedCheckOfJointInspectedShape(),
      "joint-count": NamedCheckOfJointCountShape(),
      "joint-sizes": NamedCheckOfJointSizesShape(),
      "test-hold": NamedCheckOfTestHoldShape(),
      "marked-pressure": NamedCheckOfMarkedPressureShape(),
      "test-pressure": NamedCheckOfTestPressureShape(),
      "vacuum-decay": NamedCheckOfVacuumDecayShape(),
      order: NamedCheckOfOrderShape(),
      "room-charge": NamedCheckOfRoomChargeShape(),
      "room-concentration": NamedCheckOfRoomConcentrationShape(),
      "additional-charge": NamedCheckOfAdditionalChargeShape(),
      "charge-rate": NamedCheckOfChargeRateShape(),
      "weighed-charge": NamedCheckOfWeighedChargeShape(),
      "fed-as-liquid": NamedCheckOfFedAsLiquidShape(),
      "valves-opened": NamedCheckOfValvesOpenedShape(),
      "supply-voltage": NamedCheckOfSupplyVoltageShape(),
      "drain-slope": NamedCheckOfDrainSlopeShape(),
      "condensate-pump": NamedCheckOfCondensatePumpShape(),
      "unit-pitch": NamedCheckOfUnitPitchShape(),
      "water-drained": NamedCheckOfWaterDrainedShape(),
      "service-reading": NamedCheckOfServiceReadingShape(),
      "charge-by-gauge": NamedCheckOfChargeByGaugeShape(),
      "air-difference": NamedCheckOfAirDifferenceShape(),
      "running-current": NamedCheckOfRunningCurrentShape(),
      coverage: NamedCheckOfCoverageShape(),
      plausibility: NamedCheckOfPlausibilityShape(),
      waiver: NamedCheckOfWaiverShape(),
    },
  }));
}

export function CheckNameShape(): Shape {
  return once(CheckNameShape, () => ({
    type: "CheckName",
    words: [
      "line-run",
      "line-sizes",
      "total-length",
      "indoor-lift",
      "connected-units",
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
  }));
}

export function CommissioningStatementShape(): Shape {
  return once(CommissioningStatementShape, () => ({
    type: "CommissioningStatement",
    statements: [CommissioningStatements()],
  }));
}

export function StepProblemShape(): Shape {
  return once(StepProblemShape, () => ({
    type: "StepProblem",
    fields: {
      check: CheckNameShape(),
      path: "text",
      reason: CommissioningStatementShape(),
      "hint?": NamedCheckOfChargeByGaugeAssessment2ReasonsItemShape(),
    },
    docs: {
      "": "A value that no check could use.",
      check: "The check that could not be made.",
      path: "Path of the field of the record.",
      reason: "What is wrong with what stands there.",
      hint: "What to do about it, where there is something to say.",
    },
  }));
}

export function InstallationStepShape(): Shape {
  return once(InstallationStepShape, () => ({
    type: "InstallationStep",
    fields: {
      name: StepNameShape(),
      state: StepStateShape(),
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "waiver?": WaiverShape(),
      "runWaivers?": { list: WaiverShape() },
      "fallsAway?": { statements: [CommissioningStatements()] },
      checks: { list: StepCheckShape() },
      problems: { list: StepProblemShape() },
      missing: { list: "text" },
      blockedBy: { list: StepNameShape() },
    },
    docs: {
      "": "A step and what came of it.",
      name: "Which step.",
      state: "How far it is recorded.",
      outcome:
        "pass only when done and all of its checks pass; inconclusive when not applicable, as nothing was proven.",
      waiver: "Who waived it and why; only where it is not applicable for that.",
      runWaivers:
        "Who waived it for single runs, and why, besides waiver; runs that nobody waived were judged.",
      fallsAway: "Why it falls away; only where the construction of the unit leaves it out.",
      checks: "The checks that were made.",
      problems: "Values that could not be used.",
      missing: "Paths of the fields that are missing.",
      blockedBy: "Earlier steps that have to pass before this one may be done, and have not.",
    },
  }));
}

export function HoldPointShape(): Shape {
  return once(HoldPointShape, () => ({
    type: "HoldPoint",
    fields: {
      name: { words: ["open-valves", "add-charge", "power-on"] },
      state: { words: ["held", "released", "breached"] },
      waitsFor: { list: StepNameShape() },
      reason: CommissioningStatementShape(),
      actions: { list: CommissioningStatementShape() },
    },
    docs: {
      "": "A point at which the work waits until steps have passed.",
      name: "What waits.",
      state: "Whether it still waits.",
      waitsFor:
        "The steps that have not passed: those that have to, and joints where one of them fails.",
      reason: "Why.",
      actions: "What to do next where it was breached; empty otherwise.",
    },
  }));
}

export function InstallationAssessmentShape(): Shape {
  return once(InstallationAssessmentShape, () => ({
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
      reasons: { list: PlacedShape() },
      assumptions: { list: PlacedShape() },
      cautions: { list: PlacedCautionShape() },
      actions: { list: PlacedShape() },
      sources: { list: CitationShape() },
      deciding: { list: PlacedShape() },
      steps: { list: InstallationStepShape() },
      holds: { list: HoldPointShape() },
      missing: { list: "text" },
    },
    docs: {
      "": "The verdict on an installation. cause is the first step that fails; a statement has the step and the part of the record of which it speaks beside it.",
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
  }));
}

export function ChangeShape(): Shape {
  return once(ChangeShape, () => ({
    type: "Change",
    fields: {
      path: "text",
      "value?": "any",
      "kind?": { words: ["correction", "rework"] },
      by: "text",
      at: "time",
      reason: "text",
    },
    docs: {
      "": "A change to a record.",
      path: "The field, part or item, such as runs[0].tubing.length or runs[0].joints[2]. The position after the last item adds one.",
      value: "What it becomes; nothing takes it out.",
      kind: "Whether only the record was wrong, or the work was done anew: then what was tested before proves nothing of it.",
      by: "Who changes it; a letter or a digit at least.",
      at: "When, by ISO 8601; not before the change before it.",
      reason: "Why; a letter or a digit at least.",
    },
  }));
}
