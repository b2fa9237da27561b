/**
 * JSON in and out: strict codecs for records, inputs and results, and their JSON Schema.
 *
 * Start with {@link recordCodec}.
 *
 * @module wire
 */

export type { ArgumentsOf, InputOf, NamesFor } from "./arguments-of.ts";
export {
  areaFromRoomTableInput,
  assessRoomChargeInput,
  assessRoomChargeResult,
  chargeFromRoomTableInput,
  chargeThresholdsResult,
  minimumFloorAreaInput,
  minimumFloorAreaResult,
  roomChargeLimitInput,
  roomChargeLimitResult,
} from "./charge-limit.ts";
export {
  assessConcentrationInput,
  assessConcentrationResult,
  blendWarmingPotentialInput,
  carbonDioxideEquivalentInput,
  concentrationChargeLimitInput,
  concentrationChargeLimitResult,
  massConcentrationInput,
  minimumRoomVolumeInput,
  minimumRoomVolumeResult,
  refrigerantSafetyResult,
} from "./charge-limit-concentration.ts";
export {
  assessChargeByGaugeInput,
  assessChargeByGaugeResult,
  chargingMethodInput,
  chargingMethodResult,
  targetSuperheatInput,
  targetSuperheatResult,
} from "./charging-by-gauge.ts";
export {
  conductorResistanceInput,
  conduitImpedanceInput,
  conduitImpedanceResult,
  equipmentGroundingInput,
  equipmentGroundingResult,
  largestDeviceOnConductorInput,
  longestRunInput,
  minimumConductorInput,
  minimumConductorResult,
  usableAmpacityInput,
  usableAmpacityResult,
  voltageDropInput,
  voltageDropResult,
} from "./circuit-conductors.ts";
export {
  assessNameplateInput,
  assessNameplateResult,
  compressorProtectionInput,
  compressorProtectionResult,
  maximumOvercurrentProtectionInput,
  minimumCircuitAmpacityInput,
  nameplateFromPartsInput,
  nameplateFromPartsResult,
  tripBandInput,
  tripBandResult,
} from "./circuit-nameplate.ts";
export {
  breakerConnectionInput,
  breakerConnectionResult,
  circuitFromNameplateInput,
  circuitFromNameplateResult,
  compareSuppliesInput,
  compareSuppliesResult,
} from "./circuit-protection.ts";
export type { Codec } from "./codec.ts";
export {
  assessCondensatePumpInput,
  assessCondensatePumpResult,
  assessDrainSlopeInput,
  assessDrainSlopeResult,
  assessIndoorUnitPitchInput,
  assessIndoorUnitPitchResult,
  condensateTrapInput,
  condensateTrapResult,
  drainCautionsInput,
  drainCautionsResult,
  drainSizeInput,
  drainSizeResult,
  minimumFallInput,
  planDrainInput,
  planDrainResult,
  slopeOfInput,
  slopeOfResult,
} from "./condensate.ts";
export {
  condensateFromLoadInput,
  condensateFromLoadResult,
  condensateRateInput,
  condensateRateResult,
  condensateRuleOfThumbResult,
  humidityRatioInput,
} from "./condensate-rate.ts";
export {
  assessFlareConeInput,
  assessFlareConeResult,
  assessFlareDiameterInput,
  assessFlareDiameterResult,
  assessFlareWallInput,
  assessFlareWallResult,
  flareDiameterLimitsInput,
  flareDiameterLimitsResult,
  flareNutSizeInput,
} from "./flare-joint.ts";
export {
  assessFlareTorqueInput,
  assessFlareTorqueResult,
  assessFlareTurnInput,
  assessFlareTurnResult,
  flareThreadResult,
  flareTorqueResult,
  flareTurnResult,
  servicePortAdapterInput,
  servicePortAdapterResult,
  usualServicePortInput,
} from "./flare-nut.ts";
export type { JsonObject, JsonValue } from "./json-value.ts";
export { defaultLimits, type WireLimits } from "./limits.ts";
export {
  assessLineFitInput,
  assessLineFitResult,
  assessLineRunInput,
  assessLineRunResult,
  chooseStockLengthInput,
  chooseStockLengthResult,
} from "./line-set.ts";
export {
  additionalChargeInput,
  additionalChargeResult,
  assessRecoveryInput,
  assessRecoveryResult,
  liquidChargePlausibilityInput,
  liquidChargePlausibilityResult,
  multiSplitChargeInput,
  multiSplitChargeResult,
  rateForLiquidLineInput,
} from "./line-set-charge.ts";
export type { SubcoolingOnTheWire } from "./line-set-flow.ts";
export {
  assessLiquidVelocityInput,
  assessLiquidVelocityResult,
  assessVaporLineInput,
  assessVaporLineResult,
  frictionFactorInput,
  frictionLossInput,
  frictionLossResult,
  lineVelocityInput,
  liquidLineSubcoolingInput,
  liquidLineSubcoolingResult,
  oilEntrainmentVelocityInput,
  refrigerantMassFlowInput,
  staticHeadInput,
} from "./line-set-flow.ts";
export type { AnyTube, TwoTubes } from "./line-set-tubes.ts";
export {
  astmB280TubeInput,
  astmB280TubeResult,
  boreAreaInput,
  copperMassPerLengthInput,
  en12735TubeInput,
  en12735TubeResult,
  fullLineMassInput,
  fullLineRateInput,
  identifyLinesInput,
  identifyLinesResult,
  insideDiameterInput,
  insulatedDiameterInput,
  jisH3300TubeInput,
  jisH3300TubeResult,
  lineContentsInput,
  lineContentsResult,
  smallestSleeveInput,
  tubeVolumeInput,
} from "./line-set-tubes.ts";
export {
  assessGaugeSetInput,
  assessGaugeSetResult,
  assessServiceReadingInput,
  assessServiceReadingResult,
  expectedPressuresInput,
  expectedPressuresResult,
  servicePortsInput,
  servicePortsResult,
  usualPressuresInput,
  usualPressuresResult,
} from "./operating-check.ts";
export type { AbsoluteOptions, AskedTable, GaugeOptions } from "./pressure-temperature-table.ts";
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
export type {
  AtAbsolutePressure,
  AtLine,
  AtPressure,
  AtTemperature,
  JudgedLine,
  MeanCoil,
} from "./refrigerants.ts";
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
  assessSupplyVoltageInput,
  assessSupplyVoltageResult,
} from "./supply-voltage.ts";
export type { RangesOf } from "./supply-voltage-parts.ts";
export {
  assessSupplyWeekInput,
  assessSupplyWeekResult,
  currentUnbalanceInput,
  currentUnbalanceResult,
  nameplateVoltageRangeInput,
  nameplateVoltageRangeResult,
  resistanceHeatAtInput,
  resistanceHeatAtResult,
  supplySagInput,
  supplySagResult,
  supplyVoltageRangesInput,
  supplyVoltageRangesResult,
  voltageLogStatisticsInput,
  voltageLogStatisticsResult,
  voltageMonitorSettingsInput,
  voltageMonitorSettingsResult,
  voltageUnbalanceInput,
  voltageUnbalanceResult,
} from "./supply-voltage-parts.ts";
export {
  assessVacuumDecayInput,
  assessVacuumDecayResult,
  createDecayMonitorInput,
} from "./vacuum-decay.ts";
