// French of findings and dangers of the verdict on an installation.
import type { CommissioningFindings } from "../../commissioning/statements.ts";
import type { CatalogueOf, Define } from "../define.ts";
import { defineFrench } from "./typeset.ts";

const catalogue: Define<CommissioningFindings> = defineFrench;

/** What a pass would hide, figures that cannot be, and the dangers, in Canadian French. */
export const commissioningFindings: CatalogueOf<CommissioningFindings> = /* @__PURE__ */ catalogue(
  "fr-CA",
  {
    "commissioning.lift-above-length":
      "Le dénivelé, {lift}, dépasse la longueur, {length}. L’un des deux a-t-il été noté dans une autre unité?",
    "commissioning.pre-charged-above-longest":
      "La longueur préchargée, {preCharged}, dépasse la longueur maximale, {longest}. A-t-elle été notée dans une autre unité?",
    "commissioning.allowed-drop-large":
      "Une chute permise de {limit} dépasse le vingtième de la pression d’essai. A-t-elle été notée dans une autre unité?",
    "commissioning.temperatures-apart":
      "Le gaz était à {test}, le système sous vide à {evacuation} : plus de {usual} d’écart. L’une a-t-elle été notée dans une autre unité?",
    "commissioning.log-copied":
      "Les relevés sont les mêmes, ligne par ligne, que ceux d’un autre essai. Sont-ils de celui-ci?",
    "commissioning.altitude-odd":
      "Une altitude de {altitude} est inhabituelle. A-t-elle été notée dans une autre unité?",
    "commissioning.barometer-odd":
      "Le baromètre indique {atmosphere}; à {altitude}, c’est environ {usual}. Est-ce la pression ramenée au niveau de la mer?",
    "commissioning.barometer-in-hectopascal":
      "Le baromètre indique {atmosphere}; à {altitude}, c’est environ {usual}. Est-ce en hPa?",
    "commissioning.room-height-odd":
      "La superficie et le volume donnent une hauteur de {height}; habituel : de {low} à {high}. L’un a-t-il été noté dans une autre unité?",
    "commissioning.ceiling-odd":
      "Une hauteur sous plafond de {height} est inhabituelle; habituel : de {low} à {high}. A-t-elle été notée dans une autre unité?",
    "commissioning.unit-high":
      "Une hauteur de pose de {height} est inhabituelle; habituel : jusqu’à {usual}. A-t-elle été notée dans une autre unité?",
    "commissioning.factory-charge-odd":
      "Une charge d’usine de {charge} est inhabituelle pour {capacity}; habituel : de {low} à {high}. A-t-elle été notée dans une autre unité?",
    "commissioning.factory-charge-is-maximum":
      "La charge d’usine, {charge}, n’est pas inférieure à la charge maximale, {most}. Est-ce la maximale?",
    "commissioning.total-as-added":
      "La charge ajoutée, {added}, vaut autant que la charge totale attendue. Est-ce la totale?",
    "commissioning.added-large":
      "La charge ajoutée, {added}, dépasse 60 % de la charge d’usine, {charge}. A-t-elle été notée dans une autre unité?",
    "commissioning.rated-above-ampacity":
      "Le courant de charge nominal, {rated}, dépasse le courant admissible minimal du circuit, {ampacity}. Sont-ils inversés?",
    "commissioning.protection-far-above-ampacity":
      "La protection maximale contre les surintensités, {protection}, est anormalement élevée pour un courant admissible de {ampacity}. Manque-t-il un séparateur décimal?",
    "commissioning.capacity-odd":
      "Une puissance de {capacity} ne va pas avec {rated} à {voltage}. A-t-elle été notée dans une autre unité?",
    "commissioning.length-odd":
      "Inhabituel : {field}, {value}; habituellement de {low} à {high}. Est-ce noté dans une autre unité?",
    "commissioning.volume-odd":
      "Inhabituel : {field}, {value}; habituellement de {low} à {high}. Est-ce noté dans une autre unité?",
    "commissioning.temperature-odd":
      "Inhabituel : {field}, {value}; habituellement de {low} à {high}. Est-ce noté dans une autre unité?",
    "commissioning.pressure-odd":
      "Inhabituel : {field}, {value}; habituellement de {low} à {high}. Est-ce noté dans une autre unité?",
    "commissioning.mass-odd":
      "Inhabituel : {field}, {value}; habituellement de {low} à {high}. Est-ce noté dans une autre unité?",
    "commissioning.area-odd":
      "Inhabituel : {field}, {value}; habituellement de {low} à {high}. Est-ce noté dans une autre unité?",
    "commissioning.power-odd":
      "Inhabituel : {field}, {value}; habituellement de {low} à {high}. Est-ce noté dans une autre unité?",
    "commissioning.voltage-odd":
      "Inhabituel : {field}, {value}; habituellement de {low} à {high}. Est-ce bien cette alimentation?",
    "commissioning.entered-twice":
      "Inscrit deux fois : {field}, {value}. L’un des deux est-il faux?",
    "commissioning.grounding-thick":
      "Le conducteur de mise à la terre, {grounding}, est beaucoup plus gros que les conducteurs du circuit, {conductor}. L’un des deux est-il faux?",
    "commissioning.rated-as-ampacity":
      "Le courant admissible minimal du circuit, {rated}, est le courant de charge nominal. Sont-ils inversés?",
    "commissioning.drain-steep":
      "Une pente de {slope} est forte pour une évacuation; habituel : jusqu’à {usual}. A-t-elle été notée dans une autre unité?",
    "commissioning.heed-nitrogen":
      "Azote sec seulement : jamais d’oxygène, d’air comprimé ni de gaz inflammable, qui explosent au contact de l’huile. Alimentez par un régulateur et une soupape de sûreté. Montez la pression par paliers, tenez les personnes à l’écart et ne dépassez pas la plus basse pression indiquée. Laissez-le s’échapper à l’extérieur : il chasse l’air et asphyxie.",
    "commissioning.heed-refrigerant":
      "Le frigorigène liquide gèle la peau et les yeux, et tout frigorigène chasse l’air et asphyxie : portez gants et lunettes, et ventilez. Ne desserrez, ne coupez et ne brasez jamais rien sous pression. Ne chargez qu’un système étanche et essayé, et ne faites jamais d’essai de pression avec du frigorigène et de l’air. Ne faites jamais tourner un compresseur sous vide.",
    "commissioning.heed-voltage":
      "La tension peut tuer. Coupez, cadenassez et vérifiez l’absence de tension; les condensateurs de l’inverter restent chargés. Électriciens qualifiés seulement. Mesurez avec un multimètre de catégorie III (IV au branchement), vérifié avant et après, et restez à l’écart des bornes sous tension et des ventilateurs d’un appareil en marche.",
    "commissioning.heed-gauges":
      "Vérifiez le mode avant de raccorder un manomètre : en chauffage, le port de gaz est à la pression de refoulement, qui détruit un manomètre BP. Chaque boyau perd du frigorigène; ne raccordez que pour une bonne raison.",
    "commissioning.heed-drain":
      "Protégez l’évacuation du gel, du soleil, de la condensation et du débordement au-dessus d’un espace fini. Terminez-la par un rejet indirect, hors de la voie publique, et faites que l’interrupteur de niveau de la pompe arrête l’appareil.",
    "commissioning.tested-again": {
      by: "tests",
      one: "Refait : {step}. Un essai antérieur est conservé au dossier et ne compte pas.",
      other:
        "Refait : {step}. {tests} essais antérieurs sont conservés au dossier et ne comptent pas.",
    },
    "commissioning.weather-unusual":
      "Il fait {outdoor} à l’extérieur, inhabituel en {mode}. Est-ce dans une autre unité?",
    "commissioning.cable-short": "Le circuit ne mesure que {length}. Est-ce dans une autre unité?",
    "commissioning.zones-mixed":
      "Certaines heures ont un décalage par rapport à UTC et d’autres non; leur ordre n’est pas certain.",
    "commissioning.air-proves-no-charge":
      "L’air et le courant montrent que l’appareil tourne, non que sa charge est juste.",
    "commissioning.not-signed": "Personne n’a signé ce dossier.",
    "commissioning.signed-before-change":
      "{name} a signé le {at}, avant que ceci soit fait ou changé : {fields}.",
    "commissioning.amended-before-work":
      "Changé avant le premier travail daté, {first} : {fields}. Les dates sont-elles justes?",
    "commissioning.amended":
      "Changé après avoir été noté; l’historique garde les valeurs antérieures : {fields}.",
    "commissioning.unit-unknown":
      "Il manque le modèle ou le numéro de série d’un appareil : ce dossier pourrait concerner n’importe lequel.",
    "commissioning.older-than-a-year":
      "Plus d’un an avant cette donnée ({field}) du {at} : {fields}. Est-ce cette installation, et l’année est-elle juste?",
    "commissioning.opened-long-after-evacuation":
      "Le vide a été lu pour la dernière fois le {evacuated} et cassé le {opened}, plus de deux jours après. Ce qui est entré entre-temps ne se voit pas.",
    "commissioning.instrument-coarse":
      "L’exactitude dépasse 100 fois la résolution : {fields}. L’une des deux a-t-elle été notée dans une autre unité?",
    "commissioning.instrument-unknown":
      "Noté sans exactitude, numéro de série ni étalonnage; rien ne montre à quel point il mesure juste : {fields}.",
    "commissioning.circuit-long-before":
      "Le circuit est daté du {circuit}, plus de trois mois avant le premier autre travail, {field}, du {first}. Les règles datées ont été lues pour ce jour. Est-ce juste?",
    "commissioning.instrument-without-error":
      "Aucun instrument n’est exact, mais l’exactitude est notée 0 : {fields}.",
    "commissioning.calibration-expired":
      "L’étalonnage était dû le {due}, avant le relevé du {at} : {instrument}.",
    "commissioning.calibrated-afterwards":
      "Étalonné le {on}, après le relevé du {at} : {instrument}. Le certificat n’en dit rien.",
  },
);
