// How long does one saturation call take, and the bulk form against a bare Clenshaw loop?
// Run: npx tsx tests/bench/refrigerants.ts. Prints the best of many short rounds, so that a busy machine
// disturbs least. Budget: typed call 150 ns, bulk at most twice the bare loop of the same order.
import {
  standardAtmosphere as atmosphere,
  degC,
  kPaa,
  psig,
  type Quantity,
} from "hvac-install-math/quantity";
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

const calls = 20_000;
const out = new Float64Array(calls);
const temperatures = Array.from({ length: calls }, (_, i) => degC(-50 + (100 * i) / calls));
const pressures = Array.from({ length: calls }, (_, i) => kPaa(200 + (2000 * i) / calls));
const gauges = Array.from({ length: calls }, (_, i) => psig(20 + (300 * i) / calls));
const kelvins = Float64Array.from(temperatures, ({ si }) => si);

/** Best time of one call, ns. */
function best(round: () => void): number {
  let shortest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < 60; i++) {
    const start = performance.now();
    round();
    shortest = Math.min(shortest, performance.now() - start);
  }
  return (shortest / calls) * 1e6;
}

function each<T>(
  inputs: readonly T[],
  call: (input: T) => Quantity<never> | { si: number },
): number {
  return best(() => {
    for (let i = 0; i < calls; i++) out[i] = (call(inputs[i] as T) as { si: number }).si;
  });
}

/**
 * The recurrence term by term as textbooks have it: nothing else, or with the root and the exponential
 * that turn T into x and ln p into p.
 */
function bareClenshaw({ saturation }: Refrigerant, whole: boolean): number {
  const { bubble: terms, temperature } = saturation;
  return best(() => {
    for (let i = 0; i < calls; i++) {
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
  });
}

for (const one of [R410A, R32, R448A]) {
  const figures = {
    bubblePressure: each(temperatures, (T) => bubblePressure(one, T)),
    dewPressure: each(temperatures, (T) => dewPressure(one, T)),
    "bubbleTemperature, absolute": each(pressures, (p) => bubbleTemperature(one, p)),
    "dewTemperature, gauge": each(gauges, (p) => dewTemperature(one, p, atmosphere)),
    saturatedLiquidDensity: each(temperatures, (T) => saturatedLiquidDensity(one, T)),
    saturatedVaporDensity: each(temperatures, (T) => saturatedVaporDensity(one, T)),
    "bulk bubblePressure": best(() => saturationArray(one, "bubblePressure", kelvins, out)),
    "bare Clenshaw with root and exponential": bareClenshaw(one, true),
    "bare Clenshaw": bareClenshaw(one, false),
  };
  console.log(`${one.designation} (${one.saturation.bubble.length} terms), ns per value`);
  for (const [name, time] of Object.entries(figures)) console.log(`  ${name}: ${time.toFixed(1)}`);
}
