// Do the readings keep what the standard lets the utility supply?
// Follows ANSI C84.1-2020, table 1, IEC 60038:2009 with EN 50160 for a log at the service, or the stated range.
// Does not cover what the unit bears: judge-nameplate.ts.
import { type Outcome, overallOutcome } from "../assessment/assessment.ts";
import { normalQuantile } from "../assessment/statistics.ts";
import { volt } from "../quantity/units/electricity.ts";
import { judgeWeek, type SupplyWeekAssessment, worstFirst } from "./assess-supply-week.ts";
import { extremes, keeps } from "./judge-nameplate.ts";
import { type SupplyName, supplyName } from "./standards/index.ts";
import { type SupplyVoltageStatement, say } from "./statements.ts";
import {
  assumed,
  noted,
  type SupplyEvidence,
  type SupplyFinding,
  type SupplyPart,
} from "./supply-findings.ts";
import { rangesOf, resolveStandard, type SupplyRange } from "./supply-ranges.ts";
import { rounded } from "./voltage-reading.ts";

/** What the standard says of the supply. */
export interface StandardPart extends SupplyPart {
  /** Missing where the standard has no range at that place. */
  readonly outcome?: Outcome | undefined;
  readonly range?: SupplyRange | undefined;
  readonly week?: SupplyWeekAssessment | undefined;
}

/** Judges the extremes by the ranges of the standard; a week's log by EN 50160. */
export function judgeStandard(evidence: SupplyEvidence): StandardPart {
  const { input, low, high, timed } = evidence;
  const { supply, measuredAt } = input;
  const resolved = resolveStandard(supply);
  const { standard } = resolved;
  const ranges = rangesOf(supply, measuredAt);
  if (ranges === undefined) {
    const said = say("supply-voltage.standard-not-stated", { nominal: supply.voltage });
    const actions = [say("supply-voltage.state-standard")];
    return { outcome: "inconclusive", findings: [{ as: "inconclusive", said, actions }] };
  }
  const name = supplyName(standard && !supply.range ? standard.name : "stated-supply");
  if (ranges.length === 0) {
    return { findings: [assumed(say("supply-voltage.no-range-at-unit", { standard: name }))] };
  }
  const range = ranges.find(({ minimum, maximum }) => low >= minimum.si && high <= maximum.si);
  const last = ranges.at(-1) as SupplyRange;
  const european = standard?.source === "iec-60038";
  const week = measuredAt === "service" && european && timed ? weekOf(evidence) : undefined;
  // A range that is left for a moment is no breach of EN 50160; a whole week of means decides.
  let outcome = overallOutcome([keeps(evidence, low, last), keeps(evidence, high, last)]);
  if (week && (week.outcome !== "inconclusive" || outcome === "fail")) outcome = week.outcome;
  // A dip that nobody marked may be a start, which no standard of supply judges.
  const { unmarkedDip } = evidence;
  const dipped = unmarkedDip === low && keeps(evidence, high, last) === "pass";
  if (outcome === "fail" && dipped) outcome = "inconclusive";
  const ranged = ranging(evidence, outcome, range ?? last, range !== undefined, name);
  const fromWeek = (week?.reasons ?? []).map(
    (said): SupplyFinding => ({ as: outcome, said, actions: week?.actions ?? [] }),
  );
  return {
    outcome,
    findings: [
      ...(outcome === "fail" ? [ranged, ...fromWeek] : [...fromWeek, ranged]),
      ...standardNotes(evidence, range, range === ranges[0], resolved),
    ],
    sources: [
      ...(standard ? [{ source: standard.source, clause: standard.clause }] : []),
      ...(week?.sources ?? []),
    ],
    ...(range && { range }),
    ...(week && { week }),
  };
}

/** The sentence on the range, and what to do: wiring first, unless the readings are the utility's own. */
function ranging(
  evidence: SupplyEvidence,
  outcome: Outcome,
  { name, minimum, maximum }: SupplyRange,
  inside: boolean,
  standard: SupplyName,
): SupplyFinding {
  const { input, low } = evidence;
  const values = { ...extremes(evidence), minimum, maximum, range: supplyName(name), standard };
  if (inside && outcome !== "inconclusive") {
    return { as: outcome, said: say("supply-voltage.within-standard", values) };
  }
  if (inside) {
    const actions = [say("supply-voltage.measure-finer")];
    return { as: outcome, said: say("supply-voltage.too-close-to-standard", values), actions };
  }
  if (outcome !== "fail") {
    const marks = evidence.unmarkedDip === low ? [say("supply-voltage.mark-starts")] : [];
    const actions = outcome === "pass" ? [] : [...marks, say("supply-voltage.call-utility")];
    return { as: outcome, said: say("supply-voltage.outside-at-times", values), actions };
  }
  const first: SupplyVoltageStatement[] = [];
  if (input.measuredAt === "unit") {
    if (low < minimum.si) first.push(say("supply-voltage.check-wiring"));
    first.push(say("supply-voltage.read-at-service"));
  }
  return {
    as: "fail",
    cause: "outside-standard",
    said: say("supply-voltage.outside-standard", values),
    actions: [...first, say("supply-voltage.call-utility")],
  };
}

/** What a pass would hide, and how the standard was come by. */
function standardNotes(
  { input, low }: SupplyEvidence,
  range: SupplyRange | undefined,
  normal: boolean,
  { standard, by, nominal }: ReturnType<typeof resolveStandard>,
): SupplyFinding[] {
  const found: SupplyFinding[] = [];
  const { voltage } = input.supply;
  if (range && !normal) {
    found.push(noted(say("supply-voltage.limited-time", { range: supplyName(range.name) })));
  }
  if (input.measuredAt === "service") {
    found.push(noted(say("supply-voltage.drop-to-unit", { drop: volt(rounded(0.03 * low, 1)) })));
  }
  if (standard === undefined) return found;
  const name = supplyName(standard.name);
  if (by === "nominal") {
    found.push(
      assumed(say("supply-voltage.standard-assumed", { standard: name, nominal: voltage })),
    );
  }
  if (nominal !== undefined && Math.abs(nominal - voltage.si) > 0.5) {
    found.push(assumed(say("supply-voltage.judged-as", { nominal: voltage, as: volt(nominal) })));
  }
  if (standard.fromMemory) {
    found.push(noted(say("supply-voltage.from-memory", { standard: name })));
  }
  return found;
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
      const reason = say("supply-voltage.week-meter-cannot-tell");
      return {
        ...read,
        outcome: "inconclusive",
        reasons: [reason, ...read.reasons],
        actions: [...(read.actions ?? []), say("supply-voltage.measure-finer")],
      };
    })
    .sort(worstFirst)[0];
}
