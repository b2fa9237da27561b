import { explain, type Statement } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { volt } from "hvac-install-math/quantity";
import {
  assessSupplyVoltage,
  type SupplyVoltageAssessment,
  type SupplyVoltageInput,
  type VoltageNameplate,
  type Voltmeter,
} from "hvac-install-math/supply-voltage";

// All readings of these tests are invented.
export const dual: VoltageNameplate = { rated: [volt(208), volt(230)] };
export const meter: Voltmeter = { accuracy: volt(1.2), resolution: volt(0.1) };
/** Codes without the module. */
export const codes = (list: readonly { code: string }[]): string[] =>
  list.map(({ code }) => code.replace(/^[^.]+\./, ""));

/** One phase at 240 V, at the unit, unless said otherwise. */
export const single = (
  volts: number[],
  change: Partial<SupplyVoltageInput> = {},
): SupplyVoltageAssessment =>
  assessSupplyVoltage({
    nameplate: dual,
    supply: { voltage: volt(240), phases: 1 },
    readings: volts.map((v) => ({ voltage: volt(v) })),
    measuredAt: "unit",
    ...change,
  });

/** Three phases at 480 V, at the unit, unless said otherwise. */
export const three = (
  sets: number[][],
  change: Partial<SupplyVoltageInput> = {},
): SupplyVoltageAssessment =>
  assessSupplyVoltage({
    nameplate: { rated: volt(460), phases: 3 },
    supply: { voltage: volt(480), phases: 3 },
    readings: sets.map((set) => ({ lineToLine: set.map(volt) })),
    measuredAt: "unit",
    ...change,
  });

/** The sentences of a code. */
export const sentences = (list: readonly Statement[], code: string): string[] =>
  list.filter((said) => said.code.endsWith(`.${code}`)).map((said) => explain(said, english));
