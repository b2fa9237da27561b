// Did the vacuum stand for days before it was broken? What leaked in after its last reading does not show.
// Follows common practice, no source: a vacuum is broken the day it was proven, or read again before.
// Does not cover how much leaked in: only a gauge says that.
import { surelyBefore } from "../shapes/index.ts";
import type { InstallationRecord } from "./record.ts";
import { lastOfEachRun, runsOf } from "./runs.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import { verbatim } from "./words.ts";

/** From one evening to the morning after the next day, ms; common practice, no source. */
const twoDays = 2 * 86_400_000;

/** What is found of a vacuum that stood, and what to do about it. */
export interface StaleVacuum {
  readonly finding: CommissioningStatement;
  readonly action: CommissioningStatement;
}

/** The evacuation that counts and was last read more than two days before valves or charge broke its vacuum. */
export function staleVacuum(record: InstallationRecord): StaleVacuum | undefined {
  const { evacuations, valves, charge } = record;
  const charged = charge?.added?.si ? charge.at : undefined;
  const opened = valves?.openedAt ?? charged;
  if (opened === undefined) return undefined;
  const broken = charged && surelyBefore(charged, opened) ? charged : opened;
  const { counting } = lastOfEachRun(evacuations, "evacuations", runsOf(record));
  for (const { part } of counting) {
    if (!part.at || !surelyBefore(part.at, broken, -twoDays)) continue;
    const values = { opened: verbatim(broken), evacuated: verbatim(part.at) };
    return {
      finding: say("commissioning.opened-long-after-evacuation", values),
      action: say("commissioning.read-vacuum-again"),
    };
  }
  return undefined;
}
