// Is this nothing but JSON data, and not too much of it? A copy without getters, prototypes and gaps.
// Follows RFC 8259, section 3 and 9. Does not cover what the fields mean: the schema says that.
import type { WireLimits } from "./limits.ts";
import { pathText, readable, refuse, shown } from "./refuse.ts";

/** A copy of JSON data within the limits; fields that are undefined are left out. */
export function plainCopy(root: unknown, limits: WireLimits, whole: string): unknown {
  const path: PropertyKey[] = [];
  const no = (value: string, allowed: string) => refuse(pathText(path, whole), value, allowed);
  const text = (one: string) => {
    if (one.length <= limits.stringLength) return one;
    return no(`a text of ${one.length} characters`, `at most ${limits.stringLength}`);
  };
  let values = 0;
  const under = (key: PropertyKey, value: unknown) => {
    path.push(key);
    const copied = copy(value);
    path.pop();
    return copied;
  };
  function copy(value: unknown): unknown {
    if (++values > limits.values) no("one value more", `at most ${limits.values} values in all`);
    if (typeof value === "string") return text(value);
    if (typeof value === "number") return value + 0; // −0 becomes 0
    if (value === null || typeof value === "boolean") return value;
    if (typeof value !== "object") return no(shown(value), "JSON data");
    if (path.length >= limits.depth) no(shown(value), `at most ${limits.depth} deep`);
    if (Array.isArray(value)) {
      if (value.length > limits.listItems) {
        no(`a list of ${value.length} items`, `at most ${limits.listItems}`);
      }
      return Array.from(value, (one, i) => under(i, one));
    }
    const prototype: unknown = Object.getPrototypeOf(value);
    if (prototype !== null && Object.getPrototypeOf(prototype) !== null) {
      return no("an object of a class", "JSON data");
    }
    const result: Record<string, unknown> = {};
    for (const [key, own] of Object.entries(value)) {
      if (own === undefined) continue;
      // Assigning __proto__ would change the prototype instead of adding a field.
      if (text(key) === "__proto__") no("a field named __proto__", "no such field");
      result[key] = under(key, own);
    }
    return result;
  }
  return readable(
    () => copy(root),
    () => no("an object that cannot be read", "JSON data"),
  );
}
