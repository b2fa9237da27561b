// What the search dialog shows: TypeDoc's own dialog with its keys, filled from our index. Bundled with MiniSearch into
// assets/find.js and loaded by docs/page.js when somebody searches.
import { find, indexFrom } from "./find.mjs";

const kinds = { main: "function", record: "figures", method: "method", ask: "question" };
const index = indexFrom(window.docsIndex);
const field = document.getElementById("tsd-search-input");
const list = document.getElementById("tsd-search-results");
const status = document.getElementById("tsd-search-status");
const base = document.documentElement.dataset.base;

function item({ url, title, kind, module, about }, place) {
  // The link is the option itself: one control, not a control within a control.
  const link = document.createElement("a");
  link.id = `found-${place}`;
  link.role = "option";
  link.ariaSelected = "false";
  link.tabIndex = -1;
  link.href = `${base.replace(/\/?$/, "/")}${url}`;
  const name = document.createElement("strong");
  name.textContent = title;
  const where = document.createElement("small");
  where.textContent = [kinds[kind] ?? kind, module].filter(Boolean).join(", ");
  const what = document.createElement("span");
  what.className = "about";
  what.textContent = about;
  link.append(name, " ", where, what);
  return link;
}

function show() {
  const typed = field.value.trim();
  const found = typed === "" ? [] : find(index, typed);
  list.replaceChildren(...found.map(item));
  field.setAttribute("aria-activedescendant", "");
  status.textContent =
    typed !== "" && found.length === 0
      ? `Nothing found for “${typed}”. Try one word, or the Ask page.`
      : "";
}

field.addEventListener("input", show);
field.addEventListener("keydown", ({ key }) => {
  if (key === "Enter") list.querySelector('[aria-selected="true"]')?.click();
});
show();
