// The plan as text for a terminal of 80 columns: what to bring, to set, to check, to ask.
import { type Caution, explain, label, type Statement } from "hvac-install-math/assessment";
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { figureText, type UnitSystem } from "hvac-install-math/display";
import { english } from "hvac-install-math/language/en";
import type { InstallationPlan, PlanItem } from "hvac-install-math/planning";
import { bullets, title } from "./text.ts";

/** The whole plan. */
export function planText(
  { site, runs = [] }: InstallationRecord,
  plan: InstallationPlan,
  system: UnitSystem,
): string {
  const show = figureText({ system });
  const say = (said: Statement) => explain(said, english, show);
  const line = (one: PlanItem) => {
    const [, place] = /^runs\[(\d+)\]/.exec(one.path ?? "") ?? [];
    const run = place && !one.code.startsWith("planning.") && runs[Number(place)]?.name;
    return run ? `${label("report.label.run", english)} ${run}: ${say(one)}` : say(one);
  };
  const caution = (one: Caution) =>
    one.kind === "danger"
      ? `${label("assessment.caution.danger", english)}: ${say(one)}`
      : say(one);
  const part = (name: "bring" | "set" | "check" | "ask" | "cautions", lines: readonly string[]) =>
    lines.length > 0
      ? [...title(label(`report.label.${name}`, english), "-"), ...bullets(lines), ""]
      : [];
  return [
    ...title(`${label("report.label.plan-title", english)}: ${site?.name ?? "no site named"}`, "="),
    ...part("bring", plan.bring.map(line)),
    ...part("set", plan.set.map(line)),
    ...part(
      "check",
      plan.check.map(
        (one) => `${label(`assessment.outcome.${one.outcome}`, english)}: ${line(one)}`,
      ),
    ),
    ...part("ask", plan.ask.map(say)),
    ...part("cautions", plan.cautions.map(caution)),
  ].join("\n");
}
