// What the module costs in an app, beside the unit that the app has anyway.
import { expect, it } from "vitest";
import { bundle } from "../package/bundle.ts";

it("costs 6 kB beside a unit, and no mathjs", async () => {
  const unit = `import { psig } from "hvac-install-math/quantity"; globalThis.unit = psig;`;
  const alone = await bundle(unit);
  const { gzip, inputs } = await bundle(
    `${unit} import { readQuantity } from "hvac-install-math/read-quantity"; globalThis.read = readQuantity;`,
  );
  expect(inputs.filter((name) => name.includes("mathjs"))).toEqual([]);
  expect(gzip - alone.gzip).toBeLessThanOrEqual(6000);
});
