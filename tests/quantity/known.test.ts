// A figure that rests on what is refused is not known; a mistake of the library itself is never hidden.
import { isInvalidInputError, kelvin } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { known } from "../../src/quantity/known.ts";

it("gives what is made, be it nothing", () => {
  expect(known(() => 0)).toBe(0);
  expect(known(() => null)).toBe(null);
});

it("gives nothing where the typed error refuses", () => {
  const coldest = () => kelvin(-1);
  expect(coldest).toThrow(expect.toSatisfy(isInvalidInputError));
  expect(known(coldest)).toBeUndefined();
});

it("lets any other error through", () => {
  const mistake = new TypeError("a mistake of the library");
  const act = () =>
    known(() => {
      throw mistake;
    });
  expect(act).toThrow(mistake);
});
