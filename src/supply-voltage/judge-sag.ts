// How far does the supply sag between the readings at rest and those under load?
// Follows Ohm's law on the means of both; 5 % is NFPA 70 (2023), informational note to 215.2, as advice.
// Does not cover the dip of a start, which is only reported.
import { statement } from "../assessment/assessment.ts";
import { ampere, volt } from "../quantity/units/electricity.ts";
import { percent } from "../quantity/units/ratio.ts";
import type { SupplyEvidence, SupplyFindings } from "./supply-findings.ts";
import { type SupplySag, supplySag } from "./supply-sag.ts";
import { type PlainReading, rounded } from "./voltage-reading.ts";

const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
const volts = (sets: readonly PlainReading[]) => volt(mean(sets.map((one) => mean(one.volts))));
const amps = (sets: readonly PlainReading[]) =>
  sets.every((one) => one.amps.length)
    ? ampere(mean(sets.map((one) => mean(one.amps))))
    : undefined;

/** The sag, where the supply was read both at rest and under load. */
export function judgeSag(evidence: SupplyEvidence, found: SupplyFindings): SupplySag | undefined {
  const { meter, nameplate, supply } = evidence.input;
  const of = (state: string) =>
    evidence.readings.filter((one) => one.state === state && mean(one.volts) > 0);
  const [rest, load] = [of("rest"), of("load")];
  if (!rest.length || !load.length) {
    found.assumptions.push(
      statement("no-sag", "Not read at rest and under load: the sag is not known."),
    );
    return undefined;
  }
  const [loadCurrent, restCurrent, atCurrent] = [amps(load), amps(rest), nameplate.ratedCurrent];
  const sag = supplySag({
    rest: volts(rest),
    load: volts(load),
    phases: supply.phases,
    ...(loadCurrent && { loadCurrent }),
    ...(restCurrent && { restCurrent }),
    ...(meter && { meter }),
    ...(atCurrent && { atCurrent }),
  });
  const { share, voltageAtCurrent: there } = sag;
  if (share.si > 0.05) {
    const shown = percent(rounded(share.in(percent), 1));
    found.cautions.push(
      statement("large-sag", "A sag of {share} points to thin wire or a bad joint.", {
        share: shown,
      }),
    );
  }
  if (share.si < -0.05) {
    found.cautions.push(
      statement(
        "rise-under-load",
        "{load} under load is more than 5 % above the {rest} at rest: see which reading is which, and whether the neutral holds.",
        { load: volt(rounded(volts(load).si, 1)), rest: volt(rounded(volts(rest).si, 1)) },
      ),
    );
  }
  if (there && there < evidence.plate.minimum) {
    found.cautions.push(
      statement("sag-at-full-load", "At full-load current expect {there}, too low for the unit.", {
        there: volt(rounded(there.si, 1)),
      }),
    );
  }
  return sag;
}
