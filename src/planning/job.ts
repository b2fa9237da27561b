// What is planned? The record with the lengths that will be installed, its runs, refrigerant and atmosphere.
// Follows line-set, which chooses the stock. Does not cover a guess: what is not recorded is undefined.
import type { Single } from "../assessment/statement.ts";
import type { CircuitRules } from "../circuit-protection/index.ts";
import type {
  Construction,
  Equipment,
  InstallationRecord,
  Manual,
  Planned,
  Run,
} from "../commissioning/index.ts";
import { chooseStockLength, type StockLengthAssessment } from "../line-set/index.ts";
import { atmosphereAtAltitude } from "../quantity/atmosphere.ts";
import { known } from "../quantity/known.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { type Refrigerant, refrigerantByDesignation } from "../refrigerants/index.ts";
import type { Draft } from "../shapes/index.ts";
import { verbatim } from "./statements.ts";

/** A run of the plan. */
export interface PlannedRun {
  /** With the length that will be installed. */
  readonly run: Run;
  readonly path: string;
  /** How it is called in a sentence: its name, or its number. */
  readonly called: Single;
  /** The stock for it, where way and stock are known. */
  readonly choice?: StockLengthAssessment;
}

/** What the parts of a plan share. */
export interface Job {
  /** The record with the lengths that will be installed. */
  readonly record: InstallationRecord;
  readonly rules: readonly CircuitRules[];
  readonly runs: readonly PlannedRun[];
  readonly plan: Planned;
  readonly equipment: Equipment;
  readonly manual: Manual;
  readonly construction: Construction;
  readonly refrigerant?: Refrigerant;
  readonly atmosphere?: Quantity<"absolutePressure">;
}

/** The job of a record that was checked. */
export function jobOf(given: InstallationRecord, rules: readonly CircuitRules[]): Job {
  const { equipment = {}, plan = {}, site } = given;
  const { manual = {}, construction = "split" } = equipment;
  const own: readonly Run[] = given.runs?.length
    ? given.runs
    : construction === "monobloc"
      ? []
      : [{}];
  const runs = own.map((run, i): PlannedRun => {
    const choice = known(() => stockFor(given, run));
    const length =
      run.tubing?.length ?? choice?.installedLength ?? choice?.neededLength ?? wayOf(given, run);
    return {
      run: length ? { ...run, tubing: { ...run.tubing, length } } : run,
      path: `runs[${i}]`,
      called: run.name === undefined ? i + 1 : verbatim(run.name),
      ...(choice && { choice }),
    };
  });
  const { altitude } = site ?? {};
  const atmosphere = site?.atmosphere ?? (altitude && known(() => atmosphereAtAltitude(altitude)));
  const { refrigerant: name } = equipment;
  const refrigerant = name === undefined ? undefined : known(() => refrigerantByDesignation(name));
  return {
    record: { ...given, ...(given.runs && { runs: runs.map(({ run }) => run) }) },
    rules,
    runs,
    plan,
    equipment,
    manual,
    construction,
    ...(refrigerant && { refrigerant }),
    ...(atmosphere && { atmosphere }),
  };
}

/** The stock for a run: its way with slack and loop, or the length that is decided. */
export function stockFor(
  { plan = {}, equipment }: InstallationRecord,
  run: Run,
): StockLengthAssessment | undefined {
  const { way, length } = run.tubing ?? {};
  const needed = length ?? way;
  if (!needed || !plan.stock) return undefined;
  const extra = length ? {} : { slack: plan.slack, serviceLoop: plan.serviceLoop };
  const limits = { ...equipment?.manual?.run, ...run.manual?.run };
  return chooseStockLength(
    stated({
      run: needed,
      ...extra,
      stock: plan.stock,
      cuttable: plan.cuttable ?? equipment?.construction !== "quick-connect",
      minimumLength: limits.minimumLength,
      maximumLength: limits.bendEquivalentLength ? undefined : limits.maximumLength,
    }),
  );
}

/** The way with slack and loop, where no stock is known. */
function wayOf({ plan = {} }: InstallationRecord, { tubing }: Run) {
  const extras = [plan.slack, plan.serviceLoop].filter((one) => one !== undefined);
  return tubing?.way && extras.reduce((sum, one) => sum.plus(one), tubing.way);
}

type Loose<T> = { readonly [P in keyof T]: T[P] | Draft<T[P]> | undefined };

/** The fields that are stated, as a module takes them; what a part still lacks, its module names. */
export function stated<T extends object>(fields: Loose<NoInfer<T>>): T {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as T;
}

/** Whether a run ends at an indoor unit. */
export const servesIndoorUnit = ({ run }: PlannedRun): boolean => run.serves !== "branch-box";
