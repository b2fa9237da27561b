// French (of Canada) of superheat and subcooling: sentences and words.
import type { RefrigerantsStatements, RefrigerantsWord } from "../../refrigerants/statements.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = RefrigerantsStatements & Words<RefrigerantsWord>;
const catalogue: Define<Said> = defineFrench;

/** What `refrigerants` says, in French. */
export const refrigerants: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "refrigerants.table-needs-atmosphere":
    "Les pressions manométriques exigent la pression atmosphérique. Sans elle, le tableau est en absolu.",
  "refrigerants.number-of-rows": "C’est le nombre de lignes qu’aurait la table. Changez le pas.",
  "refrigerants.check-designation":
    "Relisez la désignation sur la plaque signalétique. Si elle est juste, la bibliothèque n’a pas de données pour elle.",
  "refrigerants.range-of": "C’est la plage de saturation : {refrigerant}.",
  "refrigerants.gauge-needs-atmosphere":
    "Le manomètre mesure au-dessus de l’air ambiant. Indiquez la pression atmosphérique du lieu : relevé d’un baromètre ou altitude.",

  "refrigerants.within-tolerance":
    "{figure} {value} ± {uncertainty} : à moins de {tolerance} de la cible, {target}.",
  "refrigerants.above-tolerance":
    "{figure} {value} ± {uncertainty} : dépasse de plus de {tolerance} la cible, {target}.",
  "refrigerants.below-tolerance":
    "{figure} {value} ± {uncertainty} : plus de {tolerance} au-dessous de la cible, {target}.",
  "refrigerants.below-saturation": {
    by: "figure",
    superheat:
      "{figure} {value} ± {uncertainty} : inférieur à zéro. Les relevés se contredisent, ou il y a du liquide dans la conduite.",
    other:
      "{figure} {value} ± {uncertainty} : inférieur à zéro. Les relevés se contredisent, ou il y a de la vapeur dans la conduite.",
  },
  "refrigerants.too-close-to-call":
    "Non concluant : {figure} {value} ± {uncertainty}, cible {target} ± {tolerance}.",
  "refrigerants.largest-uncertainty":
    "La plus grande part de l’incertitude-type de {now} vient de la {probe}.",
  "refrigerants.closer-than-the-model":
    "Le relevé est si près d’une limite qu’aucune meilleure sonde ne trancherait.",
  "refrigerants.target-out-of-reach":
    "{figure} : {target} n’est pas une cible. Les cibles restent au-dessous de {most}.",
  "refrigerants.tolerance-wide":
    "Une tolérance de {tolerance} autour de {target} laisse passer une charge incorrecte. Maximum utile : {largest}.",
  "refrigerants.tolerance-reaches-saturation":
    "Une tolérance de {tolerance} autour de {target} atteint la saturation, où la valeur ne dit rien de la charge.",

  "refrigerants.steady":
    "Le système fonctionne de façon stable. La sonde est propre, bien fixée et isolée.",
  "refrigerants.nominal-composition": "Le frigorigène est pur ou a sa composition nominale.",
  "refrigerants.saturation-uncertainty":
    "La pression de saturation a elle-même une incertitude-type de {share}.",
  "refrigerants.exact-atmosphere":
    "L’exactitude de la pression atmosphérique n’est pas donnée; elle est supposée exacte.",

  "refrigerants.looks-like-other-side": {
    by: "figure",
    superheat:
      "Saturé à {saturation}, cela ressemble au côté HP. La surchauffe de la vapeur se mesure du côté BP.",
    other:
      "Saturé à {saturation}, cela ressemble au côté BP. Le sous-refroidissement se mesure du côté HP.",
  },
  "refrigerants.only-where-the-manual-charges-by-it":
    "{figure} : les appareils inverter et à détendeur électronique se chargent à la balance, sauf indication contraire de leur manuel.",

  "refrigerants.check-airflow-first":
    "Vérifiez d’abord les filtres, les serpentins et le débit d’air.",
  "refrigerants.correct-the-charge":
    "{figure} : corrigez la charge selon le manuel jusqu’à approcher {target}, puis refaites le relevé.",
  "refrigerants.check-both-readings":
    "Vérifiez le frigorigène, le port du manomètre et le contact de la sonde, puis refaites le relevé.",
  "refrigerants.use-better-probe":
    "Refaites le relevé avec une meilleure {probe} : une incertitude-type de {needed} trancherait.",
  "refrigerants.adjust-to-target": "Ajustez vers {target} et refaites le relevé.",
  "refrigerants.state-target":
    "{figure} : saisissez la cible de la plaque signalétique ou du manuel.",
  "refrigerants.state-tolerance": "{figure} : saisissez la tolérance du manuel.",

  "refrigerants.figure.superheat": "Surchauffe de la vapeur",
  "refrigerants.figure.subcooling": "Sous-refroidissement",
  "refrigerants.probe.pressure": "sonde de pression",
  "refrigerants.probe.temperature": "sonde de température",
  "refrigerants.cause.low": "au-dessous de la cible",
  "refrigerants.cause.high": "au-dessus de la cible",
});
