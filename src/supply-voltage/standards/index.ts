// Which voltage does a standard promise? The standards and their names, opened without the rest of the module.
// Follows the standard that each names. Does not cover how a reading is judged by them.
export { ansiC84 } from "./ansi-c84-1.ts";
export { iec60038 } from "./iec-60038.ts";
export { britishSupply, japaneseSupply } from "./national-supplies.ts";
export { type SupplyName, type SupplyNameWord, supplyName } from "./supply-name.ts";
export type {
  RangeColumns,
  VoltageMeasuredAt,
  VoltageRange,
  VoltageStandard,
} from "./voltage-standard.ts";
