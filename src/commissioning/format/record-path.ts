// How is a path written, and which field of a record is nearest to it? Paths such as `runs[0].tubing.length`.
// Follows the writing of JavaScript. Does not cover which fields there are: shapes does.
import { known } from "../../quantity/known.ts";
import { segmentsOf, shapeAt } from "../../shapes/index.ts";
import { recordShape } from "./generated/record-shape.ts";

/** A step of a path: the name of a field or a position in a list. */
export type Segment = string | number;

/** The steps of a path as text. */
export function pathOf(segments: readonly Segment[]): string {
  return segments
    .map((one, i) => (typeof one === "number" ? `[${one}]` : i > 0 ? `.${one}` : one))
    .join("");
}

/** Whether a path leads to a field, or to something in it: `run` holds `run.lift` and not `runs`. */
export const leadsInto = (path: string, field: string): boolean =>
  path.startsWith(field) && /^(?:$|[.[])/.test(path.slice(field.length));

/** The path of the field itself, or of the part around it that a record has. */
export function nearestField(path: string): string {
  const segments = segmentsOf("path", path);
  for (let length = segments.length; length > 1; length--) {
    const own = pathOf(segments.slice(0, length));
    if (isField(own)) return own;
  }
  return pathOf(segments.slice(0, 1));
}

const isField = (path: string): boolean =>
  known(() => shapeAt("path", path, recordShape)) !== undefined;
