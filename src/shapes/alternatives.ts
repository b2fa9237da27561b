// Which of several forms has a value? The first that it fits; where it fits none, the one that it was meant to have.
// Follows no standard. Does not cover objects that a field tells apart: those are cases, which need no trial.
import type { Visit } from "./walk.ts";
import { type Finding, isOver, refuse, type Walk } from "./walk.ts";

/** The visit of a value that may have one of several forms. */
export function alternatives(visits: readonly Visit[]): Visit {
  const allowed = visits.map((one) => one.allowed).join(" or ");
  const hint = visits.find((one) => one.hint)?.hint; // a figure, where it is that or a list of such
  return {
    allowed,
    hint,
    fits: (value) => visits.some((one) => one.fits(value)),
    of(value, walk) {
      const meant = visits.filter((one) => one.fits(value));
      const [only] = meant;
      if (!only) return refuse(walk, value, allowed, hint);
      if (meant.length === 1) return only.of(value, walk);
      let likeliest: readonly Finding[] = [];
      for (const one of meant) {
        const [copy, findings] = trial(one, value, walk);
        if (findings.length === 0) return copy;
        if (likeliest.length === 0 || isLikelier(findings, likeliest)) likeliest = findings;
      }
      for (const one of likeliest) if (!isOver(walk)) walk.findings.push(one);
      return undefined;
    },
  };
}

/** How many mistakes are looked for in a form that may not be meant at all. */
const few = 8;

/** What comes of one form, and what speaks against it; the walk itself notes nothing. */
function trial(visit: Visit, value: unknown, walk: Walk): [unknown, readonly Finding[]] {
  const { findings, most, values, names } = walk;
  Object.assign(walk, { findings: [], most: few });
  const copy = visit.of(value, walk);
  const against = walk.findings;
  Object.assign(walk, { findings, most });
  if (against.length > 0) Object.assign(walk, { values, names });
  return [copy, against];
}

/** The form with the least to complain of was meant; of two, the one that gets farther. */
function isLikelier(one: readonly Finding[], other: readonly Finding[]): boolean {
  const depth = (all: readonly Finding[]) => Math.max(...all.map(({ path }) => path.length));
  if (one.length !== other.length) return one.length < other.length;
  return depth(one) > depth(other);
}
