// Which unit is typed here? The longest name of the table that starts at a place in the text.
// Follows the table of names that it is given.
// Does not cover which of several units a name means: that depends on the kind that is wanted.
import { plainText } from "./plain-text.ts";
import { spelled } from "./unit-names.ts";

/** What a name stands for: a unit, of which the reading looks at the symbol only. */
export interface NamedUnit {
  readonly symbol: string;
}

/** The units that names stand for, and the names, in the form of {@link commonNames}. */
export type NameRow = readonly [units: readonly NamedUnit[], names: string];

/** A name that was found: the units that it can stand for, and the index after it. */
export interface FoundUnit {
  readonly units: readonly NamedUnit[];
  readonly end: number;
}

/** Names made ready to be looked up. */
export interface NameLookup {
  /** Names whose case matters. */
  readonly exact: ReadonlyMap<string, readonly NamedUnit[]>;
  /** The others, in lower case. */
  readonly anyCase: ReadonlyMap<string, readonly NamedUnit[]>;
  /** The right spelling of the names whose case matters, by their lower case. */
  readonly spelling: ReadonlyMap<string, string>;
  readonly longest: number;
}

/** The one form under which a name is kept and looked up. */
function keyOf(name: string): string {
  return name
    .normalize("NFKD") // µ of Greece or of the keyboard, ft² and ft2, ℃ and °C
    .replace(/\p{M}/gu, "") // accents: día and dia
    .replace(/ +/g, " ")
    .replace(/(?<=\p{L})\.(?!\d)/gu, "")
    .replace(/ ?([/·×()^]) ?/g, "$1")
    .replace(/(?<=\p{L})×(?=\p{L})/gu, "·")
    .replaceAll("''", '"')
    .replaceAll("^", "")
    .trim();
}

/** Makes a table of names ready. */
export function lookupOf(rows: readonly NameRow[]): NameLookup {
  const exact = new Map<string, readonly NamedUnit[]>();
  const anyCase = new Map<string, readonly NamedUnit[]>();
  const spelling = new Map<string, string>();
  let longest = 0;
  for (const [units, names] of rows) {
    for (const name of names.split("|")) {
      const bare = name.replace("=", "");
      longest = Math.max(longest, bare.length);
      const keys = spelled(plainText(bare, [])).map(keyOf);
      for (const key of keys.flatMap((key) => [key, key.replaceAll(" ", "")])) {
        if (name.startsWith("=")) {
          exact.set(key, units);
          if (!spelling.has(key.toLowerCase())) spelling.set(key.toLowerCase(), bare);
        } else {
          anyCase.set(key.toLowerCase(), units);
        }
      }
    }
  }
  return { exact, anyCase, spelling, longest: longest + 8 }; // room for points and extra spaces
}

const letter = /[\p{L}\p{M}]/u;

/** The unit whose name starts at `start` of the plain text, or undefined. */
export function findUnit(plain: string, start: number, names: NameLookup): FoundUnit | undefined {
  const limit = Math.min(plain.length, start + names.longest);
  for (let end = limit; end > start; end--) {
    const [last, next] = [plain.charAt(end - 1), plain.charAt(end)];
    if (last === " " || last === "\u00a0") continue;
    if (letter.test(next) && /[\p{L}\d²³.]/u.test(last)) continue; // within a word
    if (/\d/.test(last) && /[\d.,]/.test(next)) continue; // within a number
    const units = unitsNamed(plain.slice(start, end), names);
    if (units) return { units, end };
  }
  return undefined;
}

/** The units that a name in plain characters stands for, or undefined. */
export function unitsNamed(name: string, names: NameLookup): readonly NamedUnit[] | undefined {
  const key = keyOf(name);
  return names.exact.get(key) ?? names.anyCase.get(key.toLowerCase());
}

/** The word that starts at `start` and is not a unit: its end, and how it may have been meant. */
export function unknownWord(
  plain: string,
  start: number,
  names: NameLookup,
): { end: number; spelling: string | undefined } {
  const word = /^[\p{L}\p{M}\d°%_$]+/u.exec(plain.slice(start, start + 40))?.[0];
  const spelling = names.spelling.get(keyOf(word ?? "").toLowerCase());
  const end = start + (word?.length ?? String.fromCodePoint(plain.codePointAt(start) ?? 0).length);
  return { end, spelling };
}
