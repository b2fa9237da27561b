// Mutated records: a typed error or a whole assessment comes out, never a crash, a NaN or an unearned pass.
import fc from "fast-check";
import type { InstallationAssessment, InstallationRecord } from "hvac-install-math/commissioning";
import { isInvalidInputError, isQuantity } from "hvac-install-math/quantity";
import { recordCodec } from "hvac-install-math/wire";
import { assessInstallation } from "../commissioning/assess.ts";
import { complete } from "../commissioning/complete-record.ts";
import {
  at,
  factor,
  faults,
  pathsOf,
  put,
  strange,
  textOf,
} from "../commissioning/mutated-record.ts";

type Path = readonly (string | number)[];
const json = recordCodec.encode(complete);

/** What an act gives, looked through for numbers that are not finite; nothing where it threw the typed error. */
function outcomeOf(act: () => InstallationRecord): InstallationAssessment | undefined {
  try {
    const result = assessInstallation(act());
    textOf(result);
    return result;
  } catch (error) {
    if (isInvalidInputError(error)) return undefined;
    throw error;
  }
}

/** A pass has every step done and passed. */
function requireEarned(result: InstallationAssessment | undefined): void {
  if (!result) return;
  if (!["pass", "fail", "inconclusive"].includes(result.outcome)) throw new Error(result.outcome);
  const missing = result.steps.find(({ outcome, state }) => outcome !== "pass" || state !== "done");
  if (result.outcome === "pass" && missing) throw new Error(`passes without ${missing.name}`);
}

/** A figure, live or as JSON, times a factor; nothing where no quantity can have that. */
function scaled(old: unknown, by: number): unknown {
  if (typeof old === "number") return old * by;
  if (!isQuantity(old)) return undefined;
  try {
    const unit = old.unit as unknown as (value: number) => unknown;
    return unit((old as { in(unit: unknown): number }).in(old.unit) * by);
  } catch {
    return undefined;
  }
}

const changesOf = (target: unknown) =>
  fc.array(fc.tuple(fc.constantFrom(...pathsOf(target)), strange, factor), {
    minLength: 1,
    maxLength: 3,
  });

type Change = readonly [path: Path, other: unknown, by: number];
const mutated = (target: unknown, changes: readonly Change[]) =>
  changes.reduce((record, [path, other, by]) => {
    return put(record, path, scaled(at(record, path), by) ?? other);
  }, target);

/** Live records: figures scaled, anything replaced by anything. */
export function fuzzLiveRecords(numRuns: number): void {
  fc.assert(
    fc.property(changesOf(complete), (changes) => {
      requireEarned(outcomeOf(() => mutated(complete, changes) as InstallationRecord));
    }),
    { numRuns },
  );
}

/** The same in JSON, down to the parts of a quantity. What is read comes back as it was. */
export function fuzzJsonRecords(numRuns: number): void {
  fc.assert(
    fc.property(changesOf(json), (changes) => {
      const document = mutated(json, changes);
      requireEarned(
        outcomeOf(() => {
          const record = recordCodec.decode(document);
          const again = recordCodec.stringify(recordCodec.parse(recordCodec.stringify(record)));
          if (again !== recordCodec.stringify(record)) throw new Error("the round trip changed it");
          return record;
        }),
      );
    }),
    { numRuns },
  );
}

/** A record with a fault, and noise elsewhere that is no measurement: it never passes. */
export function fuzzFaultyRecords(numRuns: number): void {
  const noise = fc.tuple(fc.constantFrom(...pathsOf(complete)), strange);
  fc.assert(
    fc.property(
      fc.constantFrom(...faults),
      fc.array(noise, { minLength: 1, maxLength: 3 }),
      ([faultPath, fault], changes) => {
        const bad = put(complete, faultPath, fault);
        const off = changes.filter(([path]) => path.join() !== faultPath.join());
        const record = off.reduce((now, [path, value]) => put(now, path, value), bad);
        const result = outcomeOf(() => record as InstallationRecord);
        requireEarned(result);
        if (result?.outcome === "pass") throw new Error(`passes with ${faultPath.join(".")} wrong`);
      },
    ),
    { numRuns },
  );
}

/** The text of a record with some of its characters lost, doubled or exchanged. */
export function fuzzRecordTexts(numRuns: number): void {
  const text = recordCodec.stringify(complete);
  const slip = fc.tuple(
    fc.integer({ min: 0, max: text.length - 1 }),
    fc.integer({ min: 0, max: 3 }),
    fc.oneof(
      fc.constantFrom("", '"', "{", "}", "[", "]", ",", ":", "\\", "9", "e", "\u0000"),
      fc.string(),
    ),
  );
  fc.assert(
    fc.property(fc.array(slip, { minLength: 1, maxLength: 4 }), (slips) => {
      const broken = slips.reduce(
        (now, [from, length, more]) => now.slice(0, from) + more + now.slice(from + length),
        text,
      );
      requireEarned(outcomeOf(() => recordCodec.parse(broken)));
    }),
    { numRuns },
  );
}
