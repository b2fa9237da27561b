// How is something large made no sooner than it is needed? Once, at the first call.
// Common practice, no source. Does not cover what fails while it is made: the next call tries again.

/** What is made at the first call; every call gives the same. */
export type Later<T> = () => T;

/** Makes it when it is first asked for. */
export function later<T>(make: () => T): Later<T> {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

/**
 * The same for a function of a file: `function all() { return once(all, () => …); }`. Its text costs half as much to load
 * as that of a constant which is `later`, which counts where there are hundreds.
 */
export function once<T>(own: Later<T>, make: () => T): T {
  if (!madeBy.has(own)) madeBy.set(own, make());
  return madeBy.get(own) as T;
}

const madeBy = /* @__PURE__ */ new WeakMap<Later<unknown>, unknown>();
