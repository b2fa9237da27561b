// Real verdicts travel: what they say, in words and figures, is the same on the other side.
import { explain, type Statement } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { assessPressureLog, assessPressureTest } from "hvac-install-math/pressure-test";
import {
  degF,
  deltaF,
  hour,
  liter,
  micron,
  minute,
  psi,
  psig,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import { acceptancePolicies, assessVacuumDecay, decayCurve } from "hvac-install-math/vacuum-decay";
import {
  assessPressureLogInput,
  assessPressureLogResult,
  assessPressureTestInput,
  assessPressureTestResult,
  assessVacuumDecayInput,
  assessVacuumDecayResult,
  type Codec,
} from "hvac-install-math/wire";
import { expect, it } from "vitest";
import { thrownBy } from "./thrown-by.ts";

interface Said {
  readonly reasons: readonly Statement[];
  readonly assumptions: readonly Statement[];
  readonly cautions: readonly Statement[];
}
const spoken = ({ reasons, assumptions, cautions }: Said) =>
  [reasons, assumptions, cautions].flat().map((said) => explain(said, english));

/** Sends the input and the result through text and back, and works with what came out. */
function travel<I, R extends Said>(
  act: (input: I) => R,
  input: I,
  [inputCodec, resultCodec]: readonly [Codec<I>, Codec<R>],
): R {
  const sent = inputCodec.parse(inputCodec.stringify(input));
  expect(sent).toEqual(input);
  const result = act(sent);
  const text = resultCodec.stringify(result);
  const back = resultCodec.parse(text);
  expect(resultCodec.stringify(back)).toBe(text);
  expect(spoken(back)).toEqual(spoken(act(input)));
  return back;
}

const setup = {
  instruments: {
    pressure: { accuracy: psi(2), resolution: psi(0.1) },
    temperature: { accuracy: deltaF(1), resolution: deltaF(0.1) },
  },
  volume: [liter(2), liter(1)],
  criterion: { maximumDrop: psi(3), per: hour(12) },
  atmosphere: standardAtmosphere,
  wall: "copper",
} as const;
const readings = [0, 4, 8, 12].map((h) => ({
  pressure: psig(500 - h),
  temperature: [degF(80 - h / 2), degF(80)],
  elapsed: hour(h),
}));

it("two readings of a pressure test", () => {
  const [start, , , end] = readings;
  if (!start || !end) throw new Error("no readings");
  const codecs = [assessPressureTestInput, assessPressureTestResult] as const;
  const back = travel(assessPressureTest, { start, end, ...setup }, codecs);
  expect(back.expectedPressure.kind).toBe("gaugePressure");
  expect(back.leakRate?.value.kind).toBe("throughput");
});

it("a log of a pressure test", () => {
  const codecs = [assessPressureLogInput, assessPressureLogResult] as const;
  const back = travel(assessPressureLog, { readings, ...setup }, codecs);
  expect(back.corrected.length).toBeGreaterThan(1);
});

const decay = {
  readings: Array.from({ length: 61 }, (_, i) => ({
    elapsed: minute(i),
    pressure: micron(Math.round(300 + 250 * (1 - Math.exp(-i / 12)) + (i === 30 ? 4000 : 0))),
  })),
  ambient: degF(70),
  volume: liter(3),
  gauge: { resolution: [{ upTo: micron(1000), resolution: micron(1).minus(micron(0)) }] },
};

it("a vacuum decay, its policy by name, and the fit still draws its curve", () => {
  const policy = acceptancePolicies.guideSpec15182;
  const codecs = [assessVacuumDecayInput, assessVacuumDecayResult] as const;
  const back = travel(assessVacuumDecay, { ...decay, policy }, codecs);
  expect(assessVacuumDecayInput.encode({ ...decay, policy })).toMatchObject({
    policy: "guideSpec15182",
  });
  expect(
    assessVacuumDecayInput.parse(assessVacuumDecayInput.stringify({ ...decay, policy })).policy,
  ).toBe(policy);
  if (!back.fit) throw new Error("no fit");
  expect(decayCurve(back.fit, { points: 5 })).toHaveLength(5);
});

it("a policy of the caller's own by its fields; a copy of a known one by its name", () => {
  const policy = { ...acceptancePolicies.guideSpec15182, target: micron(250) };
  const codecs = [assessVacuumDecayInput, assessVacuumDecayResult] as const;
  travel(assessVacuumDecay, { ...decay, policy }, codecs);
  const copy = { ...acceptancePolicies.guideSpec15182 };
  expect(assessVacuumDecayInput.encode({ ...decay, policy: copy })).toMatchObject({
    policy: "guideSpec15182",
  });
  const wrong = { readings: [], ambient: degF(70).toJSON(), policy: "ours" };
  expect(thrownBy(() => assessVacuumDecayInput.decode(wrong)).argument).toBe("policy");
});

it("a list of just so many items has no more and no fewer", () => {
  const result = assessVacuumDecay({ ...decay, policy: acceptancePolicies.guideSpec15182 });
  const json = JSON.parse(assessVacuumDecayResult.stringify(result));
  for (const leakInterval of [
    [],
    [json.leakInterval[0]],
    [...json.leakInterval, ...json.leakInterval],
  ]) {
    expect(thrownBy(() => assessVacuumDecayResult.decode({ ...json, leakInterval })).argument).toBe(
      "leakInterval",
    );
  }
});
