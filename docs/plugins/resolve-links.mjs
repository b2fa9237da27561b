// A TypeDoc plugin: `{@link InvalidInputError}` in one module finds the export of another module, so that
// doc comments need no import for the sake of a link.

/** @param {import("typedoc").Application} app */
export function load(app) {
  app.converter.addUnknownSymbolResolver((reference, from) => {
    const name = reference.symbolReference?.path?.[0]?.path;
    const modules = from.project.children ?? [];
    const found = modules
      .flatMap(({ children = [] }) => children)
      .filter((one) => one.name === name);
    return found.length === 1 ? { target: found[0], caption: name } : undefined;
  });
}
