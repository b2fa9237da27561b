/**
 * Pictures as SVG text, without a browser: the pressure hold, the vacuum decay, the saturation line, and bars for
 * supply and room. Each is one self-contained `<svg>` element that scales to its room, follows the light or dark page
 * around it, and says its result in words, in the language and the units of its reader.
 *
 * @module plots
 */

export type { PlotColors, PlotOptions } from "./plot-options.ts";
export { type PressureTestPlotOptions, pressureTestPlot } from "./pressure-test-plot.ts";
export { type RecordPlot, recordPlots } from "./record-plots.ts";
export { roomChargePlot } from "./room-charge-plot.ts";
export { type SaturationPlotOptions, saturationPlot } from "./saturation-plot.ts";
export type {
  PlotLanguage,
  PlotStatement,
  PlotStatements,
  PlotWord,
} from "./statements.ts";
export { supplyVoltagePlot } from "./supply-voltage-plot.ts";
export { type VacuumDecayPlotOptions, vacuumDecayPlot } from "./vacuum-decay-plot.ts";
