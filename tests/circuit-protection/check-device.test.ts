// The fitted breaker or fuses against plate and service, one requirement at a time. Figures: NFPA 70 (2023), 240.6(A),
// 240.15(B), 240.85, 440.22(C); IEC 60898-1:2015, table 2.
import {
  circuitFromNameplate,
  type FittedDevice,
  type FittedDisconnect,
  iec60364,
  nec2020,
  type ProtectionMarking,
  type TripCurve,
} from "hvac-install-math/circuit-protection";
import { ampere, volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { codes, condenser, fitted, sentences, withChanges } from "./fixtures.ts";

const device = condenser.installed?.device as FittedDevice;
const disconnect = condenser.installed?.disconnect as FittedDisconnect;

describe("the rating", () => {
  it("may be the marked maximum and no more, and the sentence names both", () => {
    const said = (rating: number) =>
      sentences(fitted({ device: { ...device, rating: ampere(rating) } }).reasons);
    expect(said(40)).toContain("The breaker is 40 A: within the nameplate maximum of 40 A.");
    expect(said(45)).toContain("The breaker is too large: 45 A, nameplate maximum 40 A.");
  });

  it("is the fuses' where they keep the maximum behind a larger breaker, and the breaker's elsewhere", () => {
    const behind = (breaker: number, fuse: number) =>
      sentences(
        fitted({
          device: { ...device, rating: ampere(breaker) },
          disconnect: { ...disconnect, fuse: ampere(fuse) },
          conductor: "4 AWG",
        }).reasons,
      );
    expect(behind(60, 40)).toContain("The fuse is 40 A: within the nameplate maximum of 40 A.");
    expect(behind(60, 45)).toContain("The breaker is too large: 60 A, nameplate maximum 40 A.");
    expect(behind(40, 35)).toContain("The fuse is 40 A: within the nameplate maximum of 40 A.");
  });

  it("above the maximum sizes nothing: conductor and grounding go by what the plate permits", () => {
    const circuit = fitted({ device: { ...device, rating: ampere(110) } });
    expect(circuit.conductor?.size).toBe("12 AWG"); // 25 A at 75 °C; by 240.4(G) also behind 40 A
    expect(circuit.equipmentGrounding?.tableSize).toBe("10 AWG"); // 40 A; 110 A would ask for 6 AWG
    const wrongFuses = { ...disconnect, fuse: ampere(45) };
    const fused = fitted({ device: { ...device, rating: ampere(110) }, disconnect: wrongFuses });
    expect(fused.equipmentGrounding?.tableSize).toBe("10 AWG");
    const rightFuses = { ...disconnect, fuse: ampere(40) };
    const fed = fitted({ device: { ...device, rating: ampere(110) }, disconnect: rightFuses });
    expect(fed.equipmentGrounding?.tableSize).toBe("6 AWG"); // the breaker stays, and feeds fuses
  });

  it("below what runs together fails, below the ampacity is asked about; one of no standard size is told", () => {
    const judged = (changes: Partial<FittedDevice>, rules = nec2020) =>
      withChanges({
        rules,
        installed: { device: { ...device, ...changes }, conductor: "10 AWG" },
      });
    const cautions = (changes: Partial<FittedDevice>, rules = nec2020) =>
      codes(judged(changes, rules).cautions);
    expect(judged({ rating: ampere(25) }).outcome).toBe("pass");
    expect(cautions({ rating: ampere(25) })).not.toContain("device-not-standard");
    const small = judged({ rating: ampere(20) }); // 19.1 A run together, 23.5 A is marked
    expect(small.outcome).toBe("inconclusive");
    expect(codes(small.reasons)).toContain("device-below-ampacity");
    expect(sentences(small.actions ?? [])).toEqual([
      "Install a breaker or fuses from 25 A to 40 A.",
    ]);
    expect(judged({ rating: ampere(15) }).cause).toBe("device-rating");
    // 10 A is a standard fuse in every edition and a standard breaker only from 2023 on.
    expect(cautions({ rating: ampere(10), kind: "fuse" })).not.toContain("device-not-standard");
    expect(cautions({ rating: ampere(10) })).toContain("device-not-standard");
    const circuit = withChanges({
      minimumCircuitAmpacity: ampere(25),
      installed: { device: { ...device, rating: ampere(25) }, conductor: "10 AWG" },
    });
    expect(codes(circuit.reasons)).not.toContain("device-below-ampacity");
  });

  it("is not missed in the result where a device is fitted in an empty window of standard sizes", () => {
    const window = {
      minimumCircuitAmpacity: ampere(26),
      maximumOvercurrentProtection: ampere(28),
      ratedLoadCurrent: ampere(22),
    };
    const installed = { device: { ...device, rating: ampere(28) }, conductor: "10 AWG" } as const;
    expect(codes(withChanges({ ...window, installed }).reasons)).not.toContain(
      "device-below-ampacity",
    );
  });
});

describe("the kind", () => {
  const judged = (protectionMarking: ProtectionMarking, kind: FittedDevice["kind"]) =>
    withChanges({
      protectionMarking,
      installed: { ...condenser.installed, device: { ...device, kind } },
    });

  it("is a fuse where the plate says fuse only, and either elsewhere", () => {
    expect(judged("fuse only", "breaker").cause).toBe("device-kind");
    expect(judged("fuse only", "fuse").outcome).toBe("pass");
    expect(judged("fuse or breaker", "breaker").outcome).toBe("pass");
    expect(judged("max overcurrent protection", "fuse").outcome).toBe("pass");
    expect(sentences(judged("fuse only", "breaker").reasons)).toContain(
      "The nameplate allows fuses only. A breaker alone is not enough.",
    );
  });

  it("is a fuse where the disconnect holds fuses that keep the maximum, and not where they do not", () => {
    const behind = (fuse: number) =>
      withChanges({
        protectionMarking: "fuse only",
        installed: { ...condenser.installed, disconnect: { ...disconnect, fuse: ampere(fuse) } },
      });
    expect(sentences(behind(35).reasons)).toContain("The nameplate allows a fuse.");
    expect(codes(behind(45).reasons)).toContain("fuse-required");
  });

  it("leaves a non-fused disconnect only where fuses stand ahead of it, else the switch takes them", () => {
    const { disconnect: needed } = judged("fuse only", "breaker");
    expect(needed.nonFusedAllowed).toBe(false);
    expect(String(needed.madeSize)).toBe("60 A"); // for 40 A fuses, though 1.15 × 19.1 A is below 30 A
    expect(judged("fuse only", "fuse").disconnect.nonFusedAllowed).toBe(true);
    expect(String(judged("fuse only", "fuse").disconnect.madeSize)).toBe("30 A");
    const fused = fitted({ disconnect: { ...disconnect, fuse: ampere(35) } });
    expect(String(fused.disconnect.madeSize)).toBe("60 A");
  });

  it("brings the caution of a missing HACR mark only for a breaker said to have none where the plate asks", () => {
    const marked = (protectionMarking: ProtectionMarking, changes: Partial<FittedDevice>) => {
      const installed = { ...condenser.installed, device: { ...device, ...changes } };
      return codes(withChanges({ protectionMarking, installed }).cautions).includes("hacr-mark");
    };
    const { hacr: _, ...silent } = device;
    expect(marked("fuse or HACR breaker", { hacr: false })).toBe(true);
    expect(marked("fuse or HACR breaker", { hacr: true })).toBe(false);
    expect(codes(fitted({ device: silent }).cautions)).not.toContain("hacr-mark");
    expect(marked("fuse or HACR breaker", { hacr: false, kind: "fuse" })).toBe(false);
    expect(marked("fuse or breaker", { hacr: false })).toBe(false);
  });
});

describe("poles and marking", () => {
  it("are judged each by itself; poles are asked for, the lowest marking made for two lines is assumed", () => {
    const { poles: _, voltageRating: __, ...bare } = device;
    const both = fitted({ device: bare });
    expect(both.outcome).toBe("inconclusive");
    expect(codes(both.reasons)[0]).toBe("poles-not-stated");
    expect(codes(both.reasons)).not.toContain("voltage-marking-met");
    expect(codes(both.assumptions)).toContain("voltage-marking-assumed");
    expect(fitted({ device: { ...bare, poles: 2 } }).outcome).toBe("pass");
    const marked = fitted({ device: { ...bare, voltageRating: "120/240 V" } });
    expect(codes(marked.reasons)).toContain("poles-not-stated");
    expect(codes(withChanges({ installed: {} }).assumptions)).not.toContain(
      "voltage-marking-assumed",
    );
  });

  it("have their marking asked for where the service does not take every one", () => {
    const { voltageRating: _, ...unmarked } = device;
    const supply = { voltage: volt(240), phases: 3, system: "240 V delta" } as const;
    const circuit = withChanges({
      supply,
      installed: { device: { ...unmarked, poles: 3 }, conductor: "10 AWG" },
    });
    expect(circuit.outcome).toBe("inconclusive");
    expect(codes(circuit.reasons)).toContain("voltage-marking-not-stated");
  });

  it("are told with what the service needs", () => {
    const said = sentences(
      fitted({ device: { ...device, poles: 1, voltageRating: "120 V" } }).reasons,
    );
    expect(said).toContain("Too few poles. Installed: 1; required: 2.");
    expect(said).toContain("The voltage marking 120 V is too low: 120/240 V requires 120/240 V.");
  });

  it("need both figures of the marking: to ground and between the conductors", () => {
    const judged = (voltageRating: NonNullable<FittedDevice["voltageRating"]>) =>
      withChanges({
        supply: { voltage: volt(480), phases: 3, system: "480Y/277 V" },
        installed: {
          device: { ...device, poles: 3, voltageRating },
          conductor: "10 AWG",
        },
      }).cause;
    expect(judged("277 V")).toBe("device-voltage"); // 277 V to ground will do, 277 V between will not
    expect(judged("240 V")).toBe("device-voltage");
    expect(judged("480Y/277 V")).toBeUndefined();
    expect(judged("480 V")).toBeUndefined();
  });
});

describe("the curve of a miniature breaker", () => {
  const cautions = (curve: TripCurve | undefined, start?: number) =>
    codes(
      circuitFromNameplate({
        rules: iec60364,
        minimumCircuitAmpacity: ampere(14),
        maximumOvercurrentProtection: ampere(25),
        supply: { voltage: volt(230), phases: 1 },
        wiring: { material: "copper", insulation: "70 °C", method: "C" },
        ...(start && { lockedRotorCurrent: ampere(start) }),
        installed: {
          device: { kind: "breaker", rating: ampere(16), ...(curve && { curve }) },
          conductor: "2.5 mm²",
        },
      }).cautions,
    );

  it("B is no curve for a compressor, C and D are", () => {
    expect(cautions("B")).toContain("curve");
    expect(cautions("C")).not.toContain("curve");
    expect(cautions("D")).not.toContain("curve");
    expect(cautions(undefined)).not.toContain("curve");
  });

  it("may trip at a start above its lower instantaneous current, 5 × 16 A for C", () => {
    expect(cautions("C", 80)).not.toContain("start-may-trip");
    expect(cautions("C", 80.1)).toContain("start-may-trip");
    expect(cautions("D", 160)).not.toContain("start-may-trip");
    expect(cautions("C")).not.toContain("start-may-trip");
    expect(cautions(undefined, 500)).not.toContain("start-may-trip");
  });

  it("means nothing under rules without curves", () => {
    const circuit = fitted({ device: { ...device, curve: "B" } });
    expect(codes(circuit.cautions)).not.toContain("curve");
    expect(circuit.outcome).toBe("pass");
  });
});
