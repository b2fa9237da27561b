// Which standard of supply voltage is meant? Names that stand in a record and on the wire.
// Follows the designations of the standards themselves.
// Does not cover a standard of one's own: judge it with the module directly.
import { frozenInPlace } from "../../quantity/frozen.ts";
import {
  ansiC84,
  britishSupply,
  iec60038,
  japaneseSupply,
  type VoltageStandard,
} from "../../supply-voltage/standards/index.ts";
import type { CircuitRulesName } from "./rule-names.ts";

/** Names of the standards of supply voltage. Source: the designations of the standards. */
export type VoltageStandardName =
  | "ansi-c84.1-2020"
  | "iec-60038"
  | "japan-article-38"
  | "esqcr-2002";

/**
 * The standards of supply voltage by the names that stand for them in a record and on the wire.
 *
 * Source: the designations of the standards.
 *
 * @example
 * ```ts
 * import { voltageStandards } from "hvac-install-math/commissioning";
 *
 * voltageStandards["iec-60038"].name; // => IEC 60038
 * ```
 */
export const voltageStandards: Readonly<Record<VoltageStandardName, VoltageStandard>> =
  /* @__PURE__ */ frozenInPlace({
    "ansi-c84.1-2020": ansiC84,
    "iec-60038": iec60038,
    "japan-article-38": japaneseSupply,
    "esqcr-2002": britishSupply,
  });

/** The standard of supply voltage where a set of circuit rules is adopted; Canada has one of its own. */
export const standardOf: Readonly<Partial<Record<CircuitRulesName, VoltageStandardName>>> = {
  "nfpa-70-2020": "ansi-c84.1-2020",
  "nfpa-70-2023": "ansi-c84.1-2020",
  "nfpa-70-2026": "ansi-c84.1-2020",
  "iec-60364": "iec-60038",
  "bs-7671-2018": "esqcr-2002",
  "japan-interpretation": "japan-article-38",
};
