// Which shapes have the types of shapes?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { type Later, later, type Shape } from "../../shapes/index.ts";

export const EquipmentVoltageRangeShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "EquipmentVoltageRange",
  fields: { "minimum?": "voltage", "maximum?": "voltage" },
  docs: { minimum: "Lowest voltage allowed.", maximum: "Highest voltage allowed." },
}));

export const ManualRunOilTrapsShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "ManualRunOilTraps",
  fields: { "above?": "length", "spacing?": "length" },
  docs: { above: "Lift that still needs none.", spacing: "Height between traps." },
}));

export const ManualRunExtraOilShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "ManualRunExtraOil",
  fields: { "beyond?": "length", "per?": "length", "volume?": "volume" },
  docs: {
    beyond: "Length that the factory's oil covers.",
    per: "Step of length.",
    volume: "Oil for a step.",
  },
}));

export const ManualRunShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "ManualRun",
  fields: {
    "maximumLength?": "length",
    "minimumLength?": "length",
    "maximumLift?": "length",
    "maximumLiftOutdoorAbove?": "length",
    "maximumBends?": "number",
    "bendEquivalentLength?": "length",
    "oilTraps?": ManualRunOilTrapsShape(),
    "extraOil?": ManualRunExtraOilShape(),
  },
  docs: {
    maximumLength: "Longest run, one way.",
    minimumLength: "Shortest run: below it come noise, vibration and liquid return.",
    maximumLift: "Largest height difference of the two units.",
    maximumLiftOutdoorAbove:
      "Largest height difference where the outdoor unit is the higher one, if the manual tells the two apart.",
    maximumBends: "Most bends, a whole number.",
    bendEquivalentLength:
      "Length of straight tube that a bend counts for; maximumLength then holds the equivalent length.",
    oilTraps:
      "Oil traps in the vapor riser: one for every spacing where the lift is more than above.",
    extraOil: "Oil to add: volume for every started per beyond beyond.",
  },
}));

export const ManualChargeRateShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "ManualChargeRate",
  fields: { "mass?": "mass", "per?": "length" },
  docs: { mass: "Mass, 0 or more.", per: "For this much length, more than 0." },
}));

export const TubingLiquidShape: Later<Shape> = /* @__PURE__ */ later(() => ({
  type: "TubingLiquid",
  fields: { "outsideDiameter?": "length", "wall?": "length" },
  docs: {
    outsideDiameter: "Outside diameter, 1 mm to 300 mm.",
    wall: "Wall thickness, more than 0 and less than half the outside diameter.",
  },
}));
