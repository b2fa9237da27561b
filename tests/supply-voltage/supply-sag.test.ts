import { ampere, ohm, percent, volt } from "hvac-install-math/quantity";
import { supplySag } from "hvac-install-math/supply-voltage";
import { expect, it } from "vitest";

const pair = { rest: volt(240), load: volt(234) };

it("without a current there is a sag, but no resistance", () => {
  const sag = supplySag(pair);
  expect(sag.sag.value.toString()).toBe("6 V");
  expect(sag.share.toString()).toBe("2.5 %");
  expect(sag.sourceResistance).toBeUndefined();
});

it("the step of the current counts, not the current", () => {
  const sag = supplySag({ ...pair, loadCurrent: ampere(14), restCurrent: ampere(2) });
  expect(sag.sourceResistance?.value.toString(ohm, 2)).toBe("0.50 Ω");
});

it("a supply that rises under load has no resistance", () => {
  const sag = supplySag({ rest: volt(234), load: volt(240), loadCurrent: ampere(10) });
  expect(sag.sag.value.toString()).toBe("-6 V");
  expect(sag.sourceResistance).toBeUndefined();
  expect(
    supplySag({ ...pair, loadCurrent: ampere(2), restCurrent: ampere(2) }).sourceResistance,
  ).toBeUndefined();
});

it("a voltage that stays where it was shows no resistance, within what the display leaves open", () => {
  const meter = { resolution: volt(0.1) };
  const stiff = { rest: volt(240), load: volt(240), loadCurrent: ampere(10), meter };
  const { sourceResistance } = supplySag(stiff);
  expect(sourceResistance?.value.toString()).toBe("0 Ω");
  // two readings of a 0.1 V display: √2 × 0.1 V/√12, over 10 A (JCGM 100:2008, 5.1.2)
  expect(sourceResistance?.standardUncertainty.in(ohm)).toBeCloseTo(0.01 / Math.sqrt(6), 12);
});

it("predicts the voltage at another current, but none where the supply would break down", () => {
  const known = { ...pair, loadCurrent: ampere(10) };
  expect(supplySag({ ...known, atCurrent: ampere(30) }).voltageAtCurrent?.toString()).toBe("222 V");
  expect(supplySag({ ...known, atCurrent: ampere(400) }).voltageAtCurrent).toBeUndefined(); // 0 V
  expect(supplySag({ ...known, atCurrent: ampere(500) }).voltageAtCurrent).toBeUndefined();
});

it("only what differs between two readings of one meter is left of its error", () => {
  const meter = { accuracy: volt(3), accuracyOfReading: percent(1), resolution: volt(0.1) };
  const { sag } = supplySag({ ...pair, meter });
  const expected = Math.hypot(0.1 / Math.sqrt(6), 0.06 / Math.sqrt(3));
  expect(sag.standardUncertainty.in(volt)).toBeCloseTo(expected, 10);
});

it.each<[string, object, string]>([
  [
    "no voltage at rest",
    { ...pair, rest: volt(0) },
    "rest: 0 V is not allowed; allowed: more than 0 V",
  ],
  ["no voltage under load", { ...pair, load: volt(0) }, "load: 0 V"],
  [
    "a negative current",
    { ...pair, loadCurrent: ampere(-1) },
    "loadCurrent: -1 A is not allowed; allowed: at least 0 A",
  ],
  [
    "a negative current at rest",
    { ...pair, loadCurrent: ampere(1), restCurrent: ampere(-1) },
    "restCurrent: -1 A",
  ],
  ["a number", { ...pair, rest: 240 }, "rest: 240 is not allowed; allowed: the kind voltage"],
])("refuses %s", (_, input, message) => {
  expect(() => supplySag(input as never)).toThrow(message);
});
