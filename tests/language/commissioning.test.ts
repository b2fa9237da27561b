// The verdict on an installation: what it says, and the names of the fields that it says it of.
import { readFileSync } from "node:fs";
import { explain } from "hvac-install-math/assessment";
import { commissioning, english, recordFields } from "hvac-install-math/language/en";
import { recordCodec } from "hvac-install-math/wire";
import { expect, it } from "vitest";
import { assessInstallation } from "../commissioning/assess.ts";
import { inputs } from "./inputs/commissioning.ts";
import { recordFields as fieldsOfTheFormat } from "./record-fields.ts";
import { walk } from "./walk.ts";

/** Steps, checks and hold points, and their states, as a report names them. */
const words: Readonly<Record<string, readonly string[]>> = {
  name: ["step", "check", "hold"],
  state: ["step-state", "hold-state"],
};

walk({
  module: "commissioning",
  catalogue: commissioning,
  further: inputs,
  named: (results) => [
    ...results.flatMap((part) =>
      Object.entries(part).flatMap(([key, value]) =>
        (words[key] ?? []).map((list) => `commissioning.${list}.${value}`),
      ),
    ),
    // An app words any field of a record by its path.
    ...fieldsOfTheFormat.map((path) => `commissioning.field.${path}`),
  ],
});

it("words every field of the published format of a record, and no other", () => {
  const paths = Object.keys(recordFields.messages).map((code) =>
    code.replace("commissioning.field.", ""),
  );
  expect(paths.sort()).toEqual([...fieldsOfTheFormat].sort());
});

// What nobody reads protects nobody: at most 15 cautions, and none of them twice. Common practice, no source.
it.each(["worked-install/record.json", "three-heads/record.json"])(
  "cautions at most 15 times: %s",
  (file) => {
    const path = new URL(`../../examples/${file}`, import.meta.url);
    const { cautions } = assessInstallation(recordCodec.parse(readFileSync(path, "utf8")));
    expect(cautions.length).toBeLessThanOrEqual(15);
    const sentences = cautions.map((one) => explain(one, english as never));
    expect(new Set(sentences).size).toBe(sentences.length);
  },
);
