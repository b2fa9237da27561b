// The components of docs/with-react.md, drawn by React 19 in Chromium; and beside each what happens when it is written
// as one does at first.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build, type Plugin } from "esbuild";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, it } from "vitest";
import { writeBlocks } from "../docs/page-code.ts";
import { launch, serve } from "./chromium.ts";

const generated = join(import.meta.dirname, "../.generated");
mkdirSync(generated, { recursive: true });
const folder = mkdtempSync(join(generated, "with-react-"));
let browser: Browser;
let server: Awaited<ReturnType<typeof serve>>;
let page: Page;
/** What React said on the console, and errors that nothing caught. */
let said: string[];

const entry = `
import { memo, useEffect, useRef, useState } from "react";
import { createRoot } from "react-dom/client";
import { assessFlareTorque } from "hvac-install-math/flare-joint";
import { degC, degF, ftLb, kPag, micron, psig, second, standardAtmosphere } from "hvac-install-math/quantity";
import { R410A, superheat } from "hvac-install-math/refrigerants";
import { acceptancePolicies, createDecayMonitor } from "hvac-install-math/vacuum-decay";
import { BendsForm, Figure, QuantityField, useDecay, useSameQuantity, Verdict } from "./page.ts";

const counts = (globalThis.counts = { monitors: 0, drawings: 0, effects: 0 });
const options = {
  ambient: degC(20),
  isolation: "isolation-valve",
  get policy() { counts.monitors++; return acceptancePolicies.provenEarly500; },
};
const loose = [37, 38, 39].map((torque) => assessFlareTorque({ tube: "3/8", torque: ftLb(torque) }));
const three = { ...loose[0], reasons: loose.flatMap(({ reasons }) => reasons) };
const superheatAt = (pressure) =>
  superheat(R410A, { pressure, lineTemperature: degF(52), atmosphere: standardAtmosphere }).toString(undefined, 0);

/** Draws what is in it anew at each push of a button. */
function Again({ draw }) {
  const [times, set] = useState(0);
  return <><button type="button" onClick={() => set(times + 1)}>again</button>{draw()}</>;
}
const Effect = ({ value }) => { useEffect(() => { counts.effects++; }, [value]); };
const Kept = ({ value }) => <Effect value={useSameQuantity(value)} />;
const Plain = memo(({ value }) => { counts.drawings++; return <p>{value.toString()}</p>; });
const readings = Array.from({ length: 121 }, (_, i) => ({ elapsed: second(2 * i), pressure: micron(310 + (i % 3)) }));

/** Sets, in an effect, the quantity on which the effect depends; stopped after 40 times. */
function useLoop(same) {
  const [set, change] = useState(psig(118));
  const value = same(set);
  useEffect(() => { if (++counts.effects < 40) change(psig(118)); }, [value]);
}

const stories = {
  field() {
    const [value, set] = useState();
    return <><QuantityField label="Suction" kind="gaugePressure" units={[psig, kPag]} onQuantity={set} />
      <output>{value ? superheatAt(value) : "no value"}</output></>;
  },
  fieldAtFirst() {
    const [text, set] = useState("118");
    return <><input aria-label="Suction" value={text} onChange={({ target }) => set(target.value)} />
      <output>{superheatAt(psig(Number(text)))}</output></>;
  },
  unit() { const [unit] = useState(() => psig); return <output>{unit.symbol}</output>; },
  unitAtFirst() { const [unit] = useState(psig); return <output>{unit.symbol}</output>; },
  verdict: () => <Verdict verdict={three} />,
  verdictAtFirst: () => <ul>{three.reasons.map((one) => <li key={one.code}>{one.code}</li>)}</ul>,
  decay() {
    const [verdict, add] = useDecay(options);
    return <><button type="button" onClick={() => readings.forEach(add)}>again</button>
      {verdict && <Verdict verdict={verdict} />}</>;
  },
  decayAtFirst() {
    const [verdict, set] = useState();
    const monitor = useRef(createDecayMonitor(options));
    return <><button type="button" onClick={() => readings.forEach((one) => set(monitor.current.add(one)))}>again</button>
      {verdict && <Verdict verdict={verdict} />}</>;
  },
  effect: () => <Again draw={() => <Kept value={psig(118)} />} />,
  effectAtFirst: () => <Again draw={() => <Effect value={psig(118)} />} />,
  loop() { useLoop(useSameQuantity); },
  loopAtFirst() { useLoop((value) => value); },
  memo: () => <Again draw={() => <Figure name="Suction" value={psig(118)} />} />,
  memoAtFirst: () => <Again draw={() => <Plain value={psig(118)} />} />,
  form: () => <BendsForm />,
};
const Story = stories[location.search.slice(1)];
createRoot(document.getElementById("app")).render(<Story />);
`;

beforeAll(async () => {
  writeBlocks("with-react.md", "tsx", folder);
  const { outputFiles } = await build({
    stdin: { contents: entry, resolveDir: folder, loader: "jsx" },
    bundle: true,
    format: "esm",
    jsx: "automatic",
    define: { "process.env.NODE_ENV": '"development"' }, // React warns
    write: false,
    plugins: [countDrawings],
  });
  writeFileSync(join(folder, "page.js"), outputFiles[0]?.text ?? "");
  writeFileSync(join(folder, "favicon.ico"), "");
  const body = '<main id="app"></main><script type="module" src="page.js"></script>';
  writeFileSync(
    join(folder, "index.html"),
    `<!doctype html><html lang="en"><title>React</title>${body}</html>`,
  );
  server = await serve(folder);
  browser = await launch();
});

afterAll(async () => {
  await browser?.close();
  server?.close();
  rmSync(folder, { recursive: true });
});

beforeEach(async () => {
  page = await browser.newPage();
  page.setDefaultTimeout(20_000);
  said = [];
  page.on("console", (message) => {
    if (message.type() === "error") said.push(message.text());
  });
  page.on("pageerror", (error) => said.push(error.message));
});
afterEach(() => page.close());

/** Counts how often the page's `Figure` is drawn. */
const countDrawings: Plugin = {
  name: "count-drawings",
  setup(bundling) {
    bundling.onLoad({ filter: /block-\d+\.tsx$/ }, ({ path }) => {
      const code = readFileSync(path, "utf8");
      const figure = /(function Figure\(.+\{\n)/;
      return {
        contents: code.replace(figure, "$1  (globalThis as any).counts.drawings++;\n"),
        loader: "tsx",
      };
    });
  },
};

const draw = (story: string) => page.goto(`${server.address}/?${story}`);
const output = () => page.locator("output").textContent();
const counts = () => page.evaluate<Record<string, number>>("globalThis.counts");
const again = async () => {
  for (let i = 0; i < 3; i++) await page.getByRole("button", { name: "again" }).click();
};

it("an empty box has no value; Number makes 0 psig of it, and a superheat of 112 °F", async () => {
  await draw("fieldAtFirst");
  const box = page.getByLabel("Suction", { exact: true });
  await box.fill("");
  // R-410A at 0 psig: dew at about -60 °F, as every field chart prints it; 52 °F on the line
  expect(await output()).toBe("112 Δ°F");
  await draw("field");
  await box.fill("118");
  expect(await output()).toBe("12 Δ°F");
  await box.fill("");
  expect(await output()).toBe("no value");
  await box.fill("118 psi");
  expect(await output()).toBe("no value");
  expect(await page.getByRole("alert").textContent()).toBe("Gauge or absolute?");
  expect(await box.getAttribute("aria-invalid")).toBe("true");
  expect(said).toEqual([]);
});

it("the menu of units reads the box anew, and a unit of the menu may be typed", async () => {
  await draw("field");
  const box = page.getByLabel("Suction", { exact: true });
  await page.getByLabel("Unit of Suction").selectOption("kPag");
  await box.fill("813.6"); // 118 psi by the definition of the pound and the inch
  expect(await output()).toBe("12 Δ°F");
  await box.fill("118 psig");
  expect(await output()).toBe("12 Δ°F");
  await box.fill("118");
  await page.getByLabel("Unit of Suction").selectOption("psig");
  expect(await output()).toBe("12 Δ°F");
  expect(await box.inputValue()).toBe("118");
  expect(said).toEqual([]);
});

it("a unit goes into the state by a function; by itself React calls it", async () => {
  await draw("unit");
  expect(await output()).toBe("psig");
  expect(said).toEqual([]);
  await draw("unitAtFirst");
  await expect.poll(() => said.join()).toMatch(/psig/);
  expect(await page.locator("output").count()).toBe(0);
});

it("statements have unique keys, though codes repeat", async () => {
  await draw("verdict");
  expect(await page.locator("section > ul").first().locator("li").count()).toBe(6); // of three joints
  expect(said).toEqual([]);
  await draw("verdictAtFirst");
  await expect.poll(() => said.join()).toContain("same key");
});

it("a monitor is made once, not at every drawing", async () => {
  const made = async (story: string) => {
    await draw(story);
    await page.getByRole("button", { name: "again" }).waitFor();
    const { monitors: once } = await counts();
    await again();
    const { monitors } = await counts();
    return (monitors ?? 0) / (once ?? 0);
  };
  expect(await made("decayAtFirst")).toBeGreaterThan(1);
  expect(await made("decay")).toBe(1);
  expect(await page.locator("h2").textContent()).toBe("PASS");
});

it("equal quantities start no effect anew, and no loop", async () => {
  const effects = async (story: string) => {
    await draw(story);
    if (story.startsWith("effect")) await again();
    else await page.waitForTimeout(300);
    return (await counts()).effects;
  };
  expect(await effects("effectAtFirst")).toBe(4);
  expect(await effects("effect")).toBe(1);
  expect(await effects("loopAtFirst")).toBe(40);
  expect(await effects("loop")).toBe(1);
});

it("memo draws a figure anew only when it is another one", async () => {
  const drawings = async (story: string) => {
    await draw(story);
    await again();
    return (await counts()).drawings;
  };
  expect(await drawings("memoAtFirst")).toBe(4);
  expect(await drawings("memo")).toBe(1);
});

it("a form says at the field what the codec refuses, under the field's own name", async () => {
  await draw("form");
  const box = page.getByLabel("number of bends");
  await box.fill("four");
  expect(await page.getByRole("alert").textContent()).toContain('"four"');
  await box.fill("4");
  expect(await page.getByRole("alert").textContent()).toBe("");
  await box.fill("");
  expect(await page.getByRole("alert").textContent()).toBe("");
});
