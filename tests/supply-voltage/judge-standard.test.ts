import { minute, volt } from "hvac-install-math/quantity";
import { iec60038, type SupplyVoltageInput } from "hvac-install-math/supply-voltage";
import { describe, expect, it } from "vitest";
import { codes, sentences, single } from "./readings.ts";

describe("a range of the standard", () => {
  it.each([216, 252])("holds its ends: %d V is in Range A at a 240 V unit", (v) => {
    const result = single([v]);
    expect(result.supplyRange?.name).toBe("Range A");
    expect(codes(result.cautions)).not.toContain("limited-time");
  });

  it("B asks for correction in a sentence that names it", () => {
    expect(sentences(single([215]).cautions, "limited-time")).toEqual([
      "Allowed for a limited time only: Range B. Have it corrected.",
    ]);
  });

  it("is cited, and named as the one that was taken", () => {
    const result = single([240]);
    expect(result.sources).toContainEqual({ source: "ansi-c84-1-2020", clause: "table 1" });
    expect(sentences(result.assumptions, "standard-assumed")).toEqual([
      "Standard used for 240 V: ANSI C84.1.",
    ]);
  });

  it("leaves 3 % for the wiring to the unit (NFPA 70, informational note to 210.19)", () => {
    const { cautions } = single([240], { measuredAt: "service" });
    expect(sentences(cautions, "drop-to-unit")).toEqual([
      "Allow for the voltage drop to the unit: 3 % is 7.2 V.",
    ]);
  });
});

describe("a week at a European service", () => {
  const week = (at: (minute: number) => number, change: Partial<SupplyVoltageInput> = {}) =>
    single([], {
      nameplate: { rated: volt(230), range: { minimum: volt(180), maximum: volt(260) } },
      supply: { voltage: volt(230), phases: 1, standard: iec60038 },
      measuredAt: "service",
      readings: Array.from({ length: 10_081 }, (_, i) => ({
        voltage: volt(at(i)),
        elapsed: minute(i),
      })),
      ...change,
    });

  it("that strays and comes back passes, and says that it strayed", () => {
    const result = week((i) => (i < 100 ? 205 : 230));
    expect(result.outcome).toBe("pass");
    expect(codes(result.reasons)).toEqual(["within-nameplate", "week-within", "outside-at-times"]);
    expect(sentences(result.reasons, "outside-at-times")).toEqual([
      "Voltage 205 V to 230 V: at times outside ±10 % of IEC 60038, 207 V to 253 V.",
    ]);
  });

  it("that strays too long fails, the trade's own cause before the figures of the week", () => {
    const result = week((i) => (i < 600 ? 200 : 230));
    expect(result).toMatchObject({ outcome: "fail", cause: "outside-standard" });
    expect(codes(result.reasons)).toEqual(["outside-standard", "week-outside", "within-nameplate"]);
    expect(codes(result.actions ?? [])).toEqual(["call-utility"]);
    expect(sentences(result.reasons, "week-outside")).toEqual([
      "Only 94.05 % of 1008 ten-minute means are within ±10 %; outside: 60. Outside +10/−15 %: 0.",
    ]);
  });

  it("near a limit is not decided by a meter that may err beyond it (JCGM 106:2012, 8.3)", () => {
    const meter = { accuracy: volt(1.2) };
    for (const v of [252.9, 253.1, 207.1, 206.9]) {
      const result = week(() => v, { meter });
      expect(result.week?.outcome).toBe("inconclusive");
      expect(result.parts.supply).toBe("inconclusive");
      expect(codes(result.week?.reasons ?? [])[0]).toBe("week-meter-cannot-tell");
    }
    expect(week(() => 251, { meter }).parts.supply).toBe("pass");
    // one reading within the guard band is outweighed by its ten minutes and by the week
    expect(week((i) => (i === 5 ? 252.9 : 230), { meter }).parts.supply).toBe("pass");
    expect(week(() => 255, { meter }).parts.supply).toBe("fail");
    expect(week(() => 252.9).parts.supply).toBe("pass");
  });

  it("is not asked of readings without their times, of one, or of another grid", () => {
    expect(
      week(() => 230, { readings: [{ voltage: volt(230) }, { voltage: volt(230) }] }).week,
    ).toBe(undefined);
    expect(week(() => 230, { readings: [{ voltage: volt(230), elapsed: minute(0) }] }).week).toBe(
      undefined,
    );
    const readings = [0, 1].map((i) => ({ voltage: volt(240), elapsed: minute(i) }));
    expect(single([], { readings, measuredAt: "service" }).week).toBeUndefined();
  });
});
