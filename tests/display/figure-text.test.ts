import fc from "fast-check";
import { explain } from "hvac-install-math/assessment";
import { figureText, unitName, usualUnit } from "hvac-install-math/display";
import { display, english } from "hvac-install-math/language/en";
import * as u from "hvac-install-math/quantity";
import { isInvalidInputError, micron, psi, psia, psig, torr } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { bundle } from "../package/bundle.ts";

type Loose = (options: unknown) => (figure: unknown, resolution?: unknown) => string;
const make = figureText as unknown as Loose;

describe("a figure for a reader", () => {
  it("is shown in the reader's system, in a unit of his own, and by the step of the instrument", () => {
    const show = make({ system: "inch-pound", units: { absolutePressure: torr } });
    expect(show(psig(118))).toBe("118 psig"); // exact: nothing was read
    expect(show(psig(118.4), psi(1))).toBe("118 psig");
    expect(show(psig(118), psi(0.5))).toBe("118.0 psig");
    expect(show(psig(118.04))).toBe("118.0 psig");
    expect([psig(0), u.oz(0), u.oz(2), psi(0.003)].map((one) => show(one))).toEqual([
      "0 psig",
      "0 oz",
      "2 oz",
      "0.003 psi",
    ]);
    expect(show(psi(0.0030001))).toBe("0.0030 psi");
    expect(show(micron(500))).toBe("0.5 torr");
    expect(make({ system: "SI" })(psia(14.7))).toBe("101.4 kPaa");
  });

  it("keeps four digits of a number, and all that stand before the decimal mark", () => {
    const show = make({ system: "SI" });
    const numbers = [0, -0, 1, -1.23456, 123456.7, 1234567, 12345678, 0.00012344, 1e-9, 2e9];
    expect(numbers.map((one) => show(one))).toEqual([
      "0",
      "0",
      "1",
      "−1.235",
      "123457",
      "1234567",
      "1.235E7",
      "0.0001234",
      "1E−9",
      "2E9",
    ]);
  });

  it("has the digits and marks of a locale, small and large, and never a negative zero", () => {
    const show = make({ system: "inch-pound", locale: "de" });
    expect([-0, 0.25, 2e9, 1_234_567_890, -1.5e-8].map((one) => show(one))).toEqual([
      "0",
      "0,25",
      "2E9",
      "1,235E9",
      "−1,5E−8",
    ]);
    expect(show(psig(118), psi(0.1))).toBe("118,0 psig");
  });

  it("takes a unit of undefined as none", () => {
    expect(make({ system: "SI", units: { torque: undefined } })(u.ftLb(37))).toBe("50.2 N·m");
  });

  it("fits into a sentence, where words stay as they are", () => {
    const show = figureText({ system: "SI", locale: "de" });
    const language = { locale: "de", messages: { "a.b": "{who}: {drop}, {n}." } };
    const values = { who: { verbatim: "N" }, drop: psi(1), n: 0.5 };
    expect(explain({ code: "a.b", values }, language, show)).toBe("N: 6,9 kPa, 0,5.");
  });

  it("has the units of a language where one is given, with their plural", () => {
    const show = make({ system: "inch-pound", language: english });
    const shown = [micron(1), micron(500), u.deltaF(9), u.ft(9.5), u.oz(52.5), u.day(1.5)];
    expect(shown.map((one) => show(one))).toEqual([
      "1 micron",
      "500 microns",
      "9 °F",
      "9 ft 6 in",
      "3 lb 4.5 oz",
      "36 h",
    ]);
    const spanish = {
      locale: "es-ES",
      messages: {
        ...english.messages,
        "display.unit.micron": { by: "count", one: "{count} micra", other: "{count} micras" },
        "display.unit.ft": "{count} pies",
        "display.unit.in": { by: "count", one: "{count} pulgada", other: "{count} pulgadas" },
      },
    };
    const inSpanish = make({ system: "inch-pound", language: spanish });
    const inWords = [micron(1), micron(500.4), u.ft(9.5), u.inch(1)].map((one) => inSpanish(one));
    expect(inWords).toEqual(["1 micra", "500 micras", "9 pies 6 pulgadas", "1 pulgada"]);
    // The numbers follow the language unless another locale is named.
    expect(inSpanish(psi(1.25))).toBe("1,3 psi");
    expect(make({ system: "SI", language: spanish, locale: "en" })(psi(1.25))).toBe("8.6 kPa");
  });

  it("finds every unit that English words, and no other", () => {
    const units = Object.values(u).filter((one) => typeof one === "function" && "scale" in one);
    const codes = (units as u.Unit<u.Kind>[]).flatMap((unit) => {
      const marked = Object.fromEntries(
        Object.keys(display.messages).map((code) => [code, `<${code}>`]),
      );
      const language = { locale: "en", messages: marked };
      const text = make({ system: "SI", language, units: { [unit.kind]: unit } })(unit(2));
      return text.startsWith("<") ? [text.slice(1, -1)] : [];
    });
    expect([...new Set(codes)].sort()).toEqual(Object.keys(display.messages).sort());
  });

  it.each<[u.AnyQuantity | number, u.AnyQuantity | number, string, string]>([
    [u.ampere(20.04), u.ampere(20), "20.04 A", "20.00 A"],
    [u.ampere(20.4), u.ampere(20), "20.4 A", "20 A"],
    [u.ampere(20), u.ampere(20 + 1e-12), "20 A", "20 A"],
    [u.micron(500.4), u.micron(500), "500.4 micron", "500.0 micron"],
    [u.micron(499.96), u.micron(500), "499.96 micron", "500.00 micron"],
    [u.degF(149.98), u.degF(150), "149.98 °F", "150.00 °F"],
    [u.oz(15.97), u.oz(16), "15.97 oz", "1 lb"],
    [u.oz(52.52), u.oz(52.5), "3 lb 4.52 oz", "3 lb 4.5 oz"],
    [u.ft(66.002), u.ft(66), "66.002 ft", "66.000 ft"],
    [u.inch(0.3748), u.inch(0.375), "0.3748 in", "0.3750 in"],
    [u.second(43_199.7), u.hour(12), "11 h 59 min 59.7 s", "12 h"],
    [u.second(9.951), u.second(9.95), "9.951 s", "9.95 s"],
    [u.inch(3.01), u.inch(3), "0.251 ft", "0.250 ft"], // 3 in is a quarter of a foot
    [u.psi(1.2341e-6), u.psi(1.2342e-6), "1.2341E−6 psi", "1.2342E−6 psi"],
    [u.ampere(0), u.ampere(0), "0 A", "0 A"],
    [u.percent(3.04), u.percent(3), "3.04 %", "3.00 %"],
    [u.degF(-0.02), u.degF(0.03), "−0.02 °F", "0.03 °F"],
    [u.psi(20.04), u.kPa(138), "20.04 psi", "20.02 psi"],
    [123456.4, 123456, "123456.4", "123456"],
    [1e-9, 1.000004e-9, "1E−9", "1.000004E−9"],
  ])("of %s beside %s does not read as the same: %s, %s", (one, other, first, second) => {
    const show = figureText({ system: "inch-pound" });
    const both = [one, other];
    expect(both.map((it) => show(it, undefined, both))).toEqual([first, second]);
  });

  it("shows figures of one kind in the unit of the first, where they are of like size", () => {
    const shown = (system: "SI" | "inch-pound", ...figures: u.AnyQuantity[]) =>
      figures.map((one) => figureText({ system })(one, undefined, figures));
    expect(shown("SI", u.kPag(3700), u.MPag(3.8))).toEqual(["3700 kPag", "3800 kPag"]);
    expect(shown("SI", u.MPag(3.7), u.barg(38))).toEqual(["3.7 MPag", "3.8 MPag"]);
    expect(shown("inch-pound", micron(300), torr(0.5))).toEqual(["300 micron", "500 micron"]);
    expect(shown("inch-pound", micron(300), psia(14.7))).toEqual(["300 micron", "14.7 psia"]);
    expect(shown("inch-pound", psia(14.7), micron(300))).toEqual(["14.7 psia", "300 micron"]);
    // From a hundred times each has its own.
    expect(shown("SI", u.kPa(1), u.bar(1))).toEqual(["1 kPa", "1 bar"]);
    expect(shown("SI", u.bar(1), u.kPa(1))).toEqual(["1 bar", "1 kPa"]);
    expect(shown("inch-pound", u.lb(3.25), u.oz(2))).toEqual(["3 lb 4 oz", "2 oz"]);
  });

  it("tells a reading from a limit that was stated in another unit of the reader's system", () => {
    const show = figureText({ system: "SI" });
    const both = [u.kPa(20.04), u.bar(0.2)];
    expect(both.map((it) => show(it, undefined, both))).toEqual(["20.04 kPa", "20.00 kPa"]);
  });

  it("shows by the step of the instrument alone what it read, whatever stands beside it", () => {
    const show = figureText({ system: "inch-pound" });
    expect(show(u.inch(0.375), u.inch(1 / 16), [u.inch(0.376)])).toBe("3/8 in");
    expect(show(u.inch(5), u.inch(0.001), [u.inch(5.0001)])).toBe("5.000 in");
    expect(show(u.lb(2.5), u.lb(0.1), [u.lb(2.51)])).toBe("2.5 lb");
    const inMetric = figureText({ system: "SI" });
    expect(inMetric(u.kPag(3700), u.kPa(10), [u.MPag(3.8)])).toBe("3700 kPag");
  });

  it("tells masses and lengths of the SI apart in the unit of each", () => {
    const shown = (...both: u.AnyQuantity[]) =>
      both.map((it) => figureText({ system: "SI" })(it, undefined, both));
    expect(shown(u.g(862.04), u.kg(0.862))).toEqual(["862.04 g", "0.86200 kg"]);
    expect(shown(u.m(3.0004), u.m(3.0001))).toEqual(["3.0004 m", "3.0001 m"]);
  });

  it("takes no more than six digits more, and counts nothing of another kind", () => {
    const show = figureText({ system: "SI" });
    const near = [u.kPag(100), u.kPag(100.0000003)];
    expect(near.map((it) => show(it, undefined, near))).toEqual([
      "100.000000 kPag",
      "100.000000 kPag",
    ]);
    expect(show(u.volt(230), undefined, [u.ampere(230.04), 230.04])).toBe("230 V");
    expect(show(20, undefined, ["25"] as never)).toBe("20");
  });

  it("never shows two figures that differ alike (property)", () => {
    const figure = fc.double({ min: -1000, max: 1000, noNaN: true });
    const units = fc.constantFrom(u.ampere, u.psi, u.deltaF, u.percent, u.volt, u.ftLb, u.oz, u.ft);
    fc.assert(
      fc.property(units, figure, fc.integer({ min: 1, max: 900 }), (unit, n, off) => {
        const both = [unit(n), unit(n + off / 10_000)] as u.AnyQuantity[];
        const [one, other] = both.map((it) =>
          figureText({ system: "inch-pound" })(it, undefined, both),
        );
        expect(one).not.toBe(other);
      }),
      { numRuns: 300 },
    );
  });

  it("refuses options and figures that are none", () => {
    const wrong = [
      () => make(undefined),
      () => make({}),
      () => make({ system: "metric" }),
      () => make({ system: "SI", locale: "no such tag!" }),
      () => make({ system: "SI", units: { torque: psi } }),
      () => make({ system: "SI", units: 7 }),
      () => make({ system: "SI" })(Number.NaN),
      () => make({ system: "SI" })(undefined),
      () => make({ system: "SI" })("a word"),
      () => make({ system: "SI", language: "en" }),
      () => make({ system: "SI", language: null }),
    ];
    for (const act of wrong) {
      let thrown: unknown;
      try {
        act();
      } catch (error) {
        thrown = error;
      }
      expect(isInvalidInputError(thrown), String(act)).toBe(true);
    }
  });

  it("has a usual unit for each kind and system, and refuses others", () => {
    expect(usualUnit("gaugePressure", "inch-pound")).toBe(psig);
    expect(usualUnit("temperature", "SI")).toBe(u.degC);
    expect(() => usualUnit("color" as never, "SI")).toThrow(/^kind/);
    expect(() => usualUnit("mass", "metric" as never)).toThrow(/^system/);
  });

  it("names a unit alone, in the plural where it is a word", () => {
    expect([unitName(micron, english), unitName(u.deltaF, english)]).toEqual(["microns", "°F"]);
    expect([unitName(micron), unitName(u.ftLb)]).toEqual(["micron", "ft·lb"]);
    expect(() => unitName("psi" as never)).toThrow("unit");
  });

  it("comes without mathjs", async () => {
    const { inputs } = await bundle(
      `import { figureText } from "hvac-install-math/display"; globalThis.used = figureText;`,
    );
    expect(inputs.filter((name) => /mathjs|field-text/.test(name))).toEqual([]);
  });
});
