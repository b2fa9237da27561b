// Steps that are proven by other evidence than the complete record has: a turn, a flare's size, a pump, a gauge.
import { manualCharge, type StepName } from "hvac-install-math/commissioning";
import type { PressureTestAssessment } from "hvac-install-math/pressure-test";
import {
  ampere,
  degF,
  degreeAngle,
  deltaF,
  ft,
  hour,
  literPerHour,
  m,
  mm,
  newtonMeter,
  oz,
  percent,
  psi,
  psig,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { type Change, changed } from "./changed.ts";
import { complete } from "./complete-record.ts";

/** The checks of a step by name, and its state. */
function judged(name: StepName, changes: Change) {
  const step = assessInstallation(changed(changes)).steps.find((one) => one.name === name);
  const checks = (step?.checks ?? []).map(({ name, assessment }) => [name, assessment.outcome]);
  return { state: step?.state, missing: step?.missing, checks: Object.fromEntries(checks) };
}

describe("a flare joint", () => {
  const by = (more: object) =>
    judged("joints", {
      "runs[0].joints[0]": { name: "liquid, indoor", kind: "flare", tube: "1/4", ...more },
    });

  it("is judged by the turn of its nut where no torque was read", () => {
    // 1/4 in: 60 to 90 degrees from the point of rising torque, as manufacturers' manuals print it
    const { checks, missing } = by({ turn: degreeAngle(75) });
    expect(checks["flare-turn"]).toBe("pass");
    expect(missing).toEqual([]);
    expect(by({ turn: degreeAngle(20) }).checks["flare-turn"]).toBe("fail");
  });

  it("is judged by a manual's window apart from all published ones once it was read again", () => {
    // All published windows for 1/4 in end below 30 N·m; the manual's 30 to 35 N·m is invented.
    const manual = { low: newtonMeter(30), high: newtonMeter(35) };
    const joint = { kind: "flare", tube: "1/4", torque: newtonMeter(32), torqueWindow: manual };
    const torque = (more: object) =>
      judged("joints", { "runs[0].joints": [{ ...joint, ...more }] }).checks["flare-torque"];
    expect(torque({})).toBe("inconclusive");
    expect(torque({ manualReadAgain: true })).toBe("pass");
  });

  // Published windows for 1/4 in lie about 14 to 18 N·m: 15.6 N·m is inside by a good wrench, and not shown to be by a bad one.
  it("is judged by what the wrench can tell", () => {
    const by = (wrench: object) =>
      judged("joints", { "instruments.torqueWrench": wrench }).checks["flare-torque"];
    expect(by({ relativeAccuracy: percent(4) })).toBe("pass");
    expect(by({ relativeAccuracy: percent(20) })).toBe("inconclusive");
    expect(by({ accuracy: newtonMeter(0.5) })).toBe("pass");
    expect(by({ accuracy: newtonMeter(4) })).toBe("inconclusive");
  });

  it("is judged by the size of its flare too", () => {
    // R-410A, 1/4 in: 8.7 to 9.1 mm, JIS B 8607 as manuals print it
    const joint = { torque: undefined, turn: degreeAngle(75) };
    expect(by({ ...joint, flareDiameter: mm(8.9) }).checks["flare-diameter"]).toBe("pass");
    expect(by({ ...joint, flareDiameter: mm(8) }).checks["flare-diameter"]).toBe("fail");
  });
});

describe("a flare joint of a half-filled record", () => {
  it("is not judged by its size before the refrigerant is known, and asks for it", () => {
    const joint = { kind: "flare", tube: "1/4", turn: degreeAngle(75), flareDiameter: mm(8.9) };
    const { checks, missing } = judged("joints", {
      "runs[0].joints[0]": joint,
      "equipment.refrigerant": undefined,
    });
    expect(missing).toEqual(["equipment.refrigerant"]);
    expect(checks).not.toHaveProperty("flare-diameter");
  });

  it("asks for its size where its line is not known yet", () => {
    const joint = { kind: "flare", line: "liquid", torque: newtonMeter(15.6) };
    const { missing } = judged("joints", {
      "runs[0].joints[0]": joint,
      "runs[0].tubing.liquid": undefined,
    });
    expect(missing).toEqual(["runs[0].joints[0].tube"]);
  });
});

describe("a drain with a pump", () => {
  it("is judged by the pump's curve, and needs no slope", () => {
    const curve = [
      { lift: m(0), flow: literPerHour(15) },
      { lift: m(12), flow: literPerHour(0) },
    ]; // invented
    const drain = (lift: number) => ({
      waterRanOff: true,
      pump: { condensate: literPerHour(2), lift: m(lift), curve },
      at: "2026-05-05",
    });
    const { checks, missing } = judged("drain", { "runs[0].drain": drain(3) });
    expect(checks["condensate-pump"]).toBe("pass");
    expect(checks).not.toHaveProperty("drain-slope");
    expect(missing).toEqual([]);
    expect(judged("drain", { "runs[0].drain": drain(13) }).checks["condensate-pump"]).toBe("fail");
  });
});

describe("a drain that falls straight down", () => {
  const drain = (more: object) =>
    judged("drain", { "runs[0].drain": { vertical: true, waterRanOff: true, ...more } });

  it("needs no slope, but the water that ran off", () => {
    const { state, checks } = drain({});
    expect(state).toBe("done");
    expect(checks["drain-slope"]).toBe("pass");
    expect(drain({ waterRanOff: undefined }).missing).toEqual(["runs[0].drain.waterRanOff"]);
    expect(drain({ waterRanOff: false }).checks["water-drained"]).toBe("fail");
  });

  it("is judged by its slope where it has one all the same", () => {
    const slope = { gap: mm(-6), levelLength: mm(600), accuracy: mm(0.5) };
    expect(drain({ slope }).checks["drain-slope"]).toBe("fail");
  });
});

// Two lines with two ends each have four joints.
describe("the number of joints", () => {
  const counted = (count: number) => {
    const { steps } = assessInstallation(changed({ "runs[0].tubing.jointCount": count }));
    const checks = steps.find(({ name }) => name === "joints")?.checks;
    const found = checks?.find(({ name }) => name === "joint-count")?.assessment;
    const next = (found?.actions ?? []).map(({ values }) => values);
    return [found?.outcome, found?.reasons[0]?.code, next];
  };

  it("is that of the record, and four at least", () => {
    expect(counted(4)).toEqual(["pass", "commissioning.joints-complete", []]);
    expect(counted(5)).toEqual(["inconclusive", "commissioning.joints-incomplete", [{ count: 5 }]]);
    expect(counted(3)).toEqual([
      "inconclusive",
      "commissioning.fewer-joints-than-ends",
      [{ count: 4 }],
    ]);
  });
});

describe("a charge by the gauge", () => {
  const gauge = { accuracy: psi(1) };
  const thermometer = { accuracy: deltaF(1) };
  const reading = (lineTemperature: number) => ({
    "instruments.serviceGauge": gauge,
    "instruments.lineThermometer": thermometer,
    "operation[0].charge": {
      pressure: psig(118),
      lineTemperature: degF(lineTemperature),
      target: deltaF(12),
      tolerance: deltaF(5),
    },
  });

  it("is judged by superheat where an orifice meters a compressor of one speed", () => {
    const system = {
      "equipment.meteringDevice": "orifice",
      "equipment.compressor": "single-speed",
    };
    // R-410A at 118 psig: dew at 39.8 °F, Lemmon (2003)
    expect(judged("operation", { ...system, ...reading(52) }).checks["charge-by-gauge"]).toBe(
      "pass",
    );
    expect(judged("operation", { ...system, ...reading(80) }).checks["charge-by-gauge"]).toBe(
      "fail",
    );
  });

  it("names the instrument that no reading can be taken with", () => {
    const system = {
      "equipment.meteringDevice": "orifice",
      "equipment.compressor": "single-speed",
    };
    for (const path of [
      "instruments.serviceGauge.accuracy",
      "instruments.lineThermometer.accuracy",
    ]) {
      const wrong = path.includes("Gauge") ? psi(-1) : deltaF(-1);
      const changes = { ...system, ...reading(52), [path]: wrong };
      const { steps } = assessInstallation(changed(changes));
      const found = steps.flatMap(({ problems }) => problems);
      expect(found.filter(({ check }) => check === "charge-by-gauge")).toMatchObject([{ path }]);
    }
  });

  it("says of an inverter that only the scale tells its charge", () => {
    const system = { "equipment.compressor": "inverter" };
    const step = assessInstallation(changed({ ...system, ...reading(52) })).steps.find(
      ({ name }) => name === "operation",
    );
    const check = step?.checks.find(({ name }) => name === "charge-by-gauge");
    expect(check?.assessment.reasons.map(({ code }) => code)).toEqual([
      "operating-check.no-target",
    ]);
  });
});

describe("a limit of the lift", () => {
  it("is that of an outdoor unit above the indoor unit, where the manual has one of its own", () => {
    const limits = { maximumLift: ft(40), maximumLiftOutdoorAbove: ft(5) };
    const above = { "runs[0].tubing.outdoorUnit": "above", "runs[0].tubing.lift": ft(10) };
    const manual = (more: object) => ({
      ...above,
      "equipment.manual.run": { maximumLength: ft(82), ...more },
    });
    expect(judged("line-run", manual(limits)).checks["line-run"]).toBe("fail");
    expect(judged("line-run", manual({ maximumLift: ft(40) })).checks["line-run"]).toBe("pass");
  });

  it("is asked for where the manual's other one is of a unit that hangs the other way", () => {
    const missing = (outdoorUnit: string) =>
      judged("line-run", {
        "runs[0].tubing.outdoorUnit": outdoorUnit,
        "runs[0].tubing.lift": ft(10),
        "equipment.manual.run": { maximumLength: ft(82), maximumLiftOutdoorAbove: ft(15) },
      }).missing;
    expect(missing("above")).toEqual([]);
    expect(missing("below")).toEqual(["equipment.manual.run.maximumLift"]);
  });
});

describe("the rule of the charge", () => {
  const limits = { maximumLength: ft(66), maximumLift: ft(33) };
  const assumed = (changes: Change) =>
    assessInstallation(changed(changes)).assumptions.map(({ code }) => code);

  it("says which limits of the manual nobody stated, and leaves rooms to their own step", () => {
    expect(assumed({})).not.toContain("line-set.minimum-length-not-checked");
    const said = assumed({
      "equipment.manual.run": limits,
      "equipment.refrigerant": "R-32",
      "equipment.maximumCharge": undefined,
    });
    expect(said).toContain("line-set.minimum-length-not-checked");
    expect(said).not.toContain("line-set.room-limit-not-checked");
  });
});

// (36 ft − 25 ft) · 0.16 oz/ft = 1.76 oz.
it("the charge of the manual is computed as soon as its rule is whole, and before names what lacks", () => {
  const { missing, assessment } = manualCharge(complete);
  expect(missing).toEqual([]);
  expect(assessment?.unroundedCharge.in(oz)).toBeCloseTo(1.76, 9);
  const rate = "equipment.manual.chargeRate";
  expect(manualCharge(changed({ [rate]: undefined }))).toEqual({ missing: [rate] });
});

// 241.5 V at rest and 239.8 V at 8 A are 239.4 V at 10.1 A: (1.7 V / 8 A) · 10.1 A = 2.1 V.
describe("the voltage at full load", () => {
  const said = (equipment: Change) =>
    assessInstallation(changed({ "power.supply.readings[1].current": ampere(8), ...equipment }))
      .steps.find(({ name }) => name === "supply")
      ?.checks.flatMap(({ assessment }) => assessment.reasons.map(({ code }) => code));
  const none = { "equipment.ratedLoadCurrent": undefined };
  const enough = "supply-voltage.full-load-enough";

  it("is computed for the current that the plate prints, whatever it is called", () => {
    expect(said({})).toContain(enough);
    expect(said({ ...none, "equipment.ratedCurrent": ampere(10.1) })).toContain(enough);
    expect(said(none)).not.toContain(enough);
  });
});

describe("the gas of a pressure test", () => {
  const verdictOf = (changes: Change) =>
    assessInstallation(changed(changes))
      .steps.find(({ name }) => name === "pressure-test")
      ?.checks.find(({ name }) => name === "pressure-test")?.assessment as
      | PressureTestAssessment
      | undefined;
  const assumed = (changes: Change) => verdictOf(changes)?.assumptions.map(({ code }) => code);
  const finds = (changes: Change) => verdictOf(changes)?.cautions.map(({ code }) => code);
  const provable = (changes: Change) => verdictOf(changes)?.smallestProvableDrop.in(psi) ?? 0;

  it("has settled where the record says how long ago it was filled", () => {
    expect(assumed({})).toContain("pressure-test.gas-settled");
    const told = assumed({ "pressureTests[0].sinceFill": hour(12) });
    expect(told).not.toContain("pressure-test.gas-settled");
  });

  it("leaves more open where part of it lies elsewhere", () => {
    const elsewhere = { share: percent(50), change: deltaF(20) };
    expect(provable({ "pressureTests[0].elsewhere": elsewhere })).toBeGreaterThan(2 * provable({}));
  });

  it("tells what a leak would lose of the refrigerant, where its vapor is in the table", () => {
    expect(verdictOf({})?.refrigerantLossAtMost).toBeDefined();
    const other = verdictOf({ "equipment.refrigerant": "R-454B" });
    expect(other).toBeDefined();
    expect(other?.refrigerantLossAtMost).toBeUndefined();
  });

  it.each(["liquid", "vapor", "length", "otherVolume"])(
    "has no volume where the record does not say it all, and is judged without: %s",
    (field) => {
      const path = `runs[0].tubing.${field}`;
      expect(finds({})).toContain("pressure-test.smallest-leak");
      expect(verdictOf({ [path]: undefined })?.outcome).toBe("pass");
      expect(finds({ [path]: undefined })).not.toContain("pressure-test.smallest-leak");
    },
  );
});
