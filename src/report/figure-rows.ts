// What did a check work out? Every figure of its assessment with its uncertainty and its source.
// Follows JCGM 100:2008, 7.2, for the uncertainty beside the figure.
// Does not cover the insides of a model: its fit and its intermediate points stay out.
import type { Figure } from "../assessment/index.ts";
import type { StepCheck } from "../commissioning/index.ts";
import { type AnyQuantity, isQuantity } from "../quantity/json.ts";
import { percent } from "../quantity/units/index.ts";
import { choiceText } from "./choices.ts";
import type { Context } from "./context.ts";
import type { LeftOut } from "./figure-path.ts";
import { placeText } from "./places.ts";
import { type Block, table } from "./report-document.ts";
import { say } from "./statements.ts";
import { capital } from "./words.ts";

const leftOut: ReadonlySet<string> = new Set([
  "outcome",
  "cause",
  "reasons",
  "assumptions",
  "cautions",
  "sources",
  "actions",
  "toVerify",
  "citation",
  "fit",
  "corrected",
] satisfies LeftOut[]);

/** Figures that are the two ends of a range. */
const ranges = new Set(["leakInterval", "lossAtLimit"]);

type Found = readonly [path: string, value: string];

/** The figures of the checks of a step: checks of one name side by side. */
export function figureBlocks(context: Context, checks: readonly StepCheck[]): Block[] {
  const names = [...new Set(checks.map(({ name }) => name))];
  return names.flatMap((name) =>
    tableOf(
      context,
      name,
      checks.filter((one) => one.name === name),
    ),
  );
}

/** Columns of figures that a page bears. */
const mostColumns = 5;

function tableOf(context: Context, name: string, checks: readonly StepCheck[]): Block[] {
  const { words } = context;
  const rows = new Map<string, string[]>();
  checks.forEach(({ assessment }, i) => {
    for (const [key, value] of Object.entries(assessment)) {
      const figures = found(context, key, value);
      if (figures.length === 0) continue;
      const cells = rows.get(key) ?? checks.map(() => "—");
      cells[i] = joined(context, key, figures);
      rows.set(key, cells);
    }
  });
  const caption = `${context.behind(words.of("worked-out"))} ${words.code(`commissioning.check.${name}`)}`;
  const named = [...rows].map(([key, cells]) => [capital(figureWord(context, key)), ...cells]);
  if (checks.length === 1) return table(caption, ["figure", "value"].map(labelOf(words)), named);
  const places = checks.map(({ path }) => capital(placeText(context, path)));
  if (checks.length <= mostColumns) {
    return table(caption, [words.of("figure"), ...places], named);
  }
  const turned = places.map((place, i) => [place, ...named.map((row) => row[i + 1] as string)]);
  const head = [words.of("figure"), ...named.map(([figure]) => figure as string)];
  return named.length === 0 ? [] : table(caption, head, turned);
}

const labelOf = (words: Context["words"]) => (name: string) =>
  words.of(name as Parameters<Context["words"]["of"]>[0]);

/** The figures of one part in one cell, each with its name below the part. */
const joined = (context: Context, key: string, figures: readonly Found[]): string =>
  figures
    .map(([path, value]) => (path === key ? value : `${figureWord(context, path)} ${value}`))
    .join("; ");

function found(context: Context, path: string, value: unknown): Found[] {
  const key = path.slice(path.lastIndexOf(".") + 1);
  if (leftOut.has(key) || value === undefined || value === null) return [];
  if (Array.isArray(value)) return listed(context, path, value);
  if (isQuantity(value) || typeof value !== "object") return [[path, shown(context, path, value)]];
  const { value: best, expandedUncertainty, coverageFactor } = value as Record<string, unknown>;
  if (best && expandedUncertainty && isQuantity(best) && isQuantity(expandedUncertainty)) {
    const k = context.figure(Number((coverageFactor as number).toPrecision(3)));
    return [[path, `${context.estimate(best, expandedUncertainty)} (k = ${k})`]];
  }
  return Object.entries(value).flatMap(([own, one]) => found(context, `${path}.${own}`, one));
}

/** A figure, or a word of the module in the reader's language. */
function shown(context: Context, path: string, value: unknown): string {
  const { figure, words } = context;
  if (typeof value === "number" && probabilities.test(path)) return chanceText(context, value);
  return (
    (typeof value === "string" && choiceText(words, path, value)) || figure(value as AnyQuantity)
  );
}

/** Figures that are a probability. */
const probabilities = /^shares\.|robability$/;

/** A probability with the digits that a model deserves. */
function chanceText({ figure, said }: Context, value: number): string {
  const limit = percent(0.1);
  if (value < 0.001) return said(say("report.less-than", { limit }));
  if (value > 0.999) return said(say("report.more-than", { limit: percent(99.9) }));
  return figure(percent(Number((100 * value).toPrecision(2))) as AnyQuantity);
}

function listed(context: Context, path: string, items: readonly unknown[]): Found[] {
  if (items.length === 0) return [];
  const named = items.map((one) => nameAndFigure(context, path, one));
  if (named.every((one) => one !== undefined)) return [[path, named.join(", ")]];
  if (items.some((one) => typeof one === "object" && !isQuantity(one))) {
    const at = (i: number) => (items.length > 1 ? `${path}[${i}]` : path);
    return items.flatMap((one, i) => found(context, at(i), one));
  }
  const [from, to] = items as Figure[];
  if (ranges.has(path) && from !== undefined && to !== undefined) {
    return [[path, context.said(say("report.range", { from, to }))]];
  }
  return [[path, items.map((one) => shown(context, path, one)).join(", ")]];
}

/** An item that is a name and one figure, such as a part of an uncertainty budget. */
function nameAndFigure(context: Context, path: string, item: unknown): string | undefined {
  if (typeof item !== "object" || isQuantity(item)) return undefined;
  const [name, quantity, ...more] = Object.values(item as object);
  if (typeof name !== "string" || !isQuantity(quantity) || more.length > 0) return undefined;
  return `${shown(context, path, name)} ${context.figure(quantity)}`;
}

/** The words for a figure by its path in the verdict, with its places in lists. */
function figureWord({ words }: Context, path: string): string {
  const places = [...path.matchAll(/\[(\d+)\]/g)].map(([, place]) => Number(place) + 1);
  const word = words.code(`report.figure.${pathOnly(path)}`);
  return places.length ? `${word} (${places.join(".")})` : word;
}

const pathOnly = (path: string): string => path.replace(/\[\d+\]/g, "");
