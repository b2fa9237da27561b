// Which pictures has the record of an installation? Its nitrogen hold and its vacuum decay, as far as they were judged.
// Follows the verdict of commissioning: what was not judged is not drawn.
// Does not cover other pictures: draw those with the functions of this module.
import type { InstallationAssessment, InstallationRecord } from "../commissioning/index.ts";
import type { FigureTextOptions } from "../display/index.ts";
import type { PressureTest, PressureTestLog } from "../pressure-test/index.ts";
import { atmosphereAtAltitude } from "../quantity/atmosphere.ts";
import { listOf, objectOf, oneOf } from "../quantity/check.ts";
import { kPaa, kPag, micron, pascalAbsolute, psia, psig } from "../quantity/units/pressure.ts";
import { degC, degF } from "../quantity/units/temperature.ts";
import { whole } from "../shapes/index.ts";
import { acceptancePolicies, type VacuumDecayInput } from "../vacuum-decay/index.ts";
import { pressureTestPlot } from "./pressure-test-plot.ts";
import { vacuumDecayPlot } from "./vacuum-decay-plot.ts";

/** A picture of a record. Source: none; the library's own type. */
export interface RecordPlot {
  /** The step under which it stands. */
  readonly step: "pressure-test" | "evacuation";
  /** What it shows, in a line. */
  readonly title: string;
  /** One `<svg>` element as text. */
  readonly svg: string;
}

/**
 * Draws the pictures of a record: the nitrogen hold by {@link pressureTestPlot} and the vacuum decay by
 * {@link vacuumDecayPlot}, each where its check was made. `htmlReport` takes this function as its option `plots`.
 *
 * @param record - The record that was judged.
 * @param assessment - What `assessInstallation` answered.
 * @param options - `system`, inch-pound or SI; `units` of single kinds in its place.
 * @returns The pictures in the order of the work; none where nothing was judged.
 * @throws {@link InvalidInputError} when an option is wrong, or the verdict is that of another record.
 *
 * Cautions: a picture is no permission; show the cautions of the assessment beside it.
 *
 * Source: none for the choice; the plots name theirs.
 *
 * @example
 * ```ts
 * import { assessInstallation } from "hvac-install-math/commissioning";
 * import { recordPlots } from "hvac-install-math/plots";
 * import { degF, micron, minute, percent } from "hvac-install-math/quantity";
 *
 * // invented: 300 micron, rising by 2 micron a minute
 * const readings = Array.from({ length: 31 }, (_, i) => ({ elapsed: minute(i), pressure: micron(300 + 2 * i) }));
 * const record = {
 *   version: 1,
 *   instruments: { vacuumGauge: { accuracy: percent(10) } },
 *   evacuation: { readings, policy: "splitManualA", ambient: degF(70) },
 * } as const;
 * const plots = recordPlots(record, assessInstallation(record), { system: "SI" });
 * plots.map(({ step, title }) => `${step}: ${title}`).join(); // => evacuation: Vacuum decay
 * ```
 */
export function recordPlots(
  record: InstallationRecord,
  assessment: InstallationAssessment,
  options: Pick<FigureTextOptions, "system" | "units">,
): readonly RecordPlot[] {
  const { system, units = {} } = objectOf("options", options);
  const isMetric = oneOf("options.system", system, ["inch-pound", "SI"]) === "SI";
  const { steps } = objectOf("assessment", assessment);
  const checks = listOf("assessment.steps", steps).flatMap((step, i) =>
    listOf(`assessment.steps[${i}].checks`, step?.checks),
  );
  const plots: RecordPlot[] = [];
  const test = holdOf(objectOf("record", record));
  const hold = checks.find((one) => one?.name === "pressure-test")?.assessment;
  if (test && hold) {
    const isAbsolute = record.pressureTest?.readings?.[0]?.pressure?.kind === "absolutePressure";
    const [gauge, absolute, warmth] = isMetric ? [kPag, kPaa, degC] : [psig, psia, degF];
    const svg = pressureTestPlot(test, hold, {
      pressureUnit: isAbsolute
        ? (units.absolutePressure ?? absolute)
        : (units.gaugePressure ?? gauge),
      temperatureUnit: units.temperature ?? warmth,
    });
    plots.push({ step: "pressure-test", title: "Nitrogen hold", svg });
  }
  const { readings, policy, ambient } = record.evacuation ?? {};
  const decay = checks.find((one) => one?.name === "vacuum-decay")?.assessment;
  if (readings && policy && ambient && decay) {
    const log = { readings, ambient, policy: acceptancePolicies[policy] };
    const pressureUnit = units.absolutePressure ?? (isMetric ? pascalAbsolute : micron);
    const svg = vacuumDecayPlot(whole<VacuumDecayInput>(log), decay, { pressureUnit });
    plots.push({ step: "evacuation", title: "Vacuum decay", svg });
  }
  return plots;
}

/** The test as its check takes it: two readings need no times, in a log each has its own. */
function holdOf(record: InstallationRecord): PressureTest | PressureTestLog | undefined {
  const { site, instruments, pressureTest } = record;
  const { readings = [], at: _, ...stated } = pressureTest ?? {};
  const { testGauge: pressure, gasThermometer: temperature } = instruments ?? {};
  const atmosphere = site?.atmosphere ?? (site?.altitude && atmosphereAtAltitude(site.altitude));
  const [start, end] = readings;
  if (!atmosphere || !pressure || !temperature || !start || !end) return undefined;
  const setup = { ...stated, atmosphere, instruments: { pressure, temperature } };
  return readings.length === 2
    ? whole<PressureTest>({ ...setup, start, end })
    : whole<PressureTestLog>({ ...setup, readings });
}
