import { explain as explainIn } from "hvac-install-math/assessment";
import * as flare from "hvac-install-math/flare-joint";
import { english } from "hvac-install-math/language/en";
import {
  degreeAngle,
  ftLb,
  InvalidInputError,
  inch,
  mm,
  newtonMeter,
  OutOfRangeError,
  percent,
  psig,
} from "hvac-install-math/quantity";
import { describe, expect, test } from "vitest";

// biome-ignore lint/suspicious/noExplicitAny: what JavaScript could pass
type Anything = any;

const explain = (said: flare.FlareJointStatement | undefined) => said && explainIn(said, english);

function argumentOf(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    expect((error as Error).name).toMatch(/InvalidInputError|OutOfRangeError/);
    return (error as InvalidInputError).argument;
  }
  throw new Error("nothing was thrown");
}

describe("the torque of a flare nut", () => {
  test("is judged by what all sources share, and is open where they disagree", () => {
    const outcomeAt = (n: number) =>
      flare.assessFlareTorque({ tube: "5/8", torque: newtonMeter(n) }).outcome;
    expect([61, 62, 67.9, 68, 75.4, 75.5, 82, 82.1].map(outcomeAt)).toEqual([
      "fail",
      "inconclusive",
      "inconclusive",
      "pass",
      "pass",
      "inconclusive",
      "inconclusive",
      "fail",
    ]);
  });

  test("says where it rests on memory alone", () => {
    const assumed = (tube: flare.FlareTube) =>
      flare
        .assessFlareTorque({ tube, torque: newtonMeter(36) })
        .assumptions.map(({ code }) => code);
    expect(assumed("5/16")).toContain("flare-joint.one-source");
    expect(assumed("3/8")).not.toContain("flare-joint.one-source");
    const cited = (tube: flare.FlareTube) =>
      flare.flareTorque(tube).windows.map(({ citation }) => citation.source);
    expect(cited("3/4")).toEqual(["from-memory", "en-378-2", "manufacturer-manuals"]);
    expect(cited("5/8")[0]).toBe("manufacturer-manuals");
  });

  test("says that the sources disagree and who decides", () => {
    const verdict = flare.assessFlareTorque({ tube: "5/8", torque: newtonMeter(80) });
    expect(verdict.reasons[0]?.code).toBe("flare-joint.sources-disagree");
    expect(explain(verdict.reasons[0])).toMatch(/disagree\. All allow 68 N·m to 75\.4 N·m/);
    expect(verdict.conflicts).toHaveLength(2);
    expect(verdict.cause).toBeUndefined();
  });

  test("is judged by the manual alone when its window is given", () => {
    const manual = { low: newtonMeter(68), high: newtonMeter(82) };
    const verdict = flare.assessFlareTorque({ tube: "5/8", torque: newtonMeter(80), manual });
    expect(verdict.outcome).toBe("pass");
    expect(verdict.conflicts).toEqual([]);
    expect(verdict.assumptions.map(({ code }) => code)).toEqual(["flare-joint.exact-instrument"]);
  });

  // Windows in N·m and, for the second table, the ft·lb that two manuals print beside them.
  const inNewtonMeters: [flare.FlareTube, number, number][] = (
    ["1/4", "5/16", "3/8", "1/2", "5/8", "3/4"] as const
  ).flatMap((tube) =>
    flare
      .flareTorque(tube)
      .windows.map(({ low, high }): [flare.FlareTube, number, number] => [
        tube,
        low.in(newtonMeter),
        high.in(newtonMeter),
      ]),
  );
  const inFootPounds: [flare.FlareTube, number, number][] = [
    ["1/4", 10, 13],
    ["3/8", 25, 30],
    ["1/2", 36, 45],
    ["5/8", 50, 60],
    ["3/4", 71.7, 87.5],
  ];
  const byManual = (tube: flare.FlareTube, low: number, high: number, unit: typeof ftLb) =>
    flare.assessFlareTorque({
      tube,
      torque: unit((low + high) / 2),
      manual: { low: unit(low), high: unit(high) },
    });

  test("believes the window of every published source as a manual's", () => {
    for (const [tube, low, high] of inNewtonMeters) {
      expect(byManual(tube, low, high, newtonMeter).outcome).toBe("pass");
    }
    for (const [tube, low, high] of inFootPounds) {
      expect(byManual(tube, low, high, ftLb).outcome).toBe("pass");
    }
    expect(byManual("1/4", 15, 20, newtonMeter).outcome).toBe("pass"); // another manual, from memory
    expect(byManual("3/8", 37, 37, newtonMeter).outcome).toBe("pass"); // one figure
  });

  test("does not pass a manual's window whose unit was mistaken, and says so", () => {
    for (const [tube, low, high] of inNewtonMeters) {
      const { outcome, reasons } = byManual(tube, low, high, ftLb);
      expect(outcome).toBe("inconclusive");
      expect(reasons.map(({ code }) => code)).toEqual([
        "flare-joint.manual-range-apart",
        "flare-joint.newton-meter-as-foot-pound",
      ]);
    }
    for (const [tube, low, high] of inFootPounds) {
      const { outcome, reasons } = byManual(tube, low, high, newtonMeter);
      expect(outcome).toBe("inconclusive");
      expect(reasons[1]?.code).toBe("flare-joint.foot-pound-as-newton-meter");
    }
  });

  test("names the published window, in the unit of the manual's, and its sources", () => {
    const { reasons, sources, conflicts } = byManual("5/8", 100, 120, ftLb);
    // 61.8 and 82 N·m over 1.355 818 N·m per ft·lb
    expect(explain(reasons[0])).toBe(
      "The manual’s range, 100 ft·lb to 120 ft·lb, does not overlap the published 45.58 ft·lb to 60.48 ft·lb for 5/8 in.",
    );
    expect(sources.map(({ source }) => source)).toContain("en-378-2");
    expect(conflicts).toHaveLength(2);
  });

  test("does not pass a manual's window so wide that it decides nothing", () => {
    for (const [low, high] of [
      [0.1, 500],
      [14, 19],
    ] as const) {
      const { outcome, reasons } = byManual("1/4", low, high, newtonMeter);
      expect(outcome).toBe("inconclusive");
      expect(reasons.map(({ code }) => code)).toEqual(["flare-joint.manual-range-wide"]);
    }
    expect(byManual("1/4", 14, 18.9, newtonMeter).outcome).toBe("pass"); // 1.350 < 1.3558
  });

  test("still fails what neither a doubtful manual nor any source allows", () => {
    const manual = { low: ftLb(34), high: ftLb(42) }; // 46.1 to 56.9 N·m
    const at = (torque: number) =>
      flare.assessFlareTorque({ tube: "3/8", torque: newtonMeter(torque), manual });
    expect(at(32).cause).toBe("under-tightened");
    expect(at(57).cause).toBe("over-tightened");
    expect(at(57).reasons.map(({ code }) => code)).toEqual([
      "flare-joint.outside-range",
      "flare-joint.manual-range-apart",
      "flare-joint.newton-meter-as-foot-pound",
    ]);
    for (const torque of [33, 38, 44, 50, 56]) {
      expect(at(torque)).toMatchObject({ outcome: "inconclusive" });
      expect(at(torque).cause).toBeUndefined();
    }
  });

  test("warns of a pass that only the manual allows", () => {
    const manual = { low: newtonMeter(68), high: newtonMeter(84) }; // invented
    const codes = (torque: number) =>
      flare
        .assessFlareTorque({ tube: "5/8", torque: newtonMeter(torque), manual })
        .cautions.map(({ code }) => code);
    expect(codes(83)).toContain("flare-joint.beyond-sources");
    expect(codes(82)).not.toContain("flare-joint.beyond-sources");
    expect(codes(90)).not.toContain("flare-joint.beyond-sources"); // it fails
  });

  // A torque on a limit would ask for a wrench of ±0 N·m.
  test("asks for no instrument of ±0 where a figure lies on its limit", () => {
    const wrench = { accuracy: newtonMeter(1) };
    const manual = { low: newtonMeter(34), high: newtonMeter(42) }; // invented
    for (const torque of [34, 42, 34.001]) {
      const found = flare.assessFlareTorque({
        tube: "3/8",
        torque: newtonMeter(torque),
        wrench,
        manual,
      });
      expect(found.outcome).toBe("inconclusive");
      expect(found.actions?.map(explain)).toEqual([
        "Bring it to the middle of 34 N·m to 42 N·m. No instrument can tell a figure this near a limit.",
      ]);
    }
    const micrometer = { accuracy: mm(0.01) };
    const wall = { tube: "3/8", refrigerant: "R32", wall: mm(0.8), micrometer } as const;
    expect(explain(flare.assessFlareWall(wall).actions?.[0])).toBe(
      "Choose a tube clearly above 0.8 mm. No instrument can tell a figure this near a limit.",
    );
  });

  test("judges by the manual's window once it was read again, whatever is published", () => {
    const manual = { low: newtonMeter(20), high: newtonMeter(25) }; // invented, below all published
    const at = (torque: number, manualReadAgain: boolean) =>
      flare.assessFlareTorque({
        tube: "3/8",
        torque: newtonMeter(torque),
        manual,
        manualReadAgain,
      });
    expect(at(22, false).outcome).toBe("inconclusive");
    const found = at(22, true);
    expect(found.outcome).toBe("pass");
    expect(found.assumptions.map(({ code }) => code)).toContain("flare-joint.manual-read-again");
    expect(found.cautions.map(({ code }) => code)).toContain("flare-joint.beyond-sources");
    expect(at(38, true).cause).toBe("over-tightened");
    expect(
      argumentOf(() =>
        flare.assessFlareTorque({
          tube: "3/8",
          torque: newtonMeter(22),
          manualReadAgain: 1 as Anything,
        }),
      ),
    ).toBe("manualReadAgain");
  });

  // EN 378-2:2016 from memory: 10 mm 33 to 42 N·m, one source alone.
  test("of metric tube is judged by EN 378-2 and says that it is one source", () => {
    const found = flare.assessFlareTorque({ tube: "10 mm", torque: newtonMeter(38) });
    expect(found.outcome).toBe("pass");
    expect(found.assumptions.map(({ code }) => code)).toContain("flare-joint.one-source");
    const inInches = { low: ftLb(34), high: ftLb(42) };
    expect(
      explain(
        flare.assessFlareTorque({ tube: "10 mm", torque: newtonMeter(38), manual: inInches })
          .reasons[0],
      ),
    ).toMatch(/for 10 mm\.$/);
  });

  test("stays open within the wrench's guard band and names the wrench that would decide", () => {
    const joint = { tube: "1/4", torque: newtonMeter(16.9) } as const;
    expect(flare.assessFlareTorque(joint).outcome).toBe("pass");
    const verdict = flare.assessFlareTorque({ ...joint, wrench: { relativeAccuracy: percent(4) } });
    expect(verdict.outcome).toBe("inconclusive");
    // Limits ±0.676 N·m are 0.3903 N·m standard; the guard band is 1.645 times that.
    expect(verdict.measured.standardUncertainty.in(newtonMeter)).toBeCloseTo(0.3903, 4);
    // A nut is not tightened twice to read it better: the manual's window comes first. Common practice, no source.
    expect(verdict.actions?.[0]?.code).toBe("flare-joint.state-manual-range");
    expect(explain(verdict.actions?.[1])).toMatch(/±0\.31\d+ N·m or better/);
    const better = { accuracy: newtonMeter(0.31) };
    expect(flare.assessFlareTorque({ ...joint, wrench: better }).outcome).toBe("pass");
  });

  // EN 378-2:2016, 1/4 in: 14 to 18 N·m. 16 is the middle of it, and 11.8 ft·lb; 12 ft·lb is 16.3 N·m.
  test("asks for the scale of the wrench before a flare is cut off, in the unit that was read", () => {
    for (const [torque, unit, other] of [
      [ftLb(16), "ft·lb", "16 N·m"],
      [newtonMeter(12), "N·m", "12 ft·lb"],
    ] as const) {
      const { outcome, reasons, actions } = flare.assessFlareTorque({ tube: "1/4", torque });
      expect(outcome).toBe("fail");
      expect(explain(reasons[1])).toContain(other);
      expect(actions?.[0]?.code).toBe("flare-joint.check-scale");
      expect(explain(actions?.[1])?.match(/ft·lb|N·m/g)).toEqual([unit, unit]);
    }
    // Four times too much on either scale: no question of the unit.
    const far = flare.assessFlareTorque({ tube: "1/4", torque: newtonMeter(60) });
    expect(far.actions?.map(({ code }) => code)).toEqual(["flare-joint.remake-and-tighten"]);
  });

  // EN 378-2:2016 and two manuals at 5/8 in: 63 to 77 and 68 to 82 N·m; 52 ft·lb is 70.5 N·m.
  test("names the manual's window where the published ones leave a torque too close to call", () => {
    const wrench = { relativeAccuracy: percent(4) };
    const found = flare.assessFlareTorque({ tube: "5/8", torque: ftLb(52), wrench });
    expect(found.outcome).toBe("inconclusive");
    expect(found.actions?.[0]?.code).toBe("flare-joint.state-manual-range");
    const manual = { low: newtonMeter(63), high: newtonMeter(82) };
    expect(flare.assessFlareTorque({ tube: "5/8", torque: ftLb(52), wrench, manual }).outcome).toBe(
      "pass",
    );
  });

  test("agrees between sources for the small sizes and conflicts at 5/8 and 3/4", () => {
    const sizes = (["1/4", "5/16", "3/8", "1/2", "5/8", "3/4"] as const).filter(
      (tube) => flare.flareTorque(tube).conflicts.length > 0,
    );
    expect(sizes).toEqual(["5/8", "3/4"]);
  });

  test("carries cautions, the instrument's assumption and its sources", () => {
    const verdict = flare.assessFlareTorque({ tube: "3/8", torque: ftLb(27) });
    expect(verdict.cautions.map(({ code }) => code)).toEqual([
      "flare-joint.not-a-leak-test",
      "safety.open-under-pressure",
      "safety.refrigerant-contact",
      "safety.flammable-refrigerant",
      "safety.others-govern",
    ]);
    expect(verdict.assumptions.map(({ code }) => code)).toEqual([
      "flare-joint.exact-instrument",
      "flare-joint.published-ranges",
    ]);
    expect(verdict.sources.map(({ source }) => source)).toContain("en-378-2");
  });

  test("names the bad argument", () => {
    const joint = { tube: "3/8", torque: newtonMeter(38) } as const;
    const assess = (more: Anything) => () => flare.assessFlareTorque({ ...joint, ...more });
    expect(argumentOf(assess({ torque: newtonMeter(-1) }))).toBe("torque");
    expect(argumentOf(assess({ torque: undefined }))).toBe("torque");
    expect(argumentOf(assess({ torque: psig(38) }))).toBe("torque");
    expect(argumentOf(assess({ tube: "7/8" }))).toBe("tube");
    expect(argumentOf(assess({ tube: "toString" }))).toBe("tube");
    expect(argumentOf(assess({ confidence: 1.2 }))).toBe("confidence");
    expect(argumentOf(assess({ wrench: {} }))).toBe("wrench");
    const both = { accuracy: newtonMeter(1), relativeAccuracy: percent(4) };
    expect(argumentOf(assess({ wrench: both }))).toBe("wrench");
    const upsideDown = { low: newtonMeter(40), high: newtonMeter(30) };
    expect(argumentOf(assess({ manual: upsideDown }))).toBe("manual.low");
    expect(argumentOf(assess({ manual: { low: newtonMeter(40) } }))).toBe("manual.high");
    expect(argumentOf(() => newtonMeter(Number.NaN))).toBe("N·m");
  });

  test("leaves the caller's data as they were", () => {
    const input = {
      tube: "3/8",
      torque: newtonMeter(38),
      wrench: { relativeAccuracy: percent(4) },
    } as const;
    const before = JSON.stringify(input);
    flare.assessFlareTorque(Object.freeze(input));
    expect(JSON.stringify(input)).toBe(before);
  });
});

describe("the flare itself", () => {
  test("is refused below and above its diameter, with the cause", () => {
    const at = (d: number) =>
      flare.assessFlareDiameter({ tube: "1/2", refrigerant: "R32", diameter: mm(d) });
    expect(at(16.1).cause).toBe("flare-too-small");
    expect(at(16.2).outcome).toBe("pass");
    expect(at(16.6).outcome).toBe("pass");
    expect(at(16.7).cause).toBe("flare-too-large");
  });

  test("stays open when the caliper cannot tell", () => {
    const verdict = flare.assessFlareDiameter({
      tube: "1/4",
      refrigerant: "R410A",
      diameter: mm(9.08),
      caliper: { accuracy: mm(0.05), resolution: mm(0.01) },
    });
    expect(verdict.outcome).toBe("inconclusive");
    expect(verdict.reasons[0]?.code).toBe("flare-joint.instrument-cannot-tell");
  });

  test("of 5/16 has no published diameter but takes the manual's", () => {
    const joint = { tube: "5/16", refrigerant: "R410A" } as const;
    expect(() => flare.flareDiameterLimits(joint)).toThrow(OutOfRangeError);
    const manual = { low: mm(10), high: mm(10.4) }; // invented
    expect(flare.assessFlareDiameter({ ...joint, diameter: mm(10.2), manual }).outcome).toBe(
      "pass",
    );
  });

  test("is not passed by a manual's diameters that are none of this size or decide nothing", () => {
    const at = (d: number, manual: flare.FlareLimits<"length">, tube: flare.FlareTube = "3/8") =>
      flare.assessFlareDiameter({ tube, refrigerant: "R410A", diameter: mm(d), manual });
    const codes = (...a: Parameters<typeof at>) => at(...a).reasons.map(({ code }) => code);
    const limits = (low: number, high: number) => ({ low: mm(low), high: mm(high) });
    expect(at(13.3, limits(13.1, 13.5)).outcome).toBe("pass"); // meets 12.6 to 13.2: believed
    expect(at(12.7, limits(12.6, 13)).outcome).toBe("pass"); // that of R22
    const larger = limits(16.2, 16.6); // that of 1/2 in
    expect(at(16.4, larger).outcome).toBe("inconclusive");
    expect(codes(16.4, larger)).toEqual(["flare-joint.manual-range-apart"]);
    expect(at(13, larger).outcome).toBe("inconclusive");
    expect(codes(12, larger)).toEqual([
      "flare-joint.outside-range",
      "flare-joint.manual-range-apart",
    ]);
    expect(codes(17, larger)).toEqual([
      "flare-joint.outside-range",
      "flare-joint.manual-range-apart",
    ]);
    expect(at(13, { low: inch(12.8), high: inch(13.2) }).outcome).toBe("inconclusive");
    expect(at(13, limits(12, 13)).outcome).toBe("pass");
    expect(codes(13, limits(1, 500))).toEqual(["flare-joint.manual-diameters-wide"]);
    expect(codes(10.2, limits(9.5, 11), "5/16")).toEqual(["flare-joint.manual-diameters-wide"]);
    expect(explain(at(16.4, larger).reasons[0])).toBe(
      "The manual’s range, 16.2 mm to 16.6 mm, does not overlap the published 12.6 mm to 13.2 mm for 3/8 in.",
    );
  });

  test("is not passed by a manual's wall that any tube on the market has", () => {
    const at = (wall: number, least: number) =>
      flare.assessFlareWall({
        tube: "3/8",
        refrigerant: "R32",
        wall: mm(wall),
        manualMinimum: mm(least),
      });
    expect(at(0.61, 0.6).outcome).toBe("pass");
    expect(at(0.61, 0.5).outcome).toBe("pass");
    const thin = at(0.61, 0.03); // 0.03 in, taken for mm
    expect(thin.outcome).toBe("inconclusive");
    expect([...thin.reasons, ...(thin.actions ?? [])].map(explain)).toEqual([
      "The stated minimum wall, 0.03 mm, is below any tube on the market. Manuals require 0.7 mm or more.",
      "Read the manual again, with its unit.",
    ]);
    expect(at(0.02, 0.03).cause).toBe("wall-too-thin");
  });

  test("needs a thick enough wall; B280 passes where manuals ask 0.8 mm, thin line-set tube fails", () => {
    const at = (tube: flare.FlareTube, wall: ReturnType<typeof mm>) =>
      flare.assessFlareWall({ tube, refrigerant: "R32", wall }).outcome;
    expect(at("3/8", inch(0.032))).toBe("pass");
    expect(at("1/4", inch(0.03))).toBe("inconclusive");
    expect(at("5/8", inch(0.035))).toBe("inconclusive");
    expect(at("5/8", mm(0.71))).toBe("fail");
  });

  test("takes its minimum wall from the manual for R22 and 3/4 in", () => {
    const wall = mm(1.07);
    const r22 = { tube: "3/8", refrigerant: "R22", wall } as const;
    expect(argumentOf(() => flare.assessFlareWall(r22))).toBe("manualMinimum");
    const large = { tube: "3/4", refrigerant: "R410A", wall } as const;
    expect(() => flare.assessFlareWall(large)).toThrow(OutOfRangeError);
    expect(flare.assessFlareWall({ ...large, manualMinimum: mm(1.2) }).cause).toBe("wall-too-thin");
  });

  test("takes any refrigerant with the manual's own figures, and R454B as R410A", () => {
    const limits = { low: mm(12.6), high: mm(13) }; // invented
    const r290 = { tube: "3/8", refrigerant: "R290", diameter: mm(12.9) } as const;
    expect(flare.assessFlareDiameter({ ...r290, manual: limits }).outcome).toBe("pass");
    expect(argumentOf(() => flare.assessFlareDiameter(r290))).toBe("refrigerant");
    const wall = { tube: "3/8", refrigerant: "R290", wall: mm(0.7) } as const;
    expect(flare.assessFlareWall({ ...wall, manualMinimum: mm(0.7) }).outcome).toBe("pass");
    expect(argumentOf(() => flare.assessFlareWall(wall))).toBe("manualMinimum");
    const mixture = flare.assessFlareDiameter({ ...r290, refrigerant: "R454B" });
    expect(mixture.outcome).toBe("pass");
    expect(mixture.assumptions.map(({ code }) => code)).toContain(
      "flare-joint.wider-flare-assumed",
    );
  });

  test("with a 37° cone is called a hydraulic flare", () => {
    const verdict = flare.assessFlareCone({ seatAngle: degreeAngle(37) });
    expect(verdict.cause).toBe("cone-too-steep");
    expect(verdict.reasons[1]?.code).toBe("flare-joint.hydraulic-flare");
    expect(flare.assessFlareCone({ seatAngle: degreeAngle(48) }).cause).toBe("cone-too-flat");
  });

  test("tightened by angle passes, fails and has no figure for 5/16", () => {
    const turned = (tube: flare.FlareTube, degrees: number) =>
      flare.assessFlareTurn({ tube, turn: degreeAngle(degrees) }).outcome;
    expect(turned("1/4", 60)).toBe("pass");
    expect(turned("3/4", 36)).toBe("fail");
    expect(() => turned("5/16", 60)).toThrow(OutOfRangeError);
  });
});

describe("sizes, threads and ports", () => {
  test("finds a tube by any of the ways its diameter is printed", () => {
    expect(
      [mm(6.35), mm(7.94), inch(0.312), mm(9.52), mm(15.88), mm(19.06)].map(flare.flareTube),
    ).toEqual(["1/4", "5/16", "5/16", "3/8", "5/8", "3/4"]);
  });

  test("finds metric tube by its diameter and refuses lengths that are none", () => {
    expect([mm(6), mm(8), mm(10.1), mm(12), mm(15), mm(18)].map(flare.flareTube)).toEqual([
      "6 mm",
      "8 mm",
      "10 mm",
      "12 mm",
      "15 mm",
      "18 mm",
    ]);
    expect(() => flare.flareTube(mm(14))).toThrow(OutOfRangeError);
    expect(() => flare.flareTube(mm(0))).toThrow(InvalidInputError);
  });

  test("finds the thread of every tube and the tube of every thread", () => {
    for (const tube of ["1/4", "5/16", "3/8", "1/2", "5/8", "3/4"] as const) {
      expect(flare.flareTubeOfThread(flare.flareThread(tube).name)).toBe(tube);
    }
    expect(() => flare.flareTubeOfThread("M10")).toThrow(/allowed: 7\/16-20, /);
    expect(flare.flareThread("3/4").majorDiameter.toString(inch, 4)).toBe("1.0625 in");
  });

  test("needs an adapter only where port and hose differ", () => {
    expect(flare.servicePortAdapter({ port: "1/4", hose: "1/4" }).needed).toBe(false);
    const adapter = flare.servicePortAdapter({ port: "5/16", hose: "1/4" });
    expect(adapter.needed).toBe(true);
    expect(adapter.port.name).toBe("1/2-20");
    expect(
      argumentOf(() => flare.servicePortAdapter({ port: "3/8" as Anything, hose: "1/4" })),
    ).toBe("port");
  });

  test("names what it has no figures for", () => {
    const unknown = { tube: "1/4", refrigerant: "R290" as Anything } as const;
    expect(argumentOf(() => flare.flareDiameterLimits(unknown))).toBe("refrigerant");
    expect(() => flare.flareNutSize(unknown)).toThrow(/flare-joint\.figure-from-manual/);
    expect(() => flare.flareNutSize({ tube: "5/16", refrigerant: "R32" })).toThrow(OutOfRangeError);
    const port = { refrigerant: "R290" as Anything, equipment: "mini-split" } as const;
    expect(argumentOf(() => flare.usualServicePort(port))).toBe("refrigerant");
  });
});
