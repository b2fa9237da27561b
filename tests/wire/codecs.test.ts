// Every codec of an input or a result: what its JSON Schema allows is read, and comes back as it was.
import fc from "fast-check";
import { isInvalidInputError } from "hvac-install-math/quantity";
import * as wire from "hvac-install-math/wire";
import { type Codec, jsonSchemaOf } from "hvac-install-math/wire";
import { describe, expect, it } from "vitest";
import { pathsOf, put } from "../commissioning/mutated-record.ts";
import { arbitraryJson } from "./arbitrary-json.ts";
import { mistakesBy } from "./mistakes-by.ts";
import { thrownBy } from "./thrown-by.ts";

const codecs = Object.entries(wire).filter(([name]) =>
  /(Input|Result)$|^changeCodec$/.test(name),
) as unknown as [name: string, codec: Codec<unknown>][];

describe.each(codecs)("%s", (_, codec) => {
  const schema = jsonSchemaOf(codec);
  const mistakes = mistakesBy(schema);

  it("reads whatever its JSON Schema allows, and writes it as it was", () => {
    fc.assert(
      fc.property(arbitraryJson(schema), (json) => {
        const value = codec.decode(json);
        const written = codec.encode(value);
        expect(written).toEqual(json);
        expect(mistakes(written)).toEqual([]);
        expect(codec.parse(codec.stringify(value))).toEqual(value);
      }),
      { numRuns: 15 },
    );
  });

  it("refuses a field that is not known, and so does its JSON Schema", () => {
    const all = fc.sample(arbitraryJson(schema), 20);
    const any = all.find((one) => typeof one === "object"); // a name alone has no fields
    const [more, path] = Array.isArray(any)
      ? [[...any, { color: "red" }], new RegExp(`^\\[${any.length}\\]\\.`)]
      : [{ ...(any as object), color: "red" }, /^color$/];
    expect(thrownBy(() => codec.decode(more)).argument).toMatch(path);
    expect(thrownBy(() => codec.encode(more)).argument).not.toBe("");
    expect(mistakes(more)).not.toEqual([]);
  });

  it("refuses anything else, in whole or in part, with the typed error and nothing worse", () => {
    const [any] = fc.sample(arbitraryJson(schema), 1);
    const live = codec.decode(any);
    const place = (value: unknown) => fc.constantFrom<(string | number)[]>([], ...pathsOf(value));
    fc.assert(
      fc.property(place(any), place(live), fc.anything(), (inJson, inLive, other) => {
        for (const act of [
          () => codec.decode(put(any, inJson, other)),
          () => codec.encode(put(live, inLive, other)),
        ]) {
          try {
            act();
          } catch (error) {
            if (!isInvalidInputError(error)) throw error;
          }
        }
      }),
      { numRuns: 25 },
    );
  });
});
