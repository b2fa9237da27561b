import {
  additionalCharge,
  type LiquidSubcoolingInput,
  liquidLineSubcooling,
  staticHead,
  type Tube,
  tubeVolume,
} from "hvac-install-math/line-set";
import { barg, ft, g, kgPerM3, m, oz, ozPerFt, type Quantity } from "hvac-install-math/quantity";
import { expectTypeOf, it } from "vitest";

const run = {
  length: ft(60),
  preChargedLength: ft(40),
  rate: ozPerFt(0.16),
  shortLineRule: "add-only",
} as const;

it("gives a mass for the charge and a volume for the tube", () => {
  expectTypeOf(additionalCharge(run).additionalCharge).toEqualTypeOf<Quantity<"mass">>();
  expectTypeOf(tubeVolume({} as Tube, m(1))).toEqualTypeOf<Quantity<"volume">>();
});

it("refuses what the nameplate cannot mean", () => {
  // @ts-expect-error a mass is not a rate
  additionalCharge({ ...run, rate: oz(0.16) });
  // @ts-expect-error a bare number has no unit
  additionalCharge({ ...run, length: 60 });
  // @ts-expect-error the rule for short lines has to be named
  additionalCharge({ length: ft(60), preChargedLength: ft(40), rate: ozPerFt(0.16) });
  // @ts-expect-error there is no such rule
  additionalCharge({ ...run, shortLineRule: "subtract" });
  // @ts-expect-error a length is not a mass
  additionalCharge({ ...run, factoryCharge: ft(3) });
});

it("refuses a gauge pressure where a loss or an absolute pressure is meant", () => {
  // @ts-expect-error a mass is not a density
  staticHead({ density: g(3), lift: m(3) });
  const line = {} as LiquidSubcoolingInput;
  // @ts-expect-error a gauge pressure needs its atmosphere first
  liquidLineSubcooling({ ...line, liquidPressure: barg(25) });
  // @ts-expect-error a loss is a difference of pressures
  liquidLineSubcooling({ ...line, losses: [barg(1)] });
  expectTypeOf(staticHead({ density: kgPerM3(970), lift: m(3) })).toEqualTypeOf<
    Quantity<"pressureDifference">
  >();
});
