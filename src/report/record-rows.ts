// What was recorded? Every field of a part of the record with its value, its limits of error and where it is from.
// Follows the record itself, so that a field that is added to it later is shown too.
// Does not cover what is missing: the steps list it.
import type { Instruments } from "../commissioning/index.ts";
import { type AnyQuantity, isQuantity } from "../quantity/json.ts";
import type { Context } from "./context.ts";
import { type Block, table, text } from "./report-document.ts";
import { capital, fieldWords, plainWords } from "./words.ts";

type Leaf = readonly [path: string, value: unknown];
type Row = readonly [field: string, value: string, uncertainty: string, source: string];

/** Which instrument reads which field. */
const readBy: readonly (readonly [field: RegExp, instrument: keyof Instruments])[] = [
  [/^tubing\.(length|lift)$/, "tape"],
  [/^joints\[\d+\]\.torque$/, "torqueWrench"],
  [/^pressureTest\.readings\[\d+\]\.pressure$/, "testGauge"],
  [/^pressureTest\.readings\[\d+\]\.temperature$/, "gasThermometer"],
  [/^evacuation\.readings\[\d+\]\.pressure$/, "vacuumGauge"],
  [/^charge\.added$/, "scale"],
  [/^power\.supply\.readings\[\d+\]\.(voltage|lineToLine)$/, "voltmeter"],
  [/^operation\[\d+\](\.charge)?\.pressure$/, "serviceGauge"],
  [/^operation\[\d+\]\.charge\.lineTemperature$/, "lineThermometer"],
  [/^drain\.(slope|unitPitch)\./, "level"],
];

/** Most rows of readings that are printed. */
const mostRows = 14;
/** More columns than a page bears become rows. */
const mostColumns = 5;

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

/** A value of the record as text. */
export function valueText({ figure }: Context, value: unknown, step?: AnyQuantity): string {
  if (isList(value)) return value.map((one) => figure(one as string, step)).join(", ") || "none";
  if (typeof value === "string") {
    return figure(value.replace(/^(\d{4}-\d\d-\d\d)T(\d\d:\d\d)/, "$1 $2"));
  }
  return figure(value as AnyQuantity, step);
}

/** The value at a path of the record. */
export function valueAt({ record }: Context, path: string): unknown {
  return path
    .split(".")
    .reduce<unknown>((value, key) => (isPart(value) ? value[key] : undefined), record);
}

/** The limits of error of an instrument in words. */
export function errorsText(context: Context, instrument: object | undefined): string {
  const { accuracy, relativeAccuracy, accuracyOfReading, resolution } = (instrument ??
    {}) as Record<string, unknown>;
  const shown = [accuracy, relativeAccuracy, accuracyOfReading].filter((one) => isQuantity(one));
  if (shown.length === 0) {
    return isQuantity(resolution) ? `reads to ${context.figure(resolution)}` : "not stated";
  }
  return shown
    .map((one) => `± ${context.figure(one)}${one.kind === "ratio" ? " of the reading" : ""}`)
    .join(" and ");
}

/** The step in which the instrument of a field shows its figures. */
function stepOf(context: Context, path: string): AnyQuantity | undefined {
  const { resolution } = (instrumentOf(context, path)?.given ?? {}) as { resolution?: unknown };
  return isQuantity(resolution) && resolution.si > 0 ? resolution : undefined;
}

function instrumentOf({ record }: Context, path: string) {
  const name = readBy.find(([field]) => field.test(path))?.[1];
  return name && { name, given: record.instruments?.[name] };
}

function originOf(context: Context, path: string, value: unknown): [string, string] {
  if (path.startsWith("equipment.manual")) return ["as printed", "manual"];
  if (path.startsWith("equipment")) return ["as printed", "plate"];
  const by = instrumentOf(context, path);
  if (!by) return [isQuantity(value) ? "not stated" : "—", "record"];
  const stated = by.name === "level" ? "stated beside it" : errorsText(context, by.given);
  return [stated === "not stated" ? stated : `${stated} (limits)`, plainWords(by.name)];
}

/** A part of the record: its fields, and its lists of readings as tables. */
export function recordBlocks(context: Context, path: string, caption: string): Block[] {
  const value = valueAt(context, path);
  if (value === undefined) return [];
  const { facts, lists } = partsOf(value, path);
  const rows = facts.map((leaf) => rowOf(context, leaf));
  return [
    ...table(caption, ["Recorded", "Value", "Uncertainty", "Source"], rows),
    ...lists.flatMap((leaf) => readingsBlocks(context, leaf)),
  ];
}

/** Single fields, and lists that make a table of their own. */
function partsOf(
  value: unknown,
  path: string,
): { facts: Leaf[]; lists: [string, readonly object[]][] } {
  const facts: Leaf[] = [];
  const lists: [string, readonly object[]][] = [];
  const walk = (own: unknown, at: string): void => {
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
  return { facts, lists };
}

function rowOf(context: Context, [path, value]: Leaf): Row {
  const words = fieldWords(path.replace(/^(equipment\.manual|power|\w+)\.(?=\w)/, ""));
  const shown = valueText(context, value, isQuantity(value) ? stepOf(context, path) : undefined);
  return [capital(words), shown, ...originOf(context, path, value)];
}

function columnsOf(items: readonly object[]): string[] {
  return [...new Set(items.flatMap((one) => leavesOf(one, "").map(([key]) => key)))];
}

/** A list of readings: all of them, or evenly picked ones with the first and the last, and how many there are. */
function readingsBlocks(
  context: Context,
  [path, items]: readonly [string, readonly object[]],
): Block[] {
  const columns = columnsOf(items);
  const last = items.length - 1;
  const every = Math.ceil(last / (mostRows - 1));
  const picked = items
    .map((item, i) => [i, item] as const)
    .filter(([i]) => i % every === 0 || i === last);
  const rows = picked.map(([i, item]) => {
    const own = new Map(leavesOf(item, ""));
    return [
      String(i + 1),
      ...columns.map((key) =>
        own.has(key) ? valueText(context, own.get(key), stepOf(context, `${path}[0].${key}`)) : "—",
      ),
    ];
  });
  const name = capital(fieldWords(path));
  const count = picked.length < items.length ? ` (${picked.length} of ${items.length} shown)` : "";
  const origins = columns.flatMap((key) => {
    const sample = leavesOf(items[0], "").find(([own]) => own === key)?.[1];
    const [errors, source] = originOf(context, `${path}[0].${key}`, sample);
    return errors === "—" ? [] : [`${capital(fieldWords(key))}: ${source}, ${errors}.`];
  });
  return [
    ...table(`${name}${count}`, ["No.", ...columns.map((key) => capital(fieldWords(key)))], rows),
    ...(origins.length ? [text(origins.join(" "))] : []),
  ];
}
