// The figures of the rules: thresholds by edition, altitude, the limits of rooms, openings and volumes, row by row.
import * as charge from "hvac-install-math/charge-limit";
import { kg, kgPerM3, lb, m, m2, m3, m3PerHour } from "hvac-install-math/quantity";
import { R32, R290, R410A, R1234yf, refrigerants } from "hvac-install-math/refrigerants";
import { describe, expect, test } from "vitest";
import { dangers, heeded } from "./told.ts";

describe("the thresholds of every edition", () => {
  const published = "published";
  const memory = "from-memory";

  // IEC 60335-2-40, GG.1, in m³ · LFL, as manuals print them; editions of 2022, UL and EN 378-1, C.2, from memory.
  test.each([
    ["iec-60335-2-40-2013", "A2L", [4, 26, 130], published, "GG.1"],
    ["iec-60335-2-40-2013", "A3", [4, 26, 130], published, "GG.1"],
    ["iec-60335-2-40-2018", "A2L", [6, 52, 260], published, "GG.1"],
    ["iec-60335-2-40-2018", "B2L", [6, 52, 260], published, "GG.1"],
    ["iec-60335-2-40-2018", "A2", [4, 26, 130], published, "GG.1"],
    ["iec-60335-2-40-2018", "A3", [4, 26, 130], published, "GG.1"],
    ["iec-60335-2-40-2022", "A2L", [6, 52, 260], memory, "GG.1"],
    ["iec-60335-2-40-2022", "A3", [4, 26, 130], memory, "GG.1"],
    ["ul-60335-2-40-2019", "A2L", [6, 52, 260], memory, "GG.1"],
    ["ul-60335-2-40-2019", "A3", [4, 26, 130], memory, "GG.1"],
    ["ul-60335-2-40-2022", "A2L", [6, 52, 260], memory, "GG.1"],
    ["ul-60335-2-40-2022", "A3", [4, 26, 130], memory, "GG.1"],
    ["en-378-1", "A2L", [6, 39, 195], memory, "C.2"],
    ["en-378-1", "A3", [4, 26, 130], memory, "C.2"],
  ] as const)("%s, %s: %j times the LFL, %s", (edition, safetyClass, times, standing, clause) => {
    const lowerFlammabilityLimit = kgPerM3(0.25); // a quarter, so that the products are exact
    const found = charge.chargeThresholds({ lowerFlammabilityLimit, safetyClass, edition });
    expect([found.m1, found.m2, found.m3].map((mass) => mass.in(kg))).toEqual(
      times.map((one) => one * 0.25),
    );
    expect([found.standing, found.citation]).toEqual([standing, { source: edition, clause }]);
  });

  test("cap small rooms from the 2018 text on, and not in EN 378-1", () => {
    // R32, wall, 6 m²: root 2.5 · 0.307^1.25 · 1.8 · √6 = 2.519 kg; cap 0.5 · 0.307 · 2.2 · 6 = 2.026 kg
    const at = (edition: charge.RoomEdition) =>
      charge
        .roomChargeLimit({ refrigerant: R32, place: "wall", floorArea: m2(6), edition })
        .limit.toString(undefined, 3);
    expect(at("iec-60335-2-40-2013")).toBe("2.519 kg");
    expect(at("en-378-1")).toBe("2.519 kg");
    for (const year of ["iec-60335-2-40-2018", "iec-60335-2-40-2022"] as const) {
      expect(at(year), year).toBe("2.026 kg");
    }
    for (const year of ["ul-60335-2-40-2019", "ul-60335-2-40-2022"] as const) {
      expect(at(year), year).toBe("2.026 kg");
    }
  });

  test("are counted with just what they allow", () => {
    // m1, m2 and m3 themselves are allowed: 6, 52 and 260 m³ of 0.307 kg/m³.
    const [m1, most, system] = [6, 52, 260].map((volume) => kg(volume * 0.307)) as [
      ReturnType<typeof kg>,
      ReturnType<typeof kg>,
      ReturnType<typeof kg>,
    ];
    const unit = { refrigerant: R32, place: "floor" } as const;
    expect(charge.minimumFloorArea({ ...unit, charge: m1 }).area.si).toBe(0);
    // (m2 / (2.5 · 0.307^1.25 · 0.6))² = 2168.9 m²
    const large = charge.minimumFloorArea({ ...unit, charge: most }).area;
    expect(large.in(m2)).toBeCloseTo((15.964 / (2.5 * 0.307 ** 1.25 * 0.6)) ** 2, 6);
    const causeOf = (mass: typeof most, area: number) =>
      charge.assessRoomCharge({ ...unit, charge: mass, floorArea: m2(area) }).cause;
    expect(causeOf(most, 40)).toBe("room-too-small");
    expect(causeOf(most.times(1.001), 40)).toBe("beyond-m2");
    expect(causeOf(system, 5000)).toBe("beyond-m2");
    expect(causeOf(system.times(1.001), 5000)).toBe("beyond-m3");
  });
});

describe("the factor for altitude", () => {
  // From memory, as manuals print it.
  const rows = [
    [600, 1],
    [800, 1.02],
    [1000, 1.05],
    [1200, 1.07],
    [1400, 1.1],
    [1600, 1.12],
    [1800, 1.15],
    [2000, 1.18],
    [2200, 1.21],
    [2400, 1.25],
    [2600, 1.28],
    [2800, 1.32],
    [3000, 1.36],
    [3200, 1.4],
  ] as const;

  test.each(rows)("at %d m is %d, and more above", (altitude, factor) => {
    expect(charge.roomAltitudeFactor(m(altitude))).toBe(factor);
    const next = rows.find(([row]) => row > altitude);
    if (next) expect(charge.roomAltitudeFactor(m(altitude + 1))).toBe(next[1]);
  });

  test("is the ratio of the pressures of the standard atmosphere within 0.02", () => {
    // ISO 2533: p = (1 − 2.25577e−5 · H)^5.25588
    const pressure = (altitude: number) => (1 - 2.25577e-5 * altitude) ** 5.25588;
    for (const [altitude] of rows) {
      const ratio = pressure(600) / pressure(altitude);
      expect(Math.abs(charge.roomAltitudeFactor(m(altitude)) - ratio)).toBeLessThan(0.02);
    }
  });

  test("lessens what a protection allows, as what the floor area does", () => {
    // 1600 m: 1.12
    const room = { refrigerant: R32, place: "floor", charge: kg(1.9), floorArea: m2(20) } as const;
    const limit = (protection: charge.RoomProtection) =>
      charge.assessRoomCharge({ ...room, altitude: m(1600), protection }).limit.limit.in(kg);
    const tight = { kind: "enhanced-tightness", measure: "alarm", declared: true } as const;
    expect(limit({ ...tight, ceilingHeight: m(2) })).toBeCloseTo((0.5 * 0.307 * 2 * 20) / 1.12, 9);
    const fan = { kind: "circulation", airflow: m3PerHour(900), detector: true } as const;
    expect(limit({ ...fan, totalFloorArea: m2(10) })).toBeCloseTo(
      (0.5 * 0.307 * 2.2 * 10) / 1.12,
      9,
    );
  });
});

describe("what decides the limit of a protected room", () => {
  const room = { refrigerant: R32, place: "floor", charge: kg(2), floorArea: m2(20) } as const;
  const openings = {
    kind: "connected-rooms",
    adjoiningFloorArea: m2(20),
    lowerOpening: m2(1),
    upperOpening: m2(1),
    placedAsRequired: true,
  } as const;
  const fan = {
    kind: "circulation",
    totalFloorArea: m2(10),
    airflow: m3PerHour(900),
    detector: true,
  } as const;
  const decided = (protection: charge.RoomProtection, more: Partial<typeof room> = {}) =>
    charge.assessRoomCharge({ ...room, protection, ...more }).limit.decidedBy;

  test("is named", () => {
    expect(decided(openings)).toBe("joined-area");
    expect(decided({ ...openings, lowerOpening: m2(0.025) })).toBe("openings");
    expect(decided(fan)).toBe("circulated-area"); // 3.377 kg, and 30 · 0.307 = 9.21 kg by the air
    expect(decided({ ...fan, airflow: m3PerHour(200) })).toBe("airflow"); // 2.047 kg
    const tight = { kind: "enhanced-tightness", measure: "none", declared: true } as const;
    expect(decided({ ...tight, ceilingHeight: m(2.2) })).toBe("tightness");
    // Both rooms together allow more than m2; so does the air of a fan.
    expect(decided({ ...openings, adjoiningFloorArea: m2(5000) })).toBe("m2");
    expect(decided({ ...fan, totalFloorArea: m2(100), airflow: m3PerHour(1600) })).toBe("m2");
  });

  test("of enhanced tightness is not m2: more than the system may hold is too small a room", () => {
    const tight = {
      kind: "enhanced-tightness",
      ceilingHeight: m(2.2),
      countedFloorArea: m2(70),
      measure: "alarm",
      declared: true,
    } as const;
    const found = charge.assessRoomCharge({ ...room, charge: kg(30), protection: tight });
    expect([found.cause, found.limit.limit.toString(undefined, 2)]).toEqual([
      "room-too-small",
      "23.64 kg", // as a manual prints for 70 m²: 23.6 kg
    ]);
  });

  test("is nothing of the protection where the room is enough by itself", () => {
    // 5000 m² alone allow m2. A fan is a rule from memory, which this answer does not rest on.
    const large = { ...room, floorArea: m2(5000), charge: kg(10), protection: fan };
    const { limit, cautions } = charge.assessRoomCharge({
      ...large,
      protection: { ...fan, totalFloorArea: m2(5000), airflow: m3PerHour(1e5) },
    });
    expect([limit.decidedBy, heeded(cautions)]).toEqual(["m2", dangers("burns")]);
  });
});

describe("the openings between two rooms", () => {
  const room = { refrigerant: R32, place: "floor", floorArea: m2(20) } as const;

  test("are the printed formula's, the upper one half of the lower", () => {
    // 20 m²: printed m_max 1.533 kg. (2 − m_max)/(104 · 0.307) · √(20/(9.81 · m_max) · 52.024/(52.024 − 29))
    const most = 2.5 * 0.307 ** 1.25 * 0.6 * Math.sqrt(20);
    const area =
      ((2 - most) / (104 * 0.307)) * Math.sqrt((20 / (9.81 * most)) * (52.024 / (52.024 - 29)));
    expect(area).toBeCloseTo(0.0254, 4);
    const found = charge.ventilationOpening({ ...room, charge: kg(2) });
    expect(found.lower.in(m2)).toBeCloseTo(area, 9);
    expect(found.upper.in(m2)).toBeCloseTo(area / 2, 9);
    expect(found.withoutOpening.toString(undefined, 3)).toBe("1.533 kg");
    expect([found.lowerEdge, found.lowerHeight, found.upperEdge].map(String)).toEqual([
      "0.1 m",
      "0.02 m",
      "1.5 m",
    ]);
  });

  test("are not needed up to m1, 1.842 kg, though the formula's 1.533 kg are less", () => {
    const lower = (charge_: number) =>
      charge.ventilationOpening({ ...room, charge: kg(charge_) }).lower.si;
    expect([1.8, 6 * 0.307].map(lower)).toEqual([0, 0]);
    expect(lower(1.843)).toBeGreaterThan(0.016); // 0.31 of the 0.467 kg above it that need 0.0254 m²
  });

  test("need the molar mass of what burns, and say that none is held", () => {
    const unknown = { designation: "R-999", safetyClass: "A2L" } as const;
    const own = { ...room, refrigerant: unknown, lowerFlammabilityLimit: kgPerM3(0.3) };
    expect(() => charge.ventilationOpening({ ...own, charge: kg(2) })).toThrow(
      /molarMass: .*a number in g\/mol; none is held for .*R-999/,
    );
  });
});

describe("the rules for the whole volume", () => {
  test("of ASHRAE 15 carry their factor, their source and what is from memory", () => {
    const of = (refrigerant: charge.RoomRefrigerant, occupancy: charge.Occupancy) => {
      const found = charge.dispersalChargeLimit({ refrigerant, volume: m3(50), occupancy });
      expect([found.standing, found.citation]).toEqual([
        "from-memory",
        { source: "ashrae-15-2022", clause: "7.3, 7.6" },
      ]);
      return [found.factor, String(found.basis.value), heeded(found.cautions)];
    };
    const finding = "finding: from-memory, rules rule.dispersal";
    expect(of(R410A, "other")).toEqual([1, "420 g/m³", [finding, ...dangers("suffocates")]]);
    // the LFL of ASHRAE 34, 0.306 kg/m³, before that of IEC, 0.307; half of it, and half again
    expect(of(R32, "institutional")).toEqual([0.25, "0.306 kg/m³", [finding, ...dangers("burns")]]);
  });

  test("of a dwelling are an estimate, and 6 m³ of the LFL without a detector", () => {
    // R32: 6 · 0.306 = 1.836 kg, 4.05 lb; 20 m²: 0.5 · 0.306 · 2.2 · 20 = 6.732 kg
    const found = charge.dwellingChargeEstimate({
      lowerFlammabilityLimit: kgPerM3(0.306),
      floorArea: m2(20),
    });
    expect(found.withoutDetector.toString(lb, 2)).toBe("4.05 lb");
    expect(found.estimate.toString(kg, 3)).toBe("6.732 kg");
    expect([found.standing, found.citation]).toEqual([
      "from-memory",
      { source: "ashrae-15-2-2022", clause: "tables of M_max, not found" },
    ]);
  });

  // EN 378-1:2016, Table C.3, from memory: RCL, QLMV and QLAV in kg/m³.
  test.each([
    ["R-32", [0.061, 0.063, 0.15]],
    ["R-410A", [0.39, 0.42, 0.42]],
    ["R-1234yf", [0.058, 0.06, 0.14]],
    ["R-1234ze(E)", [0.061, 0.063, 0.15]],
  ] as const)("of EN 378-1 for %s are %j kg/m³", (designation, expected) => {
    const refrigerant = refrigerants.find((one) => one.designation === designation) ?? R32;
    const space = { refrigerant, charge: kg(1), volume: m3(50), lowestUndergroundFloor: false };
    const { limits, cautions } = charge.ventilationLimits(space);
    const { underground, minimumVentilation, additionalVentilation, standing } = limits;
    expect(
      [underground, minimumVentilation, additionalVentilation].map((one) => one.in(kgPerM3)),
    ).toEqual(expected);
    expect([standing, heeded(cautions)]).toEqual([
      "from-memory",
      [
        "finding: from-memory, rules rule.ventilation-limits",
        ...dangers(designation === "R-410A" ? "suffocates" : "burns"),
      ],
    ]);
  });
});

test("an LFL that the caller states is enough, of a refrigerant that is held too", () => {
  // 6 · 0.3 and 4 · 0.04
  const free = (refrigerant: typeof R32, limit: number) =>
    charge
      .roomChargeLimit({
        refrigerant,
        place: "floor",
        floorArea: m2(1),
        lowerFlammabilityLimit: kgPerM3(limit),
      })
      .limit.toString(undefined, 3);
  expect(free(R1234yf, 0.3)).toBe("1.800 kg");
  expect(free(R290, 0.04)).toBe("0.160 kg");
});
