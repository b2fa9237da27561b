// How long may a path be? Longer than any field's is refused as such, before an engine gives up on it.
import { isInvalidInputError } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { segmentsOf } from "../../src/shapes/index.ts";

it.each([
  ["of 200 characters", `aa${".a".repeat(99)}`],
  ["of 20 million steps", `a${".a".repeat(20_000_000)}`],
])("refuses a path %s as no path, not by the engine's own error", (_, path) => {
  try {
    segmentsOf("path", path);
    expect.unreachable();
  } catch (error) {
    expect(isInvalidInputError(error)).toBe(true);
  }
});

it("takes one of 199 characters", () => {
  expect(segmentsOf("path", `a${".a".repeat(99)}`)).toEqual(Array(100).fill("a"));
});
