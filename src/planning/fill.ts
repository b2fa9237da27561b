// How high is the system filled, in which stages, and what becomes of the pressure by tomorrow and in the sun?
// Follows pressure-test; own pressure by the refrigerants. Does not cover a strength test above the marked pressure.
import { cite } from "../assessment/assessment.ts";
import {
  expectedTestPressure,
  type PressurizationPlan,
  pressurizationPlan,
} from "../pressure-test/index.ts";
import { toGauge } from "../quantity/atmosphere.ts";
import { known } from "../quantity/known.ts";
import { isAtLeast, stepsWithin } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { bubblePressure } from "../refrigerants/index.ts";
import { type Job, stated } from "./job.ts";
import type { PlanCheck, PlanItem } from "./plan.ts";
import { check, item, type Needs, type Share, shareOf } from "./share.ts";
import { say } from "./statements.ts";

type Gauge = Quantity<"gaugePressure">;
type Warmth = Quantity<"temperature">;

const nitrogen = [cite("span-2000")];
const manuals = [cite("manufacturer-manuals")];

/** Where the arguments of a test stand in the record. */
export const testPaths: Readonly<Record<string, string>> = {
  limits: "equipment.lowestMarkedPressure",
  laterTemperature: "plan.laterTemperature",
  temperature: "plan.fillTemperature",
  warmest: "plan.warmest",
  leakRate: "plan.leakRate",
  cylinder: "plan.cylinder",
  "instruments.pressure": "instruments.testGauge",
  "instruments.temperature": "instruments.gasThermometer",
  wanted: "plan.fillPressure",
  pressure: "plan.fillPressure",
};

/** The pressure to fill to: as planned, as the manual asks for, or as it was required where that says nothing. */
const wantedOf = ({ plan, manual, record }: Job): Gauge | undefined =>
  plan.fillPressure ??
  manual.testPressure ??
  record.pressureTests?.find(({ requirement }) => requirement?.pressure)?.requirement?.pressure;

/** What a fill needs. */
export const fillNeeds = ({ plan, equipment, atmosphere }: Job): Needs => ({
  "site.altitude": atmosphere,
  "equipment.lowestMarkedPressure": equipment.lowestMarkedPressure,
  "plan.fillTemperature": plan.fillTemperature,
  "plan.warmest": plan.warmest,
});

/** The fill to a wanted pressure; as high as the lowest marked pressure allows at the warmest where none is wanted. */
function filledTo({ plan, equipment, atmosphere }: Job, wanted?: Gauge): PressurizationPlan {
  return pressurizationPlan(
    stated({
      limits: [{ part: "component", pressure: equipment.lowestMarkedPressure as Gauge }] as const,
      wanted,
      temperature: plan.fillTemperature as Warmth,
      warmest: plan.warmest as Warmth,
      atmosphere: atmosphere as Quantity<"absolutePressure">,
    }),
  );
}

/** The pressure after the fill. */
export const fillPressureOf = (job: Job): Gauge => filledTo(job, wantedOf(job)).fillPressure;

/** Fill, stages, tomorrow, and what the pressure is held against. */
export function fillShare(job: Job): Share {
  const { plan, manual } = job;
  const wanted = wantedOf(job);
  const make = (): Share => {
    const limit = job.equipment.lowestMarkedPressure as Gauge;
    const most = floored(filledTo(job).fillPressure);
    const warmest = plan.warmest as Warmth;
    const temperature = plan.fillTemperature as Warmth;
    const { stages, fillPressure, pressureWhenWarm, lowered, cautions, sources } = filledTo(
      job,
      wanted,
    );
    const pressure = lowered ? floored(fillPressure) : fillPressure;
    const set: PlanItem[] = [
      item("pressure-test", say("planning.most-fill", { most, limit, warmest }), sources),
      ...(wanted
        ? [
            item("pressure-test", say("planning.fill", { pressure, temperature }), sources),
            item(
              "pressure-test",
              say("planning.stages", { stages: stages.map((one) => one.pressure) }),
              sources,
            ),
            item(
              "pressure-test",
              say("planning.when-warm", {
                pressure: rounded(pressureWhenWarm),
                temperature: warmest,
              }),
              nitrogen,
            ),
            ...laterItems(job, fillPressure),
          ]
        : []),
    ];
    return {
      set,
      check: wanted ? fillChecks(job, wanted, fillPressure, lowered) : [],
      cautions,
    };
  };
  const said = shareOf("pressure-test", fillNeeds(job), make, testPaths);
  const { testPressure, testHold } = manual;
  const asked = shareOf(
    "pressure-test",
    {
      "equipment.refrigerant": job.refrigerant,
      "equipment.manual.testPressure": testPressure,
      "equipment.manual.testHold": testHold,
    },
    () => ({}),
  );
  return { ...said, ask: [...(said.ask ?? []), ...(asked.ask ?? [])] };
}

/** What the gauge shows at the reading, if nothing leaks. */
function laterItems({ plan, atmosphere }: Job, pressure: Gauge): PlanItem[] {
  const { fillTemperature, laterTemperature: temperature } = plan;
  if (!temperature || !fillTemperature || !atmosphere) return [];
  const later = expectedTestPressure({
    pressure,
    temperature: fillTemperature,
    laterTemperature: temperature,
    atmosphere,
  });
  return [
    item(
      "pressure-test",
      say("planning.later", { pressure: rounded(later), temperature }),
      nitrogen,
    ),
  ];
}

function fillChecks(job: Job, wanted: Gauge, fill: Gauge, lowered: boolean): PlanCheck[] {
  const { plan, manual, refrigerant, atmosphere } = job;
  const least = manual.testPressure;
  const temperature = plan.fillTemperature as Warmth;
  const own =
    refrigerant &&
    atmosphere &&
    known(() => toGauge(bubblePressure(refrigerant, temperature), atmosphere));
  const low = own && fill.si < own.si;
  return [
    ...(lowered
      ? [
          check(
            "inconclusive",
            "pressure-test",
            say("planning.fill-lowered", { wanted, most: floored(fill) }),
            nitrogen,
            "plan.fillPressure",
          ),
        ]
      : []),
    ...(least && !isAtLeast(fill.si, least.si)
      ? [
          check(
            "fail",
            "pressure-test",
            say("planning.fill-below-manual", { fill: rounded(fill), least }),
            manuals,
            "plan.fillPressure",
          ),
        ]
      : []),
    ...(own && refrigerant
      ? [
          check(
            low ? "inconclusive" : "pass",
            "pressure-test",
            say(`planning.${low ? "below" : "above"}-own-pressure`, {
              fill: rounded(fill),
              own: rounded(own).as(fill.unit),
              temperature,
            }),
            refrigerant.sources,
            "plan.fillPressure",
          ),
        ]
      : []),
  ];
}

/** Four digits: what a gauge can show. */
const rounded = ({ si, unit }: Gauge): Gauge => {
  const value = new Quantity(si, unit).in(unit);
  return unit(Number(value.toPrecision(4)));
};

/** Four digits, rounded down: a sentence must not send anyone above the limit. */
function floored({ si, unit }: Gauge): Gauge {
  const value = new Quantity(si, unit).in(unit);
  const step = 10 ** (Math.floor(Math.log10(value)) - 3);
  return unit(Number((stepsWithin(value, step) * step).toPrecision(4)));
}
