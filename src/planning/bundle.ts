// Which sleeve and which cover take the insulated pair, the drain and the cable?
// Follows line-set: circles side by side. Does not cover fill limits of conduit, and foam that is squeezed.

import { cite } from "../assessment/assessment.ts";
import type { Single } from "../assessment/statement.ts";
import {
  assessLineFit,
  insulatedDiameter,
  type RoundItem,
  smallestSleeve,
  type TubeSize,
} from "../line-set/index.ts";
import { stepsUpTo } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { inch, mm } from "../quantity/units/geometry.ts";
import { whole } from "../shapes/index.ts";
import { type Job, servesIndoorUnit } from "./job.ts";
import { item, type Needs, type Share, shareOf, together } from "./share.ts";
import { say } from "./statements.ts";
import { tubeNeeds } from "./tests.ts";

type Length = Quantity<"length">;

/** Covers are made in steps; common practice, no source. */
const steps = { metric: /* @__PURE__ */ mm(5), imperial: /* @__PURE__ */ inch(0.25) };

/** One bundle per indoor unit; runs with the same tubes share a line. */
export function bundleShare(job: Job): Share {
  const { plan } = job;
  const groups = new Map<string, { tubes: readonly TubeSize[]; runs: Single[]; needs: Needs }>();
  const lacking: Share[] = [];
  for (const { run, path, called } of job.runs.filter(servesIndoorUnit)) {
    const { liquid, vapor } = run.tubing ?? {};
    const needs = {
      ...tubeNeeds(path, "liquid", liquid),
      ...tubeNeeds(path, "vapor", vapor),
      "plan.insulation": plan.insulation,
      "plan.drainDiameter": plan.drainDiameter,
      "plan.cableDiameter": plan.cableDiameter,
    };
    lacking.push(
      shareOf("wall", needs, () => {
        const tubes = [whole<TubeSize>(vapor ?? {}), whole<TubeSize>(liquid ?? {})];
        const key = tubes.map((one) => one.outsideDiameter.si).join();
        const group = groups.get(key);
        if (group) group.runs.push(called);
        else groups.set(key, { tubes, runs: [called], needs });
        return {};
      }),
    );
  }
  const shares = [...groups.values()].map(({ tubes, runs, needs }) =>
    shareOf("wall", needs, () => {
      const insulation = plan.insulation as Length;
      const items: RoundItem[] = [
        ...tubes.map((tube, i) => ({
          label: `line ${i + 1}`,
          diameter: insulatedDiameter(tube, insulation),
        })),
        { label: "drain", diameter: plan.drainDiameter as Length },
        { label: "cable", diameter: plan.cableDiameter as Length },
      ];
      const diameter = smallestSleeve(items).as(insulation.unit);
      const said = [
        say("planning.sleeve", { runs, diameter }),
        say("planning.cover", { runs, side: squareCover(items, diameter) }),
      ];
      return { bring: said.map((one) => item("wall", one, [cite("common-practice")])) };
    }),
  );
  return together([...lacking, ...shares]);
}

/** The smallest square cover in steps in which the items lie; a circle of the sleeve's size always fits. */
function squareCover(items: readonly RoundItem[], sleeve: Length): Length {
  const step = ["in", "ft"].includes(sleeve.unit.symbol) ? steps.imperial : steps.metric;
  const most = stepsUpTo(sleeve.si, step.si);
  for (let n = Math.ceil((0.7 * sleeve.si) / step.si); n < most; n++) {
    const side = step.unit(n * step.in(step.unit));
    if (assessLineFit({ items, opening: { width: side, height: side } }).outcome === "pass")
      return side;
  }
  return step.unit(most * step.in(step.unit));
}
