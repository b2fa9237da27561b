// What does the National Electrical Code say in its 2020 edition?
// Follows NFPA 70 (2020), read in reproductions.
// Does not cover local amendments; several states amended 210.8(F).
import type { CircuitRules } from "./circuit-rules.ts";
import { clause, necRules } from "./nec-tables.ts";
import { ruleSet } from "./rule-set.ts";

/**
 * Rules of the National Electrical Code, 2020 edition.
 *
 * The adopted edition with its local amendments, and the authority having jurisdiction, override it.
 *
 * Source: NFPA 70 (2020), in reproductions; figures from memory are listed in the module's guide.
 */
export const nec2020: CircuitRules<"awg"> = /* @__PURE__ */ ruleSet(() =>
  necRules({
    name: "NEC 2020",
    source: "nfpa-70-2020",
    points: {
      ambient: clause("table 310.15(B)(1)"),
      rooftop: clause("310.15(B)(2)"),
      "disconnect-place": clause("440.14, Article 100"),
    },
    smallBreakers: [],
    workingSpaceRequired: false, // 440.14 names 110.26(A) from 2023 on
    groundFault: {
      toGround: 150,
      rating: 50,
      texts: [
        { name: "as printed" },
        { name: "TIA 20-13", powerConversionFrom: "2023-01-01" },
        {
          name: "amendment of 2022-08-12",
          inForceFrom: "2022-09-01",
          listedEquipmentFrom: "2026-09-01",
        },
      ],
      classC: false,
    },
    advice: [{ name: "surge-protection", clause: "230.67" }],
  }),
);
