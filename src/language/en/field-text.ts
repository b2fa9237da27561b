// English of what is said of a typed text: what is wanted, and what to do about it.
import type { FieldTextStatements } from "../../read-quantity/statements.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<FieldTextStatements> = define;

/** What `read-quantity` and `field-text` say of a text that they refuse, in American English. */
export const fieldText: CatalogueOf<FieldTextStatements> = /* @__PURE__ */ catalogue("en-US", {
  "field-text.one-number": "Enter one number with its unit.",
  "field-text.expression": "Enter numbers with their units, + − × ÷ and parentheses.",
  "field-text.number-and-unit": "Enter a number and a unit: {symbols:or}.",
  "field-text.unit": "Enter a unit: {symbols:or}.",
  "field-text.unit-of-kind": "Enter a unit of {kind}: {symbols:or}.",
  "field-text.number-with-unit": "Enter a number with its unit.",
  "field-text.number-before-unit": "Enter a number before the unit.",
  "field-text.number-format": "Enter a number such as {sample}. The decimal mark is “{mark}”.",
  "field-text.operator": "Enter an operator between the two: + − × ÷.",
  "field-text.whole-number": "Enter a whole number before a smaller unit.",
  "field-text.less-than": "Enter less than {limit} after {unit}.",
  "field-text.joined-or-subtracted": "Enter {joined} or {subtracted}.",
  "field-text.one-decimal": "Enter one value, as a decimal.",
  "field-text.mixed-number": "Enter a mixed number with a space, or a minus sign with spaces.",
  "field-text.small-fraction": "Enter a whole number and a fraction less than 1, such as 1 1/4.",
  "field-text.divisor": "Enter a divisor other than 0.",
  "field-text.shorter": "Enter at most {most} characters.",
  "field-text.at-least": "Enter {limit} or more.",
  "field-text.smaller": "Enter a smaller number.",
  "field-text.one-unit": "Enter one unit. The parentheses have theirs.",
  "field-text.difference": "Enter a difference, such as {example}.",
  "field-text.difference-of": "Enter a value of this kind: {kind}.",
  "field-text.number-or-difference": "Enter a number or a difference.",
  "field-text.known-product": "Enter two kinds whose product the trade uses.",
  "field-text.known-quotient": "Enter two kinds whose quotient the trade uses.",
  "field-text.fraction-in-parentheses": "Put parentheses around the fraction.",
  "field-text.number-after-sign": "Enter a number after the sign.",
  "field-text.fewer-parentheses": "Nest parentheses at most {most} deep.",
  "field-text.opened-parenthesis": "Open the parenthesis first.",
  "field-text.closing-parenthesis": "Close the parenthesis.",

  "field-text.digits-after-mark": "Enter the digits after the decimal mark, or leave the mark out.",
  "field-text.too-large": "The number is too large.",
  "field-text.which-mark": "Is “{mark}” a decimal mark or a thousands mark? Enter {readings:or}.",
  "field-text.feet-or-thousands": "The mark could mean feet. Leave thousands marks out.",
  "field-text.vacuum":
    "Enter a vacuum as a negative gauge pressure, -20 inHg gauge, or as an absolute one, 500 micron.",
  "field-text.no-functions": "Functions are not available here.",
  "field-text.capitals": "Capitals matter here. Is it {spelling}?",
  "field-text.slash-two-values": "A slash can name two values, such as 208/230 V on a nameplate.",
  "field-text.hyphen-two-ways": "With a hyphen it could be a sum or a difference.",
  "field-text.dash-two-ways":
    "A dash between {large} and {small} could join or subtract. Use a space, or a minus sign with spaces.",
  "field-text.write-plus": "Enter + between the two if you mean a sum.",
  "field-text.write-times": "Enter × if you mean it.",
  "field-text.no-spaces": "Leave spaces out of a number.",
  "field-text.which-zero": "Gauge or absolute?",
  "field-text.which-zero-of": "Gauge ({gauge}) or absolute ({absolute})?",
  "field-text.which-scale": "°F or °C?",
  "field-text.is-absolute": "This is an absolute pressure. Enter the gauge reading.",
  "field-text.is-gauge": "This is a gauge pressure. Enter the absolute pressure.",
  "field-text.given-kind": "This is a value of another kind: {kind}.",
  "field-text.points-do-not-add": "Two values of this kind cannot be added: {kind}.",
  "field-text.added-to": "It is added to a value of this kind: {kind}.",
  "field-text.taken-from": "It is subtracted from a value of this kind: {kind}.",
  "field-text.points-do-not-scale": "A value of this kind cannot be multiplied or divided: {kind}.",
  "field-text.no-product": "The trade does not use {first} × {second}.",
  "field-text.no-quotient": "The trade does not use {first} ÷ {second}.",
  "field-text.number-over-quantity":
    "A number alone cannot be divided by a quantity. Put a fraction in parentheses.",
  "field-text.each-needs-unit":
    "Each number in a sum needs a unit. 1-1/4 without spaces is a mixed number.",
  "field-text.reading-less-reading":
    "A reading minus a reading gives another kind: {given}. Required: {wanted}.",
  "field-text.readings-or-differences": "Are these readings or differences? The answer differs.",
  "field-text.fraction-two-ways": "Dividing by a fraction has two meanings.",
});
