// Voltage drop by hand: 2·I·Z·L for one phase and √3·I·Z·L for three, Z = R·cos φ + X·sin φ (NFPA 70 (2023), chapter 9,
// table 9, note 2); resistances of table 8 at 75 °C with its note 2.
import {
  cec2024,
  conductorResistance,
  conduitImpedance,
  iec60364,
  longestRun,
  nec2023,
  tripBand,
  voltageDrop,
} from "hvac-install-math/circuit-protection";
import {
  ampere,
  degC,
  ft,
  m,
  ohmPerKft,
  ohmPerKm,
  percent,
  volt,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { codes, condenser, sentences, withChanges } from "./fixtures.ts";

describe("the drop of a run", () => {
  const run = {
    current: ampere(10),
    voltage: volt(200),
    phases: 1,
    length: m(100),
    resistance: ohmPerKm(2),
  } as const;
  const volts = (changes: Partial<Parameters<typeof voltageDrop>[0]>) =>
    voltageDrop({ ...run, ...changes }).drop.in(volt);

  it("counts there and back for one phase, √3 for three, and reactance with the power factor", () => {
    expect(volts({})).toBe(4);
    expect(volts({ phases: 3 })).toBeCloseTo(2 * Math.sqrt(3), 9);
    expect(volts({ powerFactor: 0.8 })).toBeCloseTo(3.2, 9);
    expect(volts({ powerFactor: 0.8, reactance: ohmPerKm(1) })).toBeCloseTo(4.4, 9);
    expect(volts({ reactance: ohmPerKm(1) })).toBe(4); // power factor 1
    expect(volts({ powerFactor: 0.6, reactance: ohmPerKm(0) })).toBeCloseTo(2.4, 9);
    const { ratio, atUnit } = voltageDrop(run);
    expect([ratio.in(percent), atUnit.in(volt)]).toEqual([2, 196]);
  });

  it("leaves something of the voltage, or is beyond the formula", () => {
    expect(volts({ length: m(4999) })).toBeCloseTo(199.96, 9);
    expect(() => volts({ length: m(5000) })).toThrow(
      "length: 5000 m is not allowed; allowed: a run that leaves some of 200 V at 10 A",
    );
  });

  it("gives the longest run back", () => {
    const { length: _, ...line } = run;
    expect(longestRun({ ...line, limit: percent(2) }).in(m)).toBe(100);
    expect(() => longestRun({ ...line, limit: percent(0) })).toThrow("limit: ");
    expect(() => longestRun({ ...line, limit: percent(100) })).toThrow("limit: ");
    expect(longestRun({ ...line, limit: percent(99) }).in(m)).toBe(4950);
    expect(() => longestRun({ ...line, limit: percent(2), voltage: volt(0) })).toThrow("voltage: ");
  });

  it.each<[string, object]>([
    ["current", { current: ampere(0) }],
    ["voltage", { voltage: volt(0) }],
    ["phases", { phases: 2 }],
    ["length", { length: m(0) }],
    ["resistance", { resistance: ohmPerKm(0) }],
    ["reactance", { reactance: ohmPerKm(-1) }],
    ["powerFactor", { powerFactor: 0 }],
    ["powerFactor", { powerFactor: 1.01 }],
  ])("names %s where it is outside its range", (argument, changes) => {
    expect(() => volts(changes)).toThrow(`${argument}: `);
  });
});

describe("the resistance of a conductor", () => {
  const resistance = (celsius: number, material: "copper" | "aluminum" = "copper") =>
    conductorResistance({
      rules: nec2023,
      size: "6 AWG",
      material,
      temperature: degC(celsius),
    }).in(ohmPerKft);

  it("changes with its temperature by the material's coefficient, from −50 to 250 °C", () => {
    expect(resistance(75)).toBe(0.491);
    expect(resistance(100)).toBeCloseTo(0.491 * (1 + 0.00323 * 25), 9);
    expect(resistance(50, "aluminum")).toBeCloseTo(0.808 * (1 - 0.0033 * 25), 9);
    expect(resistance(-50)).toBeCloseTo(0.491 * (1 - 0.00323 * 125), 9);
    expect(resistance(250)).toBeCloseTo(0.491 * (1 + 0.00323 * 175), 9);
    expect(() => resistance(-50.1)).toThrow("temperature: ");
    expect(() => resistance(250.1)).toThrow("temperature: ");
  });

  it("is named with its column where the table has none", () => {
    const solid = {
      rules: nec2023,
      size: "6 AWG",
      material: "copper",
      stranding: "solid",
    } as const;
    expect(() => conductorResistance(solid)).toThrow(
      'size: the text "6 AWG" is not allowed; allowed: 14 AWG, 12 AWG, 10 AWG, 8 AWG',
    );
    expect(() => conductorResistance({ ...solid, stranding: "braided" as never })).toThrow(
      "stranding: ",
    );
    expect(() => conductorResistance({ ...solid, material: "brass" as never })).toThrow(
      "material: ",
    );
    expect(() => conductorResistance({ ...solid, size: "5 AWG" as never })).toThrow("size: ");
  });

  it("in conduit is read with its reactance, where the rules have that table", () => {
    const steel = {
      rules: nec2023,
      size: "6 AWG",
      material: "aluminum",
      conduit: "steel",
    } as const;
    const { resistance: r, reactance } = conduitImpedance(steel);
    expect([r.in(ohmPerKft), reactance.in(ohmPerKft)]).toEqual([0.81, 0.064]);
    expect(() => conduitImpedance({ ...steel, conduit: "brass" as never })).toThrow("conduit: ");
    expect(() => conduitImpedance({ ...steel, material: "brass" as never })).toThrow("material: ");
    expect(() => conduitImpedance({ ...steel, size: "14 AWG" })).toThrow(
      'size: the text "14 AWG" is not allowed; allowed: 12 AWG, 10 AWG, ',
    );
    const none = { rules: iec60364, size: "4 mm²", material: "copper", conduit: "PVC" } as const;
    expect(() => conduitImpedance(none)).toThrow("rules with a table of impedances");
  });
});

describe("the drop of a circuit", () => {
  const wired = (changes: object, more: object = {}) =>
    withChanges({ wiring: { ...condenser.wiring, ...changes }, ...more });

  it("is judged at the limit, with the fitted conductor, and says two decimals", () => {
    // 10 AWG, 19.1 A: 7.2 V of 240 V are lost over 1000 × 7.2/(2 × 19.1 × 1.24) = 152.0 ft
    const said = (length: number) => {
      const { reasons, cautions } = wired({ length: ft(length) });
      return sentences([...reasons, ...cautions]).filter((one) => one.startsWith("Voltage drop"));
    };
    expect(said(151.9)).toEqual(["Voltage drop 3 %, within 3 %."]);
    expect(said(152.1)).toEqual(["Voltage drop 3 %, above the recommended 3 %."]);
    expect(said(200)).toEqual(["Voltage drop 3.95 %, above the recommended 3 %."]);
  });

  it("binds in Canada, and is met there too", () => {
    const canada = (length: number) => wired({ length: ft(length) }, { rules: cec2024 });
    // Table D3, note: 10 AWG of 90 °C at 19.1 A of 40 A runs at 30 + 60 × (19.1/40)² = 43.7 °C, where it has
    // 1.24 × (1 − 0.00323 × 31.3) = 1.115 Ω/kft: 7.2 V are lost over 169.1 ft
    expect(canada(169).cause).toBe("not-confirmed");
    expect(codes(canada(169).reasons)).toContain("voltage-drop-met");
    expect(canada(169.2).cause).toBe("voltage-drop");
    expect(codes(canada(169.2).cautions).join()).not.toContain("voltage-drop");
  });

  it("looks for the conductor that keeps the limit from the smallest sufficient one up, and may find none", () => {
    const within = (length: number) =>
      wired({ length: ft(length) }).voltageDrop?.conductorWithinLimit;
    // 7.2 V/(2 × 19.1 A) = 0.18848 Ω: 12 AWG 95.19 ft, 10 AWG 152.0 ft, 250 kcmil 3659.9 ft
    // 14 AWG would do over 60 ft and does not carry 23.5 A.
    expect([within(50), within(95), within(96), within(152), within(153)]).toEqual([
      "12 AWG",
      "12 AWG",
      "10 AWG",
      "10 AWG",
      "8 AWG",
    ]);
    expect(within(3659)).toBe("250 kcmil");
    expect(within(3661)).toBeUndefined();
    expect(wired({ length: ft(3661) }).voltageDrop).not.toHaveProperty("conductorWithinLimit");
  });

  it("takes the minimum circuit ampacity where no rated-load current is stated", () => {
    const { ratedLoadCurrent: _, ...plate } = condenser;
    const drop = withChanges({ ...plate, ratedLoadCurrent: undefined } as never).voltageDrop;
    expect(drop?.running.drop.in(volt)).toBeCloseTo(2 * 23.5 * 1.24 * 0.06, 9);
  });

  it("takes stranded wire where a size is not made solid", () => {
    const installed = { ...condenser.installed, conductor: "6 AWG" } as const;
    const circuit = wired({ stranding: "solid" }, { installed });
    expect(circuit.voltageDrop?.running.drop.in(volt)).toBeCloseTo(2 * 19.1 * 0.491 * 0.06, 9);
  });

  it("uses the conduit's impedance only together with a power factor, at the start with power factor 1", () => {
    const direct = 2 * 19.1 * 0.06 * 1.24;
    expect(wired({ conduit: "steel" }).voltageDrop?.running.drop.in(volt)).toBeCloseTo(direct, 9);
    expect(wired({}, { powerFactor: 0.85 }).voltageDrop?.running.drop.in(volt)).toBeCloseTo(
      direct,
      9,
    );
    const both = { powerFactor: 0.85, lockedRotorCurrent: ampere(90) };
    const start = wired({ conduit: "steel" }, both).voltageDrop?.starting;
    expect(start?.drop.in(volt)).toBeCloseTo(2 * 90 * 0.06 * 1.2, 9);
  });

  it("needs a power factor above 0 up to 1, with or without a length", () => {
    const { length: _, ...short } = condenser.wiring;
    for (const powerFactor of [0, 1.01]) {
      expect(() => withChanges({ powerFactor })).toThrow("powerFactor: ");
      expect(() => withChanges({ powerFactor, wiring: short })).toThrow("powerFactor: ");
    }
    expect(() => withChanges({ powerFactor: 1 })).not.toThrow();
    expect(withChanges({ wiring: short }).voltageDrop).toBeUndefined();
  });

  it("answers the longest run in the unit of the rules", () => {
    expect(String(wired({}).voltageDrop?.longestRun.unit.symbol)).toBe("ft");
    expect(wired({}).voltageDrop?.limit.in(percent)).toBe(3);
  });
});

it("a breaker's currents are its rating times the standard's multiples, for each curve", () => {
  // IEC 60898-1:2015, table 7: 1.13 and 1.45; table 2: B 3 to 5, C 5 to 10, D 10 to 20
  const currents = (curve: "B" | "C" | "D") =>
    Object.values(tripBand({ rules: iec60364, rating: ampere(20), curve })).map(String);
  expect(currents("B")).toEqual(["22.6 A", "29 A", "60 A", "100 A"]);
  expect(currents("C")).toEqual(["22.6 A", "29 A", "100 A", "200 A"]);
  expect(currents("D")).toEqual(["22.6 A", "29 A", "200 A", "400 A"]);
  expect(() => tripBand({ rules: iec60364, rating: ampere(0), curve: "C" })).toThrow("rating: ");
  expect(() => tripBand({ rules: nec2023, rating: ampere(20), curve: "C" })).toThrow(
    'rules: the text "NEC 2023" is not allowed; allowed: rules with trip curves',
  );
});
