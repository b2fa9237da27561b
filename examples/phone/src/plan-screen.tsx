// Before the work: what to bring, what to set, what to check, what nobody knows yet.
import { nec2023 } from "hvac-install-math/circuit-protection";
import { planInstallation } from "hvac-install-math/planning";
import { type ReactElement, useMemo } from "react";
import { FieldList } from "./field-list.tsx";
import type { Field } from "./fields.ts";
import type { Judged, ScreenProps } from "./screen.ts";
import { Cautions, OutcomeWord, Sentences } from "./sentences.tsx";

const fields: readonly Field[] = [
  { path: "site.altitude", holds: "length" },
  { path: "runs[0].tubing.way", holds: "length" },
  { path: "runs[0].tubing.length", holds: "length" },
  { path: "runs[0].tubing.lift", holds: "length" },
  { path: "runs[0].tubing.bends", holds: "number" },
  { path: "plan.fillTemperature", holds: "temperature" },
  { path: "plan.laterTemperature", holds: "temperature" },
];

export function PlanScreen(props: ScreenProps): ReactElement {
  const { judged, reader } = props;
  return (
    <>
      <FieldList {...props} fields={fields} />
      {judged && <Plan record={judged.record} reader={reader} />}
    </>
  );
}

function Plan({
  record,
  reader,
}: Pick<Judged, "record"> & Pick<ScreenProps, "reader">): ReactElement {
  const plan = useMemo(() => planInstallation(record, { rules: [nec2023] }), [record]);
  return (
    <>
      <Sentences title={reader.name("report.label.bring")} said={plan.bring} reader={reader} />
      <Sentences title={reader.name("report.label.set")} said={plan.set} reader={reader} />
      <section>
        <h2>{reader.name("report.label.check")}</h2>
        <ul>
          {plan.check.map((one) => (
            <li key={reader.say(one)}>
              <OutcomeWord outcome={one.outcome} reader={reader} /> {reader.say(one)}
            </li>
          ))}
        </ul>
      </section>
      <Sentences title={reader.name("report.label.ask")} said={plan.ask} reader={reader} />
      <Cautions cautions={plan.cautions} reader={reader} />
    </>
  );
}
