// Which line is which? A sample of each line with its name, in as many rows as it takes. Internal.
// Follows WCAG 2.2, 1.4.1: samples show dashes and marks, not color alone.
// Does not cover the levels that are labeled in place: label-place.ts.
import type { Frame, PlotColors } from "./plot-options.ts";
import type { Level, Line, Panel } from "./shapes.ts";
import { paintOf, strokeOf } from "./styles.ts";
import { element, label, short, textSize, widthOf, wrapped } from "./svg-text.ts";

const sample = 26;

/** The marks of a line at some places. */
export function marksOf(
  { marks, role }: Line,
  at: readonly (readonly [number, number])[],
  theme: PlotColors,
): string {
  const stroke = paintOf(role, theme);
  if (marks === "crosses") {
    const d = at.map(([x, y]) => `M${short(x - 3)},${short(y - 3)}l6,6m0,-6l-6,6`).join("");
    return element("path", { d, fill: "none", stroke, "stroke-width": 1.4 });
  }
  if (marks === "rings") {
    return at
      .map(([cx, cy]) =>
        element("circle", { cx, cy, r: 5, fill: "none", stroke, "stroke-width": 1.8 }),
      )
      .join("");
  }
  // A dot is a line of no length with a round cap.
  const d = at.map(([x, y]) => `M${short(x)},${short(y)}h0`).join("");
  const size = marks === "dots" ? 3.2 : 4.4;
  return element("path", { d, stroke, "stroke-width": size, "stroke-linecap": "round" });
}

/** The samples with their names from `top` on, and where the legend ends. */
export function legendOf(
  { panels, levels }: { readonly panels: readonly Panel[]; readonly levels: readonly Level[] },
  top: number,
  { width, colors: theme }: Frame,
): { parts: string[]; bottom: number } {
  const parts: string[] = [];
  let [x, y] = [0, top + 10];
  const entry = (name: string, draw: (x: number, y: number) => string) => {
    const rows = wrapped(name, textSize, width - sample - 6);
    const room = sample + 6 + Math.max(...rows.map((row) => widthOf(row, textSize)));
    if (x > 0 && x + room > width) [x, y] = [0, y + 18];
    parts.push(draw(x, y - 4.5));
    rows.forEach((row, i) => {
      parts.push(label(row, x + sample + 6, y + 16 * i));
    });
    // A name of two rows has its row to itself.
    [x, y] = rows.length > 1 ? [width, y + 16 * (rows.length - 1)] : [x + room + 16, y];
  };
  for (const { bands, lines } of panels) {
    for (const one of lines) {
      const { label: name, role, marks } = one;
      if (!name) continue;
      entry(name, (at, middle) => {
        const d = `M${short(at)},${short(middle)}h${sample}`;
        const stroke = element("path", { d, ...strokeOf(role, theme) });
        const spread = marks === "dots" ? [0.1, 0.37, 0.63, 0.9] : [0.5];
        const mark = marksOf(
          one,
          spread.map((part) => [at + part * sample, middle]),
          theme,
        );
        return !marks ? stroke : marks === "dotted line" ? stroke + mark : mark;
      });
    }
    for (const { label: name, role } of bands) {
      if (!name) continue;
      entry(name, (at, middle) =>
        element("rect", {
          x: at,
          y: middle - 5,
          width: sample,
          height: 10,
          fill: paintOf(role, theme),
          "fill-opacity": bandOpacity,
          stroke: paintOf(role, theme),
          "stroke-width": 0.8,
        }),
      );
    }
  }
  for (const { label: name, role } of levels) {
    entry(name, (at, middle) =>
      element("path", { d: `M${short(at)},${short(middle)}h${sample}`, ...strokeOf(role, theme) }),
    );
  }
  return { parts, bottom: y };
}

/** How much of a band's color covers what lies below it. */
export const bandOpacity = 0.18;
