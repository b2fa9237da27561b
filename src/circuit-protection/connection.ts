// How many poles, and with which voltage marking? What the service asks of a breaker.
// Follows NFPA 70 (2023), 240.15(B) and 240.85 (both from memory).
// Does not cover interrupting rating (110.9): compare it with the available fault current.

import { oneOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { rulesOf } from "./checks.ts";
import type { CircuitRules, SupplySystemName, VoltageRating } from "./rules/index.ts";
import { say } from "./statements.ts";

/**
 * The supply at the panel.
 */
export interface Supply {
  /** Nominal voltage between the conductors that feed the unit, within 10 % of one of the service's. */
  readonly voltage: Quantity<"voltage">;
  /** Phases that feed the unit. */
  readonly phases: 1 | 3;
  /** The service; when left out, the first that fits is assumed, the stricter one where two do, and none of 127 V. */
  readonly system?: SupplySystemName | undefined;
}

/**
 * What the service asks of the breaker.
 *
 * Source: NFPA 70 (2023), 240.15(B), 240.85.
 */
export interface Connection {
  /** The service, as given or assumed. */
  readonly system: SupplySystemName;
  /** Poles that open together; a neutral is not counted. */
  readonly poles: 1 | 2 | 3;
  /** Nominal volts from the worst conductor to ground. */
  readonly voltsToGround: number;
  /** Nominal volts between the conductors. */
  readonly voltsBetween: number;
  /** Lowest voltage marking that will do. */
  readonly voltageRating: VoltageRating;
}

/**
 * Poles and voltage marking of the breaker for a supply: one pole from line to neutral, two poles with a
 * common trip between two lines, three for three phases; a slash marking such as "120/240 V" only where no
 * conductor is further from ground than its lower figure.
 *
 * Assumes the worst conductor of a high-leg delta, because which two lines are used is not known.
 *
 * @param input - Rules, and a supply within 10 % of one of their services.
 * @returns Poles, volts to ground and between, lowest marking.
 * @throws {@link InvalidInputError} when no service of the rules gives this voltage.
 *
 * Cautions: for a licensed electrician; verify the service at the panel.
 *
 * Source: NFPA 70 (2023), 240.15(B), 240.85 (from memory).
 *
 * @example
 * ```ts
 * import { breakerConnection, nec2023 } from "hvac-install-math/circuit-protection";
 * import { volt } from "hvac-install-math/quantity";
 *
 * const supply = { voltage: volt(208), phases: 1 } as const;
 * const connection = breakerConnection({ rules: nec2023, supply });
 * connection.poles; // => 2
 * connection.voltageRating; // => 120/240 V
 * ```
 */
export function breakerConnection(input: {
  /** The rule set. */
  readonly rules: CircuitRules;
  /** The supply. */
  readonly supply: Supply;
}): Connection {
  return frozen(connectionOf(rulesOf(input), input.supply, "supply"));
}

/** The same for a supply that stands elsewhere in the input. Internal. */
export function connectionOf(rules: CircuitRules, supply: Supply, path: string): Connection {
  const volts = siOf(`${path}.voltage`, supply?.voltage, "voltage", { above: 0 });
  const phases = oneOf(`${path}.phases`, supply.phases, [1, 3]);
  const names = rules.systems.map(({ name }) => name);
  if (supply.system !== undefined) oneOf(`${path}.system`, supply.system, names);
  const near = (nominal = 0) => isAtMost(Math.abs(volts - nominal), 0.1 * nominal, 1);
  for (const system of rules.systems) {
    if (supply.system ? system.name !== supply.system : system.onlyNamed) continue;
    const between = near(system.lineToLine) && phases <= system.phases;
    if (!between && !(phases === 1 && near(system.lineToNeutral))) continue;
    const voltsBetween = between ? system.lineToLine : (system.lineToNeutral ?? 0);
    const voltsToGround = between ? system.toGround : voltsBetween;
    const marking = rules.voltageRatings.rows.find(
      ([, ground, lines]) => (ground ?? 0) >= voltsToGround && (lines ?? 0) >= voltsBetween,
    );
    if (!marking) continue;
    return {
      system: system.name,
      poles: phases === 3 ? 3 : between ? 2 : 1,
      voltsToGround,
      voltsBetween,
      voltageRating: marking[0],
    };
  }
  throw new InvalidInputError({
    argument: `${path}.voltage`,
    value: `${supply.voltage}, ${phases}-phase`,
    allowed: `within 10 % of what ${supply.system ?? names.join(", ")} gives`,
    hint: say("circuit-protection.check-service"),
  });
}
