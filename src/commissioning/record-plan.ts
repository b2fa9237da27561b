// What is known before the work? What can be bought, what the weather will be, what stands in the van. Types only.
// Follows the inputs of line-set and pressure-test that no plate and no manual fixes.
// Does not cover what comes of it: see planning.
import type { NitrogenCylinder } from "../pressure-test/index.ts";
import type { Quantity } from "../quantity/quantity.ts";
import type { Draft } from "../shapes/index.ts";

/** What a plan rests on besides plates, manual and runs. */
export interface Planned {
  /** The lengths in which a line set can be bought. */
  readonly stock?: readonly Quantity<"length">[] | undefined;
  /** Whether it can be cut: `false` for lines that come charged or with fixed ends. */
  readonly cuttable?: boolean | undefined;
  /** Extra per run for measuring and making ends. */
  readonly slack?: Quantity<"length"> | undefined;
  /** Extra per run that is kept as a loop for service. */
  readonly serviceLoop?: Quantity<"length"> | undefined;
  /** Thickness of the insulation on each line. */
  readonly insulation?: Quantity<"length"> | undefined;
  /** Outside diameter of the drain in the bundle. */
  readonly drainDiameter?: Quantity<"length"> | undefined;
  /** Outside diameter of the cable in the bundle. */
  readonly cableDiameter?: Quantity<"length"> | undefined;
  /** Gas temperature to expect at the nitrogen fill. */
  readonly fillTemperature?: Quantity<"temperature"> | undefined;
  /** Gas temperature to expect at the reading after the hold. */
  readonly laterTemperature?: Quantity<"temperature"> | undefined;
  /** Warmest that sun and house may make the gas while it stands. */
  readonly warmest?: Quantity<"temperature"> | undefined;
  /** Pressure to fill to; that of the manual when left out. */
  readonly fillPressure?: Quantity<"gaugePressure"> | undefined;
  /** Time between the fill and the reading. */
  readonly hold?: Quantity<"duration"> | undefined;
  /** Smallest leak that the test should show, as nitrogen at the test pressure. */
  readonly leakRate?: Quantity<"throughput"> | undefined;
  /** The nitrogen cylinder. */
  readonly cylinder?: Draft<NitrogenCylinder> | undefined;
  /** Speed of the vacuum pump at its inlet. */
  readonly pump?: Quantity<"volumeFlow"> | undefined;
}
