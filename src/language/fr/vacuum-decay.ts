// French (of Canada) of the vacuum decay: sentences and words.
import type { VacuumDecayStatements, VacuumDecayWord } from "../../vacuum-decay/statements.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = VacuumDecayStatements & Words<VacuumDecayWord>;
const catalogue: Define<Said> = defineFrench;

/** What `vacuum-decay` says, in French. */
export const vacuumDecay: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "vacuum-decay.dry-and-tight":
    "Sec et étanche, autant qu’un vide le montre : une fuite supérieure à {smallest} se serait vue.",
  "vacuum-decay.leak": "Fuite : la pression continue de monter, {leak} (de {low} à {high}).",
  "vacuum-decay.moisture":
    "Humidité : environ {water} de vapeur d’eau. Une fuite supérieure à {high} se serait vue.",
  "vacuum-decay.leak-and-moisture":
    "Fuite et humidité : {leak} (de {low} à {high}) en plus d’environ {water} de vapeur d’eau.",
  "vacuum-decay.moisture-leak-not-excluded":
    "Humidité : environ {water} de vapeur d’eau. Une fuite allant jusqu’à {high} pourrait s’y cacher.",
  "vacuum-decay.outgassing":
    "Dégazage : {water} des parois ou de l’huile, en ralentissant. Une fuite supérieure à {high} se serait vue.",
  "vacuum-decay.not-determined": "Cause non déterminée : les relevés en admettent plus d’une.",

  "vacuum-decay.leak-proven": "Fuite prouvée : de {low} à {high}. Permis : {limit}.",
  "vacuum-decay.leak-within-limit":
    "La limite de {limit} l’admet, mais une fuite est prouvée : de {low} à {high}.",
  "vacuum-decay.leak-not-excluded":
    "Une fuite supérieure à {limit} n’est pas exclue : elle pourrait aller jusqu’à {high}.",
  "vacuum-decay.moisture-proven": "Humidité prouvée : environ {water} de vapeur d’eau.",
  "vacuum-decay.leak-or-moisture":
    "Le système fuit ou est humide : chacune de ces causes explique la remontée; rien d’anodin ne l’explique.",
  "vacuum-decay.moisture-not-excluded":
    "L’humidité n’est pas exclue : jusqu’à environ {water} de vapeur d’eau.",
  "vacuum-decay.still-rising":
    "La pression monte encore de {rate} : plus que dans un système sec et étanche.",
  "vacuum-decay.pressure-within-limit":
    "{value} à {at} (de {low} à {high}) : dans la limite de {limit}.",
  "vacuum-decay.pressure-above-limit":
    "{value} à {at} (de {low} à {high}) : dépasse la limite de {limit}.",
  "vacuum-decay.pressure-too-close":
    "{value} à {at} (de {low} à {high}) : trop près de la limite de {limit} pour trancher.",
  "vacuum-decay.pressure-forecast":
    "L’essai dure jusqu’à {at}. Prévision : {value} (de {low} à {high}). Limite : {limit}.",
  "vacuum-decay.rise-within-limit":
    "La remontée jusqu’à {at} est de {value} (de {low} à {high}) : dans la limite de {limit}.",
  "vacuum-decay.rise-above-limit":
    "La remontée jusqu’à {at} est de {value} (de {low} à {high}) : dépasse la limite de {limit}.",
  "vacuum-decay.rise-too-close":
    "La remontée jusqu’à {at} est de {value} (de {low} à {high}) : trop près de la limite de {limit} pour trancher.",
  "vacuum-decay.rise-forecast":
    "L’essai dure jusqu’à {at}. Prévision de la remontée : {value} (de {low} à {high}). Limite : {limit}.",
  "vacuum-decay.last-reading-above-limit":
    "Le dernier relevé, {pressure}, dépasse la limite de {limit}.",
  "vacuum-decay.too-few-readings": {
    by: "rows",
    one: "Trop peu de relevés : {rows} utilisable; il en faut {needed} pour distinguer les formes.",
    other:
      "Trop peu de relevés : {rows} utilisables; il en faut {needed} pour distinguer les formes.",
  },
  "vacuum-decay.target-missed":
    "L’essai a commencé à {start} : au-dessus de la valeur cible de {target}.",
  "vacuum-decay.over-range-failed":
    "Le vacuomètre a dépassé son étendue, {range} : au-dessus de la limite.",
  "vacuum-decay.over-range": "Le vacuomètre a dépassé son étendue, {range}, avant la limite.",
  "vacuum-decay.ice-not-excluded":
    "La glace n’est pas exclue : à {coldest}, elle se stabilise à {saturation}, pas plus haut que les relevés.",
  "vacuum-decay.below-gauge":
    "{lowest} n’est pas crédible : un vacuomètre et une pompe de chantier atteignent au mieux {believed}. L’unité est-elle la bonne?",
  "vacuum-decay.display-still":
    "L’affichage est resté à {pressure} depuis {since} : plus immobile que tout essai.",
  "vacuum-decay.pressure-falls":
    "La pression a baissé de {fall}. Quelque chose tire encore : la pompe, ou son robinet.",
  "vacuum-decay.too-flat":
    "La pression a cessé de monter : {change} dans la seconde moitié. Un robinet de pompe qui ferme mal donne cela, même avec une fuite.",
  "vacuum-decay.rise-stops":
    "La remontée s’est arrêtée net à {elapsed}; il manque {missing} : fuites, eau et parois ne font que ralentir. A-t-on fermé un robinet vers le vacuomètre?",
  "vacuum-decay.rise-quickens":
    "La remontée s’accélère : les derniers relevés sont {late} au-dessus de toute courbe.",
  "vacuum-decay.course-unexplained":
    "Ni fuite ni humidité ne donne cette courbe : elle s’écarte de {off} en moyenne.",
  "vacuum-decay.step-before":
    "La pression a sauté à {elapsed}. L’essai recommence là et n’est pas terminé.",
  "vacuum-decay.found-before-step":
    "Avant le saut, le système fuyait ou était humide : remontée constante de {low} à {high}.",

  "vacuum-decay.above-saturation":
    "Le plateau de {plateau} dépasse la saturation de l’eau au point le plus froid : pas de l’eau seule.",
  "vacuum-decay.readings-excluded": {
    by: "excluded",
    one: "{excluded} relevé sur {rows} a été écarté : {why}.",
    other: "{excluded} relevés sur {rows} ont été écartés : {why}.",
  },
  "vacuum-decay.step": "Saut de {change} à {elapsed} : un robinet, un boyau ou le vacuomètre.",

  "vacuum-decay.isolated": "Au début du relevé, la pompe a été isolée par un robinet au système.",
  "vacuum-decay.gauge-at-the-system": "Le vacuomètre est au système, pas à la pompe.",
  "vacuum-decay.no-cold-spot": "Aucune partie n’est plus froide que {ambient}.",
  "vacuum-decay.usual-volume": "Le volume est de {volume}.",
  "vacuum-decay.gauge-accuracy": "Le vacuomètre a une exactitude de ±{accuracy} du relevé.",
  "vacuum-decay.hoses-unknown":
    "Des boyaux de marque inconnue laissent entrer jusqu’à {allowance}.",
  "vacuum-decay.no-slow-water":
    "Aucune eau ne met plus de {duration} à s’évaporer : sur ce relevé, elle monterait aussi régulièrement qu’une fuite.",
  "vacuum-decay.typed-by-hand": {
    by: "rows",
    one: "{rows} ligne écrite à la main, arrondie à {step}.",
    other: "{rows} lignes écrites à la main, arrondies à {step}.",
  },

  "vacuum-decay.not-a-pressure-test":
    "Un vide ne prouve pas l’étanchéité; seul l’essai de pression le fait. Une fuite de {limit}, qui peut être conforme, perdrait de {least} à {most} en service.",
  "vacuum-decay.display-steps":
    "L’affichage n’a pas bougé, et une remontée inférieure à son pas de {step} ne se voit pas.",

  "vacuum-decay.watch-longer": {
    by: "rows",
    one: "Observez encore {duration}, avec au moins {rows} relevé de plus.",
    other: "Observez encore {duration}, avec au moins {rows} relevés de plus.",
  },
  "vacuum-decay.hold-again": "Recommencez un essai de {hold} et ne touchez à rien.",
  "vacuum-decay.keep-gauge-open":
    "Laissez ouverts tous les robinets entre le vacuomètre et le système, et recommencez l’essai de {hold}.",
  "vacuum-decay.state-isolation":
    "Indiquez comment la pompe a été isolée : robinet d’isolement au système, boyau retiré, ou robinet de la pompe.",
  "vacuum-decay.isolate-at-the-system":
    "Isolez le système par son propre robinet, retirez la pompe et refaites l’essai.",
  "vacuum-decay.blank-test":
    "Isolez boyaux et vacuomètre du système, observez-les seuls et saisissez leur remontée.",
  "vacuum-decay.find-with-bubbles":
    "Mettez sous pression à l’azote sec et badigeonnez chaque raccord d’eau savonneuse. Observez chacun de {least} à {most}.",
  "vacuum-decay.find-with-tracer":
    "Si aucune bulle n’apparaît, utilisez un gaz traceur et son détecteur électronique.",
  "vacuum-decay.repair-leak":
    "Réparez la fuite, refaites l’essai de pression, puis refaites le vide et l’essai.",
  "vacuum-decay.dry-and-repeat":
    "Cassez le vide à l’azote sec, refaites le vide avec le système chaud et refaites l’essai.",
  "vacuum-decay.warm-and-repeat":
    "Réchauffez la partie à {coldest}, faites le vide et refaites l’essai.",
  "vacuum-decay.evacuate-deeper": "Poussez le vide au-dessous de {target} et refaites l’essai.",
  "vacuum-decay.check-the-gauge":
    "Vérifiez le vacuomètre : son unité, son étendue, si l’affichage est figé et si son robinet est ouvert.",
  "vacuum-decay.better-gauge":
    "Prolongez l’essai, poussez le vide, ou utilisez un vacuomètre plus exact.",

  "vacuum-decay.cause.dry-and-tight": "sec et étanche",
  "vacuum-decay.cause.leak": "fuite",
  "vacuum-decay.cause.moisture": "humidité",
  "vacuum-decay.cause.leak-and-moisture": "fuite et humidité",
  "vacuum-decay.cause.moisture-leak-not-excluded": "humidité, fuite non exclue",
  "vacuum-decay.cause.outgassing": "dégazage",
  "vacuum-decay.cause.not-determined": "non déterminée",
  "vacuum-decay.exclusion.zero": "zéro ou moins",
  "vacuum-decay.exclusion.over-range": "au-dessus de l’étendue du vacuomètre",
  "vacuum-decay.exclusion.before-isolation": "avant l’isolement",
  "vacuum-decay.exclusion.repeated-time": "temps répété",
  "vacuum-decay.exclusion.out-of-order": "hors d’ordre",
  "vacuum-decay.exclusion.spike": "pointe",
  "vacuum-decay.exclusion.unconfirmed-jump": "saut non encore confirmé",
});
