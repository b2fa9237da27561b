// Which fields have the plates, the manual and the instruments of a record, and of which form?
// Follows record-equipment.ts; the compiler holds the names of the fields together.
// Does not cover words that a module checks itself: those are `text` here.
import type {
  Equipment,
  InstrumentIdentity,
  Instruments,
  Manual,
  UnitPlate,
} from "./record-equipment.ts";
import { either, type FieldsOf, list, of, range, type Shape } from "./shape.ts";

export const equipment: Shape = /* @__PURE__ */ of<Equipment>({
  outdoorUnit: of<UnitPlate>({ model: "text", serialNumber: "text" }),
  indoorUnits: list(of<UnitPlate>({ model: "text", serialNumber: "text" })),
  refrigerant: "text",
  factoryCharge: "mass",
  maximumCharge: "mass",
  lowestMarkedPressure: "gaugePressure",
  minimumCircuitAmpacity: "current",
  maximumOvercurrentProtection: "current",
  protectionMarking: "text",
  ratedLoadCurrent: "current",
  lockedRotorCurrent: "current",
  ratedVoltages: list("voltage"),
  voltageRange: range("minimum", "maximum", "voltage"),
  meteringDevice: "text",
  compressor: "text",
  expansion: "text",
  manual: of<Manual>({
    run: {
      fields: {
        maximumLength: "length",
        minimumLength: "length",
        maximumLift: "length",
        maximumLiftOutdoorAbove: "length",
        maximumBends: "number",
        bendEquivalentLength: "length",
        oilTraps: range("above", "spacing", "length"),
        extraOil: { fields: { beyond: "length", per: "length", volume: "volume" } },
      },
    },
    preChargedLength: "length",
    chargeRate: either("massPerLength", { fields: { mass: "mass", per: "length" } }),
    shortLineRule: "text",
    testPressure: "gaugePressure",
    testHold: "duration",
  }),
});

const identity: FieldsOf<InstrumentIdentity> = {
  name: "text",
  serialNumber: "text",
  calibratedOn: "time",
  calibrationDue: "time",
};
const instrument = (kind: Shape, more: Record<string, Shape> = {}): Shape => ({
  fields: { ...identity, accuracy: kind, resolution: kind, repeatability: kind, ...more },
});

export const instruments: Shape = /* @__PURE__ */ of<Instruments>({
  testGauge: instrument("pressureDifference", {
    drift: "pressureDifference",
    separateInstruments: "flag",
  }),
  gasThermometer: instrument("temperatureDifference", {
    followsGasWithin: "temperatureDifference",
    separateInstruments: "flag",
  }),
  vacuumGauge: {
    fields: {
      ...identity,
      accuracy: "ratio",
      range: "absolutePressure",
      resolution: either("pressureDifference", {
        list: { fields: { upTo: "absolutePressure", resolution: "pressureDifference" } },
      }),
    },
  },
  scale: instrument("mass"),
  tape: instrument("length"),
  torqueWrench: {
    fields: { ...identity, relativeAccuracy: "ratio", accuracy: "torque", resolution: "torque" },
  },
  voltmeter: instrument("voltage", { accuracyOfReading: "ratio" }),
  serviceGauge: instrument("pressureDifference"),
  lineThermometer: instrument("temperatureDifference"),
  level: { fields: identity },
});
