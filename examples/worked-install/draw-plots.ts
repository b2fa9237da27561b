// Draws the pictures of the report: nitrogen hold and vacuum decay, where the record has them.
import type { UnitSystem } from "hvac-install-math/display";
import { pressureTestPlot, vacuumDecayPlot } from "hvac-install-math/plots";
import type { PressureTestLog } from "hvac-install-math/pressure-test";
import { atmosphereAtAltitude, degC, degF, kPag, psig } from "hvac-install-math/quantity";
import type { HtmlReportOptions, ReportPlot } from "hvac-install-math/report";
import { acceptancePolicies, type VacuumDecayInput } from "hvac-install-math/vacuum-decay";

/** What the report calls with the record and its verdict. */
export function plotsIn(system: UnitSystem): NonNullable<HtmlReportOptions["plots"]> {
  const units =
    system === "SI"
      ? { pressureUnit: kPag, temperatureUnit: degC }
      : { pressureUnit: psig, temperatureUnit: degF };
  return ({ site, pressureTest, evacuation }, { steps }) => {
    const checks = steps.flatMap((step) => step.checks);
    const plots: ReportPlot[] = [];
    const hold = checks.find((one) => one.name === "pressure-test")?.assessment;
    const atmosphere = site?.atmosphere ?? (site?.altitude && atmosphereAtAltitude(site.altitude));
    if (hold && pressureTest && atmosphere) {
      const test = { ...pressureTest, atmosphere } as PressureTestLog;
      const svg = pressureTestPlot(test, hold, units);
      plots.push({ step: "pressure-test", title: "Nitrogen hold", svg });
    }
    const decay = checks.find((one) => one.name === "vacuum-decay")?.assessment;
    if (decay && evacuation?.policy) {
      const policy = acceptancePolicies[evacuation.policy];
      const test = { ...evacuation, policy } as VacuumDecayInput;
      const svg = vacuumDecayPlot(test, decay);
      plots.push({ step: "evacuation", title: "Vacuum decay", svg });
    }
    return plots;
  };
}
