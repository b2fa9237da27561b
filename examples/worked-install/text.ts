// Text for a terminal of 80 columns: titles, bullets, lines that hang under their first word.
const width = 80;

/** A title, underlined. */
export function title(text: string, rule: string): string[] {
  return [...wrapped("", text), rule.repeat(Math.min(text.length, width))];
}

/** A list. */
export function bullets(texts: readonly string[]): string[] {
  return texts.flatMap((text) => wrapped("  - ", text));
}

/** Text in lines of at most 80 characters, hanging under its first word. */
export function wrapped(lead: string, text: string): string[] {
  const hang = " ".repeat(Math.min(lead.length, 4));
  const lines: string[] = [];
  let line = lead;
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const glue = line.trim() === "" || line.endsWith(" ") ? "" : " ";
    if (line.trim() !== "" && line.length + glue.length + word.length > width) {
      lines.push(line.trimEnd());
      line = hang + word;
    } else line += glue + word;
  }
  return line.trim() === "" ? lines : [...lines, line];
}
