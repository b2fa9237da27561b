// What do leak, moisture and a tight system look like on the gauge, and what does the library say of each?
// Invented systems of decay-simulation.ts, judged by assessVacuumDecay and drawn by vacuumDecayPlot.
// Does not cover how often the verdict is right: the guide of vacuum-decay has the study.
import { explain } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { vacuumDecayPlot } from "hvac-install-math/plots";
import {
  degC,
  liter,
  micronDifference,
  micronPerMinute,
  percent,
} from "hvac-install-math/quantity";
import {
  acceptancePolicies,
  assessVacuumDecay,
  type DecayCause,
} from "hvac-install-math/vacuum-decay";
import { type InventedSystem, inventedReadings } from "./decay-simulation.ts";
import { type Page, page, plain } from "./page.ts";

/** One picture. */
export interface DecayCase {
  readonly title: string;
  /** What was put into the invented system. */
  readonly truth: string;
  readonly system: InventedSystem;
  /** What the library finds. */
  readonly cause: DecayCause;
  /** What to look at in the curve. */
  readonly reading: string;
}

/** The pictures of the page, from sound to doubtful. */
export const decayCases: readonly DecayCase[] = [
  {
    title: "Tight and dry",
    truth:
      "No leak and no water; a hose that takes a quarter of a minute to come to the system's pressure.",
    system: {},
    cause: "dry-and-tight",
    reading:
      "A step of a few tens of micron in the first minute, then flat. The step is the hose and the gauge, not the system: the curve after it decides.",
  },
  {
    title: "Leak",
    truth: "A leak of 40 micron a minute.",
    system: { leak: 40 },
    cause: "leak",
    reading:
      "Straight, and as steep at the end as at the start: one atmosphere pushes in, and a few hundred micron inside do not change that. It goes on to the atmosphere if nobody stops it.",
  },
  {
    title: "Moisture",
    truth: "Water that adds 900 micron in the end, with a time constant of four minutes.",
    system: { water: [900, 240] },
    cause: "moisture",
    reading:
      "Steep at first, then it levels off: the water has evaporated, or its vapor is saturated at the temperature of the coldest wet spot. Break with dry nitrogen, evacuate warm, test again.",
  },
  {
    title: "Leak and moisture",
    truth: "A leak of 30 micron a minute, and water as above.",
    system: { leak: 30, water: [900, 240] },
    cause: "leak-and-moisture",
    reading:
      "It bends as if it would level off, and keeps a slope. In ten minutes this looks like water only: let it stand longer.",
  },
  {
    title: "Outgassing",
    truth:
      "Oil and plastics giving off gas: 70 micron for each factor e of time, pumped for two minutes.",
    system: { outgassing: [70, 120] },
    cause: "dry-and-tight",
    reading:
      "It slows down but never levels off. Longer pumping makes it smaller. No water that matters and no leak above the limit fit this course: the system is called tight.",
  },
];

/** The page with the pictures, the verdict beside each. */
export function decayCurvesPage(): Page {
  return page("decay-curves.md", "Decay curves", [
    "# Decay curves: leak, moisture or tight?",
    "The pump is valved off, and the needle climbs. The course of the curve says why. **Every curve on this page is invented**: a simulated system of 5 L at 20 °C, read every five seconds for half an hour. The verdict beside each is the library's own, given without knowing what was put in, against a common rule of the trade (500 micron, ten minutes, no more than 500 up; no source).",
    ...decayCases.flatMap(section),
    "## How to read any of them",
    [
      "1. **Forget the first minute.** Hoses, gauge and system come to one pressure.",
      "2. **Compare the slope at the end with the slope after the first minutes.** The same: a leak. Nearly none: water. Something between: both, or outgassing, and more time tells.",
      "3. **Look at the width of what the verdict leaves open**, not only at its word. A pass says which leak it could not have seen.",
      "4. **A flat curve is not a tight system** when the reading stays where ice would hold it: state the coldest part. Nor does a vacuum replace the pressure test: one atmosphere drives a leak about a thousand times less than 500 psig.",
    ].join("\n"),
    "The thresholds, the traps and how often the verdict was right on thousands of simulated logs: [the guide](../guides/vacuum-decay.md). In an app: {@link assessVacuumDecay}, {@link createDecayMonitor}, {@link vacuumDecayPlot}.",
  ]);
}

function section({ title, truth, system, reading }: DecayCase, index: number): string[] {
  const test = {
    readings: inventedReadings(system, 7 + index),
    ambient: degC(20),
    volume: liter(5),
    gauge: { accuracy: percent(10), resolution: micronDifference(1) },
    policy: acceptancePolicies.commonPractice500,
    isolation: "isolation-valve",
  } as const;
  const verdict = assessVacuumDecay(test);
  const picture = vacuumDecayPlot(test, verdict, {
    id: `decay-${index + 1}`,
    language: english,
    system: "inch-pound",
    title: `${title}, invented readings`,
    width: 640,
  });
  const [low, high] = (verdict.leakInterval ?? []).map((rate) => rate.toString(micronPerMinute, 1));
  return [
    `## ${title}`,
    `**Put in:** ${truth}`,
    `<div class="plot">${picture}</div>`,
    [
      `- **Verdict:** ${verdict.outcome}, ${verdict.cause}. ${verdict.reasons
        .slice(0, 2)
        .map((reason) => plain(explain(reason, english)))
        .join(" ")}`,
      `- **Steady rise, 95 % interval:** ${low} to ${high}. A leak below ${verdict.smallestLeak?.toString(micronPerMinute, 1)} would not have shown.`,
      `- **What to look at:** ${reading}`,
    ].join("\n"),
  ];
}
