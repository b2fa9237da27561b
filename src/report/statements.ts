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
import type { StepWord } from "../commissioning/index.ts";

/**
 * The sentences of a report: values by code.
 */
export interface ReportStatements {
  "report.lead-pass": None;
  "report.lead-fail": None;
  "report.lead-inconclusive": None;
  "report.nothing-to-ask": None;
  "report.plan-is-arithmetic": None;
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
  "report.read-in-reproduction": None;
  "report.read-from-memory": None;
  "report.no-text": None;
  "report.judges-a-record": None;
  "report.repeats-what-was-stated": None;
  "report.what-plus-minus-means": None;
  "report.appendix-left-out": None;
  "report.about": { readonly place: Verbatim };
  "report.less-than": { readonly limit: Figure };
  "report.more-than": { readonly limit: Figure };
  "report.what-a-pass-means": None;
  "report.standing": None;
  "report.signatures-not-verified": None;
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
  | "signed"
  | "amendments"
  | "nobody"
  | "none"
  | "not-stated"
  | "yes"
  | "no"
  | "verdict"
  | "actions"
  | "hold-points"
  | "overview"
  | "not-yet"
  | "appendix"
  | "steps"
  | "assumptions"
  | "cautions"
  | "installation"
  | "nameplate"
  | "manual"
  | "run"
  | "instruments"
  | "photos"
  | "signatures"
  | "sources"
  | "limits"
  | "why"
  | "step"
  | "outcome"
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
