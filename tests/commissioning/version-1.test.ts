// Where each part of version 1 stands in version 2, written by hand from the two formats; live quantities stay alive.
import { fromVersion1 } from "hvac-install-math/commissioning";
import { ft } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const who = { by: "N. N.", at: "2026-05-05", reason: "measured again" };

it("has one run of what was one line set, and lists of what there was one of", () => {
  const parts = {
    tubing: { length: ft(38) },
    joints: [{ name: "a" }],
    drain: { waterRanOff: true },
    room: { place: "wall", edition: "2018" },
  };
  const old = {
    version: 1,
    ...parts,
    equipment: { refrigerant: "R-32", indoorUnits: [{ model: "invented" }] },
    pressureTest: { at: "2026-05-04" },
    evacuation: { at: "2026-05-05" },
    power: { voltage: 230, circuit: { rules: "iec-60364" } },
    notApplicable: [{ step: "drain", reason: "heats only" }],
    photos: [{ reference: "a.jpg", of: "joints[0]" }, { reference: "b.jpg" }],
  };
  const before = structuredClone({ ...old, tubing: undefined });
  expect(fromVersion1(old)).toEqual({
    version: 2,
    equipment: { refrigerant: "R-32" },
    runs: [
      {
        ...parts,
        indoorUnits: [{ model: "invented" }],
        room: { place: "wall", edition: "iec-60335-2-40-2018" },
      },
    ],
    pressureTests: [{ at: "2026-05-04" }],
    evacuations: [{ at: "2026-05-05" }],
    power: { voltage: 230, circuits: [{ rules: "iec-60364" }] },
    waivers: [{ step: "drain", note: "heats only" }],
    photos: [{ reference: "a.jpg", of: "runs[0].joints[0]" }, { reference: "b.jpg" }],
  });
  expect({ ...old, tubing: undefined }).toEqual(before);
});

it("has nothing of what version 1 had nothing", () => {
  expect(fromVersion1({ version: 1 })).toEqual({ version: 2 });
  expect(fromVersion1({ version: 1, name: "a" })).toEqual({ version: 2, name: "a" });
});

describe("its history", () => {
  it("names what changed where it is now", () => {
    const old = {
      version: 1,
      tubing: { length: ft(38), bends: 3 },
      history: [
        { path: "tubing.length", previous: ft(36), ...who },
        { path: "tubing.bends", ...who },
      ],
    };
    expect(fromVersion1(old).history).toEqual([
      { path: "runs[0].tubing.length", previous: ft(36), ...who },
      { path: "runs[0].tubing.bends", ...who },
    ]);
  });

  it("adds the run as a whole where nothing of it was there", () => {
    const old = { version: 1, tubing: { bends: 3 }, history: [{ path: "tubing", ...who }] };
    expect(fromVersion1(old).history).toEqual([{ path: "runs", ...who }]);
  });
});
