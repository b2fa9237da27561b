// Which port does a tube fit? The sizes of ASTM B280, within the 0.2 mm that a flare asks for.
import { portSize } from "hvac-install-math/commissioning";
import { inch, isInvalidInputError, mm } from "hvac-install-math/quantity";
import { expect, it } from "vitest";

// Outside diameters by ASTM B280: 1/4 in is 6.35 mm, 7/8 in is 22.2 mm, 1-1/8 in is 28.6 mm.
it.each([
  [inch(0.25), "1/4"],
  [mm(22.2), "7/8"],
  [inch(1.125), "1-1/8"],
  [mm(28.4), "1-1/8"],
  [mm(28.3), undefined],
  [mm(40), undefined],
] as const)("%s fits %s", (diameter, size) => {
  expect(portSize(diameter)).toBe(size);
});

it.each([mm(0), mm(-1)])("refuses %s, which no tube has", (diameter) => {
  expect(() => portSize(diameter)).toThrow(expect.toSatisfy(isInvalidInputError));
});
