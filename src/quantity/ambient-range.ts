// Which pressures can the air around a gauge have? From above the highest summit to below any mine.
// Common practice, no source. Does not cover pressurized or evacuated chambers.

/** Station pressure, Pa. */
export const ambientRange: { readonly min: number; readonly max: number } = {
  min: 20e3,
  max: 120e3,
};
