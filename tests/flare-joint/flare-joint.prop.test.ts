import fc from "fast-check";
import * as flare from "hvac-install-math/flare-joint";
import { ftLb, newtonMeter } from "hvac-install-math/quantity";
import { expect, test } from "vitest";

const tubes = ["1/4", "5/16", "3/8", "1/2", "5/8", "3/4"] as const;
const tube = fc.constantFrom(...tubes);
const torque = fc.double({ min: 1, max: 200, noNaN: true });

test("the overlap lies inside every window and is never empty", () => {
  for (const size of tubes) {
    const { windows, overlap } = flare.flareTorque(size);
    expect(overlap.low < overlap.high).toBe(true);
    for (const { low, high } of windows) {
      expect(low <= overlap.low && overlap.high <= high).toBe(true);
    }
  }
});

test("a verdict does not depend on the unit of the torque", () => {
  fc.assert(
    fc.property(tube, torque, (size, value) => {
      const metric = flare.assessFlareTorque({ tube: size, torque: newtonMeter(value) });
      const inFtLb = newtonMeter(value).as(ftLb);
      expect(flare.assessFlareTorque({ tube: size, torque: inFtLb }).outcome).toBe(metric.outcome);
    }),
  );
});

test("a worse wrench never turns an undecided or failed torque into a pass, nor a fail into another cause", () => {
  fc.assert(
    fc.property(tube, torque, fc.double({ min: 0, max: 5, noNaN: true }), (size, value, error) => {
      const joint = { tube: size, torque: newtonMeter(value) };
      const exact = flare.assessFlareTorque(joint);
      const wrench = { accuracy: newtonMeter(error) };
      const doubtful = flare.assessFlareTorque({ ...joint, wrench });
      expect([exact.outcome, "inconclusive"]).toContain(doubtful.outcome);
      if (doubtful.cause) expect(doubtful.cause).toBe(exact.cause);
    }),
  );
});

test("no torque passes by a manual's window that shares nothing with the published ones", () => {
  const window = fc.tuple(torque, fc.double({ min: 1, max: 1.3, noNaN: true }));
  fc.assert(
    fc.property(tube, torque, window, (size, value, [low, ratio]) => {
      const { windows } = flare.flareTorque(size);
      const manual = { low: newtonMeter(low), high: newtonMeter(low * ratio) };
      fc.pre(windows.every((one) => manual.high < one.low || manual.low > one.high));
      const verdict = flare.assessFlareTorque({ tube: size, torque: newtonMeter(value), manual });
      expect(verdict.outcome).not.toBe("pass");
    }),
  );
});
