/**
 * The supply voltage: readings against nameplate, ANSI C84.1 or IEC 60038 and EN 50160, sag under load,
 * unbalance of three phases, and what to set a voltage monitor to.
 *
 * @module supply-voltage
 */
export { ansiC84 } from "./ansi-c84-1.ts";
export { assessSupplyVoltage } from "./assess-supply-voltage.ts";
export { assessSupplyWeek, type SupplyWeekAssessment } from "./assess-supply-week.ts";
export { iec60038 } from "./iec-60038.ts";
export {
  type NameplateVoltageRange,
  nameplateVoltageRange,
  type VoltageNameplate,
} from "./nameplate-voltage-range.ts";
export { britishSupply, japaneseSupply } from "./national-supplies.ts";
export { resistanceHeatAt } from "./resistance-heat.ts";
export {
  type SupplyName,
  type SupplyNameWord,
  type SupplyVoltageCause,
  type SupplyVoltageStatement,
  type SupplyVoltageStatements,
  type SupplyVoltageWord,
  supplyName,
} from "./statements.ts";
export { type NominalSupply, type SupplyRange, supplyVoltageRanges } from "./supply-ranges.ts";
export { type SupplySag, type SupplySagInput, supplySag } from "./supply-sag.ts";
export type { SupplyVoltageAssessment, SupplyVoltageInput } from "./supply-voltage-assessment.ts";
export {
  type LoggedVoltage,
  type VoltageLogStatistics,
  voltageLogStatistics,
} from "./voltage-log.ts";
export { type VoltageMonitorSettings, voltageMonitorSettings } from "./voltage-monitor-settings.ts";
export type {
  LoadState,
  ReadingMoment,
  SinglePhaseReading,
  ThreePhaseReading,
  VoltageReading,
  Voltmeter,
} from "./voltage-reading.ts";
export type {
  RangeColumns,
  VoltageMeasuredAt,
  VoltageRange,
  VoltageStandard,
} from "./voltage-standard.ts";
export {
  currentUnbalance,
  type PhaseUnbalance,
  unbalanceDerating,
  type VoltageUnbalance,
  voltageUnbalance,
} from "./voltage-unbalance.ts";
