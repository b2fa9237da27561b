import { describe, expect, test } from "vitest";
import * as reference from "../../src/property-model/nitrogen.ts";
import * as reduced from "../../src/property-model/nitrogen-gas.ts";
import { readCsv } from "./csv.ts";

const rows = readCsv("nitrogen-isochore.csv").map((row) => ({
  p1: Number(row.p1_Pa),
  T1: Number(row.T1_K),
  T2: Number(row.T2_K),
  rho: Number(row.rho_kg_m3),
  p2: Number(row.p2_Pa),
}));

function worst(model: typeof reference | typeof reduced): { density: number; pressure: number } {
  let density = 0;
  let pressure = 0;
  for (const { p1, T1, T2, rho, p2 } of rows) {
    const found = model.nitrogenDensity(p1, T1);
    density = Math.max(density, Math.abs(found / rho - 1));
    pressure = Math.max(pressure, Math.abs(model.nitrogenPressure(found, T2) / p2 - 1));
  }
  return { density, pressure };
}

describe("nitrogen at constant density", () => {
  test("the reference equation reproduces every check value within 1e-10", () => {
    expect(rows.length).toBe(60);
    const { density, pressure } = worst(reference);
    expect(density).toBeLessThan(1e-10);
    expect(pressure).toBeLessThan(1e-10);
  });

  test("the reduced form stays within 1e-5 of the check values", () => {
    const { density, pressure } = worst(reduced);
    expect(density).toBeLessThan(1e-5);
    expect(pressure).toBeLessThan(1e-5);
  });

  test("the reduced form stays within 6e-6 of the reference equation over its whole range", () => {
    const { minTemperature, maxTemperature, maxPressure } = reduced.nitrogenGasRange;
    let deviation = 0;
    for (let i = 0; i <= 30; i++) {
      const p = 1e4 + ((maxPressure - 1e4) * i) / 30;
      for (let T = minTemperature; T <= maxTemperature; T += 5) {
        const exact = reference.nitrogenDensity(p, T);
        deviation = Math.max(deviation, Math.abs(reduced.nitrogenDensity(p, T) / exact - 1));
        deviation = Math.max(deviation, Math.abs(reduced.nitrogenPressure(exact, T) / p - 1));
      }
    }
    expect(deviation).toBeLessThan(6e-6);
  });

  test("density and pressure of the reduced form are inverses of each other", () => {
    const rho = reduced.nitrogenDensity(4.2e6, 305.3);
    expect(reduced.nitrogenPressure(rho, 305.3)).toBeCloseTo(4.2e6, 5);
  });
});
