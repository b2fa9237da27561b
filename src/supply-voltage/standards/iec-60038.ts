// Voltage ranges of 50 Hz supplies, 230/400 V.
// Follows IEC 60038:2009, table 1: ±10 % at the supply terminals; annex A (from memory) for the lowest
// voltage at the terminals of equipment, 4 % of drop in the building below that.
// Does not cover the ten-minute means of EN 50160: assess-supply-week.ts does.
import { frozenInPlace } from "../../quantity/frozen.ts";
import type { VoltageStandard } from "./voltage-standard.ts";

/**
 * IEC 60038: 230 V and 400 V within ±10 % at the supply terminals.
 *
 * Source: IEC 60038:2009, table 1; annex A for the utilization column (from memory).
 *
 * @example
 * ```ts
 * import { iec60038 } from "hvac-install-math/supply-voltage";
 *
 * iec60038.table[0]; // => 230,207,253,198
 * ```
 */
export const iec60038: VoltageStandard = /* @__PURE__ */ frozenInPlace({
  name: "IEC 60038",
  source: "iec-60038",
  clause: "table 1",
  // biome-ignore format: as the standard prints it.
  table: [
    //          supply        utilization
    // nominal  min   max     min
    [  230,     207,  253,    198 ],
    [  400,     360,  440,    344 ],
  ],
  ranges: {
    service: [["±10 %", 1, 2]],
    unit: [["utilization-range", 3, 2]],
  },
});
