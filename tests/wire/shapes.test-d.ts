// A shape that does not fit its type does not compile: nothing that a type says is forgotten on the wire.
import type { Quantity } from "hvac-install-math/quantity";
import { test } from "vitest";
import { either, type FormOf, list, of, words } from "../../src/wire/wire-shape.ts";

type Colour = "red" | "green";
interface Lamp {
  readonly name: string;
  readonly height: Quantity<"length">;
  readonly colour?: Colour;
  readonly phases: 1 | 3;
  readonly lit: boolean;
  readonly readings: readonly Quantity<"voltage">[];
}
const fields = {
  name: "text",
  height: "length",
  phases: { words: [1, 3] },
  lit: "flag",
  readings: list("voltage"),
} as const;
const colour = () => words<Colour>({ red: true, green: true });

test("a shape that fits its type compiles", () => {
  () => of<Lamp>({ ...fields, "colour?": colour() });
  () =>
    of<{ at: Quantity<"gaugePressure"> | Quantity<"absolutePressure"> }>({
      at: either("gaugePressure", "absolutePressure"),
    });
});

test("a field that is forgotten, unknown, or missing when it must not be, does not compile", () => {
  // @ts-expect-error: `colour?` is forgotten.
  () => of<Lamp>({ ...fields });
  const { height: _, ...without } = fields;
  // @ts-expect-error: `height` is forgotten.
  () => of<Lamp>({ ...without, "colour?": colour() });
  // @ts-expect-error: the type has no `weight`.
  () => of<Lamp>({ ...fields, "colour?": colour(), weight: "mass" });
  // @ts-expect-error: `colour` may be missing.
  () => of<Lamp>({ ...fields, colour: colour() });
  // @ts-expect-error: `lit` may not be missing.
  () => of<Lamp>({ ...fields, "colour?": colour(), "lit?": "flag" });
});

test("a field of another kind or form does not compile", () => {
  // @ts-expect-error: a height is a length.
  () => of<Lamp>({ ...fields, "colour?": colour(), height: "area" });
  // @ts-expect-error: gauge and absolute pressure are different kinds.
  () => of<{ at: Quantity<"absolutePressure"> }>({ at: "gaugePressure" });
  // @ts-expect-error: a temperature is not a difference of temperatures.
  () => of<{ by: Quantity<"temperatureDifference"> }>({ by: "temperature" });
  // @ts-expect-error: a quantity is not a number.
  () => of<Lamp>({ ...fields, "colour?": colour(), height: "number" });
  // @ts-expect-error: a text is not a flag.
  () => of<Lamp>({ ...fields, "colour?": colour(), lit: "text" });
  // @ts-expect-error: one reading is not a list of them.
  () => of<Lamp>({ ...fields, "colour?": colour(), readings: "voltage" });
  // @ts-expect-error: the readings are voltages.
  () => of<Lamp>({ ...fields, "colour?": colour(), readings: list("current") });
  // @ts-expect-error: two phases are not allowed.
  () => of<Lamp>({ ...fields, "colour?": colour(), phases: { words: [1, 2, 3] } });
});

test("an object whose fields nobody compared with its type is not its shape", () => {
  const lamp = of<{ name: string }>({ name: "text" });
  // @ts-expect-error: the shape of another type.
  const other: FormOf<Lamp> = lamp;
  // @ts-expect-error: fields that `of` has not seen.
  const bare: FormOf<{ name: string }> = { fields: { name: "text" } };
  () => [other, bare];
});

test("a word that is missing or unknown does not compile", () => {
  // @ts-expect-error: `green` is missing.
  () => words<Colour>({ red: true });
  // @ts-expect-error: `blue` is none of them.
  () => words<Colour>({ red: true, green: true, blue: true });
  // @ts-expect-error: words of another type.
  () => of<{ colour: Colour }>({ colour: words<"blue">({ blue: true }) });
});
