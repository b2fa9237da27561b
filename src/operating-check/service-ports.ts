// Which port is the high side now? Ports of a split unit in cooling and in heating.
// Follows a ducted heat pump's manual for heating; the rest is common practice, no source.
// Does not cover defrost, which runs as cooling for minutes, nor units with more than two lines.
import { objectOf, oneOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { type GaugeCaution, gaugeCautions } from "./cautions.ts";

/** What the unit does while it is read. */
export type RunningMode = "cooling" | "heating";

/**
 * Where the refrigerant expands: in the outdoor unit in both modes, as in most small splits, or in the unit
 * whose coil evaporates, as in most ducted heat pumps.
 */
export type ExpansionPlace = "outdoor-unit" | "evaporating-unit";

/** What a port shows. Source: see {@link servicePorts}. */
export interface ServicePortRole {
  /** Side of the compressor that it belongs to. */
  readonly side: "low" | "high";
  /** What is behind it. */
  readonly shows: "suction" | "discharge" | "liquid" | "expanded";
}

/**
 * What the ports of a split unit show.
 *
 * Source: see {@link servicePorts}.
 */
export interface ServicePorts {
  /** Port of the larger valve: vapor line. On most small splits it is the only one. */
  readonly vapor: ServicePortRole;
  /** Port of the smaller valve: liquid line. */
  readonly liquid: ServicePortRole;
  /** The gauge port at the compressor's suction that some ducted heat pumps have. */
  readonly commonSuction: ServicePortRole;
  /** What can hurt someone. */
  readonly cautions: readonly GaugeCaution[];
}

/** The two modes, for checks. */
export const runningModes: readonly RunningMode[] = ["cooling", "heating"];

/**
 * What each service port of a split unit shows in a mode. The larger port is the low side in cooling and
 * the high side in heating.
 *
 * @param unit - Mode, and where the refrigerant expands.
 * @returns Side and content behind each port.
 * @throws {@link InvalidInputError} when a word is not one of those listed.
 *
 * Cautions: look at the mode before connecting. A low-side gauge on the vapor port may be destroyed in
 * heating.
 *
 * Source: a manufacturer's manual of a ducted heat pump (high pressure is measured at the larger valve in
 * heating); common practice, no source.
 *
 * @example
 * ```ts
 * import { servicePorts } from "hvac-install-math/operating-check";
 *
 * servicePorts({ mode: "cooling", expansion: "outdoor-unit" }).vapor.shows; // => suction
 * servicePorts({ mode: "heating", expansion: "outdoor-unit" }).vapor.shows; // => discharge
 * servicePorts({ mode: "cooling", expansion: "outdoor-unit" }).liquid.shows; // => expanded
 * ```
 */
export function servicePorts(unit: {
  /** What the unit does. */
  readonly mode: RunningMode;
  /** Where the refrigerant expands. */
  readonly expansion: ExpansionPlace;
}): ServicePorts {
  objectOf("unit", unit);
  const heating = oneOf("mode", unit.mode, runningModes) === "heating";
  const places: readonly ExpansionPlace[] = ["outdoor-unit", "evaporating-unit"];
  const expanded = oneOf("expansion", unit.expansion, places) === "outdoor-unit" && !heating;
  return frozen({
    vapor: heating ? { side: "high", shows: "discharge" } : { side: "low", shows: "suction" },
    liquid: expanded ? { side: "low", shows: "expanded" } : { side: "high", shows: "liquid" },
    commonSuction: { side: "low", shows: "suction" },
    cautions: gaugeCautions(),
  });
}
