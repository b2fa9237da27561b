/** Saturation pressure of water in Pa at °C, for the simulators: Magnus form, another equation than the library's. */
export function saturation(celsius: number): number {
  return 611.2 * Math.exp((17.62 * celsius) / (243.12 + celsius));
}
