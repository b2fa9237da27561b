// Which words stand in the statements of this module? Codes for steps, fields, holds and the like; no text.
// Follows the names of the record and of the steps; the catalogues in language/ word them.
// Does not cover sentences: see statements.ts.
import type { Verbatim } from "../assessment/statement.ts";
import type { FieldPath } from "./field-path.ts";
import type { CheckName, HoldName, HoldState, StepName, StepState } from "./names.ts";
import type { InstallationRecord } from "./record.ts";
import type { TestRequirement } from "./record-circuit.ts";
import type { Construction } from "./record-equipment.ts";
import type { WaiverReason } from "./waiver.ts";

/** The word for a step. */
export type StepWord = `commissioning.step.${StepName}`;

/** The word for a hold point. */
export type HoldWord = `commissioning.hold.${HoldName}`;

/** The word for a field of the record: its path without positions. */
export type FieldWord = `commissioning.field.${FieldPath<InstallationRecord>}`;

/** The word for a field of equipment or instruments. */
export type PlateField = Extract<
  FieldWord,
  `commissioning.field.${"equipment" | "instruments"}${string}`
>;

/** The word for a field of circuits and supply. */
export type PowerField = Extract<FieldWord, `commissioning.field.power${string}`>;

/** The word for a field of the job, its runs and tests. */
export type WorkField = Exclude<FieldWord, PlateField | PowerField>;

/** One of the two lines. */
export type LineWord = `commissioning.line.${"liquid" | "vapor"}`;

/** The word for a reason to waive a step. */
export type WaiverWord = `commissioning.waiver.${WaiverReason}`;

/** The word for a construction that needs fewer steps. */
export type ConstructionWord = `commissioning.construction.${Exclude<Construction, "split">}`;

/** The word for where a requirement comes from. */
export type StandingWord = `commissioning.standing.${NonNullable<TestRequirement["standing"]>}`;

/** Cooling or heating. */
export type ModeWord = `commissioning.mode.${"cooling" | "heating"}`;

/** Every word of this module but those for fields, which have a catalogue of their own. */
export type CommissioningWord =
  | StepWord
  | HoldWord
  | LineWord
  | WaiverWord
  | ConstructionWord
  | StandingWord
  | ModeWord
  | `commissioning.check.${CheckName}`
  | `commissioning.step-state.${StepState}`
  | `commissioning.hold-state.${HoldState}`;

/** What a record says in its own words: a name, a date. */
export const verbatim = (text: string): Verbatim => ({ verbatim: text });

/** The word for the field at a path of the record. */
export const fieldWord = (path: string): FieldWord =>
  `commissioning.field.${path.replace(/\[\d+\]/g, "")}` as FieldWord;

/** The words for fields, each once. */
export const fieldWords = (paths: readonly string[]): readonly FieldWord[] => [
  ...new Set(paths.map(fieldWord)),
];

/** The word for a step. */
export const stepWord = (name: StepName): StepWord => `commissioning.step.${name}`;
