// A field that is stated as undefined is a field that is not stated.
import type { Codec } from "hvac-install-math/wire";
import * as wire from "hvac-install-math/wire";
import { describe, expect, it } from "vitest";
import { subjects } from "./subjects.ts";
import { placesIn, replaced, snapshot, without } from "./walk.ts";

/** Fields that the caller names, or that stand for the caller's own data: undefined is not a value of theirs. */
const callersOwn = ["logs.guessLog", "logs.createLogReader", "logs.readLog", "quantity.revive"];

const taking = subjects.filter(({ name }) => !callersOwn.includes(name));

/** The optional fields of an input's own shape, at its top. */
const optionalFields = (name: string): readonly string[] => {
  const codec = (wire as unknown as Record<string, Codec<unknown> | undefined>)[`${name}Input`];
  const shape = codec?.shape;
  if (typeof shape !== "object" || !("fields" in shape)) return [];
  return Object.keys(shape.fields)
    .filter((field) => field.endsWith("?"))
    .map((field) => field.slice(0, -1));
};

const outcome = (act: (...args: unknown[]) => unknown, args: unknown): unknown => {
  try {
    return snapshot(act(...(args as unknown[])));
  } catch (error) {
    return `refused: ${(error as Error).name}`;
  }
};

describe.each(taking.map((one) => [one.name, one] as const))("%s", (name, { act, calls }) => {
  it("takes a stated undefined as not stated", () => {
    const own = name.replace(/^.*\./, "");
    const turned: string[] = [];
    for (const args of calls) {
      for (const { path } of placesIn(args)) {
        if (path.length < 2 || typeof path.at(-1) === "number") continue;
        const left = outcome(act, without(args, path));
        const stated = outcome(act, replaced(args, path, undefined));
        if (JSON.stringify(left) !== JSON.stringify(stated)) turned.push(path.join("."));
      }
      const [only, ...more] = args;
      if (more.length > 0 || typeof only !== "object" || only === null) continue;
      const plain = outcome(act, args);
      for (const field of optionalFields(own)) {
        if (field in only) continue;
        const stated = outcome(act, [{ ...only, [field]: undefined }]);
        if (JSON.stringify(plain) !== JSON.stringify(stated)) turned.push(`+ ${field}`);
      }
    }
    expect(turned).toEqual([]);
  });
});
