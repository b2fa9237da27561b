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
