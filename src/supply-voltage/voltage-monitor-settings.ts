// How should a voltage monitor be set? Cut-out, trip delay and reconnect delay to suggest.
// Common practice, no source; the 3 min from a split-system manual.
// Does not cover surges: they need a surge-protective device, not a monitor.

import { objectOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { volt } from "../quantity/units/electricity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { minute, second } from "../quantity/units/time.ts";
import { nameplateVoltageRange, type VoltageNameplate } from "./nameplate-voltage-range.ts";
import type { VoltageRange } from "./standards/index.ts";
import { say } from "./statements.ts";
import { type NominalSupply, resolveStandard } from "./supply-ranges.ts";

/**
 * Settings to suggest for a voltage monitor.
 *
 * Source: common practice, no source.
 */
export interface VoltageMonitorSettings {
  /** Cut out below. */
  readonly lowCutOut: Quantity<"voltage">;
  /** Cut out above. */
  readonly highCutOut: Quantity<"voltage">;
  /** Wait before cutting out, so that a motor start does not trip it; 2 s to 10 s is usual. */
  readonly tripDelay: Quantity<"duration">;
  /** Wait before reconnecting, so that pressures equalise; 3 min at least, 5 min is common. */
  readonly reconnectDelay: Quantity<"duration">;
  /** Cut out above this voltage unbalance, between the 2 % that makers allow and the 5 % at which a motor must not run; three phases only. Phase loss and reversal cut out at once. */
  readonly unbalanceCutOut?: Quantity<"ratio"> | undefined;
}

/**
 * Monitor settings to suggest: ±10 % of the nominal voltage of the supply, but nowhere outside what the
 * nameplate allows.
 *
 * @param input - Nameplate and supply, whose ranges overlap.
 * @returns Cut-out voltages, delays and, for three phases, the unbalance.
 * @throws {@link InvalidInputError} when nameplate or supply is not usable, or the one does not fit the
 * other.
 *
 * Cautions: the makers of unit and monitor come before these settings. A monitor does not stop a surge.
 *
 * Source: common practice, no source; 3 min after a loss of power: a manufacturer's split-system manual.
 *
 * @example
 * ```ts
 * import { volt } from "hvac-install-math/quantity";
 * import { voltageMonitorSettings } from "hvac-install-math/supply-voltage";
 *
 * const nameplate = { rated: [volt(208), volt(230)] };
 * const set = voltageMonitorSettings({ nameplate, supply: { voltage: volt(240), phases: 1 } });
 * `${set.lowCutOut} to ${set.highCutOut}`; // => 216 V to 253 V
 * ```
 */
export function voltageMonitorSettings(input: {
  /** What the unit allows. */
  readonly nameplate: VoltageNameplate;
  /** What feeds it. */
  readonly supply: NominalSupply;
}): VoltageMonitorSettings {
  const plate = nameplateVoltageRange(objectOf("input", input).nameplate);
  resolveStandard(input.supply);
  const settings = settingsWithin(plate, input.supply);
  if (settings) return frozen(settings);
  throw new InvalidInputError({
    argument: "nameplate.rated",
    value: `${plate.minimum} to ${plate.maximum}`,
    allowed: `a range that overlaps ${input.supply.voltage} ±10 %`,
    hint: say("supply-voltage.match-unit-and-supply"),
  });
}

/** The settings, unless the ranges of plate and supply leave nothing between them. */
export function settingsWithin(
  { minimum, maximum }: VoltageRange,
  { voltage, phases }: NominalSupply,
): VoltageMonitorSettings | undefined {
  const low = Math.max(minimum.si, Math.round(0.9 * voltage.si));
  const high = Math.min(maximum.si, Math.round(1.1 * voltage.si));
  if (low >= high) return undefined;
  return {
    lowCutOut: volt(low),
    highCutOut: volt(high),
    tripDelay: second(5),
    reconnectDelay: minute(5),
    ...(phases === 3 && { unbalanceCutOut: percent(3) }),
  };
}
