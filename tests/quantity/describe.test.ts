import { degF, psig } from "hvac-install-math/quantity";
import { expect, it } from "vitest";
import { describe as inWords } from "../../src/quantity/check.ts";

const cyclic: Record<string, unknown> = {};
cyclic.self = cyclic;
const { proxy: revoked, revoke } = Proxy.revocable({}, {});
revoke();
const thrower = () => {
  throw new Error("not for reading");
};

it.each<[string, unknown, string]>([
  ["undefined", undefined, "undefined"],
  ["null", null, "null"],
  ["a number", -0.5, "-0.5"],
  ["not a number", Number.NaN, "NaN"],
  ["a boolean", false, "false"],
  ["a bigint", 10n, "a bigint"],
  ["a symbol", Symbol("psig"), "a symbol"],
  ["a text", "psig", 'the text "psig"'],
  ["an empty text", "", 'the text ""'],
  ["a text of many lines and quotes", 'a\n"b"', 'the text "a\\n\\"b\\""'],
  ["a long text", "x".repeat(500), `the text "${"x".repeat(40)}"`],
  ["a quantity", psig(118), "gaugePressure 118 psig"],
  ["a unit", degF, "a unit of temperature"],
  ["a function", () => 1, "a function"],
  ["an object", {}, "an object"],
  ["an array", [1, 2], "an array"],
  ["a date", new Date(0), "an object"],
  ["an object without a prototype", Object.create(null), "an object"],
  ["such an object with a kind", Object.assign(Object.create(null), { kind: "mass" }), "an object"],
  ["an object that holds itself", cyclic, "an object"],
  ["a kind that is no text", { kind: 3 }, "an object"],
  ["a kind of many lines", { kind: "a\nb" }, "a b [object Object]"],
  ["a kind with an empty line", { kind: "a\n\n b" }, "a b [object Object]"],
  ["a kind without end", { kind: "k".repeat(500) }, "k".repeat(60)],
  ["a getter that throws", Object.defineProperty({}, "kind", { get: thrower }), "an object"],
  ["a text form that throws", { kind: "mass", toString: thrower }, "an object"],
  ["a proxy that is gone", revoked, "an object"],
  ["a proxy that refuses", new Proxy(() => 1, { get: thrower }), "a function"],
])("%s is put into words on one line", (_, value, words) => {
  expect(inWords(value)).toBe(words);
});
