// What goes wrong with drains, and who gets hurt? Cautions by where the drain runs.
// Follows IMC 307.2 for discharge and overflow; the rest is common practice, no source.
// Does not cover what local code adds.
import { caution } from "../assessment/caution.ts";
import { danger, heed } from "../assessment/safety.ts";
import { flagOf, objectOf, siOf } from "../quantity/check.ts";
import { isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { type CondensateCaution, say } from "./statements.ts";

/**
 * Where a drain runs. What is left out counts as possible.
 */
export interface DrainRoute {
  /** Whether part of it is outdoors. */
  readonly outdoors?: boolean | undefined;
  /** Coldest outdoor temperature to be expected. */
  readonly lowestOutdoorTemperature?: Quantity<"temperature"> | undefined;
  /** Whether the unit hangs above finished space. */
  readonly aboveFinishedSpace?: boolean | undefined;
  /** Whether a pump lifts the water. */
  readonly pumped?: boolean | undefined;
}

/** What every verdict of this module carries. */
export const baseCautions = (): readonly CondensateCaution[] => [
  danger("safety.line-voltage"),
  danger("safety.work-at-height"),
];

/**
 * What to heed about a drain where it runs: sunlight, freezing, overflow, discharge, sweating,
 * line voltage and height.
 *
 * @param route - What is known of the route; what is left out counts as possible.
 * @returns The cautions.
 * @throws {@link InvalidInputError} when the temperature is not a temperature.
 *
 * Source: IMC 2021, 307.2.1 and, clause number from memory, 307.2.3; the rest is common practice, no source.
 *
 * @example
 * ```ts
 * import { drainCautions } from "hvac-install-math/condensate";
 * import { degC } from "hvac-install-math/quantity";
 *
 * const route = { outdoors: true, lowestOutdoorTemperature: degC(5), aboveFinishedSpace: false, pumped: false };
 * drainCautions(route).map(({ code }) => code).join(); // => condensate.discharge,condensate.sweating,condensate.sunlight,safety.line-voltage,safety.work-at-height,safety.others-govern
 * ```
 */
export function drainCautions(route: DrainRoute = {}): readonly CondensateCaution[] {
  const {
    outdoors,
    lowestOutdoorTemperature: cold,
    aboveFinishedSpace,
    pumped,
  } = objectOf("route", route);
  for (const [name, given] of Object.entries({ outdoors, aboveFinishedSpace, pumped })) {
    if (given !== undefined) flagOf(`route.${name}`, given);
  }
  const freezes =
    cold === undefined ||
    isAtMost(siOf("route.lowestOutdoorTemperature", cold, "temperature"), 273.15);
  const found = [
    say("condensate.discharge"),
    say("condensate.sweating"),
    ...(outdoors === false ? [] : [say("condensate.sunlight")]),
    ...(outdoors === false || !freezes ? [] : [say("condensate.freezing")]),
    ...(aboveFinishedSpace === false ? [] : [say("condensate.overflow")]),
    ...(pumped === false ? [] : [say("condensate.pump-failure")]),
  ];
  return heed([...found.map((said) => caution("finding", said)), ...baseCautions()]);
}
