// Which pictures has the record of an installation? Its nitrogen holds, its vacuum decays, its tightest room and its supply,
// as far as they were judged.
// Follows the verdict of commissioning: what was not judged is not drawn.
// Does not cover other pictures: draw those with the functions of this module.
import type {
  CheckName,
  CheckVerdicts,
  InstallationAssessment,
  InstallationRecord,
  PressureTestPart,
} from "../commissioning/index.ts";
import type { PressureTest, PressureTestLog } from "../pressure-test/index.ts";
import { atmosphereAtAltitude } from "../quantity/atmosphere.ts";
import { isOfKind, listOf, objectOf } from "../quantity/check.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { whole } from "../shapes/index.ts";
import type { VacuumDecayInput } from "../vacuum-decay/index.ts";
import { acceptancePolicies } from "../vacuum-decay/policies/index.ts";
import type { PlotOptions } from "./plot-options.ts";
import { pressureTestPlot } from "./pressure-test-plot.ts";
import { readerOf } from "./reader.ts";
import { roomChargePlot } from "./room-charge-plot.ts";
import { supplyVoltagePlot } from "./supply-voltage-plot.ts";
import { vacuumDecayPlot } from "./vacuum-decay-plot.ts";

/** A picture of a record. */
export interface RecordPlot {
  /** The step under which it stands. */
  readonly step: "pressure-test" | "evacuation" | "room-limit" | "supply";
  /** What it shows, in a line. */
  readonly title: string;
  /** One `<svg>` element as text. */
  readonly svg: string;
}

/**
 * Draws the pictures of a record: each nitrogen hold by {@link pressureTestPlot}, each vacuum decay by
 * {@link vacuumDecayPlot}, the room with the least room to spare by {@link roomChargePlot}, and the supply by
 * {@link supplyVoltagePlot}, each where its check was made. `htmlReport` takes this function as its option `plots`.
 *
 * @param record - The record that was judged.
 * @param assessment - What `assessInstallation` answered.
 * @param options - Language and units of the reader; `form`, `width` and `colors` as for each plot. 360 units wide when
 * left out, so that a phone shows the words in the size of its own. `id` begins every id of every picture: a page with
 * the pictures of several records needs one for each.
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
 * import { english } from "hvac-install-math/language/en";
 * import { recordPlots } from "hvac-install-math/plots";
 * import { degF, micron, minute, percent } from "hvac-install-math/quantity";
 *
 * // invented: 300 micron, rising by 2 micron a minute
 * const readings = Array.from({ length: 31 }, (_, i) => ({ elapsed: minute(i), pressure: micron(300 + 2 * i) }));
 * const record = {
 *   version: 2,
 *   instruments: { vacuumGauge: { accuracy: percent(10) } },
 *   evacuations: [{ readings, policy: "splitManualA", ambient: degF(70) }],
 * } as const;
 * const reader = { language: english, system: "SI" } as const;
 * const plots = recordPlots(record, assessInstallation(record, { rules: [] }), reader);
 * plots.map(({ step, title }) => `${step}: ${title}`).join(); // => evacuation: Vacuum decay after isolation
 * ```
 */
export function recordPlots(
  record: InstallationRecord,
  assessment: InstallationAssessment,
  options: Pick<
    PlotOptions,
    "language" | "system" | "units" | "locale" | "id" | "form" | "width" | "colors"
  >,
): readonly RecordPlot[] {
  const { id, ...given } = objectOf("options", options);
  const reader: PlotOptions = { width: 360, ...whole<PlotOptions>(given) };
  const { word } = readerOf(reader);
  const { steps } = objectOf("assessment", assessment);
  const checks = listOf("assessment.steps", steps).flatMap((step, i) =>
    listOf(`assessment.steps[${i}].checks`, step?.checks),
  );
  const { pressureTests = [], evacuations = [] } = objectOf("record", record);
  const of = <Name extends CheckName>(name: Name, path: string) =>
    checks.find((one) => one?.name === name && one.path === path)?.assessment as
      | CheckVerdicts[Name]
      | undefined;
  /** Which of several tests: by the runs that it covers, or by its number. */
  const which = (all: readonly { readonly covers?: readonly string[] | undefined }[], i: number) =>
    all.length > 1 ? ` ${all[i]?.covers?.join(", ") ?? i + 1}` : "";
  const own = (plot: string, i = 0, title?: string): PlotOptions => ({
    ...reader,
    title,
    id: [id, plot, i && i + 1].filter(Boolean).join("-"),
  });
  const holds = pressureTests.flatMap((part, i): RecordPlot[] => {
    const hold = of("pressure-test", `pressureTests[${i}]`);
    // What could not be judged may have an altitude that has no air.
    const test = hold && holdOf(record, part);
    if (!test) return [];
    const title = `${word("plots.pressure-test")}${which(pressureTests, i)}`;
    // Of several tests the temperatures would take more room than they tell.
    const temperature = pressureTests.length === 1;
    const svg = pressureTestPlot(test, hold, {
      ...own("pressure-test-plot", i, title),
      temperature,
    });
    return [{ step: "pressure-test", title, svg }];
  });
  const decays = evacuations.flatMap(({ readings, policy, ambient }, i): RecordPlot[] => {
    const decay = of("vacuum-decay", `evacuations[${i}]`);
    if (!readings || !policy || !ambient || !decay) return [];
    const log = { readings, ambient, policy: acceptancePolicies[policy] };
    const title = `${word("plots.vacuum-decay")}${which(evacuations, i)}`;
    const looks = own("vacuum-decay-plot", i, title);
    const svg = vacuumDecayPlot(whole<VacuumDecayInput>(log), decay, looks);
    return [{ step: "evacuation", title, svg }];
  });
  const rooms = checks.flatMap((one) =>
    one?.name === "room-charge" || one?.name === "room-concentration" ? roomOf(one.assessment) : [],
  );
  const [room] = rooms.sort((one, other) => other.share - one.share);
  const supply = checks.find((one) => one?.name === "supply-voltage")?.assessment;
  const bars: RecordPlot[] = [];
  if (room) {
    const svg = roomChargePlot(room, room.assessment, own("room-charge-plot"));
    bars.push({ step: "room-limit", title: word("plots.room-limit"), svg });
  }
  if (supply) {
    const svg = supplyVoltagePlot(
      supply as CheckVerdicts["supply-voltage"],
      own("supply-voltage-plot"),
    );
    bars.push({ step: "supply", title: word("plots.supply-voltage"), svg });
  }
  return [...holds, ...decays, ...bars];
}

interface Room {
  readonly charge: Quantity<"mass">;
  readonly assessment: CheckVerdicts["room-charge" | "room-concentration"];
  /** The charge as a part of what is allowed. */
  readonly share: number;
}

/** A room with the charge by which it was judged, which its reasons state; none where the rule has no limit. */
function roomOf(assessment: Room["assessment"]): Room[] {
  const { limit: answer, reasons } = assessment;
  const limit = "value" in answer ? answer.value : answer.limit;
  const charge = reasons
    .map(({ values }) => (values as { readonly charge?: Quantity<"mass"> }).charge)
    .find((one) => isOfKind(one, "mass"));
  if (charge === undefined || !(limit?.si > 0)) return [];
  return [{ charge, assessment, share: charge.si / limit.si }];
}

/** The test as its check takes it: two readings need no times, in a log each has its own. */
function holdOf(
  { site, instruments }: InstallationRecord,
  { readings = [], criterion, wall }: PressureTestPart,
): PressureTest | PressureTestLog | undefined {
  const { testGauge: pressure, gasThermometer: temperature } = instruments ?? {};
  const atmosphere = site?.atmosphere ?? (site?.altitude && atmosphereAtAltitude(site.altitude));
  const [start, end] = readings;
  if (!atmosphere || !pressure || !temperature || !start || !end) return undefined;
  const limits = { ...(criterion && { criterion }), ...(wall && { wall }) };
  const setup = { ...limits, atmosphere, instruments: { pressure, temperature } };
  return readings.length === 2
    ? whole<PressureTest>({ ...setup, start, end })
    : whole<PressureTestLog>({ ...setup, readings });
}
