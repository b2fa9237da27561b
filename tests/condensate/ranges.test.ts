// Where each argument ends: the last value that is taken, the first that is refused, by name.
import {
  assessCondensatePump,
  assessDrainSlope,
  assessIndoorUnitPitch,
  type CondensatePumpInput,
  condensateFromLoad,
  condensateRate,
  condensateRuleOfThumb,
  condensateTrap,
  type DrainPlanInput,
  type DrainSlopeInput,
  drainCautions,
  drainSize,
  humidityRatio,
  type IndoorUnitPitchInput,
  minimumFall,
  planDrain,
  type SlopeReading,
  slopeOf,
} from "hvac-install-math/condensate";
import {
  cfm,
  cm,
  degC,
  degreeAngle,
  inch,
  kPa,
  kPaa,
  kW,
  literPerHour,
  m,
  mL,
  mm,
  percent,
  type Quantity,
  standardAtmosphere,
  tonRefrigeration,
} from "hvac-install-math/quantity";
import { describe, expect, test } from "vitest";

// Inputs as JavaScript could pass them.
const slope = (reading: object) => () => slopeOf(reading as SlopeReading);
const percents = (value: number, accuracy = 0) =>
  slope({ slope: percent(value), accuracy: percent(accuracy) });
const degrees = (value: number, accuracy = 0) =>
  slope({ angle: degreeAngle(value), accuracy: degreeAngle(accuracy) });
const gap = (levelLength: Quantity<"length">, accuracy = 0) =>
  slope({ gap: mm(0.5), levelLength, accuracy: mm(accuracy) });
const heights = (run: Quantity<"length">) =>
  slope({ heightAtStart: cm(1), heightAtEnd: cm(1), run });
const reading = { slope: percent(1) };
const drain = (more: Partial<DrainSlopeInput>) => () => assessDrainSlope({ reading, ...more });
const pitch = (more: Partial<IndoorUnitPitchInput>) => () =>
  assessIndoorUnitPitch({ reading, ...more });
const fall =
  (run: number, asked = 1) =>
  () =>
    minimumFall({ run: m(run), slope: percent(asked) });
const plan = (more: Partial<DrainPlanInput>) => () =>
  planDrain({ outletHeight: m(2), points: [{ distance: m(0), height: m(1) }], ...more });
const away = (...meters: number[]) =>
  plan({ points: meters.map((distance) => ({ distance: m(distance), height: m(1) })) });
const route = (of: object) => () => drainCautions(of);

const point = (lift: number, flow: number) => ({ lift: m(lift), flow: literPerHour(flow) });
const pump = (more: Partial<CondensatePumpInput>) => () =>
  assessCondensatePump({
    condensate: literPerHour(2),
    lift: m(0),
    curve: [point(0, 15), point(10, 5)],
    ...more,
  });
const curve = (...points: unknown[]) => pump({ curve: points as CondensatePumpInput["curve"] });
const size =
  (tons: number, outlet = 1) =>
  () =>
    drainSize({ capacity: tonRefrigeration(tons), outletDiameter: inch(outlet) });
const trap =
  (pressure: number, margin = 1) =>
  () =>
    condensateTrap({ staticPressure: kPa(pressure), margin: inch(margin) });

const air = (t: number, moisture: object) => () =>
  humidityRatio({ dryBulb: degC(t), ...moisture }, standardAtmosphere);
const humid = (value: number) => air(25, { relativeHumidity: percent(value) });
const half = { relativeHumidity: percent(50) };
const coil = (more: object) => () =>
  condensateRate({
    entering: { dryBulb: degC(25), dewPoint: degC(15) },
    leaving: { dryBulb: degC(12), dewPoint: degC(10) },
    airFlow: cfm(400),
    atmosphere: standardAtmosphere,
    ...more,
  });
const load = (total: number, sensible: number) => () =>
  condensateFromLoad({ totalCooling: kW(total), sensibleHeatRatio: percent(sensible) });

describe("the arguments of condensate", () => {
  test.each([
    ["reading", percents(99.9), percents(100)],
    ["reading", percents(-99.9), percents(-100)],
    ["reading", degrees(44.9), degrees(57)],
    ["reading.angle", degrees(44.9), degrees(58)],
    ["reading.angle", degrees(-44.9), degrees(-58)],
    ["reading.accuracy", percents(1, 0), percents(1, -0.1)],
    ["reading.accuracy", degrees(1, 0), degrees(1, -0.1)],
    ["reading.accuracy", gap(m(1), 0), gap(m(1), -0.1)],
    ["reading.levelLength", gap(mm(1)), gap(mm(0))],
    ["reading.run", heights(mm(1)), heights(mm(0))],

    ["required", drain({ required: percent(0.5) }), drain({ required: percent(0.49) })],
    ["required", drain({ required: percent(99.9) }), drain({ required: percent(100) })],
    ["run", drain({ run: mm(1) }), drain({ run: mm(0) })],
    ["confidence", drain({ confidence: 0.5 }), drain({ confidence: 0.49 })],
    ["confidence", drain({ confidence: 0.999 }), drain({ confidence: 1 })],

    ["minimum", pitch({ minimum: percent(-99.9) }), pitch({ minimum: percent(-100) })],
    ["minimum", pitch({ minimum: percent(99.9) }), pitch({ minimum: percent(100) })],
    ["maximum", pitch({ maximum: percent(0) }), pitch({ maximum: percent(-0.1) })],
    ["maximum", pitch({ maximum: percent(99.9) }), pitch({ maximum: percent(100) })],
    ["confidence", pitch({ confidence: 0.5 }), pitch({ confidence: 0.49 })],

    ["run", fall(0), fall(-0.1)],
    ["slope", fall(1, 0.01), fall(1, 0)],
    ["slope", fall(1, 99.9), fall(1, 100)],

    ["slope", plan({ slope: percent(0.5) }), plan({ slope: percent(0.49) })],
    ["slope", plan({ slope: percent(99.9) }), plan({ slope: percent(100) })],
    ["points.length", away(1), away()],
    ["points[0].distance", away(0), away(-0.1)],
    ["points[1].distance", away(2, 2), away(2, 1.9)],

    ["route.outdoors", route({ outdoors: true }), route({ outdoors: "yes" })],
    [
      "route.aboveFinishedSpace",
      route({ aboveFinishedSpace: false }),
      route({ aboveFinishedSpace: 0 }),
    ],
    ["route.pumped", route({ pumped: undefined }), route({ pumped: null })],
    [
      "route.lowestOutdoorTemperature",
      route({ lowestOutdoorTemperature: degC(-60) }),
      route({ lowestOutdoorTemperature: -60 }),
    ],

    ["margin", pump({ margin: 1 }), pump({ margin: 0.99 })],
    ["margin", pump({ margin: 100 }), pump({ margin: 100.1 })],
    ["condensate", pump({ condensate: literPerHour(0.1) }), pump({ condensate: literPerHour(0) })],
    ["lift", pump({ lift: m(0) }), pump({ lift: m(-0.1) })],
    ["reservoir", pump({ reservoir: mL(0.1) }), pump({ reservoir: mL(0) })],
    ["curve.length", curve(point(0, 1), point(1, 1)), curve(point(0, 1))],
    ["curve[0].lift", curve(point(0, 1), point(1, 1)), curve(point(-1, 1), point(1, 1))],
    ["curve[0].lift", curve(point(0, 1), point(1, 1)), curve(undefined, point(1, 1))],
    ["curve[1].lift", curve(point(0, 1), point(1, 1)), curve(point(1, 1), point(1, 1))],
    ["curve[0].flow", curve(point(0, 0), point(1, 0)), curve(point(0, -1), point(1, -2))],
    ["curve[1].flow", curve(point(0, 1), point(1, 1)), curve(point(0, 1), point(1, 1.1))],
    ["curve[1].flow", curve(point(0, 1), point(1, 0)), curve(point(0, 1), point(1, -0.1))],

    ["capacity", size(0.1), size(0)],
    ["capacity", size(250), size(250.1)],
    ["outletDiameter", size(1, 0.1), size(1, 0)],
    ["staticPressure", trap(-4.99), trap(-5)],
    ["staticPressure", trap(4.99), trap(5)],
    ["margin", trap(1, 0), trap(1, -0.1)],

    ["air.dryBulb", air(0, half), air(-0.1, half)],
    ["air.dryBulb", air(60, half), air(60.1, half)],
    ["air.relativeHumidity", humid(0.1), humid(0)],
    ["air.relativeHumidity", humid(100), humid(100.1)],
    ["air.wetBulb", air(5, { wetBulb: degC(0) }), air(5, { wetBulb: degC(-0.1) })],
    ["air.wetBulb", air(25, { wetBulb: degC(25) }), air(25, { wetBulb: degC(25.1) })],
    ["air.dewPoint", air(25, { dewPoint: degC(0) }), air(25, { dewPoint: degC(-0.1) })],
    ["air.dewPoint", air(25, { dewPoint: degC(25) }), air(25, { dewPoint: degC(25.1) })],
    ["atmosphere", coil({ atmosphere: kPaa(30) }), coil({ atmosphere: kPaa(29.9) })],
    ["atmosphere", coil({ atmosphere: kPaa(120) }), coil({ atmosphere: kPaa(120.1) })],
    ["airFlow", coil({ airFlow: cfm(0.1) }), coil({ airFlow: cfm(0) })],
    [
      "leaving",
      coil({ leaving: { dryBulb: degC(25), dewPoint: degC(10) } }),
      coil({ leaving: { dryBulb: degC(25.1), dewPoint: degC(10) } }),
    ],
    ["totalCooling", load(0.1, 50), load(0, 50)],
    ["sensibleHeatRatio", load(1, 0), load(1, -0.1)],
    ["sensibleHeatRatio", load(1, 100), load(1, 100.1)],
    ["totalCooling", () => condensateRuleOfThumb(kW(0.1)), () => condensateRuleOfThumb(kW(0))],
  ] as const)(
    "%s: the last value that is taken, the first that is refused (%#)",
    (argument, taken, refused) => {
      expect(taken).not.toThrow();
      expect(refused).toThrow(expect.objectContaining({ argument }));
    },
  );
});

// What a person is told to do about input that does not fit together: by the fields that it stands in.
describe("the hint of an error of condensate", () => {
  const named = (fields: string[]) => ({ choices: fields.map((verbatim) => ({ verbatim })) });
  const moisture = ["relativeHumidity", "wetBulb", "dewPoint"];
  const slopes = ["slope", "angle", "gap", "heightAtStart"];

  test.each([
    [
      slope({}),
      { argument: "reading", value: "nothing", allowed: `one of ${slopes.join(", ")}` },
      { code: "quantity.enter.one-of", values: named(slopes) },
    ],
    [
      air(25, {}),
      { argument: "air", value: "0 of them", allowed: `one of ${moisture.join(", ")}` },
      { code: "quantity.enter.one-of", values: named(moisture) },
    ],
    [
      air(25, { ...half, dewPoint: degC(10) }),
      { argument: "air", value: "2 of them", allowed: `one of ${moisture.join(", ")}` },
      { code: "quantity.enter.one-of", values: named(moisture) },
    ],
    [
      air(50, { wetBulb: degC(5) }),
      { argument: "air.wetBulb", value: "temperature 5 °C", allowed: "possible at 50 °C" },
      { code: "quantity.enter.matching", values: named(["dryBulb", "wetBulb"]) },
    ],
    [
      coil({ leaving: { dryBulb: degC(27), dewPoint: degC(8) } }),
      // Saturated air holds 0.00668 and 0.01069 kg/kg at 8 and 15 °C in psychrometric tables (from memory); ideal gas, 0.5 %
      // less.
      {
        argument: "leaving",
        value: expect.stringMatching(/^27\.0 °C, 0\.0066\d kg\/kg$/),
        allowed: expect.stringMatching(/^at most the entering 25\.0 °C, 0\.0106\d kg\/kg$/),
      },
      { code: "quantity.enter.matching", values: named(["entering", "leaving"]) },
    ],
  ] as const)("names the fields (%#)", (refused, problem, hint) => {
    expect(refused).toThrow(expect.objectContaining({ ...problem, hint }));
  });
});
