// What was installed, measured and signed? The record of one installation, as data.
// Follows no single standard; the parts are those that the modules of this library judge.
// Does not cover how it is stored: a quantity keeps itself by `toJSON` and `fromJSON`.
import type { IsoTime } from "../shapes/index.ts";
import type { Amendment } from "./amendment.ts";
import type { NotApplicable } from "./not-applicable.ts";
import type { Drain, OperatingReading, Room } from "./record-building.ts";
import type { Equipment, Instruments, Site } from "./record-equipment.ts";
import type { Power } from "./record-power.ts";
import type { Charge, Evacuation, Joint, PressureTestPart, Tubing } from "./record-tubing.ts";

/** The service valves. Source: none; the library's own type. */
export interface Valves {
  /** When they were opened. */
  readonly openedAt?: IsoTime;
}

/** A photo, by reference: the record holds no pictures. Source: none; the library's own type. */
export interface Photo {
  /** File name, address or key where the app keeps it. */
  readonly reference: string;
  /** Path of the part of the record that it shows, such as `joints[0]`. */
  readonly of?: string;
  /** What is to be seen. */
  readonly caption?: string;
  /** When it was taken. */
  readonly at?: IsoTime;
  /** Digest of the file, such as `sha-256:…`, so that an exchanged picture shows. */
  readonly digest?: string;
}

/**
 * A signature by name and time, as the caller states them. The library verifies neither.
 *
 * Source: none; the library's own type.
 */
export interface Signature {
  /** Name of who signs. */
  readonly name: string;
  /** As what: installer, inspector, owner. */
  readonly role?: string;
  /** When. */
  readonly at: IsoTime;
}

/**
 * The record of one installation. Every part, and every field of a part, may still be missing: a
 * half-filled record is valid, and {@link assessInstallation} says what is missing.
 *
 * Source: none; the library's own format, version 1.
 */
export interface InstallationRecord {
  /** Version of the format. */
  readonly version: 1;
  /** Name of the job. */
  readonly name?: string;
  /** Where it is. */
  readonly site?: Site;
  /** What the plates and the manual say. */
  readonly equipment?: Equipment;
  /** What was measured with. */
  readonly instruments?: Instruments;
  /** The line set. */
  readonly tubing?: Tubing;
  /** Every joint of the line set. */
  readonly joints?: readonly Joint[];
  /** The nitrogen test. */
  readonly pressureTest?: PressureTestPart;
  /** The evacuation and the watch after it. */
  readonly evacuation?: Evacuation;
  /** The refrigerant that was weighed in. */
  readonly charge?: Charge;
  /** The service valves. */
  readonly valves?: Valves;
  /** Circuit and supply. */
  readonly power?: Power;
  /** The condensate drain. */
  readonly drain?: Drain;
  /** The smallest room into which the refrigerant can leak. */
  readonly room?: Room;
  /** Readings on the running unit. */
  readonly operation?: readonly OperatingReading[];
  /** The steps that do not apply here, each by the word of a person; never a pass. */
  readonly notApplicable?: readonly NotApplicable[];
  /** Photos. */
  readonly photos?: readonly Photo[];
  /** Signatures. */
  readonly signatures?: readonly Signature[];
  /** What was changed afterwards, the oldest first; written by {@link amend}. */
  readonly history?: readonly Amendment[];
}
