// The slip catalogue as JSON, for apps that hold their own forms against it: what is typed, what was meant, the answer.
// Does not cover the sound inputs: they are the records and examples of this project.

import { valueAt } from "../../../src/commissioning/format/path-values.ts";
import { segmentsOf } from "../../../src/shapes/index.ts";
import { slips } from "./all.ts";
import { twinOf } from "./judge.ts";

/** One line per slip; quantities as they write themselves, null for what is left out. */
export function slipsJson(): string {
  const lines = slips.map((slip) => {
    const twin = twinOf(slip);
    const meant = Object.keys(slip.typed).map((path) => [
      path,
      valueAt(twin, segmentsOf("path", path)) ?? null,
    ]);
    return JSON.stringify({ ...slip, meant: Object.fromEntries(meant) });
  });
  return `[\n${lines.join(",\n")}\n]\n`;
}
