// How do the arguments of a function travel? One input as it is, several as one object by their names.
// Follows the function's type; an argument that is added there no longer compiles. Does not cover overloads.

/**
 * What a function of one argument takes.
 *
 * Source: none; the library's own type.
 *
 * @typeParam F - The function.
 */
export type InputOf<F extends (input: never) => unknown> = Parameters<F>[0];

/** A name for each argument. Source: none; the library's own type. */
export type NamesFor<P extends readonly unknown[]> = { readonly [I in keyof P]-?: string };

/**
 * The arguments of a function by the names of its parameters, in their order.
 *
 * Source: none; the library's own type.
 *
 * @typeParam F - The function.
 * @typeParam Names - The name of each parameter.
 */
export type ArgumentsOf<
  F extends (...given: never) => unknown,
  Names extends NamesFor<Parameters<F>>,
> = {
  readonly [I in keyof Parameters<F> as I extends keyof Names & `${number}`
    ? Names[I] & string
    : never]: Parameters<F>[I];
};
