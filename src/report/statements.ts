// What does a report say itself, around what the verdict says? Every code with the values of its sentence.
// Follows assessment/statement.ts; the sentences are in language/, one file per language.
// Does not cover statements of the modules: each has its own.
import {
  type Figure,
  type None,
  type Say,
  sayer,
  type Value,
  type Verbatim,
} from "../assessment/statement.ts";
import type { HoldWord, StepWord } from "../commissioning/index.ts";

/**
 * The sentences of a report: values by code.
 */
export interface ReportStatements {
  "report.lead-pass": None;
  "report.lead-fail": None;
  "report.lead-inconclusive": None;
  "report.known-with-it": None;
  "report.what-decides": None;
  "report.nothing-to-do": None;
  "report.nothing-to-ask": None;
  "report.plan-is-arithmetic": None;
  "report.on-hold": { readonly holds: readonly HoldWord[] };
  "report.nothing-held": None;
  "report.fields-missing": { readonly count: number };
  "report.values-unusable": { readonly count: number };
  "report.waits-for": { readonly steps: readonly StepWord[] };
  "report.uncertainty-note": None;
  "report.waived-by": { readonly by: Verbatim; readonly at: Verbatim; readonly why: Value };
  "report.counts-when-passed": { readonly steps: readonly StepWord[] };
  "report.not-recorded": None;
  "report.could-not-be-used": None;
  "report.assumed": None;
  "report.cause": { readonly cause: Value };
  "report.fields-needed": { readonly count: number };
  "report.all-recorded": None;
  "report.beyond-the-steps": None;
  "report.nothing-beyond": None;
  "report.nothing-cited": None;
  "report.read-in-reproduction": None;
  "report.read-from-memory": None;
  "report.no-text": None;
  "report.judges-a-record": None;
  "report.repeats-what-was-stated": None;
  "report.what-a-pass-means": None;
  "report.standing": None;
  "report.signatures-not-verified": None;
  "report.no-site": None;
  "report.no-nameplate": None;
  "report.no-manual": None;
  "report.no-instrument": None;
  "report.no-photo": None;
  "report.no-signature": None;
  "report.no-amendment": None;
  "report.no-digest": None;
  "report.more-characters": { readonly text: Verbatim; readonly count: number };
  "report.of-the-reading": { readonly limits: Verbatim };
  "report.reads-to": { readonly step: Verbatim };
  "report.serial-number": { readonly number: Verbatim };
  "report.range": { readonly from: Figure; readonly to: Figure };
  "report.shown-of": { readonly shown: number; readonly all: number };
}

/** The labels of a report. */
export type ReportWord = `report.label.${
  | "title"
  | "plan-title"
  | "bring"
  | "set"
  | "ask"
  | "unnamed"
  | "site"
  | "refrigerant"
  | "outdoor-unit"
  | "signed"
  | "amendments"
  | "created"
  | "nobody"
  | "none"
  | "not-stated"
  | "yes"
  | "no"
  | "verdict"
  | "actions"
  | "hold-points"
  | "overview"
  | "steps"
  | "missing"
  | "assumptions"
  | "cautions"
  | "this-record"
  | "installation"
  | "nameplate"
  | "manual"
  | "run"
  | "instruments"
  | "photos"
  | "signatures"
  | "sources"
  | "limits"
  | "contents"
  | "what"
  | "state"
  | "waits-for"
  | "why"
  | "step"
  | "outcome"
  | "open"
  | "check"
  | "by"
  | "checks"
  | "recorded"
  | "value"
  | "source"
  | "figure"
  | "worked-out"
  | "instrument"
  | "which"
  | "accuracy"
  | "calibrated"
  | "calibration-due"
  | "reference"
  | "shows"
  | "caption"
  | "taken"
  | "digest"
  | "name"
  | "as"
  | "when"
  | "number"
  | "field"
  | "before"
  | "work"
  | "clauses"
  | "read"
  | "reproduction"
  | "memory"
  | "from-manual"
  | "from-nameplate"
  | "from-record"
  | "limits-beside"
  | "limits-of-error"}`;

/** Makes a sentence of a report. */
export const say: Say<ReportStatements> = /* @__PURE__ */ sayer();

/** A text that no language changes. */
export const verbatim = (text: string): Verbatim => ({ verbatim: text });
