// Which shapes have the types of planning?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { once } from "../../quantity/later.ts";
import type { Shape } from "../../shapes/index.ts";
import { CautionShape, VerbatimShape } from "./assessment.shapes.ts";
import { CitationShape } from "./refrigerants.shapes.ts";

export function PlanPartShape(): Shape {
  return once(PlanPartShape, () => ({
    type: "PlanPart",
    words: [
      "lines",
      "joints",
      "wall",
      "circuit",
      "supply",
      "drain",
      "pressure-test",
      "evacuation",
      "charge",
      "room",
      "operation",
    ],
  }));
}

export function PlanItemShape(): Shape {
  return once(PlanItemShape, () => ({
    type: "PlanItem",
    fields: {
      code: "text",
      values: {
        each: {
          either: [
            "quantity",
            VerbatimShape(),
            "text",
            "number",
            { list: { either: ["quantity", VerbatimShape(), "text", "number"] } },
          ],
        },
      },
      part: PlanPartShape(),
      "path?": "text",
      sources: { list: CitationShape() },
    },
    docs: {
      "": "One line of a plan: a statement with its figures, what it is about and where it comes from.",
      code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
      values: "What stands in the sentence, by name.",
      part: "What it is about.",
      path: "Path of the part of the record that it is about, such as runs[0].",
      sources: "Where its figures come from.",
    },
  }));
}

export function PlanCheckShape(): Shape {
  return once(PlanCheckShape, () => ({
    type: "PlanCheck",
    fields: {
      code: "text",
      values: {
        each: {
          either: [
            "quantity",
            VerbatimShape(),
            "text",
            "number",
            { list: { either: ["quantity", VerbatimShape(), "text", "number"] } },
          ],
        },
      },
      part: PlanPartShape(),
      "path?": "text",
      sources: { list: CitationShape() },
      outcome: { words: ["pass", "fail", "inconclusive"] },
    },
    docs: {
      "": "A line of a plan that holds something against a limit.",
      code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
      values: "What stands in the sentence, by name.",
      part: "What it is about.",
      path: "Path of the part of the record that it is about, such as runs[0].",
      sources: "Where its figures come from.",
      outcome: "Whether the plan keeps the limit; inconclusive where it can't be told yet.",
    },
  }));
}

export function PlanQuestionShape(): Shape {
  return once(PlanQuestionShape, () => ({
    type: "PlanQuestion",
    fields: {
      code: "text",
      values: {
        each: {
          either: [
            "quantity",
            VerbatimShape(),
            "text",
            "number",
            { list: { either: ["quantity", VerbatimShape(), "text", "number"] } },
          ],
        },
      },
      path: "text",
      changes: { list: PlanPartShape() },
    },
    docs: {
      "": "What the plan can't say yet.",
      code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
      values: "What stands in the sentence, by name.",
      path: "Path of the field of the record, such as equipment.manual.testPressure.",
      changes: "The parts of the plan that wait for it.",
    },
  }));
}

export function InstallationPlanShape(): Shape {
  return once(InstallationPlanShape, () => ({
    type: "InstallationPlan",
    fields: {
      bring: { list: PlanItemShape() },
      set: { list: PlanItemShape() },
      check: { list: PlanCheckShape() },
      ask: { list: PlanQuestionShape() },
      cautions: { list: CautionShape() },
      sources: { list: CitationShape() },
    },
    docs: {
      "": "The plan of an installation, each list in the order of the work. Deeply frozen.",
      bring: "What to put into the van.",
      set: "What to set, fill, hold and expect.",
      check: "What was held against manual, plates and rules.",
      ask: "What plates, manual or site must still say.",
      cautions: "What this job hides, what can hurt someone, who governs.",
      sources: "Where all of it comes from, each place once.",
    },
  }));
}
