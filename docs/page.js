// What a page does in the browser beyond TypeDoc's own script: icons and reachable navigation, the search and the playground, each
// of these two loaded when it is used. Plain scripts, so that the site works from a folder too.

const base = document.documentElement.dataset.base.replace(/\/?$/, "/");

function load(name) {
  return new Promise((done, failed) => {
    const script = document.createElement("script");
    script.src = `${base}assets/${name}`;
    script.onload = done;
    script.onerror = failed;
    document.head.append(script);
  });
}

// A browser takes no icons out of another file of a folder.
if (location.protocol === "file:") load("icons.js");

// In the navigation TypeDoc puts a link inside the control that opens the pages below it. This takes the link
// out and stands it beside, so that each of the two can be reached and named by itself.
const container = document.getElementById("tsd-nav-container");

function separate() {
  for (const summary of container.querySelectorAll("summary:has(> a)")) {
    const link = summary.querySelector("a");
    const details = summary.parentElement;
    details.parentElement.classList.add("has-pages-below");
    details.before(link);
    summary.setAttribute("aria-label", `Pages below ${link.textContent}`);
  }
}

if (container) {
  new MutationObserver(separate).observe(container, { childList: true });
  separate();
}

// The search: its index comes with the first use of the field.
const field = document.getElementById("tsd-search-input");
const status = document.getElementById("tsd-search-status");
field?.addEventListener(
  "focus",
  async () => {
    status.textContent = "Loading the search …";
    try {
      await load("search-index.js");
      await load("find.js");
    } catch {
      status.textContent =
        "The search could not be loaded. The Ask page and the navigation work without it.";
    }
  },
  { once: true },
);

// The playground of the front page: the built package runs in a worker when somebody presses Run.
const playground = document.querySelector(".playground");
if (playground) load("playground.js");
