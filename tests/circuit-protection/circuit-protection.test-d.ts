import {
  type AwgSize,
  circuitFromNameplate,
  iec60364,
  type MetricSize,
  minimumCircuitAmpacity,
  nec2023,
  usableAmpacity,
} from "hvac-install-math/circuit-protection";
import { ampere, degC, deltaC, volt } from "hvac-install-math/quantity";
import { expectTypeOf, it } from "vitest";

const plate = {
  minimumCircuitAmpacity: ampere(20),
  maximumOvercurrentProtection: ampere(30),
  supply: { voltage: volt(240), phases: 1 },
} as const;

it("answers in the sizes of the rules' family", () => {
  const awg = circuitFromNameplate({
    ...plate,
    rules: nec2023,
    wiring: { material: "copper", insulation: "75 °C", ambient: degC(40) },
  });
  expectTypeOf(awg.conductor?.size).toEqualTypeOf<AwgSize | undefined>();
  const metric = circuitFromNameplate({
    ...plate,
    rules: iec60364,
    wiring: { material: "copper", insulation: "70 °C", method: "C" },
  });
  expectTypeOf(metric.conductor?.size).toEqualTypeOf<MetricSize | undefined>();
});

it("does not take wiring of one family with rules of the other", () => {
  circuitFromNameplate({
    ...plate,
    rules: iec60364,
    // @ts-expect-error 75 °C insulation is no column of the metric tables, and a method is missing
    wiring: { material: "copper", insulation: "75 °C" },
  });
  circuitFromNameplate({
    ...plate,
    rules: nec2023,
    // @ts-expect-error a reference method means nothing in wire gauge rules
    wiring: { material: "copper", insulation: "75 °C", method: "C" },
  });
});

it("does not take sizes of another family, or that are not made", () => {
  const wiring = { material: "copper", insulation: "75 °C" } as const;
  // @ts-expect-error a metric size under wire gauge rules
  usableAmpacity({ rules: nec2023, wiring, phases: 1, size: "4 mm²" });
  // @ts-expect-error 5 AWG is not in the table
  usableAmpacity({ rules: nec2023, wiring, phases: 1, size: "5 AWG" });
});

it("does not take bare numbers, other kinds or a temperature difference", () => {
  // @ts-expect-error a bare number has no unit
  minimumCircuitAmpacity([{ kind: "compressor", current: 20 }]);
  // @ts-expect-error volts are no current
  minimumCircuitAmpacity([{ kind: "compressor", current: volt(20) }]);
  circuitFromNameplate({
    ...plate,
    rules: nec2023,
    // @ts-expect-error an ambient is a temperature, not a difference
    wiring: { material: "copper", insulation: "75 °C", ambient: deltaC(40) },
  });
});

it("does not do without rules", () => {
  // @ts-expect-error which code is adopted has to be said
  circuitFromNameplate({ ...plate, wiring: { material: "copper", insulation: "75 °C" } });
});

it("knows the trade's words", () => {
  circuitFromNameplate({
    ...plate,
    rules: nec2023,
    // @ts-expect-error not a wording of the plate
    protectionMarking: "breaker only",
    wiring: { material: "copper", insulation: "75 °C" },
  });
});
