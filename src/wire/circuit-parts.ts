// Which forms have the parts of a circuit on the wire? What several of its codecs share.
// Follows the types of circuit-protection. A rule set goes by its name; it holds functions, so that one of the
// caller's own cannot travel. Does not cover the codecs themselves: circuit-protection.ts and those beside it.

import type {
  AwgWiring,
  CircuitRules,
  CommonWiring,
  ConductorSize,
  Connection,
  DeviceKind,
  EquipmentKind,
  Load,
  Material,
  MetricWiring,
  OperatingMode,
  Supply,
  SupplySystemName,
  TripCurve,
  UsableAmpacity,
  VoltageDrop,
  VoltageRating,
} from "../circuit-protection/index.ts";
import { circuitRules } from "../commissioning/index.ts";
import {
  either,
  type FieldsOf,
  type FormOf,
  list,
  type ObjectOf,
  of,
  words,
} from "./wire-shape.ts";

/** A rule set by its name. */
export const rules = (): { readonly named: Readonly<Record<string, CircuitRules>> } => ({
  named: circuitRules,
});

/** One or three phases. */
export const phases = (): FormOf<1 | 3> => ({ words: [1, 3] });

/** A conductor size of either family. */
export const size = (): FormOf<ConductorSize> =>
  words<ConductorSize>({
    "14 AWG": true,
    "12 AWG": true,
    "10 AWG": true,
    "8 AWG": true,
    "6 AWG": true,
    "4 AWG": true,
    "3 AWG": true,
    "2 AWG": true,
    "1 AWG": true,
    "1/0 AWG": true,
    "2/0 AWG": true,
    "3/0 AWG": true,
    "4/0 AWG": true,
    "250 kcmil": true,
    "1 mm²": true,
    "1.5 mm²": true,
    "2.5 mm²": true,
    "4 mm²": true,
    "6 mm²": true,
    "10 mm²": true,
    "16 mm²": true,
    "25 mm²": true,
    "35 mm²": true,
    "50 mm²": true,
    "1.6 mm": true,
    "2.0 mm": true,
    "2.6 mm": true,
    "5.5 mm²": true,
    "8 mm²": true,
    "14 mm²": true,
  });

/** Copper or aluminum. */
export const material = (): FormOf<Material> => words<Material>({ copper: true, aluminum: true });

/** Solid or stranded. */
export const stranding = (): FormOf<"solid" | "stranded"> =>
  words<"solid" | "stranded">({ solid: true, stranded: true });

/** The conduit. */
export const conduit = (): FormOf<"PVC" | "aluminum" | "steel"> =>
  words<"PVC" | "aluminum" | "steel">({ PVC: true, aluminum: true, steel: true });

/** Fuse or breaker. */
export const deviceKind = (): FormOf<DeviceKind> =>
  words<DeviceKind>({ breaker: true, fuse: true });

/** What the circuit feeds. */
export const equipmentKind = (): FormOf<EquipmentKind> =>
  words<EquipmentKind>({ "motor-compressor": true, other: true });

/** How a breaker trips. */
export const tripCurve = (): FormOf<TripCurve> => words<TripCurve>({ B: true, C: true, D: true });

/** When a load runs. */
export const modes: Readonly<Record<OperatingMode, true>> = {
  cooling: true,
  heating: true,
  "emergency heating": true,
  defrost: true,
};

/** A voltage marking. */
export const voltageRating = (): FormOf<VoltageRating> =>
  words<VoltageRating>({
    "120 V": true,
    "120/240 V": true,
    "240 V": true,
    "277 V": true,
    "480Y/277 V": true,
    "480 V": true,
    "600Y/347 V": true,
    "600 V": true,
    "230 V": true,
    "230/400 V": true,
    "400 V": true,
    "100 V": true,
    "100/200 V": true,
    "200 V": true,
  });

const system = () =>
  words<SupplySystemName>({
    "120/240 V": true,
    "208Y/120 V": true,
    "240 V delta": true,
    "240/120 V high-leg delta": true,
    "480 V delta": true,
    "480Y/277 V": true,
    "600 V delta": true,
    "600Y/347 V": true,
    "230/400 V": true,
    "220/380 V": true,
    "100/200 V": true,
    "200 V delta": true,
  });

/** The supply at the panel. */
export const supply = (): ObjectOf<Supply> =>
  of<Supply>({ voltage: "voltage", phases: phases(), "system?": system() });

/** What the service asks of the breaker. */
export const connection = (): FieldsOf<Connection> => ({
  system: system(),
  poles: { words: [1, 2, 3] },
  voltsToGround: "number",
  voltsBetween: "number",
  voltageRating: voltageRating(),
});

const commonWiring = (): FieldsOf<CommonWiring> => ({
  material: material(),
  "ambient?": "temperature",
  "length?": "length",
  "stranding?": stranding(),
});

/** How the cable runs, by gauge or metric. */
export const wiring = (): FormOf<AwgWiring | MetricWiring> =>
  either(
    of<AwgWiring>({
      ...commonWiring(),
      insulation: words<AwgWiring["insulation"]>({ "60 °C": true, "75 °C": true, "90 °C": true }),
      "terminations?": words<NonNullable<AwgWiring["terminations"]>>({
        "60 °C": true,
        "75 °C": true,
      }),
      "cable?": words<NonNullable<AwgWiring["cable"]>>({ NM: true, other: true }),
      "currentCarryingConductors?": "number",
      "aboveRoof?": "length",
      "conduit?": conduit(),
    }),
    of<MetricWiring>({
      ...commonWiring(),
      insulation: words<MetricWiring["insulation"]>({ "70 °C": true, "90 °C": true }),
      method: words<MetricWiring["method"]>({
        A1: true,
        A2: true,
        B1: true,
        B2: true,
        C: true,
        D1: true,
        D2: true,
        E: true,
        A: true,
        "100": true,
        "101": true,
        "102": true,
        "103": true,
      }),
      "groupedCircuits?": "number",
      "grouping?": words<NonNullable<MetricWiring["grouping"]>>({
        bunched: true,
        "single layer": true,
        "perforated tray": true,
      }),
      "soilResistivity?": "number",
      "insulationLength?": "length",
    }),
  );

/** What a conductor carries as it runs, with every step. */
export const usable = (): ObjectOf<UsableAmpacity> =>
  of<UsableAmpacity>({
    size: size(),
    column: "text",
    tableAmpacity: "current",
    ambient: "temperature",
    ambientFactor: "number",
    adjustmentFactor: "number",
    derated: "current",
    "terminationLimit?": "current",
    usable: "current",
  });

/** What is lost on the way and what is left. */
export const drop = (): ObjectOf<VoltageDrop> =>
  of<VoltageDrop>({ drop: "voltage", ratio: "ratio", atUnit: "voltage" });

/** The parts of a unit. */
export const loads = (): FormOf<readonly Load[]> =>
  list(
    of<Load>({
      kind: words<Load["kind"]>({ compressor: true, motor: true, heater: true, other: true }),
      "current?": "current",
      "branchCircuitSelectionCurrent?": "current",
      "lockedRotorCurrent?": "current",
      "power?": "power",
      "ratedVoltage?": "voltage",
      "supplyVoltage?": "voltage",
      "phases?": phases(),
      "count?": "number",
      "runsIn?": list(words<OperatingMode>(modes)),
    }),
  );
