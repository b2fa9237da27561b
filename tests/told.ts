// What a verdict says, as lines that a test can write down: a code, then its values by name.
import type { Assessment, Statement } from "hvac-install-math/assessment";

/** A code or word without its module; the dangers that modules share keep theirs. */
const short = (code: string): string => code.replace(/^(?!safety\.)[a-z-]+\./, "");

/** A figure with four digits and its unit; a word or what stands verbatim as it is. */
export function shown(value: unknown): string {
  if (Array.isArray(value)) return value.map(shown).join(" + ");
  if (typeof value === "string") return short(value);
  if (typeof value === "object" && value && "verbatim" in value) return String(value.verbatim);
  return String(value).replace(/^\S+/, (digits) => String(Number(Number(digits).toPrecision(4))));
}

/** A statement: its code, then its values by name. */
export const said = ({ code, values }: Statement): string =>
  [
    short(code),
    ...Object.entries(values)
      .map(([name, value]) => `${name} ${shown(value)}`)
      .sort(),
  ].join(", ");

interface Told extends Pick<Assessment, "outcome" | "cause"> {
  readonly reasons: string[];
  readonly assumptions: string[];
  readonly cautions: string[];
  readonly actions: string[];
  readonly sources: string[];
}

/** The whole of what a verdict says. */
export function told(verdict: Assessment): Told {
  const { outcome, cause, reasons, assumptions, cautions, actions = [], sources } = verdict;
  return {
    outcome,
    cause,
    reasons: reasons.map(said),
    assumptions: assumptions.map(said),
    cautions: cautions.map(said),
    actions: actions.map(said),
    sources: sources.map(({ source, clause }) => `${source} ${clause}`.trim()),
  };
}
