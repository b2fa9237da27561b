// The disconnect at the unit, at and beside each of its limits: NFPA 70 (2023), 440.12 (115 %), 440.14 and Article 100
// (in sight: 50 ft), 110.26(A) (3 ft deep, 30 in wide, 6 ft 6 in high).
import {
  circuitFromNameplate,
  type FittedDisconnect,
  iec60364,
} from "hvac-install-math/circuit-protection";
import { ampere, ft, inch, isInvalidInputError, m, volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { codes, condenser, fitted, sentences, withChanges } from "./fixtures.ts";

const good = condenser.installed?.disconnect as FittedDisconnect;
const judged = (changes: Partial<FittedDisconnect>) =>
  fitted({ disconnect: { ...good, ...changes } });
const said = (changes: Partial<FittedDisconnect>) => sentences(judged(changes).reasons);

describe("the rating", () => {
  it("reaches 115 % of the rated-load current, no less", () => {
    // 1.15 × 20 A = 23 A, of an ampacity of 23.5 A
    const rated = (amperes: number) =>
      withChanges({
        ratedLoadCurrent: ampere(20),
        installed: { ...condenser.installed, disconnect: { ...good, rating: ampere(amperes) } },
      });
    expect(rated(23).outcome).toBe("pass");
    expect(rated(22.9).cause).toBe("disconnect-rating");
    expect(sentences(rated(22.9).reasons)).toContain(
      "The disconnect is too small: 22.9 A; 23 A required.",
    );
  });

  it("is offered in the sizes in which switches are made: common practice, no source", () => {
    const size = (fuses: number) => {
      const { madeSize } = withChanges({
        protectionMarking: "fuse only",
        minimumCircuitAmpacity: ampere(Math.min(fuses, 200)),
        ratedLoadCurrent: ampere(0.85 * Math.min(fuses, 200)),
        maximumOvercurrentProtection: ampere(fuses),
        installed: {},
      }).disconnect;
      return madeSize && String(madeSize);
    };
    expect([30, 35, 60, 70, 100, 110, 200].map(size)).toEqual([
      "30 A",
      "60 A",
      "60 A",
      "100 A",
      "100 A",
      "200 A",
      "200 A",
    ]);
    expect([225, 400, 450, 600].map(size)).toEqual(["400 A", "400 A", "600 A", "600 A"]);
    expect(size(700)).toBeUndefined();
    const metric = (amperes: number) =>
      String(
        circuitFromNameplate({
          rules: iec60364,
          minimumCircuitAmpacity: ampere(amperes),
          maximumOvercurrentProtection: ampere(80),
          supply: { voltage: volt(230), phases: 1 },
          wiring: { material: "copper", insulation: "70 °C", method: "C" },
          ratedLoadCurrent: ampere(amperes),
        }).disconnect.madeSize,
      );
    expect([16, 16.1, 21, 26, 33, 41, 64].map(metric)).toEqual([
      "16 A",
      "20 A",
      "25 A",
      "32 A",
      "40 A",
      "63 A",
      "80 A",
    ]);
  });

  it("holds its fuses, which also keep the marked maximum", () => {
    expect(said({ rating: ampere(30), fuse: ampere(30) })).toContain(
      "Fuses in the disconnect: 30 A, within 30 A.",
    );
    expect(said({ rating: ampere(30), fuse: ampere(35) })).toContain(
      "The fuses in the disconnect are too large: 35 A; at most 30 A allowed.",
    );
    expect(said({ fuse: ampere(40) })).toContain("Fuses in the disconnect: 40 A, within 40 A.");
    expect(said({ fuse: ampere(45) })).toContain(
      "The fuses in the disconnect are too large: 45 A; at most 40 A allowed.",
    );
  });

  it("has fuses that carry the unit: below its load they fail, below its ampacity they are asked about", () => {
    expect(judged({ fuse: ampere(10) }).cause).toBe("disconnect-fuse"); // 19.1 A run together
    expect(judged({ fuse: ampere(20) }).outcome).toBe("inconclusive"); // 23.5 A is marked
    expect(judged({ fuse: ampere(25) }).outcome).toBe("pass");
    expect(codes(judged({}).reasons).join()).not.toContain("disconnect-fuse");
  });
});

describe("the place", () => {
  const { visible: _, distance: __, readilyAccessible: ___, ...unplaced } = good;
  const only = (place: Partial<FittedDisconnect>) =>
    sentences(
      fitted({ disconnect: { ...unplaced, ...place } }).reasons.filter(({ code }) =>
        /disconnect-(in-|out|near|too-far|acc|not-acc|clear)/.test(code),
      ),
    );

  it("is judged by what is stated of it, each by itself", () => {
    expect(only({})).toEqual([]);
    expect(only({ visible: true })).toEqual(["The disconnect is within sight of the unit."]);
    expect(only({ visible: false })).toEqual(["The disconnect is not within sight of the unit."]);
    expect(only({ distance: ft(50) })).toEqual(["The disconnect is 50 ft away, within 50 ft."]);
    expect(only({ distance: ft(50.1) })).toEqual([
      "The disconnect is too far away: 50.1 ft; at most 50 ft allowed.",
    ]);
    expect(only({ distance: ft(0) })).toHaveLength(1);
    expect(only({ readilyAccessible: true })).toEqual(["The disconnect is readily accessible."]);
    expect(only({ inTheWay: false })).toEqual([
      "The disconnect is clear of nameplate and access panels.",
    ]);
    expect(only({ inTheWay: true })).toEqual([
      "The disconnect covers the nameplate or hangs on an access panel.",
    ]);
  });

  it("has no distance and no working space under the international rules", () => {
    const circuit = circuitFromNameplate({
      rules: iec60364,
      minimumCircuitAmpacity: ampere(14),
      maximumOvercurrentProtection: ampere(25),
      earthing: "TN",
      supply: { voltage: volt(230), phases: 1 },
      wiring: { material: "copper", insulation: "70 °C", method: "C" },
      installed: {
        device: { kind: "breaker", rating: ampere(16) },
        conductor: "2.5 mm²",
        disconnect: {
          rating: ampere(20),
          distance: m(40),
          workingSpace: { depth: m(0.1), width: m(0.1), height: m(1) },
        },
      },
    });
    expect(circuit.disconnect.withinSight).toBeUndefined();
    expect(codes(circuit.reasons).filter((code) => /disconnect-[^r]|space/.test(code))).toEqual([]);
    expect(circuit.outcome).toBe("pass");
  });
});

describe("the working space", () => {
  const least = { depth: ft(3), width: inch(30), height: ft(6.5) };
  const space = (changes: object) => judged({ workingSpace: { ...least, ...changes } });

  it("is met by the least of each, and by nothing less of any", () => {
    expect(space({}).outcome).toBe("pass");
    for (const less of [{ depth: inch(35.9) }, { width: inch(29.9) }, { height: inch(77.9) }]) {
      expect(space(less).cause).toBe("working-space");
    }
    expect(sentences(space({}).reasons)).toContain(
      "The working space is at least 3 ft deep, 2.5 ft wide and 6.5 ft high.",
    );
  });

  it("is as wide as the equipment where that is wider, 110.26(A)(2)", () => {
    expect(space({ equipmentWidth: inch(12) }).outcome).toBe("pass");
    expect(space({ equipmentWidth: inch(31) }).cause).toBe("working-space");
    expect(sentences(space({ equipmentWidth: inch(31) }).reasons)).toContain(
      "The working space is too small. Required: 3 ft deep, 31 in wide, 6.5 ft high.",
    );
    expect(space({ equipmentWidth: inch(31), width: inch(31) }).outcome).toBe("pass");
  });

  it.each(["depth", "width", "height", "equipmentWidth"])("has no %s below 0", (side) => {
    const argument = (() => {
      try {
        space({ [side]: ft(-1) });
      } catch (error) {
        return isInvalidInputError(error) && error.argument;
      }
      return "no error";
    })();
    expect(argument).toBe(`installed.disconnect.workingSpace.${side}`);
  });
});

describe("what is unknown of the place", () => {
  const assumed = (disconnect: FittedDisconnect) =>
    sentences(
      fitted({ disconnect }).assumptions.filter(({ code }) => code.endsWith(".not-stated")),
    ).slice(0, -1); // the last names what is not stated of the circuit

  it("is named as far as it was not stated: nothing of it counts as seen", () => {
    expect(assumed({ rating: ampere(30) })).toEqual([
      "Not given, so not checked: disconnect within sight, access to the disconnect, disconnect clear of panels, distance of the disconnect, and working space.",
    ]);
    expect(assumed(good)).toEqual(["Not given, so not checked: disconnect clear of panels."]);
    expect(assumed({ ...good, inTheWay: false })).toEqual([]);
  });
});
