// The joints of a plan, each line whole: two lines with two ends each (common practice, no source). Torques of nuts are what
// all published windows share: 14.2 to 17.2 N·m for 1/4 in, 34 to 39.9 for 3/8 in, 50 to 60.3 for 1/2 in by JIS-type
// manuals, EN 378-2 and a manual's range; across flats 17, 22 and 26 mm with R-32 by manuals. Every record is invented.
import type { Equipment, InstallationRecord, Run } from "hvac-install-math/commissioning";
import { ft, inch, newtonMeter } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { partOf } from "./part.ts";

const tube = (size: number) => ({ outsideDiameter: inch(size), wall: inch(0.032) });
const small = { liquid: tube(0.25), vapor: tube(0.375) };
const wide = { liquid: tube(0.25), vapor: tube(0.5) };
const ports = { ports: { liquid: "1/4", vapor: "3/8" } } as const;

const record = (runs: readonly Run[], equipment: Equipment = {}): InstallationRecord => ({
  version: 2,
  equipment: { refrigerant: "R-32", ...equipment },
  runs,
});
const joints = (runs: readonly Run[], equipment?: Equipment) =>
  partOf("joints", record(runs, equipment));

const practice = "[common-practice]";
const published =
  "[manufacturer-manuals flare nut torque, JIS-type + en-378-2 flare nut torque, from memory + manufacturer-manuals flare nut torque, range]";
const quarter = (count: number) =>
  `nut, count ${count}, high 17.2 N·m, low 14.2 N·m, tube 1/4 ${published}`;
const threeEighths = (count: number) =>
  `nut, count ${count}, high 39.9 N·m, low 34 N·m, tube 3/8 ${published}`;
const half = (count: number) =>
  `nut, count ${count}, high 60.3 N·m, low 50 N·m, tube 1/2 ${published}`;
const wrenches = (...flats: string[]) =>
  `wrenches, flats ${flats.join(" + ")} [manufacturer-manuals]`;
const count = (kind: string, all: number) => `${kind}, count ${all} ${practice}`;
const adapter = (at: number, end: string) =>
  `runs[${at - 1}]: adapter, end end.${end}, line line.vapor, port 3/8, run ${at}, tube 1/2 ${practice}`;

const asked = (path: string, runs = "") =>
  `${path}: ask${runs && "-of-runs"}, changes part.joints, field field.${path.replace(/\[\d\]/g, "")}${runs && `, runs ${runs}`}`;
const askOutdoor = asked("equipment.outdoorUnit.ports");
const askIndoor = (runs: string) => asked("runs[0].indoorUnits[0].ports", runs);
const askTorque = asked("runs[0].joints[0].torqueWindow", "1");
const sizes = ["liquid", "vapor"].map(
  (line) =>
    `runs[0].tubing.${line}.outsideDiameter: ask-of-runs, changes part.lines + part.joints + part.wall + part.pressure-test, field field.runs.tubing.${line}.outsideDiameter, runs 1`,
);

describe("the joints of one run", () => {
  it("are four flares, with their nuts and wrenches", () => {
    expect(joints([{ tubing: small }])).toEqual({
      bring: [count("flares", 4), quarter(2), threeEighths(2), wrenches("17 mm", "22 mm")],
      set: [],
      check: [],
      ask: [askOutdoor, askIndoor("1"), askTorque],
    });
  });

  it("are couplings or brazed where the record says so, without nuts", () => {
    const coupled = { bring: [count("couplings", 4)], set: [], check: [], ask: [] };
    expect(joints([{ tubing: small }], { construction: "quick-connect" })).toEqual(coupled);
    expect(joints([{ tubing: small, joints: [{ kind: "coupling" }] }])).toEqual(coupled);
    expect(joints([{ tubing: small, joints: [{ kind: "brazed" }] }])).toEqual({
      ...coupled,
      bring: [count("brazed", 4)],
      ask: [askOutdoor, askIndoor("1")],
    });
  });

  it("are none where everything stays outdoors", () => {
    const none = { bring: [], set: [], check: [], ask: [] };
    expect(joints([{ tubing: small }], { construction: "monobloc" })).toEqual(none);
  });

  it("wait for the tubes", () => {
    expect(partOf("joints", { version: 2 })).toEqual({ bring: [], set: [], check: [], ask: sizes });
    const { bring, ask } = joints([{ tubing: { length: ft(20) } }], { refrigerant: undefined });
    expect(bring).toEqual([count("flares", 4)]);
    expect(ask).toEqual([...sizes, askOutdoor, askIndoor("1")]);
  });

  it("say wrenches in order of size, of published nuts and the tubes that take one", () => {
    const turned = { liquid: tube(0.5), vapor: tube(0.25) };
    expect(joints([{ tubing: turned }]).bring).toEqual([
      count("flares", 4),
      half(2),
      quarter(2),
      wrenches("17 mm", "26 mm"),
    ]);
    // 7/8 in is brazed: no flare nut is made for it.
    expect(joints([{ tubing: { liquid: tube(0.375), vapor: tube(0.875) } }]).bring).toEqual([
      count("flares", 4),
      threeEighths(2),
      wrenches("22 mm"),
    ]);
  });

  it("say no wrench without a published nut, and ask for the refrigerant that decides it", () => {
    const plain = [count("flares", 4), quarter(2), threeEighths(2)];
    expect(joints([{ tubing: small }], { refrigerant: "R-290" }).bring).toEqual(plain);
    const { bring, ask } = joints([{ tubing: small }], { refrigerant: undefined });
    expect(bring).toEqual(plain);
    expect(ask.slice(3)).toEqual([
      "equipment.refrigerant: ask, changes part.joints + part.pressure-test + part.charge + part.room + part.operation, field field.equipment.refrigerant",
    ]);
  });

  it("take the manual's torque before what is published", () => {
    const stated = { kind: "flare", torqueWindow: { low: newtonMeter(15), high: newtonMeter(17) } };
    const manual = "nut, count 2, high 17 N·m, low 15 N·m, tube 1/4 [manufacturer-manuals]";
    const liquid = { ...stated, line: "liquid" } as const;
    const vapor = {
      line: "vapor",
      torqueWindow: { low: newtonMeter(35), high: newtonMeter(40) },
    } as const;
    const both = joints([{ tubing: small, joints: [liquid, vapor] } as Run]);
    expect(both.bring.slice(1, 3)).toEqual([
      manual,
      "nut, count 2, high 40 N·m, low 35 N·m, tube 3/8 [manufacturer-manuals]",
    ]);
    expect(both.ask).toEqual([askOutdoor, askIndoor("1")]);
    const one = joints([{ tubing: small, joints: [{ ...stated, tube: "1/4" }] } as Run]);
    expect(one.bring.slice(1, 3)).toEqual([manual, threeEighths(2)]);
    expect(one.ask[2]).toContain("torqueWindow");
  });
});

describe("the count of joints", () => {
  // Two adapters on four joints.
  it("has one more for each adapter, at the ends whose ports are smaller", () => {
    expect(joints([{ tubing: wide, indoorUnits: [ports] }], { outdoorUnit: ports })).toEqual({
      bring: [
        count("flares", 4),
        adapter(1, "indoor"),
        adapter(1, "outdoor"),
        count("joints", 6),
        quarter(2),
        half(2),
        wrenches("17 mm", "26 mm"),
      ],
      set: [],
      check: [],
      ask: [askTorque],
    });
  });

  // 6 as counted and 4, as no run has fewer than 4.
  it("is what the record counts, where that is more", () => {
    const counted = (jointCount: number): Run => ({ tubing: { ...small, jointCount } });
    expect(joints([counted(6)]).bring[1]).toBe(count("joints", 6));
    expect(joints([counted(6), counted(2)]).bring[1]).toBe(count("joints", 10));
  });

  // 4 brazed, 4 flared, 1 adapter; 2 caps on each of the 4 − 2 pairs of ports that stay unused.
  it("adds up the kinds of several runs, with caps on unused ports", () => {
    const runs: Run[] = [
      { tubing: small, joints: [{ kind: "brazed" }] },
      { tubing: wide, indoorUnits: [ports] },
    ];
    const { bring, ask } = joints(runs, {
      portPairs: 4,
      outdoorUnit: { ports: { liquid: "1/4" } },
    });
    expect(bring).toEqual([
      count("flares", 4),
      count("brazed", 4),
      adapter(2, "indoor"),
      count("caps", 4),
      count("joints", 9),
      quarter(2),
      half(2),
      wrenches("17 mm", "26 mm"),
    ]);
    expect(ask.slice(0, 2)).toEqual([asked("equipment.outdoorUnit.ports.vapor"), askIndoor("1")]);
  });

  it("needs no cap where all ports are used, and asks how many there are", () => {
    const two = [{ tubing: small }, { tubing: small }];
    const lines = [
      count("flares", 8),
      count("joints", 8),
      quarter(4),
      threeEighths(4),
      wrenches("17 mm", "22 mm"),
    ];
    const full = joints(two, { portPairs: 2 });
    expect(full).toEqual({
      bring: lines,
      set: [],
      check: [],
      ask: [askOutdoor, askIndoor("1 + 2"), askTorque],
    });
    expect(joints(two)).toEqual({
      ...full,
      ask: [
        "equipment.portPairs: ask, changes part.joints + part.charge, field field.equipment.portPairs",
        ...full.ask,
      ],
    });
  });

  it("leaves the ports of a branch box to its own manual", () => {
    const box: Run[] = [
      { serves: "branch-box", tubing: wide },
      { tubing: small, indoorUnits: [ports] },
    ];
    const boxed = joints(box, { portPairs: 4, outdoorUnit: ports });
    expect(boxed.bring).toEqual([
      count("flares", 8),
      adapter(1, "outdoor"),
      count("joints", 9),
      quarter(4),
      half(2),
      threeEighths(2),
      wrenches("17 mm", "22 mm", "26 mm"),
    ]);
    expect(boxed.ask).toEqual([askTorque]);
    // The ports of the outdoor unit are those of the run to the box: nothing is compared with the run behind it.
    const behind = {
      portPairs: 4,
      outdoorUnit: { ports: { liquid: "3/8", vapor: "1/2" } },
    } as const;
    const adapters = joints(box, behind).bring.filter((one) => one.includes("adapter"));
    expect(adapters).toEqual([
      `runs[0]: adapter, end end.outdoor, line line.liquid, port 3/8, run 1, tube 1/4 ${practice}`,
    ]);
    expect(joints(box, { portPairs: 4 }).ask).toEqual([askOutdoor, askTorque]);
    const coupled: Run[] = [{ ...box[0], joints: [{ kind: "coupling" }] }, box[1] as Run];
    expect(joints(coupled, { portPairs: 4 }).ask).not.toContain(askOutdoor);
  });
});
