// Of what parts is the typed text made? Numbers, fractions, units, operators and parentheses, with places.
// Follows no standard; the notation is the trade's own, common practice, no source.
// Does not cover what the parts mean together: operand.ts does.
import type { Verbatim } from "../assessment/statement.ts";
import { FieldTextError } from "./field-text-error.ts";
import { findUnit, type NamedUnit, type NameLookup, unknownWord } from "./find-unit.ts";
import { tightSpace } from "./plain-text.ts";
import { readFraction } from "./read-fraction.ts";
import { type NumberContext, readNumber } from "./read-number.ts";
import { type FieldTextStatement, say, verbatim } from "./statements.ts";

interface Place {
  readonly start: number;
  readonly end: number;
}

/** A part of the text. `mark` is the operator as typed, in its plain form. */
export type Token = Place &
  (
    | { readonly type: "number"; readonly value: number; readonly whole: boolean }
    | { readonly type: "fraction"; readonly value: number }
    | { readonly type: "unit"; readonly units: readonly NamedUnit[]; readonly mark: string }
    | { readonly type: "operator"; readonly operator: "+" | "-" | "*" | "/"; readonly mark: string }
    | { readonly type: "(" | ")" }
  );

const operators: ReadonlyMap<string, "+" | "-" | "*" | "/"> = /* @__PURE__ */ new Map([
  ["+", "+"],
  ["-", "-"],
  ["–", "-"],
  ["−", "-"],
  ["×", "*"],
  ["·", "*"],
  ["x", "*"],
  ["X", "*"],
  ["/", "/"],
]);

/** What may stand in the field: names of units; and for an error message, its notation and its units' symbols. */
export interface Vocabulary {
  readonly names: NameLookup;
  readonly notation: FieldTextStatement;
  readonly symbols: readonly Verbatim[];
}

/** What to do about the word vacuum (vacío, vácuo) behind a pressure: 20 inHg vacuum has two readings. */
export function vacuumHint(word: string): FieldTextStatement | undefined {
  return /^v[aá]c/i.test(word) ? say("field-text.vacuum") : undefined;
}

/** The parts of the text, each with its place. */
export function tokens(context: NumberContext, allowed: Vocabulary): Token[] {
  const { plain } = context;
  const found: Token[] = [];
  for (let at = 0; at < plain.length; ) {
    const char = plain.charAt(at);
    if (char === " " || char === tightSpace) {
      at += 1;
      continue;
    }
    const token = tokenAt(context, at, allowed);
    found.push(token);
    at = token.end;
  }
  return found;
}

function tokenAt(context: NumberContext, start: number, allowed: Vocabulary): Token {
  const { text, plain } = context;
  const number = readNumber(context, start);
  if (number) return { type: "number", start, ...number };
  const fraction = readFraction(plain, start);
  if (fraction) return { type: "fraction", start, ...fraction };
  const unit = findUnit(plain, start, allowed.names);
  if (unit) return { type: "unit", start, ...unit, mark: plain.slice(start, unit.end) };
  const mark = plain.charAt(start);
  const operator = operators.get(mark);
  if (operator && !/[xX]\p{L}/u.test(plain.slice(start, start + 2))) {
    return { type: "operator", start, end: start + 1, operator, mark };
  }
  if (mark === "(" || mark === ")") return { type: mark, start, end: start + 1 };
  const { end, spelling } = unknownWord(plain, start, allowed.names);
  if (!/[\p{L}_$°]/u.test(mark)) throw new FieldTextError(text, start, end, allowed.notation);
  const hint =
    plain.charAt(end) === "("
      ? say("field-text.no-functions")
      : vacuumHint(plain.slice(start, end));
  throw new FieldTextError(
    text,
    start,
    end,
    say("field-text.unit", { symbols: allowed.symbols }),
    spelling === undefined ? hint : say("field-text.capitals", { spelling: verbatim(spelling) }),
  );
}
