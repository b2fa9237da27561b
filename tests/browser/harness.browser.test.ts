import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { violations } from "./accessibility.ts";
import { launch, serve, troubles } from "./chromium.ts";

it("finds an error, a request to the outside and a picture without words", async () => {
  const folder = mkdtempSync(join(tmpdir(), "harness-"));
  const page = `<!doctype html><html lang="en"><title>Bad</title><main><h1>Bad</h1><img src="data:,">
<script>console.error("oops"); fetch("http://203.0.113.1/").catch(() => {});</script></main></html>`;
  writeFileSync(join(folder, "index.html"), page);
  const browser = await launch();
  const { address, close } = await serve(folder);
  try {
    const tab = await browser.newPage();
    const found = troubles(tab);
    await tab.goto(address);
    expect(found.join("\n")).toContain("console: oops");
    expect(found.join("\n")).toContain("outside request: http://203.0.113.1/");
    expect((await violations(tab)).join("\n")).toContain("image-alt");
  } finally {
    await browser.close();
    close();
  }
});
