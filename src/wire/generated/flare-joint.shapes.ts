// Which shapes have the types of flare-joint?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import { once } from "../../quantity/later.ts";
import type { Shape, StatementTable } from "../../shapes/index.ts";
import {
  EstimateOfAngleShape,
  EstimateOfLengthShape,
  EstimateOfTorqueShape,
  InstrumentOfAngleShape,
  InstrumentOfLengthShape,
  SafetyStatements,
  VerbatimShape,
} from "./assessment.shapes.ts";
import { CitationShape } from "./refrigerants.shapes.ts";

export function FlareTubeShape(): Shape {
  return once(FlareTubeShape, () => ({
    type: "FlareTube",
    words: [
      "1/4",
      "5/16",
      "3/8",
      "1/2",
      "5/8",
      "3/4",
      "6 mm",
      "8 mm",
      "10 mm",
      "12 mm",
      "15 mm",
      "18 mm",
    ],
  }));
}

export function FlareConeInputShape(): Shape {
  return once(FlareConeInputShape, () => ({
    type: "FlareConeInput",
    fields: {
      seatAngle: "angle",
      "protractor?": InstrumentOfAngleShape(),
      "confidence?": "number",
    },
    docs: {
      "": "A measured flare cone.",
      seatAngle:
        "Angle between the flare's face and the tube's axis, above 0: half of the total angle.",
      protractor: "What is known of the protractor; counted as exact when left out.",
      confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
    },
  }));
}

export function FlareAssessmentOfAngleFlareConeCauseWindowShape(): Shape {
  return once(FlareAssessmentOfAngleFlareConeCauseWindowShape, () => ({
    type: "FlareAssessmentOfAngleFlareConeCauseWindow",
    fields: { "low?": "angle", "high?": "angle" },
    docs: { low: "Smallest figure allowed.", high: "Largest figure allowed." },
  }));
}

export function FlareJointFigureShape(): Shape {
  return once(FlareJointFigureShape, () => ({
    type: "FlareJointFigure",
    words: [
      "flare-joint.figure.wall",
      "flare-joint.figure.torque",
      "flare-joint.figure.turn",
      "flare-joint.figure.diameter",
      "flare-joint.figure.seat-angle",
    ],
  }));
}

export function FlareJointSourceShape(): Shape {
  return once(FlareJointSourceShape, () => ({
    type: "FlareJointSource",
    words: [
      "flare-joint.source.en-378-2",
      "flare-joint.source.jis-type-manuals",
      "flare-joint.source.manual-range",
    ],
  }));
}

export function FlareJointStatements(): StatementTable {
  return once(FlareJointStatements, () => ({
    "flare-joint.above-minimum": {
      figure: FlareJointFigureShape(),
      measured: { either: ["angle", "length", "torque"] },
      low: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.adapter-needed": {
      port: VerbatimShape(),
      portThread: VerbatimShape(),
      hose: VerbatimShape(),
      hoseThread: VerbatimShape(),
    },
    "flare-joint.aim-above": { low: { either: ["angle", "length", "torque"] } },
    "flare-joint.aim-inside": {
      low: { either: ["angle", "length", "torque"] },
      high: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.below-minimum": {
      figure: FlareJointFigureShape(),
      measured: { either: ["angle", "length", "torque"] },
      low: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.beyond-sources": {
      low: { either: ["angle", "length", "torque"] },
      high: { either: ["angle", "length", "torque"] },
      torque: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.check-scale": {},
    "flare-joint.check-wrench": { needed: { either: ["angle", "length", "torque"] } },
    "flare-joint.exact-instrument": {},
    "flare-joint.figure-from-manual": {},
    "flare-joint.foot-pound-as-newton-meter": {},
    "flare-joint.hose-fits": { hose: VerbatimShape(), hoseThread: VerbatimShape() },
    "flare-joint.hydraulic-flare": {},
    "flare-joint.instrument-cannot-tell": {
      figure: FlareJointFigureShape(),
      measured: { either: ["angle", "length", "torque"] },
      guard: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.manual-diameters-wide": {
      low: { either: ["angle", "length", "torque"] },
      high: { either: ["angle", "length", "torque"] },
      widest: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.manual-minimum-thin": {
      least: { either: ["angle", "length", "torque"] },
      usual: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.manual-range-apart": {
      low: { either: ["angle", "length", "torque"] },
      high: { either: ["angle", "length", "torque"] },
      from: { either: ["angle", "length", "torque"] },
      to: { either: ["angle", "length", "torque"] },
      tube: VerbatimShape(),
    },
    "flare-joint.manual-range-wide": {
      low: { either: ["angle", "length", "torque"] },
      high: { either: ["angle", "length", "torque"] },
      from: { either: ["angle", "length", "torque"] },
      to: { either: ["angle", "length", "torque"] },
      tube: VerbatimShape(),
    },
    "flare-joint.manual-read-again": {},
    "flare-joint.measure-better": { needed: { either: ["angle", "length", "torque"] } },
    "flare-joint.minimums-disagree": {
      figure: FlareJointFigureShape(),
      measured: { either: ["angle", "length", "torque"] },
      low: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.newton-meter-as-foot-pound": {},
    "flare-joint.not-a-leak-test": {},
    "flare-joint.one-source": {},
    "flare-joint.outside-range": {
      figure: FlareJointFigureShape(),
      measured: { either: ["angle", "length", "torque"] },
      low: { either: ["angle", "length", "torque"] },
      high: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.published-ranges": { sources: { list: FlareJointSourceShape() } },
    "flare-joint.read-manual-again": {},
    "flare-joint.remake-and-tighten": {
      low: { either: ["angle", "length", "torque"] },
      high: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.remake-and-turn": {
      low: { either: ["angle", "length", "torque"] },
      high: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.remake-cone": {},
    "flare-joint.remake-larger": {
      low: { either: ["angle", "length", "torque"] },
      high: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.remake-smaller": {
      low: { either: ["angle", "length", "torque"] },
      high: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.replace-tube": { low: { either: ["angle", "length", "torque"] } },
    "flare-joint.right-on-other-scale": { other: { either: ["angle", "length", "torque"] } },
    "flare-joint.sources-disagree": {
      figure: FlareJointFigureShape(),
      measured: { either: ["angle", "length", "torque"] },
      low: { either: ["angle", "length", "torque"] },
      high: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.state-manual-range": {},
    "flare-joint.tighten": {
      low: { either: ["angle", "length", "torque"] },
      high: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.tighten-by-turn": {
      low: { either: ["angle", "length", "torque"] },
      high: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.wider-flare-assumed": {},
    "flare-joint.within-range": {
      figure: FlareJointFigureShape(),
      measured: { either: ["angle", "length", "torque"] },
      low: { either: ["angle", "length", "torque"] },
      high: { either: ["angle", "length", "torque"] },
    },
    "flare-joint.would-have-failed": { beyond: { either: ["angle", "length", "torque"] } },
  }));
}

export function FlareJointStatementShape(): Shape {
  return once(FlareJointStatementShape, () => ({
    type: "FlareJointStatement",
    statements: [FlareJointStatements()],
  }));
}

export function FlareAssessmentOfAngleFlareConeCauseCautionsItemShape(): Shape {
  return once(FlareAssessmentOfAngleFlareConeCauseCautionsItemShape, () => ({
    type: "FlareAssessmentOfAngleFlareConeCauseCautionsItem",
    statements: [SafetyStatements(), FlareJointStatements()],
    with: { "kind?": { words: ["finding", "danger", "governing"] } },
  }));
}

export function FlareAssessmentOfAngleFlareConeCauseShape(): Shape {
  return once(FlareAssessmentOfAngleFlareConeCauseShape, () => ({
    type: "FlareAssessmentOfAngleFlareConeCause",
    fields: {
      measured: EstimateOfAngleShape(),
      window: FlareAssessmentOfAngleFlareConeCauseWindowShape(),
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["cone-too-steep", "cone-too-flat"] },
      reasons: { list: FlareJointStatementShape() },
      assumptions: { list: FlareJointStatementShape() },
      cautions: { list: FlareAssessmentOfAngleFlareConeCauseCautionsItemShape() },
      "actions?": { list: FlareJointStatementShape() },
      sources: { list: CitationShape() },
    },
    docs: {
      "": "The verdict on one measured figure of a flare joint.",
      measured: "The measured figure with its uncertainty.",
      window: "What it passes within: where several sources apply, the part that they share.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
    },
  }));
}

export function FlareRefrigerantShape(): Shape {
  return once(FlareRefrigerantShape, () => ({
    type: "FlareRefrigerant",
    words: ["R410A", "R32", "R454B", "R22"],
  }));
}

export function FlareDiameterLimitsInputShape(): Shape {
  return once(FlareDiameterLimitsInputShape, () => ({
    type: "FlareDiameterLimitsInput",
    fields: { tube: FlareTubeShape(), refrigerant: FlareRefrigerantShape() },
    docs: { tube: "Outside diameter of the tube.", refrigerant: "Refrigerant of the unit." },
  }));
}

export function FlareLimitsOfLengthShape(): Shape {
  return once(FlareLimitsOfLengthShape, () => ({
    type: "FlareLimitsOfLength",
    fields: { low: "length", high: "length" },
    docs: {
      "": "The smallest and the largest figure that a source allows.",
      low: "Smallest figure allowed.",
      high: "Largest figure allowed.",
    },
  }));
}

export function FlareDiameterInputShape(): Shape {
  return once(FlareDiameterInputShape, () => ({
    type: "FlareDiameterInput",
    fields: {
      tube: FlareTubeShape(),
      refrigerant: "text",
      diameter: "length",
      "manual?": FlareLimitsOfLengthShape(),
      "manualReadAgain?": "flag",
      "caliper?": InstrumentOfLengthShape(),
      "confidence?": "number",
    },
    docs: {
      "": "A measured flare.",
      tube: "Outside diameter of the tube.",
      refrigerant:
        "Refrigerant of the unit: a FlareRefrigerant, or any other with the limits of its manual.",
      diameter: "Measured outside diameter of the flare, above 0.",
      manual: "The limits in the unit's manual; they decide alone, unless they are in doubt.",
      manualReadAgain:
        "Whether the manual was read again and says so: then its limits decide, whatever else is published.",
      caliper: "What is known of the caliper; counted as exact when left out.",
      confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
    },
  }));
}

export function FlareAssessmentOfLengthFlareDiameterCauseWindowShape(): Shape {
  return once(FlareAssessmentOfLengthFlareDiameterCauseWindowShape, () => ({
    type: "FlareAssessmentOfLengthFlareDiameterCauseWindow",
    fields: { "low?": "length", "high?": "length" },
    docs: { low: "Smallest figure allowed.", high: "Largest figure allowed." },
  }));
}

export function FlareAssessmentOfLengthFlareDiameterCauseShape(): Shape {
  return once(FlareAssessmentOfLengthFlareDiameterCauseShape, () => ({
    type: "FlareAssessmentOfLengthFlareDiameterCause",
    fields: {
      measured: EstimateOfLengthShape(),
      window: FlareAssessmentOfLengthFlareDiameterCauseWindowShape(),
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["flare-too-small", "flare-too-large"] },
      reasons: { list: FlareJointStatementShape() },
      assumptions: { list: FlareJointStatementShape() },
      cautions: { list: FlareAssessmentOfAngleFlareConeCauseCautionsItemShape() },
      "actions?": { list: FlareJointStatementShape() },
      sources: { list: CitationShape() },
    },
    docs: {
      "": "The verdict on one measured figure of a flare joint.",
      measured: "The measured figure with its uncertainty.",
      window: "What it passes within: where several sources apply, the part that they share.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
    },
  }));
}

export function FlareLimitsOfTorqueShape(): Shape {
  return once(FlareLimitsOfTorqueShape, () => ({
    type: "FlareLimitsOfTorque",
    fields: { low: "torque", high: "torque" },
    docs: {
      "": "The smallest and the largest figure that a source allows.",
      low: "Smallest figure allowed.",
      high: "Largest figure allowed.",
    },
  }));
}

export function TorqueWrenchShape(): Shape {
  return once(TorqueWrenchShape, () => ({
    type: "TorqueWrench",
    fields: { "relativeAccuracy?": "ratio", "accuracy?": "torque", "resolution?": "torque" },
    docs: {
      "": "What is known of a torque wrench.",
      relativeAccuracy: "Limits of error as a fraction of the reading: percent(4).",
      accuracy: "Limits of error as a torque, ±.",
      resolution: "Smallest step of the scale.",
    },
  }));
}

export function FlareTorqueInputShape(): Shape {
  return once(FlareTorqueInputShape, () => ({
    type: "FlareTorqueInput",
    fields: {
      tube: FlareTubeShape(),
      torque: "torque",
      "manual?": FlareLimitsOfTorqueShape(),
      "manualReadAgain?": "flag",
      "wrench?": TorqueWrenchShape(),
      "confidence?": "number",
    },
    docs: {
      "": "A tightened flare nut.",
      tube: "Outside diameter of the tube.",
      torque: "The torque at which the wrench clicked or which it shows, above 0.",
      manual:
        "The window in the unit's manual. It decides alone, unless it is in doubt; without it all published sources decide.",
      manualReadAgain:
        "Whether the manual was read again and says so: then its window decides, whatever else is published.",
      wrench:
        "What is known of the wrench; counted as exact when left out, and the verdict says so.",
      confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
    },
  }));
}

export function FlareTorqueAssessmentWindowShape(): Shape {
  return once(FlareTorqueAssessmentWindowShape, () => ({
    type: "FlareTorqueAssessmentWindow",
    fields: { "low?": "torque", "high?": "torque" },
    docs: { low: "Smallest figure allowed.", high: "Largest figure allowed." },
  }));
}

export function FlareTorqueConflictShape(): Shape {
  return once(FlareTorqueConflictShape, () => ({
    type: "FlareTorqueConflict",
    fields: {
      between: {
        items: [
          { words: ["jis-type-manuals", "en-378-2", "manual-range"] },
          { words: ["jis-type-manuals", "en-378-2", "manual-range"] },
        ],
      },
      sharedFraction: "number",
    },
    docs: {
      "": "Two sources whose windows share less than three quarters of the narrower one.",
      between: "The two sources.",
      sharedFraction: "How much of the narrower window both allow, 0 to 1.",
    },
  }));
}

export function FlareTorqueAssessmentShape(): Shape {
  return once(FlareTorqueAssessmentShape, () => ({
    type: "FlareTorqueAssessment",
    fields: {
      measured: EstimateOfTorqueShape(),
      window: FlareTorqueAssessmentWindowShape(),
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["under-tightened", "over-tightened"] },
      reasons: { list: FlareJointStatementShape() },
      assumptions: { list: FlareJointStatementShape() },
      cautions: { list: FlareAssessmentOfAngleFlareConeCauseCautionsItemShape() },
      "actions?": { list: FlareJointStatementShape() },
      sources: { list: CitationShape() },
      conflicts: { list: FlareTorqueConflictShape() },
    },
    docs: {
      "": "The verdict on the torque of a flare nut.",
      measured: "The measured figure with its uncertainty.",
      window: "What it passes within: where several sources apply, the part that they share.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
      conflicts:
        "The published sources that conflict for this size; empty when the manual could decide.",
    },
  }));
}

export function FlareTurnInputShape(): Shape {
  return once(FlareTurnInputShape, () => ({
    type: "FlareTurnInput",
    fields: {
      tube: FlareTubeShape(),
      turn: "angle",
      "protractor?": InstrumentOfAngleShape(),
      "confidence?": "number",
    },
    docs: {
      "": "A flare nut tightened by angle.",
      tube: "Outside diameter of the tube in inches.",
      turn: "Turn from the point where the torque rises, above 0.",
      protractor: "How well the angle is known; counted as exact when left out.",
      confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
    },
  }));
}

export function FlareAssessmentOfAngleFlareTorqueCauseShape(): Shape {
  return once(FlareAssessmentOfAngleFlareTorqueCauseShape, () => ({
    type: "FlareAssessmentOfAngleFlareTorqueCause",
    fields: {
      measured: EstimateOfAngleShape(),
      window: FlareAssessmentOfAngleFlareConeCauseWindowShape(),
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["under-tightened", "over-tightened"] },
      reasons: { list: FlareJointStatementShape() },
      assumptions: { list: FlareJointStatementShape() },
      cautions: { list: FlareAssessmentOfAngleFlareConeCauseCautionsItemShape() },
      "actions?": { list: FlareJointStatementShape() },
      sources: { list: CitationShape() },
    },
    docs: {
      "": "The verdict on one measured figure of a flare joint.",
      measured: "The measured figure with its uncertainty.",
      window: "What it passes within: where several sources apply, the part that they share.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
    },
  }));
}

export function FlareWallInputShape(): Shape {
  return once(FlareWallInputShape, () => ({
    type: "FlareWallInput",
    fields: {
      tube: FlareTubeShape(),
      refrigerant: "text",
      wall: "length",
      "manualMinimum?": "length",
      "manualReadAgain?": "flag",
      "micrometer?": InstrumentOfLengthShape(),
      "confidence?": "number",
    },
    docs: {
      "": "A tube before it is flared.",
      tube: "Outside diameter of the tube.",
      refrigerant:
        "Refrigerant of the unit: a R410A, R32, R454B, or any other with the minimum of its manual.",
      wall: "Measured wall, above 0 and below half of the tube.",
      manualMinimum:
        "The minimum in the unit's manual; from 0.5 mm it decides alone. Needed for 3/4 in, and for any refrigerant but R410A, R32, R454B.",
      manualReadAgain:
        "Whether the manual was read again and says so: then its minimum decides, however thin.",
      micrometer: "What is known of the micrometer; counted as exact when left out.",
      confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
    },
  }));
}

export function FlareAssessmentOfLengthWallTooThinShape(): Shape {
  return once(FlareAssessmentOfLengthWallTooThinShape, () => ({
    type: "FlareAssessmentOfLengthWallTooThin",
    fields: {
      measured: EstimateOfLengthShape(),
      window: FlareAssessmentOfLengthFlareDiameterCauseWindowShape(),
      outcome: { words: ["pass", "fail", "inconclusive"] },
      "cause?": { words: ["wall-too-thin"] },
      reasons: { list: FlareJointStatementShape() },
      assumptions: { list: FlareJointStatementShape() },
      cautions: { list: FlareAssessmentOfAngleFlareConeCauseCautionsItemShape() },
      "actions?": { list: FlareJointStatementShape() },
      sources: { list: CitationShape() },
    },
    docs: {
      "": "The verdict on one measured figure of a flare joint.",
      measured: "The measured figure with its uncertainty.",
      window: "What it passes within: where several sources apply, the part that they share.",
      outcome: "Proven good, proven bad, or inconclusive.",
      cause: "What is behind it, where the module can tell.",
      reasons: "Why, the deciding reason first.",
      assumptions: "What was assumed because it was not given.",
      cautions:
        "What this case hides, what can hurt someone, and what overrides the result, in this order.",
      actions: "What to do next, in order; empty on a clean pass.",
      sources: "Where the rules and figures come from.",
    },
  }));
}

export function FlareNutSizeInputShape(): Shape {
  return once(FlareNutSizeInputShape, () => ({
    type: "FlareNutSizeInput",
    fields: { tube: FlareTubeShape(), refrigerant: FlareRefrigerantShape() },
    docs: { tube: "Outside diameter of the tube.", refrigerant: "Refrigerant of the unit." },
  }));
}

export function FlareThreadInputShape(): Shape {
  return once(FlareThreadInputShape, () => ({
    type: "FlareThreadInput",
    words: [
      "1/4",
      "5/16",
      "3/8",
      "1/2",
      "5/8",
      "3/4",
      "6 mm",
      "8 mm",
      "10 mm",
      "12 mm",
      "15 mm",
      "18 mm",
    ],
  }));
}

export function FlareThreadShape(): Shape {
  return once(FlareThreadShape, () => ({
    type: "FlareThread",
    fields: {
      name: "text",
      majorDiameter: "length",
      threadsPerInch: "number",
      citation: CitationShape(),
    },
    docs: {
      "": "The thread of a flare fitting.",
      name: "As the trade writes it: 7/16-20.",
      majorDiameter: "Major diameter.",
      threadsPerInch: "Threads per inch.",
      citation: "Where it stands.",
    },
  }));
}

export function FlareTorqueInput2Shape(): Shape {
  return once(FlareTorqueInput2Shape, () => ({
    type: "FlareTorqueInput2",
    words: [
      "1/4",
      "5/16",
      "3/8",
      "1/2",
      "5/8",
      "3/4",
      "6 mm",
      "8 mm",
      "10 mm",
      "12 mm",
      "15 mm",
      "18 mm",
    ],
  }));
}

export function FlareTorqueWindowShape(): Shape {
  return once(FlareTorqueWindowShape, () => ({
    type: "FlareTorqueWindow",
    fields: {
      low: "torque",
      high: "torque",
      source: { words: ["jis-type-manuals", "en-378-2", "manual-range"] },
      citation: CitationShape(),
    },
    docs: {
      "": "The torque window of one source.",
      low: "Smallest figure allowed.",
      high: "Largest figure allowed.",
      source: "Who prints it.",
      citation: "Where it stands.",
    },
  }));
}

export function FlareTorqueShape(): Shape {
  return once(FlareTorqueShape, () => ({
    type: "FlareTorque",
    fields: {
      windows: { list: FlareTorqueWindowShape() },
      overlap: FlareLimitsOfTorqueShape(),
      conflicts: { list: FlareTorqueConflictShape() },
      cautions: { list: FlareAssessmentOfAngleFlareConeCauseCautionsItemShape() },
    },
    docs: {
      "": "What the published sources say on the torque of one flare nut.",
      windows: "The window of each source.",
      overlap: "What every source allows.",
      conflicts: "Pairs of sources that conflict; empty where they agree well.",
      cautions: "What overrides the figures and what can hurt someone.",
    },
  }));
}

export function FlareTurnInput2Shape(): Shape {
  return once(FlareTurnInput2Shape, () => ({
    type: "FlareTurnInput2",
    words: [
      "1/4",
      "5/16",
      "3/8",
      "1/2",
      "5/8",
      "3/4",
      "6 mm",
      "8 mm",
      "10 mm",
      "12 mm",
      "15 mm",
      "18 mm",
    ],
  }));
}

export function FlareLimitsOfAngleShape(): Shape {
  return once(FlareLimitsOfAngleShape, () => ({
    type: "FlareLimitsOfAngle",
    fields: { low: "angle", high: "angle" },
    docs: {
      "": "The smallest and the largest figure that a source allows.",
      low: "Smallest figure allowed.",
      high: "Largest figure allowed.",
    },
  }));
}

export function ServicePortAdapterInputShape(): Shape {
  return once(ServicePortAdapterInputShape, () => ({
    type: "ServicePortAdapterInput",
    fields: { port: { words: ["1/4", "5/16"] }, hose: { words: ["1/4", "5/16"] } },
    docs: { port: "Size of the port on the unit, male.", hose: "Size of the hose's end, female." },
  }));
}

export function ServicePortAdapterShape(): Shape {
  return once(ServicePortAdapterShape, () => ({
    type: "ServicePortAdapter",
    fields: {
      needed: "flag",
      port: FlareThreadShape(),
      hose: FlareThreadShape(),
      advice: FlareJointStatementShape(),
      cautions: { list: FlareAssessmentOfAngleFlareConeCauseCautionsItemShape() },
    },
    docs: {
      "": "Whether an adapter is needed between a service port and a hose.",
      needed: "Whether one is needed.",
      port: "Thread of the port on the unit.",
      hose: "Thread of the hose's nut.",
      advice: "What to bring.",
      cautions: "What can hurt someone.",
    },
  }));
}

export function UsualServicePortInputShape(): Shape {
  return once(UsualServicePortInputShape, () => ({
    type: "UsualServicePortInput",
    fields: {
      refrigerant: { words: ["R410A", "R32", "R22", "R134a"] },
      equipment: { words: ["mini-split", "ducted"] },
    },
    docs: {
      refrigerant: "Refrigerant of the unit.",
      equipment: "A ductless split, or a ducted unit as sold in North America.",
    },
  }));
}
