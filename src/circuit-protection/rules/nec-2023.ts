// What does the National Electrical Code say in its 2023 edition?
// Follows NFPA 70 (2023), read in reproductions.
// Does not cover local amendments.
import type { CircuitRules } from "./circuit-rules.ts";
import { clause, necRules } from "./nec-tables.ts";
import { ruleSet } from "./rule-set.ts";

/**
 * Rules of the National Electrical Code, 2023 edition.
 *
 * The adopted edition with its local amendments, and the authority having jurisdiction, override it.
 *
 * Source: NFPA 70 (2023), in reproductions; figures from memory are listed in the module's guide.
 */
export const nec2023: CircuitRules<"awg"> = /* @__PURE__ */ ruleSet(() =>
  necRules({
    name: "NEC 2023",
    source: "nfpa-70-2023",
    points: {
      ambient: clause("table 310.15(B)(1)(1)"),
      rooftop: clause("310.15(B)(2)", "memory"), // the distance may be 3/4 in in this edition
      "disconnect-place": clause("440.14, 110.29"),
      "working-space": clause("440.14, 110.26(A)"),
    },
    smallBreakers: [10], // 240.6(A), new in 2023; never the answer for a compressor, see smallestRating
    workingSpaceRequired: true, // 440.14
    groundFault: {
      toGround: 150,
      rating: 50,
      texts: [{ name: "as printed", listedEquipmentFrom: "2026-09-01" }], // exception 2
      classC: false,
    },
    advice: [
      { name: "enclosure-tool-or-lock", clause: "440.11" },
      { name: "surge-protection", clause: "230.67" },
    ],
  }),
);
