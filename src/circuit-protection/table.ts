// What stands in this cell? Reading the printed tables of a rule set.
// Follows no standard; the tables name theirs.
// Does not cover interpolation: the printed row, or the next one on the safe side, is used.
import { OutOfRangeError } from "../quantity/errors.ts";
import type {
  CircuitRules,
  PrintedTable,
  RuleFamily,
  SizeOf,
  Steps,
} from "./rules/circuit-rules.ts";

/** The value in the row of a key, or null where there is none. */
export function cell<Key extends string | number>(
  table: PrintedTable<Key>,
  key: Key,
  column: string,
): number | null {
  const at = table.columns.indexOf(column);
  const row = table.rows.find(([name]) => name === key);
  return (at < 0 ? null : (row?.[at + 1] as number | null | undefined)) ?? null;
}

/** The value of the first step that reaches a count or rating. */
export function step<Value>(argument: string, steps: Steps<Value>, at: number): Value {
  const found = steps.find(([upTo]) => at <= upTo);
  if (found) return found[1];
  throw new OutOfRangeError({
    argument,
    value: String(at),
    allowed: `at most ${steps.at(-1)?.[0]}`,
  });
}

/** The sizes of a rule set, rising. */
export const sizesOf = <F extends RuleFamily>(rules: CircuitRules<F>): readonly SizeOf<F>[] =>
  rules.ampacity.rows.map(([size]) => size);
