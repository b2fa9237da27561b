// How do forms and servers use a codec without knowing whose it is? Types only.
// Follows Standard Schema, version 1 (standardschema.dev, from memory). Does not cover asynchronous validation.

/** What went wrong at one place. Source: Standard Schema, version 1; from memory. */
export interface StandardIssue {
  /** In words. */
  readonly message: string;
  /** The steps to the place. */
  readonly path: readonly PropertyKey[];
}

/** What a validator found. Source: Standard Schema, version 1; from memory. */
export type StandardResult<T> =
  | { readonly value: T; readonly issues?: undefined }
  | { readonly issues: readonly StandardIssue[] };

/**
 * The interface that form libraries and servers look for under `~standard`.
 *
 * Source: Standard Schema, version 1; from memory.
 */
export interface StandardProps<T> {
  /** Version of the interface. */
  readonly version: 1;
  /** Who made the validator. */
  readonly vendor: string;
  /** Reads JSON data. */
  readonly validate: (value: unknown) => StandardResult<T>;
  /** Types for the compiler; never there at run time. */
  readonly types?: { readonly input: unknown; readonly output: T } | undefined;
}
