// French of the words of the verdict on a circuit: points of a rule set, causes, advice.
import type { CircuitProtectionWord } from "../../circuit-protection/statements.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = Words<CircuitProtectionWord>;
const catalogue: Define<Said> = defineFrench;

/** Words of the verdict on a circuit: points of a rule set, causes, advice, in Canadian French. */
export const circuitProtectionWords: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "circuit-protection.device.breaker": "disjoncteur",
  "circuit-protection.device.fuse": "fusible",
  "circuit-protection.section.run": "parcours depuis le panneau",
  "circuit-protection.section.whip": "raccordement flexible",
  "circuit-protection.point.marked-values": "valeurs de la plaque signalétique",
  "circuit-protection.point.device-ratings": "courants nominaux normalisés",
  "circuit-protection.point.poles": "pôles",
  "circuit-protection.point.voltage-marking": "tension marquée",
  "circuit-protection.point.overload": "protection du conducteur",
  "circuit-protection.point.small-fuse": "courant de fusion des petits fusibles",
  "circuit-protection.point.ampacity": "courant admissible",
  "circuit-protection.point.terminations": "température des bornes",
  "circuit-protection.point.sheathed-cable": "limite du câble sous gaine",
  "circuit-protection.point.ambient": "température ambiante",
  "circuit-protection.point.grouping": "conducteurs ensemble",
  "circuit-protection.point.thermal-insulation": "câble dans l’isolation thermique",
  "circuit-protection.point.rooftop": "parcours sur un toit",
  "circuit-protection.point.aluminum-terminals": "bornes pour l’aluminium",
  "circuit-protection.point.grounding": "conducteur de continuité des masses",
  "circuit-protection.point.enlarged-grounding": "continuité des masses avec conducteurs grossis",
  "circuit-protection.point.disconnect-rating": "courant nominal du sectionneur",
  "circuit-protection.point.disconnect-place": "emplacement du sectionneur",
  "circuit-protection.point.working-space": "espace de travail",
  "circuit-protection.point.voltage-drop": "chute de tension",
  "circuit-protection.point.residual-current": "dispositif différentiel",
  "circuit-protection.point.ground-fault": "protection contre les défauts à la terre",
  "circuit-protection.point.service-receptacle": "prise de service",
  "circuit-protection.point.rooftop-raceway": "canalisation sur un toit",
  "circuit-protection.point.compressor": "protection d’un compresseur",
  "circuit-protection.advice.enclosure-tool-or-lock":
    "Un sectionneur qui expose des pièces sous tension une fois ouvert doit exiger un outil pour s’ouvrir ou pouvoir se verrouiller",
  "circuit-protection.advice.enclosure-locked":
    "Un sectionneur qui expose des pièces sous tension une fois ouvert doit être verrouillé ou exiger un outil",
  "circuit-protection.advice.surge-protection":
    "Les branchements de logements exigent une protection contre les surtensions",
  "circuit-protection.advice.buried-cable-residual-current":
    "Un câble à moins de 50 mm de profondeur dans un mur exige un dispositif différentiel de 30 mA",
  "circuit-protection.advice.own-circuit":
    "Les manuels et les codes exigent d’ordinaire un circuit réservé à l’appareil",
  "circuit-protection.advice.earth-class-d":
    "La prise de terre doit être de classe D : 100 Ω au plus, ou 500 Ω si un disjoncteur différentiel déclenche en 0,5 s",
  "circuit-protection.advice.notifiable-work":
    "Un nouveau circuit dans un logement doit être déclaré en Angleterre et au pays de Galles",
  "circuit-protection.advice.gas-clearance":
    "Les appareils à arc doivent être séparés des compteurs, évents et soupapes de gaz",
  "circuit-protection.unjudged.equipment-grounding": "conducteur de continuité des masses",
  "circuit-protection.unjudged.disconnect": "sectionneur",
  "circuit-protection.unjudged.voltage-drop": "chute de tension",
  "circuit-protection.unjudged.service-receptacle": "prise de service",
  "circuit-protection.unjudged.in-sight": "sectionneur en vue",
  "circuit-protection.unjudged.near-enough": "distance du sectionneur",
  "circuit-protection.unjudged.accessible": "accès au sectionneur",
  "circuit-protection.unjudged.not-in-the-way": "sectionneur à l’écart des panneaux",
  "circuit-protection.unjudged.lockable": "verrouillage du sectionneur",
  "circuit-protection.unjudged.not-on-unit": "sectionneur hors de l’appareil",
  "circuit-protection.unjudged.working-space": "espace de travail",
  "circuit-protection.unjudged.short-circuit-rating": "courant de court-circuit admissible",
  "circuit-protection.unjudged.horsepower-rating": "puissance en hp du sectionneur",
  "circuit-protection.unjudged.fault-loop": "boucle de défaut et temps de coupure",
  "circuit-protection.unjudged.breaking-capacity": "pouvoir de coupure",
  "circuit-protection.cause.device-rating": "mauvais calibre de disjoncteur ou de fusible",
  "circuit-protection.cause.device-kind": "disjoncteur au lieu de fusibles",
  "circuit-protection.cause.device-poles": "pas assez de pôles",
  "circuit-protection.cause.device-voltage": "tension marquée insuffisante",
  "circuit-protection.cause.conductor": "conducteur sous-dimensionné",
  "circuit-protection.cause.terminals": "bornes non prévues pour l’aluminium",
  "circuit-protection.cause.equipment-grounding": "conducteur de continuité des masses",
  "circuit-protection.cause.disconnect-rating": "sectionneur trop petit",
  "circuit-protection.cause.disconnect-fuse": "mauvais fusibles dans le sectionneur",
  "circuit-protection.cause.disconnect-place": "emplacement du sectionneur",
  "circuit-protection.cause.working-space": "espace de travail insuffisant",
  "circuit-protection.cause.service-receptacle": "prise de service",
  "circuit-protection.cause.voltage-drop": "chute de tension excessive",
  "circuit-protection.cause.not-confirmed": "articles non confirmés",
  "circuit-protection.cause.residual-current": "dispositif différentiel",
  "circuit-protection.cause.ampacity-too-low": "courant admissible indiqué trop bas",
  "circuit-protection.cause.protection-too-high": "protection indiquée trop élevée",
});
