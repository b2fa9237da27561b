// Which checks are of which country? Worked examples told from cells of a table.
import type { Check } from "./check.ts";

/** Where a rule holds; IEC and ISO stand for what countries adopt. */
export const jurisdictions = [
  "United States",
  "Canada",
  "IEC",
  "European Union",
  "United Kingdom",
  "Australia",
  "New Zealand",
  "Japan",
] as const;

/** One of them. */
export type Jurisdiction = (typeof jurisdictions)[number];

/** What reads a cell or a row of a printed table and works nothing out. */
const readings: ReadonlySet<string> = new Set([
  "adiabaticK",
  "adjustment",
  "altitude",
  "ambientFactor",
  "ampacityColumn",
  "ampacityRow",
  "area",
  "cecAmbient",
  "cecBonding",
  "cecDevice",
  "cecGrouping",
  "cecTableD3",
  "componentGwp",
  "disconnectFactor",
  "dropLimit",
  "dropLimitAt",
  "effectiveImpedance",
  "groundFaultRating",
  "groundingRow",
  "iecAmbient",
  "iecArrangement",
  "iecFactor",
  "iecGrouping",
  "iecMillivolts",
  "iecResistance",
  "iecSoil",
  "iecTable",
  "lfl",
  "metricResistance",
  "practicalLimit",
  "ratings",
  "rcl",
  "rclOther",
  "rclPpm",
  "resistance",
  "supplyRange",
  "table9",
  "tableRow",
  "ukMillivolts",
]);

/** Whether the check works out a case. */
export const isWorked = ({ computes }: Check): boolean => !readings.has(computes);
