// Which shapes have the types of line-set?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { once } from "../../quantity/later.ts";
import type { Shape, StatementTable } from "../../shapes/index.ts";
import { byDesignation } from "../named.ts";
import { SafetyStatements } from "./assessment.shapes.ts";
import { CitationShape } from "./refrigerants.shapes.ts";

export function MassPerStepShape(): Shape {
  return once(MassPerStepShape, () => ({
    type: "MassPerStep",
    fields: { mass: "mass", per: "length" },
    docs: {
      "": "A rate as some manuals print it: 3 oz for every 5 ft.",
      mass: "Mass, 0 or more.",
      per: "For this much length, more than 0.",
    },
  }));
}

export function ShortLineRuleShape(): Shape {
  return once(ShortLineRuleShape, () => ({
    type: "ShortLineRule",
    words: ["add-only", "add-and-subtract", "net-add-only", "not-stated"],
  }));
}

export function AdditionalChargeInputShape(): Shape {
  return once(AdditionalChargeInputShape, () => ({
    type: "AdditionalChargeInput",
    fields: {
      "factoryCharge?": "mass",
      "maximumLength?": "length",
      "minimumLength?": "length",
      "maximumCharge?": "mass",
      "scaleResolution?": "mass",
      "lengthUncertainty?": "length",
      "safetyClass?": { words: ["A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3"] },
      length: "length",
      preChargedLength: "length",
      rate: { either: ["massPerLength", MassPerStepShape()] },
      shortLineRule: ShortLineRuleShape(),
    },
    docs: {
      "": "One liquid line and the rule for it.",
      factoryCharge: "Charge that the unit came with, for the total on the label.",
      maximumLength: "Longest run (all lines together) that the manual allows.",
      minimumLength: "Shortest run that the manual allows.",
      maximumCharge:
        "Most that the unit or the room may hold, from the manual or from the room limit for flammables.",
      scaleResolution: "Smallest step of the scale; the answer is rounded to it.",
      lengthUncertainty:
        "Standard uncertainty (k = 1) of each length; taken as exact when left out.",
      safetyClass: "Safety class of the refrigerant, for the cautions.",
      length: "Length of liquid line as installed, one way, with what is coiled up; 0 to 1000 m.",
      preChargedLength: "Length that the factory charge covers, from nameplate or manual.",
      rate: "Mass per length for this size of liquid line, from nameplate or manual.",
      shortLineRule: "What happens below preChargedLength, from the manual.",
    },
  }));
}

export function LineSetFigureShape(): Shape {
  return once(LineSetFigureShape, () => ({
    type: "LineSetFigure",
    words: [
      "line-set.figure.length",
      "line-set.figure.subcooling",
      "line-set.figure.equivalent-length",
      "line-set.figure.height-difference",
      "line-set.figure.height-difference-outdoor-above",
      "line-set.figure.total-charge",
      "line-set.figure.added-charge",
      "line-set.figure.pressure-loss",
    ],
  }));
}

export function LineSetStatements(): StatementTable {
  return once(LineSetStatements, () => ({
    "line-set.above-maximum": {
      figure: LineSetFigureShape(),
      value: { either: ["length", "mass", "pressureDifference"] },
      limit: { either: ["length", "mass", "pressureDifference"] },
    },
    "line-set.above-minimum": {
      figure: LineSetFigureShape(),
      value: { either: ["length", "mass", "pressureDifference"] },
      limit: { either: ["length", "mass", "pressureDifference"] },
    },
    "line-set.add": {
      charge: "mass",
      length: "length",
      difference: "length",
      preCharged: "length",
      rate: "massPerLength",
    },
    "line-set.allowances": { mass: "mass" },
    "line-set.ask-line-size": {},
    "line-set.ask-oil-return": {},
    "line-set.below-minimum": {
      figure: LineSetFigureShape(),
      value: { either: ["length", "mass", "pressureDifference"] },
      limit: { either: ["length", "mass", "pressureDifference"] },
    },
    "line-set.bend-length-not-counted": { bend: "length" },
    "line-set.bends-above-maximum": { count: "number", most: "number" },
    "line-set.bends-not-counted": { most: "number" },
    "line-set.bends-within-maximum": { count: "number", most: "number" },
    "line-set.charge-after-tests": {},
    "line-set.charge-as-labeled": {},
    "line-set.charge-by-weight": { keep: "mass" },
    "line-set.charge-not-known": {},
    "line-set.coil-surplus": { coiled: "length", installed: "length" },
    "line-set.coil-to-minimum": { coiled: "length", installed: "length" },
    "line-set.count-bends": {},
    "line-set.cylinder-not-checked": {},
    "line-set.cylinder-too-small": { room: "mass", mass: "mass" },
    "line-set.drain-falls-outward": {},
    "line-set.drilling": {},
    "line-set.enter-expansion-device": {},
    "line-set.enter-factory-charge": {},
    "line-set.enter-loss": {},
    "line-set.enter-short-line-rule": {},
    "line-set.expansion-indoors": {},
    "line-set.fewer-bends": { most: "number" },
    "line-set.guide-maximum-velocity": { most: "speed" },
    "line-set.guide-minimum-velocity": { least: "speed" },
    "line-set.items-fit": { fill: "ratio" },
    "line-set.kept-as-measured": {
      uncertainty: { either: ["length", "mass", "pressureDifference"] },
      figure: LineSetFigureShape(),
      value: { either: ["length", "mass", "pressureDifference"] },
      limit: { either: ["length", "mass", "pressureDifference"] },
    },
    "line-set.larger-opening": { sleeve: "length" },
    "line-set.lengthen-line": { limit: "length" },
    "line-set.limits-of-the-manual": {},
    "line-set.liquid-only": {},
    "line-set.liquid-velocity-high": { velocity: "speed", most: "speed" },
    "line-set.liquid-velocity-low": { velocity: "speed", least: "speed" },
    "line-set.liquid-velocity-within": { velocity: "speed", least: "speed", most: "speed" },
    "line-set.loss-not-checked": {},
    "line-set.loss-not-known": { limit: "pressureDifference" },
    "line-set.maximum-length-not-checked": {},
    "line-set.measure-better": { figure: LineSetFigureShape() },
    "line-set.measure-subcooling": {},
    "line-set.minimum-length-not-checked": {},
    "line-set.mixed-refrigerants": {},
    "line-set.near-maximum": {
      uncertainty: { either: ["length", "mass", "pressureDifference"] },
      figure: LineSetFigureShape(),
      value: { either: ["length", "mass", "pressureDifference"] },
      limit: { either: ["length", "mass", "pressureDifference"] },
    },
    "line-set.near-minimum": {
      uncertainty: { either: ["length", "mass", "pressureDifference"] },
      figure: LineSetFigureShape(),
      value: { either: ["length", "mass", "pressureDifference"] },
      limit: { either: ["length", "mass", "pressureDifference"] },
    },
    "line-set.never-vent": {},
    "line-set.no-clearance": {},
    "line-set.no-extra-charge": {},
    "line-set.no-heat-gain": {},
    "line-set.no-kinks": {},
    "line-set.no-layout-found": { sleeve: "length" },
    "line-set.no-service-loop": {},
    "line-set.no-slack": {},
    "line-set.no-stock-length": { needed: "length", longest: "length" },
    "line-set.nothing-to-add": { length: "length", preCharged: "length" },
    "line-set.nothing-to-add-in-all": { total: "mass" },
    "line-set.oil-return-open-level": { velocity: "speed", least: "speed" },
    "line-set.oil-return-open-riser": { velocity: "speed", least: "speed", oil: "speed" },
    "line-set.oil-returns": { velocity: "speed", least: "speed" },
    "line-set.oil-stays": { velocity: "speed", oil: "speed" },
    "line-set.opening-too-small": { sleeve: "length" },
    "line-set.other-cylinder": { mass: "mass" },
    "line-set.other-stock": { needed: "length", limit: "length" },
    "line-set.overfilled-cylinder": {},
    "line-set.rate-fits-other-device": {
      rate: "massPerLength",
      full: "massPerLength",
      ratio: "number",
      low: "number",
      high: "number",
    },
    "line-set.rate-implausible": {
      rate: "massPerLength",
      full: "massPerLength",
      ratio: "number",
      low: "number",
      high: "number",
    },
    "line-set.rate-per-foot": {},
    "line-set.rate-per-meter": {},
    "line-set.rate-plausible": {
      rate: "massPerLength",
      full: "massPerLength",
      ratio: "number",
      low: "number",
      high: "number",
    },
    "line-set.rate-too-high": { rate: "massPerLength" },
    "line-set.rate-unit": {},
    "line-set.read-rate-again": {},
    "line-set.recover-all": {},
    "line-set.reduce-charge": { limit: "mass" },
    "line-set.reduce-height": { limit: "length" },
    "line-set.reduce-loss": {},
    "line-set.room-limit-not-checked": {},
    "line-set.round-and-stiff": {},
    "line-set.same-density": {},
    "line-set.saturated-liquid": {},
    "line-set.short-line-rule-not-known": {
      length: "length",
      difference: "length",
      preCharged: "length",
    },
    "line-set.shorten-line": { limit: "length" },
    "line-set.smaller-riser": {},
    "line-set.stock-length": { stock: "length", needed: "length" },
    "line-set.subcooling-enough": {
      available: "temperatureDifference",
      needed: "temperatureDifference",
      loss: "pressureDifference",
    },
    "line-set.subcooling-near": {
      available: "temperatureDifference",
      needed: "temperatureDifference",
      loss: "pressureDifference",
      uncertainty: "temperatureDifference",
    },
    "line-set.subcooling-not-known": {
      needed: "temperatureDifference",
      loss: "pressureDifference",
    },
    "line-set.subcooling-too-low": {
      available: "temperatureDifference",
      needed: "temperatureDifference",
      loss: "pressureDifference",
    },
    "line-set.surplus-to-cut": { surplus: "length" },
    "line-set.take-from-roll": {},
    "line-set.take-out": {
      charge: "mass",
      length: "length",
      difference: "length",
      preCharged: "length",
      rate: "massPerLength",
    },
    "line-set.to-add": { mass: "mass", keep: "mass" },
    "line-set.to-recover": { mass: "mass", keep: "mass" },
    "line-set.total-not-known": { limit: "mass" },
    "line-set.two-phase-liquid-line": {},
    "line-set.vapor-noise": { velocity: "speed", most: "speed" },
    "line-set.viscosity-unit": {},
    "line-set.wider-liquid-line": {},
    "line-set.wider-vapor-line": {},
    "line-set.within-maximum": {
      figure: LineSetFigureShape(),
      value: { either: ["length", "mass", "pressureDifference"] },
      limit: { either: ["length", "mass", "pressureDifference"] },
    },
  }));
}

export function LineSetStatementShape(): Shape {
  return once(LineSetStatementShape, () => ({
    type: "LineSetStatement",
    statements: [LineSetStatements()],
  }));
}

export function ChargeAssessmentCautionsItemShape(): Shape {
  return once(ChargeAssessmentCautionsItemShape, () => ({
    type: "ChargeAssessmentCautionsItem",
    statements: [SafetyStatements(), LineSetStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function ChargeAssessmentShape(): Shape {
  return once(ChargeAssessmentShape, () => ({
    type: "ChargeAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      reasons: { list: LineSetStatementShape() },
      assumptions: { list: LineSetStatementShape() },
      cautions: { list: ChargeAssessmentCautionsItemShape() },
      "actions?": { list: LineSetStatementShape() },
      sources: { list: CitationShape() },
      additionalCharge: "mass",
      unroundedCharge: "mass",
      "totalCharge?": "mass",
      "expandedUncertainty?": "mass",
    },
    docs: {
      "": "The verdict on the added charge: pass when it follows from the rule and breaks no stated limit.",
      outcome: "Proven good, proven bad, or inconclusive.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      additionalCharge:
        "What to add, negative to take out; rounded to the scale's step where that was given.",
      unroundedCharge: "The same before rounding.",
      totalCharge:
        "Factory charge plus additionalCharge, for the label; only where the factory charge was given.",
      expandedUncertainty:
        "Expanded uncertainty (k = 2) of the charge from the lengths and the scale's step (JCGM 100:2008, 5.1.2 and F.2.2.1); only where one of them was given.",
    },
  }));
}

export function TubeSizeShape(): Shape {
  return once(TubeSizeShape, () => ({
    type: "TubeSize",
    fields: { outsideDiameter: "length", wall: "length" },
    docs: {
      "": "Outside diameter and wall of a round tube: all that its volume needs. Measure both when the tube is not marked; tube sold in line sets is often thinner than the standard.",
      outsideDiameter: "Outside diameter, 1 mm to 300 mm.",
      wall: "Wall thickness, more than 0 and less than half the outside diameter.",
    },
  }));
}

export function FrictionLossInputShape(): Shape {
  return once(FrictionLossInputShape, () => ({
    type: "FrictionLossInput",
    fields: {
      tube: TubeSizeShape(),
      massFlow: "massFlow",
      density: "density",
      length: "length",
      viscosityMicropascalSecond: "number",
      "roughness?": "length",
    },
    docs: {
      "": "Single-phase flow with what friction depends on.",
      tube: "Outside diameter and wall.",
      massFlow: "Mass flow of refrigerant, 0 to 200 kg/s.",
      density: "Density in the line, up to 3000 kg/m³.",
      length: "Length of tube with the equivalent length of bends and fittings.",
      viscosityMicropascalSecond:
        "Dynamic viscosity in µPa·s, 1 to 100 000: R410A liquid at 40 °C is about 100, its vapor at 5 °C about 12.5 (from memory).",
      roughness: "Roughness of the bore; drawn copper, 1.5 µm, when left out.",
    },
  }));
}

export function FrictionLossShape(): Shape {
  return once(FrictionLossShape, () => ({
    type: "FrictionLoss",
    fields: {
      pressureLoss: "pressureDifference",
      velocity: "speed",
      reynolds: "number",
      frictionFactor: "number",
    },
    docs: {
      "": "What the flow is like and what it loses.",
      pressureLoss: "Pressure lost to friction.",
      velocity: "Mean velocity.",
      reynolds: "Reynolds number.",
      frictionFactor: "Darcy friction factor.",
    },
  }));
}

export function TubeFlowShape(): Shape {
  return once(TubeFlowShape, () => ({
    type: "TubeFlow",
    fields: { tube: TubeSizeShape(), massFlow: "massFlow", density: "density" },
    docs: {
      "": "Single-phase flow in a tube.",
      tube: "Outside diameter and wall.",
      massFlow: "Mass flow of refrigerant, 0 to 200 kg/s.",
      density: "Density in the line, up to 3000 kg/m³.",
    },
  }));
}

export function FullLineMassInput1Shape(): Shape {
  return once(FullLineMassInput1Shape, () => ({
    type: "FullLineMassInput1",
    fields: { tube: TubeSizeShape(), density: "density", length: "length" },
    docs: {
      tube: "Outside diameter and wall.",
      density: "Density of the refrigerant in it, up to 3000 kg/m³.",
      length: "Length of tube.",
    },
  }));
}

export function FullLineMassInput2Shape(): Shape {
  return once(FullLineMassInput2Shape, () => ({
    type: "FullLineMassInput2",
    fields: {
      tube: TubeSizeShape(),
      refrigerant: byDesignation,
      temperature: "temperature",
      length: "length",
    },
    docs: {
      tube: "Outside diameter and wall.",
      refrigerant: "A refrigerant of hvac-install-math/refrigerants.",
      temperature: "Temperature of the liquid, within the refrigerant's range.",
      length: "Length of tube.",
    },
  }));
}

export function FilledTubeShape(): Shape {
  return once(FilledTubeShape, () => ({
    type: "FilledTube",
    fields: { tube: TubeSizeShape(), density: "density" },
    docs: {
      "": "A tube full of a fluid of one density.",
      tube: "Outside diameter and wall.",
      density: "Density of the refrigerant in it, up to 3000 kg/m³.",
    },
  }));
}

export function LiquidFilledTubeShape(): Shape {
  return once(LiquidFilledTubeShape, () => ({
    type: "LiquidFilledTube",
    fields: { tube: TubeSizeShape(), refrigerant: byDesignation, temperature: "temperature" },
    docs: {
      "": "A tube full of a refrigerant's saturated liquid.",
      tube: "Outside diameter and wall.",
      refrigerant: "A refrigerant of hvac-install-math/refrigerants.",
      temperature: "Temperature of the liquid, within the refrigerant's range.",
    },
  }));
}

export function TubeVolumeInputShape(): Shape {
  return once(TubeVolumeInputShape, () => ({
    type: "TubeVolumeInput",
    fields: { tube: TubeSizeShape(), length: "length" },
  }));
}

export function AstmB280SizeShape(): Shape {
  return once(AstmB280SizeShape, () => ({
    type: "AstmB280Size",
    words: ["1/4", "5/16", "3/8", "1/2", "5/8", "3/4", "7/8", "1-1/8"],
  }));
}

export function AstmB280ChoiceShape(): Shape {
  return once(AstmB280ChoiceShape, () => ({
    type: "AstmB280Choice",
    fields: {
      size: AstmB280SizeShape(),
      temper: { words: ["annealed", "drawn"] },
      "wall?": "length",
    },
    docs: {
      "": "Which tube of ASTM B280.",
      size: "Nominal size in inches.",
      temper: "Soft coil or hard straight length.",
      wall: "Wall, where the standard has two, or where the tube at hand is thinner or thicker.",
    },
  }));
}

export function TubeShape(): Shape {
  return once(TubeShape, () => ({
    type: "Tube",
    fields: {
      outsideDiameter: "length",
      wall: "length",
      designation: "text",
      sources: { list: CitationShape() },
    },
    docs: {
      "": "A tube of a standard.",
      outsideDiameter: "Outside diameter, 1 mm to 300 mm.",
      wall: "Wall thickness, more than 0 and less than half the outside diameter.",
      designation: "Nominal size as the trade says it: 3/8 in, 9.52 mm.",
      sources: "The standard it follows.",
    },
  }));
}

export function FlowConditionShape(): Shape {
  return once(FlowConditionShape, () => ({
    type: "FlowCondition",
    fields: { reynolds: "number", relativeRoughness: "number" },
    docs: {
      "": "Reynolds number and roughness of a flow.",
      reynolds: "Reynolds number, ρ·v·d/μ, more than 0, up to 1e9.",
      relativeRoughness: "Roughness over inside diameter, 0 (smooth) to 0.05.",
    },
  }));
}

export function IdentifyLinesInputShape(): Shape {
  return once(IdentifyLinesInputShape, () => ({
    type: "IdentifyLinesInput",
    fields: {
      a: { either: [TubeSizeShape(), TubeShape()] },
      b: { either: [TubeSizeShape(), TubeShape()] },
    },
  }));
}

export function IdentifyLinesResultShape(): Shape {
  return once(IdentifyLinesResultShape, () => ({
    type: "IdentifyLinesResult",
    fields: {
      liquid: { either: [TubeSizeShape(), TubeShape()] },
      vapor: { either: [TubeSizeShape(), TubeShape()] },
    },
    docs: { liquid: "The smaller tube.", vapor: "The larger tube." },
  }));
}

export function InsulatedDiameterInputShape(): Shape {
  return once(InsulatedDiameterInputShape, () => ({
    type: "InsulatedDiameterInput",
    fields: { tube: TubeSizeShape(), thickness: "length" },
  }));
}

export function RoundItemShape(): Shape {
  return once(RoundItemShape, () => ({
    type: "RoundItem",
    fields: { label: "text", diameter: "length" },
    docs: {
      "": "Something round that goes through. Take the larger dimension of a flat cable.",
      label: "Name for messages and for the layout.",
      diameter: "Outside diameter with insulation.",
    },
  }));
}

export function SmallestSleeveInputShape(): Shape {
  return once(SmallestSleeveInputShape, () => ({
    type: "SmallestSleeveInput",
    fields: { items: { list: RoundItemShape() }, "clearance?": "length" },
  }));
}

export function LineFitInputOpening1Shape(): Shape {
  return once(LineFitInputOpening1Shape, () => ({
    type: "LineFitInputOpening1",
    fields: { diameter: "length" },
  }));
}

export function LineFitInputOpening2Shape(): Shape {
  return once(LineFitInputOpening2Shape, () => ({
    type: "LineFitInputOpening2",
    fields: { width: "length", height: "length" },
    docs: { width: "Inside width of a duct.", height: "Inside height of a duct." },
  }));
}

export function LineFitInputShape(): Shape {
  return once(LineFitInputShape, () => ({
    type: "LineFitInput",
    fields: {
      items: { list: RoundItemShape() },
      opening: { either: [LineFitInputOpening1Shape(), LineFitInputOpening2Shape()] },
      "clearance?": "length",
    },
    docs: {
      "": "What has to go through which opening.",
      items: "Up to eight items.",
      opening: "Inside dimensions.",
      clearance: "Room to keep between items and to the wall; none when left out.",
    },
  }));
}

export function LineFitAssessmentLayoutItemShape(): Shape {
  return once(LineFitAssessmentLayoutItemShape, () => ({
    type: "LineFitAssessmentLayoutItem",
    fields: { label: "text", x: "length", y: "length" },
    docs: { label: "The item's label.", x: "To the right.", y: "Upwards." },
  }));
}

export function LineFitAssessmentShape(): Shape {
  return once(LineFitAssessmentShape, () => ({
    type: "LineFitAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      reasons: { list: LineSetStatementShape() },
      assumptions: { list: LineSetStatementShape() },
      cautions: { list: ChargeAssessmentCautionsItemShape() },
      "actions?": { list: LineSetStatementShape() },
      sources: { list: CitationShape() },
      layout: { list: LineFitAssessmentLayoutItemShape() },
      fill: "number",
    },
    docs: {
      "": "The verdict on the opening.",
      outcome: "Proven good, proven bad, or inconclusive.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      layout:
        "Where each item lies, from the center of a sleeve or from the corner of a duct; empty when none was found.",
      fill: "Share of the opening that the items fill, 0 to 1 and more.",
    },
  }));
}

export function RunLimitsOilTrapsShape(): Shape {
  return once(RunLimitsOilTrapsShape, () => ({
    type: "RunLimitsOilTraps",
    fields: { above: "length", spacing: "length" },
    docs: { above: "Lift that still needs none.", spacing: "Height between traps." },
  }));
}

export function RunLimitsExtraOilShape(): Shape {
  return once(RunLimitsExtraOilShape, () => ({
    type: "RunLimitsExtraOil",
    fields: { beyond: "length", per: "length", volume: "volume" },
    docs: {
      beyond: "Length that the factory's oil covers.",
      per: "Step of length.",
      volume: "Oil for a step.",
    },
  }));
}

export function RunLimitsShape(): Shape {
  return once(RunLimitsShape, () => ({
    type: "RunLimits",
    fields: {
      "maximumLength?": "length",
      "minimumLength?": "length",
      "maximumLift?": "length",
      "maximumLiftOutdoorAbove?": "length",
      "maximumBends?": "number",
      "bendEquivalentLength?": "length",
      "oilTraps?": RunLimitsOilTrapsShape(),
      "extraOil?": RunLimitsExtraOilShape(),
    },
    docs: {
      "": "What the manual allows. Only what is given is checked.",
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
}

export function LineRunInputShape(): Shape {
  return once(LineRunInputShape, () => ({
    type: "LineRunInput",
    fields: {
      length: "length",
      "lengthIs?": { words: ["measured", "nominal"] },
      lift: "length",
      outdoorUnit: { words: ["above", "below", "level"] },
      "bends?": "number",
      "standardUncertainty?": "length",
      limits: RunLimitsShape(),
    },
    docs: {
      "": "The run as it is or will be.",
      length: "Length of tube one way, coils included, 0 to 1000 m.",
      lengthIs:
        "Whether the length was measured, or is the nominal length of a factory-made line set that was not cut; measured when left out. A manual's limits are of nominal lengths, so a nominal length has no uncertainty before them, even where it equals the longest.",
      lift: "Height difference of the units, 0 or more.",
      outdoorUnit: "Where the outdoor unit stands.",
      bends: "Number of bends, a whole number from 0 to 1000.",
      standardUncertainty:
        "Standard uncertainty (k = 1) of what was measured of length and lift, 0 when left out.",
      limits: "What the manual allows.",
    },
  }));
}

export function LineRunAssessmentShape(): Shape {
  return once(LineRunAssessmentShape, () => ({
    type: "LineRunAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      reasons: { list: LineSetStatementShape() },
      assumptions: { list: LineSetStatementShape() },
      cautions: { list: ChargeAssessmentCautionsItemShape() },
      "actions?": { list: LineSetStatementShape() },
      sources: { list: CitationShape() },
      equivalentLength: "length",
      oilTraps: "number",
      extraOil: "volume",
    },
    docs: {
      "": "The verdict on a run.",
      outcome: "Proven good, proven bad, or inconclusive.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      equivalentLength: "Length plus what the bends count for.",
      oilTraps: "Oil traps in the vapor riser by the manual's rule, without the one at its foot.",
      extraOil: "Oil to add by the manual's rule.",
    },
  }));
}

export function LiquidChargePlausibilityInput1Shape(): Shape {
  return once(LiquidChargePlausibilityInput1Shape, () => ({
    type: "LiquidChargePlausibilityInput1",
    fields: {
      tube: TubeSizeShape(),
      density: "density",
      rate: { either: ["massPerLength", MassPerStepShape()] },
      expansionDevice: { words: ["indoor", "outdoor", "not-known"] },
    },
    docs: {
      tube: "Outside diameter and wall.",
      density: "Density of the refrigerant in it, up to 3000 kg/m³.",
      rate: "The nameplate's rate for this size of liquid line.",
      expansionDevice: "Where the unit expands the liquid in cooling.",
    },
  }));
}

export function LiquidChargePlausibilityInput2Shape(): Shape {
  return once(LiquidChargePlausibilityInput2Shape, () => ({
    type: "LiquidChargePlausibilityInput2",
    fields: {
      tube: TubeSizeShape(),
      refrigerant: byDesignation,
      temperature: "temperature",
      rate: { either: ["massPerLength", MassPerStepShape()] },
      expansionDevice: { words: ["indoor", "outdoor", "not-known"] },
    },
    docs: {
      tube: "Outside diameter and wall.",
      refrigerant: "A refrigerant of hvac-install-math/refrigerants.",
      temperature: "Temperature of the liquid, within the refrigerant's range.",
      rate: "The nameplate's rate for this size of liquid line.",
      expansionDevice: "Where the unit expands the liquid in cooling.",
    },
  }));
}

export function LiquidChargePlausibilityShape(): Shape {
  return once(LiquidChargePlausibilityShape, () => ({
    type: "LiquidChargePlausibility",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["per-foot-taken-as-per-meter", "per-meter-taken-as-per-foot"] },
      reasons: { list: LineSetStatementShape() },
      assumptions: { list: LineSetStatementShape() },
      cautions: { list: ChargeAssessmentCautionsItemShape() },
      "actions?": { list: LineSetStatementShape() },
      sources: { list: CitationShape() },
      fullLineRate: "massPerLength",
      ratio: "number",
    },
    docs: {
      "": "The verdict on a rate: pass plausible, inconclusive plausible only with the device elsewhere, fail read the nameplate again.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      fullLineRate: "What the line holds when full of liquid, in the unit of the rate.",
      ratio: "The nameplate's rate over the full line's.",
    },
  }));
}

export function LiquidLineSubcoolingInputShape(): Shape {
  return once(LiquidLineSubcoolingInputShape, () => ({
    type: "LiquidLineSubcoolingInput",
    fields: {
      "available?": "temperatureDifference",
      liquidPressure: "absolutePressure",
      losses: { list: "pressureDifference" },
      margin: "temperatureDifference",
      "standardUncertainty?": "temperatureDifference",
      refrigerant: byDesignation,
    },
    docs: {
      available: "Subcooling found or promised at the outdoor unit.",
      liquidPressure: "Absolute pressure where the liquid leaves the outdoor unit.",
      losses:
        "Every loss on the way: static head (negative where the liquid falls), friction, drier, valve.",
      margin: "Subcooling that shall be left at the expansion device, 0 or more.",
      standardUncertainty: "Standard uncertainty (k = 1) of available, 0 when left out.",
    },
  }));
}

export function LiquidSubcoolingAssessmentShape(): Shape {
  return once(LiquidSubcoolingAssessmentShape, () => ({
    type: "LiquidSubcoolingAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      reasons: { list: LineSetStatementShape() },
      assumptions: { list: LineSetStatementShape() },
      cautions: { list: ChargeAssessmentCautionsItemShape() },
      "actions?": { list: LineSetStatementShape() },
      sources: { list: CitationShape() },
      pressureLoss: "pressureDifference",
      temperatureLoss: "temperatureDifference",
      neededSubcooling: "temperatureDifference",
    },
    docs: {
      "": "The verdict on the subcooling.",
      outcome: "Proven good, proven bad, or inconclusive.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      pressureLoss: "Sum of the losses.",
      temperatureLoss: "What the losses cost in bubble temperature; negative for a gain.",
      neededSubcooling: "Loss, where it is one, plus margin.",
    },
  }));
}

export function LiquidVelocityInputShape(): Shape {
  return once(LiquidVelocityInputShape, () => ({
    type: "LiquidVelocityInput",
    fields: {
      tube: TubeSizeShape(),
      massFlow: "massFlow",
      density: "density",
      solenoidValve: "flag",
      "pressureLoss?": "pressureDifference",
      "maximumLoss?": "pressureDifference",
    },
    docs: {
      "": "The liquid line at full capacity.",
      tube: "Outside diameter and wall.",
      massFlow: "Mass flow of refrigerant, 0 to 200 kg/s.",
      density: "Density in the line, up to 3000 kg/m³.",
      solenoidValve:
        "Whether a solenoid valve closes the line: then 300 ft/min is the most, against liquid hammer.",
      pressureLoss: "Loss of friction, head and fittings together.",
      maximumLoss: "Most that the manual or guideLosses allows.",
    },
  }));
}

export function LiquidVelocityAssessmentShape(): Shape {
  return once(LiquidVelocityAssessmentShape, () => ({
    type: "LiquidVelocityAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      reasons: { list: LineSetStatementShape() },
      assumptions: { list: LineSetStatementShape() },
      cautions: { list: ChargeAssessmentCautionsItemShape() },
      "actions?": { list: LineSetStatementShape() },
      sources: { list: CitationShape() },
      velocity: "speed",
    },
    docs: {
      "": "The verdict on the liquid line.",
      outcome: "Proven good, proven bad, or inconclusive.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      velocity: "Mean velocity.",
    },
  }));
}

export function En12735SizeShape(): Shape {
  return once(En12735SizeShape, () => ({
    type: "En12735Size",
    words: [12, 6, 8, 10, 15, 16, 18, 22, 28, 6.35, 7.94, 9.52, 12.7, 15.87, 19.06, 22.2, 28.57],
  }));
}

export function En12735TubeInputShape(): Shape {
  return once(En12735TubeInputShape, () => ({
    type: "En12735TubeInput",
    fields: { size: En12735SizeShape(), wall: "length" },
  }));
}

export function JisH3300SizeShape(): Shape {
  return once(JisH3300SizeShape, () => ({
    type: "JisH3300Size",
    words: ["6.35", "9.52", "12.70", "15.88", "19.05"],
  }));
}

export function JisH3300TubeInputShape(): Shape {
  return once(JisH3300TubeInputShape, () => ({
    type: "JisH3300TubeInput",
    fields: { size: JisH3300SizeShape(), "wall?": "length" },
  }));
}

export function IndoorUnitLineShape(): Shape {
  return once(IndoorUnitLineShape, () => ({
    type: "IndoorUnitLine",
    fields: {
      length: "length",
      rate: { either: ["massPerLength", MassPerStepShape()] },
      "preChargedLength?": "length",
      "allowance?": "mass",
    },
    docs: {
      "": "The liquid line of one indoor unit.",
      length: "Length of liquid line as installed, one way.",
      rate: "Mass per length for this size of liquid line.",
      preChargedLength:
        "Length that the factory charge covers on this line; leave out when one covers the sum.",
      allowance:
        "Mass that the manual adds for this indoor unit, or takes off (negative), whatever the length.",
    },
  }));
}

export function MultiSplitChargeInputShape(): Shape {
  return once(MultiSplitChargeInputShape, () => ({
    type: "MultiSplitChargeInput",
    fields: {
      "factoryCharge?": "mass",
      "maximumLength?": "length",
      "minimumLength?": "length",
      "maximumCharge?": "mass",
      "scaleResolution?": "mass",
      "lengthUncertainty?": "length",
      "safetyClass?": { words: ["A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3"] },
      lines: { list: IndoorUnitLineShape() },
      "preChargedTotal?": "length",
      "allowance?": "mass",
      shortLineRule: ShortLineRuleShape(),
    },
    docs: {
      "": "Several indoor units on one outdoor unit.",
      factoryCharge: "Charge that the unit came with, for the total on the label.",
      maximumLength: "Longest run (all lines together) that the manual allows.",
      minimumLength: "Shortest run that the manual allows.",
      maximumCharge:
        "Most that the unit or the room may hold, from the manual or from the room limit for flammables.",
      scaleResolution: "Smallest step of the scale; the answer is rounded to it.",
      lengthUncertainty:
        "Standard uncertainty (k = 1) of each length; taken as exact when left out.",
      safetyClass: "Safety class of the refrigerant, for the cautions.",
      lines: "One entry per indoor unit.",
      preChargedTotal:
        "Length that the factory charge covers for the sum of all lines; needs one rate for all.",
      allowance:
        "Mass that the manual adds for the system as a whole, or takes off (negative): for ports that stay unused, or what the factory put in for a line of its own where rate counts for the whole length.",
      shortLineRule: "What happens below the pre-charged length, from the manual.",
    },
  }));
}

export function RateRowShape(): Shape {
  return once(RateRowShape, () => ({
    type: "RateRow",
    fields: { outsideDiameter: "length", rate: { either: ["massPerLength", MassPerStepShape()] } },
    docs: {
      "": "A row of the nameplate's table of rates.",
      outsideDiameter: "Outside diameter of the liquid line, metric or in inches.",
      rate: "Rate for this size.",
    },
  }));
}

export function RateForLiquidLineInputShape(): Shape {
  return once(RateForLiquidLineInputShape, () => ({
    type: "RateForLiquidLineInput",
    fields: { rows: { list: RateRowShape() }, tube: TubeSizeShape() },
  }));
}

export function LineContentsInputShape(): Shape {
  return once(LineContentsInputShape, () => ({
    type: "LineContentsInput",
    fields: {
      liquid: { either: [FilledTubeShape(), LiquidFilledTubeShape()] },
      vapor: FilledTubeShape(),
      length: "length",
    },
    docs: { liquid: "Liquid line.", vapor: "Vapor line.", length: "Length of both, one way." },
  }));
}

export function LineContentsShape(): Shape {
  return once(LineContentsShape, () => ({
    type: "LineContents",
    fields: { liquid: "mass", vapor: "mass", total: "mass" },
    docs: {
      "": "What the two lines hold.",
      liquid: "Mass in the liquid line.",
      vapor: "Mass in the vapor line.",
      total: "Both.",
    },
  }));
}

export function RecoveryInputCylinderShape(): Shape {
  return once(RecoveryInputCylinderShape, () => ({
    type: "RecoveryInputCylinder",
    fields: { maximumFill: "mass", contents: "mass" },
    docs: {
      maximumFill: "Most refrigerant that may be in it, as marked for this refrigerant.",
      contents: "What is in it already.",
    },
  }));
}

export function RecoveryInputShape(): Shape {
  return once(RecoveryInputShape, () => ({
    type: "RecoveryInput",
    fields: {
      "chargeInSystem?": "mass",
      chargeToKeep: "mass",
      "cylinder?": RecoveryInputCylinderShape(),
      "safetyClass?": { words: ["A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3"] },
    },
    docs: {
      "": "A system that is opened, moved or taken away.",
      chargeInSystem:
        "Total charge by the label; leave out when it is not known or some has leaked.",
      chargeToKeep:
        "Charge that the system shall have afterwards: 0 to take it away, the new total for another line length.",
      cylinder: "Recovery cylinder.",
      safetyClass: "Safety class of the refrigerant, for the cautions.",
    },
  }));
}

export function RecoveryAssessmentShape(): Shape {
  return once(RecoveryAssessmentShape, () => ({
    type: "RecoveryAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      reasons: { list: LineSetStatementShape() },
      assumptions: { list: LineSetStatementShape() },
      cautions: { list: ChargeAssessmentCautionsItemShape() },
      "actions?": { list: LineSetStatementShape() },
      sources: { list: CitationShape() },
      "toRecover?": "mass",
      "toAdd?": "mass",
      "cylinderRoom?": "mass",
    },
    docs: {
      "": "The verdict on a recovery.",
      outcome: "Proven good, proven bad, or inconclusive.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      toRecover: "Mass to take out; absent when the charge is not known.",
      toAdd: "Mass to add where the system shall hold more; absent when the charge is not known.",
      cylinderRoom: "What the cylinder still takes, where one was given.",
    },
  }));
}

export function LiquidColumnShape(): Shape {
  return once(LiquidColumnShape, () => ({
    type: "LiquidColumn",
    fields: { density: "density", lift: "length" },
    docs: {
      "": "A column of liquid.",
      density: "Density of the liquid, up to 3000 kg/m³.",
      lift: "How far the liquid rises to the indoor unit, −300 m to 300 m; negative where it falls.",
    },
  }));
}

export function StockLengthInputShape(): Shape {
  return once(StockLengthInputShape, () => ({
    type: "StockLengthInput",
    fields: {
      run: "length",
      "slack?": "length",
      "serviceLoop?": "length",
      stock: { list: "length" },
      cuttable: "flag",
      "minimumLength?": "length",
      "maximumLength?": "length",
    },
    docs: {
      "": "The run and the line sets at hand.",
      run: "Length of the way along the wall, bends followed.",
      slack:
        "Extra for measuring and making ends, for instance 3 % of the run or a foot; none when left out.",
      serviceLoop:
        "Extra kept as a loop so that the unit can be moved for service; none when left out.",
      stock: "The lengths in which the set can be bought.",
      cuttable: "Whether the set can be cut: false for sets that come charged or with fixed ends.",
      minimumLength: "Shortest length that the unit's manual allows.",
      maximumLength: "Longest length that the unit's manual allows.",
    },
  }));
}

export function StockLengthAssessmentShape(): Shape {
  return once(StockLengthAssessmentShape, () => ({
    type: "StockLengthAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      reasons: { list: LineSetStatementShape() },
      assumptions: { list: LineSetStatementShape() },
      cautions: { list: ChargeAssessmentCautionsItemShape() },
      "actions?": { list: LineSetStatementShape() },
      sources: { list: CitationShape() },
      neededLength: "length",
      "stockLength?": "length",
      "surplus?": "length",
      "surplusUse?": { words: ["none", "cut", "coil"] },
      "installedLength?": "length",
    },
    docs: {
      "": "The verdict on the stock.",
      outcome: "Proven good, proven bad, or inconclusive.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      neededLength:
        "Run, slack and loop together, or the manual's shortest length where that is more.",
      stockLength: "The shortest stock length that will do; absent when none does.",
      surplus: "Stock length less needed length.",
      surplusUse: "cut it off, coil it, or nothing is left.",
      installedLength:
        "Length of tube that ends up installed: the one to reckon the added charge with.",
    },
  }));
}

export function RefrigerantMassFlowInputShape(): Shape {
  return once(RefrigerantMassFlowInputShape, () => ({
    type: "RefrigerantMassFlowInput",
    fields: { capacity: "power", enthalpyDifference: "specificEnergy" },
    docs: {
      capacity: "Cooling capacity.",
      enthalpyDifference:
        "Enthalpy of the vapor leaving less that of the liquid entering the evaporator.",
    },
  }));
}

export function OilRiserShape(): Shape {
  return once(OilRiserShape, () => ({
    type: "OilRiser",
    fields: { tube: TubeSizeShape(), vaporDensity: "density", oilDensity: "density" },
    docs: {
      "": "What decides whether oil climbs a riser.",
      tube: "Outside diameter and wall.",
      vaporDensity: "Density of the vapor, up to 500 kg/m³.",
      oilDensity: "Density of the oil with refrigerant in it, about 900 to 1050 kg/m³.",
    },
  }));
}

export function VaporLineInputShape(): Shape {
  return once(VaporLineInputShape, () => ({
    type: "VaporLineInput",
    fields: {
      tube: TubeSizeShape(),
      vaporDensity: "density",
      oilDensity: "density",
      direction: { words: ["horizontal", "riser"] },
      fullMassFlow: "massFlow",
      minimumMassFlow: "massFlow",
      "minimumVelocity?": "speed",
      "maximumVelocity?": "speed",
    },
    docs: {
      "": "The vapor line at full and at least capacity.",
      tube: "Outside diameter and wall.",
      vaporDensity: "Density of the vapor, up to 500 kg/m³.",
      oilDensity: "Density of the oil with refrigerant in it, about 900 to 1050 kg/m³.",
      direction: "Whether the vapor climbs: riser where the outdoor unit is above in cooling.",
      fullMassFlow: "Mass flow at full capacity.",
      minimumMassFlow:
        "Mass flow at the least capacity to which an inverter turns down; full again for a single speed.",
      minimumVelocity:
        "Least velocity by the manual; 800 ft/min horizontal and 1000 ft/min in a riser when left out.",
      maximumVelocity: "Largest velocity for noise by the manual; 3000 ft/min when left out.",
    },
  }));
}

export function VaporLineAssessmentShape(): Shape {
  return once(VaporLineAssessmentShape, () => ({
    type: "VaporLineAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      reasons: { list: LineSetStatementShape() },
      assumptions: { list: LineSetStatementShape() },
      cautions: { list: ChargeAssessmentCautionsItemShape() },
      "actions?": { list: LineSetStatementShape() },
      sources: { list: CitationShape() },
      fullVelocity: "speed",
      minimumCapacityVelocity: "speed",
      entrainmentVelocity: "speed",
    },
    docs: {
      "": "The verdict on the vapor line.",
      outcome: "Proven good, proven bad, or inconclusive.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      fullVelocity: "Velocity at full capacity.",
      minimumCapacityVelocity: "Velocity at least capacity.",
      entrainmentVelocity: "Least velocity that carries oil up a riser.",
    },
  }));
}
