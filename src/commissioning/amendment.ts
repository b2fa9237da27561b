// What was changed afterwards, by whom and why? One entry of a record's history. Types only.
// Follows common practice, no source. Does not cover proof of who it was.
import type { IsoTime } from "../shapes/index.ts";

/**
 * One change of a record. What was there before is kept in `previous`; without `previous` nothing was.
 */
export interface Amendment {
  /** The field, part or list that changed, such as `runs[0].tubing.length` or `waivers`. */
  readonly path: string;
  /** What stood there before; missing when nothing did. */
  readonly previous?: unknown;
  /** Whether the record was wrong, or the work was done anew; a joint of which it is not said counts as made anew. */
  readonly kind?: "correction" | "rework" | undefined;
  /** Who changed it. */
  readonly by: string;
  /** When. */
  readonly at: IsoTime;
  /** Why. */
  readonly reason: string;
}
