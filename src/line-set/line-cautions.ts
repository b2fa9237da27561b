// What can hurt someone at a line set? The cautions that the verdicts of this module share. Internal.
// Follows the warnings of manufacturers' published manuals, in our own words; ASHRAE 34-2022 names the
// safety classes. Does not cover first aid, transport or the law on handling refrigerants.
import { type Caution, type Citation, cite, statement } from "../assessment/assessment.ts";
import { oneOf } from "../quantity/check.ts";

/**
 * Safety class of a refrigerant: toxicity A or B, flammability 1 (none) to 3 (higher).
 *
 * Source: ANSI/ASHRAE Standard 34-2022, 6.1.
 */
export type SafetyClass = "A1" | "A2L" | "A2" | "A3" | "B1" | "B2L" | "B2" | "B3";

/** The manual decides. */
export const manualDecides: Caution = /* @__PURE__ */ statement(
  "manual-decides",
  "The nameplate, the manufacturer's instructions and the local code override this result.",
);

/** Lines under pressure. */
export const underPressure: Caution = /* @__PURE__ */ statement(
  "under-pressure",
  "Lines hold refrigerant under pressure: recover it before you cut, braze or loosen anything; liquid freezes skin and eyes.",
);

/** Work on a wall or roof. */
export const workAtHeight: Caution = /* @__PURE__ */ statement(
  "height",
  "Risers and wall sleeves mean work at height: secure yourself, the ladder and the tube.",
);

/** Tubing facts that are not in a standard. */
export const manuals: Citation = /* @__PURE__ */ cite("manufacturer-manuals");

/** What handling this refrigerant asks for. */
export function refrigerantCautions(safetyClass?: SafetyClass): Caution[] {
  if (safetyClass !== undefined) {
    oneOf("safetyClass", safetyClass, ["A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3"]);
  }
  const cautions = [manualDecides, underPressure];
  if (!safetyClass?.endsWith("1")) {
    cautions.push(
      statement(
        "flammable",
        "{class} refrigerant: no ignition source, ventilate, leak detector on, tools rated for it, keep to the room's charge limit.",
        { class: safetyClass ?? "If flammable (A2L, A2, A3), the" },
      ),
    );
  }
  if (safetyClass?.startsWith("B")) {
    cautions.push(
      statement("toxic", "{class} refrigerant is toxic: protect your breathing.", {
        class: safetyClass,
      }),
    );
  }
  return cautions;
}
