// How much must a drain fall, and how much does it? Slopes from a level, an angle or two heights.
// Follows IMC 2021, 307.2.1; IPC 2021, 314.2.1; UPC 2021, 814.1: 1/8 in per foot.
// Does not cover sags between the two ends: look along the pipe.

import { type Estimate, estimate } from "../assessment/assessment.ts";
import { askOneOf, type Limits, objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { noiseAt } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";

/**
 * The least slope that the codes ask for: 1/8 in per foot, 1.0417 %, 10.42 mm per meter. UPC prints 1 %
 * beside it, which is 4 % less.
 *
 * Source: IMC 2021, 307.2.1; IPC 2021, 314.2.1; UPC 2021, 814.1.
 *
 * @example
 * ```ts
 * import { codeDrainSlope } from "hvac-install-math/condensate";
 *
 * codeDrainSlope.toString(undefined, 3); // => 1.042 %
 * ```
 */
export const codeDrainSlope: Quantity<"ratio"> = /* @__PURE__ */ percent(100 / 8 / 12);

/**
 * The slope that installers aim at, so that a sag does not stop the water: 1/4 in per foot.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { usualDrainSlope } from "hvac-install-math/condensate";
 *
 * usualDrainSlope.toString(undefined, 2); // => 2.08 %
 * ```
 */
export const usualDrainSlope: Quantity<"ratio"> = /* @__PURE__ */ percent(100 / 4 / 12);

/**
 * How far a drain has to fall over a run.
 *
 * @param drain - Horizontal run, 0 or more, and the slope, above 0; 1/8 in per foot when left out.
 * @returns The fall, in the run's unit.
 * @throws {@link InvalidInputError} when the run is negative or the slope not above 0.
 *
 * Source: IMC 2021, 307.2.1; IPC 2021, 314.2.1; UPC 2021, 814.1.
 *
 * @example
 * ```ts
 * import { minimumFall } from "hvac-install-math/condensate";
 * import { ft, inch, m, mm } from "hvac-install-math/quantity";
 *
 * minimumFall({ run: ft(30) }).toString(inch); // => 3.75 in
 * minimumFall({ run: m(10) }).toString(mm, 1); // => 104.2 mm
 * ```
 */
export function minimumFall(drain: {
  /** Horizontal length of the drain. */
  readonly run: Quantity<"length">;
  /** Slope asked for. */
  readonly slope?: Quantity<"ratio"> | undefined;
}): Quantity<"length"> {
  const { run, slope = codeDrainSlope } = objectOf("drain", drain);
  const length = siOf("run", run, "length", { min: 0 });
  return new Quantity(length * siOf("slope", slope, "ratio", { above: 0, below: 1 }), run.unit);
}

/**
 * A slope as it is measured. Positive falls in the direction of flow (of a drain) or toward the drain
 * side (of a unit). A reading without `accuracy` counts as exact.
 */
export type SlopeReading =
  | {
      /** From a digital level that shows per cent or mm/m. */
      readonly slope: Quantity<"ratio">;
      /** Limits of error, ±. */
      readonly accuracy?: Quantity<"ratio"> | undefined;
    }
  | {
      /** From a digital level that shows degrees. */
      readonly angle: Quantity<"angle">;
      /** Limits of error, ±. */
      readonly accuracy?: Quantity<"angle"> | undefined;
    }
  | {
      /** Gap below a spirit level when its bubble is centerd. */
      readonly gap: Quantity<"length">;
      /** Length of that level. */
      readonly levelLength: Quantity<"length">;
      /** Limits of error of the gap, ±. */
      readonly accuracy?: Quantity<"length"> | undefined;
    }
  | {
      /** Height where the water starts, from a datum such as a laser line. */
      readonly heightAtStart: Quantity<"length">;
      /** Height where it leaves, from the same datum. */
      readonly heightAtEnd: Quantity<"length">;
      /** Horizontal distance between the two. */
      readonly run: Quantity<"length">;
      /** Limits of error of each height, ±. */
      readonly accuracy?: Quantity<"length"> | undefined;
    };

/** A steeper slope is a pipe that falls down, or figures in another unit; common practice, no source. */
export const steepest: Quantity<"ratio"> = /* @__PURE__ */ percent(5);

/**
 * The slope behind a reading, with its uncertainty.
 *
 * @param reading - One of the four ways to measure a slope; slopes of less than 45° (100 %).
 * @returns The slope in percent; positive falls.
 * @throws {@link InvalidInputError} when it is none of the four, a kind does not fit, a length is not
 * above 0, or the slope is beyond ±100 %.
 *
 * Source: geometry; JCGM 100:2008, 4.3.7, for limits of error.
 *
 * @example
 * ```ts
 * import { slopeOf } from "hvac-install-math/condensate";
 * import { ft, inch } from "hvac-install-math/quantity";
 *
 * slopeOf({ gap: inch(1 / 4), levelLength: ft(2) }).value.toString(undefined, 2); // => 1.04 %
 * ```
 */
export function slopeOf(reading: SlopeReading): Estimate<"ratio"> {
  objectOf("reading", reading);
  const given = (reading ?? {}) as unknown as {
    readonly [name: string]: Quantity<never> | undefined;
  };
  const read = <K extends "ratio" | "angle" | "length">(name: string, kind: K, limits?: Limits) =>
    siOf(`reading.${name}`, given[name] as unknown as Quantity<K>, kind, limits);
  const accuracy = (kind: "ratio" | "angle" | "length") =>
    given.accuracy !== undefined ? read("accuracy", kind, { min: 0 }) : 0;
  let slope: number;
  let error: number;
  if (given.slope !== undefined) {
    slope = read("slope", "ratio");
    error = accuracy("ratio");
  } else if (given.angle !== undefined) {
    // 1 rad at most, so that the tangent is not that of a turned level.
    slope = Math.tan(read("angle", "angle", { above: -1, below: 1 }));
    error = accuracy("angle") * (1 + slope * slope); // d tan a = (1 + tan² a) da
  } else if (given.gap !== undefined) {
    const length = read("levelLength", "length", { above: 0 });
    slope = read("gap", "length") / length;
    error = accuracy("length") / length;
  } else if (given.heightAtStart !== undefined) {
    const run = read("run", "length", { above: 0 });
    const [start, end] = [read("heightAtStart", "length"), read("heightAtEnd", "length")];
    // Two heights that are equal but for the noise of their units are level: −3.5e-17 is no rise.
    slope = Math.abs(start - end) <= noiseAt(start, end) ? 0 : (start - end) / run;
    error = (Math.SQRT2 * accuracy("length")) / run; // two independent heights
  } else {
    askOneOf("reading", "nothing", ["slope", "angle", "gap", "heightAtStart"]);
  }
  const value = percent(slope * 100);
  siOf("reading", value, "ratio", { above: -1, below: 1 });
  return frozen(estimate(value, error / Math.sqrt(3))); // JCGM 100:2008, 4.3.7
}
