import {
  assessPressureTest,
  expectedTestPressure,
  type PressureTest,
} from "hvac-install-math/pressure-test";
import {
  degF,
  psi,
  psia,
  psig,
  type Quantity,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import { expectTypeOf, it } from "vitest";

const change = { temperature: degF(95), laterTemperature: degF(65) };
declare const test: PressureTest;

it("a gauge reading needs the atmosphere, an absolute one does not", () => {
  const gauge = expectedTestPressure({
    ...change,
    pressure: psig(500),
    atmosphere: standardAtmosphere,
  });
  expectTypeOf(gauge).toEqualTypeOf<Quantity<"gaugePressure">>();
  const absolute = expectedTestPressure({ ...change, pressure: psia(515) });
  expectTypeOf(absolute).toEqualTypeOf<Quantity<"absolutePressure">>();
  // @ts-expect-error a gauge pressure without its atmosphere has no ratio
  expectedTestPressure({ ...change, pressure: psig(500) });
});

it("a pressure of either kind compiles with an atmosphere, and not without", () => {
  const either = psig(500) as Quantity<"gaugePressure"> | Quantity<"absolutePressure">;
  const later = expectedTestPressure({
    ...change,
    pressure: either,
    atmosphere: standardAtmosphere,
  });
  expectTypeOf(later).toEqualTypeOf<Quantity<"gaugePressure"> | Quantity<"absolutePressure">>();
  // @ts-expect-error it may be a gauge's
  expectedTestPressure({ ...change, pressure: either });
});

it("a drop is no pressure, a temperature difference no temperature", () => {
  // @ts-expect-error psi is a difference; the gauge reads psig
  expectedTestPressure({ ...change, pressure: psi(500), atmosphere: standardAtmosphere });
  const rise = degF(95).minus(degF(65));
  // @ts-expect-error a difference is no temperature
  expectedTestPressure({ ...change, laterTemperature: rise, pressure: psia(515) });
});

it("a limit is a drop, not a gauge pressure", () => {
  // @ts-expect-error psig is a point on the gauge, the limit is a difference in psi
  assessPressureTest({ ...test, criterion: { maximumDrop: psig(1) } });
});
