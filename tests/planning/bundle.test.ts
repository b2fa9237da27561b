// The sleeve and the cover of a plan, each line whole. Four equal circles lie two by two: their square has two diameters,
// the circle around them 1 + √2 (plane geometry). Covers come in steps of 5 mm or 1/4 in (common practice, no source).
// Every record is invented.
import type { InstallationRecord, Planned, Run } from "hvac-install-math/commissioning";
import { inch, mm, type Quantity } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { partOf } from "./part.ts";

type Length = Quantity<"length">;

const tubesOf = (outsideDiameter: Length, wall: Length): Run["tubing"] => ({
  liquid: { outsideDiameter, wall },
  vapor: { outsideDiameter, wall },
});
const plan = (runs: readonly Run[], planned: Planned) => {
  const record: InstallationRecord = { version: 2, runs, plan: planned };
  const { bring, ask } = partOf("wall", record);
  return { bring, ask: ask.filter((one) => !one.includes("linkCable")) };
};
// 9.8 mm and 5 mm of insulation all around are 19.8 mm, as wide as drain and cable.
const metric = { insulation: mm(5), drainDiameter: mm(19.8), cableDiameter: mm(19.8) };
const narrow = tubesOf(mm(9.8), mm(0.8));
const practice = "[common-practice]";
const sleeve = (runs: string, diameter: string) =>
  `sleeve, diameter ${diameter}, runs ${runs} ${practice}`;
const cover = (runs: string, side: string) => `cover, runs ${runs}, side ${side} ${practice}`;

describe("the bundle of a run", () => {
  it.each<[string, Run["tubing"], Planned, string, string]>([
    // 19.8 mm · (1 + √2) = 47.80 mm; 2 · 19.8 mm = 39.6 mm
    ["in millimeters", narrow, metric, "47.8 mm", "40 mm"],
    [
      // 20.4 mm · (1 + √2) = 49.25 mm; 2 · 20.4 mm = 40.8 mm
      "a little wider, of which the cover is a step larger",
      tubesOf(mm(10.4), mm(0.8)),
      { insulation: mm(5), drainDiameter: mm(20.4), cableDiameter: mm(20.4) },
      "49.25 mm",
      "45 mm",
    ],
    [
      // 0.49 in and 1/4 in all around are 0.99 in: 0.99 · (1 + √2) = 2.390 in; 2 · 0.99 in = 1.98 in
      "in inches",
      tubesOf(inch(0.49), inch(0.03)),
      { insulation: inch(0.25), drainDiameter: inch(0.99), cableDiameter: inch(0.99) },
      "2.39 in",
      "2 in",
    ],
  ])("goes through a sleeve and into a cover: %s", (_, tubing, planned, diameter, side) => {
    expect(plan([{ tubing }], planned)).toEqual({
      bring: [sleeve("1", diameter), cover("1", side)],
      ask: [],
    });
  });

  it("is told once for runs of the same tubes, by name, and not for a branch box", () => {
    const wide = tubesOf(mm(10.4), mm(0.8));
    const runs: Run[] = [
      { name: "loft", tubing: narrow },
      { name: "box", tubing: wide, serves: "branch-box" },
      { name: "den", tubing: narrow },
      { name: "hall", tubing: wide },
    ];
    const { bring } = plan(runs, metric);
    expect(bring.slice(0, 2)).toEqual([
      sleeve("loft + den", "47.8 mm"),
      cover("loft + den", "40 mm"),
    ]);
    expect(bring.slice(2).map((one) => /runs (\w+)/.exec(one)?.[1])).toEqual(["hall", "hall"]);
  });

  it("asks for what it is made of", () => {
    const { drainDiameter: _, ...less } = metric;
    const { bring, ask } = plan([{ tubing: narrow }], less);
    expect(bring).toEqual([]);
    expect(ask).toEqual([
      "plan.drainDiameter: ask, changes part.wall, field field.plan.drainDiameter",
    ]);
  });
});
