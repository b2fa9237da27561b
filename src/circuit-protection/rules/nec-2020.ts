// What does the National Electrical Code say in its 2020 edition?
// Follows NFPA 70 (2020), read in reproductions.
// Does not cover local amendments; several states amended 210.8(F).
import { statement } from "../../assessment/assessment.ts";
import type { CircuitRules } from "./circuit-rules.ts";
import { necRules } from "./nec-tables.ts";

/**
 * Rules of the National Electrical Code, 2020 edition.
 *
 * The adopted edition with its local amendments, and the authority having jurisdiction, override it.
 *
 * Source: NFPA 70 (2020), in reproductions; figures from memory are listed in the module's guide.
 */
export const nec2020: CircuitRules<"awg"> = /* @__PURE__ */ necRules({
  name: "NEC 2020",
  source: "nfpa-70-2020",
  smallBreakers: [],
  workingSpaceRequired: false, // 440.14 names 110.26(A) from 2023 on
  groundFault: {
    toGround: 150,
    rating: 50,
    advice: /* @__PURE__ */ statement(
      "ground-fault-protection",
      "At a dwelling, 210.8(F) (2020) names outdoor outlets like this one for GFCI protection. An interim amendment put it off to 2023-01-01 for units with power conversion (inverters), and many states changed or deleted it: ask which text is adopted.",
    ),
  },
  advice: [],
});
