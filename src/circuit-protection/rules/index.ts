// Which rules can judge a circuit? The rule sets and their printed tables, opened without the rest of the module.
// Follows the standard that each rule set names. Does not cover how a circuit is judged by them.
export { asNzs3000Australia, asNzs3000NewZealand } from "./as-nzs-3000.ts";
export { bs7671 } from "./bs-7671.ts";
export { cec2024 } from "./cec-2024.ts";
export type * from "./circuit-rules.ts";
export { type GroundFaultRule, type GroundFaultText, notAdopted } from "./ground-fault-rule.ts";
export { iec60364 } from "./iec-60364.ts";
export { japan } from "./japan.ts";
export { nec2020 } from "./nec-2020.ts";
export { nec2023 } from "./nec-2023.ts";
export { nec2026 } from "./nec-2026.ts";
export { ratingAtLeast, ratingAtMost, standardRatings } from "./standard-ratings.ts";
export type { SupplySystem, SupplySystemName, VoltageRating } from "./supply-system.ts";
