import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { run } from "../../examples/worked-install/main.ts";
import { change, copyOf } from "./run-copy.ts";

describe("--report", () => {
  it("writes one page with its curves and bars, and says so", () => {
    const folder = copyOf("worked-install");
    const path = join(folder, "report.html");
    const { exitCode, output } = run([folder, "--report", path]);
    expect(exitCode).toBe(0);
    expect(output.split("\n").at(-1)).toBe(`Report written: ${path}`);
    const page = readFileSync(path, "utf8");
    expect(page).toMatch(/^<!doctype html>/i);
    expect(page.match(/<svg /g)).toHaveLength(4);
    expect(page).toContain("Cedar Flat workshop");
    expect(page).not.toMatch(/<script|src="http/);
  });

  it("writes Markdown, in the reader's units", () => {
    const folder = copyOf("half-finished-install");
    const path = join(folder, "report.md");
    const { exitCode } = run([folder, "--units", "SI", "--report", path]);
    expect(exitCode).toBe(1);
    const text = readFileSync(path, "utf8");
    expect(text).toMatch(/^# /);
    expect(text).toContain("INCONCLUSIVE");
    expect(text).toContain("3200 kPag");
  });

  it("draws the test of two readings as well", () => {
    const folder = copyOf("failing-install");
    const path = join(folder, "report.html");
    expect(run([folder, "--report", path]).exitCode).toBe(1);
    expect(readFileSync(path, "utf8").match(/<svg /g)).toHaveLength(4);
  });

  it("leaves a file that exists as it is, until it is told to overwrite it", () => {
    const folder = copyOf("worked-install");
    const path = join(folder, "report.md");
    writeFileSync(path, "mine");
    const refused = run([folder, "--report", path]);
    expect([refused.exitCode, refused.output]).toEqual([2, ""]);
    expect(refused.errors).toBe(`--report ${path}: exists and was left as it is; add --overwrite`);
    expect(readFileSync(path, "utf8")).toBe("mine");
    const { output } = run([folder, "--report", path, "--overwrite"]);
    expect(output.split("\n").at(-1)).toBe(`Report replaced: ${path}`);
    expect(readFileSync(path, "utf8")).toMatch(/^# /);
  });

  it("names a path that cannot be written", () => {
    const folder = copyOf("worked-install");
    const { exitCode, errors } = run([folder, "--report", join(folder, "no/such/report.md")]);
    expect(exitCode).toBe(2);
    expect(errors).toMatch(/cannot be written \(ENOENT\)$/);
  });

  it("writes nothing when the input is bad", () => {
    const folder = copyOf("worked-install");
    change(folder, "record.json", "R-410A", "R-999");
    const path = join(folder, "report.md");
    expect(run([folder, "--report", path]).exitCode).toBe(2);
    expect(existsSync(path)).toBe(false);
  });
});
