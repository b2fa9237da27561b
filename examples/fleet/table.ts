// What changed? Outcomes before and after, and what the verdicts say that they did not, or no longer.
import type { Judged } from "./judge.ts";

/** The table as text. */
export function tableOf(all: readonly Judged[]): string {
  const count = (keys: readonly string[]) => {
    const counts = new Map<string, number>();
    for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
    return [...counts].sort(([a, m], [b, n]) => n - m || a.localeCompare(b));
  };
  const rows = (title: string, keys: readonly string[]) => {
    const counted = count(keys).map(([key, n]) => `${String(n).padStart(8)}  ${key}`);
    return counted.length > 0 ? [title, ...counted, ""] : [];
  };
  return [
    ...rows(
      "Outcome before and after",
      all.map(({ before, after }) => `${before} -> ${after}`),
    ),
    ...rows(
      "What is said now",
      all.flatMap(({ fresh }) => fresh),
    ),
    ...rows(
      "What is said no longer",
      all.flatMap(({ gone }) => gone),
    ),
  ].join("\n");
}
