// French of the reasons of the verdict on a circuit.
import type { CircuitProtectionReasons } from "../../circuit-protection/statements.ts";
import type { CatalogueOf, Define } from "../define.ts";
import { defineFrench } from "./typeset.ts";

const catalogue: Define<CircuitProtectionReasons> = defineFrench;

/** Reasons of the verdict on a circuit, in Canadian French. */
export const circuitProtectionReasons: CatalogueOf<CircuitProtectionReasons> =
  /* @__PURE__ */ catalogue("fr-CA", {
    "circuit-protection.device-rating-met":
      "Le {device} est de {rating}, sans dépasser le maximum de la plaque signalétique, {limit}.",
    "circuit-protection.device-too-large":
      "Le {device} est trop gros : {rating}; maximum de la plaque signalétique : {limit}.",
    "circuit-protection.device-below-load":
      "Le {device} est trop petit : {rating}, et l’appareil tire {load}.",
    "circuit-protection.device-below-loads":
      "Le {device} est trop petit : {rating}, et les charges de ce circuit tirent {load}.",
    "circuit-protection.device-below-ampacity":
      "Le {device} est de {rating}, inférieur au courant admissible minimal du circuit, {ampacity}. Il peut se déclencher en usage normal.",
    "circuit-protection.device-kind-met": "La plaque signalétique permet un {device}.",
    "circuit-protection.fuse-required":
      "La plaque signalétique ne permet que des fusibles. Un disjoncteur seul ne suffit pas.",
    "circuit-protection.poles-met": "Pôles installés : {poles}; exigés : {needed}.",
    "circuit-protection.poles-too-few":
      "Pas assez de pôles. Installés : {poles}; exigés : {needed}.",
    "circuit-protection.poles-not-stated": "Le nombre de pôles n’est pas donné. Exigés : {needed}.",
    "circuit-protection.voltage-marking-met": "La tension marquée, {marking}, est suffisante.",
    "circuit-protection.voltage-marking-too-low":
      "La tension marquée, {marking}, est insuffisante : {system} exige {needed}.",
    "circuit-protection.voltage-marking-not-stated":
      "La tension marquée n’est pas donnée, et {system} ne les admet pas toutes.",
    "circuit-protection.device-not-stated": "Le disjoncteur ou fusible installé n’est pas donné.",
    "circuit-protection.device-allowed": {
      by: "poles",
      one: "Autorisé : {kinds:or} de {ratings:or}, {poles} pôle.",
      other: "Autorisé : {kinds:or} de {ratings:or}, {poles} pôles.",
    },
    "circuit-protection.allowed": {
      by: "poles",
      one: "Autorisé : {kinds:or} de {ratings:or}, {poles} pôle; conducteurs d’au moins {size} derrière {rating}.",
      other:
        "Autorisé : {kinds:or} de {ratings:or}, {poles} pôles; conducteurs d’au moins {size} derrière {rating}.",
    },
    "circuit-protection.no-standard-device":
      "Aucun calibre normalisé n’existe entre {ampacity} et {maximum}.",
    "circuit-protection.maximum-too-high":
      "Un maximum de {maximum} est plus que ce qui convient à {ampacity}.",
    "circuit-protection.maximum-not-stated": "Le plus gros fusible permis n’est pas donné.",
    "circuit-protection.conductor-met":
      "{size} ({section}) admet {usable}; exigé : {ampacity}, avec une protection de {rating}.",
    "circuit-protection.conductor-too-small":
      "{size} ({section}) est trop petit avec une protection de {rating} : il admet {usable}; exigé : {ampacity}.",
    "circuit-protection.conductor-unprotected":
      "{size} ({section}) admet {usable} : {rating} ne le protège pas.",
    "circuit-protection.conductor-not-stated": "Le conducteur installé n’est pas donné.",
    "circuit-protection.conductor-not-judged":
      "{size} n’est pas évalué : le tableau n’est pas confirmé ({clause}).",
    "circuit-protection.equipment-not-stated":
      "{size} avec une protection de {rating} n’est permis que pour un circuit de compresseur. Ce que le circuit alimente n’est pas donné.",
    "circuit-protection.aluminum-terminals-met": "Les bornes sont marquées pour l’aluminium.",
    "circuit-protection.aluminum-terminals-missing":
      "Les bornes ne sont pas marquées pour l’aluminium.",
    "circuit-protection.aluminum-terminals-not-stated":
      "Conducteurs d’aluminium : il n’est pas indiqué si les bornes sont marquées pour l’aluminium.",
    "circuit-protection.grounding-met":
      "Conducteur de continuité des masses {fitted}; exigé : {size}.",
    "circuit-protection.grounding-too-small":
      "Le conducteur de continuité des masses est sous-dimensionné : {fitted}; exigé : {size}.",
    "circuit-protection.grounding-by-energy-met":
      "Conducteur de continuité des masses {fitted} : le défaut exige {area} mm².",
    "circuit-protection.grounding-by-energy-short":
      "Conducteur de continuité des masses {fitted} : trop petit pour le défaut, qui exige {area} mm².",
    "circuit-protection.grounding-needs-energy":
      "Le conducteur de continuité des masses {fitted} est inférieur à celui du tableau, {size}. Seule l’énergie du défaut peut montrer qu’il suffit.",
    "circuit-protection.grounding-two-readings":
      "{clause} peut se lire de deux façons pour des conducteurs grossis. La plus stricte exige {size}.",
    "circuit-protection.grounding-by-exception":
      "{fitted} suffit pour la protection, mais {clause} exige {size} près de conducteurs plus gros que nécessaire. Son exception permet qu’une personne qualifiée en choisisse la grosseur.",
    "circuit-protection.grounding-wire-missing":
      "La canalisation sur le toit est le seul chemin vers la terre ({clause}).",
    "circuit-protection.raceway-fittings-not-stated":
      "La canalisation sur le toit est le seul chemin vers la terre. Avec des raccords à compression, cela ne suffit pas ({clause}).",
    "circuit-protection.raceway-fittings-met":
      "La canalisation sur le toit n’a pas de raccords à compression : elle peut servir de chemin vers la terre ({clause}).",
    "circuit-protection.disconnect-rating-met": "Sectionneur {rating}; exigé : {needed}.",
    "circuit-protection.disconnect-too-small":
      "Le sectionneur est trop petit : {rating}; exigé : {needed}.",
    "circuit-protection.largest-load-not-stated":
      "Sectionneur {rating} : suffisant ou non selon la plus grosse charge. {needed} suffit toujours.",
    "circuit-protection.disconnect-fuse-met":
      "Fusibles du sectionneur : {fuse}, dans la limite de {limit}.",
    "circuit-protection.disconnect-fuse-too-large":
      "Les fusibles du sectionneur sont trop gros : {fuse}; maximum permis : {limit}.",
    "circuit-protection.disconnect-in-sight": "Le sectionneur est en vue de l’appareil.",
    "circuit-protection.disconnect-out-of-sight": "Le sectionneur n’est pas en vue de l’appareil.",
    "circuit-protection.disconnect-near":
      "Le sectionneur est à {distance}, dans la limite de {limit}.",
    "circuit-protection.disconnect-too-far":
      "Le sectionneur est trop loin : {distance}; maximum permis : {limit}.",
    "circuit-protection.disconnect-accessible": "Le sectionneur est facilement accessible.",
    "circuit-protection.disconnect-not-accessible":
      "Le sectionneur n’est pas facilement accessible.",
    "circuit-protection.disconnect-clear":
      "Le sectionneur laisse libres la plaque signalétique et les panneaux d’accès.",
    "circuit-protection.disconnect-in-the-way":
      "Le sectionneur couvre la plaque signalétique ou est fixé à un panneau d’accès.",
    "circuit-protection.disconnect-lockable": "Le sectionneur peut être cadenassé ouvert.",
    "circuit-protection.disconnect-not-lockable":
      "Le sectionneur ne peut pas être cadenassé ouvert.",
    "circuit-protection.disconnect-off-unit": "Le sectionneur n’est pas monté sur l’appareil.",
    "circuit-protection.disconnect-on-unit": "Le sectionneur est monté sur l’appareil.",
    "circuit-protection.working-space-met":
      "L’espace de travail a au moins {depth} de profondeur, {width} de largeur et {height} de hauteur.",
    "circuit-protection.working-space-short":
      "L’espace de travail est insuffisant. Exigé : {depth} de profondeur, {width} de largeur, {height} de hauteur.",
    "circuit-protection.receptacle-met":
      "La prise de service est à {distance}, dans la limite de {limit}.",
    "circuit-protection.receptacle-too-far":
      "La prise de service est trop loin : {distance}; maximum permis : {limit}.",
    "circuit-protection.receptacle-on-load-side":
      "La prise de service est alimentée du côté charge du sectionneur de l’appareil.",
    "circuit-protection.voltage-drop-met": "Chute de tension {drop}, dans la limite de {limit}.",
    "circuit-protection.voltage-drop-above-limit":
      "La chute de tension est trop grande : {drop}; maximum permis : {limit}.",
    "circuit-protection.residual-current-met": "Dispositif différentiel {rated} installé.",
    "circuit-protection.residual-current-missing":
      "Un dispositif différentiel est exigé ({clause}).",
    "circuit-protection.residual-current-too-high":
      "Le dispositif différentiel n’est pas assez sensible : {rated}; maximum permis : {limit}.",
    "circuit-protection.residual-current-not-stated":
      "Il reste à savoir si un dispositif différentiel est exigé et suffit ({clause}).",
    "circuit-protection.ground-fault-met":
      "Protection contre les défauts à la terre {rated} posée ({clause}).",
    "circuit-protection.ground-fault-missing":
      "{clause} exige ici une protection contre les défauts à la terre. Aucune n’est posée.",
    "circuit-protection.ground-fault-open":
      "{clause} exige ici une protection contre les défauts à la terre, sauf si le texte adopté est différent. Il manque l’un et l’autre.",
    "circuit-protection.ground-fault-not-stated":
      "{clause} exige ici une protection contre les défauts à la terre. On ne sait pas si elle est posée.",
    "circuit-protection.ground-fault-by-date":
      "{clause} exige ici une protection contre les défauts à la terre pour les travaux à partir du {from}. La date des travaux n’est pas donnée.",
    "circuit-protection.found-not-to-comply":
      "{by} a constaté le {date} que le circuit n’est pas conforme à {clause}, {rules}.",
    "circuit-protection.clause-not-asked-for":
      "Vérifié sans que ce soit demandé : {clause}. C’est évalué ici, ou ce circuit n’en a pas besoin.",
    "circuit-protection.not-confirmed":
      "Non confirmé pour {rules} : {point} ({clause}). Cela ne décide de rien.",
    "circuit-protection.ampacity-fits":
      "Courant admissible minimal du circuit : {marked} sur la plaque signalétique, {ampacity} selon les parties.",
    "circuit-protection.ampacity-too-low":
      "Le courant admissible indiqué est trop bas : {marked}; les parties exigent {ampacity}.",
    "circuit-protection.ampacity-unexplained":
      "Le courant admissible indiqué, {marked}, dépasse celui des parties, {ampacity}.",
    "circuit-protection.protection-fits":
      "Protection contre les surintensités : {maximum} sur la plaque signalétique, au plus {ceiling} selon les parties.",
    "circuit-protection.protection-too-high":
      "La protection indiquée est trop élevée : {maximum}; les parties permettent {ceiling}.",
    "circuit-protection.next-size-down":
      "{calculated} n’est pas un calibre normalisé : calibre immédiatement inférieur.",
    "circuit-protection.heater-needs-more":
      "Au-dessous de 125 % de l’élément chauffant : calibre immédiatement supérieur, {rating}.",
    "circuit-protection.smallest-rating": "Jamais au-dessous de {rating}.",
    "circuit-protection.ampacity-needs-more":
      "Inférieur au courant admissible minimal du circuit : {rating}.",
  });
