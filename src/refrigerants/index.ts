/**
 * Saturation of the common refrigerants at the accuracy of their published equations of state, in a
 * kilobyte each: pressure from temperature and back, densities, superheat and subcooling with a verdict,
 * glide, and tables.
 *
 * @module refrigerants
 */

export { type SaturationCurve, saturationArray } from "./bulk.ts";
export * from "./data/index.ts";
export { type CoilReading, meanCoilTemperature, temperatureGlide } from "./glide.ts";
export { assessSubcooling, assessSuperheat } from "./line-assessment.ts";
export type { LineAssessment, LineAssessmentInput } from "./line-assessment-types.ts";
export { type LineReading, subcooling, superheat } from "./line-reading.ts";
export type {
  InverseSeries,
  Refrigerant,
  RefrigerantComponent,
  SaturationSeries,
  Standing,
  WarmingPotential,
} from "./refrigerant.ts";
export { refrigerantByDesignation } from "./refrigerant-by-designation.ts";
export {
  type AnyTable,
  bubblePressure,
  bubbleTemperature,
  dewPressure,
  dewTemperature,
  type PressureTemperatureTable,
  pressureTemperatureTable,
  type ReadPressure,
  saturatedLiquidDensity,
  saturatedVaporDensity,
  type TableKind,
  type TableRow,
  type TableSpan,
  tableAsCsv,
  tableAsMarkdown,
} from "./saturation/index.ts";
export type {
  LineFigure,
  LineProbe,
  RefrigerantsStatement,
  RefrigerantsStatements,
  RefrigerantsWord,
} from "./statements.ts";
export { type WarmingBasis, warmingBases, warmingPotentials } from "./warming-potentials.ts";
