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
