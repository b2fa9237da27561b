import * as module from "hvac-install-math/circuit-protection";
import {
  ampere,
  degC,
  ft,
  isInvalidInputError,
  ohmPerKft,
  percent,
  volt,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { condenser } from "./fixtures.ts";

const { circuitFromNameplate, nec2023, iec60364 } = module;

/** The error of a call that JavaScript allows; its argument and name. */
function errorOf(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    return isInvalidInputError(error) ? `${error.name} ${error.argument}` : `not ours: ${error}`;
  }
  return "no error";
}

const circuit = (changes: object) => () =>
  circuitFromNameplate({ ...condenser, ...changes } as typeof condenser);
const wired = (changes: object) => circuit({ wiring: { ...condenser.wiring, ...changes } });
const fitted = (part: string, changes: object) =>
  circuit({
    installed: {
      ...condenser.installed,
      [part]: { ...(condenser.installed as Record<string, object>)[part], ...changes },
    },
  });

describe("a plate that cannot be", () => {
  it("has its maximum below its minimum: MOP below MCA", () => {
    expect(circuit({ maximumOvercurrentProtection: ampere(20) })).toThrow(
      "maximumOvercurrentProtection: 20 A is not allowed; allowed: at least 23.5 A (circuit-protection.maximum-below-ampacity)",
    );
  });

  it("has a maximum below any fuse", () => {
    const tiny = { minimumCircuitAmpacity: ampere(0.2), ratedLoadCurrent: ampere(0.2) };
    expect(errorOf(circuit({ ...tiny, maximumOvercurrentProtection: ampere(0.5) }))).toBe(
      "OutOfRangeError maximumOvercurrentProtection",
    );
  });
});

describe("input from JavaScript", () => {
  it.each<[string, () => unknown, string]>([
    ["nothing at all", () => circuitFromNameplate(undefined as never), "input"],
    ["no rules", circuit({ rules: undefined }), "rules"],
    ["rules that are not", circuit({ rules: {} }), "rules"],
    ["zero ampacity", circuit({ minimumCircuitAmpacity: ampere(0) }), "minimumCircuitAmpacity"],
    [
      "negative ampacity",
      circuit({ minimumCircuitAmpacity: ampere(-1) }),
      "minimumCircuitAmpacity",
    ],
    ["missing ampacity", circuit({ minimumCircuitAmpacity: undefined }), "minimumCircuitAmpacity"],
    ["a bare number", circuit({ minimumCircuitAmpacity: 23.5 }), "minimumCircuitAmpacity"],
    ["volts for amperes", circuit({ minimumCircuitAmpacity: volt(23) }), "minimumCircuitAmpacity"],
    [
      "missing maximum",
      circuit({ maximumOvercurrentProtection: null }),
      "maximumOvercurrentProtection",
    ],
    ["an unknown wording", circuit({ protectionMarking: "breaker" }), "protectionMarking"],
    ["an unknown equipment", circuit({ equipment: "heat" }), "equipment"],
    ["more load than ampacity", circuit({ ratedLoadCurrent: ampere(30) }), "ratedLoadCurrent"],
    ["a start of 0 A", circuit({ lockedRotorCurrent: ampere(0) }), "lockedRotorCurrent"],
    ["a start of NaN", circuit({ lockedRotorCurrent: Number.NaN }), "lockedRotorCurrent"],
    ["a place in words", fitted("disconnect", { visible: "no" }), "installed.disconnect.visible"],
    ["a power factor above 1", circuit({ powerFactor: 1.1 }), "powerFactor"],
    ["no supply", circuit({ supply: undefined }), "supply.voltage"],
    ["two phases", circuit({ supply: { voltage: volt(240), phases: 2 } }), "supply.phases"],
    ["an odd voltage", circuit({ supply: { voltage: volt(160), phases: 1 } }), "supply.voltage"],
    [
      "an unknown service",
      circuit({ supply: { voltage: volt(240), phases: 1, system: "x" } }),
      "supply.system",
    ],
    ["no wiring", circuit({ wiring: undefined }), "wiring"],
    ["brass wire", wired({ material: "brass" }), "wiring.material"],
    ["another insulation", wired({ insulation: "70 °C" }), "wiring.insulation"],
    ["other terminations", wired({ terminations: "90 °C" }), "wiring.terminations"],
    ["another cable", wired({ cable: "BX" }), "wiring.cable"],
    ["a temperature difference", wired({ ambient: ft(3) }), "wiring.ambient"],
    [
      "half a conductor",
      wired({ currentCarryingConductors: 2.5 }),
      "wiring.currentCarryingConductors",
    ],
    ["no conductor", wired({ currentCarryingConductors: 0 }), "wiring.currentCarryingConductors"],
    ["a length of 0", wired({ length: ft(0) }), "wiring.length"],
    ["a cable below the roof", wired({ aboveRoof: ft(-1) }), "wiring.aboveRoof"],
    ["five poles", fitted("device", { poles: 5 }), "installed.device.poles"],
    ["no poles", fitted("device", { poles: 0 }), "installed.device.poles"],
    ["a rating of 0", fitted("device", { rating: ampere(0) }), "installed.device.rating"],
    ["a device without rating", circuit({ installed: { device: {} } }), "installed.device.rating"],
    ["a device of another kind", fitted("device", { kind: "relay" }), "installed.device.kind"],
    [
      "another marking",
      fitted("device", { voltageRating: "230 V" }),
      "installed.device.voltageRating",
    ],
    ["a metric conductor", circuit({ installed: { conductor: "4 mm²" } }), "installed.conductor"],
    [
      "a grounding wire of no size",
      circuit({ installed: { equipmentGrounding: "x" } }),
      "installed.equipmentGrounding",
    ],
    [
      "a disconnect of 0 A",
      fitted("disconnect", { rating: ampere(0) }),
      "installed.disconnect.rating",
    ],
    ["fuses of 0 A", fitted("disconnect", { fuse: ampere(0) }), "installed.disconnect.fuse"],
    [
      "a distance below 0",
      fitted("disconnect", { distance: ft(-1) }),
      "installed.disconnect.distance",
    ],
    [
      "working space without depth",
      fitted("disconnect", { workingSpace: {} }),
      "installed.disconnect.workingSpace.depth",
    ],
    [
      "a fourth condition",
      fitted("disconnect", { workingSpace: { condition: 4 } }),
      "installed.disconnect.workingSpace.condition",
    ],
  ])("is named: %s", (_, call, argument) => {
    expect(errorOf(call)).toBe(`InvalidInputError ${argument}`);
  });

  it("beyond the tables is out of range", () => {
    expect(errorOf(wired({ ambient: degC(90) }))).toBe("OutOfRangeError wiring.ambient");
    expect(errorOf(wired({ insulation: "60 °C", terminations: "60 °C", ambient: degC(56) }))).toBe(
      "OutOfRangeError wiring.ambient",
    );
    const big = {
      minimumCircuitAmpacity: ampere(400),
      maximumOvercurrentProtection: ampere(600),
      installed: {},
    };
    expect(errorOf(circuit(big))).toBe("OutOfRangeError minimumCircuitAmpacity");
    expect(errorOf(wired({ length: ft(20_000) }))).toBe("OutOfRangeError length");
  });
});

describe("the other functions", () => {
  const compressor = { kind: "compressor", current: ampere(20) };
  it.each<[string, (m: typeof module) => unknown, string]>([
    ["no loads", (m) => m.minimumCircuitAmpacity([]), "loads.length"],
    ["loads that are no list", (m) => m.minimumCircuitAmpacity(undefined as never), "loads"],
    ["an empty load", (m) => m.minimumCircuitAmpacity([undefined as never]), "loads[0].kind"],
    [
      "a load without current",
      (m) => m.maximumOvercurrentProtection([{ kind: "motor" } as never]),
      "loads[0].current",
    ],
    [
      "a load of 0 A",
      (m) => m.minimumCircuitAmpacity([{ kind: "motor", current: ampere(0) }]),
      "loads[0].current",
    ],
    [
      "a mode that is none",
      (m) => m.minimumCircuitAmpacity([{ ...compressor, runsIn: ["summer"] } as never]),
      "loads[0].runsIn",
    ],
    [
      "modes that are no list",
      (m) => m.minimumCircuitAmpacity([{ ...compressor, runsIn: 3 } as never]),
      "loads[0].runsIn",
    ],
    [
      "no mode",
      (m) => m.minimumCircuitAmpacity([{ ...compressor, runsIn: [] } as never]),
      "loads[0].runsIn",
    ],
    [
      "half a load",
      (m) => m.minimumCircuitAmpacity([{ ...compressor, count: 0.5 } as never]),
      "loads[0].count",
    ],
    [
      "a selection current below the rated-load current",
      (m) =>
        m.minimumCircuitAmpacity([
          { ...compressor, branchCircuitSelectionCurrent: ampere(19) } as never,
        ]),
      "loads[0].branchCircuitSelectionCurrent",
    ],
    [
      "a size of another family",
      (m) =>
        m.usableAmpacity({
          rules: nec2023,
          size: "4 mm²",
          wiring: condenser.wiring,
          phases: 1,
        } as never),
      "size",
    ],
    [
      "aluminum of 14 AWG",
      (m) =>
        m.usableAmpacity({
          rules: nec2023,
          size: "14 AWG",
          wiring: { ...condenser.wiring, material: "aluminum" },
          phases: 1,
        }),
      "size",
    ],
    [
      "an unknown method",
      (m) =>
        m.usableAmpacity({
          rules: iec60364,
          size: "4 mm²",
          wiring: { material: "copper", insulation: "70 °C", method: "Z" },
          phases: 1,
        } as never),
      "wiring.method",
    ],
    [
      "no such resistance",
      (m) => m.conductorResistance({ rules: iec60364, size: "4 mm²", material: "aluminum" }),
      "size",
    ],
    [
      "no such impedance",
      (m) =>
        m.conduitImpedance({ rules: iec60364, size: "4 mm²", material: "copper", conduit: "PVC" }),
      "rules",
    ],
    ["no curves", (m) => m.tripBand({ rules: nec2023, rating: ampere(16), curve: "C" }), "rules"],
    [
      "an unknown curve",
      (m) => m.tripBand({ rules: iec60364, rating: ampere(16), curve: "K" as never }),
      "curve",
    ],
    [
      "no length",
      (m) =>
        m.voltageDrop({
          current: ampere(1),
          voltage: volt(240),
          phases: 1,
          resistance: ohmPerKft(1),
        } as never),
      "length",
    ],
    [
      "a limit of 100 %",
      (m) =>
        m.longestRun({
          current: ampere(1),
          voltage: volt(240),
          phases: 1,
          resistance: ohmPerKft(1),
          limit: percent(100),
        }),
      "limit",
    ],
    [
      "no power",
      (m) => m.compareSupplies({ rules: nec2023, supplies: [], wiring: condenser.wiring } as never),
      "power",
    ],
    [
      "no usable ampacity",
      (m) =>
        m.largestDeviceOnConductor({
          rules: nec2023,
          size: "4 AWG",
          material: "copper",
          usable: ampere(0),
        }),
      "usable",
    ],
  ])("name the argument: %s", (_, call, argument) => {
    expect(errorOf(() => call(module))).toBe(`InvalidInputError ${argument}`);
  });

  it("are out of range above 800 A and beyond the grounding table", () => {
    expect(
      errorOf(() => module.minimumCircuitAmpacity([{ kind: "heater", current: ampere(700) }])),
    ).toBe("OutOfRangeError loads");
    expect(
      errorOf(() =>
        module.equipmentGrounding({
          rules: nec2023,
          material: "copper",
          deviceRating: ampere(900),
          minimumConductor: "1 AWG",
        }),
      ),
    ).toBe("OutOfRangeError deviceRating");
  });

  it.each<[string, (input: never) => unknown]>([
    ["assessNameplate", module.assessNameplate],
    ["breakerConnection", module.breakerConnection],
    ["circuitFromNameplate", module.circuitFromNameplate],
    ["compareSupplies", module.compareSupplies],
    ["compressorProtection", module.compressorProtection],
    ["conductorResistance", module.conductorResistance],
    ["conduitImpedance", module.conduitImpedance],
    ["equipmentGrounding", module.equipmentGrounding],
    ["largestDeviceOnConductor", module.largestDeviceOnConductor],
    ["longestRun", module.longestRun],
    ["minimumConductor", module.minimumConductor],
    ["tripBand", module.tripBand],
    ["usableAmpacity", module.usableAmpacity],
    ["voltageDrop", module.voltageDrop],
  ])("name the input, never a TypeError: %s", (_, call) => {
    for (const nothing of [undefined, null, [], "x"]) {
      expect(errorOf(() => call(nothing as never))).toBe("InvalidInputError input");
    }
    expect(errorOf(() => call({} as never))).toMatch(/^InvalidInputError \w/);
  });

  it("name a count that no unit has", () => {
    const motors = [{ kind: "motor", current: ampere(1), count: 1e10 }] as const;
    expect(errorOf(() => module.nameplateFromParts(motors))).toBe(
      "InvalidInputError loads[0].count",
    );
  });
});
