// How do several arguments travel? As one object, by the names of the parameters.
// Follows the function's type; an argument that is added there no longer compiles. Does not cover overloads.

type NamesFor<P extends readonly unknown[]> = { readonly [I in keyof P]-?: string };

/** The arguments of a function by the names of its parameters, in their order. */
export type Arguments<
  F extends (...given: never) => unknown,
  Names extends NamesFor<Parameters<F>>,
> = {
  readonly [I in keyof Parameters<F> as I extends keyof Names & `${number}`
    ? Names[I] & string
    : never]: Parameters<F>[I];
};
