// Which voltage does a standard promise? The standards as data.
// A file of its own in the build, so that it is opened without the rest of supply-voltage.
// Does not cover how a case is judged: the module does.
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
