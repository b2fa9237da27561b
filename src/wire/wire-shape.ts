// Which forms has a value on the wire? The language of shapes of a record, with two forms more.
// Follows commissioning/shape.ts. Does not cover how it is read: schema-of.ts.
import type { Shape } from "../commissioning/index.ts";

/** The forms that inputs and results have and a record has not. Source: none; the library's own type. */
export type More =
  | {
      /** An object that goes by its name, such as a refrigerant. */
      readonly named: Readonly<Record<string, object>>;
    }
  | {
      /** Fields with names of the writer's own, each of this form. */
      readonly each: WireShape;
    };

/**
 * The form of a value on the wire, as data.
 *
 * Source: none; the library's own type.
 */
export type WireShape = Shape<More>;
