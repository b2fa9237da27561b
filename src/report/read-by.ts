// With what was a field of the record read? Its instrument, the steps in which that shows, its limits of error in words.
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

function instrumentOf({ record }: Context, path: string) {
  const name = readBy.find(([field]) => field.test(path))?.[1];
  const [, run] = /^runs\[(\d+)\]\.tubing\.length$/.exec(path) ?? [];
  if (run && hasNominalLength(record, Number(run))) return undefined;
  return name && { name, given: record.instruments?.[name] };
}

/** Where a value of the record is from. */
interface Origin {
  /** The plate, the manual, the record, or the instrument that read it. */
  readonly source: string;
  /** The instrument's limits of error as they stand behind the value; empty where none are stated. */
  readonly limits: string;
  /** The step in which the instrument shows its figures. */
  readonly step?: AnyQuantity | undefined;
}

/** Where the value of a field is from. */
export function originOf(context: Context, path: string): Origin {
  const { words } = context;
  const from = (source: string): Origin => ({ source, limits: "" });
  if (path.startsWith("equipment.manual")) return from(words.of("from-manual"));
  if (path.startsWith("equipment")) return from(words.of("from-nameplate"));
  const by = instrumentOf(context, path);
  if (!by) return from(words.of("from-record"));
  const { name, given } = by;
  const { resolution } = (given ?? {}) as { resolution?: unknown };
  const step = isThere(resolution) && resolution.si > 0 ? resolution : undefined;
  const instrument = words.field(`instruments.${name}`);
  if (name === "level") return { ...from(`${instrument}, ${words.of("limits-beside")}`), step };
  const limits = errorsText(context, given);
  return limits.startsWith("±")
    ? { source: instrument, limits: ` ${limits} (${words.of("limits-of-error")})`, step }
    : { ...from(`${instrument}, ${limits}`), step };
}
