// What fraction does this character mean? ¼, ⅜, ⅞ and fractions in raised and lowered digits.
// Follows Unicode: the compatibility decomposition (NFKD) of ¼ is 1, fraction slash, 4.
// Does not cover 1/4 in plain digits: literal.ts reads that.

/** The fraction that starts at `start` of the plain text, or undefined. */
export function readFraction(
  plain: string,
  start: number,
): { readonly value: number; readonly end: number } | undefined {
  const typed =
    /^[½¼¾⅐-⅞]|^[⁰¹²³⁴-⁹]{1,2}\/[₀-₉]{1,2}/.exec(plain.slice(start, start + 6))?.[0] ?? "";
  const [, top = 0, bottom = 0] = /^(\d+)\D(\d+)$/.exec(typed.normalize("NFKD")) ?? [];
  const value = Number(top) / Number(bottom);
  return value > 0 && value < 1 ? { value, end: start + typed.length } : undefined;
}
