// How long do a verdict and a live reading take on a slow phone? A page on the built package, with the record of
// examples/worked-install.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { recordCodec } from "hvac-install-math/wire";
import type { Browser, Page } from "playwright-core";
import { readInstallation } from "../../examples/worked-install/read-installation.ts";
import { loop, paceOf } from "../pace.ts";
import { serve } from "./chromium.ts";

const root = join(import.meta.dirname, "../..");
const code = `import { nec2023 } from "hvac-install-math/circuit-protection";
import { assessInstallation } from "hvac-install-math/commissioning";
import { degC, micron, second } from "hvac-install-math/quantity";
import { acceptancePolicies, createDecayMonitor } from "hvac-install-math/vacuum-decay";
import { recordCodec } from "hvac-install-math/wire";
const timed = (work) => { const before = performance.now(); work(); return performance.now() - before; };
globalThis.measure = async () => {
  const record = recordCodec.decode(await (await fetch("record.json")).json());
  const assess = () => { if (assessInstallation(record, { rules: [nec2023] }).outcome !== "pass") throw new Error("no pass"); };
  const first = timed(assess);
  const again = Math.min(...Array.from({ length: 30 }, () => timed(assess)));
  const monitor = createDecayMonitor({ ambient: degC(20), policy: acceptancePolicies.splitManualB });
  const readings = Array.from({ length: 1800 }, (_, i) => ({ elapsed: second(i), pressure: micron(300 + (i % 3)) }));
  const each = readings.map((reading) => timed(() => monitor.add(reading)));
  return { first, again, reading: each.reduce((sum, one) => sum + one, 0) / each.length, longest: Math.max(...each) };
};`;

/** Milliseconds on a processor slowed down. */
export interface SlowTimes {
  /** `assessInstallation` for the first time in a page. */
  readonly first: number;
  /** The same again, the shortest of 30: what else runs on the machine only adds. */
  readonly again: number;
  /** One live reading of 1800, on average. */
  readonly reading: number;
  /** The longest of them: one that renews the fit. */
  readonly longest: number;
}

/** How many times slower than stated a page runs that is slowed `rate` times, beyond those: see tests/pace.ts. */
export async function pageExcess(page: Page, rate: number): Promise<number> {
  const times = await page.evaluate<number[]>(`Array.from({ length: 10 }, ${loop})`);
  return paceOf(times.map((one) => one / rate));
}

/** Measures in Chromium with the processor slowed `rate` times, in ms at the stated pace. */
export async function slowTimes(browser: Browser, rate: number): Promise<SlowTimes> {
  const folder = mkdtempSync(join(tmpdir(), "slow-phone-"));
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: root },
    bundle: true,
    minify: true,
    format: "esm",
    tsconfigRaw: "{}", // the built package, as an app has it
    write: false,
  });
  const { record } = readInstallation(join(root, "examples/worked-install"));
  writeFileSync(join(folder, "page.js"), outputFiles[0]?.text ?? "");
  writeFileSync(join(folder, "record.json"), recordCodec.stringify(record));
  writeFileSync(
    join(folder, "index.html"),
    '<!doctype html><title>Slow</title><script type="module" src="page.js"></script>',
  );
  const { address, close } = await serve(folder);
  const page = await browser.newPage();
  try {
    await page.goto(address);
    const session = await page.context().newCDPSession(page);
    await session.send("Emulation.setCPUThrottlingRate", { rate });
    const before = await pageExcess(page, rate);
    const times = await page.evaluate<SlowTimes>("measure()");
    const excess = Math.max(before, await pageExcess(page, rate));
    return Object.fromEntries(
      Object.entries(times).map(([name, ms]) => [name, ms / excess]),
    ) as unknown as SlowTimes;
  } finally {
    await page.close();
    close();
    rmSync(folder, { recursive: true });
  }
}
