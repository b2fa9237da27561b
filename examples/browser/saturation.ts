// Card 1: what a gauge reading or a temperature means for a refrigerant, at the altitude of the site.
import {
  atmosphereAtAltitude,
  degC,
  degF,
  ft,
  psig,
  type Quantity,
  standardAtmosphere,
  toGauge,
} from "hvac-install-math/quantity";
import {
  bubblePressure,
  bubbleTemperature,
  dewPressure,
  dewTemperature,
  type Refrigerant,
  refrigerantByDesignation,
  refrigerants,
} from "hvac-install-math/refrigerants";
import { type Answer, type Show, sourcesOf } from "./card.ts";
import { element, figures, fill } from "./elements.ts";
import type { Fields } from "./fields.ts";

/** Puts the refrigerants into the menu. */
export function prepareSaturation(form: HTMLFormElement): void {
  const names = refrigerants.map(({ designation }) => [designation, designation] as const);
  fill(form, "refrigerant", names, "R-454B");
}

/** Bubble and dew of whatever was typed. */
export function saturation(fields: Fields, show: Show): Answer | undefined {
  const refrigerant = refrigerantByDesignation(fields.text("refrigerant"));
  const site = fields.read({ altitude: ft });
  const { pressure, temperature } = fields.readIfGiven({ pressure: psig, temperature: degF });
  const atmosphere = site && fields.attempt(() => atmosphereAtAltitude(site.altitude));
  if (!atmosphere) return undefined;

  const boilingAt = (air: Quantity<"absolutePressure">) =>
    pressure &&
    bubbleAndDew(
      show(bubbleTemperature(refrigerant, pressure, air)),
      show(dewTemperature(refrigerant, pressure, air)),
    );
  const here = fields.attempt(() => boilingAt(atmosphere));
  const gauge = fields.attempt(
    () =>
      temperature &&
      bubbleAndDew(
        show(toGauge(bubblePressure(refrigerant, temperature), atmosphere)),
        show(toGauge(dewPressure(refrigerant, temperature), atmosphere)),
      ),
  );
  const lines = [
    pressure && here && `${show(pressure)}: ${here}`,
    temperature && gauge && `${show(temperature)}: ${gauge}`,
  ].filter((line) => line !== undefined);
  if (lines.length === 0 && fields.isMarked()) return undefined;
  return {
    headline: lines.join("\n") || "Type a pressure or a temperature.",
    body: [
      figures([
        ["Air around the gauge", show(atmosphere)],
        [
          "The same gauge at sea level",
          here && fields.attempt(() => boilingAt(standardAtmosphere)),
        ],
        ...aboutRefrigerant(refrigerant, show),
      ]),
      element("p", "Superheat is counted from the dew temperature, subcooling from the bubble."),
      ...sourcesOf(refrigerant.sources),
    ],
  };
}

const bubbleAndDew = (bubble: string, dew: string) => `bubble ${bubble}, dew ${dew}`;

function aboutRefrigerant({ composition, safetyClass, range }: Refrigerant, show: Show) {
  const parts = composition.map((part) => `${part.designation} ${part.massPercent} %`);
  const hazards = [
    safetyClass,
    ...(/[23]/.test(safetyClass) ? ["flammable"] : []),
    ...(safetyClass.startsWith("B") ? ["higher toxicity"] : []),
  ];
  return [
    ["Composition by mass", parts.join(", ")],
    ["Safety class (ASHRAE 34)", hazards.join(", ")],
    ["Range of the curve", `${show(range.min.as(degC))} to ${show(range.max.as(degC))}`],
  ] as const;
}
