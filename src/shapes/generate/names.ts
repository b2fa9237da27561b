// What is a shape called, and with which module does it stand? The names of the types.
// Follows TypeScript's symbols and aliases. Does not cover words that stand in a line of their own.
import { relative, sep } from "node:path";
import ts from "typescript";
import { root } from "./program.ts";
import { modules } from "./settings.ts";

/** Name and place of a constant. */
export interface Declared {
  readonly name: string;
  readonly module: string;
}

/** A name of words with marks between them as one: flare-joint.manual becomes FlareJointManual. */
export const pascal = (text: string): string =>
  text.replace(/(^|[^a-zA-Z0-9]+)(\w)/g, (_, __, first: string) => first.toUpperCase());

/** Names that are taken, each by one type. */
export class Names {
  readonly #taken = new Map<string, ts.Type>();

  /** The name that a type would have; `home` is the module of what is declared nowhere. */
  of(type: ts.Type, context: string, home: string, checker: ts.TypeChecker): Declared {
    const own = ownName(type, checker);
    const pascal = context.charAt(0).toUpperCase() + context.slice(1);
    const module = moduleOf(type, checker) ?? home;
    for (const name of [own ?? pascal, pascal, `${pascal}2`, `${pascal}3`]) {
      const by = this.#taken.get(name);
      if (by === undefined || by === type) return { name, module };
    }
    throw new Error(`no name is left for ${checker.typeToString(type)} in ${context}`);
  }

  /** The same, and from now on it is taken. */
  take(type: ts.Type, context: string, home: string, checker: ts.TypeChecker): Declared {
    const declared = this.of(type, context, home, checker);
    this.#taken.set(declared.name, type);
    return declared;
  }
}

/** Whether the library declares a name. */
export const isOwn = (symbol: ts.Symbol | undefined): symbol is ts.Symbol =>
  symbol !== undefined && !symbol.name.startsWith("__") && fileOf(symbol) !== undefined;

/** The path of a symbol's file below src; nothing for what is not the library's. */
function fileOf(symbol: ts.Symbol): string | undefined {
  const file = symbol.declarations?.[0]?.getSourceFile().fileName;
  const path = file && relative(`${root}/src`, file);
  return path && !path.startsWith("..") && !path.includes("generated") ? path : undefined;
}

/** Whether a type is one of many that a declared type makes, none of which has a name, such as a statement of one code. */
export const isNameless = (type: ts.Type, checker: ts.TypeChecker): boolean =>
  isOwn(type.aliasSymbol ?? type.symbol) && ownName(type, checker) === undefined;

/** The name of a type with those of its arguments, such as EstimateOfLength; nothing where it has none. */
function ownName(type: ts.Type, checker: ts.TypeChecker): string | undefined {
  const aliased = isOwn(type.aliasSymbol);
  const symbol = aliased ? type.aliasSymbol : type.symbol;
  if (!isOwn(symbol)) return undefined;
  const given = aliased
    ? (type.aliasTypeArguments ?? [])
    : type.flags & ts.TypeFlags.Object &&
        (type as ts.ObjectType).objectFlags & ts.ObjectFlags.Reference
      ? checker.getTypeArguments(type as ts.TypeReference)
      : [];
  const names = given.map((one) => {
    if (one.isStringLiteral()) return pascal(one.value);
    return one.flags & ts.TypeFlags.Never ? "" : ownName(one, checker);
  });
  if (names.some((one) => one === undefined)) return undefined;
  if (symbol.name === "Draft") return `${names[0]}Draft`;
  const of = names.filter(Boolean).join("");
  return of ? `${symbol.name}Of${of}` : symbol.name;
}

/** The highest module that a type names. */
function moduleOf(type: ts.Type, checker: ts.TypeChecker): string | undefined {
  // The code of a statement begins with its module: flare-joint.torque-within-window.
  if (type.isStringLiteral()) return modules.find((one) => type.value.startsWith(`${one}.`));
  const own = [type.aliasSymbol, type.symbol].map((one) => one && fileOf(one)?.split(sep)[0]);
  const isReference =
    type.flags & ts.TypeFlags.Object &&
    (type as ts.ObjectType).objectFlags & ts.ObjectFlags.Reference;
  const given = isReference ? checker.getTypeArguments(type as ts.TypeReference) : [];
  const parts = type.isUnionOrIntersection() ? type.types : [];
  const inner = [...(type.aliasTypeArguments ?? []), ...given, ...parts];
  const all = [...own, ...inner.filter((one) => one !== type).map((one) => moduleOf(one, checker))];
  const highest = Math.max(-1, ...all.map((one) => modules.indexOf(one as never)));
  return highest < 0 ? undefined : modules[highest];
}
