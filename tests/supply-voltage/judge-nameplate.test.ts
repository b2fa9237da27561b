import { ampere, minute, percent, volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { codes, dual, meter, sentences, single, three } from "./readings.ts";

describe("a reading within the guard band of the meter", () => {
  // JCGM 106:2012, 8.3: only what lies beyond limit and guard band fails; here 1.645 × 0.69 V = 1.1 V.
  it.each([
    [253.5, "high-supply"],
    [186.5, "low-supply"],
  ])("of %d V is beyond the limit, yet not proven to break it", (v, code) => {
    const result = single([v], { meter });
    expect(result.parts.nameplate).toBe("inconclusive");
    expect(codes(result.reasons)).not.toContain(code);
  });

  it("asks for the same meter on either side of the range", () => {
    const [low, high] = [187.5, 252.5].map((v) =>
      sentences(single([v], { meter }).actions ?? [], "measure-better").join(),
    );
    // limits ±a give u = a/√3 (JCGM 100:2008, 4.3.7): a = √3 × 0.5 V / 1.645
    expect(low).toBe("Measure again with a meter of ±0.53 V or better.");
    expect(high).toBe(low);
  });
});

describe("the reasons", () => {
  it("of a pass name what was kept, once each", () => {
    expect(codes(single([240]).reasons)).toEqual(["within-nameplate", "within-standard"]);
  });

  it("of a fail name every fault once, the most dangerous first, and ask for no other meter", () => {
    expect(codes(single([262]).reasons)).toEqual([
      "board-at-risk",
      "high-supply",
      "outside-standard",
    ]);
    expect(codes(single([180]).reasons)).toEqual(["low-supply", "outside-standard"]);
  });

  it("tell a span where the readings differ as they are shown, and one figure where they do not", () => {
    const told = (volts: number[]) => sentences(single(volts).reasons, "within-nameplate").join();
    expect(told([238, 244])).toBe(
      "Voltage 238 V to 244 V: within the unit’s range, 187 V to 253 V.",
    );
    expect(told([240.01, 240.04])).toBe("Voltage 240 V: within the unit’s range, 187 V to 253 V.");
  });

  it("show the lines of a set in which one is missing", () => {
    const result = three([[462, 240, 238.04]]);
    expect(sentences(result.reasons, "phase-missing")).toEqual([
      "A phase is missing, or one was read to neutral: 462 V, 240 V, and 238 V.",
    ]);
  });
});

describe("a supply", () => {
  it("of half the voltage on all three lines is another supply, not a lost leg", () => {
    expect(three([[240, 240, 240]]).cause).toBe("low-supply");
  });

  it("of one phase may lack a leg of three lines, which is no reading to neutral", () => {
    const on208 = single([120], { supply: { voltage: volt(208), phases: 1 } });
    expect(on208.cause).toBe("leg-missing");
  });

  it("that is too high for a plate of a lower voltage is told not to fit it", () => {
    const low = single([215], { nameplate: { rated: volt(200) } });
    expect(low).toMatchObject({ outcome: "fail", cause: "plate-does-not-fit" });
    expect(sentences(low.reasons, "plate-does-not-fit")).toEqual([
      "A 180 V to 220 V unit does not match a 240 V supply.",
    ]);
  });

  it("that keeps the lowest voltage at rest and not under load sags, also from the limit itself", () => {
    const readings = [
      { voltage: volt(187), state: "rest" },
      { voltage: volt(186), state: "load" },
    ] as const;
    expect(single([], { readings }).cause).toBe("sag-under-load");
  });

  it("is judged by its highest line", () => {
    const result = three([[480, 490, 507]]);
    expect(result.highest.value.toString()).toBe("507 V");
    expect(result.cause).toBe("high-supply"); // 460 V + 10 %: 506 V
  });

  it("whose lines differ by a phase lost far away is no reading to neutral", () => {
    // 277 V would be 480/√3, but 200 V is neither: the winding of a stopped motor holds the line up
    expect(three([[480, 277, 200]]).cause).toBe("phase-missing");
  });
});

describe("the cautions", () => {
  it("name the tap next to the nominal voltage, in whatever order the plate has them", () => {
    const tap = (nominal: number, rated: number[]) =>
      sentences(
        single([nominal], {
          nameplate: { rated: rated.map(volt) },
          supply: { voltage: volt(nominal), phases: 1 },
        }).cautions,
        "transformer-tap",
      ).join();
    expect(tap(240, [208, 230])).toContain("set its tap to 230 V");
    expect(tap(240, [230, 208])).toContain("set its tap to 230 V");
    expect(tap(208, [208, 230])).toContain("set its tap to 208 V");
    expect(tap(208, [230, 208])).toContain("set its tap to 208 V");
    expect(tap(230, [230])).toBe("");
  });

  it("name a narrow plate only where it is more than 6 % off (common practice, no source)", () => {
    const narrow = (nominal: number, rated: number) =>
      sentences(
        single([nominal], {
          nameplate: { rated: volt(rated) },
          supply: { voltage: volt(nominal), phases: 1 },
        }).cautions,
        "narrow-plate",
      );
    expect(narrow(208, 230)).toEqual(["A 230 V unit has little margin on 208 V."]);
    expect(narrow(240, 230)).toEqual([]); // 460 and 480, 230 and 240: made for each other
    expect(narrow(240, 220)).toEqual(["A 220 V unit has little margin on 240 V."]);
  });

  it("tell of the dip of a start only when it goes below what the plate allows", () => {
    const started = (v: number) =>
      sentences(
        single([], {
          readings: [
            { voltage: volt(240), state: "rest" },
            { voltage: volt(v), state: "start" },
          ],
        }).cautions,
        "start-dip",
      );
    expect(started(150)).toEqual(["Starting pulls the supply down to 150 V."]);
    expect(started(187)).toEqual([]);
    expect(codes(single([180]).cautions)).not.toContain("start-dip");
  });
});

describe("the result", () => {
  it("cites the standard of the plate, and that the ceiling has none", () => {
    const { sources } = single([240]);
    expect(sources).toContainEqual({ source: "nema-mg-1", clause: "12.44" });
    expect(sources).toContainEqual({ source: "common-practice", clause: "" });
  });

  it("sums up no log of a single moment", () => {
    const once = single([], { readings: [{ voltage: volt(240), elapsed: minute(0) }] });
    expect(once.log).toBeUndefined();
    expect(codes(once.assumptions)).toContain("moment-only");
  });

  it("suggests monitor settings down to the last volt that plate and supply share", () => {
    const settings = (rated: number) =>
      single([240], { nameplate: { rated: volt(rated) } }).monitor;
    // 240 V + 10 % = 264 V; 292 V − 10 % = 263 V, 293 V − 10 % = 264 V
    expect(settings(292)?.lowCutOut.toString()).toBe("263 V");
    expect(settings(293)).toBeUndefined();
    // 240 V − 10 % = 216 V; 197 V + 10 % = 217 V, 196 V + 10 % = 216 V
    expect(settings(197)?.highCutOut.toString()).toBe("217 V");
    expect(settings(196)).toBeUndefined();
  });
});

it.each<[string, () => unknown, string]>([
  [
    "a negative voltage between two of three lines",
    () => three([[480, -1, 480]]),
    "readings[0].lineToLine[1]: -1 V is not allowed; allowed: at least 0 V",
  ],
  [
    "a log that starts before itself",
    () => single([], { readings: [{ voltage: volt(240), elapsed: minute(-0.005) }] }),
    "readings[0].elapsed: -0.005 min is not allowed; allowed: at least 0 min",
  ],
  [
    "a plate of two phases",
    () => single([240], { nameplate: { ...dual, phases: 2 as never } }),
    "nameplate.phases: 2 is not allowed; allowed: 1, 3",
  ],
  [
    "a supply without voltage",
    () => single([240], { supply: { voltage: volt(0), phases: 1 } }),
    "supply.voltage: 0 V is not allowed; allowed: more than 0 V",
  ],
  [
    "a standard without a table",
    () => single([240], { supply: { voltage: volt(240), phases: 1, standard: {} as never } }),
    "supply.standard.table: undefined is not allowed; allowed: an array",
  ],
  [
    "a negative rated current",
    () => single([240], { nameplate: { ...dual, ratedCurrent: ampere(-1) } }),
    "nameplate.ratedCurrent: -1 A is not allowed; allowed: at least 0 A",
  ],
  [
    "a printed range that ends below the rated voltage",
    () =>
      single([240], {
        nameplate: { rated: volt(230), range: { minimum: volt(207), maximum: volt(229) } },
      }),
    "nameplate.range.maximum: 229 V is not allowed; allowed: at least 230 V",
  ],
  [
    "an unbalance limit of 0",
    () => three([[480, 480, 480]], { unbalanceLimit: percent(0) }),
    "unbalanceLimit: 0 % is not allowed; allowed: more than 0 %",
  ],
])("refuses %s", (_, call, message) => {
  expect(call).toThrow(message);
});

// 187 V is the lowest of the plate: a better meter would have to be one of ±0 V.
it("asks for a log, not for a meter of ±0 V, where the supply lies on its limit", () => {
  const at = (volts: number) =>
    single([], {
      readings: [{ state: "rest", voltage: volt(volts) }],
      meter: { accuracy: volt(1), resolution: volt(0.1) },
    });
  expect(at(187).parts.nameplate).toBe("inconclusive");
  expect(codes(at(187).actions ?? [])).toContain("log-near-limit");
  expect(codes(at(187).actions ?? [])).not.toContain("measure-better");
  expect(codes(at(187.5).actions ?? [])).toContain("measure-better");
});
