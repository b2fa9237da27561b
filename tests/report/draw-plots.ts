// The pictures of a record, drawn by the plots module from what was recorded and what was found.
import type { InstallationAssessment, InstallationRecord } from "hvac-install-math/commissioning";
import { pressureTestPlot, vacuumDecayPlot } from "hvac-install-math/plots";
import type { LogAssessment, LogReading, PressureTestLog } from "hvac-install-math/pressure-test";
import { atmosphereAtAltitude, m } from "hvac-install-math/quantity";
import type { ReportPlot } from "hvac-install-math/report";
import { acceptancePolicies, type VacuumDecayAssessment } from "hvac-install-math/vacuum-decay";

/** What was found of a check, as its module returns it. */
const found = <T>({ steps }: InstallationAssessment, name: string): T | undefined =>
  steps.flatMap(({ checks }) => checks).find((check) => check.name === name)?.assessment as T;

/** Hold and decay, as far as they were judged. */
export function drawPlots(
  { pressureTest, evacuation, site }: InstallationRecord,
  assessment: InstallationAssessment,
): ReportPlot[] {
  const hold = found<LogAssessment>(assessment, "pressure-test");
  const decay = found<VacuumDecayAssessment>(assessment, "vacuum-decay");
  const plots: ReportPlot[] = [];
  if (hold && pressureTest?.readings) {
    const atmosphere = site?.atmosphere ?? atmosphereAtAltitude(site?.altitude ?? m(0));
    const readings = pressureTest.readings as readonly LogReading[];
    const test = { readings, atmosphere, ...pressureTest } as PressureTestLog;
    plots.push({
      step: "pressure-test",
      title: "Nitrogen hold",
      svg: pressureTestPlot(test, hold),
    });
  }
  if (decay && evacuation?.readings) {
    const { readings, ambient, policy } = evacuation;
    const test = {
      readings,
      ambient,
      ...(policy && { policy: acceptancePolicies[policy] }),
    } as Parameters<typeof vacuumDecayPlot>[0];
    plots.push({ step: "evacuation", title: "Vacuum decay", svg: vacuumDecayPlot(test, decay) });
  }
  return plots;
}
