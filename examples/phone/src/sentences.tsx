// Lists of what the library says: sentences under a heading, cautions in a frame, an outcome in its color.
import type { Caution, Outcome, Statement } from "hvac-install-math/assessment";
import type { ReactElement, ReactNode } from "react";
import type { Reader } from "./reader.ts";

/** Sentences under a heading; nothing where there are none. */
export function Sentences({
  title,
  said,
  reader,
}: {
  readonly title: string;
  readonly said: readonly Statement[];
  readonly reader: Reader;
}): ReactNode {
  // Two statements may have one code: the sentence is the key, and stands once.
  const sentences = [...new Set(said.map(reader.say))];
  if (sentences.length === 0) return null;
  return (
    <section>
      <h2>{title}</h2>
      <ul>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}

/** What can hurt someone, and who governs. */
export function Cautions({
  cautions,
  reader,
}: {
  readonly cautions: readonly Caution[];
  readonly reader: Reader;
}): ReactElement {
  return (
    <aside className="cautions">
      {(["danger", "finding", "governing"] as const).map((kind) => (
        <Sentences
          key={kind}
          title={reader.name(`assessment.caution.${kind}`)}
          said={cautions.filter((one) => one.kind === kind)}
          reader={reader}
        />
      ))}
    </aside>
  );
}

/** The outcome in a word. */
export function OutcomeWord({
  outcome,
  reader,
}: {
  readonly outcome: Outcome;
  readonly reader: Reader;
}): ReactElement {
  return <strong data-outcome={outcome}>{reader.name(`assessment.outcome.${outcome}`)}</strong>;
}
