// What is the saturation of a refrigerant? Pressures, temperatures and densities, opened without any data.
// Follows the series of each refrigerant. Does not cover superheat, subcooling and glide.
export {
  absoluteOf,
  checked,
  type ReadPressure,
  saturationTemperatureOf,
  temperatureUnitFor,
} from "./arguments.ts";
export { packed, sumOf } from "./chebyshev.ts";
export {
  type AnyTable,
  type PressureTemperatureTable,
  pressureTemperatureTable,
  type TableKind,
  type TableRow,
  type TableSpan,
  tableAsCsv,
  tableAsMarkdown,
} from "./pressure-temperature-table.ts";
export { saturatedLiquidDensity, saturatedVaporDensity } from "./saturated-density.ts";
export { pressureAt, type Side, temperatureAt } from "./saturation-curve.ts";
export { bubblePressure, dewPressure } from "./saturation-pressure.ts";
export { bubbleTemperature, dewTemperature } from "./saturation-temperature.ts";
export { say } from "./say.ts";
