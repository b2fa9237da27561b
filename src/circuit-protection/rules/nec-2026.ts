// What does the National Electrical Code say in its 2026 edition?
// Follows NFPA 70 (2026) as far as reports of its changes were found; the rest as in 2023.
// Does not cover local amendments, or changes of 2026 that were not found.
import { statement } from "../../assessment/assessment.ts";
import type { CircuitRules } from "./circuit-rules.ts";
import { necRules } from "./nec-tables.ts";

/**
 * Rules of the National Electrical Code, 2026 edition, as far as its changes were found: 210.8(F) up to
 * 60 A and the enclosure of 440.11. No change of the 125, 175, 225 and 115 % rules was found, which is
 * not proof that there is none.
 *
 * The adopted edition with its local amendments, and the authority having jurisdiction, override it.
 *
 * Source: NFPA 70 (2026), in reports of its changes; figures from memory are listed in the module's guide.
 */
export const nec2026: CircuitRules<"awg"> = /* @__PURE__ */ necRules({
  name: "NEC 2026",
  source: "nfpa-70-2026",
  smallBreakers: [10],
  workingSpaceRequired: true,
  groundFault: {
    toGround: 150,
    rating: 60,
    advice: /* @__PURE__ */ statement(
      "ground-fault-protection",
      "At a dwelling, 210.8(F) (2026) names outdoor outlets like this one, now up to 60 A, for GFCI protection. The date of 2026-09-01 for listed HVAC equipment is reported as unchanged; a special-purpose class was discussed, not confirmed: ask which text and date are adopted.",
    ),
  },
  advice: [
    /* @__PURE__ */ statement(
      "live-parts-enclosure",
      "440.11 (2026): a disconnect within reach of unqualified people that exposes live parts when opened is kept locked, or needs a tool to open.",
    ),
  ],
});
