/**
 * The nitrogen pressure test: what the gauge should show after the temperature changed, what the
 * readings prove, and how to plan the fill and the hold.
 *
 * Start with {@link expectedTestPressure} and {@link assessPressureTest}; a logger's file goes to
 * {@link assessPressureLog}.
 *
 * @module pressure-test
 */
export {
  assessPressureLog,
  type CorrectedPoint,
  type LogAssessment,
  type LogReading,
  type PressureTestLog,
} from "./assess-pressure-log.ts";
export {
  assessPressureTest,
  type PressureTest,
  type TwoReadingAssessment,
} from "./assess-pressure-test.ts";
export type { DropLimit, LeakLimit, PressureTestCriterion } from "./criterion.ts";

export {
  type AbsoluteChange,
  type EitherChange,
  expectedTestPressure,
  type GaugeChange,
  type TemperatureChange,
} from "./expected-test-pressure.ts";
export type { GasElsewhere } from "./gas-errors.ts";
export {
  type HoldRule,
  type HoldRuleAccepts,
  type HoldRuleName,
  type HoldRuleWord,
  holdRules,
  type RuleStanding,
} from "./hold-rules.ts";
export { type HoldPlan, type HoldTime, holdTime } from "./hold-time.ts";
export type { GasThermometer, TestGauge, TestInstruments } from "./instruments.ts";
export { type LeakGas, leakGas } from "./leak-gas.ts";
export type { MarkedLimit } from "./marked-limit.ts";
export { type NitrogenCylinder, type NitrogenNeed, nitrogenNeeded } from "./nitrogen-needed.ts";
export {
  type PressurizationPlan,
  pressurizationPlan,
  type Stage,
  type StagePattern,
} from "./pressurization-plan.ts";
export type { TestPressure, TestReading, TestTemperature, TestVolume, Wall } from "./reading.ts";
export { refrigerantEquivalent } from "./refrigerant-equivalent.ts";
export type { RefrigerantEquivalent, RefrigerantInService } from "./refrigerant-loss.ts";
export { type LeakingGas, type ScaledLeak, scaleLeak } from "./scale-leak.ts";
export type { PressureTestSetup } from "./setup.ts";
export type {
  PressureTestCause,
  PressureTestStatement,
  PressureTestStatements,
  PressureTestWord,
} from "./statements.ts";
export {
  compareTemperatureRules,
  type RuleComparison,
  type TemperatureRule,
} from "./temperature-rules.ts";
export type { TestRequirement } from "./test-requirement.ts";
export { type TubeRun, testVolume } from "./test-volume.ts";
export { massFlowOfThroughput, throughputOfDrop } from "./throughput.ts";
export type { UncertaintyPart } from "./uncertainty-part.ts";
export type { PressureTestAssessment, UncertaintyShare } from "./verdict.ts";
