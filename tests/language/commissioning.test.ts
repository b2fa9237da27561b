// The verdict on an installation: what it says, and the names of the fields that it says it of.
import { commissioning, recordFields } from "hvac-install-math/language/en";
import { expect, it } from "vitest";
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
