// Does the search of the docs find the page by the words of the trade? Two lists of queries with their right page, and
// the dialog as a reader uses it. Does not cover how the index is made: docs/plugins/search-index.mjs.
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { score, searchOfSite } from "../docs/score-search.ts";
import { violations } from "./accessibility.ts";
import { launch, serve, troubles } from "./chromium.ts";
import { site } from "./docs-site.ts";

const search = searchOfSite();

describe("the right page is among the first three", () => {
  it("for at least 55 of the 60 queries that the search was tuned with", () => {
    const results = score("queries.json", search);
    expect(results.length).toBe(60);
    const missed = results.filter(({ found }) => !found).map(({ query }) => query);
    expect(missed.length, missed.join(", ")).toBeLessThanOrEqual(5);
  });

  it("for at least 24 of the 30 that were written afterwards", () => {
    const results = score("queries-later.json", search);
    expect(results.length).toBe(30);
    const missed = results.filter(({ found }) => !found).map(({ query }) => query);
    expect(missed.length, missed.join(", ")).toBeLessThanOrEqual(6);
  });

  it("and words that mean nothing find nothing", () => {
    expect(search("xqzzw")).toEqual([]);
    expect(search("")).toEqual([]);
  });
});

describe("in Chromium", () => {
  let browser: Browser;
  let server: Awaited<ReturnType<typeof serve>>;
  beforeAll(async () => {
    browser = await launch();
    server = await serve(site);
  });
  afterAll(async () => {
    await browser?.close();
    server?.close();
  });

  it.each([1440, 390])("a typing error leads to the function, %i px wide", async (width) => {
    const page = await browser.newPage({ viewport: { width, height: 844 } });
    const found = troubles(page);
    const fetched: string[] = [];
    page.on("request", (request) => fetched.push(request.url()));
    await page.goto(`${server.address}/modules/quantity.html`);
    await page.waitForSelector("#tsd-nav-container a", { state: "attached" });
    expect(fetched.filter((url) => /search|find/.test(url))).toEqual([]);
    await page.click("#tsd-search-trigger");
    await page.fill("#tsd-search-input", "vaccum");
    const option = page.locator("#tsd-search-results a", { hasText: /^assessVacuumDecay/ });
    await option.waitFor();
    expect(await violations(page)).toEqual([]);
    await option.click();
    await page.waitForURL(/assessVacuumDecay/);
    expect(await page.locator("h1").textContent()).toContain("assessVacuumDecay");
    expect(found).toEqual([]);
    await page.close();
  });

  it("the first result opens by keyboard, and nothing found is said", async () => {
    const page = await browser.newPage();
    await page.goto(`${server.address}/index.html`);
    await page.waitForSelector("#tsd-nav-container a", { state: "attached" });
    await page.keyboard.press("/");
    await page.fill("#tsd-search-input", "xqzzw");
    await page.locator("#tsd-search-status", { hasText: "Nothing found" }).waitFor();
    await page.fill("#tsd-search-input", "surchauffe");
    await page.locator("#tsd-search-results a").first().waitFor();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await page.waitForURL(/superheat/i);
    await page.close();
  });
});
