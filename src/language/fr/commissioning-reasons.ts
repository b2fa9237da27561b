// French of reasons and assumptions of the verdict on an installation.
import type { CommissioningReasons } from "../../commissioning/statements.ts";
import type { CatalogueOf, Define } from "../define.ts";
import { defineFrench } from "./typeset.ts";

const catalogue: Define<CommissioningReasons> = defineFrench;

/** Why the verdict is what it is, and what it assumes, in Canadian French. */
export const commissioningReasons: CatalogueOf<CommissioningReasons> = /* @__PURE__ */ catalogue(
  "fr-CA",
  {
    "commissioning.not-recorded": "Non renseigné : {fields}.",
    "commissioning.unusable-value": "Cette valeur ne peut pas servir ({field}) : {value}.",
    "commissioning.unusable-part": "Ce qui est noté ne peut pas servir : {field}.",
    "commissioning.value-too-low":
      "Valeur trop basse ({field}) : {value}; permis : au moins {limit}.",
    "commissioning.value-not-above":
      "Valeur trop basse ({field}) : {value}; exigé : plus de {limit}.",
    "commissioning.value-too-high":
      "Valeur trop élevée ({field}) : {value}; permis : au plus {limit}.",
    "commissioning.value-not-below":
      "Valeur trop élevée ({field}) : {value}; exigé : moins de {limit}.",
    "commissioning.too-few-entries":
      "Trop peu d’entrées ({field}) : {count}; exigé : au moins {limit}.",
    "commissioning.too-many-entries":
      "Trop d’entrées ({field}) : {count}; permis : au plus {limit}.",
    "commissioning.waived": "Non vérifié : dispensé par {by}, {at} : {why}.",
    "commissioning.waived-for-run": "Tracé {run} non vérifié : dispensé par {by}, {at} : {why}.",
    "commissioning.waived-by-nobody": "La dispense ne compte pas : personne n’est nommé.",
    "commissioning.waived-twice": "L’étape est dispensée plus d’une fois.",
    "commissioning.waiver-contradicted": "L’étape est dispensée, mais ceci est noté : {field}.",
    "commissioning.waiver-without-reason":
      "La dispense ne compte pas sans motif. Cette étape admet : {fits}.",
    "commissioning.waiver-does-not-fit":
      "Le motif ne convient pas à l’étape : {reason}. Cette étape admet : {fits}.",
    "commissioning.waiver-needs-a1":
      "Le local ne peut rester non vérifié que pour un frigorigène de classe de sécurité A1.",
    "commissioning.waiver-needs-heating-only":
      "La mise sous vide ne peut être omise que pour un appareil qui ne climatise jamais.",
    "commissioning.falls-away": "Non nécessaire : {construction}.",
    "commissioning.construction-contradicted":
      "Ceci est noté, bien que non nécessaire ({construction}) : {field}.",
    "commissioning.run-not-covered": "Le tracé {run} n’est pas couvert.",
    "commissioning.unknown-run": "Aucun tracé ne s’appelle {run}.",
    "commissioning.order-not-shown": {
      by: "hold",
      "open-valves":
        "Les heures ne montrent pas que les vérifications étaient conformes avant l’ouverture des robinets.",
      "add-charge":
        "Les heures ne montrent pas que les vérifications étaient conformes avant l’ajout de frigorigène.",
      other:
        "Les heures ne montrent pas que les vérifications étaient conformes avant la mise sous tension de l’appareil.",
    },
    "commissioning.line-other-than-port":
      "La {line}, {diameter}, n’a pas la taille de son port, {port} po. Y a-t-il un adaptateur, ou est-ce un autre diamètre?",
    "commissioning.line-with-adapter":
      "La {line}, {diameter}, est sur un port de {port} po, avec un adaptateur.",
    "commissioning.indoor-lift-within":
      "Hauteur entre les unités intérieures {lift} : dans le maximum de {most}.",
    "commissioning.indoor-lift-above":
      "Hauteur entre les unités intérieures {lift} : dépasse le maximum de {most}.",
    "commissioning.connected-within":
      "Les unités intérieures totalisent {total} : dans la limite de {limit}.",
    "commissioning.connected-enough":
      "Les unités intérieures totalisent {total}; exigé : au moins {limit}.",
    "commissioning.connected-above":
      "Les unités intérieures totalisent {total} : au-dessus de la limite de {limit}.",
    "commissioning.connected-below":
      "Les unités intérieures totalisent {total} : au-dessous de la limite de {limit}.",
    "commissioning.indoor-lift-too-close":
      "Trop juste pour trancher : la hauteur entre les unités intérieures est {lift}, le maximum {most}.",
    "commissioning.total-length-within": "Longueur totale {total} : dans le maximum de {most}.",
    "commissioning.total-length-above": "Longueur totale {total} : dépasse le maximum de {most}.",
    "commissioning.total-length-too-close":
      "Non concluant : la longueur totale est de {total} et le maximum, de {most}.",
    "commissioning.fewer-joints-than-ends":
      "Raccords indiqués : {count}. Deux conduites à deux extrémités en ont au moins quatre. En manque-t-il un?",
    "commissioning.manual-silent":
      "Le manuel ne donne pas de pression d’essai. Celle exigée vient d’une autre source : {standing}.",
    "commissioning.blend-fed-as-liquid": "Le mélange a été chargé en liquide.",
    "commissioning.blend-fed-as-vapor":
      "Le mélange a été chargé en vapeur; sa composition peut avoir changé.",
    "commissioning.drain-fall":
      "L’évacuation descend de {fall} du bac à son extrémité; exigé : au moins {needed}.",
    "commissioning.drain-falls-straight": "L’évacuation descend à la verticale.",
    "commissioning.usual-air-difference":
      "La plage du manuel n’est pas donnée. L’habituelle est prise : de {low} à {high}.",
    "commissioning.air-difference-within": {
      by: "mode",
      cooling: "L’air est refroidi de {difference} : dans la plage de {low} à {high}.",
      other: "L’air est réchauffé de {difference} : dans la plage de {low} à {high}.",
    },
    "commissioning.air-difference-outside": {
      by: "mode",
      cooling: "L’air est refroidi de {difference} : hors de la plage de {low} à {high}.",
      other: "L’air est réchauffé de {difference} : hors de la plage de {low} à {high}.",
    },
    "commissioning.air-difference-too-close": {
      by: "mode",
      cooling: "Non concluant : l’air est refroidi de {difference}; exigé : de {low} à {high}.",
      other: "Non concluant : l’air est réchauffé de {difference}; exigé : de {low} à {high}.",
    },
    "commissioning.air-the-other-way": {
      by: "mode",
      cooling:
        "En climatisation, l’air soufflé est plus chaud de {difference} que l’air repris. Sont-ils inversés?",
      other:
        "En chauffage, l’air soufflé est plus froid de {difference} que l’air repris. Sont-ils inversés?",
    },
    "commissioning.not-at-full-speed":
      "Le compresseur n’a pas tourné à pleine vitesse; l’air et le courant ne prouvent rien.",
    "commissioning.current-within":
      "Courant {current} : dans la limite de {most}, selon la plaque : {field}.",
    "commissioning.current-within-deviation":
      "Courant {current} : dépasse {most} de la plaque ({field}) de 15 % au plus, ce que sa norme permet.",
    "commissioning.current-above-plate":
      "Courant {current} : dépasse {most}, selon la plaque : {field}.",
    "commissioning.current-too-close":
      "Non concluant : courant de {current}; plaque : {most}, {field}.",
    "commissioning.current-odd":
      "Courant {current} à pleine vitesse : bien en dessous de {rated}, selon la plaque : {field}. Manque-t-il un chiffre?",
    "commissioning.current-unusual":
      "Courant {current} : à pleine charge, l’habituel va de {low} à {rated}, de la moitié à la totalité selon la plaque : {field}.",
    "commissioning.rules-not-passed":
      "Le circuit n’a pas été vérifié : l’ensemble de règles {rules} n’est pas disponible.",
    "commissioning.done-before-proof": {
      by: "hold",
      "open-valves": "Les robinets ont été ouverts le {at}, avant une vérification du {proof}.",
      "add-charge": "Du frigorigène a été ajouté le {at}, avant une vérification du {proof}.",
      other: "L’appareil a été mis sous tension le {at}, avant une vérification du {proof}.",
    },
    "commissioning.done-without-proof": {
      by: "hold",
      "open-valves": "Les robinets ont été ouverts avant que ceci soit conforme : {steps}.",
      "add-charge": "Du frigorigène a été ajouté avant que ceci soit conforme : {steps}.",
      other: "L’appareil a été mis sous tension avant que ceci soit conforme : {steps}.",
    },
    "commissioning.held": {
      by: "hold",
      "open-valves": "Gardez les robinets fermés tant que ceci n’est pas conforme : {steps}.",
      "add-charge": "N’ajoutez pas de frigorigène tant que ceci n’est pas conforme : {steps}.",
      other: "Laissez l’alimentation coupée tant que ceci n’est pas conforme : {steps}.",
    },
    "commissioning.released": {
      by: "hold",
      "open-valves":
        "Les robinets peuvent être ouverts : toutes les vérifications préalables sont conformes.",
      "add-charge":
        "Du frigorigène peut être ajouté : toutes les vérifications préalables sont conformes.",
      other:
        "L’appareil peut être mis sous tension : toutes les vérifications préalables sont conformes.",
    },
    "commissioning.left-to-verify":
      "Mis sous tension. Reste à vérifier selon le texte de la norme : {steps}.",
    "commissioning.released-by-declaration": {
      by: "hold",
      "open-valves": "Les robinets peuvent être ouverts. Sans objet, donc non vérifié : {steps}.",
      "add-charge": "Du frigorigène peut être ajouté. Sans objet, donc non vérifié : {steps}.",
      other: "L’appareil peut être mis sous tension. Sans objet, donc non vérifié : {steps}.",
    },
    "commissioning.older-than-work":
      "Le relevé du {read} est antérieur aux travaux du {at}, et n’en prouve rien.",
    "commissioning.rework-not-ordered":
      "Le travail daté du {at} a pu être fait après le relevé du {read}, qui alors ne prouve rien à son sujet.",
    "commissioning.begun-before-work":
      "Les relevés terminés le {read} ont commencé avant les travaux du {at}, et n’en prouvent rien.",
    "commissioning.lines-swapped":
      "La conduite de liquide, {liquid}, est notée comme plus large que la conduite de gaz, {vapor}.",
    "commissioning.joints-complete": {
      by: "count",
      one: "Le seul raccord est noté.",
      other: "Les {count} raccords sont notés.",
    },
    "commissioning.joints-incomplete": "Raccords notés : {recorded} sur {count}.",
    "commissioning.joint-recorded-twice": "Noté plus d’une fois : raccord {joints}.",
    "commissioning.joint-defect": "L’inspection a trouvé un défaut.",
    "commissioning.joint-inspected": "L’inspection n’a trouvé aucun défaut.",
    "commissioning.brazed-with-nitrogen": "Brasé sous flux d’azote.",
    "commissioning.brazed-without-nitrogen": "Brasé sans flux d’azote.",
    "commissioning.no-flare-of-line":
      "Aucun évasement n’est noté pour la {line}, {diameter}. Tailles notées, en pouces : {tubes}. Une saisie est-elle copiée, ou y a-t-il un adaptateur?",
    "commissioning.held-long-enough": "Durée de l’essai : {held}; durée exigée : {required}.",
    "commissioning.held-too-short":
      "Durée de l’essai : {held} seulement; durée exigée : {required}.",
    "commissioning.within-marked-pressure":
      "L’essai a atteint {pressure}, sans dépasser la plus basse pression indiquée, {limit}.",
    "commissioning.above-marked-pressure":
      "L’essai a atteint {pressure} : au-dessus de la plus basse pression indiquée, {limit}.",
    "commissioning.test-pressure-reached": "Essayé à {pressure}; exigé : au moins {limit}.",
    "commissioning.test-pressure-too-low":
      "Essayé à {pressure} seulement; exigé : au moins {limit}.",
    "commissioning.test-below-refrigerant":
      "Essayé à {pressure} : au-dessous des {own} de {refrigerant} au repos à {temperature}.",
    "commissioning.stands-outdoors":
      "Aucun local n’est enregistré : l’appareil entier est supposé être à l’extérieur. S’il se trouve dans un local, il faut l’enregistrer : sa charge y est confrontée.",
    "commissioning.nothing-added":
      "Rien n’a été ajouté : le manuel ne demande rien à cette longueur.",
    "commissioning.weighed-within":
      "La charge ajoutée, {added}, est à moins de {tolerance} de celle exigée, {asked}.",
    "commissioning.weighed-outside":
      "La charge ajoutée, {added}, est à plus de {tolerance} de celle exigée, {asked}.",
    "commissioning.weighed-too-close":
      "Non concluant : la charge ajoutée est de {added}; exigée : {asked}, avec une tolérance de {tolerance}.",
    "commissioning.above-maximum-charge": "La charge totale, {total}, dépasse la maximale, {most}.",
    "commissioning.near-maximum-charge":
      "Non concluant : la charge totale est de {total} et la maximale, de {most}.",
    "commissioning.tolerance-too-wide":
      "La tolérance, {tolerance}, est trop large pour une charge de {whole} : plus du dixième.",
    "commissioning.valves-opened": "Les robinets ont été ouverts le {at}.",
    "commissioning.water-drained": "L’eau versée dans le bac s’est écoulée correctement.",
    "commissioning.water-did-not-drain":
      "L’eau versée dans le bac ne s’est pas écoulée correctement.",
    "commissioning.exact-scale":
      "L’exactitude de la balance n’est pas donnée; elle est supposée exacte.",
    "commissioning.joints-undated":
      "Les raccords sans date sont supposés faits avant les essais : {joints}.",
    "commissioning.calibration-taken-for-granted":
      "Sans dates de relevé et d’étalonnage, supposés étalonnés : {fields}.",
  },
);
