// How is a leak found that a hold has proven? The search that shows one of its size.
// Bubbles: a sphere of 1 mm at the air's pressure holds π/6 · 1 mm³ · 101 325 Pa = 5.3e-5 Pa·m³. Under 300 psig of
// nitrogen a small leak passes at least 20 times what one atmosphere drives (ratio of the pressures, molecular flow).
import { describe, expect, it } from "vitest";
import { second } from "../../src/quantity/index.ts";
import { findLeak } from "../../src/vacuum-decay/find-leak.ts";

describe("a leak of", () => {
  // Who watches a slow leak for ten seconds leaves the site with it.
  it.each([
    ["1e-5 Pa·m³/s, which makes four bubbles a second", 1e-5, 10, 30, false],
    ["1e-6 Pa·m³/s, which makes one in three seconds", 1e-6, 60, 120, true],
  ] as const)("%s", (_, throughput, least, most, tracer) => {
    expect(findLeak(throughput)).toEqual([
      {
        code: "vacuum-decay.find-with-bubbles",
        values: { least: second(least), most: second(most) },
      },
      ...(tracer ? [{ code: "vacuum-decay.find-with-tracer", values: {} }] : []),
      { code: "vacuum-decay.repair-leak", values: {} },
    ]);
  });
});
