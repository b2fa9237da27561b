// Whatever a JavaScript caller puts in the place of a valid argument: a typed error that names the place,
// or a sound answer. Never an error of the engine, never a wait, never a verdict that overlooks it.
import { describe, expect, it } from "vitest";
import { subjects } from "../faults/subjects.ts";
import { complaintsOf } from "../faults/trial.ts";

describe.each(subjects.map((one) => [one.name, one] as const))("%s", (_, subject) => {
  it("refuses what it cannot use and says where it stands", () => {
    expect(complaintsOf(subject)).toEqual([]);
  });
});
