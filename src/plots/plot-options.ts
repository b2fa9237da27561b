// What can a reader choose about a picture? Its language and units, its form and width, its ids and colors.
// Follows WCAG 2.2, 1.1.1 (text alternative), 1.4.3 and 1.4.11 (contrast).
// Does not cover what is drawn: each plot has its own options for that.
import type { FigureTextOptions } from "../display/index.ts";
import { numberOf, objectOf, oneOf, refuse } from "../quantity/check.ts";
import { type Reader, readerOf } from "./reader.ts";
import type { PlotLanguage, PlotStatement } from "./statements.ts";

/**
 * Where the colors of a plot come from. `page`: text and readings in the color of the text around it,
 * the rest from CSS custom properties with a fallback that is visible on light and on dark. `light` and
 * `dark`: plain colors for that background, for a program that knows no CSS.
 */
export type PlotColors = "page" | "light" | "dark";

/** What every plot can be told. */
export interface PlotOptions extends Pick<FigureTextOptions, "system" | "units" | "locale"> {
  /** The language of headings, axes and labels: `english` of `hvac-install-math/language/en`, or its like. */
  readonly language: PlotLanguage;
  /** Begins every id of the picture; letters, digits, `-` and `_`, a letter first. Each plot of a page needs its own. */
  readonly id?: string | undefined;
  /** Heading of the picture and its accessible name; says what is drawn when left out. */
  readonly title?: string | undefined;
  /**
   * `full`, with axes and words, when left out; `sparkline` for a row of a list: the curve and its limit alone, 120 by
   * 28 units, with the result as its text alternative.
   */
  readonly form?: "full" | "sparkline" | undefined;
  /** Width of the drawing in full form, 300 to 1200 units, 440 when left out; the text is 13 units high. The picture scales to the room that it is given. */
  readonly width?: number | undefined;
  /** Where the colors come from; `page` when left out. */
  readonly colors?: PlotColors | undefined;
}

/** The options with everything filled in. */
export interface Frame {
  readonly id: string;
  readonly title: string;
  readonly form: "full" | "sparkline";
  readonly width: number;
  readonly colors: PlotColors;
  readonly reader: Reader;
}

/** Checks the options; `id` and `heading` stand where the caller has none. */
export function frameOf(options: PlotOptions, usualId: string, heading: PlotStatement): Frame {
  const { width = 440, colors = "page", form = "full" } = objectOf("options", options);
  const reader = readerOf(options);
  const { id = usualId, title = reader.say(heading) } = options;
  if (typeof id !== "string" || !/^[a-z][\w-]*$/i.test(id)) {
    const allowed = "letters, digits, - and _, a letter first";
    refuse("id", id, allowed);
  }
  if (typeof title !== "string" || !title.trim()) {
    refuse("title", title, "a text", "text");
  }
  return {
    id,
    title,
    form: oneOf("form", form, ["full", "sparkline"]),
    width: numberOf("width", width, { min: 300, max: 1200 }),
    colors: oneOf("colors", colors, ["page", "light", "dark"]),
    reader,
  };
}
