// Do the readings keep what the standard lets the utility supply?
// Follows ANSI C84.1-2020, table 1, or IEC 60038:2009 with EN 50160 for a log at the service.
// Does not cover what the unit bears: judge-nameplate.ts.
import { type Outcome, overallOutcome, type Reason, statement } from "../assessment/assessment.ts";
import { normalQuantile } from "../assessment/statistics.ts";
import { volt } from "../quantity/units/electricity.ts";
import { judgeWeek, type SupplyWeekAssessment, worstFirst } from "./assess-supply-week.ts";
import { extremes, keeps } from "./judge-nameplate.ts";
import { type SupplyEvidence, type SupplyFindings, say } from "./supply-findings.ts";
import { rounded } from "./voltage-reading.ts";
import { type SupplyRange, standardOf, supplyVoltageRanges } from "./voltage-standard.ts";

/** Judges the extremes by the ranges of the standard; a week's log by EN 50160. */
export function judgeStandard(
  evidence: SupplyEvidence,
  found: SupplyFindings,
): {
  readonly outcome: Outcome;
  readonly range: SupplyRange | undefined;
  readonly week: SupplyWeekAssessment | undefined;
} {
  const { input, low, high } = evidence;
  const { supply, measuredAt } = input;
  const { standard } = standardOf(supply);
  const ranges = supplyVoltageRanges(supply, measuredAt);
  const range = ranges.find(({ minimum, maximum }) => low >= minimum.si && high <= maximum.si);
  const widest = range ?? (ranges.at(-1) as SupplyRange);
  const service = measuredAt === "service";
  const european = standard.source === "iec-60038";
  const week = service && european && evidence.timed ? weekOf(evidence) : undefined;

  // A range that is left for a moment is no breach of EN 50160; a whole week of means decides.
  const last = ranges.at(-1) as SupplyRange;
  let outcome = overallOutcome([keeps(evidence, low, last), keeps(evidence, high, last)]);
  if (week && (week.outcome !== "inconclusive" || outcome === "fail")) outcome = week.outcome;

  const values = { ...extremes(evidence), ...widest, standard: standard.name };
  const text = `{low} to {high} ${range ? "is in" : "leaves"} {name} of {standard}, {minimum} to {maximum}`;
  const own = (code: string, end: string) => say(found, outcome, code, text + end, values);
  const fromWeek = (week?.reasons ?? []).map((reason): [Outcome, Reason] => [outcome, reason]);
  if (outcome !== "fail") found.said.push(...fromWeek);
  if (range && outcome !== "inconclusive") own("within-standard", ".");
  else if (range) own("standard-undecided", ", too near a limit for this meter.");
  else own("outside-standard", outcome === "fail" ? ": tell the utility." : " at times.");
  if (outcome === "fail") found.said.push(...fromWeek);
  found.sources.push(
    { source: standard.source, clause: standard.clause },
    ...(week?.sources ?? []),
  );

  const { cautions, assumptions } = found;
  if (range && range !== ranges[0]) {
    cautions.push(
      statement("correct-soon", "{name} is for a limited time: have it corrected.", {
        name: range.name,
      }),
    );
  }
  if (service) {
    cautions.push(
      statement("drop-to-unit", "The wiring to the unit takes its share; 3 % is {drop}.", {
        drop: volt(rounded(0.03 * low, 1)),
      }),
    );
  }
  if (!supply.standard) {
    assumptions.push(
      statement("standard", "{standard} was taken for {nominal}.", {
        standard: standard.name,
        nominal: supply.voltage,
      }),
    );
  }
  return { outcome, range, week };
}

/** EN 50160 line by line; the worst line speaks. */
function weekOf(evidence: SupplyEvidence): SupplyWeekAssessment | undefined {
  const { input, readings, nominal, confidence, errors } = evidence;
  const guard = normalQuantile(confidence) * errors.of(nominal);
  const times = readings.map(({ at }) => at);
  const lines = input.supply.phases === 3 ? [0, 1, 2] : [0];
  return lines
    .map((line): SupplyWeekAssessment => {
      const shifted = (by: number) => readings.map(({ volts }) => (volts[line] ?? 0) + by);
      const [read, ...others] = [0, -guard, guard].map((by) =>
        judgeWeek(times, shifted(by), nominal),
      ) as [SupplyWeekAssessment, ...SupplyWeekAssessment[]];
      if (others.every(({ outcome }) => outcome === read.outcome)) return read;
      const text = "A meter that errs by less would decide the week.";
      const reasons = [statement("week-meter-cannot-tell", text), ...read.reasons];
      return { ...read, outcome: "inconclusive", reasons };
    })
    .sort(worstFirst)[0];
}
