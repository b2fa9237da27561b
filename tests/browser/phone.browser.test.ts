// The app of examples/phone as a technician uses it: on a small screen, without network, from plan to report.
import { type ChildProcess, execFileSync, spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { createServer } from "node:net";
import { join } from "node:path";
import { setTimeout } from "node:timers/promises";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { violations } from "./accessibility.ts";
import { launch, troubles } from "./chromium.ts";
import { pageExcess, slowTimes } from "./slow-phone.ts";

const folder = join(import.meta.dirname, "../../examples/phone");
let app: ChildProcess;
let address: string;
let said = "";
let browser: Browser;
let context: BrowserContext;
let page: Page;
let found: string[];

/** A port that nobody listens on. */
const freePort = () =>
  new Promise<number>((done) => {
    const server = createServer().listen(0, "127.0.0.1", () => {
      const { port } = server.address() as { port: number };
      server.close(() => done(port));
    });
  });

/** Waits until the app answers: what its server prints, and in which colors, is the server's own business. */
async function answering(): Promise<void> {
  const end = Date.now() + 240_000;
  while (app.exitCode === null && Date.now() < end) {
    if ((await fetch(address).catch(() => undefined))?.ok) return;
    await setTimeout(200);
  }
  throw new Error(`the server of examples/phone did not answer:\n${said}`);
}

beforeAll(async () => {
  if (!existsSync(join(folder, "node_modules")))
    execFileSync("npm", ["ci", "--no-audit", "--no-fund"], { cwd: folder });
  const port = await freePort();
  address = `http://127.0.0.1:${port}/`;
  const options = ["--host", "127.0.0.1", "--port", String(port), "--strictPort"];
  const { NODE_ENV: _, ...env } = process.env; // vitest's "test" would make it a build for development
  app = spawn("npm", ["start", "--", ...options], { cwd: folder, env, detached: true });
  app.stdout?.on("data", (text) => (said += text));
  app.stderr?.on("data", (text) => (said += text));
  await answering();
  browser = await launch();
}, 300_000);

afterAll(async () => {
  await browser?.close();
  if (app?.pid && app.exitCode === null) process.kill(-app.pid);
});

beforeEach(async () => {
  context = await browser.newContext({ viewport: { width: 390, height: 844 }, locale: "en-US" });
  page = await context.newPage();
  page.setDefaultTimeout(20_000);
  found = troubles(page);
});

afterEach(async () => {
  expect(found).toEqual([]);
  await context.close();
});

/** Opens the app and waits until it can be left without network. */
async function open(): Promise<void> {
  await page.goto(address);
  await page.evaluate("navigator.serviceWorker.ready");
  await page.waitForFunction("navigator.serviceWorker.controller !== null");
}

const go = (screen: string) => page.getByRole("link", { name: screen, exact: true }).click();
const menu = (name: string) => page.getByRole("combobox", { name, exact: true });
const box = (label: string, part = page.locator("main")) =>
  part.getByRole("textbox", { name: label, exact: true });

it("plans, tests, watches and reports, and keeps all of it through a reload without network", async () => {
  await open();
  await box("altitude").fill("5000");
  await box("way of the line").fill("21 ft 6 in");
  await box("height difference").fill("9");
  await box("gas temperature at the fill").fill("76");
  await box("gas temperature after the hold").fill("61");
  const main = page.locator("main");
  // 21.5 ft and 1 ft of slack: the 25 ft set, not the 16 ft one.
  await expect.poll(() => main.textContent()).toContain("a 25 ft line set");

  await go("Nitrogen");
  const [start, end] = [page.locator("fieldset").first(), page.locator("fieldset").last()];
  await box("test pressure", start).fill("500");
  await box("gas temperature", start).fill("76");
  await box("test pressure", end).fill("484.7");
  await box("gas temperature", end).fill("61");
  await box("elapsed time of the test", end).fill("14");
  await expect.poll(() => main.locator(".outcome").textContent()).toBe("PASS");

  await go("Vacuum");
  await box("temperature of the warmest part").fill("64");
  await main.getByRole("button", { name: "Tight and dry" }).click();
  await expect.poll(() => main.textContent(), { timeout: 60_000 }).toContain("181 readings kept");
  expect(await main.locator(".outcome").textContent()).toBe("PASS");

  await context.setOffline(true);
  await page.reload();
  await expect.poll(() => main.textContent()).toContain("181 readings kept");
  expect(await box("temperature of the warmest part").inputValue()).toBe("64");
  await go("Plan");
  expect(await box("way of the line").inputValue()).toBe("21 ft 6 in");
  await go("Report");
  const steps = await main.locator(".steps li").allTextContents();
  expect(steps.filter((step) => step.endsWith("PASS")).length).toBeGreaterThanOrEqual(2);
  await main.getByRole("button", { name: "Write the report" }).click();
  const report = page.frameLocator("iframe");
  await expect.poll(() => report.locator("h1").textContent()).toContain("Invented job");
  expect(await report.locator("svg").count()).toBeGreaterThan(0);
}, 180_000);

it("says at the field what it cannot read, and takes an empty box for nothing", async () => {
  await open();
  const main = page.locator("main");
  const problemOf = async (label: string) => {
    const id = await box(label).getAttribute("aria-describedby");
    return page.locator(`[id="${id}"]`).textContent();
  };
  await box("number of bends").fill("four");
  expect(await problemOf("number of bends")).toContain('"four"');
  expect(await box("number of bends").getAttribute("aria-invalid")).toBe("true");
  await box("altitude").fill("5 000 stories");
  expect(await problemOf("altitude")).not.toBe("");
  await page.reload();
  expect(await box("altitude").inputValue()).toBe("5 000 stories");
  expect(await box("number of bends").inputValue()).toBe("four");
  // An empty box is asked for. 0 ft of altitude would be an answer.
  await box("altitude").fill("");
  expect(await problemOf("altitude")).toBe("");
  expect(await main.textContent()).toContain("Enter: altitude.");
  await box("altitude").fill("0");
  await expect.poll(() => main.textContent()).not.toContain("Enter: altitude.");

  await go("Nitrogen");
  await box("test pressure", page.locator("fieldset").first()).fill("500 psi");
  await expect.poll(() => main.textContent()).toContain("Gauge or absolute?");
});

it("speaks Spanish and French, and takes figures in their notation and units", async () => {
  await open();
  const main = page.locator("main");
  // What was typed in feet stays in feet, also when the page goes over to meters.
  await box("height difference").fill("9");
  await menu("Units").selectOption("SI");
  expect(await menu("Unit of height difference").inputValue()).toBe("ft");
  expect(await menu("Unit of altitude").inputValue()).toBe("m");
  await menu("Language").selectOption("fr");
  await expect.poll(() => page.locator("html").getAttribute("lang")).toBe("fr");
  // 6.49 m and 1 ft of slack take the 25 ft set: 7.62 m by the definition of the foot.
  await box("parcours de la conduite").fill("6,49");
  await expect.poll(() => main.textContent()).toMatch(/7,62\s?m/);
  await page.reload();
  expect(await page.locator("h1").textContent()).toBe("Fiche de chantier");
  await menu("Langue").selectOption("en");
  await expect.poll(() => page.locator("h1").textContent()).toBe("Job sheet");
  // A comma that was typed in French is still a decimal mark.
  expect(await box("way of the line").inputValue()).toBe("6,49");
  expect(await box("way of the line").getAttribute("aria-invalid")).toBe("false");
  await menu("Language").selectOption("es");
  await expect.poll(() => page.locator("h1").textContent()).toBe("Hoja de trabajo");
  for (const screen of ["Plan", "Nitrógeno", "Vacío", "Informe"]) {
    await go(screen);
    expect(await main.textContent()).not.toMatch(
      /\b(?:the|your|undefined|NaN)\b|\{\w+\}|[a-z]+\[\d\]\./,
    );
  }
});

it.each(["light", "dark"] as const)(
  "can be read by everybody, %s, and fits 390 px",
  async (scheme) => {
    await page.emulateMedia({ colorScheme: scheme });
    await open();
    await box("altitude").fill("high");
    for (const screen of ["Plan", "Nitrogen", "Vacuum", "Report"]) {
      await go(screen);
      expect(await violations(page), screen).toEqual([]);
      expect(await page.evaluate("document.documentElement.scrollWidth"), screen).toBe(390);
      expect(await page.locator(".cautions li").count(), screen).toBeGreaterThan(0);
      await expect(page.locator(".invented").textContent()).resolves.toContain("invented");
    }
  },
);

it("can be installed", async () => {
  await open();
  const session = await context.newCDPSession(page);
  const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
  // A context of a test is a private window, which installs nothing; nothing else stands against it.
  expect(installabilityErrors.map(({ errorId }) => errorId)).toEqual(["in-incognito"]);
});

it("leaves a record that it cannot read as it is", async () => {
  await open();
  await box("altitude").fill("5000");
  const row = (change: string) =>
    page.evaluate(`new Promise((done) => {
      const opening = indexedDB.open("job-sheet", 1);
      opening.onsuccess = () => {
        const store = opening.result.transaction("jobs", "readwrite").objectStore("jobs");
        store.get("open").onsuccess = ({ target: { result } }) => { ${change} store.put(result, "open").onsuccess = () => done(result.json.version); };
      };
    })`);
  expect(await row("result.json.version = 3;")).toBe(3);
  await page.reload();
  expect(await page.getByRole("alert").textContent()).toContain("left as it is");
  expect(await row("")).toBe(3);
});

describe("on a processor slowed six times", () => {
  /** Time from the request to the first box that can be typed into, in ms at the stated pace: first visit, then without network. */
  async function readyTimes(): Promise<[first: number, again: number]> {
    const own = await browser.newContext({ viewport: { width: 390, height: 844 } });
    page = await own.newPage();
    await page.addInitScript(`(function look() {
      if (document.querySelector("main input")) globalThis.readyAt = performance.now();
      else requestAnimationFrame(look);
    })();`);
    const session = await own.newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate: 6 });
    await open();
    const first = await page.evaluate<number>("globalThis.readyAt");
    await own.setOffline(true);
    await page.reload();
    await page.waitForFunction("globalThis.readyAt");
    const again = await page.evaluate<number>("globalThis.readyAt");
    const excess = await pageExcess(page, 6);
    await own.close();
    return [first / excess, again / excess];
  }

  it("is ready within 3 s, from the network and without it", async () => {
    const times = [await readyTimes(), await readyTimes(), await readyTimes()];
    // The shortest: what else runs on the machine only adds.
    const first = Math.min(...times.map(([one]) => one));
    const again = Math.min(...times.map(([, one]) => one));
    console.info(`ready: first visit ${first.toFixed(0)} ms, offline ${again.toFixed(0)} ms`);
    expect(first).toBeLessThan(3000);
    expect(again).toBeLessThan(3000);
  });

  it("judges the worked record within 100 ms, and a live reading within 1 ms", async () => {
    const { first, again, reading, longest } = await slowTimes(browser, 6);
    console.info(
      `verdict: first ${first.toFixed(0)} ms, again ${again.toFixed(0)} ms; reading: mean ${reading.toFixed(2)} ms, longest ${longest.toFixed(0)} ms`,
    );
    expect(again).toBeLessThan(100);
    expect(reading).toBeLessThan(1);
  });
});
