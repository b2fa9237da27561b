// How does a record of version 1 become one of version 2? One run of what was one line set, and the same history.
// Follows the formats of this library. Does not cover what version 1 could not say: it stays missing.

import { isOfKind, objectOf } from "../../quantity/check.ts";
import { segmentsOf } from "../../shapes/index.ts";
import { deepCopy, valueAt, whatChanged, withValue } from "./path-values.ts";
import { leadsInto, pathOf, type Segment } from "./record-path.ts";

type Json = Readonly<Record<string, unknown>>;

/** Where the parts of version 1 went; the longest that fits counts. */
const moved: readonly (readonly [from: string, to: string])[] = [
  ["equipment.indoorUnits", "runs[0].indoorUnits"],
  ["tubing", "runs[0].tubing"],
  ["joints", "runs[0].joints"],
  ["drain", "runs[0].drain"],
  ["room", "runs[0].room"],
  ["pressureTest", "pressureTests[0]"],
  ["evacuation", "evacuations[0]"],
  ["power.circuit", "power.circuits[0]"],
  ["notApplicable", "waivers"],
];

/** The parts that become parts of others. */
const movedParts = ["equipment", "power", "tubing", "joints", "drain", "room"];

/** The lists whose items change each for itself. */
const mapped = ["notApplicable", "photos"];

/**
 * A record of version 1 as one of version 2, from JSON data or from live quantities: nothing is lost, and the history
 * leads back to the same states. What version 1 did not ask for is missing afterwards; a reason for a step that does
 * not apply was free text, and is kept as a note.
 *
 * @param record - A record of version 1, of which the form is not checked here.
 * @returns The same in version 2; the given one is left as it is.
 * @throws {@link InvalidInputError} when it is no object, or a path of its history is none.
 *
 * @example
 * ```ts
 * import { fromVersion1 } from "hvac-install-math/commissioning";
 *
 * const record = fromVersion1({ version: 1, tubing: { bends: 4 } });
 * JSON.stringify(record); // => {"version":2,"runs":[{"tubing":{"bends":4}}]}
 * ```
 */
export function fromVersion1(record: Json): Json {
  const { history } = objectOf("record", record) as { history?: readonly Json[] };
  const after = present(record);
  if (!Array.isArray(history)) return after;
  // Walked back from the end: each amendment by what it changed in the new form.
  const entries: Json[] = [];
  const own = new Set<unknown>();
  let state = record;
  let formed: { readonly path: unknown; readonly form: Json } | undefined;
  for (const entry of [...history].reverse()) {
    const path = segmentsOf("history.path", newPath(String(entry.path)));
    const segments = segmentsOf("history.path", String(entry.path));
    const now =
      formed && formed.path === entry.path ? formed.form : present(around(state, segments));
    const removes = valueAt(now, path) === undefined;
    state = withValue(state, segments, entry.previous, "history.path", own) as Json;
    formed = { path: entry.path, form: present(around(state, segments, removes)) };
    entries.push(changeOf(entry, formed.form, path, removes));
  }
  return { ...after, history: entries.reverse() };
}

/**
 * What the new form of one field hangs on: the parts that move with others, and the field itself. Of a list only the item,
 * unless that is `gone` afterwards, or was not there: then the list itself changed.
 */
function around(
  record: Json,
  [first = "", item, ...deeper]: readonly Segment[],
  gone = false,
): Json {
  const narrow: Record<string, unknown> = { [first]: record[first] };
  for (const name of movedParts) narrow[name] = record[name];
  const list = narrow[first];
  const resized = gone && deeper.length === 0;
  const isMapped = mapped.includes(String(first)) && Array.isArray(list);
  if (isMapped && typeof item === "number" && item in list && !resized) {
    const one: unknown[] = new Array(list.length);
    one[item] = list[item];
    narrow[first] = one;
  }
  return narrow;
}

/** An amendment in the new form, by the state before it. */
function changeOf(entry: Json, before: Json, path: readonly Segment[], removes: boolean): Json {
  const where = whatChanged(before, path, removes);
  const { previous: _, path: __, ...who } = entry;
  const previous = deepCopy(valueAt(before, where));
  return { path: pathOf(where), ...(previous !== undefined && { previous }), ...who };
}

/** Where a path of version 1 leads in version 2. */
function newPath(path: string): string {
  for (const [from, to] of moved) {
    if (leadsInto(path, from)) {
      const rest = path.slice(from.length);
      // The free text of a declaration is the note of a waiver; nothing else that moved has a reason.
      return `${to}${rest.replace(/\.reason$/, ".note")}`;
    }
  }
  return path;
}

/** The parts where they are in version 2. */
function present(record: Json): Json {
  const { tubing, joints, drain, room, pressureTest, evacuation, notApplicable, ...rest } =
    record as Record<string, unknown>;
  const { indoorUnits, ...equipment } = partAt(rest.equipment) ?? {};
  const { circuit, ...power } = partAt(rest.power) ?? {};
  const run = defined({ indoorUnits, tubing, joints, drain, room: roomOf(room) });
  const changed: Json = {
    version: 2,
    equipment: partAt(rest.equipment) ? equipment : rest.equipment,
    runs: Object.keys(run).length > 0 ? [run] : undefined,
    pressureTests: listOf(pressureTest),
    evacuations: listOf(evacuation),
    power: partAt(rest.power) ? defined({ ...power, circuits: listOf(circuit) }) : rest.power,
    waivers: eachOf(notApplicable, waiverOf),
    photos: eachOf(rest.photos, photoOf),
  };
  for (const [name, value] of Object.entries(changed)) {
    if (value !== undefined) rest[name] = value;
    else delete rest[name];
  }
  return rest;
}

/** What version 1 had once, as the only item of a list. */
const listOf = (one: unknown): unknown => (one === undefined ? undefined : [one]);

/** Each item changed; what is no list stays, for the codec to refuse. */
const eachOf = (list: unknown, change: (one: unknown) => unknown): unknown =>
  Array.isArray(list) ? list.map(change) : list;

/** The editions of the room rule by their names in version 1. */
const editions: Readonly<Record<string, string>> = {
  "2018": "iec-60335-2-40-2018",
  "before-2018": "iec-60335-2-40-2013",
};

function roomOf(room: unknown): unknown {
  const { edition } = partAt(room) ?? {};
  const now = typeof edition === "string" ? editions[edition] : undefined;
  return now ? { ...(room as object), edition: now } : room;
}

function waiverOf(declaration: unknown): unknown {
  const { reason, ...rest } = partAt(declaration) ?? {};
  return reason === undefined ? declaration : { ...rest, note: reason };
}

function photoOf(photo: unknown): unknown {
  const { of } = partAt(photo) ?? {};
  return typeof of === "string" ? { ...(photo as object), of: newPath(of) } : photo;
}

/** A value as a part with fields; what is none stays where it is, for the codec to refuse. */
const partAt = (value: unknown): Json | undefined =>
  typeof value === "object" && value !== null && !Array.isArray(value) && !isOfKind(value)
    ? (value as Json)
    : undefined;

const defined = (value: Json): Json =>
  Object.fromEntries(Object.entries(value).filter(([, own]) => own !== undefined));
