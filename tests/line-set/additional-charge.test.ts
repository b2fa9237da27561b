import { explain } from "hvac-install-math/assessment";
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
    expect(result.reasons.map((reason) => explain(reason))).toEqual([
      "Take out 3 oz: 10 ft is 5 ft less than the 15 ft pre-charged, at 0.6 oz/ft.",
    ]);
    expect(result.reasons[0]?.code).toBe("take-out");
  });

  it("has nothing to add to, take from or ask of a run of just the pre-charged length", () => {
    for (const shortLineRule of ["add-only", "add-and-subtract", "not-stated"] as const) {
      const even = { ...run, length: ft(40), shortLineRule };
      expect(additionalCharge(even).outcome).toBe("pass");
      expect(codes(even)).toEqual(["nothing-to-add"]);
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
    expect(open.reasons.map((reason) => explain(reason))).toEqual([
      "12 ft is 28 ft short of the 40 ft pre-charged: ask the manual whether to take refrigerant out.",
    ]);
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

  it("says which limit is or may be broken, and by what", () => {
    const first = (change: Partial<AdditionalChargeInput>) =>
      explain(additionalCharge({ ...run, ...change }).reasons[0] as never);
    const lengthUncertainty = ft(1);
    expect(first({ maximumLength: ft(50) })).toMatch(/^60 ft is longer than the 50 ft allowed/);
    expect(first({ maximumLength: ft(61), lengthUncertainty })).toMatch(
      /^60 ft may be longer than the 61 ft allowed/,
    );
    expect(first({ minimumLength: ft(70) })).toMatch(/^60 ft is shorter than the 70 ft needed/);
    expect(first({ minimumLength: ft(59), lengthUncertainty })).toMatch(
      /^60 ft may be shorter than the 59 ft needed/,
    );
    const factoryCharge = oz(40);
    expect(first({ maximumCharge: oz(43), factoryCharge })).toBe(
      "43.2 oz is more than the 43 oz allowed.",
    );
    expect(first({ maximumCharge: oz(43.3), factoryCharge, lengthUncertainty })).toBe(
      "43.2 oz may be more than the 43.3 oz allowed.",
    );
    expect(first({ maximumCharge: oz(43) })).toBe(
      "State the factory charge to hold the total to 43 oz.",
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
    const said = (safetyClass?: AdditionalChargeInput["safetyClass"]) =>
      additionalCharge({ ...run, ...(safetyClass && { safetyClass }) }).cautions.map((caution) =>
        explain(caution),
      );
    expect(said().at(-1)).toMatch(/^If flammable \(A2L, A2, A3\), the refrigerant: no ignition/);
    expect(said("A3").at(-1)).toMatch(/^A3 refrigerant: no ignition/);
    expect(said("B1").at(-1)).toBe("B1 refrigerant is toxic: protect your breathing.");
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
    expect(bad({ rate: kgPerM(15) })).toThrow(/^rate: 15 kg\/m .* Look at the unit/);
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
    ).toThrow(/^factoryCharge: 6 oz is not allowed; allowed: more than the 6.4 oz/);
  });

  it("refuses a factory charge of which nothing would be left", () => {
    // 0.25 kg/m · (1 m − 3 m) takes out 0.5 kg.
    const short = { length: m(1), preChargedLength: m(3), rate: kgPerM(0.25) };
    const empty = { ...short, shortLineRule: "add-and-subtract", factoryCharge: kg(0.5) } as const;
    expect(() => additionalCharge(empty)).toThrow(/^factoryCharge: 0.5 kg/);
  });

  it("leaves the caller's input alone", () => {
    const frozen = Object.freeze({ ...run });
    expect(() => additionalCharge(frozen)).not.toThrow();
  });
});
