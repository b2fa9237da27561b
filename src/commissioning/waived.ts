// Does the record bear out that a step is waived, or does it fall away by the construction of the unit?
// Follows common practice, no source; the safety classes are those of ASHRAE 34.
// Does not cover who may waive a step: licensed practice and local code say that.
import { overallOutcome } from "../assessment/assessment.ts";
import type { StepCheck } from "./check-verdicts.ts";
import { hasWords } from "./has-words.ts";
import type { Job } from "./job.ts";
import type { StepName } from "./names.ts";
import { ownVerdict } from "./own-verdict.ts";
import type { Construction } from "./record-equipment.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import type { Tried } from "./step.ts";
import type { OptionalStep, Waiver, WaiverReason } from "./waiver.ts";
import { fieldWord, verbatim } from "./words.ts";

/** Lines that are joined on site need every step. */
type Sealed = Exclude<Construction, "split">;

/** What falls away where the refrigerant circuit is not opened on site. */
const fallsAway: Readonly<Record<Sealed, readonly StepName[]>> = {
  // Pre-charged lines hold refrigerant: no nitrogen goes in, no vacuum is pulled, nothing is added.
  "quick-connect": ["pressure-test", "evacuation", "charge"],
  monobloc: ["line-run", "joints", "pressure-test", "evacuation", "charge", "valves", "room-limit"],
};

/** The reasons that fit a step. */
const fitting: Readonly<Record<OptionalStep, WaiverReason>> = {
  "line-run": "factory-line-set",
  joints: "existing-lines",
  "room-limit": "no-enclosed-room",
  drain: "heats-only",
};

/** A step as construction and waivers leave it; a waiver of single runs leaves the others to be judged. */
export function waived(job: Job, attempt: (job: Job) => Tried): Tried {
  const tried = attempt(job);
  const { construction } = job;
  // A monobloc may stand in the room itself: a room that is recorded is held against its charge.
  const inRoom = tried.name === "room-limit" && job.runs.some(({ run }) => run.room);
  if (construction !== "split" && fallsAway[construction].includes(tried.name) && !inRoom) {
    return fallenAway(job, tried, construction);
  }
  const own = [...(job.record.waivers ?? []).entries()].filter(
    ([, { step }]) => step === tried.name,
  );
  const [first, ...further] = own.map(([, one]) => one);
  if (!first) return tried;
  const covered = job.runs.filter(({ run }) =>
    own.some(([, waiver]) => waiver.run === undefined || waiver.run === run.name),
  );
  const others = job.runs.filter((one) => !covered.includes(one));
  const rest = attempt({ ...job, runs: others });
  // Runs to branch boxes have neither a room nor a drain of their own.
  const isWhole = others.length === 0 || (rest.state === "missing" && rest.missing.length === 0);
  const against = [
    ...own.flatMap(([i, one]) => flawsOf(job, one, `waivers[${i}]`)),
    ...own.filter(isSaidBefore).map(([i]) => {
      return flaw(`waivers[${i}]`, say("commissioning.waived-twice"));
    }),
    ...contradictions({ ...job, runs: covered }, first.step).filter(
      // What the manual says of runs holds for those that are not waived.
      ({ path }) => isWhole || !path.startsWith("equipment.manual"),
    ),
  ];
  if (against.length > 0) return withFlaws(tried, against);
  if (!isWhole) return { ...rest, runWaivers: [first, ...further] };
  return {
    name: tried.name,
    state: "not-applicable",
    outcome: "inconclusive",
    waiver: first,
    ...(further.length > 0 && { runWaivers: further }),
    checks: [],
    problems: [],
    missing: [],
  };
}

/** Whether an earlier waiver of the step holds for the same run already. */
const isSaidBefore = (
  [, { run }]: readonly [number, Waiver],
  i: number,
  all: readonly (readonly [number, Waiver])[],
): boolean =>
  all.slice(0, i).some(([, one]) => run === undefined || one.run === undefined || one.run === run);

/** What was recorded is judged all the same: no word hides a failure. */
function withFlaws(tried: Tried, against: readonly StepCheck[]): Tried {
  return {
    ...tried,
    state: "partial",
    outcome: overallOutcome([tried.outcome, "inconclusive"]),
    checks: [...tried.checks, ...against],
  };
}

/** A step that the construction of the unit leaves out, unless it was recorded. */
function fallenAway(job: Job, tried: Tried, sealed: Sealed): Tried {
  const construction = `commissioning.construction.${sealed}` as const;
  // What the manual says of runs is no run.
  const recorded = (recordedOf(job)[tried.name] ?? []).filter(
    (path) => !path.startsWith("equipment.manual"),
  );
  if (recorded.length > 0) {
    const said = (path: string) => {
      const reason = say("commissioning.construction-contradicted", {
        construction,
        field: fieldWord(path),
      });
      return flaw(path, reason, say("commissioning.correct-construction"));
    };
    return withFlaws(tried, recorded.map(said));
  }
  return {
    name: tried.name,
    state: "not-applicable",
    outcome: "inconclusive",
    fallsAway: say("commissioning.falls-away", { construction }),
    checks: [],
    problems: [],
    missing: [],
  };
}

/** Why a waiver does not stand; it is withdrawn unless something else is to be done. */
function flaw(
  path: string,
  reason: CommissioningStatement,
  action: CommissioningStatement = say("commissioning.withdraw-waiver"),
): StepCheck {
  return { name: "waiver", path, assessment: ownVerdict("inconclusive", reason, action) };
}

function flawsOf(job: Job, own: Waiver, path: string): StepCheck[] {
  const flaws: StepCheck[] = [];
  if (!hasWords(own.by)) {
    const fields = [fieldWord(`${path}.by`)];
    const reason = say("commissioning.waived-by-nobody");
    flaws.push(flaw(`${path}.by`, reason, say("commissioning.record-fields", { fields })));
  }
  if (own.run !== undefined && !job.runs.some(({ run }) => run.name === own.run)) {
    flaws.push(flaw(`${path}.run`, say("commissioning.unknown-run", { run: verbatim(own.run) })));
  }
  const asked = `commissioning.waiver.${fitting[own.step]}` as const;
  if (own.reason !== fitting[own.step]) {
    const reason = own.reason
      ? say("commissioning.waiver-does-not-fit", {
          reason: `commissioning.waiver.${own.reason}`,
          fits: asked,
        })
      : say("commissioning.waiver-without-reason", { fits: asked });
    flaws.push(flaw(`${path}.reason`, reason));
  }
  const { duty } = job.record.equipment ?? {};
  // What burns or poisons, or is not known, is held against its room.
  if (own.step === "room-limit" && job.refrigerant?.safetyClass !== "A1") {
    flaws.push(flaw(`${path}.step`, say("commissioning.waiver-needs-a1")));
  }
  // A unit that can cool makes water, in whatever season it is installed.
  if (own.step === "drain" && duty !== "heating") {
    const action = duty
      ? say("commissioning.withdraw-waiver")
      : say("commissioning.record-fields", { fields: ["commissioning.field.equipment.duty"] });
    flaws.push(flaw("equipment.duty", say("commissioning.waiver-needs-heating-only"), action));
  }
  return flaws;
}

/** What the record holds of a step that is said not to apply. */
const contradictions = (job: Job, step: OptionalStep): StepCheck[] =>
  (recordedOf(job)[step] ?? []).map((path) =>
    flaw(path, say("commissioning.waiver-contradicted", { field: fieldWord(path) })),
  );

/** The paths of what is recorded of the steps that may fall away. */
function recordedOf({ record, runs }: Job): Partial<Record<StepName, readonly string[]>> {
  const {
    pressureTests = [],
    evacuations = [],
    charge,
    valves,
    equipment,
    operation = [],
  } = record;
  const stated = (entries: readonly (readonly [path: string, value: unknown])[]) =>
    entries.filter(([, value]) => value !== undefined).map(([path]) => path);
  const under = (path: string, part: object | undefined) =>
    stated(Object.entries(part ?? {}).map(([key, value]) => [`${path}.${key}`, value] as const));
  return {
    "line-run": [
      ...runs.flatMap(({ run: { tubing }, path }) =>
        stated([
          [`${path}.tubing.lift`, tubing?.lift],
          [`${path}.tubing.outdoorUnit`, tubing?.outdoorUnit],
          [`${path}.tubing.bends`, tubing?.bends],
        ]),
      ),
      ...stated([["equipment.manual.run", equipment?.manual?.run]]),
    ],
    joints: runs.flatMap(({ run: { joints, tubing }, path }) =>
      stated([
        [`${path}.joints[0]`, joints?.[0]],
        [`${path}.tubing.jointCount`, tubing?.jointCount || undefined],
      ]),
    ),
    "pressure-test": stated([["pressureTests[0]", pressureTests[0]]]),
    evacuation: stated([["evacuations[0]", evacuations[0]]]),
    // That nothing was added may be said.
    charge: stated([["charge.added", charge?.added?.si ? charge.added : undefined]]),
    valves: stated([["valves.openedAt", valves?.openedAt]]),
    "room-limit": runs.flatMap(({ run, path }) => under(`${path}.room`, run.room)),
    drain: [
      ...runs.flatMap(({ run, path }) => under(`${path}.drain`, run.drain)),
      // A coil that cools makes water.
      ...stated(
        operation.map(
          ({ mode }, i) => [`operation[${i}].mode`, mode === "cooling" ? mode : undefined] as const,
        ),
      ),
    ],
  };
}
