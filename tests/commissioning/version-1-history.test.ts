// The history of a record of version 1 in version 2: each change where its part is now, and leading back to the state that
// it changed. What a part is called in each version is written by hand from the two formats.
import {
  checkRecord,
  fromVersion1,
  type InstallationRecord,
  recordRevision,
} from "hvac-install-math/commissioning";
import { ampere, ft, hour, m2, newtonMeter } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const who = { by: "N. N.", at: "2026-05-05", reason: "measured again" };

const parts = {
  name: "now",
  equipment: {
    refrigerant: "R-32",
    indoorUnits: [{ model: "now" }],
    manual: { testHold: hour(24) },
  },
  tubing: { length: ft(38), bends: 3 },
  joints: [{ name: "a", torque: newtonMeter(16) }, { name: "b" }],
  drain: { waterRanOff: true },
  room: { floorArea: m2(20), edition: "2018" },
  pressureTest: { at: "2026-05-04" },
  evacuation: { policy: "splitManualB" },
  power: { phases: 1, circuit: { rules: "iec-60364" } },
  notApplicable: [{ step: "drain", reason: "now", by: "N. N.", at: "2026-05-04" }],
  photos: [
    { reference: "a.jpg", of: "joints[0]" },
    { reference: "b.jpg", of: "tubing" },
  ],
};
type Parts = Record<string, unknown>;

/** The parts as they were before: with another value at a path, or without it. */
function earlier(path: string, value: unknown): Parts {
  const copy = copyOf(parts) as Parts;
  const keys = path.match(/\w+/g) ?? [];
  const last = keys.pop() as string;
  let at = copy;
  for (const key of keys) at = at[key] as Parts;
  if (value !== undefined) at[last] = value;
  else if (Array.isArray(at)) at.splice(Number(last), 1);
  else delete at[last];
  return copy;
}

/** Quantities stay alive; parts and lists are copied. */
function copyOf(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(copyOf);
  if (typeof value !== "object" || value === null || "si" in value) return value;
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, copyOf(v)]));
}

const raised = (...entries: object[]) =>
  fromVersion1({ version: 1, ...parts, history: entries.map((entry) => ({ ...entry, ...who })) });
const first = (record: unknown) =>
  recordRevision(checkRecord(record), 0) satisfies InstallationRecord;

describe("a changed field", () => {
  it.each<[path: string, previous: unknown, now: string, was?: unknown]>([
    ["name", "before", "name"],
    ["equipment.refrigerant", "R-410A", "equipment.refrigerant"],
    ["equipment.manual.testHold", hour(12), "equipment.manual.testHold"],
    ["equipment.indoorUnits[0].model", "before", "runs[0].indoorUnits[0].model"],
    ["tubing.length", ft(36), "runs[0].tubing.length"],
    ["joints[0].torque", newtonMeter(5), "runs[0].joints[0].torque"],
    ["drain.waterRanOff", false, "runs[0].drain.waterRanOff"],
    ["room.floorArea", m2(30), "runs[0].room.floorArea"],
    ["room.edition", "before-2018", "runs[0].room.edition", "iec-60335-2-40-2013"],
    ["pressureTest.at", "2026-05-03", "pressureTests[0].at"],
    ["evacuation.policy", "splitManualA", "evacuations[0].policy"],
    ["power.phases", 3, "power.phases"],
    ["power.circuit.rules", "nfpa-70-2023", "power.circuits[0].rules"],
    ["notApplicable[0].reason", "before", "waivers[0].note"],
    ["notApplicable[0].by", "M. M.", "waivers[0].by"],
    ["photos[1].of", "joints[1]", "photos[1].of", "runs[0].joints[1]"],
    ["photos[0].reference", "c.jpg", "photos[0].reference"],
  ])("%s keeps its earlier value and is %s", (path, previous, now, was = previous) => {
    const record = raised({ path, previous });
    expect(record.history).toEqual([{ path: now, previous: was, ...who }]);
    expect(first(record)).toEqual(
      checkRecord(fromVersion1({ version: 1, ...earlier(path, previous) })),
    );
  });
});

describe("a field or part that was added", () => {
  it.each([
    ["tubing.bends", "runs[0].tubing.bends"],
    ["tubing", "runs[0].tubing"],
    ["drain", "runs[0].drain"],
    ["equipment.indoorUnits", "runs[0].indoorUnits"],
    ["pressureTest", "pressureTests"],
    ["evacuation", "evacuations"],
    ["power.circuit", "power.circuits"],
    ["power", "power"],
    ["notApplicable", "waivers"],
    ["photos", "photos"],
    ["name", "name"],
  ])("%s is taken back: %s", (path, now) => {
    const record = raised({ path });
    expect(record.history).toEqual([{ path: now, ...who }]);
    expect(first(record)).toEqual(
      checkRecord(fromVersion1({ version: 1, ...earlier(path, undefined) })),
    );
  });

  it.each(["joints[1]", "photos[1]", "notApplicable[0]"])("%s: the list was shorter", (path) => {
    const record = raised({ path });
    expect(first(record)).toEqual(
      checkRecord(fromVersion1({ version: 1, ...earlier(path, undefined) })),
    );
  });
});

describe("an item that was taken out", () => {
  it.each([
    ["joints[1]", "runs[0].joints"],
    ["photos[1]", "photos"],
    ["notApplicable[0]", "waivers"],
  ])("%s stands in the list that the history keeps", (path, list) => {
    const [key = "", at = 0] = path.match(/\w+/g) ?? [];
    const previous = (parts as unknown as Record<string, unknown[]>)[key]?.[Number(at)];
    const history = [{ path, previous, ...who }];
    const record = fromVersion1({ version: 1, ...earlier(path, undefined), history });
    expect((record.history as { path: string }[])[0]?.path).toBe(list);
    expect(first(record)).toEqual(checkRecord(fromVersion1({ version: 1, ...parts })));
  });
});

it("several changes lead back one by one, the oldest last", () => {
  const history = [
    { path: "tubing.length", previous: ft(30), ...who },
    { path: "tubing.length", previous: ft(34), ...who },
    { path: "power.circuit.rules", previous: "nfpa-70-2023", ...who },
  ];
  const record = checkRecord(fromVersion1({ version: 1, ...parts, history }));
  const lengths = [0, 1, 2, 3].map((i) => recordRevision(record, i).runs?.[0]?.tubing?.length);
  expect(lengths.map(String)).toEqual(["30 ft", "34 ft", "38 ft", "38 ft"]);
  const rules = [0, 2, 3].map((i) => recordRevision(record, i).power?.circuits?.[0]?.rules);
  expect(rules).toEqual(["nfpa-70-2023", "nfpa-70-2023", "iec-60364"]);
});

it("each change is named by what it changed, whatever changed after it", () => {
  const earlier = { reference: "c.jpg" };
  const history = [
    { path: "photos[1]", previous: earlier, ...who },
    { path: "name", previous: "before", ...who },
  ];
  const record = raised(...history);
  expect(record.history).toEqual(history);
  expect(first(record).photos?.[1]).toEqual(earlier);
});

it("a list that an item was taken from is kept as it was then, whatever was changed before and after", () => {
  const riser = { name: "riser" };
  const record = raised(
    { path: "joints[0].torque", previous: newtonMeter(5) },
    { path: "joints[2]", previous: riser },
    { path: "joints[0].name", previous: "A" },
  );
  const list = "runs[0].joints";
  expect(record.history).toEqual([
    { path: `${list}[0].torque`, previous: newtonMeter(5), ...who },
    {
      path: list,
      previous: [{ name: "A", torque: newtonMeter(16) }, { name: "b" }, riser],
      ...who,
    },
    { path: `${list}[0].name`, previous: "A", ...who },
  ]);
});

it("a part that was nothing becomes what it was before its fields were taken out", () => {
  const history = [{ path: "tubing.length", previous: ft(30), ...who }];
  const record = fromVersion1({ version: 1, tubing: null, history });
  expect(record.history).toEqual([{ path: "runs[0].tubing.length", previous: ft(30), ...who }]);
});

it("a part of which the history says that it was a list becomes one", () => {
  const history = [{ path: "joints[0]", previous: { name: "a" }, ...who }];
  const record = fromVersion1({ version: 1, joints: {}, history });
  expect(record.history).toEqual([{ path: "runs[0].joints", previous: [{ name: "a" }], ...who }]);
});

it("what is no list of changes, no list of waivers or no part is left for the check of the record to refuse", () => {
  expect(fromVersion1({ version: 1, history: "none" }).history).toBe("none");
  expect(fromVersion1({ version: 1, notApplicable: 3 }).waivers).toBe(3);
  expect(fromVersion1({ version: 1, photos: "a.jpg" }).photos).toBe("a.jpg");
  expect(fromVersion1({ version: 1, notApplicable: [7, null] }).waivers).toEqual([7, null]);
  expect(fromVersion1({ version: 1, photos: [7, null] }).photos).toEqual([7, null]);
  const current = ampere(3);
  expect(fromVersion1({ version: 1, room: current }).runs).toEqual([{ room: current }]);
  for (const none of ["none", 7, null, [], current]) {
    const { equipment, power } = fromVersion1({ version: 1, equipment: none, power: none });
    expect([equipment, power]).toEqual([none, none]);
  }
});
