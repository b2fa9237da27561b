// 1 000 mutated records; tests/studies has ten times as many.
import { it } from "vitest";
import {
  fuzzFaultyRecords,
  fuzzJsonRecords,
  fuzzLiveRecords,
  fuzzRecordTexts,
} from "./fuzz-record.ts";

it.each([
  ["live records", fuzzLiveRecords],
  ["JSON records", fuzzJsonRecords],
  ["records with a fault", fuzzFaultyRecords],
  ["texts of records", fuzzRecordTexts],
])("mutated %s give the typed error or an assessment that is earned", (_, fuzz) => fuzz(250));
