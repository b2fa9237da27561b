// French (of Canada) of the line set: sentences and words.
import type { LineSetStatements, LineSetWord } from "../../line-set/statements.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = LineSetStatements & Words<LineSetWord>;
const catalogue: Define<Said> = defineFrench;

/** What `line-set` says, in French. */
export const lineSet: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "line-set.rate-unit": "Vérifiez l’unité : g/m, oz/pi ou lb/pi.",
  "line-set.viscosity-unit": "En µPa·s : 100 µPa·s = 0,0001 Pa·s.",

  "line-set.within-maximum": "{figure} {value} : dans le maximum de {limit}.",
  "line-set.above-maximum": "{figure} {value} : dépasse le maximum de {limit}.",
  "line-set.near-maximum":
    "{figure} {value} ± {uncertainty} : trop près du maximum de {limit} pour trancher.",
  "line-set.above-minimum": "{figure} {value} : au moins {limit}, comme exigé.",
  "line-set.below-minimum": "{figure} {value} : au-dessous du minimum de {limit}.",
  "line-set.near-minimum":
    "{figure} {value} ± {uncertainty} : trop près du minimum de {limit} pour trancher.",
  "line-set.kept-as-measured":
    "{figure} {value} ± {uncertainty} : tel que mesuré, dans les {limit} autorisés.",
  "line-set.bends-within-maximum": {
    by: "count",
    one: "{count} coude : dans le maximum de {most}.",
    other: "{count} coudes : dans le maximum de {most}.",
  },
  "line-set.bends-above-maximum": {
    by: "count",
    one: "{count} coude : dépasse le maximum de {most}.",
    other: "{count} coudes : dépassent le maximum de {most}.",
  },
  "line-set.bends-not-counted": "Les coudes n’ont pas été comptés; maximum {most}.",
  "line-set.bend-length-not-counted":
    "Les coudes n’ont pas été comptés; chacun ajoute {bend} à la longueur équivalente.",

  "line-set.add":
    "Selon la règle, ajoutez {charge} : la longueur est de {length}, {difference} de plus que la longueur préchargée, {preCharged}, à {rate}.",
  "line-set.take-out":
    "Selon la règle, retirez {charge} : la longueur est de {length}, {difference} de moins que la longueur préchargée, {preCharged}, à {rate}.",
  "line-set.nothing-to-add":
    "Selon la règle, n’ajoutez rien : la charge d’usine suffit pour {length} de conduite (longueur préchargée : {preCharged}).",
  "line-set.short-line-rule-not-known":
    "La longueur, {length}, est de {difference} inférieure à la longueur préchargée, {preCharged}. La règle pour les conduites courtes n’est pas connue.",
  "line-set.allowances": "Autres ajustements : {mass}.",
  "line-set.nothing-to-add-in-all": "Selon la règle, n’ajoutez rien : le total est de {total}.",
  "line-set.total-not-known":
    "La charge d’usine n’est pas donnée; le total n’a pas été comparé à {limit}.",

  "line-set.rate-plausible":
    "La charge par longueur, {rate}, est de {ratio} fois le contenu d’une conduite pleine, {full} : dans la plage plausible, de {low} à {high}.",
  "line-set.rate-implausible":
    "La charge par longueur, {rate}, est de {ratio} fois le contenu d’une conduite pleine, {full} : hors de la plage plausible, de {low} à {high}.",
  "line-set.rate-fits-other-device":
    "La charge par longueur, {rate}, est de {ratio} fois le contenu d’une conduite pleine, {full}. Avec ce lieu de détente, de {low} à {high} est plausible.",
  "line-set.two-phase-liquid-line":
    "Une charge inférieure à une conduite pleine est juste si le liquide se détend à l’extérieur : la conduite contient alors du liquide et de la vapeur.",
  "line-set.rate-too-high":
    "La charge par longueur, {rate}, dépasse celle de toute conduite pleine.",
  "line-set.rate-per-foot":
    "La valeur conviendrait à une charge par pied. A-t-elle été lue par mètre?",
  "line-set.rate-per-meter":
    "La valeur conviendrait à une charge par mètre. A-t-elle été lue par pied?",

  "line-set.subcooling-enough":
    "Sous-refroidissement {available} : {needed} exigés pour une perte de {loss}.",
  "line-set.subcooling-too-low":
    "Sous-refroidissement {available} : inférieur à celui exigé, {needed}, pour une perte de {loss}. Le liquide se vaporise en ligne.",
  "line-set.subcooling-near":
    "Sous-refroidissement {available} ± {uncertainty} : non concluant. Exigé : {needed} pour une perte de {loss}.",
  "line-set.subcooling-not-known":
    "Le sous-refroidissement n’est pas connu; exigé : {needed} pour une perte de {loss}.",
  "line-set.liquid-velocity-within":
    "Vitesse du liquide {velocity} : dans la plage de {least} à {most} des guides de tuyauterie.",
  "line-set.liquid-velocity-high":
    "Vitesse du liquide {velocity} : dépasse le maximum des guides de tuyauterie, {most}.",
  "line-set.liquid-velocity-low":
    "Vitesse du liquide {velocity} : au-dessous du minimum des guides de tuyauterie, {least}. Une conduite large contient plus de charge.",
  "line-set.loss-not-known": "La perte de charge n’est pas connue; au plus {limit} permis.",
  "line-set.oil-returns":
    "Vitesse de la vapeur à la puissance minimale {velocity} : au moins {least}, comme exigé pour le retour d’huile.",
  "line-set.oil-stays":
    "Vitesse de la vapeur à la puissance minimale {velocity} : trop basse pour monter l’huile, qui exige {oil}.",
  "line-set.oil-return-open-riser":
    "Vitesse de la vapeur à la puissance minimale {velocity} : inférieure à celle exigée, {least}, même si l’huile monte à partir de {oil}.",
  "line-set.oil-return-open-level":
    "Vitesse de la vapeur à la puissance minimale {velocity} : inférieure à celle exigée pour le retour d’huile, {least}.",
  "line-set.vapor-noise":
    "Vitesse de la vapeur à pleine puissance {velocity} : dépasse le maximum de {most}. Elle est bruyante.",

  "line-set.stock-length": "{stock} est la plus courte longueur standard qui couvre {needed}.",
  "line-set.surplus-to-cut": "Surplus à couper : {surplus}.",
  "line-set.coil-to-minimum":
    "Pour atteindre le minimum, enroulez à plat près de l’unité extérieure : {coiled}. La charge compte {installed}.",
  "line-set.coil-surplus":
    "Surplus à enrouler à plat près de l’unité extérieure : {coiled}. La charge compte {installed}.",
  "line-set.no-stock-length":
    "Longueur nécessaire {needed} : dépasse la plus grande longueur standard, {longest}.",
  "line-set.items-fit": "Les éléments passent et remplissent {fill} de l’ouverture.",
  "line-set.opening-too-small":
    "L’ouverture est insuffisante. Un manchon mural de {sleeve} convient aux éléments.",
  "line-set.no-layout-found":
    "Aucune disposition n’a été trouvée, et aucune n’est exclue. Un manchon mural de {sleeve} convient aux éléments.",
  "line-set.to-recover": "Frigorigène à récupérer : {mass}. Il en reste {keep} dans le système.",
  "line-set.to-add": "Frigorigène à ajouter : {mass}. Le système atteint {keep}.",
  "line-set.charge-not-known": "La charge du système n’est pas connue.",
  "line-set.cylinder-too-small": "La bouteille peut recevoir {room}; il faut retirer {mass}.",

  "line-set.limits-of-the-manual":
    "Les limites sont celles du manuel de cet appareil. Celles qui ne sont pas données n’ont pas été vérifiées.",
  "line-set.maximum-length-not-checked":
    "La longueur maximale du manuel n’est pas donnée et n’a pas été vérifiée.",
  "line-set.minimum-length-not-checked":
    "La longueur minimale du manuel n’est pas donnée et n’a pas été vérifiée.",
  "line-set.room-limit-not-checked":
    "La limite de charge du local n’est pas donnée et n’a pas été vérifiée.",
  "line-set.saturated-liquid": "La conduite est pleine de liquide saturé à sa température.",
  "line-set.no-heat-gain": "La conduite de liquide n’absorbe pas de chaleur.",
  "line-set.expansion-indoors": "Le liquide se détend à l’unité intérieure.",
  "line-set.liquid-only": "La conduite ne contient que du liquide.",
  "line-set.loss-not-checked":
    "Aucune limite de perte de charge n’est donnée; elle n’a pas été vérifiée.",
  "line-set.same-density": "La masse volumique de la vapeur est la même aux deux puissances.",
  "line-set.guide-minimum-velocity":
    "Vitesse minimale de la vapeur selon les guides de tuyauterie : {least}.",
  "line-set.guide-maximum-velocity":
    "Vitesse maximale de la vapeur selon les guides de tuyauterie : {most}.",
  "line-set.no-slack": "Sans marge pour mesurer et faire les extrémités.",
  "line-set.no-service-loop": "Sans boucle de réserve.",
  "line-set.round-and-stiff": "Les éléments sont droits, ronds et non écrasés.",
  "line-set.no-clearance": "Aucun jeu n’est prévu pour passer les éléments.",
  "line-set.charge-as-labeled": "La charge du système est celle de l’étiquette.",
  "line-set.cylinder-not-checked": "Aucune bouteille n’est donnée; sa place n’a pas été vérifiée.",

  "line-set.charge-after-tests":
    "Chargez à la balance, et seulement une fois l’essai de pression et la mise sous vide conformes.",
  "line-set.no-kinks":
    "Cintrez à la cintreuse, sans pli. Enroulez à plat pour que l’huile ne s’accumule pas. Gardez les extrémités bouchées.",
  "line-set.drain-falls-outward":
    "L’évacuation doit descendre vers l’extérieur par l’ouverture. Scellez-la.",
  "line-set.drilling":
    "Avant de percer, cherchez câbles et tuyaux dans le mur. Coupez l’alimentation de ce qui est proche.",
  "line-set.overfilled-cylinder":
    "Pesez la bouteille de récupération et ne la remplissez jamais trop : elle peut éclater en se réchauffant.",
  "line-set.mixed-refrigerants": "Ne mélangez jamais de frigorigènes dans une bouteille.",
  "line-set.never-vent":
    "Ne rejetez jamais de frigorigène à l’atmosphère. Techniciens qualifiés seulement.",

  "line-set.measure-better": "Mesurez de nouveau, plus exactement : {figure}.",
  "line-set.shorten-line":
    "Raccourcissez la conduite à {limit} ou moins, ou posez un appareil qui l’admet. Aucune charge ne compense.",
  "line-set.lengthen-line": "Posez au moins {limit} de conduite, ou un appareil qui admet moins.",
  "line-set.reduce-height":
    "Réduisez le dénivelé à {limit} ou moins, ou posez un appareil qui l’admet.",
  "line-set.fewer-bends": {
    by: "most",
    one: "Posez la conduite avec {most} coude au plus.",
    other: "Posez la conduite avec {most} coudes ou moins.",
  },
  "line-set.count-bends": "Comptez les coudes et saisissez le nombre.",
  "line-set.enter-short-line-rule":
    "Cherchez dans le manuel si une conduite courte oblige à retirer du frigorigène, et saisissez la règle.",
  "line-set.reduce-charge":
    "N’ajoutez pas cette charge. Raccourcissez la conduite, ou trouvez un local et un appareil qui admettent plus de {limit}.",
  "line-set.enter-factory-charge": "Saisissez la charge d’usine de la plaque signalétique.",
  "line-set.read-rate-again":
    "Relisez la plaque signalétique : taille du tube, charge par longueur et son unité.",
  "line-set.enter-expansion-device":
    "Vérifiez si le liquide se détend à l’intérieur ou à l’extérieur, et saisissez-le.",
  "line-set.measure-subcooling":
    "Mesurez le sous-refroidissement à l’unité extérieure et saisissez-le.",
  "line-set.reduce-loss":
    "Réduisez la perte de charge : conduite de liquide plus large ou plus courte, selon le manuel.",
  "line-set.no-extra-charge": "N’ajoutez pas de frigorigène pour compenser.",
  "line-set.wider-liquid-line": "Posez une conduite de liquide plus large, selon le manuel.",
  "line-set.ask-line-size": "Cherchez dans le manuel si cette taille de tube est permise.",
  "line-set.enter-loss": "Calculez la perte par frottement, montée et raccords, et saisissez-la.",
  "line-set.smaller-riser":
    "Posez une colonne montante plus petite ou des pièges à huile, selon le manuel.",
  "line-set.ask-oil-return":
    "Cherchez dans le manuel comment l’appareil ramène l’huile à la puissance minimale.",
  "line-set.wider-vapor-line": "Posez une conduite de gaz plus large, selon le manuel.",
  "line-set.other-stock": "Trouvez un ensemble de {needed} à {limit}, ou un qui puisse être coupé.",
  "line-set.take-from-roll": "Prenez du tube en rouleau, ou brasez deux ensembles bout à bout.",
  "line-set.larger-opening":
    "Faites un manchon mural de {sleeve} ou plus, ou une gaine plus grande.",
  "line-set.recover-all": "Récupérez tout le frigorigène et pesez-le.",
  "line-set.charge-by-weight": "Chargez ensuite {keep} à la balance.",
  "line-set.other-cylinder": "Utilisez une bouteille pouvant recevoir {mass} ou plus.",

  "line-set.figure.length": "Longueur",
  "line-set.figure.equivalent-length": "Longueur équivalente",
  "line-set.figure.height-difference": "Dénivelé",
  "line-set.figure.height-difference-outdoor-above": "Dénivelé (unité extérieure au-dessus)",
  "line-set.figure.total-charge": "Charge totale",
  "line-set.figure.added-charge": "Charge ajoutée",
  "line-set.figure.pressure-loss": "Perte de charge",
  "line-set.figure.subcooling": "Sous-refroidissement",
  "line-set.cause.per-foot-taken-as-per-meter": "charge par pied lue par mètre",
  "line-set.cause.per-meter-taken-as-per-foot": "charge par mètre lue par pied",
});
