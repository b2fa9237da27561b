// Pressure and temperature of saturation, and densities, from the series of a refrigerant.
// A file of its own in the build, so that it is opened without the rest of refrigerants.
// Does not cover how a case is judged: the module does.
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
