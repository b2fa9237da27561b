import fc from "fast-check";
import { amend } from "hvac-install-math/commissioning";
import { ft, ftLb, isQuantity } from "hvac-install-math/quantity";
import { type JsonObject, jsonSchemaOf, recordCodec, recordWords } from "hvac-install-math/wire";
import { describe, expect, it } from "vitest";
import { assessInstallation } from "../commissioning/assess.ts";
import { complete } from "../commissioning/complete-record.ts";
import { arbitraryJson } from "./arbitrary-json.ts";
import { mistakesBy } from "./mistakes-by.ts";
import { thrownBy } from "./thrown-by.ts";

type Json = { [name: string]: Json } & Json[];
const text = recordCodec.stringify(complete);

/** Any record but for its history, whose entries have to fit their paths. */
const schema = jsonSchemaOf(recordCodec);
const { history: _, ...properties } = schema.properties as JsonObject;
const anyRecord = arbitraryJson({ ...schema, properties });

/** The complete record as JSON data, changed. */
function changed(change: (json: Json) => void): unknown {
  const json = JSON.parse(text) as Json;
  change(json);
  return json;
}

describe("a record", () => {
  it("comes back from its text as it was, with the same verdict", () => {
    const back = recordCodec.parse(text);
    expect(back).toEqual(complete);
    expect(assessInstallation(back)).toEqual(assessInstallation(complete));
    expect(recordCodec.stringify(back)).toBe(text);
  });

  it("comes back frozen, with live quantities", () => {
    const back = recordCodec.parse(text);
    expect(Object.isFrozen(back) && Object.isFrozen(back.pressureTests?.[0]?.readings)).toBe(true);
    expect(isQuantity(back.runs?.[0]?.tubing?.length, "length")).toBe(true);
  });

  it("keeps its history, and what stood there before is alive again", () => {
    const [by, at, reason] = ["N. N.", "2026-05-06", "measured again"];
    const once = amend(complete, { path: "runs[0].tubing.length", value: ft(38), by, at, reason });
    const joint = { path: "runs[0].joints[0].torque", value: ftLb(12), by, at, reason };
    const amended = amend(amend(once, joint), { path: "runs[0].drain", by, at, reason });
    const back = recordCodec.parse(recordCodec.stringify(amended, 2));
    expect(back).toEqual(amended);
    expect(String(back.history?.[0]?.previous)).toBe("36 ft");
  });

  it("is left as it was by writing and reading", () => {
    const json = JSON.parse(text);
    recordCodec.decode(json);
    expect(JSON.stringify(json)).toBe(text);
    const before = JSON.stringify(complete);
    recordCodec.encode(complete);
    expect(JSON.stringify(complete)).toBe(before);
  });

  it("of any content comes back as it was", () => {
    fc.assert(
      fc.property(anyRecord, (json) => {
        const record = recordCodec.decode(json);
        expect(recordCodec.encode(record)).toEqual(json);
        expect(recordCodec.parse(recordCodec.stringify(record))).toEqual(record);
      }),
      { numRuns: 100 },
    );
  });
});

describe("a mistake is named by its path:", () => {
  it.each<[path: string, allowed: string, change: (json: Json) => void]>([
    [
      "pressureTests[0].readings[1].pressure",
      "a quantity of the kind gaugePressure",
      (json) => {
        Object.assign(json.pressureTests?.[0]?.readings?.[1] ?? {}, { pressure: 5 });
      },
    ],
    [
      "pressureTests[0].readings[1].pressure.unit",
      "kPag, psig",
      (json) => {
        Object.assign(json.pressureTests?.[0]?.readings?.[1]?.pressure ?? {}, { unit: "furlong" });
      },
    ],
    [
      "pressureTests[0].readings[1].presure",
      "no such field; the fields are pressure",
      (json) => {
        Object.assign(json.pressureTests?.[0]?.readings?.[1] ?? {}, { presure: 5 });
      },
    ],
    [
      "pressureTests[0].readings[1].temperature",
      "at least -459.67 °F",
      (json) => {
        Object.assign(json.pressureTests?.[0]?.readings?.[1]?.temperature ?? {}, { value: -500 });
      },
    ],
    [
      "equipment.manual.chargeRate.mass",
      "a quantity of the kind mass",
      (json) => {
        Object.assign(json.equipment?.manual ?? {}, { chargeRate: { mass: 4 } });
      },
    ],
    [
      "runs[0].joints[0].kind",
      "flare, brazed, pressed",
      (json) => {
        Object.assign(json.runs?.[0]?.joints?.[0] ?? {}, { kind: "glued" });
      },
    ],
    [
      "photos[0].reference",
      "a text",
      (json) => {
        Object.assign(json.photos?.[0] ?? {}, { reference: undefined });
      },
    ],
    [
      "photos[0].at",
      "a date or a moment",
      (json) => {
        Object.assign(json.photos?.[0] ?? {}, { at: "2026-02-30" });
      },
    ],
    [
      "runs[0].tubing.bends",
      "a finite number",
      (json) => {
        Object.assign(json.runs?.[0]?.tubing ?? {}, { bends: null });
      },
    ],
    [
      "constructor",
      "no such field",
      (json) => {
        Object.assign(json, { constructor: 1 });
      },
    ],
    [
      "history[0].previous.unit",
      "cm, ft, in, m, mm",
      (json) => {
        const previous = { kind: "length", value: 1, unit: "furlong" };
        const entry = {
          path: "runs[0].tubing.length",
          previous,
          by: "a",
          at: "2026-05-06",
          reason: "b",
        };
        Object.assign(json, { history: [entry] });
      },
    ],
    [
      "history[0].previous.kind",
      "length",
      (json) => {
        const previous = { kind: "mass", value: 1, unit: "kg" };
        const entry = {
          path: "runs[0].tubing.length",
          previous,
          by: "a",
          at: "2026-05-06",
          reason: "b",
        };
        Object.assign(json, { history: [entry] });
      },
    ],
  ])("%s", (path, allowed, change) => {
    const error = thrownBy(() => recordCodec.decode(changed(change)));
    expect(error.argument).toBe(path);
    expect(error.allowed).toContain(allowed);
  });

  // An old value that goes back to a place that no record has would be lost when the record is walked back.
  it.each(["charge[0]", "runs.length", "runs[0].tubing[0]", "site.nowhere", "runs[0].joints.tube"])(
    "a path of the history that leads nowhere: %s",
    (path) => {
      const entry = { path, previous: 1, by: "a", at: "2026-05-06", reason: "b" };
      const error = thrownBy(() =>
        recordCodec.decode(changed((json) => Object.assign(json, { history: [entry] }))),
      );
      expect(error.argument).toBe("history[0].path");
      expect(error.allowed).toContain("the path of a field");
    },
  );

  it("the whole, when it is no record", () => {
    for (const wrong of [null, 7, "text", [], true, undefined, () => 1]) {
      expect(thrownBy(() => recordCodec.decode(wrong)).argument).toBe("record");
      expect(thrownBy(() => recordCodec.parse(wrong as never)).argument).toBe("record");
      expect(() => recordCodec.encode(wrong as never)).toThrow();
    }
  });

  it("in writing too", () => {
    const wrong = { version: 2, runs: [{ tubing: { length: 36 } }] };
    expect(thrownBy(() => recordCodec.encode(wrong as never)).argument).toBe(
      "runs[0].tubing.length",
    );
  });

  it("a text that is no JSON says where", () => {
    for (const wrong of ["", "{", '{"version":1,}', "{'version':1}", '{"a":"\\x"}', "\uFEFF"]) {
      expect(thrownBy(() => recordCodec.parse(wrong)).allowed).toBe("a JSON text");
    }
  });
});

describe("the JSON Schema of a record", () => {
  const mistakes = mistakesBy(jsonSchemaOf(recordCodec));

  it("says what each field is where the words are passed, and nothing else changes", () => {
    const described = jsonSchemaOf(recordCodec, recordWords);
    // the doc comments of the types
    expect(described).toMatchObject({
      $defs: {
        Site: {
          description: "Where the installation is.",
          properties: {
            atmosphere: {
              description: "Station pressure by a barometer; goes before the altitude.",
            },
          },
        },
      },
    });
    const bare = JSON.stringify(described, (key, value) =>
      key === "description" && typeof value === "string" ? undefined : value,
    );
    expect(JSON.parse(bare)).toEqual(jsonSchemaOf(recordCodec));
  });

  it("refuses a codec that is none, and words that are none", () => {
    for (const none of [undefined, 5, {}, [recordCodec]]) {
      expect(thrownBy(() => jsonSchemaOf(none as never)).argument).toBe("codec");
    }
    expect(thrownBy(() => jsonSchemaOf(recordCodec, 5 as never)).argument).toBe("words");
  });

  it("accepts what the codec writes", () => {
    expect(mistakes(recordCodec.encode(complete))).toEqual([]);
    fc.assert(
      fc.property(anyRecord, (json) => {
        expect(mistakes(recordCodec.encode(recordCodec.decode(json)))).toEqual([]);
      }),
      { numRuns: 50 },
    );
  });

  it.each<[what: string, change: (json: Json) => void]>([
    ["an unknown field", (json) => Object.assign(json, { color: 1 })],
    [
      "a number in place of a quantity",
      (json) => Object.assign(json.runs?.[0]?.tubing ?? {}, { length: 36 }),
    ],
    [
      "another unit",
      (json) => Object.assign(json.runs?.[0]?.tubing?.length ?? {}, { unit: "psig" }),
    ],
    ["no version", (json) => Object.assign(json, { version: undefined })],
    ["another version", (json) => Object.assign(json, { version: 3 })],
    ["another word", (json) => Object.assign(json.runs?.[0]?.joints?.[0] ?? {}, { kind: "glued" })],
    ["a date of another form", (json) => Object.assign(json.photos?.[0] ?? {}, { at: "4 May" })],
  ])("refuses %s", (_, change) => {
    expect(mistakes(JSON.parse(JSON.stringify(changed(change))))).not.toEqual([]);
  });
});
