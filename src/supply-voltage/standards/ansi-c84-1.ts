// Voltage ranges of North American supplies, 60 Hz, to 600 V.
// Follows ANSI C84.1-2020, table 1, by way of reproductions: the 120 V row as printed in the 2016 to
// 2020 working draft, the others by ratio to whole volts as normally printed.
// Does not cover the higher utilization minima of older editions (110 V and 106 V on 120 V, for circuits
// with lighting) nor a maximum utilization voltage of 125 V per 120 V in Range A (both from memory).
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { VoltageStandard } from "./voltage-standard.ts";

/**
 * ANSI C84.1: Range A is where a supply should be, Range B where it may be for a limited time and should
 * be corrected; outside Range B prompt action is due.
 *
 * Source: ANSI C84.1-2020, table 1, by reproduction; state rules differ (Maryland, COMAR 20.50.07.02:
 * 219 V on 208 V).
 *
 * @example
 * ```ts
 * import { ansiC84 } from "hvac-install-math/supply-voltage";
 *
 * ansiC84.table[0]; // => 120,114,126,108,110,127,104
 * ```
 */
export const ansiC84: VoltageStandard = /* @__PURE__ */ frozenInPlace({
  name: "ANSI C84.1",
  source: "ansi-c84-1-2020",
  clause: "table 1",
  // biome-ignore format: as the standard prints it.
  table: [
    //          Range A                    Range B
    //          service       utilization  service       utilization
    // nominal  min   max     min          min   max     min
    [  120,     114,  126,    108,         110,  127,    104 ],
    [  208,     197,  218,    187,         191,  220,    180 ],
    [  240,     228,  252,    216,         220,  254,    208 ],
    [  277,     263,  291,    249,         254,  293,    240 ],
    [  480,     456,  504,    432,         440,  508,    416 ],
    [  600,     570,  630,    540,         550,  635,    520 ],
  ],
  // Nameplate voltages and older names of the same services.
  alsoWritten: [
    [110, 120],
    [115, 120],
    [200, 208],
    [220, 240],
    [230, 240],
    [460, 480],
    [575, 600],
  ],
  ranges: {
    service: [
      ["Range A", 1, 2],
      ["Range B", 4, 5],
    ],
    unit: [
      ["Range A", 3, 2],
      ["Range B", 6, 5],
    ],
  },
});
