// Which rows does a printed chart need? Every 2 °F and every 1 °C of what installers meet.
// Computed by pressureTemperatureTable for the U.S. Standard Atmosphere.
// Does not cover the words around the tables.
import {
  standardAtmosphere as atmosphere,
  degC,
  degF,
  deltaC,
  deltaF,
  type Quantity,
} from "hvac-install-math/quantity";
import {
  type PressureTemperatureTable,
  pressureTemperatureTable,
  type Refrigerant,
} from "hvac-install-math/refrigerants";
import { table } from "./page.ts";

/** What installers meet, where the refrigerant reaches it. */
const span = { inchPound: { from: -40, to: 150, step: 2 }, si: { from: -40, to: 66, step: 1 } };

/** Whether the table needs two columns: in a blend bubble and dew differ, be it ever so little. */
export function hasGlide({ composition }: Refrigerant): boolean {
  return composition.length > 1;
}

/** The table in °F and psi, and the one in °C and kPa, as Markdown. */
export function chartTables(refrigerant: Refrigerant): [inchPound: string, si: string] {
  const { max } = refrigerant.range;
  const last = (wanted: number, limit: number, step: number) =>
    Math.min(wanted, Math.floor(limit / step) * step);
  const { inchPound, si } = span;
  return [
    render(
      refrigerant,
      pressureTemperatureTable(refrigerant, {
        from: degF(inchPound.from),
        to: degF(last(inchPound.to, max.in(degF), inchPound.step)),
        step: deltaF(inchPound.step),
        atmosphere,
      }),
      1,
    ),
    render(
      refrigerant,
      pressureTemperatureTable(refrigerant, {
        from: degC(si.from),
        to: degC(last(si.to, max.in(degC), si.step)),
        step: deltaC(si.step),
        atmosphere,
      }),
      0,
    ),
  ];
}

function render(
  refrigerant: Refrigerant,
  { rows, temperatureUnit, pressureUnit }: PressureTemperatureTable<"gaugePressure">,
  decimals: number,
): string {
  const glide = hasGlide(refrigerant);
  const { symbol } = pressureUnit;
  const text = (p: Quantity<"gaugePressure">) =>
    p
      .in(pressureUnit)
      .toFixed(decimals)
      .replace("-", "−")
      .replace(/^−0(\.0)?$/, "0$1");
  const head = glide ? [`bubble, ${symbol}`, `dew, ${symbol}`] : [`saturation, ${symbol}`];
  return table(
    [temperatureUnit.symbol, ...head],
    rows.map(({ temperature, bubble, dew }) => [
      String(Math.round(temperature.in(temperatureUnit))).replace("-", "−"),
      ...(glide ? [text(bubble), text(dew)] : [text(bubble)]),
    ]),
    ["right", "right", "right"],
  );
}
