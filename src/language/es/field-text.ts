// Spanish (of the Americas) of what is said of a typed text: what is wanted, and what to do about it.
import type { FieldTextStatements } from "../../read-quantity/statements.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<FieldTextStatements> = define;

/** What `read-quantity` and `field-text` say of a text that they refuse, in Spanish. */
export const fieldText: CatalogueOf<FieldTextStatements> = /* @__PURE__ */ catalogue("es-419", {
  "field-text.one-number": "Escriba un número con su unidad.",
  "field-text.expression": "Escriba números con sus unidades, + − × ÷ y paréntesis.",
  "field-text.number-and-unit": "Escriba un número y una unidad: {symbols:or}.",
  "field-text.unit": "Escriba una unidad: {symbols:or}.",
  "field-text.unit-of-kind": "Escriba una unidad de esta clase ({kind}): {symbols:or}.",
  "field-text.number-with-unit": "Escriba un número con su unidad.",
  "field-text.number-before-unit": "Escriba un número antes de la unidad.",
  "field-text.number-format": "Escriba un número como {sample}. El signo decimal es «{mark}».",
  "field-text.operator": "Escriba un operador entre los dos: + − × ÷.",
  "field-text.whole-number": "Escriba un número entero antes de una unidad menor.",
  "field-text.less-than": "Escriba menos de {limit} después de {unit}.",
  "field-text.joined-or-subtracted": "Escriba {joined} o bien {subtracted}.",
  "field-text.one-decimal": "Escriba un solo valor, con decimales.",
  "field-text.mixed-number":
    "Escriba un número mixto con un espacio, o un signo menos con espacios.",
  "field-text.small-fraction": "Escriba un número entero y una fracción menor que 1, como 1 1/4.",
  "field-text.divisor": "Escriba un divisor distinto de 0.",
  "field-text.shorter": "Escriba {most} caracteres como máximo.",
  "field-text.at-least": "Escriba {limit} o más.",
  "field-text.smaller": "Escriba un número menor.",
  "field-text.one-unit": "Escriba una sola unidad. El paréntesis tiene la suya.",
  "field-text.difference": "Escriba una diferencia, como {example}.",
  "field-text.difference-of": "Escriba un valor de esta clase: {kind}.",
  "field-text.number-or-difference": "Escriba un número o una diferencia.",
  "field-text.known-product": "Escriba dos magnitudes cuyo producto se use en el oficio.",
  "field-text.known-quotient": "Escriba dos magnitudes cuyo cociente se use en el oficio.",
  "field-text.fraction-in-parentheses": "Ponga la fracción entre paréntesis.",
  "field-text.number-after-sign": "Escriba un número después del signo.",
  "field-text.fewer-parentheses": "Anide paréntesis hasta un máximo de {most}.",
  "field-text.opened-parenthesis": "Abra primero el paréntesis.",
  "field-text.closing-parenthesis": "Cierre el paréntesis.",

  "field-text.digits-after-mark": "Escriba las cifras después del signo decimal, o quite el signo.",
  "field-text.too-large": "El número es demasiado grande.",
  "field-text.which-mark":
    "¿Es «{mark}» un signo decimal o un separador de miles? Escriba {readings:or}.",
  "field-text.feet-or-thousands": "El signo podría indicar pies. No escriba separadores de miles.",
  "field-text.vacuum":
    "Escriba el vacío como presión manométrica negativa, -20 inHg (g), o como presión absoluta, 500 micrones.",
  "field-text.no-functions": "Aquí no se pueden usar funciones.",
  "field-text.capitals": "Aquí cuentan las mayúsculas. ¿Es {spelling}?",
  "field-text.slash-two-values":
    "Una barra puede nombrar dos valores, como 208/230 V en una placa de datos.",
  "field-text.hyphen-two-ways": "Con guion podría ser una suma o una diferencia.",
  "field-text.dash-two-ways":
    "Un guion entre {large} y {small} podría sumar o restar. Use un espacio, o un signo menos con espacios.",
  "field-text.write-plus": "Escriba + entre los dos si quiere sumar.",
  "field-text.write-times": "Escriba × si quiere multiplicar.",
  "field-text.no-spaces": "No deje espacios dentro de un número.",
  "field-text.which-zero": "¿Manométrica o absoluta?",
  "field-text.which-zero-of": "¿Manométrica ({gauge}) o absoluta ({absolute})?",
  "field-text.which-scale": "¿°F o °C?",
  "field-text.is-absolute": "Es una presión absoluta. Escriba la lectura del manómetro.",
  "field-text.is-gauge": "Es una presión manométrica. Escriba la presión absoluta.",
  "field-text.given-kind": "El texto da otra magnitud: {kind}.",
  "field-text.points-do-not-add": "No se pueden sumar dos valores de esta clase: {kind}.",
  "field-text.added-to": "Se suma a un valor de esta clase: {kind}.",
  "field-text.taken-from": "Se resta de un valor de esta clase: {kind}.",
  "field-text.points-do-not-scale":
    "Un valor de esta clase no se puede multiplicar ni dividir: {kind}.",
  "field-text.no-product": "El oficio no usa {first} × {second}.",
  "field-text.no-quotient": "El oficio no usa {first} ÷ {second}.",
  "field-text.number-over-quantity":
    "Un número solo no se puede dividir entre una magnitud. Ponga la fracción entre paréntesis.",
  "field-text.each-needs-unit":
    "Cada número de una suma necesita unidad. 1-1/4 sin espacios es un número mixto.",
  "field-text.reading-less-reading":
    "Una lectura menos otra da otra magnitud: {given}. Se exige: {wanted}.",
  "field-text.readings-or-differences": "¿Son lecturas o diferencias? La respuesta cambia.",
  "field-text.fraction-two-ways": "Dividir entre una fracción tiene dos significados.",
});
