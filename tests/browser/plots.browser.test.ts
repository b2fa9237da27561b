import { expect, it } from "vitest";
import { allPlots } from "../plots/samples.ts";
import { violations } from "./accessibility.ts";
import { launch, troubles } from "./chromium.ts";

const plots = Object.entries(allPlots());

/** A page with every picture, dark or light, as the reader's browser would show it. */
const page = (
  dark: boolean,
) => `<!doctype html><html lang="en"><meta name="viewport" content="width=device-width">
<title>Plots</title><style>body{margin:16px;${dark ? "background:#16191d;color:#e6e8ea" : "background:#fff;color:#24292e"}}</style>
<main><h1>Plots</h1>${plots.map(([, svg]) => `<figure style="margin:0 0 24px">${svg}</figure>`).join("")}</main></html>`;

it("shows every picture on light and dark, on a phone and a desk, without a complaint", async () => {
  const browser = await launch();
  try {
    for (const [dark, width] of [
      [false, 360],
      [true, 1200],
    ] as const) {
      const tab = await browser.newPage({ viewport: { width, height: 800 } });
      const found = troubles(tab);
      await tab.setContent(page(dark));
      expect(await violations(tab)).toEqual([]);
      expect(found).toEqual([]);
      const seen = await tab.evaluate<{ overflow: number; names: string[]; outside: string[] }>(`({
        overflow: document.documentElement.scrollWidth - document.documentElement.clientWidth,
        names: [...document.querySelectorAll("svg[role=img]")].map((svg) =>
          svg.getAttribute("aria-labelledby").split(" ").map((id) => document.getElementById(id).textContent).join(" ")),
        // every text lies in its picture: nothing is cut off at an edge
        outside: [...document.querySelectorAll("svg text")].filter((text) => {
          const [own, all] = [text.getBoundingClientRect(), text.closest("svg").getBoundingClientRect()];
          return own.left < all.left - 1 || own.right > all.right + 1 || own.bottom > all.bottom + 1;
        }).map((text) => text.textContent),
      })`);
      expect(seen.overflow).toBe(0);
      expect(seen.names).toHaveLength(plots.length);
      for (const name of seen.names) expect(name.length).toBeGreaterThan(60);
      expect(seen.outside).toEqual([]);
      await tab.close();
    }
  } finally {
    await browser.close();
  }
});

it("is XML that a strict parser takes", async () => {
  const browser = await launch();
  try {
    const tab = await browser.newPage();
    const errors = await tab.evaluate<string[]>(
      `(${JSON.stringify(plots)}).flatMap(([name, svg]) => {
        const parsed = new DOMParser().parseFromString(svg, "image/svg+xml");
        return parsed.querySelector("parsererror") ? [name] : [];
      })`,
    );
    expect(errors).toEqual([]);
  } finally {
    await browser.close();
  }
});
