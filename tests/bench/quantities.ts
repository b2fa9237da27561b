// What does a typed quantity cost against a bare number, and against general-purpose unit libraries?

import { kPag, psi, psig } from "hvac-install-math/quantity";
import Qty from "js-quantities";
import { add, unit } from "mathjs";
import { Measure, pascals } from "safe-units";
import { measure, shown, times } from "./measure.ts";
import type { Section } from "./section.ts";

const count = 500;
const values = Array.from({ length: count }, (_, i) => 100 + i / 7);
const scale = 6894.757293168361;

/** Runs a function over the inputs and keeps every object that it makes. */
function making<T>(inputs: readonly T[], act: (input: T) => object): () => unknown {
  const answers = new Array<object>(count);
  return () => {
    for (let i = 0; i < count; i++) answers[i] = act(inputs[i] as T);
    return answers;
  };
}

/** The same for numbers. */
function reading<T>(inputs: readonly T[], act: (input: T) => number): () => unknown {
  const answers = new Float64Array(count);
  return () => {
    for (let i = 0; i < count; i++) answers[i] = act(inputs[i] as T);
    return answers;
  };
}

const psis = Measure.of(scale, pascals, "psi");
const kilopascals = Measure.of(1000, pascals, "kPa");
const ours = values.map((v) => psig(v));
const rise = psi(2.5);
const mathUnits = values.map((v) => unit(v, "psi"));
const mathRise = unit(2.5, "psi");
const qties = values.map((v) => Qty(v, "psi"));
const qtyRise = Qty(2.5, "psi");
const measures = values.map((v) => Measure.of(v, psis));
const measureRise = Measure.of(2.5, psis);

const operations = {
  construct: {
    "bare number": reading(values, (v) => v * scale),
    "frozen object of the same fields": making(values, (v) =>
      Object.freeze({ kind: psig.kind, si: v * psig.scale, unit: psig }),
    ),
    "hvac-install-math": making(values, (v) => psig(v)),
    "safe-units": making(values, (v) => Measure.of(v, psis)),
    "js-quantities": making(values, (v) => Qty(v, "psi")),
    mathjs: making(values, (v) => unit(v, "psi")),
  },
  convert: {
    "bare number": reading(values, (v) => (v * scale) / 1000),
    "hvac-install-math": reading(ours, (q) => q.in(kPag)),
    "safe-units": reading(measures, (q) => q.valueIn(kilopascals)),
    "js-quantities, with construction": reading(values, (v) => Qty(v, "psi").to("kPa").scalar),
    mathjs: reading(mathUnits, (q) => q.toNumber("kPa")),
  },
  add: {
    "bare number": reading(values, (v) => v + 2.5),
    "hvac-install-math": making(ours, (q) => q.plus(rise)),
    "safe-units": making(measures, (q) => q.plus(measureRise)),
    "js-quantities": making(qties, (q) => q.add(qtyRise)),
    mathjs: making(mathUnits, (q) => add(q, mathRise)),
  },
};

export async function quantities(): Promise<Section> {
  const rows: string[][] = [];
  for (const [operation, cases] of Object.entries(operations)) {
    const figures = await measure(
      Object.entries(cases).map(([name, run]) => ({ name, values: count, run })),
    );
    const own = figures.find(({ name }) => name === "hvac-install-math")?.nanoseconds ?? Number.NaN;
    for (const { name, nanoseconds, ratio } of figures) {
      rows.push([
        `${operation}, ${name}`,
        shown(nanoseconds),
        times(ratio),
        times(nanoseconds / own),
      ]);
    }
  }
  return {
    title: "Quantities",
    text: "Construct 118 psi from a number and a unit, read it in kPa, add 2.5 psi. Budget: 1.2 times a frozen object of the same fields. Here reading also rounds to twelve digits. js-quantities remembers its last conversion, so that it is timed with a new object.",
    columns: ["operation", "median", "to a bare number", "to this library"],
    rows,
  };
}
