import fc from "fast-check";
import { type Instrument, propagate, standardUncertainty } from "hvac-install-math/assessment";
import { deltaF, deltaK, psi, psig, volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

describe("standardUncertainty", () => {
  it("takes limits as a rectangle, a display step as half a step each way, a deviation as it is", () => {
    expect(standardUncertainty({ accuracy: psi(1) }, psi).in(psi)).toBeCloseTo(
      1 / Math.sqrt(3),
      12,
    );
    expect(standardUncertainty({ resolution: psi(1) }, psi).in(psi)).toBeCloseTo(
      1 / Math.sqrt(12),
      12,
    );
    expect(standardUncertainty({ repeatability: psi(1) }, psi).in(psi)).toBe(1);
  });

  it("adds the three as squares", () => {
    const all = { accuracy: volt(3), resolution: volt(1), repeatability: volt(2) };
    expect(standardUncertainty(all, volt).si).toBeCloseTo(Math.sqrt(9 / 3 + 1 / 12 + 4), 12);
  });

  it("answers in the unit asked for", () => {
    expect(standardUncertainty({ repeatability: deltaF(1.8) }, deltaK).toString()).toBe("1 K");
  });

  it("allows an instrument that does not err", () => {
    expect(standardUncertainty({ accuracy: psi(0) }, psi).si).toBe(0);
  });

  it.each<[string, Record<string, unknown>, string]>([
    [
      "nothing known",
      {},
      "instrument: nothing is not allowed; allowed: one of accuracy, resolution, repeatability",
    ],
    ["only undefined", { accuracy: undefined }, "instrument: nothing is not allowed"],
    [
      "a negative accuracy",
      { accuracy: psi(-1) },
      "instrument.accuracy: -1 psi is not allowed; allowed: at least 0 psi",
    ],
    [
      "a point",
      { accuracy: psig(1) },
      "instrument.accuracy: gaugePressure 1 psig is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "a number",
      { resolution: 0.5 },
      "instrument.resolution: 0.5 is not allowed; allowed: the kind pressureDifference",
    ],
    [
      "another kind",
      { repeatability: deltaF(1) },
      "instrument.repeatability: temperatureDifference 1 Δ°F is not allowed; allowed: the kind pressureDifference",
    ],
  ])("refuses %s", (_, instrument, message) => {
    expect(() => standardUncertainty(instrument as Instrument<"gaugePressure">, psi)).toThrow(
      message,
    );
  });
});

describe("propagate", () => {
  const sum = (x: readonly number[]) => x.reduce((a, b) => a + b, 0);
  const two = [
    { value: 1, uncertainty: 3 },
    { value: 2, uncertainty: 4 },
  ];

  it("adds independent shares as squares", () => {
    expect(propagate(sum, two)).toEqual({ value: 3, uncertainty: 5 });
  });

  it("adds shares that err fully together, and cancels them in a difference", () => {
    expect(propagate(sum, two, [[0, 1, 1]]).uncertainty).toBe(7);
    expect(propagate(sum, two, [[0, 1, -1]]).uncertainty).toBe(1);
    const difference = ([a = 0, b = 0]: readonly number[]) => a - b;
    const equal = [
      { value: 5, uncertainty: 0.3 },
      { value: 2, uncertainty: 0.3 },
    ];
    expect(propagate(difference, equal, [[0, 1, 1]]).uncertainty).toBe(0);
    expect(propagate(difference, equal, [[1, 0, 1]]).uncertainty).toBe(0);
  });

  it("meets the closed form of a linear formula with any correlation", () => {
    const size = fc.double({ min: -100, max: 100, noNaN: true });
    const u = fc.double({ min: 1e-3, max: 100, noNaN: true });
    const r = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(size, size, u, u, r, (a, b, s, t, rho) => {
        const linear = ([x = 0, y = 0]: readonly number[]) => a * x + b * y;
        const inputs = [
          { value: 0, uncertainty: s },
          { value: 0, uncertainty: t },
        ];
        const { uncertainty } = propagate(linear, inputs, [[0, 1, rho]]);
        const variance = (a * s) ** 2 + (b * t) ** 2 + 2 * rho * a * s * b * t;
        const size2 = (a * s) ** 2 + (b * t) ** 2;
        expect(Math.abs(uncertainty ** 2 - variance)).toBeLessThanOrEqual(1e-12 * size2);
      }),
    );
  });

  it("sees correlations that contradict each other however small the uncertainties are", () => {
    const three = [1, 2, 3].map((value) => ({ value, uncertainty: 1e-9 }));
    const opposed = [
      [0, 1, -1],
      [1, 2, -1],
      [0, 2, -1],
    ] as const;
    expect(() => propagate(sum, three, opposed)).toThrow(/^correlations: /);
  });

  it("takes up to 1000 inputs, each of which costs two calls", () => {
    const many = (count: number) =>
      Array.from({ length: count }, () => ({ value: 0, uncertainty: 1 }));
    let calls = 0;
    const counted = (x: readonly number[]) => {
      calls++;
      return sum(x);
    };
    expect(propagate(counted, many(1000)).uncertainty).toBeCloseTo(Math.sqrt(1000), 10);
    expect(calls).toBe(2001);
    expect(() => propagate(sum, many(1001))).toThrow("inputs.length: 1001 is not allowed");
  });

  it("does not call the formula off its estimate for an input that is certain", () => {
    const root = ([x = 0]: readonly number[]) => Math.sqrt(x);
    expect(propagate(root, [{ value: 0, uncertainty: 0 }])).toEqual({ value: 0, uncertainty: 0 });
  });

  it("allows a formula without inputs", () => {
    expect(propagate(() => 4, [])).toEqual({ value: 4, uncertainty: 0 });
  });

  it("leaves the inputs as they were", () => {
    const inputs = Object.freeze(two.map((input) => Object.freeze({ ...input })));
    propagate(sum, inputs);
    expect(inputs).toEqual(two);
  });

  it.each<[string, () => unknown, string]>([
    [
      "a negative uncertainty",
      () => propagate(sum, [{ value: 1, uncertainty: -1 }]),
      "inputs[0].uncertainty: -1 is not allowed; allowed: at least 0",
    ],
    [
      "a missing uncertainty",
      () => propagate(sum, [{ value: 1 } as never]),
      "inputs[0].uncertainty: undefined is not allowed; allowed: a finite number",
    ],
    [
      "a value that is no number",
      () => propagate(sum, [{ value: Number.NaN, uncertainty: 1 }]),
      "inputs[0].value: NaN is not allowed; allowed: a finite number",
    ],
    [
      "a quantity as a value",
      () => propagate(sum, [{ value: psi(1), uncertainty: 1 } as never]),
      "inputs[0].value: pressureDifference 1 psi is not allowed; allowed: a finite number",
    ],
    [
      "a formula without an answer",
      () => propagate(() => Number.NaN, two),
      "formula: NaN is not allowed; allowed: a finite number",
    ],
    [
      "a formula that leaves its domain within the uncertainty",
      () => propagate(([x = 0]) => Math.sqrt(x), [{ value: 1, uncertainty: 2 }]),
      "formula: NaN is not allowed; allowed: a finite number",
    ],
    [
      "a correlation above 1",
      () => propagate(sum, two, [[0, 1, 1.1]]),
      "correlations[0]: 1.1 is not allowed; allowed: at least -1 and at most 1",
    ],
    [
      "a correlation with an input that is not there",
      () => propagate(sum, two, [[0, 2, 0.5]]),
      "correlations[0]: 2 is not allowed; allowed: a position from 0 to 1",
    ],
    [
      "an input correlated with itself",
      () => propagate(sum, two, [[1, 1, 0.5]]),
      "correlations[0]: the pair 1,1 is not allowed; allowed: each pair of two different inputs once",
    ],
    [
      "a pair given twice",
      () =>
        propagate(sum, two, [
          [0, 1, 0.5],
          [1, 0, 0.5],
        ]),
      "correlations[1]: the pair 0,1 is not allowed; allowed: each pair of two different inputs once",
    ],
    [
      "correlations that contradict each other",
      () =>
        propagate(
          sum,
          [...two.map((x) => ({ ...x, uncertainty: 1 })), { value: 0, uncertainty: 1 }],
          [
            [0, 1, -1],
            [1, 2, -1],
            [0, 2, -1],
          ],
        ),
      "correlations: a set that gives a variance below 0 is not allowed; allowed: coefficients that can hold at the same time",
    ],
  ])("refuses %s", (_, call, message) => {
    expect(call).toThrow(message);
  });
});

it("names the instrument as the caller calls it, and what is missing", () => {
  const path = "instruments.pressure";
  expect(() => standardUncertainty({ accuracy: psi(-1) }, psi, path)).toThrow(
    /^instruments\.pressure\.accuracy: -1 psi/,
  );
  expect(() => standardUncertainty({}, psi, path)).toThrow(/^instruments\.pressure: nothing/);
  expect(() => standardUncertainty({}, psi)).toThrow(/^instrument: nothing/);
  expect(() => standardUncertainty(null as never, psi)).toThrow(/^instrument: null/);
  expect(() => standardUncertainty({ accuracy: psi(1) }, undefined as never)).toThrow(/^unit: /);
  expect(() => propagate(undefined as never, [])).toThrow(/^formula: undefined/);
  expect(() => propagate((v) => v.length, undefined as never)).toThrow(/^inputs: /);
  expect(() => propagate((v) => v.length, [undefined as never])).toThrow(/^inputs\[0\]\.value: /);
  expect(() => propagate((v) => v.length, [], [null as never])).toThrow(/^correlations\[0\]: /);
});
