// Sentences and actions that name the thing that is wrong: who draws the current, what is fitted, which day decided.
import {
  type CircuitInput,
  circuitFromNameplate,
  nec2023,
} from "hvac-install-math/circuit-protection";
import { ampere, volt } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { sentences } from "./fixtures.ts";

/** An invented unit: 9.4 A, 15 A at most. */
const circuit = (changes: Partial<CircuitInput<"awg">>) =>
  circuitFromNameplate({
    rules: nec2023,
    minimumCircuitAmpacity: ampere(9.4),
    maximumOvercurrentProtection: ampere(15),
    equipment: "motor-compressor",
    supply: { voltage: volt(240), phases: 1 },
    wiring: { material: "copper", insulation: "90 °C" },
    occupancy: "other",
    date: "2026-06-08",
    installed: {
      device: { kind: "breaker", rating: ampere(15), poles: 2 },
      conductor: "10 AWG",
      equipmentGrounding: "10 AWG",
    },
    ...changes,
  });

// NFPA 70 (2023), 440.33, and 210.19 for the 125 %: 9.4 A and 1.25 times 9 A; no device of at most 15 A carries both.
it("gives a unit that shares its circuit one of its own, and says that the loads draw the current", () => {
  const found = circuit({ sharedWith: [{ kind: "other", current: ampere(9) }] });
  expect(found.outcome).toBe("fail");
  expect(sentences(found.reasons)[0]).toMatch(/the loads on this circuit draw 16\.\d+ A/);
  expect(found.actions?.map(({ code }) => code)).toEqual(["circuit-protection.give-own-circuit"]);
});

// NFPA 70 (2023), 240.15(A): an overcurrent device in each ungrounded conductor.
it("puts a fuse in every line, and no breaker, on a plate that says fuse only", () => {
  const found = circuit({
    protectionMarking: "fuse only",
    installed: { device: { kind: "fuse", rating: ampere(15), poles: 1 }, conductor: "12 AWG" },
  });
  expect(sentences(found.actions ?? [])).toContain("Put a fuse in each of the 2 line conductors.");
  expect(sentences(found.actions ?? []).join()).not.toContain("breaker");
});

// NFPA 70 (2023), 210.8(F), exception 2, ends on 2026-09-01; which day counts is for permit and adopted text to say.
it("says which day decided that ground-fault protection is not yet due", () => {
  const found = circuit({ occupancy: "dwelling", date: "2026-08-30" });
  const said = found.cautions.find(({ code }) => code === "circuit-protection.ground-fault-exempt");
  expect(sentences([said] as never)[0]).toMatch(
    /from 2026-09-01 on\. The circuit is dated 2026-08-30/,
  );
});

// UL 1995, 37.14: 1.25 times the largest motor and the rest; 1.25 × 7.2 A + 0.4 A = 9.4 A, so that all draw 7.6 A.
it("says that the rated load is the sum where the compressor's alone was given", () => {
  const found = circuit({ ratedLoadCurrent: ampere(7.2) });
  const said = found.cautions.find(({ code }) => code === "circuit-protection.rated-load-low");
  expect(sentences([said] as never)[0]).toContain("the sum of compressor and fans");
});
