// What a verdict says, as lines that a test can write down: a code, then its values by name.
import type { Assessment, Statement } from "hvac-install-math/assessment";

/** A figure with four digits, and its unit. */
export const shown = (value: unknown): string =>
  String(value).replace(/^\S+/, (digits) => String(Number(Number(digits).toPrecision(4))));

/** A statement: its code, then its values by name. */
export const said = ({ code, values }: Statement): string =>
  [
    code.replace(/^condensate\./, ""),
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
