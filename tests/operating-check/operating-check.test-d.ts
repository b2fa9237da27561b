import {
  assessGaugeSet,
  expectedPressures,
  usualPressures,
} from "hvac-install-math/operating-check";
import { degF, deltaF, psia, psig, standardAtmosphere } from "hvac-install-math/quantity";
import { R410A } from "hvac-install-math/refrigerants";
import { test } from "vitest";

test("what would be a mistake on site does not compile", () => {
  const gauge = { fullScale: psig(250), hoseWorkingPressure: psig(800) };
  // @ts-expect-error: a gauge's limits are gauge pressures, not absolute ones.
  () => assessGaugeSet({ ...gauge, highestPressure: psia(400) });
  const unit = {
    refrigerant: R410A,
    mode: "cooling",
    indoorTemperature: degF(75),
    outdoorTemperature: degF(95),
    evaporatorApproach: { low: deltaF(30), high: deltaF(40) },
    condenserApproach: { low: deltaF(15), high: deltaF(25) },
  } as const;
  // @ts-expect-error: gauge pressures need the atmosphere of the site.
  () => expectedPressures(unit);
  const wrong = { low: degF(30), high: degF(40) };
  // @ts-expect-error: an approach is a difference of temperatures, not a temperature.
  () => expectedPressures({ ...unit, evaporatorApproach: wrong, atmosphere: standardAtmosphere });
  // @ts-expect-error: nothing is held for another refrigerant.
  () => usualPressures({ refrigerant: "R32", mode: "cooling" });
});
