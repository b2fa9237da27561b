// How does a picture become text? Elements of SVG with everything escaped and every number finite. Internal.
// Follows SVG 2 (W3C Candidate Recommendation, 2018) and XML 1.0, 2.2 and 2.4. Does not cover styling.

const named: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text as XML may hold it; what XML 1.0, 2.2 does not allow becomes U+FFFD. */
export function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\x20-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, "\ufffd")
    .replace(/[&<>"']/g, (character) => named[character] as string);
}

/** A coordinate with at most two decimals. */
export const short = (value: number): string => String(Number(value.toFixed(2)) + 0);

/** One attribute value; an attribute that is undefined is left out. */
type Attributes = Readonly<Record<string, string | number | undefined>>;

/** An element around finished markup. */
export function element(name: string, attributes: Attributes, ...inside: string[]): string {
  const text = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(
      ([key, value]) =>
        ` ${key}="${typeof value === "number" ? short(value) : escaped(`${value}`)}"`,
    )
    .join("");
  return inside.length > 0 ? `<${name}${text}>${inside.join("")}</${name}>` : `<${name}${text}/>`;
}

/** About how wide a text is, in units: 0.65 of the size for a digit, 0.7 for a capital, 0.56 for another character. */
export const widthOf = (text: string, size: number): number =>
  size *
  (0.56 * text.length +
    0.09 * text.replace(/\D/g, "").length +
    0.14 * text.replace(/\P{Lu}/gu, "").length);

/** A text in lines that are about as wide as there is room. */
export function wrapped(text: string, size: number, room: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const longer = `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && widthOf(longer, size) <= room) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** Size of the text in units. */
export const textSize = 13;

/** A line of text that begins at x on the base line y. */
export function label(words: string, x: number, y: number, more: Attributes = {}): string {
  return element("text", { x, y, ...more }, escaped(words));
}
