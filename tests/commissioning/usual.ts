// Plates, circuits and readings as the invented installations have them.
import type { Circuit, Equipment, OperatingReading } from "hvac-install-math/commissioning";
import {
  ampere,
  degC,
  deltaF,
  deltaK,
  ft,
  MPag,
  m,
  type Quantity,
  volt,
  watt,
} from "hvac-install-math/quantity";

/** Heating, read on the vapor port, which is the high side then. */
export const heating = (pressure: number, outdoor: number): OperatingReading => ({
  mode: "heating",
  indoorTemperature: degC(20),
  outdoorTemperature: degC(outdoor),
  evaporatorApproach: { low: deltaK(5), high: deltaK(11) },
  condenserApproach: { low: deltaK(17), high: deltaK(24) },
  pressure: MPag(pressure),
});

/** Cooling at 26 °C indoors, in metric units. */
export const cool = (pressure: number, outdoor: number): OperatingReading => ({
  mode: "cooling",
  indoorTemperature: degC(26),
  outdoorTemperature: degC(outdoor),
  evaporatorApproach: { low: deltaK(16), high: deltaK(22) },
  condenserApproach: { low: deltaK(8), high: deltaK(14) },
  pressure: MPag(pressure),
});

/** A circuit by the rules of IEC 60364 or those that follow them. */
export const metric = (
  device: number,
  conductor: string,
  length: number,
  rules: NonNullable<Circuit["rules"]> = "iec-60364",
): Circuit => ({
  rules,
  feeds: "motor-compressor",
  sharedWith: [],
  earthing: "TN",
  wiring: { material: "copper", insulation: "70 °C", method: "C", length: m(length) },
  installed: {
    device: { kind: "breaker", rating: ampere(device), poles: 2, curve: "C" },
    conductor: conductor as never,
    equipmentGrounding: conductor as never,
    disconnect: { rating: ampere(25), visible: true, lockable: true, distance: m(1) },
    residualCurrent: ampere(0.03),
  },
  at: "2026-05-06T12:15",
});

type Ports = NonNullable<NonNullable<Equipment["outdoorUnit"]>["ports"]>;

/** An inverter with its electronic valve outdoors, by its plate. */
export const unit = (
  model: string,
  refrigerant: string,
  watts: number,
  [liquid, vapor]: readonly [Ports["liquid"], Ports["vapor"]],
  [ampacity, protection, rated]: readonly number[],
  volts: readonly number[],
): Equipment => ({
  meteringDevice: "electronic-valve",
  compressor: "inverter",
  expansion: "outdoor-unit",
  outdoorUnit: {
    model: `invented ${model}`,
    ports: { ...(liquid && { liquid }), ...(vapor && { vapor }) },
  },
  refrigerant,
  capacity: watt(watts),
  minimumCircuitAmpacity: ampere(ampacity ?? 0),
  maximumOvercurrentProtection: ampere(protection ?? 0),
  ratedLoadCurrent: ampere(rated ?? 0),
  ratedVoltages: volts.map((one) => volt(one)),
});

/** A circuit by NFPA 70, wired and fitted as named. */
export const nec = (
  device: number,
  conductor: string,
  length: number,
  poles: 1 | 2,
  disconnect: number,
): Circuit => ({
  rules: "nfpa-70-2023",
  feeds: "motor-compressor",
  sharedWith: [],
  wiring: { material: "copper", insulation: "90 °C", terminations: "75 °C", length: ft(length) },
  installed: {
    device: { kind: "breaker", rating: ampere(device), poles },
    conductor: conductor as never,
    equipmentGrounding: conductor as never,
    disconnect: { rating: ampere(disconnect), visible: true, distance: ft(4) },
  },
  at: "2026-05-06T12:15",
});

/** Cooling at full speed, read on the vapor port of a unit that takes a gauge. */
export const cooling = (
  indoor: Quantity<"temperature">,
  outdoor: Quantity<"temperature">,
  pressure: Quantity<"gaugePressure">,
): OperatingReading => ({
  mode: "cooling",
  indoorTemperature: indoor,
  outdoorTemperature: outdoor,
  evaporatorApproach: { low: deltaF(30), high: deltaF(40) },
  condenserApproach: { low: deltaF(15), high: deltaF(25) },
  pressure,
});

/** Air and current in place of a gauge. */
export const air = (
  mode: "cooling" | "heating",
  [indoor, supply, outdoor]: readonly number[],
  amperes: number,
): OperatingReading => ({
  mode,
  indoorTemperature: degC(indoor ?? 0),
  outdoorTemperature: degC(outdoor ?? 0),
  airSide: { supplyAir: degC(supply ?? 0), current: ampere(amperes), fullSpeed: true },
});
