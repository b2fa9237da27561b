import { ampere, percent, volt } from "hvac-install-math/quantity";
import type { LoadState } from "hvac-install-math/supply-voltage";
import { describe, expect, it } from "vitest";
import { codes, sentences, three } from "./readings.ts";

describe("voltage unbalance", () => {
  it("is told with its limit, the derating factor and the heat in the windings", () => {
    const { reasons } = three([[452, 464, 455]]);
    // 1.53 % is a manufacturer's worked example; 0.97 from the curve of NEMA MG 1, 14.36; 2 × 1.53² = 4.7 %
    expect(sentences(reasons, "unbalance-within")).toEqual([
      "Voltage unbalance 1.53 %, within 2 %; derating factor 0.97, windings 5 % hotter.",
    ]);
    expect(codes(reasons)).not.toContain("unbalance-too-close");
  });

  it("is as uncertain as the deviation of one of three readings of a coarse display", () => {
    // JCGM 100:2008, 5.1: u² = (2/3) (5 V)²/12; guard band 1.645 u/457 V = 0.42 %
    const coarse = { resolution: volt(5) };
    expect(three([[452, 464, 455]], { meter: coarse }).parts.unbalance).toBe("pass"); // 1.53 %
    expect(three([[451, 464, 456]], { meter: coarse }).parts.unbalance).toBe("pass"); // 1.53 %
    expect(three([[452, 465, 456]], { meter: coarse }).parts.unbalance).toBe("inconclusive"); // 1.60 %
  });

  it("asks for derating above 1 %, not at it (NEMA MG 1, 14.36)", () => {
    const on208 = {
      nameplate: { rated: volt(208) },
      supply: { voltage: volt(208), phases: 3 },
    } as const;
    expect(codes(three([[202, 199, 199]], on208).cautions)).not.toContain("derate");
    expect(codes(three([[485, 477.5, 477.5]]).cautions)).toContain("derate");
  });

  it("asks for the utility above 3 %, not at it (ANSI C84.1, annex)", () => {
    const at = three([[206, 197, 197]], {
      nameplate: { rated: volt(208) },
      supply: { voltage: volt(208), phases: 3 },
    });
    expect(at.unbalance?.unbalance.in(percent)).toBe(3);
    expect(codes(at.cautions)).not.toContain("uneven-supply");
    expect(codes(three([[452, 464, 455]]).cautions)).not.toContain("uneven-supply");
    const above = three([[500, 480, 470]]); // 3.45 %
    expect(codes(above.cautions)).toContain("uneven-supply");
    expect(above.sources).toContainEqual({
      source: "ansi-c84-1-2020",
      clause: "annex on unbalance",
    });
  });

  it("has an assumed limit only when the maker's is not given", () => {
    expect(codes(three([[460, 461, 460]]).assumptions)).toContain("unbalance-limit");
    const given = three([[460, 461, 460]], { unbalanceLimit: percent(1) });
    expect(codes(given.assumptions)).not.toContain("unbalance-limit");
    expect(sentences(given.reasons, "unbalance-within").join()).toContain("within 1 %");
  });
});

describe("currents", () => {
  const set = (amps: number[] | undefined, state?: LoadState) => ({
    lineToLine: [460, 461, 460].map(volt),
    ...(amps && { currents: amps.map(ampere) }),
    ...(state && { state }),
  });
  const judged = (...readings: ReturnType<typeof set>[]) => three([], { readings });

  it("come with their unbalance in the result and in a sentence", () => {
    // 9.4 % from 33, 29 and 34 A: a meter maker's manual
    const result = judged(set([33, 29, 34], "load"));
    expect(result.currentUnbalance?.unbalance.toString(percent, 1)).toBe("9.4 %");
    expect(sentences(result.reasons, "current-unbalance-within")).toEqual([
      "Current unbalance 9.4 %, within 10 %.",
    ]);
    expect(three([[460, 461, 460]]).currentUnbalance).toBeUndefined();
  });

  it("may be uneven by 10 %, as makers allow, and no more", () => {
    expect(judged(set([33, 28.5, 28.5], "load")).parts.currentUnbalance).toBe("pass"); // 10 %
    expect(judged(set([33.1, 28.5, 28.5], "load")).parts.currentUnbalance).toBe("fail");
  });

  it("of none at all prove no lost phase: the unit did not run", () => {
    expect(judged(set([0, 0, 0], "load")).parts.currentUnbalance).toBeUndefined();
  });

  it("are left out aloud only where a set has them and does not say what the unit did", () => {
    const left = (...readings: ReturnType<typeof set>[]) =>
      codes(judged(...readings).assumptions).includes("currents-not-judged");
    expect(left(set([20, 20, 20]))).toBe(true);
    expect(left(set([20, 20, 20]), set(undefined))).toBe(true);
    expect(left(set(undefined))).toBe(false);
    expect(left(set([0, 0, 0], "rest"))).toBe(false);
    expect(left(set([20, 20, 20], "load"), set(undefined))).toBe(false);
  });
});
