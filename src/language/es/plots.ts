// Spanish (of the Americas) of the pictures: headings, axes, legends, labels.
import type { PlotStatements, PlotWord } from "../../plots/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = PlotStatements & Words<PlotWord>;
const catalogue: Define<Said> = define;

/** What the pictures of `plots` say, in Spanish. */
export const plots: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "plots.pressure-test": "Prueba de presión con nitrógeno",
  "plots.vacuum-decay": "Retención de vacío después de aislar",
  "plots.saturation": "Saturación de {designation}",
  "plots.supply-voltage": "Voltaje de alimentación",
  "plots.room-limit": "Carga y límite del recinto",

  "plots.pressure-axis": "Presión, {unit}",
  "plots.gas-temperature-axis": "Temperatura del gas, {unit}",
  "plots.temperature-axis": "Temperatura, {unit}",
  "plots.time-axis": "Tiempo, {unit}",
  "plots.time-since-isolation-axis": "Tiempo desde el aislamiento, {unit}",
  "plots.voltage-axis": "Voltaje, {unit}",
  "plots.charge-axis": "Carga, {unit}",
  "plots.time-not-recorded": "Tiempo no registrado",
  "plots.start": "inicio",
  "plots.end": "final",

  "plots.colon": ":",
  "plots.outcome": "Resultado: {outcome}.",
  "plots.drop-with-limit": "caída {drop} ± {uncertainty}, límite {limit}",
  "plots.drop-without-limit": "caída {drop} ± {uncertainty}, sin límite indicado",
  "plots.course": "{course}",
  "plots.leak-course": "sigue subiendo, una fuga, {rate}",
  "plots.absolute-pressure": "presión absoluta",
  "plots.gauge-pressure": "presión manométrica donde el aire está a {atmosphere}",
  "plots.voltage-range": { by: "readings", one: "{low}", other: "de {low} a {high}" },
  "plots.charge-of-limit": "carga {charge}, límite {limit}",

  "plots.readings": "lecturas",
  "plots.explained-by-temperature": "explicado por la temperatura",
  "plots.found-at-end": "hallado al final, ±{uncertainty}",
  "plots.limit": "límite {limit}",
  "plots.zone": "zona {zone}",
  "plots.limit-at": "límite {limit} a {at}",
  "plots.rise-limit-at": "aumento hasta {limit} a {at}",
  "plots.fails-from": "no cumple desde {limit}",
  "plots.target": "objetivo {target}",
  "plots.levels-off": "se estabiliza cerca de {plateau}",
  "plots.fitted-curve": "curva ajustada",
  "plots.fitted-curve-and-forecast": "curva ajustada y pronóstico",
  "plots.set-aside": "descartada",
  "plots.valve-moved": "válvula o manguera movida",
  "plots.accepted": "aceptado",
  "plots.at-hold-end": "al final de la prueba",
  "plots.bubble": "burbuja: el líquido empieza a hervir",
  "plots.dew": "rocío: el vapor empieza a condensarse",
  "plots.in-balance": "líquido y vapor en equilibrio",
  "plots.nameplate-range": "placa de datos, de {low} a {high}",
  "plots.standard-range": "{name}, de {low} a {high}",
  "plots.lowest-and-highest": "lectura más baja y más alta",
  "plots.charge": "carga",
  "plots.charge-limit": "límite {limit}",

  "plots.test-shown":
    "Se muestran {count} lecturas durante {span}, de {first} a {firstTemperature} hasta {last} a {lastTemperature}, junto a la presión que explica la temperatura sola.",
  "plots.untimed-test-shown":
    "Se muestran {count} lecturas, de {first} a {firstTemperature} hasta {last} a {lastTemperature}, junto a la presión que explica la temperatura sola.",
  "plots.decay-shown": {
    by: "count",
    one: "Se muestra {count} lectura, {first}.",
    other: "Se muestran {count} lecturas, de {first} a {last}.",
  },
  "plots.pure-point": "A {temperature}: {pressure}.",
  "plots.blend-point": "A {temperature}: burbuja {bubble}, rocío {dew}.",

  "plots.course.dry-and-tight": "plana, seco y sin fugas",
  "plots.course.moisture": "se estabiliza, humedad",
  "plots.course.leak-and-moisture": "se dobla y sigue subiendo: fuga y humedad",
  "plots.course.moisture-leak-not-excluded": "se estabiliza, humedad; no se descarta una fuga",
  "plots.course.outgassing": "sube cada vez menos, desgasificación",
  "plots.course.not-determined": "causa no determinada",
});
