// Was this joint made right? What can be judged of it by its kind.
// Follows flare-joint for flares; nitrogen while brazing and a look at the others are common practice, no source.
// Does not cover how many there have to be: see try-joints.ts.
import type { Outcome } from "../assessment/assessment.ts";
import {
  assessFlareDiameter,
  assessFlareTorque,
  assessFlareTurn,
  assessFlareWall,
  type FlareTube,
} from "../flare-joint/index.ts";
import { known } from "../quantity/known.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { errorsOf } from "./instrument-errors.ts";
import { type Job, refrigerantOf } from "./job.ts";
import { type OwnVerdict, ownVerdict } from "./own-verdict.ts";
import type { Joint } from "./record-run.ts";
import type { PlacedRun } from "./runs.ts";
import { say } from "./statements.ts";
import { present, type Trial } from "./step.ts";
import { sizeOf } from "./try-line-run.ts";

/** The checks of a joint. */
export function jointTrials(job: Job, placed: PlacedRun, joint: Joint, path: string): Trial[] {
  const { kind } = joint;
  if (kind === "brazed") {
    const { nitrogenFlowed } = joint;
    const needs = { [`${path}.nitrogenFlowed`]: nitrogenFlowed };
    const run = () => brazed(nitrogenFlowed);
    return [{ name: "brazed-joint", path, needs, run }, ...foundWrong(joint, path)];
  }
  if (kind === "pressed" || kind === "coupling") {
    const { inspected } = joint;
    const run = () => (inspected ? sound() : defective());
    return [{ name: `${kind}-joint`, path, needs: { [`${path}.inspected`]: inspected }, run }];
  }
  return flareTrials(job, placed, joint, path);
}

const sound = (): OwnVerdict => ownVerdict("pass", say("commissioning.joint-inspected"));

const defective = (): OwnVerdict =>
  ownVerdict("fail", say("commissioning.joint-defect"), say("commissioning.remake-joint"));

const brazed = (nitrogen: boolean | undefined): OwnVerdict =>
  nitrogen
    ? ownVerdict("pass", say("commissioning.brazed-with-nitrogen"))
    : ownVerdict(
        "fail",
        say("commissioning.brazed-without-nitrogen"),
        say("commissioning.remake-joint"),
      );

/** A look at a joint need not be recorded; one that found it wrong counts, whatever its kind. */
const foundWrong = ({ inspected }: Joint, path: string): Trial[] =>
  inspected === false ? [{ name: "joint-inspected", path, needs: {}, run: defective }] : [];

/** The size of a flare: its own, or that of its line. */
function tubeOf({ run }: PlacedRun, { tube, line }: Joint): FlareTube | undefined {
  const diameter = line && run.tubing?.[line]?.outsideDiameter;
  return tube ?? (diameter && sizeOf(diameter));
}

function flareTrials(job: Job, placed: PlacedRun, joint: Joint, path: string): Trial[] {
  const { torque, turn, torqueWindow: manual, manualReadAgain, flareDiameter } = joint;
  // Only a flare nut has a torque or a turn.
  const kind = joint.kind ?? (torque || turn ? "flare" : undefined);
  const tube = tubeOf(placed, joint);
  const base = { [`${path}.kind`]: kind, [`${path}.tube`]: tube };
  const trials = foundWrong(joint, path);
  if (torque || !turn) {
    const { relativeAccuracy, accuracy, resolution } =
      errorsOf(job.record.instruments?.torqueWrench) ?? {};
    const wrench = present({ relativeAccuracy, accuracy, resolution });
    trials.push({
      name: "flare-torque",
      path,
      needs: { ...base, [`${path}.torque`]: torque },
      paths: {
        manual: `${path}.torqueWindow`,
        manualReadAgain: `${path}.manualReadAgain`,
        wrench: "instruments.torqueWrench",
        instrument: "instruments.torqueWrench",
      },
      run: () =>
        assessFlareTorque(
          present({
            tube,
            torque,
            manual,
            manualReadAgain,
            wrench: Object.keys(wrench).length > 0 ? wrench : undefined,
          }),
        ),
    });
  }
  if (turn) {
    const run = () => assessFlareTurn(present({ tube, turn }));
    trials.push({ name: "flare-turn", path, needs: base, run });
  }
  if (flareDiameter) trials.push(diameterTrial(job, tube, flareDiameter, base, path));
  return trials;
}

function diameterTrial(
  job: Job,
  tube: FlareTube | undefined,
  diameter: Quantity<"length">,
  base: Readonly<Record<string, unknown>>,
  path: string,
): Trial {
  return {
    name: "flare-diameter",
    path,
    needs: base,
    paths: {
      diameter: `${path}.flareDiameter`,
      designation: "equipment.refrigerant",
      refrigerant: "equipment.refrigerant",
    },
    run: () =>
      assessFlareDiameter(present({ tube, diameter, refrigerant: flareRefrigerantOf(job) })),
  };
}

const flareRefrigerantOf = (job: Job) => refrigerantOf(job).designation.replace("-", "");

/** Minimum walls are published for these alone. */
const hasWallRule = ({ refrigerant }: Job) =>
  refrigerant !== undefined && ["R-410A", "R-32", "R-454B"].includes(refrigerant.designation);

/**
 * The lines of a run that are flared and too thin for it. Between the strictest and the most lenient of the published
 * minimums a wall is not asked about: usual tube lies there.
 */
export function thinWalls(job: Job, { run, path }: PlacedRun): Trial[] {
  const flared = (run.joints ?? []).some(({ kind, torque }) => kind === "flare" || torque);
  if (!flared || !hasWallRule(job)) return [];
  return (["liquid", "vapor"] as const).flatMap((line): Trial[] => {
    const { outsideDiameter, wall } = run.tubing?.[line] ?? {};
    const tube = outsideDiameter && sizeOf(outsideDiameter);
    if (!tube || !wall || tube === "3/4") return [];
    const judge = () => assessFlareWall({ tube, wall, refrigerant: flareRefrigerantOf(job) });
    const where = `${path}.tubing.${line}.wall`;
    return mayFail(judge)
      ? [{ name: "flare-wall", path: where, needs: {}, paths: { wall: where }, run: judge }]
      : [];
  });
}

/** Whether it fails, or cannot be judged, which the step then says. */
const mayFail = (run: () => { readonly outcome: Outcome }): boolean =>
  (known(run)?.outcome ?? "fail") === "fail";
