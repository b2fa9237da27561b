/**
 * The closed set of kinds of quantity. Points on a scale (`temperature`, `gaugePressure`,
 * `absolutePressure`) are kinds of their own, apart from the differences between two of them.
 * Everything else is additive: its difference is of the same kind.
 *
 * The value is the coherent SI unit in which the `si` field of a quantity is kept.
 *
 * Source: ISO 80000-1:2022 for the coherent units; BIPM SI Brochure, 9th ed.
 */
export interface Kinds {
  /** Thermodynamic temperature, a point. */
  temperature: "K";
  /** Pressure above the local atmosphere, a point. */
  gaugePressure: "Pa";
  /** Pressure above vacuum, a point. Vacuum gauge readings in micron are of this kind. */
  absolutePressure: "Pa";
  /** Difference of two temperatures, such as a superheat. */
  temperatureDifference: "K";
  /** Difference of two pressures, such as a drop. */
  pressureDifference: "Pa";
  /** Length, height, diameter, thickness. */
  length: "m";
  /** Area. */
  area: "m2";
  /** Volume. */
  volume: "m3";
  /** Mass. */
  mass: "kg";
  /** Mass per length of tube. */
  massPerLength: "kg/m";
  /** Mass per volume. */
  density: "kg/m3";
  /** Time between two moments. */
  duration: "s";
  /** Speed. */
  speed: "m/s";
  /** Plane angle. */
  angle: "rad";
  /** A pure number with a meaning: relative humidity, slope, unbalance, mass fraction. */
  ratio: "1";
  /** Mass per time. */
  massFlow: "kg/s";
  /** Volume per time. */
  volumeFlow: "m3/s";
  /** Gas throughput, pressure times volume per time: the rate of a leak. */
  throughput: "Pa.m3/s";
  /** Rate of pressure rise or fall. */
  pressureRate: "Pa/s";
  /** Electric voltage. */
  voltage: "V";
  /** Electric current. */
  current: "A";
  /** Electric resistance. */
  resistance: "ohm";
  /** Electric resistance per length of conductor. */
  resistancePerLength: "ohm/m";
  /** Power: electric, heating or cooling. */
  power: "W";
  /** Torque. */
  torque: "N.m";
  /** Energy per mass, such as an enthalpy. */
  specificEnergy: "J/kg";
  /** Heat per mass and temperature difference. */
  specificHeat: "J/(kg.K)";
}

/** The name of a kind of quantity, a key of {@link Kinds}. */
export type Kind = keyof Kinds;

/**
 * Which kind the difference of two points has.
 *
 * Source: ISO 80000-5:2019 distinguishes thermodynamic temperature from temperature difference, and
 * ISO 80000-4:2019 gauge pressure from absolute pressure.
 */
export interface Differences {
  /** Superheat, subcooling, split. */
  temperature: "temperatureDifference";
  /** A drop on a gauge. */
  gaugePressure: "pressureDifference";
  /** A rise in vacuum. */
  absolutePressure: "pressureDifference";
}

/** A kind whose values are points on a scale and cannot be added to each other. Source: see {@link Differences}. */
export type PointKind = keyof Differences;

/** A kind whose values add and scale like plain numbers. Source: see {@link Differences}. */
export type AdditiveKind = Exclude<Kind, PointKind>;

/** The kind of the difference of two quantities of kind `K`. Source: see {@link Differences}. */
export type DifferenceOf<K extends Kind> = K extends PointKind ? Differences[K] : K;
