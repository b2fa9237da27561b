import { explain, type SafetyStatement } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import type { LineSetStatement } from "hvac-install-math/line-set";

/** A statement of the module as its English sentence. */
export function inEnglish(said: LineSetStatement | SafetyStatement | undefined): string {
  return said ? explain(said, english) : "nothing";
}

/** Statements as English sentences. */
export const sentences = (
  said: readonly (LineSetStatement | SafetyStatement)[] | undefined,
): string[] => (said ?? []).map(inEnglish);
