// Draws the pictures of the report: nitrogen hold and vacuum decay, where the record has them.
import type { Assessment } from "hvac-install-math/assessment";
import type { UnitSystem } from "hvac-install-math/display";
import { pressureTestPlot, vacuumDecayPlot } from "hvac-install-math/plots";
import type { LogAssessment, PressureTestLog } from "hvac-install-math/pressure-test";
import { atmosphereAtAltitude, degC, degF, ft, kPag, psig } from "hvac-install-math/quantity";
import type { HtmlReportOptions, ReportPlot } from "hvac-install-math/report";
import {
  acceptancePolicies,
  type VacuumDecayAssessment,
  type VacuumDecayInput,
} from "hvac-install-math/vacuum-decay";

/** What the report calls with the record and its verdict. */
export function plotsIn(system: UnitSystem): NonNullable<HtmlReportOptions["plots"]> {
  const units =
    system === "SI"
      ? { pressureUnit: kPag, temperatureUnit: degC }
      : { pressureUnit: psig, temperatureUnit: degF };
  return ({ site, pressureTest, evacuation }, { steps }) => {
    const verdictOf = (name: string): Assessment<string> | undefined =>
      steps.flatMap(({ checks }) => checks).find((check) => check.name === name)?.assessment;
    const plots: ReportPlot[] = [];
    const hold = verdictOf("pressure-test");
    if (hold && pressureTest) {
      const atmosphere = site?.atmosphere ?? atmosphereAtAltitude(site?.altitude ?? ft(0));
      const test = { ...pressureTest, atmosphere } as PressureTestLog;
      const svg = pressureTestPlot(test, hold as LogAssessment, units);
      plots.push({ step: "pressure-test", title: "Nitrogen hold", svg });
    }
    const decay = verdictOf("vacuum-decay");
    if (decay && evacuation?.policy) {
      const policy = acceptancePolicies[evacuation.policy];
      const test = { ...evacuation, policy } as VacuumDecayInput;
      const svg = vacuumDecayPlot(test, decay as VacuumDecayAssessment);
      plots.push({ step: "evacuation", title: "Vacuum decay", svg });
    }
    return plots;
  };
}
