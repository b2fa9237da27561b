// Do the words of the pictures stay apart, in every language and width, and does the measure see it where they do not?
import { english } from "hvac-install-math/language/en";
import { spanish } from "hvac-install-math/language/es";
import { french } from "hvac-install-math/language/fr";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { allPlots } from "../plots/samples.ts";
import { launch } from "./chromium.ts";
import { collisions } from "./collisions.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

const page = (plots: readonly string[]) =>
  `<!doctype html><html lang="en"><meta name="viewport" content="width=device-width"><title>Plots</title>
<body style="margin:16px">${plots.map((svg) => `<figure style="margin:0 0 24px">${svg}</figure>`).join("")}</body></html>`;

it("sees words that lie on each other, and words outside their picture", async () => {
  const tab = await browser.newPage({ viewport: { width: 390, height: 844 } });
  const text = (words: string, x: number, y: number) => `<text x="${x}" y="${y}">${words}</text>`;
  const svg = (inside: string) =>
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 100" role="img"><title id="a">A</title>${inside}</svg>`;
  await tab.setContent(page([svg(text("one word", 20, 40) + text("another", 50, 44))]));
  expect(await collisions(tab)).toEqual(["a: one word | another"]);
  await tab.setContent(page([svg(text("too far to the right", 280, 40))]));
  expect(await collisions(tab)).toEqual(["a: outside: too far to the right"]);
  await tab.setContent(page([svg(text("one word", 20, 40) + text("below it", 20, 58))]));
  expect(await collisions(tab)).toEqual([]);
  await tab.close();
});

it.each([320, 390, 768, 1440])("no words of any picture collide at %d pixels", async (width) => {
  const tab = await browser.newPage({ viewport: { width, height: 844 } });
  for (const language of [english, spanish, french]) {
    for (const own of [
      { system: "inch-pound" },
      { system: "SI", width: 300 },
      { system: "SI", width: 360 },
      { system: "inch-pound", width: 1200 },
    ] as const) {
      await tab.setContent(page(Object.values(allPlots({ ...own, language }))));
      expect(await collisions(tab), `${language.locale} ${JSON.stringify(own)}`).toEqual([]);
    }
  }
  await tab.close();
});
