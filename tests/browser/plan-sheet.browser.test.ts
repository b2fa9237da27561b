// The plan on paper: about two sheets of A4 for one run, half a sheet for each further one.

import { circuitRules } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { planSheet } from "hvac-install-math/report";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, it } from "vitest";
import { planned } from "../planning/installations.ts";
import { launch } from "./chromium.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

it.each(Object.entries(planned))("%s fits its paper", async (_, record) => {
  const rules = Object.values(circuitRules);
  const page = await browser.newPage();
  await page.setContent(
    planSheet(record, { language: english, system: "SI", rules, format: "html" }),
  );
  const pdf = await page.pdf({ format: "A4", preferCSSPageSize: true });
  await page.close();
  const pages = pdf.toString("latin1").match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
  const runs = Math.max(1, record.runs?.length ?? 1);
  expect(pages).toBeGreaterThan(0);
  expect(pages).toBeLessThanOrEqual(Math.ceil(2 + (runs - 1) / 2));
});
