// How much of the voltage reaches the unit, running and at the start, and which conductor would keep the limit?
// Follows NFPA 70 (2023), 210.19, informational note; CSA C22.1, 8-102, table D3; IEC 60364-5-52:2009, annex G.
// Does not cover the drop ahead of this circuit.
import { isAtLeast } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { ampere } from "../quantity/units/electricity.ts";
import { m } from "../quantity/units/geometry.ts";
import { percent } from "../quantity/units/ratio.ts";
import type { CheckedCircuit } from "./check-circuit.ts";
import { conduitImpedance, resistanceAt } from "./conductor-impedance.ts";
import type { RuleFamily, SizeOf, WiringOf } from "./rules/index.ts";
import { areaOf, cell, cellIn, sizesOf, step } from "./table.ts";
import { dropOf, type PlainLine, type VoltageDrop, voltsPerMeter } from "./voltage-drop.ts";
import type { AwgWiring } from "./wiring.ts";

/**
 * Voltage drop of the circuit, with that of a whip that differs.
 *
 * Source: NFPA 70 (2023), 210.19, informational note.
 */
export interface CircuitDrop<F extends RuleFamily = RuleFamily> {
  /** With everything running. */
  readonly running: VoltageDrop;
  /** At the start, where the locked-rotor current is known; power factor 1. */
  readonly starting?: VoltageDrop | undefined;
  /** Largest drop of a branch circuit under the rules. */
  readonly limit: Quantity<"ratio">;
  /** Longest one-way run that keeps the limit with this conductor. */
  readonly longestRun: Quantity<"length">;
  /** Smallest conductor, from the one needed, that keeps the limit; left out when none does. */
  readonly conductorWithinLimit?: SizeOf<F> | undefined;
}

/** Drop of the circuit with a conductor, `current` in A; `undefined` without a length or a resistance. */
export function circuitDrop<F extends RuleFamily>(
  circuit: CheckedCircuit<F>,
  conductor: SizeOf<F>,
  smallest: SizeOf<F>,
  current: number,
): CircuitDrop<F> | undefined {
  const { input, rules, installed, whipWiring } = circuit;
  const { supply, wiring, lockedRotorCurrent: locked, powerFactor = 1 } = input;
  const { length } = wiring;
  if (length === undefined) return undefined;
  const { phases, voltage } = supply;
  const { whip } = installed;
  const whipMeters = (whip?.wiring?.length ?? m(0)).si;
  const lost = (size: SizeOf<F>, amperes: number, factor: number) => {
    const line = lineOf(circuit, size, wiring, amperes);
    if (line === undefined) return undefined;
    const last = whip && whipMeters > 0 && lineOf(circuit, whip.conductor, whipWiring, amperes);
    // Without a reactance the power factor would only make the drop look smaller.
    const volts = (one: PlainLine) =>
      voltsPerMeter(one, amperes, phases, one.reactance > 0 ? factor : 1);
    return { each: volts(line), whip: last ? whipMeters * volts(last) : 0 };
  };
  const { branch, growth } = rules.voltageDrop;
  const beyond = growth ? (length.si - growth.beyond) * growth.perMeter : 0;
  const limit =
    step("wiring.length", branch, length.si) + Math.min(growth?.most ?? 0, Math.max(0, beyond));
  const chosen = lost(conductor, current, powerFactor);
  if (chosen === undefined) return undefined;
  const longest = (found: NonNullable<typeof chosen>) =>
    Math.max(0, limit * voltage.si - found.whip) / found.each;
  const within = sizesOf(rules)
    .slice(Math.max(0, sizesOf(rules).indexOf(smallest)))
    .find((size) => {
      const found = lost(size, current, powerFactor);
      return found && isAtLeast(longest(found), length.si);
    });
  const starting = locked && lost(conductor, locked.si, 1);
  const volts = (found: NonNullable<typeof chosen>) => found.each * length.si + found.whip;
  return {
    running: dropOf(volts(chosen), voltage, length, ampere(current)),
    ...(locked && starting && { starting: dropOf(volts(starting), voltage, length, locked) }),
    limit: new Quantity(limit, percent),
    longestRun: m(longest(chosen)).as(rules.lengthUnit),
    ...(within && { conductorWithinLimit: within }),
  };
}

/** Resistance and reactance of a conductor in Ω/m; `undefined` where the rules have none. */
function lineOf<F extends RuleFamily>(
  { input, rules }: CheckedCircuit<F>,
  size: SizeOf<F>,
  wiring: WiringOf<F>,
  current: number,
): PlainLine | undefined {
  const { material, stranding } = wiring;
  const { resistivity, reactance = 0 } = rules.voltageDrop;
  const area = areaOf(rules, size);
  if (resistivity && area > 0) return { resistance: resistivity[material] / area, reactance };
  const { conduit } = wiring as AwgWiring;
  if (conduit && input.powerFactor !== undefined) {
    const found = conduitImpedance({ rules, size, material, conduit });
    return { resistance: found.resistance.si, reactance: found.reactance.si };
  }
  const solid = stranding === "solid" ? cell(rules.conductors, size, `${material} solid`) : null;
  const table = solid ?? cell(rules.conductors, size, `${material} stranded`);
  if (table === null) return undefined;
  const { operatingTemperature: own, resistanceUnit } = rules;
  const celsius = own === "by load" ? heatedBy(rules, size, wiring, current) : own;
  const resistance = resistanceUnit(resistanceAt(rules, material, table, celsius)).si;
  return { resistance, reactance };
}

/** 30 °C and the rise to the insulation's limit with the square of the load: the factors of table D3. */
function heatedBy<F extends RuleFamily>(
  rules: CheckedCircuit<F>["rules"],
  size: SizeOf<F>,
  { material, insulation }: WiringOf<F>,
  current: number,
): number {
  const most = cellIn(rules.ampacity ?? [], size, `${material} ${insulation}`) ?? current;
  const share = Math.min(1, current / most);
  return 30 + (Number.parseFloat(insulation) - 30) * share ** 2;
}
