// Builds the package once and unpacks it as a user would install it, before the tests of the package.
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";

declare module "vitest" {
  interface ProvidedContext {
    /** A folder with `node_modules/hvac-install-math`, unpacked from the packed tarball. */
    consumer: string;
  }
}

export default function setup(project: TestProject): () => void {
  const root = join(import.meta.dirname, "../..");
  const consumer = mkdtempSync(join(tmpdir(), "hvac-install-math-"));
  const installed = join(consumer, "node_modules/hvac-install-math");
  mkdirSync(installed, { recursive: true });
  execFileSync("npm", ["run", "--silent", "build"], {
    cwd: root,
    stdio: ["ignore", "ignore", "inherit"],
  });
  const packed = execFileSync(
    "npm",
    ["pack", "--ignore-scripts", "--json", "--pack-destination", consumer],
    {
      cwd: root,
      encoding: "utf8",
    },
  );
  const { filename } = Object.values(JSON.parse(packed))[0] as { filename: string };
  execFileSync("tar", ["xzf", join(consumer, filename), "--strip-components=1", "-C", installed]);
  for (const name of ["mathjs", "zod"]) {
    symlinkSync(join(root, "node_modules", name), join(consumer, "node_modules", name));
  }
  project.provide("consumer", consumer);
  return () => rmSync(consumer, { recursive: true, force: true });
}
