// Is this argument one that the curves can answer? Range checks in the caller's own units. Internal.
// Does not cover anything but refrigerant, temperature and pressure.

import { ambientRange } from "../../quantity/ambient-range.ts";
import { refuse, siOf } from "../../quantity/check.ts";
import { InvalidInputError, OutOfRangeError } from "../../quantity/errors.ts";
import type { Quantity, Unit } from "../../quantity/quantity.ts";
import { kPaa, psia } from "../../quantity/units/pressure.ts";
import { degC, degF } from "../../quantity/units/temperature.ts";
import type { Refrigerant } from "../refrigerant.ts";
import { chebyshev } from "./chebyshev.ts";
import { pressureAt, type Side } from "./saturation-curve.ts";
import { say } from "./say.ts";

/** A pressure that a gauge or an absolute transducer shows. */
export type ReadPressure = Quantity<"gaugePressure"> | Quantity<"absolutePressure">;

/** What the ends of a range may be missed by, K: rounding of units and of the inverse series. */
const slack = 1e-6;

/** The refrigerant, or an error where something else was passed. */
export function checked(refrigerant: Refrigerant): Refrigerant {
  if (refrigerant?.saturation?.bubble) return refrigerant;
  refuse("refrigerant", refrigerant, "a refrigerant of this module, such as R410A");
}

/** A temperature in K within the refrigerant's range. */
export function temperatureOf(
  refrigerant: Refrigerant,
  temperature: Quantity<"temperature">,
  argument = "temperature",
): number {
  const { range, designation } = checked(refrigerant);
  const T = temperature?.kind === "temperature" ? temperature.si : Number.NaN;
  if (typeof T === "number" && T > range.min.si - slack && T < range.max.si + slack) return T;
  const limits = {
    min: range.min.si,
    max: range.max.si,
    hint: say("refrigerants.range-of", { refrigerant: { verbatim: designation } }),
  };
  return siOf(argument, temperature, "temperature", limits, OutOfRangeError);
}

/** A pressure in Pa absolute; a gauge pressure needs the atmosphere. */
export function absoluteOf(
  pressure: ReadPressure,
  atmosphere: Quantity<"absolutePressure"> | undefined,
): number {
  const whole = typeof pressure?.si === "number" && pressure.unit !== undefined;
  const kind = whole ? pressure.kind : undefined;
  if (kind === "gaugePressure") return pressure.si + ambientOf(atmosphere);
  if (kind === "absolutePressure") return pressure.si;
  if (pressure?.kind === "gaugePressure") return siOf("pressure", pressure, "gaugePressure");
  return siOf("pressure", pressure, "absolutePressure");
}

function ambientOf(atmosphere: Quantity<"absolutePressure"> | undefined): number {
  const ambient = atmosphere?.kind === "absolutePressure" ? atmosphere.si : undefined;
  const { min, max } = ambientRange;
  if (typeof ambient === "number" && ambient >= min && ambient <= max) return ambient;
  if (atmosphere !== undefined) {
    return siOf("atmosphere", atmosphere, "absolutePressure", ambientRange);
  }
  throw new InvalidInputError({
    argument: "atmosphere",
    value: "undefined",
    allowed: "an absolutePressure",
    hint: say("refrigerants.gauge-needs-atmosphere"),
  });
}

/** Saturation temperature in K at a pressure that must lie within the refrigerant's range. */
export function saturationTemperatureOf(
  refrigerant: Refrigerant,
  side: Side,
  pressure: ReadPressure,
  atmosphere: Quantity<"absolutePressure"> | undefined,
): number {
  const { saturation, range, designation } = checked(refrigerant);
  const p = absoluteOf(pressure, atmosphere);
  const inverse = side === "bubble" ? saturation.bubbleInverse : saturation.dewInverse;
  const s = Math.sqrt(Math.log(saturation.pressure / p));
  if (s >= inverse.s[0] && s <= inverse.s[1]) {
    const T = chebyshev(inverse.terms, inverse.s, s);
    if (T > range.min.si - slack && T < range.max.si + slack) return T;
  }
  siOf<"absolutePressure">("pressure", pressure as never, pressure.kind as never); // no quantity at all, such as its JSON
  const ambient = p - pressure.si;
  throw outOfPressureRange(
    pressure,
    pressureAt(saturation, side, range.min.si) - ambient,
    pressureAt(saturation, side, range.max.si) - ambient,
    designation,
  );
}

function outOfPressureRange(
  pressure: ReadPressure,
  min: number,
  max: number,
  designation: string,
): OutOfRangeError {
  const unit = pressure.unit as Unit<"absolutePressure">;
  const rounded = (si: number) => Number((si / unit.scale).toPrecision(6));
  const shown = (si: number) => `${rounded(si)} ${unit.symbol}`;
  const limits = pressure.si < min ? (["min", min] as const) : (["max", max] as const);
  return new OutOfRangeError({
    argument: "pressure",
    value: shown(pressure.si),
    allowed: `at least ${shown(min)} and at most ${shown(max)}`,
    bound: {
      value: pressure as Quantity<"absolutePressure">,
      is: limits[0],
      limit: unit(rounded(limits[1])),
    },
    hint: say("refrigerants.range-of", { refrigerant: { verbatim: designation } }),
  });
}

/** psia for a caller who thinks in °F, kPaa otherwise. */
export function pressureUnitFor({ unit }: Quantity<"temperature">): Unit<"absolutePressure"> {
  return unit.symbol === "°F" ? psia : kPaa;
}

/** °F for a caller who thinks in psi, °C otherwise. */
export function temperatureUnitFor({ unit }: ReadPressure): Unit<"temperature"> {
  return unit.symbol === "psig" || unit.symbol === "psia" ? degF : degC;
}
