// Is a value an object of fields alone? Neither a list nor an object of a class.
// Follows ECMAScript, ordinary objects. Does not cover what the fields hold.

/** Whether a value is an object of fields alone, of this realm or another. */
export function isRecord(value: unknown): value is Record<string, unknown> {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return false;
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || Object.getPrototypeOf(prototype) === null;
}
