import fc from "fast-check";
import {
  type Amendment,
  amend,
  assessInstallation,
  type InstallationRecord,
  recordRevision,
} from "hvac-install-math/commissioning";
import {
  degF,
  ft,
  ftLb,
  isInvalidInputError,
  isQuantity,
  micron,
  psig,
  type Quantity,
  volt,
} from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { complete } from "./complete-record.ts";

type Part = keyof InstallationRecord;
const needed: readonly Part[] = [
  "site",
  "equipment",
  "instruments",
  "tubing",
  "joints",
  "pressureTest",
  "evacuation",
  "charge",
  "valves",
  "power",
  "drain",
  "room",
  "operation",
];

type Segment = string | number;
/** Paths of every value of the record: quantities, words and flags, and the parts around them. */
function pathsOf(value: unknown, path: readonly Segment[] = []): Segment[][] {
  if (typeof value !== "object" || value === null || isQuantity(value)) return [[...path]];
  const own = Array.isArray(value)
    ? value.slice(0, 2).map((item, i): [Segment, unknown] => [i, item])
    : Object.entries(value);
  return [
    ...(path.length ? [[...path]] : []),
    ...own.flatMap(([key, one]) => pathsOf(one, [...path, key])),
  ];
}
const paths = pathsOf(complete);

/** A copy with another value at a path; nothing removes it. */
function put(target: unknown, [key, ...rest]: readonly Segment[], value: unknown): unknown {
  if (key === undefined) return value;
  if (typeof target !== "object" || target === null || isQuantity(target)) return target;
  const copy: Record<Segment, unknown> = Array.isArray(target)
    ? ([...target] as never)
    : { ...target };
  if (rest.length === 0 && value === undefined) {
    if (Array.isArray(copy)) copy.splice(key as number, 1);
    else delete copy[key];
  } else copy[key] = put(copy[key], rest, value);
  return copy;
}
const at = (target: unknown, path: readonly Segment[]) =>
  path.reduce<unknown>(
    (value, key) => (value as Record<Segment, unknown> | undefined)?.[key],
    target,
  );

/** Everything that a result says, as text; throws on a number that is not finite. */
function textOf(value: unknown): string {
  return JSON.stringify(value, (_, one) => {
    if (typeof one === "number" && !Number.isFinite(one)) throw new Error(`${one} in the result`);
    return typeof one === "function" ? "function" : one;
  });
}
const assess = (record: unknown) => assessInstallation(record as InstallationRecord);

it("no subset of the parts of a good record passes but the whole", () => {
  fc.assert(
    fc.property(fc.subarray([...needed], { minLength: 1 }), (parts) => {
      const left = parts.reduce<unknown>(
        (record, part) => put(record, [part], undefined),
        complete,
      );
      expect(assess(left).outcome).toBe("inconclusive");
    }),
    { numRuns: 60 },
  );
});

const faults: readonly (readonly [path: Segment[], value: unknown])[] = [
  [["joints", 0, "torque"], ftLb(5)],
  [["pressureTest", "readings", 1, "pressure"], psig(470)],
  [["power", "supply", "readings", 0, "voltage"], volt(275)],
  [["tubing", "lift"], ft(35.9)],
  [["drain", "waterRanOff"], false],
  [["operation", 0, "pressure"], psig(60)],
];

it("no subset of the parts of a bad record passes", () => {
  fc.assert(
    fc.property(fc.constantFrom(...faults), fc.subarray([...needed]), ([path, value], parts) => {
      const bad = put(complete, path, value);
      const left = parts.reduce<unknown>((record, part) => put(record, [part], undefined), bad);
      expect(assess(left).outcome).not.toBe("pass");
    }),
    { numRuns: 60 },
  );
});

it("no declaration turns a bad record, whole or in part, into a good one", () => {
  const step = fc.constantFrom("line-run", "joints", "room-limit", "drain");
  const word = { by: "N. N.", at: "2026-05-04", reason: "invented" };
  fc.assert(
    fc.property(
      fc.constantFrom(...faults),
      fc.subarray([...needed]),
      fc.array(step, { minLength: 1, maxLength: 4 }),
      ([path, value], parts, steps) => {
        const left = parts
          .filter((part) => part !== path[0] && part !== "equipment")
          .reduce<unknown>(
            (record, part) => put(record, [part], undefined),
            put(complete, path, value),
          );
        const declared = put(
          left,
          ["notApplicable"],
          steps.map((one) => ({ ...word, step: one })),
        );
        expect(assess(declared).outcome).toBe(
          assess(left).outcome === "fail" ? "fail" : "inconclusive",
        );
      },
    ),
    { numRuns: 60 },
  );
});

it("no single value that is left out turns a bad record into a good one", () => {
  for (const [path, value] of faults) {
    const bad = put(complete, path, value);
    for (const gone of paths) {
      if (["version", "photos", "signatures"].includes(String(gone[0]))) continue;
      expect(assess(put(bad, gone, undefined)).outcome, gone.join(".")).not.toBe("pass");
    }
  }
});

const strange = fc.oneof(
  fc.constantFrom<unknown>(
    undefined,
    null,
    "",
    "R-999",
    "__proto__",
    "2026-02-30",
    [],
    {},
    Number.NaN,
    -1,
    0,
    1e308,
    true,
    { kind: "length", value: 1, unit: "m" },
    Symbol.iterator,
    () => 1,
  ),
  fc.jsonValue({ maxDepth: 2 }),
);
const factor = fc.constantFrom(-1, 0, 1e-9, 0.5, 1.001, 2, 1e6, 1e300);

it("mutated records give the typed error or a whole assessment, never a crash or a NaN", {
  timeout: 60_000,
}, () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.constantFrom(...paths), strange, factor), {
        minLength: 1,
        maxLength: 3,
      }),
      (mutations) => {
        let record: unknown = complete;
        for (const [path, other, by] of mutations) {
          const old = at(record, path);
          const scaled = isQuantity(old) && Number.isFinite(old.si * by);
          let value = other;
          try {
            if (scaled)
              value = (old.unit as (n: number) => unknown)(
                (old as Quantity<"length">).in(old.unit as never) * by,
              );
          } catch {} // a value that no quantity can have
          record = put(record, path, value);
        }
        try {
          const result = assess(record);
          textOf(result);
          expect(["pass", "fail", "inconclusive"]).toContain(result.outcome);
          const good = result.steps.every(
            ({ outcome, state }) =>
              (outcome === "pass" && state === "done") || state === "not-applicable",
          );
          if (result.outcome === "pass") expect(good).toBe(true);
        } catch (error) {
          if (!isInvalidInputError(error)) throw error;
        }
      },
    ),
    { numRuns: 500 },
  );
});

it("the same record gives the same answer twice and is left as it was", () => {
  fc.assert(
    fc.property(fc.subarray([...needed]), (parts) => {
      const record = parts.reduce<unknown>((left, part) => put(left, [part], undefined), complete);
      const text = textOf(record);
      expect(textOf(assess(record))).toBe(textOf(assess(record)));
      expect(textOf(record)).toBe(text);
    }),
    { numRuns: 20 },
  );
});

it("any chain of amendments can be walked back to the first record", () => {
  const change = fc.constantFrom<readonly [string, unknown]>(
    ["tubing.length", ft(40)],
    ["tubing.length", undefined],
    ["joints[0]", undefined],
    ["joints[0].torque", ftLb(12)],
    ["joints", undefined],
    ["evacuation.readings[0].pressure", micron(300)],
    ["site.name", "other"],
    ["site", undefined],
    ["operation[0].indoorTemperature", degF(74)],
  );
  fc.assert(
    fc.property(fc.array(change, { maxLength: 8 }), (changes) => {
      const all: InstallationRecord[] = [complete];
      for (const [path, value] of changes) {
        const last = all.at(-1) as InstallationRecord;
        try {
          all.push(amend(last, { path, value, by: "N. N.", at: "2026-05-06", reason: "try" }));
        } catch (error) {
          if (!isInvalidInputError(error)) throw error;
        }
      }
      const now = all.at(-1) as InstallationRecord;
      const history: readonly Amendment[] = now.history ?? [];
      expect(history.length).toBe(all.length - 1);
      all.forEach((record, i) => {
        expect(recordRevision(now, i)).toEqual(record);
      });
    }),
    { numRuns: 60 },
  );
});
