// How does a quantity survive storage? The form {kind, value, unit} and the way back.
// The format is the library's own; the unit catalogue is only pulled in by fromJSON.
import { unitNamed, unitsBySymbol } from "./catalogue.ts";
import { describe, isOfKind, numberOf, requireKind, textOf } from "./check.ts";
import { InvalidInputError } from "./errors.ts";
import type { Kind } from "./kinds.ts";
import type { Quantity } from "./quantity.ts";

/**
 * A quantity whose kind is not known yet: test `kind` and the compiler narrows it.
 */
export type AnyQuantity = { [K in Kind]: Quantity<K> }[Kind];

/**
 * Whether a value is a quantity of this library (of any copy of it). A parsed JSON object or a spread copy is not: read JSON with {@link fromJSON}.
 *
 * @param value - Anything.
 * @returns Whether it is.
 *
 * @example
 * ```ts
 * import { isQuantity, psig } from "hvac-install-math/quantity";
 *
 * isQuantity(psig(118)); // => true
 * isQuantity(psig(118), "absolutePressure"); // => false
 * ```
 */
export function isQuantity(value: unknown): value is AnyQuantity;
/**
 * Whether a value is a quantity of one kind.
 *
 * @param value - Anything.
 * @param kind - The kind asked for.
 * @returns Whether it is.
 */
export function isQuantity<K extends Kind>(value: unknown, kind: K): value is Quantity<K>;
export function isQuantity(value: unknown, kind?: Kind): boolean {
  return isOfKind(value, kind);
}

/**
 * Reads what {@link Quantity.toJSON} wrote. The value keeps twelve significant digits.
 *
 * @param json - An object with `kind`, `value` and `unit`; other properties are refused.
 * @returns The quantity, in the unit that was written.
 * @throws {@link InvalidInputError} when it is not such an object, the unit is not a unit of the kind (the
 * units that it has are listed), or the value is not finite.
 *
 * @example
 * ```ts
 * import { fromJSON, psig } from "hvac-install-math/quantity";
 *
 * const text = JSON.stringify(psig(118)); // => {"kind":"gaugePressure","value":118,"unit":"psig"}
 * fromJSON(JSON.parse(text), "gaugePressure").toString(); // => 118 psig
 * ```
 */
export function fromJSON(json: unknown): AnyQuantity;
/**
 * Reads a quantity of an expected kind.
 *
 * @param json - An object with `kind`, `value` and `unit`; other properties are refused.
 * @param kind - The kind that you expect.
 * @returns The quantity, in the unit that was written.
 * @throws {@link InvalidInputError} as above, and when the kind is not the expected one.
 */
export function fromJSON<K extends Kind>(json: unknown, kind: K): Quantity<K>;
export function fromJSON(json: unknown, kind?: Kind): unknown {
  const { kind: ownKind, value, unit: symbol } = fieldsOf(json);
  unitsBySymbol("json.kind", ownKind as Kind);
  const found = unitNamed("json.unit", ownKind as Kind, symbol as string);
  const quantity: unknown = found(numberOf("json.value", value as number));
  if (kind !== undefined) requireKind("json", quantity, textOf("kind", kind) as Kind);
  return quantity;
}

function fieldsOf(json: unknown): Record<string, unknown> {
  const keys = typeof json === "object" && json !== null ? Object.keys(json).sort().join() : "";
  if (keys === "kind,unit,value") return json as Record<string, unknown>;
  throw new InvalidInputError({
    argument: "json",
    value: keys ? `an object with ${keys.slice(0, 60)}` : describe(json),
    allowed: "an object with kind, value and unit",
  });
}
