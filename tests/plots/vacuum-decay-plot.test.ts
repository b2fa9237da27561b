import { vacuumDecayPlot } from "hvac-install-math/plots";
import { hour, micron, pascalAbsolute, psig, second, torr } from "hvac-install-math/quantity";
import {
  acceptancePolicies,
  assessVacuumDecay,
  type VacuumDecayInput,
} from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";
import { decayLog, decays } from "./samples.ts";

const draw = (test: VacuumDecayInput, options = {}) =>
  vacuumDecayPlot(test, assessVacuumDecay(test), options);
const { leak, moisture, tight, early, stages } = decays as Record<string, VacuumDecayInput> & {
  leak: VacuumDecayInput;
};

describe("the picture says what the course means:", () => {
  it.each([
    [leak, "fail</tspan>: straight up, a leak, 50 micron/min"],
    [moisture, "fail</tspan>: levels off, moisture; a leak is not excluded"],
    [tight, "pass</tspan>: flat, dry and tight"],
    [early, "inconclusive</tspan>: straight up, a leak"],
  ])("%#", (test, words) => {
    expect(draw(test as VacuumDecayInput)).toContain(words);
  });
});

describe("the levels", () => {
  it("are those of the policy, with the time of each", () => {
    const svg = draw(leak);
    for (const words of [
      "limit 700 micron at 15 min",
      "fails from 800 micron",
      "target 500 micron",
    ]) {
      expect(svg).toContain(`>${words}</text>`);
    }
    const staged = draw(stages as VacuumDecayInput);
    expect(staged).toContain(">limit 500 micron at 30 min</text>");
    expect(staged).toContain(">limit 750 micron at 60 min</text>");
    expect(draw(tight as VacuumDecayInput)).toContain(">rise to 740 micron at 10 min</text>");
    expect(draw(moisture as VacuumDecayInput)).toMatch(/>levels off near 17\d0 micron<\/text>/);
  });

  it("and both axes are in the reader's units", () => {
    expect(draw(leak)).toMatch(/>pressure, micron<.*>Pa abs<.*>time since isolation, min</);
    const pascals = draw(leak, { pressureUnit: pascalAbsolute, timeUnit: hour });
    expect(pascals).toMatch(/>pressure, Pa abs<.*>micron<.*>time since isolation, h</);
    expect(pascals).toContain(">limit 93.3 Pa abs at 0.25 h</text>");
    expect(draw(leak, { secondPressureUnit: torr })).toMatch(/>pressure, micron<.*>torr</);
  });
});

describe("readings that were set aside", () => {
  it("are crosses, and the line does not run through them", () => {
    const readings = [...leak.readings];
    readings[60] = { elapsed: second(600), pressure: micron(20) };
    const svg = draw({ ...leak, readings });
    expect(svg).toContain(">set aside</text>");
    expect(svg).toContain("Shown: 120 readings");
    expect(draw(leak)).not.toContain("set aside</text>");
  });

  it("do not stretch the picture when they lie far above it", () => {
    const readings = [...leak.readings, { elapsed: second(1210), pressure: micron(2e6) }];
    const svg = draw({ ...leak, readings, gauge: { range: micron(20_000) } });
    expect(svg).toContain(">1,400</text>");
    expect(svg).not.toContain("000,000</text>");
  });
});

describe("a log", () => {
  it("may have one reading, and then no curve", () => {
    const svg = draw({ ...leak, readings: [{ elapsed: second(0), pressure: micron(300) }] });
    expect(svg).not.toContain("fitted");
    expect(svg).not.toMatch(/NaN|Infinity/);
  });

  it("shows a forecast while the hold is not over", () => {
    expect(draw(early as VacuumDecayInput)).toContain("fitted curve and forecast");
    expect(draw(leak)).toContain(">fitted curve</text>");
  });

  it("is not modified, whatever its order", () => {
    const readings = Object.freeze([...leak.readings].reverse());
    const verdict = assessVacuumDecay(leak);
    expect(vacuumDecayPlot({ ...leak, readings }, verdict)).toBe(vacuumDecayPlot(leak, verdict));
  });

  it("of a policy that allows no rise, and one far above the readings, is drawn", () => {
    const { multiSplitManualD } = acceptancePolicies;
    const svg = draw(decayLog(() => 300, multiSplitManualD, 60));
    expect(svg).toContain(">target 5000 micron</text>");
    expect(svg).toMatch(/>rise to 30\d micron at 60 min<\/text>/);
  });
});

describe("what cannot be drawn is refused by name:", () => {
  const verdict = assessVacuumDecay(leak);
  it.each<[string, object, object?]>([
    ["readings", { ...leak, readings: [] }],
    ["readings[0].pressure", { ...leak, readings: [{ elapsed: second(0), pressure: psig(1) }] }],
    ["readings[0].elapsed", { ...leak, readings: [{ pressure: micron(1) }] }],
    ["readings[0]", { ...leak, readings: [null] }],
    ["policy.checkpoints", { ...leak, policy: { target: micron(500) } }],
    ["policy", { ...leak, policy: undefined }],
    ["assessment.cause", leak, { ...verdict, cause: "ghost" }],
    ["assessment.reasons", leak, { ...verdict, reasons: 7 }],
    ["assessment.excluded", leak, { ...verdict, excluded: undefined }],
    ["assessment.steps", leak, { ...verdict, steps: undefined }],
  ])("%s", (argument, test, assessment = verdict) => {
    expect(() => vacuumDecayPlot(test as never, assessment as never)).toThrow(
      expect.objectContaining({ name: "InvalidInputError", argument }),
    );
  });
  it("a unit of another kind", () => {
    for (const name of ["pressureUnit", "secondPressureUnit", "timeUnit"]) {
      expect(() => draw(leak, { [name]: psig })).toThrow(
        expect.objectContaining({ name: "InvalidInputError", argument: name }),
      );
    }
  });
});
