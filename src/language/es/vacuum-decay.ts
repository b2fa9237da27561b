// Spanish (of the Americas) of the vacuum decay: sentences and words.
import type { VacuumDecayStatements, VacuumDecayWord } from "../../vacuum-decay/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = VacuumDecayStatements & Words<VacuumDecayWord>;
const catalogue: Define<Said> = define;

/** What `vacuum-decay` says, in Spanish. */
export const vacuumDecay: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "vacuum-decay.dry-and-tight":
    "Seco y sin fugas, hasta donde muestra un vacío: se habría visto una fuga mayor que {smallest}.",
  "vacuum-decay.leak": "Fuga: la presión sigue subiendo, {leak} (de {low} a {high}).",
  "vacuum-decay.moisture":
    "Humedad: cerca de {water} de vapor de agua. Se habría visto una fuga mayor que {high}.",
  "vacuum-decay.leak-and-moisture":
    "Fuga y humedad: {leak} (de {low} a {high}) además de cerca de {water} de vapor de agua.",
  "vacuum-decay.moisture-leak-not-excluded":
    "Humedad: cerca de {water} de vapor de agua. Detrás podría esconderse una fuga de hasta {high}.",
  "vacuum-decay.outgassing":
    "Desgasificación: {water} de paredes o aceite, cada vez menos. Se habría visto una fuga mayor que {high}.",
  "vacuum-decay.not-determined": "Causa no determinada: las lecturas admiten más de una.",

  "vacuum-decay.leak-proven": "Fuga demostrada: de {low} a {high}. Permitido: {limit}.",
  "vacuum-decay.leak-within-limit":
    "El límite de {limit} la admite, pero hay una fuga demostrada: de {low} a {high}.",
  "vacuum-decay.leak-not-excluded":
    "No se descarta una fuga mayor que {limit}: podría ser de hasta {high}.",
  "vacuum-decay.moisture-proven": "Humedad demostrada: cerca de {water} de vapor de agua.",
  "vacuum-decay.leak-or-moisture":
    "El sistema tiene fuga o humedad: ambas explican el aumento; nada inofensivo lo explica.",
  "vacuum-decay.moisture-not-excluded":
    "No se descarta humedad: hasta cerca de {water} de vapor de agua.",
  "vacuum-decay.still-rising":
    "La presión aún sube {rate}: más que en un sistema seco y sin fugas.",
  "vacuum-decay.pressure-within-limit":
    "{value} a {at} (de {low} a {high}): dentro del límite de {limit}.",
  "vacuum-decay.pressure-above-limit":
    "{value} a {at} (de {low} a {high}): supera el límite de {limit}.",
  "vacuum-decay.pressure-too-close":
    "{value} a {at} (de {low} a {high}): demasiado cerca del límite de {limit} para decidir.",
  "vacuum-decay.pressure-forecast":
    "La prueba dura hasta {at}. Pronóstico: {value} (de {low} a {high}). Límite: {limit}.",
  "vacuum-decay.rise-within-limit":
    "El aumento hasta {at} es de {value} (de {low} a {high}): dentro del límite de {limit}.",
  "vacuum-decay.rise-above-limit":
    "El aumento hasta {at} es de {value} (de {low} a {high}): supera el límite de {limit}.",
  "vacuum-decay.rise-too-close":
    "El aumento hasta {at} es de {value} (de {low} a {high}): demasiado cerca del límite de {limit} para decidir.",
  "vacuum-decay.rise-forecast":
    "La prueba dura hasta {at}. Pronóstico del aumento: {value} (de {low} a {high}). Límite: {limit}.",
  "vacuum-decay.last-reading-above-limit":
    "La última lectura, {pressure}, supera el límite de {limit}.",
  "vacuum-decay.too-few-readings": {
    by: "rows",
    one: "Pocas lecturas: {rows} útil; hacen falta {needed} para distinguir formas.",
    other: "Pocas lecturas: {rows} útiles; hacen falta {needed} para distinguir formas.",
  },
  "vacuum-decay.target-missed":
    "La prueba empezó a {start}: por encima del valor objetivo de {target}.",
  "vacuum-decay.over-range-failed":
    "El vacuómetro superó su alcance, {range}: por encima del límite.",
  "vacuum-decay.over-range": "El vacuómetro superó su alcance, {range}, antes que el límite.",
  "vacuum-decay.ice-not-excluded":
    "No se descarta hielo: a {coldest} se estabiliza en {saturation}, no más que las lecturas.",
  "vacuum-decay.below-gauge":
    "{lowest} no es creíble: un vacuómetro y una bomba de campo llegan a {believed} en el mejor caso. ¿Es correcta la unidad?",
  "vacuum-decay.display-still":
    "La pantalla se quedó en {pressure} desde {since}: más quieta que cualquier prueba.",
  "vacuum-decay.pressure-falls":
    "La presión bajó {fall}. Algo sigue aspirando: la bomba, o su válvula.",
  "vacuum-decay.too-flat":
    "La presión dejó de subir: {change} en la segunda mitad. Así se ve una válvula de bomba que no cierra bien, también con una fuga.",
  "vacuum-decay.rise-stops":
    "El aumento se detuvo de golpe a los {elapsed}; faltan {missing}: fugas, agua y paredes solo se frenan. ¿Se cerró una válvula hacia el vacuómetro?",
  "vacuum-decay.rise-quickens":
    "El aumento se acelera: las últimas lecturas están {late} por encima de toda curva.",
  "vacuum-decay.course-unexplained":
    "Esta curva no es la de una fuga ni la de humedad: se aparta {off} en promedio.",
  "vacuum-decay.step-before":
    "La presión saltó a {elapsed}. La prueba vuelve a empezar ahí y no ha terminado.",
  "vacuum-decay.found-before-step":
    "Antes del salto el sistema tenía fuga o humedad: aumento constante de {low} a {high}.",

  "vacuum-decay.above-saturation":
    "La meseta de {plateau} supera la saturación del agua en el punto más frío: no es solo agua.",
  "vacuum-decay.readings-excluded": {
    by: "excluded",
    one: "Se descartó {excluded} de {rows} lecturas: {why}.",
    other: "Se descartaron {excluded} de {rows} lecturas: {why}.",
  },
  "vacuum-decay.step": "Salto de {change} a {elapsed}: una válvula, una manguera o el vacuómetro.",

  "vacuum-decay.isolated":
    "Al comienzo de la lectura, la bomba se aisló con una válvula en el sistema.",
  "vacuum-decay.gauge-at-the-system": "El vacuómetro está en el sistema, no en la bomba.",
  "vacuum-decay.no-cold-spot": "Ninguna parte está más fría que {ambient}.",
  "vacuum-decay.usual-volume": "El volumen es de {volume}.",
  "vacuum-decay.gauge-accuracy": "El vacuómetro tiene una exactitud de ±{accuracy} de la lectura.",
  "vacuum-decay.hoses-unknown":
    "Las mangueras de marca desconocida dejan entrar hasta {allowance}.",
  "vacuum-decay.no-slow-water":
    "No hay agua que tarde más de {duration} en evaporarse: en este registro subiría tan constante como una fuga.",
  "vacuum-decay.typed-by-hand": {
    by: "rows",
    one: "{rows} fila escrita a mano, redondeada a {step}.",
    other: "{rows} filas escritas a mano, redondeadas a {step}.",
  },

  "vacuum-decay.not-a-pressure-test":
    "Un vacío no demuestra hermeticidad; solo la prueba de presión lo hace. Una fuga de {limit}, que puede cumplir, perdería de {least} a {most} en uso.",
  "vacuum-decay.display-steps":
    "La pantalla no se movió, y un aumento menor que su paso de {step} no se ve.",

  "vacuum-decay.watch-longer": {
    by: "rows",
    one: "Observe {duration} más, con al menos {rows} lectura más.",
    other: "Observe {duration} más, con al menos {rows} lecturas más.",
  },
  "vacuum-decay.hold-again": "Empiece una nueva prueba de {hold} y no toque nada.",
  "vacuum-decay.keep-gauge-open":
    "Deje abiertas todas las válvulas entre el vacuómetro y el sistema, y repita la prueba de {hold}.",
  "vacuum-decay.state-isolation":
    "Indique cómo se aisló la bomba: válvula de aislamiento en el sistema, manguera retirada, o válvula de la bomba.",
  "vacuum-decay.isolate-at-the-system":
    "Aísle el sistema con su propia válvula, retire la bomba y repita la prueba.",
  "vacuum-decay.blank-test":
    "Aísle mangueras y vacuómetro del sistema, obsérvelos solos y escriba cuánto suben.",
  "vacuum-decay.find-with-bubbles":
    "Presurice con nitrógeno seco y aplique agua jabonosa en cada unión. Observe cada una de {least} a {most}.",
  "vacuum-decay.find-with-tracer":
    "Si no salen burbujas, use un gas trazador y su detector electrónico.",
  "vacuum-decay.repair-leak":
    "Repare la fuga, repita la prueba de presión, y después vuelva a hacer vacío y a probar.",
  "vacuum-decay.dry-and-repeat":
    "Rompa el vacío con nitrógeno seco, vuelva a hacer vacío con el sistema caliente y repita la prueba.",
  "vacuum-decay.warm-and-repeat": "Caliente la parte a {coldest}, haga vacío y repita la prueba.",
  "vacuum-decay.evacuate-deeper": "Haga más vacío, por debajo de {target}, y repita la prueba.",
  "vacuum-decay.check-the-gauge":
    "Revise el vacuómetro: su unidad, su alcance, si la pantalla está retenida y si su válvula está abierta.",
  "vacuum-decay.better-gauge":
    "Prolongue la prueba, haga más vacío, o use un vacuómetro más exacto.",

  "vacuum-decay.cause.dry-and-tight": "seco y sin fugas",
  "vacuum-decay.cause.leak": "fuga",
  "vacuum-decay.cause.moisture": "humedad",
  "vacuum-decay.cause.leak-and-moisture": "fuga y humedad",
  "vacuum-decay.cause.moisture-leak-not-excluded": "humedad, fuga no descartada",
  "vacuum-decay.cause.outgassing": "desgasificación",
  "vacuum-decay.cause.not-determined": "no determinada",
  "vacuum-decay.exclusion.zero": "cero o menos",
  "vacuum-decay.exclusion.over-range": "por encima del alcance del vacuómetro",
  "vacuum-decay.exclusion.before-isolation": "antes del aislamiento",
  "vacuum-decay.exclusion.repeated-time": "tiempo repetido",
  "vacuum-decay.exclusion.out-of-order": "fuera de orden",
  "vacuum-decay.exclusion.spike": "pico",
  "vacuum-decay.exclusion.unconfirmed-jump": "salto aún sin confirmar",
});
