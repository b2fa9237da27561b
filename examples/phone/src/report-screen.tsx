// The whole record: its verdict, its steps, what to do next, and the report to hand over.
import { nec2023 } from "hvac-install-math/circuit-protection";
import { type ReactNode, useState } from "react";
import type { ScreenProps } from "./screen.ts";
import { Cautions, OutcomeWord, Sentences } from "./sentences.tsx";

export function ReportScreen({ judged, reader, onNewJob }: ScreenProps): ReactNode {
  const { words, language, system } = reader;
  const [page, setPage] = useState<string>();
  if (!judged) return null;
  const { record, assessment } = judged;
  // Report and pictures are loaded when they are asked for; offline they come from what the service worker keeps.
  const write = async () => {
    const [{ htmlReport }, { recordPlots }] = await Promise.all([
      import("hvac-install-math/report"),
      import("hvac-install-math/plots"),
    ]);
    const printedAt = new Date().toLocaleString(language.locale);
    setPage(
      htmlReport(record, { language, system, rules: [nec2023], plots: recordPlots, printedAt }),
    );
  };
  return (
    <>
      <h2 className="outcome">
        <OutcomeWord outcome={assessment.outcome} reader={reader} />
      </h2>
      <ul className="steps">
        {assessment.steps.map(({ name, outcome }) => (
          <li key={name}>
            {reader.name(`commissioning.step.${name}`)}{" "}
            <OutcomeWord outcome={outcome} reader={reader} />
          </li>
        ))}
      </ul>
      <p className="buttons">
        <button type="button" onClick={write}>
          {words.open}
        </button>
        <button type="button" onClick={onNewJob}>
          {words.again}
        </button>
      </p>
      {page && (
        <>
          <a
            download="report.html"
            href={`data:text/html;charset=utf-8,${encodeURIComponent(page)}`}
          >
            {words.save}
          </a>
          {/* The report needs no script; the frame allows none. */}
          <iframe title={words.report} srcDoc={page} sandbox="" />
        </>
      )}
      <Sentences
        title={reader.name("report.label.actions")}
        said={assessment.actions}
        reader={reader}
      />
      <Cautions cautions={assessment.cautions} reader={reader} />
    </>
  );
}
