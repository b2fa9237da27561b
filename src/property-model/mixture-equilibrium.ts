// Which phase is in equilibrium with the bulk? One bubble or dew point by Newton's method.
// Follows Kunz and Wagner (2012), sec. 7.5: equal pressure and equal fugacity of each component.
// Does not cover finding a start; mixture-saturation.ts traces one upwards from a low temperature.
import { solveLinear } from "./linear-solve.ts";
import { type MixtureModel, mixtureGasConstant, mixturePhase } from "./mixture-phase.ts";

/** Whether the bulk is the liquid (bubble point) or the vapor (dew point). */
export type SaturationSide = "bubble" | "dew";

/** The bulk and the incipient phase in equilibrium; K, Pa, mol/m³, mole fractions. */
export interface MixtureEquilibrium {
  readonly temperature: number;
  readonly pressure: number;
  readonly liquid: number;
  readonly vapor: number;
  /** Mole fractions of the phase that just appears. */
  readonly incipient: Float64Array;
}

/**
 * Refines a guess to a bubble or dew point, at the guess's temperature or at a given pressure.
 *
 * @returns The equilibrium, or undefined where the iteration does not settle, meets an unstable phase,
 * or arrives at the trivial root of two equal phases.
 */
export function refineEquilibrium(
  model: MixtureModel,
  side: SaturationSide,
  guess: MixtureEquilibrium,
  pressure?: number,
): MixtureEquilibrium | undefined {
  const z = Float64Array.from(model.mixture.moleFractions);
  const n = z.length;
  const size = pressure === undefined ? n + 2 : n + 3;
  const w = Float64Array.from(guess.incipient);
  let T = guess.temperature;
  let bulkDensity = side === "bubble" ? guess.liquid : guess.vapor;
  let otherDensity = side === "bubble" ? guess.vapor : guess.liquid;
  let best = Number.POSITIVE_INFINITY;
  for (let iteration = 0; iteration < 60; iteration++) {
    const bulk = mixturePhase(model, T, bulkDensity, z);
    const other = mixturePhase(model, T, otherDensity, w);
    const scale = Math.min(bulkDensity, otherDensity) * mixtureGasConstant * T;
    // Unknowns: ln ρ bulk, ln ρ other, ln w_i, and ln T where the pressure is given.
    const rows: Float64Array[] = [];
    const row = new Float64Array(size + 1);
    row[0] = bulk.pressureByDensity / scale;
    row[1] = -other.pressureByDensity / scale;
    for (let j = 0; j < n; j++) {
      row[2 + j] = (-(other.pressureByFraction[j] as number) * (w[j] as number)) / scale;
    }
    if (pressure !== undefined) {
      row[n + 2] = (bulk.pressureByTemperature - other.pressureByTemperature) / scale;
    }
    row[size] = (other.pressure - bulk.pressure) / scale;
    rows.push(row);
    for (let i = 0; i < n; i++) {
      const line = new Float64Array(size + 1);
      line[0] = bulk.byDensity[i] as number;
      line[1] = -(other.byDensity[i] as number);
      for (let j = 0; j < n; j++) {
        line[2 + j] = -(other.byFraction[i * n + j] as number) * (w[j] as number);
      }
      if (pressure !== undefined) {
        line[n + 2] = (bulk.byTemperature[i] as number) - (other.byTemperature[i] as number);
      }
      line[size] = (other.logFugacity[i] as number) - (bulk.logFugacity[i] as number);
      rows.push(line);
    }
    const sumRow = new Float64Array(size + 1);
    for (let j = 0; j < n; j++) sumRow[2 + j] = w[j] as number;
    sumRow[size] = 1 - w.reduce((sum, value) => sum + value, 0);
    rows.push(sumRow);
    const light = side === "bubble" ? other : bulk; // the vapor tells a low pressure best
    if (pressure !== undefined) {
      const last = new Float64Array(size + 1);
      last[side === "bubble" ? 1 : 0] = light.pressureByDensity / pressure;
      if (side === "bubble") {
        for (let j = 0; j < n; j++) {
          last[2 + j] = ((other.pressureByFraction[j] as number) * (w[j] as number)) / pressure;
        }
      }
      last[n + 2] = light.pressureByTemperature / pressure;
      last[size] = 1 - light.pressure / pressure;
      rows.push(last);
    }
    const step = solveLinear(rows);
    if (step === undefined || !step.every(Number.isFinite)) return undefined;
    const largest = step.reduce((max, value) => Math.max(max, Math.abs(value)), 0);
    const damping = Math.min(1, 0.3 / largest);
    // Stop when the step no longer shrinks: what is left is rounding.
    if (largest < 1e-14 || (largest < 1e-9 && largest >= 0.5 * best)) {
      const liquid = side === "bubble" ? bulkDensity : otherDensity;
      const vapor = side === "bubble" ? otherDensity : bulkDensity;
      const stable = bulk.pressureByDensity > 0 && other.pressureByDensity > 0;
      if (!stable || liquid < 1.02 * vapor || !(light.pressure > 0)) return undefined;
      return { temperature: T, pressure: light.pressure, liquid, vapor, incipient: w };
    }
    best = Math.min(best, largest);
    bulkDensity *= Math.exp(damping * (step[0] as number));
    otherDensity *= Math.exp(damping * (step[1] as number));
    for (let j = 0; j < n; j++)
      w[j] = (w[j] as number) * Math.exp(damping * (step[2 + j] as number));
    if (pressure !== undefined) T *= Math.exp(damping * (step[n + 2] as number));
  }
  return undefined;
}
