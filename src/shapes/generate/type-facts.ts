// What does the compiler know of a type that a shape needs? Its words, its fields, whether it is a time.
// Follows the compiler API of TypeScript 5.9. Does not cover which shape it becomes: derive.ts.
import ts from "typescript";

/** Whether an object has fields of its own, as against a list, a quantity or an object that goes by a name. */
export function isFields(type: ts.Type, checker: ts.TypeChecker): boolean {
  const isObject = type.isIntersection() || (type.flags & ts.TypeFlags.Object) !== 0;
  const special = ["Quantity", "Unit"].includes(type.symbol?.name ?? "");
  return (
    isObject &&
    !special &&
    !checker.isArrayLikeType(type) &&
    !type.getStringIndexType() &&
    type.getCallSignatures().length === 0
  );
}

/** Types without those objects that another with the same fields can be, too. */
export function distinct(types: readonly ts.Type[], checker: ts.TypeChecker): readonly ts.Type[] {
  const named = (type: ts.Type) =>
    String(
      checker
        .getPropertiesOfType(type)
        .map(({ name }) => name)
        .sort(),
    );
  const holds = (one: ts.Type, other: ts.Type) =>
    named(one) === named(other) &&
    checker.isTypeAssignableTo(other, one) &&
    !checker.isTypeAssignableTo(one, other);
  return types.filter((one) => !isFields(one, checker) || !types.some((all) => holds(all, one)));
}

/** The fields of a type: those of the types that it extends first, as a reader meets them. */
export function fieldsOf(type: ts.Type, checker: ts.TypeChecker): readonly ts.Symbol[] {
  const bases = type.isClassOrInterface() ? checker.getBaseTypes(type) : [];
  const all = checker.getPropertiesOfType(type);
  const inherited = bases.flatMap((base) => fieldsOf(base, checker).map(({ name }) => name));
  const rank = ({ name }: ts.Symbol) => inherited.indexOf(name) + 1 || all.length + 1;
  return [...all].sort((a, b) => rank(a) - rank(b));
}

/** Whether a field was declared as a date or a moment; to the compiler it is a text like any other. */
export function isTime(field: ts.Symbol): boolean {
  const [declaration] = field.declarations ?? [];
  if (!declaration || !ts.isPropertySignature(declaration)) return false;
  const type = declaration.type;
  const parts = type && ts.isUnionTypeNode(type) ? type.types : [type];
  return parts.some(
    (one) => one && ts.isTypeReferenceNode(one) && one.typeName.getText() === "IsoTime",
  );
}

/** Words as their alias lists them: the compiler's own order hangs on what it met first. */
export function inDeclaredOrder(
  type: ts.UnionType,
  all: readonly (string | number)[],
): readonly (string | number)[] {
  const [declaration] = type.aliasSymbol?.declarations ?? [];
  const text = declaration?.getText() ?? "";
  const place = (word: string | number) =>
    text.indexOf(typeof word === "string" ? `"${word}"` : String(word));
  return all.every((word) => place(word) >= 0) ? [...all].sort((a, b) => place(a) - place(b)) : all;
}

/** What codes of words have in common: circuit-protection.device of its breaker and its fuse. */
export function commonCode(all: readonly string[]): string | undefined {
  const [first, ...others] = all.map((one) => one.slice(0, one.lastIndexOf(".")));
  return first && others.every((one) => one === first) ? first : undefined;
}

/** Whether a type is one word or number. */
export const isWord = (type: ts.Type): boolean => type.isStringLiteral() || type.isNumberLiteral();

/** The word of a type that is one. */
export const literalOf = (type: ts.Type): string | number =>
  (type as ts.LiteralType).value as string | number;

/** All words of a type; none where it is anything else. */
export const wordsIn = (type: ts.Type): (string | number)[] => {
  const parts = type.isUnion() ? type.types : [type];
  return parts.every(isWord) ? parts.map(literalOf) : [];
};

/** Words as source text. */
export const words = (all: readonly (string | number)[]): string =>
  `{ words: ${JSON.stringify(all)} }`;

/** One of several forms as source text. */
export const either = (forms: readonly string[]): string =>
  forms.length === 1 ? (forms[0] as string) : `{ either: [${forms.join(", ")}] }`;
