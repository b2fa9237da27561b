// Which form has a value? A small language of shapes, as data.
// Follows TypeScript's own types, from which the generator derives every shape: tsx src/shapes/generate/main.ts.
// Does not cover what a value means: the modules check that.
import type { Kind } from "../quantity/kinds.ts";

/**
 * The form of a value: a kind of quantity, a `quantity` of any kind, `text`, `number`, `flag` (true or false),
 * `time` (ISO 8601), the `path` of a field of the whole, `any` data, one of a few words, a list, fields by name, or one of several of these.
 */
export type Shape =
  | Kind
  | "quantity"
  | "text"
  | "number"
  | "flag"
  | "time"
  | "path"
  | "any"
  | WordsShape
  | ListShape
  | ItemsShape
  | FieldsShape
  | EachShape
  | EitherShape
  | CasesShape
  | StatementsShape
  | UnitShape
  | NamedShape
  | AtShape;

/** One of a few words or numbers. */
export interface WordsShape {
  /** Name of the type. */
  readonly type?: string | undefined;
  /** All that are allowed. */
  readonly words: readonly (string | number)[];
}

/** A list of any length. */
export interface ListShape {
  /** The form of every item. */
  readonly list: Shape;
}

/** A list of just so many items. */
export interface ItemsShape {
  /** The form of each item. */
  readonly items: readonly Shape[];
}

/** An object with certain fields. */
export interface FieldsShape {
  /** Name of the type. */
  readonly type?: string | undefined;
  /** The forms of the fields; a name that ends in `?` may be missing, and others are refused. */
  readonly fields: Fields;
  /** What the type is, under the empty name, and what each field is, for people. */
  readonly docs?: Readonly<Record<string, string>> | undefined;
}

/** The forms of fields by their names. */
export type Fields = Readonly<Record<string, Shape>>;

/** The values of each code of a module. */
export type StatementTable = Readonly<Record<string, Fields>>;

/** An object whose writer names the fields. */
export interface EachShape {
  /** The form of every field. */
  readonly each: Shape;
}

/** One of several forms. */
export interface EitherShape {
  /** Name of the type. */
  readonly type?: string | undefined;
  /** The forms; the first that fits counts. */
  readonly either: readonly Shape[];
}

/** One of several objects, told apart by a field. */
export interface CasesShape {
  /** Name of the type. */
  readonly type?: string | undefined;
  /** The field that tells. */
  readonly by: string;
  /** The form for each word that may stand in it. */
  readonly cases: Fields;
}

/** What a verdict may say: each code with the values that stand in its sentence. */
export interface StatementsShape {
  /** Name of the type. */
  readonly type?: string | undefined;
  /** What each module may say. */
  readonly statements: readonly StatementTable[];
  /** Fields that each has besides `code` and `values`. */
  readonly with?: Fields | undefined;
}

/** The statements as objects that their codes tell apart. */
export const casesOf = ({ statements, with: more }: StatementsShape): CasesShape => ({
  by: "code",
  cases: Object.fromEntries(
    statements
      .flatMap(Object.entries<Fields>)
      .map(([code, values]) => [
        code,
        { fields: { code: { words: [code] }, values: { fields: values }, ...more } },
      ]),
  ),
});

/** A unit, which goes by its symbol. */
export interface UnitShape {
  /** The kind that it measures. */
  readonly unit: Kind;
}

/** An object that the library holds, which goes by its name; one that differs in anything has none. */
export interface NamedShape {
  /** The objects by their names. */
  readonly named: () => Readonly<Record<string, object>>;
}

/** What stood in the field of the whole that a path names. */
export interface AtShape {
  /** The field beside it that holds the path. */
  readonly at: string;
}

/** What types and their fields are, by type and field; the type itself has no field's name. */
export type SchemaWords = Readonly<Record<string, Readonly<Record<string, string>>>>;
