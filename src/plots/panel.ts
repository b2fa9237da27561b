// How is one panel drawn? Grid, names and numbers of its axes, its shapes, the words of its levels. Internal.
// Common practice of charts, no source. Does not cover the horizontal axis and the words above: line-plot.ts.
import { type Axis, axisOf } from "./axis.ts";
import type { Box } from "./label-place.ts";
import { shapesOf } from "./panel-shapes.ts";
import type { Frame } from "./plot-options.ts";
import type { Level, Panel } from "./shapes.ts";
import { paintOf } from "./styles.ts";
import { element, label, short, textSize, widthOf } from "./svg-text.ts";

/** About how many numbers an axis of a height gets. */
const ticksOf = (height: number) => Math.max(3, Math.round(height / 42));

/** The vertical axis of a panel between its lower and its upper edge. */
export function verticalAxis(panel: Panel, top: number, { reader }: Frame): Axis {
  const { lines, bands, levels, reach, height } = panel;
  const values = [...reach, ...levels.map(({ y }) => y)];
  for (const { points, whisker = 0 } of lines) {
    for (const [, y] of points) values.push(y - whisker, y + whisker);
  }
  for (const { points } of bands) for (const [, low, high] of points) values.push(low, high);
  const between = [top + height, top] as const;
  return axisOf({ values, between, count: ticksOf(height), isRound: true }, reader.number);
}

/** The second axis of a panel, beside the first. */
export function rightAxis(
  { right, height }: Panel,
  axis: Axis,
  top: number,
  { reader }: Frame,
): Axis | undefined {
  if (!right) return undefined;
  const values = axis.ends.map((end) => end * right.factor);
  const between = [top + height, top] as const;
  return axisOf({ values, between, count: ticksOf(height), isRound: false }, reader.number);
}

/** Whether the names of both axes stand in one row. */
export const namesInOneRow = ({ name, right }: Panel, width: number): boolean =>
  !right || widthOf(name, textSize) + widthOf(right.name, textSize) + 12 <= width;

/** Where a panel stands, and where the words of its levels do, above its upper edge counted from 0. */
export interface Placed {
  readonly x: Axis;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly words: ReadonlyMap<Level, Box>;
}

/** The panel as markup. */
export function panelOf(panel: Panel, placed: Placed, frame: Frame): string {
  const { x, left, right, top, words } = placed;
  const { width, colors } = frame;
  const axis = verticalAxis(panel, top, frame);
  const parts: string[] = [label(panel.name, 0, top - 12)];
  for (const [value, word] of axis.ticks) {
    const y = axis.at(value);
    parts.push(
      element("path", {
        d: `M${short(left)},${short(y)}H${short(right)}`,
        stroke: paintOf("text", colors),
        "stroke-opacity": 0.16,
      }),
      label(word, left - 6, y + 4.5, { "text-anchor": "end" }),
    );
  }
  const second = rightAxis(panel, axis, top, frame);
  if (panel.right && second) {
    const above = namesInOneRow(panel, width) ? 12 : 28;
    parts.push(label(panel.right.name, width, top - above, { "text-anchor": "end" }));
    for (const [value, word] of second.ticks) {
      const y = second.at(value);
      const d = `M${short(right)},${short(y)}h4`;
      parts.push(
        element("path", { d, stroke: paintOf("text", colors), "stroke-opacity": 0.6 }),
        label(word, right + 7, y + 4.5),
      );
    }
  }
  parts.push(shapesOf(panel, x, axis, colors));
  for (const [level, box] of words) parts.push(label(level.label, box.x, top + box.y + 12));
  return parts.join("");
}
