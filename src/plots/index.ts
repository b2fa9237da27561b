/**
 * Curves as SVG text, without a browser: the pressure hold, the vacuum decay, the saturation line. Each
 * is one self-contained `<svg>` element that scales to its room, follows the light or dark page around
 * it, and says its result in words.
 *
 * @module plots
 */
export type { PlotColors, PlotOptions } from "./plot-options.ts";
export { type PressureTestPlotOptions, pressureTestPlot } from "./pressure-test-plot.ts";
export { type RecordPlot, recordPlots } from "./record-plots.ts";
export { type SaturationPlotOptions, saturationPlot } from "./saturation-plot.ts";
export { type VacuumDecayPlotOptions, vacuumDecayPlot } from "./vacuum-decay-plot.ts";
