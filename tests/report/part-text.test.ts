// The part of the record of which a statement speaks, in words.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { spanish } from "hvac-install-math/language/es";
import { french } from "hvac-install-math/language/fr";
import { partText } from "hvac-install-math/report";
import { expect, it } from "vitest";
import { assessInstallation } from "../commissioning/assess.ts";
import { threeHeads } from "../commissioning/three-heads.ts";

// invented
const record: InstallationRecord = {
  version: 2,
  runs: [{ name: "bedroom", joints: [{ name: "lower flare" }, {}] }, { name: "office" }],
  pressureTests: [{ covers: ["bedroom"] }, { covers: ["office"] }],
  evacuations: [{}, {}],
};

it.each([
  ["pressureTests[1]", "Run office", "Recorrido office", "Tracé office"],
  [
    "runs[0].joints[0]",
    "Run bedroom, lower flare",
    "Recorrido bedroom, lower flare",
    "Tracé bedroom, lower flare",
  ],
  ["charge", "", "", ""],
  [undefined, "", "", ""],
])("names %s", (part, ...expected) => {
  const said = [english, spanish, french].map((language) => partText(part, record, language));
  expect(said).toEqual(expected);
});

it("numbers what has no name", () => {
  for (const language of [english, spanish, french]) {
    expect(partText("evacuations[1]", record, language)).toMatch(/^\p{L}.* 2$/u);
  }
});

it("has no path left for any statement of a record", () => {
  const { reasons, actions = [], cautions } = assessInstallation(threeHeads);
  for (const { part } of [...reasons, ...actions, ...cautions]) {
    expect(partText(part, threeHeads, english)).not.toMatch(/[[\]]|[a-z][A-Z]/);
  }
});

it("refuses what is no path", () => {
  expect(() => partText(3 as never, record, english)).toThrow("part");
});
