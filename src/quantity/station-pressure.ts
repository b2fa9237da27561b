// What does the barometer show here, when the weather report gives the pressure at sea level?
// Follows WMO-No. 8, Part I, Chapter 3 (pressure reduced to mean sea level) and the altimeter setting of
// the standard atmosphere. Does not cover a national reduction by tables: its difference is in the uncertainty.

import { objectOf, oneOf, siOf } from "./check.ts";
import { OutOfRangeError } from "./errors.ts";
import { quantityHint } from "./hints.ts";
import { Quantity } from "./quantity.ts";

/**
 * A sea-level pressure as a weather report gives it, and where it is needed.
 *
 * Source: WMO-No. 8, Part I, Chapter 3.
 */
export interface WeatherReport {
  /** The reported `absolutePressure` at sea level, 850 to 1100 hPa, such as 30.05 inHg or 1017 hPa. */
  readonly seaLevelPressure: Quantity<"absolutePressure">;
  /** `length` of the site above sea level, −500 m to 5500 m. */
  readonly altitude: Quantity<"length">;
  /**
   * How the report was reduced to sea level: as an altimeter setting (aviation reports; QNH), which assumes
   * the standard atmosphere, or to mean sea level (weather maps and services; SLP, QFF), which takes the
   * temperature. Left out where the report does not say: both are possible then.
   */
  readonly reduction?: "altimeter-setting" | "mean-sea-level" | undefined;
  /** `temperature` of the air in the shade, −60 to 60 °C, best as a mean of now and twelve hours ago. */
  readonly temperature?: Quantity<"temperature"> | undefined;
  /** Limits of error of the altitude, 0 to 500 m; ±10 m when left out. */
  readonly altitudeAccuracy?: Quantity<"length"> | undefined;
}

/** The pressure at a site, from a weather report. Source: see {@link stationPressure}. */
export interface StationPressure {
  /** The pressure of the atmosphere at the site, in the unit of the report. */
  readonly pressure: Quantity<"absolutePressure">;
  /** Its expanded uncertainty, k = 2, about 95 %. */
  readonly expandedUncertainty: Quantity<"pressureDifference">;
}

// Common practice, no source: limits of error, each taken as a rectangular distribution.
const reportLimit = 100; // Pa: rounded to 1 hPa, an hour old, from a station some 30 km away
const cockpitLimit = 30; // Pa: some altimeter settings are for a cockpit 3 m above the runway
const altitudeLimit = 10; // m: a map or a phone
const columnLimit = 10; // K: mean temperature of the air column that a service assumed, from the air's
const seasonLimit = 25; // K: the air's own temperature, when only the altitude is known

/**
 * The pressure of the atmosphere at a site from the sea-level pressure of a weather report, with its
 * uncertainty. The pressure that a gauge on site is referenced to is this one, never the reported one.
 *
 * An altimeter setting is exact but for rounding and distance. A mean sea-level pressure depends on the
 * temperature that the service assumed for a column of air that is not there: on a plateau it is uncertain
 * by several hPa, and by more where no temperature is given. Where it is not known which of the two a report
 * holds, the answer lies between them and its uncertainty spans both. A barometer on site is better.
 *
 * @param report - The reported pressure, the altitude, and what else is known.
 * @returns Pressure and expanded uncertainty (k = 2).
 * @throws {@link OutOfRangeError} outside the stated ranges, such as a pressure that no weather has at sea
 * level because it is the station's own.
 * @throws {@link InvalidInputError} when an argument is of another kind.
 *
 * Source: altimeter setting: U.S. Standard Atmosphere, 1976, equation 33a, solved for the pressure at the
 * site. Mean sea level: WMO-No. 8 (2018), Part I, Chapter 3, without its term for the humidity (from
 * memory). Uncertainty: JCGM 100:2008, 4.3.7, 5.1.2 and 6.2; its limits are common practice, no source.
 *
 * @example
 * ```ts
 * import { degF, ft, inHgAbsolute, stationPressure } from "hvac-install-math/quantity";
 *
 * const report = { seaLevelPressure: inHgAbsolute(30.05), altitude: ft(5280) };
 * const airport = stationPressure({ ...report, reduction: "altimeter-setting" });
 * airport.pressure.toString(undefined, 2); // => 24.75 inHg abs
 * airport.expandedUncertainty.toString(undefined, 2); // => 0.05 inHg
 *
 * const map = stationPressure({ ...report, reduction: "mean-sea-level", temperature: degF(90) });
 * map.expandedUncertainty.toString(undefined, 2); // => 0.17 inHg
 * ```
 */
export function stationPressure(report: WeatherReport): StationPressure {
  objectOf("report", report);
  const { seaLevelPressure, altitude, reduction, temperature, altitudeAccuracy } = report;
  const p0 = siOf(
    "seaLevelPressure",
    seaLevelPressure,
    "absolutePressure",
    { min: 85_000, max: 110_000, hint: quantityHint("quantity.station-pressure-as-is") },
    OutOfRangeError,
  );
  const H = siOf("altitude", altitude, "length", { min: -500, max: 5500 }, OutOfRangeError);
  if (reduction !== undefined) {
    oneOf("reduction", reduction, ["altimeter-setting", "mean-sea-level"]);
  }
  const T =
    temperature === undefined
      ? 288.15 - lapse * H
      : siOf("temperature", temperature, "temperature", { min: 213.15, max: 333.15 });
  const limitH =
    altitudeAccuracy === undefined
      ? altitudeLimit
      : siOf("altitudeAccuracy", altitudeAccuracy, "length", { min: 0, max: 500 });

  const setting = fromAltimeterSetting(p0, H);
  const map = fromMeanSeaLevel(p0, H, T);
  const limits = [reportLimit, (fromAltimeterSetting(p0, H + 1) - setting) * limitH];
  if (reduction !== "mean-sea-level") limits.push(cockpitLimit);
  if (reduction !== "altimeter-setting") {
    const limitT = columnLimit + (temperature === undefined ? seasonLimit : 0);
    limits.push(fromMeanSeaLevel(p0, H, T + limitT) - map);
  }
  if (reduction === undefined) limits.push((setting - map) / 2);
  const p = { "altimeter-setting": setting, "mean-sea-level": map, either: (setting + map) / 2 };
  const variance = limits.reduce((sum, limit) => sum + (limit * limit) / 3, 0);
  const { unit } = seaLevelPressure;
  return Object.freeze({
    pressure: new Quantity(p[reduction ?? "either"], unit),
    expandedUncertainty: new Quantity(2 * Math.sqrt(variance), unit.difference),
  });
}

const lapse = 0.0065; // K/m, U.S. Standard Atmosphere, 1976, table 4, layer 0; WMO-No. 8, Chapter 3
const g = 9.80665; // m/s²

/** Equation 33a for the site and for sea level, with the same pressure altitude added to both. */
function fromAltimeterSetting(p0: number, H: number): number {
  const n = (8.31432 * lapse) / (g * 0.0289644); // R* L / (g0' M0)
  return (p0 ** n - ((101_325 ** n * lapse) / 288.15) * H) ** (1 / n);
}

/** WMO-No. 8, Chapter 3: the column has the mean temperature halfway down to sea level. */
function fromMeanSeaLevel(p0: number, H: number, T: number): number {
  const R = 287.05; // J/(kg K), dry air
  return p0 * Math.exp((-g * H) / (R * (T + (lapse * H) / 2)));
}
