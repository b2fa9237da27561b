// What is different in Canada? Section 28 of the Canadian Electrical Code for refrigerant compressors.
// Follows CSA C22.1, rules 28-704 to 28-708, in reproductions; 28-714, 8-102 and the tables from memory.
// Does not cover provincial amendments, or tables that differ from the American ones.
import { cite, statement } from "../../assessment/assessment.ts";
import type { CircuitRules } from "./circuit-rules.ts";
import { necRules } from "./nec-tables.ts";

/** The Canadian rules over the shared tables. */
function canadianRules(): CircuitRules<"awg"> {
  const {
    groundFault: _,
    workingSpace: __,
    ...shared
  } = necRules({
    name: "CEC 2024",
    source: "cec-part-1",
    smallBreakers: [],
    workingSpaceRequired: false,
    advice: [],
  });
  return {
    ...shared,
    advice: [
      statement(
        "not-checked-here",
        "Not checked: short-circuit ratings against the available fault current, the disconnect's horsepower rating, surge protection.",
      ),
      statement(
        "tables-from-memory",
        "Ampacity, ambient, bonding-conductor and disconnect figures are the American ones, taken as harmonised from memory: check them against the adopted Canadian tables.",
      ),
    ],
    citations: ["8-102", "28-704", "28-706", "28-708", "28-714"].map((c) => cite("cec-part-1", c)),
    // 28-704: locked-rotor current as marked, else 6 × rated load. 28-708: at most 50 % of it.
    compressorProtection: { of: "lockedRotor", normal: 0.5, lockedRotorMultiple: 6 },
    voltageDrop: { branch: 0.03, total: 0.05, mandatory: true }, // 8-102, from memory
  };
}

/**
 * Rules of the Canadian Electrical Code where they differ and a source was found: protection by the
 * locked-rotor current, a voltage drop limit that binds. Ampacities and the other tables are taken as
 * harmonised with NFPA 70, from memory; every result says so.
 *
 * The adopted edition with its local amendments, and the authority having jurisdiction, override it.
 *
 * Source: CSA C22.1, Section 28, in reproductions; figures from memory are listed in the module's guide.
 */
export const cec2024: CircuitRules<"awg"> = /* @__PURE__ */ canadianRules();
