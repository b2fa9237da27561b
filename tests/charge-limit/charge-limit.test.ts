import * as charge from "hvac-install-math/charge-limit";
import * as fluids from "hvac-install-math/property-model";
import * as q from "hvac-install-math/quantity";
import { degC, g, kg, kgPerM3, m, m2, m3, OutOfRangeError, ppm } from "hvac-install-math/quantity";
import {
  R22,
  R32,
  R290,
  R410A,
  R454B,
  R717,
  R744,
  refrigerants,
} from "hvac-install-math/refrigerants";
import { describe, expect, test } from "vitest";
import { safetyTable } from "../../src/charge-limit/safety-data.ts";
import { argumentOf } from "../argument-of.ts";

// biome-ignore lint/suspicious/noExplicitAny: what JavaScript could pass
type Anything = any;

describe("the safety data", () => {
  test("belong to refrigerants of the library, with an LFL exactly where they burn", () => {
    const keyOf = ({ designation }: { designation: string }) => designation.replace(/[^\w]/g, "");
    expect(new Set(Object.keys(safetyTable))).toEqual(new Set(refrigerants.map(keyOf)));
    for (const one of refrigerants) {
      const lfl = safetyTable[keyOf(one)]?.lfl;
      expect(Boolean(lfl), one.designation).toBe(!one.safetyClass.endsWith("1"));
    }
  });

  test("keep a quarter of the LFL, the largest an RCL may be, but for rounding to two digits", () => {
    for (const [name, { lfl, rcl }] of Object.entries(safetyTable)) {
      if (name === "R717") continue; // its RCL is one of toxicity
      const highest = Math.max(...(lfl ?? []).map(([value]) => value));
      if (lfl) expect(rcl[0]?.[0], name).toBeLessThan(250 * highest * 1.05);
    }
  });

  test("are the same in ppm and in g/m³, within the two digits that both are printed with", () => {
    const molarMass = (designation: string) => {
      const key = designation.replace(/[^\w]/g, "") as "R32";
      const { molarMass: kgPerMol } = { ...fluids }[key];
      return kgPerMol * 1000;
    };
    for (const refrigerant of refrigerants) {
      const key = refrigerant.designation.replace(/[^\w]/g, "");
      if (!safetyTable[key]) continue;
      const moles = refrigerant.composition.reduce(
        (sum, part) => sum + part.massPercent / 100 / molarMass(part.designation),
        0,
      );
      const safety = charge.refrigerantSafety(refrigerant);
      const byVolume = charge.massConcentration({
        volumeFraction: safety.concentrationLimitByVolume,
        molarMass: 1 / moles,
        temperature: degC(25),
        atmosphere: q.standardAtmosphere,
      });
      const printed = safety.concentrationLimits[0]?.value.si ?? 0;
      expect(Math.abs(byVolume.si / printed - 1), key).toBeLessThan(0.05);
    }
  });

  test("say of every figure whether it was read or remembered", () => {
    const { concentrationLimits } = charge.refrigerantSafety(R410A);
    expect(concentrationLimits.map(({ standing }) => standing)).toEqual([
      "published",
      "published",
      "published",
    ]);
    expect(concentrationLimits.map(({ citation }) => citation?.clause)).toEqual([
      "a multi-split manual: 0.42 kg/m³",
      "edition 2010",
      "an older manual",
    ]);
  });

  test("are refused for what is not held, with a list of what is", () => {
    const unknown = { designation: "R-999", safetyClass: "A2L" } as const;
    expect(() => charge.refrigerantSafety(unknown)).toThrow(/"R-999" is not allowed; .*R454B/);
    // its own limit from its safety data is enough
    const own = {
      refrigerant: unknown,
      lowerFlammabilityLimit: kgPerM3(0.3),
      place: "wall",
    } as const;
    expect(charge.roomChargeLimit({ ...own, floorArea: m2(20) }).limit.si).toBeGreaterThan(1.8);
    expect(argumentOf(() => charge.refrigerantSafety(undefined as Anything))).toBe("refrigerant");
    const inherited = { designation: "toString", safetyClass: "A1" } as const;
    expect(argumentOf(() => charge.refrigerantSafety(inherited))).toBe("refrigerant.designation");
  });
});

describe("the largest charge of a flammable refrigerant", () => {
  const wall = { refrigerant: R32, place: "wall" } as const;

  test("is decided by the floor area, the cap, the free charge or m2", () => {
    const decided = (area: number, more: object = {}) =>
      charge.roomChargeLimit({ ...wall, floorArea: m2(area), ...more }).decidedBy;
    expect(decided(1)).toBe("unrestricted");
    expect(decided(20)).toBe("floor-area");
    expect(decided(2000)).toBe("m2");
    expect(decided(6)).toBe("room-height-cap");
    expect(decided(6, { smallRoomCap: "release-height" })).toBe("release-height-cap");
    expect(decided(6, { smallRoomCap: "none" })).toBe("floor-area");
    // Three manuals of one edition for 1.84 kg on the wall: 3.20 m² without a cap, 4.44 m² and 5.45 m² with one.
    const huge = charge.roomChargeLimit({ ...wall, floorArea: m2(2000) });
    expect(huge.limit.toString(kg, 3)).toBe("15.964 kg");
  });

  test("leaves A2L free up to 6 m³·LFL from 2018, everything else up to 4 m³·LFL", () => {
    const free = (unit: charge.RoomUnit) =>
      charge.roomChargeLimit({ ...unit, floorArea: m2(1) }).limit.toString(kg, 3);
    expect(free(wall)).toBe("1.842 kg");
    expect(free({ ...wall, edition: "iec-60335-2-40-2013" })).toBe("1.228 kg");
    expect(free({ refrigerant: R290, place: "wall" })).toBe("0.152 kg");
  });

  test("grows with the release height, which is at least 0.6 m", () => {
    const height = (more: object) =>
      charge
        .roomChargeLimit({ refrigerant: R32, floorArea: m2(20), ...more })
        .releaseHeight.toString();
    expect(height({ installationHeight: m(0.1), releaseOffset: m(0.2) })).toBe("0.6 m");
    expect(height({ installationHeight: m(0.5), releaseOffset: m(0.4) })).toBe("0.9 m");
    expect(height({ place: "wall", releaseOffset: m(0.1) })).toBe("1.9 m");
  });

  test("says when a height is above the reference heights", () => {
    const codes = (height: number) =>
      charge
        .roomChargeLimit({ refrigerant: R32, floorArea: m2(20), installationHeight: m(height) })
        .assumptions.map(({ code }) => code);
    expect(codes(2.2)).not.toContain("charge-limit.above-reference-height");
    expect(codes(3)).toContain("charge-limit.above-reference-height");
  });

  test("names the limit that it used and whether it was read", () => {
    const { assumptions, lowerFlammabilityLimit } = charge.roomChargeLimit({
      refrigerant: R454B,
      place: "ceiling",
      floorArea: m2(20),
    });
    expect(lowerFlammabilityLimit.toString()).toBe("0.296 kg/m³");
    expect(assumptions.map(({ values }) => values)).toContainEqual(
      expect.objectContaining({ standing: "charge-limit.standing.from-memory" }),
    );
  });

  test("names the bad argument", () => {
    const limit = (more: Anything) =>
      argumentOf(() => charge.roomChargeLimit({ ...wall, floorArea: m2(20), ...more }));
    expect(limit({ refrigerant: R410A })).toBe("refrigerant.safetyClass");
    expect(limit({ refrigerant: R717 })).toBe("refrigerant.safetyClass");
    expect(limit({ smallRoomCap: "least" })).toBe("smallRoomCap");
    expect(limit({ altitude: m(3300) })).toBe("altitude");
    expect(limit({ floorArea: m2(0) })).toBe("floorArea");
    expect(limit({ floorArea: 20 })).toBe("floorArea");
    expect(limit({ place: undefined })).toBe("place");
    expect(limit({ installationHeight: m(2) })).toBe("place");
    expect(limit({ place: "roof" })).toBe("place");
    expect(limit({ place: undefined, installationHeight: m(11) })).toBe("installationHeight");
    expect(limit({ releaseOffset: m(-1) })).toBe("releaseOffset");
    expect(limit({ releaseOffset: m(11) })).toBe("releaseOffset");
    expect(limit({ lowerFlammabilityLimit: kgPerM3(0) })).toBe("lowerFlammabilityLimit");
    expect(limit({ lowerFlammabilityLimit: kgPerM3(307) })).toBe("lowerFlammabilityLimit");
    expect(limit({ edition: "2022" })).toBe("edition");
    expect(argumentOf(() => charge.minimumFloorArea({ ...wall, charge: kg(0) }))).toBe("charge");
    expect(() => charge.minimumFloorArea({ ...wall, charge: kg(16) })).toThrow(OutOfRangeError);
    expect(() => charge.minimumFloorArea({ ...wall, charge: kg(16) })).toThrow(
      /at most m2, 15.964 kg/,
    );
  });
});

describe("the verdict on a charge in a room", () => {
  const unit = { refrigerant: R32, place: "floor", charge: kg(2) } as const;

  test("passes at the smallest floor area and fails below it", () => {
    const { area } = charge.minimumFloorArea(unit);
    const outcome = (floorArea: typeof area) =>
      charge.assessRoomCharge({ ...unit, floorArea }).outcome;
    expect(outcome(area.times(1.001))).toBe("pass");
    expect(outcome(area.times(0.999))).toBe("fail");
  });

  test("says when no unventilated room is large enough", () => {
    const at = (mass: number) =>
      charge.assessRoomCharge({ ...unit, charge: kg(mass), floorArea: m2(5000) });
    expect(at(16).cause).toBe("beyond-m2");
    expect(at(80).cause).toBe("beyond-m3");
    expect(at(16).actions?.map(({ code }) => code)).toEqual([
      "charge-limit.add-no-refrigerant",
      "charge-limit.use-other-clauses",
    ]);
  });

  // Makers' manuals, IEC 60335-2-40:2018: 15.96 kg of R32 per indoor unit, not 7.98 kg.
  test("does not judge A2L by the factors of A3: R-32, 9 kg in 400 m²", () => {
    const room = { refrigerant: R32, place: "wall", charge: kg(9), floorArea: m2(400) } as const;
    expect(charge.assessRoomCharge(room).outcome).toBe("pass");
    expect(charge.assessRoomCharge({ ...room, charge: kg(10), floorArea: m2(95) }).outcome).toBe(
      "pass",
    );
    const old = { ...room, edition: "iec-60335-2-40-2013" } as const;
    expect(charge.assessRoomCharge(old).cause).toBe("beyond-m2");
  });

  test("is open when scale and tape cannot tell", () => {
    const room = { ...unit, floorArea: m2(34.3) };
    expect(charge.assessRoomCharge(room).outcome).toBe("pass");
    const instruments = { charge: { accuracy: g(5) }, size: { accuracy: m2(1) } };
    const verdict = charge.assessRoomCharge({ ...room, instruments });
    expect(verdict.outcome).toBe("inconclusive");
    // m = c √A: 1 m² of 34.3 m² is 1.46 % of 2.0075 kg; with √3 and 5 g that is 0.0171 kg standard.
    expect(String((verdict.reasons[0]?.values as Anything)?.uncertainty)).toMatch(
      /^0\.0342\d* kg$/,
    );
    expect(verdict.actions?.map(({ code }) => code)).toEqual([
      "charge-limit.weigh-or-measure-better",
    ]);
  });

  test("carries the cautions of what burns", () => {
    const verdict = charge.assessRoomCharge({ ...unit, floorArea: m2(50) });
    expect(verdict.cautions.map(({ code }) => code)).toEqual([
      "safety.flammable-refrigerant",
      "safety.refrigerant-contact",
      "safety.charge-tight-system",
      "safety.refrigerant-air-mixture",
      "safety.others-govern",
    ]);
    expect(verdict.assumptions.map(({ code }) => code)).toEqual([
      "charge-limit.one-closed-room",
      "charge-limit.edition-used",
      "charge-limit.flammability-limit-used",
      "charge-limit.low-altitude",
      "charge-limit.exact-charge",
      "charge-limit.exact-size",
    ]);
  });
});

describe("the concentration limit", () => {
  test("takes the caller's limit when one is stated", () => {
    const stated = charge.concentrationChargeLimit({
      refrigerant: R744,
      volume: m3(30),
      concentrationLimit: kgPerM3(0.1),
    });
    expect(stated.value.toString()).toBe("3 kg");
    expect(stated.basis.standing).toBe("stated");
    expect(stated.basis.citation).toBeUndefined();
  });

  test("sends flammable refrigerants to the flammability rule as well", () => {
    const codes = (refrigerant: charge.RoomRefrigerant) =>
      charge
        .assessConcentration({ refrigerant, charge: kg(1), volume: m3(30) })
        .cautions.map(({ code }) => code);
    expect(codes(R32)).toContain("charge-limit.flammability-too");
    expect(codes(R22)).toEqual([
      "safety.refrigerant-suffocates",
      "safety.refrigerant-contact",
      "safety.charge-tight-system",
      "safety.refrigerant-air-mixture",
      "safety.others-govern",
    ]);
  });

  test("is open when the volume is not known well enough", () => {
    const room = { refrigerant: R410A, charge: kg(12.5), volume: m3(30) };
    expect(charge.assessConcentration(room).outcome).toBe("pass");
    const instruments = { size: { accuracy: m3(1) } };
    expect(charge.assessConcentration({ ...room, instruments }).outcome).toBe("inconclusive");
  });

  test("names the bad argument", () => {
    const room = { refrigerant: R410A, charge: kg(1), volume: m3(30) };
    const named = (more: Anything) =>
      argumentOf(() => charge.assessConcentration({ ...room, ...more }));
    expect(named({ volume: m3(0) })).toBe("volume");
    expect(named({ volume: m2(12) })).toBe("volume");
    expect(named({ charge: kg(0) })).toBe("charge");
    expect(named({ charge: undefined })).toBe("charge");
    expect(named({ concentrationLimit: kgPerM3(-1) })).toBe("concentrationLimit");
    expect(named({ concentrationLimit: kgPerM3(42) })).toBe("concentrationLimit"); // 0.42 without its point
    expect(named({ confidence: 0.2 })).toBe("confidence");
    const air = { temperature: degC(25), atmosphere: q.standardAtmosphere, molarMass: 52 };
    expect(argumentOf(() => charge.massConcentration({ ...air, volumeFraction: ppm(-1) }))).toBe(
      "volumeFraction",
    );
    const none = { ...air, molarMass: 0, volumeFraction: ppm(1) };
    expect(argumentOf(() => charge.massConcentration(none))).toBe("molarMass");
  });
});

describe("the warming potential", () => {
  test("of every blend of the library agrees with its composition", () => {
    const known = /^R-(32|125|134a|143a|1234yf|1234ze\(E\))$/;
    const blends = refrigerants.filter(
      ({ composition }) =>
        composition.length > 1 && composition.every(({ designation }) => known.test(designation)),
    );
    expect(blends.length).toBeGreaterThanOrEqual(10);
    for (const { designation, composition, gwp } of blends) {
      for (const report of ["ar4", "ar5", "ar6"] as const) {
        const input = { composition, basis: `ipcc-${report}` } as const;
        const held = gwp[report];
        if (held) expect(charge.blendWarmingPotential(input).value).toBeCloseTo(held.value, 6);
        else expect(() => charge.blendWarmingPotential(input), designation).toThrow(/no-value/);
      }
    }
  });

  test("names the bad argument", () => {
    const blend = (composition: Anything) =>
      argumentOf(() => charge.blendWarmingPotential({ composition, basis: "ipcc-ar4" }));
    const half = { designation: "R-32", massPercent: 50 };
    expect(blend([half])).toBe("composition");
    expect(blend([half, { designation: "R-999", massPercent: 50 }])).toBe(
      "composition[1].designation",
    );
    expect(blend([{ ...half, massPercent: -50 }])).toBe("composition[0].massPercent");
    const input = { refrigerant: R32, charge: kg(1), basis: "ipcc-ar4" } as const;
    const carbon = (more: Anything) =>
      argumentOf(() => charge.carbonDioxideEquivalent({ ...input, ...more }));
    expect(carbon({ basis: "ar4" })).toBe("basis");
    expect(carbon({ charge: kg(-1) })).toBe("charge");
    expect(carbon({ refrigerant: {} })).toBe("refrigerant.composition");
  });
});

describe("a manual's table", () => {
  const rows = [
    { area: m2(4), charge: kg(0.68) },
    { area: m2(10), charge: kg(1.08) },
    { area: m2(30), charge: kg(1.87) },
  ];

  test("is read by rows, to the safe side", () => {
    const most = (area: number) => charge.chargeFromRoomTable({ rows, floorArea: m2(area) }).in(kg);
    expect([4, 9.9, 10, 29, 100].map(most)).toEqual([0.68, 0.68, 1.08, 1.08, 1.87]);
    const least = (mass: number) => charge.areaFromRoomTable({ rows, charge: kg(mass) }).in(m2);
    expect([0.1, 0.68, 0.69, 1.87].map(least)).toEqual([4, 4, 10, 30]);
  });

  test("ends where its rows end, and has to be in order", () => {
    expect(() => charge.chargeFromRoomTable({ rows, floorArea: m2(3) })).toThrow(OutOfRangeError);
    expect(() => charge.areaFromRoomTable({ rows, charge: kg(2) })).toThrow(OutOfRangeError);
    const back = { rows: [...rows].reverse(), floorArea: m2(20) };
    expect(argumentOf(() => charge.chargeFromRoomTable(back))).toBe("rows[1].area");
    const none = { rows: [], floorArea: m2(20) };
    expect(argumentOf(() => charge.chargeFromRoomTable(none))).toBe("rows.length");
  });
});
