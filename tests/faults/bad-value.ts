// Values that no argument can have, and those at the edge of what a number or a text can be.
import { ampere, degC, isQuantity, type Quantity } from "hvac-install-math/quantity";
import { isTable } from "./walk.ts";

/** What a trap throws: nothing of the library. */
export const trapped: Error = new Error("a trap of the caller's own");

const trap = (): never => {
  throw trapped;
};

/** An object in which every look throws. */
const trapping: object = new Proxy({}, { get: trap, has: trap, ownKeys: trap });

const longText = "1".repeat(1e6);

export interface BadValue {
  readonly name: string;
  readonly value: unknown;
  /** Nothing but a typed error will do; otherwise a finite answer will do too. */
  readonly refused: boolean;
}

const bad = (name: string, value: unknown, refused = true): BadValue => ({ name, value, refused });

/** Of no use wherever they stand. */
const useless: BadValue[] = [
  bad("NaN", Number.NaN),
  bad("Infinity", Number.POSITIVE_INFINITY),
  bad("-Infinity", Number.NEGATIVE_INFINITY),
  bad("null", null),
  bad("a symbol", Symbol("invented")),
  bad("a big integer", 12n),
  bad("a trapping object", trapping),
];

/** What may be tried in the place of a valid value. */
export function badValuesFor(valid: unknown): BadValue[] {
  const list = [...useless];
  const type = typeof valid;
  if (!Array.isArray(valid)) list.push(bad("[]", []), bad("[null]", [null]));
  if (type !== "boolean") list.push(bad("true", true));
  if (type !== "function") list.push(bad("a function", () => undefined));
  const text = type === "string";
  const plain =
    type === "object" &&
    valid !== null &&
    !isQuantity(valid) &&
    !Array.isArray(valid) &&
    !ArrayBuffer.isView(valid) &&
    !(valid instanceof Error);
  list.push(bad("{}", {}, !plain), bad("a date", new Date(0), !plain));
  for (const word of ["", "12", "__proto__", "constructor", "toString"]) {
    list.push(bad(JSON.stringify(word), word, !text));
  }
  list.push(bad("a text of 1e6 characters", longText, !text));
  list.push(bad("undefined", undefined, false));
  if (type === "number") {
    for (const n of [-0, 5e-324, -5e-324, 1e308, -1e308, 0.5, -(valid as number)]) {
      list.push(bad(Object.is(n, -0) ? "-0" : String(n), n, false));
    }
  }
  if (isQuantity(valid)) {
    const { kind, unit } = valid as Quantity<"length">;
    list.push(bad("another kind", kind === ("current" as string) ? degC(1) : ampere(1)));
    list.push(bad("a bare number", 12));
    list.push(bad("a quantity of NaN", { ...valid, si: Number.NaN, unit, kind }));
    list.push(bad("a quantity of a text", { ...valid, si: String(valid.si), unit, kind }));
    for (const n of [-0, 5e-324, -5e-324, 1e-300, 1e300, -1e300, -1, -valid.si / unit.scale]) {
      try {
        list.push(bad(`${Object.is(n, -0) ? "-0" : n} ${unit.symbol}`, unit(n), false));
      } catch {} // no such quantity can be made
    }
  }
  if (Array.isArray(valid) && valid.length > 0) {
    list.push(bad("a list of 2e4", new Array(2e4).fill(valid[0]), false));
    list.push(bad("an empty list", [], false));
    list.push(bad("a list with a hole", new Array(valid.length), false));
  }
  if (plain && !isTable(valid)) {
    const polluting = JSON.parse('{"__proto__": {"polluted": 1}, "constructor": {"a": 1}}');
    list.push(bad("polluting keys", Object.assign(Object.create(null), polluting, valid), false));
    list.push(bad("a proxy", new Proxy(valid as object, {}), false));
  }
  return list;
}
