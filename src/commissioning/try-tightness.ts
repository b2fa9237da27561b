// Run, joints, evacuation: what do the records of the tubing prove?
// Follows line-set, flare-joint and vacuum-decay, which decide.
// Does not cover joints that nobody recorded, unless their number is stated.
import { standardUncertainty } from "../assessment/uncertainty.ts";
import {
  assessFlareDiameter,
  assessFlareTorque,
  assessFlareTurn,
  type FlareRefrigerant,
} from "../flare-joint/index.ts";
import { assessLineRun } from "../line-set/index.ts";
import { m } from "../quantity/units/geometry.ts";
import { acceptancePolicies, assessVacuumDecay } from "../vacuum-decay/index.ts";
import { refrigerantOf, stated, volumeOf } from "./job.ts";
import type { InstallationRecord } from "./record.ts";
import type { Joint } from "./record-tubing.ts";
import { given, type Trial, type Tried, tryAll } from "./step.ts";
import { unjoinedLines } from "./unjoined-lines.ts";

/** Is the run within the manual's limits? */
export function tryLineRun(record: InstallationRecord): Tried {
  const { tubing, equipment, instruments } = record;
  const limits = equipment?.manual?.run;
  const { length, lift, outdoorUnit, bends } = tubing ?? {};
  const tape = instruments?.tape;
  const { maximumLength, maximumLift, maximumLiftOutdoorAbove } = limits ?? {};
  const most = outdoorUnit === "above" ? (maximumLiftOutdoorAbove ?? maximumLift) : maximumLift;
  // Every manual states both; a run that is held to one of them alone is not judged.
  const asked = { maximumLength, maximumLift: most };
  const lacks = Object.entries(limits ? asked : {})
    .filter(([, limit]) => limit === undefined)
    .map(([name]) => `equipment.manual.run.${name}`);
  const trials: Trial[] = [
    {
      name: "line-run",
      path: "tubing",
      needs: {
        "tubing.length": length,
        "tubing.lift": lift,
        "tubing.outdoorUnit": outdoorUnit,
        "equipment.manual.run": limits,
      },
      paths: { limits: "equipment.manual.run", instrument: "instruments.tape" },
      run: () =>
        assessLineRun(
          given({
            length,
            lift,
            outdoorUnit,
            bends,
            limits,
            standardUncertainty: errorsOf(tape) && standardUncertainty(tape ?? {}, m),
          }),
        ),
    },
  ];
  return tryAll("line-run", [...trials, ...swapped(record)], lacks);
}

/** The same refrigerant flows in both, and as a vapour it needs the wider tube; common practice, no source. */
function swapped({ tubing }: InstallationRecord): Trial[] {
  const liquid = tubing?.liquid?.outsideDiameter;
  const vapor = tubing?.vapor?.outsideDiameter;
  if (!liquid || !vapor || liquid.si <= vapor.si * (1 + 1e-9)) return [];
  const text =
    "The liquid line is recorded as wider, {liquid}, than the vapour line, {vapor}: see which is which.";
  const run = () => stated("inconclusive", "lines-swapped", text, { liquid, vapor });
  return [{ name: "line-sizes", path: "tubing.liquid.outsideDiameter", needs: {}, run }];
}

/** An instrument of which something is known besides its name. */
export function errorsOf<T extends object>(instrument: T | undefined): T | undefined {
  const { accuracy, relativeAccuracy, accuracyOfReading, resolution, repeatability } =
    (instrument ?? {}) as Record<string, unknown>;
  const known = accuracy ?? relativeAccuracy ?? accuracyOfReading ?? resolution ?? repeatability;
  return known === undefined ? undefined : instrument;
}

/** Was every joint made right? */
export function tryJoints(record: InstallationRecord): Tried {
  const { joints = [], tubing } = record;
  const count = tubing?.jointCount;
  const trials = joints.flatMap((joint, i) => jointTrials(record, joint, `joints[${i}]`));
  // Two entries of one name are one joint: the other may have none.
  const recorded = new Set(joints.map(({ name }, i) => name ?? i)).size;
  const lacks =
    joints.length === 0 || (count ?? 0) > joints.length ? [`joints[${joints.length}]`] : [];
  const counted: Trial[] = [
    {
      name: "joint-count",
      path: "tubing.jointCount",
      needs: { "tubing.jointCount": count },
      run: () =>
        stated(
          recorded === count && recorded === joints.length ? "pass" : "inconclusive",
          "joint-count",
          "{recorded} joints are recorded, each name counted once; there are {count}.",
          { recorded, count: count ?? 0 },
        ),
    },
  ];
  return tryAll("joints", [...trials, ...counted, ...unjoinedLines(record)], lacks);
}

/** A look at a joint need not be recorded; one that found it wrong counts, whatever its kind. */
function foundWrong({ inspected }: Joint, path: string): Trial[] {
  if (inspected !== false) return [];
  const run = () => stated("fail", "joint-inspected", "It was looked at and not found right.");
  return [{ name: "joint-inspected", path, needs: {}, run }];
}

function jointTrials(record: InstallationRecord, joint: Joint, path: string): Trial[] {
  const { kind, tube, torque, turn, torqueWindow: manual, flareDiameter } = joint;
  if (kind === "brazed" || kind === "pressed") {
    const field = kind === "brazed" ? "nitrogenFlowed" : "inspected";
    const text =
      kind === "brazed"
        ? "Nitrogen flowed while it was brazed: {answer}."
        : "It was looked at and found right: {answer}.";
    const answer = joint[field];
    const run = () =>
      stated(answer ? "pass" : "fail", `${kind}-joint`, text, { answer: answer ? "yes" : "no" });
    const made: Trial = {
      name: `${kind}-joint`,
      path,
      needs: { [`${path}.${field}`]: answer },
      run,
    };
    return kind === "brazed" ? [made, ...foundWrong(joint, path)] : [made];
  }
  const base = { [`${path}.kind`]: kind, [`${path}.tube`]: tube };
  const wrench = errorsOf(record.instruments?.torqueWrench);
  const trials = foundWrong(joint, path);
  if (torque || !turn) {
    const { relativeAccuracy, accuracy, resolution } = wrench ?? {};
    trials.push({
      name: "flare-torque",
      path,
      needs: { ...base, [`${path}.torque`]: torque },
      paths: {
        manual: `${path}.torqueWindow`,
        wrench: "instruments.torqueWrench",
        instrument: "instruments.torqueWrench",
      },
      run: () =>
        assessFlareTorque(
          given({
            tube,
            torque,
            manual,
            wrench: wrench && given({ relativeAccuracy, accuracy, resolution }),
          }),
        ),
    });
  }
  if (turn) {
    const run = () => assessFlareTurn(given({ tube, turn }));
    trials.push({ name: "flare-turn", path, needs: base, run });
  }
  if (flareDiameter) {
    trials.push({
      name: "flare-diameter",
      path,
      needs: { ...base, "equipment.refrigerant": record.equipment?.refrigerant },
      paths: {
        diameter: `${path}.flareDiameter`,
        designation: "equipment.refrigerant",
        refrigerant: "equipment.refrigerant",
      },
      run: () => {
        const refrigerant = refrigerantOf(record).designation.replace("-", "") as FlareRefrigerant;
        return assessFlareDiameter(given({ tube, diameter: flareDiameter, refrigerant }));
      },
    });
  }
  return trials;
}

/** Is it dry, and tight in vacuum? */
export function tryEvacuation(record: InstallationRecord): Tried {
  const { evacuation, instruments } = record;
  const { readings, policy, ambient, coldest, leakLimit, isolation, hoses, blankTest } =
    evacuation ?? {};
  const { accuracy, resolution, range } = instruments?.vacuumGauge ?? {};
  return tryAll("evacuation", [
    {
      name: "vacuum-decay",
      path: "evacuation",
      needs: {
        "evacuation.readings": readings?.[0],
        "evacuation.policy": policy,
        "evacuation.ambient": ambient,
        "instruments.vacuumGauge": instruments?.vacuumGauge,
      },
      paths: {
        gauge: "instruments.vacuumGauge",
        volume: "tubing.otherVolume",
        tube: "tubing.liquid",
        length: "tubing.length",
      },
      run: () =>
        assessVacuumDecay(
          given({
            readings,
            policy: policy && acceptancePolicies[policy],
            ambient,
            coldest,
            leakLimit,
            isolation,
            hoses,
            blankTest,
            volume: volumeOf(record),
            gauge: given({ accuracy, resolution, range }),
          }),
        ),
    },
  ]);
}
