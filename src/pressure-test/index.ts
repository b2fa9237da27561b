/**
 * The nitrogen pressure test: what the gauge should show after the temperature changed, and what the
 * readings prove.
 *
 * @module pressure-test
 */
export {
  assessPressureTest,
  type PressureTest,
  type PressureTestSetup,
  type TwoReadingAssessment,
} from "./assess-pressure-test.ts";
export type { DropLimit, LeakLimit, PressureTestCriterion } from "./criterion.ts";
export type { UncertaintyPart } from "./drop.ts";
export {
  type AbsoluteChange,
  expectedTestPressure,
  type GaugeChange,
  type TemperatureChange,
} from "./expected-test-pressure.ts";
export type { GasThermometer, TestGauge, TestInstruments } from "./instruments.ts";
export type {
  PressureTestAssessment,
  PressureTestCause,
  UncertaintyShare,
} from "./judge.ts";
export type { TestPressure, TestReading, TestTemperature, TestVolume, Wall } from "./reading.ts";
