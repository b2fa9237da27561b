/**
 * Curves as SVG text: the pressure hold, the vacuum decay, the saturation line.
 *
 * @module plots
 */
export {};
