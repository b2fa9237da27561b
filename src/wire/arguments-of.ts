// What does a function take and give, as one value that can travel? Types only.
// Follows the function's own type; several arguments travel as one object by the names of its parameters.
// Does not cover more than two overloads: no function of the library has them.

/** The arguments of a function as a tuple, of either overload. */
type Given<F> = F extends { (...a: infer A): unknown; (...b: infer B): unknown }
  ? unknown[] extends A
    ? B
    : A | B
  : F extends (...a: infer A) => unknown
    ? A
    : never;

/** What a function gives, of either overload. */
type Returned<F> = F extends { (...a: never): infer A; (...b: never): infer B }
  ? unknown extends A
    ? B
    : A | B
  : F extends (...a: never) => infer A
    ? A
    : never;

/**
 * What a function of one argument takes.
 *
 * @typeParam F - The function.
 */
export type InputOf<F> = NonNullable<Given<F> extends readonly (infer One)[] ? One : never>;

/**
 * What a function gives.
 *
 * @typeParam F - The function.
 */
export type ResultOf<F> = Returned<F>;

/**
 * The arguments of a function by the names of its parameters, in their order.
 *
 * @typeParam F - The function.
 * @typeParam Names - The name of each parameter.
 */
export type ArgumentsOf<F, Names extends readonly string[]> = ByName<Given<F>, Names>;

type ByName<P, Names extends readonly string[]> = P extends readonly unknown[]
  ? {
      readonly [I in keyof P as I extends keyof Names & `${number}`
        ? Names[I] & string
        : never]: P[I];
    }
  : never;
