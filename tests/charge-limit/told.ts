// What does a verdict say, as a technician reads it: every code with its values, and the sources by clause.
import type { Assessment, Statement, Value } from "hvac-install-math/assessment";
import { Quantity } from "hvac-install-math/quantity";

function text(value: Value): string {
  if (value instanceof Quantity) return value.toString(undefined, 3);
  if (Array.isArray(value)) return value.map(text).join(" + ");
  if (typeof value === "object" && "verbatim" in value) return String(value.verbatim);
  return String(value).replace(/^charge-limit\./, "");
}

/** A statement as text: `within-limit, charge 2.000 kg, limit 2.168 kg`. */
export const told = ({ code, values }: Statement): string =>
  [
    code.replace(/^charge-limit\./, ""),
    ...Object.entries(values).map(([name, value]) => `${name} ${text(value)}`),
  ].join(", ");

/** Cautions as text, with their kind. */
export const heeded = (cautions: Assessment["cautions"]): string[] =>
  cautions.map((one) => `${one.kind}: ${told(one)}`);

/** Citations as text. */
export const cited = (sources: Assessment["sources"]): string[] =>
  sources.map(({ source, clause }) => `${source}: ${clause}`);

/** All that a verdict says. */
export const allOf = (said: Assessment): object => ({
  outcome: said.outcome,
  ...("cause" in said && { cause: said.cause }),
  reasons: said.reasons.map(told),
  assumptions: said.assumptions.map(told),
  cautions: heeded(said.cautions),
  actions: (said.actions ?? []).map(told),
  sources: cited(said.sources),
});

/** What every answer on a refrigerant in a room warns of, by its class: ANSI/ASHRAE Standard 34, and who governs. */
export const dangers = (its: "burns" | "suffocates", toxic = false): string[] => [
  its === "burns"
    ? "danger: safety.flammable-refrigerant"
    : "danger: safety.refrigerant-suffocates",
  ...(toxic ? ["danger: safety.toxic-refrigerant"] : []),
  "danger: safety.refrigerant-contact",
  "danger: safety.charge-tight-system",
  "danger: safety.refrigerant-air-mixture",
  "governing: safety.others-govern",
];
