// What the field-text tests share: the catalogue's units, and one error caught.
import { type FieldTextError, isFieldTextError } from "hvac-install-math/field-text";
import type { Kind, Unit } from "hvac-install-math/quantity";
import * as catalogue from "../../src/quantity/units/index.ts";

/** A unit of a kind that the test does not care for. */
export type SomeUnit = Unit<Kind> &
  ((value: number) => { readonly si: number; toString(): string });

/** Every unit of the catalogue. */
export const allUnits: SomeUnit[] = Object.values(catalogue) as unknown as SomeUnit[];

/** The typed error that the work throws; any other error fails the test. */
export function refusal(work: () => unknown): FieldTextError {
  try {
    work();
  } catch (error) {
    if (isFieldTextError(error)) return error;
    throw error;
  }
  throw new Error("nothing was refused");
}
