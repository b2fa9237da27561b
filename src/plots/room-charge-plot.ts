// May the room hold the charge? The charge beside its limit.
// Follows the verdict of charge-limit.
// Does not cover how the limit comes about: the verdict says it in words.
import type { ConcentrationAssessment, RoomChargeAssessment } from "../charge-limit/index.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { Quantity } from "../quantity/quantity.ts";
import { barPlot } from "./bar-plot.ts";
import { frameOf, type PlotOptions } from "./plot-options.ts";
import { inUnit } from "./reader.ts";
import { say } from "./statements.ts";

/**
 * Draws a charge and the limit of its room as two bars; a ring marks the charge, which decides.
 *
 * @param input - What was given to `assessRoomCharge` or `assessConcentration`: its `charge`.
 * @param assessment - What it answered.
 * @param options - Language, units and looks.
 * @returns One `<svg>` element as text, with its own text alternative.
 * @throws {@link InvalidInputError} for a charge that is none, an assessment that is none, no language, or an id that
 * is none.
 *
 * Cautions: a picture for planning: the unit's manual and listing decide, and local code.
 *
 * Source: none for the picture; the assessment names its own.
 *
 * @example
 * ```ts
 * import { assessRoomCharge } from "hvac-install-math/charge-limit";
 * import { english } from "hvac-install-math/language/en";
 * import { roomChargePlot } from "hvac-install-math/plots";
 * import { kg, m2 } from "hvac-install-math/quantity";
 * import { R32 } from "hvac-install-math/refrigerants";
 *
 * const unit = { refrigerant: R32, place: "floor", charge: kg(2.1), floorArea: m2(40) } as const;
 * const svg = roomChargePlot(unit, assessRoomCharge(unit), { language: english, system: "SI" });
 * svg.includes("charge 2.1 kg, limit"); // => true
 * ```
 */
export function roomChargePlot(
  input: {
    /** The whole charge. */
    readonly charge: Quantity<"mass">;
  },
  assessment: RoomChargeAssessment | ConcentrationAssessment,
  options: PlotOptions,
): string {
  const frame = frameOf(options, "room-charge-plot", say("plots.room-limit"));
  const { reader } = frame;
  const { charge } = objectOf("input", input);
  const mass = siOf("input.charge", charge, "mass", { min: 0 });
  const { outcome, sentences } = reader.verdict(assessment);
  const { limit: answer } = assessment;
  objectOf("assessment.limit", answer);
  const limit = "value" in answer ? answer.value : answer.limit;
  const most = siOf("assessment.limit", limit, "mass", { min: 0 });
  const unit = reader.unitFor(mass > most ? charge : limit);
  const figures = { charge: new Quantity(mass, unit), limit: new Quantity(most, unit) };
  const [at, end] = [inUnit(mass, unit), inUnit(most, unit)];
  return barPlot({
    frame,
    outcome,
    result: reader.say(say("plots.charge-of-limit", figures)),
    description: sentences,
    xName: reader.say(say("plots.charge-axis", { unit: reader.unitName(unit as never) })),
    reach: [0],
    bars: [
      {
        role: "limit",
        label: reader.say(say("plots.charge-limit", { limit: figures.limit })),
        low: 0,
        high: end,
      },
      {
        role: "measured",
        label: reader.word("plots.charge"),
        low: 0,
        high: at,
        rings: [{ at, uncertainty: 0 }],
      },
    ],
  });
}
