// What the person at the keyboard gave and the program cannot use, in one sentence.
import { readFileSync } from "node:fs";
import { join } from "node:path";

/** Bad input: file, line or field, value, and what is allowed. */
export class BadInput extends Error {}

/** The text of a file of the installation, without a byte order mark. */
export function textOf(folder: string, name: string): string {
  try {
    return readFileSync(join(folder, name), "utf8").replace(/^\uFEFF/, "");
  } catch {
    throw new BadInput(`${name}: cannot be read in ${folder}; a readable text file is needed`);
  }
}
