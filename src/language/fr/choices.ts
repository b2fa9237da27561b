// French (of Canada) of the closed words of a record and of a verdict, by the field that picks one of them.
import type { ChoiceWord } from "../../report/choices.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = Words<ChoiceWord>;
const catalogue: Define<Said> = defineFrench;

/** How a report says the words that a field picks from, in French; the designation of a standard stays. */
export const choices: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "report.choice.fedAs.liquid": "liquide",
  "report.choice.fedAs.vapor": "vapeur",

  "report.choice.compressor.inverter": "à vitesse variable",
  "report.choice.compressor.single-speed": "à vitesse fixe",

  "report.choice.duty.both": "refroidissement et chauffage",
  "report.choice.duty.cooling": "refroidissement",
  "report.choice.duty.heating": "chauffage",

  "report.choice.expansion.evaporating-unit": "dans l’appareil qui évapore",
  "report.choice.expansion.outdoor-unit": "dans l’appareil extérieur",

  "report.choice.preChargedFor.each-run": "chaque parcours",
  "report.choice.preChargedFor.sum": "tous les parcours ensemble",

  "report.choice.shortLineRule.add-and-subtract": "ajouter ou retirer",
  "report.choice.shortLineRule.add-only": "ajouter seulement, parcours par parcours",
  "report.choice.shortLineRule.net-add-only": "ajouter seulement, sur tous les parcours",
  "report.choice.shortLineRule.not-stated": "non indiqué dans le manuel",

  "report.choice.meteringDevice.electronic-valve": "détendeur électronique",
  "report.choice.meteringDevice.orifice": "orifice fixe",
  "report.choice.meteringDevice.thermostatic-valve": "détendeur thermostatique",

  "report.choice.material.low-permeation": "à faible perméation",
  "report.choice.material.metal": "métal",
  "report.choice.material.rubber": "caoutchouc",
  "report.choice.material.aluminum": "aluminium",
  "report.choice.material.copper": "cuivre",

  "report.choice.isolation.hose-removed": "retrait du raccord au système",
  "report.choice.isolation.isolation-valve": "vanne d’isolement au système",
  "report.choice.isolation.pump-valve": "vanne de la pompe",

  "report.choice.policy.guideSpec15182": "devis type (UFGS 15182)",
  "report.choice.policy.guideSpec15741N": "devis type (UFGS 15741N)",
  "report.choice.policy.splitManualA": "manuel d’un bibloc, critère A",
  "report.choice.policy.splitManualB": "manuel d’un bibloc, critère B",
  "report.choice.policy.closeControlManual": "manuel d’un appareil de précision",
  "report.choice.policy.multiSplitManualC": "manuel d’un multibloc, critère C",
  "report.choice.policy.multiSplitManualD": "manuel d’un multibloc, critère D",
  "report.choice.policy.distributorAdvice": "conseil d’un distributeur de pièces",
  "report.choice.policy.ashrae15Memory": "ASHRAE 15-2022, de mémoire",
  "report.choice.policy.commonPractice500": "pratique courante, 500 microns",
  "report.choice.policy.provenEarly500": "pratique courante, 500 microns, terminée dès la preuve",

  "report.choice.kind.brazed": "brasé",
  "report.choice.kind.coupling": "raccord rapide",
  "report.choice.kind.flare": "évasé",
  "report.choice.kind.pressed": "serti",
  "report.choice.kind.breaker": "disjoncteur",
  "report.choice.kind.fuse": "à fusible",
  "report.choice.kind.fuse or breaker": "fusible ou disjoncteur",
  "report.choice.kind.unit": "appareil du même genre",
  "report.choice.kind.other": "autre charge",
  "report.choice.kind.correction": "rectification",
  "report.choice.kind.rework": "reprise",

  "report.choice.port.commonSuction": "aspiration commune",
  "report.choice.port.liquid": "côté liquide",
  "report.choice.port.vapor": "côté gaz",

  "report.choice.feeds.motor-compressor": "motocompresseur",
  "report.choice.feeds.other": "autre charge",

  "report.choice.groundingMaterial.aluminum": "aluminium",
  "report.choice.groundingMaterial.copper": "cuivre",

  "report.choice.cable.NM": "câble sous gaine non métallique",
  "report.choice.cable.other": "autre",

  "report.choice.conduit.PVC": "en PVC",
  "report.choice.conduit.aluminum": "aluminium",
  "report.choice.conduit.steel": "acier",

  "report.choice.grouping.bunched": "groupés",
  "report.choice.grouping.perforated tray": "chemin de câbles perforé",
  "report.choice.grouping.single layer": "une seule couche",

  "report.choice.stranding.solid": "massif",
  "report.choice.stranding.stranded": "toronné",

  "report.choice.occupancy.dwelling": "logement",
  "report.choice.occupancy.other": "autre",

  "report.choice.measuredAt.service": "branchement",
  "report.choice.measuredAt.unit": "appareil",

  "report.choice.state.load": "en marche",
  "report.choice.state.rest": "au repos",
  "report.choice.state.start": "au démarrage",

  "report.choice.wall.aluminum": "tube d’aluminium",
  "report.choice.wall.copper": "tube de cuivre",
  "report.choice.wall.rigid": "rigide",

  "report.choice.end.between": "entre les appareils",
  "report.choice.end.indoor": "appareil intérieur",
  "report.choice.end.outdoor": "appareil extérieur",

  "report.choice.place.ceiling": "plafond",
  "report.choice.place.floor": "sol",
  "report.choice.place.wall": "mur",
  "report.choice.place.window": "fenêtre",

  "report.choice.serves.branch-box": "boîte de dérivation",
  "report.choice.serves.indoor-unit": "appareil intérieur",

  "report.choice.lengthIs.measured": "mesurée",
  "report.choice.lengthIs.nominal": "nominale, d’un jeu de liaisons d’usine",
  "report.choice.outdoorUnit.above": "plus haut que l’intérieur",
  "report.choice.outdoorUnit.below": "plus bas que l’intérieur",
  "report.choice.outdoorUnit.level": "au niveau de l’intérieur",

  "report.choice.rules.nfpa-70-2020": "NEC 2020 (NFPA 70)",
  "report.choice.rules.nfpa-70-2023": "NEC 2023 (NFPA 70)",
  "report.choice.rules.nfpa-70-2026": "NEC 2026 (NFPA 70)",
  "report.choice.rules.csa-c22.1-2024": "CEC 2024 (CSA C22.1)",
  "report.choice.rules.iec-60364": "IEC 60364",
  "report.choice.rules.bs-7671-2018": "BS 7671:2018",
  "report.choice.rules.as-nzs-3000-2018-australia": "AS/NZS 3000:2018 (Australie)",
  "report.choice.rules.as-nzs-3000-2018-new-zealand": "AS/NZS 3000:2018 (Nouvelle-Zélande)",
  "report.choice.rules.japan-interpretation": "Japon, interprétation des normes techniques",

  "report.choice.standard.ansi-c84.1-2020": "ANSI C84.1-2020",
  "report.choice.standard.iec-60038": "IEC 60038",
  "report.choice.standard.japan-article-38": "Japon, article 38 du règlement",
  "report.choice.standard.esqcr-2002": "ESQCR 2002 (Royaume-Uni)",

  "report.choice.decidedBy.unrestricted": "charge permise dans tout local",
  "report.choice.decidedBy.m2": "maximum selon la surface (m2)",
  "report.choice.decidedBy.floor-area": "surface du local",
  "report.choice.decidedBy.release-height-cap": "plafond par hauteur de libération",
  "report.choice.decidedBy.room-height-cap": "plafond par hauteur du local",
  "report.choice.decidedBy.joined-area": "surface des locaux réunis",
  "report.choice.decidedBy.openings": "ouvertures",
  "report.choice.decidedBy.tightness": "étanchéité de l’appareil",
  "report.choice.decidedBy.circulated-area": "surface à air brassé",
  "report.choice.decidedBy.airflow": "débit d’air",

  "report.choice.method.subcooling": "sous-refroidissement",
  "report.choice.method.superheat": "surchauffe",
  "report.choice.method.weigh": "pesée",
});
