// Which fields has a record? Their paths as a type, so that a language that words one too few does not compile.
// Follows the types of the record. Does not cover positions in lists: see record-path.ts.

/**
 * The paths of all parts and fields of a record, without positions: `joints.torque`.
 */
export type FieldPath<T> = T extends Leaf
  ? never
  : T extends readonly (infer Item)[]
    ? FieldPath<Item>
    : { [K in keyof T & string]: K | `${K}.${FieldPath<NonNullable<T[K]>>}` }[keyof T & string];

/** What has no fields: words, numbers, flags and quantities. */
type Leaf = string | number | boolean | { readonly si: number; readonly kind: string };
