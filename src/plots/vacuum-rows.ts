// Which readings of a vacuum decay count, and which were set aside? In order of time, in SI. Internal.
// Follows no standard. Does not cover why they were set aside: the assessment says it.

import { isOfKind, listOf, objectOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { enter } from "../quantity/hints.ts";
import type { VacuumDecayAssessment, VacuumDecayInput } from "../vacuum-decay/index.ts";
import { inOrder } from "./thin.ts";

/** The readings that count, in order of time, and those that were set aside: s and Pa. */
export function rowsOf(
  readings: VacuumDecayInput["readings"],
  { excluded }: VacuumDecayAssessment,
): { t: readonly number[]; p: readonly number[]; aside: [number, number][] } {
  const out = new Set(listOf("assessment.excluded", excluded).map(({ row }) => row));
  const aside: [number, number][] = [];
  const [t, p]: [number[], number[]] = [[], []];
  listOf("readings", readings).forEach((reading, row) => {
    const { elapsed, pressure } = reading ?? {};
    if (!isOfKind(elapsed, "duration") || !isOfKind(pressure, "absolutePressure")) {
      objectOf(`readings[${row}]`, reading);
      siOf(`readings[${row}].elapsed`, elapsed, "duration");
      siOf(`readings[${row}].pressure`, pressure, "absolutePressure");
    }
    if (out.has(row) || elapsed.si < 0) {
      aside.push([elapsed.si, pressure.si]);
    } else {
      t.push(elapsed.si);
      p.push(pressure.si);
    }
  });
  if (t.length === 0) {
    const allowed = "at least one reading that was not set aside";
    const value = `${aside.length} set aside`;
    throw new InvalidInputError({ argument: "readings", value, allowed, hint: enter("two-times") });
  }
  aside.sort(([one], [other]) => one - other);
  const [pressures, times] = inOrder(p, t);
  return { t: times, p: pressures, aside };
}
