// How far does the supply sag under load, and how stiff is it?
// Follows Ohm's law on two readings; NFPA 70 (2023), informational notes to 210.19 and 215.2, for 5 %.
// Does not cover phase angle: at the near-unity power factor of an inverter the drop is resistive.

import { type Estimate, estimate } from "../assessment/assessment.ts";
import { objectOf, oneOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { ohm, volt } from "../quantity/units/electricity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { meterErrors, type Voltmeter } from "./voltage-reading.ts";

/**
 * Voltage at rest and under load.
 */
export interface SupplySagInput {
  /** Voltage while the unit is off, above 0; the average of the lines for three phases. */
  readonly rest: Quantity<"voltage">;
  /** Voltage while it runs, above 0, read at the same place. */
  readonly load: Quantity<"voltage">;
  /** Current while it runs; the average of the lines for three phases. */
  readonly loadCurrent?: Quantity<"current"> | undefined;
  /** Current while it is off; 0 when left out. */
  readonly restCurrent?: Quantity<"current"> | undefined;
  /** Phases that feed the unit; 1 when left out. */
  readonly phases?: 1 | 3 | undefined;
  /** The voltmeter; its common error cancels in the difference. */
  readonly meter?: Voltmeter | undefined;
  /** Current at which the voltage is wanted, such as the rated-load amperes of an inverter that now runs slowly. */
  readonly atCurrent?: Quantity<"current"> | undefined;
}

/**
 * How far the supply sags.
 */
export interface SupplySag {
  /** Voltage at rest less voltage under load; negative when something else on the supply went off. */
  readonly sag: Estimate<"voltage">;
  /** The sag as a share of the voltage at rest. */
  readonly share: Quantity<"ratio">;
  /** Resistance of everything upstream of the meter: both conductors for one phase, one line for three. Missing without a current, or when the voltage rose. */
  readonly sourceResistance?: Estimate<"resistance"> | undefined;
  /** Voltage to expect at `atCurrent`. */
  readonly voltageAtCurrent?: Quantity<"voltage"> | undefined;
}

/**
 * The sag of a supply under load and the resistance that it implies: service, transformer, feeder, branch
 * circuit and joints upstream of the meter. A loose joint shows here first.
 *
 * @param input - Voltages at rest and under load, and, for the resistance, the current.
 * @returns Sag with its uncertainty, share, resistance and the voltage at another current.
 * @throws {@link InvalidInputError} when a voltage is not above 0 or a current is negative.
 *
 * Cautions: read at live terminals by a licensed electrician, with a meter of category III or IV.
 *
 * Source: Ohm's law; the common error of one meter cancels (JCGM 100:2008, 5.2).
 *
 * @example
 * ```ts
 * import { ampere, ohm, percent, volt } from "hvac-install-math/quantity";
 * import { supplySag } from "hvac-install-math/supply-voltage";
 *
 * const sag = supplySag({ rest: volt(120), load: volt(115), loadCurrent: ampere(8) });
 * sag.share.toString(percent, 2); // => 4.17 %
 * sag.sourceResistance?.value.toString(ohm, 3); // => 0.625 Ω
 * ```
 */
export function supplySag(input: SupplySagInput): SupplySag {
  const { meter, atCurrent, loadCurrent, restCurrent, phases = 1 } = objectOf("input", input);
  oneOf("phases", phases, [1, 3]);
  const rest = siOf("rest", input.rest, "voltage", { above: 0 });
  const load = siOf("load", input.load, "voltage", { above: 0 });
  const amps = (name: string, value: Quantity<"current"> | undefined) =>
    value === undefined ? 0 : siOf(name, value, "current", { min: 0 });
  const { each, gain } = meterErrors(meter);
  const sag = rest - load;
  const u = Math.hypot(each, each, (gain * sag) / Math.sqrt(3));
  const base = { sag: estimate(volt(sag), u), share: percent((100 * sag) / rest) };

  const step = amps("loadCurrent", loadCurrent) - amps("restCurrent", restCurrent);
  if (step <= 0 || sag < 0) return frozen(base);
  const each1 = step * (phases === 3 ? Math.sqrt(3) : 1); // line to line: √3 R I
  const resistance = sag / each1;
  const wanted = amps("atCurrent", atCurrent) - amps("restCurrent", restCurrent);
  const there = rest - (sag * wanted) / step;
  return frozen({
    ...base,
    sourceResistance: estimate(ohm(resistance), u / each1),
    ...(atCurrent && there > 0 && { voltageAtCurrent: volt(there) }),
  });
}
