// French (of Canada) of the pictures: headings, axes, legends, labels.
import type { PlotStatements, PlotWord } from "../../plots/statements.ts";
import type { CatalogueOf, Define, Words } from "../define.ts";
import { defineFrench } from "./typeset.ts";

type Said = PlotStatements & Words<PlotWord>;
const catalogue: Define<Said> = defineFrench;

/** What the pictures of `plots` say, in French. */
export const plots: CatalogueOf<Said> = /* @__PURE__ */ catalogue("fr-CA", {
  "plots.pressure-test": "Essai de pression à l’azote",
  "plots.vacuum-decay": "Remontée en pression après isolement",
  "plots.saturation": "Saturation : {designation}",
  "plots.supply-voltage": "Tension d’alimentation",
  "plots.room-limit": "Charge et limite du local",

  "plots.pressure-axis": "Pression, {unit}",
  "plots.gas-temperature-axis": "Température du gaz, {unit}",
  "plots.temperature-axis": "Température, {unit}",
  "plots.time-axis": "Temps, {unit}",
  "plots.time-since-isolation-axis": "Temps depuis l’isolement, {unit}",
  "plots.voltage-axis": "Tension, {unit}",
  "plots.charge-axis": "Charge, {unit}",
  "plots.time-not-recorded": "Temps non renseigné",
  "plots.start": "début",
  "plots.end": "fin",

  "plots.colon": " :",
  "plots.outcome": "Résultat : {outcome}.",
  "plots.drop-with-limit": "chute {drop} ± {uncertainty}, limite {limit}",
  "plots.drop-without-limit": "chute {drop} ± {uncertainty}, sans limite donnée",
  "plots.course": "{course}",
  "plots.leak-course": "continue de monter, une fuite, {rate}",
  "plots.absolute-pressure": "pression absolue",
  "plots.gauge-pressure": "pression manométrique où l’air est à {atmosphere}",
  "plots.voltage-range": { by: "readings", one: "{low}", other: "de {low} à {high}" },
  "plots.charge-of-limit": "charge {charge}, limite {limit}",

  "plots.readings": "relevés",
  "plots.explained-by-temperature": "expliqué par la température",
  "plots.found-at-end": "trouvé à la fin, ±{uncertainty}",
  "plots.limit": "limite {limit}",
  "plots.zone": "zone {zone}",
  "plots.limit-at": "limite {limit} à {at}",
  "plots.rise-limit-at": "remontée jusqu’à {limit} à {at}",
  "plots.fails-from": "non conforme à partir de {limit}",
  "plots.target": "cible {target}",
  "plots.levels-off": "se stabilise près de {plateau}",
  "plots.fitted-curve": "courbe ajustée",
  "plots.fitted-curve-and-forecast": "courbe ajustée et prévision",
  "plots.set-aside": "écarté",
  "plots.valve-moved": "robinet ou boyau bougé",
  "plots.accepted": "accepté",
  "plots.at-hold-end": "à la fin de l’essai",
  "plots.bubble": "bulle : le liquide commence à bouillir",
  "plots.dew": "rosée : la vapeur commence à se condenser",
  "plots.in-balance": "liquide et vapeur en équilibre",
  "plots.nameplate-range": "plaque signalétique, de {low} à {high}",
  "plots.standard-range": "{name}, de {low} à {high}",
  "plots.lowest-and-highest": "relevé le plus bas et le plus haut",
  "plots.charge": "charge",
  "plots.charge-limit": "limite {limit}",

  "plots.test-shown":
    "Affichés : {count} relevés sur {span}, de {first} à {firstTemperature} jusqu’à {last} à {lastTemperature}, avec la pression que la température seule explique.",
  "plots.untimed-test-shown":
    "Affichés : {count} relevés, de {first} à {firstTemperature} jusqu’à {last} à {lastTemperature}, avec la pression que la température seule explique.",
  "plots.decay-shown": {
    by: "count",
    one: "Affiché : {count} relevé, {first}.",
    other: "Affichés : {count} relevés, de {first} à {last}.",
  },
  "plots.pure-point": "À {temperature} : {pressure}.",
  "plots.blend-point": "À {temperature} : bulle {bubble}, rosée {dew}.",

  "plots.course.dry-and-tight": "plate, sec et étanche",
  "plots.course.moisture": "se stabilise, humidité",
  "plots.course.leak-and-moisture": "s’infléchit puis continue de monter : fuite et humidité",
  "plots.course.moisture-leak-not-excluded": "se stabilise, humidité; une fuite n’est pas exclue",
  "plots.course.outgassing": "ralentit, dégazage",
  "plots.course.not-determined": "cause non déterminée",
});
