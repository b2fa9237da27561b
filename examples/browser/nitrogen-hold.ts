// Card 2: what two readings of a nitrogen hold prove.
import { assessPressureTest } from "hvac-install-math/pressure-test";
import {
  atmosphereAtAltitude,
  degF,
  deltaF,
  ft,
  hour,
  liter,
  psi,
  psig,
} from "hvac-install-math/quantity";
import { type Answer, type Show, verdictOf } from "./card.ts";
import { figures } from "./elements.ts";
import type { Fields } from "./fields.ts";

/** The verdict on the hold. */
export function nitrogenHold(fields: Fields, show: Show): Answer | undefined {
  const typed = fields.read({
    altitude: ft,
    "start.pressure": psig,
    "start.temperature": degF,
    "end.pressure": psig,
    "end.temperature": degF,
    "end.elapsed": hour,
    "instruments.pressure.accuracy": psi,
    "instruments.temperature.accuracy": deltaF,
    "instruments.temperature.followsGasWithin": deltaF,
  });
  const { volume, ...limit } = fields.readIfGiven({ volume: liter, "criterion.maximumDrop": psi });
  const maximumDrop = limit["criterion.maximumDrop"];
  if (!typed || fields.isMarked()) return undefined;

  const test = fields.attempt(() =>
    assessPressureTest({
      start: { pressure: typed["start.pressure"], temperature: typed["start.temperature"] },
      end: {
        pressure: typed["end.pressure"],
        temperature: typed["end.temperature"],
        elapsed: typed["end.elapsed"],
      },
      atmosphere: atmosphereAtAltitude(typed.altitude),
      instruments: {
        pressure: { accuracy: typed["instruments.pressure.accuracy"] },
        temperature: {
          accuracy: typed["instruments.temperature.accuracy"],
          followsGasWithin: typed["instruments.temperature.followsGasWithin"],
        },
      },
      ...(volume && { volume }),
      ...(maximumDrop && { criterion: { maximumDrop } }),
    }),
  );
  if (!test) return undefined;

  const { outcome, cause, correctedDrop, leakRate, smallestProvableLeak, furtherHold } = test;
  const estimate = (value: Parameters<Show>[0], uncertainty: Parameters<Show>[0]) =>
    `${show(value)} ± ${show(uncertainty)}`;
  const drop = estimate(correctedDrop.value, correctedDrop.expandedUncertainty);
  return {
    headline: `${outcome}: corrected drop ${drop}${cause ? `, ${cause}` : ""}`,
    outcome,
    body: [
      figures([
        ["The gauge should show", show(test.expectedPressure)],
        ["Corrected drop", drop],
        ["Leak rate", leakRate && estimate(leakRate.value, leakRate.expandedUncertainty)],
        ["Smallest provable drop", show(test.smallestProvableDrop)],
        [
          "Smallest provable leak",
          smallestProvableLeak ? show(smallestProvableLeak) : "needs the volume",
        ],
        ["Hold on for", furtherHold && show(furtherHold)],
      ]),
      ...verdictOf(test, show),
    ],
  };
}
