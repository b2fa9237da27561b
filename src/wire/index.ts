/**
 * JSON in and out: strict codecs for records, inputs and results, and their JSON Schema.
 *
 * Start with {@link recordCodec}.
 *
 * @module wire
 */
export type { Codec } from "./codec.ts";
export type { JsonObject, JsonValue } from "./json-value.ts";
export { defaultLimits, type WireLimits } from "./limits.ts";
export {
  pressureTemperatureTableInput,
  pressureTemperatureTableResult,
} from "./pressure-temperature-table.ts";
export {
  assessPressureLogInput,
  assessPressureLogResult,
  assessPressureTestInput,
  assessPressureTestResult,
  expectedTestPressureInput,
} from "./pressure-test.ts";
export {
  compareTemperatureRulesInput,
  compareTemperatureRulesResult,
  massFlowOfThroughputInput,
  refrigerantEquivalentInput,
  refrigerantEquivalentResult,
  scaleLeakInput,
  scaleLeakResult,
  throughputOfDropInput,
} from "./pressure-test-leak.ts";
export {
  holdTimeInput,
  holdTimeResult,
  nitrogenNeededInput,
  nitrogenNeededResult,
  pressurizationPlanInput,
  pressurizationPlanResult,
  testVolumeInput,
} from "./pressure-test-plan.ts";
export {
  compareLineAndSaturatingInput,
  compareLineAndSaturatingResult,
  effectivePumpingSpeedInput,
  pumpDownTimeInput,
  residualGasFractionInput,
  tubeConductanceInput,
  tubeConductanceResult,
  vacuumRiseOfLeakInput,
  waterVapourMassInput,
} from "./pump-down.ts";
export { recordCodec } from "./record-codec.ts";
export {
  assessSubcoolingInput,
  assessSubcoolingResult,
  assessSuperheatInput,
  assessSuperheatResult,
  bubblePressureInput,
  bubbleTemperatureInput,
  dewPressureInput,
  dewTemperatureInput,
  meanCoilTemperatureInput,
  saturatedLiquidDensityInput,
  saturatedVaporDensityInput,
  subcoolingInput,
  superheatInput,
  temperatureGlideInput,
} from "./refrigerants.ts";
export {
  assessVacuumDecayInput,
  assessVacuumDecayResult,
  createDecayMonitorInput,
} from "./vacuum-decay.ts";
