// Is there enough nitrogen in the cylinder?
// Follows Span et al. (2000) through the reduced form: within 1e-5 in the system, 1 % in a cylinder up to
// 20 MPa and 3 % up to 31 MPa. Does not cover cooling of the cylinder while it empties: let it warm up.

import { type Caution, caution } from "../assessment/caution.ts";
import { heed, type SafetyStatement } from "../assessment/safety.ts";
import { numberOf, objectOf, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { frozen } from "../quantity/frozen.ts";
import { Quantity } from "../quantity/quantity.ts";
import { kg } from "../quantity/units/mass.ts";
import { kPag } from "../quantity/units/pressure.ts";
import { dangers } from "./cautions.ts";
import { chargeAt, pressureOf } from "./charge.ts";
import { absoluteSi, atmosphereSi, temperatureSi } from "./reading.ts";
import { type PressureTestStatement, say } from "./statements.ts";

// m³. The largest single cylinders hold 50 to 80 L, the smallest that is sold by its gas is 20 ft³ (566 L): common
// practice, no source.
const largestCylinder = 0.15;

/** A nitrogen cylinder. */
export interface NitrogenCylinder {
  /**
   * Water volume, as stamped on it, at most 150 L: not the volume of gas at 1 atm by which cylinders are sold. A 40 ft³
   * cylinder holds about 8 L of water.
   */
  readonly waterVolume: Quantity<"volume">;
  /** What its gauge shows now, up to 31 MPa absolute. */
  readonly pressure: Quantity<"gaugePressure">;
  /** Temperature of the cylinder; that of the system when left out. */
  readonly temperature?: Quantity<"temperature"> | undefined;
}

/** What a fill takes. */
export interface NitrogenNeed {
  /** Nitrogen for all fills, purges not counted. */
  readonly mass: Quantity<"mass">;
  /** Whether the cylinder can give it while it stays above the test pressure. */
  readonly enough: boolean;
  /** How many fills it can give in all. */
  readonly fills: number;
  /** What the cylinder shows afterwards; absent when it does not hold enough. */
  readonly cylinderPressureAfter?: Quantity<"gaugePressure"> | undefined;
  /** What can hurt someone. */
  readonly cautions: readonly Caution<PressureTestStatement | SafetyStatement>[];
}

/**
 * The nitrogen that a test takes and what is left in the cylinder, as real gas: at 200 bar a cylinder
 * holds several per cent less than the ideal gas law says.
 *
 * @param fill - System `volume` (above 0), `pressure` to reach (`gaugePressure`, up to 6 MPa absolute),
 * `startPressure` (not above it; 0 when left out: full of air or nitrogen at the atmosphere), `temperature`,
 * `atmosphere`, number of `fills` (1 when left out) and the `cylinder`.
 * @returns Mass, whether the cylinder suffices, how many fills it gives, its pressure afterwards.
 * @throws {@link OutOfRangeError} beyond the range of the nitrogen equation or 31 MPa in the cylinder.
 * @throws {@link InvalidInputError} when a value is missing, of another kind or out of its range.
 *
 * Cautions: regulator and relief device; never from an open cylinder valve; the result carries them.
 *
 * Source: Span et al., J. Phys. Chem. Ref. Data 29, 1361 (2000), doi:10.1063/1.1349047.
 *
 * @example
 * ```ts
 * import { nitrogenNeeded } from "hvac-install-math/pressure-test";
 * import { degF, g, liter, psig, standardAtmosphere } from "hvac-install-math/quantity";
 *
 * const need = nitrogenNeeded({
 *   volume: liter(3),
 *   pressure: psig(500),
 *   temperature: degF(70),
 *   atmosphere: standardAtmosphere,
 *   cylinder: { waterVolume: liter(8), pressure: psig(2000) },
 * });
 * need.mass.toString(g, 0); // => 119 g
 * need.cylinderPressureAfter?.toString(psig, 0); // => 1798 psig
 * need.fills; // => 7
 * ```
 */
export function nitrogenNeeded(fill: {
  readonly volume: Quantity<"volume">;
  readonly pressure: Quantity<"gaugePressure">;
  readonly startPressure?: Quantity<"gaugePressure"> | undefined;
  readonly temperature: Quantity<"temperature">;
  readonly atmosphere: Quantity<"absolutePressure">;
  readonly fills?: number | undefined;
  readonly cylinder: NitrogenCylinder;
}): NitrogenNeed {
  const { fills = 1, startPressure } = objectOf("fill", fill);
  const V = siOf("volume", fill.volume, "volume", { above: 0 });
  const air = atmosphereSi("atmosphere", fill.atmosphere);
  const T = temperatureSi("temperature", fill.temperature);
  const p = absoluteSi("pressure", fill.pressure, air);
  const p0 = startPressure === undefined ? air : absoluteSi("startPressure", startPressure, air);
  if (startPressure)
    siOf("startPressure", startPressure, "gaugePressure", { max: fill.pressure.si });
  numberOf("fills", fills, { min: 1, max: 1000 });
  const cylinder = objectOf("cylinder", fill.cylinder);
  const Vc = siOf("cylinder.waterVolume", cylinder.waterVolume, "volume", {
    above: 0,
    max: largestCylinder,
    hint: say("pressure-test.water-volume"),
  });
  siOf("cylinder.pressure", cylinder.pressure, "gaugePressure", { above: -air });
  const most = { max: 31e6 - air };
  const pc = siOf("cylinder.pressure", cylinder.pressure, "gaugePressure", most, OutOfRangeError);
  const Tc =
    cylinder.temperature === undefined
      ? T
      : temperatureSi("cylinder.temperature", cylinder.temperature);
  const density = (pressure: number, temperature: number) =>
    chargeAt(pressure, [{ share: 1, temperature }], 0);
  const each = V * (density(p, T) - density(p0, T));
  const held = Vc * density(pc + air, Tc);
  const usable = held - Vc * density(p, Tc);
  // A system that is there already needs nothing.
  const possible = each > 0 ? Math.max(0, Math.floor(usable / each)) : fills;
  const enough = possible >= fills;
  const left = (held - fills * each) / Vc;
  return frozen({
    mass: new Quantity(fills * each, kg),
    enough,
    fills: possible,
    ...(enough && {
      cylinderPressureAfter: kPag(
        (pressureOf(left, [{ share: 1, temperature: Tc }], 0) - air) / 1e3,
      ).as(cylinder.pressure.unit),
    }),
    cautions: heed<PressureTestStatement | SafetyStatement>([
      caution("finding", say("pressure-test.cylinder-cools")),
      ...dangers,
    ]),
  });
}
