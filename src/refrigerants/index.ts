/**
 * Saturation of the common refrigerants at the accuracy of their published equations of state, in a
 * kilobyte each: pressure from temperature and back, densities, superheat and subcooling with a verdict,
 * glide, and tables.
 *
 * @module refrigerants
 */
export type { ReadPressure } from "./arguments.ts";
export { type SaturationCurve, saturationArray } from "./bulk.ts";
export { R22 } from "./data/r22.ts";
export { R32 } from "./data/r32.ts";
export { R134a } from "./data/r134a.ts";
export { R290 } from "./data/r290.ts";
export { R404A } from "./data/r404a.ts";
export { R407A } from "./data/r407a.ts";
export { R407C } from "./data/r407c.ts";
export { R407F } from "./data/r407f.ts";
export { R410A } from "./data/r410a.ts";
export { R448A } from "./data/r448a.ts";
export { R449A } from "./data/r449a.ts";
export { R450A } from "./data/r450a.ts";
export { R452A } from "./data/r452a.ts";
export { R452B } from "./data/r452b.ts";
export { R454A } from "./data/r454a.ts";
export { R454B } from "./data/r454b.ts";
export { R454C } from "./data/r454c.ts";
export { R507A } from "./data/r507a.ts";
export { R513A } from "./data/r513a.ts";
export { R600a } from "./data/r600a.ts";
export { R717 } from "./data/r717.ts";
export { R744 } from "./data/r744.ts";
export { R1233zdE } from "./data/r1233zde.ts";
export { R1234yf } from "./data/r1234yf.ts";
export { R1234zeE } from "./data/r1234zee.ts";
export { type CoilReading, meanCoilTemperature, temperatureGlide } from "./glide.ts";
export { assessSubcooling, assessSuperheat } from "./line-assessment.ts";
export type { LineAssessment, LineAssessmentInput } from "./line-assessment-types.ts";
export { type LineReading, subcooling, superheat } from "./line-reading.ts";
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
export type {
  InverseSeries,
  Refrigerant,
  RefrigerantComponent,
  SaturationSeries,
  Standing,
  WarmingPotential,
} from "./refrigerant.ts";
export { refrigerantByDesignation, refrigerants } from "./refrigerant-by-designation.ts";
export { saturatedLiquidDensity, saturatedVaporDensity } from "./saturated-density.ts";
export { bubblePressure, dewPressure } from "./saturation-pressure.ts";
export { bubbleTemperature, dewTemperature } from "./saturation-temperature.ts";
export type {
  LineFigure,
  LineProbe,
  RefrigerantsStatement,
  RefrigerantsStatements,
  RefrigerantsWord,
} from "./statements.ts";
export { type WarmingBasis, warmingBases, warmingPotentials } from "./warming-potentials.ts";
