// What does a record say together with what it refers to? Equipment and instruments on file, written into it.
// Follows common practice: what a plate, a manual or a certificate fixes is stated once and kept.
// Does not cover how the file is kept: an app does that.
import { objectOf, refuse } from "../quantity/check.ts";
import { checkRecord } from "./check-record.ts";
import type { InstallationRecord } from "./record.ts";
import type { Equipment } from "./record-equipment.ts";
import type { Instruments } from "./record-instruments.ts";
import { say } from "./statements.ts";

/**
 * Equipment and instruments by the names under which records refer to them.
 */
export interface Files {
  /** Plates and manuals: one entry per model. */
  readonly equipment?: Readonly<Record<string, Equipment>> | undefined;
  /** Sets of instruments: one entry per bag. */
  readonly instruments?: Readonly<Record<string, Instruments>> | undefined;
}

/**
 * The record with the equipment and the instruments that it refers to written into it, so that it stands by itself:
 * to be signed, reported and kept. What the record states itself goes before what is on file.
 *
 * @param record - The record with its references in `onFile`.
 * @param files - What is on file.
 * @returns The whole record, frozen, without references.
 * @throws {@link InvalidInputError} when a name is not on file, or it is not a record.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { completeRecord } from "hvac-install-math/commissioning";
 * import { oz } from "hvac-install-math/quantity";
 *
 * const files = { equipment: { "invented 12k": { refrigerant: "R-32", factoryCharge: oz(21.2) } } };
 * const record = { version: 2, onFile: { equipment: "invented 12k" } } as const;
 * completeRecord(record, files).equipment?.factoryCharge?.toString(); // => 21.2 oz
 * ```
 */
export function completeRecord(record: InstallationRecord, files: Files): InstallationRecord {
  return checkRecord(completed(checkRecord(record), objectOf("files", files)));
}

/** The same for a record that was checked. */
export function completed(record: InstallationRecord, files: Files = {}): InstallationRecord {
  const { onFile, ...own } = record;
  if (!onFile) return record;
  const plates = found("equipment", onFile.equipment, files.equipment);
  const bag = found("instruments", onFile.instruments, files.instruments);
  const { equipment = {}, instruments = {} } = own;
  const manual = { ...plates?.manual, ...equipment.manual };
  const unit = { ...plates?.outdoorUnit, ...equipment.outdoorUnit };
  return {
    ...own,
    equipment: {
      ...plates,
      ...equipment,
      ...(Object.keys(unit).length > 0 && { outdoorUnit: unit }),
      ...(Object.keys(manual).length > 0 && { manual }),
    },
    instruments: { ...bag, ...instruments },
  };
}

function found<T>(
  kind: keyof Files,
  name: string | undefined,
  files: Readonly<Record<string, T>> | undefined,
): T | undefined {
  if (name === undefined) return undefined;
  if (files && Object.hasOwn(files, name)) return files[name];
  const hint = say("commissioning.pass-what-is-on-file");
  return refuse(`record.onFile.${kind}`, name, `a name in onFile.${kind} of the options`, hint);
}
