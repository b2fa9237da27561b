// How does a line look? Color, width and dashes of each role, so that none is told by color alone.
// Follows WCAG 2.2, 1.4.1, 1.4.3 and 1.4.11: text 4.5 : 1 and more, lines 3 : 1 and more, on light and dark.
// Does not cover what a page's own custom properties do.
import type { PlotColors } from "./plot-options.ts";

/** What a line or an area stands for. */
export type Role = "measured" | "model" | "limit" | "second" | "guide";

/** Custom property, color on any background, colors on a light and on a dark one. The library's own. */
const colors: Readonly<Record<Role | "text", readonly [string, string, string, string]>> = {
  text: ["--plot-text", "currentColor", "#24292e", "#e6e8ea"],
  measured: ["--plot-measured", "currentColor", "#24292e", "#e6e8ea"],
  model: ["--plot-model", "#2f8083", "#0f5f63", "#6cc0bd"],
  limit: ["--plot-limit", "#b5623c", "#8f3d1c", "#f0a27a"],
  second: ["--plot-second", "#8a6fae", "#5d4683", "#b9a3da"],
  guide: ["--plot-guide", "#767d86", "#5a6068", "#a3aab2"],
};

const dashes: Readonly<Record<Role, string | undefined>> = {
  measured: undefined,
  model: "7 4",
  limit: "2 3",
  second: "9 3 2 3",
  guide: "2 4",
};

/** What is measured is drawn thin over what is computed. */
const widths: Readonly<Record<Role, number>> = {
  measured: 1.4,
  model: 2.4,
  limit: 1.8,
  second: 1.8,
  guide: 1.4,
};

/** The paint of a role. */
export function paintOf(role: Role | "text", theme: PlotColors): string {
  const [property, anywhere, light, dark] = colors[role];
  return theme === "page" ? `var(${property}, ${anywhere})` : theme === "light" ? light : dark;
}

/** The attributes of a line of a role. */
export function strokeOf(
  role: Role,
  theme: PlotColors,
): Record<string, string | number | undefined> {
  return {
    fill: "none",
    stroke: paintOf(role, theme),
    "stroke-width": widths[role],
    "stroke-dasharray": dashes[role],
    "stroke-linejoin": "round",
  };
}
