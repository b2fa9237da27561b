// What follows from a Helmholtz energy? Pressure and the other properties of one homogeneous phase.
// Follows Span, Multiparameter Equations of State (Springer 2000), table 3.10.
// Does not cover two-phase states; see pure-saturation.ts and mixture-saturation.ts.
import type { FluidData } from "./fluid.ts";
import type { HelmholtzDerivatives } from "./helmholtz-derivatives.ts";
import { idealPart } from "./ideal-part.ts";
import { residual } from "./residual-terms.ts";

/** One phase of fixed composition, in plain SI numbers: K, mol/m³. */
export interface HelmholtzModel {
  /** J/(mol K) */
  readonly gasConstant: number;
  /** kg/mol */
  readonly molarMass: number;
  /** Reducing temperature, K. */
  readonly reducingTemperature: number;
  /** Reducing density, mol/m³. */
  readonly reducingDensity: number;
  /** The residual part at reduced τ and δ. */
  residual(tau: number, delta: number): HelmholtzDerivatives;
  /** The ideal part at temperature and density. */
  ideal(temperature: number, density: number): HelmholtzDerivatives;
}

/** The model of a pure or pseudo-pure fluid. */
export function modelOf(fluid: FluidData): HelmholtzModel {
  const { temperature: Tr, density: rhor } = fluid.reducing;
  return {
    gasConstant: fluid.gasConstant,
    molarMass: fluid.molarMass,
    reducingTemperature: Tr,
    reducingDensity: rhor,
    residual: (tau, delta) => residual(fluid.residual, tau, delta),
    ideal: (T, rho) => idealPart(fluid.ideal, Tr / T, rho / rhor),
  };
}

/** Pressure and what the solvers need beside it. */
export interface PressureState {
  /** Pa */
  p: number;
  /** ρ ∂p/∂ρ at constant temperature, Pa. */
  slope: number;
  /** T ∂p/∂T at constant density, Pa. */
  thermal: number;
  /** h/(R T) without the terms that depend on temperature only. */
  enthalpy: number;
  /** g/(R T) without the terms that depend on temperature only. */
  gibbs: number;
}

/** Pressure, its slope and the Gibbs energy at T (K) and ρ (mol/m³). */
export function pressureAt(model: HelmholtzModel, T: number, rho: number): PressureState {
  const r = model.residual(model.reducingTemperature / T, rho / model.reducingDensity);
  const rhoRT = rho * model.gasConstant * T;
  return {
    p: rhoRT * (1 + r.d),
    slope: rhoRT * (1 + 2 * r.d + r.dd),
    thermal: rhoRT * (1 + r.d - r.dt),
    enthalpy: r.t + r.d,
    gibbs: Math.log(rho) + r.a + r.d,
  };
}

/** Every property of one phase, per mass, in plain SI numbers. */
export interface PhaseProperties {
  /** Pa */
  pressure: number;
  /** kg/m³ */
  density: number;
  /** J/kg */
  enthalpy: number;
  /** J/(kg K) */
  entropy: number;
  /** J/(kg K) */
  isochoricHeatCapacity: number;
  /** J/(kg K) */
  isobaricHeatCapacity: number;
  /** m/s; NaN where the state is mechanically unstable */
  speedOfSound: number;
}

/** The properties at T (K) and ρ (mol/m³): Span (2000), table 3.10. */
export function propertiesAt(model: HelmholtzModel, T: number, rho: number): PhaseProperties {
  const { gasConstant: R, molarMass: M } = model;
  const r = model.residual(model.reducingTemperature / T, rho / model.reducingDensity);
  const i = model.ideal(T, rho);
  const cv = -(i.tt + r.tt);
  const bulk = 1 + 2 * r.d + r.dd;
  const thermal = 1 + r.d - r.dt;
  return {
    pressure: rho * R * T * (1 + r.d),
    density: rho * M,
    enthalpy: ((R * T) / M) * (1 + i.t + r.t + r.d),
    entropy: (R / M) * (i.t + r.t - i.a - r.a),
    isochoricHeatCapacity: (R / M) * cv,
    isobaricHeatCapacity: (R / M) * (cv + (thermal * thermal) / bulk),
    speedOfSound: Math.sqrt(((R * T) / M) * (bulk + (thermal * thermal) / cv)),
  };
}
