// Who says how tight a flare nut has to be?
// Follows the works that the windows of flare-torque.ts cite. Does not cover their figures.

/**
 * Who prints the torque: two manufacturers' manuals for JIS-type nuts, EN 378-2, or the range of
 * another manufacturer's manual.
 */
export type FlareTorqueSource = "jis-type-manuals" | "en-378-2" | "manual-range";
