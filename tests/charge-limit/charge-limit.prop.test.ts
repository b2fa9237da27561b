import fc from "fast-check";
import * as charge from "hvac-install-math/charge-limit";
import { kg, kgPerM3, lb, m, m2, m3, sqft } from "hvac-install-math/quantity";
import { R32, R290, R410A, R454B } from "hvac-install-math/refrigerants";
import { expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const unit = fc.record({
  refrigerant: fc.constantFrom(R32, R290, R454B),
  installationHeight: number(0, 4).map((h) => m(h)),
  lowerFlammabilityLimit: number(0.03, 0.35).map((limit) => kgPerM3(limit)),
  edition: fc.constantFrom(
    "iec-60335-2-40-2018" as const,
    "iec-60335-2-40-2013" as const,
    "en-378-1" as const,
  ),
});

test("the largest charge and the smallest floor area are inverses of each other", () => {
  fc.assert(
    fc.property(unit, number(0.5, 500), (room, area) => {
      const { byFormula, maximum } = charge.roomChargeLimit({ ...room, floorArea: m2(area) });
      fc.pre(byFormula < maximum);
      const back = charge.minimumFloorArea({ ...room, charge: byFormula });
      expect(back.byFormula.in(m2) / area).toBeCloseTo(1, 9);
    }),
  );
});

test("a limit is never negative, never above m2, never below the free charge, and grows with the room", () => {
  fc.assert(
    fc.property(unit, number(0.01, 1000), number(1, 3), (room, area, factor) => {
      const small = charge.roomChargeLimit({ ...room, floorArea: m2(area) });
      const large = charge.roomChargeLimit({ ...room, floorArea: m2(area * factor) });
      expect(small.limit >= small.unrestricted).toBe(true);
      expect(small.limit <= small.maximum).toBe(true);
      expect(small.limit.si).toBeGreaterThan(0);
      expect(large.limit.si).toBeGreaterThanOrEqual(small.limit.si);
    }),
  );
});

test("a room that the floor area asks for passes, and the free charge passes in any room", () => {
  fc.assert(
    fc.property(unit, number(0.01, 0.99), (room, part) => {
      const { m2: most } = charge.chargeThresholds({
        ...room,
        safetyClass: room.refrigerant.safetyClass as "A2L",
      });
      const mass = most.times(part);
      const { area } = charge.minimumFloorArea({ ...room, charge: mass });
      const floorArea = m2(Math.max(area.in(m2) * (1 + 1e-9), 0.1));
      expect(charge.assessRoomCharge({ ...room, charge: mass, floorArea }).outcome).toBe("pass");
    }),
  );
});

test("the answers do not depend on the units", () => {
  fc.assert(
    fc.property(unit, number(1, 200), number(0.1, 5), (room, area, mass) => {
      const metric = charge.roomChargeLimit({ ...room, floorArea: m2(area) });
      const imperial = charge.roomChargeLimit({ ...room, floorArea: m2(area).as(sqft) });
      expect(imperial.limit.si).toBe(metric.limit.si);
      const volume = charge.minimumRoomVolume({ refrigerant: R410A, charge: kg(mass).as(lb) });
      const back = charge.concentrationChargeLimit({ refrigerant: R410A, volume: volume.value });
      expect(back.value.in(kg) / mass).toBeCloseTo(1, 9);
    }),
  );
});

test("a charge passes by concentration exactly up to the limit", () => {
  fc.assert(
    fc.property(number(0.1, 50), number(0.1, 500), (mass, volume) => {
      const { outcome, limit } = charge.assessConcentration({
        refrigerant: R410A,
        charge: kg(mass),
        volume: m3(volume),
      });
      expect(outcome).toBe(mass <= limit.value.si ? "pass" : "fail");
    }),
  );
});
