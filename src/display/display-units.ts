// In which unit and with how many digits is a quantity shown? The table by kind and system.
// Follows the reading of common field instruments, common practice, no source.
// Does not cover feet and inches, pounds and ounces, hours and minutes: see format-quantity.ts.
import { oneOf } from "../quantity/check.ts";
import type { Kind } from "../quantity/kinds.ts";
import { type Later, later } from "../quantity/later.ts";
import type { Unit } from "../quantity/quantity.ts";
import * as u from "../quantity/units/index.ts";

/**
 * The customary system of the trade in North America, or the SI with the units used beside it.
 *
 * Source: NIST SP 811 (2008) for both names.
 */
export type UnitSystem = "inch-pound" | "SI";

/** How one unit is shown. */
export interface Display<K extends Kind> {
  readonly unit: Unit<K>;
  /** Decimals of a reading in this unit. */
  readonly decimals: number;
  /** Significant digits that a small value keeps by taking more decimals; 0 for none. */
  readonly digits: number;
  /** Smallest magnitude in SI from which this unit is chosen. */
  readonly from: number;
}

const show = <K extends Kind>(
  unit: Unit<K>,
  decimals: number,
  digits = 0,
  from = 0,
): Display<K> => ({
  unit,
  decimals,
  digits,
  from,
});

type DisplayTable = { readonly [K in Kind]: Readonly<Record<UnitSystem, readonly Display<K>[]>> };

/** The same in both systems. */
function both<K extends Kind>(...rows: Display<K>[]): Record<UnitSystem, Display<K>[]> {
  return { "inch-pound": rows, SI: rows };
}

/**
 * Per kind and system: the unit that was entered when it is listed, otherwise that with the largest `from`
 * that is reached. The first row is also the unit of a product.
 */
export const displayUnits: Later<DisplayTable> = /* @__PURE__ */ later(() => ({
  ...readings(),
  ...amounts(),
  ...rates(),
}));

/**
 * The unit in which a kind of quantity is shown when nothing else speaks for another: for the label of a
 * box, or as the `defaultUnit` of `parseQuantity`.
 *
 * @param kind - Kind of the quantity.
 * @param system - Inch-pound or SI.
 * @returns The unit.
 * @throws {@link InvalidInputError} when the kind or the system is none.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { usualUnit } from "hvac-install-math/display";
 *
 * usualUnit("gaugePressure", "inch-pound").symbol; // => psig
 * usualUnit("torque", "SI").symbol; // => N·m
 * ```
 */
export function usualUnit<K extends Kind>(kind: K, system: UnitSystem): Unit<K> {
  oneOf("kind", kind, Object.keys(displayUnits()) as Kind[]);
  oneOf("system", system, ["inch-pound", "SI"]);
  return (displayUnits()[kind][system][0] as Display<K>).unit;
}

/** What a thermometer and a gauge show. */
function readings() {
  return {
    temperature: { "inch-pound": [show(u.degF, 1)], SI: [show(u.degC, 1), show(u.kelvin, 2)] },
    temperatureDifference: {
      "inch-pound": [show(u.deltaF, 1, 1)],
      SI: [show(u.deltaK, 1, 1), show(u.deltaC, 1, 1)],
    },
    gaugePressure: {
      "inch-pound": [show(u.psig, 1), show(u.inHgGauge, 1)],
      SI: [show(u.kPag, 0), show(u.barg, 2), show(u.MPag, 3)],
    },
    // Vacuum below 25 000 micron (3.3 kPa) is read in whole microns, in SI in pascals. In any unit two digits
    // stay, so that a vacuum never reads as none: 0.01 psia is 517 micron.
    absolutePressure: {
      "inch-pound": [
        show(u.psia, 1, 2, 25_000 * u.micron.scale),
        show(u.micron, 0, 1),
        show(u.inHgAbsolute, 2, 2),
        show(u.torr, 2, 2),
      ],
      SI: [
        show(u.kPaa, 1, 2, 25_000 * u.micron.scale),
        show(u.pascalAbsolute, 1, 2),
        show(u.bara, 3, 2),
        show(u.mbara, 1, 2),
        show(u.MPaa, 4, 2),
      ],
    },
    pressureDifference: {
      "inch-pound": [
        show(u.psi, 1, 2),
        show(u.inchWater, 2, 2),
        show(u.inHg, 2, 2),
        show(u.micronDifference, 0, 2),
        show(u.torrDifference, 2, 2),
      ],
      SI: [
        show(u.kPa, 1, 2, 1000),
        show(u.pascal, 0, 2),
        show(u.bar, 3, 2),
        show(u.mbar, 1, 2),
        show(u.MPa, 4, 2),
      ],
    },
  };
}

/** Sizes, masses and times. */
function amounts() {
  return {
    length: {
      "inch-pound": [show(u.ft, 2, 2, u.ft.scale), show(u.inch, 3, 2)],
      SI: [show(u.m, 2, 2, 1), show(u.mm, 1, 3), show(u.cm, 1, 2)],
    },
    area: {
      "inch-pound": [show(u.sqft, 0, 4, 0.09), show(u.sqin, 0, 4)],
      SI: [show(u.m2, 0, 4, 0.01), show(u.mm2, 0, 4)],
    },
    volume: {
      "inch-pound": [show(u.cuft, 0, 4, 0.005), show(u.cuin, 0, 4), show(u.gallon, 0, 4)],
      SI: [show(u.m3, 0, 4, 1), show(u.liter, 0, 4, 1e-3), show(u.mL, 0, 4)],
    },
    mass: {
      "inch-pound": [show(u.oz, 1, 2), show(u.lb, 2, 2, 2 * u.lb.scale)],
      SI: [show(u.kg, 3, 2, 1), show(u.g, 0, 3), show(u.mg, 0, 3)],
    },
    massPerLength: {
      "inch-pound": [show(u.ozPerFt, 2, 3), show(u.lbPerFt, 3, 3)],
      SI: [show(u.gPerM, 1, 3), show(u.kgPerM, 3, 3)],
    },
    density: {
      "inch-pound": [show(u.lbPerCuft, 1, 3, 1), show(u.lbPer1000Cuft, 1, 3)],
      SI: [show(u.kgPerM3, 1, 3, 1), show(u.gPerM3, 0, 3)],
    },
    duration: both(
      show(u.second, 0, 2),
      show(u.minute, 1, 2, u.minute.scale),
      show(u.hour, 2, 2, u.hour.scale),
      show(u.day, 2, 2),
    ),
  };
}

/** What goes by time or angle, electricity and energy. */
function rates() {
  return {
    speed: { "inch-pound": [show(u.ftPerMinute, 0, 2)], SI: [show(u.mPerSecond, 2, 2)] },
    angle: both(show(u.degreeAngle, 1, 2), show(u.radian, 3, 3)),
    ratio: both(show(u.percent, 1, 2, 1e-3), show(u.ppm, 0, 3), show(u.fraction, 3, 3)),
    massFlow: {
      "inch-pound": [
        show(u.lbPerHour, 1, 3, 1e-6),
        show(u.gPerYear, 0, 2),
        show(u.ozPerYear, 2, 2),
      ],
      SI: [show(u.kgPerHour, 1, 3, 1e-6), show(u.gPerYear, 0, 2), show(u.kgPerSecond, 3, 3)],
    },
    volumeFlow: {
      "inch-pound": [show(u.cfm, 0, 3, 4e-4), show(u.gallonPerHour, 1, 3)],
      SI: [
        show(u.m3PerHour, 0, 3, 2e-4),
        show(u.literPerHour, 1, 3),
        show(u.literPerSecond, 1, 3),
        show(u.m3PerSecond, 3, 3),
      ],
    },
    throughput: {
      "inch-pound": [show(u.atmCm3PerSecond, 0, 3), show(u.micronLiterPerSecond, 0, 3)],
      SI: [show(u.paM3PerS, 0, 3), show(u.mbarLiterPerSecond, 0, 3)],
    },
    pressureRate: {
      "inch-pound": [show(u.psiPerHour, 2, 3), show(u.micronPerMinute, 0, 2)],
      SI: [show(u.pascalPerSecond, 3, 3), show(u.kPaPerHour, 2, 3)],
    },
    voltage: both(show(u.volt, 1, 2)),
    current: both(show(u.ampere, 1, 2)),
    resistance: both(show(u.ohm, 1, 3)),
    resistancePerLength: { "inch-pound": [show(u.ohmPerKft, 3, 3)], SI: [show(u.ohmPerKm, 2, 3)] },
    power: {
      "inch-pound": [
        show(u.btuPerHour, 0, 3),
        show(u.tonRefrigeration, 2, 2),
        show(u.watt, 0, 3),
        show(u.kW, 2, 3),
      ],
      SI: [show(u.kW, 2, 2, 1000), show(u.watt, 0, 3)],
    },
    torque: { "inch-pound": [show(u.ftLb, 1, 2)], SI: [show(u.newtonMeter, 1, 2)] },
    specificEnergy: { "inch-pound": [show(u.btuPerLb, 1, 3)], SI: [show(u.kJPerKg, 1, 3)] },
    specificHeat: { "inch-pound": [show(u.btuPerLbF, 3, 3)], SI: [show(u.kJPerKgK, 3, 3)] },
  };
}
