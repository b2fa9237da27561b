// Spanish of the fields of a record: equipment and instruments.
import type { PlateField } from "../../commissioning/words.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<PlateField>;
const catalogue: Define<Said> = define;

/** The fields of equipment and instruments, in Spanish of the Americas. */
export const plateFields: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "commissioning.field.equipment.outdoorUnit": "unidad exterior",
  "commissioning.field.equipment.outdoorUnit.model": "modelo de la unidad exterior",
  "commissioning.field.equipment.outdoorUnit.serialNumber": "número de serie de la unidad exterior",
  "commissioning.field.equipment.refrigerant": "refrigerante",
  "commissioning.field.equipment.factoryCharge": "carga de fábrica",
  "commissioning.field.equipment.maximumCharge": "carga máxima",
  "commissioning.field.equipment.lowestMarkedPressure": "presión marcada más baja",
  "commissioning.field.equipment.minimumCircuitAmpacity": "ampacidad mínima del circuito (MCA)",
  "commissioning.field.equipment.maximumOvercurrentProtection":
    "protección máxima contra sobrecorriente (MOP)",
  "commissioning.field.equipment.ratedCurrent": "corriente nominal",
  "commissioning.field.equipment.maximumFuse": "fusible máximo",
  "commissioning.field.equipment.protectionMarking": "texto de la marca de sobrecorriente",
  "commissioning.field.equipment.ratedLoadCurrent": "corriente de carga nominal",
  "commissioning.field.equipment.lockedRotorCurrent": "corriente a rotor bloqueado",
  "commissioning.field.equipment.ratedVoltages": "voltaje nominal",
  "commissioning.field.equipment.voltageRange": "intervalo de voltaje",
  "commissioning.field.equipment.voltageRange.minimum": "voltaje más bajo",
  "commissioning.field.equipment.voltageRange.maximum": "voltaje más alto",
  "commissioning.field.equipment.meteringDevice": "dispositivo de expansión",
  "commissioning.field.equipment.compressor": "compresor",
  "commissioning.field.equipment.expansion": "lugar de la válvula de expansión",
  "commissioning.field.equipment.manual": "manual del equipo",
  "commissioning.field.equipment": "equipo",
  "commissioning.field.equipment.manual.run": "límites del recorrido",
  "commissioning.field.equipment.manual.run.maximumLength": "longitud máxima",
  "commissioning.field.equipment.manual.run.minimumLength": "longitud mínima",
  "commissioning.field.equipment.manual.run.maximumLift": "desnivel máximo",
  "commissioning.field.equipment.manual.run.maximumLiftOutdoorAbove":
    "desnivel máximo, unidad exterior arriba",
  "commissioning.field.equipment.manual.run.maximumBends": "número máximo de curvas",
  "commissioning.field.equipment.manual.run.bendEquivalentLength":
    "longitud equivalente de una curva",
  "commissioning.field.equipment.manual.run.oilTraps": "trampas de aceite",
  "commissioning.field.equipment.manual.run.oilTraps.above": "altura que exige trampas de aceite",
  "commissioning.field.equipment.manual.run.oilTraps.spacing":
    "separación de las trampas de aceite",
  "commissioning.field.equipment.manual.run.extraOil": "aceite agregado",
  "commissioning.field.equipment.manual.run.extraOil.beyond": "longitud que exige aceite agregado",
  "commissioning.field.equipment.manual.run.extraOil.per": "longitud por cada adición de aceite",
  "commissioning.field.equipment.manual.run.extraOil.volume": "volumen de aceite agregado",
  "commissioning.field.equipment.manual.preChargedLength": "longitud precargada",
  "commissioning.field.equipment.manual.chargeRate": "carga agregada por longitud",
  "commissioning.field.equipment.manual.chargeRate.mass": "masa de la carga por longitud",
  "commissioning.field.equipment.manual.chargeRate.per": "longitud de la carga por longitud",
  "commissioning.field.equipment.manual.shortLineRule": "regla para líneas cortas",
  "commissioning.field.equipment.manual.testPressure": "presión de prueba del manual",
  "commissioning.field.equipment.manual.testHold": "tiempo de permanencia del manual",
  "commissioning.field.instruments": "instrumentos",
  "commissioning.field.instruments.testGauge": "manómetro de prueba",
  "commissioning.field.instruments.testGauge.name": "nombre del manómetro de prueba",
  "commissioning.field.instruments.testGauge.serialNumber":
    "número de serie del manómetro de prueba",
  "commissioning.field.instruments.testGauge.calibratedOn":
    "fecha de calibración del manómetro de prueba",
  "commissioning.field.instruments.testGauge.calibrationDue":
    "próxima calibración del manómetro de prueba",
  "commissioning.field.instruments.testGauge.accuracy": "exactitud del manómetro de prueba",
  "commissioning.field.instruments.testGauge.resolution": "resolución del manómetro de prueba",
  "commissioning.field.instruments.testGauge.repeatability":
    "repetibilidad del manómetro de prueba",
  "commissioning.field.instruments.testGauge.drift": "deriva del manómetro de prueba",
  "commissioning.field.instruments.testGauge.separateInstruments":
    "uso de dos manómetros de prueba",
  "commissioning.field.instruments.gasThermometer": "termómetro del gas",
  "commissioning.field.instruments.gasThermometer.name": "nombre del termómetro del gas",
  "commissioning.field.instruments.gasThermometer.serialNumber":
    "número de serie del termómetro del gas",
  "commissioning.field.instruments.gasThermometer.calibratedOn":
    "fecha de calibración del termómetro del gas",
  "commissioning.field.instruments.gasThermometer.calibrationDue":
    "próxima calibración del termómetro del gas",
  "commissioning.field.instruments.gasThermometer.accuracy": "exactitud del termómetro del gas",
  "commissioning.field.instruments.gasThermometer.resolution": "resolución del termómetro del gas",
  "commissioning.field.instruments.gasThermometer.repeatability":
    "repetibilidad del termómetro del gas",
  "commissioning.field.instruments.gasThermometer.followsGasWithin":
    "cercanía al gas del termómetro del gas",
  "commissioning.field.instruments.gasThermometer.separateInstruments":
    "uso de dos termómetros del gas",
  "commissioning.field.instruments.vacuumGauge": "vacuómetro",
  "commissioning.field.instruments.vacuumGauge.name": "nombre del vacuómetro",
  "commissioning.field.instruments.vacuumGauge.serialNumber": "número de serie del vacuómetro",
  "commissioning.field.instruments.vacuumGauge.calibratedOn": "fecha de calibración del vacuómetro",
  "commissioning.field.instruments.vacuumGauge.calibrationDue":
    "próxima calibración del vacuómetro",
  "commissioning.field.instruments.vacuumGauge.accuracy": "exactitud del vacuómetro",
  "commissioning.field.instruments.vacuumGauge.range": "alcance del vacuómetro",
  "commissioning.field.instruments.vacuumGauge.resolution": "resolución del vacuómetro",
  "commissioning.field.instruments.vacuumGauge.resolution.upTo":
    "extremo superior de una resolución del vacuómetro",
  "commissioning.field.instruments.vacuumGauge.resolution.resolution":
    "resolución de un tramo del vacuómetro",
  "commissioning.field.instruments.scale": "báscula de carga",
  "commissioning.field.instruments.scale.name": "nombre de la báscula de carga",
  "commissioning.field.instruments.scale.serialNumber": "número de serie de la báscula de carga",
  "commissioning.field.instruments.scale.calibratedOn":
    "fecha de calibración de la báscula de carga",
  "commissioning.field.instruments.scale.calibrationDue":
    "próxima calibración de la báscula de carga",
  "commissioning.field.instruments.scale.accuracy": "exactitud de la báscula de carga",
  "commissioning.field.instruments.scale.resolution": "resolución de la báscula de carga",
  "commissioning.field.instruments.scale.repeatability": "repetibilidad de la báscula de carga",
  "commissioning.field.instruments.tape": "cinta métrica",
  "commissioning.field.instruments.tape.name": "nombre de la cinta métrica",
  "commissioning.field.instruments.tape.serialNumber": "número de serie de la cinta métrica",
  "commissioning.field.instruments.tape.calibratedOn": "fecha de calibración de la cinta métrica",
  "commissioning.field.instruments.tape.calibrationDue": "próxima calibración de la cinta métrica",
  "commissioning.field.instruments.tape.accuracy": "exactitud de la cinta métrica",
  "commissioning.field.instruments.tape.resolution": "resolución de la cinta métrica",
  "commissioning.field.instruments.tape.repeatability": "repetibilidad de la cinta métrica",
  "commissioning.field.instruments.torqueWrench": "llave dinamométrica",
  "commissioning.field.instruments.torqueWrench.name": "nombre de la llave dinamométrica",
  "commissioning.field.instruments.torqueWrench.serialNumber":
    "número de serie de la llave dinamométrica",
  "commissioning.field.instruments.torqueWrench.calibratedOn":
    "fecha de calibración de la llave dinamométrica",
  "commissioning.field.instruments.torqueWrench.calibrationDue":
    "próxima calibración de la llave dinamométrica",
  "commissioning.field.instruments.torqueWrench.relativeAccuracy":
    "exactitud relativa de la llave dinamométrica",
  "commissioning.field.instruments.torqueWrench.accuracy": "exactitud de la llave dinamométrica",
  "commissioning.field.instruments.torqueWrench.resolution": "resolución de la llave dinamométrica",
  "commissioning.field.instruments.voltmeter": "voltímetro",
  "commissioning.field.instruments.voltmeter.name": "nombre del voltímetro",
  "commissioning.field.instruments.voltmeter.serialNumber": "número de serie del voltímetro",
  "commissioning.field.instruments.voltmeter.calibratedOn": "fecha de calibración del voltímetro",
  "commissioning.field.instruments.voltmeter.calibrationDue": "próxima calibración del voltímetro",
  "commissioning.field.instruments.voltmeter.accuracy": "exactitud del voltímetro",
  "commissioning.field.instruments.voltmeter.resolution": "resolución del voltímetro",
  "commissioning.field.instruments.voltmeter.repeatability": "repetibilidad del voltímetro",
  "commissioning.field.instruments.voltmeter.accuracyOfReading":
    "exactitud de lectura del voltímetro",
  "commissioning.field.instruments.serviceGauge": "manómetro de servicio",
  "commissioning.field.instruments.serviceGauge.name": "nombre del manómetro de servicio",
  "commissioning.field.instruments.serviceGauge.serialNumber":
    "número de serie del manómetro de servicio",
  "commissioning.field.instruments.serviceGauge.calibratedOn":
    "fecha de calibración del manómetro de servicio",
  "commissioning.field.instruments.serviceGauge.calibrationDue":
    "próxima calibración del manómetro de servicio",
  "commissioning.field.instruments.serviceGauge.accuracy": "exactitud del manómetro de servicio",
  "commissioning.field.instruments.serviceGauge.resolution": "resolución del manómetro de servicio",
  "commissioning.field.instruments.serviceGauge.repeatability":
    "repetibilidad del manómetro de servicio",
  "commissioning.field.instruments.lineThermometer": "termómetro de línea",
  "commissioning.field.instruments.lineThermometer.name": "nombre del termómetro de línea",
  "commissioning.field.instruments.lineThermometer.serialNumber":
    "número de serie del termómetro de línea",
  "commissioning.field.instruments.lineThermometer.calibratedOn":
    "fecha de calibración del termómetro de línea",
  "commissioning.field.instruments.lineThermometer.calibrationDue":
    "próxima calibración del termómetro de línea",
  "commissioning.field.instruments.lineThermometer.accuracy": "exactitud del termómetro de línea",
  "commissioning.field.instruments.lineThermometer.resolution":
    "resolución del termómetro de línea",
  "commissioning.field.instruments.lineThermometer.repeatability":
    "repetibilidad del termómetro de línea",
  "commissioning.field.instruments.level": "nivel",
  "commissioning.field.instruments.level.name": "nombre del nivel",
  "commissioning.field.instruments.level.serialNumber": "número de serie del nivel",
  "commissioning.field.instruments.level.calibratedOn": "fecha de calibración del nivel",
  "commissioning.field.instruments.level.calibrationDue": "próxima calibración del nivel",
  "commissioning.field.equipment.construction": "tipo de equipo",
  "commissioning.field.equipment.duty": "servicio",
  "commissioning.field.equipment.capacity": "capacidad nominal",
  "commissioning.field.equipment.outdoorUnit.ports": "puertos de la unidad exterior",
  "commissioning.field.equipment.outdoorUnit.ports.liquid":
    "puerto de líquido de la unidad exterior",
  "commissioning.field.equipment.outdoorUnit.ports.vapor": "puerto de gas de la unidad exterior",
  "commissioning.field.equipment.manual.preChargedFor": "para qué vale la longitud precargada",
  "commissioning.field.equipment.manual.unusedPortAllowance": "carga de los puertos sin usar",
  "commissioning.field.equipment.manual.maximumIndoorLift":
    "altura máxima entre unidades interiores",
  "commissioning.field.equipment.manual.maximumTotalLength": "longitud total máxima",
  "commissioning.field.instruments.airThermometer": "termómetro de aire",
  "commissioning.field.instruments.airThermometer.name": "nombre del termómetro de aire",
  "commissioning.field.instruments.airThermometer.serialNumber":
    "número de serie del termómetro de aire",
  "commissioning.field.instruments.airThermometer.calibratedOn":
    "fecha de calibración del termómetro de aire",
  "commissioning.field.instruments.airThermometer.calibrationDue":
    "próxima calibración del termómetro de aire",
  "commissioning.field.instruments.airThermometer.accuracy": "exactitud del termómetro de aire",
  "commissioning.field.instruments.airThermometer.resolution": "resolución del termómetro de aire",
  "commissioning.field.instruments.airThermometer.repeatability":
    "repetibilidad del termómetro de aire",
  "commissioning.field.instruments.clampMeter": "pinza amperimétrica",
  "commissioning.field.instruments.clampMeter.name": "nombre de la pinza amperimétrica",
  "commissioning.field.instruments.clampMeter.serialNumber":
    "número de serie de la pinza amperimétrica",
  "commissioning.field.instruments.clampMeter.calibratedOn":
    "fecha de calibración de la pinza amperimétrica",
  "commissioning.field.instruments.clampMeter.calibrationDue":
    "próxima calibración de la pinza amperimétrica",
  "commissioning.field.instruments.clampMeter.accuracy": "exactitud de la pinza amperimétrica",
  "commissioning.field.instruments.clampMeter.resolution": "resolución de la pinza amperimétrica",
  "commissioning.field.instruments.clampMeter.repeatability":
    "repetibilidad de la pinza amperimétrica",
  "commissioning.field.instruments.clampMeter.accuracyOfReading":
    "exactitud de lectura de la pinza amperimétrica",
  "commissioning.field.equipment.outdoorUnit.capacity": "capacidad de la unidad exterior",
  "commissioning.field.equipment.manual.chargeAllowance": "carga para cualquier longitud",
  "commissioning.field.equipment.manual.leastConnected":
    "capacidad mínima de las unidades interiores",
  "commissioning.field.equipment.manual.mostConnected":
    "capacidad máxima de las unidades interiores",
  "commissioning.field.equipment.manual.linkCable": "cable entre las unidades",
  "commissioning.field.equipment.portPairs": "pares de puertos",
});
