// How near are model and shipped curves to the reference values? Every state of saturation.csv, computed.
// The values come from two other implementations of the published equations (see the file's own head).
// Does not cover how near the published equations are to nature: the guide of refrigerants.
import { type Fluid, saturation } from "hvac-install-math/property-model";
import { kelvin, pascalAbsolute } from "hvac-install-math/quantity";
import {
  bubblePressure,
  bubbleTemperature,
  dewPressure,
  dewTemperature,
  type Refrigerant,
  refrigerants,
  saturatedLiquidDensity,
  saturatedVaporDensity,
} from "hvac-install-math/refrigerants";
import { fluidById } from "../../tests/property-model/blends.ts";
import { readCsv } from "../../tests/property-model/csv.ts";
import { relative } from "./figures.ts";

/** What the deviations may be: relative, and K for the temperature. The tests hold the same. */
export const bounds = { model: 1e-10, pressure: 1e-9, density: 1e-8, temperature: 1e-6 } as const;

/** One state: what the reference says, and how far off the model and the shipped curve are. */
export interface State {
  readonly temperature: number;
  readonly bubble: number;
  readonly dew: number;
  readonly liquid: number;
  readonly vapor: number;
  /** Largest relative deviation of the model, in any of the four. */
  readonly model: number;
  /** Of the shipped curves; missing for fluids that are components only, and outside the curves' range. */
  readonly shipped?: {
    readonly pressure: number;
    readonly density: number;
    readonly temperature: number;
  };
}

/** All states of one fluid. */
export interface FluidStates {
  /** As the file names it: `R32`, `R410A-mix`. */
  readonly id: string;
  readonly refrigerant?: Refrigerant;
  readonly states: readonly State[];
}

/** Every fluid of the file, in its order. */
export function referenceStates(): FluidStates[] {
  const rows = readCsv("saturation.csv");
  return [...new Set(rows.map(({ fluid }) => fluid ?? ""))].map((id) => {
    const refrigerant = refrigerants.find(({ designation }) => idOf(designation) === id);
    const states = rows
      .filter(({ fluid }) => fluid === id)
      .map((row) => stateOf(fluidById(id), refrigerant, row));
    return refrigerant ? { id, refrigerant, states } : { id, states };
  });
}

/** `R-1234ze(E)` as `R1234zeE`. */
export function idOf(designation: string): string {
  return designation.replaceAll(/[^A-Za-z0-9]/g, "");
}

function stateOf(
  fluid: Fluid,
  refrigerant: Refrigerant | undefined,
  row: Readonly<Record<string, string>>,
): State {
  const [temperature, bubble, dew, liquid, vapor] = [
    row.T_K,
    row.p_bubble_Pa,
    row.p_dew_Pa,
    row.rho_liquid_kg_m3,
    row.rho_vapor_kg_m3,
  ].map(Number) as [number, number, number, number, number];
  const T = kelvin(temperature);
  const found = saturation(fluid, T);
  const model = Math.max(
    relative(found.bubblePressure.si, bubble),
    relative(found.dewPressure.si, dew),
    relative(found.liquidDensity.si, liquid),
    relative(found.vaporDensity.si, vapor),
  );
  const state = { temperature, bubble, dew, liquid, vapor, model };
  const within = refrigerant && !(T < refrigerant.range.min) && !(T > refrigerant.range.max);
  if (!within) return state;
  const shipped = {
    pressure: Math.max(
      relative(bubblePressure(refrigerant, T).si, bubble),
      relative(dewPressure(refrigerant, T).si, dew),
    ),
    density: Math.max(
      relative(saturatedLiquidDensity(refrigerant, T).si, liquid),
      relative(saturatedVaporDensity(refrigerant, T).si, vapor),
    ),
    temperature: Math.max(
      Math.abs(bubbleTemperature(refrigerant, pascalAbsolute(bubble)).si - temperature),
      Math.abs(dewTemperature(refrigerant, pascalAbsolute(dew)).si - temperature),
    ),
  };
  return { ...state, shipped };
}

/** The largest of one deviation over the states that have it; undefined when none has. */
export function largest(
  states: readonly State[],
  of: (state: State) => number | undefined,
): number | undefined {
  const values = states.map(of).filter((value) => value !== undefined);
  return values.length === 0 ? undefined : Math.max(...values);
}
