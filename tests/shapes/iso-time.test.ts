// Which moment is meant, and is one surely before another? ISO 8601-1:2019, calendar date and extended format, from
// memory; offsets of local times reach from −12 h to +14 h (IANA time zone database).
import { describe, expect, it } from "vitest";
import { isInvalidInputError } from "../../src/quantity/errors.ts";
import { momentOf, surelyBefore } from "../../src/shapes/iso-time.ts";

const utc = (text: string) => Date.parse(text); // ECMA-262, 21.4.1.32, for a text with its offset
const minute = 60_000;
const hour = 60 * minute;

describe("a moment", () => {
  it.each([
    ["2026-05-04T14:30:15+02:00", "2026-05-04T12:30:15Z", 1000],
    ["2026-05-04T14:30:15.5-05:30", "2026-05-04T20:00:15Z", 1000],
    ["2026-05-04T14:30:15.123456789Z", "2026-05-04T14:30:15Z", 1000],
    ["2026-05-04T14:30Z", "2026-05-04T14:30:00Z", minute],
    ["2024-02-29", "2024-02-29T00:00:00Z", 24 * hour],
    ["1900-01-01", "1900-01-01T00:00:00Z", 24 * hour],
  ])("%s is all that it may mean", (text, from, span) => {
    const found = momentOf("at", text);
    expect(found.from).toBe(utc(from));
    expect(found.to).toBe(utc(from) + span - 1);
    expect(found.zoned).toBe(/Z|[+-]\d\d:\d\d$/.test(text));
  });

  it.each<unknown>([
    20260504,
    ["2026-05-04"],
    null,
    "2025-02-29",
    "2026-13-01",
    "2026-04-31",
    "2026-04-00",
    "2026-00-10",
    "2026-12-99",
    "1899-12-31",
    "2026-05-04T24:00",
    "2026-05-04T12:60",
    "2026-05-04T12:30:60",
    "2026-05-04T12:30+15:00",
    "2026-05-04T12:30+02:60",
    "2026-05-04 12:30",
    "04.05.2026",
    "x2026-05-04",
    "2026-05-04 at noon",
    "12026-05-04",
    "2026-05-04T12",
    "2026-05-04T12:30:00.",
    "2026-05-04T12:30:00.1234567890",
    "2026-05-04Z",
    "2026-05-04T12:30+02",
    `2026-05-04T12:30:00.${"0".repeat(30)}`,
  ])("%s is none", (text) => {
    try {
      momentOf("record.at", text as string);
      expect.unreachable();
    } catch (error) {
      expect(isInvalidInputError(error) && error.argument).toBe("record.at");
    }
  });
});

// A test dated the same day as the joint may have come after it: only what is sure stops a job.
describe("is surely before", () => {
  it.each<[one: string, other: string, earlier: number, sure: boolean]>([
    ["2026-05-04", "2026-05-05", 0, true],
    ["2026-05-04", "2026-05-04", 0, false],
    ["2026-05-04", "2026-05-04T23:59", 0, false],
    ["2026-05-04T10:00", "2026-05-04T10:00", 0, false],
    ["2026-05-04T10:00", "2026-05-04T10:01", 0, true],
    ["2026-05-04T10:00:00", "2026-05-04T10:00:01", 0, true],
    ["2026-05-04T10:00:01", "2026-05-04T10:00:00", 0, false],
    // the last millisecond of the minute, and the same one
    ["2026-05-04T10:00", "2026-05-04T10:01", -1, false],
    // the same moment in two zones, and an hour between
    ["2026-05-04T12:00+02:00", "2026-05-04T10:00Z", 0, false],
    ["2026-05-04T12:00+02:00", "2026-05-04T11:00Z", 0, true],
    // a local time may be up to 14 h from one that states its offset
    ["2026-05-04T10:00", "2026-05-05T00:00Z", 0, false],
    ["2026-05-04T10:00", "2026-05-05T00:01Z", 0, true],
    // a reading that took an hour began an hour earlier
    ["2026-05-04T10:00", "2026-05-04T09:30", hour, true],
    ["2026-05-04T10:00", "2026-05-04T09:00", hour, false],
    ["2026-05-04T10:00", "2026-05-04T10:30", -hour, false],
    ["2026-05-04T10:00", "2026-05-04T11:01", -hour, true],
  ])("%s, %s, %d ms earlier: %s", (one, other, earlier, sure) => {
    expect(surelyBefore(one, other, earlier)).toBe(sure);
  });
});
