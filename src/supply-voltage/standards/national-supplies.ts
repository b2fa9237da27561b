// Voltage ranges that a country lays down by law: Japan and the United Kingdom.
// Follows the Ordinance for Enforcement of the Electricity Business Act, article 38; S.I. 2002/2665, regulation 27.
// Does not cover the voltage at the unit: both are for the point of supply.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { VoltageStandard } from "./voltage-standard.ts";

/**
 * Japan: 101 ± 6 V for the standard voltage of 100 V, 202 ± 20 V for 200 V, at the point of supply.
 *
 * Source: Ordinance for Enforcement of the Electricity Business Act, article 38, as quoted by a technical college.
 *
 * @example
 * ```ts
 * import { japaneseSupply } from "hvac-install-math/supply-voltage";
 *
 * japaneseSupply.table[0]; // => 100,95,107
 * ```
 */
export const japaneseSupply: VoltageStandard = /* @__PURE__ */ frozenInPlace({
  name: "japan-article-38",
  source: "japan-electricity-rules",
  clause: "article 38",
  // biome-ignore format: 101 ± 6 V and 202 ± 20 V.
  table: [
    [100,  95, 107],
    [200, 182, 222],
  ],
  ranges: { service: [["only-range", 1, 2]], unit: [] },
});

/**
 * United Kingdom: 230 V +10 % −6 % at the point of supply; 400 V between lines.
 *
 * Source: Electricity Safety, Quality and Continuity Regulations 2002, regulation 27, from memory.
 *
 * @example
 * ```ts
 * import { britishSupply } from "hvac-install-math/supply-voltage";
 *
 * britishSupply.table[0]; // => 230,216.2,253
 * ```
 */
export const britishSupply: VoltageStandard = /* @__PURE__ */ frozenInPlace({
  name: "ESQCR 2002",
  source: "esqcr-2002",
  clause: "regulation 27",
  fromMemory: true,
  // biome-ignore format: +10 % and −6 %.
  table: [
    [230, 216.2, 253],
    [400,   376, 440],
  ],
  ranges: { service: [["+10/−6 %", 1, 2]], unit: [] },
});
