// English of the fields of a record: circuits and supply.
import type { PowerField } from "../../commissioning/words.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = Words<PowerField>;
const catalogue: Define<Said> = define;

/** The fields of circuits and supply, in American English. */
export const powerFields: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "commissioning.field.power": "power",
  "commissioning.field.power.voltage": "supply voltage",
  "commissioning.field.power.phases": "phases",
  "commissioning.field.power.system": "supply system",
  "commissioning.field.power.circuits": "circuit",
  "commissioning.field.power.circuits.rules": "electrical rules",
  "commissioning.field.power.circuits.wiring": "wiring",
  "commissioning.field.power.circuits.wiring.ambient": "ambient temperature of the cable",
  "commissioning.field.power.circuits.wiring.length": "length of the circuit",
  "commissioning.field.power.circuits.wiring.stranding": "stranding",
  "commissioning.field.power.circuits.wiring.material": "conductor material",
  "commissioning.field.power.circuits.wiring.insulation": "insulation",
  "commissioning.field.power.circuits.wiring.terminations": "terminal rating",
  "commissioning.field.power.circuits.wiring.cable": "kind of cable",
  "commissioning.field.power.circuits.wiring.currentCarryingConductors":
    "current-carrying conductors",
  "commissioning.field.power.circuits.wiring.aboveRoof": "height above the roof",
  "commissioning.field.power.circuits.wiring.conduit": "conduit",
  "commissioning.field.power.circuits.wiring.method": "method of installation",
  "commissioning.field.power.circuits.wiring.groupedCircuits": "grouped circuits",
  "commissioning.field.power.circuits.installed.device": "overcurrent device",
  "commissioning.field.power.circuits.installed.device.kind": "kind of overcurrent device",
  "commissioning.field.power.circuits.installed.device.rating": "rating of the overcurrent device",
  "commissioning.field.power.circuits.installed.device.poles": "poles",
  "commissioning.field.power.circuits.installed.device.voltageRating":
    "voltage rating of the device",
  "commissioning.field.power.circuits.installed.device.hacr": "HACR marking",
  "commissioning.field.power.circuits.installed.device.curve": "trip curve",
  "commissioning.field.power.circuits.installed.conductor": "conductor size",
  "commissioning.field.power.circuits.installed.equipmentGrounding":
    "equipment grounding conductor",
  "commissioning.field.power.circuits.installed.disconnect": "disconnect",
  "commissioning.field.power.circuits.installed.disconnect.rating": "rating of the disconnect",
  "commissioning.field.power.circuits.installed.disconnect.fuse": "fuse of the disconnect",
  "commissioning.field.power.circuits.installed.disconnect.visible": "disconnect within sight",
  "commissioning.field.power.circuits.installed.disconnect.distance": "distance to the disconnect",
  "commissioning.field.power.circuits.installed.disconnect.readilyAccessible":
    "ready access to the disconnect",
  "commissioning.field.power.circuits.installed.disconnect.inTheWay": "obstacle at the disconnect",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace": "working space",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.depth":
    "depth of the working space",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.width":
    "width of the working space",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.height":
    "height of the working space",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.equipmentWidth":
    "width of the equipment",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.condition":
    "condition of the working space",
  "commissioning.field.power.circuits.installed": "installed circuit",
  "commissioning.field.power.circuits.powerFactor": "power factor",
  "commissioning.field.power.circuits.occupancy": "occupancy",
  "commissioning.field.power.circuits.groundFaultText": "adopted text on ground-fault protection",
  "commissioning.field.power.circuits.at": "date of the circuit inspection",
  "commissioning.field.power.supply": "supply",
  "commissioning.field.power.supply.readings": "supply readings",
  "commissioning.field.power.supply.readings.state": "state of the unit",
  "commissioning.field.power.supply.readings.elapsed": "elapsed time of the supply reading",
  "commissioning.field.power.supply.readings.voltage": "voltage",
  "commissioning.field.power.supply.readings.current": "current",
  "commissioning.field.power.supply.readings.lineToLine": "line-to-line voltages",
  "commissioning.field.power.supply.readings.lineToGround": "line-to-ground voltages",
  "commissioning.field.power.supply.readings.currents": "line currents",
  "commissioning.field.power.supply.measuredAt": "place of the supply reading",
  "commissioning.field.power.supply.standard": "supply standard",
  "commissioning.field.power.supply.range": "range of the supply",
  "commissioning.field.power.supply.range.minimum": "lowest supply voltage",
  "commissioning.field.power.supply.range.maximum": "highest supply voltage",
  "commissioning.field.power.supply.unbalanceLimit": "maximum voltage unbalance",
  "commissioning.field.power.supply.at": "date of the supply reading",
  "commissioning.field.power.energizedAt": "date the unit was energized",
  "commissioning.field.power.circuits.wiring.grouping": "grouping of cables",
  "commissioning.field.power.circuits.wiring.soilResistivity": "soil resistivity",
  "commissioning.field.power.circuits.wiring.insulationLength": "length in thermal insulation",
  "commissioning.field.power.circuits.installed.whip": "whip",
  "commissioning.field.power.circuits.installed.whip.conductor": "conductor size of the whip",
  "commissioning.field.power.circuits.installed.whip.wiring": "wiring of the whip",
  "commissioning.field.power.circuits.installed.aluminumTerminals": "terminals marked for aluminum",
  "commissioning.field.power.circuits.installed.groundingMaterial":
    "material of the grounding conductor",
  "commissioning.field.power.circuits.installed.groundingByRaceway": "grounding by the raceway",
  "commissioning.field.power.circuits.installed.compressionFittings":
    "compression fittings of the raceway",
  "commissioning.field.power.circuits.installed.fault": "fault energy",
  "commissioning.field.power.circuits.installed.fault.current": "fault current",
  "commissioning.field.power.circuits.installed.fault.clearingTime": "clearing time of the fault",
  "commissioning.field.power.circuits.installed.fault.letThrough": "let-through energy",
  "commissioning.field.power.circuits.installed.residualCurrent": "residual current",
  "commissioning.field.power.circuits.installed.serviceReceptacle": "service receptacle",
  "commissioning.field.power.circuits.installed.serviceReceptacle.distance":
    "distance to the service receptacle",
  "commissioning.field.power.circuits.installed.serviceReceptacle.onLoadSide":
    "feed of the service receptacle",
  "commissioning.field.power.circuits.installed.disconnect.lockable": "lock of the disconnect",
  "commissioning.field.power.circuits.installed.disconnect.onUnit": "disconnect on the unit",
  "commissioning.field.power.circuits.installed.whip.wiring.ambient":
    "ambient temperature of the cable (whip)",
  "commissioning.field.power.circuits.installed.whip.wiring.length": "length of the circuit (whip)",
  "commissioning.field.power.circuits.installed.whip.wiring.stranding": "stranding (whip)",
  "commissioning.field.power.circuits.installed.whip.wiring.material": "conductor material (whip)",
  "commissioning.field.power.circuits.installed.whip.wiring.insulation": "insulation (whip)",
  "commissioning.field.power.circuits.installed.whip.wiring.terminations": "terminal rating (whip)",
  "commissioning.field.power.circuits.installed.whip.wiring.cable": "kind of cable (whip)",
  "commissioning.field.power.circuits.installed.whip.wiring.currentCarryingConductors":
    "current-carrying conductors (whip)",
  "commissioning.field.power.circuits.installed.whip.wiring.aboveRoof":
    "height above the roof (whip)",
  "commissioning.field.power.circuits.installed.whip.wiring.conduit": "conduit (whip)",
  "commissioning.field.power.circuits.installed.whip.wiring.method":
    "method of installation (whip)",
  "commissioning.field.power.circuits.installed.whip.wiring.groupedCircuits":
    "grouped circuits (whip)",
  "commissioning.field.power.circuits.installed.whip.wiring.grouping": "grouping of cables (whip)",
  "commissioning.field.power.circuits.installed.whip.wiring.soilResistivity":
    "soil resistivity (whip)",
  "commissioning.field.power.circuits.installed.whip.wiring.insulationLength":
    "length in thermal insulation (whip)",
  "commissioning.field.power.circuits.name": "circuit name",
  "commissioning.field.power.circuits.plate": "nameplate of the circuit",
  "commissioning.field.power.circuits.plate.minimumCircuitAmpacity":
    "minimum circuit ampacity of the circuit",
  "commissioning.field.power.circuits.plate.maximumOvercurrentProtection":
    "maximum overcurrent protection of the circuit",
  "commissioning.field.power.circuits.plate.ratedCurrent": "rated current of the circuit",
  "commissioning.field.power.circuits.plate.maximumFuse": "maximum fuse of the circuit",
  "commissioning.field.power.circuits.nameplateReadAgain": "nameplate read again",
  "commissioning.field.power.circuits.plate.protectionMarking":
    "overcurrent marking of the circuit",
  "commissioning.field.power.circuits.plate.ratedLoadCurrent": "rated-load current of the circuit",
  "commissioning.field.power.circuits.feeds": "unit on the circuit",
  "commissioning.field.power.circuits.sharedWith": "other loads on the circuit",
  "commissioning.field.power.circuits.sharedWith.kind": "kind of other load",
  "commissioning.field.power.circuits.sharedWith.current": "current of the other load",
  "commissioning.field.power.circuits.sharedWith.maximumOvercurrentProtection":
    "maximum protection of the other load",
  "commissioning.field.power.circuits.sharedWith.continuous": "continuous other load",
  "commissioning.field.power.circuits.verifications": "clauses checked by their text",
  "commissioning.field.power.circuits.verifications.clause": "clause that was checked",
  "commissioning.field.power.circuits.verifications.complies": "compliance with the clause",
  "commissioning.field.power.circuits.verifications.by": "name of who checked the clause",
  "commissioning.field.power.circuits.verifications.at": "date of the check of the clause",
  "commissioning.field.power.circuits.earthing": "earthing of the supply",
});
