// Does each drain run off by itself, does it take a pump, and does its pan need a trap?
// Follows condensate. Does not cover the drain that several units share.
import { cite } from "../assessment/assessment.ts";
import type { Drain } from "../commissioning/index.ts";
import {
  assessCondensatePump,
  type CondensatePumpInput,
  condensateTrap,
  type DrainRoute,
  minimumFall,
  planDrain,
} from "../condensate/index.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { whole } from "../shapes/index.ts";
import { type Job, type PlannedRun, servesIndoorUnit, stated } from "./job.ts";
import { check, item, type Share, shareOf, together } from "./share.ts";
import { say } from "./statements.ts";

const code = [cite("imc-2021", "307.2.1")];

/** The drain of every indoor unit that can cool. */
export function drainShare({ runs, equipment }: Job): Share {
  if (equipment.duty === "heating") return {};
  return together(
    runs.filter(servesIndoorUnit).flatMap((one) => drainOf(one, one.run.drain ?? {})),
  );
}

function drainOf(placed: PlannedRun, drain: Drain): Share[] {
  const { path, called } = placed;
  const { pump, panPressure } = drain;
  const trap = (): Share => {
    const {
      kind,
      outletDrop: drop,
      seal,
      height,
      citations,
    } = condensateTrap({
      staticPressure: panPressure as Quantity<"pressureDifference">,
    });
    if (kind === "none") return {};
    return {
      bring: [
        item("drain", say("planning.trap", { run: called, drop, seal, height }), citations, path),
      ],
    };
  };
  return [
    pump ? pumpOf(placed, whole<CondensatePumpInput>(pump)) : byGravity(placed, drain),
    ...(panPressure
      ? [shareOf("drain", { [`${path}.drain.panPressure`]: panPressure }, trap)]
      : []),
  ];
}

function byGravity({ path, called }: PlannedRun, drain: Drain): Share {
  const { run: length, fall: available, requiredSlope, route, vertical } = drain;
  if (vertical) return {};
  const at = `${path}.drain`;
  const needs = { [`${at}.run`]: length, [`${at}.fall`]: available };
  const make = (): Share => {
    const run = length as Quantity<"length">;
    const fall = minimumFall(stated({ run, slope: requiredSlope }));
    const height = available as Quantity<"length">;
    const { method, outcome, reasons, lift, cautions } = planDrain(
      stated({
        outletHeight: height,
        points: [{ distance: run, height: height.minus(height) }],
        slope: requiredSlope,
        route: route && whole<DrainRoute>(route),
      }),
    );
    const needed = say("planning.drain-fall", { run: called, fall, length: run });
    const lifted = say("planning.drain-pump", { run: called, lift });
    return {
      ...(method === "pump"
        ? { bring: [item("drain", lifted, code, path)] }
        : { set: [item("drain", needed, code, path)] }),
      // That water has to be lifted is no fault of the plan, as long as a pump is in the van.
      check: reasons.map((one) =>
        check(outcome === "pass" ? "pass" : "inconclusive", "drain", one, code, path),
      ),
      ...(method === "pump" && {
        ask: shareOf("drain", { [`${at}.pump`]: undefined }, () => ({})).ask ?? [],
      }),
      cautions,
    };
  };
  return shareOf("drain", needs, make, { run: `${at}.run`, slope: `${at}.requiredSlope` });
}

function pumpOf({ path, called }: PlannedRun, pump: CondensatePumpInput): Share {
  const at = `${path}.drain.pump`;
  return shareOf("drain", { [`${at}.lift`]: pump.lift, [`${at}.curve`]: pump.curve }, () => {
    const { outcome, reasons, sources, cautions } = assessCondensatePump(pump);
    return {
      bring: [
        item("drain", say("planning.drain-pump", { run: called, lift: pump.lift }), sources, path),
      ],
      check: reasons.map((one) => check(outcome, "drain", one, sources, path)),
      cautions,
    };
  });
}
