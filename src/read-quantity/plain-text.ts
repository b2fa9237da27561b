// Which of the many look-alike characters did the person mean? One plain character for each.
// Follows the Unicode names of the characters; the choice of look-alikes is common practice, no source.
// Does not cover accents and letters of one meaning (µ, Ω): find-unit.ts does. What looks like nothing in the trade stays.

/** A space that does not break a number apart: no-break, thin, narrow, figure; or an invisible mark. */
export const tightSpace = "\u00a0";

/** Each group of look-alikes, and the character that stands for it. All are one code unit long. */
const lookAlikes: readonly (readonly [plain: string, others: RegExp])[] = [
  [" ", /[\t-\r\x85\u1680\u2028\u2029]/g],
  [tightSpace, /[\u2000-\u200a\u202f\u205f\u3000]/g],
  // Invisible marks of direction and joining; Intl.NumberFormat writes some before a minus sign.
  [tightSpace, /[\xad\u061c\u200b-\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff]/g],
  ["-", /[\u2010\u2011\ufe63]/g],
  ["–", /[\u2012\u2013]/g],
  ["'", /[\u2018\u2019\u2032\u02b9\u02bc\u00b4]/g],
  ['"', /[\u201c\u201d\u2033\u02ba]/g],
  ["×", /[*\u2217\u2715\u2a2f]/g],
  ["·", /[\u22c5\u2219\u2022\u0387]/g],
  ["/", /[÷\u2215\u2044]/g],
  ["°", /[º˚]/g],
  ["Δ", /\u2206/g],
];

/**
 * The text with each look-alike replaced; as long as the original, so that places keep their index.
 * `digits` are the ten digits of the person's language.
 */
export function plainText(text: string, digits: readonly string[]): string {
  let plain = "";
  for (const char of text.split("")) {
    const digit = digits.indexOf(char);
    const code = char.charCodeAt(0);
    plain +=
      digit >= 0
        ? digit
        : code >= 0xff01 && code <= 0xff5e // of full width
          ? String.fromCharCode(code - 0xfee0)
          : char;
  }
  for (const [one, others] of lookAlikes) plain = plain.replace(others, one);
  return plain;
}
