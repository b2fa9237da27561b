// What a plan asks, and which clauses it says are to be checked by their text.
import { assessInstallation, type InstallationRecord } from "hvac-install-math/commissioning";
import { planInstallation } from "hvac-install-math/planning";
import { volt } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { rules } from "../commissioning/assess.ts";
import { changed } from "../commissioning/changed.ts";
import { textOf } from "../commissioning/mutated-record.ts";
import { heronCabin, redGum } from "../commissioning/twelve.ts";
import { planned } from "./installations.ts";

const plan = (record: InstallationRecord) => planInstallation(record, { rules });

it("asks for nothing that is stated", () => {
  for (const record of Object.values(planned)) {
    for (const { path, code } of plan(record).ask) {
      if (code !== "planning.ask" && code !== "planning.ask-of-runs") continue;
      const value = path
        .split(/[.[\]]+/)
        .filter(Boolean)
        .reduce<unknown>((one, key) => (one as Record<string, unknown> | undefined)?.[key], record);
      expect(value, path).toBeUndefined();
    }
  }
});

describe("clauses that are to be checked by their text", () => {
  // What these rule sets do not know well enough decides nothing in a verdict: the plan says so before the work.
  it.each([
    "as-nzs-3000-2018-australia",
    "as-nzs-3000-2018-new-zealand",
    "japan-interpretation",
    "bs-7671-2018",
    "iec-60364",
    "nfpa-70-2023",
  ] as const)("are those that the verdict names afterwards: %s", (name) => {
    const gum = planned["Red Gum"] as InstallationRecord;
    const rule = { "power.circuits[0].rules": name };
    const japan = { ...rule, "power.voltage": volt(200) };
    const wire = "power.circuits[0].installed";
    const fitted = { [`${wire}.conductor`]: "2.0 mm", [`${wire}.equipmentGrounding`]: "2.0 mm" };
    const [before, after] =
      name === "nfpa-70-2023"
        ? [planned["Heron Cabin"] as InstallationRecord, heronCabin]
        : name === "japan-interpretation"
          ? [changed(japan, gum), changed({ ...japan, ...fitted }, redGum)]
          : [changed(rule, gum), changed(rule, redGum)];
    const { check, ask } = plan(before);
    const clauses = check.flatMap(({ code, values }) =>
      code === "planning.verify-clause" ? [(values.clause as { verbatim: string }).verbatim] : [],
    );
    const { steps } = assessInstallation(after, { rules });
    const [circuit] = steps.find((step) => step.name === "circuit")?.checks ?? [];
    expect(circuit?.assessment).toMatchObject({ toVerify: clauses });
    expect(clauses.length > 0).toBe(/^(as-nzs|japan|bs)/.test(name));
    const asked = ask.map(({ path }) => path).includes("power.circuits[0].verifications");
    expect(asked).toBe(clauses.length > 0);
  });

  it("are not listed once somebody checked them", () => {
    const own = { by: "invented inspector", at: "2026-05-01", complies: true };
    const clauses = ["AS/NZS 3008.1.1", "5.3.3, table 5.1", "4.19"];
    const checked = clauses.map((clause) => ({ ...own, clause }));
    const record = changed(
      { "power.circuits[0].verifications": checked },
      planned["Red Gum"] as InstallationRecord,
    );
    expect(plan(record).check.map(({ code }) => code)).not.toContain("planning.verify-clause");
  });
});

describe("a device against residual current", () => {
  const heron = planned["Heron Cabin"] as InstallationRecord;
  const circuit = (fields: object, record = heron) => {
    const { bring, ask } = plan(
      changed(
        Object.fromEntries(
          Object.entries(fields).map(([key, value]) => [`power.circuits[0].${key}`, value]),
        ),
        record,
      ),
    );
    return {
      brought: bring.filter(({ code }) => /ground-fault|residual-current/.test(code)).map(textOf),
      asked: ask.map(({ path }) => path).filter((path) => path.startsWith("power.circuits")),
    };
  };

  it("is brought where 210.8(F) is in force or may be, and the date or the adopted text is asked for", () => {
    expect(circuit({ at: "2026-05-06T12:15" })).toEqual({ brought: [], asked: [] });
    const open = circuit({ at: undefined });
    expect(open.brought.join()).toContain("0.006");
    expect(open.asked).toEqual(["power.circuits[0].at"]);
    expect(circuit({ at: "2026-09-02T12:15" }).asked).toEqual([
      "power.circuits[0].groundFaultText",
    ]);
    const adopted = { at: "2026-09-02T12:15", groundFaultText: "as printed" };
    expect(circuit(adopted).asked).toEqual([]);
    expect(circuit(adopted).brought).toHaveLength(1);
    expect(circuit({ ...adopted, groundFaultText: "not adopted" }).brought).toEqual([]);
  });

  it("waits for the earthing of the supply under international rules", () => {
    const rue = planned["Rue Courte"] as InstallationRecord;
    expect(circuit({ earthing: "TN" }, rue)).toEqual({ brought: [], asked: [] });
    expect(circuit({ earthing: undefined }, rue).asked).toEqual(["power.circuits[0].earthing"]);
    expect(circuit({ earthing: "TT" }, rue).brought.join()).toContain("0.03");
  });
});
