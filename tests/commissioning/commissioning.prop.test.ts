import fc from "fast-check";
import {
  type Amendment,
  amend,
  type InstallationRecord,
  recordRevision,
} from "hvac-install-math/commissioning";
import { degF, ft, ftLb, isInvalidInputError, micron } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { complete } from "./complete-record.ts";
import { faults, put, textOf } from "./mutated-record.ts";

type Path = readonly (string | number)[];
/** The parts of a record that a pass stands on. */
const needed: readonly Path[] = [
  ["site"],
  ["equipment"],
  ["instruments"],
  ["runs"],
  ["runs", 0, "tubing"],
  ["runs", 0, "joints"],
  ["runs", 0, "drain"],
  ["runs", 0, "room"],
  ["pressureTests"],
  ["evacuations"],
  ["charge"],
  ["valves"],
  ["power"],
  ["operation"],
];

const assess = (record: unknown) => assessInstallation(record as InstallationRecord);

it("no subset of the parts of a good record passes but the whole", () => {
  fc.assert(
    fc.property(fc.subarray([...needed], { minLength: 1 }), (parts) => {
      const left = parts.reduce<unknown>((record, part) => put(record, part, undefined), complete);
      expect(assess(left).outcome).toBe("inconclusive");
    }),
    { numRuns: 60 },
  );
});

it("no subset of the parts of a bad record passes", () => {
  fc.assert(
    fc.property(fc.constantFrom(...faults), fc.subarray([...needed]), ([path, value], parts) => {
      const bad = put(complete, path, value);
      const left = parts.reduce<unknown>((record, part) => put(record, part, undefined), bad);
      expect(assess(left).outcome).not.toBe("pass");
    }),
    { numRuns: 60 },
  );
});

it("no waiver turns a bad record, whole or in part, into a good one", () => {
  const reasons = {
    "line-run": "factory-line-set",
    joints: "existing-lines",
    "room-limit": "no-enclosed-room",
    drain: "heats-only",
  } as const;
  const step = fc.constantFrom("line-run", "joints", "room-limit", "drain");
  const word = { by: "N. N.", at: "2026-05-04" };
  fc.assert(
    fc.property(
      fc.constantFrom(...faults),
      fc.subarray([...needed]),
      fc.array(step, { minLength: 1, maxLength: 4 }),
      ([path, value], parts, steps) => {
        const left = parts
          .filter(([part]) => part !== path[0] && part !== "equipment")
          .reduce<unknown>(
            (record, part) => put(record, part, undefined),
            put(complete, path, value),
          );
        const declared = put(
          left,
          ["waivers"],
          steps.map((one) => ({ ...word, step: one, reason: reasons[one] })),
        );
        expect(assess(declared).outcome).toBe(
          assess(left).outcome === "fail" ? "fail" : "inconclusive",
        );
      },
    ),
    { numRuns: 60 },
  );
});

it("the same record gives the same answer twice and is left as it was", () => {
  fc.assert(
    fc.property(fc.subarray([...needed]), (parts) => {
      const record = parts.reduce<unknown>((left, part) => put(left, part, undefined), complete);
      const text = textOf(record);
      expect(textOf(assess(record))).toBe(textOf(assess(record)));
      expect(textOf(record)).toBe(text);
    }),
    { numRuns: 20 },
  );
});

it("any chain of amendments can be walked back to the first record", () => {
  const change = fc.constantFrom<readonly [string, unknown]>(
    ["runs[0].tubing.length", ft(40)],
    ["runs[0].tubing.length", undefined],
    ["runs[0].joints[0]", undefined],
    ["runs[0].joints[0].torque", ftLb(12)],
    ["runs[0].joints", undefined],
    ["evacuations[0].readings[0].pressure", micron(300)],
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
