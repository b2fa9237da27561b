// One call in which one place of a valid input holds a bad value, and what is wrong with its outcome.
import { isInvalidInputError } from "hvac-install-math/quantity";
import { type BadValue, badValuesFor, trapped } from "./bad-value.ts";
import type { AnyFunction, Subject } from "./catalogue.ts";
import { exceptions } from "./exceptions.ts";
import { faultsIn, type Path, pathText, placesIn, replaced } from "./walk.ts";

/** Longest wait in ms; a list of 2e4 is looked at row by row. */
const longest = 1000;
const longestList = 5000;

/** The names of a function's parameters, as its source has them. */
const parametersOf = (act: AnyFunction): string[] =>
  (/^(?:function \w*)?\s*\(?([^)]*?)(?:\)|=>|\{)/.exec(String(act))?.[1] ?? "")
    .split(",")
    .map((one) => /\w*/.exec(one.trim())?.[0] ?? "");

/** Whether an error speaks of this place, of what it stands in, or of what stands in it. */
function names(argument: string, path: Path, parameters: readonly string[]): boolean {
  const [position, ...own] = path;
  const place = pathText(own);
  const whole = pathText([parameters[position as number] ?? "", ...own]);
  return (
    [place, whole].some((one) => argument.startsWith(one) || one.startsWith(argument)) &&
    argument !== ""
  );
}

interface Trial {
  readonly act: AnyFunction;
  readonly args: readonly unknown[];
  readonly path: Path;
  readonly one: BadValue;
  readonly parameters: readonly string[];
  /** All words that may stand in a path. */
  readonly words: ReadonlySet<string>;
}

function complaintOf(error: unknown, { path, one, parameters, words }: Trial): string | undefined {
  if (error === trapped) return undefined;
  if (!isInvalidInputError(error)) return String(error);
  const { argument, allowed, message } = error;
  if (message.length > 2000) return `a message of ${message.length} characters`;
  if (faultsIn(allowed).length > 0) return message.slice(0, 120);
  if (one.refused && !names(argument, path, parameters)) return `names ${argument}`;
  const strange = argument
    .split(/[^\w]+/)
    .filter((word) => /^[a-z]/i.test(word) && !words.has(word));
  return strange.length > 0 ? message.slice(0, 100) : undefined;
}

/** What is wrong with the outcome of a call in which one place holds a bad value. */
function trialOf(trial: Trial): string | undefined {
  const { act, args, one } = trial;
  const start = performance.now();
  let wrong: string | undefined;
  try {
    const answer = act(...args);
    const outcome = (answer as { outcome?: string } | null)?.outcome;
    wrong = one.refused ? `overlooked${outcome ? `, ${outcome}` : ""}` : faultsIn(answer)[0];
  } catch (error) {
    wrong = complaintOf(error, trial);
  }
  const ms = performance.now() - start;
  return (
    wrong ??
    (ms > (one.name.startsWith("a list of") ? longestList : longest)
      ? `${ms.toFixed(0)} ms`
      : undefined)
  );
}

/** Tries every bad value at every place of every valid input of a function; says what is wrong. */
export function complaintsOf({ name, act, calls }: Subject): string[] {
  const parameters = parametersOf(act);
  const words = new Set<string>([...parameters, "length"]);
  for (const args of calls) {
    for (const { path } of placesIn(args)) for (const key of path) words.add(String(key));
  }
  const found: string[] = [];
  for (const args of calls) {
    for (const { path, value } of placesIn(args)) {
      const place = pathText([parameters[path[0] as number] ?? "?", ...path.slice(1)]);
      for (const one of badValuesFor(value)) {
        const given = replaced(args, path, one.value) as unknown[];
        const wrong = trialOf({ act, args: given, path, one, parameters, words });
        const complaint = `${name} ${place} = ${one.name}: ${wrong}`;
        if (wrong && !exceptions.some(([pattern]) => pattern.test(complaint)))
          found.push(complaint);
      }
    }
  }
  return found;
}
