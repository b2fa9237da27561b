// What should the gauge show after the temperature changed, if nothing leaked?
// Follows Span et al. (2000) for nitrogen at constant charge; absolute pressure, absolute temperature.
// Does not cover other gases, or walls that give under pressure (2e-5 of the pressure for copper tube).
import { objectOf, requireKind } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { kPaa, kPag } from "../quantity/units/pressure.ts";
import { expected } from "./drop.ts";
import {
  absoluteSi,
  atmosphereSi,
  betaOf,
  type TestPressure,
  type TestTemperature,
  type TestVolume,
  temperaturesSi,
  volumesSi,
  type Wall,
} from "./reading.ts";

/** What {@link expectedTestPressure} needs for any sensor. */
export interface TemperatureChange {
  /** Gas temperature at the first reading; one per zone where zones differ. */
  readonly temperature: TestTemperature;
  /** Gas temperature at the later reading. */
  readonly laterTemperature: TestTemperature;
  /** Inner volumes of the zones, needed when temperatures are given per zone; only their ratio counts. */
  readonly volume?: TestVolume | undefined;
  /** What the walls are made of, for their own expansion; `rigid` when left out. */
  readonly wall?: Wall | undefined;
}

/** A gauge reading with its atmosphere. */
export interface GaugeChange extends TemperatureChange {
  /** What the gauge shows first. */
  readonly pressure: Quantity<"gaugePressure">;
  /** Station pressure at the first reading. */
  readonly atmosphere: Quantity<"absolutePressure">;
  /** Station pressure at the later reading; the same when left out. A gauge with a sealed reference does not see it: leave it out. */
  readonly laterAtmosphere?: Quantity<"absolutePressure"> | undefined;
}

/** A reading of an absolute sensor. */
export interface AbsoluteChange extends TemperatureChange {
  /** What the sensor shows first, above vacuum. */
  readonly pressure: Quantity<"absolutePressure">;
}

/** A reading of either kind, with the atmosphere for the case that it is a gauge's. */
export interface EitherChange extends Omit<GaugeChange, "pressure"> {
  /** What the gauge or the sensor shows first. */
  readonly pressure: TestPressure;
}

/**
 * The pressure of tightly enclosed dry nitrogen after its temperature changed. At 500 psig and 30 °F of
 * cooling it is 2 psi below the ideal-gas answer, so that the ideal gas law fails a tight system.
 *
 * Pass in the pressure, the temperature then and the temperature now; the pressure to expect now comes back.
 *
 * Assumes that nothing leaked, that the temperatures are those of the gas, and a constant volume
 * unless `wall` is given: copper shrinks by 0.08 % on 30 °F, which is 0.4 psi at 500 psig.
 *
 * @param change - First `pressure` (up to 6 MPa absolute) and `temperature` and the
 * `laterTemperature` (−40 °C to 70 °C, `temperature`), each one value or one per zone; for a gauge also
 * the `atmosphere` (20 kPa to 120 kPa, `absolutePressure`).
 * @returns The pressure to expect, of the kind and in the unit of the first.
 * @throws {@link OutOfRangeError} beyond the range of the nitrogen equation.
 * @throws {@link InvalidInputError} for another kind, a pressure below vacuum, an atmosphere that no
 * site has, or temperatures per zone without as many volumes.
 *
 * Source: Span et al., J. Phys. Chem. Ref. Data 29, 1361 (2000), doi:10.1063/1.1349047; the gauge form
 * of UFGS 15217N, 3.2.6.4, with real gas in place of the ideal.
 *
 * @example
 * ```ts
 * import { expectedTestPressure } from "hvac-install-math/pressure-test";
 * import { degF, psig, standardAtmosphere } from "hvac-install-math/quantity";
 *
 * const expected = expectedTestPressure({
 *   pressure: psig(500),
 *   temperature: degF(95),
 *   laterTemperature: degF(65),
 *   atmosphere: standardAtmosphere,
 * });
 * expected.toString(psig, 2); // => 470.03 psig
 * ```
 */
export function expectedTestPressure(change: GaugeChange): Quantity<"gaugePressure">;
export function expectedTestPressure(change: AbsoluteChange): Quantity<"absolutePressure">;
export function expectedTestPressure(change: AbsoluteChange | EitherChange): TestPressure;
export function expectedTestPressure(change: AbsoluteChange | EitherChange): TestPressure {
  const {
    pressure,
    temperature,
    laterTemperature,
    volume,
    wall = "rigid",
  } = objectOf("change", change);
  requireKind("pressure", pressure);
  const isGauge = pressure.kind !== "absolutePressure";
  if (isGauge) requireKind("pressure", pressure, "gaugePressure");
  const gauge = change as GaugeChange;
  const before = isGauge ? atmosphereSi("atmosphere", gauge.atmosphere) : 0;
  const after =
    isGauge && gauge.laterAtmosphere !== undefined
      ? atmosphereSi("laterAtmosphere", gauge.laterAtmosphere)
      : before;
  const volumes = volumesSi(volume);
  const later = expected({
    p1: absoluteSi("pressure", pressure, before),
    T1: temperaturesSi("temperature", temperature, volumes),
    p2: 0,
    T2: temperaturesSi("laterTemperature", laterTemperature, volumes),
    volumes,
    beta: betaOf(wall),
  });
  const pascals = later - after;
  const { unit } = pressure;
  return isGauge
    ? kPag(pascals / 1e3).as(unit as typeof kPag)
    : kPaa(pascals / 1e3).as(unit as typeof kPaa);
}
