// Quantities through the places of a browser that copy plain data: IndexedDB, a worker of the page, structuredClone.
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { expect, it } from "vitest";
import { launch, serve, troubles } from "./chromium.ts";

const root = join(import.meta.dirname, "../..");
const code = `import { degF, ft, revive, toPlain } from ${JSON.stringify(`${root}/src/quantity/index.ts`)};
const record = { name: "invented", length: ft(36), readings: [degF(70), degF(75)], photo: new Blob(["x"]), at: new Date(0) };
const said = ({ name, length, readings, photo, at }) => [name, length.toString(), readings.join(" "), photo.size, at.getTime()].join("; ");
const asked = (request) => new Promise((done, fail) => { request.onsuccess = () => done(request.result); request.onerror = () => fail(request.error); });
async function stored(value) {
  const opening = indexedDB.open("records", 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore("records");
  const database = await asked(opening);
  const store = () => database.transaction("records", "readwrite").objectStore("records");
  await asked(store().put(value, "one"));
  return asked(store().get("one"));
}
async function sent(value) {
  const worker = new Worker(URL.createObjectURL(new Blob(["onmessage = ({ data }) => postMessage(data)"])));
  const answer = new Promise((done) => { worker.onmessage = ({ data }) => done(data); });
  worker.postMessage(value);
  return answer;
}
globalThis.checked = (async () => {
  let alone = "stored";
  try { await stored(record); } catch (error) { alone = error.name; }
  const plain = toPlain(record);
  return { alone, was: said(record), stored: said(revive(await stored(plain))), sent: said(revive(await sent(plain))), cloned: said(revive(structuredClone(plain))) };
})();`;

it("passes through IndexedDB, a worker and structuredClone as plain data, and not as it is", async () => {
  const folder = mkdtempSync(join(tmpdir(), "indexed-db-"));
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: root, loader: "ts" },
    bundle: true,
    format: "esm",
    write: false,
  });
  writeFileSync(join(folder, "page.js"), outputFiles[0]?.text ?? "");
  writeFileSync(join(folder, "favicon.ico"), "");
  const page = `<!doctype html><html lang="en"><title>Store</title><script type="module" src="page.js"></script></html>`;
  writeFileSync(join(folder, "index.html"), page);
  const browser = await launch();
  const { address, close } = await serve(folder);
  try {
    const tab = await browser.newPage();
    const found = troubles(tab);
    await tab.goto(address);
    await tab.waitForFunction("globalThis.checked");
    const seen = (await tab.evaluate("globalThis.checked")) as Record<string, string>;
    const was = "invented; 36 ft; 70 °F 75 °F; 1; 0";
    expect(seen).toEqual({ alone: "DataCloneError", was, stored: was, sent: was, cloned: was });
    expect(found).toEqual([]);
  } finally {
    await browser.close();
    close();
  }
});
