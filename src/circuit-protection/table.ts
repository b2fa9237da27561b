// What stands in this cell? Reading the printed tables of a rule set.
// Follows no standard; the tables name theirs.
// Does not cover interpolation: the printed row, or the next one on the safe side, is used.
import { numberOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import type { CircuitRules, PrintedTable, RuleFamily, SizeOf, Steps } from "./rules/index.ts";

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
  numberOf(argument, at, { max: steps.at(-1)?.[0] }, OutOfRangeError);
  return (steps.find(([upTo]) => at <= upTo) as Steps<Value>[number])[1];
}

/** The value in the first of several tables that has it, or null where none does. */
export function cellIn<Key extends string | number>(
  tables: readonly PrintedTable<Key>[],
  key: Key,
  column: string,
): number | null {
  const table = tables.find(({ columns }) => columns.includes(column));
  return table ? cell(table, key, column) : null;
}

/** The sizes of a rule set, rising. */
export const sizesOf = <F extends RuleFamily>(rules: CircuitRules<F>): readonly SizeOf<F>[] =>
  rules.conductors.rows.map(([size]) => size);

/** The area of a size, in the unit of the rule set's table. */
export const areaOf = <F extends RuleFamily>(rules: CircuitRules<F>, size: SizeOf<F>): number =>
  cell(rules.conductors, size, "area") ?? 0;
