// A test proves the joints that were there when it was read. Of a joint without a date this is assumed, and said: by its
// name, or by its number where it has none. Common practice, no source.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";

const joints = [{ name: "riser" }, { at: "2026-05-04" }, {}];
const [pressureTests, evacuations] = [[{}], [{}]];

/** The joints that are assumed to be older than the tests; nothing where nothing is assumed. */
const assumed = (parts: Omit<InstallationRecord, "version">) =>
  assessInstallation({ version: 2, ...parts }).assumptions.find(
    ({ code }) => code === "commissioning.joints-undated",
  )?.values.joints;

it.each([
  ["a pressure test", { pressureTests }],
  ["an evacuation", { evacuations }],
  ["both", { pressureTests, evacuations }],
])("names the joints without a date where there is %s", (_, tests) => {
  expect(assumed({ runs: [{ joints }], ...tests })).toEqual([{ verbatim: "riser" }, 3]);
});

it("names none where nothing was tested, or where the joints or their lines have a date", () => {
  expect(assumed({ runs: [{ joints }] })).toBeUndefined();
  expect(assumed({ runs: [{ joints: [{ at: "2026-05-04" }] }], pressureTests })).toBeUndefined();
  const tubing = { at: "2026-05-04" };
  expect(assumed({ runs: [{ tubing, joints }], pressureTests })).toBeUndefined();
});
