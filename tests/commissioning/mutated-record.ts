// Changes to a record, for tests that look for a crash, a NaN or a pass that nothing supports.
import fc from "fast-check";
import { ft, ftLb, isQuantity, psig, volt } from "hvac-install-math/quantity";

export type Segment = string | number;
/** Paths of every value of the record: quantities, words and flags, and the parts around them. */
export function pathsOf(value: unknown, path: readonly Segment[] = []): Segment[][] {
  if (typeof value !== "object" || value === null || isQuantity(value)) return [[...path]];
  const own = Array.isArray(value)
    ? value.slice(0, 2).map((item, i): [Segment, unknown] => [i, item])
    : Object.entries(value);
  return [
    ...(path.length ? [[...path]] : []),
    ...own.flatMap(([key, one]) => pathsOf(one, [...path, key])),
  ];
}
/** A copy with another value at a path; nothing removes it. Where nothing like the path is left, the target. */
export function put(target: unknown, [key, ...rest]: readonly Segment[], value: unknown): unknown {
  if (key === undefined) return value;
  if (typeof target !== "object" || target === null || isQuantity(target)) return target;
  // An earlier change may have put a list where the path names a field: no list has a `length` of −1.
  if (Array.isArray(target) && typeof key !== "number") return target;
  const copy: Record<Segment, unknown> = Array.isArray(target)
    ? ([...target] as never)
    : { ...target };
  if (rest.length === 0 && value === undefined) {
    if (Array.isArray(copy)) copy.splice(key as number, 1);
    else delete copy[key];
  } else copy[key] = put(copy[key], rest, value);
  return copy;
}
/** The value at a path. */
export const at = (target: unknown, path: readonly Segment[]): unknown =>
  path.reduce<unknown>(
    (value, key) => (value as Record<Segment, unknown> | undefined)?.[key],
    target,
  );

/** Everything that a result says, as text; throws on a number that is not finite. */
export function textOf(value: unknown): string {
  return JSON.stringify(value, (_, one) => {
    if (typeof one === "number" && !Number.isFinite(one)) throw new Error(`${one} in the result`);
    return typeof one === "function" ? "function" : one;
  });
}
/** A single change that makes the complete record fail. */
export const faults: readonly (readonly [path: Segment[], value: unknown])[] = [
  [["runs", 0, "joints", 0, "torque"], ftLb(5)],
  [["pressureTests", 0, "readings", 1, "pressure"], psig(470)],
  [["power", "supply", "readings", 0, "voltage"], volt(275)],
  [["runs", 0, "tubing", "lift"], ft(35.9)],
  [["runs", 0, "drain", "waterRanOff"], false],
  [["operation", 0, "pressure"], psig(60)],
];

/** What no field of a record should be, and what some may. */
export const strange: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(
    undefined,
    null,
    "",
    "R-999",
    "__proto__",
    "2026-02-30",
    [],
    {},
    Number.NaN,
    -1,
    0,
    1e308,
    true,
    { kind: "length", value: 1, unit: "m" },
    Symbol.iterator,
    () => 1,
  ),
  fc.jsonValue({ maxDepth: 2 }),
);
/** What a figure is multiplied by. */
export const factor: fc.Arbitrary<number> = fc.constantFrom(-1, 0, 1e-9, 0.5, 1.001, 2, 1e6, 1e300);
