// How are steps, fields and outcomes called in a report? By the words of the reader's language.
// Follows the catalogues of the language; a path that none names stands as it is. Internal.
// Does not cover sentences: context.ts words those.
import { type Catalogue, label, type Outcome } from "../assessment/index.ts";
import type { HoldPoint, InstallationStep } from "../commissioning/index.ts";
import type { Run } from "./report-document.ts";
import type { ReportWord } from "./statements.ts";

/** The first letter as a capital. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

type LabelName = ReportWord extends `report.label.${infer Name}` ? Name : never;

/** The words of one language, as a report asks for them. */
export interface Words {
  /** A label of the report. */
  readonly of: (name: LabelName) => string;
  /** A step, a check, a cause, an instrument: by the whole code. */
  readonly code: (code: string, otherwise?: string) => string;
  /** A field of the record by its path without places in lists. */
  readonly field: (path: string) => string;
  /** The word for an outcome. */
  readonly outcome: (outcome: Outcome) => Run;
  /** The word for a step: nothing but a pass looks like one. */
  readonly step: (step: InstallationStep) => Run;
  /** The word for a hold point. */
  readonly hold: (hold: HoldPoint) => Run;
}

const tones = { pass: "pass", fail: "fail", inconclusive: "open" } as const;
const holdTones = { released: "pass", held: "open", breached: "fail" } as const;

/** The words of a language. */
export function wordsOf(language: Catalogue): Words {
  const code: Words["code"] = (name, otherwise = name) =>
    Object.hasOwn(language.messages, name) ? label(name, language) : otherwise;
  const outcome: Words["outcome"] = (one) => ({
    text: label(`assessment.outcome.${one}`, language),
    tone: tones[one],
  });
  const field: Words["field"] = (path) => code(`commissioning.field.${path}`, path);
  return {
    of: (name) => label(`report.label.${name}`, language),
    code,
    field,
    outcome,
    step: ({ state, outcome: judged, blockedBy }) => {
      if (state === "not-applicable") {
        return { text: code(`commissioning.step-state.${state}`).toUpperCase(), tone: "none" };
      }
      // What passed but rests on a step that did not is no pass yet, and does not look like one.
      const waits = judged === "pass" && blockedBy.length > 0;
      const word = outcome(judged);
      return waits
        ? { text: `${word.text}, ${label("report.label.not-yet", language)}`, tone: "open" }
        : word;
    },
    hold: ({ state }) => ({
      text: code(`commissioning.hold-state.${state}`).toUpperCase(),
      tone: holdTones[state],
    }),
  };
}
