// Keeps the job in IndexedDB. The record goes through its codec both ways: what is read is checked, and a record of an
// older version is brought forward.
import { type JsonObject, recordCodec } from "hvac-install-math/wire";
import type { Job } from "./job.ts";

const asked = <T>(request: IDBRequest<T>) =>
  new Promise<T>((done, fail) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => fail(request.error);
  });

let database: Promise<IDBDatabase> | undefined;

/** Opened once. */
function open(): Promise<IDBDatabase> {
  const opening = indexedDB.open("job-sheet", 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore("jobs");
  return asked(opening);
}

async function jobs(mode: IDBTransactionMode): Promise<IDBObjectStore> {
  database ??= open();
  return (await database).transaction("jobs", mode).objectStore("jobs");
}

/** The job as it was left; nothing on a phone that has none. Throws where the record cannot be read. */
export async function load(): Promise<Job | undefined> {
  const row = (await asked((await jobs("readonly")).get("open"))) as Job | undefined;
  if (!row) return undefined;
  return { ...row, json: recordCodec.encode(recordCodec.decode(row.json)) as JsonObject };
}

/** Keeps the job. */
export async function save(job: Job): Promise<void> {
  await asked((await jobs("readwrite")).put(job, "open"));
}
