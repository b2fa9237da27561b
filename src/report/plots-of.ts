// Is a picture nothing but a picture? One element of SVG that shows shapes and words and does nothing.
// Follows SVG 2 for the elements. A picture that is written in another way is refused rather than mended.
// Does not cover whether it shows what its title says.
import type { InstallationAssessment, InstallationRecord } from "../commissioning/index.ts";
import { listOf, objectOf, oneOf, refuse } from "../quantity/check.ts";

import type { HtmlReportOptions, ReportPlot } from "./report-options.ts";

const shapes = new Set(
  "svg g defs clipPath pattern marker path line polyline polygon rect circle ellipse text tspan title desc".split(
    " ",
  ),
);
/** Words for readers; nothing inside is a shape. A browser reads tags in them as those of a page. */
const wordsOnly = new Set(["title", "desc"]);
const token = /<(\/?)([A-Za-z]+)((?:\s+[\w:-]+="[^"<>]*")*)\s*(\/?)>|[^<]+/y;
/**
 * Attributes that run, load, lead somewhere or style what is outside; a reference to a part of the picture
 * itself is none. What is written in another way, by a backslash or a numbered character, is not read.
 */
const acts =
  /\s(?:on\w*|(?:\w+:)?href|src|style|class)=|url\((?!#)|[a-z]script:|@import|expression\(|image\(|image-set\(|\\|&(?!(?:amp|lt|gt|quot|#39);)/i;
/** Ids that the report itself gives. */
const own = /^(?:part|head)-/;

/** The pictures that the caller draws, checked. */
export function plotsOf(
  record: InstallationRecord,
  assessment: InstallationAssessment,
  options: HtmlReportOptions,
): readonly ReportPlot[] {
  const { plots } = options;
  if (plots === undefined) return [];
  if (typeof plots !== "function") refuse("options.plots", plots, "a function");
  const taken = new Set<string>();
  return listOf("options.plots()", plots(record, assessment, options)).map((plot, i) => {
    const at = `options.plots()[${i}]`;
    const { step, title, svg } = objectOf(at, plot);
    const steps = assessment.steps.map(({ name }) => name);
    oneOf(`${at}.step`, step, steps);
    if (typeof title !== "string" || title.trim() === "") refuse(`${at}.title`, title, "a text");
    if (!isPicture(svg)) {
      const allowed =
        "one <svg> element of shapes and text, without scripts, links, styles and images";
      refuse(`${at}.svg`, svg, allowed);
    }
    for (const [, id = ""] of svg.matchAll(/\sid="([^"]*)"/gi)) {
      const allowed = "ids that no other picture and no part of the report has";
      if (taken.has(id) || own.test(id)) refuse(`${at}.svg`, `id="${id}"`, allowed);
      taken.add(id);
    }
    return { step, title, svg };
  });
}

function isPicture(svg: unknown): svg is string {
  if (typeof svg !== "string") return false;
  const open: string[] = [];
  let roots = 0;
  token.lastIndex = 0;
  while (token.lastIndex < svg.length) {
    const [whole, closes, name, attributes = "", empty] = token.exec(svg) ?? [];
    if (whole === undefined) return false;
    if (name === undefined) {
      if (open.length === 0 && whole.trim() !== "") return false;
      continue;
    }
    if (!shapes.has(name) || acts.test(attributes)) return false;
    if (closes) {
      if (attributes || empty || open.pop() !== name) return false;
    } else {
      if (open.length === 0 && (name !== "svg" || roots++ > 0)) return false;
      if (wordsOnly.has(open.at(-1) ?? "")) return false;
      if (!empty) open.push(name);
    }
  }
  return open.length === 0 && roots === 1;
}
