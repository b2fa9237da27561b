// How is one panel drawn? Grid, bands, levels with their words, lines, and its vertical axes. Internal.
// Paths by d3-shape. Does not cover the horizontal axis and the words above: line-plot.ts.
import { area, line } from "d3-shape";
import { type Axis, axisOf } from "./axis.ts";
import { along, type Box, leastCovering } from "./label-place.ts";
import { bandOpacity, marksOf } from "./legend.ts";
import type { PlotColors } from "./plot-options.ts";
import type { Panel } from "./shapes.ts";
import { paintOf, strokeOf } from "./styles.ts";
import { element, label, short, textSize, widthOf } from "./svg-text.ts";

/** Where a panel stands. */
export interface Place {
  readonly width: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

/** About how many numbers an axis of a height gets. */
const ticksOf = (height: number) => Math.max(3, Math.round(height / 42));

/** The vertical axis of a panel between its lower and its upper edge. */
export function verticalAxis(panel: Panel, top: number): Axis {
  const { lines, bands, levels, reach, height } = panel;
  const values = [...reach, ...levels.map(({ y }) => y)];
  for (const { points } of lines) for (const [, y] of points) values.push(y);
  for (const { points } of bands) for (const [, low, high] of points) values.push(low, high);
  return axisOf(values, [top + height, top], ticksOf(height));
}

/** The second axis of a panel, beside the first. */
export function rightAxis({ right, height }: Panel, axis: Axis, top: number): Axis | undefined {
  if (!right) return undefined;
  const { factor } = right;
  const ends = axis.ends.map((end) => end * factor);
  return axisOf(ends, [top + height, top], ticksOf(height), false);
}

// The build bundles d3; the notice stays in the built file and in that of an app.
/*!
 * Contains parts of d3-array and d3-shape, Copyright 2010-2026 Mike Bostock, and of d3-path,
 * Copyright 2015-2026 Mike Bostock.
 *
 * Permission to use, copy, modify, and/or distribute this software for any purpose
 * with or without fee is hereby granted, provided that the above copyright notice
 * and this permission notice appear in all copies.
 *
 * THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH
 * REGARD TO THIS SOFTWARE INCLUDING ALL IMPLIED WARRANTIES OF MERCHANTABILITY AND
 * FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT,
 * INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS
 * OF USE, DATA OR PROFITS, WHETHER IN AN ACTION OF CONTRACT, NEGLIGENCE OR OTHER
 * TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF
 * THIS SOFTWARE.
 */

/** The panel as markup. */
export function panelOf(panel: Panel, x: Axis, place: Place, theme: PlotColors): string {
  const { width, left, right, top } = place;
  const axis = verticalAxis(panel, top);
  const parts: string[] = [label(panel.name, 0, top - 12)];
  for (const [value, word] of axis.ticks) {
    const y = axis.at(value);
    parts.push(
      element("path", {
        d: `M${short(left)},${short(y)}H${short(right)}`,
        stroke: paintOf("text", theme),
        "stroke-opacity": 0.16,
      }),
      label(word, left - 6, y + 4.5, { "text-anchor": "end" }),
    );
  }
  const second = rightAxis(panel, axis, top);
  if (panel.right && second) {
    parts.push(label(panel.right.name, width, top - 12, { "text-anchor": "end" }));
    for (const [value, word] of second.ticks) {
      const y = second.at(value);
      const d = `M${short(right)},${short(y)}h4`;
      parts.push(
        element("path", { d, stroke: paintOf("text", theme), "stroke-opacity": 0.6 }),
        label(word, right + 7, y + 4.5),
      );
    }
  }
  const toPath = line().digits(2);
  for (const { points, role } of panel.bands) {
    const shape = area<readonly [number, number, number]>(
      ([at]) => x.at(at),
      ([, low]) => axis.at(low),
      ([, , high]) => axis.at(high),
    );
    parts.push(
      element("path", {
        d: shape.digits(2)(points) ?? "",
        fill: paintOf(role, theme),
        "fill-opacity": bandOpacity,
      }),
    );
  }
  for (const { from, to, y, role, stop } of panel.levels) {
    const [start, end, height] = [x.at(from), x.at(to), axis.at(y)];
    const d = toPath([
      [start, height],
      [end, height],
    ]);
    parts.push(element("path", { d: d ?? "", ...strokeOf(role, theme) }));
    if (stop) {
      const stroke = { stroke: paintOf(role, theme), "stroke-width": 1.8 };
      parts.push(element("path", { d: `M${short(end)},${short(height - 5)}v10`, ...stroke }));
    }
  }
  const courses = panel.lines.map(({ points }) =>
    points.map(([at, value]): [number, number] => [x.at(at), axis.at(value)]),
  );
  const drawn = panel.lines.map((one, i) => {
    const course = courses[i] as [number, number][];
    const { role, marks } = one;
    const stroke = element("path", { d: toPath(course) ?? "", ...strokeOf(role, theme) });
    if (!marks) return stroke;
    return (marks === "dotted line" ? stroke : "") + marksOf(one, course, theme);
  });
  parts.push(...drawn.reverse());
  parts.push(...wordsOf(panel, courses.flatMap(along), x, axis, place));
  return parts.join("");
}

/** The words of the levels, where they cover least. */
function wordsOf(
  { levels, height }: Panel,
  points: readonly [number, number][],
  x: Axis,
  axis: Axis,
  { left, right, top }: Place,
): string[] {
  const taken: Box[] = [];
  const lines = levels.flatMap(({ from, to, y }) =>
    along([
      [x.at(from), axis.at(y)],
      [x.at(to), axis.at(y)],
    ]),
  );
  return levels.map(({ from, to, y, label: words }) => {
    const size = { width: widthOf(words, textSize), height: 15 };
    const at = axis.at(y);
    const [start, end] = [Math.max(left, x.at(from)), Math.min(right, x.at(to))];
    const last = Math.max(left, right - size.width - 4);
    const places = [end - size.width - 8, start + 6, (start + end - size.width) / 2, last]
      .map((one) => Math.min(last, Math.max(left + 4, one)))
      .flatMap((one) => [
        { x: one, y: at - 18, ...size },
        { x: one, y: at + 3, ...size },
      ])
      .filter((one) => one.y >= top - 4 && one.y + one.height <= top + height + 2);
    const spot = leastCovering(places, [...points, ...lines], taken);
    taken.push(spot);
    return label(words, spot.x, spot.y + 12);
  });
}
