// record-version-1.json was written by version 1 and is never written again: it has to be readable for ever.
import { readFileSync } from "node:fs";
import { recordShape } from "hvac-install-math/commissioning";
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
    expect(record.version).toBe(1);
    expect(record.equipment?.refrigerant).toBe("R-410A");
    expect(record.tubing?.length?.toString()).toBe("38 ft");
    expect(record.pressureTest?.readings?.[1]?.pressure?.toString()).toBe("489.3 psig");
    expect(record.evacuation?.readings).toHaveLength(4);
    expect(String(record.history?.[0]?.previous)).toBe("36 ft");
  });

  it("loses nothing when it is written again", () => {
    const again = recordCodec.encode(record) as JsonObject;
    const { version: _, ...figures } = JSON.parse(first);
    const { version, ...rewritten } = again;
    expect(version).toBe(recordFormat.version);
    expect(rewritten).toEqual(figures);
  });
});

it("the format has one step from each earlier version, in order", () => {
  expect(recordFormat.steps.map(({ from }) => from)).toEqual(
    Array.from({ length: recordFormat.version - 1 }, (_, i) => i + 1),
  );
});

describe("a version that this library does not know", () => {
  it.each([2, 7, 2 ** 31])("%i is refused as newer", (version) => {
    const error = thrownBy(() => recordCodec.decode({ version, anything: "new" }));
    expect(error.argument).toBe("version");
    expect(error.allowed).toBe("at most 1");
    expect(error.hint).toContain("newer version");
  });
  it.each([0, -1, 1.5, "1", null, undefined, true, Number.NaN])("%s is no version", (version) => {
    expect(thrownBy(() => recordCodec.decode({ version })).argument).toBe("version");
  });
});

describe("the next version, as a test would have it", () => {
  // In it the drain's run is called `length`, and `photos` are `pictures`.
  const { "drain?": _, "photos?": photos, version: __, ...fields } = recordShape.fields;
  const next = {
    fields: {
      version: { words: [3] },
      ...fields,
      "pictures?": photos ?? "any",
      "drain?": { fields: { "length?": "length", "waterRanOff?": "flag" } },
    },
  } as const;
  const steps: FormatStep[] = [
    {
      from: 1,
      change: ({ photos: pictures, ...rest }) => ({ ...rest, ...(pictures && { pictures }) }),
    },
    {
      from: 2,
      change: (json) => {
        const { run, waterRanOff } = (json.drain ?? {}) as JsonObject;
        const drain = { ...(run && { length: run }), ...(waterRanOff && { waterRanOff }) };
        return { ...json, drain };
      },
    },
  ];
  const codec = codecOf<Record<string, unknown>>({
    id: "next",
    name: "record",
    shape: next,
    format: { version: 3, steps },
  });

  it("reads version 1 through every step, and its own without one", () => {
    const read = codec.parse(first);
    expect(read.version).toBe(3);
    expect(read.pictures).toEqual(recordCodec.parse(first).photos);
    expect((read.drain as { waterRanOff: boolean }).waterRanOff).toBe(true);
    expect(codec.parse(codec.stringify(read))).toEqual(read);
  });

  it("leaves what it was given as it was", () => {
    const json = JSON.parse(first);
    codec.decode(json);
    expect(json).toEqual(JSON.parse(first));
  });

  it("refuses what does not fit after the steps, and a version in between without a step", () => {
    const wrong = { version: 1, drain: { run: 7 } };
    expect(thrownBy(() => codec.decode(wrong)).argument).toBe("drain.length");
    const gap = codecOf({
      id: "next",
      name: "record",
      shape: next,
      format: { version: 3, steps: [] },
    });
    expect(thrownBy(() => gap.decode({ version: 1 })).argument).toBe("version");
  });

  it("is what version 1 refuses as newer", () => {
    const written = codec.encode({ version: 3 } as never);
    expect(thrownBy(() => recordCodec.decode(written)).hint).toContain("newer version");
  });
});
