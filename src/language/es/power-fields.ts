// Spanish of the fields of a record: circuits and supply.
import type { PowerField } from "../../commissioning/words.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<PowerField>;
const catalogue: Define<Said> = define;

/** The fields of circuits and supply, in Spanish of the Americas. */
export const powerFields: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "commissioning.field.power": "energía eléctrica",
  "commissioning.field.power.voltage": "voltaje de alimentación",
  "commissioning.field.power.phases": "fases",
  "commissioning.field.power.system": "sistema de alimentación",
  "commissioning.field.power.circuits": "circuito",
  "commissioning.field.power.circuits.rules": "reglas eléctricas",
  "commissioning.field.power.circuits.wiring": "cableado",
  "commissioning.field.power.circuits.wiring.ambient": "temperatura ambiente del cable",
  "commissioning.field.power.circuits.wiring.length": "longitud del circuito",
  "commissioning.field.power.circuits.wiring.stranding": "cableado del conductor",
  "commissioning.field.power.circuits.wiring.material": "material del conductor",
  "commissioning.field.power.circuits.wiring.insulation": "aislamiento",
  "commissioning.field.power.circuits.wiring.terminations": "temperatura nominal de los terminales",
  "commissioning.field.power.circuits.wiring.cable": "tipo de cable",
  "commissioning.field.power.circuits.wiring.currentCarryingConductors":
    "conductores portadores de corriente",
  "commissioning.field.power.circuits.wiring.aboveRoof": "altura sobre el techo",
  "commissioning.field.power.circuits.wiring.conduit": "tubo conduit",
  "commissioning.field.power.circuits.wiring.method": "método de instalación",
  "commissioning.field.power.circuits.wiring.groupedCircuits": "circuitos agrupados",
  "commissioning.field.power.circuits.installed.device": "dispositivo de sobrecorriente",
  "commissioning.field.power.circuits.installed.device.kind":
    "tipo de dispositivo de sobrecorriente",
  "commissioning.field.power.circuits.installed.device.rating":
    "corriente nominal del dispositivo de sobrecorriente",
  "commissioning.field.power.circuits.installed.device.poles": "polos",
  "commissioning.field.power.circuits.installed.device.voltageRating":
    "voltaje nominal del dispositivo",
  "commissioning.field.power.circuits.installed.device.hacr": "marca HACR",
  "commissioning.field.power.circuits.installed.device.curve": "curva de disparo",
  "commissioning.field.power.circuits.installed.conductor": "calibre del conductor",
  "commissioning.field.power.circuits.installed.equipmentGrounding":
    "conductor de puesta a tierra de equipos",
  "commissioning.field.power.circuits.installed.disconnect": "medio de desconexión",
  "commissioning.field.power.circuits.installed.disconnect.rating":
    "corriente nominal del medio de desconexión",
  "commissioning.field.power.circuits.installed.disconnect.fuse":
    "fusible del medio de desconexión",
  "commissioning.field.power.circuits.installed.disconnect.visible":
    "medio de desconexión a la vista",
  "commissioning.field.power.circuits.installed.disconnect.distance":
    "distancia al medio de desconexión",
  "commissioning.field.power.circuits.installed.disconnect.readilyAccessible":
    "acceso fácil al medio de desconexión",
  "commissioning.field.power.circuits.installed.disconnect.inTheWay":
    "obstáculo en el medio de desconexión",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace": "espacio de trabajo",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.depth":
    "fondo del espacio de trabajo",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.width":
    "ancho del espacio de trabajo",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.height":
    "alto del espacio de trabajo",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.equipmentWidth":
    "ancho del equipo",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.condition":
    "condición del espacio de trabajo",
  "commissioning.field.power.circuits.installed": "circuito instalado",
  "commissioning.field.power.circuits.powerFactor": "factor de potencia",
  "commissioning.field.power.circuits.occupancy": "uso del edificio",
  "commissioning.field.power.circuits.groundFaultText":
    "texto adoptado sobre protección contra falla a tierra",
  "commissioning.field.power.circuits.at": "fecha de la inspección del circuito",
  "commissioning.field.power.supply": "alimentación eléctrica",
  "commissioning.field.power.supply.readings": "lecturas de alimentación",
  "commissioning.field.power.supply.readings.state": "estado de la unidad",
  "commissioning.field.power.supply.readings.elapsed":
    "tiempo transcurrido de la lectura de alimentación",
  "commissioning.field.power.supply.readings.voltage": "voltaje",
  "commissioning.field.power.supply.readings.current": "corriente",
  "commissioning.field.power.supply.readings.lineToLine": "voltajes entre fases",
  "commissioning.field.power.supply.readings.lineToGround": "voltajes de fase a tierra",
  "commissioning.field.power.supply.readings.currents": "corrientes de línea",
  "commissioning.field.power.supply.measuredAt": "lugar de la lectura de alimentación",
  "commissioning.field.power.supply.standard": "norma del suministro",
  "commissioning.field.power.supply.range": "intervalo del suministro",
  "commissioning.field.power.supply.range.minimum": "voltaje de suministro más bajo",
  "commissioning.field.power.supply.range.maximum": "voltaje de suministro más alto",
  "commissioning.field.power.supply.unbalanceLimit": "desbalance de voltaje máximo",
  "commissioning.field.power.supply.at": "fecha de la lectura de alimentación",
  "commissioning.field.power.energizedAt": "fecha en que se energizó la unidad",
  "commissioning.field.power.circuits.wiring.grouping": "agrupamiento de cables",
  "commissioning.field.power.circuits.wiring.soilResistivity": "resistividad del suelo",
  "commissioning.field.power.circuits.wiring.insulationLength": "longitud en aislamiento térmico",
  "commissioning.field.power.circuits.installed.whip": "tramo flexible final",
  "commissioning.field.power.circuits.installed.whip.conductor":
    "calibre del conductor del tramo flexible final",
  "commissioning.field.power.circuits.installed.whip.wiring": "cableado del tramo flexible final",
  "commissioning.field.power.circuits.installed.aluminumTerminals":
    "terminales marcados para aluminio",
  "commissioning.field.power.circuits.installed.groundingMaterial":
    "material del conductor de puesta a tierra",
  "commissioning.field.power.circuits.installed.groundingByRaceway":
    "puesta a tierra por la canalización",
  "commissioning.field.power.circuits.installed.compressionFittings":
    "accesorios de compresión de la canalización",
  "commissioning.field.power.circuits.installed.fault": "energía de falla",
  "commissioning.field.power.circuits.installed.fault.current": "corriente de falla",
  "commissioning.field.power.circuits.installed.fault.clearingTime":
    "tiempo de apertura de la falla",
  "commissioning.field.power.circuits.installed.fault.letThrough": "energía que deja pasar",
  "commissioning.field.power.circuits.installed.residualCurrent": "corriente diferencial",
  "commissioning.field.power.circuits.installed.serviceReceptacle": "tomacorriente de servicio",
  "commissioning.field.power.circuits.installed.serviceReceptacle.distance":
    "distancia al tomacorriente de servicio",
  "commissioning.field.power.circuits.installed.serviceReceptacle.onLoadSide":
    "alimentación del tomacorriente de servicio",
  "commissioning.field.power.circuits.installed.disconnect.lockable":
    "bloqueo del medio de desconexión",
  "commissioning.field.power.circuits.installed.disconnect.onUnit":
    "medio de desconexión en la unidad",
  "commissioning.field.power.circuits.installed.whip.wiring.ambient":
    "temperatura ambiente del cable (tramo flexible final)",
  "commissioning.field.power.circuits.installed.whip.wiring.length":
    "longitud del circuito (tramo flexible final)",
  "commissioning.field.power.circuits.installed.whip.wiring.stranding":
    "cableado del conductor (tramo flexible final)",
  "commissioning.field.power.circuits.installed.whip.wiring.material":
    "material del conductor (tramo flexible final)",
  "commissioning.field.power.circuits.installed.whip.wiring.insulation":
    "aislamiento (tramo flexible final)",
  "commissioning.field.power.circuits.installed.whip.wiring.terminations":
    "temperatura nominal de los terminales (tramo flexible final)",
  "commissioning.field.power.circuits.installed.whip.wiring.cable":
    "tipo de cable (tramo flexible final)",
  "commissioning.field.power.circuits.installed.whip.wiring.currentCarryingConductors":
    "conductores portadores de corriente (tramo flexible final)",
  "commissioning.field.power.circuits.installed.whip.wiring.aboveRoof":
    "altura sobre el techo (tramo flexible final)",
  "commissioning.field.power.circuits.installed.whip.wiring.conduit":
    "tubo conduit (tramo flexible final)",
  "commissioning.field.power.circuits.installed.whip.wiring.method":
    "método de instalación (tramo flexible final)",
  "commissioning.field.power.circuits.installed.whip.wiring.groupedCircuits":
    "circuitos agrupados (tramo flexible final)",
  "commissioning.field.power.circuits.installed.whip.wiring.grouping":
    "agrupamiento de cables (tramo flexible final)",
  "commissioning.field.power.circuits.installed.whip.wiring.soilResistivity":
    "resistividad del suelo (tramo flexible final)",
  "commissioning.field.power.circuits.installed.whip.wiring.insulationLength":
    "longitud en aislamiento térmico (tramo flexible final)",
  "commissioning.field.power.circuits.name": "nombre del circuito",
  "commissioning.field.power.circuits.plate": "placa de datos del circuito",
  "commissioning.field.power.circuits.plate.minimumCircuitAmpacity":
    "ampacidad mínima del circuito",
  "commissioning.field.power.circuits.plate.maximumOvercurrentProtection":
    "protección máxima contra sobrecorriente del circuito",
  "commissioning.field.power.circuits.plate.ratedCurrent": "corriente nominal del circuito",
  "commissioning.field.power.circuits.plate.maximumFuse": "fusible máximo del circuito",
  "commissioning.field.power.circuits.nameplateReadAgain": "placa de datos leída de nuevo",
  "commissioning.field.power.circuits.plate.protectionMarking":
    "marca de sobrecorriente del circuito",
  "commissioning.field.power.circuits.plate.ratedLoadCurrent":
    "corriente de carga nominal del circuito",
  "commissioning.field.power.circuits.feeds": "unidad en el circuito",
  "commissioning.field.power.circuits.sharedWith": "otras cargas en el circuito",
  "commissioning.field.power.circuits.sharedWith.kind": "tipo de la otra carga",
  "commissioning.field.power.circuits.sharedWith.current": "corriente de la otra carga",
  "commissioning.field.power.circuits.sharedWith.maximumOvercurrentProtection":
    "protección máxima de la otra carga",
  "commissioning.field.power.circuits.sharedWith.continuous": "otra carga continua",
  "commissioning.field.power.circuits.verifications": "apartados comprobados según su texto",
  "commissioning.field.power.circuits.verifications.clause": "apartado comprobado",
  "commissioning.field.power.circuits.verifications.complies": "cumplimiento del apartado",
  "commissioning.field.power.circuits.verifications.by": "nombre de quien comprobó el apartado",
  "commissioning.field.power.circuits.verifications.at": "fecha de la comprobación del apartado",
  "commissioning.field.power.circuits.earthing": "esquema de puesta a tierra del suministro",
});
