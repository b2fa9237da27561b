// Which shapes have the types of flare-joint?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import {
  CitationShape,
  EstimateOfAngleShape,
  EstimateOfLengthShape,
  EstimateOfTorqueShape,
  InstrumentOfAngleShape,
  InstrumentOfLengthShape,
  VerbatimShape,
} from "./assessment.shapes.ts";
import {
  RefrigerantsTableNeedsAtmosphereValuesShape,
  SafetyChargeTightSystemShape,
  SafetyCompressorInVacuumShape,
  SafetyDryNitrogenOnlyShape,
  SafetyFlammableRefrigerantShape,
  SafetyLineVoltageShape,
  SafetyLowestRatingShape,
  SafetyMeterCategoryShape,
  SafetyNitrogenSuffocatesShape,
  SafetyOpenUnderPressureShape,
  SafetyOthersGovernShape,
  SafetyRaiseInStagesShape,
  SafetyRefrigerantAirMixtureShape,
  SafetyRefrigerantContactShape,
  SafetyRefrigerantSuffocatesShape,
  SafetyRegulatorAndReliefShape,
  SafetyRunningUnitShape,
  SafetyToxicRefrigerantShape,
  SafetyWorkAtHeightShape,
} from "./refrigerants.shapes.ts";

export const FlareTubeShape: Shape = {
  type: "FlareTube",
  words: ["1/4", "5/16", "3/8", "1/2", "5/8", "3/4"],
};

export const FlareConeInputShape: Shape = {
  type: "FlareConeInput",
  fields: { seatAngle: "angle", "protractor?": InstrumentOfAngleShape, "confidence?": "number" },
  says: "A measured flare cone.",
  about: {
    seatAngle:
      "Angle between the flare's face and the tube's axis, above 0: half of the total angle.",
    protractor: "What is known of the protractor; counted as exact when left out.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
  },
};

export const FlareAssessmentOfAngleFlareConeCauseWindowShape: Shape = {
  type: "FlareAssessmentOfAngleFlareConeCauseWindow",
  fields: { "low?": "angle", "high?": "angle" },
  about: { low: "Smallest figure allowed.", high: "Largest figure allowed." },
};

export const FlareJointWithinRangeValuesShape: Shape = {
  type: "FlareJointWithinRangeValues",
  fields: {
    figure: {
      words: [
        "flare-joint.figure.wall",
        "flare-joint.figure.torque",
        "flare-joint.figure.turn",
        "flare-joint.figure.diameter",
        "flare-joint.figure.seat-angle",
      ],
    },
    measured: { either: ["length", "angle", "torque"] },
    low: { either: ["length", "angle", "torque"] },
    high: { either: ["length", "angle", "torque"] },
  },
};

export const FlareJointWithinRangeShape: Shape = {
  type: "FlareJointWithinRange",
  fields: {
    code: { words: ["flare-joint.within-range"] },
    values: FlareJointWithinRangeValuesShape,
    "text?": "text",
  },
};

export const FlareJointOutsideRangeShape: Shape = {
  type: "FlareJointOutsideRange",
  fields: {
    code: { words: ["flare-joint.outside-range"] },
    values: FlareJointWithinRangeValuesShape,
    "text?": "text",
  },
};

export const FlareJointAboveMinimumValuesShape: Shape = {
  type: "FlareJointAboveMinimumValues",
  fields: {
    figure: {
      words: [
        "flare-joint.figure.wall",
        "flare-joint.figure.torque",
        "flare-joint.figure.turn",
        "flare-joint.figure.diameter",
        "flare-joint.figure.seat-angle",
      ],
    },
    measured: { either: ["length", "angle", "torque"] },
    low: { either: ["length", "angle", "torque"] },
  },
};

export const FlareJointAboveMinimumShape: Shape = {
  type: "FlareJointAboveMinimum",
  fields: {
    code: { words: ["flare-joint.above-minimum"] },
    values: FlareJointAboveMinimumValuesShape,
    "text?": "text",
  },
};

export const FlareJointBelowMinimumValuesShape: Shape = {
  type: "FlareJointBelowMinimumValues",
  fields: {
    figure: {
      words: [
        "flare-joint.figure.wall",
        "flare-joint.figure.torque",
        "flare-joint.figure.turn",
        "flare-joint.figure.diameter",
        "flare-joint.figure.seat-angle",
      ],
    },
    measured: { either: ["length", "angle", "torque"] },
    low: { either: ["length", "angle", "torque"] },
  },
};

export const FlareJointBelowMinimumShape: Shape = {
  type: "FlareJointBelowMinimum",
  fields: {
    code: { words: ["flare-joint.below-minimum"] },
    values: FlareJointBelowMinimumValuesShape,
    "text?": "text",
  },
};

export const FlareJointWouldHaveFailedValuesShape: Shape = {
  type: "FlareJointWouldHaveFailedValues",
  fields: { beyond: { either: ["length", "angle", "torque"] } },
};

export const FlareJointWouldHaveFailedShape: Shape = {
  type: "FlareJointWouldHaveFailed",
  fields: {
    code: { words: ["flare-joint.would-have-failed"] },
    values: FlareJointWouldHaveFailedValuesShape,
    "text?": "text",
  },
};

export const FlareJointSourcesDisagreeShape: Shape = {
  type: "FlareJointSourcesDisagree",
  fields: {
    code: { words: ["flare-joint.sources-disagree"] },
    values: FlareJointWithinRangeValuesShape,
    "text?": "text",
  },
};

export const FlareJointMinimumsDisagreeValuesShape: Shape = {
  type: "FlareJointMinimumsDisagreeValues",
  fields: {
    figure: {
      words: [
        "flare-joint.figure.wall",
        "flare-joint.figure.torque",
        "flare-joint.figure.turn",
        "flare-joint.figure.diameter",
        "flare-joint.figure.seat-angle",
      ],
    },
    measured: { either: ["length", "angle", "torque"] },
    low: { either: ["length", "angle", "torque"] },
  },
};

export const FlareJointMinimumsDisagreeShape: Shape = {
  type: "FlareJointMinimumsDisagree",
  fields: {
    code: { words: ["flare-joint.minimums-disagree"] },
    values: FlareJointMinimumsDisagreeValuesShape,
    "text?": "text",
  },
};

export const FlareJointInstrumentCannotTellValuesShape: Shape = {
  type: "FlareJointInstrumentCannotTellValues",
  fields: {
    figure: {
      words: [
        "flare-joint.figure.wall",
        "flare-joint.figure.torque",
        "flare-joint.figure.turn",
        "flare-joint.figure.diameter",
        "flare-joint.figure.seat-angle",
      ],
    },
    measured: { either: ["length", "angle", "torque"] },
    guard: { either: ["length", "angle", "torque"] },
  },
};

export const FlareJointInstrumentCannotTellShape: Shape = {
  type: "FlareJointInstrumentCannotTell",
  fields: {
    code: { words: ["flare-joint.instrument-cannot-tell"] },
    values: FlareJointInstrumentCannotTellValuesShape,
    "text?": "text",
  },
};

export const FlareJointHydraulicFlareShape: Shape = {
  type: "FlareJointHydraulicFlare",
  fields: {
    code: { words: ["flare-joint.hydraulic-flare"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const FlareJointManualRangeWideValuesShape: Shape = {
  type: "FlareJointManualRangeWideValues",
  fields: {
    low: { either: ["length", "angle", "torque"] },
    high: { either: ["length", "angle", "torque"] },
    from: { either: ["length", "angle", "torque"] },
    to: { either: ["length", "angle", "torque"] },
    tube: VerbatimShape,
  },
};

export const FlareJointManualRangeWideShape: Shape = {
  type: "FlareJointManualRangeWide",
  fields: {
    code: { words: ["flare-joint.manual-range-wide"] },
    values: FlareJointManualRangeWideValuesShape,
    "text?": "text",
  },
};

export const FlareJointManualRangeApartValuesShape: Shape = {
  type: "FlareJointManualRangeApartValues",
  fields: {
    low: { either: ["length", "angle", "torque"] },
    high: { either: ["length", "angle", "torque"] },
    from: { either: ["length", "angle", "torque"] },
    to: { either: ["length", "angle", "torque"] },
    tube: VerbatimShape,
  },
};

export const FlareJointManualRangeApartShape: Shape = {
  type: "FlareJointManualRangeApart",
  fields: {
    code: { words: ["flare-joint.manual-range-apart"] },
    values: FlareJointManualRangeApartValuesShape,
    "text?": "text",
  },
};

export const FlareJointNewtonMeterAsFootPoundShape: Shape = {
  type: "FlareJointNewtonMeterAsFootPound",
  fields: {
    code: { words: ["flare-joint.newton-meter-as-foot-pound"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const FlareJointFootPoundAsNewtonMeterShape: Shape = {
  type: "FlareJointFootPoundAsNewtonMeter",
  fields: {
    code: { words: ["flare-joint.foot-pound-as-newton-meter"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const FlareJointManualDiametersWideValuesShape: Shape = {
  type: "FlareJointManualDiametersWideValues",
  fields: {
    low: { either: ["length", "angle", "torque"] },
    high: { either: ["length", "angle", "torque"] },
    widest: { either: ["length", "angle", "torque"] },
  },
};

export const FlareJointManualDiametersWideShape: Shape = {
  type: "FlareJointManualDiametersWide",
  fields: {
    code: { words: ["flare-joint.manual-diameters-wide"] },
    values: FlareJointManualDiametersWideValuesShape,
    "text?": "text",
  },
};

export const FlareJointManualMinimumThinValuesShape: Shape = {
  type: "FlareJointManualMinimumThinValues",
  fields: {
    least: { either: ["length", "angle", "torque"] },
    usual: { either: ["length", "angle", "torque"] },
  },
};

export const FlareJointManualMinimumThinShape: Shape = {
  type: "FlareJointManualMinimumThin",
  fields: {
    code: { words: ["flare-joint.manual-minimum-thin"] },
    values: FlareJointManualMinimumThinValuesShape,
    "text?": "text",
  },
};

export const FlareJointAdapterNeededValuesShape: Shape = {
  type: "FlareJointAdapterNeededValues",
  fields: {
    port: VerbatimShape,
    portThread: VerbatimShape,
    hose: VerbatimShape,
    hoseThread: VerbatimShape,
  },
};

export const FlareJointAdapterNeededShape: Shape = {
  type: "FlareJointAdapterNeeded",
  fields: {
    code: { words: ["flare-joint.adapter-needed"] },
    values: FlareJointAdapterNeededValuesShape,
    "text?": "text",
  },
};

export const FlareJointHoseFitsValuesShape: Shape = {
  type: "FlareJointHoseFitsValues",
  fields: { hose: VerbatimShape, hoseThread: VerbatimShape },
};

export const FlareJointHoseFitsShape: Shape = {
  type: "FlareJointHoseFits",
  fields: {
    code: { words: ["flare-joint.hose-fits"] },
    values: FlareJointHoseFitsValuesShape,
    "text?": "text",
  },
};

export const FlareJointExactInstrumentShape: Shape = {
  type: "FlareJointExactInstrument",
  fields: {
    code: { words: ["flare-joint.exact-instrument"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const FlareJointPublishedRangesValuesShape: Shape = {
  type: "FlareJointPublishedRangesValues",
  fields: {
    sources: {
      list: {
        words: [
          "flare-joint.source.en-378-2",
          "flare-joint.source.jis-type-manuals",
          "flare-joint.source.manual-range",
        ],
      },
    },
  },
};

export const FlareJointPublishedRangesShape: Shape = {
  type: "FlareJointPublishedRanges",
  fields: {
    code: { words: ["flare-joint.published-ranges"] },
    values: FlareJointPublishedRangesValuesShape,
    "text?": "text",
  },
};

export const FlareJointOneSourceShape: Shape = {
  type: "FlareJointOneSource",
  fields: {
    code: { words: ["flare-joint.one-source"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const FlareJointNotALeakTestShape: Shape = {
  type: "FlareJointNotALeakTest",
  fields: {
    code: { words: ["flare-joint.not-a-leak-test"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const FlareJointBeyondSourcesValuesShape: Shape = {
  type: "FlareJointBeyondSourcesValues",
  fields: {
    low: { either: ["length", "angle", "torque"] },
    high: { either: ["length", "angle", "torque"] },
    torque: { either: ["length", "angle", "torque"] },
  },
};

export const FlareJointBeyondSourcesShape: Shape = {
  type: "FlareJointBeyondSources",
  fields: {
    code: { words: ["flare-joint.beyond-sources"] },
    values: FlareJointBeyondSourcesValuesShape,
    "text?": "text",
  },
};

export const FlareJointTightenValuesShape: Shape = {
  type: "FlareJointTightenValues",
  fields: {
    low: { either: ["length", "angle", "torque"] },
    high: { either: ["length", "angle", "torque"] },
  },
};

export const FlareJointTightenShape: Shape = {
  type: "FlareJointTighten",
  fields: {
    code: { words: ["flare-joint.tighten"] },
    values: FlareJointTightenValuesShape,
    "text?": "text",
  },
};

export const FlareJointTightenByTurnShape: Shape = {
  type: "FlareJointTightenByTurn",
  fields: {
    code: { words: ["flare-joint.tighten-by-turn"] },
    values: FlareJointTightenValuesShape,
    "text?": "text",
  },
};

export const FlareJointRemakeAndTightenShape: Shape = {
  type: "FlareJointRemakeAndTighten",
  fields: {
    code: { words: ["flare-joint.remake-and-tighten"] },
    values: FlareJointTightenValuesShape,
    "text?": "text",
  },
};

export const FlareJointRemakeAndTurnShape: Shape = {
  type: "FlareJointRemakeAndTurn",
  fields: {
    code: { words: ["flare-joint.remake-and-turn"] },
    values: FlareJointTightenValuesShape,
    "text?": "text",
  },
};

export const FlareJointRemakeLargerShape: Shape = {
  type: "FlareJointRemakeLarger",
  fields: {
    code: { words: ["flare-joint.remake-larger"] },
    values: FlareJointTightenValuesShape,
    "text?": "text",
  },
};

export const FlareJointRemakeSmallerShape: Shape = {
  type: "FlareJointRemakeSmaller",
  fields: {
    code: { words: ["flare-joint.remake-smaller"] },
    values: FlareJointTightenValuesShape,
    "text?": "text",
  },
};

export const FlareJointRemakeConeShape: Shape = {
  type: "FlareJointRemakeCone",
  fields: {
    code: { words: ["flare-joint.remake-cone"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const FlareJointReplaceTubeValuesShape: Shape = {
  type: "FlareJointReplaceTubeValues",
  fields: { low: { either: ["length", "angle", "torque"] } },
};

export const FlareJointReplaceTubeShape: Shape = {
  type: "FlareJointReplaceTube",
  fields: {
    code: { words: ["flare-joint.replace-tube"] },
    values: FlareJointReplaceTubeValuesShape,
    "text?": "text",
  },
};

export const FlareJointMeasureBetterValuesShape: Shape = {
  type: "FlareJointMeasureBetterValues",
  fields: { needed: { either: ["length", "angle", "torque"] } },
};

export const FlareJointMeasureBetterShape: Shape = {
  type: "FlareJointMeasureBetter",
  fields: {
    code: { words: ["flare-joint.measure-better"] },
    values: FlareJointMeasureBetterValuesShape,
    "text?": "text",
  },
};

export const FlareJointStateManualRangeShape: Shape = {
  type: "FlareJointStateManualRange",
  fields: {
    code: { words: ["flare-joint.state-manual-range"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const FlareJointReadManualAgainShape: Shape = {
  type: "FlareJointReadManualAgain",
  fields: {
    code: { words: ["flare-joint.read-manual-again"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const FlareJointMetricTubeShape: Shape = {
  type: "FlareJointMetricTube",
  fields: {
    code: { words: ["flare-joint.metric-tube"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const FlareJointFigureFromManualShape: Shape = {
  type: "FlareJointFigureFromManual",
  fields: {
    code: { words: ["flare-joint.figure-from-manual"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const FlareJointStatementShape: Shape = {
  type: "FlareJointStatement",
  by: "code",
  cases: {
    "flare-joint.within-range": FlareJointWithinRangeShape,
    "flare-joint.outside-range": FlareJointOutsideRangeShape,
    "flare-joint.above-minimum": FlareJointAboveMinimumShape,
    "flare-joint.below-minimum": FlareJointBelowMinimumShape,
    "flare-joint.would-have-failed": FlareJointWouldHaveFailedShape,
    "flare-joint.sources-disagree": FlareJointSourcesDisagreeShape,
    "flare-joint.minimums-disagree": FlareJointMinimumsDisagreeShape,
    "flare-joint.instrument-cannot-tell": FlareJointInstrumentCannotTellShape,
    "flare-joint.hydraulic-flare": FlareJointHydraulicFlareShape,
    "flare-joint.manual-range-wide": FlareJointManualRangeWideShape,
    "flare-joint.manual-range-apart": FlareJointManualRangeApartShape,
    "flare-joint.newton-meter-as-foot-pound": FlareJointNewtonMeterAsFootPoundShape,
    "flare-joint.foot-pound-as-newton-meter": FlareJointFootPoundAsNewtonMeterShape,
    "flare-joint.manual-diameters-wide": FlareJointManualDiametersWideShape,
    "flare-joint.manual-minimum-thin": FlareJointManualMinimumThinShape,
    "flare-joint.adapter-needed": FlareJointAdapterNeededShape,
    "flare-joint.hose-fits": FlareJointHoseFitsShape,
    "flare-joint.exact-instrument": FlareJointExactInstrumentShape,
    "flare-joint.published-ranges": FlareJointPublishedRangesShape,
    "flare-joint.one-source": FlareJointOneSourceShape,
    "flare-joint.not-a-leak-test": FlareJointNotALeakTestShape,
    "flare-joint.beyond-sources": FlareJointBeyondSourcesShape,
    "flare-joint.tighten": FlareJointTightenShape,
    "flare-joint.tighten-by-turn": FlareJointTightenByTurnShape,
    "flare-joint.remake-and-tighten": FlareJointRemakeAndTightenShape,
    "flare-joint.remake-and-turn": FlareJointRemakeAndTurnShape,
    "flare-joint.remake-larger": FlareJointRemakeLargerShape,
    "flare-joint.remake-smaller": FlareJointRemakeSmallerShape,
    "flare-joint.remake-cone": FlareJointRemakeConeShape,
    "flare-joint.replace-tube": FlareJointReplaceTubeShape,
    "flare-joint.measure-better": FlareJointMeasureBetterShape,
    "flare-joint.state-manual-range": FlareJointStateManualRangeShape,
    "flare-joint.read-manual-again": FlareJointReadManualAgainShape,
    "flare-joint.metric-tube": FlareJointMetricTubeShape,
    "flare-joint.figure-from-manual": FlareJointFigureFromManualShape,
  },
};

export const FlareJointWithinRange2Shape: Shape = {
  type: "FlareJointWithinRange2",
  fields: {
    code: { words: ["flare-joint.within-range"] },
    values: FlareJointWithinRangeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointOutsideRange2Shape: Shape = {
  type: "FlareJointOutsideRange2",
  fields: {
    code: { words: ["flare-joint.outside-range"] },
    values: FlareJointWithinRangeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointAboveMinimum2Shape: Shape = {
  type: "FlareJointAboveMinimum2",
  fields: {
    code: { words: ["flare-joint.above-minimum"] },
    values: FlareJointAboveMinimumValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointBelowMinimum2Shape: Shape = {
  type: "FlareJointBelowMinimum2",
  fields: {
    code: { words: ["flare-joint.below-minimum"] },
    values: FlareJointBelowMinimumValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointWouldHaveFailed2Shape: Shape = {
  type: "FlareJointWouldHaveFailed2",
  fields: {
    code: { words: ["flare-joint.would-have-failed"] },
    values: FlareJointWouldHaveFailedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointSourcesDisagree2Shape: Shape = {
  type: "FlareJointSourcesDisagree2",
  fields: {
    code: { words: ["flare-joint.sources-disagree"] },
    values: FlareJointWithinRangeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointMinimumsDisagree2Shape: Shape = {
  type: "FlareJointMinimumsDisagree2",
  fields: {
    code: { words: ["flare-joint.minimums-disagree"] },
    values: FlareJointMinimumsDisagreeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointInstrumentCannotTell2Shape: Shape = {
  type: "FlareJointInstrumentCannotTell2",
  fields: {
    code: { words: ["flare-joint.instrument-cannot-tell"] },
    values: FlareJointInstrumentCannotTellValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointHydraulicFlare2Shape: Shape = {
  type: "FlareJointHydraulicFlare2",
  fields: {
    code: { words: ["flare-joint.hydraulic-flare"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointManualRangeWide2Shape: Shape = {
  type: "FlareJointManualRangeWide2",
  fields: {
    code: { words: ["flare-joint.manual-range-wide"] },
    values: FlareJointManualRangeWideValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointManualRangeApart2Shape: Shape = {
  type: "FlareJointManualRangeApart2",
  fields: {
    code: { words: ["flare-joint.manual-range-apart"] },
    values: FlareJointManualRangeApartValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointNewtonMeterAsFootPound2Shape: Shape = {
  type: "FlareJointNewtonMeterAsFootPound2",
  fields: {
    code: { words: ["flare-joint.newton-meter-as-foot-pound"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointFootPoundAsNewtonMeter2Shape: Shape = {
  type: "FlareJointFootPoundAsNewtonMeter2",
  fields: {
    code: { words: ["flare-joint.foot-pound-as-newton-meter"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointManualDiametersWide2Shape: Shape = {
  type: "FlareJointManualDiametersWide2",
  fields: {
    code: { words: ["flare-joint.manual-diameters-wide"] },
    values: FlareJointManualDiametersWideValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointManualMinimumThin2Shape: Shape = {
  type: "FlareJointManualMinimumThin2",
  fields: {
    code: { words: ["flare-joint.manual-minimum-thin"] },
    values: FlareJointManualMinimumThinValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointAdapterNeeded2Shape: Shape = {
  type: "FlareJointAdapterNeeded2",
  fields: {
    code: { words: ["flare-joint.adapter-needed"] },
    values: FlareJointAdapterNeededValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointHoseFits2Shape: Shape = {
  type: "FlareJointHoseFits2",
  fields: {
    code: { words: ["flare-joint.hose-fits"] },
    values: FlareJointHoseFitsValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointExactInstrument2Shape: Shape = {
  type: "FlareJointExactInstrument2",
  fields: {
    code: { words: ["flare-joint.exact-instrument"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointPublishedRanges2Shape: Shape = {
  type: "FlareJointPublishedRanges2",
  fields: {
    code: { words: ["flare-joint.published-ranges"] },
    values: FlareJointPublishedRangesValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointOneSource2Shape: Shape = {
  type: "FlareJointOneSource2",
  fields: {
    code: { words: ["flare-joint.one-source"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointNotALeakTest2Shape: Shape = {
  type: "FlareJointNotALeakTest2",
  fields: {
    code: { words: ["flare-joint.not-a-leak-test"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointBeyondSources2Shape: Shape = {
  type: "FlareJointBeyondSources2",
  fields: {
    code: { words: ["flare-joint.beyond-sources"] },
    values: FlareJointBeyondSourcesValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointTighten2Shape: Shape = {
  type: "FlareJointTighten2",
  fields: {
    code: { words: ["flare-joint.tighten"] },
    values: FlareJointTightenValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointTightenByTurn2Shape: Shape = {
  type: "FlareJointTightenByTurn2",
  fields: {
    code: { words: ["flare-joint.tighten-by-turn"] },
    values: FlareJointTightenValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointRemakeAndTighten2Shape: Shape = {
  type: "FlareJointRemakeAndTighten2",
  fields: {
    code: { words: ["flare-joint.remake-and-tighten"] },
    values: FlareJointTightenValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointRemakeAndTurn2Shape: Shape = {
  type: "FlareJointRemakeAndTurn2",
  fields: {
    code: { words: ["flare-joint.remake-and-turn"] },
    values: FlareJointTightenValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointRemakeLarger2Shape: Shape = {
  type: "FlareJointRemakeLarger2",
  fields: {
    code: { words: ["flare-joint.remake-larger"] },
    values: FlareJointTightenValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointRemakeSmaller2Shape: Shape = {
  type: "FlareJointRemakeSmaller2",
  fields: {
    code: { words: ["flare-joint.remake-smaller"] },
    values: FlareJointTightenValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointRemakeCone2Shape: Shape = {
  type: "FlareJointRemakeCone2",
  fields: {
    code: { words: ["flare-joint.remake-cone"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointReplaceTube2Shape: Shape = {
  type: "FlareJointReplaceTube2",
  fields: {
    code: { words: ["flare-joint.replace-tube"] },
    values: FlareJointReplaceTubeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointMeasureBetter2Shape: Shape = {
  type: "FlareJointMeasureBetter2",
  fields: {
    code: { words: ["flare-joint.measure-better"] },
    values: FlareJointMeasureBetterValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointStateManualRange2Shape: Shape = {
  type: "FlareJointStateManualRange2",
  fields: {
    code: { words: ["flare-joint.state-manual-range"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointReadManualAgain2Shape: Shape = {
  type: "FlareJointReadManualAgain2",
  fields: {
    code: { words: ["flare-joint.read-manual-again"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointMetricTube2Shape: Shape = {
  type: "FlareJointMetricTube2",
  fields: {
    code: { words: ["flare-joint.metric-tube"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareJointFigureFromManual2Shape: Shape = {
  type: "FlareJointFigureFromManual2",
  fields: {
    code: { words: ["flare-joint.figure-from-manual"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const FlareAssessmentOfAngleFlareConeCauseCautionsItemShape: Shape = {
  type: "FlareAssessmentOfAngleFlareConeCauseCautionsItem",
  by: "code",
  cases: {
    "safety.others-govern": SafetyOthersGovernShape,
    "safety.dry-nitrogen-only": SafetyDryNitrogenOnlyShape,
    "safety.regulator-and-relief": SafetyRegulatorAndReliefShape,
    "safety.raise-in-stages": SafetyRaiseInStagesShape,
    "safety.lowest-rating": SafetyLowestRatingShape,
    "safety.nitrogen-suffocates": SafetyNitrogenSuffocatesShape,
    "safety.open-under-pressure": SafetyOpenUnderPressureShape,
    "safety.refrigerant-contact": SafetyRefrigerantContactShape,
    "safety.flammable-refrigerant": SafetyFlammableRefrigerantShape,
    "safety.toxic-refrigerant": SafetyToxicRefrigerantShape,
    "safety.refrigerant-suffocates": SafetyRefrigerantSuffocatesShape,
    "safety.charge-tight-system": SafetyChargeTightSystemShape,
    "safety.refrigerant-air-mixture": SafetyRefrigerantAirMixtureShape,
    "safety.compressor-in-vacuum": SafetyCompressorInVacuumShape,
    "safety.line-voltage": SafetyLineVoltageShape,
    "safety.meter-category": SafetyMeterCategoryShape,
    "safety.running-unit": SafetyRunningUnitShape,
    "safety.work-at-height": SafetyWorkAtHeightShape,
    "flare-joint.within-range": FlareJointWithinRange2Shape,
    "flare-joint.outside-range": FlareJointOutsideRange2Shape,
    "flare-joint.above-minimum": FlareJointAboveMinimum2Shape,
    "flare-joint.below-minimum": FlareJointBelowMinimum2Shape,
    "flare-joint.would-have-failed": FlareJointWouldHaveFailed2Shape,
    "flare-joint.sources-disagree": FlareJointSourcesDisagree2Shape,
    "flare-joint.minimums-disagree": FlareJointMinimumsDisagree2Shape,
    "flare-joint.instrument-cannot-tell": FlareJointInstrumentCannotTell2Shape,
    "flare-joint.hydraulic-flare": FlareJointHydraulicFlare2Shape,
    "flare-joint.manual-range-wide": FlareJointManualRangeWide2Shape,
    "flare-joint.manual-range-apart": FlareJointManualRangeApart2Shape,
    "flare-joint.newton-meter-as-foot-pound": FlareJointNewtonMeterAsFootPound2Shape,
    "flare-joint.foot-pound-as-newton-meter": FlareJointFootPoundAsNewtonMeter2Shape,
    "flare-joint.manual-diameters-wide": FlareJointManualDiametersWide2Shape,
    "flare-joint.manual-minimum-thin": FlareJointManualMinimumThin2Shape,
    "flare-joint.adapter-needed": FlareJointAdapterNeeded2Shape,
    "flare-joint.hose-fits": FlareJointHoseFits2Shape,
    "flare-joint.exact-instrument": FlareJointExactInstrument2Shape,
    "flare-joint.published-ranges": FlareJointPublishedRanges2Shape,
    "flare-joint.one-source": FlareJointOneSource2Shape,
    "flare-joint.not-a-leak-test": FlareJointNotALeakTest2Shape,
    "flare-joint.beyond-sources": FlareJointBeyondSources2Shape,
    "flare-joint.tighten": FlareJointTighten2Shape,
    "flare-joint.tighten-by-turn": FlareJointTightenByTurn2Shape,
    "flare-joint.remake-and-tighten": FlareJointRemakeAndTighten2Shape,
    "flare-joint.remake-and-turn": FlareJointRemakeAndTurn2Shape,
    "flare-joint.remake-larger": FlareJointRemakeLarger2Shape,
    "flare-joint.remake-smaller": FlareJointRemakeSmaller2Shape,
    "flare-joint.remake-cone": FlareJointRemakeCone2Shape,
    "flare-joint.replace-tube": FlareJointReplaceTube2Shape,
    "flare-joint.measure-better": FlareJointMeasureBetter2Shape,
    "flare-joint.state-manual-range": FlareJointStateManualRange2Shape,
    "flare-joint.read-manual-again": FlareJointReadManualAgain2Shape,
    "flare-joint.metric-tube": FlareJointMetricTube2Shape,
    "flare-joint.figure-from-manual": FlareJointFigureFromManual2Shape,
  },
};

export const FlareAssessmentOfAngleFlareConeCauseShape: Shape = {
  type: "FlareAssessmentOfAngleFlareConeCause",
  fields: {
    measured: EstimateOfAngleShape,
    window: FlareAssessmentOfAngleFlareConeCauseWindowShape,
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["cone-too-steep", "cone-too-flat"] },
    reasons: { list: FlareJointStatementShape },
    assumptions: { list: FlareJointStatementShape },
    cautions: { list: FlareAssessmentOfAngleFlareConeCauseCautionsItemShape },
    "actions?": { list: FlareJointStatementShape },
    sources: { list: CitationShape },
  },
  says: "The verdict on one measured figure of a flare joint.",
  about: {
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
};

export const FlareDiameterLimitsInputShape: Shape = {
  type: "FlareDiameterLimitsInput",
  fields: { tube: FlareTubeShape, refrigerant: { words: ["R410A", "R32", "R22"] } },
  about: {
    tube: "Outside diameter of the tube in inches.",
    refrigerant: "Refrigerant of the unit.",
  },
};

export const FlareLimitsOfLengthShape: Shape = {
  type: "FlareLimitsOfLength",
  fields: { low: "length", high: "length" },
  says: "The smallest and the largest figure that a source allows.",
  about: { low: "Smallest figure allowed.", high: "Largest figure allowed." },
};

export const FlareDiameterInputShape: Shape = {
  type: "FlareDiameterInput",
  fields: {
    tube: FlareTubeShape,
    refrigerant: { words: ["R410A", "R32", "R22"] },
    diameter: "length",
    "manual?": FlareLimitsOfLengthShape,
    "caliper?": InstrumentOfLengthShape,
    "confidence?": "number",
  },
  says: "A measured flare.",
  about: {
    tube: "Outside diameter of the tube in inches.",
    refrigerant: "Refrigerant of the unit.",
    diameter: "Measured outside diameter of the flare, above 0.",
    manual: "The limits in the unit's manual; they decide alone, unless they are in doubt.",
    caliper: "What is known of the caliper; counted as exact when left out.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
  },
};

export const FlareAssessmentOfLengthFlareDiameterCauseWindowShape: Shape = {
  type: "FlareAssessmentOfLengthFlareDiameterCauseWindow",
  fields: { "low?": "length", "high?": "length" },
  about: { low: "Smallest figure allowed.", high: "Largest figure allowed." },
};

export const FlareAssessmentOfLengthFlareDiameterCauseShape: Shape = {
  type: "FlareAssessmentOfLengthFlareDiameterCause",
  fields: {
    measured: EstimateOfLengthShape,
    window: FlareAssessmentOfLengthFlareDiameterCauseWindowShape,
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["flare-too-small", "flare-too-large"] },
    reasons: { list: FlareJointStatementShape },
    assumptions: { list: FlareJointStatementShape },
    cautions: { list: FlareAssessmentOfAngleFlareConeCauseCautionsItemShape },
    "actions?": { list: FlareJointStatementShape },
    sources: { list: CitationShape },
  },
  says: "The verdict on one measured figure of a flare joint.",
  about: {
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
};

export const FlareLimitsOfTorqueShape: Shape = {
  type: "FlareLimitsOfTorque",
  fields: { low: "torque", high: "torque" },
  says: "The smallest and the largest figure that a source allows.",
  about: { low: "Smallest figure allowed.", high: "Largest figure allowed." },
};

export const TorqueWrenchShape: Shape = {
  type: "TorqueWrench",
  fields: { "relativeAccuracy?": "ratio", "accuracy?": "torque", "resolution?": "torque" },
  says: "What is known of a torque wrench.",
  about: {
    relativeAccuracy: "Limits of error as a fraction of the reading: percent(4).",
    accuracy: "Limits of error as a torque, ±.",
    resolution: "Smallest step of the scale.",
  },
};

export const FlareTorqueInputShape: Shape = {
  type: "FlareTorqueInput",
  fields: {
    tube: FlareTubeShape,
    torque: "torque",
    "manual?": FlareLimitsOfTorqueShape,
    "wrench?": TorqueWrenchShape,
    "confidence?": "number",
  },
  says: "A tightened flare nut.",
  about: {
    tube: "Outside diameter of the tube in inches.",
    torque: "The torque at which the wrench clicked or which it shows, above 0.",
    manual:
      "The window in the unit's manual. It decides alone, unless it is in doubt; without it all published sources decide.",
    wrench: "What is known of the wrench; counted as exact when left out, and the verdict says so.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
  },
};

export const FlareTorqueAssessmentWindowShape: Shape = {
  type: "FlareTorqueAssessmentWindow",
  fields: { "low?": "torque", "high?": "torque" },
  about: { low: "Smallest figure allowed.", high: "Largest figure allowed." },
};

export const FlareTorqueConflictShape: Shape = {
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
  says: "Two sources whose windows share less than three quarters of the narrower one.",
  about: {
    between: "The two sources.",
    sharedFraction: "How much of the narrower window both allow, 0 to 1.",
  },
};

export const FlareTorqueAssessmentShape: Shape = {
  type: "FlareTorqueAssessment",
  fields: {
    measured: EstimateOfTorqueShape,
    window: FlareTorqueAssessmentWindowShape,
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["under-tightened", "over-tightened"] },
    reasons: { list: FlareJointStatementShape },
    assumptions: { list: FlareJointStatementShape },
    cautions: { list: FlareAssessmentOfAngleFlareConeCauseCautionsItemShape },
    "actions?": { list: FlareJointStatementShape },
    sources: { list: CitationShape },
    conflicts: { list: FlareTorqueConflictShape },
  },
  says: "The verdict on the torque of a flare nut.",
  about: {
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
};

export const FlareTurnInputShape: Shape = {
  type: "FlareTurnInput",
  fields: {
    tube: FlareTubeShape,
    turn: "angle",
    "protractor?": InstrumentOfAngleShape,
    "confidence?": "number",
  },
  says: "A flare nut tightened by angle.",
  about: {
    tube: "Outside diameter of the tube in inches.",
    turn: "Turn from the point where the torque rises, above 0.",
    protractor: "How well the angle is known; counted as exact when left out.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
  },
};

export const FlareAssessmentOfAngleFlareTorqueCauseShape: Shape = {
  type: "FlareAssessmentOfAngleFlareTorqueCause",
  fields: {
    measured: EstimateOfAngleShape,
    window: FlareAssessmentOfAngleFlareConeCauseWindowShape,
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["under-tightened", "over-tightened"] },
    reasons: { list: FlareJointStatementShape },
    assumptions: { list: FlareJointStatementShape },
    cautions: { list: FlareAssessmentOfAngleFlareConeCauseCautionsItemShape },
    "actions?": { list: FlareJointStatementShape },
    sources: { list: CitationShape },
  },
  says: "The verdict on one measured figure of a flare joint.",
  about: {
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
};

export const FlareWallInputShape: Shape = {
  type: "FlareWallInput",
  fields: {
    tube: FlareTubeShape,
    refrigerant: { words: ["R410A", "R32", "R22"] },
    wall: "length",
    "manualMinimum?": "length",
    "micrometer?": InstrumentOfLengthShape,
    "confidence?": "number",
  },
  says: "A tube before it is flared.",
  about: {
    tube: "Outside diameter in inches.",
    refrigerant: "Refrigerant of the unit.",
    wall: "Measured wall, above 0.",
    manualMinimum:
      "The minimum in the unit's manual; from 0.5 mm it decides alone. Needed for 3/4 in and for R22.",
    micrometer: "What is known of the micrometer; counted as exact when left out.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
  },
};

export const FlareAssessmentOfLengthWallTooThinShape: Shape = {
  type: "FlareAssessmentOfLengthWallTooThin",
  fields: {
    measured: EstimateOfLengthShape,
    window: FlareAssessmentOfLengthFlareDiameterCauseWindowShape,
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["wall-too-thin"] },
    reasons: { list: FlareJointStatementShape },
    assumptions: { list: FlareJointStatementShape },
    cautions: { list: FlareAssessmentOfAngleFlareConeCauseCautionsItemShape },
    "actions?": { list: FlareJointStatementShape },
    sources: { list: CitationShape },
  },
  says: "The verdict on one measured figure of a flare joint.",
  about: {
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
};

export const FlareNutSizeInputShape: Shape = {
  type: "FlareNutSizeInput",
  fields: { tube: FlareTubeShape, refrigerant: { words: ["R410A", "R32", "R22"] } },
  about: {
    tube: "Outside diameter of the tube in inches.",
    refrigerant: "Refrigerant of the unit.",
  },
};

export const FlareThreadInputShape: Shape = {
  type: "FlareThreadInput",
  words: ["1/4", "5/16", "3/8", "1/2", "5/8", "3/4"],
};

export const FlareThreadShape: Shape = {
  type: "FlareThread",
  fields: {
    name: "text",
    majorDiameter: "length",
    threadsPerInch: "number",
    citation: CitationShape,
  },
  says: "The thread of a flare fitting.",
  about: {
    name: "As the trade writes it: 7/16-20.",
    majorDiameter: "Major diameter.",
    threadsPerInch: "Threads per inch.",
    citation: "Where it stands.",
  },
};

export const FlareTorqueInput2Shape: Shape = {
  type: "FlareTorqueInput2",
  words: ["1/4", "5/16", "3/8", "1/2", "5/8", "3/4"],
};

export const FlareTorqueWindowShape: Shape = {
  type: "FlareTorqueWindow",
  fields: {
    low: "torque",
    high: "torque",
    source: { words: ["jis-type-manuals", "en-378-2", "manual-range"] },
    citation: CitationShape,
  },
  says: "The torque window of one source.",
  about: {
    low: "Smallest figure allowed.",
    high: "Largest figure allowed.",
    source: "Who prints it.",
    citation: "Where it stands.",
  },
};

export const FlareTorqueShape: Shape = {
  type: "FlareTorque",
  fields: {
    windows: { list: FlareTorqueWindowShape },
    overlap: FlareLimitsOfTorqueShape,
    conflicts: { list: FlareTorqueConflictShape },
    cautions: { list: FlareAssessmentOfAngleFlareConeCauseCautionsItemShape },
  },
  says: "What the published sources say on the torque of one flare nut.",
  about: {
    windows: "The window of each source.",
    overlap: "What every source allows.",
    conflicts: "Pairs of sources that conflict; empty where they agree well.",
    cautions: "What overrides the figures and what can hurt someone.",
  },
};

export const FlareTurnInput2Shape: Shape = {
  type: "FlareTurnInput2",
  words: ["1/4", "5/16", "3/8", "1/2", "5/8", "3/4"],
};

export const FlareLimitsOfAngleShape: Shape = {
  type: "FlareLimitsOfAngle",
  fields: { low: "angle", high: "angle" },
  says: "The smallest and the largest figure that a source allows.",
  about: { low: "Smallest figure allowed.", high: "Largest figure allowed." },
};

export const ServicePortAdapterInputShape: Shape = {
  type: "ServicePortAdapterInput",
  fields: { port: { words: ["1/4", "5/16"] }, hose: { words: ["1/4", "5/16"] } },
  about: { port: "Size of the port on the unit, male.", hose: "Size of the hose's end, female." },
};

export const ServicePortAdapterShape: Shape = {
  type: "ServicePortAdapter",
  fields: {
    needed: "flag",
    port: FlareThreadShape,
    hose: FlareThreadShape,
    advice: FlareJointStatementShape,
    cautions: { list: FlareAssessmentOfAngleFlareConeCauseCautionsItemShape },
  },
  says: "Whether an adapter is needed between a service port and a hose.",
  about: {
    needed: "Whether one is needed.",
    port: "Thread of the port on the unit.",
    hose: "Thread of the hose's nut.",
    advice: "What to bring.",
    cautions: "What can hurt someone.",
  },
};

export const UsualServicePortInputShape: Shape = {
  type: "UsualServicePortInput",
  fields: {
    refrigerant: { words: ["R410A", "R32", "R22", "R134a"] },
    equipment: { words: ["mini-split", "ducted"] },
  },
  about: {
    refrigerant: "Refrigerant of the unit.",
    equipment: "A ductless split, or a ducted unit as sold in North America.",
  },
};
