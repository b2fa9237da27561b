import { explain } from "hvac-install-math/assessment";
import { type AdditionalChargeInput, additionalCharge } from "hvac-install-math/line-set";
import { ft, g, gPerM, kgPerM, lb, lbPerFt, m, oz, ozPerFt, psi } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

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
    expect(reasons.map((reason) => explain(reason))).toEqual([
      "Add 3.2 oz: 60 ft is 20 ft more than the 40 ft pre-charged, at 0.16 oz/ft.",
    ]);
  });

  it("adds nothing to a short run that only adds, and says that the factory charge covers it", () => {
    const result = additionalCharge({ ...run, length: ft(12) });
    expect(result.additionalCharge.si).toBe(0);
    expect(result.outcome).toBe("pass");
    expect(codes({ ...run, length: ft(12) })).toEqual(["nothing-to-add"]);
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
    expect(result.reasons[0]?.code).toBe("take-out");
  });

  it("leaves a short run open when the manual's rule is not stated, but not a long one", () => {
    const open = additionalCharge({ ...run, length: ft(12), shortLineRule: "not-stated" });
    expect(open.outcome).toBe("inconclusive");
    expect(open.reasons[0]?.code).toBe("short-line-rule-not-stated");
    expect(additionalCharge({ ...run, shortLineRule: "not-stated" }).outcome).toBe("pass");
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
    expect(codes({ ...run, ...limits })).toEqual(["too-long", "add"]);
    expect(additionalCharge({ ...run, ...limits }).outcome).toBe("fail");
    expect(codes({ ...run, ...limits, length: ft(9) })).toEqual(["too-short", "nothing-to-add"]);
    expect(additionalCharge({ ...run, ...limits, length: ft(50) }).outcome).toBe("pass");
  });

  it("holds the total against the most that the room or unit may hold", () => {
    const bounds = { maximumCharge: lb(3), factoryCharge: oz(46) };
    expect(additionalCharge({ ...run, ...bounds }).outcome).toBe("fail");
    expect(additionalCharge({ ...run, ...bounds, factoryCharge: oz(44) }).outcome).toBe("pass");
    const unknown = additionalCharge({ ...run, maximumCharge: lb(3) });
    expect(unknown.outcome).toBe("inconclusive");
    expect(unknown.reasons[0]?.code).toBe("total-unknown");
    expect(additionalCharge({ ...run, maximumCharge: oz(3) }).outcome).toBe("fail");
  });

  it("carries the uncertainty of the tape and the scale into the charge and its limits", () => {
    const tape = { ...run, lengthUncertainty: ft(0.5), factoryCharge: oz(40) };
    // 2 · 0.16 oz/ft · 0.5 ft
    expect(additionalCharge(tape).expandedUncertainty?.toString(oz, 3)).toBe("0.160 oz");
    expect(additionalCharge(run).expandedUncertainty).toBeUndefined();
    expect(additionalCharge({ ...tape, maximumLength: ft(60.5) }).outcome).toBe("inconclusive");
    expect(additionalCharge({ ...tape, maximumLength: ft(61) }).outcome).toBe("pass");
    expect(additionalCharge({ ...tape, maximumLength: ft(59) }).outcome).toBe("fail");
    const near = additionalCharge({ ...tape, maximumCharge: oz(43.25) });
    expect([near.outcome, near.reasons[0]?.code]).toEqual(["inconclusive", "over-limit"]);
    const coarse = additionalCharge({ ...run, scaleResolution: oz(0.5) });
    expect(coarse.expandedUncertainty?.toString(oz, 3)).toBe("0.289 oz");
  });

  it("does not let a hair of binary arithmetic break a limit that is met exactly", () => {
    const exact = { ...run, factoryCharge: oz(44.8), maximumCharge: lb(3), maximumLength: ft(60) };
    expect(additionalCharge(exact).outcome).toBe("pass");
  });

  it("lists what was not given", () => {
    const given = { maximumLength: ft(82), minimumLength: ft(10) };
    expect(additionalCharge(run).assumptions.map(({ code }) => code)).toEqual([
      "maximum-length-not-given",
      "minimum-length-not-given",
      "room-limit-not-given",
    ]);
    expect(additionalCharge({ ...run, ...given, safetyClass: "A1" }).assumptions).toEqual([]);
    expect(
      additionalCharge({ ...run, ...given, safetyClass: "A2L" }).assumptions.map((a) => a.code),
    ).toEqual(["room-limit-not-given"]);
  });

  it("warns of flammables unless the refrigerant is known not to burn, and of toxic ones", () => {
    const cautions = (safetyClass?: AdditionalChargeInput["safetyClass"]) =>
      additionalCharge({ ...run, ...(safetyClass && { safetyClass }) }).cautions.map((c) => c.code);
    expect(cautions()).toEqual(["weigh", "manual-decides", "under-pressure", "flammable"]);
    expect(cautions("A1")).not.toContain("flammable");
    expect(cautions("A3")).toContain("flammable");
    expect(cautions("B2L")).toEqual(expect.arrayContaining(["flammable", "toxic"]));
  });

  it("answers in the unit of the rate", () => {
    const unitOf = (rate: AdditionalChargeInput["rate"]) =>
      additionalCharge({ ...run, rate }).additionalCharge.unit.symbol;
    expect(unitOf(gPerM(15))).toBe("g");
    expect(unitOf(kgPerM(0.015))).toBe("kg");
    expect(unitOf(lbPerFt(0.01))).toBe("lb");
    expect(unitOf({ mass: g(15), per: m(1) })).toBe("g");
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
    expect(bad({ rate: undefined })).toThrow(/^rate: undefined/);
    expect(bad({ rate: oz(3) })).toThrow(/^rate: mass 3 oz is not allowed/);
    expect(bad({ rate: kgPerM(15) })).toThrow(/^rate: 15 kg\/m .* Look at the unit/);
    expect(bad({ rate: { mass: oz(-3), per: ft(5) } })).toThrow(/^rate\.mass: -3 oz/);
    expect(bad({ rate: { mass: oz(3), per: ft(0) } })).toThrow(/^rate\.per: 0 ft/);
    expect(bad({ shortLineRule: "both" })).toThrow(/^shortLineRule: the text "both"/);
    expect(bad({ maximumLength: m(0) })).toThrow(/^maximumLength: 0 m/);
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
    ).toThrow(/^factoryCharge: 6 oz is not allowed; allowed: more than the 6.4 oz/);
  });

  it("leaves the caller's input alone", () => {
    const frozen = Object.freeze({ ...run });
    expect(() => additionalCharge(frozen)).not.toThrow();
  });
});
