// How do bands, levels and lines become markup? The shapes of a panel without its words. Internal.
// Paths by d3-shape. Does not cover axes and words: panel.ts, and sparkline.ts, which has none.
import { area, line } from "d3-shape";
import type { Axis } from "./axis.ts";
import { bandOpacity, marksOf } from "./legend.ts";
import type { PlotColors } from "./plot-options.ts";
import type { Line, Panel } from "./shapes.ts";
import { paintOf, strokeOf } from "./styles.ts";
import { element, short } from "./svg-text.ts";

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

/** Bands, then levels, then lines, of which the first lies on top. */
export function shapesOf(panel: Panel, x: Axis, axis: Axis, theme: PlotColors): string {
  const parts: string[] = [];
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
  const drawn = panel.lines.map((one) => {
    const course = one.points.map(([at, y]): [number, number] => [x.at(at), axis.at(y)]);
    const stroke = element("path", { d: toPath(course) ?? "", ...strokeOf(one.role, theme) });
    if (!one.marks) return stroke;
    const whiskers = one.whisker === undefined ? "" : whiskersOf(one, x, axis, theme);
    return whiskers + (one.marks === "dotted line" ? stroke : "") + marksOf(one, course, theme);
  });
  return [...parts, ...drawn.reverse()].join("");
}

/** How far up and down the points of a line are uncertain. */
function whiskersOf(
  { points, whisker = 0, role }: Line,
  x: Axis,
  axis: Axis,
  theme: PlotColors,
): string {
  const d = points.map(([at, y]) => {
    const [up, down] = [axis.at(y + whisker), axis.at(y - whisker)];
    const [left, right] = [x.at(at) - 4, x.at(at) + 4].map(short);
    return `M${left},${short(up)}H${right}M${short(x.at(at))},${short(up)}V${short(down)}M${left},${short(down)}H${right}`;
  });
  const stroke = { stroke: paintOf(role, theme), "stroke-width": 1.4 };
  return element("path", { d: d.join(""), fill: "none", ...stroke });
}
