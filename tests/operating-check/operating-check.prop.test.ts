import fc from "fast-check";
import * as operating from "hvac-install-math/operating-check";
import { degC, degF, deltaF, deltaK, psig, standardAtmosphere } from "hvac-install-math/quantity";
import {
  bubbleTemperature,
  dewTemperature,
  R32,
  R407C,
  R410A,
} from "hvac-install-math/refrigerants";
import { expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const range = fc
  .tuple(number(1, 15), number(0, 14.9))
  .map(([low, more]) => ({ low: deltaK(low), high: deltaK(low + more) }));
const unit = fc.record({
  refrigerant: fc.constantFrom(R32, R410A, R407C),
  mode: fc.constantFrom("cooling" as const, "heating" as const),
  indoorTemperature: number(15, 32).map((t) => degC(t)),
  outdoorTemperature: number(-15, 32).map((t) => degC(t)),
  evaporatorApproach: range,
  condenserApproach: range,
  atmosphere: fc.constant(standardAtmosphere),
});

test("a window is never upside down and gives its coil temperatures back", () => {
  fc.assert(
    fc.property(unit, (running) => {
      const { low, high } = operating.expectedPressures(running);
      for (const { from, to } of [low, high]) expect(from.si).toBeLessThanOrEqual(to.si);
      const { refrigerant, atmosphere } = running;
      const dew = dewTemperature(refrigerant, low.to, atmosphere);
      expect(dew.si).toBeCloseTo(low.toTemperature.si, 4);
      const bubble = bubbleTemperature(refrigerant, high.to, atmosphere);
      expect(bubble.si).toBeCloseTo(high.toTemperature.si, 4);
    }),
  );
});

test("a reading in the middle of its window passes on every port", () => {
  const port = fc.constantFrom("vapor" as const, "liquid" as const, "commonSuction" as const);
  fc.assert(
    fc.property(unit, port, (running, on) => {
      const { low, high } = operating.expectedPressures(running);
      const { side } = operating.servicePorts({ ...running, expansion: "outdoor-unit" })[on];
      const { from, to } = side === "low" ? low : high;
      const pressure = psig((from.in(psig) + to.in(psig)) / 2);
      fc.pre(pressure >= from && pressure <= to);
      expect(operating.assessServiceReading({ ...running, port: on, pressure }).outcome).toBe(
        "pass",
      );
    }),
  );
});

test("a stronger hose or a longer scale never turns a pass into a fail", () => {
  fc.assert(
    fc.property(
      number(50, 900),
      number(50, 900),
      number(0, 900),
      number(0, 500),
      (scale, hose, p, more) => {
        const set = { fullScale: psig(scale), hoseWorkingPressure: psig(hose) };
        const stronger = { fullScale: psig(scale + more), hoseWorkingPressure: psig(hose + more) };
        const outcome = (one: operating.GaugeSetSide) =>
          operating.assessGaugeSet({ ...one, highestPressure: psig(p) }).outcome;
        if (outcome(set) === "pass") expect(outcome(stronger)).toBe("pass");
      },
    ),
  );
});

test("a target from a chart lies between the cells around it", () => {
  const cell = number(0, 40).map((value) => deltaF(value));
  fc.assert(
    fc.property(
      fc.tuple(cell, cell, cell, cell),
      number(70, 100),
      number(60, 75),
      ([a, b, c, d], outdoor, wetBulb) => {
        const answer = operating.targetSuperheat({
          outdoorDryBulb: degF(outdoor),
          indoorWetBulb: degF(wetBulb),
          chart: {
            outdoorDryBulbs: [degF(70), degF(100)],
            indoorWetBulbs: [degF(60), degF(75)],
            targets: [
              [a, b],
              [c, d],
            ],
          },
        });
        if (answer.instruction !== "charge-to-target") throw new Error("no dash in this chart");
        const cells = [a, b, c, d].map(({ si }) => si);
        expect(answer.target.si).toBeGreaterThanOrEqual(Math.min(...cells) - 1e-9);
        expect(answer.target.si).toBeLessThanOrEqual(Math.max(...cells) + 1e-9);
      },
    ),
  );
});
