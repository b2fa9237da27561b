// What was recorded? Every field of a part of the record with its value, its limits of error and where it is from.
// Follows the record itself, so that a field that is added to it later is shown too.
// Does not cover what is missing: the steps list it.
import { type AnyQuantity, isQuantity } from "../quantity/json.ts";
import { choiceText } from "./choices.ts";
import type { Context } from "./context.ts";
import { fieldText, runOf, runText } from "./places.ts";
import { originOf } from "./read-by.ts";
import { type Block, table, text } from "./report-document.ts";
import { say } from "./statements.ts";
import { capital } from "./words.ts";

type Leaf = readonly [path: string, value: unknown];
type Row = readonly [field: string, value: string, source: string];

/** Most rows of readings that are printed. */
const mostRows = 11;
/** More columns than a page bears become rows. */
const mostColumns = 7;

const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value);
const isPart = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !isList(value) && !isQuantity(value);

/** Every field below a value by its path; a list of plain values is one field. */
export function leavesOf(value: unknown, path: string): Leaf[] {
  const at = (key: string) => (path ? `${path}.${key}` : key);
  if (isPart(value)) return Object.entries(value).flatMap(([key, own]) => leavesOf(own, at(key)));
  if (!isList(value) || !value.some((one) => isPart(one) || isList(one))) return [[path, value]];
  return value.flatMap((one, i) => leavesOf(one, `${path}[${i}]`));
}

/** A value of the record as text: a word that its field picks is the reader's. */
export function valueText(
  { figure, words }: Context,
  path: string,
  value: unknown,
  step?: AnyQuantity,
): string {
  const one = (own: unknown) =>
    (typeof own === "string" && choiceText(words, path, own)) || figure(own as AnyQuantity, step);
  return isList(value) ? value.map(one).join(", ") || words.of("none") : one(value);
}

/** The value at a path of the record. */
export function valueAt({ record }: Context, path: string): unknown {
  return path
    .split(/[.[\]]+/)
    .filter(Boolean)
    .reduce<unknown>(
      (value, key) => (isPart(value) ? value[key] : isList(value) ? value[Number(key)] : undefined),
      record,
    );
}

/** Parts of the record that belong together: their fields in a table, runs side by side, and their lists of readings. */
export function recordBlocks(context: Context, paths: readonly string[], caption: string): Block[] {
  const parts = paths.map((path) => ({ path, ...partsOf(valueAt(context, path), path) }));
  const runs = new Set(paths.map((path) => runOf(context, path)));
  const beside = parts.length > 1 && runs.size === parts.length && !runs.has(undefined);
  return [
    ...(beside
      ? besideEachOther(context, parts, caption)
      : table(
          caption,
          (["recorded", "value", "source"] as const).map(context.words.of),
          parts.flatMap((part) => [...rowsOf(context, part)].map((one) => grouped(context, one))),
        )),
    ...parts.flatMap(({ lists }) =>
      lists.flatMap(([path, items]) => {
        const name = fieldText(context, path);
        return readingsBlocks(context, path, items, `${context.behind(caption)} ${name}`);
      }),
    ),
  ];
}

/** The fields of a part by the path of their group. */
function rowsOf(context: Context, { base, facts }: Parts): Map<string, Row[]> {
  const rows = new Map<string, Row[]>();
  for (const leaf of facts) {
    const relative = leaf[0].slice(base.length);
    const group = relative.split(".", 1)[0] as string;
    const at = `${base}${group}`;
    rows.set(at, [...(rows.get(at) ?? []), rowOf(context, leaf, relative.length > group.length)]);
  }
  return rows;
}

/** The same fields of several runs: a row for each field, a column for each run. */
function besideEachOther(
  context: Context,
  parts: readonly (Parts & { readonly path: string })[],
  caption: string,
): Block[] {
  const lines = new Map<string, string[]>();
  const alone: Context = { ...context, record: {} as Context["record"] }; // a column is a run: no number
  parts.forEach((part, i) => {
    for (const [at, rows] of rowsOf(context, part)) {
      const field = at.replace(/\[\d+\]/g, "");
      const cells = lines.get(field) ?? parts.map(() => "—");
      const own = rows.map(([name, value]) => [name.replace(/ [\d.]+$/, ""), value]);
      cells[i] = own.map((one) => one.filter(Boolean).join(" ")).join("; ");
      lines.set(field, cells);
    }
  });
  const runs = parts.map(({ path }) => runText(context, runOf(context, path) as number));
  return table(
    caption,
    [context.words.of("recorded"), ...runs],
    [...lines].map(([field, cells]) => [capital(fieldText(alone, field)), ...cells]),
  );
}

/** Fields of one part as one row. */
function grouped(context: Context, [at, rows]: readonly [string, readonly Row[]]): string[] {
  const values = rows.map(([field, value]) => (field ? `${field} ${value}` : value));
  const sources = [...new Set(rows.map(([, , source]) => source))];
  return [capital(fieldText(context, at)), values.join("; "), sources.join("; ")];
}

interface Parts {
  /** How much of a path the heading says already. */
  readonly base: string;
  readonly facts: readonly Leaf[];
  readonly lists: readonly (readonly [path: string, items: readonly object[]])[];
}

/** Single fields, and lists that make a table of their own. */
function partsOf(value: unknown, path: string): Parts {
  const facts: Leaf[] = [];
  const lists: [string, readonly object[]][] = [];
  const walk = (own: unknown, at: string): void => {
    if (own === undefined) return;
    if (
      isList(own) &&
      own.length > 1 &&
      own.every(isPart) &&
      columnsOf(own).length <= mostColumns
    ) {
      lists.push([at, own]);
    } else if (isPart(own)) {
      for (const [key, one] of Object.entries(own)) walk(one, `${at}.${key}`);
    } else if (isList(own) && own.some(isPart)) {
      own.forEach((one, i) => {
        walk(one, `${at}[${i}]`);
      });
    } else facts.push([at, own]);
  };
  walk(value, path);
  return { base: isPart(value) ? `${path}.` : path.replace(/[^.]+$/, ""), facts, lists };
}

function rowOf(context: Context, [path, value]: Leaf, isPart: boolean): Row {
  const { source, limits, step } = originOf(context, path);
  const shown = valueText(context, path, value, isQuantity(value) ? step : undefined);
  return [isPart ? fieldText(context, path) : "", shown + limits, source];
}

function columnsOf(items: readonly object[]): string[] {
  return [...new Set(items.flatMap((one) => leavesOf(one, "").map(([key]) => key)))];
}

/** A list of readings: all of them, or evenly picked ones with the first and the last, and how many there are. */
function readingsBlocks(
  context: Context,
  path: string,
  items: readonly object[],
  name: string,
): Block[] {
  const columns = columnsOf(items).map((key) => ({
    key,
    ...originOf(context, `${path}[0].${key}`),
  }));
  const last = items.length - 1;
  const every = Math.ceil(last / (mostRows - 1));
  const picked = items
    .map((item, i) => [i, item] as const)
    .filter(([i]) => i % every === 0 || i === last);
  const rows = picked.map(([i, item]) => {
    const own = new Map(leavesOf(item, ""));
    return [
      String(i + 1),
      ...columns.map(({ key, step }) =>
        own.has(key) ? valueText(context, key, own.get(key), step) : "—",
      ),
    ];
  });
  const { said, words } = context;
  const all = { shown: picked.length, all: items.length };
  const count = picked.length < items.length ? ` (${said(say("report.shown-of", all))})` : "";
  const heads = columns.map(({ key }) =>
    capital(words.field(`${path.replace(/\[\d+\]/g, "")}.${key}`)),
  );
  const origins = columns.flatMap(({ source, limits }, i) =>
    source === words.of("from-record")
      ? []
      : [`${context.behind(heads[i] as string)} ${source}${limits}.`],
  );
  return [
    ...table(`${name}${count}`, [words.of("number"), ...heads], rows),
    ...(origins.length ? [text(origins.join(" "))] : []),
  ];
}
