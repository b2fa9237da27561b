// What can be typed, and what the text of a box means: a value of the record, or what is wrong with it.
import { explain } from "hvac-install-math/assessment";
import { usualUnit } from "hvac-install-math/display";
import { degC, degF, ft, hour, kPag, m, minute, psig, type Unit } from "hvac-install-math/quantity";
import { isFieldTextError, readQuantity } from "hvac-install-math/read-quantity";
import { type JsonValue, recordCodec } from "hvac-install-math/wire";
import { withValue } from "./json-path.ts";
import type { Reader } from "./reader.ts";

type TypedKind = "length" | "gaugePressure" | "temperature" | "duration";

/** The units of each menu. */
const menus: { readonly [K in TypedKind]: readonly Unit<K>[] } = {
  length: [ft, m],
  gaugePressure: [psig, kPag],
  temperature: [degF, degC],
  duration: [hour, minute],
};

/** A field of the record that a person fills in. */
export interface Field {
  /** Its path in the record; the library names what is wrong by it. */
  readonly path: string;
  readonly holds: TypedKind | "number";
}

/** The text of a box, word for word, with the unit of its menu and the language of its numbers as they were then. */
export interface Typed {
  readonly text: string;
  readonly unit?: string | undefined;
  readonly locale?: string | undefined;
}

/** What a text means. An empty box means nothing yet: it is no 0, and no mistake. */
export interface Meaning {
  readonly value?: JsonValue | undefined;
  readonly problem?: string | undefined;
}

/** The menu of a field; the reader's usual unit first. */
export function unitsOf({ holds }: Field, { system }: Reader): string[] {
  if (holds === "number") return [];
  const menu: readonly { readonly symbol: string }[] = menus[holds];
  return inFront(menu, usualUnit(holds, system).symbol).map(({ symbol }) => symbol);
}

/** Reads the text of a box. */
export function meaningOf(field: Field, typed: Typed, reader: Reader): Meaning {
  const { text } = typed;
  const { path, holds } = field;
  if (text.trim() === "") return {};
  try {
    const value = holds === "number" ? numberIn(text) : quantityIn(holds, typed, reader);
    const [problem] = recordCodec.problems(withValue({ version: 2 }, path, value));
    if (!problem) return { value };
    return { problem: `${reader.words.notPossible} ${problem.value}` };
  } catch (error) {
    if (!isFieldTextError(error)) throw error;
    return { problem: explain(error.problem, reader.language) };
  }
}

/** A count stands in the record as a number; any other text goes there as it is, and is refused. */
const numberIn = (text: string) => (/^\s*\d+\s*$/.test(text) ? Number(text) : text);

/** A number alone is in the unit of the menu; any other unit of the menu may be typed beside it. */
function quantityIn<K extends TypedKind>(
  kind: K,
  { text, unit, locale }: Typed,
  { system }: Reader,
): JsonValue {
  const units = inFront(menus[kind], unit ?? usualUnit(kind, system).symbol);
  return { ...readQuantity(text, { kind, units, locale }).toJSON() };
}

const inFront = <U extends { readonly symbol: string }>(
  units: readonly U[],
  first: string,
): U[] => [
  ...units.filter(({ symbol }) => symbol === first),
  ...units.filter(({ symbol }) => symbol !== first),
];
