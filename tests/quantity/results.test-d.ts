// What the results of arithmetic, reading and storage are.
import {
  type AnyQuantity,
  type DifferenceOf,
  degF,
  deltaF,
  equals,
  fromJSON,
  ft,
  gPerM,
  isQuantity,
  type Kind,
  kPaa,
  kPag,
  lb,
  m,
  mL,
  mm2,
  type PointKind,
  product,
  psi,
  psia,
  psig,
  type Quantity,
  type QuantityJson,
  quotient,
  standardAtmosphere,
  toAbsolute,
  toGauge,
  type Unit,
  volt,
} from "hvac-install-math/quantity";
import { expectTypeOf, it } from "vitest";

it("a unit makes quantities of its kind", () => {
  expectTypeOf(psig(118)).toEqualTypeOf<Quantity<"gaugePressure">>();
  expectTypeOf(degF(80)).toEqualTypeOf<Quantity<"temperature">>();
  expectTypeOf(psig).toEqualTypeOf<Unit<"gaugePressure">>();
  expectTypeOf(psig.difference).toEqualTypeOf<Unit<"pressureDifference">>();
  expectTypeOf(volt.difference).toEqualTypeOf<Unit<"voltage">>();
});

it("a point less a point is their difference", () => {
  expectTypeOf(degF(95).minus(degF(75))).toEqualTypeOf<Quantity<"temperatureDifference">>();
  expectTypeOf(psig(118).minus(kPag(3))).toEqualTypeOf<Quantity<"pressureDifference">>();
  expectTypeOf(psia(118).minus(kPaa(3))).toEqualTypeOf<Quantity<"pressureDifference">>();
});

it("a point and a difference make a point", () => {
  expectTypeOf(degF(95).plus(deltaF(5))).toEqualTypeOf<Quantity<"temperature">>();
  expectTypeOf(degF(95).minus(deltaF(5))).toEqualTypeOf<Quantity<"temperature">>();
  expectTypeOf(psig(118).plus(psi(5))).toEqualTypeOf<Quantity<"gaugePressure">>();
});

it("additive kinds stay what they are", () => {
  expectTypeOf(ft(3).plus(m(1))).toEqualTypeOf<Quantity<"length">>();
  expectTypeOf(ft(3).minus(m(1))).toEqualTypeOf<Quantity<"length">>();
  expectTypeOf(ft(3).times(2)).toEqualTypeOf<Quantity<"length">>();
  expectTypeOf(ft(3).dividedBy(2)).toEqualTypeOf<Quantity<"length">>();
  expectTypeOf(ft(3).dividedBy(m(1))).toEqualTypeOf<number>();
});

it("DifferenceOf is the kind of the difference", () => {
  expectTypeOf<DifferenceOf<"temperature">>().toEqualTypeOf<"temperatureDifference">();
  expectTypeOf<DifferenceOf<"gaugePressure">>().toEqualTypeOf<"pressureDifference">();
  expectTypeOf<DifferenceOf<"length">>().toEqualTypeOf<"length">();
  expectTypeOf<PointKind>().toEqualTypeOf<"temperature" | "gaugePressure" | "absolutePressure">();
});

it("reading gives a plain number, comparison a boolean", () => {
  expectTypeOf(psig(118).in(kPag)).toEqualTypeOf<number>();
  expectTypeOf(psig(118).as(kPag)).toEqualTypeOf<Quantity<"gaugePressure">>();
  expectTypeOf(psig(118) > psig(100)).toEqualTypeOf<boolean>();
  expectTypeOf(equals(psig(1), psig(2), psi(1))).toEqualTypeOf<boolean>();
  expectTypeOf(`${psig(118)}`).toEqualTypeOf<string>();
});

it("gauge and absolute turn into each other with an atmosphere", () => {
  expectTypeOf(toAbsolute(psig(118), standardAtmosphere)).toEqualTypeOf<
    Quantity<"absolutePressure">
  >();
  expectTypeOf(toGauge(psia(118), standardAtmosphere)).toEqualTypeOf<Quantity<"gaugePressure">>();
});

it("products and quotients have the kind of the table", () => {
  expectTypeOf(product(gPerM(20), ft(3), lb)).toEqualTypeOf<Quantity<"mass">>();
  expectTypeOf(quotient(mL(49), mm2(49), m)).toEqualTypeOf<Quantity<"length">>();
});

it("storage keeps the kind", () => {
  expectTypeOf(psig(118).toJSON()).toEqualTypeOf<QuantityJson<"gaugePressure">>();
  expectTypeOf(fromJSON({})).toEqualTypeOf<AnyQuantity>();
  expectTypeOf(fromJSON({}, "gaugePressure")).toEqualTypeOf<Quantity<"gaugePressure">>();
});

it("an unknown kind narrows by its kind", () => {
  const value = fromJSON({});
  if (value.kind === "gaugePressure")
    expectTypeOf(value).toEqualTypeOf<Quantity<"gaugePressure">>();
  const thing: unknown = value;
  if (isQuantity(thing, "mass")) expectTypeOf(thing).toEqualTypeOf<Quantity<"mass">>();
  if (isQuantity(thing)) expectTypeOf(thing).toEqualTypeOf<AnyQuantity>();
  expectTypeOf(psig(118)).toExtend<AnyQuantity>();
});

it("a generic function keeps the kind of its argument", () => {
  const largest = <K extends Kind>(a: Quantity<K>, b: Quantity<K>): Quantity<K> => (a > b ? a : b);
  expectTypeOf(largest(psig(1), psig(2))).toEqualTypeOf<Quantity<"gaugePressure">>();
});
