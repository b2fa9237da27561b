// Which shapes have the types of condensate?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { once } from "../../quantity/later.ts";
import type { Shape, StatementTable } from "../../shapes/index.ts";
import { EstimateOfRatioShape, SafetyStatements } from "./assessment.shapes.ts";
import { CitationShape } from "./refrigerants.shapes.ts";

export function DrainRouteShape(): Shape {
  return once(DrainRouteShape, () => ({
    type: "DrainRoute",
    fields: {
      "outdoors?": "flag",
      "lowestOutdoorTemperature?": "temperature",
      "aboveFinishedSpace?": "flag",
      "pumped?": "flag",
    },
    docs: {
      "": "Where a drain runs. What is left out counts as possible.",
      outdoors: "Whether part of it is outdoors.",
      lowestOutdoorTemperature: "Coldest outdoor temperature to be expected.",
      aboveFinishedSpace: "Whether the unit hangs above finished space.",
      pumped: "Whether a pump lifts the water.",
    },
  }));
}

export function CondensateStatements(): StatementTable {
  return once(CondensateStatements, () => ({
    "condensate.ask-code": { required: "ratio" },
    "condensate.code-slope": { slope: "ratio" },
    "condensate.codes-differ": {
      slope: "ratio",
      uncertainty: "ratio",
      required: "ratio",
      least: "ratio",
    },
    "condensate.discharge": {},
    "condensate.dry-trap": {},
    "condensate.exact-instrument": {},
    "condensate.fall-short": { shortfall: "length", point: "number" },
    "condensate.falls-enough": { slope: "ratio", uncertainty: "ratio", required: "ratio" },
    "condensate.falls-too-little": { slope: "ratio", uncertainty: "ratio", required: "ratio" },
    "condensate.flatter-than-code": { least: "ratio" },
    "condensate.freezing": {},
    "condensate.gravity": { available: "length", needed: "length" },
    "condensate.increase-fall": { fall: "length", run: "length" },
    "condensate.increase-slope": { required: "ratio" },
    "condensate.level-is-enough": {},
    "condensate.lower-pitch": { maximum: "ratio" },
    "condensate.lower-point": { shortfall: "length", point: "number", lift: "length" },
    "condensate.maximum-pitch-not-checked": {},
    "condensate.measure-better": {},
    "condensate.other-pump": { lift: "length", required: "volumeFlow" },
    "condensate.overflow": {},
    "condensate.pitch-away": { pitch: "ratio", uncertainty: "ratio", minimum: "ratio" },
    "condensate.pitch-enough": { pitch: "ratio", uncertainty: "ratio", minimum: "ratio" },
    "condensate.pitch-near": { pitch: "ratio", uncertainty: "ratio" },
    "condensate.pitch-too-little": { pitch: "ratio", uncertainty: "ratio", minimum: "ratio" },
    "condensate.pitch-too-much": { pitch: "ratio", uncertainty: "ratio", maximum: "ratio" },
    "condensate.pitch-within": {
      pitch: "ratio",
      uncertainty: "ratio",
      minimum: "ratio",
      maximum: "ratio",
    },
    "condensate.pump-curve-straight": {},
    "condensate.pump-failure": {},
    "condensate.pump-keeps-up": { lift: "length", flow: "volumeFlow", required: "volumeFlow" },
    "condensate.pump-lift-too-high": { lift: "length", highest: "length" },
    "condensate.pump-margin": { margin: "number" },
    "condensate.pump-too-slow": { lift: "length", flow: "volumeFlow", required: "volumeFlow" },
    "condensate.raise-pitch": { minimum: "ratio" },
    "condensate.rises": { slope: "ratio", uncertainty: "ratio", required: "ratio" },
    "condensate.slope-near": { slope: "ratio", uncertainty: "ratio", required: "ratio" },
    "condensate.steep": { slope: "ratio", usual: "ratio" },
    "condensate.straight": {},
    "condensate.sunlight": {},
    "condensate.sweating": {},
  }));
}

export function CondensateCautionShape(): Shape {
  return once(CondensateCautionShape, () => ({
    type: "CondensateCaution",
    statements: [SafetyStatements(), CondensateStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function MinimumFallInputShape(): Shape {
  return once(MinimumFallInputShape, () => ({
    type: "MinimumFallInput",
    fields: { run: "length", "slope?": "ratio" },
    docs: { run: "Horizontal length of the drain.", slope: "Slope asked for." },
  }));
}

export function SlopeOfInput1Shape(): Shape {
  return once(SlopeOfInput1Shape, () => ({
    type: "SlopeOfInput1",
    fields: { slope: "ratio", "accuracy?": "ratio" },
    docs: {
      slope: "From a digital level that shows per cent or mm/m.",
      accuracy: "Limits of error, ±.",
    },
  }));
}

export function SlopeOfInput2Shape(): Shape {
  return once(SlopeOfInput2Shape, () => ({
    type: "SlopeOfInput2",
    fields: { angle: "angle", "accuracy?": "angle" },
    docs: { angle: "From a digital level that shows degrees.", accuracy: "Limits of error, ±." },
  }));
}

export function SlopeOfInput3Shape(): Shape {
  return once(SlopeOfInput3Shape, () => ({
    type: "SlopeOfInput3",
    fields: { gap: "length", levelLength: "length", "accuracy?": "length" },
    docs: {
      gap: "Gap below a spirit level when its bubble is centerd.",
      levelLength: "Length of that level.",
      accuracy: "Limits of error of the gap, ±.",
    },
  }));
}

export function SlopeOfInput4Shape(): Shape {
  return once(SlopeOfInput4Shape, () => ({
    type: "SlopeOfInput4",
    fields: {
      heightAtStart: "length",
      heightAtEnd: "length",
      run: "length",
      "accuracy?": "length",
    },
    docs: {
      heightAtStart: "Height where the water starts, from a datum such as a laser line.",
      heightAtEnd: "Height where it leaves, from the same datum.",
      run: "Horizontal distance between the two.",
      accuracy: "Limits of error of each height, ±.",
    },
  }));
}

export function SlopeOfInputShape(): Shape {
  return once(SlopeOfInputShape, () => ({
    type: "SlopeOfInput",
    either: [
      SlopeOfInput1Shape(),
      SlopeOfInput2Shape(),
      SlopeOfInput3Shape(),
      SlopeOfInput4Shape(),
    ],
  }));
}

export function AirStateShape(): Shape {
  return once(AirStateShape, () => ({
    type: "AirState",
    fields: {
      dryBulb: "temperature",
      "relativeHumidity?": "ratio",
      "wetBulb?": "temperature",
      "dewPoint?": "temperature",
    },
    docs: {
      "": "The state of air: its dry-bulb temperature, 0 to 60 °C, and one measure of its moisture. Name one.",
      dryBulb: "Temperature of the air, 0 to 60 °C.",
      relativeHumidity: "Relative humidity, above 0 to 100 %.",
      wetBulb: "Thermodynamic wet-bulb temperature, 0 °C to the dry bulb.",
      dewPoint: "Dew point, 0 °C to the dry bulb.",
    },
  }));
}

export function HumidityRatioInputShape(): Shape {
  return once(HumidityRatioInputShape, () => ({
    type: "HumidityRatioInput",
    fields: { air: AirStateShape(), atmosphere: "absolutePressure" },
  }));
}

export function PumpPointShape(): Shape {
  return once(PumpPointShape, () => ({
    type: "PumpPoint",
    fields: { lift: "length", flow: "volumeFlow" },
    docs: {
      "": "A point of a pump's curve.",
      lift: "Lift, 0 or more.",
      flow: "Flow at that lift, 0 or more.",
    },
  }));
}

export function CondensatePumpInputShape(): Shape {
  return once(CondensatePumpInputShape, () => ({
    type: "CondensatePumpInput",
    fields: {
      condensate: "volumeFlow",
      lift: "length",
      curve: { list: PumpPointShape() },
      "reservoir?": "volume",
      "margin?": "number",
    },
    docs: {
      "": "A condensate pump and what it has to do.",
      condensate: "Water that comes, above 0: from condensateRate, at the wettest conditions.",
      lift: "Height from the water to the highest point of the hose, 0 or more.",
      curve: "At least two points, by rising lift, the flow not rising.",
      reservoir: "Volume between the switch points of its float, above 0.",
      margin: "How many times the condensate the pump has to move, 1 or more; 2 when left out.",
    },
  }));
}

export function CondensateStatementShape(): Shape {
  return once(CondensateStatementShape, () => ({
    type: "CondensateStatement",
    statements: [CondensateStatements()],
  }));
}

export function CondensatePumpAssessmentCautionsItemShape(): Shape {
  return once(CondensatePumpAssessmentCautionsItemShape, () => ({
    type: "CondensatePumpAssessmentCautionsItem",
    statements: [SafetyStatements(), CondensateStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function CondensatePumpAssessmentShape(): Shape {
  return once(CondensatePumpAssessmentShape, () => ({
    type: "CondensatePumpAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["lift-too-high", "too-slow"] },
      reasons: { list: CondensateStatementShape() },
      assumptions: { list: CondensateStatementShape() },
      cautions: { list: CondensatePumpAssessmentCautionsItemShape() },
      "actions?": { list: CondensateStatementShape() },
      sources: { list: CitationShape() },
      flowAtLift: "volumeFlow",
      requiredFlow: "volumeFlow",
      "dutyCycle?": "ratio",
      "startInterval?": "duration",
    },
    docs: {
      "": "The verdict on a condensate pump.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      flowAtLift: "Flow at the lift; 0 beyond the curve.",
      requiredFlow: "Flow that is needed: margin times condensate.",
      dutyCycle:
        "Share of the time that the pump runs; only where it moves more than the condensate.",
      startInterval:
        "Time from start to start; only where a reservoir was given and the pump moves more than the condensate.",
    },
  }));
}

export function SlopeReadingShape(): Shape {
  return once(SlopeReadingShape, () => ({
    type: "SlopeReading",
    either: [
      SlopeOfInput1Shape(),
      SlopeOfInput2Shape(),
      SlopeOfInput3Shape(),
      SlopeOfInput4Shape(),
    ],
  }));
}

export function DrainSlopeInputShape(): Shape {
  return once(DrainSlopeInputShape, () => ({
    type: "DrainSlopeInput",
    fields: {
      reading: SlopeReadingShape(),
      "required?": "ratio",
      "run?": "length",
      "route?": DrainRouteShape(),
      "confidence?": "number",
    },
    docs: {
      "": "A drain and its measured slope.",
      reading: "The measured slope, positive where it falls in the direction of flow.",
      required:
        "The slope asked for, 0.5 % to 100 %. When left out: 1/8 in per foot passes, less than 1 % fails.",
      run: "Horizontal length of the drain; with it the verdict says how much fall is missing.",
      route: "Where it runs, for the cautions.",
      confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
    },
  }));
}

export function DrainSlopeAssessmentShape(): Shape {
  return once(DrainSlopeAssessmentShape, () => ({
    type: "DrainSlopeAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["rises", "too-flat"] },
      reasons: { list: CondensateStatementShape() },
      assumptions: { list: CondensateStatementShape() },
      cautions: { list: CondensatePumpAssessmentCautionsItemShape() },
      "actions?": { list: CondensateStatementShape() },
      sources: { list: CitationShape() },
      slope: EstimateOfRatioShape(),
      required: "ratio",
      "missingFall?": "length",
    },
    docs: {
      "": "The verdict on the slope of a drain.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      slope: "The slope found; positive falls.",
      required: "The slope asked for.",
      missingFall: "How much more the drain has to fall over the run; only where a run was given.",
    },
  }));
}

export function IndoorUnitPitchInputShape(): Shape {
  return once(IndoorUnitPitchInputShape, () => ({
    type: "IndoorUnitPitchInput",
    fields: {
      reading: SlopeReadingShape(),
      "minimum?": "ratio",
      "maximum?": "ratio",
      "confidence?": "number",
    },
    docs: {
      "": "An indoor unit and its measured pitch.",
      reading:
        "The measured slope along the case: positive falls toward the drain; start is the far side.",
      minimum: "Least pitch toward the drain in the manual; 0 (level) when left out.",
      maximum: "Largest pitch in the manual; none when left out.",
      confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
    },
  }));
}

export function IndoorUnitPitchAssessmentShape(): Shape {
  return once(IndoorUnitPitchAssessmentShape, () => ({
    type: "IndoorUnitPitchAssessment",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["away-from-drain", "too-little", "too-much"] },
      reasons: { list: CondensateStatementShape() },
      assumptions: { list: CondensateStatementShape() },
      cautions: { list: CondensatePumpAssessmentCautionsItemShape() },
      "actions?": { list: CondensateStatementShape() },
      sources: { list: CitationShape() },
      pitch: EstimateOfRatioShape(),
    },
    docs: {
      "": "The verdict on the pitch of an indoor unit.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      pitch: "The pitch found; positive falls toward the drain.",
    },
  }));
}

export function CoilAirShape(): Shape {
  return once(CoilAirShape, () => ({
    type: "CoilAir",
    fields: {
      entering: AirStateShape(),
      leaving: AirStateShape(),
      airFlow: "volumeFlow",
      atmosphere: "absolutePressure",
    },
    docs: {
      "": "Air through a cooling coil.",
      entering: "Air that enters the coil.",
      leaving: "Air that leaves the coil, not warmer and not wetter.",
      airFlow: "Volume flow of the air as it enters, above 0.",
      atmosphere: "Atmospheric pressure on site, 30 to 120 kPa.",
    },
  }));
}

export function CondensateRateShape(): Shape {
  return once(CondensateRateShape, () => ({
    type: "CondensateRate",
    fields: {
      massFlow: "massFlow",
      volumeFlow: "volumeFlow",
      dryAirFlow: "massFlow",
      enteringHumidityRatio: "ratio",
      leavingHumidityRatio: "ratio",
      totalCooling: "power",
      sensibleHeatRatio: "ratio",
      isDry: "flag",
    },
    docs: {
      "": "What a cooling coil takes from the air.",
      massFlow: "By mass.",
      volumeFlow: "By volume, at 20 °C.",
      dryAirFlow: "Dry air through the coil.",
      enteringHumidityRatio: "Water per dry air before the coil.",
      leavingHumidityRatio: "Water per dry air behind the coil.",
      totalCooling: "Heat taken from the air, after the heat that leaves with the condensate.",
      sensibleHeatRatio: "Share of it that only cools.",
      isDry:
        "Whether the coil is dry: the leaving air is as wet as the entering, as far as hygrometers tell.",
    },
  }));
}

export function CondensateFromLoadInputShape(): Shape {
  return once(CondensateFromLoadInputShape, () => ({
    type: "CondensateFromLoadInput",
    fields: { totalCooling: "power", sensibleHeatRatio: "ratio" },
    docs: {
      totalCooling: "Total cooling, sensible and latent.",
      sensibleHeatRatio: "Share of it that only cools.",
    },
  }));
}

export function CondensateFlowShape(): Shape {
  return once(CondensateFlowShape, () => ({
    type: "CondensateFlow",
    fields: { massFlow: "massFlow", volumeFlow: "volumeFlow" },
    docs: { "": "Water per time.", massFlow: "By mass.", volumeFlow: "By volume, at 20 °C." },
  }));
}

export function CondensateRuleOfThumbResultShape(): Shape {
  return once(CondensateRuleOfThumbResultShape, () => ({
    type: "CondensateRuleOfThumbResult",
    fields: { low: "volumeFlow", high: "volumeFlow" },
    docs: { low: "0.3 gal/h per ton.", high: "0.8 gal/h per ton." },
  }));
}

export function CondensateTrapInputShape(): Shape {
  return once(CondensateTrapInputShape, () => ({
    type: "CondensateTrapInput",
    fields: { staticPressure: "pressureDifference", "margin?": "length" },
    docs: {
      staticPressure: "Static pressure at the pan less that of the room.",
      margin:
        "Seal beyond the static pressure of a blow-through coil, 0 or more; 1 in when left out.",
    },
  }));
}

export function CondensateTrapShape(): Shape {
  return once(CondensateTrapShape, () => ({
    type: "CondensateTrap",
    fields: {
      kind: { words: ["none", "draw-through", "blow-through"] },
      outletDrop: "length",
      seal: "length",
      height: "length",
      cautions: { list: CondensateCautionShape() },
      citations: { list: CitationShape() },
    },
    docs: {
      "": "The trap that a pan needs.",
      kind: "Whether the fan sucks at the pan, blows into it, or neither.",
      outletDrop:
        "From the pan's outlet down to the trap's outlet, at least; 0 where the manual gives no figure.",
      seal: "Water in the trap below its outlet, at least.",
      height:
        "From the pan's outlet down to the bottom of the trap, about, without the pipe's own diameter.",
      cautions: "What to heed.",
      citations: "Where it stands.",
    },
  }));
}

export function DrainSizeInputShape(): Shape {
  return once(DrainSizeInputShape, () => ({
    type: "DrainSizeInput",
    fields: { capacity: "power", "outletDiameter?": "length" },
    docs: {
      capacity: "Cooling capacity of all units on the drain.",
      outletDiameter: "Diameter of the pan's outlet, nominal.",
    },
  }));
}

export function DrainSizeShape(): Shape {
  return once(DrainSizeShape, () => ({
    type: "DrainSize",
    fields: {
      nominal: "length",
      decidedBy: { words: ["capacity", "outlet"] },
      cautions: { list: CondensateCautionShape() },
      citation: CitationShape(),
    },
    docs: {
      "": "The size of a condensate drain.",
      nominal: "Nominal size, in.",
      decidedBy: "Whether the capacity or the pan's outlet decides.",
      cautions: "What overrides it.",
      citation: "Where it stands.",
    },
  }));
}

export function DrainPointShape(): Shape {
  return once(DrainPointShape, () => ({
    type: "DrainPoint",
    fields: { distance: "length", height: "length" },
    docs: {
      "": "A point that a drain goes through.",
      distance:
        "Horizontal distance from the outlet along the drain, 0 or more, not less than the point before.",
      height: "Height of the pipe above the same datum as the outlet.",
    },
  }));
}

export function DrainPlanInputShape(): Shape {
  return once(DrainPlanInputShape, () => ({
    type: "DrainPlanInput",
    fields: {
      outletHeight: "length",
      points: { list: DrainPointShape() },
      "slope?": "ratio",
      "route?": DrainRouteShape(),
    },
    docs: {
      "": "A drain to be run.",
      outletHeight: "Height of the pan outlet, or of the trap's outlet where there is a trap.",
      points:
        "The points that the drain has to go through, in the direction of flow; the last is the discharge.",
      slope: "Slope asked for, 0.5 % to 100 %; 1/8 in per foot when left out.",
      route: "Where it runs, for the cautions.",
    },
  }));
}

export function DrainPlanShape(): Shape {
  return once(DrainPlanShape, () => ({
    type: "DrainPlan",
    fields: {
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["needs-pump"] },
      reasons: { list: CondensateStatementShape() },
      assumptions: { list: CondensateStatementShape() },
      cautions: { list: CondensatePumpAssessmentCautionsItemShape() },
      "actions?": { list: CondensateStatementShape() },
      sources: { list: CitationShape() },
      method: { words: ["gravity", "pump"] },
      availableFall: "length",
      neededFall: "length",
      shortfall: "length",
      "worstPoint?": "number",
      lift: "length",
    },
    docs: {
      "": "How the water gets away.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      method: "By its own weight or by a pump.",
      availableFall: "From the outlet down to the discharge; negative where it lies higher.",
      neededFall: "Slope times the whole run.",
      shortfall: "How much fall the worst stretch lacks; 0 for gravity.",
      worstPoint:
        "Position in points of the end of the worst stretch; only where a pump is needed.",
      lift: "How high a pump has to lift: from the outlet to the highest point, 0 or more.",
    },
  }));
}
