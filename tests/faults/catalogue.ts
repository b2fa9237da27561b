// Every public function of the library, each with valid inputs. What is exported and stands in no file of
// `inputs` does not compile, and fails `catalogue.test.ts`.

/** The names of the functions that a module exports; units and classes are none. */
export type FunctionNames<M> = {
  [N in keyof M]: M[N] extends { readonly scale: number }
    ? never
    : M[N] extends (...args: never[]) => unknown
      ? N
      : never;
}[keyof M];

/** Lists of arguments for one function. */
export type Calls<F> = F extends (...args: infer A) => unknown ? readonly Readonly<A>[] : never;

/** Lists of arguments for every function of a module. */
export type Inputs<M> = { readonly [N in FunctionNames<M>]: Calls<M[N]> };

export type AnyFunction = (...args: unknown[]) => unknown;

/** One function with its valid inputs. */
export interface Subject {
  readonly name: string;
  readonly act: AnyFunction;
  readonly calls: readonly (readonly unknown[])[];
}

const isUnit = (value: object): boolean => "scale" in value && "difference" in value;
const isClass = (value: object): boolean => String(value).startsWith("class");

/** The functions among a module's exports. */
export function functionsOf(module: Readonly<Record<string, unknown>>): [string, AnyFunction][] {
  return Object.entries(module).filter(
    (entry): entry is [string, AnyFunction] =>
      typeof entry[1] === "function" && !isUnit(entry[1]) && !isClass(entry[1]),
  );
}

/** The functions of a module with their inputs; a function without any has an empty list. */
export function subjectsOf(
  name: string,
  module: Readonly<Record<string, unknown>>,
  inputs: Readonly<Record<string, readonly (readonly unknown[])[]>>,
): Subject[] {
  return functionsOf(module).map(([own, act]) => ({
    name: `${name}.${own}`,
    act,
    calls: inputs[own] ?? [],
  }));
}
