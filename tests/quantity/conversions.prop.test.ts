import fc from "fast-check";
import * as q from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

type AnyUnit = q.Unit<"length">; // the tests treat all kinds alike

const units = (Object.entries(q) as unknown as [string, AnyUnit][]).filter(
  ([, unit]) => typeof unit === "function" && typeof unit.kind === "string",
);
const pairs = units.flatMap(([, from]) =>
  units.filter(([, to]) => to.kind === from.kind).map(([, to]): [AnyUnit, AnyUnit] => [from, to]),
);
const anyUnit = fc.constantFrom(...units.map(([, unit]) => unit));
const anyPair = fc.constantFrom(...pairs);

/** Values that lie inside every scale: nothing below 0 K or a perfect vacuum, nothing that underflows. */
const positive = fc.oneof(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), fc.constant(0));
/** A value of at most `digits` significant digits between 1e-6 and 1e9, as a person writes it. */
const written = (digits: number) =>
  fc
    .tuple(fc.integer({ min: 0, max: 10 ** digits - 1 }), fc.integer({ min: -6, max: 9 }))
    .map(([n, power]) => Number(`${n}e${power - digits}`));

/** Differences of the last digits: twelve are promised of the larger of the value and the offset. */
function expectClose(ours: number, expected: number, scale = Math.abs(expected)): void {
  expect(Math.abs(ours - expected)).toBeLessThanOrEqual(2e-11 * scale);
}

/** Twelve digits as the text of a number rounds them. */
const rounded = (value: number) => Number(value.toPrecision(12)) + 0;

describe("reading a value", () => {
  it("rounds to twelve digits just as writing the number out does, ties and powers of ten included", () => {
    const near = fc
      .tuple(
        fc.integer({ min: 0, max: 1e12 }),
        fc.integer({ min: -3, max: 30 }),
        fc.integer({ min: -4, max: 4 }),
      )
      .map(([n, power, ulps]) => (n + 0.5) * 10 ** -power * (1 + ulps * 2 ** -52));
    const any = fc.double({ noNaN: true, noDefaultInfinity: true });
    fc.assert(
      fc.property(fc.oneof(near, any), (value) => {
        expect(q.second(value).in(q.second)).toBe(rounded(value));
      }),
      { numRuns: 5000 },
    );
  });
});

describe("every unit of the catalogue", () => {
  it.each(units)("%s gives back what it was made with", (_, unit) => {
    fc.assert(
      fc.property(positive, (value) => {
        const offset = Math.abs(unit.offset / unit.scale);
        expectClose(unit(value).in(unit), value, value + offset);
      }),
    );
  });

  it("converts to another unit and back", () => {
    fc.assert(
      fc.property(anyPair, positive, ([from, to], value) => {
        const there = from(value);
        const back = to(there.in(to));
        const scale = Math.abs(there.si) + Math.abs(to.offset) + Math.abs(from.offset);
        expectClose(back.si, there.si, scale);
      }),
      { numRuns: 1000 },
    );
  });

  it("reads the same whether it is read, or first remembered in another unit", () => {
    fc.assert(
      fc.property(anyPair, fc.nat(), positive, ([from, to], n, value) => {
        const same = units.filter(([, unit]) => unit.kind === from.kind);
        const other = same[n % same.length]?.[1] ?? from;
        const there = from(value);
        expect(there.as(to).in(from)).toBe(there.in(from));
        expect(there.as(to).si).toBe(there.si);
        expect(there.as(other).in(to)).toBe(there.as(to).as(other).in(to));
      }),
      { numRuns: 1000 },
    );
  });

  it("orders as its SI values do", () => {
    fc.assert(
      fc.property(anyPair, positive, positive, ([first, second], x, y) => {
        const [a, b] = [first(x), second(y)];
        expect(a < b).toBe(a.si < b.si);
        expect(a > b).toBe(a.si > b.si);
        expect(a <= b).toBe(a.si <= b.si);
      }),
    );
  });

  it("measures a point and a difference in steps of the same size", () => {
    fc.assert(
      fc.property(anyUnit, positive, (unit, value) => {
        const step = unit(value).minus(unit(0)) as unknown as q.Quantity<"length">;
        const read = step.in(unit.difference as unknown as AnyUnit);
        expectClose(read, value, value + Math.abs(unit.offset / unit.scale));
      }),
    );
  });
});

describe("differences", () => {
  const step = fc.tuple(positive, fc.constantFrom(1e-3, -1e-3)).map(([size, by]) => size * by);

  it("associate: (a + d) + e is a + (d + e)", () => {
    fc.assert(
      fc.property(step, step, step, (a, d, e) => {
        const [start, first, second] = [q.psig(a), q.kPa(d), q.psi(e)];
        const size = Math.abs(start.si) + Math.abs(first.si) + Math.abs(second.si);
        const left = start.plus(first).plus(second).si;
        expectClose(left, start.plus(first.plus(second)).si, size);
      }),
    );
  });

  it("undo each other: b + (a − b) is a, and (a + d) − d is a", () => {
    fc.assert(
      fc.property(step, step, (x, y) => {
        const [a, b] = [q.kPag(x), q.psig(y)];
        const size = Math.abs(a.si) + Math.abs(b.si);
        expectClose(b.plus(a.minus(b)).si, a.si, size);
        expectClose(a.plus(q.psi(y)).minus(q.psi(y)).si, a.si, size);
        expect(a.minus(b).si).toBe(-b.minus(a).si + 0);
      }),
    );
  });

  it("commute where values add", () => {
    fc.assert(
      fc.property(step, step, (x, y) => {
        expect(q.ft(x).plus(q.m(y)).si).toBe(q.m(y).plus(q.ft(x)).si);
      }),
    );
  });

  it("keep the unit of the left operand", () => {
    fc.assert(
      fc.property(positive, positive, (x, y) => {
        expect(q.degF(x).plus(q.deltaC(y)).unit).toBe(q.degF);
        expect(q.degF(x).minus(q.degC(y)).unit).toBe(q.deltaF);
        expect(q.ft(x).minus(q.m(y)).unit).toBe(q.ft);
      }),
    );
  });

  it("scale: a × k ÷ k is a, and a ÷ b × b is a", () => {
    const factor = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(step, factor, (x, k) => {
        expectClose(q.ft(x).times(k).dividedBy(k).si, q.ft(x).si);
        expectClose(q.m(k).times(q.ft(x).dividedBy(q.m(k))).si, q.ft(x).si);
      }),
    );
  });
});

describe("equals", () => {
  it("is symmetric, and true of a value and itself with no tolerance at all", () => {
    const tolerance = fc.double({ min: 0, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(anyPair, positive, positive, tolerance, ([first, second], x, y, t) => {
        const [a, b] = [first(x), second(y)];
        const within = first.difference(t) as unknown as q.Quantity<"length">;
        expect(q.equals(a, b, within)).toBe(q.equals(b, a, within));
        expect(q.equals(a, a, first.difference(0) as unknown as q.Quantity<"length">)).toBe(true);
      }),
    );
  });

  it("counts a difference that is just the tolerance as equal", () => {
    expect(q.equals(q.psi(3), q.psi(2), q.psi(1))).toBe(true);
    expect(q.equals(q.psi(3), q.psi(1.999), q.psi(1))).toBe(false);
  });

  it("looks at eleven digits of the larger value, also beside 0", () => {
    expect(q.equals(q.m(1), q.m(0), q.m(1 - 5e-12))).toBe(true);
    expect(q.equals(q.m(0), q.m(1), q.m(1 - 5e-11))).toBe(false);
  });

  it("does so for every tenth on every scale, whatever binary arithmetic makes of it", () => {
    for (let tenths = 0; tenths < 1000; tenths++) {
      const [low, high] = [tenths / 10, (tenths + 1) / 10];
      expect(q.equals(q.psig(high), q.psig(low), q.psi(0.1))).toBe(true);
      expect(q.equals(q.psig(-high), q.psig(-low), q.psi(0.1))).toBe(true);
      expect(q.equals(q.degF(low), q.degF(high), q.deltaF(0.1))).toBe(true);
      expect(q.equals(q.psig(high), q.psig(low), q.psi(0.1 - 1e-7))).toBe(false);
    }
  });
});

describe("gauge and absolute", () => {
  it("turn into each other and back, at any atmosphere", () => {
    const atmosphere = fc.double({ min: 50, max: 110, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: -50, max: 5000, noNaN: true }), atmosphere, (value, air) => {
        const gauge = q.kPag(value);
        const ambient = q.kPaa(air);
        expectClose(q.toGauge(q.toAbsolute(gauge, ambient), ambient).si, gauge.si, 6e6);
        expect(q.toAbsolute(gauge, ambient).si - ambient.si).toBeCloseTo(gauge.si, 6);
      }),
    );
  });

  it("answer in the caller's system of units", () => {
    expect(q.toAbsolute(q.psig(1), q.standardAtmosphere).unit).toBe(q.psia);
    expect(q.toGauge(q.psia(20), q.standardAtmosphere).unit).toBe(q.psig);
    for (const unit of [q.kPag, q.barg, q.MPag, q.inHgGauge]) {
      expect(q.toAbsolute(unit(1), q.standardAtmosphere).unit).toBe(q.kPaa);
    }
    for (const unit of [q.kPaa, q.bara, q.micron, q.torr]) {
      expect(q.toGauge(unit(1), q.standardAtmosphere).unit).toBe(q.kPag);
    }
  });

  it("the atmosphere falls with the altitude", () => {
    const altitude = fc.double({ min: -5000, max: 11_000, noNaN: true });
    fc.assert(
      fc.property(altitude, altitude, (x, y) => {
        const [low, high] = [q.m(Math.min(x, y)), q.m(Math.max(x, y))];
        expect(q.atmosphereAtAltitude(low).si).toBeGreaterThanOrEqual(
          q.atmosphereAtAltitude(high).si,
        );
      }),
    );
  });
});

describe("JSON", () => {
  const stored = (value: q.Quantity<"length">) => JSON.parse(JSON.stringify(value)) as unknown;

  it("gives back exactly a value of up to twelve digits, and the same SI value", () => {
    const plain = fc.constantFrom(...units.map(([, u]) => u).filter((u) => u.offset === 0));
    fc.assert(
      fc.property(plain, written(12), (unit, value) => {
        const json = unit(value).toJSON();
        expect(json.value).toBe(value);
        const back = q.fromJSON(stored(unit(value))) as unknown as q.Quantity<"length">;
        expect(back.si).toBe(unit(value).si);
        expect(back.unit).toBe(unit);
      }),
      { numRuns: 1000 },
    );
  });

  it("gives back exactly nine decimals of a temperature in °F or °C", () => {
    const degrees = fc.integer({ min: 0, max: 270e9 }).map((n) => Number(`${n}e-9`));
    fc.assert(
      fc.property(fc.constantFrom(q.degF, q.degC), degrees, (unit, value) => {
        expect(unit(value).toJSON().value).toBe(value);
        expect(q.fromJSON(unit(value).toJSON(), "temperature").si).toBe(unit(value).si);
      }),
      { numRuns: 1000 },
    );
  });

  it("is stable from the second writing on, whatever the value", () => {
    fc.assert(
      fc.property(anyUnit, positive, (unit, value) => {
        const once = JSON.stringify(unit(value));
        expect(JSON.stringify(q.fromJSON(JSON.parse(once)))).toBe(once);
      }),
      { numRuns: 1000 },
    );
  });
});

describe("products", () => {
  // Each kind's coherent SI unit by SI Brochure, 9th ed., 2.3.4: the units multiply as the numbers do.
  const { ampere, kg, kgPerM, kgPerM3, kgPerSecond, m, m2, m3, m3PerSecond, mPerSecond, ohm } = q;
  const { kJPerKg, kJPerKgK, deltaK, ohmPerKm, pascal, pascalPerSecond, second, volt, watt } = q;
  it.each([
    ["kg/m × m", kgPerM, m, kg, 6],
    ["kg/m³ × m³", kgPerM3, m3, kg, 6],
    ["kg/m³ × m³/s", kgPerM3, m3PerSecond, kgPerSecond, 6],
    ["m × m", m, m, m2, 6],
    ["m² × m", m2, m, m3, 6],
    ["m² × m/s", m2, mPerSecond, m3PerSecond, 6],
    ["m/s × s", mPerSecond, second, m, 6],
    ["m³/s × s", m3PerSecond, second, m3, 6],
    ["kg/s × s", kgPerSecond, second, kg, 6],
    ["kg/s × kJ/kg", kgPerSecond, kJPerKg, watt, 6000],
    ["Pa/s × m³", pascalPerSecond, m3, q.paM3PerS, 6],
    ["Pa/s × s", pascalPerSecond, second, pascal, 6],
    ["V × A", volt, ampere, watt, 6],
    ["A × Ω", ampere, ohm, volt, 6],
    ["Ω/km × m", ohmPerKm, m, ohm, 0.006],
    ["kJ/(kg·K) × K", kJPerKgK, deltaK, kJPerKg, 6],
  ])("2 × 3 %s, and the way back", (_, first, second, result, expected) => {
    const [a, b, unit] = [first, second, result] as unknown as [
      q.Unit<"length">,
      typeof m,
      typeof m2,
    ];
    const whole = q.product(a(2), b(3), unit);
    expect(whole.in(unit)).toBe(expected);
    expect(q.quotient(whole, a(2), b).in(b)).toBe(3);
  });

  it("a quotient undoes its product", () => {
    const size = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(size, size, (rate, length) => {
        const mass = q.product(q.ozPerFt(rate), q.m(length), q.g);
        expectClose(q.quotient(mass, q.ozPerFt(rate), q.m).si, q.m(length).si);
      }),
    );
  });
});
