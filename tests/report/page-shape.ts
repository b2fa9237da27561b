// Reads a page of the report back: a strict reader of the few things that it may hold.

/** An element with its attributes, in the order of the page. */
export interface Element {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
}

/** The elements of a page; throws where tags do not close, or a mark stands where none may. */
export function elementsOf(page: string): { elements: Element[]; text: string } {
  const elements: Element[] = [];
  const open: string[] = [];
  let text = "";
  const body = page.replace(/^<!doctype html>\n/, "");
  const token =
    /<style>([^<]*)<\/style>|<(\/?)([a-z][a-zA-Z0-9]*)((?: [\w:-]+="[^"<>]*")*)( ?\/)?>|([^<>]+)/y;
  while (token.lastIndex < body.length) {
    const at = token.lastIndex;
    const found = token.exec(body);
    if (!found) throw new Error(`not a page at ${JSON.stringify(body.slice(at, at + 80))}`);
    const [, style, closes, name, attributes = "", empty, words] = found;
    if (style !== undefined) elements.push({ name: "style", attributes: new Map() });
    else if (words !== undefined) text += words;
    else if (name && closes) {
      const last = open.pop();
      if (last !== name) throw new Error(`</${name}> closes <${last}>`);
      text += "\n";
    } else if (name) {
      const pairs = [...attributes.matchAll(/ ([\w:-]+)="([^"]*)"/g)];
      elements.push({ name, attributes: new Map(pairs.map(([, key = "", v = ""]) => [key, v])) });
      if (!empty && name !== "meta") open.push(name);
    }
  }
  if (open.length > 0) throw new Error(`left open: ${open.join()}`);
  return { elements, text: unescaped(text) };
}

function unescaped(text: string): string {
  const marks: Record<string, string> = { lt: "<", gt: ">", quot: '"', "#39": "'", amp: "&" };
  return text.replace(/&(lt|gt|quot|#39|amp);/g, (_, name: string) => marks[name] ?? "");
}
