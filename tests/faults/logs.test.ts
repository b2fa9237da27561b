// Logs of no rows and of a million rows: a typed error or an answer, in time that a person waits for.
import { assessPressureLog } from "hvac-install-math/pressure-test";
import {
  degC,
  deltaC,
  isInvalidInputError,
  kPa,
  micron,
  psig,
  second,
  standardAtmosphere,
  volt,
} from "hvac-install-math/quantity";
import {
  assessSupplyVoltage,
  assessSupplyWeek,
  voltageLogStatistics,
} from "hvac-install-math/supply-voltage";
import { acceptancePolicies, assessVacuumDecay } from "hvac-install-math/vacuum-decay";
import { describe, expect, it } from "vitest";
import { faultsIn } from "./walk.ts";

const million = 1_000_000;
const vacuum = { ambient: degC(20), policy: acceptancePolicies.commonPractice500 };
const hold = {
  instruments: { pressure: { accuracy: kPa(10) }, temperature: { accuracy: deltaC(0.5) } },
  atmosphere: standardAtmosphere,
};
const range = { minimum: volt(207), maximum: volt(253) };
const supply = {
  nameplate: { rated: volt(230) },
  supply: { voltage: volt(230), phases: 1 },
  measuredAt: "unit",
} as const;

/** The logs that loggers write get the million; the others a tenth of it, or what they take at most. */
const longest: Readonly<Record<string, number>> = {
  assessPressureLog: million,
  assessVacuumDecay: million,
  assessSupplyWeek: million,
};

type Row = (i: number) => object;
type Judge = (rows: readonly never[]) => unknown;
const logs: readonly (readonly [string, Judge, Row])[] = [
  [
    "assessPressureLog",
    (readings) => assessPressureLog({ ...hold, readings }),
    (i) => ({ elapsed: second(i), pressure: psig(500), temperature: degC(20 + (i % 7) / 10) }),
  ],
  [
    "assessVacuumDecay",
    (readings) => assessVacuumDecay({ ...vacuum, readings }),
    (i) => ({ elapsed: second(i), pressure: micron(300 + (i % 5)) }),
  ],
  [
    "assessSupplyWeek",
    (readings) => assessSupplyWeek({ nominal: volt(230), readings }),
    (i) => ({ elapsed: second(i), voltage: volt(228 + (i % 5)) }),
  ],
  [
    "voltageLogStatistics",
    (readings) => voltageLogStatistics({ readings, range }),
    (i) => ({ elapsed: second(i), voltage: volt(228 + (i % 5)) }),
  ],
  [
    "assessSupplyVoltage",
    (readings) => assessSupplyVoltage({ ...supply, readings }),
    (i) => ({ elapsed: second(i), voltage: volt(228 + (i % 5)) }),
  ],
];

describe.each(logs)("%s", (name, judge, row) => {
  it.each([0, 1, 2])("answers or refuses a log of %i rows", (count) => {
    let answer: unknown;
    try {
      answer = judge(Array.from({ length: count }, (_, i) => row(i)) as never);
    } catch (error) {
      expect(isInvalidInputError(error), String(error)).toBe(true);
      return;
    }
    expect(count).toBeGreaterThan(0);
    expect(faultsIn(answer)).toEqual([]);
  });

  it("answers or refuses a very long log within seconds", () => {
    const length = longest[name] ?? million / 10;
    const rows = Array.from({ length }, (_, i) => row(i)) as never;
    const start = performance.now();
    try {
      judge(rows);
    } catch (error) {
      expect(isInvalidInputError(error), String(error)).toBe(true);
    }
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});
