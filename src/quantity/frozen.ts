// How does nobody bend what the library shares? Results are frozen copies, its own tables are frozen. Internal.
// Common practice, no source.
// Does not cover class instances and typed arrays: quantities freeze themselves, nothing else is handed out.

/**
 * A copy of plain objects and lists, frozen through and through. What is frozen already is taken as it is, so
 * that parts made by this function cost nothing twice and a caller's own objects stay as they are.
 */
export function frozen<T>(value: T): T {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  if (Array.isArray(value)) return Object.freeze(value.map(frozen)) as T;
  const prototype = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) return value;
  const copy = { ...value } as Record<string, unknown>;
  for (const key of Object.keys(copy)) copy[key] = frozen(copy[key]);
  return Object.freeze(copy) as T;
}

/** Freezes what the library itself has made and nobody else holds, such as a table, with all that is in it, without a copy. */
export function frozenInPlace<T>(value: T): T {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  if (ArrayBuffer.isView(value)) return value; // can't be frozen
  Object.freeze(value);
  const parts: readonly unknown[] = Array.isArray(value) ? value : Object.values(value);
  for (let i = 0; i < parts.length; i++) if (typeof parts[i] === "object") frozenInPlace(parts[i]);
  return value;
}
