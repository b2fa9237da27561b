import { chooseStockLength, type StockLengthInput } from "hvac-install-math/line-set";
import { ft, m, psi } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { sentences } from "./in-english.ts";

const job: StockLengthInput = {
  run: ft(21),
  slack: ft(1),
  serviceLoop: ft(2),
  stock: [ft(50), ft(25), ft(16), ft(35)],
  cuttable: true,
  minimumLength: ft(10),
  maximumLength: ft(82),
};
const say = (input: StockLengthInput) => sentences(chooseStockLength(input).reasons);

describe("chooseStockLength", () => {
  it("takes the shortest set that covers run, slack and loop, in any order of the stock", () => {
    expect(say(job)).toEqual([
      "25 ft is the shortest stock length that covers 24 ft.",
      "Surplus to cut off: 1 ft.",
    ]);
    expect(chooseStockLength(job).installedLength?.toString()).toBe("24 ft");
    expect(chooseStockLength(job).assumptions).toEqual([]);
    expect(chooseStockLength(job).cautions.map(({ code }) => code)).toEqual([
      "line-set.no-kinks",
      "safety.others-govern",
    ]);
  });

  it("takes a set that fits exactly, also across units", () => {
    const exact = chooseStockLength({ ...job, run: ft(22) });
    expect(exact.surplusUse).toBe("none");
    const metric = chooseStockLength({ ...job, run: m(25 * 0.3048 - 3 * 0.3048) });
    expect(metric.stockLength?.in(ft)).toBeCloseTo(25, 9);
  });

  it("coils what may not be cut, and counts it for the charge", () => {
    const result = chooseStockLength({ ...job, cuttable: false });
    expect(result.surplusUse).toBe("coil");
    expect(result.installedLength?.toString()).toBe("25 ft");
    expect(result.reasons.map(({ code }) => code)).toEqual([
      "line-set.stock-length",
      "line-set.coil-surplus",
    ]);
    expect(result.cautions.map(({ code }) => code)).toContain("safety.open-under-pressure");
  });

  it("makes a short run up to the manual's least length by a coil", () => {
    const result = chooseStockLength({ ...job, run: ft(4) });
    expect(result.neededLength.toString()).toBe("10 ft");
    expect(result.installedLength?.toString()).toBe("10 ft");
    expect(say({ ...job, run: ft(4) })).toEqual([
      "16 ft is the shortest stock length that covers 10 ft.",
      "Surplus to cut off: 6 ft.",
      "To coil flat by the outdoor unit, to reach the minimum: 3 ft. The charge counts 10 ft.",
    ]);
  });

  it("fails when no set is long enough, and says how to go on", () => {
    const result = chooseStockLength({ ...job, run: ft(60) });
    expect(result.outcome).toBe("fail");
    expect(result.reasons[0]?.code).toBe("line-set.no-stock-length");
    expect(say({ ...job, run: ft(60) })).toEqual([
      "Length needed 63 ft: above the longest stock length, 50 ft.",
    ]);
    expect(sentences(result.actions)).toEqual([
      "Take tube from a roll, or braze two sets together.",
    ]);
    expect(result.stockLength).toBeUndefined();
  });

  it("fails when an uncut set is longer than the unit allows", () => {
    const result = chooseStockLength({ ...job, cuttable: false, maximumLength: ft(24) });
    expect([result.outcome, result.reasons[0]?.code]).toEqual(["fail", "line-set.above-maximum"]);
    expect(say({ ...job, cuttable: false, maximumLength: ft(24) })[0]).toBe(
      "Length 25 ft: above the 24 ft maximum.",
    );
    expect(sentences(result.actions)).toEqual([
      "Find a set of 24 ft to 24 ft, or one that may be cut.",
    ]);
    expect(chooseStockLength({ ...job, maximumLength: ft(24) }).outcome).toBe("pass");
  });

  it("calls a coil that of the least length only where the way is shorter", () => {
    const codes = (run: StockLengthInput["run"]) =>
      chooseStockLength({ ...job, cuttable: false, run }).reasons.map(({ code }) => code);
    expect(codes(ft(4))).toEqual(["line-set.stock-length", "line-set.coil-to-minimum"]);
    expect(codes(ft(7))).toEqual(["line-set.stock-length", "line-set.coil-surplus"]); // 7 + 1 + 2 ft are the 10 ft
  });

  it("names its sources", () => {
    const { sources } = chooseStockLength(job);
    expect(sources.map(({ source }) => source)).toEqual([
      "common-practice",
      "manufacturer-manuals",
    ]);
  });

  it("lists what was left out", () => {
    const { run, stock, cuttable } = job;
    expect(chooseStockLength({ run, stock, cuttable }).assumptions.map((a) => a.code)).toEqual([
      "line-set.no-slack",
      "line-set.no-service-loop",
      "line-set.maximum-length-not-checked",
    ]);
  });

  it("names what it cannot use, and leaves the stock in its order", () => {
    const bad = (change: object) => () =>
      chooseStockLength({ ...job, ...change } as StockLengthInput);
    expect(bad({ stock: [] })).toThrow(/^stock\.length: 0/);
    expect(bad({ stock: undefined })).toThrow(/^stock: undefined .* an array/);
    expect(bad({ stock: new Array(2) })).toThrow(/^stock\[0\]: undefined/);
    expect(bad({ stock: [ft(25), ft(0)] })).toThrow(/^stock\[1\]: 0 ft/);
    expect(bad({ run: ft(0) })).toThrow(/^run: 0 ft/);
    expect(bad({ run: psi(1) })).toThrow(/^run: pressureDifference/);
    expect(bad({ slack: ft(-1) })).toThrow(/^slack: -1 ft/);
    expect(bad({ maximumLength: ft(-1) })).toThrow(/^maximumLength: -1 ft/);
    const stock = Object.freeze([...job.stock]);
    chooseStockLength({ ...job, stock });
    expect(stock[0]?.toString()).toBe("50 ft");
  });
});
