import {
  degF,
  kPaa,
  psi,
  psig,
  type Quantity,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import {
  bubbleTemperature,
  dewTemperature,
  pressureTemperatureTable,
  R410A,
  subcooling,
  superheat,
} from "hvac-install-math/refrigerants";
import { test } from "vitest";

test("a gauge pressure without the atmosphere does not compile", () => {
  // @ts-expect-error a gauge reads above the air around it, which is not stated
  bubbleTemperature(R410A, psig(118));
  // @ts-expect-error a gauge reads above the air around it, which is not stated
  dewTemperature(R410A, psig(118));
  // @ts-expect-error a gauge reads above the air around it, which is not stated
  superheat(R410A, { pressure: psig(118), lineTemperature: degF(50) });
  // @ts-expect-error a gauge reads above the air around it, which is not stated
  subcooling(R410A, { pressure: psig(355), lineTemperature: degF(95) });
});

test("a difference, a gauge pressure as atmosphere and a bare number do not compile", () => {
  // @ts-expect-error a pressure difference is no pressure
  dewTemperature(R410A, psi(118), standardAtmosphere);
  // @ts-expect-error the atmosphere is an absolute pressure
  dewTemperature(R410A, psig(118), psig(14.7));
  // @ts-expect-error a number has no unit
  dewTemperature(R410A, 118, standardAtmosphere);
  const span = { from: degF(40), to: degF(50), step: degF(1).minus(degF(0)) };
  // @ts-expect-error gauge units need the atmosphere
  pressureTemperatureTable(R410A, { ...span, pressureUnit: psig });
});

test("an absolute pressure needs no atmosphere, a gauge pressure with one compiles", () => {
  dewTemperature(R410A, kPaa(900)) satisfies object;
  dewTemperature(R410A, psig(118), standardAtmosphere) satisfies object;
  superheat(R410A, { pressure: kPaa(900), lineTemperature: degF(50) }) satisfies object;
});

test("a pressure of either kind compiles with an atmosphere, and not without", () => {
  const either = psig(118) as Quantity<"gaugePressure"> | Quantity<"absolutePressure">;
  dewTemperature(R410A, either, standardAtmosphere) satisfies object;
  const reading = { pressure: either, lineTemperature: degF(50) };
  superheat(R410A, { ...reading, atmosphere: standardAtmosphere }) satisfies object;
  subcooling(R410A, { ...reading, atmosphere: standardAtmosphere }) satisfies object;
  // @ts-expect-error it may be a gauge's
  superheat(R410A, reading);
});
