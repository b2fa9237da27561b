import {
  assessNameplate,
  breakerConnection,
  cec2024,
  compareSupplies,
  compressorProtection,
  iec60364,
  type Load,
  largestDeviceOnConductor,
  minimumConductor,
  nameplateFromParts,
  nec2020,
  nec2023,
} from "hvac-install-math/circuit-protection";
import { ampere, ft, kW, m, percent, volt, watt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { codes } from "./fixtures.ts";

const compressor: Load = { kind: "compressor", current: ampere(17.6) };
const fan: Load = { kind: "motor", current: ampere(1.5) };

describe("the nameplate from the parts", () => {
  it("counts several alike, and small motors but not small other loads", () => {
    const loads: Load[] = [
      compressor,
      { ...fan, current: ampere(0.4), count: 2 },
      { kind: "other", current: ampere(0.9) },
      { kind: "other", current: ampere(1) },
    ];
    expect(nameplateFromParts(loads).minimumCircuitAmpacity.in(ampere)).toBe(23.8);
  });

  it("takes the selection current for the rated-load current", () => {
    const loads = [{ ...compressor, branchCircuitSelectionCurrent: ampere(20) }];
    expect(nameplateFromParts(loads).minimumCircuitAmpacity.in(ampere)).toBe(25);
  });

  it("keeps loads apart that never run together, and shows each mode", () => {
    const result = nameplateFromParts([
      { ...compressor, runsIn: ["cooling", "heating"] },
      { kind: "heater", current: ampere(20), runsIn: ["emergency heating"] },
      { ...fan, current: ampere(4) },
    ]);
    expect(result.modes.map(({ mode }) => mode)).toEqual([
      "cooling",
      "heating",
      "emergency heating",
    ]);
    expect(result.modes.map((mode) => mode.minimumCircuitAmpacity.in(ampere))).toEqual([
      26, 26, 30,
    ]);
    expect(result.minimumCircuitAmpacity.in(ampere)).toBe(30);
    expect(result.disconnectRating.in(ampere)).toBeCloseTo(1.15 * 24, 9);
    expect(codes(result.assumptions)).toEqual(["heater-below-50-kw"]);
    expect(codes(result.cautions)).toContain("calculated-not-marked");
  });

  it("counts heaters from 50 kW once, below with 125 %", () => {
    const heater = (power: number): Load => ({
      kind: "heater",
      current: ampere(120),
      power: kW(power),
    });
    const ampacity = (power: number) =>
      nameplateFromParts([heater(power), fan]).minimumCircuitAmpacity.in(ampere);
    expect(ampacity(49.9)).toBeCloseTo(1.25 * 121.5, 9);
    expect(ampacity(50)).toBeCloseTo(1.25 * 1.5 + 120, 9);
  });

  it("says how the size was come by", () => {
    const steps = (loads: Load[]) => codes(nameplateFromParts(loads).modes[0]?.steps ?? []);
    expect(steps([compressor, fan])).toEqual(["next-size-down"]);
    expect(
      steps([
        { kind: "heater", current: ampere(40) },
        { kind: "motor", current: ampere(3) },
      ]),
    ).toEqual(["next-size-down", "heater-needs-more", "ampacity-needs-more"]);
    expect(steps([{ kind: "compressor", current: ampere(4) }])).toEqual([
      "next-size-down",
      "smallest-rating",
    ]);
    expect(steps([{ kind: "compressor", current: ampere(20) }])).toEqual([]); // 45 A exactly
  });
});

describe("a nameplate against its parts", () => {
  const check = (mca: number, mop: number) =>
    assessNameplate({
      loads: [compressor, fan],
      minimumCircuitAmpacity: ampere(mca),
      maximumOvercurrentProtection: ampere(mop),
    });

  it("fits within its rounding, with any smaller protection", () => {
    expect(check(23.5, 40).outcome).toBe("pass");
    expect(check(23.54, 25).outcome).toBe("pass");
    expect(check(24, 40).outcome).toBe("pass"); // printed in whole amperes
  });

  it("does not fit with less ampacity or more protection, and is open with more ampacity", () => {
    expect(check(22.9, 40).cause).toBe("ampacity-too-low");
    expect(check(23.5, 45).cause).toBe("protection-too-high");
    expect(check(26.2, 40).outcome).toBe("inconclusive");
  });

  it("below its own ampacity is an error", () => {
    expect(() => check(23.5, 20)).toThrow(/maximum-below-ampacity/);
  });
});

describe("compressor protection by the code", () => {
  it("takes the locked-rotor current in Canada, marked or six times", () => {
    const marked = { ...compressor, current: ampere(20), lockedRotorCurrent: ampere(96) };
    const canada = compressorProtection({ rules: cec2024, loads: [marked, fan] });
    expect(canada.normal.calculated.in(ampere)).toBe(49.5); // 48 + 1.5
    expect(canada.normal.rating.in(ampere)).toBe(45);
    expect(canada.ifItWillNotStart?.calculated.in(ampere)).toBeCloseTo(63.9, 9); // 0.65 × 96 + 1.5
    expect(canada.ifItWillNotStart?.rating.in(ampere)).toBe(60);
  });

  it("is never below 15 A", () => {
    const small = compressorProtection({
      rules: nec2023,
      loads: [{ ...compressor, current: ampere(4) }],
    });
    expect(small.normal.calculated.in(ampere)).toBe(7);
    expect(small.normal.rating.in(ampere)).toBe(15);
  });

  it("stays on the safe side where the compressor is not the largest load", () => {
    const motor = compressorProtection({
      rules: nec2023,
      loads: [compressor, { kind: "motor", current: ampere(20) }],
    });
    expect(motor.ifItWillNotStart?.calculated.in(ampere)).toBe(1.75 * 20 + 17.6);
    const heater = compressorProtection({
      rules: nec2023,
      loads: [compressor, { kind: "heater", current: ampere(33) }],
    });
    expect(heater.normal.calculated.in(ampere)).toBe(52.6); // 17.6 + 35
  });

  it("knows no such rule under the international rules, nor without a compressor", () => {
    expect(() => compressorProtection({ rules: iec60364, loads: [compressor] })).toThrow(/rules/);
    expect(() => compressorProtection({ rules: nec2023, loads: [fan] })).toThrow(/add-compressor/);
  });
});

describe("the supply", () => {
  const connect = (
    volts: number,
    phases: 1 | 3,
    rules: Parameters<typeof breakerConnection>[0]["rules"] = nec2023,
  ) => breakerConnection({ rules, supply: { voltage: volt(volts), phases } });

  it("decides poles and marking", () => {
    expect(connect(115, 1)).toMatchObject({
      poles: 1,
      system: "120/240 V",
      voltageRating: "120 V",
    });
    expect(connect(230, 1)).toMatchObject({ poles: 2, system: "120/240 V" });
    expect(connect(208, 1)).toMatchObject({ poles: 2, system: "208Y/120 V" });
    expect(connect(277, 1)).toMatchObject({
      poles: 1,
      system: "480Y/277 V",
      voltageRating: "277 V",
    });
    expect(connect(600, 3)).toMatchObject({ poles: 3, voltageRating: "600 V" });
    expect(connect(230, 1, iec60364)).toMatchObject({ poles: 1, voltageRating: "230 V" });
    expect(connect(400, 3, iec60364)).toMatchObject({ poles: 3, voltageRating: "230/400 V" });
  });

  it("is taken as the stricter one where two fit", () => {
    expect(connect(240, 3)).toMatchObject({ system: "240 V delta", voltageRating: "240 V" });
    expect(connect(480, 3)).toMatchObject({ system: "480 V delta", voltageRating: "480 V" });
  });

  it("that no service gives is an error with the choices", () => {
    expect(() => connect(160, 1)).toThrow(/within 10 %/);
    expect(() => connect(240, 1, iec60364)).not.toThrow();
    expect(() => connect(120, 1, iec60364)).toThrow(/230\/400 V/);
    const supply = { voltage: volt(240), phases: 1, system: "208Y/120 V" } as const;
    expect(() => breakerConnection({ rules: nec2020, supply })).toThrow(/208Y\/120 V gives/);
  });
});

describe("supplies side by side", () => {
  it("halve the current at twice the voltage and quarter the drop on the same wire", () => {
    const [low, high] = compareSupplies({
      rules: nec2023,
      power: watt(2400),
      powerFactor: 0.8,
      supplies: [
        { voltage: volt(120), phases: 1 },
        { voltage: volt(240), phases: 1 },
      ],
      wiring: { material: "copper", insulation: "75 °C", length: ft(80) },
      conductor: "10 AWG",
    });
    expect(low?.current.in(ampere)).toBe(25);
    expect(low?.ampacity.in(ampere)).toBe(31.25);
    expect(low?.conductor?.size).toBe("8 AWG");
    expect(high?.conductor?.size).toBe("12 AWG"); // 15.6 A by the 60 °C column
    const ratio = (option: typeof low) => option?.dropWithSameConductor?.ratio.in(percent) ?? 0;
    expect(ratio(low) / ratio(high)).toBeCloseTo(4, 9);
    expect(low?.connection.poles).toBe(1);
  });

  it("divide by √3 for three phases and work without a length", () => {
    const [three] = compareSupplies({
      rules: iec60364,
      power: kW(9),
      supplies: [{ voltage: volt(400), phases: 3 }],
      wiring: { material: "copper", insulation: "70 °C", method: "C" },
    });
    expect(three?.current.in(ampere)).toBeCloseTo(12.99, 2);
    expect(three?.conductor?.size).toBe("1.5 mm²"); // 13 A breaker, 17.5 A
    expect(three?.drop).toBeUndefined();
  });

  it("need at least one supply", () => {
    expect(() =>
      compareSupplies({
        rules: iec60364,
        power: kW(9),
        supplies: [],
        wiring: { material: "copper", insulation: "70 °C", method: "C", length: m(3) },
      }),
    ).toThrow(/^supplies.length: 0 is not/);
  });
});

describe("general circuits", () => {
  it("follow the next size up and the small conductors' limits", () => {
    const limit = (size: "12 AWG" | "4 AWG", amperes: number) =>
      largestDeviceOnConductor({
        rules: nec2023,
        size,
        material: "copper",
        usable: ampere(amperes),
      }).in(ampere);
    expect(limit("12 AWG", 25)).toBe(20); // 240.4(D)
    expect(limit("4 AWG", 85)).toBe(90); // 240.4(B)
    expect(limit("4 AWG", 801)).toBe(800); // above 800 A: down
  });

  it("get a conductor that the device protects", () => {
    const demand = {
      rules: nec2023,
      wiring: { material: "copper", insulation: "75 °C", terminations: "75 °C" },
      phases: 1,
      ampacity: ampere(18),
      deviceRating: ampere(40),
    } as const;
    expect(minimumConductor(demand).size).toBe("14 AWG");
    expect(minimumConductor({ ...demand, equipment: "other" }).size).toBe("8 AWG");
  });
});
