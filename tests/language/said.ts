// What does a result say, wherever it stands in it?
import type { Catalogue, Message, Statement, Value } from "hvac-install-math/assessment";

/** A verdict, as any module gives one. */
export interface Verdict {
  readonly outcome: string;
  readonly cause?: string;
  readonly reasons: readonly Statement[];
  readonly cautions: readonly (Statement & { readonly kind?: string })[];
  readonly actions?: readonly Statement[];
}

/** Every object and list in a value, itself included, each once. */
export function partsOf(value: unknown, seen: Set<object> = new Set()): Set<object> {
  if (typeof value !== "object" || value === null || seen.has(value)) return seen;
  seen.add(value);
  for (const part of Object.values(value)) partsOf(part, seen);
  return seen;
}

export const isStatement = (one: object): one is Statement =>
  "code" in one && typeof one.code === "string" && "values" in one;

export const isVerdict = (one: object): one is Verdict =>
  "outcome" in one && "reasons" in one && "cautions" in one;

/** The codes of words among the values of a statement. */
export function wordsOf({ values }: Statement): string[] {
  const single = (value: Value): unknown[] => (Array.isArray(value) ? value : [value]);
  return Object.values(values)
    .flatMap(single)
    .filter((one): one is string => typeof one === "string");
}

/** The names of the values that a message needs: of all its variants, and the one that chooses. */
export function namesIn(message: Message | undefined): string[] {
  const texts = typeof message === "string" ? [message] : Object.values(message ?? {});
  const placed = texts.flatMap((text) =>
    [...text.matchAll(/\{(\w+)(?::or)?\}/g)].map(([, name]) => name),
  );
  const chooser = typeof message === "object" ? [message.by] : [];
  return [...new Set([...placed, ...chooser])].filter((name) => name !== undefined).sort();
}

/** The codes of a catalogue that belong to a module. */
export const codesOf = ({ messages }: Catalogue, module: string): string[] =>
  Object.keys(messages).filter((code) => code.startsWith(`${module}.`));
