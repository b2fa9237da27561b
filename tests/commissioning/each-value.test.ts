// Every value of a good record left out of a bad one, and every figure of it made as large as a number can be.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { isQuantity, kg } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { complete } from "./complete-record.ts";
import { at, faults, pathsOf, put, textOf } from "./mutated-record.ts";

const paths = pathsOf(complete);
const assess = (record: unknown) => assessInstallation(record as InstallationRecord);

it("no single value that is left out turns a bad record into a good one", {
  timeout: 120_000,
}, () => {
  // A quarter of the vacuum log says the same, and is judged sooner.
  const readings = complete.evacuations?.[0]?.readings?.filter((_, i) => i % 4 === 0);
  const light = put(complete, ["evacuations", 0, "readings"], readings);
  expect(assess(light).outcome).toBe("pass");
  for (const [number, [path, value]] of faults.entries()) {
    const bad = put(light, path, value);
    // Each fault with a third of the values: together they try every value twice.
    for (const gone of paths.filter((_, i) => i % 3 === number % 3)) {
      if (["version", "photos", "signatures", "name"].includes(String(gone[0]))) continue;
      expect(assess(put(bad, gone, undefined)).outcome, gone.join(".")).not.toBe("pass");
    }
  }
});

// The largest double, IEEE 754: whatever is made of it must not become infinite.
it("a figure as large as a number can be leaves no record without a verdict", () => {
  const largest = [Number.MAX_VALUE, -Number.MAX_VALUE];
  const wrong = paths.flatMap((path) => {
    const figure = at(complete, path);
    if (!isQuantity(figure)) return [];
    return largest.flatMap((value) => {
      try {
        return [put(complete, path, figure.unit(value))];
      } catch {
        return []; // no quantity is that large in SI
      }
    });
  });
  const charge = put(complete, ["equipment", "factoryCharge"], kg(Number.MAX_VALUE));
  expect(wrong.length).toBeGreaterThan(100);
  for (const record of [...wrong, charge]) textOf(assess(record));
});
