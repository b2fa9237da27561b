// Which verdicts does a function of an app take that says no more than Assessment?
import type { Assessment } from "hvac-install-math/assessment";
import type { circuitFromNameplate } from "hvac-install-math/circuit-protection";
import type { assessInstallation } from "hvac-install-math/commissioning";
import { formatQuantity } from "hvac-install-math/display";
import type { assessPressureTest } from "hvac-install-math/pressure-test";
import type { AnyQuantity } from "hvac-install-math/quantity";
import type { assessVacuumDecay } from "hvac-install-math/vacuum-decay";
import { expectTypeOf, it } from "vitest";

it("the verdict of any module is an Assessment", () => {
  expectTypeOf<ReturnType<typeof assessPressureTest>>().toExtend<Assessment>();
  expectTypeOf<ReturnType<typeof assessVacuumDecay>>().toExtend<Assessment>();
  expectTypeOf<ReturnType<typeof circuitFromNameplate>>().toExtend<Assessment>();
  expectTypeOf<ReturnType<typeof assessInstallation>>().toExtend<Assessment>();
});

it("a quantity whose kind is not known is shown without narrowing it", () => {
  const figure = undefined as unknown as AnyQuantity;
  expectTypeOf(formatQuantity(figure, { system: "SI" })).toEqualTypeOf<string>();
});
