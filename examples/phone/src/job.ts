// The one state of the app: the record as JSON, the text of every box, and what the reader chose.
import { toPlain } from "hvac-install-math/quantity";
import type { DecayReading } from "hvac-install-math/vacuum-decay";
import { type JsonObject, type JsonValue, recordCodec } from "hvac-install-math/wire";
import { type Field, meaningOf, type Typed } from "./fields.ts";
import { inventedJob } from "./invented-unit.ts";
import { withValue } from "./json-path.ts";
import { type Choice, type Reader, tongueOf } from "./reader.ts";

/** Plain data, so that it goes into IndexedDB as it is. */
export interface Job extends Choice {
  /** The record; what cannot be read is not in it. */
  readonly json: JsonObject;
  /** What stands in the boxes, by path. */
  readonly typed: Readonly<Record<string, Typed>>;
}

/** The job with which the app begins. */
export function newJob(): Job {
  const json = recordCodec.encode(inventedJob) as JsonObject;
  return { json, typed: {}, tongue: tongueOf(navigator.language), system: "inch-pound" };
}

/** Types into a box: the text is kept as it is, and its value goes into the record. */
export function withText(job: Job, field: Field, typed: Typed, reader: Reader): Job {
  const { value } = meaningOf(field, typed, reader);
  return {
    ...job,
    json: withValue(job.json, field.path, value),
    typed: { ...job.typed, [field.path]: typed },
  };
}

/** Puts the log of the gauge into the record. */
export function withLog(job: Job, readings: readonly DecayReading[]): Job {
  const log = toPlain(readings) as unknown as JsonValue;
  return { ...job, json: withValue(job.json, "evacuations[0].readings", log) };
}
