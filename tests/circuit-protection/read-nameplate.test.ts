// The plate's figures against each other, and what is said where something was not stated. By hand: MOP ≤ 1.8 × MCA
// follows from UL 1995, 37.14 and 37.15; standard sizes from NFPA 70 (2023), 240.6(A); 115 % from 440.12.
import { explain } from "hvac-install-math/assessment";
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
import { codes, condenser, fitted, withChanges } from "./fixtures.ts";

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
    expect(() => plate(25, 24.9)).toThrow("MOP below MCA");
  });

  it("is read again where no breaker or fuse of that size is made, or none is used for such a unit", () => {
    const odd = (mop: number, rules = nec2020) =>
      plate(5, mop, { rules }).cautions.filter(({ code }) => code === "not-a-usual-size");
    expect(odd(15)).toEqual([]);
    expect(odd(12)).toHaveLength(1);
    expect(odd(10)).toHaveLength(1); // a fuse that is made, below the 15 A of 440.22(A)
    expect(odd(10, nec2023)).toHaveLength(1);
    expect(
      plate(20, 35)
        .cautions.map((one) => explain(one))
        .join(),
    ).not.toContain("usual size");
    expect(plate(20, 33).cautions.map((one) => explain(one))).toContain(
      "33 A is not a usual size: read the plate again.",
    );
  });

  it("is more than belongs to the ampacity above 180 % of it, half an ampere and the floors allowed for", () => {
    const high = (mca: number, mop: number, rules = nec2023) =>
      codes(plate(mca, mop, { rules }).reasons).includes("maximum-too-high");
    // 1.8 × (24.5 + 0.5) = 45 A
    expect([high(24.5, 45), high(24.4, 45), high(24.5, 50)]).toEqual([false, true, true]);
    // The floors: 15 A, and the size that reaches the ampacity
    expect([high(2, 15), high(2, 20)]).toEqual([false, true]);
    expect(plate(24.4, 45).reasons.map((one) => explain(one))).toContain(
      "45 A is more than belongs to 24.4 A: read the plate again, or ask the manufacturer.",
    );
    // Canada: half of six times the rated load over 125 % of it, 2.4 × (19.5 + 0.5) = 48 A
    expect([high(19.5, 45, cec2024), high(19.5, 50, cec2024)]).toEqual([false, true]);
    expect([high(20.4, 50, cec2024), high(20.3, 50, cec2024)]).toEqual([false, true]);
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
      .assumptions.map((one) => explain(one))
      .filter((one) => one.startsWith("Wiring"));

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
    expect(without("ambient")).toEqual(["Wiring: 30 °C around it."]);
    expect(without("terminations")).toEqual(["Wiring: terminations not marked 75 °C."]);
    expect(without("cable")).toEqual(["Wiring: no NM cable."]);
    expect(without("aboveRoof")).toEqual(["Wiring: not just above a roof."]);
    expect(without("currentCarryingConductors")).toEqual([
      "Wiring: at most 3 loaded conductors together.",
    ]);
  });

  it("of a metric cable is the ambient and that no other circuit runs beside it", () => {
    const said = (wiring: Partial<MetricWiring>) =>
      circuitFromNameplate(metric(14, wiring))
        .assumptions.map((one) => explain(one))
        .filter((one) => one.startsWith("Wiring"));
    expect(said({})).toEqual(["Wiring: 30 °C around it, no other circuit beside it."]);
    expect(said({ groupedCircuits: 2 })).toEqual(["Wiring: 30 °C around it."]);
    expect(said({ ambient: degC(30), groupedCircuits: 2 })).toEqual([]);
  });

  it("of plate and service is listed only where they do not say", () => {
    const { protectionMarking: _, ...unmarked } = condenser;
    expect(codes(circuitFromNameplate(unmarked).assumptions)).toContain("protection-marking");
    expect(codes(withChanges({}).assumptions)).not.toContain("protection-marking");
    const unnamed = withChanges({ supply: { voltage: volt(240), phases: 1 } });
    expect(unnamed.assumptions.map((one) => explain(one))).toContain("The service is 120/240 V.");
    expect(codes(withChanges({}).assumptions)).not.toContain("service");
  });
});

describe("the rated-load current", () => {
  it("sizes the disconnect from 80 % of the ampacity up, half an ampere of rounding allowed for", () => {
    // (23 − 0.5)/1.25 = 18 A
    const needed = (load: number) =>
      plate(23, 40, { ratedLoadCurrent: ampere(load) }).disconnect.minimumRating.in(ampere);
    expect(needed(18)).toBeCloseTo(20.7, 9);
    expect(needed(17.9)).toBeCloseTo(26.45, 9); // 1.15 × 23: the rest is not stated
    expect(needed(23)).toBeCloseTo(26.45, 9);
    expect(() => needed(23.1)).toThrow("ratedLoadCurrent: ");
    const said = plate(23, 40, { ratedLoadCurrent: ampere(17.9) }).cautions;
    expect(said.map((one) => explain(one))).toContain(
      "17.9 A is less than belongs to 23 A: state the sum of all that runs together. The disconnect is sized for 23 A.",
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
    expect(reasons.map((one) => explain(one))).toContain(
      "Not met: Grounding conductor 10 AWG, at least 6 AWG.",
    );
    const none = plate(26, 28);
    expect(none.cautions.map((one) => explain(one))).toContain(
      "No standard size from 26 A to 28 A.",
    );
    expect(codes(plate(23.5, 40).cautions)).not.toContain("device-below-ampacity");
    const small = fitted({
      device: { kind: "breaker", rating: ampere(21), voltageRating: "120/240 V", poles: 2 },
    });
    const said = small.cautions.map((one) => explain(one));
    expect(said).toContain("21 A is not a standard size.");
    expect(said).toContain("21 A is below 23.5 A: it may trip in normal use.");
  });

  it("tell a curve that trips at the start, with both currents", () => {
    const { cautions } = circuitFromNameplate({
      ...metric(14),
      lockedRotorCurrent: ampere(70),
      installed: { device: { kind: "breaker", rating: ampere(16), curve: "B" } },
    });
    const said = cautions.map((one) => explain(one));
    expect(said).toContain("Curve B may trip when a compressor starts.");
    expect(said).toContain("70 A at the start is above 48 A: it may trip.");
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
      "maximumOvercurrentProtection: 0.5 A is not allowed; allowed: at least the smallest standard fuse, 1 A",
    );
    expect(String(plate(0.2, 1, { ratedLoadCurrent: undefined }).device.rating)).toBe("1 A");
  });
});
