// What of a text from outside may stand in a report? Nothing that a reader cannot see.
// Follows Unicode 15, general categories Cc, Cf and Cs; UAX #9 for the marks that turn text around.
// Does not cover escaping for HTML or Markdown: the writers do that.

/** Most characters of one text of a record that a report repeats. */
const most = 500;

/** A text of the record, cut where it is longer than anyone reads; says how much is left out. */
export function clipped(text: string, length: number = most): string {
  if (text.length <= length) return text;
  const characters = [...text];
  if (characters.length <= length) return text;
  return `${characters.slice(0, length).join("")} … (${characters.length - length} more characters)`;
}

/**
 * The text in one line. What cannot be seen and could mislead (control characters, marks that turn the
 * direction of writing around, lone surrogates) becomes U+FFFD; joiners that scripts need stay.
 */
export function visible(text: string): string {
  return text
    .replace(/[\s\u0085]+/gu, " ")
    .replace(/(?![\u00ad\u061c\u200c-\u200f])[\p{Cc}\p{Cf}\p{Cs}\p{Co}]/gu, "\ufffd");
}
