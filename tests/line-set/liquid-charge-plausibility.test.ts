import {
  astmB280Tube,
  type ExpansionDevice,
  type FilledTube,
  type LiquidChargePlausibilityInput,
  liquidChargePlausibility,
} from "hvac-install-math/line-set";
import { degF, g, gPerM, kgPerM3, m, mm, ozPerFt, type Quantity } from "hvac-install-math/quantity";
import { R410A } from "hvac-install-math/refrigerants";
import { describe, expect, it } from "vitest";
import { inEnglish, sentences } from "./in-english.ts";

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
    expect(sentences(reasons)).toEqual([
      "The rate, 15 g/m, is 0.843 times a full line, 17.79 g/m: within the plausible 0.4 to 1.1.",
      "A rate below a full line is right where the liquid expands outdoors: the line then carries liquid and vapor.",
    ]);
  });

  it("explains a rate below the full line only where it is below and plausible", () => {
    const codes = (rate: number) =>
      liquidChargePlausibility({ ...line, rate: gPerM(rate) }).reasons.map(({ code }) => code);
    expect(codes(15)).toEqual(["line-set.rate-plausible", "line-set.two-phase-liquid-line"]); // 0.84 of 17.8 g/m
    expect(codes(17)).toEqual(["line-set.rate-plausible"]); // 0.96
    expect(codes(5)).toEqual(["line-set.rate-implausible", "line-set.rate-per-foot"]); // 0.28
  });

  it("draws its lines at 0.4 and 1.1 with the device outdoors, at 0.9 and 1.9 indoors", () => {
    // A tube of 2 mm bore and a density that make a full line of just 1 g/m, so that rate and ratio are one figure.
    const bore = { outsideDiameter: mm(4), wall: mm(1) };
    const density = kgPerM3(1e-3 / ((Math.PI / 4) * 2e-3 ** 2));
    const outcome = (rate: number, expansionDevice: ExpansionDevice) =>
      liquidChargePlausibility({ tube: bore, density, rate: gPerM(rate), expansionDevice }).outcome;
    const at = (device: ExpansionDevice) =>
      [0.39, 0.41, 0.89, 0.91, 1.09, 1.11, 1.89, 1.91].map((rate) => outcome(rate, device)[0]);
    expect(at("outdoor").join("")).toBe("fppppiif");
    expect(at("indoor").join("")).toBe("fiippppf");
    expect(at("not-known").join("")).toBe("fppppppf");
  });

  it("asks or sends back to the nameplate in words", () => {
    const said = (rate: number) =>
      inEnglish(liquidChargePlausibility({ ...line, rate: gPerM(rate) }).reasons[0]);
    expect(said(30)).toBe(
      "The rate, 30 g/m, is 1.69 times a full line, 17.79 g/m. With the expansion there, 0.4 to 1.1 is plausible.",
    );
    expect(said(600)).toBe(
      "The rate, 600 g/m, is 33.7 times a full line, 17.79 g/m: outside the plausible 0.4 to 1.1.",
    );
  });

  it("says what to do, and asks about the slip", () => {
    const { actions, reasons } = liquidChargePlausibility({ ...line, rate: gPerM(40) });
    expect(sentences(actions)).toEqual(["Read the nameplate again: tube, rate, unit."]);
    expect(reasons[1]?.code).toBe("line-set.rate-per-meter");
    expect(sentences(liquidChargePlausibility({ ...line, rate: gPerM(30) }).actions)).toEqual([
      "Find out whether liquid expands indoors or outdoors, and enter it.",
    ]);
    expect(liquidChargePlausibility(line).actions).toEqual([]);
  });

  it("says what it rests on", () => {
    const { assumptions, cautions, sources } = liquidChargePlausibility(line);
    expect(assumptions.map(({ code }) => code)).toEqual(["line-set.saturated-liquid"]);
    expect(cautions.map(({ code }) => code)).toEqual(["safety.others-govern"]);
    expect(sources.map(({ source }) => source)).toEqual(["manufacturer-manuals"]);
  });

  it("wonders where the device sits when the rate suits the other place", () => {
    const low = liquidChargePlausibility({ ...line, rate: gPerM(10), expansionDevice: "indoor" });
    expect(low.outcome).toBe("inconclusive");
    expect(low.reasons[0]?.code).toBe("line-set.rate-fits-other-device");
    const high = liquidChargePlausibility({ ...line, rate: gPerM(30) });
    expect(high.outcome).toBe("inconclusive");
    expect(liquidChargePlausibility({ ...line, expansionDevice: "not-known" }).outcome).toBe(
      "pass",
    );
  });

  it("spots a figure per foot that was read as per meter, and the reverse", () => {
    const perFoot = liquidChargePlausibility({ ...line, rate: gPerM(15 * 0.3048) });
    expect([perFoot.outcome, perFoot.cause]).toEqual(["fail", "per-foot-taken-as-per-meter"]);
    const perMeter = liquidChargePlausibility({ ...line, rate: { mass: g(15), per: m(0.3048) } });
    expect([perMeter.outcome, perMeter.cause]).toEqual(["fail", "per-meter-taken-as-per-foot"]);
    const neither = liquidChargePlausibility({ ...line, rate: gPerM(600) });
    expect([neither.outcome, neither.cause]).toEqual(["fail", undefined]);
    // 3.2 g/m per foot would be 10.5 g/m, 0.59 of the full line; 40 g/m per meter 12.2 g/m, 0.69 of it.
    const cause = (rate: number) => liquidChargePlausibility({ ...line, rate: gPerM(rate) }).cause;
    expect([cause(3.2), cause(40), cause(15), cause(30)]).toEqual([
      "per-foot-taken-as-per-meter",
      "per-meter-taken-as-per-foot",
      undefined,
      undefined,
    ]);
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
