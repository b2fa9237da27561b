// English of what all verdicts share: outcomes, kinds of cautions, the dangers of the trade.
import type { Outcome } from "../../assessment/assessment.ts";
import type { CautionKind } from "../../assessment/caution.ts";
import type { SafetyStatements } from "../../assessment/safety.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = SafetyStatements &
  Words<`assessment.outcome.${Outcome}` | `assessment.caution.${CautionKind}`>;
const catalogue: Define<Said> = define;

/** What every verdict may say, in American English. */
export const assessment: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "safety.others-govern":
    "The nameplate, the manufacturer’s instructions, local code and licensed practice come first.",
  "safety.dry-nitrogen-only":
    "Use dry nitrogen only. Never oxygen, compressed air or a flammable gas: they explode with oil.",
  "safety.regulator-and-relief":
    "Feed nitrogen through a regulator and a relief device set below the lowest rating. Never from an open cylinder valve.",
  "safety.raise-in-stages": "Raise the pressure in stages and keep people clear.",
  "safety.lowest-rating":
    "Never exceed the lowest marked pressure. Isolate parts not rated for the test; the low side may be rated lower.",
  "safety.nitrogen-suffocates": "Nitrogen displaces air and can suffocate. Vent it outdoors.",
  "safety.open-under-pressure":
    "Never loosen, cut or braze anything under pressure. Recover the refrigerant or vent the nitrogen first.",
  "safety.refrigerant-contact":
    "Liquid refrigerant causes frostbite. Wear gloves and goggles, also to remove a hose.",
  "safety.flammable-refrigerant":
    "With a flammable refrigerant: remove ignition sources, ventilate, run a leak detector (alarm at 25 % of the LFL or less), use rated tools, purge with nitrogen before any flame.",
  "safety.toxic-refrigerant": "Toxic refrigerant: wear breathing protection.",
  "safety.refrigerant-suffocates":
    "Refrigerant displaces air and can suffocate, most of all in low and closed rooms. Ventilate.",
  "safety.charge-tight-system": "Charge by weight, and never into a leaking or untested system.",
  "safety.refrigerant-air-mixture":
    "Never pressure-test with refrigerant and air. Even an A1 refrigerant can burn in such a mixture.",
  "safety.compressor-in-vacuum": "Never run a compressor in a vacuum.",
  "safety.line-voltage":
    "Line voltage can kill. De-energize, lock out and verify; inverter capacitors stay charged. Licensed electricians only.",
  "safety.meter-category":
    "Measure with a category III meter and leads (IV at the service), proved on a known live source before and after.",
  "safety.running-unit": "The unit is running: keep clear of live terminals and fans.",
  "safety.work-at-height": "Work at height: secure yourself, the ladder and the load.",

  "assessment.outcome.pass": "PASS",
  "assessment.outcome.fail": "FAIL",
  "assessment.outcome.inconclusive": "INCONCLUSIVE",
  "assessment.caution.finding": "Finding",
  "assessment.caution.danger": "DANGER",
  "assessment.caution.governing": "Governing",
});
