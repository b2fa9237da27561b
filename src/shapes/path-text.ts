// Where in a document is a value, and what stands there? Paths and values as text for errors.
// Follows the writing of JavaScript, such as pressureTest.readings[3].pressure. Internal.
import { describe, isOfKind } from "../quantity/check.ts";
import { isRecord } from "./is-record.ts";

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
  if (typeof value !== "object" || value === null || isOfKind(value)) return describe(value);
  if (Array.isArray(value)) return "a list";
  return isRecord(value) ? "an object" : "an object of a class";
}
