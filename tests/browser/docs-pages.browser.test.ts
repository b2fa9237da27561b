// What does each page of the docs weigh, say of itself, and have beside it? Descriptions, Markdown, llms.txt, the page
// for a wrong address, the button that copies, the playground. Does not cover links, contrast and search.
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { violations } from "./accessibility.ts";
import { launch, serve, troubles } from "./chromium.ts";
import { htmlOf, pages, site } from "./docs-site.ts";

const textOf = (file: string) => readFileSync(join(site, file), "utf8");
const content = pages.filter((page) => page !== "404.html");

/** What a browser fetches for a page before anything is touched, kB of 1000 bytes after gzip. */
function firstLoad(page: string): number {
  const html = htmlOf(page);
  const files = [...html.matchAll(/<(?:script|link)[^>]* (?:src|href)="([^"]*\.(?:js|css|svg))"/g)];
  const assets = new Set(files.map(([, url]) => (url ?? "").replace(/^(\.\.\/)*/, "")));
  assets.add("assets/icons.svg");
  const bytes = [...assets].map((file) => gzipSync(textOf(file)).length);
  return [gzipSync(html).length, ...bytes].reduce((sum, one) => sum + one, 0) / 1000;
}

describe("every page", () => {
  it("weighs at most 60 kB on first load", () => {
    const heavy = content.filter((page) => firstLoad(page) > 60);
    expect(heavy.map((page) => `${page}: ${firstLoad(page)}`)).toEqual([]);
  });

  it("has a description of its own and its Markdown beside it", () => {
    const seen = new Map<string, string>();
    for (const page of content) {
      const about = /<meta name="description" content="([^"]*)"/.exec(htmlOf(page))?.[1] ?? "";
      expect(about.length, page).toBeGreaterThan(20);
      expect(about.length, page).toBeLessThan(260); // escaped
      if (page !== "modules.html") expect(seen.get(about), page).toBeUndefined();
      seen.set(about, page);
      expect(existsSync(join(site, page.replace(/html$/, "md"))), page).toBe(true);
    }
  });

  it("links to the license, and to the code only where package.json says where it is", () => {
    const { repository } = JSON.parse(
      readFileSync(join(import.meta.dirname, "../../package.json"), "utf8"),
    );
    expect(textOf("LICENSE.txt")).toContain("MIT");
    for (const page of content.slice(0, 50)) {
      expect(htmlOf(page)).toContain('LICENSE.txt">MIT license</a>');
      expect(htmlOf(page).includes(">Code</a>"), page).toBe(repository !== undefined);
    }
  });
});

it("llms.txt leads to Markdown that is there", () => {
  const links = [...textOf("llms.txt").matchAll(/\]\(([^)]*)\)/g)].map(([, url]) =>
    decodeURI(url ?? ""),
  );
  expect(links.length).toBeGreaterThan(80);
  const decoded = links.map((url) =>
    url.replaceAll("%28", "(").replaceAll("%29", ")").replaceAll("%2C", ","),
  );
  expect(decoded.filter((url) => !existsSync(join(site, url)))).toEqual([]);
});

it("a guide's Markdown has its code as it stands in the source", () => {
  const source = readFileSync(join(import.meta.dirname, "../../docs/guides/quantity.md"), "utf8");
  const block = /```ts\n([\s\S]*?)```/.exec(source)?.[1] ?? "?";
  expect(textOf("documents/Guides.Quantity.md")).toContain(block);
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

  it("the button that copies code is seen on a touch screen", async () => {
    const context = await browser.newContext({
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    const page = await context.newPage();
    await page.goto(`${server.address}/documents/Guides.Quantity.html`);
    await page.locator("pre > button").first().waitFor();
    expect(
      await page.evaluate('getComputedStyle(document.querySelector("pre > button")).opacity'),
    ).toBe("1");
    await context.close();
  });

  it("the page for a wrong address leads back, in light and dark", async () => {
    for (const colorScheme of ["light", "dark"] as const) {
      const page = await browser.newPage({ colorScheme });
      await page.goto(`${server.address}/404.html`);
      expect(await violations(page)).toEqual([]);
      await page.click("text=Guides");
      expect(await page.locator("h1").textContent()).toContain("Guides");
      await page.close();
    }
  });

  it("the playground runs the built package, shows a mistake, and stops a loop", async () => {
    const page = await browser.newPage();
    const found = troubles(page);
    await page.goto(`${server.address}/index.html`);
    await page.locator(".playground textarea").waitFor();
    const run = page.getByRole("button", { name: "Run" });
    const output = page.locator(".playground output");
    await run.click();
    await output.getByText("test.expectedPressure.toString(undefined, 1) → 480.8 psig").waitFor();
    expect(await violations(page)).toEqual([]);
    await page.fill(
      ".playground textarea",
      'import { psig } from "hvac-install-math/quantity";\npsig(118).plus(psig(3)); // =>',
    );
    await run.click();
    await output.getByText(/Error/).waitFor();
    await page.fill(".playground textarea", "for (;;) {}");
    await run.click();
    await output.getByText("Stopped after 10 s.").waitFor();
    expect(found).toEqual([]);
    await page.close();
  });
});
