// Which field does a path mean? Paths such as `pressureTest.readings[1].pressure`.
// Follows the writing of JavaScript. Does not cover wild cards.
import { refuse } from "../quantity/check.ts";
import type { Shape } from "./shape.ts";

/** The steps of a path: names of fields and positions in lists. */
export function segmentsOf(argument: string, path: string): (string | number)[] {
  // an engine gives up on a pattern over millions of steps, with an error of its own
  if (typeof path === "string" && path.length < 200 && /^\w+(\.\w+|\[\d{1,6}\])*$/.test(path)) {
    return (path.match(/\w+|\[\d+/g) ?? []).map((part) =>
      part.startsWith("[") ? Number(part.slice(1)) : part,
    );
  }
  return refuse(argument, path, "the path of a field, such as pressureTest.readings[1].pressure");
}

/** The shape of the field of a whole that a path means; throws where it has no such field. */
export function shapeAt(argument: string, path: string, root: Shape): Shape {
  let shapes: readonly Shape[] = [root];
  for (const segment of segmentsOf(argument, path)) {
    shapes = shapes.flatMap((one) => inner(one, segment));
  }
  const [first, ...more] = new Set(shapes);
  if (first === undefined) return refuse(argument, path, "the path of a field of the record");
  return more.length > 0 ? { either: [first, ...more] } : first;
}

function inner(shape: Shape, segment: string | number): readonly Shape[] {
  if (typeof shape === "string") return [];
  if ("either" in shape) return shape.either.flatMap((one) => inner(one, segment));
  if ("cases" in shape) return Object.values(shape.cases).flatMap((one) => inner(one, segment));
  if (typeof segment === "number") return "list" in shape ? [shape.list] : [];
  if (!("fields" in shape)) return [];
  const { fields } = shape;
  return [segment, `${segment}?`].flatMap((name) =>
    Object.hasOwn(fields, name) ? [fields[name] as Shape] : [],
  );
}
