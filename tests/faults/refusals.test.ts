// Can an app word a refusal itself, in any language? What is beyond a bound carries the bound, and most of the rest a
// hint; both are codes and figures. Follows the inputs of the fault tests: one place of a valid input is made wrong.
import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { spanish } from "hvac-install-math/language/es";
import { french } from "hvac-install-math/language/fr";
import {
  type InvalidInputError,
  isInvalidInputError,
  isQuantity,
} from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import type { Subject } from "./catalogue.ts";
import { subjects } from "./subjects.ts";
import { type Path, placesIn, replaced } from "./walk.ts";

type AnyQuantity = { readonly si: number; readonly unit: (value: number) => unknown };

/** Values of the same form as the valid one that a range may leave out, and others that are no such value at all. */
function wrongFor(valid: unknown): unknown[] {
  const wrong: unknown[] = [undefined, "invented", true];
  if (typeof valid === "number") wrong.push(-1e9, 1e9, 0, valid + 0.5);
  if (isQuantity(valid)) {
    const { unit } = valid as unknown as AnyQuantity;
    for (const value of [-1e9, 1e9, 0]) {
      try {
        wrong.push(unit(value));
      } catch {} // no such quantity can be made
    }
  }
  if (Array.isArray(valid)) wrong.push([], valid.slice(0, 1));
  return wrong;
}

/** The refusals that a function answers with, one for each argument and what is allowed there. */
function refusalsOf({ name, act, calls }: Subject): Map<string, InvalidInputError> {
  const found = new Map<string, InvalidInputError>();
  const attempt = (args: unknown, path: Path, value: unknown) => {
    try {
      act(...(replaced(args, path, value) as unknown[]));
    } catch (error) {
      if (!isInvalidInputError(error)) return; // another test's matter
      found.set(`${name}: ${error.argument}: ${error.allowed.replace(/[\d.]+/g, "0")}`, error);
    }
  };
  for (const args of calls) {
    for (const { path, value } of placesIn(args)) {
      for (const wrong of wrongFor(value)) attempt(args, path, wrong);
    }
  }
  return found;
}

const refusals = new Map(subjects.flatMap((subject) => [...refusalsOf(subject)]));

/** What is allowed is a range of figures. */
const isRange = ({ allowed }: InvalidInputError): boolean =>
  /^(at least|at most|more than|less than) -?[\d.]/.test(allowed);

it("has the bound that a value broke where a range is allowed", () => {
  const without = [...refusals].filter(([, error]) => isRange(error) && !error.bound);
  expect(without.map(([name]) => name)).toEqual([]);
});

it("has figures of one kind in each bound, and the value on the wrong side of the limit", () => {
  const kindOf = (one: unknown) => (isQuantity(one) ? one.kind : typeof one);
  const wrong = [...refusals].filter(([, { bound }]) => {
    if (!bound) return false;
    const [value, limit] = [Number(bound.value), Number(bound.limit)];
    const broken = {
      min: value < limit,
      above: value <= limit,
      max: value > limit,
      below: value >= limit,
    };
    return kindOf(bound.value) !== kindOf(bound.limit) || !broken[bound.is];
  });
  expect(wrong.map(([name]) => name)).toEqual([]);
});

it("says in each language what goes into a field", () => {
  for (const [name, { hint }] of refusals) {
    // A kind that the caller made up is told by `fromJSON` as it is.
    if (!hint || name.startsWith("quantity.fromJSON: ")) continue;
    for (const language of [english, spanish, french]) {
      expect(explain<string>(hint as never, language), name).toMatch(/\p{L}.*\.$/u);
    }
  }
});

it("has codes for the most of them", () => {
  const bare = [...refusals].filter(([, { bound, hint }]) => !bound && !hint);
  const share = 1 - bare.length / refusals.size;
  console.log(`${refusals.size} refusals, ${bare.length} with neither bound nor hint`);
  if (process.env.LIST_REFUSALS) console.log(bare.map(([name]) => name).join("\n"));
  // What is left: a program's mistakes (an object, a function, a rule set) and partners of a field.
  expect(share).toBeGreaterThan(0.75);
});
