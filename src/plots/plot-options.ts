// What can a reader choose about a picture? Its width, its words, its ids, its colours.
// Follows WCAG 2.2, 1.1.1 (text alternative), 1.4.3 and 1.4.11 (contrast).
// Does not cover units: each plot has its own.
import { describe, numberOf, objectOf, oneOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";

/**
 * Where the colours of a plot come from. `page`: text and readings in the colour of the text around it,
 * the rest from CSS custom properties with a fallback that is visible on light and on dark. `light` and
 * `dark`: plain colours for that background, for a program that knows no CSS.
 *
 * Source: none; the library's own words.
 */
export type PlotColors = "page" | "light" | "dark";

/** What every plot can be told. Source: none; the library's own type. */
export interface PlotOptions {
  /** Begins every id of the picture; letters, digits, `-` and `_`, a letter first. Each plot of a page needs its own. */
  readonly id?: string;
  /** Heading of the picture and its accessible name; says what is drawn when left out. */
  readonly title?: string;
  /** Width of the drawing, 300 to 1200 units, 440 when left out; the text is 13 units high. The picture scales to the room that it is given. */
  readonly width?: number;
  /** Where the colours come from; `page` when left out. */
  readonly colors?: PlotColors;
}

/** The options with everything filled in. */
export interface Frame {
  readonly id: string;
  readonly title: string;
  readonly width: number;
  readonly colors: PlotColors;
}

/** Checks the options. */
export function frameOf(options: PlotOptions, id: string, title: string): Frame {
  const { width = 440, colors = "page", ...given } = objectOf("options", options);
  const frame = { id, title, ...defined(given) };
  if (typeof frame.id !== "string" || !/^[a-z][\w-]*$/i.test(frame.id)) {
    const allowed = "letters, digits, - and _, a letter first";
    throw new InvalidInputError({ argument: "id", value: describe(frame.id), allowed });
  }
  if (typeof frame.title !== "string" || !frame.title.trim()) {
    const allowed = "a text";
    throw new InvalidInputError({ argument: "title", value: describe(frame.title), allowed });
  }
  return {
    id: frame.id,
    title: frame.title,
    width: numberOf("width", width, { min: 300, max: 1200 }),
    colors: oneOf("colors", colors, ["page", "light", "dark"]),
  };
}

function defined({ id, title }: PlotOptions): { id?: string; title?: string } {
  return { ...(id !== undefined && { id }), ...(title !== undefined && { title }) };
}
