// A TypeDoc plugin: pages of mere figures (`search: title` in their front matter) are found by their title,
// so that the search index stays small enough for a phone.

/** @param {import("typedoc").Application} app */
export function load(app) {
  app.renderer.on("prepareIndex", (event) => {
    event.searchResults.forEach((found, i) => {
      if (found.isDocument() && found.frontmatter.search === "title") {
        event.searchFields[i] = { ...event.searchFields[i], document: "" };
      }
    });
  });
}
