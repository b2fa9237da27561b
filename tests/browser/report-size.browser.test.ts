// How much does a report ask of its reader? Words, printed pages, phone screens, and what the first screen shows.
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { english } from "hvac-install-math/language/en";
import { spanish } from "hvac-install-math/language/es";
import { french } from "hvac-install-math/language/fr";
import { recordPlots } from "hvac-install-math/plots";
import { type HtmlReportOptions, htmlReport } from "hvac-install-math/report";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readInstallation } from "../../examples/worked-install/read-installation.ts";
import { rules } from "../commissioning/assess.ts";
import { violations } from "./accessibility.ts";
import { launch } from "./chromium.ts";
import { collisions } from "./collisions.ts";

const root = join(import.meta.dirname, "../..");
const options: HtmlReportOptions = {
  language: english,
  system: "inch-pound",
  rules,
  printedAt: "2026-05-08 09:30",
  plots: recordPlots,
  appendix: false,
};
const names = [
  "worked-install",
  "failing-install",
  "half-finished-install",
  "three-heads",
] as const;
const pageOf = (name: (typeof names)[number], own: Partial<HtmlReportOptions> = {}) =>
  htmlReport(readInstallation(join(root, "examples", name)).record, { ...options, ...own });

/** A screen of a phone. */
const phone = { width: 390, height: 844 };

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

/** What a page measures, as its readers see it. */
async function measured(html: string) {
  const tab = await browser.newPage({ viewport: phone });
  await tab.setContent(html);
  const words = await tab.evaluate<number>(
    "document.body.innerText.split(/\\s+/).filter(Boolean).length",
  );
  const height = await tab.evaluate<number>("document.documentElement.scrollHeight");
  const pages = { A4: await sheets(tab, "A4"), Letter: await sheets(tab, "Letter") };
  await tab.close();
  return { words, screens: height / phone.height, ...pages };
}

async function sheets(tab: Page, format: "A4" | "Letter"): Promise<number> {
  const pdf = (await tab.pdf({ format })).toString("latin1");
  return pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

const figures: Record<string, unknown> = {};
afterAll(() => {
  const folder = join(root, "tests/.generated");
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "report-size.json"), JSON.stringify(figures, null, 2));
});

describe("a report without its appendix", () => {
  // A sound single split: at most 5 sheets, 1 800 words and 10 screens of a phone; others near it.
  it.each([
    ["worked-install", 1800, 10, 5],
    ["failing-install", 1900, 11, 5],
    ["half-finished-install", 1800, 10, 5],
    ["three-heads", 2400, 14, 6],
  ] as const)(
    "%s: at most %d words, %d screens of a phone, %d sheets",
    async (name, words, screens, most) => {
      for (const system of ["inch-pound", "SI"] as const) {
        const size = await measured(pageOf(name, { system }));
        figures[`${name}, ${system}`] = size;
        expect(size.words).toBeLessThanOrEqual(words);
        expect(size.screens).toBeLessThanOrEqual(screens);
        expect(Math.max(size.A4, size.Letter)).toBeLessThanOrEqual(most);
      }
    },
  );

  it.each([
    ["es", spanish],
    ["fr", french],
  ] as const)(
    "in %s a sound single split stays at 5 sheets and 10 screens",
    async (tag, language) => {
      const size = await measured(pageOf("worked-install", { language, system: "SI" }));
      figures[`worked-install, ${tag}`] = size;
      expect(size.screens).toBeLessThanOrEqual(10);
      expect(Math.max(size.A4, size.Letter)).toBeLessThanOrEqual(5);
    },
  );

  it.each(names)(
    "shows verdict and first action of %s on the first screen, before any link",
    async (name) => {
      const tab = await browser.newPage({ viewport: phone });
      await tab.setContent(pageOf(name));
      const verdict = await tab.locator("#head-verdict .mark").boundingBox();
      expect((verdict?.y ?? Infinity) + (verdict?.height ?? 0)).toBeLessThan(phone.height);
      const actions = tab.locator("#part-actions li");
      if ((await actions.count()) > 0) {
        const first = await actions.first().boundingBox();
        expect((first?.y ?? Infinity) + (first?.height ?? 0)).toBeLessThan(phone.height);
      }
      const link = await tab.locator("a").first().boundingBox();
      expect(link?.y ?? Infinity).toBeGreaterThan((verdict?.y ?? Infinity) + 100);
      await tab.close();
    },
  );

  it.each(names)(
    "prints verdict, actions, hold points and steps of %s on the first sheet",
    async (name) => {
      // A4 within the margins of the style sheet: 182 by 265 mm, 96 px to the inch.
      const [width, height] = [Math.floor((182 / 25.4) * 96), Math.floor((265 / 25.4) * 96)];
      const tab = await browser.newPage({ viewport: { width, height } });
      await tab.emulateMedia({ media: "print" });
      await tab.setContent(pageOf(name));
      const last = await tab.locator("#part-overview").boundingBox();
      expect((last?.y ?? Infinity) + (last?.height ?? 0)).toBeLessThanOrEqual(height);
      await tab.close();
    },
  );
});

describe.each(["light", "dark"] as const)("in %s colors", (colorScheme) => {
  it.each([390, 1440])(
    "axe finds nothing at %d pixels, with and without the appendix",
    async (width) => {
      // axe has to run, and so the page's own policy, which lets no script run, is put aside.
      const context = await browser.newContext({
        colorScheme,
        bypassCSP: true,
        viewport: { width, height: 844 },
      });
      const tab = await context.newPage();
      for (const [name, appendix] of [
        ["failing-install", false],
        ["three-heads", true],
      ] as const) {
        await tab.setContent(pageOf(name, { appendix }));
        expect(await violations(tab), name).toEqual([]);
      }
      await context.close();
    },
  );
});

it.each([320, 390, 768, 1440])(
  "no words of its pictures collide, and nothing scrolls sideways, at %d pixels",
  async (width) => {
    const tab = await browser.newPage({ viewport: { width, height: 844 } });
    for (const [language, system] of [
      [english, "inch-pound"],
      [english, "SI"],
      [spanish, "SI"],
      [french, "SI"],
    ] as const) {
      for (const name of names) {
        await tab.setContent(pageOf(name, { language, system }));
        expect(await collisions(tab), name).toEqual([]);
        expect(
          await tab.evaluate("document.documentElement.scrollWidth"),
          name,
        ).toBeLessThanOrEqual(width);
      }
    }
    await tab.close();
  },
);
