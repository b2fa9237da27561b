// Can this record be believed as a document? Which unit it is about, who signed it, what changed afterwards.
// Follows common practice of records under control; no source.
// Does not cover what it proves of the work: the steps say that.
import { type Caution, statement } from "../assessment/assessment.ts";
import { isQuantity } from "../quantity/json.ts";

import { type Dated, type IsoTime, momentOf, surelyBefore } from "../shapes/index.ts";
import { hasWords } from "./has-words.ts";
import type { InstallationRecord } from "./record.ts";

/** Cautions about the record itself. */
export function recordCautions(record: InstallationRecord): Caution[] {
  return [
    ...signed(record),
    ...overwritten(record),
    ...unnamed(record),
    ...old(record),
    ...stale(record),
    ...exact(record),
  ];
}

/** The work and its proofs by their dates. */
function workOf(record: InstallationRecord): readonly Dated[] {
  const { tubing, joints = [], pressureTest, evacuation, charge, valves, power, drain } = record;
  return [
    ["tubing", tubing?.at],
    ...joints.map(({ at }, i): Dated => [`joints[${i}]`, at]),
    ["pressureTest", pressureTest?.at],
    ["evacuation", evacuation?.at],
    ["charge", charge?.at],
    ["valves", valves?.openedAt],
    ["power.circuit", power?.circuit?.at],
    ["power.supply", power?.supply?.at],
    ["power", power?.energizedAt],
    ["drain", drain?.at],
  ];
}

/** Everything that has a date besides photos and signatures. */
function datesOf(record: InstallationRecord): readonly Dated[] {
  const { operation = [], notApplicable = [], history = [] } = record;
  return [
    ...workOf(record),
    ...operation.map(({ at }, i): Dated => [`operation[${i}]`, at]),
    ...notApplicable.map(({ at }, i): Dated => [`notApplicable[${i}]`, at]),
    ...history.map(({ path, at }): Dated => [path, at]),
  ];
}

/** That nobody has signed, or before what the signature should cover. */
function signed(record: InstallationRecord): Caution[] {
  const signatures = (record.signatures ?? []).filter(({ name }) => hasWords(name));
  if (signatures.length === 0) return [statement("not-signed", "Nobody has signed this record.")];
  const laterThan = datedAfter(datesOf(record));
  return signatures.flatMap(({ name, at }) => {
    const { paths, more } = laterThan(at);
    if (paths.length === 0) return [];
    const text = `{name} signed at {at}, before these were done or changed: {paths}${more > 0 ? " and {more} others" : ""}.`;
    const values = { name, at, paths: paths.join(", "), more };
    return [statement("signed-before-change", text, values)];
  });
}

/** What was done surely after a moment: ten of the paths, the last first, and how many more. Sorted once, as signatures and dates may both be many. */
function datedAfter(
  dates: readonly Dated[],
): (at: IsoTime) => { readonly paths: readonly string[]; readonly more: number } {
  const moments = dates.flatMap(([path, at]) => (at ? [{ path, at, ...momentOf(path, at) }] : []));
  const latest = [true, false].map((zoned) =>
    moments.filter((one) => one.zoned === zoned).sort((a, b) => b.from - a.from),
  );
  return (at) => {
    const later = latest.map((all) => ({
      all,
      count: countWhere(all, (one) => surelyBefore(at, one.at)),
    }));
    const shown = later.flatMap(({ all, count }) => all.slice(0, Math.min(count, 10)));
    const paths = [...new Set(shown.map(({ path }) => path))].slice(0, 10);
    const count = later.reduce((sum, one) => sum + one.count, 0);
    return { paths, more: shown.length < count ? count - paths.length : 0 };
  };
}

/** How many items from the start are so, of a list in which no others are. */
function countWhere<T>(all: readonly T[], isSo: (one: T) => boolean): number {
  let [low, high] = [0, all.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (isSo(all[middle] as T)) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** What has another value than was recorded first. */
function overwritten({ history = [] }: InstallationRecord): Caution[] {
  const paths = new Set(history.flatMap((one) => (one.previous === undefined ? [] : [one.path])));
  const text = "Changed after it was recorded; the history says what stood there before: {paths}.";
  return paths.size ? [statement("amended", text, { paths: [...paths].join(", ") })] : [];
}

/** That no plate says which units these are. */
function unnamed({ equipment }: InstallationRecord): Caution[] {
  const { outdoorUnit, indoorUnits = [] } = equipment ?? {};
  const known = [outdoorUnit, indoorUnits[0], ...indoorUnits].every(
    (unit) => hasWords(unit?.model) || hasWords(unit?.serialNumber),
  );
  const text = "Model or serial number of a unit is not recorded: this could be about any unit.";
  return known ? [] : [statement("unit-unknown", text)];
}

/** What is older than the rest by more than anyone works on one installation; common practice, no source. */
function old(record: InstallationRecord): Caution[] {
  const work = workOf(record).filter(([, at]) => at !== undefined) as [string, IsoTime][];
  let [last] = work;
  for (const one of work) if (last && surelyBefore(last[1], one[1])) last = one;
  if (!last) return [];
  const [path, at] = last;
  const paths = work.flatMap(([own, date]) => (surelyBefore(date, at, -year) ? [own] : []));
  const text =
    "More than a year older than {path} of {at}: {paths}. See whether it is of this installation and the years are right.";
  const values = { path, at, paths: paths.join(", ") };
  return paths.length ? [statement("older-than-a-year", text, values)] : [];
}

/** A vacuum says nothing of what leaks in afterwards: it is opened within days; common practice, no source. */
function stale({ evacuation, valves }: InstallationRecord): Caution[] {
  const [at, openedAt] = [evacuation?.at, valves?.openedAt];
  if (!at || !openedAt || !surelyBefore(at, openedAt, -week)) return [];
  const text =
    "The valves were opened at {openedAt}, more than a week after the evacuation of {at}, which proves nothing of the time between.";
  return [statement("evacuation-long-before", text, { openedAt, at })];
}

/** Limits of error of 0 are a claim that no instrument keeps; common practice, no source. */
function exact({ instruments = {} }: InstallationRecord): Caution[] {
  const paths = Object.entries(instruments).flatMap(([name, instrument]) => {
    const { accuracy, relativeAccuracy, accuracyOfReading, resolution, repeatability } =
      instrument as Record<string, unknown>;
    const limits = figuresOf(accuracy, relativeAccuracy, accuracyOfReading);
    const known = limits.length > 0 ? limits : figuresOf(resolution, repeatability);
    return known.length > 0 && known.every((si) => si === 0) ? [`instruments.${name}`] : [];
  });
  const text =
    "No instrument is exact, and these are recorded with limits of error of 0: {instruments}. State the maker's figure.";
  const values = { instruments: paths.join(", ") };
  return paths.length ? [statement("instrument-exact", text, values)] : [];
}

/** The figures that are stated; a gauge may have a step per range, which is none. */
const figuresOf = (...figures: unknown[]) =>
  figures.flatMap((one) => (isQuantity(one) ? [one.si] : []));

const week = 7 * 86_400_000; // ms
const year = 366 * 86_400_000; // ms
