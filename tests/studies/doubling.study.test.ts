// No cost grows faster than its input: every list, and every pair of lists, is doubled, and the time for it grows to
// no more than 2.3 times. What two lists cost together shows only where both are long: signatures and joints.
import {
  type Amendment,
  amend,
  type InstallationRecord,
  recordRevision,
  recordText,
} from "hvac-install-math/commissioning";
import { degC, ftLb, micron, minute, psig } from "hvac-install-math/quantity";
import { recordCodec } from "hvac-install-math/wire";
import { expect, it } from "vitest";
import { assessInstallation } from "../commissioning/assess.ts";
import { complete } from "../commissioning/complete-record.ts";
import { pace } from "../pace.ts";
import { thrownBy } from "../wire/thrown-by.ts";

const many = <T>(n: number, make: (i: number) => T) => Array.from({ length: n }, (_, i) => make(i));
const day = (i: number) =>
  `2026-${String(1 + (i % 12)).padStart(2, "0")}-${String(1 + (i % 28)).padStart(2, "0")}`;
const by = { by: "N. N.", reason: "invented" };

/** The run of the complete record with other parts. */
const [run] = complete.runs ?? [];

/** Parts of a record, and of its run. */
interface Parts {
  readonly record?: Partial<InstallationRecord>;
  readonly run?: object;
}

/** The lists of a record, each of any length. */
const lists = {
  joints: (n: number): Parts => ({
    run: {
      joints: many(n, (i) => ({
        name: `joint ${i}`,
        kind: "flare" as const,
        tube: "1/4" as const,
        torque: ftLb(12),
        at: day(i),
      })),
    },
  }),
  signatures: (n: number): Parts => ({
    record: {
      signatures: many(n, (i) => ({
        name: `N. N. ${i}`,
        at: `2025-01-${String(1 + (i % 28)).padStart(2, "0")}`,
      })),
    },
  }),
  photos: (n: number): Parts => ({
    record: {
      photos: many(n, (i) => ({ reference: `${i}.jpg`, of: `runs[0].joints[${i}]`, at: day(i) })),
    },
  }),
  history: (n: number): Parts => ({
    record: {
      history: many(
        n,
        (i): Amendment => ({ path: "runs[0].tubing.bends", previous: i, at: "2026-12-31", ...by }),
      ),
    },
  }),
  operation: (n: number): Parts => ({
    record: { operation: many(n, (i) => ({ ...complete.operation?.[0], at: day(i) })) },
  }),
  waivers: (n: number): Parts => ({
    record: { waivers: many(n, (i) => ({ step: "drain" as const, at: day(i), by: by.by })) },
  }),
  indoorUnits: (n: number): Parts => ({
    run: { indoorUnits: many(n, (i) => ({ model: `M${i}` })) },
  }),
  test: (n: number): Parts => ({
    record: {
      pressureTests: [
        {
          ...complete.pressureTests?.[0],
          readings: many(n, (i) => ({
            pressure: psig(500),
            temperature: degC(20),
            elapsed: minute(i),
          })),
        },
      ],
    },
  }),
  vacuum: (n: number): Parts => ({
    record: {
      evacuations: [
        {
          ...complete.evacuations?.[0],
          readings: many(n, (i) => ({ elapsed: minute(i), pressure: micron(300) })),
        },
      ],
    },
  }),
};

type Lists = keyof typeof lists;
const names = Object.keys(lists) as Lists[];
const pairs = names.flatMap((one, i) => names.slice(i).map((other) => [one, other] as const));
const recordOf = (one: Lists, other: Lists, n: number): InstallationRecord => {
  const [a, b] = [lists[one](n), lists[other](n)];
  return { ...complete, ...a.record, ...b.record, runs: [{ ...run, ...a.run, ...b.run }] };
};

/** The least processor time of several runs, in ms: what others do on the machine does not count. */
function least(run: () => unknown): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 3; i++) {
    const start = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(start);
    best = Math.min(best, (user + system) / 1e3);
  }
  return best;
}

const change = { path: "runs[0].tubing.bends", value: 4, at: "2027-01-01", ...by };
const works: Record<string, (record: ReturnType<typeof recordOf>) => () => unknown> = {
  assessInstallation: (record) => () => assessInstallation(record),
  amend: (record) => () => amend(record, change),
  recordRevision: (record) => () => recordRevision(record, 0),
  recordText: (record) => () => recordText(record),
  "recordCodec, there and back": (record) => () => recordCodec.parse(recordCodec.stringify(record)),
  "recordCodec, problems": (record) => {
    const json = JSON.parse(recordCodec.stringify(record));
    return () => recordCodec.problems(json);
  },
};

it.each(
  pairs.flatMap(([one, other]) => Object.keys(works).map((work) => [work, one, other] as const)),
)(
  "%s of twice as many %s and %s takes at most 2.3 times as long",
  { retry: 3 },
  (work, one, other) => {
    const [few, twice] = [500, 1000].map((n) =>
      least(works[work]?.(recordOf(one, other, n)) ?? (() => 0)),
    );
    expect((twice ?? 0) / Math.max(few ?? 0, 2)).toBeLessThan(2.3);
  },
);

it.each([
  ["joints that are none", `"joints":[${"[[[]]],".repeat(140_000)}1]`],
  ["names that no record has", many(70_000, (i) => `"n${i}":[{}]`).join()],
  ["quantities that are none", `"joints":[${'{"torque":{"kind":"mass"}},'.repeat(37_000)}1]`],
  [
    "readings of two forms",
    `"pressureTest":{"readings":[${'{"temperature":[{"kind":"length"}]},'.repeat(28_000)}1]}`,
  ],
  [
    "amendments of amendments",
    `"history":[${'{"path":"joints[0].torque","previous":[]},'.repeat(24_000)}1]`,
  ],
])("a hostile record of 1 MB, %s, is refused within a second", { retry: 3 }, (_, more) => {
  const text = `{"version":1,${more}}`;
  expect(text.length).toBeGreaterThan(900_000);
  const start = process.cpuUsage();
  thrownBy(() => recordCodec.parse(text));
  expect(recordCodec.problems(JSON.parse(text)).length).toBeGreaterThan(0);
  const { user, system } = process.cpuUsage(start);
  expect((user + system) / 1e3).toBeLessThan(1000 * pace());
});
