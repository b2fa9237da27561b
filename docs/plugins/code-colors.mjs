// A TypeDoc plugin: code in the site's own colors. The highlighter knows its themes only; each of their colors
// is replaced by the one that its role has here. Contrast is above 4.5 : 1 on docs/style.css's backgrounds.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** Role of a token: ours on light, ours on dark, and the dark colors by which it is known. */
const roles = [
  ["#5b3a7a", "#cbb4e2", ["#C586C0", "#569CD6"]], // keyword
  ["#86481c", "#e3b48d", ["#CE9178", "#D7BA7D"]], // text
  ["#1d5f4a", "#8fcfb4", ["#6A9955"]], // comment: in the examples, the result
  ["#1f5877", "#9fc7de", ["#B5CEA8", "#4EC9B0"]], // number and type
];
const ink = ["#23261f", "#e4e6de"];

/** @param {import("typedoc").Application} app */
export function load(app) {
  app.renderer.on("endRender", ({ outputDirectory }) => {
    const file = join(outputDirectory, "assets", "highlight.css");
    const css = readFileSync(file, "utf8");
    const colors = new Map();
    for (const [, number, dark] of css.matchAll(/--dark-hl-(\d+): (#\w{6})/g)) {
      const role = roles.find(([, , known]) => known.includes(dark.toUpperCase()));
      colors.set(number, role ? [role[0], role[1]] : ink);
    }
    const recolored = css
      .replaceAll(/--light-hl-(\d+): #\w+/g, (_, n) => `--light-hl-${n}: ${colors.get(n)[0]}`)
      .replaceAll(/--dark-hl-(\d+): #\w+/g, (_, n) => `--dark-hl-${n}: ${colors.get(n)[1]}`)
      .replace(/--light-code-background: #\w+/, "--light-code-background: #f6f6f2")
      .replace(/--dark-code-background: #\w+/, "--dark-code-background: #21231f");
    writeFileSync(file, recolored);
  });
}
