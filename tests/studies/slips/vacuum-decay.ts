// Slips of the watch after the evacuation.
import {
  degC,
  degF,
  deltaC,
  inHgAbsolute,
  inHgGauge,
  kg,
  micron,
  micronDifference,
  minute,
  mL,
  pascalAbsolute,
  percent,
  second,
  torr,
  torrDifference,
} from "hvac-install-math/quantity";
import { type Slip, slipsOf } from "./slip.ts";

const watch = "evacuations[0]";
const figures = Array.from({ length: 61 }, (_, i) =>
  Math.round(260 + 40 * (1 - Math.exp(-i / 10))),
);
const rows = (
  pressure: (figure: number, i: number) => unknown,
  elapsed: (i: number) => unknown = (i) => second(20 * i),
) => figures.map((figure, i) => ({ elapsed: elapsed(i), pressure: pressure(figure, i) }));

const noisy = (start: number) =>
  figures.map((figure, i) => ({
    elapsed: second(20 * i),
    pressure: micron(figure - 260 + start + Math.round(2 * Math.sin(1.7 * i + start))),
  }));
const heads = {
  evacuations: [255, 262, 271].map((start, i) => ({
    covers: [["A", "B", "C"][i]],
    readings: noisy(start),
    policy: "splitManualB",
    ambient: degF(62),
    at: "2026-05-05T11:00",
  })),
};

export const vacuumDecaySlips: readonly Slip[] = [
  ...slipsOf("vacuum-decay", "workshop", [
    [
      "torr-as-micron",
      "0.26 torr typed as 0.26 micron",
      { [`${watch}.readings`]: rows((f) => micron(f / 1000)) },
      "inconclusive",
      "no pump of the trade pulls 0.3 micron through hoses, and the gauge shows whole microns",
    ],
    [
      "micron-as-torr",
      "260 micron typed as 260 torr",
      { [`${watch}.readings`]: rows((f) => torr(f)) },
      "fail",
      "a third of an atmosphere",
    ],
    [
      "micron-as-pa",
      "260 micron typed as 260 Pa",
      { [`${watch}.readings`]: rows((f) => pascalAbsolute(f)) },
      "fail",
      "2000 micron are above the target",
    ],
    [
      "pa-as-micron",
      "35 Pa typed as 35 micron",
      { [`${watch}.readings`]: rows((f) => micron(Math.round(f * 0.1333))) },
      "inconclusive",
      "the display would hardly have moved in 20 minutes",
    ],
    [
      "mbar-as-micron",
      "0.35 mbar typed as 0.35 micron",
      { [`${watch}.readings`]: rows((f) => micron(f * 0.001333)) },
      "inconclusive",
      "no pump of the trade pulls 0.3 micron through hoses, and the gauge shows whole microns",
    ],
    [
      "vacuum-as-absolute",
      "29.9 inHg of vacuum typed as absolute",
      { [`${watch}.readings`]: rows(() => inHgAbsolute(29.9)) },
      "fail",
      "that is the atmosphere",
    ],
    [
      "gauge-as-proof",
      "−29.9 inHg on a compound gauge",
      { [`${watch}.readings`]: rows(() => inHgGauge(-29.9)) },
      "refused",
      "a compound gauge cannot show a deep vacuum",
    ],
    [
      "minutes-for-seconds",
      "rows of 20 s typed as 20 min",
      {
        [`${watch}.readings`]: rows(
          (f) => micron(f),
          (i) => minute(20 * i),
        ),
      },
      "inconclusive",
      "the watch would have begun before the pressure test ended",
    ],
    [
      "milliseconds-for-seconds",
      "rows of 20 s typed as 0.02 s",
      {
        [`${watch}.readings`]: rows(
          (f) => micron(f),
          (i) => second(0.02 * i),
        ),
      },
      "inconclusive",
      "shorter than the hold of the policy",
    ],
    [
      "seconds-for-minutes",
      "20 min typed as 20 s",
      {
        [`${watch}.readings`]: rows(
          (f) => micron(f),
          (i) => second(i / 3),
        ),
      },
      "inconclusive",
      "shorter than the hold of the policy",
    ],
    [
      "ambient-c-for-f",
      "ambient 62 °C for 62 °F",
      { [`${watch}.ambient`]: degC(62) },
      "refused",
      "no site is so warm, and the nitrogen was at 60 °F",
    ],
    [
      "ambient-f-for-c",
      "ambient 17 °F for 17 °C",
      { [`${watch}.ambient`]: degF(17) },
      "inconclusive",
      "the nitrogen was at 60 °F three hours before",
    ],
    [
      "ambient-left-out",
      "no ambient temperature",
      { [`${watch}.ambient`]: null },
      "inconclusive",
      "water tells by its temperature",
    ],
    [
      "coldest-as-room",
      "the coldest part left out in winter",
      { [`${watch}.coldest`]: degF(62) },
      "unknowable",
      "only a thermometer on the outdoor unit shows how cold it was",
      { [`${watch}.coldest`]: degF(50) },
    ],
    [
      "other-policy",
      "the target of another manual",
      { [`${watch}.policy`]: "splitManualA" },
      "unknowable",
      "only the manual of the unit says which target it asks for",
    ],
    [
      "policy-unknown",
      "a policy that is none",
      { [`${watch}.policy`]: "500 micron" },
      "refused",
      "no such policy",
    ],
    [
      "policy-left-out",
      "no target stated",
      { [`${watch}.policy`]: null },
      "inconclusive",
      "without a target nothing passes",
    ],
    [
      "gauge-100-percent",
      "gauge of ±100 % for ±10 %",
      { "instruments.vacuumGauge.accuracy": percent(100) },
      "inconclusive",
      "anything up to twice the reading",
    ],
    [
      "gauge-1-percent",
      "gauge of ±1 % for ±10 %",
      { "instruments.vacuumGauge.accuracy": percent(1) },
      "unknowable",
      "only its certificate shows it; the readings are far below the target either way",
    ],
    [
      "gauge-step-torr",
      "the gauge's step 1 torr for 1 micron",
      { "instruments.vacuumGauge.resolution": torrDifference(1) },
      "inconclusive",
      "steps of 1000 micron show nothing of 300",
    ],
    [
      "rows-reversed",
      "the rows from last to first",
      { [`${watch}.readings`]: rows((_, i) => micron(figures[60 - i] as number)) },
      "inconclusive",
      "a pressure that falls has a pump, or ice, behind it",
    ],
    [
      "before-isolation",
      "the log from the pump's start on",
      { [`${watch}.readings`]: rows((f, i) => micron(Math.round(f + 5000 * Math.exp(-i / 4)))) },
      "inconclusive",
      "a pressure that falls has a pump behind it",
    ],
    [
      "one-digit",
      "2600 for 260 in one row",
      { [`${watch}.readings[30].pressure`]: micron(2980) },
      "finding",
      "no leak rises tenfold and comes back in 20 s",
    ],
    [
      "one-digit-low",
      "29 for 298 in one row",
      { [`${watch}.readings[30].pressure`]: micron(29) },
      "finding",
      "no pressure falls to a tenth and comes back in 20 s",
    ],
    [
      "constant",
      "one reading copied into every row",
      { [`${watch}.readings`]: rows(() => micron(300)) },
      "inconclusive",
      "a gauge that never moves is stuck, or was not read",
    ],
    [
      "first-and-last",
      "only the first and the last row",
      { [`${watch}.readings`]: [rows((f) => micron(f))[0], rows((f) => micron(f))[60]] },
      "inconclusive",
      "two rows show no course",
    ],
    [
      "left-out",
      "no evacuation recorded",
      { evacuations: null },
      "inconclusive",
      "nothing shows that it is dry",
    ],
    [
      "dated-before-test",
      "the evacuation dated the day before the test",
      { [`${watch}.at`]: "2026-05-04T11:00" },
      "inconclusive",
      "nitrogen went in after it",
    ],
    [
      "pressure-as-difference",
      "a rise for a pressure",
      { [`${watch}.readings[3].pressure`]: micronDifference(270) },
      "refused",
      "a difference is no pressure",
    ],
  ]),
  ...slipsOf("vacuum-decay", "three heads", [
    [
      "log-of-other-head",
      "the log of head A pasted for head B",
      { "evacuations[1].readings": "= evacuations[0].readings" },
      "inconclusive",
      "no two logs are alike to the last digit",
      heads,
    ],
    [
      "head-left-out",
      "no evacuation of head C",
      { evacuations: heads.evacuations.slice(0, 2) },
      "inconclusive",
      "nothing shows that head C is dry",
      heads,
    ],
  ]),
  ...slipsOf("vacuum-decay", "assessVacuumDecay", [
    [
      "ambient-as-difference",
      "a difference for the ambient temperature",
      { ambient: deltaC(20) },
      "refused",
      "a difference is no temperature",
    ],
    [
      "elapsed-as-number",
      "bare seconds",
      { "readings[1].elapsed": 5 },
      "refused",
      "a number has no unit",
    ],
    [
      "volume-ml-for-l",
      "3 mL for 3 L",
      { volume: mL(3) },
      "unknowable",
      "by itself the watch does not know the lines; the record holds the volume against them",
    ],
    [
      "volume-as-mass",
      "a mass for the volume",
      { volume: kg(3) },
      "refused",
      "a mass is no volume",
    ],
    [
      "ambient-150",
      "ambient 150 °C for 15.0 °C",
      { ambient: degC(150) },
      "refused",
      "no site is so warm",
    ],
  ]),
];
