// Which line sets for which run? The shortest stock that will do, two sets with couplings, or a roll.
// Follows line-set. Does not cover hard tube in straight lengths.
import { cite } from "../assessment/assessment.ts";
import type { Single } from "../assessment/statement.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { type Job, type PlannedRun, servesIndoorUnit, stockFor } from "./job.ts";
import { check, item, type Share, shareOf, together } from "./share.ts";
import { say, verbatim } from "./statements.ts";

type Length = Quantity<"length">;

/** Line sets of all runs, and the cables that run with them. */
export const lineShare = (job: Job): Share =>
  together([...job.runs.map((run) => setFor(job, run)), linkCables(job)]);

function setFor({ record, plan }: Job, { run, path, called, choice }: PlannedRun): Share {
  const { length, liquid, vapor } = run.tubing ?? {};
  const needs = {
    [`${path}.tubing.way`]: length,
    [`${path}.tubing.liquid.outsideDiameter`]: liquid?.outsideDiameter,
    [`${path}.tubing.vapor.outsideDiameter`]: vapor?.outsideDiameter,
    "plan.stock": plan.stock,
  };
  const make = (): Share => {
    // A stock that can't be used throws here, where it is asked about.
    const chosen = choice ?? stockFor(record, run);
    if (!chosen) return {};
    const {
      stockLength: stock,
      neededLength: needed,
      outcome,
      reasons,
      sources,
      cautions,
    } = chosen;
    const diameters = {
      liquid: liquid?.outsideDiameter as Length,
      vapor: vapor?.outsideDiameter as Length,
    };
    const said = stock
      ? say("planning.line-set", { run: called, ...diameters, stock, needed })
      : twoSets(plan.stock ?? [], called, needed);
    const isSwapped = diameters.liquid.si >= diameters.vapor.si;
    return {
      bring: [
        item("lines", said, sources, path),
        ...reasons
          .filter(({ code }) => /surplus|coil/.test(code))
          .map((one) => item("lines", one, sources, path)),
      ],
      check: [
        ...(stock && outcome !== "pass"
          ? reasons.slice(0, 1).map((one) => check(outcome, "lines", one, sources, path))
          : []),
        ...(isSwapped
          ? [
              check(
                "inconclusive",
                "lines",
                say("planning.lines-swapped", { run: called }),
                sources,
              ),
            ]
          : []),
      ],
      cautions,
    };
  };
  return shareOf("lines", needs, make, { stock: "plan.stock", run: `${path}.tubing.way` });
}

/** Two sets in a row reach further, with a coupling on each line: two brazed joints more per coupling. */
function twoSets(stock: readonly Length[], run: Single, needed: Length) {
  const pairs = stock.flatMap((first, i) =>
    stock.slice(i).map((second) => [first, second] as const),
  );
  const [shortest] = pairs
    .filter(([a, b]) => a.si + b.si >= needed.si)
    .sort(([a, b], [c, d]) => a.si + b.si - c.si - d.si);
  if (!shortest) return say("planning.roll", { run, needed });
  const [first, second] = shortest;
  return say("planning.two-sets", { run, needed, first, second, joints: 4 });
}

/** The cables between the units, as the manual words them. */
const linkCables = ({ runs, manual, construction }: Job): Share => {
  const count = runs.filter(servesIndoorUnit).length;
  if (construction === "monobloc" || count === 0) return {};
  return shareOf("wall", { "equipment.manual.linkCable": manual.linkCable }, () => {
    const cable = verbatim(manual.linkCable as string);
    const said = say("planning.link-cable", { count, cable });
    return { bring: [item("wall", said, [cite("manufacturer-manuals")])] };
  });
};
