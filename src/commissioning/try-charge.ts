// Added charge and valves: how much refrigerant went in, and as what?
// Follows line-set, which decides the rule; the weighed charge against it by JCGM 106:2012, 8.3.
// Does not cover a charge by superheat or subcooling: see the operation.
import type { ChargeAssessment } from "../line-set/index.ts";
import { frozen } from "../quantity/frozen.ts";
import { later } from "../quantity/later.ts";
import { doubtsOfCharge } from "./charge-doubts.ts";
import { askedBy, ruleNeeds, ruleOf, rulePaths } from "./charge-rule.ts";
import type { Job } from "./job.ts";
import { ownVerdict } from "./own-verdict.ts";
import { say } from "./statements.ts";
import { type Trial, type Tried, tryAll } from "./step.ts";
import { doubtedRate } from "./try-rate.ts";
import { weighed } from "./weighed-charge.ts";
import { verbatim } from "./words.ts";

/** Was the right charge weighed in? */
export function tryCharge(job: Job): Tried {
  const { charge, instruments } = job.record;
  const needs = ruleNeeds(job);
  const rule = later(() => ruleOf(job));
  // Lines within the pre-charged length take nothing: that nothing was added needs no scale and no tolerance.
  const isNothing = charge?.added?.si === 0 && askedBy(job, rule) === 0;
  return tryAll("charge", [
    {
      name: "additional-charge",
      path: "charge",
      needs,
      paths: rulePaths(job),
      run: () => withoutRoom(rule()),
    },
    {
      name: "weighed-charge",
      path: "charge",
      needs: {
        "charge.added": charge?.added,
        ...(!isNothing && {
          "charge.tolerance": charge?.tolerance,
          "instruments.scale": instruments?.scale,
        }),
        ...needs,
      },
      paths: { ...rulePaths(job), tolerance: "charge.tolerance", value: "charge.added" },
      run: () =>
        isNothing ? ownVerdict("pass", say("commissioning.nothing-added")) : weighed(job, rule()),
    },
    ...fedAsLiquid(job),
    ...doubtedRate(job),
    ...doubtsOfCharge(job, rule),
  ]);
}

/** The rule without the remark that no room was looked at: rooms are a step of their own. */
const withoutRoom = (rule: ChargeAssessment): ChargeAssessment =>
  frozen({
    ...rule,
    assumptions: rule.assumptions.filter(({ code }) => code !== "line-set.room-limit-not-checked"),
  });

/** A blend that is charged as vapor changes its make-up (refrigerant makers’ data sheets; from memory). */
function fedAsLiquid({ record, refrigerant }: Job): Trial[] {
  const { added, fedAs } = record.charge ?? {};
  const isBlend = refrigerant && refrigerant.composition.length > 1;
  if (!isBlend || !added || added.si <= 0) return [];
  const run = () =>
    fedAs === "liquid"
      ? ownVerdict("pass", say("commissioning.blend-fed-as-liquid"))
      : ownVerdict(
          "inconclusive",
          say("commissioning.blend-fed-as-vapor"),
          say("commissioning.recover-and-charge-anew"),
        );
  return [{ name: "fed-as-liquid", path: "charge.fedAs", needs: { "charge.fedAs": fedAs }, run }];
}

/** Were the valves opened? Whether they were allowed to be is a hold point. */
export function tryValves({ record: { valves } }: Job): Tried {
  const openedAt = valves?.openedAt;
  const said = () => say("commissioning.valves-opened", { at: verbatim(openedAt ?? "") });
  return tryAll("valves", [
    {
      name: "valves-opened",
      path: "valves",
      needs: { "valves.openedAt": openedAt },
      run: () => ownVerdict("pass", said()),
    },
  ]);
}
