// Which law applies, from when on, to what, and what it counts: every rule whole, and the day on which each begins or ends.
import * as charge from "hvac-install-math/charge-limit";
import { isInvalidInputError, kg, kW, lb } from "hvac-install-math/quantity";
import { R32, R290, R404A, R410A, R454B, R454C, R1234yf } from "hvac-install-math/refrigerants";
import { describe, expect, test } from "vitest";
import { argumentOf } from "../argument-of.ts";

type Parts = readonly (readonly [designation: string, massPercent: number])[];
const composed = (...parts: Parts) => ({
  composition: parts.map(([designation, massPercent]) => ({ designation, massPercent })),
});

describe("a warming potential", () => {
  const of = (basis: Parameters<typeof charge.blendWarmingPotential>[0]["basis"], parts: Parts) =>
    charge.blendWarmingPotential({ ...composed(...parts), basis });

  test.each([
    ["ipcc-ar4", "mean by mass", 675, "published"],
    ["ipcc-ar5", "mean by mass", 677, "published"],
    ["ipcc-ar6", "mean by mass", 771, "published"],
    ["eu-517-2014", "Annex IV", 675, "from-memory"],
    ["eu-2024-573", "Annex VI", 675, "published"],
    ["cfr-40-84", "84.64", 675, "published"],
  ] as const)("of R-32 by %s, %s, is %d, %s", (basis, clause, value, standing) => {
    const citation = { source: basis, clause };
    expect(of(basis, [["R-32", 100]])).toEqual({ value, standing, unlisted: [], citation });
  });

  test("rests on memory where one of its parts does, whichever comes first", () => {
    // 40 CFR 84.64: 675 for R-32 was read; 1 for R-1234yf is remembered: 0.689 · 675 + 0.311 · 1 = 465.386
    const parts: Parts = [
      ["R-32", 68.9],
      ["R-1234yf", 31.1],
    ];
    for (const order of [parts, [...parts].reverse()]) {
      const { value, standing } = of("cfr-40-84", order);
      expect([value.toFixed(3), standing]).toEqual(["465.386", "from-memory"]);
    }
  });

  test("of what a law does not list is 0 in the EU, and left out with its share in the US", () => {
    const parts: Parts = [
      ["R-999", 20],
      ["R-32", 80],
    ];
    // Regulation (EU) 2024/573, Annex VI: 0.8 · 675 = 540; 40 CFR 84.64(c): 675
    for (const [basis, value] of [
      ["eu-2024-573", 540],
      ["cfr-40-84", 675],
    ] as const) {
      expect(of(basis, parts)).toMatchObject({ value, unlisted: ["R-999"] });
      expect(argumentOf(() => of(basis, [["R-999", 100]]))).toBe("composition");
    }
    for (const basis of ["ipcc-ar5", "ipcc-ar6", "eu-517-2014"] as const) {
      expect(argumentOf(() => of(basis, parts))).toBe("composition[0].designation");
    }
  });

  test("of the example of Annex VI is 13.0", () => {
    // Regulation (EU) 2024/573, Annex VI: 60 % dimethyl ether (1), 10 % R-152a (124), 30 % isobutane (0)
    const parts: Parts = [
      ["RE170", 60],
      ["R-152a", 10],
      ["R-600a", 30],
    ];
    expect(of("eu-2024-573", parts).value).toBeCloseTo(13, 9);
  });

  test("that a basis does not have says what it has", () => {
    // IPCC AR4 has no value for HFOs, hydrocarbons and ammonia.
    try {
      of("ipcc-ar4", [["R-1234yf", 100]]);
      expect.unreachable();
    } catch (error) {
      if (!isInvalidInputError(error)) throw error;
      expect(error.allowed).toBe("R22, R32, R125, R134a, R143a, R152a, R744");
      expect(error.hint).toEqual({
        code: "charge-limit.no-value-by-basis",
        values: { basis: { verbatim: "ipcc-ar4" } },
      });
    }
    const nameless = [{ designation: 32, massPercent: 100 }];
    const call = () =>
      charge.blendWarmingPotential({ composition: nameless as never, basis: "eu-2024-573" });
    expect(argumentOf(call)).toBe("composition[0].designation");
  });

  test("times the charge is the carbon dioxide, in the unit of the charge", () => {
    const of = { refrigerant: R32, basis: "eu-2024-573" } as const;
    expect(charge.carbonDioxideEquivalent({ ...of, charge: kg(1.2) }).toString()).toBe("810 kg");
    expect(charge.carbonDioxideEquivalent({ ...of, charge: lb(2) }).toString()).toBe("1350 lb");
  });
});

describe("the leak check", () => {
  const EU = {
    region: "EU",
    from: "2024-03-11",
    readOn: "2024-02-20",
    citation: { source: "eu-2024-573", clause: "Articles 3(9), 5(1) and 7" },
    standing: "published",
  };
  const GB = {
    region: "GB",
    from: "2021-01-01",
    readOn: "2026-02",
    citation: {
      source: "eu-517-2014",
      clause: "Articles 2(1) and 4, as retained in Great Britain",
    },
  };
  const asked = (system: Parameters<typeof charge.leakCheckInterval>[0]) => {
    const { carbonDioxide, unsaturated, ...law } = charge.leakCheckInterval(system);
    return { ...law, counted: [carbonDioxide.toString(), unsaturated.toString()] };
  };

  test("is answered with the law, its dates and what of the charge it counts", () => {
    // 10 · 0.689 · 675 kg; R-1234yf counts by its mass, 3.11 kg
    expect(asked({ refrigerant: R454B, charge: kg(10) })).toEqual({
      ...EU,
      required: true,
      months: 12,
      counted: ["4650.75 kg", "3.11 kg"],
    });
    expect(asked({ refrigerant: R32, charge: kg(7), region: "GB" })).toEqual({
      ...GB,
      required: false,
      standing: "secondary",
      counted: ["4725 kg", "0 kg"],
    });
    // By 517/2014 a mixture counts whole: 10 · (0.689 · 675 + 0.311 · 4)
    expect(asked({ refrigerant: R454B, charge: kg(10), region: "GB" })).toEqual({
      ...GB,
      required: false,
      standing: "from-memory",
      counted: ["4663.19 kg", "3.11 kg"],
    });
  });

  test("counts no HFO and no hydrocarbon as carbon dioxide where none of Annex I is with it", () => {
    const counted = (refrigerant: charge.Composed, region: "EU" | "GB") =>
      asked({ refrigerant, charge: kg(10), region }).counted[0];
    for (const region of ["EU", "GB"] as const) {
      expect([R290, R1234yf].map((one) => counted(one, region))).toEqual(["0 kg", "0 kg"]);
    }
  });

  test("goes by the whole of a name, with its hyphen or without", () => {
    const counted = (designation: string) =>
      asked({ refrigerant: composed(["R-32", 50], [designation, 50]), charge: kg(10) }).counted;
    // Half of 10 kg is R-32: 3375 kg; a substance that the law does not list counts as 0.
    for (const other of ["R-32x", "xR-32", "R-1234yfx", "xR-1234yf"]) {
      expect(counted(other), other).toEqual(["3375 kg", "0 kg"]);
    }
    expect(counted("R32")).toEqual(["6750 kg", "0 kg"]);
    expect(counted("R1234yf")).toEqual(["3375 kg", "5 kg"]);
  });

  test("spares the sealed below 10 t or 2 kg, and in a home below 3 kg of gas", () => {
    const required = (
      refrigerant: charge.Composed,
      mass: number,
      more: Partial<Parameters<typeof charge.leakCheckInterval>[0]> = {},
    ) =>
      charge.leakCheckInterval({
        refrigerant,
        charge: kg(mass),
        hermeticallySealed: true,
        ...more,
      }).required;
    // R-32 at 675: 14.81 kg are 9.997 t, 14.82 kg 10.004 t
    expect([14.81, 14.82].map((mass) => required(R32, mass))).toEqual([false, true]);
    expect([1.99, 2].map((mass) => required(R1234yf, mass))).toEqual([false, true]);
    const home = { residential: true };
    // R-404A at 3921.6: 2.99 kg are 11.7 t. R-454C: 21.5 % R-32, and 78.5 % HFO, 2.35 kg of 2.99 kg.
    for (const one of [R404A, R454C]) {
      expect([2.99, 3].map((mass) => required(one, mass, home))).toEqual([false, true]);
      expect(required(one, 2.99)).toBe(true);
      expect(required(one, 2.99, { ...home, hermeticallySealed: false })).toBe(true);
    }
    // Regulation (EU) No 517/2014, Article 4: a home is no exception.
    expect(required(R404A, 2.99, { ...home, region: "GB" })).toBe(true);
  });
});

describe("the rules of the market", () => {
  type Equipment = Parameters<typeof charge.marketRules>[0];
  const EU = {
    region: "EU",
    equipment: "single-split",
    refrigerant: R32,
    charge: kg(1.1),
    date: "2025-01-02",
  } as const;
  const rulesOf = (more: Partial<Equipment>) => charge.marketRules({ ...EU, ...more }).rules;
  const clauses = (more: Partial<Equipment>) =>
    rulesOf(more).map(
      ({ citation, from, below }) => `${citation.clause} ${from} ${below ?? "none"}`,
    );
  const barred = (more: Partial<Equipment>) => rulesOf(more).map((rule) => rule.barred);

  test("are told whole", () => {
    const plain = {
      region: "EU",
      event: "placing-on-the-market",
      readOn: "2024-02-20",
      standing: "published",
      potential: 675,
      barred: false,
    };
    const clause = (letter: string) => ({
      source: "eu-2024-573",
      clause: `Annex IV(9)(${letter})`,
    });
    const exception = "site-safety";
    // toStrictEqual: where no F-gas is allowed there is no `below`, and where no exception is, none.
    expect(rulesOf({})).toStrictEqual([
      { ...plain, from: "2025-01-01", citation: clause("a"), below: 750 },
      { ...plain, from: "2029-01-01", citation: clause("c"), below: 150, exception },
      { ...plain, from: "2035-01-01", citation: clause("d"), exception },
      { ...plain, from: "2029-01-01", citation: clause("e"), below: 750, exception },
      { ...plain, from: "2033-01-01", citation: clause("f"), below: 150, exception },
    ]);
    expect(rulesOf({ region: "AU", refrigerant: R454B })).toStrictEqual([
      {
        region: "AU",
        event: "import",
        from: "2024-07-01",
        readOn: "2025-07",
        citation: { source: "au-ozone-2024", clause: "" },
        standing: "secondary",
        below: 750,
        barred: false, // IPCC AR4 has no value for the HFO in it, so that there is no potential
      },
    ]);
  });

  const a = "Annex IV(9)(a) 2025-01-01 750";
  const b = "Annex IV(9)(b) 2027-01-01 150";
  const c = "Annex IV(9)(c) 2029-01-01 150";
  const d = "Annex IV(9)(d) 2035-01-01 none";
  const e = "Annex IV(9)(e) 2029-01-01 750";
  const f = "Annex IV(9)(f) 2033-01-01 150";
  const own = ["2027-01-01 150", "2032-01-01 none", "2027-01-01 150", "2030-01-01 150"].map(
    (rule) => `Annex IV(8) ${rule}`,
  );
  const late = "84.54; 88 FR 73098, 88 FR 88825, 91 FR 31284 2025-01-01 700";
  const made = "84.54; 88 FR 73098 2025-01-01 700";
  const flow = "84.54; 89 FR 100381 2026-01-01 700";
  const kept = "Annex III, as retained in Great Britain 2025-01-01 750";

  test.each([
    // Regulation (EU) 2024/573, Annex IV(9): (a) below 3 kg; (b), (c), (d) up to 12 kW, (e), (f) above
    [[a, c, d], { capacity: kW(12) }],
    [[a, e, f], { capacity: kW(12.1) }],
    [[a, c, d, e, f], { charge: kg(2.99) }],
    [[c, d, e, f], { charge: kg(3) }],
    [[a, b, d], { equipment: "air-to-water-split", capacity: kW(12) }],
    [[a, e, f], { equipment: "air-to-water-split", capacity: kW(13) }],
    [[a, c, d], { equipment: "air-to-air-split", capacity: kW(3) }],
    [[c, d, e, f], { equipment: "multi-split" }],
    // Annex IV(8)
    [["Annex IV(8) 2020-01-01 150"], { equipment: "portable" }],
    [own, { equipment: "self-contained" }],
    [own.slice(0, 2), { equipment: "self-contained", capacity: kW(12) }],
    [own.slice(2, 3), { equipment: "self-contained", capacity: kW(12.1) }],
    [own.slice(2, 3), { equipment: "self-contained", capacity: kW(50) }],
    [own.slice(3), { equipment: "self-contained", capacity: kW(50.1) }],
    [[], { equipment: "variable-refrigerant-flow" }],
    // 40 CFR 84.54
    [[late], { region: "US" }],
    [[late], { region: "US", equipment: "air-to-water-split" }],
    [[made], { region: "US", equipment: "portable" }],
    [[made], { region: "US", equipment: "self-contained" }],
    [[flow], { region: "US", equipment: "variable-refrigerant-flow" }],
    // Australian licensing body: up to 2.6 kg, one head from July 2024, several from July 2025
    [[" 2024-07-01 750"], { region: "AU", charge: kg(2.6) }],
    [[], { region: "AU", charge: kg(2.61) }],
    [[" 2024-07-01 750"], { region: "AU", equipment: "portable" }],
    [[" 2025-07-01 750"], { region: "AU", equipment: "multi-split" }],
    [[], { region: "AU", equipment: "air-to-water-split" }],
    // Regulation (EU) No 517/2014, Annex III: below 3 kg, from memory
    [[kept], { region: "GB", charge: kg(2.99) }],
    [[kept], { region: "GB", equipment: "air-to-air-split" }],
    [[], { region: "GB", charge: kg(3) }],
    [[], { region: "GB", equipment: "multi-split" }],
  ] as [string[], Partial<Equipment>][])("%j speak of %o", (expected, more) => {
    expect(clauses(more)).toEqual(expected);
  });

  test("say which event counts and how they were come by", () => {
    const told = (more: Partial<Equipment>) =>
      rulesOf(more).map(({ event, standing, readOn }) => `${event}, ${standing}, ${readOn}`);
    expect(told({ region: "US" })).toEqual(["installation, published, 2026-06"]);
    expect(told({ region: "US", equipment: "portable" })).toEqual([
      "manufacture-or-import, published, 2026-06",
    ]);
    expect(told({ region: "GB" })).toEqual(["placing-on-the-market, from-memory, 2026-02"]);
  });

  test("bar from their potential on, in Australia what is above it", () => {
    // Shares of R-32 (675) with R-125 (3500) that make just 750 and 700: (3500 − GWP) / 28.25 %
    const mixed = (potential: number) => {
      const R32 = (3500 - potential) / 28.25;
      return composed(["R-32", R32], ["R-125", 100 - R32]);
    };
    const at = (region: "EU" | "GB" | "US" | "AU", potential: number) =>
      barred({
        region,
        refrigerant: mixed(potential),
        capacity: kW(3),
        date: "2025-01-02",
      })[0];
    expect([749.9, 750].map((potential) => at("EU", potential))).toEqual([false, true]);
    expect([749.9, 750].map((potential) => at("GB", potential))).toEqual([false, true]);
    expect([699.9, 700].map((potential) => at("US", potential))).toEqual([false, true]);
    expect([750, 750.1].map((potential) => at("AU", potential))).toEqual([false, true]);
    expect(barred({ region: "AU", date: "2025-01-02" })).toEqual([false]); // 675
  });

  test("that allow no F-gas bar whatever has one, and nothing else", () => {
    const at = (...parts: Parts) =>
      barred({ refrigerant: composed(...parts), date: "2035-01-01", capacity: kW(3) })[2];
    expect(at(["R-1234yf", 100])).toBe(true);
    expect(at(["R1234yf", 100])).toBe(true);
    expect(at(["R-290", 70], ["R-32", 30])).toBe(true);
    expect(at(["R-290", 100])).toBe(false);
    expect(at(["R-290", 50], ["R-32x", 50])).toBe(false);
    expect(at(["R-290", 50], ["xR-32", 50])).toBe(false);
    const before = { refrigerant: R32, capacity: kW(3), date: "2034-12-31" };
    expect(barred(before)[2]).toBe(false);
  });

  test.each([
    // 88 FR 88825: components of 2024 to the end of 2025; 91 FR 31284: again from 27 July 2026 on
    ["single-split", "2024-12-31", "2025-06-01", false],
    ["single-split", "2025-01-01", "2025-06-01", true],
    ["single-split", undefined, "2025-06-01", true],
    ["single-split", "2024-12-31", "2025-12-31", false],
    ["single-split", "2024-12-31", "2026-01-01", true],
    ["single-split", "2024-12-31", "2026-07-26", true],
    ["single-split", "2024-12-31", "2026-07-27", false],
    ["single-split", "2025-01-01", "2026-07-27", true],
    // 89 FR 100381: components of 2025 to the end of 2026
    ["variable-refrigerant-flow", "2025-12-31", "2026-12-31", false],
    ["variable-refrigerant-flow", "2026-01-01", "2026-12-31", true],
    ["variable-refrigerant-flow", "2025-12-31", "2027-01-01", true],
    ["variable-refrigerant-flow", "2025-12-31", "2027-07-01", true],
    // no grace for what is made whole
    ["portable", "2020-01-01", "2025-06-01", true],
  ] as const)(
    "US, R-410A in a %s with components of %s on %s: %o",
    (equipment, componentsMade, date, expected) => {
      const one = { region: "US", refrigerant: R410A, equipment, componentsMade, date } as const;
      expect(barred(one)).toEqual([expected]);
    },
  );

  test("refuse shares that do not make up 100 %, which would have no potential", () => {
    const half = composed(["R-32", 50], ["R-125", 40]);
    expect(argumentOf(() => rulesOf({ refrigerant: half }))).toBe("refrigerant.composition");
  });
});
