// Which field does a path mean? Paths such as `pressureTest.readings[1].pressure`.
// Follows the writing of JavaScript. Does not cover wild cards.
import { describe } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { recordShape } from "./record-shape.ts";
import { fieldOf, type Shape } from "./shape.ts";

/** The steps of a path: names of fields and positions in lists. */
export function segmentsOf(argument: string, path: string): (string | number)[] {
  if (typeof path === "string" && path.length < 200 && /^\w+(\.\w+|\[\d{1,6}\])*$/.test(path)) {
    const parts = path.match(/\w+/g) ?? [];
    return parts.map((part) => (path.includes(`[${part}]`) && /^\d/.test(part) ? +part : part));
  }
  throw new InvalidInputError({
    argument,
    value: describe(path),
    allowed: "the path of a field, such as pressureTest.readings[1].pressure",
  });
}

/** The steps as text again. */
export function pathOf(segments: readonly (string | number)[]): string {
  return segments
    .map((one, i) => (typeof one === "number" ? `[${one}]` : i > 0 ? `.${one}` : one))
    .join("");
}

/** The shape of the field that a path means; throws where a record has no such field. */
export function shapeAt(argument: string, path: string): Shape {
  let shape: Shape = recordShape;
  for (const segment of segmentsOf(argument, path)) {
    const own = inner(shape, segment);
    if (!own) {
      const allowed = "the path of a field of the record";
      throw new InvalidInputError({ argument, value: describe(path), allowed });
    }
    shape = own;
  }
  return shape;
}

function inner(shape: Shape, segment: string | number): Shape | undefined {
  if (typeof shape === "string") return undefined;
  if ("either" in shape) {
    for (const one of shape.either) {
      const found = inner(one, segment);
      if (found) return found;
    }
  }
  if (typeof segment === "number") return "list" in shape ? shape.list : undefined;
  return "fields" in shape ? fieldOf(shape.fields, segment) : undefined;
}
