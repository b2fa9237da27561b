// What did a check work out? Every figure of its assessment with its uncertainty and its source.
// Follows JCGM 100:2008, 7.2, for the uncertainty beside the figure.
// Does not cover the insides of a model: its fit stays out.
import type { StepCheck } from "../commissioning/index.ts";
import { type AnyQuantity, isQuantity } from "../quantity/json.ts";
import type { Context } from "./context.ts";
import { type Block, table, type Words } from "./report-document.ts";
import { capital, fieldWords, plainWords } from "./words.ts";

/** Said elsewhere in the report, or of no use to a reader. */
const leftOut = new Set([
  "outcome",
  "reasons",
  "assumptions",
  "cautions",
  "sources",
  "citation",
  "fit",
]);

type Found = readonly [path: string, value: string, uncertainty: string];

/** The figures of a check as a table. */
export function figureBlocks(context: Context, { name, assessment }: StepCheck): Block[] {
  const source = context.refs(assessment.sources);
  const rows = Object.entries(assessment)
    .flatMap(([key, value]) => found(context, key, value))
    .map(([path, value, uncertainty]): Words[] => [
      capital(fieldWords(path)),
      value,
      uncertainty,
      source,
    ]);
  const caption = `Worked out: ${plainWords(name)}`;
  return table(caption, ["Figure", "Value", "Uncertainty", "Source"], rows);
}

function found(context: Context, path: string, value: unknown): Found[] {
  const key = path.slice(path.lastIndexOf(".") + 1);
  if (leftOut.has(key) || value === undefined || value === null) return [];
  if (isQuantity(value)) return [[path, context.figure(value), "—"]];
  if (Array.isArray(value)) return listed(context, path, value);
  if (typeof value !== "object") return [[path, context.figure(value as string | number), "—"]];
  const { value: best, expandedUncertainty, coverageFactor } = value as Record<string, unknown>;
  if (isQuantity(best) && isQuantity(expandedUncertainty)) {
    const k = context.figure(Number((coverageFactor as number).toPrecision(3)));
    return [[path, context.figure(best), `± ${context.figure(expandedUncertainty)} (k = ${k})`]];
  }
  return Object.entries(value).flatMap(([own, one]) => found(context, `${path}.${own}`, one));
}

function listed(context: Context, path: string, items: readonly unknown[]): Found[] {
  if (items.length === 0) return [];
  if (items.some((one) => typeof one === "object" && !isQuantity(one))) {
    return items.flatMap((one, i) => found(context, `${path}[${i}]`, one));
  }
  const shown = items.map((one) => context.figure(one as AnyQuantity));
  const range = /interval$/i.test(path) && shown.length === 2;
  return [[path, shown.join(range ? " to " : ", "), "—"]];
}
