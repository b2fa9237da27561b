// How do panels over a common axis become a picture? Heading, result, legend, panels, as SVG text. Internal.
// Follows SVG 2 and its accessibility mappings (role img, title and desc).
// Does not cover what the lines mean: the plots of this module bring numbers in the reader's units.
import { type Axis, axisOf } from "./axis.ts";
import { levelWords } from "./label-place.ts";
import { legendOf } from "./legend.ts";
import { namesInOneRow, type Placed, panelOf, rightAxis, verticalAxis } from "./panel.ts";
import { pictureOf } from "./picture.ts";
import type { LinePlot } from "./shapes.ts";
import { sparkline } from "./sparkline.ts";
import { paintOf } from "./styles.ts";
import { element, escaped, label, short, textSize, widthOf, wrapped } from "./svg-text.ts";

/** The picture. */
export function linePlot(plot: LinePlot): string {
  const { frame, xName, xWords, panels } = plot;
  if (frame.form === "sparkline") return sparkline(plot);
  const { width, colors, reader } = frame;
  const above = wordsAbove(plot);
  const { parts } = above;
  let { bottom } = above;
  const room = (words: readonly (readonly [number, string])[]) =>
    Math.max(0, ...words.map(([, word]) => widthOf(word, textSize)));
  const axes = panels.map((panel) => verticalAxis(panel, 0, frame));
  const seconds = panels.map((panel, i) => rightAxis(panel, axes[i] as Axis, 0, frame));
  const left = 8 + Math.max(...axes.map(({ ticks }) => room(ticks)));
  const beside = Math.max(...seconds.map((axis) => (axis ? room(axis.ticks) + 8 : 0)));
  const right = width - Math.max(10, beside);
  const count = Math.round((right - left) / 75);
  const span = { values: plot.x, between: [left, right], count, isRound: false } as const;
  const x = axisOf(span, reader.number);

  const words = panels.map((panel, i) => levelWords(panel, x, axes[i] as Axis, { left, right }));
  const levels = panels.flatMap((panel, i) => panel.levels.filter((one) => !words[i]?.has(one)));
  const legend = legendOf({ panels, levels }, bottom + 8, frame);
  parts.push(...legend.parts);
  bottom = legend.bottom;

  panels.forEach((panel, i) => {
    const top = bottom + (namesInOneRow(panel, width) ? 32 : 48);
    const placed = { x, left, right, top, words: words[i] as Placed["words"] };
    parts.push(panelOf(panel, placed, frame));
    bottom = top + panel.height;
    const ticks = x.ticks.map(([value]) => `M${short(x.at(value))},${short(bottom)}v4`).join("");
    const d = `M${short(left)},${short(bottom)}H${short(right)}${xWords ? "" : ticks}`;
    parts.push(
      element("path", { d, fill: "none", stroke: paintOf("text", colors), "stroke-opacity": 0.7 }),
    );
  });
  bottom += 18;
  parts.push(...rowOfWords(xWords ?? x.ticks, x, bottom, width));
  bottom += 18;
  parts.push(label(xName, (left + right) / 2, bottom, { "text-anchor": "middle" }));
  return pictureOf(plot, [width, bottom + 8], parts);
}

/** The heading, and below it the outcome with what it rests on; and where they end. */
export function wordsAbove({
  frame: { title, width, reader },
  outcome,
  result,
}: Pick<LinePlot, "frame" | "outcome" | "result">): { parts: string[]; bottom: number } {
  const parts: string[] = [];
  let bottom = 0;
  for (const row of wrapped(title, 15.5, width)) {
    bottom += 19;
    parts.push(label(row, 0, bottom, { "font-size": 15, "font-weight": 600 }));
  }
  for (const [i, row] of wrapped(
    `${outcome}${reader.word("plots.colon")} ${result}`,
    textSize,
    width,
  ).entries()) {
    bottom += 18;
    // The outcome stands out: it is the first word of the first row.
    const [word, rest] = i === 0 ? [outcome, row.slice(outcome.length)] : ["", row];
    const strong = element("tspan", { "font-weight": 600 }, escaped(word));
    parts.push(element("text", { x: 0, y: bottom }, strong, escaped(rest)));
  }
  return { parts, bottom };
}

/** The words along the horizontal axis, inside the picture; one that would cover the one before is left out. */
export function rowOfWords(
  words: readonly (readonly [at: number, word: string])[],
  x: Axis,
  y: number,
  width: number,
): string[] {
  let end = -Infinity;
  return words.flatMap(([value, word]) => {
    const wide = widthOf(word, textSize);
    const start = Math.min(width - wide - 4, Math.max(0, x.at(value) - wide / 2));
    if (start < end + 4) return [];
    end = start + wide;
    return [label(word, start + wide / 2, y, { "text-anchor": "middle" })];
  });
}
