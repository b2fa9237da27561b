// How does trade notation become plain arithmetic? Each value, 12 ft 6 in or −5 °F, becomes one symbol.
// Follows the rules of arithmetic; what can be read in two ways is refused.
// Does not cover the arithmetic itself: mathjs parses the expression, evaluate.ts works it out.
import { FieldTextError } from "../read-quantity/field-text-error.ts";
import { type Leaf, operandAt } from "../read-quantity/operand.ts";
import { type FieldTextStatement, say } from "../read-quantity/statements.ts";
import { type Token, vacuumHint } from "../read-quantity/tokens.ts";

/** A value of the expression, or a unit alone, to be put on the value in parentheses before it. */
export type Term = Leaf & { readonly unitOnly?: true | undefined };

/** Arithmetic in plain symbols: `q0`, `q1` … are the leaves. */
export interface Arithmetic {
  readonly expression: string;
  /** For each character of the expression, its place in the typed text. */
  readonly origins: readonly number[];
  readonly leaves: readonly Term[];
}

/** Deepest nesting of parentheses. */
const deepest = 10;
const between = /* @__PURE__ */ say("field-text.operator");

/** Turns the parts of the text into arithmetic. */
export function tradeNotation(text: string, parts: readonly Token[]): Arithmetic {
  const pieces: { text: string; origin: number }[] = [];
  const leaves: Term[] = [];
  const open: number[] = []; // pieces that hold the open parentheses
  let closed: number | undefined; // the one that the part before this closed
  let operandExpected = true;
  const refuse = (
    { start, end }: Token,
    wanted: FieldTextStatement,
    hint?: FieldTextStatement,
  ): never => {
    throw new FieldTextError(text, start, end, wanted, hint);
  };
  for (let at = 0; at < parts.length; ) {
    const part = parts[at] as Token;
    const before = parts[at - 1];
    const operand = operandExpected ? operandAt(text, parts, at) : undefined;
    const opened = closed;
    closed = undefined;
    if (operand) {
      if (operand.slash && before?.type === "operator" && before.operator === "/") {
        refuse(
          part,
          say("field-text.fraction-in-parentheses"),
          say("field-text.fraction-two-ways"),
        );
      }
      pieces.push({ text: `q${leaves.length}`, origin: part.start });
      leaves.push(operand.leaf);
      operandExpected = false;
      at = operand.next;
      continue;
    }
    if (part.type === "unit") {
      const parenthesis = opened === undefined ? undefined : pieces[opened];
      if (!parenthesis) {
        return refuse(
          part,
          say("field-text.number-before-unit"),
          before?.type === "unit" ? vacuumHint(part.mark) : undefined,
        );
      }
      const { start, end, units } = part;
      parenthesis.text += "("; // (1/4 + 1/8) in binds as one value
      pieces.push({ text: `*q${leaves.length})`, origin: start });
      const place = { start, end, unitPlace: [start, end] as const };
      leaves.push({ value: 1, units, unitOnly: true, hyphenated: false, pair: false, ...place });
    } else if (part.type === "operator") {
      const after = parts[at + 1];
      const sign = operandExpected && (part.operator === "+" || part.operator === "-");
      if (sign && after?.type === "operator") refuse(after, say("field-text.number-after-sign"));
      pieces.push({ text: part.operator, origin: part.start });
      operandExpected = true;
    } else if (part.type === "(") {
      if (!operandExpected) refuse(part, between, say("field-text.write-times"));
      if (open.length >= deepest)
        refuse(part, say("field-text.fewer-parentheses", { most: deepest }));
      open.push(pieces.length);
      pieces.push({ text: "(", origin: part.start });
    } else if (part.type === ")") {
      closed = open.pop();
      if (closed === undefined) refuse(part, say("field-text.opened-parenthesis"));
      pieces.push({ text: ")", origin: part.start });
      operandExpected = false;
    } else {
      refuse(part, between, before?.type === "number" ? say("field-text.no-spaces") : undefined);
    }
    at += 1;
  }
  return {
    expression: pieces.map((piece) => piece.text).join(""),
    origins: pieces.flatMap((piece) => [...piece.text].map(() => piece.origin)),
    leaves,
  };
}
