// Which superheat does an orifice unit want now? The chart of its manual, and the cells that were found.
// Follows manufacturers' manuals: indoor wet bulb by outdoor dry bulb, ± 5 °F, a dash forbids charging.
// Does not cover the rest of that chart: only four of its cells were read, none is made up.

import { listOf, objectOf, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { choose } from "../quantity/hints.ts";
import { isAtMost, isEqual } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { deltaF } from "../quantity/units/temperature.ts";

/** A chart's answer where it has a dash. Source: manufacturers' published manuals. */
export type ChartDash = "-";

/**
 * The chart of a manual: a row for each outdoor dry bulb, a column for each indoor wet bulb, a dash where
 * the unit must not be charged by superheat.
 *
 * Source: the unit's manual.
 */
export interface SuperheatChart {
  /** Outdoor dry bulbs, rising, at least two. */
  readonly outdoorDryBulbs: readonly Quantity<"temperature">[];
  /** Indoor wet bulbs, rising, at least two. */
  readonly indoorWetBulbs: readonly Quantity<"temperature">[];
  /** A row for each outdoor dry bulb, in it a cell for each wet bulb. */
  readonly targets: readonly (readonly (Quantity<"temperatureDifference"> | ChartDash)[])[];
}

/**
 * The target for now, or the order not to charge by superheat.
 *
 * Source: see {@link targetSuperheat}.
 */
export type TargetSuperheat =
  | {
      /** Charge to the target. */
      readonly instruction: "charge-to-target";
      /** The superheat to charge to. */
      readonly target: Quantity<"temperatureDifference">;
      /** ± 5 °F. */
      readonly tolerance: Quantity<"temperatureDifference">;
    }
  | {
      /** The chart has a dash here. */
      readonly instruction: "do-not-charge-by-superheat";
    };

// Outdoor dry bulb, indoor wet bulb, target superheat, °F: all that was read of the printed chart.
const cells: readonly (readonly [outdoor: number, wetBulb: number, target: number])[] = [
  [75, 66, 21],
  [80, 70, 25],
  [85, 66, 15],
  [95, 70, 18],
];

const kelvinOf = (degF: number) => ((degF + 459.67) * 5) / 9;
const tolerance: Quantity<"temperatureDifference"> = /* @__PURE__ */ deltaF(5);

/**
 * The superheat that a unit with a fixed orifice wants at these conditions. With the manual's chart it is
 * read between the cells in proportion; where a dash takes part, the unit must not be charged by superheat.
 * Without a chart only the four cells that were found in print are known, to half a degree Fahrenheit.
 *
 * @param conditions - Outdoor dry bulb, indoor wet bulb, and the manual's chart.
 * @returns The target with ± 5 °F, or the order not to charge by superheat.
 * @throws {@link OutOfRangeError} outside the chart, or without a chart off the four known cells.
 * @throws {@link InvalidInputError} when the chart's sides are not in order or cells are missing.
 *
 * Cautions: for fixed orifices only; see {@link chargingMethod}. Never below 5 °F at the suction port.
 *
 * Source: manufacturers' published manuals.
 *
 * @example
 * ```ts
 * import { targetSuperheat } from "hvac-install-math/operating-check";
 * import { degF } from "hvac-install-math/quantity";
 *
 * const now = targetSuperheat({ outdoorDryBulb: degF(95), indoorWetBulb: degF(70) });
 * now.instruction === "charge-to-target" ? now.target.toString() : now.instruction; // => 18 Δ°F
 * ```
 */
export function targetSuperheat(conditions: {
  /** Air that enters the outdoor coil. */
  readonly outdoorDryBulb: Quantity<"temperature">;
  /** Wet bulb of the air that enters the indoor coil. */
  readonly indoorWetBulb: Quantity<"temperature">;
  /** The chart in the unit's manual. */
  readonly chart?: SuperheatChart | undefined;
}): TargetSuperheat {
  objectOf("conditions", conditions);
  const { outdoorDryBulb, indoorWetBulb, chart } = conditions;
  const outdoor = siOf("outdoorDryBulb", outdoorDryBulb, "temperature");
  const wetBulb = siOf("indoorWetBulb", indoorWetBulb, "temperature");
  if (chart !== undefined)
    return fromChart(objectOf("chart", chart), outdoorDryBulb, indoorWetBulb);
  const half = 5 / 18; // half a degree Fahrenheit
  const cell = cells.find(
    ([db, wb]) =>
      isAtMost(Math.abs(outdoor - kelvinOf(db)), half, 1) &&
      isAtMost(Math.abs(wetBulb - kelvinOf(wb)), half, 1),
  );
  if (cell) return frozen({ instruction: "charge-to-target", target: deltaF(cell[2]), tolerance });
  const known = cells.map(([db, wb]) => `${db}/${wb} °F`);
  throw new OutOfRangeError({
    argument: "outdoorDryBulb, indoorWetBulb",
    value: `${outdoorDryBulb}, ${indoorWetBulb}`,
    allowed: `${known.join(", ")}, or any with the manual's chart`,
    hint: choose(known),
  });
}

function fromChart(
  { outdoorDryBulbs, indoorWetBulbs, targets }: SuperheatChart,
  outdoor: Quantity<"temperature">,
  wetBulb: Quantity<"temperature">,
): TargetSuperheat {
  const rows = sharesOf("outdoorDryBulb", outdoor, outdoorDryBulbs);
  const columns = sharesOf("indoorWetBulb", wetBulb, indoorWetBulbs);
  let target = 0;
  let dash = false;
  for (const [i, row] of rows) {
    for (const [j, column] of columns) {
      const cell = targets?.[i]?.[j];
      if (cell === "-") dash = true;
      else {
        const argument = `chart.targets[${i}][${j}]`;
        const value = cell as Quantity<"temperatureDifference">;
        target += row * column * siOf(argument, value, "temperatureDifference", { min: 0 });
      }
    }
  }
  if (dash) return frozen({ instruction: "do-not-charge-by-superheat" });
  const unit = outdoor.unit.difference;
  return frozen({ instruction: "charge-to-target", target: new Quantity(target, unit), tolerance });
}

/** The one or two positions between which a value lies, and the share of each. */
function sharesOf(
  argument: string,
  value: Quantity<"temperature">,
  axis: readonly Quantity<"temperature">[],
): [position: number, share: number][] {
  const name = `chart.${argument}s`;
  listOf(name, axis, Infinity, 2);
  const scale: number[] = [];
  axis.forEach((mark, i) => {
    const above = { above: scale.at(-1) ?? 0 };
    scale.push(siOf(`${name}[${i}]`, mark, "temperature", above));
  });
  const range = { min: scale[0] ?? 0, max: scale.at(-1) ?? 0 };
  const T = siOf(argument, value, "temperature", range, OutOfRangeError);
  const on = scale.findIndex((mark) => isEqual(mark, T));
  if (on >= 0) return [[on, 1]];
  const above = scale.findIndex((mark) => mark > T);
  const [low = 0, high = 1] = scale.slice(above - 1, above + 1);
  const share = (T - low) / (high - low);
  return [
    [above - 1, 1 - share],
    [above, share],
  ];
}
