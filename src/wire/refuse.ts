// Where in a document is the mistake, and what stands there? The typed error of this module.
// Follows the writing of JavaScript, such as pressureTest.readings[3].pressure. Internal.
import { describe } from "../quantity/check.ts";
import { InvalidInputError, isInvalidInputError } from "../quantity/errors.ts";

/** The steps from the top of a document to a value. */
export type Path = readonly PropertyKey[];

/** A path as text; the name of the whole where the path is empty. */
export function pathText(path: Path, whole: string): string {
  const text = path.map((one) => {
    if (typeof one === "number") return `[${one}]`;
    const name = String(one).slice(0, 40);
    return /^[\w-]*$/.test(name) ? `.${name}` : `[${JSON.stringify(name)}]`; // nothing that moves a cursor
  });
  return text.join("").replace(/^\./, "") || whole;
}

/** What stands there, in words. */
export function shown(value: unknown): string {
  if (typeof value !== "object" || value === null) return describe(value);
  return Array.isArray(value) ? "a list" : "an object";
}

/** Throws the typed error. */
export function refuse(argument: string, value: string, allowed: string, hint = ""): never {
  throw new InvalidInputError({ argument, value, allowed, hint });
}

/** Reads a value of the caller's; a getter or a proxy that throws becomes the typed error. */
export function readable<T>(read: () => T, unreadable: () => never): T {
  try {
    return read();
  } catch (error) {
    if (isInvalidInputError(error)) throw error;
    return unreadable();
  }
}
