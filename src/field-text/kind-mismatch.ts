// The text is a quantity, but of another kind than the field wants. What should the person be asked?
// Follows the kinds of the quantity module.
// Does not cover conversion between gauge and absolute: that needs an atmosphere, which text has not.
import type { Kind } from "../quantity/kinds.ts";
import { FieldTextError } from "../read-quantity/field-text-error.ts";
import type { Value } from "./evaluate.ts";
import { symbolsOf } from "./typed-units.ts";
import type { AnyUnit } from "./unit-names.ts";

/** The gauge and the absolute unit of a pressure difference's unit. */
const zeros: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ["psi", "psig (gauge) or psia (absolute)"],
  ["kPa", "kPag (gauge) or kPaa (absolute)"],
  ["MPa", "MPag (gauge) or MPaa (absolute)"],
  ["bar", "barg (gauge) or bara (absolute)"],
  ["mbar", "mbara (absolute), or barg (gauge)"],
  ["Pa", "Pa abs (absolute), or kPag (gauge)"],
  ["inHg", "inHg gauge or inHg abs"],
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
    const allowed = `a difference, such as ${differenceExample(unit)}`;
    const hint = `A reading less a reading is a ${unit.kind}; a ${kind} is wanted`;
    return new FieldTextError(text, ...secondReading, allowed, hint);
  }
  const allowed = `a unit of ${kind}: ${symbolsOf(kind)}`;
  return new FieldTextError(text, ...unitPlace, allowed, hintFor(unit, kind));
}

function hintFor(unit: AnyUnit, kind: Kind): string {
  const zero = zeros.get(unit.symbol);
  if (zero && (kind === "gaugePressure" || kind === "absolutePressure")) {
    return `Which zero: ${zero}?`;
  }
  if (kind === "temperature" && unit.kind === "angle") return "°F or °C?";
  if (kind === "gaugePressure" && unit.kind === "absolutePressure") {
    return "It becomes a gauge pressure only with the atmosphere";
  }
  if (kind === "absolutePressure" && unit.kind === "gaugePressure") {
    return "It becomes an absolute pressure only with the atmosphere";
  }
  return `The text gives the kind ${unit.kind}`;
}
