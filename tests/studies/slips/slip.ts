// What is a slip? A figure, unit, row, date or proof that was typed wrong into a sound input, and the right answer to it.
// The right answers were decided from physics and the order of the work before the library was asked.
// Does not cover how the library answers: see judge.ts.

/** Where a slip belongs: a module, or the record as a whole. */
export type SlipPart =
  | "line-set"
  | "charge"
  | "pressure-test"
  | "vacuum-decay"
  | "flare-joint"
  | "circuit-protection"
  | "supply-voltage"
  | "condensate"
  | "charge-limit"
  | "operating-check"
  | "refrigerants"
  | "read-quantity"
  | "logs"
  | "record";

/**
 * The right answer. `refused`: the value cannot be used, and the answer says where it stands. `finding`: it passes, but
 * a finding names it first. `unknowable`: what was typed could be true, so that no figure of the input shows the slip.
 */
export type RightAnswer = "refused" | "fail" | "inconclusive" | "finding" | "unknowable";

/** Values at paths; null where something was left out. */
export type Change = Readonly<Record<string, unknown>>;

/** One slip: the sound input that it spoils, what is typed there, and what the right answer is. */
export interface Slip {
  readonly id: string;
  readonly part: SlipPart;
  /** Name of the sound input; see sound.ts. */
  readonly sound: string;
  /** What went wrong, in words: what was typed for what was meant. */
  readonly slip: string;
  /** What the sound input needs beside it so that the slip is possible; the unslipped twin has it too. */
  readonly given: Change;
  /** What is typed, by its path in the input; what was meant stands there in the twin. */
  readonly typed: Change;
  readonly answer: RightAnswer;
  /** The reason, or why nobody can know. */
  readonly because: string;
}

/** A row of a table of slips: id, slip, what is typed, the right answer, the reason, and what the twin needs too. */
export type Row = readonly [
  id: string,
  slip: string,
  typed: Change,
  answer: RightAnswer,
  because: string,
  given?: Change,
];

/** The slips of a table: one part, one sound input. */
export const slipsOf = (part: SlipPart, sound: string, rows: readonly Row[]): Slip[] =>
  rows.map(([id, slip, typed, answer, because, given = {}]) => ({
    id: `${part}/${id}`,
    part,
    sound,
    slip,
    given,
    typed,
    answer,
    because,
  }));
