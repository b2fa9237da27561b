// The docs site as a reader meets it: links, console, requests, contrast and the rest of axe, phone width.
// Does not cover the search (docs-search), weights and what stands beside the pages (docs-pages), the playground.
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { violations } from "./accessibility.ts";
import { launch, serve, troubles } from "./chromium.ts";
import { brokenReference, htmlOf, pages, referencesOf, site } from "./docs-site.ts";

/** One page of each kind. */
const kinds = [
  "index.html",
  "documents/Ask.html",
  "documents/Ask.Testing_with_nitrogen.html",
  "documents/Guides.Vacuum_decay.html",
  "documents/Methods.Vacuum_decay.html",
  "documents/Decay_curves.html",
  "documents/Pressure_and_temperature.R-32.html",
  "documents/For_app_developers.html",
  "documents/How_do_we_know.html",
  "documents/How_do_we_know.condensate.html",
  "documents/Every_sentence.Sentences_of_commissioning-findings.html",
  "modules/refrigerants.html",
  "functions/refrigerants.subcooling.html",
  "interfaces/pressure-test.PressureTest.html",
  "interfaces/commissioning.CommissioningStatements.html",
  "classes/quantity.InvalidInputError.html",
  "variables/circuit-protection.nec2023.html",
  "types/vacuum-decay.DecayCause.html",
];

const widths = { desktop: [1440, 900], phone: [390, 844] } as const;

describe("the files of the site", () => {
  it("hold every link, picture, script and anchor that a page refers to", () => {
    expect(pages.length).toBeGreaterThan(500);
    const broken = pages.flatMap((page) =>
      referencesOf(page)
        .filter((url) => !/^(https?|mailto|data):/.test(url))
        .map((url) => brokenReference(page, url))
        .filter((problem) => problem !== undefined),
    );
    expect(broken).toEqual([]);
  });

  it("load nothing from elsewhere: links may lead out, nothing else", () => {
    for (const page of pages) {
      const loads = htmlOf(page).match(/<(?:script|img|link|iframe|source|use|image)[^>]*>/g) ?? [];
      expect(
        loads.filter((tag) => /https?:|="\/\//.test(tag)),
        page,
      ).toEqual([]);
    }
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

  /** Opens a page of the site once its navigation is there. */
  async function open(path: string, width: keyof typeof widths, colorScheme: "light" | "dark") {
    const [w, h] = widths[width];
    const context = await browser.newContext({ viewport: { width: w, height: h }, colorScheme });
    const page = await context.newPage();
    const found = troubles(page);
    await page.goto(`${server.address}/${path}`);
    await page.waitForSelector("#tsd-nav-container a", { state: "attached" });
    return { page, found, close: () => context.close() };
  }

  const tooWide = (page: Page) =>
    page.evaluate<number>(
      "document.documentElement.scrollWidth - document.documentElement.clientWidth",
    );

  const looks = [
    ["desktop", "light", kinds],
    ["phone", "light", kinds],
    ["desktop", "dark", kinds],
    ["phone", "dark", kinds],
  ] as const;
  for (const [width, scheme, paths] of looks) {
    it.each(paths)(`%s is in order, ${width}, ${scheme}`, async (path) => {
      const { page, found, close } = await open(path, width, scheme);
      expect(await violations(page)).toEqual([]);
      expect(await tooWide(page)).toBe(0);
      expect(found).toEqual([]);
      await close();
    });
  }

  it("the navigation leads to a guide by keyboard and by click", async () => {
    const { page, found, close } = await open("index.html", "desktop", "light");
    await page.locator('#tsd-nav-container summary[aria-label="Pages below Guides"]').focus();
    await page.keyboard.press("Enter");
    await page
      .locator("#tsd-nav-container a", { hasText: /^\s*Vacuum decay\s*$/ })
      .first()
      .click();
    await page.waitForURL(/Vacuum_decay/);
    expect(await page.locator("h1").textContent()).toContain("Vacuum decay");
    expect(found).toEqual([]);
    await close();
  });

  it("the first screen shows the three answers without scrolling", async () => {
    const { page, close } = await open("index.html", "desktop", "light");
    for (const answer of ["// => pass", "// => moisture", "// => 20 A, 25 A, 30 A"]) {
      const box = await page.getByText(answer, { exact: true }).first().boundingBox();
      expect((box?.y ?? Infinity) + (box?.height ?? 0), answer).toBeLessThan(widths.desktop[1]);
    }
    await close();
  });
});
