/**
 * Saturation of the common refrigerants at the accuracy of their published equations of state, in a
 * kilobyte each: pressure from temperature and back, densities, superheat and subcooling with a verdict,
 * glide, and tables.
 *
 * @module refrigerants
 */

export { type SaturationCurve, saturationArray } from "./bulk.ts";
export {
  R22,
  R32,
  R134a,
  R290,
  R404A,
  R407A,
  R407C,
  R407F,
  R410A,
  R448A,
  R449A,
  R450A,
  R452A,
  R452B,
  R454A,
  R454B,
  R454C,
  R507A,
  R513A,
  R600a,
  R717,
  R744,
  R1233zdE,
  R1234yf,
  R1234zeE,
  refrigerants,
} from "./data/index.ts";
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
