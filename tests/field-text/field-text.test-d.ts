// The kind that is asked for is the kind that comes back.
import { formatQuantity } from "hvac-install-math/display";
import {
  type FieldTextError,
  isFieldTextError,
  parseQuantity,
  type TypedUnit,
  typedUnits,
} from "hvac-install-math/field-text";
import {
  ft,
  type InvalidInputError,
  type Kind,
  psi,
  psia,
  psig,
  type Quantity,
} from "hvac-install-math/quantity";
import { expectTypeOf, it } from "vitest";

declare function wantsAbsolute(value: Quantity<"absolutePressure">): void;
declare const anyKind: Kind;

it("the result has the kind of the option", () => {
  expectTypeOf(parseQuantity("118 psig", { kind: "gaugePressure" })).toEqualTypeOf<
    Quantity<"gaugePressure">
  >();
  expectTypeOf(parseQuantity("72 °F", { kind: "temperature", locale: "de" })).toEqualTypeOf<
    Quantity<"temperature">
  >();
  expectTypeOf(parseQuantity("12", { kind: "length", defaultUnit: ft })).toEqualTypeOf<
    Quantity<"length">
  >();
  expectTypeOf(parseQuantity("5", { kind: anyKind })).toEqualTypeOf<Quantity<Kind>>();
  expectTypeOf(typedUnits("mass")).toEqualTypeOf<readonly TypedUnit<"mass">[]>();
});

it("a caught error narrows", () => {
  const error: unknown = undefined;
  if (isFieldTextError(error)) {
    expectTypeOf(error).toEqualTypeOf<FieldTextError>();
    expectTypeOf(error).toExtend<InvalidInputError>();
    expectTypeOf(error.position).toEqualTypeOf<number>();
  }
});

it("a gauge pressure is no absolute pressure", () => {
  // @ts-expect-error 2345: what was typed counts from the atmosphere
  wantsAbsolute(parseQuantity("118 psig", { kind: "gaugePressure" }));
});

it("a default unit is of the kind", () => {
  // @ts-expect-error 2322: an absolute unit for a gauge field
  parseQuantity("118", { kind: "gaugePressure", defaultUnit: psia });
});

it("the kind is one of the library's and is not left out", () => {
  // @ts-expect-error 2322: no such kind
  parseQuantity("118 psig", { kind: "pressure" });
  // @ts-expect-error 2345: the field has to say what it wants
  parseQuantity("118 psig", { locale: "de" });
  // @ts-expect-error 2554: the field has to say what it wants
  parseQuantity("118 psig");
});

it("what is shown has a system, and a resolution that is a difference", () => {
  formatQuantity(psig(118), { system: "SI", resolution: psi(1), unit: psig });
  // @ts-expect-error 2322: a resolution is a difference
  formatQuantity(psig(118), { system: "SI", resolution: psig(1) });
  // @ts-expect-error 2322: no such system
  formatQuantity(psig(118), { system: "metric" });
  // @ts-expect-error 2345: no default system
  formatQuantity(psig(118), {});
  // @ts-expect-error 2322: an absolute unit cannot show a gauge pressure
  formatQuantity(psig(118), { system: "SI", unit: psia });
});
