import type * as assessment from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { deltaF, kPa, kPaa, psi } from "hvac-install-math/quantity";
import type { Inputs } from "../catalogue.ts";

export const inputs: Inputs<typeof assessment> = {
  conformity: [
    [
      {
        value: kPaa(509.7),
        standardUncertainty: kPa(8.6),
        lowerLimit: kPaa(450),
        upperLimit: kPaa(560),
        confidence: 0.95,
      } as never,
    ],
    [{ value: psi(3), standardUncertainty: psi(0.5), upperLimit: psi(5) } as never],
  ],
  explain: [
    [
      { code: "drop", values: { drop: psi(2.9) } },
      { locale: "en", messages: { drop: "It fell by {drop}." } },
    ],
  ],
  label: [["assessment.outcome.pass", english]],
  normalProbability: [[1.96], [-40]],
  normalQuantile: [[0.95], [0.001]],
  overallOutcome: [[["pass", "inconclusive"]], [["pass", "pass"]]],
  propagate: [
    [
      ([width = 0, height = 0]) => width * height,
      [
        { value: 3, uncertainty: 0.03 },
        { value: 4, uncertainty: 0.04 },
      ],
      [[0, 1, 0.5]],
    ],
  ],
  standardUncertainty: [
    [{ accuracy: psi(1), resolution: psi(0.5), repeatability: psi(0.1) } as never, psi as never],
    [{ accuracy: deltaF(1) } as never, deltaF as never, "instrument"],
  ],
  studentQuantile: [[0.975, 10]],
};
