// Which joint is meant? By its name, or by its line and end.
// Follows no standard. Does not cover a joint of which neither is recorded.
import type { Joint } from "./record-run.ts";

/** What tells a joint from the others of its run. */
export const joint = ({ name, line, end }: Joint): string | undefined =>
  name ?? (line && end && `${line} ${end}`);
