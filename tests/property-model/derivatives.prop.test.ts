import fc from "fast-check";
import * as models from "hvac-install-math/property-model";
import { describe, expect, test } from "vitest";
import { idealPart } from "../../src/property-model/ideal-part.ts";
import { mixtureModelOf, mixturePhase } from "../../src/property-model/mixture-phase.ts";
import { residual } from "../../src/property-model/residual-terms.ts";
import { fluidById } from "./blends.ts";

const fluids = Object.values(models).filter(
  (value): value is models.PureFluid | models.PseudoPureFluid =>
    typeof value === "object" && "residual" in value,
);

/** Central difference of fourth order. */
function slope(f: (x: number) => number, x: number): number {
  const h = 2e-4 * x;
  return (8 * (f(x + h) - f(x - h)) - (f(x + 2 * h) - f(x - 2 * h))) / (12 * h);
}

function expectNear(ours: number, theirs: number, scale: number): void {
  expect(Math.abs(ours - theirs)).toBeLessThan(2e-6 * (Math.abs(theirs) + scale));
}

describe.each(fluids.map((fluid) => [fluid.id, fluid] as const))("%s", (_, fluid) => {
  const state = fc.record({
    tau: fc.double({ min: 0.8, max: 1.8, noNaN: true }),
    delta: fc.double({ min: 0.05, max: 2.5, noNaN: true }),
  });

  test("the analytic derivatives of the residual part are those of differences", () => {
    fc.assert(
      fc.property(state, ({ tau, delta }) => {
        // Non-analytic terms bend too sharply near the critical point for differences.
        fc.pre(Math.hypot(tau - 1, delta - 1) > 0.25);
        const at = (t: number, d: number) => residual(fluid.residual, t, d);
        const r = at(tau, delta);
        expectNear(r.d, delta * slope((d) => at(tau, d).a, delta), 1);
        expectNear(r.t, tau * slope((t) => at(t, delta).a, tau), 1);
        expectNear(r.d + r.dd, delta * slope((d) => at(tau, d).d, delta), 5);
        expectNear(r.t + r.tt, tau * slope((t) => at(t, delta).t, tau), 5);
        expectNear(r.dt, tau * slope((t) => at(t, delta).d, tau), 5);
      }),
      { numRuns: 25, seed: 3 },
    );
  });

  test("the analytic derivatives of the ideal part are those of differences", () => {
    fc.assert(
      fc.property(state, ({ tau, delta }) => {
        const at = (t: number) => idealPart(fluid.ideal, t, delta);
        expectNear(at(tau).t, tau * slope((t) => at(t).a, tau), 1);
        expectNear(at(tau).t + at(tau).tt, tau * slope((t) => at(t).t, tau), 1);
      }),
      { numRuns: 10, seed: 3 },
    );
  });
});

test.each(["R448A", "R454B", "R452A", "R407C-mix"])(
  "%s: fugacities are the mole-number derivatives of the Helmholtz energy, and so are their slopes",
  (id) => {
    const blend = fluidById(id) as models.Mixture;
    const model = mixtureModelOf(blend);
    const z = Float64Array.from(blend.moleFractions);
    const [T, rho] = [300, 900];
    const at = (density: number, x: Float64Array, t = T) => mixturePhase(model, t, density, x);
    const phase = at(rho, z);
    const n = z.length;
    for (let i = 0; i < n; i++) {
      const value = (p: { logFugacity: Float64Array }) => p.logFugacity[i] as number;
      expectNear(phase.byDensity[i] as number, rho * slope((d) => value(at(d, z)), rho), 1);
      expectNear(phase.byTemperature[i] as number, T * slope((t) => value(at(rho, z, t)), T), 1);
      for (let j = 0; j < n; j++) {
        const moved = (xj: number) =>
          value(
            at(
              rho,
              z.map((x, k) => (k === j ? xj : x)),
            ),
          );
        expectNear(phase.byFraction[i * n + j] as number, slope(moved, z[j] as number), 1);
      }
    }
    // Gibbs-Duhem at constant T: Σ x_i d ln f_i = dp/(ρ R T).
    const left = z.reduce((sum, x, i) => sum + x * (phase.byDensity[i] as number), 0);
    expect(left).toBeCloseTo(phase.pressureByDensity / (rho * 8.31446261815324 * T), 10);
  },
);
