// How do figures stand beside their limits? Horizontal bars over one axis, each with its words above it. Internal.
// Common practice of bullet charts, no source.
// Does not cover what the bars mean: the plots of this module bring numbers in the reader's units.
import { type Axis, axisOf } from "./axis.ts";
import { bandOpacity, marksOf } from "./legend.ts";
import { rowOfWords, wordsAbove } from "./line-plot.ts";
import { pictureOf } from "./picture.ts";
import type { Frame } from "./plot-options.ts";
import { paintOf, type Role } from "./styles.ts";
import { element, label, short } from "./svg-text.ts";

/** One bar, from one number to another. */
export interface Bar {
  readonly label: string;
  readonly role: Role;
  readonly low: number;
  readonly high: number;
  /** Figures that decide: a ring each, with how far each is uncertain. */
  readonly rings?: readonly { readonly at: number; readonly uncertainty: number }[] | undefined;
}

/** A picture of bars. */
export interface BarPlot {
  readonly frame: Frame;
  /** The outcome in a word, and what it rests on, below the heading. */
  readonly outcome: string;
  readonly result: string;
  /** The text alternative. */
  readonly description: string;
  readonly xName: string;
  /** Numbers that the axis has to reach beside those of the bars. */
  readonly reach: readonly number[];
  readonly bars: readonly Bar[];
}

/** Height of a bar and of its row, in units. */
const [thick, row] = [12, 40];

/** The picture. */
export function barPlot(plot: BarPlot): string {
  const { frame, bars, reach, outcome, result, description } = plot;
  const { width, colors, reader, form } = frame;
  const values = [
    ...reach,
    ...bars.flatMap(({ low, high, rings = [] }) => [
      low,
      high,
      ...rings.flatMap(({ at, uncertainty }) => [at - uncertainty, at + uncertainty]),
    ]),
  ];
  if (form === "sparkline") {
    const span = { values, between: [6, 114], count: 2, isRound: false } as const;
    const x = axisOf(span, reader.number);
    const step = 28 / bars.length;
    const parts = bars.map((bar, i) =>
      barOf(bar, x, step * (i + 0.5), Math.min(6, step - 2), frame),
    );
    const said = `${outcome}${reader.word("plots.colon")} ${result}. ${description}`;
    return pictureOf({ frame, description: said }, [120, 28], parts);
  }
  const { parts, bottom: top } = wordsAbove(plot);
  const [left, right] = [10, width - 16];
  const count = Math.round((right - left) / 75);
  const x = axisOf({ values, between: [left, right], count, isRound: true }, reader.number);
  const bottom = top + 12 + row * bars.length;
  const grid = { stroke: paintOf("text", colors), "stroke-opacity": 0.16 };
  for (const [value] of x.ticks) {
    const d = `M${short(x.at(value))},${short(top + 12)}V${short(bottom)}`;
    parts.push(element("path", { d, ...grid }));
  }
  bars.forEach((bar, i) => {
    const y = top + 12 + row * i;
    parts.push(label(bar.label, left, y + 14), barOf(bar, x, y + 28, thick, frame));
  });
  const line = { d: `M${short(left)},${short(bottom)}H${short(right)}`, fill: "none" };
  parts.push(
    element("path", { ...line, stroke: paintOf("text", colors), "stroke-opacity": 0.7 }),
    ...rowOfWords(x.ticks, x, bottom + 18, width),
    label(plot.xName, (left + right) / 2, bottom + 36, { "text-anchor": "middle" }),
  );
  return pictureOf(plot, [width, bottom + 44], parts);
}

/** A bar around a height, with its rings and how far each is uncertain. */
function barOf(bar: Bar, x: Axis, y: number, thickness: number, { colors }: Frame): string {
  const { low, high, role, rings = [] } = bar;
  const [start, end] = [x.at(low), x.at(high)];
  const paint = paintOf(role, colors);
  const rect = element("rect", {
    x: start,
    y: y - thickness / 2,
    width: Math.max(1, end - start),
    height: thickness,
    fill: paint,
    "fill-opacity": 2 * bandOpacity,
    stroke: paint,
    "stroke-width": 1.2,
  });
  const whiskers = rings.map(({ at, uncertainty }) => {
    const [from, to] = [x.at(at - uncertainty), x.at(at + uncertainty)];
    const d = `M${short(from)},${short(y)}H${short(to)}M${short(from)},${short(y - 4)}v8M${short(to)},${short(y - 4)}v8`;
    return element("path", {
      d,
      fill: "none",
      stroke: paintOf("measured", colors),
      "stroke-width": 1.4,
    });
  });
  const at = rings.map((ring): [number, number] => [x.at(ring.at), y]);
  const marked = marksOf({ marks: "rings", role: "measured", points: [] }, at, colors);
  return [rect, ...whiskers, marked].join("");
}
