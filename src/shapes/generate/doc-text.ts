// What does a doc comment say of a type or of a field? Its first paragraph, without its source and its links.
// Follows TSDoc. Does not cover examples and tags.
import ts from "typescript";
import { isOwn } from "./names.ts";

/** The first paragraph of a comment as plain text. */
function firstParagraph(parts: readonly ts.SymbolDisplayPart[]): string {
  const text = ts.displayPartsToString([...parts]);
  const [first = ""] = text.split(/\n\s*\n/);
  const plain = first.replace(/\{@link\s+([^}|\s]+)\s*(\|[^}]*)?\}/g, "$1").replace(/[`*]/g, "");
  return plain
    .replace(/\s+/g, " ")
    .replace(/\s*Source: .*$/, "")
    .trim();
}

/** What a field is. */
export function fieldDoc(field: ts.Symbol, checker: ts.TypeChecker): string {
  return firstParagraph(field.getDocumentationComment(checker));
}

/** What a type is: of its own name, or of the part that it is the draft of. */
export function typeDoc(type: ts.Type, checker: ts.TypeChecker): string {
  const [drafted] = type.aliasSymbol?.name === "Draft" ? (type.aliasTypeArguments ?? []) : [];
  const symbol = drafted
    ? (drafted.aliasSymbol ?? drafted.symbol)
    : (type.aliasSymbol ?? type.symbol);
  if (!symbol || !isOwn(symbol)) return "";
  return firstParagraph(symbol.getDocumentationComment(checker));
}
