// Which shape has a type? TypeScript's own view of it, turned into the source text of a shape.
// Follows the compiler API of TypeScript 5.9. A type that has no form is an error with its name.
// Does not cover which types are asked for (settings.ts, functions.ts) and where they are written (render.ts).
import ts from "typescript";
import { fieldDoc, typeDoc } from "./doc-text.ts";
import { type Declared, isNameless, Names, pascal } from "./names.ts";
import { forms, modules, named } from "./settings.ts";
import {
  commonCode,
  distinct,
  either,
  fieldsOf,
  inDeclaredOrder,
  isFields,
  isTime,
  isWord,
  literalOf,
  words,
  wordsIn,
} from "./type-facts.ts";

/** A shape with a name of its own, as a constant of a generated file. */
export interface Constant extends Declared {
  /** Name of the type. */
  readonly type: string;
  /** Whether it is a shape, or the table of what a module says. */
  readonly kind: "Shape" | "StatementTable";
  /** The source text of the shape. */
  readonly text: string;
  /** The constants that it names. */
  readonly uses: ReadonlySet<Constant>;
  /** What the type and its fields are, for people. */
  readonly says: string;
  readonly about: Readonly<Record<string, string>>;
}

/** What a constant is made of. */
interface Made extends Partial<Pick<Constant, "uses" | "about" | "kind">> {
  readonly type: ts.Type;
  readonly context: string;
  readonly body: string;
}

/** The source text of a shape without its braces. */
const bare = (text: string) => text.slice(2, -2);

/** What a type became: source text, and the constants that stand in it. */
export interface Derived {
  readonly text: string;
  readonly uses: ReadonlySet<Constant>;
}

/** Derives shapes: `later` those that are made when they are first needed and carry their doc comments, else bare ones. */
export class Deriver {
  /** Every constant, those that another names before it. */
  readonly constants: Constant[] = [];
  readonly #checker: ts.TypeChecker;
  readonly #later: boolean;
  readonly #names = new Names();
  /** The constants by their types, or by their texts where these are what is shared. */
  readonly #known = new Map<ts.Type | string, Constant>();
  readonly #refrigerant: ts.Type;
  readonly #trail: string[] = [];
  #home = "";

  constructor(checker: ts.TypeChecker, refrigerant: ts.Type, later: boolean) {
    this.#checker = checker;
    this.#refrigerant = refrigerant;
    this.#later = later;
  }

  /** The shape of a type; `context` names what has no name of its own, which then stands with the module `home`. */
  derive(type: ts.Type, context: string, home: string): Derived {
    const uses = new Set<Constant>();
    this.#home = home;
    this.#trail.push(context);
    const text = this.#text(type, context, uses);
    this.#trail.pop();
    return { text, uses };
  }

  /** How a shape mentions a constant, which is made unless there is one by this key. */
  #mention(key: ts.Type | string, uses: Set<Constant>, make: () => Constant): string {
    const constant = this.#known.get(key) ?? make();
    this.#known.set(key, constant);
    uses.add(constant);
    return this.#later ? `${constant.name}()` : constant.name;
  }

  #refuse(type: ts.Type, why: string): never {
    const name = this.#checker.typeToString(type);
    throw new Error(`no form for the type ${name} (${this.#trail.join(" > ")}): ${why}`);
  }

  #text(type: ts.Type, context: string, uses: Set<Constant>): string {
    const checker = this.#checker;
    const symbol = type.symbol?.name;
    if (type.flags & ts.TypeFlags.Unknown) return '"any"';
    if (type.flags & ts.TypeFlags.BooleanLike) return '"flag"';
    if (type.isUnion()) return this.#union(type, context, uses);
    if (type.isStringLiteral() || type.isNumberLiteral()) return words([type.value]);
    if (type.flags & ts.TypeFlags.NumberLike) return '"number"';
    if (type.flags & ts.TypeFlags.String) return '"text"';
    if (symbol === "Quantity" || symbol === "Unit") {
      const [kind] = checker.getTypeArguments(type as ts.TypeReference);
      const kinds = (kind?.isUnion() ? kind.types : [kind]).map((one) =>
        one?.isStringLiteral()
          ? JSON.stringify(one.value)
          : this.#refuse(type, "of no certain kind"),
      );
      return either(symbol === "Unit" ? kinds.map((one) => `{ unit: ${one} }`) : kinds);
    }
    if (checker.isTupleType(type)) return this.#tuple(type as ts.TupleTypeReference, context, uses);
    if (checker.isArrayType(type)) {
      const [item] = checker.getTypeArguments(type as ts.TypeReference);
      return `{ list: ${this.#text(item as ts.Type, `${context}Item`, uses)} }`;
    }
    if (type.getCallSignatures().length > 0) return this.#refuse(type, "a function");
    if (!(type.flags & (ts.TypeFlags.Object | ts.TypeFlags.Intersection))) {
      return this.#refuse(type, "neither data nor a list of them");
    }
    return this.#object(type, context, uses);
  }

  /** An object that goes by its name, by its fields, or by either. */
  #object(type: ts.Type, context: string, uses: Set<Constant>): string {
    const byName = named[type.symbol?.name ?? ""];
    if (byName?.alone) return byName.table;
    const index = type.getStringIndexType();
    if (index) return `{ each: ${this.#text(index, `${context}Each`, uses)} }`;
    const byFields = this.#mention(type, uses, () => this.#constant(type, context));
    if (byName) return either([byName.table, byFields]);
    // Where a part of a refrigerant will do, one of the library's own may go by its designation.
    const needed = type.getProperties().filter(({ flags }) => !(flags & ts.SymbolFlags.Optional));
    return needed.length > 0 && this.#checker.isTypeAssignableTo(this.#refrigerant, type)
      ? either(["byDesignation", byFields])
      : byFields;
  }

  #tuple(type: ts.TupleTypeReference, context: string, uses: Set<Constant>): string {
    const { elementFlags } = type.target;
    if (elementFlags.some((one) => one !== ts.ElementFlags.Required)) {
      return this.#refuse(type, "a list of an open length with items of several forms");
    }
    const items = this.#checker
      .getTypeArguments(type)
      .map((one, i) => this.#text(one, `${context}${i}`, uses));
    return `{ items: [${items.join(", ")}] }`;
  }

  /** A union; a long one of objects alone is a constant. */
  #union(type: ts.UnionType, context: string, uses: Set<Constant>): string {
    const parts = distinct(type.types, this.#checker);
    if (parts.length < 4 || !parts.every((one) => isFields(one, this.#checker))) {
      return this.#forms(type, context, uses);
    }
    return this.#mention(type, uses, () => {
      const inner = new Set<Constant>();
      return this.#add({
        type,
        context,
        uses: inner,
        body: bare(this.#forms(type, context, inner)),
      });
    });
  }

  #forms(type: ts.UnionType, context: string, uses: Set<Constant>): string {
    const { Undefined, BooleanLike, StringLike, NumberLike } = ts.TypeFlags;
    const parts: readonly ts.Type[] = type.types.filter(({ flags }) => !(flags & Undefined));
    const literals: readonly ts.Type[] = parts.filter(isWord);
    if (literals.length === parts.length && parts.length > 1)
      return this.#words(type, parts, context, uses);
    const quantities = parts.filter(({ symbol }) => symbol?.name === "Quantity");
    // More than half of all kinds are named only by AnyQuantity, which is all of them. The compiler's own order
    // hangs on what it met first.
    const forms =
      quantities.length > 20
        ? ['"quantity"']
        : quantities.map((one) => this.#text(one, context, uses)).sort();
    const objects = parts.filter((one) => isFields(one, this.#checker));
    forms.push(...this.#objects(objects, context, uses));
    const others = parts.filter(
      (one) => !quantities.includes(one) && !objects.includes(one) && !literals.includes(one),
    );
    for (const [i, one] of others.entries()) {
      if (!(one.flags & BooleanLike)) forms.push(this.#text(one, `${context}${i || ""}`, uses));
    }
    if (others.some(({ flags }) => flags & BooleanLike)) forms.push('"flag"');
    const open = others.some(({ flags }) => flags & (StringLike | NumberLike));
    if (literals.length > 0 && !open) forms.push(words(literals.map(literalOf)));
    return either([...new Set(forms)]);
  }

  /** A few words: a constant where the union has a name, is a vocabulary, or lists codes of words. */
  #words(
    type: ts.UnionType,
    parts: readonly ts.Type[],
    context: string,
    uses: Set<Constant>,
  ): string {
    const text = words(inDeclaredOrder(type, parts.map(literalOf)));
    const codes = commonCode(parts.map(literalOf).map(String));
    if (!codes && parts.length < (type.aliasSymbol ? 4 : 40)) return text;
    return this.#mention(codes ? text : type, uses, () =>
      this.#add({ type, context: codes ? pascal(codes) : context, body: bare(text) }),
    );
  }

  /** Several objects: cases where a field tells them apart, each then named by its word. */
  #objects(all: readonly ts.Type[], context: string, uses: Set<Constant>): string[] {
    const parts = distinct(all, this.#checker);
    if (parts.length < 2) return parts.map((one) => this.#object(one, context, uses));
    const tag = this.#tagOf(parts);
    if (tag === undefined)
      return parts.map((one, i) => this.#object(one, `${context}${i + 1}`, uses));
    if (tag === "code" && parts.every((one) => one.getProperty("values"))) {
      return [this.#statements(parts, uses)];
    }
    const cases = parts.flatMap((one) => {
      const all = wordsIn(this.#fieldType(one, tag));
      const form = this.#object(one, pascal(String(all[0])), uses);
      return all.map((word) => `${JSON.stringify(String(word))}: ${form}`);
    });
    return [`{ by: ${JSON.stringify(tag)}, cases: { ${cases.join(", ")} } }`];
  }

  /** What a verdict may say, module by module, and the fields that each statement has besides. */
  #statements(parts: readonly ts.Type[], uses: Set<Constant>): string {
    const byModule = new Map<string, ts.Type[]>();
    const more = new Map<string, string>();
    for (const one of parts) {
      const [code = ""] = wordsIn(this.#fieldType(one, "code")).map(String);
      const [module = ""] = code.split(".");
      byModule.set(module, [...(byModule.get(module) ?? []), one]);
      for (const field of this.#checker.getPropertiesOfType(one)) {
        if (field.name === "code" || field.name === "values") continue;
        const optional = field.flags & ts.SymbolFlags.Optional ? "?" : "";
        const text = this.#text(this.#checker.getTypeOfSymbol(field), pascal(field.name), uses);
        more.set(JSON.stringify(field.name + optional), text);
      }
    }
    const tables = [...byModule].map(([module, own]) => this.#table(module, own, uses));
    const besides = [...more].map((entry) => entry.join(": ")).join(", ");
    return `{ statements: [${tables.join(", ")}]${besides ? `, with: { ${besides} }` : ""} }`;
  }

  /** The values of each code of a module: one constant, however many verdicts say them. */
  #table(module: string, parts: readonly ts.Type[], uses: Set<Constant>): string {
    const inner = new Set<Constant>();
    const values = parts.flatMap((one) => {
      const all = wordsIn(this.#fieldType(one, "code")).map(String);
      const own = this.#fields(this.#fieldType(one, "values"), pascal(all[0] as string), inner);
      return all.map((code) => `${JSON.stringify(code)}: { ${own.join(", ")} }`);
    });
    const [type] = parts as [ts.Type];
    const body = values.sort().join(", ");
    const context = `${pascal(module)}Statements`;
    return this.#mention(body, uses, () =>
      this.#add({ type, context, uses: inner, body, kind: "StatementTable" }),
    );
  }

  /** The field that has other words in each of the objects. */
  #tagOf(parts: readonly ts.Type[]): string | undefined {
    return parts[0]
      ?.getProperties()
      .map(({ name }) => name)
      .find((name) => {
        const seen = new Set<string | number>();
        return parts.every((one) => {
          const field = one.getProperty(name);
          if (!field || field.flags & ts.SymbolFlags.Optional) return false;
          const own = wordsIn(this.#fieldType(one, name));
          const fresh = own.length > 0 && own.every((word) => !seen.has(word));
          for (const word of own) seen.add(word);
          return fresh;
        });
      });
  }

  #fieldType(type: ts.Type, name: string): ts.Type {
    return this.#checker.getTypeOfSymbol(type.getProperty(name) as ts.Symbol);
  }

  #constant(type: ts.Type, context: string): Constant {
    const uses = new Set<Constant>();
    const about: Record<string, string> = {};
    const { name } = this.#names.of(type, context, this.#home, this.#checker);
    const fields = this.#fields(type, name, uses, about);
    return this.#add({ type, context, uses, body: `fields: { ${fields.join(", ")} }`, about });
  }

  /** The fields of an object as source text, and what each is for people. */
  #fields(
    type: ts.Type,
    name: string,
    uses: Set<Constant>,
    about: Record<string, string> = {},
  ): string[] {
    return fieldsOf(type, this.#checker).flatMap((field) => {
      const fieldType = this.#checker.getTypeOfSymbol(field);
      const value = this.#checker.getNonNullableType(fieldType);
      if (value.flags & ts.TypeFlags.Never || fieldType.flags & ts.TypeFlags.Undefined) return [];
      if (fieldType.flags & ts.TypeFlags.Any) this.#refuse(fieldType, `${name}.${field.name}`);
      this.#trail.push(field.name);
      const own = forms[`${name}.${field.name}`] ?? (isTime(field) ? '"time"' : undefined);
      const text = own ?? this.#text(fieldType, name + pascal(field.name), uses);
      this.#trail.pop();
      const doc = isNameless(type, this.#checker) ? "" : fieldDoc(field, this.#checker);
      if (doc) about[field.name] = doc;
      const optional = field.flags & ts.SymbolFlags.Optional ? "?" : "";
      return [`${JSON.stringify(field.name + optional)}: ${text}`];
    });
  }

  /** Makes the constant of a type; `body` is its source text without its name and its docs. */
  #add({ type, context, body, uses = new Set(), about = {}, kind = "Shape" }: Made): Constant {
    const declared = this.#names.take(type, context, this.#home, this.#checker);
    const says = typeDoc(type, this.#checker);
    const hasDocs = this.#later && Object.keys(about).length > 0;
    const docs = JSON.stringify({ ...(says && { "": says }), ...about });
    const own = kind === "Shape" ? `type: ${JSON.stringify(declared.name)}, ` : "";
    // With the highest module that it names, so that no file of shapes needs one above it.
    const ranks = [declared, ...uses].map(({ module }) => modules.indexOf(module as never));
    const constant: Constant = {
      ...declared,
      module: modules[Math.max(...ranks)] as string,
      name: kind === "Shape" ? `${declared.name}Shape` : declared.name,
      type: declared.name,
      kind,
      text: `{ ${own}${body}${hasDocs ? `, docs: ${docs}` : ""} }`,
      uses,
      says,
      about,
    };
    this.constants.push(constant);
    return constant;
  }
}
