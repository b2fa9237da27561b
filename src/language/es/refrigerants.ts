// Spanish (of the Americas) of superheat and subcooling: sentences and words.
import type { RefrigerantsStatements, RefrigerantsWord } from "../../refrigerants/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = RefrigerantsStatements & Words<RefrigerantsWord>;
const catalogue: Define<Said> = define;

/** What `refrigerants` says, in Spanish. */
export const refrigerants: CatalogueOf<Said> = /* @__PURE__ */ catalogue("es-419", {
  "refrigerants.table-needs-atmosphere":
    "Las presiones manométricas exigen la presión atmosférica. Sin ella la tabla es absoluta.",
  "refrigerants.number-of-rows": "Es la cantidad de filas que tendría la tabla. Cambie el paso.",
  "refrigerants.check-designation":
    "Lea otra vez la designación en la placa de datos. Si es correcta, la biblioteca no tiene datos de ella.",
  "refrigerants.range-of": "Es el intervalo de saturación de {refrigerant}.",
  "refrigerants.gauge-needs-atmosphere":
    "El manómetro mide por encima del aire que lo rodea. Indique la presión atmosférica del lugar: lectura de un barómetro o altitud.",

  "refrigerants.within-tolerance":
    "{figure} {value} ± {uncertainty}: a menos de {tolerance} del objetivo, {target}.",
  "refrigerants.above-tolerance":
    "{figure} {value} ± {uncertainty}: supera en más de {tolerance} el objetivo, {target}.",
  "refrigerants.below-tolerance":
    "{figure} {value} ± {uncertainty}: más de {tolerance} por debajo del objetivo, {target}.",
  "refrigerants.below-saturation": {
    by: "figure",
    superheat:
      "{figure} {value} ± {uncertainty}: menor que cero. Las lecturas se contradicen, o hay líquido en la línea.",
    other:
      "{figure} {value} ± {uncertainty}: menor que cero. Las lecturas se contradicen, o hay vapor en la línea.",
  },
  "refrigerants.too-close-to-call":
    "No concluyente: {figure} {value} ± {uncertainty}, objetivo {target} ± {tolerance}.",
  "refrigerants.largest-uncertainty":
    "La mayor parte de la incertidumbre estándar de {now} viene de la {probe}.",
  "refrigerants.closer-than-the-model":
    "La lectura está tan cerca de un límite que ninguna sonda mejor lo decidiría.",
  "refrigerants.target-out-of-reach":
    "{figure}: {target} no es un objetivo. Los objetivos son menores que {most}.",
  "refrigerants.tolerance-wide":
    "Una tolerancia de {tolerance} alrededor de {target} deja pasar una carga incorrecta. Máximo útil: {largest}.",
  "refrigerants.tolerance-reaches-saturation":
    "Una tolerancia de {tolerance} alrededor de {target} llega a la saturación, donde el valor nada dice de la carga.",

  "refrigerants.steady":
    "El sistema funciona de forma estable. La sonda está limpia, bien sujeta y aislada.",
  "refrigerants.nominal-composition": "El refrigerante es puro o tiene su composición nominal.",
  "refrigerants.saturation-uncertainty":
    "La propia presión de saturación tiene una incertidumbre estándar de {share}.",
  "refrigerants.exact-atmosphere":
    "No se indicó la exactitud de la presión atmosférica; se supone exacta.",

  "refrigerants.looks-like-other-side": {
    by: "figure",
    superheat:
      "Con saturación a {saturation}, parece el lado de alta. El sobrecalentamiento del vapor se mide en el lado de baja.",
    other:
      "Con saturación a {saturation}, parece el lado de baja. El subenfriamiento se mide en el lado de alta.",
  },
  "refrigerants.only-where-the-manual-charges-by-it":
    "{figure}: los equipos inverter y con válvula electrónica se cargan por peso, salvo que su manual diga otra cosa.",

  "refrigerants.check-airflow-first": "Revise primero filtros, serpentines y caudal de aire.",
  "refrigerants.correct-the-charge":
    "{figure}: corrija la carga según el manual hasta acercarse a {target} y vuelva a leer.",
  "refrigerants.check-both-readings":
    "Compruebe el refrigerante, el puerto del manómetro y el contacto de la sonda, y vuelva a leer.",
  "refrigerants.use-better-probe":
    "Vuelva a leer con una mejor {probe}: una incertidumbre estándar de {needed} lo decidiría.",
  "refrigerants.adjust-to-target": "Ajuste hacia {target} y vuelva a leer.",
  "refrigerants.state-target": "{figure}: escriba el objetivo de la placa de datos o del manual.",
  "refrigerants.state-tolerance": "{figure}: escriba la tolerancia del manual.",

  "refrigerants.figure.superheat": "Sobrecalentamiento del vapor",
  "refrigerants.figure.subcooling": "Subenfriamiento",
  "refrigerants.probe.pressure": "sonda de presión",
  "refrigerants.probe.temperature": "sonda de temperatura",
  "refrigerants.cause.low": "por debajo del objetivo",
  "refrigerants.cause.high": "por encima del objetivo",
});
