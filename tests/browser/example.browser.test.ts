// The page of examples/browser as a person uses it: typed, pasted, read in the dark and on a phone.
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { atmosphereAtAltitude, degF, ft, psig } from "hvac-install-math/quantity";
import { dewTemperature, R32 } from "hvac-install-math/refrigerants";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import { buildPage } from "../../examples/browser/build.ts";
import { inventedLog } from "../../examples/browser/invented-logs.ts";
import { violations } from "./accessibility.ts";
import { launch, serve, troubles } from "./chromium.ts";

const root = join(import.meta.dirname, "../..");
const folder = mkdtempSync(join(tmpdir(), "browser-example-"));
let weight: string;
let browser: Browser;
let server: Awaited<ReturnType<typeof serve>>;
let page: Page;
let found: string[];

beforeAll(async () => {
  // The page stands on the built package; `npm run packed` leaves it behind.
  if (!existsSync(join(root, "dist/index.mjs")))
    execFileSync("npm", ["run", "build"], { cwd: root });
  weight = await buildPage(folder);
  server = await serve(folder);
  browser = await launch();
}, 600_000);

afterAll(async () => {
  await browser?.close();
  server?.close();
  rmSync(folder, { recursive: true });
});

beforeEach(async () => {
  page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  found = troubles(page);
  await page.goto(server.address);
});

afterEach(async () => {
  expect(found).toEqual([]);
  await page.close();
});

/** The card of a form. */
const card = (form: string) => page.locator("section", { has: page.locator(`#${form}`) });
const answer = (form: string) => card(form).locator("output").textContent();

/** Types into a field as a person does: what stood there goes, then key by key. */
async function type(form: string, label: string, text: string): Promise<void> {
  const field = card(form).getByLabel(label).first();
  await field.press("Control+a");
  await field.press("Delete");
  await field.pressSequentially(text);
}

/** Pastes over what stands in the log. */
async function paste(text: string): Promise<void> {
  await card("vacuum-log").getByLabel("Log since isolation").press("Control+a");
  await page.keyboard.insertText(text);
}

it("shows four answers with their cautions as it opens", async () => {
  expect(await answer("saturation")).toMatch(/^118 psig: bubble .+ dew .+\n95 °F: bubble/);
  expect(await answer("nitrogen-hold")).toMatch(/^pass: corrected drop 0\.\d+ psi ± 1\.\d psi$/);
  expect(await answer("vacuum-log")).toBe("pass: dry-and-tight");
  expect(await answer("nameplate")).toBe("50 A, 2 poles, 10 AWG: pass");
  for (const form of ["nitrogen-hold", "vacuum-log", "nameplate"]) {
    expect(await card(form).locator(".cautions li").count(), form).toBeGreaterThan(1);
    expect(await card(form).locator("details li").count(), form).toBeGreaterThan(2);
  }
  expect(weight).toMatch(/^page\.js: \d+\.\d kB, \d+\.\d kB with gzip/);
});

it("reads a gauge as the altitude has it, while one types", async () => {
  await card("saturation").getByLabel("Refrigerant").selectOption("R-32");
  for (const altitude of ["0", "5000", "1524 m"]) {
    await type("saturation", "Altitude", altitude);
    const height = altitude === "0" ? ft(0) : ft(5000);
    const dew = dewTemperature(R32, psig(118), atmosphereAtAltitude(height)).toString(degF, 1);
    expect(await answer("saturation"), altitude).toContain(`dew ${dew}`);
  }
  await page.getByLabel("Show figures in").selectOption("SI");
  expect(await answer("saturation")).toMatch(/^814 kPag: bubble -?\d+\.\d °C/);
});

it("says at the field, with the character, what it cannot read, and keeps what was typed", async () => {
  const field = card("saturation").getByLabel("Gauge pressure");
  await type("saturation", "Gauge pressure", "118 psi");
  expect(await field.inputValue()).toBe("118 psi");
  expect(await field.getAttribute("aria-invalid")).toBe("true");
  const described = await field.getAttribute("aria-describedby");
  const problem = page.locator(`#${described?.trim()}`);
  expect(await problem.textContent()).toContain("Character 5: Gauge");
  expect(await problem.locator("mark").textContent()).toBe("psi");
  expect(await answer("saturation")).toMatch(/^95 °F/);

  await field.press("End");
  await field.pressSequentially("g");
  expect(await field.getAttribute("aria-invalid")).toBeNull();
  expect(await problem.textContent()).toBe("");

  await type("saturation", "Gauge pressure", "9000 psig");
  expect(await problem.textContent()).toMatch(/9000 psig is not possible here; allowed: at least/);
});

it("finds the leak that the weather hides, and admits what it cannot tell", async () => {
  await type("nitrogen-hold", "Largest drop", "");
  expect(await answer("nitrogen-hold")).toMatch(/^inconclusive: /);
  await type("nitrogen-hold", "Largest drop", "4 psi");
  const end = card("nitrogen-hold").getByRole("group", { name: "End" });
  await end.getByLabel("Gauge pressure").fill("470 psig");
  expect(await answer("nitrogen-hold")).toMatch(/^fail: .+, leak$/);
  await type("nitrogen-hold", "Inner volume", "");
  const result = card("nitrogen-hold").locator(".result");
  expect(await result.textContent()).toMatch(/Smallest provable leak\s*needs the volume/);
  await type("nitrogen-hold", "Time since the start", "-1 h");
  expect(await answer("nitrogen-hold")).toBe("No answer while a field is marked.");
});

it("fails a pasted log that leaks, draws it, and plays it to the live monitor", async () => {
  await paste(inventedLog("leak"));
  expect(await answer("vacuum-log")).toBe("fail: leak");
  const picture = card("vacuum-log").locator("svg");
  expect(await picture.textContent()).toContain("keeps rising, a leak");
  await card("vacuum-log").getByRole("button", { name: "Replay" }).click();
  const live = card("vacuum-log").locator(".live");
  await expect.poll(() => live.textContent(), { timeout: 60_000 }).toMatch(/^1800 s: fail\. /);
  await card("vacuum-log").getByRole("button", { name: "Moisture" }).click();
  expect(await answer("vacuum-log")).toBe("fail: moisture");
});

it("names the line of a log that it cannot read, and keeps the log", async () => {
  const log = "elapsed [min];pressure [torr]\n0;0.3\n1;0.3O\n2;0.31";
  await paste(log);
  const problem = page.locator("#vacuum-readings-problem");
  expect(await problem.textContent()).toContain("Line 3, pressure [torr]: “0.3O” is not a number");
  expect(await card("vacuum-log").getByLabel("Log since").inputValue()).toBe(log);
  expect(await answer("vacuum-log")).toBe("No answer while a field is marked.");
  await paste("0,300");
  expect(await problem.textContent()).toContain("Paste a header");
  await paste("elapsed [s],pressure [micron]\n0,-3");
  expect(await problem.textContent()).toContain("“-3” is not possible");
  await paste("");
  expect(await problem.textContent()).toContain("Paste a header");
  await paste(log.replace("O", ""));
  expect(await answer("vacuum-log")).toContain("inconclusive");
});

it("turns a nameplate into its circuit by the edition, and refuses a plate that cannot be", async () => {
  await type("nameplate", "Fitted breaker", "60");
  expect(await answer("nameplate")).toMatch(/fail$/);
  await card("nameplate").getByLabel("Rules").selectOption("IEC 60364");
  await type("nameplate", "Fitted breaker", "");
  const problem = page.locator("#plate-wire-problem");
  expect(await problem.textContent()).toContain("allowed: 1 mm²");
  await type("nameplate", "Fitted conductor", "");
  expect(await answer("nameplate")).toMatch(/^32 A, 1 pole, \d+ mm²: inconclusive$/);
  await type("nameplate", "Maximum overcurrent", "15");
  expect(await page.locator("#plate-mop-problem").textContent()).toContain("15 A");
});

it("shows typed markup as text", async () => {
  const markup = "<img src=x onerror=alert(1)>";
  await type("saturation", "Gauge pressure", markup);
  await type("nameplate", "Fitted conductor", markup);
  await paste(`elapsed [s],pressure [micron]\n${markup}`);
  expect(await page.locator(".problem mark").first().textContent()).not.toBe("");
  expect(await page.locator("#plate-wire-problem").textContent()).toContain(markup);
  expect(await page.locator("img").count()).toBe(0);
});

it("is reached by the keyboard from the first field to the last", async () => {
  const controls =
    "header select, form input, form select, form textarea, form button, .result button, summary";
  const all = await page.locator(controls).count();
  const reached = new Set<string>();
  for (let i = 0; i < all; i++) {
    await page.keyboard.press("Tab");
    reached.add(
      await page.evaluate<string>(
        `String([...document.querySelectorAll("${controls}")].indexOf(document.activeElement))`,
      ),
    );
  }
  expect(reached.has("-1")).toBe(false);
  expect(reached.size).toBe(all);
});

it("has nothing that axe complains of and fits a phone, light and dark, right and wrong", async () => {
  for (const [colorScheme, width] of [
    ["light", 360],
    ["dark", 1280],
  ] as const) {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 800 });
    for (const course of ["Tight", "Leak"]) {
      await card("vacuum-log").getByRole("button", { name: course, exact: true }).click();
      expect(await violations(page), `${colorScheme}, ${course}`).toEqual([]);
    }
    const end = card("nitrogen-hold").getByRole("group", { name: "End" });
    await end.getByLabel("Gauge pressure").fill("470 psig");
    await card("saturation").getByLabel("Altitude").fill("12 furlongs and some more words");
    await card("nameplate").getByLabel("Minimum circuit").fill("");
    expect(await violations(page), `${colorScheme}, wrong`).toEqual([]);
    const overflow = "document.documentElement.scrollWidth - document.documentElement.clientWidth";
    expect(await page.evaluate(overflow)).toBe(0);
    await page.reload();
  }
});
