// What every function takes and really gives travels: sent as text, it is the same on the other side.
import type { Codec } from "hvac-install-math/wire";
import * as wire from "hvac-install-math/wire";
import { expect, it } from "vitest";
import { subjects } from "../faults/subjects.ts";

const codecs = wire as unknown as Readonly<Record<string, Codec<unknown> | undefined>>;
/** Takes a function of the caller's own, in whose place a refrigerant travels. */
const otherInput = "line-set.liquidLineSubcooling";

const calls = subjects.flatMap(({ name, act, calls }) => {
  const own = name.replace(/^.*\./, "");
  const input = name === otherInput ? undefined : codecs[`${own}Input`];
  const result = codecs[`${own}Result`];
  return input || result
    ? calls.map((args, i) => ({ call: `${name} #${i + 1}`, act, args, input, result }))
    : [];
});

it.each(calls)("$call", ({ act, args, input, result }) => {
  const [only, ...more] = args;
  if (input && more.length === 0) {
    const text = input.stringify(only);
    expect(input.parse(text)).toEqual(only);
    expect(input.stringify(input.parse(text))).toBe(text);
  }
  if (!result) return;
  const text = result.stringify(act(...args));
  const back = result.parse(text);
  expect(result.stringify(back)).toBe(text);
  if (input && more.length === 0) {
    expect(result.stringify(act(input.parse(input.stringify(only))))).toBe(text);
  }
});
