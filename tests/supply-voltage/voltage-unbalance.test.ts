import { ampere, percent, volt } from "hvac-install-math/quantity";
import {
  currentUnbalance,
  unbalanceDerating,
  voltageUnbalance,
} from "hvac-install-math/supply-voltage";
import { describe, expect, it } from "vitest";

describe("voltageUnbalance", () => {
  it("is the largest deviation, not the spread, and knows a low leg", () => {
    const { unbalance, deviation, farthest, average } = voltageUnbalance([400, 395, 388].map(volt));
    expect(unbalance.toString(percent, 2)).toBe("1.61 %");
    expect(deviation.toString(volt, 2)).toBe("-6.33 V");
    expect(farthest).toBe(2);
    expect(average.toString(volt, 2)).toBe("394.33 V");
  });

  it("of even lines is 0, with full power", () => {
    const even = voltageUnbalance([480, 480, 480].map(volt));
    expect(even.unbalance.si).toBe(0);
    expect(even.deratingFactor).toBe(1);
    expect(even.negativeSequence?.si).toBe(0);
    expect(even.addedTemperatureRise.si).toBe(0);
  });

  it("has no factor above 5 %, and one at 5 %", () => {
    expect(voltageUnbalance([105, 97.5, 97.5].map(volt)).deratingFactor).toBeCloseTo(0.76, 10);
    expect(voltageUnbalance([105.1, 97.45, 97.45].map(volt)).deratingFactor).toBeUndefined();
  });

  it("has no negative sequence when no three phases can give the voltages", () => {
    expect(voltageUnbalance([480, 100, 100].map(volt)).negativeSequence).toBeUndefined();
    expect(voltageUnbalance([480, 240, 240].map(volt)).negativeSequence?.in(percent)).toBeCloseTo(
      100,
      3,
    );
  });

  it.each<[string, unknown, string]>([
    [
      "two readings",
      [volt(1), volt(1)],
      "readings.length: 2 is not allowed; allowed: at least 3 and at most 3",
    ],
    ["no list", volt(1), "readings: voltage 1 V is not allowed; allowed: an array"],
    [
      "a zero reading",
      [480, 0, 480].map(volt),
      "readings[1]: 0 V is not allowed; allowed: more than 0 V",
    ],
    [
      "a number",
      [480, volt(480), volt(480)],
      "readings[0]: 480 is not allowed; allowed: the kind voltage",
    ],
    [
      "currents",
      [33, 29, 34].map(ampere),
      "readings[0]: current 33 A is not allowed; allowed: the kind voltage",
    ],
  ])("refuses %s", (_, readings, message) => {
    expect(() => voltageUnbalance(readings as never)).toThrow(message);
  });
});

describe("currentUnbalance", () => {
  it("is the same formula, and keeps the unit", () => {
    const { unbalance, average } = currentUnbalance([33, 29, 34].map(ampere));
    expect(unbalance.in(percent)).toBe(9.375);
    expect(average.toString()).toBe("32 A");
  });

  it("refuses a line without current", () => {
    expect(() => currentUnbalance([33, 0, 34].map(ampere))).toThrow("readings[1]: 0 A");
  });
});

describe("unbalanceDerating", () => {
  it("refuses to answer above 5 %, where the motor must not run", () => {
    expect(() => unbalanceDerating(percent(5.1))).toThrow(
      "unbalance: 5.1 % is not allowed; allowed: at least 0 % and at most 5 % (supply-voltage.do-not-run-motor)",
    );
    expect(() => unbalanceDerating(percent(-1))).toThrow("unbalance: -1 %");
    expect(() => unbalanceDerating(0.02 as never)).toThrow("unbalance: 0.02 is not allowed");
  });
});
