// French of the fields of a record: equipment and instruments.
import type { PlateField } from "../../commissioning/words.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = Words<PlateField>;
const catalogue: Define<Said> = defineFrench;

/** The fields of equipment and instruments, in Canadian French. */
export const plateFields: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "commissioning.field.equipment.outdoorUnit": "unité extérieure",
  "commissioning.field.equipment.outdoorUnit.model": "modèle de l’unité extérieure",
  "commissioning.field.equipment.outdoorUnit.serialNumber": "numéro de série de l’unité extérieure",
  "commissioning.field.equipment.refrigerant": "frigorigène",
  "commissioning.field.equipment.factoryCharge": "charge d’usine",
  "commissioning.field.equipment.maximumCharge": "charge maximale",
  "commissioning.field.equipment.lowestMarkedPressure": "plus basse pression indiquée",
  "commissioning.field.equipment.minimumCircuitAmpacity":
    "courant admissible minimal du circuit (MCA)",
  "commissioning.field.equipment.maximumOvercurrentProtection":
    "protection maximale contre les surintensités (MOP)",
  "commissioning.field.equipment.ratedCurrent": "courant nominal",
  "commissioning.field.equipment.maximumFuse": "fusible maximal",
  "commissioning.field.equipment.protectionMarking": "texte du marquage de surintensité",
  "commissioning.field.equipment.ratedLoadCurrent": "courant de charge nominal",
  "commissioning.field.equipment.lockedRotorCurrent": "courant à rotor bloqué",
  "commissioning.field.equipment.ratedVoltages": "tension nominale",
  "commissioning.field.equipment.voltageRange": "plage de tension",
  "commissioning.field.equipment.voltageRange.minimum": "tension la plus basse",
  "commissioning.field.equipment.voltageRange.maximum": "tension la plus haute",
  "commissioning.field.equipment.meteringDevice": "détendeur",
  "commissioning.field.equipment.compressor": "compresseur",
  "commissioning.field.equipment.expansion": "emplacement du détendeur",
  "commissioning.field.equipment.manual": "manuel",
  "commissioning.field.equipment": "appareils",
  "commissioning.field.equipment.manual.run": "limites du tracé",
  "commissioning.field.equipment.manual.run.maximumLength": "longueur maximale",
  "commissioning.field.equipment.manual.run.minimumLength": "longueur minimale",
  "commissioning.field.equipment.manual.run.maximumLift": "dénivelé maximal",
  "commissioning.field.equipment.manual.run.maximumLiftOutdoorAbove":
    "dénivelé maximal, unité extérieure au-dessus",
  "commissioning.field.equipment.manual.run.maximumBends": "nombre maximal de coudes",
  "commissioning.field.equipment.manual.run.bendEquivalentLength":
    "longueur équivalente d’un coude",
  "commissioning.field.equipment.manual.run.oilTraps": "pièges à huile",
  "commissioning.field.equipment.manual.run.oilTraps.above": "hauteur qui exige des pièges à huile",
  "commissioning.field.equipment.manual.run.oilTraps.spacing": "espacement des pièges à huile",
  "commissioning.field.equipment.manual.run.extraOil": "huile ajoutée",
  "commissioning.field.equipment.manual.run.extraOil.beyond":
    "longueur qui exige de l’huile ajoutée",
  "commissioning.field.equipment.manual.run.extraOil.per": "longueur par ajout d’huile",
  "commissioning.field.equipment.manual.run.extraOil.volume": "volume d’huile ajoutée",
  "commissioning.field.equipment.manual.preChargedLength": "longueur préchargée",
  "commissioning.field.equipment.manual.chargeRate": "charge ajoutée par longueur",
  "commissioning.field.equipment.manual.chargeRate.mass": "masse de la charge par longueur",
  "commissioning.field.equipment.manual.chargeRate.per": "longueur de la charge par longueur",
  "commissioning.field.equipment.manual.shortLineRule": "règle pour les conduites courtes",
  "commissioning.field.equipment.manual.testPressure": "pression d’essai du manuel",
  "commissioning.field.equipment.manual.testHold": "durée de maintien du manuel",
  "commissioning.field.instruments": "instruments",
  "commissioning.field.instruments.testGauge": "manomètre d’essai",
  "commissioning.field.instruments.testGauge.name": "nom du manomètre d’essai",
  "commissioning.field.instruments.testGauge.serialNumber": "numéro de série du manomètre d’essai",
  "commissioning.field.instruments.testGauge.calibratedOn":
    "date d’étalonnage du manomètre d’essai",
  "commissioning.field.instruments.testGauge.calibrationDue":
    "prochain étalonnage du manomètre d’essai",
  "commissioning.field.instruments.testGauge.accuracy": "exactitude du manomètre d’essai",
  "commissioning.field.instruments.testGauge.resolution": "résolution du manomètre d’essai",
  "commissioning.field.instruments.testGauge.repeatability": "répétabilité du manomètre d’essai",
  "commissioning.field.instruments.testGauge.drift": "dérive du manomètre d’essai",
  "commissioning.field.instruments.testGauge.separateInstruments":
    "emploi de deux manomètres d’essai",
  "commissioning.field.instruments.gasThermometer": "thermomètre du gaz",
  "commissioning.field.instruments.gasThermometer.name": "nom du thermomètre du gaz",
  "commissioning.field.instruments.gasThermometer.serialNumber":
    "numéro de série du thermomètre du gaz",
  "commissioning.field.instruments.gasThermometer.calibratedOn":
    "date d’étalonnage du thermomètre du gaz",
  "commissioning.field.instruments.gasThermometer.calibrationDue":
    "prochain étalonnage du thermomètre du gaz",
  "commissioning.field.instruments.gasThermometer.accuracy": "exactitude du thermomètre du gaz",
  "commissioning.field.instruments.gasThermometer.resolution": "résolution du thermomètre du gaz",
  "commissioning.field.instruments.gasThermometer.repeatability":
    "répétabilité du thermomètre du gaz",
  "commissioning.field.instruments.gasThermometer.followsGasWithin":
    "proximité au gaz du thermomètre du gaz",
  "commissioning.field.instruments.gasThermometer.separateInstruments":
    "emploi de deux thermomètres du gaz",
  "commissioning.field.instruments.vacuumGauge": "vacuomètre",
  "commissioning.field.instruments.vacuumGauge.name": "nom du vacuomètre",
  "commissioning.field.instruments.vacuumGauge.serialNumber": "numéro de série du vacuomètre",
  "commissioning.field.instruments.vacuumGauge.calibratedOn": "date d’étalonnage du vacuomètre",
  "commissioning.field.instruments.vacuumGauge.calibrationDue": "prochain étalonnage du vacuomètre",
  "commissioning.field.instruments.vacuumGauge.accuracy": "exactitude du vacuomètre",
  "commissioning.field.instruments.vacuumGauge.range": "étendue du vacuomètre",
  "commissioning.field.instruments.vacuumGauge.resolution": "résolution du vacuomètre",
  "commissioning.field.instruments.vacuumGauge.resolution.upTo":
    "borne supérieure d’une résolution du vacuomètre",
  "commissioning.field.instruments.vacuumGauge.resolution.resolution":
    "résolution d’une plage du vacuomètre",
  "commissioning.field.instruments.scale": "balance de charge",
  "commissioning.field.instruments.scale.name": "nom de la balance de charge",
  "commissioning.field.instruments.scale.serialNumber": "numéro de série de la balance de charge",
  "commissioning.field.instruments.scale.calibratedOn": "date d’étalonnage de la balance de charge",
  "commissioning.field.instruments.scale.calibrationDue":
    "prochain étalonnage de la balance de charge",
  "commissioning.field.instruments.scale.accuracy": "exactitude de la balance de charge",
  "commissioning.field.instruments.scale.resolution": "résolution de la balance de charge",
  "commissioning.field.instruments.scale.repeatability": "répétabilité de la balance de charge",
  "commissioning.field.instruments.tape": "ruban à mesurer",
  "commissioning.field.instruments.tape.name": "nom du ruban à mesurer",
  "commissioning.field.instruments.tape.serialNumber": "numéro de série du ruban à mesurer",
  "commissioning.field.instruments.tape.calibratedOn": "date d’étalonnage du ruban à mesurer",
  "commissioning.field.instruments.tape.calibrationDue": "prochain étalonnage du ruban à mesurer",
  "commissioning.field.instruments.tape.accuracy": "exactitude du ruban à mesurer",
  "commissioning.field.instruments.tape.resolution": "résolution du ruban à mesurer",
  "commissioning.field.instruments.tape.repeatability": "répétabilité du ruban à mesurer",
  "commissioning.field.instruments.torqueWrench": "clé dynamométrique",
  "commissioning.field.instruments.torqueWrench.name": "nom de la clé dynamométrique",
  "commissioning.field.instruments.torqueWrench.serialNumber":
    "numéro de série de la clé dynamométrique",
  "commissioning.field.instruments.torqueWrench.calibratedOn":
    "date d’étalonnage de la clé dynamométrique",
  "commissioning.field.instruments.torqueWrench.calibrationDue":
    "prochain étalonnage de la clé dynamométrique",
  "commissioning.field.instruments.torqueWrench.relativeAccuracy":
    "exactitude relative de la clé dynamométrique",
  "commissioning.field.instruments.torqueWrench.accuracy": "exactitude de la clé dynamométrique",
  "commissioning.field.instruments.torqueWrench.resolution": "résolution de la clé dynamométrique",
  "commissioning.field.instruments.voltmeter": "voltmètre",
  "commissioning.field.instruments.voltmeter.name": "nom du voltmètre",
  "commissioning.field.instruments.voltmeter.serialNumber": "numéro de série du voltmètre",
  "commissioning.field.instruments.voltmeter.calibratedOn": "date d’étalonnage du voltmètre",
  "commissioning.field.instruments.voltmeter.calibrationDue": "prochain étalonnage du voltmètre",
  "commissioning.field.instruments.voltmeter.accuracy": "exactitude du voltmètre",
  "commissioning.field.instruments.voltmeter.resolution": "résolution du voltmètre",
  "commissioning.field.instruments.voltmeter.repeatability": "répétabilité du voltmètre",
  "commissioning.field.instruments.voltmeter.accuracyOfReading":
    "exactitude de lecture du voltmètre",
  "commissioning.field.instruments.serviceGauge": "manomètre de service",
  "commissioning.field.instruments.serviceGauge.name": "nom du manomètre de service",
  "commissioning.field.instruments.serviceGauge.serialNumber":
    "numéro de série du manomètre de service",
  "commissioning.field.instruments.serviceGauge.calibratedOn":
    "date d’étalonnage du manomètre de service",
  "commissioning.field.instruments.serviceGauge.calibrationDue":
    "prochain étalonnage du manomètre de service",
  "commissioning.field.instruments.serviceGauge.accuracy": "exactitude du manomètre de service",
  "commissioning.field.instruments.serviceGauge.resolution": "résolution du manomètre de service",
  "commissioning.field.instruments.serviceGauge.repeatability":
    "répétabilité du manomètre de service",
  "commissioning.field.instruments.lineThermometer": "thermomètre de conduite",
  "commissioning.field.instruments.lineThermometer.name": "nom du thermomètre de conduite",
  "commissioning.field.instruments.lineThermometer.serialNumber":
    "numéro de série du thermomètre de conduite",
  "commissioning.field.instruments.lineThermometer.calibratedOn":
    "date d’étalonnage du thermomètre de conduite",
  "commissioning.field.instruments.lineThermometer.calibrationDue":
    "prochain étalonnage du thermomètre de conduite",
  "commissioning.field.instruments.lineThermometer.accuracy":
    "exactitude du thermomètre de conduite",
  "commissioning.field.instruments.lineThermometer.resolution":
    "résolution du thermomètre de conduite",
  "commissioning.field.instruments.lineThermometer.repeatability":
    "répétabilité du thermomètre de conduite",
  "commissioning.field.instruments.level": "niveau",
  "commissioning.field.instruments.level.name": "nom du niveau",
  "commissioning.field.instruments.level.serialNumber": "numéro de série du niveau",
  "commissioning.field.instruments.level.calibratedOn": "date d’étalonnage du niveau",
  "commissioning.field.instruments.level.calibrationDue": "prochain étalonnage du niveau",
  "commissioning.field.equipment.construction": "type d’appareil",
  "commissioning.field.equipment.duty": "usage",
  "commissioning.field.equipment.capacity": "puissance nominale",
  "commissioning.field.equipment.outdoorUnit.ports": "ports de l’unité extérieure",
  "commissioning.field.equipment.outdoorUnit.ports.liquid": "port de liquide de l’unité extérieure",
  "commissioning.field.equipment.outdoorUnit.ports.vapor": "port de gaz de l’unité extérieure",
  "commissioning.field.equipment.manual.preChargedFor": "à quoi s’applique la longueur préchargée",
  "commissioning.field.equipment.manual.unusedPortAllowance": "charge des ports inutilisés",
  "commissioning.field.equipment.manual.maximumIndoorLift":
    "hauteur maximale entre unités intérieures",
  "commissioning.field.equipment.manual.maximumTotalLength": "longueur totale maximale",
  "commissioning.field.instruments.airThermometer": "thermomètre d’air",
  "commissioning.field.instruments.airThermometer.name": "nom du thermomètre d’air",
  "commissioning.field.instruments.airThermometer.serialNumber":
    "numéro de série du thermomètre d’air",
  "commissioning.field.instruments.airThermometer.calibratedOn":
    "date d’étalonnage du thermomètre d’air",
  "commissioning.field.instruments.airThermometer.calibrationDue":
    "prochain étalonnage du thermomètre d’air",
  "commissioning.field.instruments.airThermometer.accuracy": "exactitude du thermomètre d’air",
  "commissioning.field.instruments.airThermometer.resolution": "résolution du thermomètre d’air",
  "commissioning.field.instruments.airThermometer.repeatability":
    "répétabilité du thermomètre d’air",
  "commissioning.field.instruments.clampMeter": "pince ampèremétrique",
  "commissioning.field.instruments.clampMeter.name": "nom de la pince ampèremétrique",
  "commissioning.field.instruments.clampMeter.serialNumber":
    "numéro de série de la pince ampèremétrique",
  "commissioning.field.instruments.clampMeter.calibratedOn":
    "date d’étalonnage de la pince ampèremétrique",
  "commissioning.field.instruments.clampMeter.calibrationDue":
    "prochain étalonnage de la pince ampèremétrique",
  "commissioning.field.instruments.clampMeter.accuracy": "exactitude de la pince ampèremétrique",
  "commissioning.field.instruments.clampMeter.resolution": "résolution de la pince ampèremétrique",
  "commissioning.field.instruments.clampMeter.repeatability":
    "répétabilité de la pince ampèremétrique",
  "commissioning.field.instruments.clampMeter.accuracyOfReading":
    "exactitude de lecture de la pince ampèremétrique",
  "commissioning.field.equipment.outdoorUnit.capacity": "puissance de l’unité extérieure",
  "commissioning.field.equipment.manual.chargeAllowance": "charge quelles que soient les longueurs",
  "commissioning.field.equipment.manual.leastConnected":
    "puissance minimale des unités intérieures",
  "commissioning.field.equipment.manual.mostConnected": "puissance maximale des unités intérieures",
  "commissioning.field.equipment.manual.linkCable": "câble entre les unités",
  "commissioning.field.equipment.portPairs": "paires de ports",
});
