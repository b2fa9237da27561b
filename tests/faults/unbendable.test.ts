// A caller in JavaScript writes into everything that it can reach; the library judges as before.
// Left out: the prototypes of JavaScript itself and of Quantity, through which any program can be bent, and the
// schemas of wire/zod, which are zod's.
import * as english from "hvac-install-math/language/en";
import * as spanish from "hvac-install-math/language/es";
import * as french from "hvac-install-math/language/fr";
import * as plots from "hvac-install-math/plots";
import * as report from "hvac-install-math/report";
import * as wire from "hvac-install-math/wire";
import { describe, expect, it } from "vitest";
import { modules, subjects } from "./subjects.ts";
import { snapshot } from "./walk.ts";

type Holder = Record<string, unknown>;

/** Results that are made anew at each call and stay the caller's to write into: copies of the caller's own data. */
const callersOwn = ["quantity.revive", "quantity.toPlain", "commissioning.fromVersion1"];

const isHolder = (value: unknown): value is Holder =>
  (typeof value === "object" && value !== null) || typeof value === "function";

const isClass = (value: object) => typeof value === "function" && /^class\b/.test(String(value));

/** Lists of numbers can't be frozen in JavaScript: a result has one of its own. */
const isNumbers = (value: object) => ArrayBuffer.isView(value);

/** Writes, adds and deletes at every place that can be reached; says where it took. */
function bend(value: unknown, path: string, seen: Set<unknown>): string[] {
  if (!isHolder(value) || seen.has(value) || isClass(value)) return [];
  seen.add(value);
  if (typeof value === "function" && Object.keys(value).length === 0) return []; // nothing in it is read
  const taken: string[] = [];
  for (const key of Object.keys(value)) {
    const before = value[key];
    taken.push(...bend(before, `${path}.${key}`, seen));
    for (const write of [
      () => {
        value[key] = typeof before === "number" ? before + 1e3 : "bent";
      },
      () => delete value[key],
    ]) {
      try {
        write();
      } catch {} // frozen: a TypeError in strict mode
    }
    if (value[key] !== before) taken.push(`${path}.${key}`);
  }
  try {
    if (Array.isArray(value)) value.push("bent");
    else value.bent = "bent";
    taken.push(`${path} grew`);
  } catch {}
  return isNumbers(value) ? [] : taken;
}

/** What the caller brought, with all that is in it: the caller's to change. */
function partsOf(value: unknown, parts: Set<unknown> = new Set()): Set<unknown> {
  if (typeof value !== "object" || value === null || parts.has(value)) return parts;
  parts.add(value);
  for (const one of Object.values(value)) partsOf(one, parts);
  return parts;
}

const judged = () =>
  subjects.flatMap(({ name, act, calls }) =>
    calls.map((args, i): [string, unknown] => [`${name} #${i + 1}`, snapshot(act(...args))]),
  );

describe("whoever writes into what the library hands out changes no later answer", () => {
  const before = judged();

  it("in results", () => {
    const taken = subjects.flatMap(({ name, act, calls }) =>
      calls.flatMap((args) => bend(act(...args), name, partsOf(args))),
    );
    const where = [...new Set(taken)].filter(
      (place) => !callersOwn.some((name) => place.startsWith(name)),
    );
    expect(where).toEqual([]);
    expect(judged()).toEqual(before);
  });

  it("in exports", () => {
    const all = { ...modules, wire, plots, report, english, french, spanish };
    const taken = Object.entries(all).flatMap(([module, exported]) =>
      Object.entries(exported).flatMap(([name, value]) =>
        bend(value, `${module}.${name}`, new Set()),
      ),
    );
    expect(taken).toEqual([]);
    expect(judged()).toEqual(before);
  });
});
