// What is around every picture? One svg element with its name and its text alternative. Internal.
// Follows SVG 2 and its accessibility mappings (role img, title and desc).
// Does not cover what is in it.
import type { Frame } from "./plot-options.ts";
import { paintOf } from "./styles.ts";
import { element, escaped, short, textSize } from "./svg-text.ts";

const fonts = "system-ui,-apple-system,'Segoe UI',Roboto,'Noto Sans',sans-serif";

/** The parts as one picture of a size, in units. */
export function pictureOf(
  { frame, description }: { readonly frame: Frame; readonly description: string },
  [width, height]: readonly [width: number, height: number],
  parts: readonly string[],
): string {
  const { id, title, colors } = frame;
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${short(width)} ${short(height)}`,
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
