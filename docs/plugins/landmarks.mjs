// A TypeDoc plugin: what assistive technology and a keyboard need of a page. The content becomes the main
// landmark, the navigation gets a name, headings get levels without gaps, and what scrolls by itself can be
// reached and has a name. docs/navigation.js does the rest in the browser.

const replacements = [
  ['<div class="col-content">', '<main class="col-content" id="content">'],
  [
    /<\/div>(\s*)<div class="col-sidebar">/,
    '</main>$1<aside class="col-sidebar" aria-label="Pages">',
  ],
  [/<\/div>(\s*)<\/div>(\s*)<footer>/, "</aside>$1</div>$2<footer>"],
  // TypeDoc takes a type that has no page of its own for an address: its name stays.
  [/<a href="\{&quot;[^"]*"[^>]*>([\s\S]*?)<\/a>/g, "$1"],
  ["<pre>", '<pre tabindex="0">'],
  [/<th( style="[^"]*")?><\/th>/, "<td$1></td>"], // the empty corner of a table names no column
];

/** Gives a heading whose level leaves a gap the level that it has in the tree of its page. */
function withoutGaps(html) {
  const above = [];
  return html.replaceAll(/<h([1-6])(?=[ >])/g, (tag, digit) => {
    while (above.length > 0 && above.at(-1) >= Number(digit)) above.pop();
    above.push(Number(digit));
    return above.length === Number(digit) ? tag : `${tag} aria-level="${above.length}"`;
  });
}

/** A link inside a summary would be a control within a control. */
function withoutNestedLinks(html) {
  return html.replaceAll(/<summary[^>]*>[\s\S]*?<\/summary>/g, (summary) =>
    summary.replaceAll(/<a [^>]*tsd-anchor-icon[\s\S]*?<\/a>/g, ""),
  );
}

/** Each table in a box of its own, which scrolls where the page is narrow. */
function withBoxes(html) {
  let tables = 0;
  return html
    .replaceAll("<table>", () => {
      tables += 1;
      return `<div class="table" role="group" tabindex="0" aria-label="Table ${tables}"><table>`;
    })
    .replaceAll("</table>", "</table></div>");
}

/** @param {import("typedoc").Application} app */
export function load(app) {
  app.renderer.on("endPage", (page) => {
    if (!page.contents) return;
    const replaced = replacements.reduce(
      (html, [from, to]) =>
        html.replaceAll(typeof from === "string" ? from : new RegExp(from, "g"), to),
      page.contents,
    );
    page.contents = withoutGaps(withoutNestedLinks(withBoxes(replaced)));
  });
}
