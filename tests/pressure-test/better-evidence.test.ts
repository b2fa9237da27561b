// What is asked for has to decide: a tight system whose user does what the actions say, one after the other, passes.
// The figures in them are held against the verdict itself, not against a source: they say what it would take.
import { assessPressureTest, type PressureTest } from "hvac-install-math/pressure-test";
import {
  degC,
  degF,
  deltaF,
  deltaK,
  hour,
  liter,
  MPaa,
  minute,
  percent,
  psi,
  psig,
  type Quantity,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import { describe, expect, it } from "vitest";

/** 500 psig for two hours, steady, read by data sheets, and nothing more stated. */
const test = (change: Partial<PressureTest> = {}): PressureTest => ({
  start: { pressure: psig(500), temperature: degF(70) },
  end: { pressure: psig(500), temperature: degF(70), elapsed: hour(2) },
  volume: liter(3),
  instruments: {
    pressure: { accuracy: psi(2.5), resolution: psi(0.1) },
    temperature: { accuracy: deltaF(1), resolution: deltaF(0.1) },
  },
  wall: "copper",
  criterion: { maximumDrop: psi(5) },
  atmosphere: standardAtmosphere,
  ...change,
});
const here = { elsewhere: { share: percent(0) } };
const settled = { sinceFill: hour(1) };
const judged = (given: PressureTest) => {
  const { outcome, actions } = assessPressureTest(given);
  return { outcome, actions: actions.map(({ code }) => code.replace("pressure-test.", "")) };
};
const figureIn = (given: PressureTest, code: string) =>
  Object.values(
    assessPressureTest(given).actions.find((said) => said.code === `pressure-test.${code}`)
      ?.values ?? {},
  )[0];
const following = (followsGasWithin: Quantity<"temperatureDifference">): PressureTest => {
  const { instruments } = test();
  const temperature = { ...instruments.temperature, followsGasWithin };
  return test({ ...here, ...settled, instruments: { ...instruments, temperature } });
};

describe("a tight system of which little is stated", () => {
  it("is asked what can be said at once before what takes time", () => {
    expect(judged(test())).toEqual({
      outcome: "inconclusive",
      actions: ["state-elsewhere", "state-since-fill"],
    });
    expect(judged(test(here)).actions).toEqual(["state-since-fill"]);
    expect(judged(test({ ...here, sinceFill: minute(2) })).actions).toEqual(["settle-first"]);
    expect(judged(test(settled)).outcome).toBe("pass");
    expect(judged(test({ ...here, ...settled })).outcome).toBe("pass");
  });

  it("passes once the gas has settled as long as asked", () => {
    for (const early of [test(here), test({ ...here, sinceFill: minute(2) })]) {
      const code = judged(early).actions[0] as string;
      const settle = figureIn(early, code) as Quantity<"duration">;
      expect(settle.in(minute)).toBeGreaterThan(5);
      expect(settle.in(minute)).toBeLessThan(60);
      expect(judged(test({ ...here, sinceFill: settle })).outcome).toBe("pass");
    }
  });

  it("is asked for no settling that would not count beside the rest", () => {
    const limit = { criterion: { maximumDrop: psi(2.5) } };
    expect(judged(test({ ...here, ...settled, ...limit })).actions).toEqual(["state-follows-gas"]);
  });
});

describe("a thermometer nearer to the gas", () => {
  it.each([1.5, 2, 2.5])(
    "as near as asked passes a limit of %d psi, and little more does not",
    (drop) => {
      const limit = { criterion: { maximumDrop: psi(drop) } };
      const within = figureIn(test({ ...here, ...settled, ...limit }), "state-follows-gas");
      const near = within as Quantity<"temperatureDifference">;
      expect(judged({ ...following(near), ...limit }).outcome).toBe("pass");
      const further = deltaK(near.in(deltaK) + 0.15);
      expect(judged({ ...following(further), ...limit }).outcome).toBe("inconclusive");
    },
  );

  it("is not asked for where it would not be enough, or where it is stated", () => {
    const limit = { criterion: { maximumDrop: psi(0.7) } };
    expect(judged(test({ ...here, ...settled, ...limit })).actions).toEqual(["reduce-uncertainty"]);
    const stated = { ...following(deltaF(3)), criterion: { maximumDrop: psi(2) } };
    expect(judged(stated).actions).toEqual(["reduce-uncertainty"]);
  });

  it("comes before the wait for the temperature of the first reading", () => {
    const end = { pressure: psig(489.7), temperature: degF(60), elapsed: hour(2) };
    const limit = { criterion: { maximumDrop: psi(2.5) } };
    expect(judged(test({ ...here, ...settled, ...limit, end })).actions).toEqual([
      "state-follows-gas",
      "read-at-first-temperature",
    ]);
  });
});

it("asks for a thermometer where the rest of the gas lies, until its change is stated", () => {
  const end = { pressure: psig(500), temperature: degF(70), elapsed: hour(12) };
  const share = percent(30);
  const apart = (elsewhere: PressureTest["elsewhere"]) =>
    judged(test({ ...settled, end, elsewhere }));
  expect(apart({ share }).actions).toEqual(["measure-elsewhere"]);
  expect(apart({ share, change: deltaF(2) }).outcome).toBe("pass");
});

it.each([
  [69.8, 5.9],
  [-40, 5.9],
  [69.8, 0.2],
  [-40, 0.2],
])("answers at the ends of the nitrogen equation: %d °C, %d MPa", (T, p) => {
  const at = { pressure: MPaa(p), temperature: degC(T) };
  const end = { ...at, elapsed: hour(2) };
  const { outcome, actions } = assessPressureTest(test({ start: at, end, ...here }));
  expect(outcome).toBe("inconclusive");
  expect(actions).not.toEqual([]);
});
