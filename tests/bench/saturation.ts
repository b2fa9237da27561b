// What does a saturation call cost against the bare recurrence, typed and in bulk?
import { standardAtmosphere as atmosphere, degC, kPaa, psig } from "hvac-install-math/quantity";
import {
  bubblePressure,
  bubbleTemperature,
  dewPressure,
  dewTemperature,
  R32,
  R410A,
  R448A,
  type Refrigerant,
  saturatedLiquidDensity,
  saturatedVaporDensity,
  saturationArray,
} from "hvac-install-math/refrigerants";
import { type Case, measure, shown, times } from "./measure.ts";
import type { Section } from "./section.ts";

const count = 2000;
const out = new Float64Array(count);
const grid = (from: number, to: number) =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / count);
const temperatures = grid(-50, 50).map((t) => degC(t));
const pressures = grid(200, 2200).map((p) => kPaa(p));
const gauges = grid(20, 320).map((p) => psig(p));
const kelvins = Float64Array.from(temperatures, ({ si }) => si);
const pascals = Float64Array.from(pressures, ({ si }) => si);

function each<T>(name: string, inputs: readonly T[], call: (input: T) => { si: number }): Case {
  const run = () => {
    for (let i = 0; i < count; i++) out[i] = call(inputs[i] as T).si;
    return out;
  };
  return { name, values: count, run };
}

/** Clenshaw's recurrence term by term as textbooks have it, with or without turning T into x and ln p into p. */
function clenshaw(name: string, { saturation }: Refrigerant, whole: boolean): Case {
  const { bubble: terms, temperature } = saturation;
  const run = () => {
    for (let i = 0; i < count; i++) {
      const T = kelvins[i] as number;
      const twice = whole ? 3.4 * Math.sqrt(1 - T / temperature) - 2.2 : 0.005 * T;
      let b1 = 0;
      let b2 = 0;
      for (let k = terms.length - 1; k > 0; k--) {
        const b = twice * b1 - b2 + (terms[k] as number);
        b2 = b1;
        b1 = b;
      }
      const sum = (twice / 2) * b1 - b2 + (terms[0] as number);
      out[i] = whole ? Math.exp(sum) : sum;
    }
    return out;
  };
  return { name, values: count, run };
}

const exponential: Case = {
  name: "Math.exp",
  values: count,
  run: () => {
    for (let i = 0; i < count; i++) out[i] = Math.exp((kelvins[i] as number) / 100);
    return out;
  },
};

export async function saturation(): Promise<Section> {
  const rows: string[][] = [];
  for (const one of [R410A, R32, R448A]) {
    const bulk = (curve: Parameters<typeof saturationArray>[1], values: Float64Array): Case => ({
      name: `bulk ${curve}`,
      values: count,
      run: () => saturationArray(one, curve, values, out),
    });
    const figures = await measure([
      clenshaw("bare Clenshaw loop", one, false),
      clenshaw("the same with root and exponential", one, true),
      exponential,
      bulk("bubblePressure", kelvins),
      bulk("dewTemperature", pascals),
      each("bubblePressure", temperatures, (T) => bubblePressure(one, T)),
      each("dewPressure", temperatures, (T) => dewPressure(one, T)),
      each("bubbleTemperature, absolute", pressures, (p) => bubbleTemperature(one, p)),
      each("dewTemperature, gauge", gauges, (p) => dewTemperature(one, p, atmosphere)),
      each("saturatedLiquidDensity", temperatures, (T) => saturatedLiquidDensity(one, T)),
      each("saturatedVaporDensity", temperatures, (T) => saturatedVaporDensity(one, T)),
    ]);
    for (const { name, nanoseconds, ratio } of figures) {
      const budget = name.startsWith("bulk")
        ? "2 ×"
        : /[bB]are|same|Math/.test(name)
          ? ""
          : "150 ns";
      rows.push([`${one.designation}, ${name}`, shown(nanoseconds), times(ratio), budget]);
    }
  }
  return {
    title: "Saturation curves",
    text: "Typed calls and the array form, one value, against Clenshaw's loop over the terms of the bubble pressure.",
    columns: ["call", "median", "to the bare loop", "budget"],
    rows,
  };
}
