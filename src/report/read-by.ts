// With what was a field of the record read? Its instrument, in which steps that shows, and its limits of error in words.
// Follows the record of the instruments. Does not cover how large an error counts: the modules do. Internal.
import { hasNominalLength, type Instruments } from "../commissioning/index.ts";
import { type AnyQuantity, isQuantity } from "../quantity/json.ts";
import type { Context } from "./context.ts";
import { say, verbatim } from "./statements.ts";

/** Which instrument reads which field. */
const readBy: readonly (readonly [field: RegExp, instrument: keyof Instruments])[] = [
  [/^runs\[\d+\]\.tubing\.(length|lift)$/, "tape"],
  [/^runs\[\d+\]\.joints\[\d+\]\.torque$/, "torqueWrench"],
  [/^pressureTests\[\d+\]\.readings\[\d+\]\.pressure$/, "testGauge"],
  [/^pressureTests\[\d+\]\.readings\[\d+\]\.temperature$/, "gasThermometer"],
  [/^evacuations\[\d+\]\.readings\[\d+\]\.pressure$/, "vacuumGauge"],
  [/^charge\.added$/, "scale"],
  [/^power\.supply\.readings\[\d+\]\.(voltage|lineToLine)$/, "voltmeter"],
  [/^operation\[\d+\](\.charge)?\.pressure$/, "serviceGauge"],
  [/^operation\[\d+\]\.charge\.lineTemperature$/, "lineThermometer"],
  [/^runs\[\d+\]\.drain\.(slope|unitPitch)\./, "level"],
];

/** Most fields of most instruments are not there: asked first, as that is quick. */
const isThere = (value: unknown): value is AnyQuantity => value !== undefined && isQuantity(value);

/** The limits of error of an instrument in words. */
export function errorsText(context: Context, instrument: object | undefined): string {
  const { accuracy, relativeAccuracy, accuracyOfReading, resolution } = (instrument ??
    {}) as Record<string, unknown>;
  const shown = [accuracy, relativeAccuracy, accuracyOfReading].filter(isThere);
  if (shown.length === 0) {
    if (!isThere(resolution)) return context.words.of("not-stated");
    const step = verbatim(context.figure(resolution));
    return context.said(say("report.reads-to", { step }));
  }
  return shown
    .map((one) => {
      const limits = `± ${context.figure(one)}`;
      if (one.kind !== "ratio") return limits;
      return context.said(say("report.of-the-reading", { limits: verbatim(limits) }));
    })
    .join("; ");
}

/** The step in which the instrument of a field shows its figures. */
export function stepOf(context: Context, path: string): AnyQuantity | undefined {
  const { resolution } = (instrumentOf(context, path)?.given ?? {}) as { resolution?: unknown };
  return isThere(resolution) && resolution.si > 0 ? resolution : undefined;
}

function instrumentOf({ record }: Context, path: string) {
  const name = readBy.find(([field]) => field.test(path))?.[1];
  const [, run] = /^runs\[(\d+)\]\.tubing\.length$/.exec(path) ?? [];
  if (run && hasNominalLength(record, Number(run))) return undefined;
  return name && { name, given: record.instruments?.[name] };
}

/** Limits of error as they stand behind a value, and where the value is from. */
export function originOf(context: Context, path: string): [limits: string, source: string] {
  const { words } = context;
  if (path.startsWith("equipment.manual")) return ["", words.of("from-manual")];
  if (path.startsWith("equipment")) return ["", words.of("from-nameplate")];
  const by = instrumentOf(context, path);
  if (!by) return ["", words.of("from-record")];
  const { name, given } = by;
  const instrument = words.field(`instruments.${name}`);
  if (name === "level") return ["", `${instrument}, ${words.of("limits-beside")}`];
  const limits = errorsText(context, given);
  if (limits.startsWith("±")) {
    return [` ${limits} (${words.of("limits-of-error")})`, instrument];
  }
  return ["", `${instrument}, ${limits}`];
}
