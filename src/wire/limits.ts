// How large may a document be? Limits that keep a hostile or broken document from stopping the app.
// Follows no standard; RFC 8259, section 9, lets a parser set limits.
// Does not cover what a network or a file may bring: refuse that before it is text.
import { numberOf, objectOf, oneOf } from "../quantity/check.ts";

/**
 * How much a codec reads or writes before it refuses.
 *
 * Source: RFC 8259, section 9, allows limits; these are the library's own.
 */
export interface WireLimits {
  /** Characters (UTF-16 code units) of a text. */
  readonly textLength: number;
  /** Objects and lists inside each other; at most 500. */
  readonly depth: number;
  /** Items of one list. */
  readonly listItems: number;
  /** Characters of one string or one field name. */
  readonly stringLength: number;
  /** All values together: objects, lists, numbers, words. */
  readonly values: number;
}

/**
 * The limits unless you state others. They hold a log of one reading a second over a day (86 400 readings).
 *
 * @example
 * ```ts
 * import { defaultLimits } from "hvac-install-math/wire";
 *
 * defaultLimits.depth; // => 32
 * ```
 */
export const defaultLimits: WireLimits = /* @__PURE__ */ Object.freeze({
  textLength: 20_000_000,
  depth: 32,
  listItems: 100_000,
  stringLength: 10_000,
  values: 1_000_000,
});

/** The stated limits over the usual ones. */
export function limitsOf(stated: Partial<WireLimits> = {}): WireLimits {
  const limits = { ...defaultLimits, ...objectOf("limits", stated) };
  for (const [name, value] of Object.entries(limits)) {
    oneOf("limits", name, Object.keys(defaultLimits));
    numberOf(`limits.${name}`, value, name === "depth" ? { min: 1, max: 500 } : { min: 1 });
  }
  return limits;
}
