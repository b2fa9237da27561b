// What is large is made once, and no sooner than it is needed: the promise of later.ts itself.
import { expect, it } from "vitest";
import { type Later, later, once } from "../../src/quantity/later.ts";

it.each<[string, (make: () => object) => Later<object>]>([
  ["later", later],
  [
    "once",
    (make) => {
      const own: Later<object> = () => once(own, make);
      return own;
    },
  ],
])("%s makes it at the first call that succeeds, and never again", (_, of) => {
  let calls = 0;
  const get = of(() => {
    if (++calls === 1) throw new RangeError("the first time");
    return { calls };
  });
  expect(calls).toBe(0);
  expect(get).toThrow(RangeError);
  const made = get();
  expect(made).toEqual({ calls: 2 });
  expect(get()).toBe(made);
});
