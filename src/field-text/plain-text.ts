// Which of the many look-alike characters did the person mean? One plain character for each.
// Follows the Unicode names of the characters; the choice of look-alikes is common practice, no source.
// Does not cover characters that look like nothing in the trade: they stay and are refused later.

/** A space that does not break a number apart: no-break, thin, narrow, figure; or an invisible mark. */
export const tightSpace = "\u00a0";

/** Each group of look-alikes, and the character that stands for it. All are one code unit long. */
const lookAlikes: readonly (readonly [string, string])[] = [
  [" ", "\t\n\v\f\r\u0085\u1680\u2028\u2029"],
  [
    tightSpace,
    "\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000",
  ],
  // Invisible marks of direction and joining; Intl.NumberFormat writes some before a minus sign.
  [
    tightSpace,
    "\u00ad\u061c\u200b\u200c\u200d\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2060\ufeff",
  ],
  [tightSpace, "\u2066\u2067\u2068\u2069"],
  ["-", "\u2010\u2011\ufe63"],
  ["–", "\u2012\u2013"],
  ["'", "\u2018\u2019\u2032\u02b9\u02bc\u00b4"],
  ['"', "\u201c\u201d\u2033\u02ba"],
  ["×", "*\u2217\u2715\u2a2f"],
  ["·", "\u22c5\u2219\u2022\u0387"],
  ["/", "÷\u2215\u2044"],
  ["°", "º˚"],
  ["µ", "\u03bc"],
  ["Ω", "\u2126"],
  ["Δ", "\u2206"],
];

const plainOf: ReadonlyMap<string, string> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ lookAlikes.flatMap(([plain, others]) =>
    [...others].map((other) => [other, plain] as const),
  ),
);

/**
 * The text with each look-alike replaced; as long as the original, so that places keep their index.
 * `digits` are the ten digits of the person's language.
 */
export function plainText(text: string, digits: readonly string[]): string {
  let plain = "";
  for (const char of text.split("")) {
    const digit = digits.indexOf(char);
    const code = char.charCodeAt(0);
    const fullWidth = code >= 0xff01 && code <= 0xff5e;
    const narrow = fullWidth ? String.fromCharCode(code - 0xfee0) : char;
    plain += digit >= 0 ? String(digit) : (plainOf.get(narrow) ?? narrow);
  }
  return plain;
}
