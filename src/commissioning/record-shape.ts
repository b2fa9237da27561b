// Which fields has a record, and of which form? The interfaces of the record, as data.
// Follows record.ts; the compiler holds the names of the fields together.
// Does not cover words that a module checks itself: those are `text` here.
import { acceptancePolicies, type PolicyName } from "../vacuum-decay/index.ts";
import type { Amendment } from "./amendment.ts";
import type { InstallationRecord, Photo, Signature, Valves } from "./record.ts";
import type { ChargeReading, Drain, OperatingReading, Room } from "./record-building.ts";
import type {
  Equipment,
  InstrumentIdentity,
  Instruments,
  Manual,
  Site,
  UnitPlate,
} from "./record-equipment.ts";
import type { Circuit, Power, SupplyPart } from "./record-power.ts";
import type { Charge, Evacuation, Joint, PressureTestPart, Tubing } from "./record-tubing.ts";
import { circuitRules, voltageStandards } from "./rule-names.ts";
import type { ObjectShape, Shape } from "./shape.ts";

/** Every field of `T`, and no other. */
type FieldsOf<T> = { readonly [P in keyof T]-?: Shape };

const of = <T>(fields: FieldsOf<T>, ...required: (keyof T & string)[]): ObjectShape => ({
  fields,
  required,
});
const list = (item: Shape): Shape => ({ list: item });
const either = (...shapes: Shape[]): Shape => ({ either: shapes });
const range = (low: string, high: string, kind: Shape): Shape => ({
  fields: { [low]: kind, [high]: kind },
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

const slope: Shape = {
  fields: {
    slope: "ratio",
    angle: "angle",
    gap: "length",
    levelLength: "length",
    heightAtStart: "length",
    heightAtEnd: "length",
    run: "length",
    accuracy: either("ratio", "angle", "length"),
  },
};

const equipment: Shape = /* @__PURE__ */ of<Equipment>({
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

const instruments: Shape = /* @__PURE__ */ of<Instruments>({
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

const tube: Shape = { fields: { outsideDiameter: "length", wall: "length" } };

const tubing: Shape = /* @__PURE__ */ of<Tubing>({
  liquid: tube,
  vapor: tube,
  length: "length",
  lift: "length",
  outdoorUnit: "text",
  bends: "number",
  jointCount: "number",
  otherVolume: "volume",
  at: "time",
});

const joint: Shape = /* @__PURE__ */ of<Joint>({
  name: "text",
  kind: { words: ["flare", "brazed", "pressed"] },
  tube: "text",
  torque: "torque",
  torqueWindow: range("low", "high", "torque"),
  turn: "angle",
  flareDiameter: "length",
  nitrogenFlowed: "flag",
  inspected: "flag",
  at: "time",
});

const pressureTest: Shape = /* @__PURE__ */ of<PressureTestPart>({
  readings: list({
    fields: {
      pressure: either("gaugePressure", "absolutePressure"),
      temperature: either("temperature", { list: "temperature" }),
      elapsed: "duration",
      atmosphere: "absolutePressure",
    },
  }),
  criterion: {
    fields: { maximumDrop: "pressureDifference", per: "duration", maximumLeakRate: "throughput" },
  },
  wall: "text",
  at: "time",
});

const evacuation: Shape = /* @__PURE__ */ of<Evacuation>({
  readings: list({ fields: { elapsed: "duration", pressure: "absolutePressure" } }),
  policy: { words: Object.keys(acceptancePolicies) as PolicyName[] },
  ambient: "temperature",
  coldest: "temperature",
  leakLimit: either("throughput", "pressureRate"),
  at: "time",
});

const circuit: Shape = /* @__PURE__ */ of<Circuit>({
  rules: { words: Object.keys(circuitRules) },
  wiring: {
    fields: {
      ambient: "temperature",
      length: "length",
      stranding: "text",
      material: "text",
      insulation: "text",
      terminations: "text",
      cable: "text",
      currentCarryingConductors: "number",
      aboveRoof: "length",
      conduit: "text",
      method: "text",
      groupedCircuits: "number",
    },
  },
  installed: {
    fields: {
      device: {
        fields: {
          kind: "text",
          rating: "current",
          poles: "number",
          voltageRating: "text",
          hacr: "flag",
          curve: "text",
        },
      },
      conductor: "text",
      equipmentGrounding: "text",
      disconnect: {
        fields: {
          rating: "current",
          fuse: "current",
          visible: "flag",
          distance: "length",
          readilyAccessible: "flag",
          inTheWay: "flag",
          workingSpace: {
            fields: {
              depth: "length",
              width: "length",
              height: "length",
              equipmentWidth: "length",
              condition: "number",
            },
          },
        },
      },
    },
  },
  powerFactor: "number",
  occupancy: { words: ["dwelling", "other"] },
  at: "time",
});

const power: Shape = /* @__PURE__ */ of<Power>({
  voltage: "voltage",
  phases: { words: [1, 3] },
  system: "text",
  circuit,
  supply: of<SupplyPart>({
    readings: list({
      fields: {
        state: "text",
        elapsed: "duration",
        voltage: "voltage",
        current: "current",
        lineToLine: { list: "voltage" },
        currents: { list: "current" },
      },
    }),
    measuredAt: "text",
    standard: { words: Object.keys(voltageStandards) },
    unbalanceLimit: "ratio",
    at: "time",
  }),
  energizedAt: "time",
});

const drain: Shape = /* @__PURE__ */ of<Drain>({
  slope,
  requiredSlope: "ratio",
  run: "length",
  route: {
    fields: {
      outdoors: "flag",
      lowestOutdoorTemperature: "temperature",
      aboveFinishedSpace: "flag",
      pumped: "flag",
    },
  },
  unitPitch: slope,
  pump: {
    fields: {
      condensate: "volumeFlow",
      lift: "length",
      curve: { list: { fields: { lift: "length", flow: "volumeFlow" } } },
      reservoir: "volume",
      margin: "number",
    },
  },
  waterRanOff: "flag",
  at: "time",
});

const approach = range("low", "high", "temperatureDifference");

/**
 * Every field of a record with its form, as data: for codecs, forms and reports.
 *
 * Source: none; the library's own format, version 1.
 *
 * @example
 * ```ts
 * import { recordShape } from "hvac-install-math/commissioning";
 *
 * Object.keys(recordShape.fields).slice(0, 4).join(); // => version,name,site,equipment
 * ```
 */
export const recordShape: ObjectShape = /* @__PURE__ */ of<InstallationRecord>(
  {
    version: { words: [1] },
    name: "text",
    site: of<Site>({ name: "text", altitude: "length", atmosphere: "absolutePressure" }),
    equipment,
    instruments,
    tubing,
    joints: list(joint),
    pressureTest,
    evacuation,
    charge: of<Charge>({ added: "mass", tolerance: "mass", at: "time" }),
    valves: of<Valves>({ openedAt: "time" }),
    power,
    drain,
    room: of<Room>({
      floorArea: "area",
      volume: "volume",
      place: "text",
      installationHeight: "length",
      edition: { words: ["2018", "before-2018"] },
      floorAreaAccuracy: "area",
      volumeAccuracy: "volume",
    }),
    operation: list(
      of<OperatingReading>({
        mode: { words: ["cooling", "heating"] },
        indoorTemperature: "temperature",
        outdoorTemperature: "temperature",
        evaporatorApproach: approach,
        condenserApproach: approach,
        pressure: "gaugePressure",
        port: "text",
        charge: of<ChargeReading>({
          pressure: "gaugePressure",
          lineTemperature: "temperature",
          pressureDrop: "pressureDifference",
          target: "temperatureDifference",
          tolerance: "temperatureDifference",
        }),
        at: "time",
      }),
    ),
    photos: list(
      of<Photo>(
        { reference: "text", of: "text", caption: "text", at: "time", digest: "text" },
        "reference",
      ),
    ),
    signatures: list(of<Signature>({ name: "text", role: "text", at: "time" }, "name", "at")),
    history: list(
      of<Amendment>(
        { path: "text", previous: "any", by: "text", at: "time", reason: "text" },
        "path",
        "by",
        "at",
        "reason",
      ),
    ),
  },
  "version",
);
