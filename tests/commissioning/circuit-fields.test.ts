// What a record says of a circuit has to reach the check of the circuit: each of these turns its outcome or adds a finding.
import type { Assessment } from "hvac-install-math/assessment";
import type { Circuit, InstallationRecord } from "hvac-install-math/commissioning";
import { ampere } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { complete } from "./complete-record.ts";

const [own] = complete.power?.circuits ?? [];
const circuitOf = (
  changes: Partial<Circuit>,
  equipment: Partial<InstallationRecord["equipment"]> = {},
) => {
  const record: InstallationRecord = {
    ...complete,
    equipment: { ...complete.equipment, ...equipment },
    power: { ...complete.power, circuits: [{ ...own, ...changes }] },
  };
  const found = assessInstallation(record).steps.find(({ name }) => name === "circuit");
  if (!found) throw new Error("circuit");
  return found;
};
/** The codes of what the checks of the step say. */
const codesOf = (found: ReturnType<typeof circuitOf>): string[] =>
  found.checks.flatMap(({ assessment }) => {
    const { reasons, assumptions, cautions }: Assessment<string> = assessment;
    const said: readonly { readonly code: string }[] = [...reasons, ...assumptions, ...cautions];
    return said.map(({ code }) => code.replace("circuit-protection.", ""));
  });

describe("a circuit of a record", () => {
  it("passes as it is", () => {
    expect(circuitOf({}).outcome).toBe("pass");
  });

  it("carries what else is on it: a second unit of 12.4 A does not fit 12 AWG behind 20 A", () => {
    const second = {
      kind: "unit",
      current: ampere(12.4),
      maximumOvercurrentProtection: ampere(20),
    } as const;
    expect(circuitOf({ sharedWith: [second] }).outcome).not.toBe("pass");
  });

  it("carries its whip: 14 AWG behind 20 A that feeds a heater", () => {
    const installed = { ...own?.installed, whip: { conductor: "14 AWG" } } as const;
    expect(circuitOf({ installed, feeds: "other" }).outcome).toBe("fail");
  });

  it("carries what it feeds: a heater takes no larger device than its conductor allows", () => {
    const installed = {
      ...own?.installed,
      conductor: "14 AWG",
      equipmentGrounding: "14 AWG",
    } as const;
    const at = (feeds: Circuit["feeds"]) => circuitOf({ installed, feeds }).outcome;
    expect(at("motor-compressor")).toBe("pass"); // NFPA 70, 240.4(G), 440.22
    expect(at("other")).toBe("fail"); // 240.4(D): 15 A on 14 AWG
  });

  const metric: Partial<Circuit> = {
    rules: "iec-60364",
    earthing: "TT",
    wiring: { material: "copper", insulation: "70 °C", method: "C" },
    installed: {
      device: { kind: "breaker", rating: ampere(16) },
      conductor: "2.5 mm²",
      equipmentGrounding: "2.5 mm²",
      disconnect: { rating: ampere(20) },
    },
  };

  it("carries the earthing: a TT system asks for its residual-current device", () => {
    const codes = (earthing: Circuit["earthing"]) => codesOf(circuitOf({ ...metric, earthing }));
    expect(codes("TT")).not.toEqual(codes("TN"));
    expect(codes("TT").some((code) => code.startsWith("residual-current"))).toBe(true);
  });

  it("takes a rated current and a largest fuse where the plate prints these", () => {
    const found = circuitOf(metric, {
      minimumCircuitAmpacity: undefined,
      maximumOvercurrentProtection: undefined,
      ratedCurrent: ampere(11),
      maximumFuse: ampere(16),
    });
    expect(found.missing.filter((path) => path.startsWith("equipment"))).toEqual([]);
    expect(found.checks).toHaveLength(1);
  });

  it("takes figures as printed once the plate was read again", () => {
    const odd = {
      minimumCircuitAmpacity: ampere(6),
      ratedLoadCurrent: ampere(4.8),
      maximumOvercurrentProtection: ampere(20),
    };
    const codes = (nameplateReadAgain: boolean) => codesOf(circuitOf({ nameplateReadAgain }, odd));
    expect(codes(true)).toContain("maximum-confirmed");
    expect(codes(false)).not.toContain("maximum-confirmed");
  });

  it("asks what the rules make a duty: sight of the disconnect, its distance, the length", () => {
    const { disconnect: _, ...rest } = own?.installed ?? {};
    const missing = (rules: Circuit["rules"], changes: Partial<Circuit> = {}) =>
      circuitOf({
        rules,
        installed: { ...rest, disconnect: { rating: ampere(30) } },
        ...changes,
      }).missing.map((path) => path.replace("power.circuits[0].", ""));
    expect(missing("nfpa-70-2023")).toEqual(["installed.disconnect.visible"]); // 440.14
    // 28-604(5): within sight and within 3 m; 8-102: at most 3 %.
    const { length: __, ...wiring } = own?.wiring ?? {};
    expect(missing("csa-c22.1-2024", { wiring })).toEqual([
      "installed.disconnect.visible",
      "installed.disconnect.distance",
      "wiring.length",
    ]);
    // BS 7671, 462, 537 (secondary source): in sight or locked off. IEC 60364 and Japan ask for neither.
    const asked = (rules: Circuit["rules"], lockable?: boolean) => {
      const disconnect = { rating: ampere(30), lockable };
      const changes = { wiring, installed: { ...rest, disconnect } };
      return missing(rules, changes).filter((path) => /disconnect|length/.test(path));
    };
    expect(asked("bs-7671-2018")).toEqual(["installed.disconnect.visible"]);
    expect(asked("bs-7671-2018", true)).toEqual([]);
    expect(asked("nfpa-70-2023", true)).toEqual(["installed.disconnect.visible"]);
    for (const rules of ["iec-60364", "japan-interpretation"] as const)
      expect(asked(rules)).toEqual([]);
    // 4.19 with 1.4.6: within arm's reach; 3.6.2: at most 5 %.
    expect(asked("as-nzs-3000-2018-australia")).toEqual([
      "installed.disconnect.distance",
      "wiring.length",
    ]);
  });
});
