// Which refrigerant is meant? Its object goes by its designation.
// Follows ANSI/ASHRAE Standard 34 for the designations. Does not cover a refrigerant of the caller's own.
import { type Refrigerant, refrigerants } from "../refrigerants/index.ts";

/** Every refrigerant of the library by its designation. */
export const byDesignation = (): { readonly named: Readonly<Record<string, Refrigerant>> } => ({
  named: Object.fromEntries(refrigerants.map((one) => [one.designation, one])),
});
