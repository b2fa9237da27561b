import { explain } from "hvac-install-math/assessment";
import {
  type CircuitAssessment,
  type CircuitInput,
  circuitFromNameplate,
  nec2023,
} from "hvac-install-math/circuit-protection";
import { english } from "hvac-install-math/language/en";
import { ampere, ft, volt } from "hvac-install-math/quantity";

/** An invented 240 V condenser, 23.5 A and 40 A, wired in 10 AWG copper and fitted as it should be. */
export const condenser: CircuitInput<"awg"> = {
  rules: nec2023,
  minimumCircuitAmpacity: ampere(23.5),
  maximumOvercurrentProtection: ampere(40),
  protectionMarking: "fuse or HACR breaker",
  ratedLoadCurrent: ampere(19.1),
  supply: { voltage: volt(240), phases: 1, system: "120/240 V" },
  date: "2026-03-02", // before 210.8(F) reaches listed units
  wiring: { material: "copper", insulation: "90 °C", terminations: "75 °C", length: ft(60) },
  installed: {
    device: {
      kind: "breaker",
      rating: ampere(40),
      poles: 2,
      voltageRating: "120/240 V",
      hacr: true,
    },
    conductor: "10 AWG",
    equipmentGrounding: "10 AWG",
    disconnect: {
      rating: ampere(60),
      visible: true,
      distance: ft(4),
      readilyAccessible: true,
      workingSpace: { depth: ft(3), width: ft(3), height: ft(7) },
    },
  },
};

/** The condenser's circuit with some fields changed. */
export const withChanges = (changes: Partial<CircuitInput<"awg">>): CircuitAssessment<"awg"> =>
  circuitFromNameplate({ ...condenser, ...changes });

/** The condenser's circuit with something else fitted. */
export const fitted = (
  changes: NonNullable<CircuitInput<"awg">["installed"]>,
): CircuitAssessment<"awg"> => withChanges({ installed: { ...condenser.installed, ...changes } });

/** Statements in English. */
export const sentences = (statements: readonly Parameters<typeof explain<string>>[0][]): string[] =>
  statements.map((one) => explain(one, english));

/** Codes of statements, without the module. */
export const codes = (statements: readonly { readonly code: string }[]): string[] =>
  statements.map(({ code }) => code.replace(/^[^.]+\./, ""));
