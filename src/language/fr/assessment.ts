// French (of Canada) of what all verdicts share: outcomes, kinds of cautions, the dangers of the trade.
import type { Outcome } from "../../assessment/assessment.ts";
import type { CautionKind } from "../../assessment/caution.ts";
import type { SafetyStatements } from "../../assessment/safety.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = SafetyStatements &
  Words<`assessment.outcome.${Outcome}` | `assessment.caution.${CautionKind}`>;
const catalogue: Define<Said> = defineFrench;

/** What every verdict may say, in French. */
export const assessment: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "safety.others-govern":
    "La plaque signalétique, les instructions du fabricant, le code local et la pratique autorisée priment.",
  "safety.dry-nitrogen-only":
    "Azote sec seulement. Jamais d’oxygène, d’air comprimé ni de gaz inflammable : ils explosent au contact de l’huile.",
  "safety.regulator-and-relief":
    "Alimentez l’azote par un régulateur et une soupape de sûreté réglée au-dessous de la plus basse pression indiquée. Jamais directement de la bouteille.",
  "safety.raise-in-stages": "Montez la pression par paliers et tenez les personnes à l’écart.",
  "safety.lowest-rating":
    "Ne dépassez jamais la plus basse pression indiquée. Isolez ce qui n’admet pas l’essai; le côté BP peut admettre moins.",
  "safety.nitrogen-suffocates":
    "L’azote chasse l’air et peut asphyxier. Laissez-le s’échapper à l’extérieur.",
  "safety.open-under-pressure":
    "Ne desserrez, ne coupez et ne brasez jamais rien sous pression. Récupérez d’abord le frigorigène ou laissez échapper l’azote.",
  "safety.refrigerant-contact":
    "Le frigorigène liquide gèle la peau et les yeux. Portez gants et lunettes, aussi en retirant un boyau.",
  "safety.flammable-refrigerant":
    "Avec un frigorigène inflammable : éliminez les sources d’inflammation, ventilez, utilisez un détecteur de fuites (alarme à 25 % de la LII ou moins) et des outils adaptés, et purgez à l’azote avant toute flamme.",
  "safety.toxic-refrigerant": "Frigorigène toxique : portez une protection respiratoire.",
  "safety.refrigerant-suffocates":
    "Le frigorigène chasse l’air et peut asphyxier, surtout dans les lieux bas et fermés. Ventilez.",
  "safety.charge-tight-system":
    "Chargez à la balance, et jamais un système qui fuit ou n’a pas été essayé.",
  "safety.refrigerant-air-mixture":
    "Ne faites jamais d’essai de pression avec du frigorigène et de l’air. Même un frigorigène A1 peut brûler dans ce mélange.",
  "safety.compressor-in-vacuum": "Ne faites jamais tourner un compresseur sous vide.",
  "safety.line-voltage":
    "La tension peut tuer. Coupez, cadenassez et vérifiez l’absence de tension; les condensateurs de l’inverter restent chargés. Électriciens qualifiés seulement.",
  "safety.meter-category":
    "Mesurez avec un multimètre et des cordons de catégorie III (IV au branchement), vérifiés avant et après sur une source sous tension connue.",
  "safety.running-unit":
    "L’appareil est en marche : restez à l’écart des bornes sous tension et des ventilateurs.",
  "safety.work-at-height": "Travail en hauteur : assurez-vous, ainsi que l’échelle et la charge.",

  "assessment.outcome.pass": "CONFORME",
  "assessment.outcome.fail": "NON CONFORME",
  "assessment.outcome.inconclusive": "NON CONCLUANT",
  "assessment.caution.finding": "Constat",
  "assessment.caution.danger": "DANGER",
  "assessment.caution.governing": "Priorité",
});
