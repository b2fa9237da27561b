import { expect, it } from "vitest";
import { bundle } from "./bundle.ts";

// Budgets in bytes after minification and gzip. A figure above its budget is mended in the code.
const core = `import { atmosphereAtAltitude, equals, InvalidInputError, psia, psig, standardAtmosphere, toAbsolute, toGauge } from "hvac-install-math/quantity";
globalThis.used = [atmosphereAtAltitude, equals, InvalidInputError, psia, psig, standardAtmosphere, toAbsolute, toGauge];`;

it("keeps the quantity core within 2 kB plus 30 bytes per unit", async () => {
  const { gzip } = await bundle(core);
  expect(gzip).toBeLessThanOrEqual(2000 + 4 * 30); // psi, psia, psig, kPaa
});

it("adds at most 30 bytes per unit on average when the whole catalogue is used", async () => {
  const catalogue = await import("../../src/quantity/units/index.ts");
  const base = await bundle(core);
  const all = await bundle(`${core}
import * as units from "hvac-install-math/quantity"; globalThis.all = units;`);
  expect((all.gzip - base.gzip) / Object.keys(catalogue).length).toBeLessThanOrEqual(30);
});

it("keeps everything behind the root within 45 kB", async () => {
  const { gzip } = await bundle(`export * from "hvac-install-math";`);
  expect(gzip).toBeLessThanOrEqual(45_000);
});
