// What a plate, a manual or a certificate fixes is stated once: a job types the rest.
import {
  completeRecord,
  type InstallationRecord,
  assessInstallation as judge,
  recordText,
} from "hvac-install-math/commissioning";
import { ft, hour, isQuantity, m, oz, ozPerFt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { rules } from "./assess.ts";
import { heronCabin } from "./twelve.ts";

const { equipment = {}, instruments = {}, ...job } = heronCabin;
const onFile = { equipment: { "invented 12k": equipment }, instruments: { "bag 1": instruments } };
const record: InstallationRecord = {
  ...job,
  onFile: { equipment: "invented 12k", instruments: "bag 1" },
  runs: (job.runs ?? []).map(({ indoorUnits: _, joints = [], ...run }) => ({
    ...run,
    indoorUnits: [{ model: "invented head" }],
    joints: joints.map(({ kind: __, ...joint }) => joint), // its torque says that it is a flare
  })),
};

/** How many fields were typed, without the readings that an instrument delivers. */
function typed(value: unknown): number {
  if (typeof value !== "object" || value === null || isQuantity(value)) return 1;
  return Object.entries(value)
    .filter(([key]) => key !== "readings")
    .reduce((sum, [, own]) => sum + typed(own), 0);
}

describe("a single split whose plates and instruments are on file", () => {
  it("passes with at most 80 typed fields beside its readings", () => {
    const result = judge(record, { rules, onFile });
    expect(result.outcome).toBe("pass");
    expect(typed(record)).toBeLessThanOrEqual(80);
  });

  it("stands by itself once it is completed, with the same verdict", () => {
    const whole = completeRecord(record, onFile);
    expect(whole.onFile).toBeUndefined();
    expect(judge(whole, { rules })).toEqual(judge(record, { rules, onFile }));
  });

  it("goes by what it states itself before what is on file", () => {
    const own = { ...record, equipment: { factoryCharge: oz(22) } };
    const { factoryCharge, refrigerant } = completeRecord(own, onFile).equipment ?? {};
    expect([String(factoryCharge), refrigerant]).toEqual(["22 oz", "R-32"]);
  });

  it("is refused where a name is not on file", () => {
    expect(() => judge(record, { rules })).toThrow(/record\.onFile\.equipment/);
    const inherited = { ...record, onFile: { instruments: "constructor" } };
    expect(() => completeRecord(inherited, onFile)).toThrow(/record\.onFile\.instruments/);
  });
});

describe("what is on file", () => {
  const named: InstallationRecord = { version: 2, onFile: { equipment: "a", instruments: "b" } };
  const files = {
    equipment: {
      a: {
        outdoorUnit: { model: "invented" },
        manual: { testHold: hour(24), chargeRate: ozPerFt(1) },
      },
    },
    instruments: { b: { level: { serialNumber: "1" }, tape: { serialNumber: "2" } } },
  };

  it("is joined, part by part, with what the record states of its unit, its manual and its bag", () => {
    const own = {
      ...named,
      equipment: { outdoorUnit: { serialNumber: "INV-1" }, manual: { testHold: hour(12) } },
      instruments: { tape: { serialNumber: "3" } },
    };
    expect(completeRecord(own, files)).toEqual({
      version: 2,
      equipment: {
        outdoorUnit: { model: "invented", serialNumber: "INV-1" },
        manual: { testHold: hour(12), chargeRate: ozPerFt(1) },
      },
      instruments: { level: { serialNumber: "1" }, tape: { serialNumber: "3" } },
    });
  });

  it("makes no unit and no manual where neither says anything of them", () => {
    const bare = { equipment: { a: { refrigerant: "R-32" } }, instruments: { b: {} } };
    expect(completeRecord(named, bare)).toEqual({
      version: 2,
      equipment: { refrigerant: "R-32" },
      instruments: {},
    });
  });

  it("is not asked for by a record that names nothing on file", () => {
    const { onFile: _, ...alone } = named;
    expect(completeRecord(alone, files)).toEqual({ version: 2 });
    expect(completeRecord({ ...alone, onFile: {} }, files)).toEqual({
      version: 2,
      equipment: {},
      instruments: {},
    });
  });
});

describe("the text of a record", () => {
  it("is the same whatever the order in which its fields were set", () => {
    const turned = Object.fromEntries(Object.entries(heronCabin).reverse()) as never;
    expect(recordText(turned)).toBe(recordText(heronCabin));
    expect(JSON.parse(recordText(heronCabin)).version).toBe(2);
    expect(recordText({ version: 2, name: undefined })).toBe('{"version":2}');
  });

  it("changes with any figure, unit or word, and with the history", () => {
    const texts = [
      { version: 2, runs: [{ tubing: { length: ft(36) } }] },
      { version: 2, runs: [{ tubing: { length: m(10.9728) } }] },
      { version: 2, runs: [{ tubing: { length: ft(36), bends: 1 } }] },
      {
        version: 2,
        runs: [{ tubing: { length: ft(36) } }],
        history: [{ path: "name", by: "N. N.", at: "2026-05-04", reason: "x" }],
      },
    ].map((one) => recordText(one as InstallationRecord));
    expect(new Set(texts).size).toBe(4);
    expect(texts[0]).toBe(
      '{"runs":[{"tubing":{"length":{"kind":"length","unit":"ft","value":36}}}],"version":2}',
    );
  });
});
