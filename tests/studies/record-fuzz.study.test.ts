// 10 000 mutated records: a typed error or a valid assessment, never a crash, a NaN or an unearned pass.
import { it } from "vitest";
import {
  fuzzFaultyRecords,
  fuzzJsonRecords,
  fuzzLiveRecords,
  fuzzRecordTexts,
} from "../wire/fuzz-record.ts";

it.each([
  ["live records", fuzzLiveRecords],
  ["JSON records", fuzzJsonRecords],
  ["records with a fault", fuzzFaultyRecords],
  ["texts of records", fuzzRecordTexts],
])("2500 mutated %s give the typed error or an assessment that is earned", (_, fuzz) => fuzz(2500));
