// Prints a figure in the reader's units, with no more decimals than the instrument deserves.
import type { Statement } from "hvac-install-math/assessment";
import * as q from "hvac-install-math/quantity";

/** Which units the reader thinks in. */
export type UnitSystem = "inch-pound" | "SI";

/** Unit and decimals per kind; a kind that is missing prints as it was entered. */
type Preferences = { readonly [K in q.Kind]?: readonly [unit: q.Unit<K>, decimals: number] };

const preferences: Record<UnitSystem, Preferences> = {
  "inch-pound": {
    temperature: [q.degF, 1],
    temperatureDifference: [q.deltaF, 1],
    gaugePressure: [q.psig, 1],
    absolutePressure: [q.psia, 2],
    pressureDifference: [q.psi, 2],
    length: [q.ft, 1],
    volume: [q.cuin, 0],
    mass: [q.oz, 1],
    massPerLength: [q.ozPerFt, 2],
  },
  SI: {
    temperature: [q.degC, 1],
    temperatureDifference: [q.deltaK, 1],
    gaugePressure: [q.kPag, 0],
    absolutePressure: [q.kPaa, 2],
    pressureDifference: [q.kPa, 1],
    length: [q.m, 2],
    volume: [q.liter, 2],
    mass: [q.g, 0],
    massPerLength: [q.gPerM, 1],
  },
};

/** Vacuum is read in microns and a leak in scientific notation, whatever the reader's system. */
const small = new Set<string>(["micron", "torr", "micron/min", "Pa/s"]);

/** A function that prints a figure for this reader. */
export function printerFor(system: UnitSystem): (value: q.AnyQuantity | number | string) => string {
  return (value) => {
    if (!q.isQuantity(value)) return `${value}`;
    if (value.kind === "throughput") return `${value.si.toExponential(1)} Pa·m³/s`;
    if (value.kind === "duration") return durationText(value);
    const preference = preferences[system][value.kind];
    if (!preference || small.has(value.unit.symbol)) return roughly(value);
    const [unit, decimals] = preference as unknown as [q.Unit<"length">, number];
    return (value as q.Quantity<"length">).toString(unit, decimals);
  };
}

/** Four digits in the unit in which it comes. */
function roughly(value: q.AnyQuantity): string {
  const { value: number, unit } = value.toJSON();
  return `${Number(number.toPrecision(4))} ${unit}`;
}

function durationText(value: q.Quantity<"duration">): string {
  const unit = value < q.minute(2) ? q.second : value < q.hour(2) ? q.minute : q.hour;
  return `${Number(value.in(unit).toPrecision(3))} ${unit.symbol}`;
}

/** A figure that a verdict may carry in its statements. */
export type Figure = Statement["values"][string];
