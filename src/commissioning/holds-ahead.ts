// What has to wait for which steps? The hold points of a job, before anything is done.
// Follows the order of the work in manuals; common practice, no source.
// Does not cover whether they were kept: see hold-points.ts.
import { oneOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { HoldName, StepName } from "./names.ts";
import type { Construction } from "./record-equipment.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import { before, holdWord } from "./step-order.ts";
import { stepWord } from "./words.ts";

/**
 * What has to wait for which steps, before anything is done: the hold points of a job with this construction, in the
 * order of the work. Several indoor units share them: no valve is opened while a line of the system is still tested.
 *
 * @param construction - How the unit is built: what is not opened on site is not tested there.
 * @returns A statement for each hold point.
 * @throws {@link InvalidInputError} when it is none of the constructions.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { holdsAhead } from "hvac-install-math/commissioning";
 *
 * holdsAhead("split").length; // => 3
 * holdsAhead("monobloc").length; // => 1
 * ```
 */
export function holdsAhead(construction: Construction): readonly CommissioningStatement[] {
  oneOf("construction", construction, ["split", "quick-connect", "monobloc"]);
  const held = (name: HoldName, steps: readonly StepName[]) =>
    say("commissioning.held", { hold: holdWord(name), steps: steps.map(stepWord) });
  const power = held("power-on", ["circuit", "supply"]);
  if (construction === "monobloc") return frozen([power]);
  if (construction === "quick-connect") return frozen([held("open-valves", ["room-limit"]), power]);
  return frozen([held("add-charge", before.charge), held("open-valves", before.valves), power]);
}
