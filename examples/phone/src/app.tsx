// The frame of the app: what the reader chooses, four screens, one job that is kept at every change.
import { nec2023 } from "hvac-install-math/circuit-protection";
import { assessInstallation } from "hvac-install-math/commissioning";
import { type JsonObject, recordCodec } from "hvac-install-math/wire";
import {
  type ReactElement,
  useDeferredValue,
  useEffect,
  useMemo,
  useState,
  useSyncExternalStore,
} from "react";
import { Head } from "./head.tsx";
import { type Job, newJob, withLog, withText } from "./job.ts";
import { NitrogenScreen } from "./nitrogen-screen.tsx";
import { PlanScreen } from "./plan-screen.tsx";
import { type Choice, type Reader, readerFor } from "./reader.ts";
import { ReportScreen } from "./report-screen.tsx";
import type { Judged } from "./screen.ts";
import { save } from "./store.ts";
import { VacuumScreen } from "./vacuum-screen.tsx";

const screens = {
  plan: PlanScreen,
  nitrogen: NitrogenScreen,
  vacuum: VacuumScreen,
  report: ReportScreen,
} as const;
export type ScreenName = keyof typeof screens;

/** The screen stands in the address, so that a reload comes back to it. */
const shown = (): ScreenName => {
  const name = location.hash.slice(1);
  return Object.hasOwn(screens, name) ? (name as ScreenName) : "plan";
};
const whenShown = (tell: () => void) => {
  addEventListener("hashchange", tell);
  return () => removeEventListener("hashchange", tell);
};

export function App({
  first,
  firstReader,
}: {
  readonly first: Job;
  readonly firstReader: Reader;
}): ReactElement {
  const [job, setJob] = useState(first);
  const [reader, setReader] = useState(firstReader);
  const screen = useSyncExternalStore(whenShown, shown);
  useEffect(() => void save(job), [job]);
  useEffect(() => {
    document.documentElement.lang = reader.tongue;
  }, [reader]);

  // The boxes show at once; plan and verdict follow as soon as there is time, also when the page opens.
  const json = useDeferredValue<JsonObject | undefined>(job.json, undefined);
  const judged = useMemo(() => json && judge(json), [json]);
  const choose = async (choice: Choice) => {
    setReader(await readerFor(choice));
    setJob((now) => ({ ...now, ...choice }));
  };
  const Screen = screens[screen];
  return (
    <>
      <Head reader={reader} screen={screen} onChoice={choose} plate={judged?.record.equipment} />
      <main>
        <Screen
          judged={judged}
          typed={job.typed}
          reader={reader}
          onTyped={(field, typed) => setJob((now) => withText(now, field, typed, reader))}
          onLog={(readings) => setJob((now) => withLog(now, readings))}
          onNewJob={() => setJob(newJob())}
        />
      </main>
    </>
  );
}

function judge(json: JsonObject): Judged {
  const record = recordCodec.decode(json);
  return { record, assessment: assessInstallation(record, { rules: [nec2023] }) };
}
