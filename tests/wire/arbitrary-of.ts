// Values of any shape, for property tests: quantities in every unit of their kind, in thousandths, so that
// twelve digits hold them exactly.
import fc from "fast-check";
import type { Kind, Quantity, Unit } from "hvac-install-math/quantity";
import * as catalogue from "../../src/quantity/units/index.ts";
import type { WireShape } from "../../src/wire/wire-shape.ts";

const units = Object.values<Unit<never>>(catalogue as never);
const thousandths = fc.integer({ min: 1, max: 10_000_000 }).map((n) => n / 1000);

const primitives: Readonly<Record<string, fc.Arbitrary<unknown>>> = {
  text: fc.oneof(fc.string(), fc.constantFrom("__proto__", 'quote " and \\', "é ½ 管", "\u2028")),
  number: fc.double({ noNaN: true, noDefaultInfinity: true }).map((n) => n + 0),
  flag: fc.boolean(),
  time: fc.constantFrom("2026-05-04", "2026-05-04T14:30", "2026-05-04T14:30:00.5+02:00"),
  any: fc.constant(undefined),
};

/** A live value of the shape. */
export function arbitraryOf(shape: WireShape): fc.Arbitrary<unknown> {
  if (typeof shape === "string") {
    const own = primitives[shape];
    if (own) return own;
    const ofKind = units.filter(({ kind }) => kind === (shape as Kind));
    return fc
      .tuple(fc.constantFrom(...ofKind), thousandths)
      .map(([unit, value]) => unit(value) as unknown as Quantity<Kind>);
  }
  if ("words" in shape) return fc.constantFrom(...shape.words);
  if ("named" in shape) return fc.constantFrom(...Object.values(shape.named));
  if ("either" in shape) return fc.oneof(...shape.either.map(arbitraryOf));
  if ("list" in shape) return fc.array(arbitraryOf(shape.list), { maxLength: 3 });
  if ("each" in shape) {
    const names = fc.string({ unit: fc.constantFrom(..."abcxyz"), minLength: 1 });
    return fc.dictionary(names, arbitraryOf(shape.each), { maxKeys: 3, noNullPrototype: true });
  }
  const fields = Object.entries<WireShape>(shape.fields);
  return fc.record(Object.fromEntries(fields.map(([name, field]) => [name, arbitraryOf(field)])), {
    requiredKeys: [...(shape.required ?? [])],
    noNullPrototype: true,
  });
}
