// Figures that cannot be: the slips of the catalogue whose answer is a doubt of the record, each with its unslipped twin.
// The whole catalogue is a study; see tests/studies/slips.
import { expect, it } from "vitest";
import { slips } from "../studies/slips/all.ts";
import { judgeAll } from "../studies/slips/score.ts";

/** The slip, and what has to be said of it. */
const doubts: Readonly<Record<string, string>> = {
  "line-set/vessels-ml-for-l": "commissioning.volume-odd",
  "line-set/vessels-l-for-ml": "commissioning.volume-odd",
  "line-set/limit-of-lift-m-for-ft": "commissioning.length-odd",
  "line-set/wall-left-out": "runs[0].tubing.liquid.wall",
  "charge/maximum-lb-for-oz": "commissioning.mass-odd",
  "charge/factory-lb-for-kg": "commissioning.factory-charge-odd",
  "charge/unused-port-left-out": "commissioning.weighed-outside",
  "pressure-test/marked-times-ten": "commissioning.pressure-odd",
  "pressure-test/manual-kpa-for-psi": "commissioning.pressure-odd",
  "pressure-test/accuracy-bar-for-psi": "commissioning.instrument-coarse",
  "vacuum-decay/ambient-f-for-c": "commissioning.temperatures-apart",
  "vacuum-decay/one-digit": "vacuum-decay.readings-excluded",
  "circuit-protection/rated-as-ampacity-alone": "commissioning.rated-as-ampacity",
  "condensate/gap-times-ten": "commissioning.drain-steep",
  "condensate/run-in-for-ft": "condensate.steep",
  "operating-check/outdoor-f-as-c": "commissioning.temperature-odd",
  "record/longest-run-times-ten": "commissioning.length-odd",
  "record/level-too-short": "commissioning.length-odd",
  "record/cable-mm-for-m": "commissioning.length-odd",
  "record/hold-days-for-hours": "commissioning.begun-before-work",
  "record/outdoor-circuit-left-out": "power.circuits[1]",
};

const judged = judgeAll(slips.filter(({ id }) => id in doubts));

it.each(judged.map((one) => [one.slip.id, one] as const))("%s is asked about", (id, one) => {
  expect(one.twin.outcome).toBe("pass");
  expect(one.shown).toBe(one.slip.answer);
  expect([...one.answer.because, ...one.answer.findings]).toContain(doubts[id]);
});

it("knows each of them", () => {
  expect(judged.map(({ slip }) => slip.id).sort()).toEqual(Object.keys(doubts).sort());
});
