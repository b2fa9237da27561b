// How does a part look while it is being filled in, and how does a module that wants it whole take it?
// Follows no standard. Does not cover which field has to be there in the end: the modules say that.
import type { Kind } from "../quantity/kinds.ts";

/**
 * A part of a record while it is being filled in: every field, at any depth, may still be missing.
 *
 * @typeParam T - The part when it is whole.
 */
export type Draft<T> = T extends { readonly kind: Kind; readonly unit: unknown }
  ? T
  : T extends readonly (infer One)[]
    ? readonly Draft<One>[]
    : T extends object
      ? { readonly [P in keyof T]?: Draft<Exclude<T[P], undefined>> | undefined }
      : T;

/** A part as a module takes it that looks at every field itself, and names what is missing. */
export const whole = <T>(part: Draft<T>): T => part as T;
