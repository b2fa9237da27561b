// In what order is it worked out? mathjs parses the arithmetic; only four operations are let through.
// Follows mathjs 15, `create({ parseDependencies })` from mathjs/number: 40 kB after gzip, where the
// named import of `parse` is 111 kB. Does not cover units: mathjs sees symbols only.
import { create, type FactoryFunctionMap, type MathNode, parseDependencies } from "mathjs/number";
import { FieldTextError } from "../read-quantity/field-text-error.ts";
import { type FieldTextStatement, say } from "../read-quantity/statements.ts";
import type { Arithmetic } from "./trade-notation.ts";

/** The arithmetic as a tree: a leaf by its index, or an operation on one or two trees. */
export type Tree =
  | { readonly leaf: number }
  | {
      readonly operator: "+" | "-" | "*" | "/";
      readonly operands: readonly [Tree] | readonly [Tree, Tree];
    };

/** What may stand in a field, for an error message. */
export const notation: FieldTextStatement = /* @__PURE__ */ say("field-text.expression");

const math = /* @__PURE__ */ create({ parseDependencies } as FactoryFunctionMap);

/** Parses the arithmetic. */
export function syntaxTree(text: string, { expression, origins }: Arithmetic): Tree {
  let node: MathNode;
  try {
    node = math.parse(expression) as MathNode;
  } catch (error) {
    // mathjs counts characters of the expression from 1
    const { char = 0, message } = error as { char?: number | undefined; message: string };
    const atEnd = text.trimEnd().length;
    const position = origins[char - 1] ?? atEnd;
    const wanted = message.startsWith("Parenthesis")
      ? say("field-text.closing-parenthesis")
      : notation;
    throw new FieldTextError(text, position, Math.min(position + 1, atEnd), wanted);
  }
  return treeOf(text, node);
}

function treeOf(text: string, node: MathNode): Tree {
  const { type, op, args, content, name, implicit } = node as MathNode & {
    op?: string | undefined;
    args?: MathNode[] | undefined;
    content?: MathNode | undefined;
    name?: string | undefined;
    implicit?: boolean | undefined;
  };
  if (type === "ParenthesisNode" && content) return treeOf(text, content);
  if (type === "SymbolNode" && /^q\d+$/.test(name ?? "")) return { leaf: Number(name?.slice(1)) };
  if (
    type === "OperatorNode" &&
    !implicit &&
    args &&
    (op === "+" || op === "-" || op === "*" || op === "/")
  ) {
    const [first, second] = args;
    if (first && second)
      return { operator: op, operands: [treeOf(text, first), treeOf(text, second)] };
    if (first) return { operator: op, operands: [treeOf(text, first)] };
  }
  throw new FieldTextError(text, 0, text.length, notation); // nothing else can come out of our symbols
}
