// What of a text from outside may stand in a report? Nothing that a reader cannot see.
// Follows Unicode 15, general categories Cc, Cf and Cs; UAX #9 for the marks that turn text around.
// Does not cover escaping for HTML or Markdown: the writers do that.

/** A text of the record, cut where it is longer than anyone reads, and how many characters are left out. */
export function cutAt(text: string, most: number): readonly [shown: string, left: number] {
  if (text.length <= most) return [text, 0];
  const characters = [...text];
  const left = Math.max(0, characters.length - most);
  return [left > 0 ? characters.slice(0, most).join("") : text, left];
}

/**
 * The text in one line. What cannot be seen and could mislead (control characters, marks that turn the
 * direction of writing around, lone surrogates) becomes U+FFFD; joiners that scripts need stay.
 */
export function visible(text: string): string {
  return text
    .replace(/[\s\u0085]{2,}|[^\S ]|\u0085/g, " ") // a single blank is one already
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Co}](?<![\u00ad\u061c\u200c-\u200f])/gu, "\ufffd");
}
