// What the record proves of one step: outcome, why, what to do next, what is missing, cautions.
import type { Assessment } from "hvac-install-math/assessment";
import type { StepName } from "hvac-install-math/commissioning";
import type { ReactElement } from "react";
import type { Reader } from "./reader.ts";
import type { Judged } from "./screen.ts";
import { Cautions, OutcomeWord, Sentences } from "./sentences.tsx";

export interface StepVerdictProps extends Pick<Judged, "assessment"> {
  readonly reader: Reader;
  readonly name: StepName;
}

export function StepVerdict({ name, assessment, reader }: StepVerdictProps): ReactElement | null {
  const step = assessment.steps.find((one) => one.name === name);
  if (!step) return null;
  const verdicts: readonly Assessment<string>[] = step.checks.map((check) => check.assessment);
  return (
    <section>
      <h2 className="outcome">
        <OutcomeWord outcome={step.outcome} reader={reader} />
      </h2>
      <Sentences
        title={reader.name("report.label.verdict")}
        said={verdicts.flatMap(({ reasons }) => reasons)}
        reader={reader}
      />
      <Sentences
        title={reader.name("report.label.actions")}
        said={verdicts.flatMap(({ actions = [] }) => actions)}
        reader={reader}
      />
      {step.missing.length > 0 && (
        <>
          <h2>{reader.name("report.not-recorded")}</h2>
          <ul>
            {[...new Set(step.missing.map(reader.field))].map((field) => (
              <li key={field}>{field}</li>
            ))}
          </ul>
        </>
      )}
      <Cautions
        cautions={
          verdicts.length > 0 ? verdicts.flatMap(({ cautions }) => cautions) : assessment.cautions
        }
        reader={reader}
      />
    </section>
  );
}
