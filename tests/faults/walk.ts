// Ways through inputs and results: their places, copies with one place changed, what is not finite in them.
import * as circuitProtection from "hvac-install-math/circuit-protection";
import * as english from "hvac-install-math/language/en";
import * as propertyModel from "hvac-install-math/property-model";
import * as quantity from "hvac-install-math/quantity";
import { isQuantity, Quantity, type Unit } from "hvac-install-math/quantity";
import * as refrigerants from "hvac-install-math/refrigerants";
import * as supplyVoltage from "hvac-install-math/supply-voltage";

export type Path = readonly (string | number)[];

type AnyQuantity = Quantity<"length">;
type AnyUnit = Unit<"length">;

/** Tables of the library that callers pass on as they are: one value, not a tree of inputs. */
const tables = new Set<unknown>(
  [circuitProtection, english, propertyModel, refrigerants, supplyVoltage].flatMap((module) =>
    Object.values(module).filter((value) => typeof value === "object"),
  ),
);

const isWhole = (value: unknown): boolean =>
  typeof value !== "object" ||
  value === null ||
  isQuantity(value) ||
  tables.has(value) ||
  ArrayBuffer.isView(value) ||
  value instanceof Error ||
  "moleFractions" in value;

/** Whether a value is a table of the library, or a mixture made of such. */
export const isTable = (value: unknown): boolean =>
  tables.has(value) || (typeof value === "object" && value !== null && "moleFractions" in value);

/** Every place of an input, also those that hold objects and lists; of a long list the ends. */
export function placesIn(value: unknown, path: Path = []): { path: Path; value: unknown }[] {
  const own = path.length === 0 ? [] : [{ path, value }];
  if (isWhole(value)) return own;
  const entries = Array.isArray(value)
    ? [...value.entries()].filter(([i]) => i === 0 || i === value.length - 1 || value.length < 4)
    : Object.entries(value as object);
  return [...own, ...entries.flatMap(([key, one]) => placesIn(one, [...path, key]))];
}

/** A copy in which the value at the path is another one. */
export function replaced(root: unknown, path: Path, value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  const child = replaced((root as Record<string | number, unknown>)[key], rest, value);
  if (Array.isArray(root)) return root.map((one, i) => (i === key ? child : one));
  return { ...(root as object), [key]: child };
}

/** A copy in which the key at the path is not there. */
export function without(root: unknown, path: Path): unknown {
  const parent = path.slice(0, -1).reduce((at, key) => (at as never)[key] as unknown, root);
  const { [path.at(-1) as string]: _, ...others } = parent as Record<string, unknown>;
  return replaced(root, path.slice(0, -1), others);
}

/** A copy of an input in which every quantity is mapped. */
export function mapQuantities(
  root: unknown,
  map: (one: AnyQuantity, i: number) => unknown,
): unknown {
  let count = 0;
  const copy = (value: unknown): unknown => {
    if (isQuantity(value)) return map(value as AnyQuantity, count++);
    if (isWhole(value)) return value;
    if (Array.isArray(value)) return value.map(copy);
    return Object.fromEntries(
      Object.entries(value as object).map(([key, one]) => [key, copy(one)]),
    );
  };
  return copy(root);
}

/** A path as the errors of the library write it. */
export const pathText = (path: Path): string =>
  path.reduce<string>(
    (text, key) => (typeof key === "number" ? `${text}[${key}]` : text ? `${text}.${key}` : key),
    "",
  );

/** Places of a result that hold what no result may hold. */
export function faultsIn(
  result: unknown,
  path: Path = [],
  seen: Set<unknown> = new Set(),
): string[] {
  const at = pathText(path) || "the result";
  if (result === undefined && path.length > 0) return [`${at} is undefined`];
  if (typeof result === "number") return Number.isFinite(result) ? [] : [`${at} is ${result}`];
  if (typeof result === "string" && /NaN|Infinity|undefined|\[object/.test(result)) {
    return [`${at} says ${result.slice(0, 60)}`];
  }
  if (typeof result !== "object" || result === null || seen.has(result) || tables.has(result)) {
    return [];
  }
  seen.add(result);
  if (isQuantity(result)) return [];
  if (ArrayBuffer.isView(result)) {
    return faultsIn([...(result as unknown as Iterable<number>)], path, seen);
  }
  return Object.entries(result).flatMap(([key, one]) =>
    faultsIn(one, [...path, Array.isArray(result) ? Number(key) : key], seen),
  );
}

/** A value as data that can be compared and printed: nothing is left of who made it. */
export function snapshot(value: unknown): unknown {
  if (typeof value === "function") return `function ${(value as { symbol?: string }).symbol ?? ""}`;
  if (value instanceof Quantity || isQuantity(value)) {
    const { kind, si, unit } = value as AnyQuantity;
    return { kind, si, unit: unit.symbol };
  }
  if (typeof value !== "object" || value === null) return value;
  if (value instanceof Error) return { ...value, message: value.message };
  if (ArrayBuffer.isView(value)) return [...(value as unknown as Iterable<number>)];
  if (Array.isArray(value)) return value.map(snapshot);
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, snapshot(one)]));
}

/** Freezes a copy of an input through and through. */
export function frozen(value: unknown): unknown {
  if (isWhole(value)) return value;
  const copy = Array.isArray(value)
    ? value.map(frozen)
    : Object.fromEntries(Object.entries(value as object).map(([key, one]) => [key, frozen(one)]));
  return Object.freeze(copy);
}

/** The units of the library of one kind. */
export function unitsOf(kind: string): AnyUnit[] {
  const exported = Object.values(quantity as unknown as Record<string, AnyUnit>);
  return exported.filter((one) => typeof one === "function" && "scale" in one && one.kind === kind);
}
