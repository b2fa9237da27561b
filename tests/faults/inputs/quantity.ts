import type * as quantity from "hvac-install-math/quantity";
import {
  atmosphereAtAltitude,
  degC,
  degF,
  deltaF,
  ft,
  InvalidInputError,
  mbara,
  oz,
  ozPerFt,
  psi,
  psia,
  psig,
  type Quantity,
  type Unit,
} from "hvac-install-math/quantity";
import type { Inputs } from "../catalogue.ts";

const atmosphere = atmosphereAtAltitude(ft(5000));

export const inputs: Inputs<typeof quantity> = {
  atmosphereAtAltitude: [[ft(5000)]],
  equals: [
    [degF(77) as never, degC(25) as never, deltaF(0.1) as never],
    [psi(1) as never, psi(2) as never, psi(0.5) as never],
  ],
  fromJSON: [
    [{ kind: "gaugePressure", value: 118, unit: "psig" }, "gaugePressure" as never],
    [{ kind: "temperature", value: 20, unit: "°C" }, "temperature" as never],
  ],
  isInvalidInputError: [[new InvalidInputError({ argument: "a", value: "b", allowed: "c" })]],
  isQuantity: [[psig(118), "gaugePressure" as never]],
  problemOf: (["min", "above", "max", "below"] as const).map((is) => [
    new InvalidInputError({
      argument: "length",
      value: "3 ft",
      allowed: "another one",
      bound: { is, value: ft(3), limit: ft(5) },
    }),
  ]),
  revive: [[{ drop: { kind: "pressureDifference", value: 2, unit: "psi" } }]],
  sameQuantity: [[psig(118), psig(118)]],
  toPlain: [[{ drop: psi(2), unit: psi }]],
  unitBySymbol: [["gaugePressure" as never, "psig"]],
  unitsOf: [["gaugePressure" as never]],
  product: [[ozPerFt(0.16), ft(20), oz] as never],
  quotient: [[oz(3.2), ozPerFt(0.16), ft] as never],
  stationPressure: [
    [{ seaLevelPressure: mbara(1016), altitude: ft(5280), reduction: "altimeter-setting" }],
    [
      {
        seaLevelPressure: mbara(1016),
        altitude: ft(5280),
        reduction: "mean-sea-level",
        temperature: degF(90),
        altitudeAccuracy: ft(30),
      },
    ],
  ],
  toAbsolute: [[psig(118), atmosphere]],
  toGauge: [[psia(132.7), atmosphere]],
};

type Drop = Quantity<"pressureDifference">;
type Gauge = Quantity<"gaugePressure">;

/** The methods of a quantity, as functions of their arguments. */
export const methods = {
  unit: (value: number): Gauge => psig(value),
  in: (unit: Unit<"gaugePressure">): number => psig(118).in(unit),
  as: (unit: Unit<"gaugePressure">): Gauge => psig(118).as(unit),
  plus: (other: Drop): Gauge => psig(118).plus(other),
  minus: (other: Drop): Gauge => psig(118).minus(other),
  times: (factor: number): Drop => psi(118).times(factor),
  dividedBy: (divisor: number | Drop): unknown => psi(118).dividedBy(divisor as number),
  toString: (unit: Unit<"gaugePressure">, decimals: number): string =>
    psig(118).toString(unit, decimals),
};

export const methodInputs: Inputs<typeof methods> = {
  unit: [[118]],
  in: [[psig]],
  as: [[psig]],
  plus: [[psi(2)]],
  minus: [[psi(2)]],
  times: [[3]],
  dividedBy: [[3], [psi(2)]],
  toString: [[psig, 2]],
};
