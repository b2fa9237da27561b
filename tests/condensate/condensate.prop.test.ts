import fc from "fast-check";
import * as condensate from "hvac-install-math/condensate";
import * as q from "hvac-install-math/quantity";
import { expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

test("the condensate is never negative and no more than the water that enters", () => {
  fc.assert(
    fc.property(
      number(5, 45),
      number(10, 99),
      number(0, 1),
      number(0, 3000),
      (t, humidity, cooling, altitude) => {
        const atmosphere = q.atmosphereAtAltitude(q.m(altitude));
        const entering = { dryBulb: q.degC(t), relativeHumidity: q.percent(humidity) };
        const leaving = {
          dryBulb: q.degC(t * (1 - cooling)),
          relativeHumidity: q.percent(humidity * (1 - cooling) + 1e-3),
        };
        const W = (air: condensate.AirState) => condensate.humidityRatio(air, atmosphere).si;
        fc.pre(W(leaving) <= W(entering));
        const rate = condensate.condensateRate({
          entering,
          leaving,
          airFlow: q.cfm(400),
          atmosphere,
        });
        const water = rate.dryAirFlow.si * rate.enteringHumidityRatio.si;
        expect(rate.massFlow.si).toBeGreaterThanOrEqual(0);
        expect(rate.massFlow.si).toBeLessThanOrEqual(water);
      },
    ),
  );
});

test("the humidity ratio rises with humidity and falls with pressure", () => {
  fc.assert(
    fc.property(number(1, 59), number(1, 98), number(60, 110), (t, humidity, p) => {
      const W = (phi: number, kPa: number) =>
        condensate.humidityRatio(
          { dryBulb: q.degC(t), relativeHumidity: q.percent(phi) },
          q.kPaa(kPa),
        ).si;
      expect(W(humidity + 1, p)).toBeGreaterThan(W(humidity, p));
      expect(W(humidity, p + 1)).toBeLessThan(W(humidity, p));
    }),
  );
});

test("a drain that gets the fall it needs runs by gravity, and one that gets less does not", () => {
  fc.assert(
    fc.property(number(0.5, 50), number(0.005, 0.1), number(0.001, 0.2), (run, slope, extra) => {
      const input = (fall: number) => ({
        outletHeight: q.m(3),
        points: [{ distance: q.m(run), height: q.m(3 - fall) }],
        slope: q.fraction(slope),
      });
      const needed = condensate.minimumFall({ run: q.m(run), slope: q.fraction(slope) });
      const plan = condensate.planDrain(input(needed.si));
      expect(plan.method).toBe("gravity");
      const flat = condensate.planDrain(input(needed.si - extra));
      expect(flat.method).toBe("pump");
      expect(flat.shortfall.si).toBeCloseTo(extra, 9);
      expect(flat.lift.si).toBeGreaterThanOrEqual(0);
    }),
  );
});

test("the size of a drain never falls as the capacity rises", () => {
  fc.assert(
    fc.property(number(0.1, 250), number(0.1, 250), (a, b) => {
      const size = (tons: number) =>
        condensate.drainSize({ capacity: q.tonRefrigeration(tons) }).nominal.si;
      expect(size(Math.max(a, b))).toBeGreaterThanOrEqual(size(Math.min(a, b)));
    }),
  );
});

test("a pump's flow never rises with the lift", () => {
  const curve = [
    { lift: q.m(0), flow: q.literPerHour(20) },
    { lift: q.m(4), flow: q.literPerHour(18) },
    { lift: q.m(9), flow: q.literPerHour(3) },
  ];
  const flow = (lift: number) =>
    condensate.assessCondensatePump({ condensate: q.literPerHour(1), lift: q.m(lift), curve })
      .flowAtLift.si;
  fc.assert(
    fc.property(number(0, 12), number(0, 12), (a, b) => {
      expect(flow(Math.max(a, b))).toBeLessThanOrEqual(flow(Math.min(a, b)) + 1e-15);
    }),
  );
});
