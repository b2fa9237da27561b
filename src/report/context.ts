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
import { type figureText, shownUnit } from "../display/index.ts";
import { isInvalidInputError } from "../quantity/errors.ts";
import { type AnyQuantity, isQuantity } from "../quantity/json.ts";
import type { Kind } from "../quantity/kinds.ts";
import { Quantity } from "../quantity/quantity.ts";
import type { SourceId } from "../sources/index.ts";
import { cutAt } from "./plain-text.ts";
import type { Run } from "./report-document.ts";
import type { ReportOptions } from "./report-options.ts";
import { say, verbatim } from "./statements.ts";
import { type Words, wordsOf } from "./words.ts";

/** How a reader sees figures and statements. */
export interface Reader {
  /** A figure or a word of the record in the reader's form. */
  readonly figure: (
    figure: Figure | boolean | string,
    resolution?: AnyQuantity,
    beside?: readonly Figure[],
  ) => string;
  /** A text of the record, cut where nobody would read on; it says how much is left out. */
  readonly cut: (text: string, most?: number) => string;
  /** What a line is about, with the mark behind which the line follows. */
  readonly behind: (place: string) => string;
  /** A statement as a sentence. */
  readonly said: (statement: Statement) => string;
  /** The words of the reader's language. */
  readonly words: Words;
}

/** What every part of a report needs. */
export interface Context extends Reader {
  /** A figure with its expanded uncertainty: two digits of that, and no more of the figure. */
  readonly estimate: (value: AnyQuantity, uncertainty: AnyQuantity) => string;
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
  const cut: Reader["cut"] = (whole, most = 500) => {
    const [shown, count] = cutAt(whole, most);
    return count === 0
      ? whole
      : explain(say("report.more-characters", { text: verbatim(shown), count }), language);
  };
  const figure: Reader["figure"] = (value, resolution, beside) => {
    if (typeof value === "boolean") return words.of(value ? "yes" : "no");
    if (typeof value === "string") return cut(value.replace(moment, "$1 $2"));
    try {
      return powers(
        show(
          value,
          resolution,
          beside?.filter((one) => typeof one !== "string"),
        ),
      );
    } catch (error) {
      if (isInvalidInputError(error) && isQuantity(value)) return String(value); // too large for another unit
      throw error;
    }
  };
  const said: Reader["said"] = ({ code, values }) => {
    const shown = Object.entries(values).map(([name, value]) => [name, verbatimCut(value, cut)]);
    return explain({ code, values: Object.fromEntries(shown) }, language, figure);
  };
  const behind: Reader["behind"] = (place) =>
    explain(say("report.about", { place: verbatim(place) }), language);
  return { figure, cut, behind, said, words };
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
  options: ReportOptions,
): Context {
  const works = [...new Set(assessment.sources.map(({ source }) => source))];
  const reader = readerOf(show, options.language);
  const estimate: Context["estimate"] = (value, uncertainty) => {
    const step = twoDigitsOf(value, uncertainty, options);
    return [value, uncertainty].map((one) => reader.figure(one, step)).join(" ± ");
  };
  return { record, assessment, ...reader, estimate, works, refs: refsTo(works) };
}

/** Kinds that are read in two units at once, such as feet and inches. */
const split = new Set<Kind>(["length", "mass", "duration"]);

/** The step of the second digit of an uncertainty, in the unit in which its figure is shown. JCGM 100:2008, 7.2.6. */
function twoDigitsOf(
  value: AnyQuantity,
  { si }: AnyQuantity,
  { system, units }: ReportOptions,
): AnyQuantity | undefined {
  if (split.has(value.kind) || !(si > 0)) return undefined;
  const { difference, scale } = shownUnit(value as Quantity<Kind>, { system, units });
  const step = 10 ** (Math.floor(Math.log10(si / scale)) - 1);
  return new Quantity(step * scale, difference) as AnyQuantity;
}

/** A power of ten as people write it. */
const powers = (text: string): string =>
  text.replace(
    /(\d)E(−?)(\d+)/g,
    (_, digit, sign, power: string) =>
      `${digit} × 10${sign && "⁻"}${[...power].map((one) => "⁰¹²³⁴⁵⁶⁷⁸⁹"[Number(one)]).join("")}`,
  );

/** Texts of the record in a statement, cut. */
const verbatimCut = (value: unknown, cut: Reader["cut"]): unknown => {
  if (Array.isArray(value)) return value.map((one) => verbatimCut(one, cut));
  const { verbatim: text } = (value ?? {}) as { verbatim?: unknown };
  return typeof text === "string" && !isQuantity(value)
    ? verbatim(cut(text.replace(moment, "$1 $2")))
    : value;
};
