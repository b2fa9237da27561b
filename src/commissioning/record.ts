// What was installed, measured and signed? The record of one refrigerant system, as data.
// Follows no single standard; the parts are those that the modules of this library judge.
// Does not cover how it is stored: a quantity keeps itself by `toJSON` and `fromJSON`.
import type { Quantity } from "../quantity/quantity.ts";
import type { IsoTime } from "../shapes/index.ts";
import type { Amendment } from "./amendment.ts";
import type { Charge, Evacuation, PressureTestPart } from "./record-circuit.ts";
import type { Equipment } from "./record-equipment.ts";
import type { Instruments } from "./record-instruments.ts";
import type { OperatingReading } from "./record-operation.ts";
import type { Planned } from "./record-plan.ts";
import type { Power } from "./record-power.ts";
import type { Run } from "./record-run.ts";
import type { Waiver } from "./waiver.ts";

/** Where the installation is. */
export interface Site {
  /** How the site is called. */
  readonly name?: string | undefined;
  /** Altitude above sea level: gives the average atmosphere where none was measured. */
  readonly altitude?: Quantity<"length"> | undefined;
  /** Station pressure by a barometer; goes before the altitude. */
  readonly atmosphere?: Quantity<"absolutePressure"> | undefined;
}

/**
 * Under which names the equipment and the instruments are kept on file, apart from the record; what the record
 * states itself goes before them. See {@link completeRecord}.
 */
export interface OnFile {
  /** Name of the equipment: plates and manual. */
  readonly equipment?: string | undefined;
  /** Name of the set of instruments. */
  readonly instruments?: string | undefined;
}

/** The service valves. */
export interface Valves {
  /** When they were opened; the first of them, where there are several pairs. */
  readonly openedAt?: IsoTime | undefined;
}

/** A photo, by reference: the record holds no pictures. */
export interface Photo {
  /** File name, address or key where the app keeps it. */
  readonly reference: string;
  /** Path of the part of the record that it shows, such as `runs[0].joints[0]`. */
  readonly of?: string | undefined;
  /** What is to be seen. */
  readonly caption?: string | undefined;
  /** When it was taken. */
  readonly at?: IsoTime | undefined;
  /** Digest of the file, such as `sha-256:…`, so that an exchanged picture shows. */
  readonly digest?: string | undefined;
}

/**
 * A signature by name and time, as the caller states them. The library verifies neither.
 */
export interface Signature {
  /** Name of who signs. */
  readonly name: string;
  /** As what: installer, inspector, owner. */
  readonly role?: string | undefined;
  /** When. */
  readonly at: IsoTime;
}

/**
 * The record of one refrigerant system: one outdoor unit and one or more runs. Every part, and every field of a part,
 * may still be missing: a half-filled record is valid, and {@link assessInstallation} says what is missing.
 */
export interface InstallationRecord {
  /** Version of the format. */
  readonly version: 2;
  /** Name of the job. */
  readonly name?: string | undefined;
  /** Where it is. */
  readonly site?: Site | undefined;
  /** Equipment and instruments that are kept on file. */
  readonly onFile?: OnFile | undefined;
  /** What the plates and the manual say. */
  readonly equipment?: Equipment | undefined;
  /** What was measured with. */
  readonly instruments?: Instruments | undefined;
  /** What is known before the work: stock, weather, cylinder. */
  readonly plan?: Planned | undefined;
  /** The runs of line: one per indoor unit or per pair of ports. */
  readonly runs?: readonly Run[] | undefined;
  /** The nitrogen tests: one for all runs, or several that together cover them. */
  readonly pressureTests?: readonly PressureTestPart[] | undefined;
  /** The evacuations and the watch after each: one for all runs, or several that together cover them. */
  readonly evacuations?: readonly Evacuation[] | undefined;
  /** The refrigerant that was weighed in. */
  readonly charge?: Charge | undefined;
  /** The service valves. */
  readonly valves?: Valves | undefined;
  /** Circuits and supply. */
  readonly power?: Power | undefined;
  /** Readings on the running system, which together cover the runs. */
  readonly operation?: readonly OperatingReading[] | undefined;
  /** The steps that do not apply here, each by the word of a person; never a pass. */
  readonly waivers?: readonly Waiver[] | undefined;
  /** Photos. */
  readonly photos?: readonly Photo[] | undefined;
  /** Signatures. */
  readonly signatures?: readonly Signature[] | undefined;
  /** What was changed afterwards, the oldest first; written by {@link amend}. */
  readonly history?: readonly Amendment[] | undefined;
}
