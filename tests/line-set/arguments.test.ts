import * as lineSet from "hvac-install-math/line-set";
import { isInvalidInputError, m } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

const functions = Object.entries(lineSet).filter(
  (entry): entry is [string, (typeof lineSet)["tubeVolume"]] => typeof entry[1] === "function",
);
const nonsense = [undefined, null, {}, [], 5, "x", () => 1, Number.NaN, m(1), { tube: null }]
  .concat([{ lines: [null] }, { lines: [{}] }, { items: [null] }, { limits: null }] as never)
  .concat([{ losses: [null] }, { rate: 5 }, { rate: {} }, { stock: [null], run: m(3) }] as never)
  .concat([{ refrigerant: null }, { liquid: null }, { cuttable: "no", run: m(3) }] as never);

describe("every function of the module, called from JavaScript with nonsense", () => {
  it.each(functions)("%s names the argument instead of breaking", (_, anything) => {
    for (const first of nonsense) {
      for (const second of [undefined, null, {}, m(1)]) {
        let thrown: unknown;
        try {
          anything(first as never, second as never);
        } catch (error) {
          thrown = error;
        }
        expect(isInvalidInputError(thrown), `${String(thrown)}`).toBe(true);
      }
    }
  });
});
