// What does a walk through a value carry with it? Where it is, what it found wrong, how much it has seen.
// Follows no standard. Does not cover which way it goes: visit.ts follows the shape.
import { type InputProblem, InvalidInputError, isInvalidInputError } from "../quantity/errors.ts";
import { type Path, pathText, shown } from "./path-text.ts";

/** How much a walk looks at before it refuses. */
export interface WalkLimits {
  /** Objects and lists inside each other, where the shape sets no end. */
  readonly depth: number;
  /** Items of one list. */
  readonly listItems: number;
  /** Characters of one text. */
  readonly stringLength: number;
  /** All values together. */
  readonly values: number;
}

/** Something that a walk found wrong. */
export interface Finding extends Omit<InputProblem, "argument"> {
  readonly path: Path;
}

/** The state of a walk. */
export interface Walk {
  /** The steps to where it is. */
  readonly path: PropertyKey[];
  readonly limits: WalkLimits;
  /** What it found wrong so far, and how many of these it looks for. */
  findings: Finding[];
  most: number;
  /** How many values it has seen, and how many names of fields. */
  values: number;
  names: number;
}

/** A walk that is about to start. */
export function startWalk(limits: WalkLimits, most: number): Walk {
  return { path: [], limits, findings: [], most, values: 1, names: 0 };
}

/** Whether the walk has found as much as it looks for. */
export const isOver = ({ findings, most }: Walk): boolean => findings.length >= most;

/** Notes what is wrong here; nothing comes of the value. */
function note(walk: Walk, problem: Omit<Finding, "path">): undefined {
  if (!isOver(walk)) walk.findings.push({ path: [...walk.path], ...problem });
  return undefined;
}

/** Notes that this value is not allowed here. */
export const refuse = (
  walk: Walk,
  value: unknown,
  allowed: string,
  hint?: Visit["hint"],
): undefined => note(walk, { value: shown(value), allowed, hint });

/** Notes that something is over a limit. */
export function refuseMore(walk: Walk, value: string, length: number, limit: number): undefined {
  const bound = { value: length, is: "max", limit } as const;
  return note(walk, { value, allowed: `at most ${limit}`, bound });
}

/** A value without parts: as it is where it fits, or as what is made of it. */
export const leaf = (
  allowed: string,
  fits: Visit["fits"],
  hint?: Visit["hint"],
  of: Visit["of"] = (value) => value,
): Visit => ({
  allowed,
  hint,
  fits,
  of: (value, walk) => (fits(value) ? of(value, walk) : refuse(walk, value, allowed, hint)),
});

/** What comes of a part: of the value that a field or a position holds. */
export function within(walk: Walk, step: PropertyKey, visit: Visit, value: unknown): unknown {
  walk.path.push(step);
  const made = visit.of(value, walk);
  walk.path.pop();
  return made;
}

/** Runs what may refuse a value by the typed error, and notes what it refused. */
export function tried<T>(walk: Walk, act: () => T): T | undefined {
  try {
    return act();
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    return note(walk, saidBy(error));
  }
}

/** What a typed error says, wherever it is. */
export const saidBy = ({
  value,
  allowed,
  bound,
  hint,
}: InvalidInputError): Omit<Finding, "path"> => ({ value, allowed, bound, hint });

/** Counts one value more; false when they are too many. */
export function counts(walk: Walk): boolean {
  if (++walk.values <= walk.limits.values) return true;
  note(walk, { value: "one value more", allowed: `at most ${walk.limits.values} values in all` });
  walk.most = walk.findings.length; // what follows counts no more
  return false;
}

/** The typed error of a finding. */
export function errorOf({ path, ...problem }: Finding, whole: string): InvalidInputError {
  return new InvalidInputError({ argument: pathText(path, whole), ...problem });
}

/** How a value of one form is looked at. */
export interface Visit {
  /** What is allowed, in words. */
  readonly allowed: string;
  /** What a person enters here. */
  readonly hint?: InputProblem["hint"];
  /** Whether a value was meant to have this form, at a glance. */
  readonly fits: (value: unknown) => boolean;
  /** The value as it goes on, of nothing but what the form knows; undefined where something was refused. */
  readonly of: (value: unknown, walk: Walk, path?: unknown) => unknown;
}
