// How much of the voltage reaches the unit, running and at the start, and which conductor would keep the limit?
// Follows NFPA 70 (2023), 210.19, informational note; IEC 60364-5-52:2009, annex G; CSA C22.1, 8-102.
// Does not cover the drop ahead of this circuit.
import { statement } from "../assessment/assessment.ts";
import { numberOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import type { CircuitInput } from "./circuit-input.ts";
import { conductorResistance, conduitImpedance } from "./conductor-impedance.ts";
import { type Findings, judge } from "./findings.ts";
import type { RuleFamily, SizeOf } from "./rules/circuit-rules.ts";
import { cell, sizesOf } from "./table.ts";
import { longestRun, type VoltageDrop, voltageDrop } from "./voltage-drop.ts";
import type { AwgWiring } from "./wiring.ts";

/**
 * Voltage drop of the circuit.
 *
 * Source: NFPA 70 (2023), 210.19, informational note.
 */
export interface CircuitDrop<F extends RuleFamily = RuleFamily> {
  /** With everything running. */
  readonly running: VoltageDrop;
  /** At the start, where the locked-rotor current is known; power factor 1. */
  readonly starting?: VoltageDrop;
  /** Largest drop of a branch circuit under the rules. */
  readonly limit: Quantity<"ratio">;
  /** Longest one-way run that keeps the limit with this conductor. */
  readonly longestRun: Quantity<"length">;
  /** Smallest conductor, from the one needed, that keeps the limit; left out when none does. */
  readonly conductorWithinLimit?: SizeOf<F>;
}

/** Drop of the circuit with a conductor; `undefined` without a length. */
export function circuitDrop<F extends RuleFamily>(
  input: CircuitInput<F>,
  conductor: SizeOf<F>,
  smallest: SizeOf<F>,
  findings: Findings,
): CircuitDrop<F> | undefined {
  const { rules, wiring, supply, lockedRotorCurrent, powerFactor } = input;
  const { length, material, stranding } = wiring;
  const { conduit } = wiring as AwgWiring;
  if (powerFactor !== undefined) numberOf("powerFactor", powerFactor, { min: 0.01, max: 1 });
  if (length === undefined) return undefined;
  const { ratedLoadCurrent: current = input.minimumCircuitAmpacity } = input;
  const run = (size: SizeOf<F>) => {
    const solid = stranding === "solid" && cell(rules.conductors, size, `${material} solid`);
    const line = { current, voltage: supply.voltage, phases: supply.phases, length };
    if (conduit && powerFactor !== undefined) {
      return { ...line, ...conduitImpedance({ rules, size, material, conduit }), powerFactor };
    }
    const wire = solid ? ("solid" as const) : ("stranded" as const);
    const resistance = conductorResistance({ rules, size, material, stranding: wire });
    return { ...line, resistance };
  };
  const limit = new Quantity(rules.voltageDrop.branch, percent);
  const keeps = (size: SizeOf<F>) => longestRun({ ...run(size), limit }).si >= length.si;
  const chosen = run(conductor);
  const running = voltageDrop(chosen);
  const sizes = sizesOf(rules);
  const within = sizes.slice(sizes.indexOf(smallest)).find(keeps);
  const text = "Voltage drop {drop}, at most {limit}.";
  // The sentence needs two decimals; the result keeps them all.
  const values = { drop: percent(Number(running.ratio.in(percent).toFixed(2))), limit };
  const ok = keeps(conductor);
  if (ok || rules.voltageDrop.mandatory) judge(findings, ok, "voltage-drop", text, values);
  else findings.cautions.push(statement("voltage-drop", `${text} A recommendation.`, values));
  return {
    running,
    ...(lockedRotorCurrent && {
      starting: voltageDrop({ ...chosen, current: lockedRotorCurrent, powerFactor: 1 }),
    }),
    limit,
    longestRun: longestRun({ ...chosen, limit }).as(rules.lengthUnit),
    ...(within && { conductorWithinLimit: within }),
  };
}
