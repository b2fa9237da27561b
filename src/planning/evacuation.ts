// How deep, how long, and how much may the vacuum rise? The policy that the record names, and ice in the cold.
// Follows vacuum-decay. Does not cover water: it sets the pace below about 2000 micron in a wet system.
import { cite } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { known } from "../quantity/known.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { inch } from "../quantity/units/geometry.ts";
import { minute } from "../quantity/units/time.ts";
import {
  type AcceptancePolicy,
  acceptancePolicies,
  commonLeakLimit,
  pumpDownTime,
  waterSaturationPressure,
} from "../vacuum-decay/index.ts";
import type { Job } from "./job.ts";
import type { PlanItem } from "./plan.ts";
import { item, type Share, shareOf, together } from "./share.ts";
import { say } from "./statements.ts";
import { testsOf, volumeNeeds, volumeOf } from "./tests.ts";

/** Triple point of water, K. */
const freezing = 273.16;

/** The vacuum hose of the trade: a quarter inch takes several times as long; common practice, no source. */
const vacuumBore = /* @__PURE__ */ inch(0.375);

/** Target, hold, leak limit, pump-down and ice. */
export function evacuationShare(job: Job): Share {
  if (job.construction !== "split") return {};
  const named = job.record.evacuations?.find((one) => one.policy)?.policy;
  const policy = named && acceptancePolicies[named];
  const hose = item("evacuation", say("planning.vacuum-hose", { bore: vacuumBore }), [
    cite("common-practice"),
  ]);
  const set = shareOf("evacuation", { "evacuations[0].policy": policy }, () => ({
    bring: [hose],
    set: policy ? limitsOf(policy) : [],
  }));
  return together([set, policy ? pumpDown(job, policy) : {}, iceShare(job)]);
}

function limitsOf({ target, checkpoints, leakLimit = commonLeakLimit, source }: AcceptancePolicy) {
  const sources = [source];
  return [
    item("evacuation", say("planning.vacuum-target", { target }), sources),
    ...checkpoints.flatMap(({ at: hold, limit, rise }): PlanItem[] => [
      ...(limit
        ? [item("evacuation", say("planning.vacuum-limit", { limit, hold }), sources)]
        : []),
      ...(rise ? [item("evacuation", say("planning.vacuum-rise", { rise, hold }), sources)] : []),
    ]),
    item("evacuation", say("planning.vacuum-leak", { leak: leakLimit }), [cite("common-practice")]),
  ];
}

/** The pump alone, without hoses and water: the least that it takes. */
function pumpDown(job: Job, { target }: AcceptancePolicy): Share {
  const { plan, atmosphere } = job;
  return together(
    testsOf(job).map(({ runs }) => {
      const needs = { ...volumeNeeds(runs), "plan.pump": plan.pump, "site.altitude": atmosphere };
      const make = (): Share => {
        const pump = plan.pump as Quantity<"volumeFlow">;
        const from = atmosphere as Quantity<"absolutePressure">;
        const seconds = pumpDownTime({ volume: volumeOf(runs), pump, from, to: target }).si;
        const time = minute(Number((seconds / 60).toPrecision(2)));
        const called = runs.map((one) => one.called);
        const said = say("planning.pump-down", { runs: called, time, target });
        return { bring: [item("evacuation", said, [cite("common-practice")])] };
      };
      return shareOf("evacuation", needs, make, { pump: "plan.pump" });
    }),
  );
}

/** Below freezing water stays as ice, and a vacuum above its pressure can't tell. */
function iceShare({ plan, record }: Job): Share {
  const stated = [record.evacuations?.[0]?.coldest, plan.laterTemperature, plan.fillTemperature];
  const given = stated.filter((one) => one !== undefined);
  const [coldest] = given.sort((a, b) => a.si - b.si);
  if (!coldest || coldest.si >= freezing) return {};
  const pressure = known(() => waterSaturationPressure(coldest));
  if (!pressure) return {};
  const { unit } = pressure;
  const rounded = unit(Number(pressure.in(unit).toPrecision(3)));
  return {
    cautions: [
      caution("finding", say("planning.ice", { temperature: coldest, pressure: rounded })),
    ],
  };
}
