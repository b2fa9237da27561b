// Does the hose fit the service port? Port and hose threads, and the adapter between them.
// Follows SAE J513 threads; which port a unit has is common practice, no source.
// Does not cover quick couplers, core removal tools, nor left-hand cylinder threads of flammables.
import type { Caution } from "../assessment/caution.ts";
import { heed, type SafetyStatement } from "../assessment/safety.ts";
import { objectOf, oneOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { type FlareThread, flareThread } from "./flare-nut.ts";
import { flareCautions } from "./judge.ts";
import { type FlareJointStatement, say } from "./statements.ts";

/** A service port's SAE flare size in inches. Source: SAE J513. */
export type ServicePort = "1/4" | "5/16";

const ports: readonly ServicePort[] = ["1/4", "5/16"];

/**
 * Whether an adapter is needed between a service port and a hose.
 *
 * Source: see {@link servicePortAdapter}.
 */
export interface ServicePortAdapter {
  /** Whether one is needed. */
  readonly needed: boolean;
  /** Thread of the port on the unit. */
  readonly port: FlareThread;
  /** Thread of the hose's nut. */
  readonly hose: FlareThread;
  /** What to bring. */
  readonly advice: FlareJointStatement;
  /** What can hurt someone. */
  readonly cautions: readonly Caution<FlareJointStatement | SafetyStatement>[];
}

/**
 * The adapter between a unit's service port and a hose.
 *
 * @param input - SAE size of the port and of the hose's end.
 * @returns Whether an adapter is needed, and which.
 * @throws {@link InvalidInputError} when a size is neither 1/4 nor 5/16.
 *
 * Cautions: an adapter under pressure sprays liquid when it is taken off: use one with a valve or a core
 * depressor, wear gloves and goggles. Its pressure rating has to suit the refrigerant.
 *
 * Source: SAE J513 threads.
 *
 * @example
 * ```ts
 * import { servicePortAdapter } from "hvac-install-math/flare-joint";
 * import { explain } from "hvac-install-math/assessment";
 * import { flareJoint } from "hvac-install-math/language/en";
 *
 * const { advice } = servicePortAdapter({ port: "5/16", hose: "1/4" });
 * explain(advice, flareJoint); // => Adapter required: 5/16 in SAE female (1/2-20) to 1/4 in SAE male (7/16-20).
 * ```
 */
export function servicePortAdapter(input: {
  /** Size of the port on the unit, male. */
  readonly port: ServicePort;
  /** Size of the hose's end, female. */
  readonly hose: ServicePort;
}): ServicePortAdapter {
  objectOf("input", input);
  const port = flareThread(oneOf("port", input.port, ports));
  const hose = flareThread(oneOf("hose", input.hose, ports));
  const needed = input.port !== input.hose;
  const [hoseSize, hoseThread] = [{ verbatim: input.hose }, { verbatim: hose.name }];
  const advice = needed
    ? say("flare-joint.adapter-needed", {
        port: { verbatim: input.port },
        portThread: { verbatim: port.name },
        hose: hoseSize,
        hoseThread,
      })
    : say("flare-joint.hose-fits", { hose: hoseSize, hoseThread });
  return frozen({ needed, port, hose, advice, cautions: heed(flareCautions) });
}

/**
 * The service port that a unit usually has. A guess for the tool bag: look at the unit.
 *
 * @param input - Refrigerant and kind of unit.
 * @returns 5/16 for a mini-split with R410A or R32, else 1/4.
 * @throws {@link InvalidInputError} when a word is not one of those listed.
 *
 * Source: common practice, no source: most R410A and R32 mini-splits have 5/16 in, deliberately different
 * from R22; ducted units of North America have 1/4 in.
 *
 * @example
 * ```ts
 * import { usualServicePort } from "hvac-install-math/flare-joint";
 *
 * usualServicePort({ refrigerant: "R410A", equipment: "mini-split" }); // => 5/16
 * ```
 */
export function usualServicePort(input: {
  /** Refrigerant of the unit. */
  readonly refrigerant: "R410A" | "R32" | "R22" | "R134a";
  /** A ductless split, or a ducted unit as sold in North America. */
  readonly equipment: "mini-split" | "ducted";
}): ServicePort {
  objectOf("input", input);
  const equipment = oneOf("equipment", input.equipment, ["mini-split", "ducted"]);
  const refrigerant = oneOf("refrigerant", input.refrigerant, ["R410A", "R32", "R22", "R134a"]);
  const isHighPressure = refrigerant === "R410A" || refrigerant === "R32";
  return equipment === "mini-split" && isHighPressure ? "5/16" : "1/4";
}
