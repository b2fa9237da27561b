// Runs the example program on a copy of an example, which a test may change.
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished } from "vitest";
import { type Run, run } from "../../examples/worked-install/main.ts";

export const root: string = join(import.meta.dirname, "../..");

/** A copy of the data of an example, removed when the test is over. */
export function copyOf(name: string): string {
  const folder = mkdtempSync(join(tmpdir(), `${name}-`));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  for (const file of readdirSync(join(root, "examples", name))) {
    if (/\.(json|csv)$/.test(file)) cpSync(join(root, "examples", name, file), join(folder, file));
  }
  return folder;
}

/** Changes a file by replacing one text that has to be there. */
export function change(folder: string, file: string, from: string | RegExp, to: string): void {
  const text = readFileSync(join(folder, file), "utf8");
  const changed = text.replace(from, to);
  expect(changed).not.toBe(text);
  writeFileSync(join(folder, file), changed);
}

/** Runs the program, which may write nothing into the folder. */
export function runQuietly(folder: string, ...args: string[]): Run {
  const before = readdirSync(folder).join();
  const done = run([folder, ...args]);
  expect(readdirSync(folder).join()).toBe(before);
  return done;
}
