/**
 * The supply voltage: readings against nameplate, ANSI C84.1 or IEC 60038 and EN 50160, sag under load,
 * unbalance of three phases, and what to set a voltage monitor to.
 *
 * @module supply-voltage
 */

export { assessSupplyVoltage } from "./assess-supply-voltage.ts";
export { assessSupplyWeek, type SupplyWeekAssessment } from "./assess-supply-week.ts";
export {
  type NameplateVoltageRange,
  nameplateVoltageRange,
  type VoltageNameplate,
} from "./nameplate-voltage-range.ts";
export { resistanceHeatAt } from "./resistance-heat.ts";
export {
  ansiC84,
  britishSupply,
  iec60038,
  japaneseSupply,
  type RangeColumns,
  type SupplyName,
  type SupplyNameWord,
  supplyName,
  type VoltageMeasuredAt,
  type VoltageRange,
  type VoltageStandard,
} from "./standards/index.ts";
export type {
  SupplyVoltageCause,
  SupplyVoltageStatement,
  SupplyVoltageStatements,
  SupplyVoltageWord,
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
export {
  currentUnbalance,
  type PhaseUnbalance,
  unbalanceDerating,
  type VoltageUnbalance,
  voltageUnbalance,
} from "./voltage-unbalance.ts";
