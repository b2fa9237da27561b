// The report as people see it: in Chromium, on a phone, in the dark, and on paper.

import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { english } from "hvac-install-math/language/en";
import { recordPlots } from "hvac-install-math/plots";
import { htmlReport } from "hvac-install-math/report";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hostile } from "../report/hostile.ts";
import { hostileRecord } from "../report/hostile-record.ts";
import { failing, half, rich } from "../report/rich-record.ts";
import { violations } from "./accessibility.ts";
import { launch, serve, troubles } from "./chromium.ts";

const options = {
  language: english,
  system: "inch-pound",
  printedAt: "2026-05-08 09:30",
  plots: recordPlots,
} as const;
const pages = {
  rich: htmlReport(rich, options),
  failing: htmlReport(failing, options),
  half: htmlReport(half, options),
  empty: htmlReport({ version: 2 }, options),
  hostile: htmlReport(hostileRecord(hostile.join(" ").slice(0, 700)), {
    language: english,
    system: "inch-pound",
  }),
  endless: htmlReport(hostileRecord("x".repeat(10_000)), {
    language: english,
    system: "inch-pound",
  }),
};
const names = Object.keys(pages);

let browser: Browser;
let address: string;
let close: () => void;

beforeAll(async () => {
  const folder = mkdtempSync(join(tmpdir(), "report-"));
  for (const [name, page] of Object.entries(pages))
    writeFileSync(join(folder, `${name}.html`), page);
  ({ address, close } = await serve(folder));
  browser = await launch();
});
afterAll(async () => {
  await browser?.close();
  close?.();
});

describe.each(["light", "dark"] as const)("in %s colors", (colorScheme) => {
  it.each(["failing", "empty", "hostile"])("axe finds nothing wrong with %s", async (name) => {
    // axe has to run, and so the page's own policy, which lets no script run, is put aside.
    const context = await browser.newContext({ colorScheme, bypassCSP: true });
    const tab = await context.newPage();
    await tab.goto(`${address}/${name}.html`);
    expect(await violations(tab)).toEqual([]);
    await context.close();
  });
});

it.each(names)("asks for nothing but itself and runs nothing: %s", async (name) => {
  const tab = await browser.newPage();
  const found = troubles(tab);
  const asked: string[] = [];
  tab.on("request", (request) => asked.push(request.url()));
  tab.on("dialog", (dialog) => found.push(`dialog: ${dialog.message()}`));
  await tab.goto(`${address}/${name}.html`);
  expect(asked.filter((url) => !url.endsWith("/favicon.ico"))).toEqual([`${address}/${name}.html`]);
  expect(found.filter((one) => !one.includes("404"))).toEqual([]);
  expect(await tab.locator("script, iframe, img, link, object, form").count()).toBe(0);
  await tab.close();
});

it("says the same with scripts switched off", async () => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const tab = await context.newPage();
  await tab.goto(`${address}/failing.html`);
  expect(await tab.locator("h1").textContent()).toBe("Invented house, upper floor");
  expect(await tab.locator("#head-verdict").textContent()).toBe("Verdict FAIL");
  await context.close();
});

it.each([320, 360, 400])("does not scroll sideways at %d pixels", async (width) => {
  const tab = await browser.newPage({ viewport: { width, height: 700 } });
  for (const name of names) {
    await tab.goto(`${address}/${name}.html`);
    const wide = await tab.evaluate("document.documentElement.scrollWidth");
    expect(wide, name).toBeLessThanOrEqual(width);
  }
  await tab.close();
});

it("keeps its tables for screen readers when a phone stacks their cells", async () => {
  const tab = await browser.newPage({ viewport: { width: 360, height: 700 } });
  await tab.goto(`${address}/rich.html`);
  const table = tab.getByRole("table", { name: "Steps at a glance" });
  expect(await table.getByRole("row").count()).toBe(12);
  expect(await table.getByRole("rowheader").count()).toBe(11);
  await tab.close();
});

it.each([
  ["rich", "A4", 8, 14],
  ["rich", "Letter", 8, 15],
  ["empty", "A4", 2, 4],
  ["endless", "A4", 8, 22],
])("prints %s on %s on %d to %d pages", async (name, format, least, most) => {
  const tab = await browser.newPage();
  await tab.goto(`${address}/${name}.html`);
  const pdf = (await tab.pdf({ format })).toString("latin1");
  const count = pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
  expect(count).toBeGreaterThanOrEqual(least);
  expect(count).toBeLessThanOrEqual(most);
  await tab.close();
});
