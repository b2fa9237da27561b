// Can an app word a refusal itself, in any language? What is beyond a bound carries the bound, and most of the rest a
// hint; both are codes and figures. Follows the inputs of the fault tests: one place of a valid input is made wrong.
import { readdirSync, readFileSync } from "node:fs";
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

/** What has neither bound nor hint, by what is allowed there: mistakes of a program, not of who fills in a form. */
const ofPrograms: readonly (readonly [RegExp, string])[] = [
  [/^an object|^an array$|^a list$/, "the shape of an input is the program's"],
  [
    /^a unit of |^a unit, or its name|^a kind of quantity$/,
    "units and kinds are picked by the program",
  ],
  [/^a refrigerant of|^a fluid of|^an id of/, "objects and ids that the package exports"],
  [/^a rule set such as|^rules with/, "a rule set that the program passes"],
  [/^a function/, "a function that the program passes"],
  [/^a language|^a code that the catalogue|^a BCP 47/, "the language that the program passes"],
  [/^the path of a field/, "paths are written by the program"],
  [/^each pair of|^a position from/, "correlations, which no form asks for"],
  [/^two Float64Array/, "arrays of a program"],
  [/^field-text\.unit$/, "the error of a typed text has words of its own: `wanted`"],
];

it("has neither for mistakes of a program alone, each kind of which there is", () => {
  const bare = [...refusals].filter(([, { bound, hint }]) => !bound && !hint);
  const isOfProgram = ({ allowed }: InvalidInputError) =>
    ofPrograms.some(([pattern]) => pattern.test(allowed));
  expect(bare.filter(([, error]) => !isOfProgram(error)).map(([name]) => name)).toEqual([]);
  const unused = ofPrograms.filter(
    ([pattern]) => !bare.some(([, { allowed }]) => pattern.test(allowed)),
  );
  expect(unused.map(([, reason]) => reason)).toEqual([]);
});

/** Where the source makes an error with neither of the two, how often, and why. */
const literal: Readonly<Record<string, readonly [count: number, reason: string]>> = {
  "assessment/explain.ts": [2, "the language that the program passes"],
  "assessment/uncertainty.ts": [3, "correlations, which no form asks for"],
  "field-text/parse-quantity.ts": [1, "options of a program"],
  "quantity/json.ts": [1, "data of a program"],
  "quantity/products.ts": [1, "kinds that do not multiply: the compiler says so"],
  "quantity/quantity.ts": [1, "a quantity added with +: the compiler says so"],
  "refrigerants/bulk.ts": [1, "arrays of a program"],
  "report/report-options.ts": [1, "the language that the program passes"],
  "wire/codec.ts": [2, "a document that is no data, or no JSON"],
  "wire/scan-text.ts": [1, "a document too deep or too long to be a record"],
};

it("makes no other error without them in the source", () => {
  const files = readdirSync("src", { recursive: true, encoding: "utf8" });
  const found = Object.fromEntries(
    files
      .filter((name) => name.endsWith(".ts"))
      .map((name): [string, number] => {
        const text = readFileSync(`src/${name}`, "utf8");
        const errors = text.split(/new (?:InvalidInputError|OutOfRangeError)\(/).slice(1);
        const bare = errors.filter((one) => {
          const [parts = ""] = one.split(/\}\)(?:;|,?\n)/);
          return /^\{/.test(one) && !/\b(bound|hint)\b|\.\.\.problem/.test(parts);
        });
        return [name, bare.length];
      })
      .filter(([, count]) => count > 0),
  );
  expect(found).toEqual(
    Object.fromEntries(Object.entries(literal).map(([name, [count]]) => [name, count])),
  );
});
