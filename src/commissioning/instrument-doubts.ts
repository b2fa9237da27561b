// Can an instrument err as little, or as much, as the record says? Limits of error of 0, and of other units.
// Follows common practice, no source. Does not cover calibration: see calibration.ts.
import { isQuantity } from "../quantity/json.ts";
import type { InstallationRecord } from "./record.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import { fieldWords } from "./words.ts";

/** What is odd of the instruments. */
export const instrumentsDoubted = (record: InstallationRecord): CommissioningStatement[] => [
  ...exact(record),
  ...coarse(record),
];

/** Limits of error of 0 are a claim that no instrument keeps; common practice, no source. */
function exact({ instruments = {} }: InstallationRecord): CommissioningStatement[] {
  const paths = Object.entries(instruments).flatMap(([name, instrument]) => {
    const { accuracy, relativeAccuracy, accuracyOfReading, resolution, repeatability } =
      instrument as Record<string, unknown>;
    const limits = figuresOf(accuracy, relativeAccuracy, accuracyOfReading);
    const known = limits.length > 0 ? limits : figuresOf(resolution, repeatability);
    return known.length > 0 && known.every((si) => si === 0) ? [`instruments.${name}`] : [];
  });
  const fields = fieldWords(paths);
  return fields.length ? [say("commissioning.instrument-without-error", { fields })] : [];
}

/** An accuracy of more than 100 steps of the display is one of another unit; common practice, no source. */
function coarse({ instruments = {} }: InstallationRecord): CommissioningStatement[] {
  const paths = Object.entries(instruments).flatMap(([name, instrument]) => {
    const { accuracy, resolution } = instrument as Record<string, unknown>;
    const [error, step] = [accuracy, resolution];
    const comparable = isQuantity(error) && isQuantity(step) && error.kind === step.kind;
    return comparable && step.si > 0 && error.si > 100 * step.si ? [`instruments.${name}`] : [];
  });
  const fields = fieldWords(paths);
  return fields.length ? [say("commissioning.instrument-coarse", { fields })] : [];
}

/** The figures that are stated; a gauge may have a step per range, which is none. */
const figuresOf = (...figures: unknown[]) =>
  figures.flatMap((one) => (isQuantity(one) ? [one.si] : []));
