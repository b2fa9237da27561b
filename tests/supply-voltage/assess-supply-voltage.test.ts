import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { ampere, deltaF, minute, ohm, percent, second, volt } from "hvac-install-math/quantity";
import { bibliography } from "hvac-install-math/sources";
import {
  ansiC84,
  iec60038,
  japaneseSupply,
  type SupplyVoltageAssessment,
  type VoltageStandard,
} from "hvac-install-math/supply-voltage";
import { describe, expect, it } from "vitest";
import { codes, dual, meter, sentences, single, three } from "./readings.ts";

describe("the nameplate", () => {
  it.each<[number, string, string | undefined]>([
    [240, "pass", undefined],
    [253, "pass", undefined],
    [253.1, "fail", "high-supply"],
    [208, "pass", undefined],
    [187, "pass", undefined],
    [186.9, "fail", "low-supply"],
    [260, "fail", "high-supply"],
    [260.1, "fail", "board-at-risk"],
  ])("of a 208/230 unit reads %d V as %s (%s)", (v, outcome, cause) => {
    const result = single([v]);
    expect(result.parts.nameplate).toBe(outcome);
    expect(result.cause).toBe(
      cause ?? (result.outcome === "fail" ? "outside-standard" : undefined),
    );
  });

  it("that prints a range is taken at its word", () => {
    const printed = { ...dual, range: { minimum: volt(197), maximum: volt(253) } };
    expect(single([190], { nameplate: printed }).parts.nameplate).toBe("fail");
    expect(single([190]).parts.nameplate).toBe("pass");
    expect(codes(single([240], { nameplate: printed }).assumptions)).not.toContain("ten-percent");
    expect(codes(single([240]).assumptions)).toContain("ten-percent");
  });

  it("that prints more than the ceiling moves the ceiling", () => {
    const wide = { rated: volt(230), range: { minimum: volt(180), maximum: volt(270) } };
    expect(single([265], { nameplate: wide }).nameplateRange.ceiling.toString()).toBe("270 V");
    expect(single([265], { nameplate: wide }).parts.nameplate).toBe("pass");
  });

  it("is kept only when every reading keeps it", () => {
    expect(single([240, 241, 255, 240]).parts.nameplate).toBe("fail");
    const { lowest, highest, marginBelow, marginAbove } = single([241, 238, 244]);
    expect([lowest, highest].map(({ value }) => `${value}`)).toEqual(["238 V", "244 V"]);
    expect(`${marginBelow}, ${marginAbove}`).toBe("51 V, 9 V");
  });

  it("for one rated voltage has little margin on the other", () => {
    const narrow = {
      nameplate: { rated: volt(230) },
      supply: { voltage: volt(208), phases: 1 },
    } as const;
    const result = single([206], narrow);
    expect(result.parts).toEqual({ nameplate: "fail", supply: "pass" });
    expect(codes(result.cautions)).toContain("narrow-plate");
    expect(codes(single([206], { ...narrow, nameplate: dual }).cautions)).not.toContain(
      "narrow-plate",
    );
  });

  it("names the tap of a control transformer on a dual plate", () => {
    const on208 = single([206], { supply: { voltage: volt(208), phases: 1 } });
    const tap = on208.cautions.find(({ code }) => code === "supply-voltage.transformer-tap");
    expect(tap && explain(tap, english)).toBe(
      "If the unit has a control transformer, set its tap to 208 V.",
    );
  });

  it("for another supply fails whatever was read, without monitor settings", () => {
    const result = single([240], { nameplate: { rated: volt(400) } });
    expect(result).toMatchObject({ outcome: "fail", cause: "plate-does-not-fit" });
    expect(result.monitor).toBeUndefined();
    expect(single([240]).monitor?.highCutOut.toString()).toBe("253 V");
  });
});

describe("the meter", () => {
  it("leaves a reading near a limit undecided, and says how good a meter would decide", () => {
    const result = single([252.5], { meter });
    expect(result.outcome).toBe("inconclusive");
    expect(result.cause).toBeUndefined();
    expect(explain(result.reasons[0] as never, english)).toBe(
      "Too close to call: 252.5 V is near a limit of 187 V to 253 V.",
    );
    expect(single([252.5], { meter: { accuracy: volt(0.5) } }).outcome).toBe("pass");
  });

  it("says in a pass what would have failed", () => {
    const { reasons } = single([240], { meter: { accuracy: volt(1.2) } });
    // 2 × 1.645 × 1.2/√3
    expect(explain(reasons[0] as never, english)).toBe(
      "Voltage 240 V: within the unit’s range, 187 V to 253 V.",
    );
    expect(explain(reasons[1] as never, english)).toBe(
      "A reading 2.3 V beyond a limit would have failed.",
    );
  });

  it("counts as exact, said as an assumption, when it is not stated", () => {
    expect(codes(single([240]).assumptions)).toContain("exact-meter");
    expect(codes(single([240], { meter }).assumptions)).not.toContain("exact-meter");
    expect(single([240]).lowest.expandedUncertainty.si).toBe(0);
  });

  it("may err by a share of the reading", () => {
    const { lowest } = single([240], {
      meter: { accuracyOfReading: percent(1), accuracy: volt(0.6) },
    });
    expect(lowest.standardUncertainty.in(volt)).toBeCloseTo(3 / Math.sqrt(3), 10);
  });

  it("is believed less at a higher confidence", () => {
    expect(single([251.5], { meter }).outcome).toBe("pass");
    expect(single([251.5], { meter, confidence: 0.999 }).outcome).toBe("inconclusive");
  });

  it("does not save a board: only what is surely above the ceiling is called so", () => {
    expect(single([261], { meter }).cause).toBe("high-supply");
    expect(single([263], { meter }).cause).toBe("board-at-risk");
  });
});

describe("the standard of the supply", () => {
  it.each<[number, "service" | "unit", string, string]>([
    [228, "service", "Range A", "pass"],
    [227, "service", "Range B", "pass"],
    [219, "service", "none", "fail"],
    [219, "unit", "Range A", "pass"],
    [215, "unit", "Range B", "pass"],
    [207, "unit", "none", "fail"],
    [252.5, "unit", "Range B", "pass"],
  ])("puts %d V at the %s of a 240 V supply in %s: %s", (v, measuredAt, range, outcome) => {
    const result = single([v], { measuredAt });
    expect(result.supplyRange?.name ?? "none").toBe(range);
    expect(result.parts.supply).toBe(outcome);
  });

  it("cautions in Range B, and sends to the utility outside it", () => {
    expect(codes(single([227], { measuredAt: "service" }).cautions)).toContain("limited-time");
    const outside = single([219], { measuredAt: "service" });
    expect(outside).toMatchObject({ outcome: "fail", cause: "outside-standard" });
    expect(explain(outside.reasons[0] as never, english)).toBe(
      "Voltage 219 V: outside Range B of ANSI C84.1, 220 V to 254 V.",
    );
    expect(codes(outside.actions ?? [])).toEqual(["call-utility"]);
    // At the unit the wiring of the building is looked at before the utility is called.
    expect(codes(single([185]).actions ?? [])).toEqual([
      "check-wiring",
      "read-at-service",
      "call-utility",
    ]);
  });

  it("is left undecided by a poor meter", () => {
    const result = single([209], { meter });
    expect(result.parts).toEqual({ nameplate: "pass", supply: "inconclusive" });
    expect(codes(result.reasons)[0]).toBe("too-close-to-standard");
  });

  it("reminds of the drop to the unit only at the service", () => {
    expect(codes(single([240], { measuredAt: "service" }).cautions)).toContain("drop-to-unit");
    expect(codes(single([240]).cautions)).not.toContain("drop-to-unit");
  });

  it("may be IEC 60038 on 230 V", () => {
    const result = single([205], {
      nameplate: { rated: volt(230) },
      supply: { voltage: volt(230), phases: 1, standard: iec60038 },
    });
    expect(result.supplyRange?.name).toBe("utilization-range");
    expect(result.parts).toEqual({ nameplate: "fail", supply: "pass" });
  });

  it("can be one of your own", () => {
    const own: VoltageStandard = {
      name: "an invented grid code",
      source: "common-practice",
      clause: "",
      table: [[220, 198, 235]],
      ranges: { service: [["normal", 1, 2]], unit: [["normal", 1, 2]] },
    };
    const result = single([236], {
      nameplate: { rated: volt(220) },
      supply: { voltage: volt(220), phases: 1, standard: own },
    });
    expect(result.parts).toEqual({ nameplate: "pass", supply: "fail" });
    expect(codes(result.assumptions)).not.toContain("standard-assumed");
  });

  it.each([100, 110, 115, 127, 200, 220, 230, 238, 380])(
    "is never guessed for %d V, which several countries have or none: it is asked for",
    (v) => {
      if (v === 100) return; // Japan alone
      const supply = { voltage: volt(v), phases: 1 } as const;
      const result = single([v], { nameplate: { rated: volt(v) }, supply });
      expect(result.parts).toEqual({ nameplate: "pass", supply: "inconclusive" });
      expect(codes(result.reasons)[0]).toBe("standard-not-stated");
      expect(codes(result.actions ?? [])).toEqual(["state-standard"]);
      const range = { minimum: volt(0.94 * v), maximum: volt(1.06 * v) };
      expect(
        single([v], { nameplate: { rated: volt(v) }, supply: { ...supply, range } }).outcome,
      ).toBe("pass");
    },
  );

  it("takes a nameplate voltage of the United States as its service, and says so", () => {
    const at230 = single([241], { supply: { voltage: volt(230), phases: 1, standard: ansiC84 } });
    expect(at230.supplyRange?.name).toBe("Range A"); // 216 V to 252 V of 240 V
    expect(sentences(at230.assumptions, "judged-as")).toEqual([
      "230 V is a nameplate voltage here; the service was taken as 240 V.",
    ]);
  });

  it("is 101 ± 6 V for 100 V in Japan, at the point of supply only", () => {
    const japan = (v: number, measuredAt: "service" | "unit") =>
      single([v], {
        nameplate: { rated: volt(100) },
        supply: { voltage: volt(100), phases: 1, standard: japaneseSupply },
        measuredAt,
      });
    expect(japan(96, "service").parts.supply).toBe("pass");
    expect(japan(94, "service").parts.supply).toBe("fail");
    expect(japan(94, "unit").parts).toEqual({ nameplate: "pass" });
  });
});

describe("something plainly missing", () => {
  it.each([0, 3, 40])("%d V is no voltage, and no proof that the circuit is dead", (v) => {
    const result = single([v]);
    expect(result).toMatchObject({ outcome: "fail", cause: "no-voltage" });
    expect(explain(result.reasons[0] as never, english)).toContain(
      "does not prove the circuit dead",
    );
  });

  it.each([118, 121, 125])("%d V on a 240 V supply is one leg", (v) => {
    expect(single([v])).toMatchObject({ outcome: "fail", cause: "leg-missing" });
  });

  it("one dead reading in a log of good ones fails", () => {
    expect(single([240, 0, 240]).cause).toBe("no-voltage");
  });

  it.each([[[462, 240, 238]], [[462, 0, 461]], [[480, 30, 60]]])(
    "%j is a missing phase, and gives no unbalance",
    (set) => {
      const result = three([set]);
      expect(result).toMatchObject({ outcome: "fail", cause: "phase-missing" });
      expect(result.unbalance).toBeUndefined();
      expect(result.parts.unbalance).toBeUndefined();
    },
  );

  it("three dead lines are no voltage", () => {
    expect(three([[0, 0, 0]]).cause).toBe("no-voltage");
  });
});

describe("three phases", () => {
  it("pass within 2 %, with a caution to derate above 1 %", () => {
    const result = three([[452, 464, 455]]);
    expect(result.parts.unbalance).toBe("pass");
    expect(codes(result.cautions)).toContain("derate");
    expect(codes(three([[460, 461, 460]]).cautions)).not.toContain("derate");
    expect(codes(result.assumptions)).toContain("unbalance-limit");
  });

  it("fail above it, and must not run above 5 %", () => {
    expect(three([[480, 478, 460]])).toMatchObject({ outcome: "fail", cause: "unbalance" });
    const bad = three([[500, 480, 435]]);
    expect(bad.unbalance?.deratingFactor).toBeUndefined();
    expect(explain(bad.reasons[0] as never, english)).toBe(
      "Voltage unbalance 7.77 %: no motor may run above 5 %.",
    );
    expect(codes(bad.cautions)).toContain("uneven-supply");
  });

  it("take the worst set of a log", () => {
    const result = three([
      [470, 470, 470],
      [480, 478, 460],
      [471, 470, 470],
    ]);
    expect(result.unbalance?.unbalance.in(percent)).toBeCloseTo(2.68, 2);
  });

  it("are undecided near the limit with a coarse display, not with a meter that is merely off", () => {
    const near = [[452, 465, 455]]; // 1.68 %
    const coarse = three(near, { meter: { resolution: volt(5) } });
    expect(coarse.parts.unbalance).toBe("inconclusive");
    expect(codes(coarse.reasons)).toContain("unbalance-too-close");
    expect(three(near, { meter: { accuracyOfReading: percent(1) } }).parts.unbalance).toBe("pass");
  });

  it("take the maker's limit", () => {
    expect(three([[452, 464, 455]], { unbalanceLimit: percent(1) }).parts.unbalance).toBe("fail");
    expect(() => three([[1, 1, 1]], { unbalanceLimit: percent(6) })).toThrow(
      /unbalanceLimit|allowed/,
    );
  });

  it.each<[number[], string]>([
    [[33, 29, 34], "pass"],
    [[33, 27, 34], "fail"],
  ])("judge currents of %j A: %s", (amps, outcome) => {
    const result = three([], {
      readings: [
        { lineToLine: [460, 461, 460].map(volt), currents: amps.map(ampere), state: "load" },
      ],
    });
    expect(result.parts.currentUnbalance).toBe(outcome);
    expect(result.cause).toBe(outcome === "fail" ? "current-unbalance" : undefined);
  });

  it("fail when a line carries no current, although the motor keeps its voltage up", () => {
    const lineToLine = [470, 468, 466].map(volt);
    const currents = [0, 20, 20].map(ampere);
    const lost = three([], { readings: [{ lineToLine, currents, state: "load" }] });
    expect(lost.outcome).toBe("fail");
    expect(lost.cause).toBe("current-unbalance");
    const open = three([], { readings: [{ lineToLine, currents }] });
    expect(open.parts.currentUnbalance).toBeUndefined();
    expect(codes(open.assumptions)).toContain("currents-not-judged");
  });

  it("do not judge the currents of a unit that is off", () => {
    const readings = [
      { lineToLine: [460, 461, 460].map(volt), currents: [0, 0, 0].map(ampere), state: "rest" },
    ] as const;
    expect(three([], { readings }).parts.currentUnbalance).toBeUndefined();
  });
});

describe("the sag", () => {
  const rest = { voltage: volt(243.6), current: ampere(0.1), state: "rest" } as const;
  const load = { voltage: volt(239.1), current: ampere(9.1), state: "load" } as const;

  it("comes with the resistance of the supply", () => {
    const { sag } = single([], { readings: [rest, load], meter });
    expect(sag?.sag.value.toString()).toBe("4.5 V");
    expect(sag?.sourceResistance?.value.toString(ohm, 3)).toBe("0.500 Ω");
    // The meter's accuracy cancels, its display does not: √2 × 0.1/√12
    expect(sag?.sag.standardUncertainty.in(volt)).toBeCloseTo(0.0408, 4);
  });

  it("warns of what full load would do to a slow inverter's supply", () => {
    const weak = { ...load, voltage: volt(229), current: ampere(5.1) };
    const nameplate = {
      ...dual,
      range: { minimum: volt(208), maximum: volt(253) },
      ratedCurrent: ampere(14),
    };
    const result = single([], { readings: [rest, weak], nameplate });
    expect(result).toMatchObject({ outcome: "inconclusive", parts: { sag: "inconclusive" } });
    expect(sentences(result.reasons, "full-load-far-off")).toEqual([
      "At 14 A expect 203 V, below the unit minimum of 208 V. The reading was taken at less than half of that current.",
    ]);
    expect(codes(result.actions ?? [])).toContain("measure-at-full-load");
    expect(codes(result.cautions)).toContain("large-sag");
  });

  it("fails a supply that full load would pull too low, however much current is asked for", () => {
    // 2 Ω: 243.6 V − 2 × 24.9 A = 193.8 V; the maker allows 208 V
    const weak = { ...load, voltage: volt(213.6), current: ampere(15.1) };
    const predicted = (amps: number) =>
      single([], {
        readings: [rest, weak],
        nameplate: {
          ...dual,
          range: { minimum: volt(208), maximum: volt(253) },
          ratedCurrent: ampere(amps),
        },
      });
    expect(predicted(17).outcome).toBe("pass"); // 209.8 V
    expect(predicted(25)).toMatchObject({ outcome: "fail", cause: "sag-at-full-load" });
    expect(codes(predicted(25).actions ?? [])[0]).toBe("check-wiring");
    expect(predicted(40).outcome).toBe("inconclusive"); // far beyond what was measured
    expect(predicted(200).outcome).toBe("inconclusive"); // nothing would be left
  });

  it("is the cause when only the loaded supply is too low", () => {
    const sagged = [rest, { ...load, voltage: volt(180) }];
    expect(single([], { readings: sagged }).cause).toBe("sag-under-load");
    const low = [
      { ...rest, voltage: volt(185) },
      { ...load, voltage: volt(180) },
    ];
    expect(single([], { readings: low }).cause).toBe("low-supply");
  });

  it("is not known without both states", () => {
    expect(single([240]).sag).toBeUndefined();
    expect(codes(single([240]).assumptions)).toContain("no-sag");
    expect(codes(single([], { readings: [rest, load] }).assumptions)).not.toContain("no-sag");
  });

  it("counts the line current of three phases", () => {
    const set = (v: number, amps: number, state: "rest" | "load") => ({
      lineToLine: [v, v, v].map(volt),
      currents: [amps, amps, amps].map(ampere),
      state,
    });
    const { sag } = three([], { readings: [set(480, 0, "rest"), set(470, 20, "load")] });
    expect(sag?.sourceResistance?.value.in(ohm)).toBeCloseTo(10 / (20 * Math.sqrt(3)), 10);
  });

  it("counts an overvoltage while starting", () => {
    const start = { voltage: volt(290), state: "start" } as const;
    expect(single([], { readings: [rest, start] }).cause).toBe("board-at-risk");
  });

  it("names a unit of half the supply's voltage instead of throwing", () => {
    const half = single([121], { nameplate: { rated: volt(115) } });
    expect(half.outcome).toBe("fail");
    expect(half.monitor).toBeUndefined();
  });

  it("leaves a start out of the lower limit, and reports its dip", () => {
    const start = { voltage: volt(150), state: "start" } as const;
    const result = single([], { readings: [rest, start, load] });
    expect(result.outcome).toBe("pass");
    expect(codes(result.cautions)).toContain("start-dip");
    expect(() => single([], { readings: [start] })).toThrow(
      "readings: only starts is not allowed; allowed: at least one reading at rest or under load",
    );
  });
});

describe("a start that nobody marked", () => {
  const log = (rows: readonly (readonly [volts: number, amps?: number])[]) =>
    rows.map(([v, amps], i) => ({
      voltage: volt(v),
      elapsed: second(i),
      ...(amps !== undefined && { current: ampere(amps) }),
    }));

  it("is found by its current, and its dip told instead of judged", () => {
    const result = single([], {
      readings: log([
        [242, 0],
        [150, 60],
        [236, 12],
        [236, 12],
        [236, 12],
      ]),
    });
    expect(result.outcome).toBe("pass");
    expect(codes(result.cautions)).toContain("start-dip");
    expect(codes(result.assumptions)).toContain("starts-found");
  });

  it("is asked about where no current tells it from a sag", () => {
    const result = single([], { readings: log([[242], [150], [236], [236], [236]]) });
    expect(result.outcome).toBe("inconclusive");
    expect(codes(result.reasons)[0]).toBe("dip-not-marked");
    expect(codes(result.actions ?? [])[0]).toBe("mark-starts");
  });

  it("is no start where the current stays low or the voltage stays down", () => {
    const sag = log([
      [242, 12],
      [150, 12],
      [236, 12],
      [236, 12],
    ]);
    expect(single([], { readings: sag }).cause).toBe("low-supply");
    const long = log([
      [242, 0],
      ...Array.from({ length: 15 }, () => [150, 60] as const),
      [236, 12],
    ]);
    expect(single([], { readings: long }).cause).toBe("low-supply");
  });

  it("may lie between two readings, and the verdict says how far they are apart", () => {
    const readings = [242, 236, 236].map((v, i) => ({ voltage: volt(v), elapsed: minute(i) }));
    expect(sentences(single([], { readings }).assumptions, "starts-unseen")).toEqual([
      "The log has a reading every 60 s: the dip of a start can lie between two.",
    ]);
  });
});

describe("readings to ground", () => {
  const read = (two: readonly number[]) =>
    single([], { readings: [{ voltage: volt(240), lineToGround: two.map((v) => volt(v)) }] });

  it("that are even say nothing; uneven ones an open neutral; one at ground a grounded line", () => {
    expect(read([121, 119]).outcome).toBe("pass");
    expect(read([150, 90])).toMatchObject({ outcome: "fail", cause: "uneven-to-ground" });
    expect(codes(read([240, 0]).cautions)).toContain("line-grounded");
    expect(() => read([120])).toThrow("readings[0].lineToGround.length: 1 ");
  });
});

describe("a log", () => {
  const log = (volts: number[], step = 60) =>
    volts.map((v, i) => ({ voltage: volt(v), elapsed: second(i * step) }));

  it("is summed up over time", () => {
    const result = single([], { readings: log([240, 240, 256, 240, 240]) });
    expect(result.log?.high.timeAbove.in(minute)).toBe(1);
    expect(result.log?.low.maximum.toString()).toBe("256 V");
    expect(codes(result.assumptions)).not.toContain("moment-only");
    expect(codes(single([240]).assumptions)).toContain("moment-only");
  });

  it("keeps the lowest and the highest line of three phases apart", () => {
    const readings = [0, 1, 2].map((i) => ({
      lineToLine: [460, 462, 464].map(volt),
      elapsed: minute(i),
    }));
    const { log: seen } = three([], { readings });
    expect([seen?.low.mean, seen?.high.mean].map(String)).toEqual(["460 V", "464 V"]);
  });

  it("of a week at 5 s is no matter, nor how long it is", () => {
    const readings = log(
      Array.from({ length: 130_000 }, (_, i) => 235 + (i % 7)),
      5,
    );
    const result = single([], { readings });
    expect(result.outcome).toBe("pass");
    expect(result.log?.low.count).toBe(130_000);
  });

  const iec = {
    nameplate: { rated: volt(230), range: { minimum: volt(190), maximum: volt(255) } },
    supply: { voltage: volt(230), phases: 1, standard: iec60038 },
    measuredAt: "service",
  } as const;

  it("of a 230 V service that strays for a moment is undecided until a week is full", () => {
    const strayed = single([], { ...iec, readings: log([...Array(20).fill(230), 205, 230]) });
    expect(strayed.parts.supply).toBe("inconclusive");
    expect(codes(strayed.reasons)[0]).toBe("week-incomplete");
    expect(single([], { ...iec, readings: log(Array(20).fill(230)) }).parts.supply).toBe("pass");
    expect(single([205], iec).parts.supply).toBe("fail");
  });

  it("of a whole week is judged by the 95 % rule", () => {
    const volts = Array.from({ length: 10_081 }, (_, i) => (i < 400 ? 200 : 231));
    const result = single([], { ...iec, readings: log(volts) });
    expect(result.week).toMatchObject({ outcome: "pass", means: 1008, outside10: 40 });
    expect(result.outcome).toBe("pass");
    expect(result.sources).toContainEqual({ source: "en-50160", clause: "4.2.2.2" });
  });

  it("at the unit, or of an American supply, is not judged by EN 50160", () => {
    expect(
      single([], { ...iec, measuredAt: "unit", readings: log([230, 230]) }).week,
    ).toBeUndefined();
    expect(single([], { readings: log([240, 240]) }).week).toBeUndefined();
  });

  it("of three phases is judged by its worst line", () => {
    const readings = Array.from({ length: 10_081 }, (_, i) => ({
      lineToLine: [400, 400, i < 10 ? 330 : 400].map(volt),
      elapsed: minute(i),
    }));
    const result = three([], {
      nameplate: { rated: volt(400) },
      supply: { voltage: volt(400), phases: 3 },
      measuredAt: "service",
      readings,
    });
    expect(result.week).toMatchObject({ outcome: "fail", outside15: 1 });
  });
});

describe("every result", () => {
  const all = (): SupplyVoltageAssessment[] => [
    single([240]),
    single([262]),
    single([252.5], { meter }),
    three([[452, 464, 455]]),
    three([[462, 240, 238]]),
  ];

  it("carries the cautions about mains", () => {
    for (const { cautions } of all()) {
      for (const code of ["line-voltage", "meter-category", "others-govern"]) {
        expect(codes(cautions)).toContain(code);
      }
    }
  });

  it("puts a reason of its own outcome first, and leaves no gap in a sentence", () => {
    for (const { reasons, assumptions, cautions } of all()) {
      for (const said of [...reasons, ...assumptions, ...cautions]) {
        expect(explain(said, english)).not.toMatch(/[{}]|undefined|NaN/);
        expect(said.code).toMatch(/^[a-z]+(-[a-z]+)*\.[a-z0-9]+(-[a-z0-9]+)*$/);
      }
    }
    expect(all().map(({ reasons }) => codes(reasons)[0])).toEqual([
      "within-nameplate",
      "board-at-risk",
      "meter-cannot-tell",
      "within-nameplate",
      "phase-missing",
    ]);
  });

  it("cites works of the bibliography", () => {
    for (const { sources } of all()) {
      for (const { source } of sources) expect(Object.keys(bibliography)).toContain(source);
    }
  });

  it("leaves the caller's data as they were", () => {
    const readings = Object.freeze([
      Object.freeze({ lineToLine: Object.freeze([480, 470, 475].map(volt)), elapsed: minute(0) }),
      Object.freeze({ lineToLine: Object.freeze([481, 471, 474].map(volt)), elapsed: minute(1) }),
    ]);
    const rated = Object.freeze([volt(480), volt(460)]);
    three([], { readings, nameplate: { rated } });
    expect(rated.map(String)).toEqual(["480 V", "460 V"]);
  });
});

describe("bad input", () => {
  // biome-ignore lint/suspicious/noExplicitAny: a JavaScript caller sees no types.
  type Loose = any;
  const refused = (call: () => unknown) => {
    try {
      return `no error, but ${JSON.stringify(call())}`;
    } catch (error) {
      return `${(error as Error).name}: ${(error as Error).message}`;
    }
  };

  it.each<[string, () => unknown, string]>([
    [
      "no reading",
      () => single([]),
      "InvalidInputError: readings.length: 0 is not allowed; allowed: at least 1",
    ],
    [
      "no list",
      () => single([], { readings: { voltage: volt(240) } as Loose }),
      "InvalidInputError: readings: an object is not allowed; allowed: an array",
    ],
    [
      "a hole in the list",
      () => single([], { readings: [undefined] as Loose }),
      "InvalidInputError: readings[0].voltage: undefined is not allowed; allowed: the kind voltage",
    ],
    [
      "a number",
      () => single([], { readings: [{ voltage: 240 }] as Loose }),
      "InvalidInputError: readings[0].voltage: 240 is not allowed; allowed: the kind voltage",
    ],
    [
      "a negative voltage",
      () => single([-240]),
      "InvalidInputError: readings[0].voltage: -240 V is not allowed; allowed: at least 0 V",
    ],
    [
      "another kind",
      () => single([], { readings: [{ voltage: deltaF(240) }] as Loose }),
      "InvalidInputError: readings[0].voltage: temperatureDifference 240 Δ°F is not allowed",
    ],
    [
      "a negative current",
      () => single([], { readings: [{ voltage: volt(240), current: ampere(-1) }] }),
      "InvalidInputError: readings[0].current: -1 A is not allowed; allowed: at least 0 A",
    ],
    [
      "one voltage of three phases",
      () => three([], { readings: [{ voltage: volt(480) }] }),
      "InvalidInputError: readings[0].lineToLine: undefined is not allowed; allowed: an array",
    ],
    [
      "a phase missing from a set",
      () => three([[480, 478]]),
      "InvalidInputError: readings[0].lineToLine.length: 2 is not allowed; allowed: at least 3 and at most 3",
    ],
    [
      "a current missing from a set",
      () =>
        three([], { readings: [{ lineToLine: [480, 480, 480].map(volt), currents: [ampere(1)] }] }),
      "InvalidInputError: readings[0].currents.length: 1 is not allowed; allowed: at least 3 and at most 3",
    ],
    [
      "three voltages of one phase",
      () => single([], { readings: [{ lineToLine: [240, 240, 240].map(volt) }] }),
      "InvalidInputError: readings[0].voltage: undefined is not allowed",
    ],
    [
      "a line-to-neutral reading among line-to-line ones",
      () => three([[480, 478, 277]]),
      "InvalidInputError: readings[0].lineToLine[2]: 277 V is not allowed; allowed: voltages between two lines of a 480 V supply (supply-voltage.line-to-neutral)",
    ],
    [
      "line-to-neutral readings only",
      () => three([[277, 276, 278]]),
      "InvalidInputError: readings[0].lineToLine[0]: 277 V is not allowed; allowed: voltages between two lines of a 480 V supply",
    ],
    [
      "line-to-neutral readings of a 208 V service",
      () =>
        three([[208, 207, 120]], { nameplate: dual, supply: { voltage: volt(208), phases: 3 } }),
      "InvalidInputError: readings[0].lineToLine[2]: 120 V",
    ],
    [
      "an unknown state",
      () => single([], { readings: [{ voltage: volt(240), state: "idle" }] as Loose }),
      'InvalidInputError: readings[0].state: the text "idle" is not allowed; allowed: rest, load, start',
    ],
    [
      "times that do not grow",
      () =>
        single([], {
          readings: [0, 60, 60].map((s) => ({ voltage: volt(240), elapsed: second(s) })),
        }),
      "InvalidInputError: readings[2].elapsed: 60 s is not allowed; allowed: more than the 60 s of the reading before",
    ],
    [
      "a time missing in a log",
      () =>
        single([], {
          readings: [{ voltage: volt(240), elapsed: second(0) }, { voltage: volt(240) }],
        }),
      "InvalidInputError: readings[1].elapsed: nothing is not allowed",
    ],
    [
      "no supply",
      () => single([240], { supply: undefined as Loose }),
      "InvalidInputError: supply.voltage: undefined is not allowed; allowed: the kind voltage",
    ],
    [
      "two phases",
      () => single([240], { supply: { voltage: volt(240), phases: 2 } as Loose }),
      "InvalidInputError: supply.phases: 2 is not allowed; allowed: 1, 3",
    ],
    [
      "a three-phase unit on one phase",
      () => single([240], { nameplate: { ...dual, phases: 3 } }),
      "InvalidInputError: nameplate.phases: 3 is not allowed; allowed: 1",
    ],
    [
      "no rated voltage",
      () => single([240], { nameplate: { rated: [] } }),
      "InvalidInputError: nameplate.rated: undefined is not allowed; allowed: at least one voltage",
    ],
    [
      "no nameplate",
      () => single([240], { nameplate: undefined as Loose }),
      "InvalidInputError: nameplate.rated[0]: undefined is not allowed",
    ],
    [
      "a rated voltage of 0",
      () => single([240], { nameplate: { rated: volt(0) } }),
      "InvalidInputError: nameplate.rated[0]: 0 V is not allowed; allowed: more than 0 V",
    ],
    [
      "a printed range beside the rated voltage",
      () =>
        single([240], {
          nameplate: { rated: volt(230), range: { minimum: volt(235), maximum: volt(253) } },
        }),
      "InvalidInputError: nameplate.range.minimum: 235 V is not allowed; allowed: at least 115 V and at most 230 V",
    ],
    [
      "a printed range upside down",
      () =>
        single([240], {
          nameplate: { rated: volt(230), range: { minimum: volt(253), maximum: volt(207) } },
        }),
      "InvalidInputError: nameplate.range.minimum: 253 V",
    ],
    [
      "a place that is none",
      () => single([240], { measuredAt: "panel" as Loose }),
      'InvalidInputError: measuredAt: the text "panel" is not allowed; allowed: service, unit',
    ],
    [
      "a meter of which nothing is known",
      () => single([240], { meter: {} }),
      "InvalidInputError: meter: nothing is not allowed; allowed: one of accuracy, accuracyOfReading, resolution, repeatability",
    ],
    [
      "a meter that errs negatively",
      () => single([240], { meter: { accuracy: volt(-1) } }),
      "InvalidInputError: meter.accuracy: -1 V is not allowed; allowed: at least 0 V",
    ],
    [
      "a meter that errs by a fifth and more",
      () => single([240], { meter: { accuracyOfReading: percent(50) } }),
      "InvalidInputError: meter.accuracyOfReading: 50 % is not allowed; allowed: at least 0 % and at most 20 %",
    ],
    [
      "certainty",
      () => single([240], { confidence: 1 }),
      "InvalidInputError: confidence: 1 is not allowed; allowed: at least 0.5 and less than 1",
    ],
  ])("%s is named", (_, call, message) => {
    expect(refused(call)).toContain(message);
  });
});
