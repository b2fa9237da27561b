// The warmth that the library allows for after a fill, against systems stepped in time from published figures.
import { deltaK, second } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { gasErrorsOf, warmthAt } from "../../src/pressure-test/gas-errors.ts";
import {
  type Foam,
  softTubes,
  type Tube,
  tubeOf,
  warmedSystems,
  warmthOf,
} from "./simulators/warmth-of-fill.ts";

const minutes = [1, 10, 20, 30, 60, 120];
const times = minutes.map((m) => 60 * m);

/** Twice the standard uncertainty of all that is left of a fill, K; pressure absolute, Pa. */
const bound = (fill: number, seconds: number, followsGasWithin?: number) => {
  const { warmth } = gasErrorsOf({
    probe: {
      ...(followsGasWithin !== undefined && { followsGasWithin: deltaK(followsGasWithin) }),
    },
    elsewhere: undefined,
    sinceFill: second(0),
    isZoned: true,
    volume: 3e-3,
    fill,
  });
  return 2 * Math.hypot(...warmth.map((part) => warmthAt(part, seconds)));
};
/** Warmth of each system as a part of what is allowed for, in order; and in K at 4 MPa. */
const systems = warmedSystems(415, 1200, times);
const partsAt = (i: number) =>
  systems
    .map(({ fill, kelvin }) => {
      const K = kelvin[i] as number;
      return K / bound(fill.pressure + 1e5, times[i] as number);
    })
    .sort((a, b) => a - b);
const quantile = (list: readonly number[], q: number) =>
  list[Math.ceil(q * list.length) - 1] as number;

describe.each(minutes.map((m, i) => ({ m, i })))("$m min after the fill", ({ i }) => {
  it("is covered in 95 % of all systems", () => {
    expect(quantile(partsAt(i), 0.95)).toBeLessThanOrEqual(1);
  });

  it("is allowed no more than twice what 95 % of the systems need", () => {
    expect(quantile(partsAt(i), 0.95)).toBeGreaterThanOrEqual(1 / 2);
  });
});

describe("the model of the fill", () => {
  const foam: Foam = { thickness: 0.013, conductivity: 0.039, heat: 60 * 1600 };
  const [quarter, , , fiveEighths] = softTubes as [Tube, Tube, Tube, Tube];
  const fill = { pressure: 3.5e6, seconds: 120, cylinder: 10e6, cold: 0 };

  it("gives the work p·V to the copper where nothing else takes it", () => {
    // p·A/C' by hand: 3.5e6 · 1.829e-5 / 46.0 in 1/4 in, 3.5e6 · 1.560e-4 / 143.9 in 5/8 in (ASTM B280, 8933 · 385).
    const bare = { thickness: 1e-9, conductivity: 0.039, heat: 0 };
    const [small] = warmthOf(tubeOf(quarter, bare, 0, 20), fill, [60]) as [number];
    const [large] = warmthOf(tubeOf(fiveEighths, bare, 0, 20), fill, [60]) as [number];
    expect(Math.abs(small / 1.39 - 1)).toBeLessThan(0.06); // the gas itself takes some
    expect(Math.abs(large / 3.79 - 1)).toBeLessThan(0.06);
  });

  it("loses it with C'/U' where the foam holds no heat", () => {
    // C' = 143.9 J/(m·K) and 4.5 of gas; 1/U' = ln(20.94/7.94)/(2π·0.039) + 1/(2π·0.02094·8) = 4.91 m·K/W.
    const light = { ...foam, heat: 0 };
    const part = tubeOf(fiveEighths, light, 8, 20);
    const [a, b] = warmthOf(part, fill, [600, 1200]) as [number, number];
    expect(Math.abs(600 / Math.log(a / b) / (148.4 * 4.907) - 1)).toBeLessThan(0.02);
  });

  it("gives gas to the wall in seconds, by heat conduction alone", () => {
    // Filled within 2 s, the gas is p/(ρ·c_v) = R·T/c_v warmer at once; R²/(5.78 α) is 9.6 s at 3.6 MPa in 5/8 in.
    const part = { ...tubeOf(fiveEighths, foam, 8, 5.783), wall: 1e9 };
    const at = warmthOf(part, { ...fill, seconds: 0.01 }, [4, 14]) as [number, number];
    const alpha = 0.0275 / ((3.6e6 / (296.8 * 295)) * 750);
    const tau = (fiveEighths.outside / 2 - fiveEighths.wall) ** 2 / (5.783 * alpha);
    expect(tau).toBeCloseTo(9.63, 1);
    expect(Math.abs(10 / Math.log(at[0] / at[1]) / tau - 1)).toBeLessThan(0.12); // steps of 2 s
  });

  it("is not slower in more meters of the same tube, and slower in wider tube", () => {
    const halved = (part: ReturnType<typeof tubeOf>) => {
      const [a, b] = warmthOf(part, fill, [300, 900]) as [number, number];
      return 600 / Math.log(a / b);
    };
    const list = softTubes.map((size) => halved(tubeOf(size, foam, 8, 10)));
    expect(list).toEqual([...list].sort((a, b) => a - b));
    // Between 4 min and 30 min, as the comment in gas-errors.ts says.
    const thin = tubeOf(quarter, { ...foam, thickness: 0.006 }, 10, 10);
    const thick = tubeOf(softTubes[4] as Tube, { ...foam, thickness: 0.025 }, 5, 10);
    expect(halved(thin)).toBeGreaterThan(240);
    expect(halved(thick)).toBeLessThan(1800);
  });
});

it("leaves the gas above the wall where the thermometer is stated to follow it", () => {
  // Conduction in 3/4 in of thin wall has the longest time constant of all tubing, 18 s; shells take a minute.
  expect(bound(4e6, 60, 0.5)).toBeLessThan(bound(4e6, 60));
  expect(bound(4e6, 300, 0.5)).toBeLessThan(0.2);
});
