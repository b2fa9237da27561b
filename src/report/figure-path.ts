// Which figures does a report show of a verdict? Their paths as a type, so that one without a word does not compile.
// Follows the types of the modules' verdicts. Types only.
// Does not cover words that stand for a figure, such as a side: see figure-choices.ts.
import type { CheckName, CheckVerdicts } from "../commissioning/index.ts";
import type { AnyQuantity } from "../quantity/json.ts";

/** Said elsewhere in the report, or of no use to a reader. */
export type LeftOut =
  | "outcome"
  | "cause"
  | "reasons"
  | "assumptions"
  | "cautions"
  | "sources"
  | "actions"
  | "toVerify"
  | "citation"
  | "fit"
  | "corrected";

/** What stands as one figure: a value, one with its uncertainty, or a part of an uncertainty with its name. */
type Whole =
  | AnyQuantity
  | string
  | number
  | boolean
  | null
  | undefined
  | { readonly value: unknown; readonly expandedUncertainty: unknown }
  | { readonly part: string; readonly standardUncertainty: unknown };

type Key<T> = T extends unknown ? Exclude<keyof T & string, LeftOut> : never;

/** The figures below a type by their paths, without places in lists. */
type Below<T> = T extends Whole
  ? never
  : T extends readonly (infer One)[]
    ? Below<One>
    : { [K in Key<T>]: Path<K, NonNullable<T[K & keyof T]>> }[Key<T>];

type Path<K extends string, T> = [Below<T>] extends [never] ? K : `${K}.${Below<T>}`;

type Verdict = CheckVerdicts[CheckName];

/** The word for a figure, or for several that stand together. */
export type FigureWord = `report.figure.${Key<Verdict> | Below<Verdict>}`;
