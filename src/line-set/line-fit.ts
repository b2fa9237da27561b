// Do the insulated pair, the drain and the cable fit this cover duct or wall sleeve?
// Follows plane geometry: circles side by side in a circle or a rectangle (pack-circles.ts).
// Does not cover fill limits for cables in conduit (electrical codes) and foam that is squeezed: it sweats.

import { cite, verdict } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { danger } from "../assessment/safety.ts";
import { listOf, objectOf, siOf, textOf } from "../quantity/check.ts";
import { isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { decide, type Finding } from "./decide.ts";
import { leastRadius, packCircles, tooLargeForRectangle } from "./pack-circles.ts";
import { say, type Verdict } from "./statements.ts";
import { diametersOf, type TubeSize } from "./tube.ts";

/**
 * Something round that goes through. Take the larger dimension of a flat cable.
 */
export interface RoundItem {
  /** Name for messages and for the layout. */
  readonly label: string;
  /** Outside diameter with insulation. */
  readonly diameter: Quantity<"length">;
}

/**
 * The opening: the inside of a round sleeve or of a rectangular duct.
 */
export type LineOpening =
  | { /** A round sleeve. */ readonly diameter: Quantity<"length"> }
  | {
      /** Inside width of a duct. */
      readonly width: Quantity<"length">;
      /** Inside height of a duct. */
      readonly height: Quantity<"length">;
    };

/**
 * What has to go through which opening.
 */
export interface LineFitInput {
  /** Up to eight items. */
  readonly items: readonly RoundItem[];
  /** Inside dimensions. */
  readonly opening: LineOpening;
  /** Room to keep between items and to the wall; none when left out. */
  readonly clearance?: Quantity<"length"> | undefined;
}

/**
 * The verdict on the opening.
 */
export interface LineFitAssessment extends Verdict {
  /** Where each item lies, from the center of a sleeve or from the corner of a duct; empty when none was found. */
  readonly layout: readonly {
    /** The item's label. */
    readonly label: string;
    /** To the right. */
    readonly x: Quantity<"length">;
    /** Upwards. */
    readonly y: Quantity<"length">;
  }[];
  /** Share of the opening that the items fill, 0 to 1 and more. */
  readonly fill: number;
}

/**
 * Outside diameter of a tube in its insulation.
 *
 * @param tube - Outside diameter and wall.
 * @param thickness - Thickness of the insulation, 0 to 100 mm.
 * @returns Outside diameter plus twice the thickness, in the unit of the tube.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or impossible.
 *
 * Source: plane geometry. Published guides ask for 3/8 in (10 mm) or more on each line.
 *
 * @example
 * ```ts
 * import { astmB280Tube, insulatedDiameter } from "hvac-install-math/line-set";
 * import { inch } from "hvac-install-math/quantity";
 *
 * const suction = astmB280Tube({ size: "3/8", temper: "annealed" });
 * insulatedDiameter(suction, inch(0.5)).toString(); // => 1.375 in
 * ```
 */
export function insulatedDiameter(
  tube: TubeSize,
  thickness: Quantity<"length">,
): Quantity<"length"> {
  const t = siOf("thickness", thickness, "length", { min: 0, max: 0.1 });
  return new Quantity(diametersOf("tube", tube).outside + 2 * t, tube.outsideDiameter.unit);
}

/** Radii in meters, each with half the clearance. */
function radiiOf(
  items: readonly RoundItem[],
  clearance?: Quantity<"length">,
): { radii: number[]; half: number } {
  listOf("items", items, 8, 1);
  const half =
    clearance !== undefined ? siOf("clearance", clearance, "length", { min: 0, max: 0.1 }) / 2 : 0;
  const radii = items.map((item, i) => {
    const { label, diameter } = objectOf(`items[${i}]`, item);
    textOf(`items[${i}].label`, label);
    return siOf(`items[${i}].diameter`, diameter, "length", { above: 0, max: 1 }) / 2 + half;
  });
  return { radii, half };
}

/**
 * Inside diameter of the smallest round sleeve that takes the items side by side: exact for up to three,
 * for more the best layout found, which may be a little more than the smallest.
 *
 * @param items - One to eight round items.
 * @param clearance - Room to keep between items and to the wall; none when left out.
 * @returns The diameter, in the unit of the first item.
 * @throws {@link InvalidInputError} when there are no or too many items, or a dimension is missing, of
 * another kind or impossible.
 *
 * Source: Descartes' circle theorem for three; search for more.
 *
 * @example
 * ```ts
 * import { smallestSleeve } from "hvac-install-math/line-set";
 * import { mm } from "hvac-install-math/quantity";
 *
 * const sleeve = smallestSleeve([
 *   { label: "vapor line", diameter: mm(30) },
 *   { label: "liquid line", diameter: mm(26) },
 *   { label: "drain", diameter: mm(20) },
 *   { label: "cable", diameter: mm(12) },
 * ]);
 * sleeve.toString(mm, 1); // => 56.2 mm
 * ```
 */
export function smallestSleeve(
  items: readonly RoundItem[],
  clearance?: Quantity<"length">,
): Quantity<"length"> {
  const { radii, half } = radiiOf(items, clearance);
  let low = leastRadius(radii);
  let high = low;
  if (radii.length > 3 && !packCircles(radii, { radius: low })) {
    do high *= 1.05;
    while (!packCircles(radii, { radius: high }));
    while (high - low > 1e-6 * high) {
      const middle = (low + high) / 2;
      if (packCircles(radii, { radius: middle })) high = middle;
      else low = middle;
    }
  }
  return new Quantity(2 * (high + half), (items[0] as RoundItem).diameter.unit);
}

/**
 * Tells whether round items go side by side through a sleeve or lie in a duct, with a layout when they
 * do.
 *
 * Assumes straight, round, stiff items. A `pass` has a layout to check; a `fail` is proven by one, two,
 * three or all of the items; `inconclusive` means that no layout was found and none is ruled out.
 *
 * @param input - Items, opening, clearance.
 * @returns The verdict with layout and fill.
 * @throws {@link InvalidInputError} when there are no or too many items, or a dimension is missing, of
 * another kind or impossible.
 * Cautions: before you drill, look for wires and pipes in the wall; the drain must keep its fall through
 * the sleeve, outwards; do not squeeze insulation; seal the sleeve; work at height.
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { assessLineFit } from "hvac-install-math/line-set";
 * import { inch } from "hvac-install-math/quantity";
 *
 * const fit = assessLineFit({
 *   items: [
 *     { label: "vapor line", diameter: inch(1.375) },
 *     { label: "liquid line", diameter: inch(1.25) },
 *     { label: "drain", diameter: inch(0.75) },
 *     { label: "cable", diameter: inch(0.5) },
 *   ],
 *   opening: { diameter: inch(3) },
 *   clearance: inch(0.1),
 * });
 * fit.outcome; // => pass
 * fit.fill.toFixed(2); // => 0.47
 * ```
 */
export function assessLineFit(input: LineFitInput): LineFitAssessment {
  const { items, opening, clearance } = objectOf("input", input);
  objectOf("opening", opening);
  const { radii, half } = radiiOf(items, clearance);
  const dimension = (name: string, value: Quantity<"length">) =>
    siOf(`opening.${name}`, value, "length", { above: 2 * half, max: 10 });
  let impossible: boolean;
  let area: number;
  let places: ReturnType<typeof packCircles>;
  if ("diameter" in opening) {
    const radius = dimension("diameter", opening.diameter) / 2 - half;
    area = Math.PI * (radius + half) ** 2;
    impossible = !isAtMost(leastRadius(radii), radius);
    places = impossible ? undefined : packCircles(radii, { radius });
  } else {
    const width = dimension("width", opening.width) - 2 * half;
    const height = dimension("height", opening.height) - 2 * half;
    area = (width + 2 * half) * (height + 2 * half);
    impossible = tooLargeForRectangle(radii, width, height);
    places = impossible ? undefined : packCircles(radii, { width, height });
  }

  const { unit } = (items[0] as RoundItem).diameter;
  const corner = "diameter" in opening ? 0 : half;
  const layout = (places ?? []).map(([x, y], i) => ({
    label: (items[i] as RoundItem).label,
    x: new Quantity(x + corner, unit),
    y: new Quantity(y + corner, unit),
  }));
  const fill = radii.reduce((sum, r) => sum + Math.PI * (r - half) ** 2, 0) / area;
  const found = places
    ? ({ outcome: "pass", said: say("line-set.items-fit", { fill: wholePercent(fill) }) } as const)
    : tooTight(impossible, smallestSleeve(items, clearance));
  return verdict({
    ...decide([found]),
    assumptions: [
      say("line-set.round-and-stiff"),
      ...(clearance ? [] : [say("line-set.no-clearance")]),
    ],
    cautions: [
      caution("finding", say("line-set.drain-falls-outward")),
      caution("danger", say("line-set.drilling")),
      danger("safety.work-at-height"),
    ],
    sources: [cite("common-practice")],
    layout,
    fill,
  });
}

const wholePercent = (share: number): Quantity<"ratio"> => percent(Math.round(100 * share));

/** That no layout was found, proven or not, and the sleeve that takes the items. */
function tooTight(impossible: boolean, sleeve: Quantity<"length">): Finding {
  return {
    outcome: impossible ? "fail" : "inconclusive",
    said: impossible
      ? say("line-set.opening-too-small", { sleeve })
      : say("line-set.no-layout-found", { sleeve }),
    actions: [say("line-set.larger-opening", { sleeve })],
  };
}
