// The program of examples/logger, started as its README says: in its own folder, and from the root.
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "./run-copy.ts";

const folder = join(root, "examples/logger");
const start = (cwd: string, ...args: string[]) =>
  execFileSync("npm", ["--silent", ...args, "start"], { cwd, encoding: "utf8" });

describe("the files of four invented loggers", () => {
  const output = start(folder);
  const sections = new Map(
    output.split(/^(?=\S+\.(?:csv|txt|tsv)$)/m).map((text) => [text.split("\n")[0], text]),
  );

  it("are read from the root too", () => {
    expect(start(root, "--prefix", "examples/logger")).toBe(output);
  });

  it("say that they are invented, and carry the cautions", () => {
    expect(output).toContain("Four invented loggers");
    expect(output).toMatch(/licensed practice come first/);
    expect(output).not.toMatch(/NaN|undefined|\{\w+\}|\[object/);
  });

  it("a night under nitrogen over the change of clocks loses no row, and starts when it is full", () => {
    const text = sections.get("overnight.csv") ?? "";
    expect(text).toContain("  170 rows\n");
    expect(text).toContain("Clocks were set back one hour before line 76.");
    expect(text).toMatch(/does not say whether it is gauge or absolute/);
    expect(text).toMatch(/The pressure is highest, .* psig, at 2400 s/);
    expect(text).toMatch(/^ {2}PASS/m);
  });

  it("an evacuation is judged from the closing of the valve on", () => {
    const text = sections.get("vacuum.txt") ?? "";
    expect(text).toContain("  421 rows\n");
    expect(text).toMatch(/The pressure is lowest, .* mbara, at (89\d|900) s/);
    expect(text).toMatch(/^ {2}PASS/m);
  });

  it("a service with blank cells keeps its range", () => {
    const text = sections.get("supply.tsv") ?? "";
    expect(text).toContain("  118 rows\n");
    expect(text).toMatch(/228\.\d V to 233\.\d V; outside 207 V to 253 V for 0 s/);
  });

  it("a hold that leaks fails, with the duplicate and the second header named", () => {
    const text = sections.get("hold.csv") ?? "";
    expect(text).toContain("Line 22 repeats the row before it.");
    expect(text).toContain("Line 63 repeats the header.");
    expect(text).toContain("Rows are missing before line 43");
    expect(text).not.toContain("doubt:");
    expect(text).toMatch(/^ {2}FAIL/m);
  });
});

it("the files are those that the script makes", () => {
  const copy = mkdtempSync(join(tmpdir(), "loggers-"));
  try {
    const names = ["overnight.csv", "vacuum.txt", "supply.tsv", "hold.csv"];
    execFileSync("npx", ["tsx", join(folder, "make-files.ts"), copy], { cwd: root });
    for (const name of names) {
      expect(readFileSync(join(copy, name), "utf8"), name).toBe(
        readFileSync(join(folder, name), "utf8"),
      );
    }
  } finally {
    rmSync(copy, { recursive: true });
  }
});
