import * as model from "hvac-install-math/property-model";
import {
  bubblePoint,
  dewPoint,
  type Fluid,
  mixture,
  R32,
  saturation,
} from "hvac-install-math/property-model";
import {
  kelvin,
  kgPerM3,
  OutOfRangeError,
  pascalAbsolute,
  percent,
  psig,
} from "hvac-install-math/quantity";
import { describe, expect, test } from "vitest";
import { densityAt, densityNear } from "../../src/property-model/density-solver.ts";
import type { FluidData } from "../../src/property-model/fluid.ts";
import { modelOf } from "../../src/property-model/helmholtz-model.ts";
import { bulkModel } from "../../src/property-model/mixture-phase.ts";
import {
  pointAtPressure,
  pointAtTemperature,
  saturationRange,
} from "../../src/property-model/saturation-at.ts";
import { definitions } from "../../src/refrigerants/generate/definitions.ts";
import { fluidById } from "./blends.ts";
import { readCsv } from "./csv.ts";

const rows = readCsv("saturation.csv");
const ids = [...new Set(rows.map((row) => row.fluid ?? ""))];

/** Largest relative deviation of the model from the check values of one fluid. */
function deviations(id: string): { pressure: number; density: number } {
  const fluid = fluidById(id);
  const worst = { pressure: 0, density: 0 };
  for (const row of rows.filter((candidate) => candidate.fluid === id)) {
    const found = saturation(fluid, kelvin(Number(row.T_K)));
    const off = (ours: number, column: string) => Math.abs(ours / Number(row[column]) - 1);
    worst.pressure = Math.max(
      worst.pressure,
      off(found.bubblePressure.si, "p_bubble_Pa"),
      off(found.dewPressure.si, "p_dew_Pa"),
    );
    worst.density = Math.max(
      worst.density,
      off(found.liquidDensity.si, "rho_liquid_kg_m3"),
      off(found.vaporDensity.si, "rho_vapor_kg_m3"),
    );
  }
  return worst;
}

describe("saturation against the check values", () => {
  test("the file holds every fluid of the library at thirteen temperatures or more", () => {
    const fluids = Object.values(model).flatMap((one) => ("literature" in one ? [one.id] : []));
    const known = [...fluids, ...definitions.map(({ id }) => id)].filter((id) => id !== "nitrogen");
    expect(new Set(ids.filter((id) => !id.endsWith("-mix")))).toEqual(new Set(known));
    for (const id of ids) {
      expect(rows.filter(({ fluid }) => fluid === id).length, id).toBeGreaterThanOrEqual(13);
    }
  });

  test.each(ids)("%s agrees within 1e-10 in pressure and density", (id) => {
    const { pressure, density } = deviations(id);
    expect(pressure).toBeLessThan(1e-10);
    expect(density).toBeLessThan(1e-10);
  });

  test.each(ids)("%s: the temperature at a given pressure is found back within 1e-8 K", (id) => {
    const fluid = fluidById(id);
    for (const row of rows.filter((r, i) => r.fluid === id && i % 6 === 0)) {
      const T = Number(row.T_K);
      const bubble = { pressure: pascalAbsolute(Number(row.p_bubble_Pa)) };
      const dew = { pressure: pascalAbsolute(Number(row.p_dew_Pa)) };
      expect(Math.abs(bubblePoint(fluid, bubble).temperature.si - T)).toBeLessThan(1e-8);
      expect(Math.abs(dewPoint(fluid, dew).temperature.si - T)).toBeLessThan(1e-8);
    }
  });

  test.each(ids)("%s: the density solver finds both phases at the saturation pressures", (id) => {
    const fluid = fluidById(id);
    const model = fluid.kind === "mixture" ? bulkModel(fluid) : modelOf(fluid);
    for (const row of rows.filter((r, i) => r.fluid === id && i % 5 === 0)) {
      const T = Number(row.T_K);
      const liquid = densityAt(model, T, Number(row.p_bubble_Pa), "liquid") ?? 0;
      const vapor = densityAt(model, T, Number(row.p_dew_Pa), "vapor") ?? 0;
      expect((liquid * model.molarMass) / Number(row.rho_liquid_kg_m3)).toBeCloseTo(1, 8);
      expect((vapor * model.molarMass) / Number(row.rho_vapor_kg_m3)).toBeCloseTo(1, 8);
    }
  });
});

describe("the whole curve", () => {
  const fluids = ids.map((id): [string, Fluid] => [id, fluidById(id)]);

  test.each(fluids)(
    "%s: pressures rise, dew stays below bubble, densities approach",
    (_, fluid) => {
      const critical =
        fluid.kind === "pure"
          ? fluid.saturationLimit
          : fluid.kind === "pseudo-pure"
            ? fluid.critical.temperature
            : Math.min(...fluid.components.map((c) => c.saturationLimit));
      const from = Math.max(200, fluid.kind === "mixture" ? 200 : fluid.limits.minTemperature);
      let before = saturation(fluid, kelvin(from));
      for (let i = 1; i <= 12; i++) {
        const now = saturation(fluid, kelvin(from + ((0.97 * critical - from) * i) / 12));
        expect(now.bubblePressure > before.bubblePressure).toBe(true);
        expect(now.dewPressure > before.dewPressure).toBe(true);
        expect(now.dewPressure.si).toBeLessThanOrEqual(now.bubblePressure.si * (1 + 1e-12));
        expect(now.liquidDensity < before.liquidDensity).toBe(true);
        expect(now.vaporDensity > before.vaporDensity).toBe(true);
        expect(now.liquidDensity > now.vaporDensity).toBe(true);
        before = now;
      }
    },
  );
});

describe("the temperature at a pressure, to both ends of the range", () => {
  const single = ids.map(fluidById).filter((fluid) => fluid.kind !== "mixture");

  test.each(single.map((fluid) => [fluid.id, fluid] as const))("%s", (_, fluid) => {
    const { min, max } = saturationRange(fluid);
    for (const share of [0, 1e-6, 0.001, 0.3, 0.9, 0.99, 0.999, 1 - 1e-6, 1]) {
      const T = min + (max - min) * share;
      for (const side of ["bubble", "dew"] as const) {
        const at = pointAtTemperature(fluid, side, T);
        const back = pointAtPressure(fluid, side, at?.pressure ?? 0);
        expect(Math.abs((back?.temperature ?? 0) - T)).toBeLessThan(1e-9);
      }
    }
    const ends = [min, max].map((T) => pointAtTemperature(fluid, "dew", T)?.pressure ?? 0);
    const [lowest = 0, highest = 0] = ends;
    expect(pointAtPressure(fluid, "dew", lowest * (1 - 1e-9))).toBeUndefined();
    expect(pointAtPressure(fluid, "dew", highest * (1 + 1e-9))).toBeUndefined();
  });
});

describe("a density from a near one", () => {
  const model = modelOf(fluidById("R410A") as FluidData);
  const [T, p] = [283.15, 1.08e6];

  test("is the one that the search finds", () => {
    const vapor = densityAt(model, T, p, "vapor") ?? 0;
    const found = densityNear(model, T, p, p / (model.gasConstant * T)) ?? 0;
    expect(found / vapor).toBeCloseTo(1, 12);
  });

  test("is not given where the start is no stable state or the way is too far", () => {
    expect(densityNear(model, T, p, 0.7 * model.reducingDensity)).toBeUndefined();
    expect(densityNear(model, T, p, 1e-3)).toBeUndefined();
  });
});

describe("outside the range", () => {
  test("a temperature above the critical one is refused with the range in its unit", () => {
    expect(() => saturation(fluidById("R32"), kelvin(360))).toThrow(OutOfRangeError);
    expect(() => saturation(fluidById("R32"), kelvin(360))).toThrow(/at most 351\.22 K/);
  });

  test("a blend above its critical temperature gets an error, not a spurious root", () => {
    for (const id of ["R452A", "R454B", "R448A", "R407F"]) {
      expect(() => bubblePoint(fluidById(id), { temperature: kelvin(362) })).toThrow(
        OutOfRangeError,
      );
    }
  });

  test("a pressure above the critical one is refused", () => {
    const pressure = pascalAbsolute(7e6);
    expect(() => dewPoint(fluidById("R454B"), { pressure })).toThrow(OutOfRangeError);
    expect(() => dewPoint(fluidById("R134a"), { pressure })).toThrow(OutOfRangeError);
  });

  test("a gauge pressure and a missing fluid are refused from JavaScript", () => {
    const pressure = psig(118) as never;
    expect(() => bubblePoint(fluidById("R32"), { pressure })).toThrow(/absolutePressure/);
    expect(() => bubblePoint(undefined as never, { pressure })).toThrow(/fluid/);
  });
});

test("the first bubble of a blend is richer in the more volatile component", () => {
  const { incipient } = bubblePoint(fluidById("R454C"), { temperature: kelvin(280) });
  expect(incipient?.moleFractions.R32).toBeGreaterThan(0.375);
  expect(incipient?.density.in(kgPerM3)).toBeGreaterThan(0);
});

test("names what is missing when JavaScript passes nothing", () => {
  expect(() => mixture(undefined as never)).toThrow(/^input: undefined/);
  expect(() => mixture({} as never)).toThrow(/^components: undefined/);
  expect(() => mixture({ components: [null] } as never)).toThrow(/^components\[0\]: null/);
  const massFraction = percent(100);
  expect(() => mixture({ components: [{ massFraction }] } as never)).toThrow(
    /^components\[0\]\.fluid: undefined/,
  );
  expect(() => bubblePoint(R32, undefined as never)).toThrow(/^input: undefined/);
  expect(() => bubblePoint(Object.create(null), undefined as never)).toThrow(/^fluid: an object/);
});
