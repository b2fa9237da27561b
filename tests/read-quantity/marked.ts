// One refused text with its mistake in brackets: what is thrown about it, and at which place.
import {
  type FieldTextError,
  type ReadQuantityOptions,
  readQuantity,
} from "hvac-install-math/read-quantity";
import { expect } from "vitest";
import { refusal } from "../field-text/catalogue.ts";

/** A sentence without values, by its code; or its code and values. */
export type Said = string | { readonly code: string; readonly values: object };

/** Reads `1 ⟦5/4⟧ in` without the brackets and expects that what stands in them is refused, in these words. */
export function expectRefused(
  marked: string,
  options: object,
  wanted: Said,
  hint?: Said,
  read: (text: string, options: ReadQuantityOptions<"length">) => unknown = readQuantity,
): FieldTextError {
  const text = marked.replace(/[⟦⟧]/g, "");
  const error = refusal(() => read(text, options as ReadQuantityOptions<"length">));
  const { position, end } = error;
  const place = { position: marked.indexOf("⟦"), end: marked.indexOf("⟧") - 1 };
  expect({ position, end }, text).toEqual(place);
  expect(error.wanted, text).toEqual(statement(wanted));
  expect(error.hint, text).toEqual(hint && statement(hint));
  expect(error.problem, text).toEqual(statement(hint ?? wanted));
  return error;
}

const statement = (said: Said) =>
  typeof said === "string" ? { code: `field-text.${said}`, values: {} } : said;

/** `field-text.<code>` with its values. */
export const said = (code: string, values: object): Said => ({
  code: `field-text.${code}`,
  values,
});

/** What is said of a unit that the field does not take. */
export const unitOf = (...symbols: string[]): Said =>
  said("unit", { symbols: symbols.map((verbatim) => ({ verbatim })) });
