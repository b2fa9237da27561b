// What does the National Electrical Code say in its 2023 edition?
// Follows NFPA 70 (2023), read in reproductions.
// Does not cover local amendments.
import { statement } from "../../assessment/assessment.ts";
import type { CircuitRules } from "./circuit-rules.ts";
import { necRules } from "./nec-tables.ts";

/**
 * Rules of the National Electrical Code, 2023 edition.
 *
 * The adopted edition with its local amendments, and the authority having jurisdiction, override it.
 *
 * Source: NFPA 70 (2023), in reproductions; figures from memory are listed in the module's guide.
 */
export const nec2023: CircuitRules<"awg"> = /* @__PURE__ */ necRules({
  name: "NEC 2023",
  source: "nfpa-70-2023",
  smallBreakers: [10], // 240.6(A), new in 2023; never the answer for a compressor, see smallestRating
  workingSpaceRequired: true, // 440.14
  groundFault: {
    toGround: 150,
    rating: 50,
    advice: /* @__PURE__ */ statement(
      "ground-fault-protection",
      "At a dwelling, 210.8(F) (2023) names outdoor outlets like this one for GFCI protection, also when equipment is replaced. Its exception 2 leaves listed HVAC equipment out until 2026-09-01: ask which text and date are adopted.",
    ),
  },
  advice: [
    /* @__PURE__ */ statement(
      "live-parts-enclosure",
      "440.11 (2023): a disconnect within reach of unqualified people that exposes live parts when opened needs a tool to open, or can be locked.",
    ),
  ],
});
