// What does it take to read what a person typed, and what a logger wrote?
import { parseQuantity } from "hvac-install-math/field-text";
import { createLogReader, findIsolation, guessLog, readLog } from "hvac-install-math/logs";
import { bar, degC, ft, inch, micron } from "hvac-install-math/quantity";
import { readQuantity } from "hvac-install-math/read-quantity";
import { heapAfterCollection } from "./logs.ts";
import { measure, shown } from "./measure.ts";
import type { Section } from "./section.ts";

const drop = { kind: "pressureDifference", units: [bar], locale: "de" } as const;
const length = { kind: "length", units: [ft, inch] } as const;

export async function typedText(): Promise<Section> {
  const figures = await measure([
    { name: "readQuantity, 8,14 bar", values: 1, run: () => readQuantity("8,14 bar", drop) },
    {
      name: "parseQuantity, 8,14 bar",
      values: 1,
      run: () => parseQuantity("8,14 bar", { kind: "pressureDifference", locale: "de" }),
    },
    {
      name: "readQuantity, 12' 6 1/2\"",
      values: 1,
      run: () => readQuantity("12' 6 1/2\"", length),
    },
    {
      name: "parseQuantity, 12' 6 1/2\"",
      values: 1,
      run: () => parseQuantity("12' 6 1/2\"", { kind: "length" }),
    },
  ]);
  return {
    title: "Numbers as typed",
    text: "One box of a form.",
    columns: ["reader", "median"],
    rows: figures.map(({ name, nanoseconds }) => [name, shown(nanoseconds)]),
  };
}

const format = {
  separator: ";",
  decimal: ",",
  header: 1,
  time: { written: "date-time", column: 1, order: "day-month-year", zone: "Europe/Berlin" },
  columns: { pressure: { column: 2, unit: micron }, temperature: { column: 3, unit: degC } },
} as const;
const start = Date.UTC(2026, 2, 1);

/** Invented rows, one a second. */
function textOf(from: number, rows: number): string {
  return Array.from({ length: rows }, (_, i) => {
    const [day = "", time = ""] = new Date(start + 1000 * (from + i)).toISOString().split("T");
    const [y, m, d] = day.split("-");
    return `${d}.${m}.${y} ${time.slice(0, 8)};${270 + ((from + i) % 900)},5;20,${i % 10}\n`;
  }).join("");
}
const titles = "Zeit;p [micron];t [°C]\n";
const MB = (bytes: number) => `${(Math.max(0, bytes) / 1e6).toFixed(1)} MB`;

export async function logTexts(): Promise<Section> {
  const sizes = [100, 1000, 10_000, 100_000];
  const texts = sizes.map((rows) => titles + textOf(0, rows));
  const figures = await measure(
    texts.map((text, i) => ({
      name: `readLog, ${sizes[i]} rows`,
      values: sizes[i] ?? 1,
      run: () => readLog(text, format),
    })),
    5,
    60,
  );
  const [longest = ""] = texts.slice(-1);
  const { rows } = readLog(longest, format);
  const more = await measure(
    [
      { name: "findIsolation, 100000 rows", values: 100_000, run: () => findIsolation(rows) },
      { name: "guessLog", values: 1, run: () => guessLog(longest) },
    ],
    5,
    60,
  );
  const before = heapAfterCollection();
  const whole = readLog(longest, format);
  const kept = heapAfterCollection() - before;
  const reader = createLogReader(format);
  reader.add(titles);
  const empty = heapAfterCollection();
  let most = 0;
  for (let chunk = 0; chunk < 100; chunk++) {
    reader.add(textOf(1000 * chunk, 1000));
    if (chunk % 10 === 9) most = Math.max(most, heapAfterCollection() - empty);
  }
  const time = (n: number, of: number) => [shown(n * of), shown(n)];
  return {
    title: "Logs as text",
    text: `Dates in a zone, decimal commas, two columns. What 100 000 rows hold in memory: ${MB(kept)} (${whole.rows.length} rows of three quantities); read by chunks of 1000 rows that are not kept, at most ${MB(most)}.`,
    columns: ["work", "median", "per row"],
    rows: [
      ...figures.map(({ name, nanoseconds }, i) => [name, ...time(nanoseconds, sizes[i] ?? 1)]),
      ...more.map(({ name, nanoseconds }, i) =>
        i === 0 ? [name, ...time(nanoseconds, 100_000)] : [name, shown(nanoseconds), ""],
      ),
    ],
  };
}
