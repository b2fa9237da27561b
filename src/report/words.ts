// How are steps, fields and outcomes called in a report? English words for the library's names.
// Follows the names themselves: kebab case and camel case taken apart. Common practice, no source.
// Does not cover translation.

import type { Outcome } from "../assessment/index.ts";
import type { HoldPoint, InstallationStep } from "../commissioning/index.ts";
import type { Run } from "./report-document.ts";

/** The first letter as a capital. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** `pressure-test` as `pressure test`, `correctedDrop` as `corrected drop`. */
export const plainWords = (name: string): string =>
  name.replaceAll("-", " ").replace(/(?<=[a-z0-9])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** The path of a field as words: `joints[0].torque` as `joint 1 › torque`. */
export function fieldWords(path: string): string {
  return path
    .split(".")
    .map((part) => {
      const [name = "", ...places] = part.split(/[[\]]+/).filter(Boolean);
      const one = places.length ? plainWords(name).replace(/s$/, "") : plainWords(name);
      if (one === "at") return "when";
      return [one, ...places.map((place) => Number(place) + 1)].join(" ");
    })
    .join(" › ");
}

/** A check by its name, and by its place where there are several. */
export function checkTitle(name: string, path: string): string {
  return /\[\d+\]/.test(path) ? `${plainWords(name)} (${fieldWords(path)})` : plainWords(name);
}

const outcomes: Readonly<Record<Outcome, Run>> = {
  pass: { text: "PASS", tone: "pass" },
  fail: { text: "FAIL", tone: "fail" },
  inconclusive: { text: "UNDECIDED", tone: "open" },
};

/** The word for an outcome. */
export const outcomeMark = (outcome: Outcome): Run => outcomes[outcome];

/** The word for a step: nothing but a pass looks like one. */
export function stepMark({ state, outcome }: InstallationStep): Run {
  if (state === "not-applicable") return { text: "NOT APPLICABLE", tone: "none" };
  if (outcome === "fail" || state === "done") return outcomes[outcome];
  return { text: state === "missing" ? "NOT RECORDED" : "INCOMPLETE", tone: "open" };
}

/** The word for a hold point. */
export function holdMark({ state }: HoldPoint): Run {
  if (state === "released") return { text: "RELEASED", tone: "pass" };
  return state === "held" ? { text: "HELD", tone: "open" } : { text: "BREACHED", tone: "fail" };
}
