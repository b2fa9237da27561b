// The watch after the evacuation: a monitor that answers at every reading, and a log that goes into the record.
import { minute } from "hvac-install-math/quantity";
import {
  acceptancePolicies,
  createDecayMonitor,
  type DecayReading,
  type VacuumDecayAssessment,
} from "hvac-install-math/vacuum-decay";
import { type ReactElement, useEffect, useRef, useState } from "react";
import { FieldList } from "./field-list.tsx";
import type { Field } from "./fields.ts";
import type { Judged, ScreenProps } from "./screen.ts";
import { OutcomeWord } from "./sentences.tsx";
import { type Course, courseNames, simulateGauge } from "./simulated-gauge.ts";
import { StepVerdict } from "./step-verdict.tsx";

const fields: readonly Field[] = [{ path: "evacuations[0].ambient", holds: "temperature" }];

interface Live {
  readonly reading: DecayReading;
  readonly verdict: VacuumDecayAssessment;
}

export function VacuumScreen(props: ScreenProps): ReactElement {
  const { judged, reader, onLog } = props;
  const { words } = reader;
  const [live, setLive] = useState<Live>();
  const stop = useRef<() => void>(undefined);
  useEffect(() => () => stop.current?.(), []);

  const watch = (course: Course, ambient: NonNullable<ReturnType<typeof ambientOf>>) => {
    stop.current?.();
    // Made once per watch, where it begins: not while drawing, which would make one per drawing.
    const monitor = createDecayMonitor({ ambient, policy, isolation: "isolation-valve" });
    const log: DecayReading[] = [];
    stop.current = simulateGauge(course, (reading, isLast) => {
      log.push(reading);
      setLive({ reading, verdict: monitor.add(reading) });
      // What was read survives a dead battery; every tenth reading is often enough.
      if (isLast || log.length % 10 === 0) onLog([...log]);
    });
  };
  const ambient = ambientOf(judged);
  const kept = judged?.record.evacuations?.[0]?.readings?.length ?? 0;
  return (
    <>
      <FieldList {...props} fields={fields} />
      <fieldset>
        <legend>{words.gauge}</legend>
        <p>{words.gaugeNote}</p>
        <p className="buttons">
          {courseNames.map((course) => (
            <button
              key={course}
              type="button"
              disabled={!ambient}
              onClick={() => ambient && watch(course, ambient)}
            >
              {words[course]}
            </button>
          ))}
          <button type="button" onClick={() => stop.current?.()}>
            {words.stop}
          </button>
        </p>
        {live && <LiveReading {...live} reader={reader} />}
        <p>
          {kept} {words.readings}
        </p>
      </fieldset>
      {judged && <StepVerdict name="evacuation" {...judged} reader={reader} />}
    </>
  );
}

const policy = acceptancePolicies.splitManualB;
const ambientOf = (judged: Judged | undefined) => judged?.record.evacuations?.[0]?.ambient;

function LiveReading({
  reading,
  verdict,
  reader,
}: Live & Pick<ScreenProps, "reader">): ReactElement {
  const [reason] = verdict.reasons;
  return (
    <output className="live">
      <span className="figure">{reading.pressure.toString()}</span>
      <span>{reading.elapsed.toString(minute, 0)}</span>
      <OutcomeWord outcome={verdict.outcome} reader={reader} />
      <span>{reason && reader.say(reason)}</span>
    </output>
  );
}
