import { type AdditionalChargeInput, additionalCharge } from "hvac-install-math/line-set";
import {
  ft,
  g,
  gPerM,
  kg,
  kgPerM,
  lb,
  lbPerFt,
  m,
  oz,
  ozPerFt,
  psi,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { inEnglish, sentences } from "./in-english.ts";

const run: AdditionalChargeInput = {
  length: ft(60),
  preChargedLength: ft(40),
  rate: ozPerFt(0.16),
  shortLineRule: "add-only",
};
const codes = (input: AdditionalChargeInput) => additionalCharge(input).reasons.map((r) => r.code);

describe("additionalCharge", () => {
  it("says in words what to add and why", () => {
    const { reasons } = additionalCharge(run);
    expect(sentences(reasons)).toEqual([
      "By the rule, add 3.2 oz: the line is 60 ft, 20 ft more than the pre-charged 40 ft, at 0.16 oz/ft.",
    ]);
  });

  it("adds nothing to a short run that only adds, and says that the factory charge covers it", () => {
    const result = additionalCharge({ ...run, length: ft(12) });
    expect(result.additionalCharge.si).toBe(0);
    expect(result.outcome).toBe("pass");
    expect(codes({ ...run, length: ft(12) })).toEqual(["line-set.nothing-to-add"]);
  });

  it("takes out from a short run where the manual says so", () => {
    const result = additionalCharge({
      ...run,
      length: ft(10),
      preChargedLength: ft(15),
      rate: { mass: oz(3), per: ft(5) },
      shortLineRule: "add-and-subtract",
      factoryCharge: oz(60),
    });
    expect(result.additionalCharge.toString()).toBe("-3 oz");
    expect(result.totalCharge?.toString()).toBe("57 oz");
    expect(sentences(result.reasons)).toEqual([
      "By the rule, take out 3 oz: the line is 10 ft, 5 ft less than the pre-charged 15 ft, at 0.6 oz/ft.",
    ]);
    expect(result.reasons[0]?.code).toBe("line-set.take-out");
  });

  it("has nothing to add to, take from or ask of a run of just the pre-charged length", () => {
    for (const shortLineRule of ["add-only", "add-and-subtract", "not-stated"] as const) {
      const even = { ...run, length: ft(40), shortLineRule };
      expect(additionalCharge(even).outcome).toBe("pass");
      expect(codes(even)).toEqual(["line-set.nothing-to-add"]);
    }
  });

  it("takes a short run as not uncertain where nothing is taken out, whatever the tape", () => {
    const short = { ...run, length: ft(12), lengthUncertainty: ft(0.5) };
    expect(additionalCharge(short).expandedUncertainty).toBeUndefined();
    const subtracts = { ...short, shortLineRule: "add-and-subtract" } as const;
    // 2 · 0.16 oz/ft · 0.5 ft
    expect(additionalCharge(subtracts).expandedUncertainty?.toString(oz, 3)).toBe("0.160 oz");
  });

  it("leaves a short run open when the manual's rule is not stated, but not a long one", () => {
    const open = additionalCharge({ ...run, length: ft(12), shortLineRule: "not-stated" });
    expect(open.outcome).toBe("inconclusive");
    expect(sentences(open.reasons)).toEqual([
      "The line, 12 ft, is 28 ft shorter than the pre-charged 40 ft. The short-line rule is not known.",
    ]);
    expect(open.reasons[0]?.code).toBe("line-set.short-line-rule-not-known");
    expect(open.actions?.map(({ code }) => code)).toEqual(["line-set.enter-short-line-rule"]);
    expect(additionalCharge({ ...run, shortLineRule: "not-stated" }).outcome).toBe("pass");
  });

  // 5/8 in annealed is 0.545 in inside (ASTM B280-20): 1.505 cm²; R-22 at 25 °C 1191 kg/m³ (its equation of state)
  it("leaves a rate open that no liquid line of a small split holds: 0.22 oz/ft read as lb/ft", () => {
    const most = Math.PI * (0.545 * 0.0127) ** 2 * 1191;
    expect(most).toBeGreaterThan(0.175);
    const slip = additionalCharge({ ...run, rate: lbPerFt(0.22) });
    expect(slip.outcome).toBe("inconclusive");
    expect(slip.reasons[0]?.code).toBe("line-set.rate-too-high");
    expect(slip.actions?.[0]?.code).toBe("line-set.read-rate-again");
    expect(additionalCharge({ ...run, rate: kgPerM(most) }).outcome).toBe("pass");
    expect(additionalCharge({ ...run, rate: kgPerM(0.201) }).outcome).toBe("inconclusive");
    expect(additionalCharge({ ...run, length: ft(40), rate: lbPerFt(0.22) }).outcome).toBe("pass");
  });

  it("rounds to the scale's step and keeps the unrounded figure", () => {
    const result = additionalCharge({
      length: m(11.3),
      preChargedLength: m(5),
      rate: gPerM(15),
      shortLineRule: "add-only",
      factoryCharge: g(900),
      scaleResolution: g(5),
    });
    expect(result.unroundedCharge.toString()).toBe("94.5 g");
    expect(result.additionalCharge.toString()).toBe("95 g");
    expect(result.totalCharge?.toString()).toBe("995 g");
  });

  it("fails beyond the longest and below the shortest run", () => {
    const limits = { maximumLength: ft(50), minimumLength: ft(10) };
    expect(codes({ ...run, ...limits })).toEqual(["line-set.above-maximum", "line-set.add"]);
    expect(additionalCharge({ ...run, ...limits }).outcome).toBe("fail");
    expect(codes({ ...run, ...limits, length: ft(9) })).toEqual([
      "line-set.below-minimum",
      "line-set.nothing-to-add",
    ]);
    expect(additionalCharge({ ...run, ...limits, length: ft(50) }).outcome).toBe("pass");
  });

  it("says which limit is or may be broken, and by what", () => {
    const first = (change: Partial<AdditionalChargeInput>) =>
      inEnglish(additionalCharge({ ...run, ...change }).reasons[0]);
    const lengthUncertainty = ft(1);
    expect(first({ maximumLength: ft(50) })).toMatch(/^Length 60 ft: above the 50 ft maximum/);
    expect(first({ maximumLength: ft(59), lengthUncertainty })).toMatch(
      /^Length 60 ft ± 2 ft: too close to the 59 ft maximum/,
    );
    expect(first({ minimumLength: ft(70) })).toMatch(/^Length 60 ft: below the 70 ft minimum/);
    expect(first({ minimumLength: ft(61), lengthUncertainty })).toMatch(
      /^Length 60 ft ± 2 ft: too close to the 61 ft minimum/,
    );
    const factoryCharge = oz(40);
    expect(first({ maximumCharge: oz(43), factoryCharge })).toBe(
      "Total charge 43.2 oz: above the 43 oz maximum.",
    );
    expect(first({ maximumCharge: oz(43.3), factoryCharge, lengthUncertainty })).toBe(
      "Total charge 43.2 oz ± 0.32 oz: too close to the 43.3 oz maximum to call.",
    );
    expect(first({ maximumCharge: oz(43) })).toBe(
      "The factory charge was not given, so the total was not checked against 43 oz.",
    );
  });

  it("names its sources, the safety classes among them where one is stated", () => {
    const sources = (change: Partial<AdditionalChargeInput>) =>
      additionalCharge({ ...run, ...change }).sources.map(({ source }) => source);
    expect(sources({})).toEqual(["manufacturer-manuals"]);
    expect(sources({ safetyClass: "A1" })).toEqual(["manufacturer-manuals", "ashrae-34-2022"]);
  });

  it("holds the total against the most that the room or unit may hold", () => {
    const bounds = { maximumCharge: lb(3), factoryCharge: oz(46) };
    expect(additionalCharge({ ...run, ...bounds }).outcome).toBe("fail");
    expect(additionalCharge({ ...run, ...bounds, factoryCharge: oz(44) }).outcome).toBe("pass");
    const unknown = additionalCharge({ ...run, maximumCharge: lb(3) });
    expect(unknown.outcome).toBe("inconclusive");
    expect(unknown.reasons[0]?.code).toBe("line-set.total-not-known");
    expect(additionalCharge({ ...run, maximumCharge: oz(3) }).outcome).toBe("fail");
  });

  it("carries the uncertainty of the tape and the scale into the charge and its limits", () => {
    const tape = { ...run, lengthUncertainty: ft(0.5), factoryCharge: oz(40) };
    // 2 · 0.16 oz/ft · 0.5 ft
    expect(additionalCharge(tape).expandedUncertainty?.toString(oz, 3)).toBe("0.160 oz");
    expect(additionalCharge(run).expandedUncertainty).toBeUndefined();
    expect(additionalCharge({ ...tape, maximumLength: ft(59.5) }).outcome).toBe("inconclusive");
    expect(additionalCharge({ ...tape, maximumLength: ft(60) }).outcome).toBe("pass");
    expect(additionalCharge({ ...tape, maximumLength: ft(59) }).outcome).toBe("fail");
    const near = additionalCharge({ ...tape, maximumCharge: oz(43.25) });
    expect([near.outcome, near.reasons[0]?.code]).toEqual([
      "inconclusive",
      "line-set.near-maximum",
    ]);
    const coarse = additionalCharge({ ...run, scaleResolution: oz(0.5) });
    expect(coarse.expandedUncertainty?.toString(oz, 3)).toBe("0.289 oz");
  });

  it("does not let a hair of binary arithmetic break a limit that is met exactly", () => {
    const exact = { ...run, factoryCharge: oz(44.8), maximumCharge: lb(3), maximumLength: ft(60) };
    expect(additionalCharge(exact).outcome).toBe("pass");
  });

  it("says what to do about every limit that is not kept, and nothing on a clean pass", () => {
    const todo = (change: Partial<AdditionalChargeInput>) =>
      sentences(additionalCharge({ ...run, ...change }).actions);
    expect(todo({})).toEqual([]);
    expect(todo({ maximumLength: ft(50) })).toEqual([
      "Shorten the line to 50 ft or less, or install a unit that allows it. No charge makes up for it.",
    ]);
    const both = { maximumCharge: oz(43), factoryCharge: oz(40) };
    expect(todo({ ...both, maximumLength: ft(59), lengthUncertainty: ft(1) })[0]).toBe(
      "Measure again, more accurately: Length.",
    );
    expect(todo(both)[0]).toMatch(/^Do not add this charge\. .* more than 43 oz\.$/);
    expect(todo({ maximumCharge: oz(43) })).toEqual([
      "Enter the factory charge from the nameplate.",
    ]);
  });

  it("lists what was not given", () => {
    const given = { maximumLength: ft(82), minimumLength: ft(10) };
    expect(additionalCharge(run).assumptions.map(({ code }) => code)).toEqual([
      "line-set.maximum-length-not-checked",
      "line-set.minimum-length-not-checked",
      "line-set.room-limit-not-checked",
    ]);
    expect(additionalCharge({ ...run, ...given, safetyClass: "A1" }).assumptions).toEqual([]);
    expect(
      additionalCharge({ ...run, ...given, safetyClass: "A2L" }).assumptions.map((a) => a.code),
    ).toEqual(["line-set.room-limit-not-checked"]);
  });

  it("warns of flammables unless the refrigerant is known not to burn, and of toxic ones", () => {
    const cautions = (safetyClass?: AdditionalChargeInput["safetyClass"]) =>
      additionalCharge({ ...run, ...(safetyClass && { safetyClass }) }).cautions.map((c) => c.code);
    expect(cautions()).toEqual([
      "line-set.charge-after-tests",
      "safety.open-under-pressure",
      "safety.refrigerant-contact",
      "safety.flammable-refrigerant",
      "safety.others-govern",
    ]);
    expect(cautions("A1")).not.toContain("safety.flammable-refrigerant");
    expect(cautions("A3")).toContain("safety.flammable-refrigerant");
    expect(cautions("B2L")).toEqual(
      expect.arrayContaining(["safety.flammable-refrigerant", "safety.toxic-refrigerant"]),
    );
    expect(cautions("B1")).not.toContain("safety.flammable-refrigerant");
    expect(cautions("B1")).toContain("safety.toxic-refrigerant");
  });

  it("answers in the unit of the rate", () => {
    const unitOf = (rate: AdditionalChargeInput["rate"]) =>
      additionalCharge({ ...run, rate }).additionalCharge.unit.symbol;
    expect(unitOf(gPerM(15))).toBe("g");
    expect(unitOf(kgPerM(0.015))).toBe("kg");
    expect(unitOf(lbPerFt(0.01))).toBe("lb");
    expect(unitOf({ mass: g(15), per: m(1) })).toBe("g");
  });

  it("answers in the unit of the scale before that of the factory charge", () => {
    const unitOf = (change: Partial<AdditionalChargeInput>) =>
      additionalCharge({ ...run, ...change }).additionalCharge.unit;
    expect(unitOf({ factoryCharge: g(1500) })).toBe(g);
    expect(unitOf({ factoryCharge: g(1500), scaleResolution: lb(0.01) })).toBe(lb);
    expect(unitOf({ scaleResolution: lb(0.01) })).toBe(lb);
  });

  it("names the argument that it cannot use", () => {
    const bad = (change: object) => () =>
      additionalCharge({ ...run, ...change } as AdditionalChargeInput);
    expect(bad({ length: 60 })).toThrow(/^length: 60 is not allowed; allowed: the kind length/);
    expect(bad({ length: undefined })).toThrow(/^length: undefined/);
    expect(bad({ length: ft(-1) })).toThrow(
      /^length: -1 ft is not allowed; allowed: at least 0 ft/,
    );
    expect(bad({ preChargedLength: psi(4) })).toThrow(
      /^preChargedLength: pressureDifference 4 psi/,
    );
    expect(bad({ preChargedLength: m(75), maximumLength: m(25) })).toThrow(
      /^preChargedLength: 75 m is not allowed; allowed: at most 25 m/,
    );
    expect(bad({ rate: undefined })).toThrow(/^rate: undefined/);
    expect(bad({ rate: oz(3) })).toThrow(/^rate: mass 3 oz is not allowed/);
    expect(bad({ rate: kgPerM(15) })).toThrow(/^rate: 15 kg\/m .*line-set\.rate-unit/);
    expect(bad({ rate: { mass: oz(-3), per: ft(5) } })).toThrow(/^rate\.mass: -3 oz/);
    expect(bad({ rate: { mass: oz(3), per: ft(0) } })).toThrow(/^rate\.per: 0 ft/);
    expect(bad({ shortLineRule: "both" })).toThrow(/^shortLineRule: the text "both"/);
    expect(bad({ maximumLength: m(0) })).toThrow(/^maximumLength: 0 m/);
    expect(bad({ minimumLength: m(-1) })).toThrow(/^minimumLength: -1 m/);
    expect(bad({ factoryCharge: oz(0) })).toThrow(/^factoryCharge: 0 oz/);
    expect(bad({ maximumCharge: oz(0) })).toThrow(/^maximumCharge: 0 oz/);
    expect(bad({ scaleResolution: g(0) })).toThrow(/^scaleResolution: 0 g/);
    expect(bad({ lengthUncertainty: ft(-1) })).toThrow(/^lengthUncertainty: -1 ft/);
    expect(bad({ safetyClass: "A4" })).toThrow(/^safetyClass: the text "A4"/);
    expect(bad({ length: { kind: "length", si: Number.NaN, unit: m } })).toThrow(/^length:/);
  });

  it("refuses a factory charge that the rule would empty", () => {
    expect(() =>
      additionalCharge({
        ...run,
        length: ft(0),
        shortLineRule: "add-and-subtract",
        factoryCharge: oz(6),
      }),
    ).toThrow(/^rate: 0.16 oz\/ft, which takes out 6.4 oz is not allowed; allowed: .* 6 oz/);
  });

  it("refuses a factory charge of which nothing would be left", () => {
    // 0.25 kg/m · (1 m − 3 m) takes out 0.5 kg.
    const short = { length: m(1), preChargedLength: m(3), rate: kgPerM(0.25) };
    const empty = { ...short, shortLineRule: "add-and-subtract", factoryCharge: kg(0.5) } as const;
    expect(() => additionalCharge(empty)).toThrow(/^rate: 0.25 kg\/m, which takes out 0.5 kg/);
  });

  it("hands out what nobody can bend", () => {
    const result = additionalCharge(run);
    expect(Object.isFrozen(result) && Object.isFrozen(result.reasons[0]?.values)).toBe(true);
  });

  it("leaves the caller's input alone", () => {
    const frozen = Object.freeze({ ...run });
    expect(() => additionalCharge(frozen)).not.toThrow();
  });
});
