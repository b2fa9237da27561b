// The text is a quantity, but of another kind than the field wants. What should the person be asked?
// Follows the kinds of the quantity module.
// Does not cover conversion between gauge and absolute: that needs an atmosphere, which text has not.
import type { Kind } from "../quantity/kinds.ts";
import { FieldTextError } from "../read-quantity/field-text-error.ts";
import { type FieldTextStatement, kindWord, say, verbatim } from "../read-quantity/statements.ts";
import { symbolsOf } from "./typed-units.ts";
import type { AnyUnit } from "./unit-names.ts";
import type { Value } from "./value.ts";

/** The gauge and the absolute unit of a pressure difference's unit. */
const zeros: ReadonlyMap<string, readonly [gauge: string, absolute: string]> =
  /* @__PURE__ */ new Map([
    ["psi", ["psig", "psia"]],
    ["kPa", ["kPag", "kPaa"]],
    ["MPa", ["MPag", "MPaa"]],
    ["bar", ["barg", "bara"]],
    ["mbar", ["barg", "mbara"]],
    ["Pa", ["kPag", "Pa abs"]],
    ["inHg", ["inHg gauge", "inHg abs"]],
  ]);

const points: readonly Kind[] = ["temperature", "gaugePressure", "absolutePressure"];

/** How a difference of readings in the unit is written, so that it cannot be taken for a reading. */
export function differenceExample(unit: AnyUnit): string {
  const { symbol } = unit.difference;
  if (symbol.startsWith("Δ")) return `5 ${symbol} or 5 ${symbol.slice(2)}°`;
  return ["K", "torr", "micron"].includes(symbol) ? `5 Δ${symbol}` : `5 ${symbol}`;
}

/** The error for a value in `unit` where a quantity of `kind` is wanted. */
export function kindMismatch(
  text: string,
  { unitPlace, secondReading }: Value,
  unit: AnyUnit,
  kind: Kind,
): FieldTextError {
  if (secondReading && points.includes(kind)) {
    const wanted = say("field-text.difference", { example: verbatim(differenceExample(unit)) });
    const kinds = { given: kindWord(unit.kind), wanted: kindWord(kind) };
    const hint = say("field-text.reading-less-reading", kinds);
    return new FieldTextError(text, ...secondReading, wanted, hint);
  }
  const values = { kind: kindWord(kind), symbols: symbolsOf(kind) };
  const wanted = say("field-text.unit-of-kind", values);
  return new FieldTextError(text, ...unitPlace, wanted, hintFor(unit, kind));
}

function hintFor(unit: AnyUnit, kind: Kind): FieldTextStatement {
  const zero = zeros.get(unit.symbol);
  if (zero && (kind === "gaugePressure" || kind === "absolutePressure")) {
    const [gauge, absolute] = zero;
    const units = { gauge: verbatim(gauge), absolute: verbatim(absolute) };
    return say("field-text.which-zero-of", units);
  }
  if (kind === "temperature" && unit.kind === "angle") return say("field-text.which-scale");
  if (kind === "gaugePressure" && unit.kind === "absolutePressure") {
    return say("field-text.is-absolute");
  }
  if (kind === "absolutePressure" && unit.kind === "gaugePressure") {
    return say("field-text.is-gauge");
  }
  return say("field-text.given-kind", { kind: kindWord(unit.kind) });
}
