// What the module costs in an app, beside the quantities that the app has anyway.
import { expect, it } from "vitest";
import { bundle } from "../package/bundle.ts";

const base = `import * as quantity from "hvac-install-math/quantity";
import * as assessment from "hvac-install-math/assessment";
globalThis.shared = [quantity, assessment];`;

it.each([
  ["readLog", 8000],
  // The aim of 8 kB for all four is missed by the guess; what they are is held so that they do not grow.
  ["readLog, findIsolation, findFill, guessLog", 11_400],
])("%s within its bytes after gzip", async (names, budget) => {
  const shared = await bundle(base);
  const { gzip } = await bundle(
    `${base}\nimport { ${names} } from "hvac-install-math/logs"; globalThis.use = [${names}];`,
  );
  expect(gzip - shared.gzip).toBeLessThanOrEqual(budget);
});
