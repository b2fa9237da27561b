import { explain } from "hvac-install-math/assessment";
import * as condensate from "hvac-install-math/condensate";
import { english } from "hvac-install-math/language/en";
import * as q from "hvac-install-math/quantity";
import {
  cm,
  degC,
  degreeAngle,
  ft,
  inch,
  m,
  mm,
  percent,
  tonRefrigeration,
} from "hvac-install-math/quantity";
import { describe, expect, test } from "vitest";
import { argumentOf } from "../argument-of.ts";

// biome-ignore lint/suspicious/noExplicitAny: what JavaScript could pass
type Anything = any;

describe("the slope of a drain", () => {
  const over30ft = (fall: number) => ({
    heightAtStart: inch(50),
    heightAtEnd: inch(50 - fall),
    run: ft(30),
  });

  test("passes at 1/8 in per foot, fails below 1 %, and is open between the two figures of the codes", () => {
    const outcomeAt = (fall: number) =>
      condensate.assessDrainSlope({ reading: over30ft(fall) }).outcome;
    expect([3.75, 3.74, 3.61, 3.59].map(outcomeAt)).toEqual([
      "pass",
      "inconclusive",
      "inconclusive",
      "fail",
    ]);
    const open = condensate.assessDrainSlope({ reading: over30ft(3.7) });
    expect(open.reasons[0]?.code).toBe("condensate.codes-differ");
    expect(open.actions?.map(({ code }) => code)).toEqual(["condensate.ask-code"]);
  });

  test("is judged by the one figure when it is named", () => {
    const metric = { reading: { slope: percent(1) }, required: percent(1) };
    expect(condensate.assessDrainSlope(metric).outcome).toBe("pass");
    const imperial = { reading: { slope: percent(1) }, required: condensate.codeDrainSlope };
    expect(condensate.assessDrainSlope(imperial).cause).toBe("too-flat");
  });

  test("is not judged by a figure that no code or manual asks for, and says where codes ask for more", () => {
    const reading = { slope: percent(0.7) };
    const points = [{ distance: m(10), height: cm(192) }];
    const judged = [
      (slope: number) => condensate.assessDrainSlope({ reading, required: percent(slope) }),
      (slope: number) =>
        condensate.planDrain({ outletHeight: cm(200), points, slope: percent(slope) }),
    ];
    for (const judge of judged) {
      expect(() => judge(0.4)).toThrow(/at least 0.5 %/);
      expect(judge(0.6).outcome).toBe("pass");
      expect(judge(0.6).cautions.map(({ code }) => code)).toContain("condensate.flatter-than-code");
      expect(judge(1).outcome).toBe("fail");
      expect(judge(1).cautions.map(({ code }) => code)).not.toContain(
        "condensate.flatter-than-code",
      );
    }
  });

  // 0.3 m − 30 cm is −3.5e-17 m or so in binary.
  test("is level, and does not rise, where two heights are the same in two units", () => {
    const reading = { heightAtStart: ft(0.1), heightAtEnd: inch(1.2), run: m(1) };
    const verdict = condensate.assessDrainSlope({ reading });
    expect(verdict.slope.value.si).toBe(0);
    expect(verdict.cause).toBe("too-flat");
  });

  test("that passes is missing nothing, not 3.5e-17", () => {
    for (let i = 1; i <= 200; i += 1) {
      const run = ft(i / 7);
      const reading = { heightAtStart: inch(20), heightAtEnd: inch(20 - i / 56), run };
      const { outcome, missingFall } = condensate.assessDrainSlope({ reading, run });
      expect([outcome, missingFall?.si]).toEqual(["pass", 0]);
    }
  });

  test("is put down to the codes only where the level tells that it lies between them", () => {
    const at = (accuracy: number) =>
      condensate.assessDrainSlope({
        reading: { slope: percent(1.02), accuracy: percent(accuracy) },
      });
    const codes = (accuracy: number) =>
      [...at(accuracy).reasons, ...(at(accuracy).actions ?? [])].map(({ code }) => code);
    expect(codes(0.01)).toEqual(["condensate.codes-differ", "condensate.ask-code"]);
    expect(codes(0.2)).toEqual(["condensate.slope-near", "condensate.measure-better"]);
  });

  test("is called rising only where the level tells so", () => {
    const at = (slope: number) =>
      condensate.assessDrainSlope({
        reading: { slope: percent(slope), accuracy: percent(0.2) },
      }).cause;
    expect(at(-0.05)).toBe("too-flat");
    expect(at(-0.5)).toBe("rises");
  });

  test("that rises is called so, with the fall that is missing", () => {
    const verdict = condensate.assessDrainSlope({ reading: over30ft(-1), run: ft(30) });
    expect(verdict.cause).toBe("rises");
    expect(explain(verdict.actions?.[0] as Anything, english)).toBe(
      "Increase the fall by 0.3958 ft or more over the 30 ft, or install a pump.",
    );
    expect(verdict.missingFall?.toString(inch)).toBe("4.75 in");
  });

  test("is the same by percent, degrees, gap and heights", () => {
    const slopes = [
      { slope: percent(2) },
      { angle: degreeAngle((Math.atan(0.02) * 180) / Math.PI) },
      { gap: mm(12), levelLength: mm(600) },
      { heightAtStart: cm(210), heightAtEnd: cm(200), run: m(5) },
    ].map((reading) => condensate.slopeOf(reading).value.in(percent));
    for (const slope of slopes) expect(slope).toBeCloseTo(2, 10);
  });

  test("is open when the level cannot tell, and says what to do", () => {
    const reading = { gap: mm(6.5), levelLength: mm(600), accuracy: mm(0.6) };
    const verdict = condensate.assessDrainSlope({ reading });
    expect(verdict.outcome).toBe("inconclusive");
    expect(explain(verdict.reasons[0] as Anything, english)).toBe(
      "Drain slope 1.083 % ± 0.1155 %: too close to the 1.042 % required to call.",
    );
    expect(explain(verdict.actions?.[0] as Anything, english)).toMatch(/longer base/);
    // 0.6 mm over 600 mm is 0.1 % limits, 0.0577 % standard.
    expect(verdict.slope.standardUncertainty.in(percent)).toBeCloseTo(0.05774, 5);
  });

  test("takes two heights as two independent errors", () => {
    const reading = { ...over30ft(6), accuracy: inch(0.1) };
    const u = condensate.slopeOf(reading).standardUncertainty.in(percent);
    expect(u).toBeCloseTo((100 * 0.1 * Math.SQRT2) / Math.sqrt(3) / 360, 10);
  });

  test("names a reading that is none", () => {
    const slope = (reading: Anything) => argumentOf(() => condensate.slopeOf(reading));
    expect(slope({})).toBe("reading");
    expect(slope(undefined)).toBe("reading");
    expect(slope(null)).toBe("reading");
    expect(slope(2)).toBe("reading");
    expect(slope({ gap: mm(3) })).toBe("reading.levelLength");
    expect(slope({ gap: mm(3), levelLength: mm(0) })).toBe("reading.levelLength");
    expect(slope({ gap: mm(700), levelLength: mm(600) })).toBe("reading");
    expect(slope({ slope: 0.02 })).toBe("reading.slope");
    expect(slope({ angle: degreeAngle(89) })).toBe("reading.angle");
    expect(slope({ slope: percent(2), accuracy: percent(-1) })).toBe("reading.accuracy");
    const reading = { slope: percent(2) };
    expect(argumentOf(() => condensate.assessDrainSlope({ reading, run: m(0) }))).toBe("run");
    expect(argumentOf(() => condensate.assessDrainSlope({ reading, required: percent(0) }))).toBe(
      "required",
    );
    expect(argumentOf(() => condensate.minimumFall({ run: m(-1) }))).toBe("run");
  });
});

describe("the pitch of an indoor unit", () => {
  test("is right toward the drain, wrong away from it", () => {
    const at = (gap: number, more: object = {}) =>
      condensate.assessIndoorUnitPitch({
        reading: { gap: mm(gap), levelLength: mm(800) },
        ...more,
      });
    expect(at(4).outcome).toBe("pass");
    expect(at(0).outcome).toBe("pass");
    expect(at(-4).cause).toBe("away-from-drain");
    expect(at(1, { minimum: percent(0.5) }).cause).toBe("too-little");
    expect(at(20, { maximum: percent(1) }).cause).toBe("too-much");
    expect(at(4).cautions.map(({ code }) => code)).toContain("safety.work-at-height");
    const assumed = (more?: object) => at(4, more).assumptions.map(({ code }) => code);
    expect(assumed()).toContain("condensate.maximum-pitch-not-checked");
    expect(assumed({ maximum: percent(1) })).not.toContain("condensate.maximum-pitch-not-checked");
  });

  test("refuses limits that cross", () => {
    const reading = { slope: percent(1) };
    const crossed = { reading, minimum: percent(2), maximum: percent(1) };
    expect(argumentOf(() => condensate.assessIndoorUnitPitch(crossed))).toBe("maximum");
  });
});

describe("a planned drain", () => {
  const down = { distance: m(4), height: cm(20) };

  test("runs by gravity when every stretch falls enough", () => {
    const plan = condensate.planDrain({
      outletHeight: cm(215),
      points: [{ distance: m(4), height: cm(210) }, down],
    });
    expect(plan.outcome).toBe("pass");
    expect(plan.lift.si).toBe(0);
    expect(plan.shortfall.si).toBe(0);
    expect(plan.worstPoint).toBeUndefined();
    expect(plan.availableFall.toString(cm)).toBe("195 cm");
  });

  test("needs a pump over a beam, although the discharge lies low", () => {
    const over = { distance: m(2), height: cm(240) };
    const plan = condensate.planDrain({ outletHeight: cm(215), points: [over, down] });
    expect(plan.method).toBe("pump");
    expect(plan.cause).toBe("needs-pump");
    expect(plan.lift.toString(cm)).toBe("25 cm");
    expect(plan.worstPoint).toBe(0);
    expect(plan.cautions.map(({ code }) => code)).toContain("condensate.pump-failure");
    expect(explain(plan.reasons[0] as Anything, english)).toBe(
      "Not enough fall: 27.08 cm short at point 1.",
    );
  });

  test("needs a pump for a stretch that is level, with the lift 0", () => {
    const plan = condensate.planDrain({
      outletHeight: ft(7),
      points: [{ distance: ft(12), height: ft(7) }],
    });
    expect(plan.shortfall.toString(inch)).toBe("1.5 in");
    expect(plan.lift.si).toBe(0);
  });

  test("that falls exactly 1/8 in per foot is gravity", () => {
    const points = [{ distance: ft(30), height: inch(60 - 3.75) }];
    expect(condensate.planDrain({ outletHeight: inch(60), points }).method).toBe("gravity");
  });

  test("names the bad argument", () => {
    const plan = (more: Anything) =>
      argumentOf(() => condensate.planDrain({ outletHeight: m(2), points: [down], ...more }));
    expect(plan({ points: [] })).toBe("points.length");
    expect(plan({ points: undefined })).toBe("points");
    expect(plan({ points: [undefined] })).toBe("points[0].distance");
    expect(plan({ points: [down, { distance: m(3), height: m(0) }] })).toBe("points[1].distance");
    expect(plan({ outletHeight: 2 })).toBe("outletHeight");
    expect(plan({ slope: percent(0) })).toBe("slope");
  });
});

describe("the size of a drain and its trap", () => {
  test("is not below the outlet of the pan", () => {
    const size = condensate.drainSize({
      capacity: tonRefrigeration(2),
      outletDiameter: inch(1.25),
    });
    expect(size.nominal.toString()).toBe("1.25 in");
    expect(size.decidedBy).toBe("outlet");
    const same = { capacity: tonRefrigeration(2), outletDiameter: inch(0.75) };
    expect(condensate.drainSize(same).decidedBy).toBe("capacity");
    const wide = { capacity: tonRefrigeration(2), outletDiameter: inch(3) };
    expect(condensate.drainSize(wide).nominal.toString()).toBe("3 in");
  });

  test("ends where the table ends", () => {
    expect(() => condensate.drainSize({ capacity: tonRefrigeration(251) })).toThrow(/at most 250 /);
    expect(argumentOf(() => condensate.drainSize({ capacity: tonRefrigeration(0) }))).toBe(
      "capacity",
    );
  });

  test("needs no trap at no static pressure, and a seal beyond the pressure when air blows in", () => {
    expect(condensate.condensateTrap({ staticPressure: q.pascal(0) }).kind).toBe("none");
    const blown = condensate.condensateTrap({ staticPressure: q.inchWater(0.5) });
    expect(blown.kind).toBe("blow-through");
    expect(blown.seal.toString()).toBe("1.5 in");
    expect(argumentOf(() => condensate.condensateTrap({ staticPressure: q.kPa(10) }))).toBe(
      "staticPressure",
    );
    const margin = inch(-1);
    const trap = { staticPressure: q.pascal(50), margin };
    expect(argumentOf(() => condensate.condensateTrap(trap))).toBe("margin");
  });
});

describe("a condensate pump", () => {
  const curve = [
    { lift: m(0), flow: q.literPerHour(15) },
    { lift: m(10), flow: q.literPerHour(5) },
    { lift: m(12), flow: q.literPerHour(0) },
  ]; // invented
  const pump = (more: object = {}) =>
    condensate.assessCondensatePump({ condensate: q.literPerHour(2), lift: m(6), curve, ...more });

  test("keeps up, is too slow, or is too weak for the lift", () => {
    expect(pump().outcome).toBe("pass");
    expect(pump({ lift: m(11) }).cause).toBe("too-slow");
    expect(pump({ lift: m(13) }).cause).toBe("lift-too-high");
    expect(pump({ lift: m(11) }).flowAtLift.toString()).toBe("2.5 L/h");
    expect(pump({ lift: m(12) }).flowAtLift.si).toBe(0);
    expect(pump({ lift: m(10) }).flowAtLift.toString()).toBe("5 L/h");
    expect(pump({ lift: m(0) }).flowAtLift.toString()).toBe("15 L/h");
  });

  test("runs the share of the time that the flows say", () => {
    expect(pump().dutyCycle?.in(percent)).toBeCloseTo(100 * (2 / 9), 9);
    expect(pump({ lift: m(12) }).dutyCycle).toBeUndefined();
    const { startInterval } = pump({ reservoir: q.mL(30) });
    expect(startInterval?.in(q.second)).toBeCloseTo(54 + (30e-3 / 7) * 3600, 6);
  });

  test("names a curve that is none", () => {
    const named = (more: Anything) => argumentOf(() => pump(more));
    expect(named({ curve: curve.slice(0, 1) })).toBe("curve.length");
    expect(named({ curve: undefined })).toBe("curve");
    expect(named({ curve: [curve[1], curve[0]] })).toBe("curve[1].lift");
    expect(named({ curve: [curve[0], { lift: m(1), flow: q.literPerHour(16) }] })).toBe(
      "curve[1].flow",
    );
    expect(named({ margin: 0.5 })).toBe("margin");
    expect(named({ condensate: q.literPerHour(0) })).toBe("condensate");
    expect(named({ reservoir: q.mL(0) })).toBe("reservoir");
    expect(named({ lift: m(-1) })).toBe("lift");
  });
});

describe("cautions", () => {
  test("speak of sunlight and frost unless the route rules them out", () => {
    const codes = (route?: condensate.DrainRoute) =>
      condensate.drainCautions(route).map(({ code }) => code);
    expect(codes()).toContain("condensate.sunlight");
    expect(codes()).toContain("condensate.freezing");
    expect(codes({ outdoors: false })).not.toContain("condensate.sunlight");
    expect(codes({ lowestOutdoorTemperature: degC(3) })).not.toContain("condensate.freezing");
    expect(codes({ lowestOutdoorTemperature: degC(-3) })).toContain("condensate.freezing");
    expect(codes({ aboveFinishedSpace: false })).not.toContain("condensate.overflow");
    expect(codes({ outdoors: false, pumped: false })).toContain("safety.line-voltage");
  });
});
