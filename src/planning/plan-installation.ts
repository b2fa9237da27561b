// What does this job need before anything is measured? The parts of the plan in the order of the work.
// Follows the modules, each by its own standards; the order of the work is common practice, no source.
// Does not cover prices, permits, load calculation, and what nobody stated: that is asked.
import type { Citation } from "../assessment/assessment.ts";
import { heed } from "../assessment/safety.ts";
import type { CircuitRules } from "../circuit-protection/index.ts";
import { completeRecord, type Files, type InstallationRecord } from "../commissioning/index.ts";
import { listOf, objectOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { bundleShare } from "./bundle.ts";
import { chargeShare } from "./charge.ts";
import { circuitShare } from "./circuits.ts";
import { drainShare } from "./drains.ts";
import { evacuationShare } from "./evacuation.ts";
import { type Job, jobOf } from "./job.ts";
import { jointShare } from "./joints.ts";
import { limitShare } from "./limits.ts";
import { lineShare } from "./lines.ts";
import { operationShare } from "./operation.ts";
import type { InstallationPlan } from "./plan.ts";
import { pressureTestShare } from "./pressure-tests.ts";
import { roomShare } from "./rooms.ts";
import { askedOnce, together } from "./share.ts";
import { supplyShare } from "./supply.ts";

/** What a plan is made with. */
export interface PlanInstallationOptions {
  /** The rule sets for circuits that the record may name. */
  readonly rules: readonly CircuitRules[];
  /** Equipment and instruments that the record refers to by `onFile`. */
  readonly onFile?: Files | undefined;
}

/**
 * Plans an installation from plates, manual, planned runs, site, instruments and rules, before anything is measured:
 * what to bring, what to set, what to check, and what is still to be asked, each in the order of the work. The record
 * is the one that {@link assessInstallation} judges afterwards; `plan` in it holds stock, weather and cylinder.
 *
 * A line whose needs are absent is a question that names what it changes: no figure of a manual is guessed. A run whose
 * length is not decided takes its way with slack and service loop, cut from the shortest stock that will do.
 *
 * @param record - The record, in whatever state of filling.
 * @param options - The rule sets for circuits that the record may name: `{ rules: [nec2023] }`.
 * @returns The plan, frozen.
 * @throws {@link InvalidInputError} when it is not a record, with the path.
 *
 * Cautions: a plan is arithmetic. Nameplate, manufacturer's instructions, local code and licensed practice govern;
 * nitrogen under pressure, refrigerant, flammable gas and line voltage can kill.
 *
 * Source: common practice, no source, for the order; each line names its own.
 *
 * @example
 * ```ts
 * import { planInstallation } from "hvac-install-math/planning";
 * import { ft, inch } from "hvac-install-math/quantity";
 *
 * const tube = (size: number) => ({ outsideDiameter: inch(size), wall: inch(0.032) });
 * const record = {
 *   version: 2,
 *   runs: [{ tubing: { way: ft(14), liquid: tube(0.25), vapor: tube(0.375) } }],
 *   plan: { stock: [ft(16), ft(25), ft(50)], slack: ft(1) },
 * } as const;
 * const { bring, ask } = planInstallation(record, { rules: [] });
 * `${bring[0]?.code}: ${bring[0]?.values.stock}`; // => planning.line-set: 16 ft
 * ask.find(({ path }) => path === "equipment.factoryCharge")?.changes.join(", "); // => charge, room
 * ```
 */
export function planInstallation(
  record: InstallationRecord,
  options: PlanInstallationOptions,
): InstallationPlan {
  const { rules, onFile = {} } = objectOf("options", options);
  const sets = listOf("options.rules", rules, 100).map((one, i) =>
    objectOf(`options.rules[${i}]`, one),
  );
  const job = jobOf(completeRecord(record, onFile), sets);
  const { bring, set, check, ask, cautions } = together(parts.map((part) => part(job)));
  const cited = new Map<string, Citation>();
  for (const { sources } of [...bring, ...set, ...check]) {
    for (const one of sources) cited.set(`${one.source} ${one.clause}`, one);
  }
  return frozen({
    bring,
    set,
    check,
    ask: askedOnce(ask, (path) => job.runs.find((run) => path.startsWith(`${run.path}.`))?.called),
    cautions: heed(
      cautions.filter(
        ({ kind, code }) => kind !== "governing" && !/(instructions|others)-govern$/.test(code),
      ),
    ),
    sources: [...cited.values()],
  });
}

/** The parts in the order of the work. */
const parts: readonly ((job: Job) => ReturnType<typeof lineShare>)[] = [
  lineShare,
  limitShare,
  jointShare,
  bundleShare,
  circuitShare,
  supplyShare,
  drainShare,
  pressureTestShare,
  evacuationShare,
  chargeShare,
  roomShare,
  operationShare,
];
