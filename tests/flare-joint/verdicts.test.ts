// The whole of what each kind of verdict on a flare joint says. Windows: two manufacturers' manuals of JIS-type nuts, the
// range of another manual, EN 378-2:2016 (from memory). The other figures are plain arithmetic on the input, shown with four
// digits: limits of error ±a are a/√3 standard, the guard band at 95 % is 1.645 times that (JCGM 106:2012, 8.3), a foot-pound
// is 1.355 818 N·m.
import {
  assessFlareCone,
  assessFlareDiameter,
  assessFlareTorque,
  assessFlareTurn,
  assessFlareWall,
  type FlareConeInput,
  type FlareDiameterInput,
  type FlareTorqueInput,
  type FlareTurnInput,
  type FlareWallInput,
  servicePortAdapter,
} from "hvac-install-math/flare-joint";
import { degreeAngle, ftLb, inch, mm, newtonMeter, percent } from "hvac-install-math/quantity";
import { describe, expect, test } from "vitest";
import { said, told } from "../told.ts";

const dangers = [
  "safety.open-under-pressure",
  "safety.refrigerant-contact",
  "safety.flammable-refrigerant",
  "safety.others-govern",
];
const cautions = ["not-a-leak-test", ...dangers];
const decisionRule = "jcgm-106-2012 8.3";
const exact = "exact-instrument";
const pass = { outcome: "pass", cause: undefined, cautions, actions: [] };
const open = { outcome: "inconclusive", cause: undefined, cautions };
const failed = (cause: string) => ({ outcome: "fail", cause, cautions });

describe("the whole verdict on a torque", () => {
  const of = (input: FlareTorqueInput) => told(assessFlareTorque(input));
  const Nm = newtonMeter;
  const ranges =
    "published-ranges, sources source.jis-type-manuals + source.en-378-2 + source.manual-range";
  const published = {
    assumptions: [exact, ranges],
    sources: [
      decisionRule,
      "manufacturer-manuals flare nut torque, JIS-type",
      "en-378-2 flare nut torque, from memory",
      "manufacturer-manuals flare nut torque, range",
    ],
  };
  const wrench = { accuracy: Nm(1) }; // 0.5774 N·m standard, guard band 0.9497 N·m

  // 5/8 in: 68 to 82, 63 to 77, 61.8 to 75.4 N·m. All share 68 to 75.4, none allows less than 61.8 or more than 82.
  test("that every source allows, by an exact wrench", () => {
    expect(of({ tube: "5/8", torque: Nm(70) })).toEqual({
      ...pass,
      ...published,
      reasons: ["within-range, figure figure.torque, high 75.4 N·m, low 68 N·m, measured 70 N·m"],
    });
  });

  test("that every source allows, by a wrench that errs", () => {
    expect(of({ tube: "5/8", torque: Nm(72), wrench })).toEqual({
      ...pass,
      ...published,
      assumptions: [ranges],
      reasons: [
        "within-range, figure figure.torque, high 75.4 N·m, low 68 N·m, measured 72 N·m",
        "would-have-failed, beyond 1.899 N·m", // twice the guard band
      ],
    });
  });

  test("of which the sources disagree", () => {
    expect(of({ tube: "5/8", torque: Nm(80) })).toEqual({
      ...open,
      ...published,
      reasons: [
        "sources-disagree, figure figure.torque, high 75.4 N·m, low 68 N·m, measured 80 N·m",
      ],
      actions: ["state-manual-range"],
    });
  });

  // 0.4 N·m to the limit: limits of error of 0.4 · √3/1.645 N·m just decide.
  test("too near to what the sources share", () => {
    expect(of({ tube: "5/8", torque: Nm(75), wrench })).toEqual({
      ...open,
      ...published,
      assumptions: [ranges],
      reasons: ["instrument-cannot-tell, figure figure.torque, guard 0.9497 N·m, measured 75 N·m"],
      actions: ["state-manual-range", "check-wrench, needed 0.4212 N·m"],
    });
  });

  test.each([
    [30, "under-tightened", "tighten"],
    [100, "over-tightened", "remake-and-tighten"],
  ])("of %f N·m, which no source allows", (torque, cause, remedy) => {
    expect(of({ tube: "5/8", torque: Nm(torque) })).toEqual({
      ...failed(cause),
      ...published,
      reasons: [
        `outside-range, figure figure.torque, high 82 N·m, low 61.8 N·m, measured ${torque} N·m`,
      ],
      actions: [`${remedy}, high 75.4 N·m, low 68 N·m`],
    });
  });

  // 1/4 in: 14 to 18, 14 to 18, 14.2 to 17.2 N·m; 14, 14.2, 17.2 and 18 N·m in ft·lb. 16 ft·lb are 21.7 N·m.
  test("that is right on the other scale", () => {
    expect(of({ tube: "1/4", torque: ftLb(16) })).toEqual({
      ...failed("over-tightened"),
      ...published,
      reasons: [
        "outside-range, figure figure.torque, high 13.28 ft·lb, low 10.33 ft·lb, measured 16 ft·lb",
        "right-on-other-scale, other 16 N·m",
      ],
      actions: ["check-scale", "remake-and-tighten, high 12.69 ft·lb, low 10.47 ft·lb"],
    });
  });

  test("of metric tube, on one source alone", () => {
    expect(of({ tube: "10 mm", torque: Nm(38) })).toEqual({
      ...pass,
      reasons: ["within-range, figure figure.torque, high 42 N·m, low 33 N·m, measured 38 N·m"],
      assumptions: [exact, "published-ranges, sources source.en-378-2", "one-source"],
      sources: [decisionRule, "en-378-2 flare nut torque, from memory"],
    });
  });

  // Invented manuals.
  const byManual = (low: number, high: number, unit: typeof ftLb = Nm) => ({
    manual: { low: unit(low), high: unit(high) },
  });
  const stated = { assumptions: [exact], sources: [decisionRule] };

  test("too near to the manual's limit", () => {
    expect(of({ tube: "3/8", torque: Nm(41.5), ...byManual(34, 42), wrench })).toEqual({
      ...open,
      ...stated,
      assumptions: [],
      reasons: [
        "instrument-cannot-tell, figure figure.torque, guard 0.9497 N·m, measured 41.5 N·m",
      ],
      actions: ["check-wrench, needed 0.5265 N·m"], // 0.5 · √3/1.645
    });
  });

  // 61.5 ft·lb are 83.4 N·m; 61.8, 68, 82 and 84 N·m in ft·lb.
  test("that only the manual allows", () => {
    expect(of({ tube: "5/8", torque: ftLb(61.5), ...byManual(68, 84) })).toEqual({
      ...pass,
      ...stated,
      reasons: [
        "within-range, figure figure.torque, high 61.96 ft·lb, low 50.15 ft·lb, measured 61.5 ft·lb",
      ],
      cautions: [
        "not-a-leak-test",
        "beyond-sources, high 60.48 ft·lb, low 45.58 ft·lb, torque 61.5 ft·lb",
        ...dangers,
      ],
    });
    const alsoPublished = of({ tube: "5/8", torque: Nm(61.8), ...byManual(60, 70) });
    expect(alsoPublished).toMatchObject({ outcome: "pass", cautions });
  });

  test("by a manual that was read again", () => {
    const readAgain = { ...byManual(20, 25), manualReadAgain: true };
    expect(of({ tube: "3/8", torque: Nm(22), ...readAgain })).toEqual({
      ...pass,
      ...stated,
      reasons: ["within-range, figure figure.torque, high 25 N·m, low 20 N·m, measured 22 N·m"],
      assumptions: [exact, "manual-read-again"],
      cautions: [
        "not-a-leak-test",
        "beyond-sources, high 42 N·m, low 32.7 N·m, torque 22 N·m",
        ...dangers,
      ],
    });
    expect(of({ tube: "5/8", torque: Nm(70), manualReadAgain: true }).assumptions).toEqual(
      published.assumptions,
    );
  });

  // 3/8 in: 32.7 to 42 N·m over all sources, in ft·lb 24.12 to 30.98.
  const apart = "manual-range-apart, from 24.12 ft·lb, high 42 ft·lb, low 34 ft·lb, to 30.98 ft·lb";
  const doubts = [`${apart}, tube 3/8 in`, "newton-meter-as-foot-pound"];

  test("by a manual whose unit was mistaken", () => {
    expect(of({ tube: "3/8", torque: Nm(38), ...byManual(34, 42, ftLb) })).toEqual({
      ...open,
      ...published,
      assumptions: [exact],
      reasons: doubts,
      actions: ["read-manual-again"],
    });
  });

  // 42 ft·lb are 56.94 N·m.
  test("that neither the sources nor a doubtful manual allow", () => {
    expect(of({ tube: "3/8", torque: Nm(57), ...byManual(34, 42, ftLb) })).toEqual({
      ...failed("over-tightened"),
      ...published,
      assumptions: [exact],
      reasons: [
        "outside-range, figure figure.torque, high 56.94 N·m, low 32.7 N·m, measured 57 N·m",
        ...doubts,
      ],
      actions: ["read-manual-again", "remake-and-tighten, high 56.94 N·m, low 32.7 N·m"],
    });
  });

  test.each([
    [25, 30, ["foot-pound-as-newton-meter"]], // 34 to 41 N·m, were they ft·lb
    [100, 110, []], // 74 to 81 ft·lb, 136 to 149 N·m
  ])("by a manual of %f to %f N·m, apart from the sources", (low, high, more) => {
    expect(of({ tube: "3/8", torque: Nm(38), ...byManual(low, high) }).reasons).toEqual([
      `manual-range-apart, from 32.7 N·m, high ${high} N·m, low ${low} N·m, to 42 N·m, tube 3/8 in`,
      ...more,
    ]);
  });

  test("by a manual in which a figure lies on both scales", () => {
    const wide = { low: Nm(13), high: ftLb(13) };
    expect(of({ tube: "1/4", torque: Nm(16), manual: wide }).reasons).toEqual([
      "manual-range-wide, from 14 N·m, high 13 ft·lb, low 13 N·m, to 18 N·m, tube 1/4 in",
    ]);
  });

  test.each([
    [18, 20, 19],
    [12, 14, 13],
  ])("by a manual of %f to %f N·m, which meets the sources in one figure", (low, high, torque) => {
    expect(of({ tube: "1/4", torque: Nm(torque), ...byManual(low, high) }).outcome).toBe("pass");
  });

  // 4 % of 16 N·m are 0.64 N·m; √(0.64²/3 + 0.5²/12) N·m: JCGM 100:2008, 4.3.7 and F.2.2.1.
  test("counts both the error and the step of a wrench", () => {
    const joint = { tube: "1/4", torque: Nm(16) } as const;
    const u = (wrench: FlareTorqueInput["wrench"]) =>
      assessFlareTorque({ ...joint, wrench }).measured.standardUncertainty.in(Nm);
    const relativeAccuracy = percent(4);
    expect(u({ relativeAccuracy, resolution: Nm(0.5) })).toBeCloseTo(0.3967, 4);
    expect(u({ relativeAccuracy })).toBeCloseTo(0.3695, 4);
  });
});

describe("the whole verdict on a turn", () => {
  const of = (turn: number, more: Partial<FlareTurnInput> = {}) =>
    told(assessFlareTurn({ tube: "1/4", turn: degreeAngle(turn), ...more }));
  const always = {
    assumptions: [exact],
    sources: ["manufacturer-manuals tightening without a torque wrench", decisionRule],
  };

  test("that manuals print", () => {
    expect(of(75)).toEqual({
      ...pass,
      ...always,
      reasons: ["within-range, figure figure.turn, high 90 °, low 60 °, measured 75 °"],
    });
  });

  test.each([
    [45, "under-tightened", "tighten-by-turn"],
    [100, "over-tightened", "remake-and-turn"],
  ])("of %f°", (turn, cause, remedy) => {
    expect(of(turn)).toEqual({
      ...failed(cause),
      ...always,
      reasons: [`outside-range, figure figure.turn, high 90 °, low 60 °, measured ${turn} °`],
      actions: [`${remedy}, high 90 °, low 60 °`],
    });
  });

  // ±5° are 2.887° standard and a guard band of 4.748°; 2° to the limit: 2° · √3/1.645.
  test("too near to a limit", () => {
    expect(of(88, { protractor: { accuracy: degreeAngle(5) } })).toEqual({
      ...open,
      ...always,
      assumptions: [],
      reasons: ["instrument-cannot-tell, figure figure.turn, guard 4.748 °, measured 88 °"],
      actions: ["measure-better, needed 2.106 °"],
    });
  });
});

// 3/8 in: 12.8 to 13.2 mm for R410A and R32, 12.6 to 13.0 mm for R22.
describe("the whole verdict on a diameter", () => {
  const of = (diameter: number, more: Partial<FlareDiameterInput> = {}) =>
    told(
      assessFlareDiameter({ tube: "3/8", refrigerant: "R410A", diameter: mm(diameter), ...more }),
    );
  const always = {
    assumptions: [exact],
    sources: ["manufacturer-manuals flare diameter", decisionRule],
  };
  const limits = (low: number, high: number) => ({ low: mm(low), high: mm(high) });
  const within = "within-range, figure figure.diameter, high 13.2 mm, low 12.8 mm, measured 13 mm";

  test("that manuals print", () => {
    expect(of(13)).toEqual({ ...pass, ...always, reasons: [within] });
    expect(of(13, { refrigerant: "R454B" })).toEqual({
      ...pass,
      ...always,
      reasons: [within],
      assumptions: [exact, "wider-flare-assumed"],
    });
  });

  test.each([
    [12.5, "flare-too-small", "remake-larger"],
    [13.4, "flare-too-large", "remake-smaller"],
  ])("of %f mm", (diameter, cause, remedy) => {
    expect(of(diameter)).toEqual({
      ...failed(cause),
      ...always,
      reasons: [
        `outside-range, figure figure.diameter, high 13.2 mm, low 12.8 mm, measured ${diameter} mm`,
      ],
      actions: [`${remedy}, high 13.2 mm, low 12.8 mm`],
    });
  });

  test("by a manual that was read again", () => {
    expect(of(16.4, { manual: limits(16.2, 16.6), manualReadAgain: true })).toEqual({
      ...pass,
      ...always,
      reasons: [
        "within-range, figure figure.diameter, high 16.6 mm, low 16.2 mm, measured 16.4 mm",
      ],
      assumptions: [exact, "manual-read-again"],
    });
  });

  // From the manual's limits to the published 12.6 and 13.2 mm over all refrigerants.
  test.each([
    [16.2, 16.6, 12, "flare-too-small", "remake-larger", 12.6, 16.6],
    [8.7, 9.1, 14, "flare-too-large", "remake-smaller", 8.7, 13.2],
  ])(
    "by a manual of %f to %f mm, apart from the sources",
    (low, high, beyond, cause, remedy, least, most) => {
      const manual = limits(low, high);
      const apart = `manual-range-apart, from 12.6 mm, high ${high} mm, low ${low} mm, to 13.2 mm, tube 3/8 in`;
      expect(of(12.9, { manual })).toEqual({
        ...open,
        ...always,
        reasons: [apart],
        actions: ["read-manual-again"],
      });
      expect(of(beyond, { manual })).toEqual({
        ...failed(cause),
        ...always,
        reasons: [
          `outside-range, figure figure.diameter, high ${most} mm, low ${least} mm, measured ${beyond} mm`,
          apart,
        ],
        actions: ["read-manual-again", `${remedy}, high ${most} mm, low ${least} mm`],
      });
    },
  );

  test("by a manual that decides nothing", () => {
    // 0.06 in are 1.5 mm; 1 mm is 0.03937 in.
    const manual = { low: inch(0.49), high: inch(0.55) };
    expect(of(13, { manual }).reasons).toEqual([
      "manual-diameters-wide, high 0.55 in, low 0.49 in, widest 0.03937 in",
    ]);
  });

  test.each([
    [13.2, 13.6, 13.5],
    [12.2, 12.6, 12.3],
  ])("by a manual of %f to %f mm, which meets the sources in one figure", (low, high, diameter) => {
    expect(of(diameter, { manual: limits(low, high) }).outcome).toBe("pass");
  });
});

// 3/8 in: the most lenient manual asks for 0.7 mm, the strictest for 0.8 mm.
describe("the whole verdict on a wall", () => {
  const of = (wall: number, more: Partial<FlareWallInput> = {}) =>
    told(assessFlareWall({ tube: "3/8", refrigerant: "R32", wall: mm(wall), ...more }));
  const always = {
    assumptions: [exact],
    sources: ["manufacturer-manuals minimum wall", decisionRule],
  };

  test("that every manual allows", () => {
    expect(of(0.9)).toEqual({
      ...pass,
      ...always,
      reasons: ["above-minimum, figure figure.wall, low 0.8 mm, measured 0.9 mm"],
    });
  });

  test("of metric tube, by EN 378-2", () => {
    expect(of(0.9, { tube: "10 mm", refrigerant: "R454B" })).toEqual({
      ...pass,
      reasons: ["above-minimum, figure figure.wall, low 0.8 mm, measured 0.9 mm"],
      assumptions: [exact, "wider-flare-assumed"],
      sources: ["en-378-2 wall of flared tube, from memory", decisionRule],
    });
  });

  test("of metric tube, by its manual, read again or not", () => {
    const metric = { tube: "10 mm", manualMinimum: mm(0.6) } as const;
    const reasons = ["above-minimum, figure figure.wall, low 0.6 mm, measured 0.7 mm"];
    expect(of(0.7, metric)).toEqual({ ...pass, ...always, reasons });
    expect(of(0.7, { ...metric, manualReadAgain: true })).toEqual({
      ...pass,
      ...always,
      reasons,
      assumptions: [exact, "manual-read-again"],
    });
  });

  test("of which the manuals disagree", () => {
    expect(of(0.75)).toEqual({
      ...open,
      ...always,
      reasons: ["minimums-disagree, figure figure.wall, low 0.8 mm, measured 0.75 mm"],
      actions: ["state-manual-range"],
    });
  });

  test("that no manual allows", () => {
    expect(of(0.6)).toEqual({
      ...failed("wall-too-thin"),
      ...always,
      reasons: ["below-minimum, figure figure.wall, low 0.7 mm, measured 0.6 mm"],
      actions: ["replace-tube, low 0.8 mm"],
    });
  });

  // ±0.02 mm are a guard band of 0.01899 mm; 0.01 mm to the limit: 0.01 · √3/1.645 mm.
  test("too near to the minimum", () => {
    expect(of(0.81, { micrometer: { accuracy: mm(0.02) } })).toEqual({
      ...open,
      ...always,
      assumptions: [],
      reasons: ["instrument-cannot-tell, figure figure.wall, guard 0.01899 mm, measured 0.81 mm"],
      actions: ["measure-better, needed 0.01053 mm"],
    });
  });

  test("by a minimum below any tube", () => {
    const manualMinimum = mm(0.03);
    const thin = "manual-minimum-thin, least 0.03 mm, usual 0.7 mm";
    expect(of(0.61, { manualMinimum })).toEqual({
      ...open,
      ...always,
      reasons: [thin],
      actions: ["read-manual-again"],
    });
    expect(of(0.02, { manualMinimum })).toEqual({
      ...failed("wall-too-thin"),
      ...always,
      reasons: ["below-minimum, figure figure.wall, low 0.03 mm, measured 0.02 mm", thin],
      actions: ["read-manual-again", "replace-tube, low 0.03 mm"],
    });
  });
});

// 45° ± 2° is SAE J513; within 2° of 37° it is the cone of SAE J514.
describe("the whole verdict on a cone", () => {
  const of = (angle: number, more: Partial<FlareConeInput> = {}) =>
    told(assessFlareCone({ seatAngle: degreeAngle(angle), ...more }));
  const always = {
    assumptions: [exact],
    sources: ["sae-j513 45° flare", "manufacturer-manuals flare angle", "jcgm-106-2012 8.3"],
  };

  test("of a refrigeration flare", () => {
    expect(of(45)).toEqual({
      ...pass,
      ...always,
      reasons: ["within-range, figure figure.seat-angle, high 47 °, low 43 °, measured 45 °"],
    });
  });

  test.each([
    [34.9, "cone-too-steep", []],
    [35, "cone-too-steep", ["hydraulic-flare"]],
    [37, "cone-too-steep", ["hydraulic-flare"]],
    [39, "cone-too-steep", ["hydraulic-flare"]],
    [39.1, "cone-too-steep", []],
    [48, "cone-too-flat", []],
  ])("of %f°", (angle, cause, more) => {
    expect(of(angle)).toEqual({
      ...failed(cause),
      ...always,
      reasons: [
        `outside-range, figure figure.seat-angle, high 47 °, low 43 °, measured ${angle} °`,
        ...more,
      ],
      actions: ["remake-cone"],
    });
  });
});

// SAE J513: 1/4 in has 7/16-20, 5/16 in has 1/2-20.
test("an adapter is named by the sizes and threads of both ends", () => {
  const advice = (port: "1/4" | "5/16", hose: "1/4" | "5/16") =>
    said(servicePortAdapter({ port, hose }).advice);
  expect([advice("5/16", "1/4"), advice("1/4", "5/16"), advice("5/16", "5/16")]).toEqual([
    "adapter-needed, hose 1/4, hoseThread 7/16-20, port 5/16, portThread 1/2-20",
    "adapter-needed, hose 5/16, hoseThread 1/2-20, port 1/4, portThread 7/16-20",
    "hose-fits, hose 5/16, hoseThread 1/2-20",
  ]);
});
