import { numberOf, oneOf, siOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Material } from "./conductor-size.ts";

/** A current above 0, in A. */
export const amperesOf = (argument: string, value: Quantity<"current">): number =>
  siOf(argument, value, "current", { above: 0 });

/** Copper or aluminum. */
export const materialOf = (argument: string, value: Material): Material =>
  oneOf(argument, value, ["copper", "aluminum"]);

/** A whole number from 1 up. */
export function countOf(argument: string, count: number): number {
  if (Number.isInteger(numberOf(argument, count, { min: 1 }))) return count;
  throw new InvalidInputError({ argument, value: String(count), allowed: "a whole number" });
}
