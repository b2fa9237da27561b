// How does a curve look in a row of a list? Its shapes alone, small, with the result as text alternative. Internal.
// Common practice of sparklines, no source.
// Does not cover axes and words: the full form has them.
import { axisOf } from "./axis.ts";
import { shapesOf } from "./panel-shapes.ts";
import { pictureOf } from "./picture.ts";
import type { LinePlot, Panel } from "./shapes.ts";

const [width, height, edge] = [120, 28, 6];

/** The first panel without its frame. */
export function sparkline({ frame, outcome, result, description, x, panels }: LinePlot): string {
  const panel = panels[0] as Panel;
  const { lines, bands, levels, reach } = panel;
  const values = [
    ...reach,
    ...levels.map(({ y }) => y),
    ...lines.flatMap(({ points, whisker = 0 }) =>
      points.flatMap(([, y]) => [y - whisker, y + whisker]),
    ),
    ...bands.flatMap(({ points }) => points.flatMap(([, low, high]) => [low, high])),
  ];
  const { number, word } = frame.reader;
  const between = [edge, width - edge] as const;
  const along = axisOf({ values: x, between, count: 2, isRound: false }, number);
  const up = { values, between: [height - edge, edge] as const, count: 2, isRound: false };
  const shapes = shapesOf(panel, along, axisOf(up, number), frame.colors);
  const said = `${outcome}${word("plots.colon")} ${result}. ${description}`;
  return pictureOf({ frame, description: said }, [width, height], [shapes]);
}
