// Does this text say anything? A letter or a digit of any script has to stand in it.
// Follows the general categories L and N of Unicode. Does not cover whether it is true.

/** Whether a name or a reason is one: blanks, dots and marks that nobody sees are none. */
export const hasWords = (text: unknown): boolean =>
  typeof text === "string" && (/[A-Za-z\d]/.test(text) || ofAnyScript().test(text));

// biome-ignore lint/complexity/useRegexLiterals: engines look up the category of a literal even if nobody calls this, and few texts need it
const ofAnyScript = () => new RegExp(String.raw`[\p{L}\p{N}]`, "u");
