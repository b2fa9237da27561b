// French (of Canada) of a charge and its room: sentences and words.
import type { ChargeLimitStatements, ChargeLimitWord } from "../../charge-limit/statements.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = ChargeLimitStatements & Words<ChargeLimitWord>;
const catalogue: Define<Said> = defineFrench;

/** What `charge-limit` says, in French. */
export const chargeLimit: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "charge-limit.shares-make-100": "Les parts doivent totaliser 100 %.",
  "charge-limit.place-or-height":
    "Indiquez l’un des deux : l’emplacement de l’unité intérieure ou sa hauteur d’installation.",
  "charge-limit.other-clauses":
    "Au-dessus, d’autres articles s’appliquent : étanchéité renforcée, ventilation, capteurs.",
  "charge-limit.no-value-by-basis": "Aucune valeur pour un autre frigorigène dans {basis}.",
  "charge-limit.others-by-concentration":
    "Un frigorigène d’une autre classe suit sa limite de concentration.",
  "charge-limit.give-its-own-limit":
    "Pour un autre frigorigène, saisissez la limite de sa fiche de sécurité.",

  "charge-limit.within-limit": "La charge, {charge}, est dans la limite de {limit}.",
  "charge-limit.above-limit": "La charge, {charge}, dépasse la limite de {limit}.",
  "charge-limit.too-close-to-call":
    "Non concluant : charge {charge} ± {uncertainty}, limite {limit}.",
  "charge-limit.room-does-not-matter":
    "Jusqu’à {limit}, la taille du local n’importe pas. La charge est de {charge}.",
  "charge-limit.beyond-m2":
    "La charge, {charge}, dépasse {limit}, le maximum qu’une superficie de plancher permet.",
  "charge-limit.beyond-m3":
    "La charge, {charge}, dépasse {limit}; au-delà, cette édition n’a pas de règle.",
  "charge-limit.protection-not-stated": "Nécessaire pour cette limite et non donné : {missing}.",
  "charge-limit.every-room-passes": {
    by: "count",
    one: "La charge est dans la limite du seul local desservi.",
    other: "La charge est dans la limite de chacun des {count} locaux desservis.",
  },
  "charge-limit.room-fails": "Local {room} : la charge dépasse sa limite.",
  "charge-limit.room-inconclusive": "Local {room} : non concluant.",
  "charge-limit.nothing-near":
    "Aucune ouverture ni source d’inflammation près de l’unité; distance exigée : {required}.",
  "charge-limit.clear-of-openings":
    "L’ouverture ou la source d’inflammation la plus proche est à {distance}; distance exigée : {required}.",
  "charge-limit.too-near-an-opening":
    "L’ouverture ou la source d’inflammation la plus proche est à {distance} seulement; distance exigée : {required}.",
  "charge-limit.distance-too-close-to-call":
    "Non concluant : l’ouverture ou la source d’inflammation la plus proche est à {distance}; distance exigée : {required}.",
  "charge-limit.protection-zone-not-stated":
    "La zone de protection autour de l’appareil n’est pas donnée.",
  "charge-limit.distances-not-stated":
    "Les distances aux ouvertures et aux sources d’inflammation ne sont pas données.",
  "charge-limit.closed-in-outdoors":
    "L’appareil est enfermé. Le frigorigène qui fuit s’y accumule.",

  "charge-limit.one-closed-room":
    "Un local fermé et non ventilé, avec un appareil fixe, sans ventilateur ni capteur.",
  "charge-limit.edition-used": "Évalué selon {edition}.",
  "charge-limit.low-altitude":
    "L’altitude n’est pas donnée : au plus 600 m (2000 pi) sont supposés.",
  "charge-limit.above-reference-height":
    "{height} dépasse les hauteurs de référence. Seulement si le manuel le permet.",
  "charge-limit.flammability-limit-used":
    "Limite inférieure d’inflammabilité utilisée : {limit} ({standing}).",
  "charge-limit.concentration-limit-used":
    "Limite de concentration utilisée : {limit} ({standing}).",
  "charge-limit.exact-charge":
    "L’exactitude de la charge n’est pas donnée; elle est supposée exacte.",
  "charge-limit.exact-size":
    "L’exactitude de la taille du local n’est pas donnée; elle est supposée exacte.",
  "charge-limit.exact-distance":
    "L’exactitude des distances n’est pas donnée; elles sont supposées exactes.",

  "charge-limit.flammability-too":
    "Cette limite concerne seulement la respiration. Un frigorigène inflammable doit aussi respecter la règle d’inflammabilité.",
  "charge-limit.from-memory":
    "De mémoire, non vérifié dans le texte : {rules}. Vérifiez avant que cela décide.",
  "charge-limit.refrigerant-in-water":
    "Une fuite dans l’échangeur à eau porte du frigorigène dans l’eau de chauffage. Posez le séparateur d’air et la soupape de sûreté que le manuel exige.",
  "charge-limit.market-rules-older":
    "Ces règles ont été lues dans leur état du {reviewed}. La date demandée, {date}, est postérieure. Cherchez des règles plus récentes.",

  "charge-limit.add-no-refrigerant": "N’ajoutez pas de frigorigène.",
  "charge-limit.find-larger-room":
    "Déplacez l’unité intérieure dans un local de {area} ou plus, ou choisissez un appareil avec moins de charge.",
  "charge-limit.find-larger-volume":
    "Déplacez l’unité intérieure dans un local de {volume} ou plus, ou choisissez un appareil avec moins de charge.",
  "charge-limit.use-other-clauses":
    "Suivez le manuel pour l’étanchéité renforcée, la ventilation et les capteurs, ou choisissez un appareil de {maximum} ou moins.",
  "charge-limit.divide-the-system": "Divisez le système en systèmes de {maximum} ou moins chacun.",
  "charge-limit.enlarge-openings": "Agrandissez les deux ouvertures vers le local voisin.",
  "charge-limit.raise-airflow":
    "Augmentez le débit d’air, ou choisissez un appareil avec moins de charge.",
  "charge-limit.weigh-or-measure-better": "Pesez la charge ou mesurez le local plus exactement.",
  "charge-limit.state-protection": "Saisissez : {missing}.",
  "charge-limit.act-on-room": "Dans le local {room}, faites ce qui suit.",
  "charge-limit.move-outdoor-unit":
    "Déplacez l’appareil jusqu’à ce que toute ouverture et toute source d’inflammation soit à {required} ou plus.",
  "charge-limit.state-protection-zone": "Saisissez la zone de protection du manuel de l’appareil.",
  "charge-limit.measure-distances":
    "Mesurez la distance à chaque porte, fenêtre, prise d’air, avaloir et source d’inflammation.",
  "charge-limit.move-to-open-air": "Déplacez l’appareil à l’air libre.",

  "charge-limit.standing.published": "publié",
  "charge-limit.standing.secondary": "de source secondaire",
  "charge-limit.standing.from-memory": "de mémoire",
  "charge-limit.standing.stated": "selon l’indication",
  "charge-limit.rule.thresholds": "les seuils m1, m2 et m3",
  "charge-limit.rule.flammability-limit": "la limite inférieure d’inflammabilité",
  "charge-limit.rule.concentration-limit": "la limite de concentration",
  "charge-limit.rule.altitude-factor": "le facteur d’altitude",
  "charge-limit.rule.openings": "la règle des ouvertures",
  "charge-limit.rule.enhanced-tightness": "la règle d’étanchéité renforcée",
  "charge-limit.rule.circulation": "la règle de circulation",
  "charge-limit.rule.dispersal": "la charge par volume effectif de dispersion",
  "charge-limit.rule.ventilation-limits": "les limites avec ventilation",
  "charge-limit.edition.iec-60335-2-40-2013": "IEC 60335-2-40:2013, édition 5",
  "charge-limit.edition.iec-60335-2-40-2018": "IEC 60335-2-40:2018, édition 6",
  "charge-limit.edition.iec-60335-2-40-2022": "IEC 60335-2-40:2022, édition 7",
  "charge-limit.edition.ul-60335-2-40-2019": "UL 60335-2-40:2019, 3e édition",
  "charge-limit.edition.ul-60335-2-40-2022": "UL 60335-2-40:2022, 4e édition",
  "charge-limit.edition.en-378-1": "EN 378-1:2016",
  "charge-limit.missing.openings-placed":
    "si les ouvertures sont permanentes et placées comme exigé",
  "charge-limit.missing.enhanced-tightness": "si le fabricant déclare une étanchéité renforcée",
  "charge-limit.missing.detector": "si un détecteur démarre le ventilateur",
  "charge-limit.cause.room-too-small": "local trop petit",
  "charge-limit.cause.openings-too-small": "ouvertures trop petites",
  "charge-limit.cause.airflow-too-small": "débit d’air insuffisant",
  "charge-limit.cause.beyond-m2": "excessive pour toute superficie de plancher",
  "charge-limit.cause.beyond-m3": "excessive pour la règle",
  "charge-limit.cause.too-near-an-opening":
    "trop près d’une ouverture ou d’une source d’inflammation",
  "charge-limit.cause.closed-in": "appareil enfermé",
});
