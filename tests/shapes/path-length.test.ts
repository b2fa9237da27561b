// How long may a path be? Longer than any field's is refused as such, before an engine gives up on it.
import { isInvalidInputError } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { segmentsOf } from "../../src/shapes/index.ts";

it.each([200, 20_000_000])(
  "refuses a path of %d steps as no path, not by the engine's own error",
  (steps) => {
    try {
      segmentsOf("path", `a${".a".repeat(steps)}`);
      expect.unreachable();
    } catch (error) {
      expect(isInvalidInputError(error)).toBe(true);
    }
  },
);
