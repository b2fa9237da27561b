// A clause that the library does not know is a limit of the library: no breach of order, and a person can answer it.
import { explain } from "hvac-install-math/assessment";
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { ampere } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "./assess.ts";
import { changed } from "./changed.ts";
import { sound } from "./twelve.ts";

// AS/NZS 3008.1.1 was read in one transcription alone: the sound Australian installation stays open by it.
const redGum = sound["Red Gum"] as InstallationRecord;
const circuit = "power.circuits[0]";
const toVerify = (record: InstallationRecord): readonly string[] => {
  const [check] =
    assessInstallation(record).steps.find(({ name }) => name === "circuit")?.checks ?? [];
  return check?.name === "circuit" ? check.assessment.toVerify : [];
};
const verified = (record: InstallationRecord, more: object = {}) =>
  changed(
    {
      [`${circuit}.verifications`]: toVerify(record).map((clause) => ({
        clause,
        complies: true,
        by: "N. Tester",
        at: "2026-05-06",
        ...more,
      })),
    },
    record,
  );
const said = (record: InstallationRecord) =>
  assessInstallation(record)
    .actions.map((one) => explain(one as never, english))
    .join(" ");

describe("a circuit that is open by clauses alone", () => {
  it("breaches no hold point and stops nothing", () => {
    const { outcome, holds } = assessInstallation(redGum);
    expect(outcome).toBe("inconclusive");
    expect(toVerify(redGum).length).toBeGreaterThan(0);
    const hold = holds.find(({ name }) => name === "power-on");
    expect(hold?.state).toBe("released");
    expect(hold?.reason).toMatchObject({
      code: "commissioning.left-to-verify",
      values: { steps: ["commissioning.step.circuit"] },
    });
    expect(said(redGum)).not.toMatch(/[Dd]e-energize|[Cc]lose the valves/);
    expect(said(redGum)).toMatch(/record who/);
  });

  it("breaches none either where another circuit passes", () => {
    const [own] = redGum.power?.circuits ?? [];
    const [checked] = verified(redGum).power?.circuits ?? [];
    const plate = {
      minimumCircuitAmpacity: ampere(13.5),
      maximumOvercurrentProtection: ampere(25),
      ratedLoadCurrent: ampere(13.5),
    };
    const { steps, holds } = assessInstallation(
      changed({ "power.circuits": [own, { ...checked, plate }] }, redGum),
    );
    const { checks = [] } = steps.find(({ name }) => name === "circuit") ?? {};
    expect(checks.map(({ assessment }) => assessment.outcome)).toEqual(["inconclusive", "pass"]);
    expect(holds.find(({ name }) => name === "power-on")?.state).toBe("released");
  });

  it("still holds the power before it is switched on", () => {
    const off = changed(
      {
        "power.energizedAt": undefined,
        operation: undefined,
        "power.supply.readings": redGum.power?.supply?.readings?.filter(
          ({ state }) => state === "rest",
        ),
      },
      redGum,
    );
    const hold = assessInstallation(off).holds.find(({ name }) => name === "power-on");
    expect(hold?.state).toBe("held");
    expect(hold?.waitsFor).toEqual(["circuit"]);
  });

  it("passes with the word of who checked them, which the verdict keeps", () => {
    const result = assessInstallation(verified(redGum));
    expect(result.outcome).toBe("pass");
    expect(result.actions).toEqual([]);
    const findings = result.cautions.filter(({ code }) => code === "circuit-protection.verified");
    expect(findings).toHaveLength(toVerify(redGum).length);
  });

  it("fails, and is to be de-energized, where that person found it wrong", () => {
    const record = verified(redGum, { complies: false });
    expect(assessInstallation(record).cause).toBe("circuit");
    expect(said(record)).toContain("De-energize");
  });

  it("passes with nothing that the library judges itself and finds wrong", () => {
    const record = changed(
      { [`${circuit}.installed.device.rating`]: ampere(40) },
      verified(redGum),
    );
    const { outcome, holds } = assessInstallation(record);
    expect(outcome).toBe("fail");
    expect(holds.find(({ name }) => name === "power-on")?.state).toBe("breached");
  });
});
