// French (of Canada) of the logs: sentences and words.
import type { LogsStatements, LogsWord } from "../../logs/statements.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = LogsStatements & Words<LogsWord>;
const catalogue: Define<Said> = defineFrench;

/** What `logs` says, in French. */
export const logs: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "logs.open-quote": "Ligne {line} : un guillemet n’est pas fermé.",
  "logs.long-line": "La ligne {line} est trop longue pour une ligne de relevés.",
  "logs.cell-count": "La ligne {line} a {count} cellules. Attendues : {expected}.",
  "logs.blank-cell": "Ligne {line} : {column} est vide.",
  "logs.not-a-number":
    "Ligne {line}, {column} : « {cell} » n’est pas un nombre dans la notation indiquée.",
  "logs.not-possible": "Ligne {line}, {column} : « {cell} » n’est pas possible.",
  "logs.unknown-word": "Ligne {line}, {column} : « {cell} » n’est aucun des mots indiqués.",
  "logs.not-a-time":
    "Ligne {line}, {column} : « {cell} » n’est pas une heure sous la forme indiquée.",
  "logs.skipped-hour":
    "Ligne {line}, {column} : « {cell} » n’existe pas. L’horloge a été avancée à ce moment.",
  "logs.duplicate": "La ligne {line} répète la précédente.",
  "logs.same-time": "La ligne {line} a l’heure de la précédente.",
  "logs.time-goes-back":
    "La ligne {line} précède de {by} celle du dessus. L’horloge a-t-elle été reculée, ou un second enregistrement commence-t-il?",
  "logs.header-again": "La ligne {line} répète l’en-tête. Un second enregistrement commence-t-il?",

  "logs.gap":
    "Il manque des lignes avant la ligne {line} : {gap} sans aucune; l’habituel est {usual}.",
  "logs.past-midnight": "Minuit est passé avant la ligne {line}.",
  "logs.clock-set-back": "L’horloge a reculé d’une heure avant la ligne {line}.",
  "logs.clock-set-forward":
    "Il manque une heure avant la ligne {line}. L’horloge a-t-elle été avancée?",

  "logs.separator": "Les cellules sont séparées par des {separator} : {columns} colonnes.",
  "logs.decimal-mark": "Le séparateur décimal est « {mark} », comme dans {cell}.",
  "logs.header": "La ligne {line} nomme les colonnes.",
  "logs.unit": "La colonne {column} est en {unit}.",
  "logs.date-order": "Les dates s’écrivent {order}, comme dans {cell}.",
  "logs.time": "La colonne {column} est le temps : {written}.",

  "logs.no-separator": "Aucun séparateur n’a été trouvé : le texte a une colonne.",
  "logs.decimal-unsure": "Aucun nombre n’a de séparateur décimal. Le point a été supposé.",
  "logs.thousands-or-decimal": "Le signe dans {cell} est-il décimal ou sépare-t-il des milliers?",
  "logs.no-header": "Aucune ligne ne nomme les colonnes.",
  "logs.zero-not-stated":
    "La colonne {column} ne dit pas si elle est manométrique ou absolue. {unit} a été supposé.",
  "logs.unit-unknown": "La colonne {column} n’a pas d’unité connue; elle est laissée de côté.",
  "logs.time-unit-unknown":
    "La colonne {column} n’a pas d’unité connue. Des secondes ont été supposées.",
  "logs.column-missing": "Aucune colonne n’a été trouvée pour {name}.",
  "logs.two-columns":
    "Plus d’une colonne correspond à {name} : {columns}. La première a été prise.",
  "logs.no-time": "Aucune colonne ne contient le temps.",
  "logs.date-order-unsure": "Les dates admettent plus d’un ordre. {order} a été supposé : {cell}.",
  "logs.zone-unknown":
    "Le fuseau de l’horloge n’est pas indiqué. Les heures sont prises telles quelles.",
  "logs.serial-unsure":
    "La colonne {column} ressemble aux dates d’un tableur. Un calendrier depuis 1900 a été supposé.",
  "logs.elapsed-or-clock":
    "La colonne {column} peut être l’heure du jour ou le temps depuis le début.",
  "logs.blank-cells": {
    by: "count",
    one: "Une ligne a une cellule vide. Avec ce format, elle est refusée.",
    other: "{count} lignes ont une cellule vide. Avec ce format, elles sont refusées.",
  },

  "logs.lowest": "La pression la plus basse, {pressure}, est à {elapsed}.",
  "logs.highest": "La pression la plus haute, {pressure}, est à {elapsed}.",
  "logs.between-rows":
    "Le robinet a été fermé entre cette ligne et la suivante : en moins de {spacing}.",
  "logs.starts-isolated":
    "Aucune descente ne précède la remontée. Le relevé commence-t-il après l’isolement?",
  "logs.starts-filled": "Aucun remplissage n’a été trouvé. Le relevé commence-t-il après?",
  "logs.several-rises": "La pression remonte après {count} minimums. Le dernier a été pris.",
  "logs.several-fills": "La pression a été montée en {count} paliers. Le dernier a été pris.",
  "logs.ends-before": "Les lignes après {elapsed} sont laissées de côté : la pression y chute.",
  "logs.no-rise":
    "Après sa descente, la pression ne remonte jamais d’un dixième. Un système sec et étanche et une pompe en marche se ressemblent.",
  "logs.no-fill": "Le relevé ne contient aucune pression supérieure à l’atmosphère.",
  "logs.gas-settles": "Le gaz met quelques minutes à se stabiliser après le remplissage.",

  "logs.which-zero": "Manométrique ou absolue?",

  "logs.separator.comma": "virgules",
  "logs.separator.semicolon": "points-virgules",
  "logs.separator.tab": "tabulations",
  "logs.separator.bar": "barres verticales",
  "logs.written.elapsed": "temps depuis le début",
  "logs.written.clock": "heure du jour",
  "logs.written.date-time": "date et heure",
  "logs.written.serial": "jours du calendrier d’un tableur",
  "logs.order.year-month-day": "année, mois, jour",
  "logs.order.day-month-year": "jour, mois, année",
  "logs.order.month-day-year": "mois, jour, année",
});
