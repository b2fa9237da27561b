// How many slips does the library stop, how many does it name, and which pass unseen? The answers, counted by part.
// Does not cover what is right: the data says that.
import { type Answer, answerTo, type Shown, shown, slippedOf, twinOf } from "./judge.ts";
import type { Slip, SlipPart } from "./slip.ts";

/** A slip with what the library answers. */
export interface Judged {
  readonly slip: Slip;
  /** The answer to its unslipped twin; it has to be a pass. */
  readonly twin: Answer;
  /** The answer to the slip. */
  readonly answer: Answer;
  readonly shown: Shown;
}

/** The answers to all slips. Twins that are the sound input itself are judged once. */
export function judgeAll(slips: readonly Slip[]): Judged[] {
  const twins = new Map<string, Answer>();
  return slips.map((slip) => {
    const key = JSON.stringify([slip.sound, slip.given]);
    const twin = twins.get(key) ?? answerTo(slip.sound, twinOf(slip));
    twins.set(key, twin);
    const answer = answerTo(slip.sound, slippedOf(slip));
    return { slip, twin, answer, shown: shown(answer, twin) };
  });
}

/** The figures of one part. */
export interface Score {
  readonly slips: number;
  readonly refused: number;
  readonly fail: number;
  readonly inconclusive: number;
  /** It passes, but a finding that the twin does not have names it first. */
  readonly finding: number;
  /** It passes, and nobody can know. */
  readonly unknowable: number;
  /** It passes unseen, though it could be known. */
  readonly missed: number;
}

/** The figures of some slips. */
export function scoreOf(judged: readonly Judged[]): Score {
  const count = (which: (one: Judged) => boolean) => judged.filter(which).length;
  return {
    slips: judged.length,
    refused: count((one) => one.shown === "refused"),
    fail: count((one) => one.shown === "fail"),
    inconclusive: count((one) => one.shown === "inconclusive"),
    finding: count((one) => one.shown === "finding"),
    unknowable: count((one) => one.shown === "pass" && one.slip.answer === "unknowable"),
    missed: count((one) => one.shown === "pass" && one.slip.answer !== "unknowable"),
  };
}

/** The figures part by part, in the order of the catalogue. */
export function scoreByPart(judged: readonly Judged[]): ReadonlyMap<SlipPart, Score> {
  const parts = [...new Set(judged.map(({ slip }) => slip.part))];
  return new Map(
    parts.map((part) => [part, scoreOf(judged.filter(({ slip }) => slip.part === part))]),
  );
}
