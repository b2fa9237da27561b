// Everything that is wrong with data at once, for a form that marks each field: problems, and the same by the
// interface that form libraries look for (Standard Schema, version 1, from memory).
import { isQuantity } from "hvac-install-math/quantity";
import { recordCodec } from "hvac-install-math/wire";
import { describe, expect, it } from "vitest";

const ft = (value: number, unit = "ft") => ({ kind: "length", value, unit });
const good = { version: 2, runs: [{ tubing: { length: ft(36) } }] };
const bad = {
  version: 2,
  name: 7,
  runs: [{ tubing: { length: ft(36, "furlong"), lift: 9, colour: "red" } }],
};
const unreadable = {
  version: 2,
  get runs(): never {
    throw new Error("a getter of the app");
  },
};

describe("problems", () => {
  it("are none of data that can be decoded", () => {
    expect(recordCodec.problems(good)).toEqual([]);
    expect(recordCodec.problems({ ...good, version: 1, runs: undefined })).toEqual([]);
  });

  // Who mends one field and is then told of the next sends the form five times.
  it("name every place, what stands there and what is allowed", () => {
    const found = recordCodec.problems(bad);
    expect(found.map(({ argument }) => argument).sort()).toEqual([
      "name",
      "runs[0].tubing.colour",
      "runs[0].tubing.length.unit",
      "runs[0].tubing.lift",
    ]);
    const unit = found.find(({ argument }) => argument.endsWith("unit"));
    expect(unit?.value).toContain("furlong");
    expect(unit?.allowed).toContain("ft");
  });

  it("are at most 1000", () => {
    const runs = Array.from({ length: 1500 }, () => ({ tubing: { length: 36 } }));
    expect(recordCodec.problems({ version: 2, runs })).toHaveLength(1000);
  });

  it("are one where the data are of a newer version, or cannot be read", () => {
    expect(recordCodec.problems({ version: 3 })).toMatchObject([
      { argument: "version", hint: { code: "wire.newer-version" } },
    ]);
    expect(recordCodec.problems(unreadable)).toMatchObject([
      { argument: "record", allowed: "data that can be read" },
    ]);
  });

  it("keep the limits that are stated", () => {
    const [one] = recordCodec.problems(good, { values: 3 });
    expect(one?.allowed).toBe("at most 3 values in all");
  });
});

describe("the interface of form libraries", () => {
  const { version, vendor, validate } = recordCodec["~standard"];

  it("names its version and whose it is", () => {
    expect([version, vendor]).toEqual([1, "hvac-install-math"]);
  });

  it("gives the value, live, and no issues", () => {
    const result = validate(good);
    if (result.issues) throw new Error(result.issues[0]?.message);
    expect(isQuantity(result.value.runs?.[0]?.tubing?.length, "length")).toBe(true);
    expect(result.issues).toBeUndefined();
  });

  it("gives each issue with the steps to its place", () => {
    const { issues = [] } = validate(bad);
    expect(issues.map(({ path }) => path)).toContainEqual(["runs", 0, "tubing", "lift"]);
    expect(issues).toHaveLength(4);
    expect(issues.find(({ path }) => path[0] === "name")?.message).toContain("a text");
    expect(validate({ version: 3 }).issues).toMatchObject([{ path: ["version"] }]);
    expect(validate(unreadable).issues).toMatchObject([{ path: [] }]);
    expect(validate(null).issues).toMatchObject([{ path: [] }]);
  });
});
