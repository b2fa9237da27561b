// The code of docs/storage-and-workers.md for a browser: IndexedDB and a worker, with the record of the worked example.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { recordCodec } from "hvac-install-math/wire";
import { expect, it } from "vitest";
import { readInstallation } from "../../examples/worked-install/read-installation.ts";
import { writeBlocks } from "../docs/page-code.ts";
import { launch, serve, troubles } from "./chromium.ts";

const root = join(import.meta.dirname, "../..");
const page = `import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { recordCodec } from "hvac-install-math/wire";
import { kept, keep } from "./block-0.ts";
import { judgeIn } from "./block-1.ts";
const text = async (file) => (await fetch(file)).text();
globalThis.tried = (async () => {
  const record = recordCodec.parse(await text("record.json"));
  let asItIs = "copied";
  try { structuredClone(record); } catch (error) { asItIs = error.name; }
  await keep("worked", record);
  const again = await kept("worked");
  // A row that version 1 of the library had put there.
  const opening = indexedDB.open("jobs", 1);
  await new Promise((done) => { opening.onsuccess = done; });
  const raw = JSON.parse(await text("old.json"));
  await new Promise((done) => { opening.result.transaction("records", "readwrite").objectStore("records").put(raw, "old").onsuccess = done; });
  const old = await kept("old");
  const verdict = await judgeIn(new Worker("worker.js"), record);
  return {
    asItIs,
    nothing: String(await kept("nobody")),
    again: recordCodec.stringify(again),
    old: [old.version, String(old.runs[0].tubing.length)],
    outcome: verdict.outcome,
    sentence: explain(verdict.steps[0].checks[0].assessment.reasons[0], english),
  };
})();`;
const worker = `import { answer } from "./block-1.ts";
onmessage = ({ data }) => postMessage(answer(data));`;

it("keeps a record in IndexedDB, reads a row of version 1, and has a worker judge", async () => {
  const generated = join(root, "tests/.generated");
  mkdirSync(generated, { recursive: true });
  const folder = mkdtempSync(join(generated, "storage-"));
  writeBlocks("storage-and-workers.md", "ts", folder);
  for (const [name, contents] of Object.entries({ page, worker })) {
    const { outputFiles } = await build({
      stdin: { contents, resolveDir: folder },
      bundle: true,
      format: "esm",
      write: false,
    });
    writeFileSync(join(folder, `${name}.js`), outputFiles[0]?.text ?? "");
  }
  const { record } = readInstallation(join(root, "examples/worked-install"));
  const text = recordCodec.stringify(record);
  writeFileSync(join(folder, "record.json"), text);
  writeFileSync(
    join(folder, "old.json"),
    readFileSync(join(root, "tests/wire/record-version-1.json")),
  );
  writeFileSync(join(folder, "favicon.ico"), "");
  writeFileSync(
    join(folder, "index.html"),
    '<!doctype html><html lang="en"><title>Store</title><script type="module" src="page.js"></script></html>',
  );
  const browser = await launch();
  const { address, close } = await serve(folder);
  try {
    const tab = await browser.newPage();
    const found = troubles(tab);
    await tab.goto(address);
    await tab.waitForFunction("globalThis.tried");
    const tried = (await tab.evaluate("globalThis.tried")) as Record<string, unknown>;
    expect(tried).toMatchObject({
      asItIs: "DataCloneError",
      nothing: "undefined",
      again: text,
      old: [2, "38 ft"], // as the file of version 1 says
      outcome: "pass",
    });
    expect(tried.sentence).toMatch(/ft/);
    expect(found).toEqual([]);
  } finally {
    await browser.close();
    close();
    rmSync(folder, { recursive: true });
  }
});
