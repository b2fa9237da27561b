// Does this text say anything? A letter or a digit of any script has to stand in it.
// Follows the general categories L and N of Unicode. Does not cover whether it is true.

/** Whether a name or a reason is one: blanks, dots and marks that nobody sees are none. */
export const hasWords = (text: unknown): boolean =>
  typeof text === "string" && /[\p{L}\p{N}]/u.test(text);
