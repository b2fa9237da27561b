import { assessFlareTorque, flareDiameterLimits, flareTorque } from "hvac-install-math/flare-joint";
import { mm, newtonMeter, percent } from "hvac-install-math/quantity";
import { test } from "vitest";

test("what would be a mistake on site does not compile", () => {
  // @ts-expect-error: a tube is named by its size in inches, or metric with its unit.
  () => flareTorque("9.52");
  // @ts-expect-error: a torque is not a length.
  () => assessFlareTorque({ tube: "3/8", torque: mm(38) });
  const wrench = { accuracy: percent(4) };
  // @ts-expect-error: an accuracy in per cent is `relativeAccuracy`.
  () => assessFlareTorque({ tube: "3/8", torque: newtonMeter(38), wrench });
  // @ts-expect-error: no flare figures are held for this refrigerant.
  () => flareDiameterLimits({ tube: "3/8", refrigerant: "R290" });
});
