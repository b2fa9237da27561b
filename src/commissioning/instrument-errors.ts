// What is known of an instrument besides its name?
// Follows JCGM 100:2008 in asking for limits of error. Does not cover whether they are true.

/** An instrument of which something is known besides its name. */
export function errorsOf<T extends object>(instrument: T | undefined): T | undefined {
  const { accuracy, relativeAccuracy, accuracyOfReading, resolution, repeatability } =
    (instrument ?? {}) as Record<string, unknown>;
  const known = accuracy ?? relativeAccuracy ?? accuracyOfReading ?? resolution ?? repeatability;
  return known === undefined ? undefined : instrument;
}
