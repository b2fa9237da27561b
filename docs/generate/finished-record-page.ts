// What does a finished record look like, and which of its fields does each step need? One short record as JSON, and
// what the library says when one field after the other is left out.
// The record is invented: tests/commissioning/twelve.ts. Does not cover jobs with more than one head, or other systems:
// they need more.

import { label } from "hvac-install-math/assessment";
import {
  assessInstallation,
  circuitRules,
  type InstallationRecord,
} from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { isInvalidInputError, isQuantity } from "hvac-install-math/quantity";
import { recordCodec } from "hvac-install-math/wire";
import { heronCabin } from "../../tests/commissioning/twelve.ts";
import { type Page, page, plain, table } from "./page.ts";

const rules = Object.values(circuitRules);

/** The page. */
export function finishedRecordPage(): Page {
  const needs = neededBy(heronCabin);
  const { outcome, steps: judged } = assessInstallation(heronCabin, { rules });
  if (outcome !== "pass") throw new Error("The finished record does not pass");
  const inOrder = judged.map(({ name }) => name);
  const steps = [...inOrder, FORM].filter((step) =>
    [...needs.values()].some(([own]) => own === step),
  );
  const idle = [...needs]
    .filter(([path, own]) => own.length === 0 && !path.startsWith("instruments."))
    .map(([path]) => path);
  return page("finished-record.md", "A finished record", [
    "# A finished record",
    "One outdoor unit, one head, an invented job: this record passes. `recordCodec.parse` reads it from this JSON. What a plate, a manual or a certificate fixes can be kept apart and referred to in `onFile`; then at most 80 fields are typed beside the readings.",
    `\`\`\`json\n${jsonOf(recordCodec.encode(heronCabin))}\n\`\`\``,
    "## Which field each step needs",
    "Each field was left out of this record by itself, and the record judged again: each step stands here with the fields without which it no longer passes, a field at the first step that it stops. Other jobs need more: pumps, several heads, brazed joints.",
    table(
      ["step", "does not pass without"],
      steps.map((step) => [
        step === FORM
          ? "its form: refused"
          : plain(label(`commissioning.step.${step}` as "commissioning.step.valves", english)),
        [...needs]
          .filter(([, own]) => own[0] === step)
          .map(([path]) => `\`${path}\``)
          .join(", "),
      ]),
    ),
    `No step waits for these, which make a verdict sharper, name things, or let the order of the work be seen: ${idle.map((path) => `\`${path}\``).join(", ")}; nor for the other figures of the instruments, for which usual errors are assumed, and said.`,
  ]);
}

/** The first step that no longer passes without each field; of a list the first entry stands for all. */
function neededBy(record: InstallationRecord): Map<string, string[]> {
  return new Map(
    fieldsOf(record).map(({ path, without }) => {
      try {
        const { steps } = assessInstallation(without(), { rules });
        const open = steps.filter(({ outcome }) => outcome !== "pass");
        return [path, open.map(({ name }) => name)];
      } catch (error) {
        if (!isInvalidInputError(error)) throw error;
        return [path, [FORM]];
      }
    }),
  );
}

/** What the record is refused without. */
const FORM = "form";

interface Field {
  readonly path: string;
  /** The record without it. */
  readonly without: () => InstallationRecord;
}

/** Every field with a value of its own, of readings only the list. */
function fieldsOf(record: InstallationRecord): Field[] {
  const fields: Field[] = [];
  const walk = (value: unknown, keys: readonly (string | number)[]): void => {
    const [last] = keys.slice(-1);
    const isLeaf = typeof value !== "object" || value === null || isQuantity(value);
    if (isLeaf || last === "readings") {
      if (keys.length > 1)
        fields.push({ path: pathOf(keys), without: () => removed(record, keys) });
      return;
    }
    for (const [key, own] of Object.entries(value))
      if (!Array.isArray(value) || key === "0")
        walk(own, [...keys, Array.isArray(value) ? 0 : key]);
  };
  walk(record, []);
  return fields;
}

const pathOf = (keys: readonly (string | number)[]) =>
  keys.reduce<string>(
    (path, key) => (typeof key === "number" ? `${path}[]` : path ? `${path}.${key}` : key),
    "",
  );

/** A copy of the record without what stands under the keys, in every entry of a list. */
function removed(record: InstallationRecord, keys: readonly (string | number)[]) {
  const copied = (value: unknown, [key, ...rest]: readonly (string | number)[]): unknown => {
    if (typeof key === "number" && Array.isArray(value)) {
      return rest.length === 0 ? [] : value.map((one) => copied(one, rest));
    }
    const { [key as string]: own, ...others } = value as Record<string, unknown>;
    return rest.length === 0 ? others : { ...others, [key as string]: copied(own, rest) };
  };
  return copied(record, keys) as InstallationRecord;
}

/** JSON with a quantity on one line. */
function jsonOf(value: unknown): string {
  return JSON.stringify(value, undefined, 1).replaceAll(
    /\{\s+"kind": ("\w+"),\s+"value": ([-\d.e]+),\s+"unit": ("[^"]*")\s+\}/g,
    '{ "kind": $1, "value": $2, "unit": $3 }',
  );
}
