// What fraction does this character mean? ¼, ⅜, ⅞ and fractions in raised and lowered digits.
// Follows the Unicode character database (numeric value of the vulgar fractions).
// Does not cover 1/4 in plain digits: trade-notation.ts reads that.

const vulgar: ReadonlyMap<string, number> = /* @__PURE__ */ new Map([
  ["½", 1 / 2],
  ["⅓", 1 / 3],
  ["⅔", 2 / 3],
  ["¼", 1 / 4],
  ["¾", 3 / 4],
  ["⅕", 1 / 5],
  ["⅖", 2 / 5],
  ["⅗", 3 / 5],
  ["⅘", 4 / 5],
  ["⅙", 1 / 6],
  ["⅚", 5 / 6],
  ["⅐", 1 / 7],
  ["⅛", 1 / 8],
  ["⅜", 3 / 8],
  ["⅝", 5 / 8],
  ["⅞", 7 / 8],
  ["⅑", 1 / 9],
  ["⅒", 1 / 10],
]);

/** The fraction that starts at `start` of the plain text, or undefined. */
export function readFraction(
  plain: string,
  start: number,
): { readonly value: number; readonly end: number } | undefined {
  const value = vulgar.get(plain.charAt(start));
  if (value !== undefined) return { value, end: start + 1 };
  const found = /^([⁰¹²³⁴-⁹]{1,2})\/([₀-₉]{1,2})/.exec(plain.slice(start, start + 6));
  if (!found) return undefined;
  const numerator = Number((found[1] ?? "").replace(/./g, (c) => String("⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(c))));
  const denominator = Number(
    (found[2] ?? "").replace(/./g, (c) => String("₀₁₂₃₄₅₆₇₈₉".indexOf(c))),
  );
  return denominator > numerator && numerator > 0
    ? { value: numerator / denominator, end: start + found[0].length }
    : undefined;
}
