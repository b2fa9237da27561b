// The line sets of a plan and the cables with them, each line whole: the shortest stock that will do, two sets, or a roll
// (common practice, no source). Every record is invented.
import type { Equipment, InstallationRecord, Planned, Run } from "hvac-install-math/commissioning";
import { ft, inch } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { partOf } from "./part.ts";

const tube = (size: number) => ({ outsideDiameter: inch(size), wall: inch(0.032) });
const small = { liquid: tube(0.25), vapor: tube(0.375) };
const stock = [ft(16), ft(25), ft(50)];

interface Given {
  readonly tubes?: Run["tubing"];
  readonly equipment?: Equipment;
  readonly plan?: Planned;
}
const lines = (way: number, { tubes = small, equipment = {}, plan = { stock } }: Given = {}) => {
  const record: InstallationRecord = {
    version: 2,
    equipment,
    runs: [{ tubing: { ...tubes, way: ft(way) } }],
    plan,
  };
  const { bring, check, ask } = partOf("lines", record);
  return { bring, check, ask: ask.filter((one) => one.includes("unusable")) };
};
const from = "[common-practice + manufacturer-manuals]";
const set = (needed: number, liquid = 0.25, vapor = 0.375) =>
  `runs[0]: line-set, liquid ${liquid} in, needed ${needed} ft, run 1, stock 25 ft, vapor ${vapor} in ${from}`;
const two = (needed: number, first: number, second: number) =>
  `runs[0]: two-sets, first ${first} ft, joints 4, needed ${needed} ft, run 1, second ${second} ft ${from}`;

describe("a line set", () => {
  it.each<[string, number, Given, ReturnType<typeof lines>]>([
    ["that fits leaves nothing", 25, {}, { bring: [set(25)], check: [], ask: [] }],
    [
      "is cut where it is longer",
      20,
      {},
      {
        bring: [set(20), `runs[0]: surplus-to-cut, surplus 5 ft ${from}`],
        check: [],
        ask: [],
      },
    ],
    [
      "that comes charged is coiled, and may be too long for the manual",
      20,
      {
        equipment: {
          construction: "quick-connect",
          manual: { run: { maximumLength: ft(22) } },
        },
      },
      {
        bring: [set(20), `runs[0]: coil-surplus, coiled 5 ft, installed 25 ft ${from}`],
        check: [
          `fail: runs[0]: above-maximum, figure figure.length, limit 22 ft, value 25 ft ${from}`,
        ],
        ask: [],
      },
    ],
    // 16 + 50 ft, 50 + 50 ft: just enough.
    [
      "is two in a row beyond the longest",
      66,
      {},
      { bring: [two(66, 16, 50)], check: [], ask: [] },
    ],
    ["is twice the longest", 100, {}, { bring: [two(100, 50, 50)], check: [], ask: [] }],
    // 16 + 50 = 66 ft is the shortest pair of at least 60 ft; 25 + 25 ft are too short, 25 + 50 ft longer.
    [
      "is the shortest pair in whatever order the stock is listed",
      60,
      { plan: { stock: [ft(50), ft(25), ft(16)] } },
      { bring: [two(60, 50, 16)], check: [], ask: [] },
    ],
    [
      "comes from a roll beyond two of the longest",
      101,
      {},
      { bring: [`runs[0]: roll, needed 101 ft, run 1 ${from}`], check: [], ask: [] },
    ],
    ...[
      [0.375, 0.25],
      [0.375, 0.375],
    ].map(([liquid = 0, vapor = 0]): [string, number, Given, ReturnType<typeof lines>] => [
      `whose liquid line of ${liquid} in is not smaller than ${vapor} in may be swapped`,
      25,
      { tubes: { liquid: tube(liquid), vapor: tube(vapor) } },
      {
        bring: [set(25, liquid, vapor)],
        check: [`inconclusive: lines-swapped, run 1 ${from}`],
        ask: [],
      },
    ]),
    [
      "cannot be of 6600 ft",
      6600,
      {},
      {
        bring: [],
        check: [],
        ask: ["runs[0].tubing.way: unusable, field field.runs.tubing.way, value 6600 ft"],
      },
    ],
    [
      "cannot be taken from a stock of 0 ft",
      20,
      { plan: { stock: [ft(16), ft(0)] } },
      {
        bring: [],
        check: [],
        ask: ["plan.stock: unusable, field field.plan.stock, value 0 ft"],
      },
    ],
  ])("%s", (_, way, given, expected) => {
    expect(lines(way, given)).toEqual(expected);
  });
});

describe("cables between the units", () => {
  const cables = (runs: readonly Run[], equipment: Equipment = {}) =>
    partOf("wall", {
      version: 2,
      equipment: { manual: { linkCable: "4 × 1.5 mm²" }, ...equipment },
      runs,
    });

  it("are one for each indoor unit, as the manual words them", () => {
    const two: Run[] = [{}, { serves: "branch-box" }, {}];
    const line = "link-cable, cable 4 × 1.5 mm², count 2 [manufacturer-manuals]";
    expect(cables(two).bring).toEqual([line]);
    const unread = cables(two, { manual: {} });
    expect(unread.bring).toEqual([]);
    expect(unread.ask).toContain(
      "equipment.manual.linkCable: ask, changes part.wall, field field.equipment.manual.linkCable",
    );
  });

  it("are none for a monobloc, and none to a branch box", () => {
    expect(cables([{}], { construction: "monobloc" }).bring).toEqual([]);
    const mono = cables([{}], { construction: "monobloc", manual: {} }).ask;
    expect(mono.join()).not.toContain("linkCable");
    expect(cables([{ serves: "branch-box" }]).bring).toEqual([]);
    expect(cables([{ serves: "branch-box" }], { manual: {} }).ask).toEqual([]);
  });
});
