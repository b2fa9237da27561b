// Rule sets, standards and refrigerants travel by their names; what is not quite one of them never does.
import { roomChargeLimit } from "hvac-install-math/charge-limit";
import {
  type CircuitInput,
  type CircuitRules,
  circuitFromNameplate,
} from "hvac-install-math/circuit-protection";
import { circuitRules, voltageStandards } from "hvac-install-math/commissioning";
import { ampere, kg, m2, volt } from "hvac-install-math/quantity";
import { R32, refrigerants } from "hvac-install-math/refrigerants";
import { ansiC84, iec60038, type SupplyVoltageInput } from "hvac-install-math/supply-voltage";
import {
  assessRoomChargeInput,
  assessSupplyVoltageInput,
  carbonDioxideEquivalentInput,
  circuitFromNameplateInput,
  circuitFromNameplateResult,
  type JsonObject,
  roomChargeLimitInput,
} from "hvac-install-math/wire";
import { describe, expect, it, vi } from "vitest";
import { thrownBy } from "./thrown-by.ts";

/** A voltage that the services of the rules have. */
const voltageOf = (rules: CircuitRules) => {
  if (rules === circuitRules["japan-interpretation"]) return volt(200);
  return rules.family === "awg" ? volt(240) : volt(230);
};

const circuit = (rules: CircuitRules): CircuitInput => ({
  rules,
  minimumCircuitAmpacity: ampere(18),
  maximumOvercurrentProtection: ampere(30),
  supply: { voltage: voltageOf(rules), phases: 1 },
  wiring:
    rules.family === "awg"
      ? { material: "copper", insulation: "75 °C", terminations: "75 °C" }
      : { material: "copper", insulation: "70 °C", method: "B1" },
});

const supply = (standard: SupplyVoltageInput["supply"]["standard"]): SupplyVoltageInput => ({
  nameplate: { rated: volt(230) },
  supply: { voltage: volt(230), phases: 1, ...(standard && { standard }) },
  readings: [{ voltage: volt(231) }],
  measuredAt: "unit",
});

/** Another copy of the modules, with objects of their own, as beside a second copy of the package. */
async function secondCopy() {
  vi.resetModules();
  const commissioning = await import("hvac-install-math/commissioning");
  const held = await import("hvac-install-math/refrigerants");
  expect(commissioning.circuitRules["nfpa-70-2023"]).not.toBe(circuitRules["nfpa-70-2023"]);
  return { ...commissioning, ...held };
}

describe("a rule set for circuits", () => {
  it.each(Object.entries(circuitRules))(
    "%s goes by its name and comes back itself",
    (name, rules) => {
      const input = circuit(rules);
      const text = circuitFromNameplateInput.stringify(input);
      expect(JSON.parse(text).rules).toBe(name);
      const sent = circuitFromNameplateInput.parse(text);
      expect(sent.rules).toBe(rules);
      const result = circuitFromNameplate(sent);
      const written = circuitFromNameplateResult.stringify(result);
      expect(circuitFromNameplateResult.stringify(circuitFromNameplateResult.parse(written))).toBe(
        written,
      );
      expect(result.outcome).toBe(circuitFromNameplate(input).outcome);
    },
  );

  it("of a second copy of the package has the same name", async () => {
    const copy = await secondCopy();
    for (const [name, rules] of Object.entries(copy.circuitRules)) {
      const json = circuitFromNameplateInput.encode(circuit(rules)) as JsonObject;
      expect(json.rules).toBe(name);
    }
  });

  it.each([
    ["a figure", { smallestRating: 20 }],
    ["a unit", { resistanceUnit: circuitRules["iec-60364"].resistanceUnit }],
    ["the name", { name: "ours" }],
  ])("that differs in %s is refused, although the rest is known", (_, change) => {
    const ours = { ...circuitRules["nfpa-70-2023"], ...change };
    const error = thrownBy(() => circuitFromNameplateInput.encode(circuit(ours)));
    expect(error.argument).toBe("rules");
    expect(error.allowed).toContain("nfpa-70-2023");
  });

  it.each(["nfpa-70-1999", "NEC 2023", "__proto__", null, {}])("%s is no name of one", (rules) => {
    const json = circuitFromNameplateInput.encode(circuit(circuitRules["iec-60364"]));
    const error = thrownBy(() => circuitFromNameplateInput.decode({ ...(json as object), rules }));
    expect(error.argument).toBe("rules");
  });
});

describe("a standard of supply voltages", () => {
  const standardOf = (input: SupplyVoltageInput) =>
    (assessSupplyVoltageInput.encode(input) as { supply: JsonObject }).supply.standard;

  it("goes by its name, also one of a second copy", async () => {
    const copy = await secondCopy();
    for (const [name, standard] of Object.entries(voltageStandards)) {
      expect(standardOf(supply(standard))).toBe(name);
      const text = assessSupplyVoltageInput.stringify(supply(standard));
      expect(assessSupplyVoltageInput.parse(text).supply.standard).toBe(standard);
    }
    for (const [name, standard] of Object.entries(copy.voltageStandards)) {
      expect(standardOf(supply(standard))).toBe(name);
    }
  });

  it("of the caller's own, or a known one with another figure, goes by its fields", () => {
    const ours = { ...ansiC84, name: "ours", table: [[230, 220, 240, 215, 210, 250, 205]] };
    for (const own of [ours, { ...iec60038, table: [[230, 216, 253, 207]] }]) {
      const text = assessSupplyVoltageInput.stringify(supply(own));
      expect(assessSupplyVoltageInput.parse(text).supply.standard).toEqual(own);
    }
  });
});

describe("a refrigerant", () => {
  const room = { place: "floor", charge: kg(2), floorArea: m2(30) } as const;

  it("goes by its designation, also one of a second copy", async () => {
    const copy = await secondCopy();
    expect(copy.R32).not.toBe(R32);
    for (const one of [...refrigerants, ...copy.refrigerants]) {
      const json = assessRoomChargeInput.encode({ refrigerant: one, ...room }) as JsonObject;
      expect(json.refrigerant).toBe(one.designation);
    }
    const text = assessRoomChargeInput.stringify({ refrigerant: R32, ...room });
    expect(assessRoomChargeInput.parse(text).refrigerant).toBe(R32);
  });

  it("of the caller's own goes by what the function needs of it", () => {
    const refrigerant = { designation: "R-32", safetyClass: "A2L" } as const;
    const input = { refrigerant, place: "wall", floorArea: m2(30) } as const;
    const sent = roomChargeLimitInput.parse(roomChargeLimitInput.stringify(input));
    expect(sent).toEqual(input);
    expect(roomChargeLimit(sent).limit.si).toBe(
      roomChargeLimit({ ...input, refrigerant: R32 }).limit.si,
    );
    const own = { composition: [{ designation: "R-32", massPercent: 100 }] } as const;
    const charge = { refrigerant: own, charge: kg(1), basis: "ipcc-ar4" } as const;
    const codec = carbonDioxideEquivalentInput;
    expect(codec.parse(codec.stringify(charge))).toEqual(charge);
  });

  it("that is a known one with another figure is refused", () => {
    const ours = { ...R32, safetyClass: "A1" } as const;
    const error = thrownBy(() => assessRoomChargeInput.encode({ refrigerant: ours, ...room }));
    expect(error.argument).toMatch(/^refrigerant/);
  });
});
