// What holds for every public function with valid input.
import { readFileSync } from "node:fs";
import { fromJSON, isInvalidInputError } from "hvac-install-math/quantity";
import { describe, expect, it, vi } from "vitest";
import { functionsOf } from "./catalogue.ts";
import { modules, subjects } from "./subjects.ts";
import { faultsIn, frozen, mapQuantities, snapshot, unitsOf } from "./walk.ts";

type Args = readonly unknown[];
vi.resetModules();
const { Quantity: AnotherQuantity } = await import("hvac-install-math/quantity");

const calls = subjects.flatMap(({ name, act, calls }) =>
  calls.map((args, i) => [`${name} #${i + 1}`, act, args] as const),
);

it("stands in the catalogue with an input that is valid", () => {
  const { exports } = JSON.parse(readFileSync("package.json", "utf8"));
  const own = ["./wire", "./report", "./plots", "./display"]; // these have suites of their own
  const subpaths = Object.keys(exports).filter(
    (path) => /^\.\/[a-z-]+$/.test(path) && !own.includes(path),
  );
  expect(Object.keys(modules).map((name) => `./${name}`)).toEqual(expect.arrayContaining(subpaths));
  const without = subjects.filter(({ calls }) => calls.length === 0).map(({ name }) => name);
  expect(without).toEqual([]);
  const known = new Set(subjects.map(({ name }) => name));
  for (const [module, exported] of Object.entries(modules)) {
    for (const [name] of functionsOf(exported)) expect(known).toContain(`${module}.${name}`);
  }
});

/** What has to agree however the input is written: everything but texts, which speak the caller's units. */
function figures(value: unknown): unknown {
  if (typeof value === "string") return /\d|^function/.test(value) ? "a text" : value;
  if (typeof value === "object" && value !== null && "si" in value && "unit" in value) {
    const { kind, si } = value as unknown as { kind: string; si: number };
    return { kind, si };
  }
  if (Array.isArray(value)) return value.map(figures);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, figures(one)]));
}

/** Where two answers differ by more than the tolerance. */
function differences(a: unknown, b: unknown, tolerance: number, path = ""): string[] {
  if (Object.is(a, b)) return []; // a table of rules ends with an open row, at Infinity
  if (typeof a === "number" && typeof b === "number") {
    // Statements round for the reader in the unit that they speak, an uncertainty to two digits.
    const least = path.includes(".values.") ? 0.05 : tolerance;
    const most = least * Math.max(Math.abs(a), Math.abs(b));
    return Math.abs(a - b) <= most || Math.abs(a - b) < 1e-300 ? [] : [`${path}: ${a}, ${b}`];
  }
  if (typeof a !== "object" || a === null || typeof b !== "object" || b === null) {
    return a === b ? [] : [`${path}: ${JSON.stringify(a)}, ${JSON.stringify(b)}`];
  }
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].flatMap((key) =>
    differences(a[key as never], b[key as never], tolerance, `${path}.${key}`),
  );
}

describe.each(calls)("%s", (name, act, args) => {
  const answer = act(...args);

  it("answers with nothing but finite numbers, the same twice, and leaves its input as it was", () => {
    const before = JSON.stringify(snapshot(args));
    expect(faultsIn(answer)).toEqual([]);
    expect(snapshot(act(...args))).toEqual(snapshot(answer));
    expect(JSON.stringify(snapshot(args))).toBe(before);
    expect(snapshot(act(...(frozen(args) as Args)))).toEqual(snapshot(answer));
  });

  // The plain form keeps the unit in which a quantity was entered.
  it.skipIf(name.startsWith("quantity.toPlain"))(
    "does not depend on the units of its input",
    () => {
      for (const shift of [0, 1, 2, 3]) {
        const inOther = mapQuantities(args, (one, i) => {
          const units = unitsOf(one.kind);
          return one.as(units[(i + shift) % units.length] as never);
        });
        const other = act(...(inOther as Args));
        expect(differences(figures(snapshot(answer)), figures(snapshot(other)), 1e-12)).toEqual([]);
      }
    },
  );

  it("takes a quantity that was stored as JSON, or came from another copy of the package", () => {
    const stored = mapQuantities(args, (one) => fromJSON(JSON.parse(JSON.stringify(one))));
    const other = mapQuantities(args, (one) => new AnotherQuantity(one.si, one.unit));
    for (const given of [stored, other]) {
      const again = act(...(given as Args));
      expect(differences(figures(snapshot(answer)), figures(snapshot(again)), 1e-9)).toEqual([]);
    }
  });

  it.skipIf(/^quantity\.(isQuantity|sameQuantity|toPlain) /.test(name))(
    "answers the same for the mere data of a quantity, or refuses it by a typed error",
    () => {
      const copies = [
        mapQuantities(args, (one) => ({ ...one })),
        mapQuantities(args, (one) => JSON.parse(JSON.stringify(one))),
      ];
      for (const given of copies) {
        let again: unknown;
        try {
          again = snapshot(act(...(given as Args)));
        } catch (error) {
          expect(isInvalidInputError(error), String(error)).toBe(true);
          continue;
        }
        expect(again).toEqual(snapshot(answer));
      }
    },
  );
});
