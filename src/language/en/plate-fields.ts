// English of the fields of a record: equipment and instruments.
import type { PlateField } from "../../commissioning/words.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<PlateField>;
const catalogue: Define<Said> = define;

/** The fields of equipment and instruments, in American English. */
export const plateFields: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "commissioning.field.equipment.outdoorUnit": "outdoor unit",
  "commissioning.field.equipment.outdoorUnit.model": "outdoor unit model",
  "commissioning.field.equipment.outdoorUnit.serialNumber": "outdoor unit serial number",
  "commissioning.field.equipment.refrigerant": "refrigerant",
  "commissioning.field.equipment.factoryCharge": "factory charge",
  "commissioning.field.equipment.maximumCharge": "maximum charge",
  "commissioning.field.equipment.lowestMarkedPressure": "lowest marked pressure",
  "commissioning.field.equipment.minimumCircuitAmpacity": "minimum circuit ampacity (MCA)",
  "commissioning.field.equipment.maximumOvercurrentProtection":
    "maximum overcurrent protection (MOP)",
  "commissioning.field.equipment.ratedCurrent": "rated current",
  "commissioning.field.equipment.maximumFuse": "maximum fuse",
  "commissioning.field.equipment.protectionMarking": "wording of the overcurrent marking",
  "commissioning.field.equipment.ratedLoadCurrent": "rated-load current",
  "commissioning.field.equipment.lockedRotorCurrent": "locked-rotor current",
  "commissioning.field.equipment.ratedVoltages": "rated voltage",
  "commissioning.field.equipment.voltageRange": "voltage range",
  "commissioning.field.equipment.voltageRange.minimum": "lowest voltage",
  "commissioning.field.equipment.voltageRange.maximum": "highest voltage",
  "commissioning.field.equipment.meteringDevice": "metering device",
  "commissioning.field.equipment.compressor": "compressor",
  "commissioning.field.equipment.expansion": "place of the expansion valve",
  "commissioning.field.equipment.manual": "manual",
  "commissioning.field.equipment": "equipment",
  "commissioning.field.equipment.manual.run": "limits of the run",
  "commissioning.field.equipment.manual.run.maximumLength": "maximum length",
  "commissioning.field.equipment.manual.run.minimumLength": "minimum length",
  "commissioning.field.equipment.manual.run.maximumLift": "maximum height difference",
  "commissioning.field.equipment.manual.run.maximumLiftOutdoorAbove":
    "maximum height difference, outdoor unit above",
  "commissioning.field.equipment.manual.run.maximumBends": "maximum number of bends",
  "commissioning.field.equipment.manual.run.bendEquivalentLength": "equivalent length of a bend",
  "commissioning.field.equipment.manual.run.oilTraps": "oil traps",
  "commissioning.field.equipment.manual.run.oilTraps.above": "height that needs oil traps",
  "commissioning.field.equipment.manual.run.oilTraps.spacing": "spacing of oil traps",
  "commissioning.field.equipment.manual.run.extraOil": "added oil",
  "commissioning.field.equipment.manual.run.extraOil.beyond": "length that needs added oil",
  "commissioning.field.equipment.manual.run.extraOil.per": "length per added oil",
  "commissioning.field.equipment.manual.run.extraOil.volume": "volume of added oil",
  "commissioning.field.equipment.manual.preChargedLength": "pre-charged length",
  "commissioning.field.equipment.manual.chargeRate": "added charge per length",
  "commissioning.field.equipment.manual.chargeRate.mass": "mass of the charge rate",
  "commissioning.field.equipment.manual.chargeRate.per": "length of the charge rate",
  "commissioning.field.equipment.manual.shortLineRule": "rule for short lines",
  "commissioning.field.equipment.manual.testPressure": "test pressure in the manual",
  "commissioning.field.equipment.manual.testHold": "hold time in the manual",
  "commissioning.field.instruments": "instruments",
  "commissioning.field.instruments.testGauge": "test gauge",
  "commissioning.field.instruments.testGauge.name": "name of the test gauge",
  "commissioning.field.instruments.testGauge.serialNumber": "serial number of the test gauge",
  "commissioning.field.instruments.testGauge.calibratedOn": "calibration date of the test gauge",
  "commissioning.field.instruments.testGauge.calibrationDue":
    "calibration due date of the test gauge",
  "commissioning.field.instruments.testGauge.accuracy": "accuracy of the test gauge",
  "commissioning.field.instruments.testGauge.resolution": "resolution of the test gauge",
  "commissioning.field.instruments.testGauge.repeatability": "repeatability of the test gauge",
  "commissioning.field.instruments.testGauge.drift": "drift of the test gauge",
  "commissioning.field.instruments.testGauge.separateInstruments":
    "use of two instruments of the test gauge",
  "commissioning.field.instruments.gasThermometer": "gas thermometer",
  "commissioning.field.instruments.gasThermometer.name": "name of the gas thermometer",
  "commissioning.field.instruments.gasThermometer.serialNumber":
    "serial number of the gas thermometer",
  "commissioning.field.instruments.gasThermometer.calibratedOn":
    "calibration date of the gas thermometer",
  "commissioning.field.instruments.gasThermometer.calibrationDue":
    "calibration due date of the gas thermometer",
  "commissioning.field.instruments.gasThermometer.accuracy": "accuracy of the gas thermometer",
  "commissioning.field.instruments.gasThermometer.resolution": "resolution of the gas thermometer",
  "commissioning.field.instruments.gasThermometer.repeatability":
    "repeatability of the gas thermometer",
  "commissioning.field.instruments.gasThermometer.followsGasWithin":
    "closeness to the gas of the gas thermometer",
  "commissioning.field.instruments.gasThermometer.separateInstruments":
    "use of two instruments of the gas thermometer",
  "commissioning.field.instruments.vacuumGauge": "vacuum gauge",
  "commissioning.field.instruments.vacuumGauge.name": "name of the vacuum gauge",
  "commissioning.field.instruments.vacuumGauge.serialNumber": "serial number of the vacuum gauge",
  "commissioning.field.instruments.vacuumGauge.calibratedOn":
    "calibration date of the vacuum gauge",
  "commissioning.field.instruments.vacuumGauge.calibrationDue":
    "calibration due date of the vacuum gauge",
  "commissioning.field.instruments.vacuumGauge.accuracy": "accuracy of the vacuum gauge",
  "commissioning.field.instruments.vacuumGauge.range": "range of the vacuum gauge",
  "commissioning.field.instruments.vacuumGauge.resolution": "resolution of the vacuum gauge",
  "commissioning.field.instruments.vacuumGauge.resolution.upTo":
    "upper end of a resolution of the vacuum gauge",
  "commissioning.field.instruments.vacuumGauge.resolution.resolution":
    "resolution of a range of the vacuum gauge",
  "commissioning.field.instruments.scale": "charging scale",
  "commissioning.field.instruments.scale.name": "name of the charging scale",
  "commissioning.field.instruments.scale.serialNumber": "serial number of the charging scale",
  "commissioning.field.instruments.scale.calibratedOn": "calibration date of the charging scale",
  "commissioning.field.instruments.scale.calibrationDue":
    "calibration due date of the charging scale",
  "commissioning.field.instruments.scale.accuracy": "accuracy of the charging scale",
  "commissioning.field.instruments.scale.resolution": "resolution of the charging scale",
  "commissioning.field.instruments.scale.repeatability": "repeatability of the charging scale",
  "commissioning.field.instruments.tape": "tape",
  "commissioning.field.instruments.tape.name": "name of the tape",
  "commissioning.field.instruments.tape.serialNumber": "serial number of the tape",
  "commissioning.field.instruments.tape.calibratedOn": "calibration date of the tape",
  "commissioning.field.instruments.tape.calibrationDue": "calibration due date of the tape",
  "commissioning.field.instruments.tape.accuracy": "accuracy of the tape",
  "commissioning.field.instruments.tape.resolution": "resolution of the tape",
  "commissioning.field.instruments.tape.repeatability": "repeatability of the tape",
  "commissioning.field.instruments.torqueWrench": "torque wrench",
  "commissioning.field.instruments.torqueWrench.name": "name of the torque wrench",
  "commissioning.field.instruments.torqueWrench.serialNumber": "serial number of the torque wrench",
  "commissioning.field.instruments.torqueWrench.calibratedOn":
    "calibration date of the torque wrench",
  "commissioning.field.instruments.torqueWrench.calibrationDue":
    "calibration due date of the torque wrench",
  "commissioning.field.instruments.torqueWrench.relativeAccuracy":
    "relative accuracy of the torque wrench",
  "commissioning.field.instruments.torqueWrench.accuracy": "accuracy of the torque wrench",
  "commissioning.field.instruments.torqueWrench.resolution": "resolution of the torque wrench",
  "commissioning.field.instruments.voltmeter": "voltmeter",
  "commissioning.field.instruments.voltmeter.name": "name of the voltmeter",
  "commissioning.field.instruments.voltmeter.serialNumber": "serial number of the voltmeter",
  "commissioning.field.instruments.voltmeter.calibratedOn": "calibration date of the voltmeter",
  "commissioning.field.instruments.voltmeter.calibrationDue":
    "calibration due date of the voltmeter",
  "commissioning.field.instruments.voltmeter.accuracy": "accuracy of the voltmeter",
  "commissioning.field.instruments.voltmeter.resolution": "resolution of the voltmeter",
  "commissioning.field.instruments.voltmeter.repeatability": "repeatability of the voltmeter",
  "commissioning.field.instruments.voltmeter.accuracyOfReading":
    "accuracy of reading of the voltmeter",
  "commissioning.field.instruments.serviceGauge": "service gauge",
  "commissioning.field.instruments.serviceGauge.name": "name of the service gauge",
  "commissioning.field.instruments.serviceGauge.serialNumber": "serial number of the service gauge",
  "commissioning.field.instruments.serviceGauge.calibratedOn":
    "calibration date of the service gauge",
  "commissioning.field.instruments.serviceGauge.calibrationDue":
    "calibration due date of the service gauge",
  "commissioning.field.instruments.serviceGauge.accuracy": "accuracy of the service gauge",
  "commissioning.field.instruments.serviceGauge.resolution": "resolution of the service gauge",
  "commissioning.field.instruments.serviceGauge.repeatability":
    "repeatability of the service gauge",
  "commissioning.field.instruments.lineThermometer": "line thermometer",
  "commissioning.field.instruments.lineThermometer.name": "name of the line thermometer",
  "commissioning.field.instruments.lineThermometer.serialNumber":
    "serial number of the line thermometer",
  "commissioning.field.instruments.lineThermometer.calibratedOn":
    "calibration date of the line thermometer",
  "commissioning.field.instruments.lineThermometer.calibrationDue":
    "calibration due date of the line thermometer",
  "commissioning.field.instruments.lineThermometer.accuracy": "accuracy of the line thermometer",
  "commissioning.field.instruments.lineThermometer.resolution":
    "resolution of the line thermometer",
  "commissioning.field.instruments.lineThermometer.repeatability":
    "repeatability of the line thermometer",
  "commissioning.field.instruments.level": "level",
  "commissioning.field.instruments.level.name": "name of the level",
  "commissioning.field.instruments.level.serialNumber": "serial number of the level",
  "commissioning.field.instruments.level.calibratedOn": "calibration date of the level",
  "commissioning.field.instruments.level.calibrationDue": "calibration due date of the level",
  "commissioning.field.equipment.construction": "construction",
  "commissioning.field.equipment.duty": "duty",
  "commissioning.field.equipment.capacity": "rated capacity",
  "commissioning.field.equipment.outdoorUnit.ports": "ports of the outdoor unit",
  "commissioning.field.equipment.outdoorUnit.ports.liquid": "liquid port of the outdoor unit",
  "commissioning.field.equipment.outdoorUnit.ports.vapor": "vapor port of the outdoor unit",
  "commissioning.field.equipment.manual.preChargedFor": "what the pre-charged length is for",
  "commissioning.field.equipment.manual.unusedPortAllowance": "charge of unused ports",
  "commissioning.field.equipment.manual.maximumIndoorLift": "maximum height between indoor units",
  "commissioning.field.equipment.manual.maximumTotalLength": "maximum total length",
  "commissioning.field.instruments.airThermometer": "air thermometer",
  "commissioning.field.instruments.airThermometer.name": "name of the air thermometer",
  "commissioning.field.instruments.airThermometer.serialNumber":
    "serial number of the air thermometer",
  "commissioning.field.instruments.airThermometer.calibratedOn":
    "calibration date of the air thermometer",
  "commissioning.field.instruments.airThermometer.calibrationDue":
    "calibration due date of the air thermometer",
  "commissioning.field.instruments.airThermometer.accuracy": "accuracy of the air thermometer",
  "commissioning.field.instruments.airThermometer.resolution": "resolution of the air thermometer",
  "commissioning.field.instruments.airThermometer.repeatability":
    "repeatability of the air thermometer",
  "commissioning.field.instruments.clampMeter": "clamp meter",
  "commissioning.field.instruments.clampMeter.name": "name of the clamp meter",
  "commissioning.field.instruments.clampMeter.serialNumber": "serial number of the clamp meter",
  "commissioning.field.instruments.clampMeter.calibratedOn": "calibration date of the clamp meter",
  "commissioning.field.instruments.clampMeter.calibrationDue":
    "calibration due date of the clamp meter",
  "commissioning.field.instruments.clampMeter.accuracy": "accuracy of the clamp meter",
  "commissioning.field.instruments.clampMeter.resolution": "resolution of the clamp meter",
  "commissioning.field.instruments.clampMeter.repeatability": "repeatability of the clamp meter",
  "commissioning.field.instruments.clampMeter.accuracyOfReading":
    "accuracy of reading of the clamp meter",
  "commissioning.field.equipment.outdoorUnit.capacity": "capacity of the outdoor unit",
  "commissioning.field.equipment.manual.chargeAllowance": "charge whatever the lengths",
  "commissioning.field.equipment.manual.leastConnected": "least capacity of the indoor units",
  "commissioning.field.equipment.manual.mostConnected": "largest capacity of the indoor units",
  "commissioning.field.equipment.manual.linkCable": "cable between the units",
  "commissioning.field.equipment.portPairs": "pairs of ports",
});
