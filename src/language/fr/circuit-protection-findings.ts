// French of the assumptions and findings of the verdict on a circuit.
import type { CircuitProtectionFindings } from "../../circuit-protection/statements.ts";
import type { CatalogueOf, Define } from "../define.ts";
import { defineFrench } from "./typeset.ts";

const catalogue: Define<CircuitProtectionFindings> = defineFrench;

/** Assumptions and findings of the verdict on a circuit, in Canadian French. */
export const circuitProtectionFindings: CatalogueOf<CircuitProtectionFindings> =
  /* @__PURE__ */ catalogue("fr-CA", {
    "circuit-protection.marking-assumed":
      "La plaque signalétique est supposée permettre les disjoncteurs.",
    "circuit-protection.service-assumed": "Alimentation supposée : {system}.",
    "circuit-protection.ambient-assumed":
      "Température ambiante supposée sur le parcours : {ambient}.",
    "circuit-protection.terminations-assumed": "Les bornes sont supposées non marquées pour 75 °C.",
    "circuit-protection.cable-assumed": "Le câble est supposé n’être pas de type NM.",
    "circuit-protection.roof-assumed": "Le parcours est supposé ne pas passer près d’un toit.",
    "circuit-protection.conductors-assumed":
      "Au plus 3 conducteurs chargés ensemble sont supposés.",
    "circuit-protection.circuits-assumed": "Aucun autre circuit n’est supposé à côté du câble.",
    "circuit-protection.rated-load-assumed":
      "Le courant de charge nominal est supposé égal au courant admissible minimal du circuit, {ampacity}.",
    "circuit-protection.voltage-marking-assumed":
      "Le disjoncteur est supposé marqué {marking} ou plus.",
    "circuit-protection.compressor-inferred":
      "Le circuit est supposé alimenter un compresseur : seul un moteur donne un maximum de {maximum} avec {ampacity}.",
    "circuit-protection.ground-fault-not-adopted": "{clause} n’est pas adoptée ici, comme indiqué.",
    "circuit-protection.not-stated": "Non donné, donc non vérifié : {parts}.",
    "circuit-protection.not-judged": "Hors de cette vérification : {parts}.",
    "circuit-protection.heater-below-50-kw":
      "Les éléments chauffants sont supposés totaliser moins de 50 kW.",
    "circuit-protection.not-a-usual-size": "{maximum} n’est pas un calibre normalisé.",
    "circuit-protection.maximum-confirmed":
      "Un maximum de {maximum} est plus que ce qui convient à {ampacity}. Il a été lu deux fois et pris tel qu’imprimé.",
    "circuit-protection.rated-load-low":
      "Un courant admissible minimal du circuit de {ampacity} correspond à plus que {load} : la charge nominale est la somme du compresseur et des ventilateurs. {ampacity} a été utilisé à la place.",
    "circuit-protection.device-not-standard":
      "{rating} n’est pas un calibre normalisé de {device}.",
    "circuit-protection.no-standard-device-between":
      "Aucun calibre normalisé n’existe entre {ampacity} et {maximum}. Le calibre inférieur peut se déclencher en usage normal.",
    "circuit-protection.hacr-mark":
      "Le disjoncteur n’a pas la marque HACR. Ils sont essayés pour cela aujourd’hui, mais certains inspecteurs exigent la marque.",
    "circuit-protection.curve":
      "La courbe {curve} peut se déclencher au démarrage d’un compresseur.",
    "circuit-protection.start-may-trip":
      "Le démarrage de {locked} dépasse {from}, où le disjoncteur peut se déclencher aussitôt.",
    "circuit-protection.working-space-recommended":
      "Espace de travail recommandé : {depth} de profondeur, {width} de largeur, {height} de hauteur.",
    "circuit-protection.voltage-drop-recommended":
      "Chute de tension {drop}, supérieure à celle recommandée, {limit}.",
    "circuit-protection.verified":
      "Vérifié par {by} selon {clause}, {rules}, le {date} : non vérifié ici.",
    "circuit-protection.from-memory":
      "Conforme selon des règles citées de mémoire. Vérifiez-les : {clauses}.",
    "circuit-protection.rules-older":
      "L’ensemble de règles a été revu la dernière fois le {reviewed}, avant les travaux du {date}. Cherchez des règles plus récentes.",
    "circuit-protection.ground-fault-required":
      "{clause} exige ici une protection contre les défauts à la terre. Les États l’ont modifiée : consultez le texte adopté.",
    "circuit-protection.ground-fault-class-c":
      "{clause} permet aussi un dispositif homologué de classe C, avec un avertissement sur le sectionneur.",
    "circuit-protection.ground-fault-exempt":
      "{clause} exige ici une protection contre les défauts à la terre à partir du {from}. Le circuit est daté du {date}; si le permis ou le texte adopté comptent un autre jour, c’est celui-là qui décide.",
    "circuit-protection.advice": "{advice} ({clause}).",
    "circuit-protection.calculated-not-marked":
      "Les valeurs calculées ne remplacent pas la plaque signalétique.",
    "circuit-protection.shared-circuit": {
      by: "count",
      one: "{count} autre charge partage ce circuit.",
      other: "{count} autres charges partagent ce circuit.",
    },
  });
