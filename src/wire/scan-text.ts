// Is this text safe to hand to JSON.parse? Its length, depth and number of values, and whether a field stands twice.
// Follows RFC 8259, section 4 (names should be unique) and 9 (limits). Runs once over the text.
// Does not cover whether it is JSON at all: JSON.parse says that afterwards.
import { numberOf } from "../quantity/check.ts";
import { InvalidInputError } from "../quantity/errors.ts";
import { pathText } from "../shapes/index.ts";
import type { WireLimits } from "./limits.ts";

const quote = 0x22;
const backslash = 0x5c;
const colon = 0x3a;
const comma = 0x2c;
const brace = 0x7b;
const braceEnd = 0x7d;
const bracket = 0x5b;
const bracketEnd = 0x5d;

/** Where the text that starts with a quotation mark ends. */
function endOfText(text: string, start: number): number {
  let i = start + 1;
  for (; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (code === quote) return i;
    if (code === backslash) i++;
  }
  return i;
}

function refuse(argument: string, value: string, allowed: string): never {
  throw new InvalidInputError({ argument, value, allowed });
}

/** How many names of fields stand in a text; throws where it is too long, too deep, or holds too much. */
export function namesIn(text: string, limits: WireLimits, whole: string): number {
  numberOf(`${whole}.length`, text.length, { max: limits.textLength });
  const items: number[] = []; // of each open list; an open object has NaN
  let names = 0;
  let commas = 0; // each parts two values
  for (let i = 0; i < text.length; i++) {
    switch (text.charCodeAt(i)) {
      case quote:
        i = endOfText(text, i);
        break;
      case colon:
        names++;
        break;
      case comma: {
        const last = items.length - 1;
        if (++commas >= limits.values)
          refuse(whole, "one value more", `at most ${limits.values} values in all`);
        if (++(items as [number])[last as 0] >= limits.listItems) {
          refuse(pathAt(text, i, whole), "one item more", `at most ${limits.listItems} in a list`);
        }
        break;
      }
      case brace:
      case bracket:
        if (items.length >= limits.depth) {
          refuse(pathAt(text, i - 1, whole), "a value this deep", `at most ${limits.depth} deep`);
        }
        items.push(text.charCodeAt(i) === bracket ? 0 : Number.NaN);
        break;
      case braceEnd:
      case bracketEnd:
        items.pop();
    }
  }
  return names;
}

/** An object or a list that is open: its names so far, and the name or position that is being read. */
interface Level {
  readonly names: Set<string> | undefined;
  at: string | number;
}

/** The path of a place in the text; throws where an object before it has the same field twice. */
export function pathAt(text: string, end: number, whole: string): string {
  const open: Level[] = [];
  const path = () => {
    const steps = open.map(({ at }) => at);
    return pathText(steps, whole);
  };
  let name = ""; // the last text, which a colon makes a name
  for (let i = 0; i <= end; i++) {
    const code = text.charCodeAt(i);
    const level = open.at(-1);
    if (code === quote) {
      const start = i;
      i = endOfText(text, i);
      name = text.slice(start, i + 1);
    } else if (code === colon && level?.names) {
      level.at = nameOf(name);
      if (level.names.has(level.at)) refuse(path(), "a field that stands twice", "each field once");
      level.names.add(level.at);
    } else if (code === comma && level && !level.names) level.at = Number(level.at) + 1;
    else if (code === brace) open.push({ names: new Set(), at: "" });
    else if (code === bracket) open.push({ names: undefined, at: 0 });
    else if (code === braceEnd || code === bracketEnd) open.pop();
  }
  return path();
}

/** A name with its escapes read, so that "a" and "\u0061" are the same. */
function nameOf(quoted: string): string {
  if (quoted.includes("\\")) {
    try {
      return String(JSON.parse(quoted));
    } catch {} // no JSON; JSON.parse of the whole will say so
  }
  return quoted.slice(1, -1);
}
