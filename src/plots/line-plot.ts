// How do panels over a common axis become a picture? Heading, result, legend, panels, as SVG text. Internal.
// Follows SVG 2 and its accessibility mappings (role img, title and desc).
// Does not cover what the lines mean: the plots of this module bring numbers in the reader's units.
import { axisOf } from "./axis.ts";
import { legendOf } from "./legend.ts";
import { panelOf, rightAxis, verticalAxis } from "./panel.ts";
import type { LinePlot } from "./shapes.ts";
import { paintOf } from "./styles.ts";
import { element, escaped, label, short, textSize, widthOf, wrapped } from "./svg-text.ts";

const fonts = "system-ui,-apple-system,'Segoe UI',Roboto,'Noto Sans',sans-serif";

/** A real minus sign, as the axes have it, where a number begins with a hyphen. */
const withMinus = (text: string) => text.replace(/(?<!\S)-(?=\d)/g, "−");

/** The picture. */
export function linePlot(plot: LinePlot): string {
  const { frame, outcome, xName, xWords, panels } = plot;
  const [result, description] = [withMinus(plot.result), withMinus(plot.description)];
  const { id, title, width, colors } = frame;
  const parts: string[] = [];
  let bottom = 0;
  for (const row of wrapped(title, 15.5, width)) {
    bottom += 19;
    parts.push(label(row, 0, bottom, { "font-size": 15, "font-weight": 600 }));
  }
  for (const [i, row] of wrapped(`${outcome}: ${result}`, textSize, width).entries()) {
    bottom += 18;
    // The outcome stands out: it is the first word of the first row.
    const [word, rest] = i === 0 ? [outcome, row.slice(outcome.length)] : ["", row];
    const strong = element("tspan", { "font-weight": 600 }, escaped(word));
    parts.push(element("text", { x: 0, y: bottom }, strong, escaped(rest)));
  }
  const legend = legendOf(panels, width, bottom + 8, colors);
  parts.push(...legend.parts);
  bottom = legend.bottom;

  const room = (words: readonly (readonly [number, string])[]) =>
    Math.max(0, ...words.map(([, word]) => widthOf(word, textSize)));
  const axes = panels.map((panel) => verticalAxis(panel, 0));
  const seconds = panels.map((panel, i) => rightAxis(panel, axes[i] as never, 0));
  const left = 8 + Math.max(...axes.map(({ ticks }) => room(ticks)));
  const beside = Math.max(...seconds.map((axis) => (axis ? room(axis.ticks) + 8 : 0)));
  const right = width - Math.max(10, beside);
  const x = axisOf(plot.x, [left, right], Math.round((right - left) / 75), false);

  for (const panel of panels) {
    const top = bottom + 32;
    parts.push(panelOf(panel, x, { width, left, right, top }, colors));
    bottom = top + panel.height;
    const ticks = x.ticks.map(([value]) => `M${short(x.at(value))},${short(bottom)}v4`).join("");
    const d = `M${short(left)},${short(bottom)}H${short(right)}${xWords ? "" : ticks}`;
    parts.push(
      element("path", { d, fill: "none", stroke: paintOf("text", colors), "stroke-opacity": 0.7 }),
    );
  }
  bottom += 18;
  for (const [value, word] of xWords ?? x.ticks) {
    const at = x.at(value);
    const half = widthOf(word, textSize) / 2;
    const [anchor, place] =
      at + half > width ? ["end", width] : at - half < 0 ? ["start", 0] : ["middle", at];
    parts.push(label(word, place, bottom, { "text-anchor": anchor }));
  }
  bottom += 18;
  parts.push(label(xName, (left + right) / 2, bottom, { "text-anchor": "middle" }));

  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${short(width)} ${short(bottom + 8)}`,
      role: "img",
      "aria-labelledby": `${id}-title ${id}-desc`,
      "font-family": fonts,
      "font-size": textSize,
      fill: paintOf("text", colors),
    },
    element("title", { id: `${id}-title` }, escaped(title)),
    element("desc", { id: `${id}-desc` }, escaped(description)),
    ...parts,
  );
}
