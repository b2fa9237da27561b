import { explain } from "hvac-install-math/assessment";
import { figureText } from "hvac-install-math/display";
import { isInvalidInputError, micron, psi, psia, psig, torr } from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";
import { bundle } from "../package/bundle.ts";

type Loose = (options: unknown) => (figure: unknown, resolution?: unknown) => string;
const make = figureText as unknown as Loose;

describe("a figure for a reader", () => {
  it("is shown in the reader's system, in a unit of his own, and by the step of the instrument", () => {
    const show = make({ system: "inch-pound", units: { absolutePressure: torr } });
    expect(show(psig(118))).toBe("118.0 psig");
    expect(show(psig(118.4), psi(1))).toBe("118 psig");
    expect(show(micron(500))).toBe("0.50 torr");
    expect(make({ system: "SI" })(psia(14.7))).toBe("101.4 kPaa");
  });

  it("keeps four digits of a number, and all that stand before the decimal mark", () => {
    const show = make({ system: "SI" });
    expect([0, 1, -1.23456, 123456.7, 0.00012344, 1e-9, 2e9].map((one) => show(one))).toEqual([
      "0",
      "1",
      "-1.235",
      "123457",
      "0.0001234",
      "1E-9",
      "2E9",
    ]);
  });

  it("leaves words alone, and fits into a sentence", () => {
    const show = figureText({ system: "SI", locale: "de" });
    const said = {
      code: "a",
      text: "{who}: {drop}, {n}.",
      values: { who: "N", drop: psi(1), n: 0.5 },
    };
    expect(explain(said, show)).toBe("N: 6,9 kPa, 0,5.");
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

  it("comes without mathjs", async () => {
    const { inputs } = await bundle(
      `import { figureText } from "hvac-install-math/display"; globalThis.used = figureText;`,
    );
    expect(inputs.filter((name) => /mathjs|field-text/.test(name))).toEqual([]);
  });
});
