// A part of a plan as lines that a test can write down: path, code, values, sources.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { type PlanItem, planInstallation } from "hvac-install-math/planning";
import { rules } from "../commissioning/assess.ts";
import { changed } from "../commissioning/changed.ts";
import { said } from "../told.ts";

/** A part of a plan, each line as text. */
export interface Part {
  readonly bring: readonly string[];
  readonly set: readonly string[];
  readonly check: readonly string[];
  readonly ask: readonly string[];
}

const line = ({ path, sources, ...one }: PlanItem): string => {
  const from = sources.map(({ source, clause }) => `${source} ${clause}`.trim()).join(" + ");
  return `${path === undefined ? "" : `${path}: `}${said(one)} [${from}]`;
};

/** What the plan of a record, with other values at some paths, says of one part. */
export function partOf(
  part: PlanItem["part"],
  record: InstallationRecord,
  changes: Readonly<Record<string, unknown>> = {},
): Part {
  const { bring, set, check, ask } = planInstallation(changed(changes, record), { rules });
  const own = <T extends PlanItem>(lines: readonly T[]) => lines.filter((one) => one.part === part);
  return {
    bring: own(bring).map(line),
    set: own(set).map(line),
    check: own(check).map((one) => `${one.outcome}: ${line(one)}`),
    ask: ask
      .filter(({ changes }) => changes.includes(part))
      .map(({ path, ...one }) => `${path}: ${said(one)}`),
  };
}
