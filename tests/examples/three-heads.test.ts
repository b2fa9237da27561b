// The main job: three heads planned, recorded and judged.
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { recordCodec } from "hvac-install-math/wire";
import { describe, expect, it, onTestFinished } from "vitest";
import { plan, record } from "../../examples/three-heads/make-records.ts";
import { run } from "../../examples/worked-install/main.ts";
import { root } from "./run-copy.ts";

const { exitCode, output } = run([]);
const flat = output.replace(/\s+/g, " ");

describe("the three heads", () => {
  it("are planned, then judged, and pass", () => {
    expect(exitCode).toBe(0);
    expect(output.indexOf("Bring")).toBeLessThan(output.indexOf("Overall: PASS"));
    expect(output.match(/^ *\d+\. [\w ]+ \.+ PASS$/gm)).toHaveLength(11);
  });

  it.each([
    [
      "38 + 1 + 2 ft take a set of 50 ft",
      "Run A: a 50 ft line set, 1/4 in × 3/8 in. 41 ft needed.",
    ],
    ["three heads have 4 joints each", "12 flares to make."],
    ["one pair of four is spare: 2 caps", "2 caps on the unused ports"],
    ["(16 − 7 + 8) ft at 0.13 oz/ft less 0.9 oz are 1.31 oz", "Add 1.3 oz in all."],
    ["115 % of 15.8 A (NFPA 70, 440.12(A)(1))", "a disconnect of 30 A (at least 18.2 A)"],
    ["1/8 in per foot on 6 ft", "Run A: the drain falls at least 3/4 in over 6 ft."],
  ])("have their figures right: %s", (_, text) => {
    expect(flat).toContain(text);
  });

  it("lie in the folder as they are made", () => {
    const file = (name: string) =>
      JSON.parse(readFileSync(join(root, "examples/three-heads", name), "utf8"));
    expect(file("plan.json")).toEqual(JSON.parse(recordCodec.stringify(plan)));
    expect(file("record.json")).toEqual(JSON.parse(recordCodec.stringify(record)));
  });

  it("give a page to print", () => {
    const folder = mkdtempSync(join(tmpdir(), "plan-"));
    onTestFinished(() => rmSync(folder, { recursive: true }));
    const path = join(folder, "plan.html");
    const done = run(["plan", "--units", "SI", "--report", path]);
    expect(done).toMatchObject({ exitCode: 0, errors: "" });
    expect(readFileSync(path, "utf8")).toMatch(/<h1>Three heads, an invented example<\/h1>/);
  });
});
