// Can this record be believed as a document? Which unit it is about, who signed it, what changed afterwards.
// Follows common practice of records under control; no source.
// Does not cover what it proves of the work: the steps say that.
import { type Caution, caution } from "../assessment/caution.ts";
import { known } from "../quantity/known.ts";
import type { IsoTime } from "../shapes/index.ts";
import { type Dated, momentOf, segmentsOf, surelyBefore } from "../shapes/index.ts";
import { circuitsLongBefore } from "./circuit-dates.ts";
import { valueAt } from "./format/index.ts";
import { hasWords } from "./has-words.ts";
import { instrumentsDoubted } from "./instrument-doubts.ts";
import type { InstallationRecord } from "./record.ts";
import type { UnitPlate } from "./record-equipment.ts";
import type { Run } from "./record-run.ts";
import { type StaleVacuum, staleVacuum } from "./stale-vacuum.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import { unusual } from "./unusual.ts";
import { type FieldWord, fieldWord, fieldWords, verbatim } from "./words.ts";

type Finding = CommissioningStatement;

/** Cautions about the record itself. */
export function recordCautions(record: InstallationRecord): Caution<Finding>[] {
  const findings = [
    ...signed(record),
    ...overwritten(record),
    ...amendedBeforeWork(record),
    ...unnamed(record),
    ...sameNumber(record),
    ...misplaced(record),
    ...old(record),
    ...stood(staleVacuum(record)),
    ...circuitsLongBefore(workOf(record)),
    ...instrumentsDoubted(record),
    ...zonesMixed(record),
    ...unusual(record),
  ];
  return findings.map((one) => caution("finding", one));
}

/** The work and its proofs by their dates. */
function workOf(record: InstallationRecord): readonly Dated[] {
  const { runs = [], pressureTests = [], evacuations = [], charge, valves, power } = record;
  return [
    ...runs.flatMap(({ tubing, joints = [], drain }, i): Dated[] => [
      [`runs[${i}].tubing`, tubing?.at],
      ...joints.map(({ at }, j): Dated => [`runs[${i}].joints[${j}]`, at]),
      [`runs[${i}].drain`, drain?.at],
    ]),
    ...pressureTests.map(({ at }, i): Dated => [`pressureTests[${i}]`, at]),
    ...evacuations.map(({ at }, i): Dated => [`evacuations[${i}]`, at]),
    ["charge", charge?.at],
    ["valves", valves?.openedAt],
    ...(power?.circuits ?? []).map(({ at }, i): Dated => [`power.circuits[${i}]`, at]),
    ["power.supply", power?.supply?.at],
    ["power", power?.energizedAt],
  ];
}

/** Everything that has a date besides photos and signatures. */
function datesOf(record: InstallationRecord): readonly Dated[] {
  const { operation = [], waivers = [], history = [] } = record;
  return [
    ...workOf(record),
    ...operation.map(({ at }, i): Dated => [`operation[${i}]`, at]),
    ...waivers.map(({ at }, i): Dated => [`waivers[${i}]`, at]),
    ...history.map(({ path, at }): Dated => [path, at]),
  ];
}

/** That nobody has signed, or before what the signature should cover. */
function signed(record: InstallationRecord): Finding[] {
  const signatures = (record.signatures ?? []).filter(({ name }) => hasWords(name));
  if (signatures.length === 0) return [say("commissioning.not-signed")];
  const last = lastOfEach(datesOf(record));
  return signatures.flatMap(({ name, at }) => {
    const fields = [...last].filter(([, dates]) => dates.some((date) => surelyBefore(at, date)));
    const words = fields.map(([field]) => field);
    const values = { name: verbatim(name), at: verbatim(at), fields: words };
    return words.length ? [say("commissioning.signed-before-change", values)] : [];
  });
}

/** The last date of each field, with and without an offset, so that each signature is held against few. */
function lastOfEach(dates: readonly Dated[]): ReadonlyMap<FieldWord, readonly IsoTime[]> {
  const last = new Map<FieldWord, Map<boolean, { at: IsoTime; from: number }>>();
  for (const [path, at] of dates) {
    if (at === undefined) continue;
    const field = fieldWord(path);
    const own = last.get(field) ?? new Map();
    const { from, zoned } = momentOf("", at);
    if (from > (own.get(zoned)?.from ?? -Infinity)) own.set(zoned, { at, from });
    last.set(field, own);
  }
  return new Map([...last].map(([field, own]) => [field, [...own.values()].map(({ at }) => at)]));
}

/** What has another value than was recorded first. */
function overwritten({ history = [] }: InstallationRecord): Finding[] {
  const fields = fieldWords(
    history.flatMap((one) => (one.previous === undefined ? [] : [one.path])),
  );
  return fields.length ? [say("commissioning.amended", { fields })] : [];
}

/**
 * Work without a date of its own that was changed before any that has one. A plate, a plan or a manual may be changed
 * before the work begins, so nothing bounds an amendment of them; of work without a date only the rest of the work can
 * tell. Common practice, no source.
 */
function amendedBeforeWork(record: InstallationRecord): Finding[] {
  const { history = [] } = record;
  let first: IsoTime | undefined;
  for (const [, at] of workOf(record)) if (at && (!first || surelyBefore(at, first))) first = at;
  const earliest = first;
  if (earliest === undefined) return [];
  const early = history.filter(
    ({ path, at }) => doneOnSite.test(path) && surelyBefore(at, earliest),
  );
  const fields = fieldWords(early.map(({ path }) => path));
  return fields.length
    ? [say("commissioning.amended-before-work", { first: verbatim(earliest), fields })]
    : [];
}

/** What is done on site and not planned before. */
const doneOnSite = /^(runs\[\d+\]\.(joints|drain)|pressureTests|evacuations|charge|valves)\b/;

/** Two units with one serial number: a plate was copied. */
function sameNumber({ equipment, runs = [] }: InstallationRecord): Finding[] {
  const units: readonly (readonly [string, UnitPlate | undefined])[] = [
    ["equipment.outdoorUnit.serialNumber", equipment?.outdoorUnit],
    ...runs.flatMap(({ indoorUnits = [] }, i) =>
      indoorUnits.map((unit, j) => [`runs[${i}].indoorUnits[${j}].serialNumber`, unit] as const),
    ),
  ];
  const numbers = units.map(([, unit]) => unit?.serialNumber);
  return units.flatMap(([path, unit], i) => {
    const number = unit?.serialNumber;
    if (number === undefined || !hasWords(number) || numbers.indexOf(number) === i) return [];
    const values = { field: fieldWord(path), value: verbatim(number) };
    return [say("commissioning.entered-twice", values)];
  });
}

/** Photos of a part that the record does not have; the first of a list may still be to come. */
function misplaced(record: InstallationRecord): Finding[] {
  return (record.photos ?? []).flatMap(({ of = "" }, i) => {
    const path = known(() => segmentsOf("of", of)) ?? []; // words of one's own are no path
    const isBeyondFirst = path.some((one) => typeof one === "number" && one > 0);
    if (!isBeyondFirst || valueAt(record, path) !== undefined) return [];
    const values = { field: fieldWord(`photos[${i}].of`), value: verbatim(of) };
    return [say("commissioning.unusable-value", values)];
  });
}

/** That no plate says which units these are. */
function unnamed({ equipment, runs = [] }: InstallationRecord): Finding[] {
  const indoor = (runs.length > 0 ? runs : [{} as Run])
    .filter(({ serves }) => serves !== "branch-box" && equipment?.construction !== "monobloc")
    .flatMap(({ indoorUnits = [] }): readonly (UnitPlate | undefined)[] =>
      indoorUnits.length > 0 ? indoorUnits : [undefined],
    );
  const known = [equipment?.outdoorUnit, ...indoor].every(
    (unit) => hasWords(unit?.model) || hasWords(unit?.serialNumber),
  );
  return known ? [] : [say("commissioning.unit-unknown")];
}

/** What is older than the rest by more than anyone works on one installation; common practice, no source. */
function old(record: InstallationRecord): Finding[] {
  const work = workOf(record).filter(([, at]) => at !== undefined) as [string, IsoTime][];
  let [last] = work;
  for (const one of work) if (last && surelyBefore(last[1], one[1])) last = one;
  if (!last) return [];
  const [path, at] = last;
  const paths = work.flatMap(([own, date]) => (surelyBefore(date, at, -year) ? [own] : []));
  const values = { field: fieldWord(path), at: verbatim(at), fields: fieldWords(paths) };
  return paths.length ? [say("commissioning.older-than-a-year", values)] : [];
}

/** A vacuum that stood for days before it was broken. */
const stood = (vacuum: StaleVacuum | undefined): Finding[] => (vacuum ? [vacuum.finding] : []);

/** Times with and without an offset from UTC cannot be told apart to the hour. */
function zonesMixed(record: InstallationRecord): Finding[] {
  const hours = workOf(record).flatMap(([, at]) => (at?.includes("T") ? [momentOf("", at)] : []));
  const zoned = hours.filter((one) => one.zoned).length;
  return zoned > 0 && zoned < hours.length ? [say("commissioning.zones-mixed")] : [];
}

const year = 366 * 86_400_000; // ms
