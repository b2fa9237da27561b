// What did a check work out? Every figure of its assessment with its uncertainty and its source.
// Follows JCGM 100:2008, 7.2, for the uncertainty beside the figure.
// Does not cover the insides of a model: its fit and its intermediate points stay out.
import type { StepCheck } from "../commissioning/index.ts";
import { type AnyQuantity, isQuantity } from "../quantity/json.ts";
import type { Context } from "./context.ts";
import { type Block, table } from "./report-document.ts";
import { capital } from "./words.ts";

/** Said elsewhere in the report, or of no use to a reader. */
const leftOut = new Set([
  "outcome",
  "reasons",
  "assumptions",
  "cautions",
  "sources",
  "actions",
  "citation",
  "fit",
  "corrected",
]);

type Found = readonly [path: string, value: string];

/** The figures of a check as a table. */
export function figureBlocks(context: Context, { name, path, assessment }: StepCheck): Block[] {
  const rows = Object.entries(assessment)
    .map(([key, value]) => [key, found(context, key, value)] as const)
    .filter(([, figures]) => figures.length > 0)
    .map(([key, figures]) => [capital(figureWord(context, key)), joined(context, key, figures)]);
  const works = context.refs(assessment.sources).map(({ text }) => text);
  const { words } = context;
  const caption = `${words.of("worked-out")}: ${words.check(name, path)} (${works.join("")})`;
  return table(caption, [words.of("figure"), words.of("value")], rows);
}

/** The figures of one part in one cell, each with its name below the part. */
function joined(context: Context, key: string, figures: readonly Found[]): string {
  return figures
    .map(([path, value]) =>
      `${figureWord(context, path.slice(key.length).replace(/^\./, ""))} ${value}`.trim(),
    )
    .join("; ");
}

function found(context: Context, path: string, value: unknown): Found[] {
  const key = path.slice(path.lastIndexOf(".") + 1);
  if (leftOut.has(key) || value === undefined || value === null) return [];
  if (Array.isArray(value)) return listed(context, path, value);
  if (isQuantity(value) || typeof value !== "object") {
    return [[path, context.figure(value as AnyQuantity | string | number)]];
  }
  const { value: best, expandedUncertainty, coverageFactor } = value as Record<string, unknown>;
  if (best && expandedUncertainty && isQuantity(best) && isQuantity(expandedUncertainty)) {
    const k = context.figure(Number((coverageFactor as number).toPrecision(3)));
    const limits = context.figure(expandedUncertainty);
    return [[path, `${context.figure(best)} ± ${limits} (k = ${k})`]];
  }
  return Object.entries(value).flatMap(([own, one]) => found(context, `${path}.${own}`, one));
}

function listed(context: Context, path: string, items: readonly unknown[]): Found[] {
  if (items.length === 0) return [];
  const named = items.map((one) => nameAndFigure(context, one));
  if (named.every((one) => one !== undefined)) return [[path, named.join(", ")]];
  if (items.some((one) => typeof one === "object" && !isQuantity(one))) {
    return items.flatMap((one, i) => found(context, `${path}[${i}]`, one));
  }
  const shown = items.map((one) => context.figure(one as AnyQuantity));
  const range = /interval$/i.test(path) && shown.length === 2;
  return [[path, shown.join(range ? " to " : ", ")]];
}

/** An item that is a name and one figure, such as a part of an uncertainty budget. */
function nameAndFigure({ figure }: Context, item: unknown): string | undefined {
  if (typeof item !== "object" || isQuantity(item)) return undefined;
  const [name, quantity, ...more] = Object.values(item as object);
  if (typeof name !== "string" || !isQuantity(quantity) || more.length > 0) return undefined;
  return `${name} ${figure(quantity)}`;
}

/** The words for a figure by its path in the result: each part by the language, or as its name has it. */
function figureWord({ words }: Context, path: string): string {
  return path
    .split(".")
    .map((part) => {
      const [name = "", ...places] = part.split(/[[\]]+/).filter(Boolean);
      return [
        words.code(`report.figure.${name}`, apart(name)),
        ...places.map((place) => Number(place) + 1),
      ].join(" ");
    })
    .join(", ");
}

/** `correctedDrop` as `corrected drop`. */
const apart = (name: string): string =>
  name.replaceAll("-", " ").replace(/(?<=[a-z0-9])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
