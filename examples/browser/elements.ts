// Elements of the page. Text goes in as text, never as markup.

/** An element with text and elements in it. */
export function element(tag: string, ...content: readonly (string | Node)[]): HTMLElement {
  const made = document.createElement(tag);
  made.append(...content);
  return made;
}

/** A list of sentences under a heading; nothing where there are none. */
export function list(heading: string, sentences: readonly string[]): HTMLElement[] {
  if (sentences.length === 0) return [];
  const items = sentences.map((sentence) => element("li", sentence));
  return [element("h3", heading), element("ul", ...items)];
}

/** The same, closed until the reader asks. */
export function folded(heading: string, sentences: readonly string[]): HTMLElement[] {
  if (sentences.length === 0) return [];
  const items = sentences.map((sentence) => element("li", sentence));
  return [element("details", element("summary", heading), element("ul", ...items))];
}

/** Figures with their names; a figure that there is none of is left out. */
export function figures(
  rows: readonly (readonly [name: string, figure: string | undefined])[],
): HTMLElement {
  const known = rows.filter(([, figure]) => figure !== undefined);
  return element(
    "dl",
    ...known.map(([name, figure = ""]) =>
      element("div", element("dt", name), element("dd", figure)),
    ),
  );
}

/** Gives a `<select>` its choices: value and label. */
export function fill(
  form: HTMLFormElement,
  name: string,
  choices: readonly (readonly [value: string, label: string])[],
  chosen: string,
): void {
  const select = form.elements.namedItem(name) as HTMLSelectElement;
  select.append(...choices.map(([value, label]) => new Option(label, value, value === chosen)));
  select.value = chosen;
}
