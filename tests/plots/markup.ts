// Looks into SVG text: whether it is well-formed, and where its lines lie.

/** Throws where the markup is not well-formed XML of elements, attributes, text and references. */
export function requireWellFormed(svg: string): void {
  const open: string[] = [];
  const token = /<(\/?)([a-z]+)((?: [\w-]+="[^"<]*")*)(\/?)>|[^<]+/giy;
  let end = 0;
  for (let found = token.exec(svg); found; found = token.exec(svg)) {
    end = token.lastIndex;
    const [whole, closing, name = "", attributes = "", alone] = found;
    const names = [...attributes.matchAll(/ ([\w-]+)=/g)].map(([, one]) => one);
    if (new Set(names).size < names.length) throw new Error(`an attribute twice: ${whole}`);
    if (/&(?!(?:amp|lt|gt|quot|#39);)/.test(whole)) throw new Error(`a bare &: ${whole}`);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: XML 1.0, 2.2 forbids them
    if (/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/.test(whole)) {
      throw new Error("a character that XML does not allow");
    }
    if (closing && open.pop() !== name) throw new Error(`closed too early: ${name}`);
    if (name && !closing && !alone) open.push(name);
  }
  if (end !== svg.length) throw new Error(`not markup: ${svg.slice(end, end + 60)}`);
  if (open.length > 0) throw new Error(`left open: ${open.join()}`);
}

/** The value of an attribute of the first element that matches. */
export function attributeOf(svg: string, element: RegExp, name: string): string {
  const found = element.exec(svg)?.[0] ?? "";
  return new RegExp(` ${name}="([^"]*)"`).exec(found)?.[1] ?? "";
}

/** All coordinates of the absolute points of a path, in order. */
export function pointsOf(path: string): [x: number, y: number][] {
  return [...path.matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}
