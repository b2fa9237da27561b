// The catalogue by kind and symbol, against the exports themselves.
import * as quantity from "hvac-install-math/quantity";
import {
  fromJSON,
  ft,
  type Kind,
  type Unit,
  unitBySymbol,
  unitsOf,
} from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { thrownBy } from "../wire/thrown-by.ts";

const exported = Object.values(quantity as unknown as Record<string, unknown>).filter(
  (one): one is Unit<Kind> => typeof one === "function" && "scale" in one,
);
const kinds = [...new Set(exported.map(({ kind }) => kind))];

it("lists every exported unit of a kind, each symbol once", () => {
  for (const kind of kinds) {
    const units = unitsOf(kind);
    expect(new Set(units)).toEqual(new Set(exported.filter((one) => one.kind === kind)));
    expect(new Set(units.map(({ symbol }) => symbol)).size).toBe(units.length);
  }
});

it("gives back every unit by kind and symbol", () => {
  for (const one of exported) expect(unitBySymbol(one.kind, one.symbol)).toBe(one);
});

it("hands out a list that nobody can change", () => {
  expect(() => (unitsOf("length") as Unit<"length">[]).pop()).toThrow(TypeError);
  expect(unitsOf("length")).toContain(ft);
});

it("says which units and kinds there are when it does not know one", () => {
  const lengths = "a unit of length: cm, ft, in, m, mm";
  expect(thrownBy(() => unitBySymbol("length", "furlong")).allowed).toBe(lengths);
  expect(thrownBy(() => fromJSON({ kind: "length", value: 1, unit: "yd" })).allowed).toBe(lengths);
  expect(thrownBy(() => unitsOf("color" as never)).allowed).toBe("a kind of quantity");
  expect(thrownBy(() => fromJSON({ kind: "toString", value: 1, unit: "m" })).argument).toBe(
    "json.kind",
  );
});
