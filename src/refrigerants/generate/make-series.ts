// Which series stand for a refrigerant's saturation curves? From the model to the numbers that ship.
// Follows the variables √(1 − T/Tr) and √(ln(pr/p)), in which the curves are smooth up to the critical point.
import type { Fluid } from "../../property-model/index.ts";
import { pointAtTemperature } from "../../property-model/saturation-at.ts";
import type { SaturationSeries } from "../refrigerant.ts";
import type { Side } from "../saturation/saturation-curve.ts";
import { chebyshevFit } from "./chebyshev-fit.ts";
import type { Definition } from "./definitions.ts";
import type { Reference, ReferencePoint } from "./reference-curves.ts";

/** A refrigerant's curves and the temperatures between which they hold, K. */
export interface SeriesWithRange {
  readonly series: SaturationSeries;
  readonly min: number;
  readonly max: number;
  /** Critical point shown to the user, K and Pa. */
  readonly critical: readonly [temperature: number, pressure: number];
}

/** −60 °C, the lower end unless the model begins higher. */
const lowest = 213.15;

/** Fits the six curves. */
export function makeSeries(
  definition: Definition,
  fluid: Fluid,
  reference: Reference,
): SeriesWithRange {
  const { scale, critical, minTemperature } = scaling(definition, fluid);
  const [Tr, pr] = scale;
  const min = Math.max(lowest, minTemperature);
  const max = Math.floor(Tr * definition.reach * 100) / 100;
  const x = outward(Math.sqrt(1 - max / Tr), Math.sqrt(1 - min / Tr));
  const curve = (side: Side, value: (point: ReferencePoint) => number, tolerance: number) =>
    chebyshevFit((node) => value(reference.at(side, Tr * (1 - node * node))), x, tolerance);
  const logPressure = ({ pressure }: ReferencePoint) => Math.log(pressure);
  const inverse = (side: Side) => {
    const toS = (T: number) => Math.sqrt(Math.log(pr / reference.at(side, T).pressure));
    const s = outward(toS(max), toS(min));
    const terms = chebyshevFit(
      (node) => reference.temperatureAt(side, pr * Math.exp(-node * node)),
      s,
      1e-7,
    );
    return { s, terms };
  };
  const one = definition.model === "pure";
  const bubble = curve("bubble", logPressure, 2e-10);
  const bubbleInverse = inverse("bubble");
  return {
    series: {
      temperature: Tr,
      pressure: pr,
      x,
      bubble,
      dew: one ? bubble : curve("dew", logPressure, 2e-10),
      liquid: curve("bubble", ({ density }) => density, 1e-6),
      vapor: curve("dew", ({ density }) => Math.log(density), 2e-9),
      bubbleInverse,
      dewInverse: one ? bubbleInverse : inverse("dew"),
    },
    min,
    max,
    critical,
  };
}

/** The interval that contains both, rounded outward to four decimals. */
function outward(from: number, to: number): readonly [from: number, to: number] {
  return [Math.floor(from * 1e4) / 1e4, Math.ceil(to * 1e4) / 1e4];
}

/** Reducing constants of the series: the point where the two phases of this very model meet. */
function scaling(
  definition: Definition,
  fluid: Fluid,
): {
  scale: readonly [temperature: number, pressure: number];
  critical: readonly [temperature: number, pressure: number];
  minTemperature: number;
} {
  if (fluid.kind === "mixture") {
    const [T, p] = definition.mixtureCritical as readonly [number, number];
    const critical = [Number(T.toFixed(2)), Math.round(p / 1e3) * 1e3] as const;
    return { scale: [T, Math.round(p)], critical, minTemperature: 0 };
  }
  const { critical } = fluid;
  const published = [critical.temperature, Number(critical.pressure.toPrecision(6))] as const;
  const { minTemperature } = fluid.limits;
  if (fluid.kind === "pseudo-pure") {
    return {
      scale: [critical.temperature, critical.pressure],
      critical: published,
      minTemperature,
    };
  }
  // The numerical critical pressure, extrapolated from just below.
  const Tc = Number(fluid.saturationLimit.toFixed(6));
  const [near, nearer] = [2e-4, 1e-4].map((share) =>
    Math.log(pointAtTemperature(fluid, "dew", Tc * (1 - share))?.pressure ?? Number.NaN),
  ) as [number, number];
  const pc = Number(Math.exp(2 * nearer - near).toPrecision(7));
  return { scale: [Tc, pc], critical: published, minTemperature };
}
