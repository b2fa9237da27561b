// A card of the page: a form, and what the library says of it, said anew at every key.
import {
  type Assessment,
  type Citation,
  explain,
  type Outcome,
} from "hvac-install-math/assessment";
import { figureText, type UnitSystem } from "hvac-install-math/display";
import { english } from "hvac-install-math/language/en";
import { type AnyQuantity, isInvalidInputError } from "hvac-install-math/quantity";
import { sourceById } from "hvac-install-math/sources";
import { element, folded, list } from "./elements.ts";
import { type Fields, fieldsOf } from "./fields.ts";

/** The units that the reader has chosen. */
export const chosenSystem = (): UnitSystem =>
  (document.getElementById("units") as HTMLSelectElement).value as UnitSystem;

/** Shows a figure in the reader's units. */
export type Show = (figure: AnyQuantity | number) => string;

/** What a card shows. */
export interface Answer {
  /** The answer in a line; read out by a screen reader when it changes. */
  readonly headline: string;
  readonly outcome?: Outcome;
  readonly body: readonly Node[];
}

/** Lets a card answer now, and whenever its form or the reader's units change. */
export function connect(
  form: HTMLFormElement,
  answer: (fields: Fields, show: Show) => Answer | undefined,
): void {
  const units = document.getElementById("units") as HTMLSelectElement;
  const [headline, result] = ["output", ".result"].map((part) =>
    form.parentElement?.querySelector<HTMLElement>(part),
  ) as [HTMLElement, HTMLElement];
  const update = () => {
    const show = figureText({ system: chosenSystem() });
    const given = attempt(() => answer(fieldsOf(form), show));
    headline.dataset.outcome = given?.outcome ?? "";
    headline.textContent = given?.headline ?? "No answer while a field is marked.";
    result.replaceChildren(...(given?.body ?? []));
  };
  form.addEventListener("input", update);
  form.addEventListener("submit", (event) => event.preventDefault());
  units.addEventListener("change", update);
  update();
}

/** An error that belongs to no field is said in place of the answer. */
function attempt(work: () => Answer | undefined): Answer | undefined {
  try {
    return work();
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    return { headline: error.message, body: [] };
  }
}

/** What every verdict of the library carries: reasons, cautions, assumptions, sources. */
export function verdictOf(assessment: Assessment<string>, show: Show): HTMLElement[] {
  const { reasons, cautions, assumptions, sources } = assessment;
  const said = (statements: Assessment["reasons"]) =>
    statements.map((statement) => explain(statement, english, show));
  const warned = element("div", ...list("Cautions", said(cautions)));
  warned.className = "cautions";
  return [
    ...list("Why", said(reasons)),
    ...(cautions.length > 0 ? [warned] : []),
    ...folded("What was assumed", said(assumptions)),
    ...sourcesOf(sources),
  ];
}

/** Where figures come from, by the library's bibliography. */
export function sourcesOf(citations: readonly Citation[]): HTMLElement[] {
  const cited = citations.map(({ source, clause }) => {
    const { title, edition, readAs } = sourceById(source);
    return [title, edition, clause, readAs === "memory" ? "from memory" : ""]
      .filter((part) => part !== "")
      .join("; ");
  });
  return folded("Sources", cited);
}
