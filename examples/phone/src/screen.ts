// What each screen is given.
import type { InstallationAssessment, InstallationRecord } from "hvac-install-math/commissioning";
import type { DecayReading } from "hvac-install-math/vacuum-decay";
import type { Field, Typed } from "./fields.ts";
import type { Reader } from "./reader.ts";

/** The record as it was read, and its verdict. */
export interface Judged {
  readonly record: InstallationRecord;
  readonly assessment: InstallationAssessment;
}

export interface ScreenProps {
  /** Not there yet while the page opens: the boxes come first. */
  readonly judged: Judged | undefined;
  readonly typed: Readonly<Record<string, Typed>>;
  readonly reader: Reader;
  readonly onTyped: (field: Field, typed: Typed) => void;
  readonly onLog: (readings: readonly DecayReading[]) => void;
  readonly onNewJob: () => void;
}
