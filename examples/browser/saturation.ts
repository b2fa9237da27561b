// Card 1: what a gauge reading or a temperature means for a refrigerant, at the altitude of the site.
import { atmosphereAtAltitude, degF, deltaF, ft, psi, psig, toGauge } from "hvac-install-math/quantity";
import {
  bubblePressure,
  bubbleTemperature,
  dewPressure,
  dewTemperature,
  refrigerantByDesignation,
  refrigerants,
} from "hvac-install-math/refrigerants";
import type { Answer, Show } from "./card.ts";
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

  const temperatures =
    pressure &&
    fields.attempt(() => [
      show(bubbleTemperature(refrigerant, pressure, atmosphere), deltaF(0.1)),
      show(dewTemperature(refrigerant, pressure, atmosphere), deltaF(0.1)),
    ]);
  const pressures =
    temperature &&
    fields.attempt(() => [
      show(toGauge(bubblePressure(refrigerant, temperature), atmosphere), psi(0.1)),
      show(toGauge(dewPressure(refrigerant, temperature), atmosphere), psi(0.1)),
    ]);
  const rows = [
    pressure && temperatures && ([`${show(pressure)} on the gauge`, ...temperatures] as const),
    temperature && pressures && ([`${show(temperature)}`, ...pressures] as const),
  ].filter((row) => row !== undefined);

  const { composition, safetyClass, range } = refrigerant;
  const parts = composition.map((part) => `${part.designation} ${part.massPercent} %`);
  return {
    headline: rows.length
      ? rows.map(([at, bubble, dew]) => `${at}: bubble ${bubble}, dew ${dew}`).join(". ")
      : "Type a pressure or a temperature.",
    body: [
      table(["", "Bubble", "Dew"], rows),
      figures([
        ["Air around the gauge", show(atmosphere)],
        ["Composition by mass", parts.join(", ") || undefined],
        ["Safety class (ASHRAE 34)", safetyClass + (/[23]/.test(safetyClass) ? ", flammable" : "")],
        ["Range of the curve", `${show(range.min)} to ${show(range.max)}`],
      ]),
      element("p", "Superheat is counted from the dew temperature, subcooling from the bubble."),
    ],
  };
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): HTMLElement {
  const heads = head.map((text) => element(text ? "th" : "td", text));
  const lines = rows.map(([first = "", ...rest]) =>
    element("tr", element("th", first), ...rest.map((text) => element("td", text))),
  );
  return element(
    "table",
    element("thead", element("tr", ...heads)),
    element("tbody", ...lines),
  );
}
