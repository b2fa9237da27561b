import { describe, expect, it } from "vitest";
import { allPlots } from "./samples.ts";

describe("every picture", () => {
  it.each(Object.entries(allPlots()))("%s has only finite numbers", (_, svg) => {
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="0 0 440 /);
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
  });

  it("is the same on every call", () => {
    expect(allPlots()).toEqual(allPlots());
  });
});
