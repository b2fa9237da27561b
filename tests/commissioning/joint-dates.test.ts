// A test proves the joints that were there when it was read. Of a joint without a date this is assumed, and said: by its
// name, or by its number where it has none. Common practice, no source.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { minute } from "hvac-install-math/quantity";
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

it("a joint that is younger than the test is named, also where a reading has no time", () => {
  const joints = [{ at: "2026-05-06" }];
  for (const readings of [undefined, [], [{}], [{ elapsed: minute(0) }, {}]]) {
    const evacuations = [{ at: "2026-05-05", ...(readings && { readings }) }];
    const { steps } = assessInstallation({ version: 2, runs: [{ joints }], evacuations });
    const checks = steps.find(({ name }) => name === "evacuation")?.checks;
    expect(checks?.filter(({ name }) => name === "order").map(({ path }) => path)).toEqual([
      "runs[0].joints[0].at",
    ]);
  }
});
