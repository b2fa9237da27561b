// What does the National Electrical Code say in its 2026 edition?
// Follows NFPA 70 (2026) as far as reports of its changes were found; the rest as in 2023.
// Does not cover local amendments, or changes of 2026 that were not found.
import type { CircuitRules } from "./circuit-rules.ts";
import { clause, necRules } from "./nec-tables.ts";
import { ruleSet } from "./rule-set.ts";

/**
 * Rules of the National Electrical Code, 2026 edition, as far as its changes were found: 210.8(F) up to
 * 60 A and with a special-purpose device of class C, the enclosure of 440.11, "within sight" in 110.29. No change of
 * the 125, 175, 225 and 115 % rules was found, which is not proof that there is none; 110.26 changed, and how was not
 * found.
 *
 * The adopted edition with its local amendments, and the authority having jurisdiction, override it.
 *
 * Source: NFPA 70 (2026), in reports of its changes; figures from memory are listed in the module's guide.
 */
export const nec2026: CircuitRules<"awg"> = /* @__PURE__ */ ruleSet(() =>
  necRules({
    name: "NEC 2026",
    source: "nfpa-70-2026",
    points: {
      ampacity: clause("table 310.16", "memory"),
      ambient: clause("table 310.15(B)(1)(1)", "memory"),
      grouping: clause("310.15(C)(1)", "memory"),
      rooftop: clause("310.15(B)(2)", "memory"),
      "disconnect-place": clause("440.14, 110.29"),
      "working-space": clause("440.14, 110.26(A)", "memory"),
    },
    smallBreakers: [10],
    workingSpaceRequired: true,
    groundFault: {
      toGround: 150,
      rating: 60,
      texts: [{ name: "as printed", listedEquipmentFrom: "2026-09-01" }], // exception 2
      classC: true, // exception 3
    },
    advice: [
      { name: "enclosure-locked", clause: "440.11" },
      { name: "surge-protection", clause: "230.67" },
    ],
  }),
);
