import { vacuumDecayPlot } from "hvac-install-math/plots";
import { hour, micron, psig, second, torr } from "hvac-install-math/quantity";
import {
  acceptancePolicies,
  assessVacuumDecay,
  type VacuumDecayInput,
} from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";
import { decayLog, decays, reader } from "./samples.ts";

const draw = (test: VacuumDecayInput, options = {}) =>
  vacuumDecayPlot(test, assessVacuumDecay(test), { ...reader, ...options });
const { leak, moisture, tight, early, stages } = decays as Record<string, VacuumDecayInput> & {
  leak: VacuumDecayInput;
};

describe("the picture says what the course means:", () => {
  it.each([
    [leak, "FAIL</tspan>: keeps rising, a leak, 50 microns/min"],
    [moisture, "FAIL</tspan>: levels off, moisture"],
    [tight, "PASS</tspan>: flat, dry and tight"],
    [early, "INCONCLUSIVE</tspan>: flat, dry and tight"], // 2.3 micron/min in 4 L: no leak that matters
  ])("%#", (test, words) => {
    expect(draw(test as VacuumDecayInput)).toContain(words);
  });
});

describe("the levels", () => {
  it("are those of the policy, with the time of each", () => {
    const svg = draw(leak);
    for (const words of [
      "limit 700 microns at 15 min",
      "fails from 800 microns",
      "target 500 microns",
    ]) {
      expect(svg).toContain(`>${words}</text>`);
    }
    const staged = draw(stages as VacuumDecayInput);
    expect(staged).toContain(">limit 500 microns at 30 min</text>");
    expect(staged).toContain(">limit 750 microns at 1 h</text>");
    expect(draw(tight as VacuumDecayInput)).toContain(">rise to 740 microns at 10 min</text>");
    expect(draw(moisture as VacuumDecayInput)).toMatch(/>levels off near 17\d\d microns<\/text>/);
  });

  it("and both axes are in the reader's units", () => {
    expect(draw(leak)).toMatch(/>Pressure, microns<.*>Time since isolation, min</);
    const pascals = draw(leak, { system: "SI", units: { duration: hour } });
    expect(pascals).toMatch(/>Pressure, Pa abs<.*>Time since isolation, h</);
    expect(pascals).toContain(">limit 93.3 Pa abs at 0.25 h</text>");
    expect(draw(leak, { secondPressureUnit: torr })).toMatch(/>Pressure, microns<.*>torr</);
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
    expect(svg).toContain(">1400</text>");
    expect(svg).not.toContain("000000</text>");
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
    expect(vacuumDecayPlot({ ...leak, readings }, verdict, reader)).toBe(
      vacuumDecayPlot(leak, verdict, reader),
    );
  });

  it("of a policy that allows no rise, and one far above the readings, is drawn", () => {
    const { multiSplitManualD } = acceptancePolicies;
    const svg = draw(decayLog(() => 300, multiSplitManualD, 60));
    expect(svg).toContain(">target 5 torr</text>");
    expect(svg).toMatch(/>rise to 0\.3 torr at 1 h<\/text>/);
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
    expect(() => vacuumDecayPlot(test as never, assessment as never, reader)).toThrow(
      expect.objectContaining({ name: "InvalidInputError", argument }),
    );
  });
  it("a unit of another kind", () => {
    const named = (argument: string) =>
      expect.objectContaining({ name: "InvalidInputError", argument });
    expect(() => draw(leak, { secondPressureUnit: psig })).toThrow(named("secondPressureUnit"));
    const units = { absolutePressure: psig };
    expect(() => draw(leak, { units })).toThrow(named("options.units.absolutePressure"));
  });
});
