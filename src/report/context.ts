// What does every part of a report need? The record, its verdict, and how this reader sees figures and sources.
// Follows no standard. Internal.
// Does not cover layout: see the writers.

import {
  type Catalogue,
  type Citation,
  explain,
  type Figure,
  type Statement,
} from "../assessment/index.ts";
import type { InstallationAssessment, InstallationRecord } from "../commissioning/index.ts";
import type { figureText } from "../display/index.ts";
import { isInvalidInputError } from "../quantity/errors.ts";
import { type AnyQuantity, isQuantity } from "../quantity/json.ts";
import type { SourceId } from "../sources/index.ts";
import { clipped } from "./plain-text.ts";
import type { Run } from "./report-document.ts";
import { type Words, wordsOf } from "./words.ts";

/** How a reader sees figures and statements. */
export interface Reader {
  /** A figure or a word of the record in the reader's form. */
  readonly figure: (
    figure: Figure | boolean | string,
    resolution?: AnyQuantity,
    beside?: readonly Figure[],
  ) => string;
  /** A statement as a sentence. */
  readonly said: (statement: Statement) => string;
  /** The words of the reader's language. */
  readonly words: Words;
}

/** What every part of a report needs. */
export interface Context extends Reader {
  readonly record: InstallationRecord;
  readonly assessment: InstallationAssessment;
  /** The cited works, each once, in the order of their numbers. */
  readonly works: readonly SourceId[];
  /** Links to the works; with their clauses if asked for. */
  readonly refs: (citations: readonly Citation[], clauses?: boolean) => readonly Run[];
}

/** A moment by ISO 8601, which reads better without its T. */
const moment = /^(\d{4}-\d\d-\d\d)T(\d\d:\d\d[\d:.]*(?:Z|[+-]\d\d:\d\d)?)$/;

/** Figures and statements for a reader. */
export function readerOf(show: ReturnType<typeof figureText>, language: Catalogue): Reader {
  const words = wordsOf(language);
  const figure: Reader["figure"] = (value, resolution, beside) => {
    if (typeof value === "boolean") return words.of(value ? "yes" : "no");
    if (typeof value === "string") return clipped(value.replace(moment, "$1 $2"));
    try {
      return show(
        value,
        resolution,
        beside?.filter((one) => typeof one !== "string"),
      );
    } catch (error) {
      if (isInvalidInputError(error) && isQuantity(value)) return String(value); // too large for another unit
      throw error;
    }
  };
  const said: Reader["said"] = ({ code, values }) => {
    const shown = Object.entries(values).map(([name, value]) => [name, verbatimClipped(value)]);
    return explain({ code, values: Object.fromEntries(shown) }, language, figure);
  };
  return { figure, said, words };
}

/** Links to the works that are cited, by their numbers; with their clauses if asked for. */
export function refsTo(works: readonly SourceId[]): Context["refs"] {
  return (citations, clauses = false) =>
    [...new Set(citations.map(({ source }) => source))].flatMap((id, i) => {
      const number = works.indexOf(id) + 1;
      const of = citations.filter(({ source, clause }) => source === id && clause);
      const where = clauses && of.length ? ` ${of.map(({ clause }) => clause).join(", ")}` : "";
      const link = { text: `S${number}${where}`, to: `source-${number}` };
      return i ? [{ text: clauses ? "; " : ", " }, link] : [link];
    });
}

/** Makes the context. */
export function contextOf(
  record: InstallationRecord,
  assessment: InstallationAssessment,
  show: ReturnType<typeof figureText>,
  language: Catalogue,
): Context {
  const works = [...new Set(assessment.sources.map(({ source }) => source))];
  return { record, assessment, ...readerOf(show, language), works, refs: refsTo(works) };
}

/** Texts of the record, cut where nobody would read on. */
const verbatimClipped = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(verbatimClipped);
  const { verbatim } = (value ?? {}) as { verbatim?: unknown };
  return typeof verbatim === "string" && !isQuantity(value)
    ? { verbatim: clipped(verbatim.replace(moment, "$1 $2")) }
    : value;
};
