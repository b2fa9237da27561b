// record-version-1.json was written by version 1 and is never written again: it has to be readable for ever.
import { readFileSync } from "node:fs";
import { recordRevision, recordShape } from "hvac-install-math/commissioning";
import { recordCodec } from "hvac-install-math/wire";
import { describe, expect, it } from "vitest";
import { codecOf } from "../../src/wire/codec.ts";
import type { FormatStep } from "../../src/wire/format.ts";
import type { JsonObject } from "../../src/wire/json-value.ts";
import { recordFormat } from "../../src/wire/record-format.ts";
import { thrownBy } from "./thrown-by.ts";

const first = readFileSync(new URL("record-version-1.json", import.meta.url), "utf8");

describe("a record that version 1 wrote", () => {
  const record = recordCodec.parse(first);

  it("is read, with every figure where it was", () => {
    expect(record.version).toBe(2);
    expect(record.equipment?.refrigerant).toBe("R-410A");
    expect(record.runs?.[0]?.tubing?.length?.toString()).toBe("38 ft");
    expect(record.pressureTests?.[0]?.readings?.[1]?.pressure?.toString()).toBe("489.3 psig");
    expect(record.evacuations?.[0]?.readings).toHaveLength(4);
    expect(String(record.history?.[0]?.previous)).toBe("36 ft");
  });

  it("loses nothing: every figure and word of it is there again", () => {
    const leaves = (value: unknown): unknown[] =>
      typeof value === "object" && value !== null ? Object.values(value).flatMap(leaves) : [value];
    const again = JSON.parse(recordCodec.stringify(record)) as JsonObject;
    const count = (all: unknown[]) => {
      const counted = new Map<unknown, number>();
      for (const one of all) counted.set(one, (counted.get(one) ?? 0) + 1);
      return counted;
    };
    const { history: before = [], version: _, ...old } = JSON.parse(first);
    const { history: after = [], version, ...now } = again as typeof old;
    expect(version).toBe(recordFormat.version);
    expect(count(leaves(now))).toEqual(count(leaves(old)));
    expect(after).toHaveLength(before.length);
  });

  it("has the history that version 2 would have written: each revision is the old one", () => {
    const old = JSON.parse(first);
    expect(record.history?.[0]?.path).toBe("runs[0].tubing.length");
    expect(recordRevision(record, 0).runs?.[0]?.tubing?.length?.toString()).toBe("36 ft");
    expect(recordRevision(record, old.history.length)).toEqual(record);
  });
});

it.each([
  ["2018", "iec-60335-2-40-2018"],
  ["before-2018", "iec-60335-2-40-2013"],
])("the edition %s of a room is %s now, also where it stood before", (old, now) => {
  const room = { place: "wall", edition: old };
  const entry = { path: "room.edition", previous: old, by: "N. N.", at: "2026-05-05", reason: "x" };
  const record = recordCodec.decode({ version: 1, room, history: [entry] });
  expect(record.runs?.[0]?.room?.edition).toBe(now);
  expect(record.history?.[0]).toMatchObject({ path: "runs[0].room.edition", previous: now });
});

it("the format has one step from each earlier version, in order", () => {
  expect(recordFormat.steps.map(({ from }) => from)).toEqual(
    Array.from({ length: recordFormat.version - 1 }, (_, i) => i + 1),
  );
});

describe("a version that this library does not know", () => {
  it.each([3, 7, 2 ** 31])("%i is refused as newer", (version) => {
    const error = thrownBy(() => recordCodec.decode({ version, anything: "new" }));
    expect(error.argument).toBe("version");
    expect(error.allowed).toBe("at most 2");
    expect(error.hint?.code).toBe("wire.newer-version");
  });
  it.each([0, -1, 1.5, "1", null, undefined, true, Number.NaN])("%s is no version", (version) => {
    expect(thrownBy(() => recordCodec.decode({ version })).argument).toBe("version");
  });
});

describe("the next version, as a test would have it", () => {
  // In version 3 `photos` are `pictures`; in version 4 the name of the site is its `title`.
  const { "site?": _, "photos?": photos, version: __, ...fields } = recordShape.fields;
  const next = {
    fields: {
      version: { words: [4] },
      ...fields,
      "pictures?": photos ?? "any",
      "site?": {
        fields: { "title?": "text", "altitude?": "length", "atmosphere?": "absolutePressure" },
      },
    },
  } as const;
  const steps: FormatStep[] = [
    ...recordFormat.steps,
    {
      from: 2,
      change: ({ photos: pictures, ...rest }) => ({
        ...rest,
        version: 3,
        ...(pictures && { pictures }),
      }),
    },
    {
      from: 3,
      change: (json) => {
        const { name, ...rest } = (json.site ?? {}) as JsonObject;
        return { ...json, version: 4, site: { ...rest, ...(name && { title: name }) } };
      },
    },
  ];
  const codec = codecOf<Record<string, unknown>>({
    id: "next",
    name: "record",
    shape: () => next,
    format: { version: 4, steps },
  });

  it("reads version 1 through every step, and its own without one", () => {
    const read = codec.parse(first);
    expect(read.version).toBe(4);
    expect(read.pictures).toEqual(recordCodec.parse(first).photos);
    expect((read.site as { title: string }).title).toBe(JSON.parse(first).site.name);
    expect(codec.parse(codec.stringify(read))).toEqual(read);
  });

  it("leaves what it was given as it was", () => {
    const json = JSON.parse(first);
    codec.decode(json);
    expect(json).toEqual(JSON.parse(first));
  });

  it("refuses what does not fit after the steps, and a version in between without a step", () => {
    const wrong = { version: 1, site: { name: 7 } };
    expect(thrownBy(() => codec.decode(wrong)).argument).toBe("site.title");
    const gap = codecOf({
      id: "next",
      name: "record",
      shape: () => next,
      format: { version: 4, steps: [] },
    });
    expect(thrownBy(() => gap.decode({ version: 1 })).argument).toBe("version");
  });

  it("is what version 2 refuses as newer", () => {
    const written = codec.encode({ version: 4 } as never);
    expect(thrownBy(() => recordCodec.decode(written)).hint?.code).toBe("wire.newer-version");
  });
});
