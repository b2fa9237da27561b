import * as charge from "hvac-install-math/charge-limit";
import { kg, kgPerM3, m, m2, m3, m3PerHour } from "hvac-install-math/quantity";
import { R32, R290, R410A, R454B } from "hvac-install-math/refrigerants";
import { describe, expect, test } from "vitest";
import { argumentOf } from "../argument-of.ts";

const floor = { refrigerant: R32, place: "floor", charge: kg(2), floorArea: m2(20) } as const;
const judged = (more: Partial<charge.RoomChargeInput>) =>
  charge.assessRoomCharge({ ...floor, ...more });

describe("two rooms that are joined by openings", () => {
  // R32, 2 kg, 20 m²: 0.0254 m² of opening by the printed formula; both rooms together 34.04 m².
  const protection = {
    kind: "connected-rooms",
    adjoiningFloorArea: m2(20),
    lowerOpening: m2(0.0256),
    upperOpening: m2(0.0128),
    placedAsRequired: true,
  } as const;

  test("hold what both together allow, through openings that are large enough", () => {
    expect(judged({}).cause).toBe("room-too-small");
    expect(judged({ protection }).outcome).toBe("pass");
    const small = judged({ protection: { ...protection, lowerOpening: m2(0.025) } });
    expect([small.cause, small.limit.decidedBy]).toEqual(["openings-too-small", "openings"]);
    const high = judged({ protection: { ...protection, upperOpening: m2(0.0125) } });
    expect(high.cause).toBe("openings-too-small");
    const next = judged({ protection: { ...protection, adjoiningFloorArea: m2(13) } });
    expect([next.outcome, next.limit.decidedBy]).toEqual(["fail", "joined-area"]);
  });

  test("are asked where the openings sit, and count for nothing where they sit wrong", () => {
    const { placedAsRequired: _, ...unplaced } = protection;
    const open = judged({ protection: unplaced });
    expect(open.outcome).toBe("inconclusive");
    expect(open.actions?.map(({ code }) => code)).toEqual(["charge-limit.state-protection"]);
    expect(judged({ protection: { ...unplaced, placedAsRequired: false } }).outcome).toBe("fail");
  });
});

describe("enhanced tightness and circulation", () => {
  test("of enhanced tightness hold a quarter, with an alarm half, of the LFL up to 2.2 m", () => {
    const tight = { kind: "enhanced-tightness", ceilingHeight: m(2.7), declared: true } as const;
    const limit = (measure: "none" | "alarm") =>
      judged({ protection: { ...tight, measure } }).limit.limit.in(kg);
    expect(limit("none")).toBeCloseTo(0.25 * 0.307 * 2.2 * 20, 9);
    expect(limit("alarm")).toBeCloseTo(0.5 * 0.307 * 2.2 * 20, 9);
  });

  test("of a fan need its detector and its airflow, and say that the rule is from memory", () => {
    const fan = { kind: "circulation", totalFloorArea: m2(60), airflow: m3PerHour(300) } as const;
    const with_ = judged({ protection: { ...fan, detector: true } });
    expect(with_.outcome).toBe("pass");
    expect(with_.cautions[0]?.code).toBe("charge-limit.from-memory");
    expect(judged({ protection: fan }).outcome).toBe("inconclusive");
    const weak = { ...fan, airflow: m3PerHour(190), detector: true } as const;
    expect(judged({ protection: weak }).cause).toBe("airflow-too-small");
  });

  test("are for A2L and the editions that have them", () => {
    const protection = {
      kind: "enhanced-tightness",
      measure: "none",
      ceilingHeight: m(2.2),
      declared: true,
    } as const;
    expect(argumentOf(() => judged({ protection, refrigerant: R290 }))).toBe("protection");
    expect(argumentOf(() => judged({ protection, edition: "iec-60335-2-40-2013" }))).toBe(
      "protection",
    );
  });
});

describe("altitude", () => {
  test("asks for a larger room in thin air", () => {
    const room = { ...floor, floorArea: m2(36) };
    expect(charge.assessRoomCharge(room).outcome).toBe("pass");
    const high = charge.assessRoomCharge({ ...room, altitude: m(1600) });
    expect(high.outcome).toBe("fail");
    expect(high.limit.altitudeFactor).toBe(1.12);
    expect(charge.minimumFloorArea({ ...floor, altitude: m(1600) }).area.in(m2)).toBeCloseTo(
      34.04 * 1.12,
      1,
    );
  });
});

describe("the rooms of a system", () => {
  const system = { refrigerant: R32, charge: kg(2.4) };
  const rooms = [
    { name: "living room", place: "wall", floorArea: m2(30) },
    { name: "study", place: "wall", floorArea: m2(6) },
  ] as const;

  test("each get a verdict, and one that fails fails all", () => {
    const all = charge.assessRooms({ ...system, rooms });
    expect(all.rooms.map(({ assessment }) => assessment.outcome)).toEqual(["pass", "fail"]);
    expect([all.outcome, all.cause]).toEqual(["fail", "room-too-small"]);
    expect(all.reasons[0]?.values).toEqual({ room: { verbatim: "study" } });
    expect(charge.assessRooms({ ...system, rooms: [rooms[0]] }).outcome).toBe("pass");
  });

  test("have names, each its own", () => {
    const twice = { ...system, rooms: [rooms[0], rooms[0]] };
    expect(argumentOf(() => charge.assessRooms(twice))).toBe("rooms[1].name");
    expect(argumentOf(() => charge.assessRooms({ ...system, rooms: [] }))).toBe("rooms.length");
  });
});

describe("what a room or the system states wrong", () => {
  const system = { refrigerant: R32, charge: kg(2.4) };
  const room = { name: "living room", place: "wall", floorArea: m2(30) } as const;
  const named = (shared: object, own: object) =>
    argumentOf(() =>
      charge.assessRooms({
        ...system,
        ...shared,
        rooms: [room, { ...room, name: "study", ...own }],
      }),
    );

  test("is named where the caller wrote it", () => {
    expect(named({ charge: kg(0) }, {})).toBe("charge");
    expect(named({ confidence: 2 }, {})).toBe("confidence");
    expect(named({ refrigerant: { ...R32, safetyClass: "A1" } }, {})).toBe(
      "refrigerant.safetyClass",
    );
    expect(named({}, { floorArea: m2(0) })).toBe("rooms[1].floorArea");
    expect(named({}, { instruments: { charge: { accuracy: m(1) } } })).toBe(
      "rooms[1].instruments.charge.accuracy",
    );
  });

  test("is named with the whole of its path, the molar mass of a protection too", () => {
    const protection = {
      kind: "connected-rooms",
      adjoiningFloorArea: m2(20),
      lowerOpening: m2(0.1),
      upperOpening: m2(0.1),
      placedAsRequired: true,
    } as const;
    const own = {
      refrigerant: { designation: "R-9", safetyClass: "A2L" },
      lowerFlammabilityLimit: kgPerM3(0.3),
    } as const;
    expect(named(own, { protection })).toBe("rooms[1].protection.molarMass");
    expect(argumentOf(() => judged({ ...own, protection }))).toBe("protection.molarMass");
  });

  test.each([
    ["edition", "iec-60335-2-40-2013"],
    ["altitude", m(100)],
    ["charge", kg(1)],
    ["confidence", 0.9],
    ["refrigerant", R290],
    ["lowerFlammabilityLimit", kgPerM3(0.3)],
  ])("is not a %s of one room alone, which would be dropped or hold there only", (field, value) => {
    expect(named({}, { [field]: value })).toBe(`rooms[1].${field}`);
  });
});

describe("a monobloc outdoors", () => {
  const unit = { refrigerant: R290, surroundings: "open-air", distances: [m(1.4), m(3)] } as const;

  test("is judged by its manual's zone, and never without it", () => {
    expect(charge.assessOutdoorUnit(unit).reasons[0]?.code).toBe(
      "charge-limit.protection-zone-not-stated",
    );
    expect(charge.assessOutdoorUnit({ ...unit, protectionZone: m(1) }).outcome).toBe("pass");
    const near = charge.assessOutdoorUnit({ ...unit, protectionZone: m(1.5) });
    expect(near.cause).toBe("too-near-an-opening");
    const blunt = { ...unit, protectionZone: m(1.4), tape: { accuracy: m(0.05) } };
    expect(charge.assessOutdoorUnit(blunt).outcome).toBe("inconclusive");
    const free = { ...unit, protectionZone: m(1), distances: [] };
    for (const one of [free, { ...free, tape: { accuracy: m(0.05) } }]) {
      const found = charge.assessOutdoorUnit(one);
      expect(found.outcome).toBe("pass");
      expect(found.reasons.map(({ code }) => code)).toEqual(["charge-limit.nothing-near"]);
    }
  });

  test("fails where it is closed in, and says what a leak does to the water", () => {
    const closed = charge.assessOutdoorUnit({ ...unit, surroundings: "closed-in" });
    expect(closed.cause).toBe("closed-in");
    expect(closed.cautions[0]?.code).toBe("charge-limit.refrigerant-in-water");
    expect(argumentOf(() => charge.assessOutdoorUnit({ ...unit, refrigerant: R410A }))).toBe(
      "refrigerant.safetyClass",
    );
  });
});

describe("rules for the whole volume, from memory", () => {
  test("count a share of the LFL for A2L and halve for institutions", () => {
    const limit = (refrigerant: typeof R32, occupancy: charge.Occupancy) =>
      charge.dispersalChargeLimit({ refrigerant, volume: m3(50), occupancy }).limit.in(kg);
    expect(limit(R410A, "other")).toBeCloseTo(21, 9);
    expect(limit(R410A, "institutional")).toBeCloseTo(10.5, 9);
    expect(limit(R32, "other")).toBeCloseTo(50 * 0.306 * 0.5, 9);
    expect(limit(R454B, "other")).toBeCloseTo(50 * 0.296 * 0.5, 9);
  });

  test("count measures by QLMV and QLAV, underground by RCL", () => {
    const measures = (mass: number, lowestUndergroundFloor: boolean) =>
      charge.ventilationLimits({
        refrigerant: R32,
        charge: kg(mass),
        volume: m3(50),
        lowestUndergroundFloor,
      }).measures;
    expect([3.15, 3.16, 7.5, 7.51].map((mass) => measures(mass, false))).toEqual([0, 1, 1, 2]);
    expect([3.05, 3.1].map((mass) => measures(mass, true))).toEqual([0, 1]);
  });
});

describe("law", () => {
  test("is asked with days that exist", () => {
    const split = {
      region: "EU",
      equipment: "single-split",
      refrigerant: R32,
      charge: kg(1),
      date: "2025-02-30",
    } as const;
    expect(argumentOf(() => charge.marketRules(split))).toBe("date");
    const { rules } = charge.marketRules({ ...split, date: "2025-03-01" });
    expect(rules.map(({ citation }) => citation.clause)).toEqual([
      "Annex IV(9)(a)",
      "Annex IV(9)(c)",
      "Annex IV(9)(d)",
      "Annex IV(9)(e)",
      "Annex IV(9)(f)",
    ]);
  });

  test("says for a date after the state of the texts that the law may have changed", () => {
    const split = { equipment: "single-split", refrigerant: R410A, charge: kg(1) } as const;
    // State of the texts read: EU 20 February 2024, Great Britain February 2026, US June 2026, Australia July 2025.
    const lastDays = {
      EU: ["2024-02-20", "2024-02-21"],
      GB: ["2026-02-28", "2026-03-01"],
      US: ["2026-06-30", "2026-07-01"],
      AU: ["2025-07-31", "2025-08-01"],
    } as const;
    for (const region of ["EU", "GB", "US", "AU"] as const) {
      const [within, after] = lastDays[region];
      expect(charge.marketRules({ ...split, region, date: within }).cautions).toEqual([]);
      const { cautions, readOn } = charge.marketRules({ ...split, region, date: after });
      expect(cautions).toEqual([
        {
          code: "charge-limit.market-rules-older",
          values: { reviewed: { verbatim: readOn }, date: { verbatim: after } },
          kind: "finding",
        },
      ]);
    }
    // Also where none of the rules speaks of the equipment.
    const none = charge.marketRules({
      ...split,
      region: "GB",
      equipment: "multi-split",
      date: "2027-01-01",
    });
    expect([none.rules.length, none.cautions.length]).toEqual([0, 1]);
  });

  test("has no AR4 value for HFOs, by whatever name they were called", () => {
    expect(
      argumentOf(() =>
        charge.blendWarmingPotential({ composition: R454B.composition, basis: "ipcc-ar4" }),
      ),
    ).toBe("composition[1].designation");
    expect(R454B.gwp.ar4).toBeUndefined();
  });
});
