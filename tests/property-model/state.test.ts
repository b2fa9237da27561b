import {
  density,
  mixture,
  R32,
  R125,
  R134a,
  R1234zeE,
  stateAt,
  water,
} from "hvac-install-math/property-model";
import { degC, kelvin, kgPerM3, kPaa, MPaa, mPerSecond, percent } from "hvac-install-math/quantity";
import { describe, expect, test } from "vitest";

describe("a homogeneous state", () => {
  test("gives back the pressure that its density was solved for, in both phases", () => {
    for (const phase of ["liquid", "vapor"] as const) {
      const temperature = degC(30);
      const pressure = phase === "liquid" ? MPaa(3) : MPaa(1);
      const found = density(R32, { pressure, temperature, phase });
      expect(stateAt(R32, { temperature, density: found }).pressure.si).toBeCloseTo(pressure.si, 3);
    }
  });

  // Thol and Lemmon (2016), check table: 420 K, 8 mol/dm³, 19.95447 MPa.
  test("of R-1234ze(E) is given up to 100 MPa", () => {
    const at = { temperature: kelvin(420), density: kgPerM3(8000 * R1234zeE.molarMass) };
    expect(stateAt(R1234zeE, at).pressure.in(MPaa)).toBeCloseTo(19.95447, 5);
    const temperature = degC(20);
    const beyond = { pressure: MPaa(101), temperature, phase: "liquid" } as const;
    expect(() => density(R1234zeE, { ...beyond, pressure: MPaa(99) })).not.toThrow();
    expect(() => density(R1234zeE, beyond)).toThrow(/100/);
  });

  test("obeys cp − cv and the speed of sound of an ideal gas at low pressure", () => {
    const temperature = degC(50);
    const pressure = kPaa(0.001);
    const rho = density(R134a, { pressure, temperature, phase: "vapor" });
    const state = stateAt(R134a, { temperature, density: rho });
    const R = R134a.gasConstant / R134a.molarMass;
    const [cp, cv] = [state.isobaricHeatCapacity.si, state.isochoricHeatCapacity.si];
    expect((cp - cv) / R).toBeCloseTo(1, 5);
    const ideal = Math.sqrt((cp / cv) * R * temperature.si);
    expect(state.speedOfSound.in(mPerSecond) / ideal).toBeCloseTo(1, 5);
  });

  test("of a mixture obeys dh = T ds + v dp along an isotherm", () => {
    const blend = mixture({
      components: [
        { fluid: R32, massFraction: percent(50) },
        { fluid: R125, massFraction: percent(50) },
      ],
    });
    const temperature = degC(40);
    const low = stateAt(blend, { temperature, density: kgPerM3(39.99) });
    const high = stateAt(blend, { temperature, density: kgPerM3(40.01) });
    const left = high.enthalpy.si - low.enthalpy.si;
    const right =
      temperature.si * (high.entropy.si - low.entropy.si) +
      (high.pressure.si - low.pressure.si) / 40;
    expect(left).toBeCloseTo(right, 4);
  });

  test("is refused between the spinodals, outside the limits and for a wrong kind", () => {
    const temperature = degC(20);
    expect(() => stateAt(R32, { temperature, density: kgPerM3(400) })).toThrow(/stable phase/);
    expect(() => stateAt(R32, { temperature: degC(200), density: kgPerM3(1) })).toThrow(/435|161/);
    expect(() => stateAt(R32, { temperature, density: kgPerM3(-1) })).toThrow(/more than/);
    expect(() => stateAt(R32, { temperature, density: degC(1) as never })).toThrow(/kind density/);
    const vapor = { pressure: MPaa(6), temperature, phase: "vapor" } as const;
    expect(() => density(R32, vapor)).toThrow(/can be vapor/);
    expect(() => density(water, { ...vapor, phase: "ice" as never })).toThrow(/liquid, vapor/);
  });
});

describe("a mixture", () => {
  test("is refused when the masses do not sum to one or a pair is not known", () => {
    const half = percent(50);
    const only = [{ fluid: R32, massFraction: half }];
    expect(() => mixture({ components: only })).toThrow(/property-model\.sum-of-fractions/);
    const unknown = [...only, { fluid: water, massFraction: half }];
    expect(() => mixture({ components: unknown })).toThrow(/R32 with water/);
    const twice = [...only, { fluid: R32, massFraction: half }];
    expect(() => mixture({ components: twice })).toThrow(/R32 with R32/);
  });

  test("does not depend on the order of its components", () => {
    const one = mixture({
      components: [
        { fluid: R32, massFraction: percent(30) },
        { fluid: R134a, massFraction: percent(70) },
      ],
    });
    const other = mixture({
      components: [
        { fluid: R134a, massFraction: percent(70) },
        { fluid: R32, massFraction: percent(30) },
      ],
    });
    const at = { temperature: degC(20), density: kgPerM3(30) };
    expect(stateAt(one, at).pressure.si).toBeCloseTo(stateAt(other, at).pressure.si, 5);
  });
});
