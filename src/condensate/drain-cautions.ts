// What goes wrong with drains, and who gets hurt? Cautions by where the drain runs.
// Follows IMC 307.2 for discharge and overflow; the rest is common practice, no source.
// Does not cover what local code adds.
import { type Caution, statement } from "../assessment/assessment.ts";
import { flagOf, objectOf, siOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";

/**
 * Where a drain runs. What is left out counts as possible.
 *
 * Source: none; the library's own type.
 */
export interface DrainRoute {
  /** Whether part of it is outdoors. */
  readonly outdoors?: boolean;
  /** Coldest outdoor temperature to be expected. */
  readonly lowestOutdoorTemperature?: Quantity<"temperature">;
  /** Whether the unit hangs above finished space. */
  readonly aboveFinishedSpace?: boolean;
  /** Whether a pump lifts the water. */
  readonly pumped?: boolean;
}

/** What every verdict of this module carries. */
export const baseCautions: readonly Caution[] = [
  /* @__PURE__ */ statement(
    "manual-decides",
    "The unit's manual, local code and licensed practice override this.",
  ),
  /* @__PURE__ */ statement("electricity", "Isolate the unit and any pump before reaching in."),
  /* @__PURE__ */ statement("height", "Work at height from a stable platform."),
];

const uv: Caution = /* @__PURE__ */ statement(
  "ultraviolet",
  "Sunlight crumbles bare hose and foam: cover or paint.",
);
const freezing: Caution = /* @__PURE__ */ statement(
  "freezing",
  "It can freeze and back up: short, steep, no trap, insulated or heated.",
);
const overflow: Caution = /* @__PURE__ */ statement(
  "overflow",
  "Above finished space: pan, second drain or level switch.",
);
const pump: Caution = /* @__PURE__ */ statement(
  "pump-failure",
  "Let the pump's level switch stop the unit.",
);
const always: readonly Caution[] = [
  /* @__PURE__ */ statement(
    "discharge",
    "Not onto public ways, to a sewer by indirect waste only, hose end above water.",
  ),
  /* @__PURE__ */ statement("sweating", "Insulate indoor drains that sweat."),
];

/**
 * What to heed about a drain where it runs: ultraviolet light, freezing, overflow, discharge, sweating,
 * mains and height.
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
 * drainCautions(route).map(({ code }) => code).join(); // => manual-decides,electricity,height,discharge,sweating,ultraviolet
 * ```
 */
export function drainCautions(route: DrainRoute = {}): readonly Caution[] {
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
    cold === undefined || siOf("route.lowestOutdoorTemperature", cold, "temperature") <= 273.15;
  return [
    ...baseCautions,
    ...always,
    ...(outdoors === false ? [] : freezes ? [uv, freezing] : [uv]),
    ...(aboveFinishedSpace === false ? [] : [overflow]),
    ...(pumped === false ? [] : [pump]),
  ];
}
