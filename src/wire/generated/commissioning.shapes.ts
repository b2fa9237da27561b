// Which shapes have the types of commissioning?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import {
  CitationShape,
  InstallationAssessmentCautionsItemShape,
  InstallationAssessmentReasonsItemShape,
  NamedCheckOfLineSizesAssessmentShape,
  ReasonShape,
} from "./assessment.shapes.ts";
import { ConcentrationAssessmentShape, RoomChargeAssessmentShape } from "./charge-limit.shapes.ts";
import { CircuitFromNameplateResultShape } from "./circuit-protection.shapes.ts";
import {
  CondensatePumpAssessmentShape,
  DrainSlopeAssessmentShape,
  IndoorUnitPitchAssessmentShape,
} from "./condensate.shapes.ts";
import {
  FlareAssessmentOfAngleFlareTorqueCauseShape,
  FlareAssessmentOfLengthFlareDiameterCauseShape,
  FlareTorqueAssessmentShape,
} from "./flare-joint.shapes.ts";
import {
  ChargeAssessmentShape,
  LineRunAssessmentShape,
  LiquidChargePlausibilityShape,
} from "./line-set.shapes.ts";
import {
  ChargeByGaugeAssessmentShape,
  ServiceReadingAssessmentShape,
} from "./operating-check.shapes.ts";
import { LogAssessmentShape, TwoReadingAssessmentShape } from "./pressure-test.shapes.ts";
import { SupplyVoltageAssessmentShape } from "./supply-voltage.shapes.ts";
import { VacuumDecayAssessmentShape } from "./vacuum-decay.shapes.ts";

export const StepNameShape: Shape = {
  type: "StepName",
  words: [
    "line-run",
    "joints",
    "pressure-test",
    "evacuation",
    "room-limit",
    "charge",
    "valves",
    "circuit",
    "supply",
    "drain",
    "operation",
  ],
};

export const OptionalStepShape: Shape = {
  type: "OptionalStep",
  words: ["line-run", "joints", "room-limit", "drain"],
};

export const NotApplicableShape: Shape = {
  type: "NotApplicable",
  fields: { step: OptionalStepShape, reason: "text", by: "text", at: "time" },
  says: "The word of a person that a step does not apply to this installation. It never makes the step pass: the assessment lists it among its first reasons and its assumptions.",
  about: {
    step: "Which step.",
    reason: "Why it does not apply; a letter or a digit at least.",
    by: "Name of who declares it; a letter or a digit at least.",
    at: "When.",
  },
};

export const NamedCheckOfLineRunShape: Shape = {
  type: "NamedCheckOfLineRun",
  fields: { name: { words: ["line-run"] }, path: "text", assessment: LineRunAssessmentShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfPressureTestShape: Shape = {
  type: "NamedCheckOfPressureTest",
  fields: {
    name: { words: ["pressure-test"] },
    path: "text",
    assessment: { either: [LogAssessmentShape, TwoReadingAssessmentShape] },
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfCircuitShape: Shape = {
  type: "NamedCheckOfCircuit",
  fields: {
    name: { words: ["circuit"] },
    path: "text",
    assessment: CircuitFromNameplateResultShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfLineSizesShape: Shape = {
  type: "NamedCheckOfLineSizes",
  fields: {
    name: { words: ["line-sizes"] },
    path: "text",
    assessment: NamedCheckOfLineSizesAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfFlareTorqueShape: Shape = {
  type: "NamedCheckOfFlareTorque",
  fields: {
    name: { words: ["flare-torque"] },
    path: "text",
    assessment: FlareTorqueAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfFlareTurnShape: Shape = {
  type: "NamedCheckOfFlareTurn",
  fields: {
    name: { words: ["flare-turn"] },
    path: "text",
    assessment: FlareAssessmentOfAngleFlareTorqueCauseShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfFlareDiameterShape: Shape = {
  type: "NamedCheckOfFlareDiameter",
  fields: {
    name: { words: ["flare-diameter"] },
    path: "text",
    assessment: FlareAssessmentOfLengthFlareDiameterCauseShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfBrazedJointShape: Shape = {
  type: "NamedCheckOfBrazedJoint",
  fields: {
    name: { words: ["brazed-joint"] },
    path: "text",
    assessment: NamedCheckOfLineSizesAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfPressedJointShape: Shape = {
  type: "NamedCheckOfPressedJoint",
  fields: {
    name: { words: ["pressed-joint"] },
    path: "text",
    assessment: NamedCheckOfLineSizesAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfJointInspectedShape: Shape = {
  type: "NamedCheckOfJointInspected",
  fields: {
    name: { words: ["joint-inspected"] },
    path: "text",
    assessment: NamedCheckOfLineSizesAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfJointCountShape: Shape = {
  type: "NamedCheckOfJointCount",
  fields: {
    name: { words: ["joint-count"] },
    path: "text",
    assessment: NamedCheckOfLineSizesAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfJointSizesShape: Shape = {
  type: "NamedCheckOfJointSizes",
  fields: {
    name: { words: ["joint-sizes"] },
    path: "text",
    assessment: NamedCheckOfLineSizesAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfTestHoldShape: Shape = {
  type: "NamedCheckOfTestHold",
  fields: {
    name: { words: ["test-hold"] },
    path: "text",
    assessment: NamedCheckOfLineSizesAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfMarkedPressureShape: Shape = {
  type: "NamedCheckOfMarkedPressure",
  fields: {
    name: { words: ["marked-pressure"] },
    path: "text",
    assessment: NamedCheckOfLineSizesAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfTestPressureShape: Shape = {
  type: "NamedCheckOfTestPressure",
  fields: {
    name: { words: ["test-pressure"] },
    path: "text",
    assessment: NamedCheckOfLineSizesAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfVacuumDecayShape: Shape = {
  type: "NamedCheckOfVacuumDecay",
  fields: {
    name: { words: ["vacuum-decay"] },
    path: "text",
    assessment: VacuumDecayAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfOrderShape: Shape = {
  type: "NamedCheckOfOrder",
  fields: {
    name: { words: ["order"] },
    path: "text",
    assessment: NamedCheckOfLineSizesAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfRoomChargeShape: Shape = {
  type: "NamedCheckOfRoomCharge",
  fields: { name: { words: ["room-charge"] }, path: "text", assessment: RoomChargeAssessmentShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfRoomConcentrationShape: Shape = {
  type: "NamedCheckOfRoomConcentration",
  fields: {
    name: { words: ["room-concentration"] },
    path: "text",
    assessment: ConcentrationAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfAdditionalChargeShape: Shape = {
  type: "NamedCheckOfAdditionalCharge",
  fields: {
    name: { words: ["additional-charge"] },
    path: "text",
    assessment: ChargeAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfChargeRateShape: Shape = {
  type: "NamedCheckOfChargeRate",
  fields: {
    name: { words: ["charge-rate"] },
    path: "text",
    assessment: LiquidChargePlausibilityShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfWeighedChargeShape: Shape = {
  type: "NamedCheckOfWeighedCharge",
  fields: {
    name: { words: ["weighed-charge"] },
    path: "text",
    assessment: NamedCheckOfLineSizesAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfValvesOpenedShape: Shape = {
  type: "NamedCheckOfValvesOpened",
  fields: {
    name: { words: ["valves-opened"] },
    path: "text",
    assessment: NamedCheckOfLineSizesAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfSupplyVoltageShape: Shape = {
  type: "NamedCheckOfSupplyVoltage",
  fields: {
    name: { words: ["supply-voltage"] },
    path: "text",
    assessment: SupplyVoltageAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfDrainSlopeShape: Shape = {
  type: "NamedCheckOfDrainSlope",
  fields: { name: { words: ["drain-slope"] }, path: "text", assessment: DrainSlopeAssessmentShape },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfCondensatePumpShape: Shape = {
  type: "NamedCheckOfCondensatePump",
  fields: {
    name: { words: ["condensate-pump"] },
    path: "text",
    assessment: CondensatePumpAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfUnitPitchShape: Shape = {
  type: "NamedCheckOfUnitPitch",
  fields: {
    name: { words: ["unit-pitch"] },
    path: "text",
    assessment: IndoorUnitPitchAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfWaterRanOffShape: Shape = {
  type: "NamedCheckOfWaterRanOff",
  fields: {
    name: { words: ["water-ran-off"] },
    path: "text",
    assessment: NamedCheckOfLineSizesAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfServiceReadingShape: Shape = {
  type: "NamedCheckOfServiceReading",
  fields: {
    name: { words: ["service-reading"] },
    path: "text",
    assessment: ServiceReadingAssessmentShape,
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const NamedCheckOfChargeByGaugeShape: Shape = {
  type: "NamedCheckOfChargeByGauge",
  fields: {
    name: { words: ["charge-by-gauge"] },
    path: "text",
    assessment: { either: [ChargeByGaugeAssessmentShape, NamedCheckOfLineSizesAssessmentShape] },
  },
  says: "The check of one name.",
  about: {
    name: "What was checked.",
    path: "Path of the part of the record that was checked.",
    assessment: "The verdict of the module, with all its own figures.",
  },
};

export const StepCheckShape: Shape = {
  type: "StepCheck",
  by: "name",
  cases: {
    "line-run": NamedCheckOfLineRunShape,
    "pressure-test": NamedCheckOfPressureTestShape,
    circuit: NamedCheckOfCircuitShape,
    "line-sizes": NamedCheckOfLineSizesShape,
    "flare-torque": NamedCheckOfFlareTorqueShape,
    "flare-turn": NamedCheckOfFlareTurnShape,
    "flare-diameter": NamedCheckOfFlareDiameterShape,
    "brazed-joint": NamedCheckOfBrazedJointShape,
    "pressed-joint": NamedCheckOfPressedJointShape,
    "joint-inspected": NamedCheckOfJointInspectedShape,
    "joint-count": NamedCheckOfJointCountShape,
    "joint-sizes": NamedCheckOfJointSizesShape,
    "test-hold": NamedCheckOfTestHoldShape,
    "marked-pressure": NamedCheckOfMarkedPressureShape,
    "test-pressure": NamedCheckOfTestPressureShape,
    "vacuum-decay": NamedCheckOfVacuumDecayShape,
    order: NamedCheckOfOrderShape,
    "room-charge": NamedCheckOfRoomChargeShape,
    "room-concentration": NamedCheckOfRoomConcentrationShape,
    "additional-charge": NamedCheckOfAdditionalChargeShape,
    "charge-rate": NamedCheckOfChargeRateShape,
    "weighed-charge": NamedCheckOfWeighedChargeShape,
    "valves-opened": NamedCheckOfValvesOpenedShape,
    "supply-voltage": NamedCheckOfSupplyVoltageShape,
    "drain-slope": NamedCheckOfDrainSlopeShape,
    "condensate-pump": NamedCheckOfCondensatePumpShape,
    "unit-pitch": NamedCheckOfUnitPitchShape,
    "water-ran-off": NamedCheckOfWaterRanOffShape,
    "service-reading": NamedCheckOfServiceReadingShape,
    "charge-by-gauge": NamedCheckOfChargeByGaugeShape,
  },
};

export const StepProblemShape: Shape = {
  type: "StepProblem",
  fields: {
    check: {
      words: [
        "line-run",
        "pressure-test",
        "circuit",
        "not-applicable",
        "line-sizes",
        "flare-torque",
        "flare-turn",
        "flare-diameter",
        "brazed-joint",
        "pressed-joint",
        "joint-inspected",
        "joint-count",
        "joint-sizes",
        "test-hold",
        "marked-pressure",
        "test-pressure",
        "vacuum-decay",
        "order",
        "room-charge",
        "room-concentration",
        "additional-charge",
        "charge-rate",
        "weighed-charge",
        "valves-opened",
        "supply-voltage",
        "drain-slope",
        "condensate-pump",
        "unit-pitch",
        "water-ran-off",
        "service-reading",
        "charge-by-gauge",
      ],
    },
    path: "text",
    value: "text",
    allowed: "text",
    hint: "text",
  },
  says: "A value that no check could use.",
  about: {
    check: "The check that could not be made, or not-applicable for a declaration.",
    path: "Path of the field of the record.",
    value: "What stands there.",
    allowed: "What would have been accepted.",
    hint: "What to do about it; empty when there is nothing to add.",
  },
};

export const InstallationStepShape: Shape = {
  type: "InstallationStep",
  fields: {
    name: StepNameShape,
    state: { words: ["missing", "done", "partial", "not-applicable"] },
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "declaration?": NotApplicableShape,
    checks: { list: StepCheckShape },
    problems: { list: StepProblemShape },
    missing: { list: "text" },
    blockedBy: { list: StepNameShape },
  },
  says: "A step and what came of it.",
  about: {
    name: "Which step.",
    state:
      "done: all that it needs is there and was judged. partial: some of it. missing: nothing could be judged. not-applicable: declared so, and nothing in the record speaks against it.",
    outcome:
      "pass only when done and all of its checks pass; inconclusive when not applicable, as nothing was proven.",
    declaration: "Who declared it not applicable and why; only in that state.",
    checks: "The checks that were made.",
    problems: "Values that could not be used.",
    missing: "Paths of the fields that are missing.",
    blockedBy: "Earlier steps that have to pass before this one may be done, and have not.",
  },
};

export const HoldPointShape: Shape = {
  type: "HoldPoint",
  fields: {
    name: { words: ["open-valves", "add-charge", "power-on"] },
    state: { words: ["held", "released", "breached"] },
    waitsFor: { list: StepNameShape },
    reason: InstallationAssessmentReasonsItemShape,
  },
  says: "A point at which the work waits until steps have passed.",
  about: {
    name: "What waits.",
    state:
      "held: not yet. released: may be done. breached: was done although it was held, or before its proof.",
    waitsFor:
      "The steps that have not passed: those that have to, and joints where one of them fails.",
    reason: "Why, in a sentence.",
  },
};

export const InstallationAssessmentShape: Shape = {
  type: "InstallationAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": {
      words: [
        "charge",
        "supply",
        "line-run",
        "joints",
        "pressure-test",
        "evacuation",
        "room-limit",
        "valves",
        "circuit",
        "drain",
        "operation",
      ],
    },
    reasons: { list: InstallationAssessmentReasonsItemShape },
    assumptions: { list: InstallationAssessmentReasonsItemShape },
    cautions: { list: InstallationAssessmentCautionsItemShape },
    "actions?": { list: InstallationAssessmentReasonsItemShape },
    sources: { list: CitationShape },
    deciding: { list: ReasonShape },
    steps: { list: InstallationStepShape },
    holds: { list: HoldPointShape },
    missing: { list: "text" },
  },
  says: "The verdict on an installation. cause is the first step that fails.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    deciding: "The first of the reasons: all but those of checks that passed.",
    steps: "The steps in the order of the work.",
    holds: "What may not be done yet.",
    missing: "Paths of all fields that are missing.",
  },
};

export const ChangeShape: Shape = {
  type: "Change",
  fields: { path: "text", "value?": "any", by: "text", at: "time", reason: "text" },
  says: "A change to a record.",
  about: {
    path: "The field, part or item, such as tubing.length, drain or joints[2]. The position after the last item adds one.",
    value: "What it becomes; nothing takes it out.",
    by: "Who changes it; a letter or a digit at least.",
    at: "When, by ISO 8601; not before the change before it.",
    reason: "Why; a letter or a digit at least.",
  },
};
