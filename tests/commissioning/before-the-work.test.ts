// What a record says before anything was measured: whether a length is that of a set off the shelf, and what waits.
import {
  hasNominalLength,
  holdsAhead,
  type InstallationRecord,
} from "hvac-install-math/commissioning";
import { describe, expect, it } from "vitest";
import { argumentOf } from "../argument-of.ts";

// Pre-charged lines come in fixed lengths, others are cut: common practice, no source.
describe("a nominal length", () => {
  const record = (
    construction: "split" | "quick-connect" | undefined,
    lengthIs?: "nominal" | "measured",
  ): InstallationRecord => ({
    version: 2,
    equipment: { construction },
    runs: [{}, { tubing: { lengthIs } }],
  });

  it.each([
    [undefined, undefined, false],
    ["split", undefined, false],
    ["quick-connect", undefined, true],
    ["quick-connect", "measured", false],
    ["split", "nominal", true],
    ["split", "measured", false],
  ] as const)(
    "with construction %s and a length said to be %s: %s",
    (construction, is, nominal) => {
      expect(hasNominalLength(record(construction, is), 1)).toBe(nominal);
    },
  );

  it("is that of a run which the record has", () => {
    expect(hasNominalLength(record("quick-connect", "measured"), 0)).toBe(true);
    for (const run of [2, -1, 0.5]) {
      expect(argumentOf(() => hasNominalLength(record("split"), run))).toBe("run");
    }
    expect(argumentOf(() => hasNominalLength({ version: 2 }, 0))).toBe("run");
  });
});

// Refrigerant waits for tightness, dryness and room, power for circuit and supply; lines that hold refrigerant from the
// factory have neither test, and a monobloc has no valves: the order of the work in manuals.
it("names what waits, and for what, by how the refrigerant circuit is closed", () => {
  const named = (construction: "split" | "quick-connect" | "monobloc") =>
    holdsAhead(construction).map(({ values }) => {
      const { hold, steps } = values as { hold: string; steps: readonly string[] };
      const short = (word: string) => word.split(".").at(-1);
      return `${short(hold)}: ${steps.map(short).join(" ")}`;
    });
  const power = "power-on: circuit supply";
  expect(named("split")).toEqual([
    "add-charge: pressure-test evacuation room-limit",
    "open-valves: pressure-test evacuation room-limit",
    power,
  ]);
  expect(named("quick-connect")).toEqual(["open-valves: room-limit", power]);
  expect(named("monobloc")).toEqual([power]);
  expect(argumentOf(() => holdsAhead("none" as never))).toBe("construction");
});
