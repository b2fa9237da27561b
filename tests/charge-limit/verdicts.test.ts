// All that each kind of verdict says: reasons and actions with their figures, assumptions, cautions, sources.
// Figures by the printed formulas and tables, said beside them; nothing here is copied from an answer.
import * as charge from "hvac-install-math/charge-limit";
import { ft, g, kg, kgPerM3, lb, m, m2, m3, m3PerHour, sqft } from "hvac-install-math/quantity";
import { R32, R290, R410A, R454B, R717, R744 } from "hvac-install-math/refrigerants";
import { describe, expect, test } from "vitest";
import { allOf, cited, dangers, heeded, told } from "./told.ts";

// R32 by IEC 60335-2-40:2018: LFL 0.307 kg/m³, so m1 6 · 0.307 = 1.842 kg, m2 52 · 0.307 = 15.964 kg, m3 260 · 0.307
// = 79.82 kg. On the floor h0 is 0.6 m: manuals print 1.877 kg for 30 m², 2.168 kg for 40 m², and 34.04 m² for 2 kg.
const floor = { refrigerant: R32, place: "floor", charge: kg(2), floorArea: m2(40) } as const;
const closed = "one-closed-room";
const edition2018 = "edition-used, edition edition.iec-60335-2-40-2018";
const limitR32 = "flammability-limit-used, limit 0.307 kg/m³, standing standing.published";
const exact = ["exact-charge", "exact-size"];
const usual = [closed, edition2018, limitR32, "low-altitude", ...exact];
const sources2018 = [
  "iec-60335-2-40-2018: GG.1, GG.2",
  "iec-60335-2-40-2018: ",
  "jcgm-106-2012: 8.3",
];
const more = "add-no-refrigerant";
/** The floor area that kilograms of R32 need on the floor: GG.2, solved for A. Manuals print 34.04 m² for 2 kg. */
const roomFor = (mass: number) =>
  `find-larger-room, area ${((mass / (2.5 * 0.307 ** 1.25 * 0.6)) ** 2).toFixed(3)} m²`;

describe("all that a verdict on a charge in a room says", () => {
  const room = {
    assumptions: usual,
    cautions: dangers("burns"),
    actions: [],
    sources: sources2018,
  };

  test.each([
    ["passes", {}, { outcome: "pass", reasons: ["within-limit, charge 2.000 kg, limit 2.168 kg"] }],
    [
      "passes whatever the room",
      { charge: kg(1.8), floorArea: m2(30) },
      {
        outcome: "pass",
        reasons: [
          "room-does-not-matter, charge 1.800 kg, limit 1.842 kg",
          "within-limit, charge 1.800 kg, limit 1.877 kg",
        ],
      },
    ],
    [
      // m1 itself still is free: m ≤ m1 by GG.1. 1 m² alone allows 0.138 kg (printed).
      "passes whatever the room with just m1",
      { charge: kg(6 * 0.307), floorArea: m2(1) },
      {
        outcome: "pass",
        reasons: [
          "room-does-not-matter, charge 1.842 kg, limit 1.842 kg",
          "within-limit, charge 1.842 kg, limit 1.842 kg",
        ],
      },
    ],
    [
      "fails in a room that is too small",
      { floorArea: m2(30) },
      {
        outcome: "fail",
        cause: "room-too-small",
        reasons: ["above-limit, charge 2.000 kg, limit 1.877 kg"],
        actions: [more, roomFor(2)],
      },
    ],
    [
      "fails above m2",
      { charge: kg(16), floorArea: m2(5000) },
      {
        outcome: "fail",
        cause: "beyond-m2",
        reasons: [
          "beyond-m2, charge 16.000 kg, limit 15.964 kg",
          "above-limit, charge 16.000 kg, limit 15.964 kg",
        ],
        actions: [more, "use-other-clauses, maximum 15.964 kg"],
      },
    ],
    [
      // 0.45359237 kg are 1 lb: m2 35.195 lb
      "fails above m2 in the units of the charge",
      { charge: lb(36), floorArea: m2(5000) },
      {
        outcome: "fail",
        cause: "beyond-m2",
        reasons: [
          "beyond-m2, charge 36.000 lb, limit 35.195 lb",
          "above-limit, charge 36.000 lb, limit 35.195 lb",
        ],
        actions: [more, "use-other-clauses, maximum 35.195 lb"],
      },
    ],
    [
      "fails above m3",
      { charge: kg(80), floorArea: m2(5000) },
      {
        outcome: "fail",
        cause: "beyond-m3",
        reasons: [
          "beyond-m3, charge 80.000 kg, limit 79.820 kg",
          "above-limit, charge 80.000 kg, limit 15.964 kg",
        ],
        actions: [more, "divide-the-system, maximum 79.820 kg"],
      },
    ],
    [
      // m = 2.5 · 0.307^1.25 · 0.6 · √34.3 = 2.008 kg; dm/dA = m / (2 A) = 0.02927 kg/m². A tape of ± 1 m² and a
      // scale of ± 5 g, each over √3, are 0.01690 and 0.00289 kg, together 0.01714 kg: ± 0.034 kg.
      "is open where scale and tape cannot tell",
      {
        floorArea: m2(34.3),
        instruments: { charge: { accuracy: g(5) }, size: { accuracy: m2(1) } },
      },
      {
        outcome: "inconclusive",
        reasons: ["too-close-to-call, charge 2.000 kg, limit 2.008 kg, uncertainty 0.034 kg"],
        assumptions: usual.slice(0, 4),
        actions: ["weigh-or-measure-better"],
      },
    ],
  ] as [string, Partial<charge.RoomChargeInput>, object][])("%s", (_, input, said) => {
    expect(allOf(charge.assessRoomCharge({ ...floor, ...input }))).toEqual({ ...room, ...said });
  });

  test("a confidence that is asked for is kept to", () => {
    // The same room: 2.008 − 2 = 0.0075 kg is 0.44 of 0.01714 kg, enough for 60 % (0.253), not for 95 % (1.645).
    const instruments = { charge: { accuracy: g(5) }, size: { accuracy: m2(1) } };
    const sure = (confidence: number) =>
      charge.assessRoomCharge({ ...floor, floorArea: m2(34.3), instruments, confidence }).outcome;
    expect([0.6, 0.95].map(sure)).toEqual(["pass", "inconclusive"]);
  });
});

describe("what an answer by Annex GG was found with", () => {
  const answer = (unit: object) => {
    const found = charge.roomChargeLimit({ ...floor, ...unit });
    return {
      assumptions: found.assumptions.map(told),
      cautions: heeded(found.cautions),
      sources: cited(found.sources),
    };
  };

  test.each([
    [
      "the figures of the 2018 text for R32",
      {},
      [edition2018, limitR32, "low-altitude"],
      [],
      sources2018.slice(0, 2),
    ],
    [
      "an altitude up to 600 m, which changes nothing",
      { altitude: m(600) },
      [edition2018, limitR32],
      [],
      sources2018.slice(0, 2),
    ],
    [
      "an altitude that asks for more, by a factor from memory",
      { altitude: ft(2000) }, // 609.6 m
      [edition2018, limitR32],
      ["finding: from-memory, rules rule.altitude-factor"],
      [...sources2018.slice(0, 2), "from-memory: altitude factor on floor areas"],
    ],
    [
      "a limit that the caller states, in place of what is held",
      { lowerFlammabilityLimit: kgPerM3(0.3) },
      [edition2018, "low-altitude"],
      [],
      ["iec-60335-2-40-2018: GG.1, GG.2"],
    ],
    [
      "a limit that the caller states where none is held",
      {
        refrigerant: { designation: "R-999", safetyClass: "A2L" },
        lowerFlammabilityLimit: kgPerM3(0.3),
      },
      [edition2018, "low-altitude"],
      [],
      ["iec-60335-2-40-2018: GG.1, GG.2"],
    ],
    [
      "a limit that is remembered, in place of which a caller's own rests on nothing",
      { refrigerant: R454B, lowerFlammabilityLimit: kgPerM3(0.296) },
      [edition2018, "low-altitude"],
      [],
      ["iec-60335-2-40-2018: GG.1, GG.2"],
    ],
    [
      "thresholds and a limit from memory, and a height above those of the text",
      {
        refrigerant: R454B,
        edition: "iec-60335-2-40-2022",
        place: undefined,
        installationHeight: m(3),
      },
      [
        "edition-used, edition edition.iec-60335-2-40-2022",
        "above-reference-height, height 3.000 m",
        "flammability-limit-used, limit 0.296 kg/m³, standing standing.from-memory",
        "low-altitude",
      ],
      ["finding: from-memory, rules rule.thresholds + rule.flammability-limit"],
      ["iec-60335-2-40-2022: GG.1, GG.2", "from-memory: 0.296 to 0.297"],
    ],
    [
      "EN 378-1, whose clause is another",
      { edition: "en-378-1", altitude: m(0) },
      ["edition-used, edition edition.en-378-1", limitR32],
      ["finding: from-memory, rules rule.thresholds"],
      ["en-378-1: C.2", "iec-60335-2-40-2018: "],
    ],
  ] as const)("%s", (_, unit, assumptions, findings, sources) => {
    const cautions = [...findings, ...dangers("burns")];
    expect(answer(unit)).toEqual({ assumptions, cautions, sources });
  });
});

// 50 g is more than the 2 g to m1 = 6 · 0.307 kg, and 300 g more than the 6 g from m2 = 52 · 0.307 kg.
test.each([
  ["m1", kg(1.84), g(50), m2(1)],
  ["m2", kg(15.97), g(300), m2(5000)],
])("a scale that cannot tell a charge from %s says only that", (_, mass, accuracy, floorArea) => {
  const room = { ...floor, charge: mass, floorArea, instruments: { charge: { accuracy } } };
  const { outcome, reasons } = charge.assessRoomCharge(room);
  expect([outcome, ...reasons.map(({ code }) => code)]).toEqual([
    "inconclusive",
    "charge-limit.too-close-to-call",
  ]);
});

describe("all that a protection adds to a verdict", () => {
  // 20 m² and 20 m² next to it: 40 m², printed 2.168 kg; alone 1.533 kg, and 1 kg more needs 0.0254/0.467 m² of opening.
  const openings = {
    kind: "connected-rooms",
    adjoiningFloorArea: m2(20),
    lowerOpening: m2(0.1),
    upperOpening: m2(0.05),
    placedAsRequired: true,
  } as const;
  // 0.25 · 0.307 · 2.2 · 20 = 3.377 kg; with an alarm 0.5: 6.754 kg.
  const tight = {
    kind: "enhanced-tightness",
    ceilingHeight: m(2.4),
    measure: "none",
    declared: true,
  } as const;
  // 60 m²: 0.5 · 0.307 · 2.2 · 60 = 20.262 kg; 300 m³/h over 30: 10 · 0.307 = 3.07 kg.
  const fan = {
    kind: "circulation",
    totalFloorArea: m2(60),
    airflow: m3PerHour(300),
    detector: true,
  } as const;
  const base = {
    assumptions: usual.slice(1),
    cautions: dangers("burns"),
    actions: [],
    sources: sources2018,
  };
  const rules = (...from: string[]) => [
    `finding: from-memory, rules ${from.map((one) => `rule.${one}`).join(" + ")}`,
    ...dangers("burns"),
  ];

  test.each([
    [
      "openings that are large enough",
      openings,
      {},
      { outcome: "pass", reasons: ["within-limit, charge 2.000 kg, limit 2.168 kg"] },
    ],
    [
      "rooms that are too small together",
      openings,
      { charge: kg(3) },
      {
        outcome: "fail",
        cause: "room-too-small",
        reasons: ["above-limit, charge 3.000 kg, limit 2.168 kg"],
        actions: [more, roomFor(3)], // manuals print 76.60
      },
    ],
    [
      // Without openings the printed 1.533 kg, below m1: the room counts with 1.842 kg by itself.
      "openings of nothing",
      { ...openings, lowerOpening: m2(0), upperOpening: m2(0) },
      {},
      {
        outcome: "fail",
        cause: "room-too-small",
        reasons: ["above-limit, charge 2.000 kg, limit 1.842 kg"],
        actions: [more, roomFor(2)],
      },
    ],
    [
      // 0.025 m² of the 0.0254 m² that 2 kg need (printed formula): 1.533 + 0.467 · 0.025/0.0254
      "openings that are too small",
      { ...openings, lowerOpening: m2(0.025) },
      {},
      {
        outcome: "fail",
        cause: "openings-too-small",
        reasons: [expect.stringMatching(/^above-limit, charge 2\.000 kg, limit 1\.99\d kg$/)],
        actions: [more, "enlarge-openings"],
      },
    ],
    [
      "openings of which it is not stated how they sit",
      { ...openings, placedAsRequired: undefined },
      {},
      {
        outcome: "inconclusive",
        reasons: ["protection-not-stated, missing missing.openings-placed"],
        actions: ["state-protection, missing missing.openings-placed"],
      },
    ],
    [
      "openings that sit wrong, which are none",
      { ...openings, placedAsRequired: false },
      {},
      {
        outcome: "fail",
        cause: "room-too-small",
        reasons: ["above-limit, charge 2.000 kg, limit 1.842 kg"],
        assumptions: usual,
        actions: [more, roomFor(2)],
      },
    ],
    [
      "openings by a text from memory",
      openings,
      { edition: "iec-60335-2-40-2022" },
      {
        outcome: "pass",
        reasons: ["within-limit, charge 2.000 kg, limit 2.168 kg"],
        assumptions: [
          "edition-used, edition edition.iec-60335-2-40-2022",
          limitR32,
          "low-altitude",
          ...exact,
        ],
        cautions: rules("thresholds", "openings"),
        sources: ["iec-60335-2-40-2022: GG.1, GG.2", "iec-60335-2-40-2018: ", "jcgm-106-2012: 8.3"],
      },
    ],
    [
      "enhanced tightness",
      tight,
      { charge: kg(3.37), edition: "iec-60335-2-40-2018" },
      { outcome: "pass", reasons: ["within-limit, charge 3.370 kg, limit 3.377 kg"] },
    ],
    [
      "enhanced tightness by a text from memory",
      tight,
      { edition: "ul-60335-2-40-2019" },
      {
        outcome: "pass",
        reasons: ["within-limit, charge 2.000 kg, limit 3.377 kg"],
        assumptions: [
          "edition-used, edition edition.ul-60335-2-40-2019",
          limitR32,
          "low-altitude",
          ...exact,
        ],
        cautions: rules("thresholds", "enhanced-tightness"),
        sources: ["ul-60335-2-40-2019: GG.1, GG.2", "iec-60335-2-40-2018: ", "jcgm-106-2012: 8.3"],
      },
    ],
    [
      // A system counts up to m3, 79.82 kg: 0.5 · 0.307 · 2.2 · 70 = 23.639 kg, as a manual prints for 70 m².
      "enhanced tightness above m2, for it is a rule for the system",
      { ...tight, measure: "alarm", countedFloorArea: m2(70) },
      { charge: kg(20) },
      { outcome: "pass", reasons: ["within-limit, charge 20.000 kg, limit 23.639 kg"] },
    ],
    [
      "enhanced tightness up to m3 and not further",
      { ...tight, measure: "shut-off", countedFloorArea: m2(1000) },
      { charge: kg(80) },
      {
        outcome: "fail",
        cause: "beyond-m3",
        reasons: [
          "beyond-m3, charge 80.000 kg, limit 79.820 kg",
          "above-limit, charge 80.000 kg, limit 79.820 kg",
        ],
        actions: [more, "divide-the-system, maximum 79.820 kg"],
      },
    ],
    [
      "enhanced tightness that nobody declared",
      { ...tight, declared: undefined },
      {},
      {
        outcome: "inconclusive",
        reasons: ["protection-not-stated, missing missing.enhanced-tightness"],
        actions: ["state-protection, missing missing.enhanced-tightness"],
      },
    ],
    [
      // Alone 20 m² hold m1, 1.842 kg, as a room of any size.
      "enhanced tightness that nobody declared, where the room is enough by itself",
      { ...tight, declared: undefined },
      { charge: kg(1.8) },
      {
        outcome: "pass",
        reasons: [
          "room-does-not-matter, charge 1.800 kg, limit 1.842 kg",
          "within-limit, charge 1.800 kg, limit 1.842 kg",
        ],
        assumptions: usual,
      },
    ],
    [
      // 1.84 kg ± 0.05 kg may be more than the 1.842 kg of the room by itself.
      "enhanced tightness that nobody declared, where the room may not be enough by itself",
      { ...tight, declared: undefined },
      { charge: kg(1.84), instruments: { charge: { accuracy: g(50) } } },
      {
        outcome: "inconclusive",
        reasons: ["protection-not-stated, missing missing.enhanced-tightness"],
        assumptions: [...usual.slice(1, 4), "exact-size"],
        actions: ["state-protection, missing missing.enhanced-tightness"],
      },
    ],
    [
      // What no tightness makes possible fails, whatever is stated of it.
      "a charge above m3 with enhanced tightness that nobody declared",
      { ...tight, declared: undefined, measure: "shut-off", countedFloorArea: m2(1000) },
      { charge: kg(80) },
      {
        outcome: "fail",
        cause: "beyond-m3",
        reasons: [
          "beyond-m3, charge 80.000 kg, limit 79.820 kg",
          "above-limit, charge 80.000 kg, limit 79.820 kg",
        ],
        actions: [more, "divide-the-system, maximum 79.820 kg"],
      },
    ],
    [
      // 3.37 kg ± 0.05 kg, 0.058 kg at twice the standard uncertainty, may be more than 3.377 kg.
      "enhanced tightness that nobody declared, and a scale that cannot tell",
      { ...tight, declared: undefined },
      { charge: kg(3.37), instruments: { charge: { accuracy: g(50) } } },
      {
        outcome: "inconclusive",
        reasons: [
          "protection-not-stated, missing missing.enhanced-tightness",
          "too-close-to-call, charge 3.370 kg, limit 3.377 kg, uncertainty 0.058 kg",
        ],
        assumptions: [...usual.slice(1, 4), "exact-size"],
        actions: [
          "state-protection, missing missing.enhanced-tightness",
          "weigh-or-measure-better",
        ],
      },
    ],
    [
      // 20 m²: 0.25 · 0.307 · 2.2 · 20 = 3.377 kg; 7 kg / (0.25 · 0.307 · 2.2) = 41.457 m², a closed room 416.8 m²
      "enhanced tightness in a room that is too small",
      tight,
      { charge: kg(7) },
      {
        outcome: "fail",
        cause: "room-too-small",
        reasons: ["above-limit, charge 7.000 kg, limit 3.377 kg"],
        actions: [more, "find-larger-room, area 41.457 m²"],
      },
    ],
    [
      // Above m2 no closed room holds it: 20 kg / (0.25 · 0.307 · 2.2) = 118.448 m².
      "enhanced tightness above m2",
      { ...tight, countedFloorArea: m2(100) },
      { charge: kg(20) },
      {
        outcome: "fail",
        cause: "room-too-small",
        reasons: ["above-limit, charge 20.000 kg, limit 16.885 kg"],
        actions: [more, "find-larger-room, area 118.448 m²"],
      },
    ],
    [
      // 0.25 · 0.307 · 2.2 · 4 = 0.675 kg are less than m1, 1.842 kg, which decides; above m2 as before 118.448 m².
      "enhanced tightness of a small area above m2",
      { ...tight, countedFloorArea: m2(4) },
      { charge: kg(20) },
      {
        outcome: "fail",
        cause: "room-too-small",
        reasons: ["above-limit, charge 20.000 kg, limit 1.842 kg"],
        actions: [more, "find-larger-room, area 118.448 m²"],
      },
    ],
    [
      "enhanced tightness above m2 that nobody declared, so that no advice rests on it",
      { ...tight, countedFloorArea: m2(100), declared: undefined },
      { charge: kg(20) },
      {
        outcome: "fail",
        cause: "beyond-m2",
        reasons: [
          "beyond-m2, charge 20.000 kg, limit 15.964 kg",
          "above-limit, charge 20.000 kg, limit 16.885 kg",
        ],
        actions: [more, "use-other-clauses, maximum 15.964 kg"],
      },
    ],
    [
      "enhanced tightness that nobody declared: a closed room is told",
      { ...tight, declared: undefined },
      { charge: kg(7) },
      {
        outcome: "fail",
        cause: "room-too-small",
        reasons: ["above-limit, charge 7.000 kg, limit 3.377 kg"],
        actions: [more, roomFor(7)],
      },
    ],
    [
      // 0.5 · 0.307 · 2.2 · 4 = 1.351 kg: less than m1, so that it adds nothing.
      "enhanced tightness that adds nothing",
      { ...tight, measure: "ventilation", countedFloorArea: m2(4) },
      {},
      {
        outcome: "fail",
        cause: "room-too-small",
        reasons: ["above-limit, charge 2.000 kg, limit 1.842 kg"],
        actions: [more, "find-larger-room, area 5.922 m²"], // 2 / (0.5 · 0.307 · 2.2)
      },
    ],
    [
      // 1600 m³/h over 30 are 16.373 kg, the space 0.5 · 0.307 · 2.2 · 100 = 33.77 kg: m2, 15.964 kg, is less than both.
      "a fan whose airflow is no longer what stands against it",
      { ...fan, airflow: m3PerHour(1600), totalFloorArea: m2(100) },
      { charge: kg(17) },
      {
        outcome: "fail",
        cause: "beyond-m2",
        reasons: [
          "beyond-m2, charge 17.000 kg, limit 15.964 kg",
          "above-limit, charge 17.000 kg, limit 15.964 kg",
        ],
        cautions: rules("circulation"),
        actions: [more, "use-other-clauses, maximum 15.964 kg"],
      },
    ],
    [
      "a fan",
      fan,
      {},
      {
        outcome: "pass",
        reasons: ["within-limit, charge 2.000 kg, limit 3.070 kg"],
        cautions: rules("circulation"),
      },
    ],
    [
      "a fan that is too weak",
      { ...fan, airflow: m3PerHour(190) }, // 190/30 · 0.307 = 1.944 kg
      {},
      {
        outcome: "fail",
        cause: "airflow-too-small",
        reasons: ["above-limit, charge 2.000 kg, limit 1.944 kg"],
        cautions: rules("circulation"),
        actions: [more, "raise-airflow"],
      },
    ],
    [
      "a fan that UL asks twice the air of",
      { ...fan, airflow: m3PerHour(390) }, // 390/60 · 0.307 = 1.9955 kg
      { edition: "ul-60335-2-40-2022" },
      {
        outcome: "fail",
        cause: "airflow-too-small",
        reasons: [expect.stringMatching(/^above-limit, charge 2\.000 kg, limit 1\.99[56] kg$/)],
        assumptions: [
          "edition-used, edition edition.ul-60335-2-40-2022",
          limitR32,
          "low-altitude",
          ...exact,
        ],
        cautions: rules("thresholds", "circulation"),
        actions: [more, "raise-airflow"],
        sources: ["ul-60335-2-40-2022: GG.1, GG.2", "iec-60335-2-40-2018: ", "jcgm-106-2012: 8.3"],
      },
    ],
    [
      // 8 m²: 0.5 · 0.307 · 2.2 · 8 = 2.702 kg
      "a fan in a space that is too small",
      { ...fan, totalFloorArea: m2(8) },
      { charge: kg(2.8) },
      {
        outcome: "fail",
        cause: "room-too-small",
        reasons: ["above-limit, charge 2.800 kg, limit 2.702 kg"],
        cautions: rules("circulation"),
        // 2.8 / (0.5 · 0.307 · 2.2); without the fan manuals print 66.72
        actions: [more, "find-larger-room, area 8.291 m²"],
      },
    ],
    [
      "a fan of which no detector is stated",
      { ...fan, detector: undefined },
      {},
      {
        outcome: "inconclusive",
        reasons: ["protection-not-stated, missing missing.detector"],
        cautions: rules("circulation"),
        actions: ["state-protection, missing missing.detector"],
      },
    ],
  ] as [string, charge.RoomProtection, Partial<charge.RoomChargeInput>, object][])(
    "%s",
    (_, protection, input, said) => {
      const room = { ...floor, floorArea: m2(20), protection, ...input };
      expect(allOf(charge.assessRoomCharge(room))).toEqual({ ...base, ...said });
    },
  );
});

describe("all that a verdict by concentration says", () => {
  // R410A: 0.42 kg/m³, so 30 m³ hold 12.6 kg. R744: 54 g/m³, from memory. R32: 77 g/m³. R717: 0.22 g/m³, from memory.
  const used = (limit: string, standing: string) =>
    `concentration-limit-used, limit ${limit}, standing standing.${standing}`;
  const plain = {
    assumptions: [used("420.000 g/m³", "published"), ...exact],
    cautions: dangers("suffocates"),
    actions: [],
    sources: ["manufacturer-manuals: a multi-split manual: 0.42 kg/m³", "jcgm-106-2012: 8.3"],
  };
  const remembered = "finding: from-memory, rules rule.concentration-limit";

  test.each([
    [
      "passes",
      { charge: kg(12.6) },
      { outcome: "pass", reasons: ["within-limit, charge 12.600 kg, limit 12.600 kg"] },
    ],
    [
      "fails, and says how much room 21 kg need: 21 / 0.42 = 50 m³",
      { charge: kg(21) },
      {
        outcome: "fail",
        cause: "room-too-small",
        reasons: ["above-limit, charge 21.000 kg, limit 12.600 kg"],
        actions: [more, "find-larger-volume, volume 50.000 m³"],
      },
    ],
    [
      // ± 1 m³ is ± 0.42 kg; over √3, and twice that: 0.485 kg
      "is open where the volume is not known well enough",
      { charge: kg(12.5), instruments: { size: { accuracy: m3(1) } } },
      {
        outcome: "inconclusive",
        reasons: ["too-close-to-call, charge 12.500 kg, limit 12.600 kg, uncertainty 0.485 kg"],
        assumptions: [used("420.000 g/m³", "published"), "exact-charge"],
        actions: ["weigh-or-measure-better"],
      },
    ],
    [
      "says that a limit is the caller's",
      { concentrationLimit: kgPerM3(0.1) },
      {
        outcome: "pass",
        reasons: ["within-limit, charge 1.000 kg, limit 3.000 kg"],
        assumptions: [used("0.100 kg/m³", "stated"), ...exact],
        sources: ["jcgm-106-2012: 8.3"],
      },
    ],
    [
      "says that a limit is from memory",
      { refrigerant: R744 },
      {
        outcome: "pass",
        reasons: ["within-limit, charge 1.000 kg, limit 1.620 kg"],
        assumptions: [used("54.000 g/m³", "from-memory"), ...exact],
        cautions: [remembered, ...dangers("suffocates")],
        sources: ["ashrae-34-2022: ", "jcgm-106-2012: 8.3"],
      },
    ],
    [
      "sends what burns to the other rule as well",
      { refrigerant: R32 },
      {
        outcome: "pass",
        reasons: ["within-limit, charge 1.000 kg, limit 2.310 kg"],
        assumptions: [used("77.000 g/m³", "published"), ...exact],
        cautions: ["finding: flammability-too", ...dangers("burns")],
        sources: ["ashrae-34-2022: ", "jcgm-106-2012: 8.3"],
      },
    ],
    [
      "warns of what is toxic",
      { refrigerant: R717, charge: g(6.6) }, // 0.22 g/m³ · 30 m³
      {
        outcome: "pass",
        reasons: ["within-limit, charge 6.600 g, limit 6.600 g"],
        assumptions: [used("0.220 g/m³", "from-memory"), ...exact],
        cautions: ["finding: flammability-too", remembered, ...dangers("burns", true)],
        sources: ["ashrae-34-2022: ", "jcgm-106-2012: 8.3"],
      },
    ],
  ] as [string, Partial<charge.ConcentrationInput>, object][])("%s", (_, input, said) => {
    const room = { refrigerant: R410A, charge: kg(1), volume: m3(30), ...input };
    expect(allOf(charge.assessConcentration(room))).toEqual({ ...plain, ...said });
  });

  test("the figures alone carry the same cautions", () => {
    const of = (answer: { readonly cautions: readonly charge.RoomCaution[] }) =>
      heeded(answer.cautions);
    const stated = { refrigerant: R744, concentrationLimit: kgPerM3(0.1) };
    const volume = m3(30);
    expect(of(charge.concentrationChargeLimit({ refrigerant: R744, volume }))).toEqual([
      remembered,
      ...dangers("suffocates"),
    ]);
    expect(of(charge.concentrationChargeLimit({ ...stated, volume }))).toEqual(
      dangers("suffocates"),
    );
    expect(of(charge.minimumRoomVolume({ refrigerant: R744, charge: kg(1) }))).toEqual([
      remembered,
      ...dangers("suffocates"),
    ]);
  });
});

describe("all that a verdict on a unit outdoors says", () => {
  const unit = {
    refrigerant: R290,
    surroundings: "open-air",
    protectionZone: m(1),
    distances: [m(3), m(1.4), m(2)],
  } as const;
  const outdoors = {
    assumptions: ["exact-distance"],
    cautions: ["finding: refrigerant-in-water", ...dangers("burns")],
    actions: [],
    sources: ["manufacturer-manuals: protection zone", "common-practice: "],
  };

  test.each([
    [
      "passes clear of the nearest opening",
      {},
      {
        outcome: "pass",
        reasons: ["clear-of-openings, distance 1.400 m, required 1.000 m"],
      },
    ],
    [
      "passes where nothing is near",
      { distances: [] },
      { outcome: "pass", reasons: ["nothing-near, required 1.000 m"] },
    ],
    [
      // 0.3048 m are 1 ft: 1.5 m are 4.921 ft
      "fails too near, in the units of the distance",
      { protectionZone: m(1.5), distances: [m(3), ft(4)] },
      {
        outcome: "fail",
        cause: "too-near-an-opening",
        reasons: ["too-near-an-opening, distance 4.000 ft, required 4.921 ft"],
        actions: ["move-outdoor-unit, required 4.921 ft"],
      },
    ],
    [
      "is open where the tape cannot tell",
      { protectionZone: m(1.4), tape: { accuracy: m(0.05) } },
      {
        outcome: "inconclusive",
        reasons: ["distance-too-close-to-call, distance 1.400 m, required 1.400 m"],
        assumptions: [],
        actions: ["measure-distances"],
      },
    ],
    [
      "fails where it is closed in",
      { surroundings: "closed-in" },
      {
        outcome: "fail",
        cause: "closed-in",
        reasons: ["closed-in-outdoors"],
        actions: ["move-to-open-air"],
      },
    ],
    [
      "asks for the zone",
      { protectionZone: undefined },
      {
        outcome: "inconclusive",
        reasons: ["protection-zone-not-stated"],
        actions: ["state-protection-zone"],
      },
    ],
    [
      "asks for the distances",
      { distances: undefined },
      {
        outcome: "inconclusive",
        reasons: ["distances-not-stated"],
        actions: ["measure-distances"],
      },
    ],
  ] as [string, Partial<charge.OutdoorUnitInput>, object][])("%s", (_, input, said) => {
    expect(allOf(charge.assessOutdoorUnit({ ...unit, ...input }))).toEqual({
      ...outdoors,
      ...said,
    });
  });

  test("a confidence that is asked for is kept to", () => {
    // ± 0.05 m is 0.0289 m standard; 0.02 m are 0.69 of it: enough for 70 % (0.524), not for 95 % (1.645).
    const blunt = { ...unit, protectionZone: m(1.38), tape: { accuracy: m(0.05) } };
    const sure = (confidence?: number) =>
      charge.assessOutdoorUnit({ ...blunt, confidence }).outcome;
    expect([sure(0.7), sure(0.95), sure()]).toEqual(["pass", "inconclusive", "inconclusive"]);
  });
});

describe("all that the verdict on the rooms of a system says", () => {
  // On the wall h0 is 1.8 m. 30 m²: root 2.5 · 0.307^1.25 · 1.8 · √30 = 5.632 kg; 6 m²: cap 0.5 · 0.307 · 2.2 · 6 =
  // 2.026 kg. 2.4 kg need 2.4 / (0.5 · 0.307 · 2.2) = 7.107 m².
  const large = { name: "living room", place: "wall", floorArea: m2(30) } as const;
  const small = { name: "study", place: "wall", floorArea: m2(6) } as const;
  const instruments = { size: { accuracy: m2(1) } };
  const system = {
    assumptions: usual,
    cautions: dangers("burns"),
    sources: sources2018,
  };
  const judged = (...rooms: charge.ServedRoom[]) =>
    allOf(charge.assessRooms({ refrigerant: R32, charge: kg(2.4), rooms }));

  test("where every room passes", () => {
    expect(judged(large, { ...large, name: "kitchen" })).toEqual({
      ...system,
      outcome: "pass",
      reasons: ["every-room-passes, count 2"],
      actions: [],
    });
  });

  test("where one fails", () => {
    expect(judged(large, small)).toEqual({
      ...system,
      outcome: "fail",
      cause: "room-too-small",
      reasons: ["room-fails, room study", "above-limit, charge 2.400 kg, limit 2.026 kg"],
      actions: ["act-on-room, room study", more, "find-larger-room, area 7.107 m²"],
    });
  });

  test("where one is open: 7.2 m² ± 1 m² hold 2.431 kg ± 2 · 0.3377/√3 kg", () => {
    expect(judged(large, { ...small, floorArea: m2(7.2), instruments })).toEqual({
      ...system,
      outcome: "inconclusive",
      reasons: [
        "room-inconclusive, room study",
        "too-close-to-call, charge 2.400 kg, limit 2.431 kg, uncertainty 0.390 kg",
      ],
      actions: ["act-on-room, room study", "weigh-or-measure-better"],
    });
  });

  test("with areas in square feet all the same: 64.583 sq ft are 6 m²", () => {
    const feet = { ...small, floorArea: sqft(6 / 0.3048 ** 2) };
    expect(judged(large, feet)).toEqual(judged(large, small));
  });
});
