// What can hurt someone in a pressure test? The cautions that every result of this module carries.
// Follows ANSI/ASHRAE 15 (field test: medium, regulator, relief device) and common practice.
// Does not cover local law or the maker's own procedure, which override all of it.
import { type Caution, statement } from "../assessment/assessment.ts";
import { minute, second } from "../quantity/units/time.ts";

/** Carried by every result of the module. */
export const cautions: readonly Caution[] = /* @__PURE__ */ (() => [
  statement(
    "dry-nitrogen-only",
    "Use dry nitrogen only: never oxygen, compressed air or a flammable gas; they explode with oil.",
  ),
  statement(
    "regulator-and-relief",
    "Feed through a regulator, with a relief device on its outlet set above the test pressure and below what a component bears; never from an open cylinder valve.",
  ),
  statement(
    "raise-in-stages",
    "Raise in stages, keep people clear, isolate parts not rated for the pressure, and loosen or braze nothing under pressure.",
  ),
  statement(
    "nameplate-limits",
    "Never exceed the lowest marked limit; the compressor and low side may bear less than the high side.",
  ),
  statement("vent-outdoors", "Vent nitrogen outdoors or with ventilation: it suffocates."),
  statement(
    "others-govern",
    "Nameplate, maker's instructions, local code and licensed practice govern; this never overrides them.",
  ),
])();

/** The shortest hold of hold-rules.ts: mechanical code checklist. */
const shortestHold = /* @__PURE__ */ minute(10);

/** What a hold of some seconds (0 when unknown) leaves to be said. */
export function holdCautions(seconds: number): Caution[] {
  if (seconds >= shortestHold.si) return [];
  const values = { shortest: shortestHold };
  if (seconds === 0) {
    const text =
      "No time is stated between the readings: hold for {shortest} at least (mechanical code checklist), or as code and manufacturer ask.";
    return [statement("hold-time-unknown", text, values)];
  }
  const hold = seconds < 60 ? second(seconds) : minute(Number((seconds / 60).toPrecision(3)));
  const text =
    "A hold of {hold} is shorter than any rule in print: hold for {shortest} at least (mechanical code checklist), or as code and manufacturer ask.";
  return [statement("short-hold", text, { ...values, hold })];
}
