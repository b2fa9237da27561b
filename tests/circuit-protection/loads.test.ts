// Nameplate figures from the parts at the edges of each rule. By hand from UL 1995, 37.14 and 37.15, and NFPA 70 (2023),
// 440.6(A), 440.12(B), 440.22(A) and (B); CSA C22.1, 28-704 and 28-708.
import {
  assessNameplate,
  cec2024,
  compressorProtection,
  type Load,
  nameplateFromParts,
  nec2023,
} from "hvac-install-math/circuit-protection";
import { ampere, kW } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { codes, sentences } from "./fixtures.ts";

const load = (kind: Load["kind"], amperes: number, more: Partial<Load> = {}): Load => ({
  kind,
  current: ampere(amperes),
  ...more,
});
/** Minimum circuit ampacity, calculated protection, largest standard size, sum, of the only mode. */
const figures = (...loads: Load[]) => {
  const { modes } = nameplateFromParts(loads);
  expect(modes).toHaveLength(1);
  return modes.map((mode) => [
    mode.minimumCircuitAmpacity.in(ampere),
    mode.calculatedProtection.in(ampere),
    mode.maximumOvercurrentProtection.in(ampere),
    mode.ratedLoadCurrent.in(ampere),
  ])[0];
};

describe("the figures", () => {
  it("take the largest motor once, in whatever order the parts are given", () => {
    // 1.25 × 20 + 6 + 2 = 33, 2.25 × 20 + 8 = 53
    const parts = [load("motor", 6), load("compressor", 20), load("motor", 2)];
    expect(figures(...parts)).toEqual([33, 53, 50, 28]);
    expect(figures(...[...parts].reverse())).toEqual([33, 53, 50, 28]);
  });

  it("take a motor for the largest where it is larger than the compressor", () => {
    expect(figures(load("compressor", 8), load("motor", 10))).toEqual([20.5, 30.5, 30, 18]);
  });

  it("count several alike, each as one", () => {
    // 1.25 × 10 + 10 = 22.5, 2.25 × 10 + 10 = 32.5; the sum 20
    expect(figures(load("compressor", 10, { count: 2 }))).toEqual([22.5, 32.5, 30, 20]);
  });

  it("take 125 % of everything with heat, and the next size up where 125 % of the heater asks for it", () => {
    // 1.25 × (2 + 30) = 40; 2.25 × 2 + 30 = 34.5: down to 30 A is below 37.5 A, so up to 35 A, so to 40 A
    expect(figures(load("heater", 30), load("motor", 2))).toEqual([40, 34.5, 40, 32]);
    // 1.25 × 16 = 20 A is the standard size below 2.25 × 2 + 16 = 20.5 A: enough for the heater, not for 22.5 A
    expect(figures(load("heater", 16), load("motor", 2))).toEqual([22.5, 20.5, 25, 18]);
  });

  it("say each step of the size with its figures, and no step that was not needed", () => {
    const steps = (...loads: Load[]) => sentences(nameplateFromParts(loads).modes[0]?.steps ?? []);
    const down = (amperes: string) => `${amperes} is not a standard size: next size down.`;
    expect(steps(load("heater", 30), load("motor", 2))).toEqual([
      down("34.5 A"),
      "Below 125 % of the heater: next size up, 35 A.",
      "Below the minimum circuit ampacity: 40 A.",
    ]);
    expect(steps(load("heater", 16), load("motor", 2))).toEqual([
      down("20.5 A"),
      "Below the minimum circuit ampacity: 25 A.",
    ]);
    // 40 A is the ampacity itself, 1.25 × (10 + 2 + 20)
    const parts = [load("compressor", 10), load("motor", 2), load("heater", 20)];
    expect(steps(...parts)).toEqual([down("44.5 A")]);
    expect(steps(load("compressor", 6))).toEqual([down("13.5 A"), "Never below 15 A."]);
    expect(nameplateFromParts(parts).sources).toContainEqual({
      source: "ul-1995",
      clause: "37.14, 37.15",
    });
  });

  it("count other loads of 1 A or more and none below", () => {
    expect(figures(load("compressor", 10), load("other", 1))).toEqual([13.5, 23.5, 20, 11]);
    expect(figures(load("compressor", 10), load("other", 0.9))).toEqual([12.5, 22.5, 20, 10]);
  });

  it("let no binary noise decide a size: 2.25 × 17.6 + 0.4 is 40 A", () => {
    expect(figures(load("compressor", 17.6), load("motor", 0.4))).toEqual([22.4, 40, 40, 18]);
  });

  it("have 15 A as their floor, and say so only where it was needed", () => {
    const steps = (amperes: number) =>
      codes(nameplateFromParts([load("compressor", amperes)]).modes[0]?.steps ?? []);
    expect(figures(load("compressor", 6))).toEqual([7.5, 13.5, 15, 6]);
    expect(steps(6)).toContain("smallest-rating");
    expect(figures(load("compressor", 7))).toEqual([8.75, 15.75, 15, 7]);
    expect(steps(7)).toEqual(["next-size-down"]);
  });

  it("reach 800 A and no further", () => {
    expect(figures(load("heater", 640))?.slice(0, 3)).toEqual([800, 640, 800]);
    expect(() => figures(load("heater", 640.1))).toThrow(
      "loads: a minimum circuit ampacity of 800.125 A is not allowed; allowed: at most 800 A",
    );
  });

  it("sum the power of several heaters, and assume less than 50 kW only where none is stated", () => {
    const heaters = (power: number, count: number) =>
      nameplateFromParts([load("heater", 60, { power: kW(power), count }), load("motor", 4)]);
    expect(heaters(24.9, 2).minimumCircuitAmpacity.in(ampere)).toBe(155); // 1.25 × (4 + 120)
    expect(heaters(25, 2).minimumCircuitAmpacity.in(ampere)).toBe(125); // 1.25 × 4 + 120
    expect(heaters(25, 2).assumptions).toEqual([]);
    expect(nameplateFromParts([load("compressor", 10)]).assumptions).toEqual([]);
    // The power of another kind of load is no heat.
    const fan = load("motor", 4, { power: kW(60) });
    const mixed = nameplateFromParts([load("heater", 120), fan]);
    expect(mixed.minimumCircuitAmpacity.in(ampere)).toBe(155);
    expect(codes(mixed.assumptions)).toEqual(["heater-below-50-kw"]);
  });

  it("belong to the modes that are named, in their order, and a load without modes to all of them", () => {
    const { modes, maximumOvercurrentProtection, disconnectRating } = nameplateFromParts([
      load("heater", 20, { runsIn: ["defrost", "heating"] }),
      load("compressor", 10, { runsIn: ["cooling", "defrost"] }),
      load("motor", 2),
    ]);
    const found = modes.map((mode) => [mode.mode, mode.ratedLoadCurrent.in(ampere)]);
    expect(found).toEqual([
      ["cooling", 12],
      ["heating", 22],
      ["defrost", 32],
    ]);
    // Defrost: 2.25 × 10 + 2 + 20 = 44.5 A down to 40 A, as much as 1.25 × 32
    expect(maximumOvercurrentProtection.in(ampere)).toBe(40);
    expect(disconnectRating.in(ampere)).toBe(36.8); // 1.15 × 32
    expect(nameplateFromParts([load("motor", 2)]).modes[0]?.mode).toBe("any");
  });

  it("take a locked-rotor current from the rated-load current up", () => {
    const locked = (amperes: number) => () =>
      nameplateFromParts([load("compressor", 10, { lockedRotorCurrent: ampere(amperes) })]);
    expect(locked(10)).not.toThrow();
    expect(locked(9.9)).toThrow("loads[0].lockedRotorCurrent: 9.9 A is not allowed");
    const selected = load("compressor", 10, { branchCircuitSelectionCurrent: ampere(10) });
    expect(figures(selected)?.[3]).toBe(10);
    expect(() => figures(load("heater", 10, { power: kW(0) }))).toThrow("loads[0].power");
  });
});

describe("a nameplate against its parts", () => {
  // 1.25 × 16 + 1.5 = 21.5 A; 2.25 × 16 + 1.5 = 37.5 A, so 35 A
  const check = (mca: number, mop: number) => {
    const loads = [load("compressor", 16), load("motor", 1.5)];
    const { outcome, cause, reasons } = assessNameplate({
      loads,
      minimumCircuitAmpacity: ampere(mca),
      maximumOvercurrentProtection: ampere(mop),
    });
    return [outcome, cause, ...codes(reasons)];
  };
  const [fits, right] = ["ampacity-fits", "protection-fits"];

  it("fits within half of its last digit, tenths or whole amperes", () => {
    expect(check(21.5, 35)).toEqual(["pass", undefined, fits, right]);
    expect(check(21.45, 35)).toEqual(["pass", undefined, fits, right]);
    expect(check(21.55, 35)).toEqual(["pass", undefined, fits, right]);
    expect(check(21, 35)).toEqual(["pass", undefined, fits, right]);
    expect(check(22, 35)).toEqual(["pass", undefined, fits, right]);
  });

  it("fails below, and is open above what the parts explain", () => {
    const low = "ampacity-too-low";
    const high = "protection-too-high";
    expect(check(21.4, 35)).toEqual(["fail", low, low, right]);
    expect(check(20, 35)).toEqual(["fail", low, low, right]);
    expect(check(21.6, 35)).toEqual(["inconclusive", undefined, "ampacity-unexplained", right]);
    expect(check(23, 35)).toEqual(["inconclusive", undefined, "ampacity-unexplained", right]);
    expect(check(21.5, 40)).toEqual(["fail", high, high, fits]);
    expect(check(20, 40)).toEqual(["fail", low, low, high]);
    expect(check(23, 40)).toEqual(["fail", high, high, "ampacity-unexplained"]);
  });

  it("says both pairs of figures", () => {
    const { reasons } = assessNameplate({
      loads: [load("compressor", 16), load("motor", 1.5)],
      minimumCircuitAmpacity: ampere(21.5),
      maximumOvercurrentProtection: ampere(40),
    });
    expect(sentences(reasons)).toEqual([
      "The marked protection is too high: 40 A; the parts allow 35 A.",
      "Minimum circuit ampacity: 21.5 A marked, 21.5 A from the parts.",
    ]);
  });

  it("may have its maximum as low as its ampacity", () => {
    expect(check(21.5, 21.5)).toEqual(["pass", undefined, fits, right]);
    expect(() => check(21.5, 21.4)).toThrow("maximum-below-ampacity");
  });
});

describe("compressor protection by the code", () => {
  const american = (...loads: Load[]) => {
    const { normal, ifItWillNotStart } = compressorProtection({ rules: nec2023, loads });
    return [normal.calculated.in(ampere), ifItWillNotStart?.calculated.in(ampere)];
  };
  const canadian = (...loads: Load[]) =>
    compressorProtection({ rules: cec2024, loads }).normal.calculated.in(ampere);

  it("takes 175 and 225 % of the largest compressor and all else once, 440.22(B)(1)", () => {
    // 35 + 12 + 3 and 45 + 15
    const parts = [load("compressor", 12), load("compressor", 20), load("motor", 2)];
    expect(american(...parts, load("other", 1))).toEqual([50, 60]);
    // A motor as large as the compressor is no larger one.
    expect(american(load("compressor", 20), load("motor", 20))).toEqual([55, 65]);
    // A heater as large as the motors counts once: 35 + 20, 45 + 20
    expect(american(load("compressor", 20), load("heater", 20))).toEqual([55, 65]);
  });

  it("lets a larger motor and a larger heater decide, 440.22(B)(2)", () => {
    // 1.75 × 24 + 20, whether it starts or not
    expect(american(load("compressor", 20), load("motor", 24))).toEqual([62, 62]);
    // The size above 21 A is 25 A; the compressor 20 A and the motor 2 A beside it
    const beside = [load("compressor", 20), load("motor", 2)];
    expect(american(...beside, load("heater", 21))).toEqual([47, 47]);
  });

  it("takes half of the locked-rotor current of the largest compressor in Canada, and all else once", () => {
    const marked = load("compressor", 20, { lockedRotorCurrent: ampere(100) });
    const smaller = load("compressor", 12, { lockedRotorCurrent: ampere(200) });
    // 50 + 12 + 2 + 5 + 1
    const parts = [smaller, marked, load("motor", 2), load("heater", 5), load("other", 1)];
    expect(canadian(...parts)).toBe(70);
    // A larger motor runs beside it: 50 + 24
    expect(canadian(marked, load("motor", 24))).toBe(74);
    expect(canadian(load("compressor", 20))).toBe(60); // 6 × 20 / 2
  });

  it("looks only at modes with a compressor, and at the worst of these", () => {
    const parts = [
      load("compressor", 20, { runsIn: ["cooling", "heating"] }),
      load("heater", 90, { runsIn: ["emergency heating"] }),
      load("motor", 3, { runsIn: ["cooling"] }),
    ];
    expect(american(...parts)).toEqual([38, 48]);
  });
});
