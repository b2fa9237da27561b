// Several arguments travel as one object, by the names of the parameters: what comes back can be called with.

import * as wire from "hvac-install-math/wire";
import { type Codec, type JsonObject, jsonSchemaOf } from "hvac-install-math/wire";
import { expect, it } from "vitest";
import { subjects } from "../faults/subjects.ts";

const codecs = wire as unknown as Readonly<
  Record<string, Codec<Record<string, unknown>> | undefined>
>;

/** The fields of an input in their order, those of the longest form where it has several. */
function fieldsOf(codec: Codec<Record<string, unknown>>): string[] {
  const { anyOf, properties, $defs } = jsonSchemaOf(codec);
  const refs = (anyOf as { $ref: string }[] | undefined) ?? [];
  const forms = refs.map(({ $ref }) => ($defs as JsonObject)[$ref.slice(8)] as JsonObject);
  if (properties) forms.push({ properties });
  return forms
    .map((form) => Object.keys(form.properties as JsonObject))
    .reduce((longest, own) => (own.length > longest.length ? own : longest));
}

const calls = subjects.flatMap(({ name, act, calls }) => {
  const codec = codecs[`${name.replace(/^.*\./, "")}Input`];
  const several = calls.filter((args) => args.length > 1);
  return codec ? several.map((args, i) => ({ call: `${name} #${i + 1}`, act, args, codec })) : [];
});

it.each(calls)("$call", ({ act, args, codec }) => {
  const fields = fieldsOf(codec);
  const input = Object.fromEntries(args.map((value, i) => [fields[i], value]));
  const text = codec.stringify(input);
  const back = codec.parse(text);
  expect(back).toEqual(input);
  expect(act(...Object.values(back))).toEqual(act(...args));
});
