// Puts the library of this repository into node_modules, built. An app of your own has it from the registry:
// `npm install hvac-install-math`, and no such file.
import { execSync } from "node:child_process";
import { existsSync, rmSync, symlinkSync } from "node:fs";
import { join } from "node:path";

const root = join(import.meta.dirname, "../..");
const run = (command) => execSync(command, { cwd: root, stdio: "inherit" });
if (!existsSync(join(root, "node_modules"))) run("npm ci");
if (!existsSync(join(root, "dist/index.mjs"))) run("npm run build");
const link = join(import.meta.dirname, "node_modules/hvac-install-math");
rmSync(link, { force: true });
symlinkSync(root, link, "junction");
