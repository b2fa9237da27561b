// What does a record take on its way through JSON, against JSON.parse and JSON.stringify of the same data?
import { recordCodec } from "hvac-install-math/wire";
import { complete } from "../commissioning/complete-record.ts";
import { pressureLog, vacuumLog } from "./invented-logs.ts";
import { measure, shown } from "./measure.ts";
import type { Section } from "./section.ts";

export async function wire(): Promise<Section> {
  const n = 1850;
  const text = recordCodec.stringify({
    ...complete,
    pressureTests: [{ ...complete.pressureTests?.[0], readings: pressureLog(n).readings }],
    evacuations: [{ ...complete.evacuations?.[0], readings: vacuumLog("outgassing", n, 1800 / n) }],
  });
  const [json, record] = [JSON.parse(text), recordCodec.parse(text)];
  const figures = await measure(
    [
      { name: "JSON.parse", values: 1, run: () => JSON.parse(text) },
      { name: "recordCodec.parse", values: 1, run: () => recordCodec.parse(text) },
      { name: "recordCodec.problems", values: 1, run: () => recordCodec.problems(json) },
      { name: "JSON.stringify", values: 1, run: () => JSON.stringify(json) },
      { name: "recordCodec.stringify", values: 1, run: () => recordCodec.stringify(record) },
    ],
    5,
    60,
  );
  const timeOf = (name: string) => figures.find((one) => one.name === name)?.nanoseconds ?? NaN;
  const basis = (name: string) =>
    timeOf(name.endsWith("stringify") ? "JSON.stringify" : "JSON.parse");
  return {
    title: "A record as JSON",
    text: `A record of ${Math.round(text.length / 1000)} kB with ${n} rows of each log, against the language's own functions on the same data.`,
    columns: ["function", "median", "ratio"],
    rows: figures.map(({ name, nanoseconds }) => [
      name,
      shown(nanoseconds),
      (nanoseconds / basis(name)).toFixed(1),
    ]),
  };
}
