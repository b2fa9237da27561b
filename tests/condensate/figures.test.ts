// What the functions beside the verdicts answer, whole: each figure by plain arithmetic.
import {
  condensateRuleOfThumb,
  condensateTrap,
  slopeOf,
  usualDrainSlope,
} from "hvac-install-math/condensate";
import {
  degreeAngle,
  inch,
  inchWater,
  percent,
  tonRefrigeration,
} from "hvac-install-math/quantity";
import { describe, expect, test } from "vitest";
import { said, shown } from "../told.ts";

// Manufacturers' published manuals: draw-through H = pressure + 1 in, half of it seal; blow-through the pressure and a margin.
describe("a trap", () => {
  const trap = (pressure: number, margin?: number) =>
    condensateTrap({
      staticPressure: inchWater(pressure),
      ...(margin !== undefined && { margin: inch(margin) }),
    });

  test.each([
    [-1.5, undefined, "draw-through", ["2.5 in", "1.25 in", "3.75 in"]],
    [0.5, undefined, "blow-through", ["0 in", "1.5 in", "1.5 in"]],
    [0.5, 2, "blow-through", ["0 in", "2.5 in", "2.5 in"]],
    [0, undefined, "none", ["0 in", "0 in", "0 in"]],
  ] as const)("at %f in of water", (pressure, margin, kind, figures) => {
    const { outletDrop, seal, height, ...found } = trap(pressure, margin);
    expect(found.kind).toBe(kind);
    expect([outletDrop, seal, height].map(shown)).toEqual(figures);
  });

  test("has its cautions and sources", () => {
    const { cautions, citations } = trap(-1);
    expect(cautions.map(said)).toEqual([
      "dry-trap",
      "safety.line-voltage",
      "safety.work-at-height",
      "safety.others-govern",
    ]);
    expect(citations).toEqual([
      { source: "manufacturer-manuals", clause: "condensate trap" },
      { source: "common-practice", clause: "" },
    ]);
  });
});

// Common practice, no source: 0.3 to 0.8 gal/h per ton, 1/4 in per foot.
describe("rules of thumb", () => {
  test("give 0.6 to 1.6 gal/h for 2 tons", () => {
    const { low, high } = condensateRuleOfThumb(tonRefrigeration(2));
    expect([low, high].map(shown)).toEqual(["0.6 gal/h", "1.6 gal/h"]);
  });

  test("aim at a slope of 1/4 in over 12 in", () => {
    expect(usualDrainSlope.si).toBeCloseTo(0.25 / 12, 12);
  });
});

test("an angle's limits of error widen with the tangent", () => {
  const tan = (degrees: number) => Math.tan((degrees * Math.PI) / 180);
  for (const angle of [0, 10, 30, 40]) {
    const reading = { angle: degreeAngle(angle), accuracy: degreeAngle(0.1) };
    // Half of what the slope moves by from 0.1° less to 0.1° more, over √3 (JCGM 100:2008, 4.3.7).
    const limits = (tan(angle + 0.1) - tan(angle - 0.1)) / 2;
    const { value, standardUncertainty } = slopeOf(reading);
    expect(standardUncertainty.si / (limits / Math.sqrt(3))).toBeCloseTo(1, 4);
    expect(value.in(percent)).toBeCloseTo(100 * tan(angle), 9);
  }
});
