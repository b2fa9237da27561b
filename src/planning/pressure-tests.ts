// How long does each nitrogen test stand, what does that prove, and how much nitrogen goes in?
// Follows pressure-test. Does not cover where a leak is.
import { cite } from "../assessment/assessment.ts";
import {
  type HoldPlan,
  holdTime,
  nitrogenNeeded,
  type TestInstruments,
} from "../pressure-test/index.ts";
import { toGauge } from "../quantity/atmosphere.ts";
import { isAtLeast } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { g } from "../quantity/units/mass.ts";
import { bubblePressure } from "../refrigerants/index.ts";
import { fillNeeds, fillPressureOf, fillShare, testPaths } from "./fill.ts";
import { type Job, stated } from "./job.ts";
import { check, item, question, type Share, shareOf, together } from "./share.ts";
import { say } from "./statements.ts";
import { type PlannedTest, testsOf, volumeNeeds, volumeOf } from "./tests.ts";

type Duration = Quantity<"duration">;
type Throughput = Quantity<"throughput">;

const physics = [cite("jcgm-100-2008", "5.2"), cite("jcgm-106-2012", "8.3")];

/** Every test of the plan, or what takes its place. */
export function pressureTestShare(job: Job): Share {
  if (job.construction !== "split") return withoutNitrogen(job, job.construction);
  const tests = testsOf(job);
  const unsaid = job.runs.length > 1 && !job.record.pressureTests?.length;
  return together([
    fillShare(job),
    ...tests.map((test) => holdShare(job, test)),
    ofManual(job.plan.hold, job.manual.testHold),
    nitrogenShare(job, tests),
    { ask: unsaid ? [question("pressureTests[0].covers", "pressure-test")] : [] },
  ]);
}

/** A circuit that is not opened on site: bubbles and a detector at the couplings, against the standing pressure. */
function withoutNitrogen(job: Job, closed: "quick-connect" | "monobloc"): Share {
  const { plan, refrigerant, atmosphere } = job;
  const practice = [cite("common-practice")];
  const said = say("planning.no-nitrogen", { construction: `planning.construction.${closed}` });
  const set = [item("pressure-test", said, practice)];
  if (closed === "monobloc") return { set };
  const { fillTemperature: temperature } = plan;
  const needs = {
    "equipment.refrigerant": refrigerant,
    "site.altitude": atmosphere,
    "plan.fillTemperature": temperature,
  };
  const standing = shareOf("pressure-test", needs, () => {
    if (!refrigerant || !atmosphere || !temperature) return {};
    const pressure = toGauge(bubblePressure(refrigerant, temperature), atmosphere);
    const bubbles = say("planning.bubble-couplings", { pressure, temperature });
    return { set: [item("pressure-test", bubbles, refrigerant.sources)] };
  });
  return together([{ set }, standing]);
}

/** Hold of one test: what shows the wanted leak, what the manual asks for, what the planned hold proves. */
function holdShare(job: Job, { runs }: PlannedTest): Share {
  const { plan, record } = job;
  const { testGauge, gasThermometer } = record.instruments ?? {};
  const { hold, leakRate, fillTemperature, laterTemperature } = plan;
  const called = runs.map((one) => one.called);
  const needs = {
    ...fillNeeds(job),
    ...volumeNeeds(runs),
    "plan.laterTemperature": laterTemperature,
    "plan.leakRate": leakRate,
    "instruments.testGauge": testGauge,
    "instruments.gasThermometer": gasThermometer,
  };
  const make = (): Share => {
    const { shortest, recommended } = holdTime(
      stated<HoldPlan>({
        leakRate,
        volume: volumeOf(runs),
        pressure: fillPressureOf(job),
        temperature: fillTemperature,
        laterTemperature,
        instruments: stated<TestInstruments>({ pressure: testGauge, temperature: gasThermometer }),
        atmosphere: job.atmosphere,
      }),
    );
    const leak = leakRate as Throughput;
    const times = { shortest: rounded(shortest), recommended: rounded(recommended) };
    const proven = hold && new Quantity((leak.si * recommended.si) / hold.si, leak.unit);
    return {
      set: [
        item("pressure-test", say("planning.hold", { runs: called, ...times, leak }), physics),
        ...(hold && proven
          ? [
              item(
                "pressure-test",
                say("planning.hold-proves", { runs: called, hold, leak: toTwoDigits(proven) }),
                physics,
              ),
            ]
          : []),
      ],
    };
  };
  return shareOf("pressure-test", needs, make, testPaths);
}

function ofManual(hold: Duration | undefined, least: Duration | undefined): Share {
  if (!least) return {};
  const manuals = [cite("manufacturer-manuals")];
  const said = say("planning.hold-of-manual", { hold: least });
  const short = hold && !isAtLeast(hold.si, least.si);
  return {
    set: [item("pressure-test", said, manuals)],
    check: short
      ? [
          check(
            "fail",
            "pressure-test",
            say("planning.hold-below-manual", { hold, least }),
            manuals,
          ),
        ]
      : [],
  };
}

/** Nitrogen of every fill, and whether the cylinder gives it. */
function nitrogenShare(job: Job, tests: readonly PlannedTest[]): Share {
  const { plan, atmosphere } = job;
  const { cylinder, fillTemperature } = plan;
  const needs = {
    ...fillNeeds(job),
    ...Object.assign({}, ...tests.map(({ runs }) => volumeNeeds(runs))),
    "plan.cylinder": cylinder,
  };
  const make = (): Share => {
    const pressure = fillPressureOf(job);
    const fill = (volume: Quantity<"volume">) =>
      nitrogenNeeded(
        stated<Parameters<typeof nitrogenNeeded>[0]>({
          volume,
          pressure,
          temperature: fillTemperature,
          atmosphere,
          cylinder,
        }),
      );
    const volumes = tests.map(({ runs }) => volumeOf(runs));
    const own = volumes.map(fill);
    const all = fill(volumes.reduce((sum, one) => sum.plus(one)));
    const source = [cite("span-2000")];
    return {
      bring: [
        ...own.map(({ mass }, i) =>
          item(
            "pressure-test",
            say("planning.nitrogen", {
              runs: tests[i]?.runs.map((one) => one.called) ?? [],
              mass: g(Math.round(mass.in(g))),
              volume: volumes[i] as Quantity<"volume">,
            }),
            source,
          ),
        ),
        all.enough && all.cylinderPressureAfter
          ? item(
              "pressure-test",
              say("planning.cylinder-enough", {
                count: tests.length,
                after: all.cylinderPressureAfter,
              }),
              source,
            )
          : item("pressure-test", say("planning.cylinder-too-small"), source),
        ...[
          say("planning.regulator", { pressure }),
          say("planning.nitrogen-hose", { pressure }),
        ].map((one) => item("pressure-test", one, [cite("common-practice")])),
      ],
      cautions: all.cautions,
    };
  };
  return shareOf("pressure-test", needs, make, testPaths);
}

const rounded = ({ si, unit }: Duration): Duration =>
  unit(Number(new Quantity(si, unit).in(unit).toPrecision(3)));

const toTwoDigits = ({ si, unit }: Throughput): Throughput =>
  new Quantity(Number(si.toPrecision(2)), unit);
