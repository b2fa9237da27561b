// Which fields has a record, and of which form? The interfaces of the record, as data.
// Follows record.ts; the compiler holds the names of the fields together.
// Does not cover words that a module checks itself: those are `text` here.
import { acceptancePolicies, type PolicyName } from "../vacuum-decay/index.ts";
import type { Amendment } from "./amendment.ts";
import { equipment, instruments } from "./equipment-shape.ts";
import { type NotApplicable, optionalSteps } from "./not-applicable.ts";
import { power } from "./power-shape.ts";
import type { InstallationRecord, Photo, Signature, Valves } from "./record.ts";
import type { ChargeReading, Drain, OperatingReading, Room } from "./record-building.ts";
import type { Site } from "./record-equipment.ts";
import type { Charge, Evacuation, Joint, PressureTestPart, Tubing } from "./record-tubing.ts";
import { either, list, type ObjectShape, of, range, type Shape } from "./shape.ts";

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
    notApplicable: list(
      of<NotApplicable>(
        { step: { words: optionalSteps }, reason: "text", by: "text", at: "time" },
        "step",
        "reason",
        "by",
        "at",
      ),
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
