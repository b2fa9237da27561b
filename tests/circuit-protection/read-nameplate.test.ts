// The plate's figures against each other, and what is said where something was not stated. By hand: MOP ≤ 1.8 × MCA
// follows from UL 1995, 37.14 and 37.15; standard sizes from NFPA 70 (2023), 240.6(A); 115 % from 440.12.
import {
  cec2024,
  circuitFromNameplate,
  iec60364,
  type MetricWiring,
  nec2020,
  nec2023,
} from "hvac-install-math/circuit-protection";
import { ampere, degC, ft, volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { codes, condenser, fitted, sentences, withChanges } from "./fixtures.ts";

const plate = (mca: number, mop: number, changes: object = {}) =>
  withChanges({
    minimumCircuitAmpacity: ampere(mca),
    maximumOvercurrentProtection: ampere(mop),
    ratedLoadCurrent: ampere(0.84 * mca),
    installed: {},
    ...changes,
  });

describe("the marked maximum", () => {
  it("may equal the ampacity", () => {
    expect(() => plate(25, 25)).not.toThrow();
    expect(() => plate(25, 24.9)).toThrow("maximum-below-ampacity");
  });

  it("is read again where no breaker or fuse of that size is made, or none is used for such a unit", () => {
    const odd = (mop: number, rules = nec2020) =>
      codes(plate(5, mop, { rules }).cautions).filter((code) => code === "not-a-usual-size");
    expect(odd(15)).toEqual([]);
    expect(odd(12)).toHaveLength(1);
    expect(odd(10)).toHaveLength(1); // a fuse that is made, below the 15 A of 440.22(A)
    expect(odd(10, nec2023)).toHaveLength(1);
    expect(codes(plate(20, 35).cautions)).not.toContain("not-a-usual-size");
    expect(sentences(plate(20, 33).cautions)).toContain("33 A is not a standard size.");
  });

  it("is more than belongs to the ampacity above 180 % of it, the last printed digit and the floors allowed for", () => {
    const high = (mca: number, mop: number, rules = nec2023, changes: object = {}) =>
      codes(plate(mca, mop, { rules, ...changes }).reasons).includes("maximum-too-high");
    // Printed to 0.1 A: 1.8 × (25 + 0.05) = 45.1 A; to 1 A: 1.8 × (24 + 0.5) = 44.1 A
    const tenths = { printedTo: ampere(0.1) };
    expect([high(25, 45, nec2023, tenths), high(24.9, 45), high(25, 50)]).toEqual([
      false,
      true,
      true,
    ]);
    expect([high(25, 45), high(24, 45), high(24.5, 45, nec2023, { printedTo: ampere(1) })]).toEqual(
      [
        false,
        true,
        false, // 1.8 × (24.5 + 0.5) = 45 A
      ],
    );
    // The floors: 15 A, and the size that reaches the ampacity
    expect([high(2, 15), high(2, 20)]).toEqual([false, true]);
    const open = plate(24.4, 45);
    expect(sentences(open.reasons)).toContain(
      "A maximum of 45 A is too high for an ampacity of 24.4 A.",
    );
    expect(sentences(open.actions ?? [])).toContain("Read the nameplate again.");
    // Canada: a nameplate by CSA C22.2 No. 236 has the same formula as UL 1995
    expect([high(25, 45, cec2024, tenths), high(24.9, 45, cec2024)]).toEqual([false, true]);
  });

  it("that is too high is taken as printed once the nameplate was read again", () => {
    const { installed } = condenser;
    const high = { minimumCircuitAmpacity: ampere(22), maximumOvercurrentProtection: ampere(45) };
    const device = { ...installed?.device, rating: ampere(45) } as never;
    const changes = { ...high, installed: { ...installed, device } };
    expect(withChanges(changes).outcome).toBe("inconclusive");
    const again = withChanges({ ...changes, nameplateReadAgain: true });
    expect(again.outcome).toBe("pass");
    expect(codes(again.cautions)).toContain("maximum-confirmed");
  });
});

/** A circuit under the international rules. */
function metric(ib: number, wiring: Partial<MetricWiring> = {}) {
  return {
    rules: iec60364,
    minimumCircuitAmpacity: ampere(ib),
    maximumOvercurrentProtection: ampere(25),
    supply: { voltage: volt(230), phases: 1 },
    wiring: { material: "copper", insulation: "70 °C", method: "C", ...wiring },
  } as const;
}

describe("what is assumed", () => {
  const assumed = (wiring: object) =>
    withChanges({ wiring: { material: "copper", insulation: "90 °C", ...wiring } as never })
      .assumptions.map(({ code }) => code.replace(/.*\./, ""))
      .filter((code) => /^(ambient|terminations|cable|roof|conductors)-assumed$/.test(code));

  it("of the wiring is each thing that is not stated, and nothing that is", () => {
    const stated = {
      ambient: degC(30),
      terminations: "75 °C",
      cable: "other",
      aboveRoof: ft(3),
      currentCarryingConductors: 3,
    };
    const without = (name: keyof typeof stated) => {
      const { [name]: _, ...rest } = stated;
      return assumed(rest);
    };
    expect(assumed(stated)).toEqual([]);
    expect(without("ambient")).toEqual(["ambient-assumed"]);
    expect(without("terminations")).toEqual(["terminations-assumed"]);
    expect(without("cable")).toEqual(["cable-assumed"]);
    expect(without("aboveRoof")).toEqual(["roof-assumed"]);
    expect(without("currentCarryingConductors")).toEqual(["conductors-assumed"]);
  });

  it("of a metric cable is the ambient and that no other circuit runs beside it", () => {
    const said = (wiring: Partial<MetricWiring>) =>
      sentences(circuitFromNameplate(metric(14, wiring)).assumptions).filter((one) =>
        /Ambient|run alone/.test(one),
      );
    const air = "Ambient temperature along the run: 30 °C assumed.";
    expect(said({})).toEqual([air, "The cable is taken as run alone."]);
    expect(said({ groupedCircuits: 2 })).toEqual([air]);
    expect(said({ method: "D1" })[0]).toBe("Ambient temperature along the run: 20 °C assumed.");
    expect(said({ ambient: degC(30), groupedCircuits: 2 })).toEqual([]);
  });

  it("of plate and service is listed only where they do not say", () => {
    const { protectionMarking: _, ...unmarked } = condenser;
    expect(codes(circuitFromNameplate(unmarked).assumptions)).toContain("marking-assumed");
    expect(codes(withChanges({}).assumptions)).not.toContain("marking-assumed");
    const unnamed = withChanges({ supply: { voltage: volt(240), phases: 1 } });
    expect(sentences(unnamed.assumptions)).toContain("The service is taken as 120/240 V.");
    expect(codes(withChanges({}).assumptions)).not.toContain("service-assumed");
  });
});

describe("the rated-load current", () => {
  it("sizes the disconnect from 80 % of the ampacity up, half of the last printed digit allowed for", () => {
    // (23 − 0.5)/1.25 = 18 A
    const needed = (load: number) =>
      plate(23, 40, { ratedLoadCurrent: ampere(load) }).disconnect.minimumRating.in(ampere);
    expect(needed(18)).toBeCloseTo(20.7, 9);
    expect(needed(17.9)).toBeCloseTo(26.45, 9); // 1.15 × 23: the rest is not stated
    expect(needed(23)).toBeCloseTo(26.45, 9);
    expect(() => needed(23.6)).toThrow("ratedLoadCurrent: ");
    const said = plate(23, 40, { ratedLoadCurrent: ampere(17.9) }).cautions;
    expect(sentences(said)).toContain(
      "A minimum circuit ampacity of 23 A belongs to more than 17.9 A: the rated load is the sum of compressor and fans. 23 A was used instead.",
    );
  });

  it("is taken as it is under the international rules, whose design current holds no 125 %", () => {
    const { disconnect, cautions } = circuitFromNameplate({
      ...metric(14),
      ratedLoadCurrent: ampere(5),
    });
    expect(disconnect.minimumRating.in(ampere)).toBe(5);
    expect(codes(cautions)).not.toContain("rated-load-low");
  });
});

describe("the sentences", () => {
  it("name the figures that decided", () => {
    const { reasons } = fitted({ conductor: "6 AWG", equipmentGrounding: "10 AWG" });
    expect(sentences(reasons)).toContain(
      "10 AWG is enough for the device, but 250.122(B) requires 6 AWG beside circuit conductors larger than needed. Its exception lets a qualified person size it.",
    );
    const none = plate(26, 28);
    expect(sentences(none.cautions)).toContain(
      "No standard size lies between 26 A and 28 A. The next size down may trip in normal use.",
    );
    expect(codes(plate(23.5, 40).reasons)).not.toContain("device-below-ampacity");
    const small = fitted({
      device: { kind: "breaker", rating: ampere(21), voltageRating: "120/240 V", poles: 2 },
    });
    expect(sentences(small.cautions)).toContain("21 A is not a standard size of breaker.");
    expect(sentences(small.reasons)).toContain(
      "The breaker is 21 A, below the minimum circuit ampacity of 23.5 A. It may trip in normal use.",
    );
  });

  it("tell a curve that trips at the start, with both currents", () => {
    const { cautions } = circuitFromNameplate({
      ...metric(14),
      lockedRotorCurrent: ampere(70),
      installed: { device: { kind: "breaker", rating: ampere(16), curve: "B" } },
    });
    const said = sentences(cautions);
    expect(said).toContain("Curve B may trip when a compressor starts.");
    expect(said).toContain(
      "The starting current, 70 A, is above 48 A, where the breaker may trip at once.",
    );
  });

  it("name a device and a disconnect that are no objects", () => {
    expect(() => fitted({ device: "breaker" as never })).toThrow("installed.device: ");
    expect(() => fitted({ disconnect: 3 as never })).toThrow("installed.disconnect: ");
    const device = { kind: "breaker", rating: ampere(40) } as const;
    expect(() => fitted({ device: { ...device, hacr: "no" as never } })).toThrow(
      "installed.device.hacr: ",
    );
    expect(() => fitted({ device: { ...device, curve: "K" as never } })).toThrow(
      "installed.device.curve: ",
    );
  });

  it("say from which fuse on a maximum can be kept", () => {
    expect(() => plate(0.2, 0.5, { ratedLoadCurrent: undefined })).toThrow(
      "maximumOvercurrentProtection: 0.5 A is not allowed; allowed: at least 1 A",
    );
    expect(String(plate(0.2, 1, { ratedLoadCurrent: undefined }).device.rating)).toBe("1 A");
  });
});
