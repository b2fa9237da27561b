import { condensateTrap, humidityRatio, slopeOf } from "hvac-install-math/condensate";
import { degC, inch, inchWater, mm, percent, psig } from "hvac-install-math/quantity";
import { test } from "vitest";

test("what would be a mistake on site does not compile", () => {
  // @ts-expect-error: the air's water depends on the atmosphere of the site, which has no default.
  () => humidityRatio({ dryBulb: degC(25), relativeHumidity: percent(50) });
  // @ts-expect-error: a static pressure is a difference between pan and room.
  () => condensateTrap({ staticPressure: psig(-0.05) });
  // @ts-expect-error: a water column is written as a pressure, not as a length.
  () => condensateTrap({ staticPressure: inch(-1.5) });
  () => condensateTrap({ staticPressure: inchWater(-1.5) });
  // @ts-expect-error: a gap needs the length of the level.
  () => slopeOf({ gap: mm(3) });
});
