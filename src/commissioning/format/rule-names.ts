// Which rules are meant? Names that stand in a record and on the wire for the rule sets of circuits.
// Follows the designations of the standards themselves.
// Does not cover rule sets of one's own: judge those with the modules directly.

import {
  asNzs3000Australia,
  asNzs3000NewZealand,
  bs7671,
  type CircuitRules,
  cec2024,
  iec60364,
  japan,
  nec2020,
  nec2023,
  nec2026,
} from "../../circuit-protection/rules/index.ts";
import { frozenInPlace } from "../../quantity/frozen.ts";

/** Names of the rule sets for circuits. Source: the designations of the standards. */
export type CircuitRulesName =
  | "nfpa-70-2020"
  | "nfpa-70-2023"
  | "nfpa-70-2026"
  | "csa-c22.1-2024"
  | "iec-60364"
  | "bs-7671-2018"
  | "as-nzs-3000-2018-australia"
  | "as-nzs-3000-2018-new-zealand"
  | "japan-interpretation";

/** The name by which each rule set calls itself: enough to find it among those passed, without opening them all. */
export const rulesTitles: Readonly<Record<CircuitRulesName, string>> = {
  "nfpa-70-2020": "NEC 2020",
  "nfpa-70-2023": "NEC 2023",
  "nfpa-70-2026": "NEC 2026",
  "csa-c22.1-2024": "CEC 2024",
  "iec-60364": "IEC 60364",
  "bs-7671-2018": "BS 7671",
  "as-nzs-3000-2018-australia": "AS/NZS 3000 (Australia)",
  "as-nzs-3000-2018-new-zealand": "AS/NZS 3000 (New Zealand)",
  "japan-interpretation": "Japan, Interpretation",
};

/**
 * The rule sets for circuits by the names that stand for them in a record and on the wire: `rules: "nfpa-70-2023"` in
 * `power.circuits` means what `nec2023` of `circuit-protection` is. `circuitRulesNamed` finds one among those passed.
 *
 * Assumes nothing of which of them applies: the adopted edition with its local amendments decides.
 *
 * Source: the designations of the standards.
 *
 * @example
 * ```ts
 * import { nec2023 } from "hvac-install-math/circuit-protection";
 * import { circuitRules } from "hvac-install-math/commissioning";
 *
 * circuitRules["nfpa-70-2023"].name; // => NEC 2023
 * circuitRules["nfpa-70-2023"] === nec2023; // => true
 * ```
 */
export const circuitRules: Readonly<Record<CircuitRulesName, CircuitRules>> =
  /* @__PURE__ */ frozenInPlace({
    "nfpa-70-2020": nec2020,
    "nfpa-70-2023": nec2023,
    "nfpa-70-2026": nec2026,
    "csa-c22.1-2024": cec2024,
    "iec-60364": iec60364,
    "bs-7671-2018": bs7671,
    "as-nzs-3000-2018-australia": asNzs3000Australia,
    "as-nzs-3000-2018-new-zealand": asNzs3000NewZealand,
    "japan-interpretation": japan,
  });
