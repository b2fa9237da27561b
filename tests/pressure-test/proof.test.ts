// A pass is proof: tests that once passed, each with its right answer. The limit of 1 % of the fill, the shortest hold
// (mechanical code checklist, 10 min) and what counts as a test of an R-410A system (at least its own pressure at
// 68 °F: ANSI/ASHRAE 15, exception for tests with the own charge) are the library's documented rules.
import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import {
  assessPressureLog,
  assessPressureTest,
  leakGas,
  type PressureTest,
} from "hvac-install-math/pressure-test";
import {
  degF,
  deltaF,
  hour,
  liter,
  minute,
  paM3PerS,
  percent,
  psi,
  psia,
  psig,
  type Quantity,
  second,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { careful } from "./careful-instruments.ts";

const hurried = {
  pressure: { accuracy: psi(2), resolution: psi(0.1) },
  temperature: { accuracy: deltaF(1), resolution: deltaF(0.1) },
};
/** 500 psig at 70 °F, and what the gauge shows 14 h later at the same temperature. */
const overnight = (end: number, change: Partial<PressureTest> = {}): PressureTest => ({
  start: { pressure: psig(500), temperature: degF(70) },
  end: { pressure: psig(end), temperature: degF(70), elapsed: hour(14) },
  volume: liter(3),
  instruments: careful,
  criterion: { maximumDrop: psi(5) },
  atmosphere: standardAtmosphere,
  ...change,
});
const said = (test: PressureTest) => {
  const { outcome, cause, reasons, actions } = assessPressureTest(test);
  return {
    outcome,
    cause,
    reasons: reasons.map(({ code }) => code.replace("pressure-test.", "")),
    actions: actions.map(({ code }) => code.replace("pressure-test.", "")),
  };
};

describe("a wide limit", () => {
  it("of 24 psi does not pass 18 psi lost of 500 overnight", () => {
    const test = said(overnight(482, { criterion: { maximumDrop: psi(24) } }));
    expect(test).toMatchObject({ outcome: "fail", cause: "leak" });
    expect(test.reasons.slice(0, 2)).toEqual(["above-limit", "leak-proven"]);
    expect(test.reasons).toContain("limit-lowered");
    expect(test.actions).toEqual(["find-by-bubbles", "repair-and-retest"]);
  });

  it("of 1 psi per hour does not pass 11 psi lost in 14 h", () => {
    const criterion = { maximumDrop: psi(1), per: hour(1) };
    expect(said(overnight(489, { criterion }))).toMatchObject({ outcome: "fail", cause: "leak" });
  });

  it("on the leak rate has a ceiling too", () => {
    const criterion = { maximumLeakRate: paM3PerS(1) };
    expect(said(overnight(489, { criterion })).outcome).toBe("fail");
    expect(assessPressureTest(overnight(500, { criterion })).limit?.in(psi)).toBeCloseTo(5, 9);
  });

  it("never passes a proven leak that it allows", () => {
    const test = said(overnight(498));
    expect(test).toMatchObject({ outcome: "inconclusive", cause: "leak" });
    expect(test.reasons[0]).toBe("leak-within-limit");
    expect(test.actions).toEqual(["find-by-bubbles", "repair-and-retest"]);
  });

  it("passes a tight system", () => {
    expect(said(overnight(500))).toMatchObject({ outcome: "pass", cause: undefined, actions: [] });
  });
});

describe("a test that is none", () => {
  it("is one of 30 s", () => {
    const end = { ...overnight(500).end, elapsed: second(30) };
    const test = said(overnight(500, { end }));
    expect([test.outcome, test.reasons[0]]).toEqual(["inconclusive", "short-hold"]);
    expect(test.actions).toEqual(["hold-at-least"]);
  });

  it("is one in which the gauge would not have moved by its step", () => {
    // 1 % of 500 psig an hour is 5 psi an hour: a step of 2 psi takes 24 min.
    const instruments = { ...careful, pressure: { accuracy: psi(5), resolution: psi(2) } };
    const heldFor = (minutes: number) =>
      said(
        overnight(500, { instruments, end: { ...overnight(500).end, elapsed: minute(minutes) } }),
      ).reasons;
    expect(heldFor(20)[0]).toBe("hold-below-step");
    expect(heldFor(25)).not.toContain("hold-below-step");
  });

  it("is one at 150 psig for R-410A, also on a cold day", () => {
    const test = overnight(0, {
      start: { pressure: psig(150), temperature: degF(10) },
      end: { pressure: psig(150), temperature: degF(10), elapsed: hour(14) },
      criterion: { maximumDrop: psi(1.5) },
      // At rest at 10 °F it has 77 psia, less than the nitrogen; in summer it has more.
      refrigerant: { gas: leakGas.R410A, pressure: psia(77) },
    });
    expect(said(test)).toMatchObject({ outcome: "inconclusive", actions: ["fill-higher"] });
    expect(said(test).reasons[0]).toBe("fill-below-service");
  });

  it("is one below the manual's pressure or hold, or above what is marked", () => {
    const required = (change: PressureTest["required"]) =>
      said(overnight(500, { required: change as object }));
    expect(required({ testPressure: psig(550) }).reasons[0]).toBe("fill-below-manual");
    expect(required({ hold: hour(24) }).reasons[0]).toBe("hold-below-manual");
    const marked = [
      { part: "high side", pressure: psig(600) },
      { part: "low side", pressure: psig(450) },
    ] as const;
    expect(required({ marked }).reasons[0]).toBe("above-marked");
    expect(required({ marked }).actions).toEqual(["lower-pressure"]);
    const kept = { testPressure: psig(500), hold: hour(14), marked: marked.slice(0, 1) };
    expect(required(kept).outcome).toBe("pass");
  });

  it("is not told from the fill where neither manual nor refrigerant is stated, and that is an assumption", () => {
    const assumed = (change: Partial<PressureTest>) =>
      assessPressureTest(overnight(500, change)).assumptions.map(({ code }) => code);
    const code = "pressure-test.fill-unchecked";
    expect(assumed({})).toContain(code);
    expect(assumed({ required: { testPressure: psig(500) } })).not.toContain(code);
    expect(assumed({ refrigerant: { gas: leakGas.R410A, pressure: psia(210) } })).not.toContain(
      code,
    );
  });

  it("is one with instruments without error", () => {
    const exact = {
      pressure: { accuracy: psi(0), resolution: psi(0) },
      temperature: { accuracy: deltaF(0), followsGasWithin: deltaF(0) },
    };
    const test = said(overnight(500, { instruments: exact }));
    expect(test.outcome).toBe("inconclusive");
    expect(test.reasons.slice(0, 2)).toEqual(["gauge-without-error", "thermometer-without-error"]);
    expect(test.actions).toEqual(["state-gauge", "state-thermometer"]);
  });
});

describe("what decides is asked for", () => {
  // 500 psig at 80 °F is 479.4 psig at 60 °F where all the gas is outdoors, and 489.5 psig where half of it stays at
  // 80 °F (p₂ = p₁ · 2/(1 + 540/520), real nitrogen): a leak of 8 psi then looks like a rise of 2 psi.
  const outdoors = (change: Partial<PressureTest> = {}) =>
    overnight(0, {
      start: { pressure: psig(500), temperature: degF(80) },
      end: { pressure: psig(481.4), temperature: degF(60), elapsed: hour(12) },
      instruments: hurried,
      ...change,
    });

  it("one thermometer outdoors and half of the gas indoors hides 8 psi", () => {
    const test = said(outdoors());
    expect([test.outcome, test.cause]).toEqual(["inconclusive", undefined]);
    expect(test.actions).toContain("state-elsewhere");
    const stated = { elsewhere: { share: percent(50), change: deltaF(1) }, sinceFill: hour(1) };
    const asked = said(outdoors({ ...stated, instruments: careful }));
    expect(asked).toMatchObject({ outcome: "fail", cause: "leak" });
  });

  it("gas still warm from the fill feigns a leak of 6 psi", () => {
    // 5 °F too warm at the first reading: 500 psig falls by 5 psi, and by 6 psi with 6 °F.
    const end = { pressure: psig(494), temperature: degF(70), elapsed: hour(1) };
    const early = said(overnight(0, { end, instruments: hurried }));
    expect([early.outcome, early.cause]).toEqual(["inconclusive", undefined]);
    expect(early.actions).toContain("state-since-fill");
    const settled = {
      sinceFill: hour(1),
      elsewhere: { share: percent(0) },
      instruments: careful,
    };
    expect(said(overnight(0, { end, ...settled })).outcome).toBe("fail");
  });

  it("a log from right after the fill is not failed either", () => {
    const { criterion, atmosphere, volume } = overnight(0);
    const readings = Array.from({ length: 13 }, (_, i) => ({
      elapsed: minute(5 * i),
      pressure: psig(494 + 6 * Math.exp((-5 * i) / 15)),
      temperature: degF(70),
    }));
    const log = { readings, instruments: hurried, criterion, atmosphere, volume };
    const { outcome, cause } = assessPressureLog(log as never);
    expect([outcome, cause]).toEqual(["inconclusive", undefined]);
  });
});

describe("what a pass leaves open", () => {
  it("is said as a finding, with the hold that would prove less", () => {
    const { cautions, smallestProvableLeak } = assessPressureTest(overnight(500));
    expect(cautions[0]).toMatchObject({ code: "pressure-test.smallest-leak", kind: "finding" });
    const text = explain(cautions[0] as never, english);
    expect(text).toContain("A hold of 28 h would prove about half of that.");
    const twice = assessPressureTest(
      overnight(500, { end: { ...overnight(500).end, elapsed: hour(28) } }),
    );
    const ratio = (twice.smallestProvableLeak?.si ?? 0) / (smallestProvableLeak?.si ?? 1);
    expect(ratio).toBeGreaterThan(0.5);
    expect(ratio).toBeLessThan(0.55);
  });

  it("names a longer hold where the weather makes the drop less certain with time", () => {
    // One thermometer, an hour after the fill: what a day does unseen grows nearly with the time (documented), so twice
    // the hold proves little more. The hold that is named proves about half.
    const settled = (hours: number) =>
      assessPressureTest(
        overnight(500, {
          instruments: hurried,
          sinceFill: hour(1),
          end: { ...overnight(500).end, elapsed: hour(hours) },
        }),
      );
    const smallest = (hours: number) => settled(hours).smallestProvableLeak?.si ?? 0;
    expect(smallest(8) / smallest(4)).toBeGreaterThan(0.7);
    const { hold = hour(0) } = (settled(4).cautions[0]?.values ?? {}) as Record<
      string,
      Quantity<"duration">
    >;
    expect(hold.in(hour)).toBeGreaterThan(8);
    expect(smallest(hold.in(hour)) / smallest(4)).toBeLessThan(0.56);
    expect(smallest(hold.in(hour)) / smallest(4)).toBeGreaterThan(0.35);
  });

  it("asks for no more of a hold whose first reading has to be taken again", () => {
    const test = said(
      overnight(0, {
        instruments: hurried,
        end: { pressure: psig(499.5), temperature: degF(70), elapsed: hour(1) },
      }),
    );
    expect(test.actions).toEqual(["state-elsewhere", "state-since-fill"]);
  });

  it("names a method that can find a leak of the size that is proven", () => {
    // Bubbles show 1e-5 Pa·m³/s within a minute (leak-testing handbooks), foam 1e-6 (from memory).
    const action = (liters: number) => {
      const volume = liter(liters);
      const [first] = assessPressureTest(overnight(480, { volume })).actions;
      return first && explain(first, english);
    };
    // Q = V·Δp/Δt: 20 psi of 3 L in 14 h are 8.2e-3 Pa·m³/s.
    expect(action(3)).toContain("watch each for 1 min");
    expect(action(3e-3)).toContain("watch the bubble solution on each joint for 10 min");
    expect(action(1e-4)).toContain("use a nonflammable tracer gas");
    expect(action(1e-4)).toContain("at each joint for 10 s"); // from memory
  });
});
