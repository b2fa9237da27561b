// Do all runs together keep the manual's limits? Their length in total, and the height between their indoor units.
// Follows the manual; JCGM 106:2012, 8.2 and 8.3, for the verdict. Does not cover a run by itself: see try-line-run.ts.
import { simpleAcceptance } from "../assessment/simple-acceptance.ts";
import { standardUncertainty } from "../assessment/uncertainty.ts";
import { isEqual } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { m } from "../quantity/units/geometry.ts";
import { checkRecord } from "./check-record.ts";
import { errorsOf } from "./instrument-errors.ts";
import type { Job } from "./job.ts";
import type { CheckName } from "./names.ts";
import { isNominal } from "./nominal-length.ts";
import { type OwnVerdict, ownVerdict } from "./own-verdict.ts";
import type { InstallationRecord } from "./record.ts";
import { runsOf, servesIndoorUnit } from "./runs.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import type { Trial } from "./step.ts";

type Length = Quantity<"length">;

/**
 * The largest height difference between two indoor units, by the height difference of each to the outdoor unit. An
 * indoor unit that is level with it counts as 0.
 *
 * @param record - A record, in whatever state of filling; its runs to a branch box count for nothing.
 * @returns The difference, 0 or more; `undefined` with fewer than two indoor units, or where a height is not known.
 * @throws {@link InvalidInputError} when it is not a record.
 *
 * Source: geometry.
 *
 * @example
 * ```ts
 * import { indoorLift } from "hvac-install-math/commissioning";
 * import { m } from "hvac-install-math/quantity";
 *
 * const upstairs = { tubing: { lift: m(5), outdoorUnit: "below" } } as const;
 * const cellar = { tubing: { lift: m(2), outdoorUnit: "above" } } as const;
 * indoorLift({ version: 2, runs: [upstairs, cellar] })?.toString(); // => 7 m
 * ```
 */
export const indoorLift = (record: InstallationRecord): Length | undefined =>
  liftOf(checkRecord(record));

function liftOf(record: InstallationRecord): Length | undefined {
  const indoor = runsOf(record).filter(servesIndoorUnit);
  const heights = indoor.flatMap(({ run: { tubing: { lift, outdoorUnit } = {} } }) =>
    lift && outdoorUnit ? [signs[outdoorUnit] * lift.si] : [],
  );
  const unit = indoor[0]?.run.tubing?.lift?.unit;
  if (!unit || heights.length < 2 || heights.length < indoor.length) return undefined;
  return new Quantity(Math.max(...heights) - Math.min(...heights), unit);
}

/** Where an indoor unit is by where the outdoor unit stands. */
const signs = { below: 1, level: 0, above: -1 } as const;

/** Total length and height between indoor units, where there are several runs. */
export function allRuns({ record }: Job): Trial[] {
  const runs = runsOf(record); // also those that are waived
  const { manual = {} } = record.equipment ?? {};
  const tape = errorsOf(record.instruments?.tape);
  const each = () => (tape ? standardUncertainty(tape, m).si : 0);
  const lengths = runs.flatMap(({ run }) => (run.tubing?.length ? [run.tubing.length] : []));
  const [first] = lengths;
  const known = runs.length > 1 && first && lengths.length === runs.length;
  const taped = runs.filter(({ run }) => !isNominal(record, run)).length;
  const sum = lengths.reduce((all, length) => all + length.si, 0);
  const lift = liftOf(record);
  return [
    ...(known
      ? [
          trialOf({
            name: "total-length",
            field: "maximumTotalLength",
            value: new Quantity(sum, first.unit),
            most: manual.maximumTotalLength,
            standard: () => each() * taped, // one tape errs the same way on each
            said: (how, total, most) => say(`commissioning.total-length-${how}`, { total, most }),
            action: (most) => say("commissioning.shorten-runs", { most }),
          }),
        ]
      : []),
    // Units that hang level keep every limit.
    ...(lift && (!isEqual(lift.si, 0, m.scale) || manual.maximumIndoorLift)
      ? [
          trialOf({
            name: "indoor-lift",
            field: "maximumIndoorLift",
            value: lift,
            most: manual.maximumIndoorLift,
            standard: () => each() * 2, // a unit above and one below err in opposite ways
            said: (how, own, most) => say(`commissioning.indoor-lift-${how}`, { lift: own, most }),
            action: (most) => say("commissioning.bring-indoor-units-closer", { most }),
          }),
        ]
      : []),
  ];
}

interface Held {
  readonly name: CheckName;
  readonly field: "maximumTotalLength" | "maximumIndoorLift";
  readonly value: Length;
  readonly most: Length | undefined;
  /** Standard uncertainty, m. */
  readonly standard: () => number;
  readonly said: (
    how: "within" | "above" | "too-close",
    value: Length,
    most: Length,
  ) => CommissioningStatement;
  readonly action: (most: Length) => CommissioningStatement;
}

/** A figure of all runs against the manual's largest. */
function trialOf({ name, field, value, most, standard, said, action }: Held): Trial {
  const path = `equipment.manual.${field}`;
  const judge = (limit: Length): OwnVerdict => {
    const standardUncertainty = new Quantity(standard(), m);
    const { outcome } = simpleAcceptance({ value, standardUncertainty, upperLimit: limit });
    if (outcome === "pass") return ownVerdict(outcome, said("within", value, limit));
    return outcome === "fail"
      ? ownVerdict(outcome, said("above", value, limit), action(limit))
      : ownVerdict(
          outcome,
          said("too-close", value, limit),
          say("commissioning.measure-runs-better"),
        );
  };
  const paths = { instrument: "instruments.tape" };
  return { name, path, needs: { [path]: most }, paths, run: () => judge(most as Length) } as Trial;
}
