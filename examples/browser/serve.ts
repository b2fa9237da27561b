// `npm run browser-example`: builds the page, says what it weighs, and serves it on this machine alone.
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { context } from "esbuild";
import { buildPage, pageOptions } from "./build.ts";

const folder = mkdtempSync(join(tmpdir(), "browser-example-"));
console.log(await buildPage(folder));
const page = await context(pageOptions(folder));
const { port } = await page.serve({ servedir: folder, host: "127.0.0.1" });
console.log(`http://127.0.0.1:${port}/ (built anew at each reload; Ctrl+C ends it)`);
