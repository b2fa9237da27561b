// Of which part of the record does a line speak? By the name of its run and joint, or by a number where there are several.
// Follows the record: what it has once needs no number. Internal.
// Does not cover the word for the field itself: the language has it.
import type { Context } from "./context.ts";

type Placed = Pick<Context, "record" | "words" | "figure">;

/** The places in lists on the way to a field, as far as the record has several there. */
function numbersOf(record: object, path: string): number[] {
  let value: unknown = record;
  const numbers: number[] = [];
  for (const [, key, place] of path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)) {
    if (key !== undefined) value = (value as Record<string, unknown> | undefined)?.[key];
    else {
      const i = Number(place);
      const several = Array.isArray(value) && value.length > 1;
      if (several || i > 0) numbers.push(i + 1);
      value = Array.isArray(value) ? value[i] : undefined;
    }
  }
  return numbers;
}

/** The word for a field of the record, numbered where there are several. */
export function fieldText({ record, words }: Placed, path: string): string {
  const numbers = numbersOf(record, path);
  const word = words.field(path.replace(/\[\d+\]/g, ""));
  return [word, numbers.join(".")].filter(Boolean).join(" ");
}

/** How a run is called. */
export function runText({ record, words, figure }: Placed, i: number): string {
  return `${words.of("run")} ${figure(record.runs?.[i]?.name ?? String(i + 1))}`;
}

/** Which run a path lies in, or which one its test covers alone; undefined where there is but one run. */
export function runOf({ record }: Pick<Context, "record">, path: string): number | undefined {
  const { runs = [] } = record;
  const [, list = "", place = ""] = /^(runs|pressureTests|evacuations)\[(\d+)\]/.exec(path) ?? [];
  if (!list || runs.length < 2) return undefined;
  if (list === "runs") return Number(place);
  const { covers = [] } = record[list as "evacuations"]?.[Number(place)] ?? {};
  const run = runs.findIndex(({ name }) => name !== undefined && name === covers[0]);
  return covers.length === 1 && run >= 0 ? run : undefined;
}

/** Which of several parts a path means: its run, its joint, or its number; empty where there is but one. */
export function placeText(context: Placed, path: string): string {
  const { record, figure } = context;
  const run = runOf(context, path);
  if (run !== undefined && !path.startsWith("runs")) return runText(context, run);
  const [, of = "", joint = ""] = /^runs\[(\d+)\]\.joints\[(\d+)\]/.exec(path) ?? [];
  const name = joint && record.runs?.[Number(of)]?.joints?.[Number(joint)]?.name;
  const own = run === undefined ? path : path.replace(/^runs\[\d+\]/, "runs");
  const rest = numbersOf(run === undefined ? record : { runs: record.runs?.[run] }, own);
  const word = () => context.words.field(path.replace(/\[\d+\]/g, ""));
  const part = name ? figure(name) : rest.length > 0 ? `${word()} ${rest.join(".")}` : "";
  return [run === undefined ? "" : runText(context, run), part].filter(Boolean).join(", ");
}
