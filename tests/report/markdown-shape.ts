// Reads a report in Markdown back: the kind of each line.

/** The kind of each line, and how many cells a row has. */
export function kindsOf(markdown: string): string[] {
  return markdown.split("\n").map((line) => {
    if (line === "") return "blank";
    if (/^#{1,3} /.test(line)) return `heading ${line.indexOf(" ")}`;
    if (/^\|( --- \|)+$/.test(line)) return "rule";
    if (line.startsWith("| ")) return `row ${line.split(/(?<!\\)\|/).length - 2}`;
    if (line.startsWith("- ")) return "item";
    if (/^\d+\. /.test(line)) return `ordered ${line.split(".", 1)}`;
    return /^\*[^*].*[^*]\*$/.test(line) ? "caption" : "text";
  });
}
