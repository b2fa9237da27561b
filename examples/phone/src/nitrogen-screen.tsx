// Two readings of the nitrogen test, and what the weather leaves of their difference.
import type { ReactElement } from "react";
import { FieldList } from "./field-list.tsx";
import type { Field } from "./fields.ts";
import type { ScreenProps } from "./screen.ts";
import { StepVerdict } from "./step-verdict.tsx";

const reading = (i: number): Field[] => [
  { path: `pressureTests[0].readings[${i}].pressure`, holds: "gaugePressure" },
  { path: `pressureTests[0].readings[${i}].temperature`, holds: "temperature" },
];
const start = reading(0);
const end: Field[] = [
  ...reading(1),
  { path: "pressureTests[0].readings[1].elapsed", holds: "duration" },
];

export function NitrogenScreen(props: ScreenProps): ReactElement {
  const { words } = props.reader;
  return (
    <>
      <fieldset>
        <legend>{words.start}</legend>
        <FieldList {...props} fields={start} />
      </fieldset>
      <fieldset>
        <legend>{words.end}</legend>
        <FieldList {...props} fields={end} />
      </fieldset>
      {props.judged && <StepVerdict name="pressure-test" {...props.judged} reader={props.reader} />}
    </>
  );
}
