// How do the library's figures compare with the published ones today? Every row of tests/published,
// computed again when the site is built.
// Follows tests/published/check.ts, as the tests do. Does not cover the reference values in CSV files.
import { readdirSync, readFileSync } from "node:fs";
import {
  type Check,
  type CheckFile,
  compare,
  type Evaluators,
} from "../../tests/published/check.ts";

const folder = new URL("../../tests/published/", import.meta.url);

/** A check with what the library answers. */
export interface Result {
  readonly check: Check;
  /** Our answer, or the message of the error that came instead. */
  readonly ours: number | string | boolean;
  /** How far ours is off, in the unit of the row; infinite where a word differs. */
  readonly deviation: number;
  /** Deviation over tolerance; 0 for an exact match, above 1 for a failure. */
  readonly share: number;
  readonly ok: boolean;
}

/** The results of one module, the worst first. */
export interface ModuleResults {
  readonly module: string;
  readonly results: readonly Result[];
}

/** What may be off, in the unit of the row. */
export function allowed({ expected, tolerance }: Check): number {
  if (tolerance === undefined || typeof expected !== "number") return 0;
  return "absolute" in tolerance ? tolerance.absolute : tolerance.relative * Math.abs(expected);
}

/** One row, computed and compared. An error of the library is a failure of the row. */
export function evaluate(check: Check, evaluators: Evaluators): Result {
  let ours: Result["ours"];
  try {
    const compute = evaluators[check.computes];
    if (compute === undefined) throw new Error(`nothing computes ${check.computes}`);
    ours = compute(check.input);
  } catch (error) {
    const message = `error: ${(error as Error).message}`;
    return { check, ours: message, deviation: Infinity, share: Infinity, ok: false };
  }
  const { deviation, ok } = compare(check, ours);
  const share = deviation === 0 ? 0 : deviation / allowed(check);
  return { check, ours, deviation, share: Number.isNaN(share) ? Infinity : share, ok };
}

/** The rows that fail first, then by the share of the tolerance that they use. */
export function worstFirst(results: readonly Result[]): Result[] {
  return [...results].sort((a, b) =>
    a.ok !== b.ok ? Number(a.ok) - Number(b.ok) : b.share === a.share ? 0 : b.share - a.share,
  );
}

/** Every file of tests/published. */
export async function evaluateAll(): Promise<ModuleResults[]> {
  const files = readdirSync(folder).filter((name) => name.endsWith(".json"));
  return Promise.all(
    files.map(async (file) => {
      const { module, checks }: CheckFile = JSON.parse(readFileSync(new URL(file, folder), "utf8"));
      const { evaluators }: { evaluators: Evaluators } = await import(
        `${folder.href}${module}.evaluate.ts`
      );
      return { module, results: worstFirst(checks.map((check) => evaluate(check, evaluators))) };
    }),
  );
}
