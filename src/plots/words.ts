// What does the picture say to someone who does not see it? Figures and sentences of an assessment. Internal.
// Follows WCAG 2.2, 1.1.1. Does not cover other languages: the statements of an assessment are English.
import { type Assessment, explain } from "../assessment/assessment.ts";
import { listOf, objectOf, oneOf } from "../quantity/check.ts";
import { inUnit, type Reading } from "./reader-units.ts";

/** A difference with so many decimals that its uncertainty has two digits. */
export function figure(si: number, { scale, symbol }: Reading, uncertainty: number): string {
  const size = Math.floor(Math.log10(Math.abs(uncertainty / scale) || 1));
  const decimals = Math.min(6, Math.max(0, 1 - size));
  return `${(Number((si / scale).toFixed(decimals)) + 0).toFixed(decimals)} ${symbol}`; // no −0.0
}

/** A value to so many digits, three when left out. */
export const round = (si: number, unit: Reading, digits = 3): string =>
  `${Number(inUnit(si, unit).toPrecision(digits))} ${unit.symbol}`;

/** The outcome and its reasons in sentences. */
export function sentences(assessment: Assessment<string>): string {
  const { outcome, reasons } = objectOf("assessment", assessment);
  oneOf("assessment.outcome", outcome, ["pass", "fail", "inconclusive"]);
  const said = listOf("assessment.reasons", reasons).map((reason) => explain(reason));
  return [`Result: ${outcome}.`, ...said].join(" ");
}
