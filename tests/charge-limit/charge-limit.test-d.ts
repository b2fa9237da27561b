import { concentrationChargeLimit, roomChargeLimit } from "hvac-install-math/charge-limit";
import { m, m2, m3 } from "hvac-install-math/quantity";
import { R32 } from "hvac-install-math/refrigerants";
import { test } from "vitest";

test("what would be a mistake on site does not compile", () => {
  // @ts-expect-error: flammability goes by the floor area, not by the volume.
  () => roomChargeLimit({ refrigerant: R32, place: "wall", floorArea: m3(50) });
  // @ts-expect-error: concentration goes by the volume, not by the floor area.
  () => concentrationChargeLimit({ refrigerant: R32, volume: m2(20) });
  // @ts-expect-error: a refrigerant is its object, which carries the safety class, not its name.
  () => roomChargeLimit({ refrigerant: "R32", installationHeight: m(2), floorArea: m2(20) });
});
