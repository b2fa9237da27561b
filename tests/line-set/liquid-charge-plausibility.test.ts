import { explain } from "hvac-install-math/assessment";
import {
  astmB280Tube,
  type FilledTube,
  type LiquidChargePlausibilityInput,
  liquidChargePlausibility,
} from "hvac-install-math/line-set";
import { degF, g, gPerM, kgPerM3, m, ozPerFt, type Quantity } from "hvac-install-math/quantity";
import { R410A } from "hvac-install-math/refrigerants";
import { describe, expect, it } from "vitest";

const line: LiquidChargePlausibilityInput & FilledTube = {
  rate: gPerM(15),
  tube: astmB280Tube({ size: "1/4", temper: "annealed" }),
  density: kgPerM3(972.3),
  expansionDevice: "outdoor",
};

describe("liquidChargePlausibility", () => {
  it("gives the reason why a rate below the full line can be right", () => {
    const { reasons, outcome } = liquidChargePlausibility(line);
    expect(outcome).toBe("pass");
    expect(reasons.map((reason) => explain(reason))).toEqual([
      "15 g/m is 0.843 of the 17.79 g/m of a full line; 0.4 to 1.1 is plausible.",
      "Lower than a full line is right where the liquid expands outdoors: the line then carries liquid and vapour.",
    ]);
  });

  it("wonders where the device sits when the rate suits the other place", () => {
    const low = liquidChargePlausibility({ ...line, rate: gPerM(10), expansionDevice: "indoor" });
    expect(low.outcome).toBe("inconclusive");
    expect(low.reasons[0]?.code).toBe("other-device");
    const high = liquidChargePlausibility({ ...line, rate: gPerM(30) });
    expect(high.outcome).toBe("inconclusive");
    expect(liquidChargePlausibility({ ...line, expansionDevice: "not-known" }).outcome).toBe(
      "pass",
    );
  });

  it("spots a figure per foot that was read as per metre, and the reverse", () => {
    const perFoot = liquidChargePlausibility({ ...line, rate: gPerM(15 * 0.3048) });
    expect([perFoot.outcome, perFoot.cause]).toEqual(["fail", "per-foot-taken-as-per-metre"]);
    const perMetre = liquidChargePlausibility({ ...line, rate: { mass: g(15), per: m(0.3048) } });
    expect([perMetre.outcome, perMetre.cause]).toEqual(["fail", "per-metre-taken-as-per-foot"]);
    const neither = liquidChargePlausibility({ ...line, rate: gPerM(600) });
    expect([neither.outcome, neither.cause]).toEqual(["fail", undefined]);
    expect(liquidChargePlausibility({ ...line, rate: gPerM(0) }).outcome).toBe("fail");
  });

  it("answers in the unit of the rate", () => {
    const { fullLineRate } = liquidChargePlausibility({ ...line, rate: ozPerFt(0.16) });
    expect(fullLineRate.toString(ozPerFt, 3)).toBe("0.191 oz/ft");
  });

  it("takes a refrigerant and the temperature of its liquid in place of a density", () => {
    const { density: _, ...without } = line;
    const at = (temperature: Quantity<"temperature">) =>
      liquidChargePlausibility({ ...without, refrigerant: R410A, temperature });
    expect(at(degF(105)).ratio).toBeCloseTo(liquidChargePlausibility(line).ratio, 3);
    expect(() => at(degF(500))).toThrow(/^temperature: 500 °F is not allowed/);
    expect(() =>
      liquidChargePlausibility({
        ...without,
        refrigerant: "R410A" as never,
        temperature: degF(105),
      }),
    ).toThrow(/^refrigerant:/);
  });

  it("names what it cannot use", () => {
    const bad = (change: object) => () =>
      liquidChargePlausibility({ ...line, ...change } as LiquidChargePlausibilityInput);
    expect(bad({ density: g(3) })).toThrow(/^density: mass 3 g/);
    expect(bad({ density: kgPerM3(-3) })).toThrow(/^density: -3/);
    expect(bad({ expansionDevice: "middle" })).toThrow(/^expansionDevice:/);
    expect(bad({ tube: undefined })).toThrow(/^tube\.outsideDiameter/);
    expect(bad({ rate: null })).toThrow(/^rate: null/);
  });
});
