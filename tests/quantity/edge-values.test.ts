import * as q from "hvac-install-math/quantity";
import {
  degC,
  degF,
  deltaF,
  ft,
  inch,
  kPag,
  m,
  micron,
  mm,
  psi,
  psia,
  psig,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

describe("figures come out clean", () => {
  it("prints no noise of binary arithmetic", () => {
    expect(degF(77.6).toString()).toBe("77.6 °F");
    expect(degC(25.3).as(degF).toString()).toBe("77.54 °F");
    expect(degF(32).in(degC)).toBe(0);
    expect(degF(-40).in(degC)).toBe(-40);
    expect(psi(0.1).plus(psi(0.2)).toString()).toBe("0.3 psi");
    expect(ft(1).in(inch)).toBe(12);
    expect(ft(0.1).times(3).in(ft)).toBe(0.3);
    expect(JSON.stringify(degF(98.6))).toBe('{"kind":"temperature","value":98.6,"unit":"°F"}');
  });

  it("keeps the unrounded SI value for formulas", () => {
    const third = m(1).dividedBy(3);
    expect(third.si).toBe(1 / 3);
    expect(third.in(m)).toBe(0.333333333333);
  });

  it("prints twelve digits and no more", () => {
    expect(psig(123456.7890123456).toString()).toBe("123456.789012 psig");
    expect(psi(1.23456789012345e-7).toString()).toBe("1.23456789012e-7 psi");
  });

  it("prints as many decimals as asked for", () => {
    expect(psig(118).toString(psig, 1)).toBe("118.0 psig");
    expect(psig(118).toString(kPag, 0)).toBe("814 kPag");
    expect(psig(118).toString(undefined, 2)).toBe("118.00 psig");
    expect(psi(1 / 3).toString(psi, 12)).toBe("0.333333333333 psi");
  });

  it("rounds a small negative value to 0, not to −0", () => {
    expect(psig(-0.04).toString(psig, 1)).toBe("0.0 psig");
    expect(psig(-0.05).toString(psig, 0)).toBe("0 psig");
    expect(psig(-0.06).toString(psig, 1)).toBe("-0.1 psig");
  });
});

describe("numbers at the edge", () => {
  it("takes −0 as 0", () => {
    expect(Object.is(psig(-0).si, 0)).toBe(true);
    expect(psig(-0).toString()).toBe("0 psig");
    expect(Object.is(psig(-0).in(kPag), 0)).toBe(true);
    expect(Object.is(degF(0).minus(degF(0)).si, 0)).toBe(true);
    expect(Object.is(psi(0).times(-1).si, 0)).toBe(true);
    expect(JSON.stringify(psi(-0))).toContain('"value":0,');
    // Less than half of the twelfth digit below the zero of the scale, 1e-9 K beside 273.15 K.
    expect(Object.is(degC(-1e-13).in(degC), 0)).toBe(true);
    expect(Object.is(degC(-4.95e-10).in(degC), 0)).toBe(true);
  });

  it("keeps the smallest number that a float holds", () => {
    expect(m(5e-324).si).toBe(5e-324);
    expect(m(5e-324).in(m)).toBe(5e-324);
    expect(m(5e-324).toString()).toBe("5e-324 m");
  });

  it("keeps the largest, and refuses what no longer fits", () => {
    expect(m(1e308).in(m)).toBe(1e308);
    expect(() => m(1e308).plus(m(1e308))).toThrow("m: Infinity is not allowed");
    expect(() => m(1e308).in(mm)).toThrow("mm: Infinity is not allowed");
    expect(() => m(1e308).times(10)).toThrow("m: Infinity is not allowed");
  });

  it("takes the zero of an absolute scale, and nothing below", () => {
    expect(psia(0).si).toBe(0);
    expect(degF(-459.67).si).toBe(0);
    expect(degC(-273.15).si).toBe(0);
    expect(() => degC(-273.16)).toThrow(
      "°C: -273.16 °C is not allowed; allowed: at least -273.15 °C",
    );
    expect(() => micron(-0.001)).toThrow();
    expect(psig(-14).si).toBeLessThan(0);
  });
});

describe("nothing changes", () => {
  it("a quantity and a unit are frozen", () => {
    const pressure = psig(118);
    expect(Object.isFrozen(pressure)).toBe(true);
    expect(Object.isFrozen(psig)).toBe(true);
    expect(() => Object.assign(pressure, { si: 0 })).toThrow(TypeError);
    expect(() => Object.assign(psig, { scale: 1 })).toThrow(TypeError);
    expect(pressure.toString()).toBe("118 psig");
  });

  it("arithmetic leaves its operands alone", () => {
    const pressure = psig(118);
    const drop = psi(3);
    pressure.plus(drop);
    pressure.minus(drop);
    pressure.as(kPag);
    drop.times(2);
    expect(pressure.toString()).toBe("118 psig");
    expect(drop.toString()).toBe("3 psi");
  });

  it("every unit of the catalogue is frozen, finite, and once in its kind", () => {
    const seen = new Set<string>();
    for (const unit of Object.values(q) as unknown as q.Unit<"length">[]) {
      if (typeof unit !== "function" || !unit.kind) continue;
      expect(Object.isFrozen(unit)).toBe(true);
      expect(unit.scale).toBeGreaterThan(0);
      expect(Number.isFinite(unit.offset)).toBe(true);
      expect(unit.difference.difference).toBe(unit.difference);
      expect(unit.difference.scale).toBe(unit.scale);
      const id = `${unit.kind} ${unit.symbol}`;
      expect(seen, id).not.toContain(id);
      seen.add(id);
    }
    expect(seen.size).toBeGreaterThan(90);
  });
});

describe("what JavaScript's operators do", () => {
  // biome-ignore lint/suspicious/noExplicitAny: a JavaScript caller sees no types.
  const [a, b]: any[] = [psig(118), psig(100)];

  it("+ throws, with a quantity, a number and a text", () => {
    const message =
      "+ or ==: 118 psig is not allowed; allowed: plus(), minus(), equals(); for text a template literal";
    for (const other of [b, 2, " psig"]) {
      expect(() => a + other).toThrow(message);
      expect(() => other + a).toThrow("+ or ==");
    }
  });

  it("== with a number or a text throws, and asks two quantities whether they are one object", () => {
    // biome-ignore-start lint/suspicious/noDoubleEquals: the loose comparison is what is tested.
    expect(() => a == 118).toThrow("+ or ==");
    expect(() => a == "118 psig").toThrow("+ or ==");
    expect(a == psig(118)).toBe(false);
    const same = a;
    expect(a == same).toBe(true);
    expect(a == null).toBe(false);
    // biome-ignore-end lint/suspicious/noDoubleEquals: the loose comparison is what is tested.
  });

  it("< and > compare across units, and sort", () => {
    expect(psig(118) > kPag(800)).toBe(true);
    expect(psig(118) < kPag(800)).toBe(false);
    expect(psig(118) >= psig(117)).toBe(true);
    const sorted = [psig(118), kPag(700), psig(3)].sort((x, y) => (x < y ? -1 : x > y ? 1 : 0));
    expect(sorted.map(String)).toEqual(["3 psig", "700 kPag", "118 psig"]);
    const byDifference = [degF(95), degC(0), degF(40)].sort((x, y) => x.minus(y).si);
    expect(byDifference.map(String)).toEqual(["0 °C", "40 °F", "95 °F"]);
  });

  it("a template, String() and join() print", () => {
    expect(`${psig(118)}`).toBe("118 psig");
    expect(String(deltaF(20))).toBe("20 Δ°F");
    expect([psig(1), psig(2)].join()).toBe("1 psig,2 psig");
    expect([1, 2].map(psig).map(String)).toEqual(["1 psig", "2 psig"]);
  });
});
