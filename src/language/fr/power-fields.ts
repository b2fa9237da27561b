// French of the fields of a record: circuits and supply.
import type { PowerField } from "../../commissioning/words.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = Words<PowerField>;
const catalogue: Define<Said> = defineFrench;

/** The fields of circuits and supply, in Canadian French. */
export const powerFields: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "commissioning.field.power": "énergie électrique",
  "commissioning.field.power.voltage": "tension d’alimentation",
  "commissioning.field.power.phases": "phases",
  "commissioning.field.power.system": "système d’alimentation",
  "commissioning.field.power.circuits": "circuit électrique",
  "commissioning.field.power.circuits.rules": "règles électriques",
  "commissioning.field.power.circuits.wiring": "câblage",
  "commissioning.field.power.circuits.wiring.ambient": "température ambiante du câble",
  "commissioning.field.power.circuits.wiring.length": "longueur du circuit",
  "commissioning.field.power.circuits.wiring.stranding": "toronnage",
  "commissioning.field.power.circuits.wiring.material": "matériau du conducteur",
  "commissioning.field.power.circuits.wiring.insulation": "isolant",
  "commissioning.field.power.circuits.wiring.terminations": "température nominale des bornes",
  "commissioning.field.power.circuits.wiring.cable": "type de câble",
  "commissioning.field.power.circuits.wiring.currentCarryingConductors":
    "conducteurs porteurs de courant",
  "commissioning.field.power.circuits.wiring.aboveRoof": "hauteur au-dessus du toit",
  "commissioning.field.power.circuits.wiring.conduit": "conduit électrique",
  "commissioning.field.power.circuits.wiring.method": "mode de pose",
  "commissioning.field.power.circuits.wiring.groupedCircuits": "circuits groupés",
  "commissioning.field.power.circuits.installed.device": "dispositif de surintensité",
  "commissioning.field.power.circuits.installed.device.kind": "type de dispositif de surintensité",
  "commissioning.field.power.circuits.installed.device.rating":
    "courant nominal du dispositif de surintensité",
  "commissioning.field.power.circuits.installed.device.poles": "pôles",
  "commissioning.field.power.circuits.installed.device.voltageRating":
    "tension nominale du dispositif",
  "commissioning.field.power.circuits.installed.device.hacr": "marque HACR",
  "commissioning.field.power.circuits.installed.device.curve": "courbe de déclenchement",
  "commissioning.field.power.circuits.installed.conductor": "grosseur du conducteur",
  "commissioning.field.power.circuits.installed.equipmentGrounding":
    "conducteur de continuité des masses",
  "commissioning.field.power.circuits.installed.disconnect": "sectionneur",
  "commissioning.field.power.circuits.installed.disconnect.rating":
    "courant nominal du sectionneur",
  "commissioning.field.power.circuits.installed.disconnect.fuse": "fusible du sectionneur",
  "commissioning.field.power.circuits.installed.disconnect.visible": "sectionneur en vue",
  "commissioning.field.power.circuits.installed.disconnect.distance": "distance au sectionneur",
  "commissioning.field.power.circuits.installed.disconnect.readilyAccessible":
    "accès facile au sectionneur",
  "commissioning.field.power.circuits.installed.disconnect.inTheWay": "obstacle au sectionneur",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace": "espace de travail",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.depth":
    "profondeur de l’espace de travail",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.width":
    "largeur de l’espace de travail",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.height":
    "hauteur de l’espace de travail",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.equipmentWidth":
    "largeur de l’appareil",
  "commissioning.field.power.circuits.installed.disconnect.workingSpace.condition":
    "condition de l’espace de travail",
  "commissioning.field.power.circuits.installed": "circuit installé",
  "commissioning.field.power.circuits.powerFactor": "facteur de puissance",
  "commissioning.field.power.circuits.occupancy": "usage du bâtiment",
  "commissioning.field.power.circuits.groundFaultText":
    "texte adopté sur la protection contre les défauts à la terre",
  "commissioning.field.power.circuits.at": "date de l’inspection du circuit",
  "commissioning.field.power.supply": "alimentation électrique",
  "commissioning.field.power.supply.readings": "relevés d’alimentation",
  "commissioning.field.power.supply.readings.state": "état de l’appareil",
  "commissioning.field.power.supply.readings.elapsed": "temps écoulé du relevé d’alimentation",
  "commissioning.field.power.supply.readings.voltage": "tension",
  "commissioning.field.power.supply.readings.current": "courant",
  "commissioning.field.power.supply.readings.lineToLine": "tensions entre phases",
  "commissioning.field.power.supply.readings.lineToGround": "tensions entre phase et terre",
  "commissioning.field.power.supply.readings.currents": "courants de ligne",
  "commissioning.field.power.supply.measuredAt": "lieu du relevé d’alimentation",
  "commissioning.field.power.supply.standard": "norme de l’alimentation",
  "commissioning.field.power.supply.range": "plage de l’alimentation",
  "commissioning.field.power.supply.range.minimum": "tension d’alimentation la plus basse",
  "commissioning.field.power.supply.range.maximum": "tension d’alimentation la plus haute",
  "commissioning.field.power.supply.unbalanceLimit": "déséquilibre de tension maximal",
  "commissioning.field.power.supply.at": "date du relevé d’alimentation",
  "commissioning.field.power.energizedAt": "date de mise sous tension de l’appareil",
  "commissioning.field.power.circuits.wiring.grouping": "groupement des câbles",
  "commissioning.field.power.circuits.wiring.soilResistivity": "résistivité du sol",
  "commissioning.field.power.circuits.wiring.insulationLength":
    "longueur dans l’isolation thermique",
  "commissioning.field.power.circuits.installed.whip": "raccordement flexible",
  "commissioning.field.power.circuits.installed.whip.conductor":
    "grosseur du conducteur du raccordement flexible",
  "commissioning.field.power.circuits.installed.whip.wiring": "câblage du raccordement flexible",
  "commissioning.field.power.circuits.installed.aluminumTerminals":
    "bornes marquées pour l’aluminium",
  "commissioning.field.power.circuits.installed.groundingMaterial":
    "matériau du conducteur de continuité des masses",
  "commissioning.field.power.circuits.installed.groundingByRaceway":
    "continuité des masses par la canalisation",
  "commissioning.field.power.circuits.installed.compressionFittings":
    "raccords à compression de la canalisation",
  "commissioning.field.power.circuits.installed.fault": "énergie de défaut",
  "commissioning.field.power.circuits.installed.fault.current": "courant de défaut",
  "commissioning.field.power.circuits.installed.fault.clearingTime": "temps de coupure du défaut",
  "commissioning.field.power.circuits.installed.fault.letThrough": "énergie passante",
  "commissioning.field.power.circuits.installed.residualCurrent": "courant différentiel",
  "commissioning.field.power.circuits.installed.serviceReceptacle": "prise de service",
  "commissioning.field.power.circuits.installed.serviceReceptacle.distance":
    "distance à la prise de service",
  "commissioning.field.power.circuits.installed.serviceReceptacle.onLoadSide":
    "alimentation de la prise de service",
  "commissioning.field.power.circuits.installed.disconnect.lockable": "verrouillage du sectionneur",
  "commissioning.field.power.circuits.installed.disconnect.onUnit": "sectionneur sur l’appareil",
  "commissioning.field.power.circuits.installed.whip.wiring.ambient":
    "température ambiante du câble (raccordement flexible)",
  "commissioning.field.power.circuits.installed.whip.wiring.length":
    "longueur du circuit (raccordement flexible)",
  "commissioning.field.power.circuits.installed.whip.wiring.stranding":
    "toronnage (raccordement flexible)",
  "commissioning.field.power.circuits.installed.whip.wiring.material":
    "matériau du conducteur (raccordement flexible)",
  "commissioning.field.power.circuits.installed.whip.wiring.insulation":
    "isolant (raccordement flexible)",
  "commissioning.field.power.circuits.installed.whip.wiring.terminations":
    "température nominale des bornes (raccordement flexible)",
  "commissioning.field.power.circuits.installed.whip.wiring.cable":
    "type de câble (raccordement flexible)",
  "commissioning.field.power.circuits.installed.whip.wiring.currentCarryingConductors":
    "conducteurs porteurs de courant (raccordement flexible)",
  "commissioning.field.power.circuits.installed.whip.wiring.aboveRoof":
    "hauteur au-dessus du toit (raccordement flexible)",
  "commissioning.field.power.circuits.installed.whip.wiring.conduit":
    "conduit électrique (raccordement flexible)",
  "commissioning.field.power.circuits.installed.whip.wiring.method":
    "mode de pose (raccordement flexible)",
  "commissioning.field.power.circuits.installed.whip.wiring.groupedCircuits":
    "circuits groupés (raccordement flexible)",
  "commissioning.field.power.circuits.installed.whip.wiring.grouping":
    "groupement des câbles (raccordement flexible)",
  "commissioning.field.power.circuits.installed.whip.wiring.soilResistivity":
    "résistivité du sol (raccordement flexible)",
  "commissioning.field.power.circuits.installed.whip.wiring.insulationLength":
    "longueur dans l’isolation thermique (raccordement flexible)",
  "commissioning.field.power.circuits.name": "nom du circuit",
  "commissioning.field.power.circuits.plate": "plaque signalétique du circuit",
  "commissioning.field.power.circuits.plate.minimumCircuitAmpacity":
    "courant admissible minimal du circuit",
  "commissioning.field.power.circuits.plate.maximumOvercurrentProtection":
    "protection maximale contre les surintensités du circuit",
  "commissioning.field.power.circuits.plate.ratedCurrent": "courant nominal du circuit",
  "commissioning.field.power.circuits.plate.maximumFuse": "fusible maximal du circuit",
  "commissioning.field.power.circuits.nameplateReadAgain": "plaque signalétique relue",
  "commissioning.field.power.circuits.plate.protectionMarking":
    "marquage de surintensité du circuit",
  "commissioning.field.power.circuits.plate.ratedLoadCurrent":
    "courant de charge nominal du circuit",
  "commissioning.field.power.circuits.feeds": "appareil sur le circuit",
  "commissioning.field.power.circuits.sharedWith": "autres charges sur le circuit",
  "commissioning.field.power.circuits.sharedWith.kind": "type de l’autre charge",
  "commissioning.field.power.circuits.sharedWith.current": "courant de l’autre charge",
  "commissioning.field.power.circuits.sharedWith.maximumOvercurrentProtection":
    "protection maximale de l’autre charge",
  "commissioning.field.power.circuits.sharedWith.continuous": "autre charge continue",
  "commissioning.field.power.circuits.verifications": "articles vérifiés selon leur texte",
  "commissioning.field.power.circuits.verifications.clause": "article vérifié",
  "commissioning.field.power.circuits.verifications.complies": "conformité à l’article",
  "commissioning.field.power.circuits.verifications.by": "nom de qui a vérifié l’article",
  "commissioning.field.power.circuits.verifications.at": "date de la vérification de l’article",
  "commissioning.field.power.circuits.earthing": "schéma de mise à la terre de l’alimentation",
});
