// What a caller's getter throws never leaves a codec as it is.
import { isInvalidInputError } from "hvac-install-math/quantity";
import type { Codec } from "hvac-install-math/wire";
import { assessPressureTestInput, recordCodec } from "hvac-install-math/wire";
import { expect, it } from "vitest";
import { thrownBy } from "./thrown-by.ts";

const throwing = (field: string, thrown: unknown) =>
  Object.defineProperty(field === "site" ? { version: 2 } : {}, field, {
    enumerable: true,
    get: () => {
      throw thrown;
    },
  });

it.each([
  ["an input", assessPressureTestInput as Codec<unknown>, "test", "instruments"],
  ["a record", recordCodec as Codec<unknown>, "record", "site"],
])(
  "writing %s with a field that cannot be read is refused with the typed error",
  (_, codec, whole, field) => {
    for (const thrown of [new Error("getter"), new RangeError("deep"), undefined, "text"]) {
      for (const act of [codec.encode, codec.stringify] as ((value: unknown) => unknown)[]) {
        const error = thrownBy(() => act(throwing(field, thrown)));
        expect(isInvalidInputError(error)).toBe(true);
        expect(error.argument).toBe(whole);
        expect(error.value).toBe("an object that cannot be read");
      }
    }
  },
);
