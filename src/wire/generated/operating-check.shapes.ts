// Which shapes have the types of operating-check?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import { byDesignation } from "../named.ts";
import {
  CitationShape,
  EstimateOfTemperatureDifferenceShape,
  EstimateOfTemperatureShape,
  InstrumentOfGaugePressureShape,
} from "./assessment.shapes.ts";
import {
  AssessSubcoolingInputInput1InstrumentsShape,
  RefrigerantsAboveTolerance2Shape,
  RefrigerantsAboveToleranceShape,
  RefrigerantsAdjustToTarget2Shape,
  RefrigerantsAdjustToTargetShape,
  RefrigerantsBelowSaturation2Shape,
  RefrigerantsBelowSaturationShape,
  RefrigerantsBelowTolerance2Shape,
  RefrigerantsBelowToleranceShape,
  RefrigerantsCheckAirflowFirst2Shape,
  RefrigerantsCheckAirflowFirstShape,
  RefrigerantsCheckBothReadings2Shape,
  RefrigerantsCheckBothReadingsShape,
  RefrigerantsCloserThanTheModel2Shape,
  RefrigerantsCloserThanTheModelShape,
  RefrigerantsCorrectTheCharge2Shape,
  RefrigerantsCorrectTheChargeShape,
  RefrigerantsExactAtmosphere2Shape,
  RefrigerantsExactAtmosphereShape,
  RefrigerantsGaugeNeedsAtmosphere2Shape,
  RefrigerantsGaugeNeedsAtmosphereShape,
  RefrigerantsLargestUncertainty2Shape,
  RefrigerantsLargestUncertaintyShape,
  RefrigerantsLooksLikeOtherSide2Shape,
  RefrigerantsLooksLikeOtherSideShape,
  RefrigerantsNominalComposition2Shape,
  RefrigerantsNominalCompositionShape,
  RefrigerantsNumberOfRows2Shape,
  RefrigerantsNumberOfRowsShape,
  RefrigerantsOnlyWhereTheManualChargesByIt2Shape,
  RefrigerantsOnlyWhereTheManualChargesByItShape,
  RefrigerantsRangeOf2Shape,
  RefrigerantsRangeOfShape,
  RefrigerantsSaturationUncertainty2Shape,
  RefrigerantsSaturationUncertaintyShape,
  RefrigerantsStateTarget2Shape,
  RefrigerantsStateTargetShape,
  RefrigerantsStateTolerance2Shape,
  RefrigerantsStateToleranceShape,
  RefrigerantsSteady2Shape,
  RefrigerantsSteadyShape,
  RefrigerantsTableNeedsAtmosphere2Shape,
  RefrigerantsTableNeedsAtmosphereShape,
  RefrigerantsTableNeedsAtmosphereValuesShape,
  RefrigerantsTargetOutOfReach2Shape,
  RefrigerantsTargetOutOfReachShape,
  RefrigerantsToleranceReachesSaturation2Shape,
  RefrigerantsToleranceReachesSaturationShape,
  RefrigerantsToleranceWide2Shape,
  RefrigerantsToleranceWideShape,
  RefrigerantsTooCloseToCall2Shape,
  RefrigerantsTooCloseToCallShape,
  RefrigerantsUseBetterProbe2Shape,
  RefrigerantsUseBetterProbeShape,
  RefrigerantsWithinTolerance2Shape,
  RefrigerantsWithinToleranceShape,
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

export const ServicePortsInputShape: Shape = {
  type: "ServicePortsInput",
  fields: {
    mode: { words: ["cooling", "heating"] },
    expansion: { words: ["outdoor-unit", "evaporating-unit"] },
  },
  about: { mode: "What the unit does.", expansion: "Where the refrigerant expands." },
};

export const ServicePortRoleShape: Shape = {
  type: "ServicePortRole",
  fields: {
    side: { words: ["low", "high"] },
    shows: { words: ["suction", "discharge", "liquid", "expanded"] },
  },
  says: "What a port shows.",
  about: { side: "Side of the compressor that it belongs to.", shows: "What is behind it." },
};

export const OperatingCheckBySuperheatShape: Shape = {
  type: "OperatingCheckBySuperheat",
  fields: {
    code: { words: ["operating-check.by-superheat"] },
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

export const OperatingCheckBySubcoolingShape: Shape = {
  type: "OperatingCheckBySubcooling",
  fields: {
    code: { words: ["operating-check.by-subcooling"] },
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

export const OperatingCheckNoTargetShape: Shape = {
  type: "OperatingCheckNoTarget",
  fields: {
    code: { words: ["operating-check.no-target"] },
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

export const OperatingCheckNoTargetInHeatingShape: Shape = {
  type: "OperatingCheckNoTargetInHeating",
  fields: {
    code: { words: ["operating-check.no-target-in-heating"] },
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

export const OperatingCheckSuperheatBelowFloorValuesShape: Shape = {
  type: "OperatingCheckSuperheatBelowFloorValues",
  fields: { superheat: "temperatureDifference", least: "temperatureDifference" },
};

export const OperatingCheckSuperheatBelowFloorShape: Shape = {
  type: "OperatingCheckSuperheatBelowFloor",
  fields: {
    code: { words: ["operating-check.superheat-below-floor"] },
    values: OperatingCheckSuperheatBelowFloorValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckSuperheatNearFloorValuesShape: Shape = {
  type: "OperatingCheckSuperheatNearFloorValues",
  fields: { superheat: "temperatureDifference", least: "temperatureDifference" },
};

export const OperatingCheckSuperheatNearFloorShape: Shape = {
  type: "OperatingCheckSuperheatNearFloor",
  fields: {
    code: { words: ["operating-check.superheat-near-floor"] },
    values: OperatingCheckSuperheatNearFloorValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckGaugeSetSuitsValuesShape: Shape = {
  type: "OperatingCheckGaugeSetSuitsValues",
  fields: { pressure: "gaugePressure" },
};

export const OperatingCheckGaugeSetSuitsShape: Shape = {
  type: "OperatingCheckGaugeSetSuits",
  fields: {
    code: { words: ["operating-check.gauge-set-suits"] },
    values: OperatingCheckGaugeSetSuitsValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckAboveHoseRatingValuesShape: Shape = {
  type: "OperatingCheckAboveHoseRatingValues",
  fields: { pressure: "gaugePressure", limit: "gaugePressure" },
};

export const OperatingCheckAboveHoseRatingShape: Shape = {
  type: "OperatingCheckAboveHoseRating",
  fields: {
    code: { words: ["operating-check.above-hose-rating"] },
    values: OperatingCheckAboveHoseRatingValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckDestroysGaugeValuesShape: Shape = {
  type: "OperatingCheckDestroysGaugeValues",
  fields: { pressure: "gaugePressure", limit: "gaugePressure" },
};

export const OperatingCheckDestroysGaugeShape: Shape = {
  type: "OperatingCheckDestroysGauge",
  fields: {
    code: { words: ["operating-check.destroys-gauge"] },
    values: OperatingCheckDestroysGaugeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckBeyondScaleValuesShape: Shape = {
  type: "OperatingCheckBeyondScaleValues",
  fields: { pressure: "gaugePressure", limit: "gaugePressure" },
};

export const OperatingCheckBeyondScaleShape: Shape = {
  type: "OperatingCheckBeyondScale",
  fields: {
    code: { words: ["operating-check.beyond-scale"] },
    values: OperatingCheckBeyondScaleValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckWithinWindowValuesShape: Shape = {
  type: "OperatingCheckWithinWindowValues",
  fields: { pressure: "gaugePressure", from: "gaugePressure", to: "gaugePressure" },
};

export const OperatingCheckWithinWindowShape: Shape = {
  type: "OperatingCheckWithinWindow",
  fields: {
    code: { words: ["operating-check.within-window"] },
    values: OperatingCheckWithinWindowValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckBelowWindowShape: Shape = {
  type: "OperatingCheckBelowWindow",
  fields: {
    code: { words: ["operating-check.below-window"] },
    values: OperatingCheckWithinWindowValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckAboveWindowShape: Shape = {
  type: "OperatingCheckAboveWindow",
  fields: {
    code: { words: ["operating-check.above-window"] },
    values: OperatingCheckWithinWindowValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckOtherSideValuesShape: Shape = {
  type: "OperatingCheckOtherSideValues",
  fields: {
    pressure: "gaugePressure",
    from: "gaugePressure",
    to: "gaugePressure",
    side: { words: ["operating-check.side.low", "operating-check.side.high"] },
  },
};

export const OperatingCheckOtherSideShape: Shape = {
  type: "OperatingCheckOtherSide",
  fields: {
    code: { words: ["operating-check.other-side"] },
    values: OperatingCheckOtherSideValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckTooCloseToCallShape: Shape = {
  type: "OperatingCheckTooCloseToCall",
  fields: {
    code: { words: ["operating-check.too-close-to-call"] },
    values: OperatingCheckWithinWindowValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckApproachRangeWideValuesShape: Shape = {
  type: "OperatingCheckApproachRangeWideValues",
  fields: {
    low: "temperatureDifference",
    high: "temperatureDifference",
    widest: "temperatureDifference",
  },
};

export const OperatingCheckApproachRangeWideShape: Shape = {
  type: "OperatingCheckApproachRangeWide",
  fields: {
    code: { words: ["operating-check.approach-range-wide"] },
    values: OperatingCheckApproachRangeWideValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckApproachAtRestValuesShape: Shape = {
  type: "OperatingCheckApproachAtRestValues",
  fields: {
    low: "temperatureDifference",
    high: "temperatureDifference",
    least: "temperatureDifference",
  },
};

export const OperatingCheckApproachAtRestShape: Shape = {
  type: "OperatingCheckApproachAtRest",
  fields: {
    code: { words: ["operating-check.approach-at-rest"] },
    values: OperatingCheckApproachAtRestValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckAsPrintedShape: Shape = {
  type: "OperatingCheckAsPrinted",
  fields: {
    code: { words: ["operating-check.as-printed"] },
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

export const OperatingCheckSteadyFullSpeedShape: Shape = {
  type: "OperatingCheckSteadyFullSpeed",
  fields: {
    code: { words: ["operating-check.steady-full-speed"] },
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

export const OperatingCheckApproachesAsStatedShape: Shape = {
  type: "OperatingCheckApproachesAsStated",
  fields: {
    code: { words: ["operating-check.approaches-as-stated"] },
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

export const OperatingCheckExpandsOutdoorsShape: Shape = {
  type: "OperatingCheckExpandsOutdoors",
  fields: {
    code: { words: ["operating-check.expands-outdoors"] },
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

export const OperatingCheckExactGaugeShape: Shape = {
  type: "OperatingCheckExactGauge",
  fields: {
    code: { words: ["operating-check.exact-gauge"] },
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

export const OperatingCheckModeFirstShape: Shape = {
  type: "OperatingCheckModeFirst",
  fields: {
    code: { words: ["operating-check.mode-first"] },
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

export const OperatingCheckHosesLoseRefrigerantShape: Shape = {
  type: "OperatingCheckHosesLoseRefrigerant",
  fields: {
    code: { words: ["operating-check.hoses-lose-refrigerant"] },
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

export const OperatingCheckNotTheChargeShape: Shape = {
  type: "OperatingCheckNotTheCharge",
  fields: {
    code: { words: ["operating-check.not-the-charge"] },
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

export const OperatingCheckWeighTheChargeShape: Shape = {
  type: "OperatingCheckWeighTheCharge",
  fields: {
    code: { words: ["operating-check.weigh-the-charge"] },
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

export const OperatingCheckStopLiquidShape: Shape = {
  type: "OperatingCheckStopLiquid",
  fields: {
    code: { words: ["operating-check.stop-liquid"] },
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

export const OperatingCheckReadNearFloorAgainValuesShape: Shape = {
  type: "OperatingCheckReadNearFloorAgainValues",
  fields: { least: "temperatureDifference" },
};

export const OperatingCheckReadNearFloorAgainShape: Shape = {
  type: "OperatingCheckReadNearFloorAgain",
  fields: {
    code: { words: ["operating-check.read-near-floor-again"] },
    values: OperatingCheckReadNearFloorAgainValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckUseRatedHoseValuesShape: Shape = {
  type: "OperatingCheckUseRatedHoseValues",
  fields: { pressure: "gaugePressure" },
};

export const OperatingCheckUseRatedHoseShape: Shape = {
  type: "OperatingCheckUseRatedHose",
  fields: {
    code: { words: ["operating-check.use-rated-hose"] },
    values: OperatingCheckUseRatedHoseValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckUseLargerGaugeValuesShape: Shape = {
  type: "OperatingCheckUseLargerGaugeValues",
  fields: { pressure: "gaugePressure" },
};

export const OperatingCheckUseLargerGaugeShape: Shape = {
  type: "OperatingCheckUseLargerGauge",
  fields: {
    code: { words: ["operating-check.use-larger-gauge"] },
    values: OperatingCheckUseLargerGaugeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckCheckModeAndPortShape: Shape = {
  type: "OperatingCheckCheckModeAndPort",
  fields: {
    code: { words: ["operating-check.check-mode-and-port"] },
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

export const OperatingCheckFindTheCauseShape: Shape = {
  type: "OperatingCheckFindTheCause",
  fields: {
    code: { words: ["operating-check.find-the-cause"] },
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

export const OperatingCheckUseBetterGaugeValuesShape: Shape = {
  type: "OperatingCheckUseBetterGaugeValues",
  fields: { needed: "pressureDifference" },
};

export const OperatingCheckUseBetterGaugeShape: Shape = {
  type: "OperatingCheckUseBetterGauge",
  fields: {
    code: { words: ["operating-check.use-better-gauge"] },
    values: OperatingCheckUseBetterGaugeValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const OperatingCheckReadAgainLaterShape: Shape = {
  type: "OperatingCheckReadAgainLater",
  fields: {
    code: { words: ["operating-check.read-again-later"] },
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

export const OperatingCheckStateApproachShape: Shape = {
  type: "OperatingCheckStateApproach",
  fields: {
    code: { words: ["operating-check.state-approach"] },
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

export const GaugeCautionShape: Shape = {
  type: "GaugeCaution",
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
    "operating-check.by-superheat": OperatingCheckBySuperheatShape,
    "operating-check.by-subcooling": OperatingCheckBySubcoolingShape,
    "operating-check.no-target": OperatingCheckNoTargetShape,
    "operating-check.no-target-in-heating": OperatingCheckNoTargetInHeatingShape,
    "operating-check.superheat-below-floor": OperatingCheckSuperheatBelowFloorShape,
    "operating-check.superheat-near-floor": OperatingCheckSuperheatNearFloorShape,
    "operating-check.gauge-set-suits": OperatingCheckGaugeSetSuitsShape,
    "operating-check.above-hose-rating": OperatingCheckAboveHoseRatingShape,
    "operating-check.destroys-gauge": OperatingCheckDestroysGaugeShape,
    "operating-check.beyond-scale": OperatingCheckBeyondScaleShape,
    "operating-check.within-window": OperatingCheckWithinWindowShape,
    "operating-check.below-window": OperatingCheckBelowWindowShape,
    "operating-check.above-window": OperatingCheckAboveWindowShape,
    "operating-check.other-side": OperatingCheckOtherSideShape,
    "operating-check.too-close-to-call": OperatingCheckTooCloseToCallShape,
    "operating-check.approach-range-wide": OperatingCheckApproachRangeWideShape,
    "operating-check.approach-at-rest": OperatingCheckApproachAtRestShape,
    "operating-check.as-printed": OperatingCheckAsPrintedShape,
    "operating-check.steady-full-speed": OperatingCheckSteadyFullSpeedShape,
    "operating-check.approaches-as-stated": OperatingCheckApproachesAsStatedShape,
    "operating-check.expands-outdoors": OperatingCheckExpandsOutdoorsShape,
    "operating-check.exact-gauge": OperatingCheckExactGaugeShape,
    "operating-check.mode-first": OperatingCheckModeFirstShape,
    "operating-check.hoses-lose-refrigerant": OperatingCheckHosesLoseRefrigerantShape,
    "operating-check.not-the-charge": OperatingCheckNotTheChargeShape,
    "operating-check.weigh-the-charge": OperatingCheckWeighTheChargeShape,
    "operating-check.stop-liquid": OperatingCheckStopLiquidShape,
    "operating-check.read-near-floor-again": OperatingCheckReadNearFloorAgainShape,
    "operating-check.use-rated-hose": OperatingCheckUseRatedHoseShape,
    "operating-check.use-larger-gauge": OperatingCheckUseLargerGaugeShape,
    "operating-check.check-mode-and-port": OperatingCheckCheckModeAndPortShape,
    "operating-check.find-the-cause": OperatingCheckFindTheCauseShape,
    "operating-check.use-better-gauge": OperatingCheckUseBetterGaugeShape,
    "operating-check.read-again-later": OperatingCheckReadAgainLaterShape,
    "operating-check.state-approach": OperatingCheckStateApproachShape,
  },
};

export const ServicePortsShape: Shape = {
  type: "ServicePorts",
  fields: {
    vapor: ServicePortRoleShape,
    liquid: ServicePortRoleShape,
    commonSuction: ServicePortRoleShape,
    cautions: { list: GaugeCautionShape },
  },
  says: "What the ports of a split unit show.",
  about: {
    vapor: "Port of the larger valve: vapor line. On most small splits it is the only one.",
    liquid: "Port of the smaller valve: liquid line.",
    commonSuction: "The gauge port at the compressor's suction that some ducted heat pumps have.",
    cautions: "What can hurt someone.",
  },
};

export const ChargeByGaugeInputShape: Shape = {
  type: "ChargeByGaugeInput",
  fields: {
    meteringDevice: { words: ["orifice", "thermostatic-valve", "electronic-valve"] },
    compressor: { words: ["single-speed", "inverter"] },
    mode: { words: ["cooling", "heating"] },
    refrigerant: byDesignation,
    pressure: "gaugePressure",
    lineTemperature: "temperature",
    atmosphere: "absolutePressure",
    "pressureDrop?": "pressureDifference",
    "target?": "temperatureDifference",
    "tolerance?": "temperatureDifference",
    instruments: AssessSubcoolingInputInput1InstrumentsShape,
    "confidence?": "number",
  },
  says: "A reading of pressure and line temperature on a system, and what it should be.",
  about: {
    meteringDevice: "Fixed orifice or capillary, thermostatic valve, or electronic valve.",
    compressor: "One speed, or an inverter.",
    mode: "What the unit does.",
    refrigerant: "The refrigerant.",
    pressure: "Gauge reading: suction for an orifice, liquid or discharge for a valve.",
    lineTemperature: "Line temperature: suction line for an orifice, liquid line for a valve.",
    atmosphere: "Atmospheric pressure on site.",
    pressureDrop:
      "Pressure lost from the gauge down the flow to the thermometer, 0 or more: that of the coil when the gauge is on the discharge. For subcooling only: superheat is read with both at the suction port.",
    target:
      "What superheat or subcooling should be, from nameplate, manual or targetSuperheat. Not needed where the charge is weighed.",
    tolerance: "How far from it is still right, above 0. Not needed where the charge is weighed.",
    instruments: "What the two probes can do.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
  },
};

export const OperatingCheckBySuperheat2Shape: Shape = {
  type: "OperatingCheckBySuperheat2",
  fields: {
    code: { words: ["operating-check.by-superheat"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckBySubcooling2Shape: Shape = {
  type: "OperatingCheckBySubcooling2",
  fields: {
    code: { words: ["operating-check.by-subcooling"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckNoTarget2Shape: Shape = {
  type: "OperatingCheckNoTarget2",
  fields: {
    code: { words: ["operating-check.no-target"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckNoTargetInHeating2Shape: Shape = {
  type: "OperatingCheckNoTargetInHeating2",
  fields: {
    code: { words: ["operating-check.no-target-in-heating"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckSuperheatBelowFloor2Shape: Shape = {
  type: "OperatingCheckSuperheatBelowFloor2",
  fields: {
    code: { words: ["operating-check.superheat-below-floor"] },
    values: OperatingCheckSuperheatBelowFloorValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckSuperheatNearFloor2Shape: Shape = {
  type: "OperatingCheckSuperheatNearFloor2",
  fields: {
    code: { words: ["operating-check.superheat-near-floor"] },
    values: OperatingCheckSuperheatNearFloorValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckGaugeSetSuits2Shape: Shape = {
  type: "OperatingCheckGaugeSetSuits2",
  fields: {
    code: { words: ["operating-check.gauge-set-suits"] },
    values: OperatingCheckGaugeSetSuitsValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckAboveHoseRating2Shape: Shape = {
  type: "OperatingCheckAboveHoseRating2",
  fields: {
    code: { words: ["operating-check.above-hose-rating"] },
    values: OperatingCheckAboveHoseRatingValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckDestroysGauge2Shape: Shape = {
  type: "OperatingCheckDestroysGauge2",
  fields: {
    code: { words: ["operating-check.destroys-gauge"] },
    values: OperatingCheckDestroysGaugeValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckBeyondScale2Shape: Shape = {
  type: "OperatingCheckBeyondScale2",
  fields: {
    code: { words: ["operating-check.beyond-scale"] },
    values: OperatingCheckBeyondScaleValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckWithinWindow2Shape: Shape = {
  type: "OperatingCheckWithinWindow2",
  fields: {
    code: { words: ["operating-check.within-window"] },
    values: OperatingCheckWithinWindowValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckBelowWindow2Shape: Shape = {
  type: "OperatingCheckBelowWindow2",
  fields: {
    code: { words: ["operating-check.below-window"] },
    values: OperatingCheckWithinWindowValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckAboveWindow2Shape: Shape = {
  type: "OperatingCheckAboveWindow2",
  fields: {
    code: { words: ["operating-check.above-window"] },
    values: OperatingCheckWithinWindowValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckOtherSide2Shape: Shape = {
  type: "OperatingCheckOtherSide2",
  fields: {
    code: { words: ["operating-check.other-side"] },
    values: OperatingCheckOtherSideValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckTooCloseToCall2Shape: Shape = {
  type: "OperatingCheckTooCloseToCall2",
  fields: {
    code: { words: ["operating-check.too-close-to-call"] },
    values: OperatingCheckWithinWindowValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckApproachRangeWide2Shape: Shape = {
  type: "OperatingCheckApproachRangeWide2",
  fields: {
    code: { words: ["operating-check.approach-range-wide"] },
    values: OperatingCheckApproachRangeWideValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckApproachAtRest2Shape: Shape = {
  type: "OperatingCheckApproachAtRest2",
  fields: {
    code: { words: ["operating-check.approach-at-rest"] },
    values: OperatingCheckApproachAtRestValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckAsPrinted2Shape: Shape = {
  type: "OperatingCheckAsPrinted2",
  fields: {
    code: { words: ["operating-check.as-printed"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckSteadyFullSpeed2Shape: Shape = {
  type: "OperatingCheckSteadyFullSpeed2",
  fields: {
    code: { words: ["operating-check.steady-full-speed"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckApproachesAsStated2Shape: Shape = {
  type: "OperatingCheckApproachesAsStated2",
  fields: {
    code: { words: ["operating-check.approaches-as-stated"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckExpandsOutdoors2Shape: Shape = {
  type: "OperatingCheckExpandsOutdoors2",
  fields: {
    code: { words: ["operating-check.expands-outdoors"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckExactGauge2Shape: Shape = {
  type: "OperatingCheckExactGauge2",
  fields: {
    code: { words: ["operating-check.exact-gauge"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckModeFirst2Shape: Shape = {
  type: "OperatingCheckModeFirst2",
  fields: {
    code: { words: ["operating-check.mode-first"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckHosesLoseRefrigerant2Shape: Shape = {
  type: "OperatingCheckHosesLoseRefrigerant2",
  fields: {
    code: { words: ["operating-check.hoses-lose-refrigerant"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckNotTheCharge2Shape: Shape = {
  type: "OperatingCheckNotTheCharge2",
  fields: {
    code: { words: ["operating-check.not-the-charge"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckWeighTheCharge2Shape: Shape = {
  type: "OperatingCheckWeighTheCharge2",
  fields: {
    code: { words: ["operating-check.weigh-the-charge"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckStopLiquid2Shape: Shape = {
  type: "OperatingCheckStopLiquid2",
  fields: {
    code: { words: ["operating-check.stop-liquid"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckReadNearFloorAgain2Shape: Shape = {
  type: "OperatingCheckReadNearFloorAgain2",
  fields: {
    code: { words: ["operating-check.read-near-floor-again"] },
    values: OperatingCheckReadNearFloorAgainValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckUseRatedHose2Shape: Shape = {
  type: "OperatingCheckUseRatedHose2",
  fields: {
    code: { words: ["operating-check.use-rated-hose"] },
    values: OperatingCheckUseRatedHoseValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckUseLargerGauge2Shape: Shape = {
  type: "OperatingCheckUseLargerGauge2",
  fields: {
    code: { words: ["operating-check.use-larger-gauge"] },
    values: OperatingCheckUseLargerGaugeValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckCheckModeAndPort2Shape: Shape = {
  type: "OperatingCheckCheckModeAndPort2",
  fields: {
    code: { words: ["operating-check.check-mode-and-port"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckFindTheCause2Shape: Shape = {
  type: "OperatingCheckFindTheCause2",
  fields: {
    code: { words: ["operating-check.find-the-cause"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckUseBetterGauge2Shape: Shape = {
  type: "OperatingCheckUseBetterGauge2",
  fields: {
    code: { words: ["operating-check.use-better-gauge"] },
    values: OperatingCheckUseBetterGaugeValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckReadAgainLater2Shape: Shape = {
  type: "OperatingCheckReadAgainLater2",
  fields: {
    code: { words: ["operating-check.read-again-later"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const OperatingCheckStateApproach2Shape: Shape = {
  type: "OperatingCheckStateApproach2",
  fields: {
    code: { words: ["operating-check.state-approach"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const ChargeByGaugeAssessmentReasonsItemShape: Shape = {
  type: "ChargeByGaugeAssessmentReasonsItem",
  by: "code",
  cases: {
    "refrigerants.table-needs-atmosphere": RefrigerantsTableNeedsAtmosphereShape,
    "refrigerants.number-of-rows": RefrigerantsNumberOfRowsShape,
    "refrigerants.range-of": RefrigerantsRangeOfShape,
    "refrigerants.gauge-needs-atmosphere": RefrigerantsGaugeNeedsAtmosphereShape,
    "refrigerants.within-tolerance": RefrigerantsWithinToleranceShape,
    "refrigerants.above-tolerance": RefrigerantsAboveToleranceShape,
    "refrigerants.below-tolerance": RefrigerantsBelowToleranceShape,
    "refrigerants.below-saturation": RefrigerantsBelowSaturationShape,
    "refrigerants.too-close-to-call": RefrigerantsTooCloseToCallShape,
    "refrigerants.largest-uncertainty": RefrigerantsLargestUncertaintyShape,
    "refrigerants.closer-than-the-model": RefrigerantsCloserThanTheModelShape,
    "refrigerants.target-out-of-reach": RefrigerantsTargetOutOfReachShape,
    "refrigerants.tolerance-wide": RefrigerantsToleranceWideShape,
    "refrigerants.tolerance-reaches-saturation": RefrigerantsToleranceReachesSaturationShape,
    "refrigerants.steady": RefrigerantsSteadyShape,
    "refrigerants.nominal-composition": RefrigerantsNominalCompositionShape,
    "refrigerants.saturation-uncertainty": RefrigerantsSaturationUncertaintyShape,
    "refrigerants.exact-atmosphere": RefrigerantsExactAtmosphereShape,
    "refrigerants.looks-like-other-side": RefrigerantsLooksLikeOtherSideShape,
    "refrigerants.only-where-the-manual-charges-by-it":
      RefrigerantsOnlyWhereTheManualChargesByItShape,
    "refrigerants.check-airflow-first": RefrigerantsCheckAirflowFirstShape,
    "refrigerants.correct-the-charge": RefrigerantsCorrectTheChargeShape,
    "refrigerants.check-both-readings": RefrigerantsCheckBothReadingsShape,
    "refrigerants.use-better-probe": RefrigerantsUseBetterProbeShape,
    "refrigerants.adjust-to-target": RefrigerantsAdjustToTargetShape,
    "refrigerants.state-target": RefrigerantsStateTargetShape,
    "refrigerants.state-tolerance": RefrigerantsStateToleranceShape,
    "operating-check.by-superheat": OperatingCheckBySuperheat2Shape,
    "operating-check.by-subcooling": OperatingCheckBySubcooling2Shape,
    "operating-check.no-target": OperatingCheckNoTarget2Shape,
    "operating-check.no-target-in-heating": OperatingCheckNoTargetInHeating2Shape,
    "operating-check.superheat-below-floor": OperatingCheckSuperheatBelowFloor2Shape,
    "operating-check.superheat-near-floor": OperatingCheckSuperheatNearFloor2Shape,
    "operating-check.gauge-set-suits": OperatingCheckGaugeSetSuits2Shape,
    "operating-check.above-hose-rating": OperatingCheckAboveHoseRating2Shape,
    "operating-check.destroys-gauge": OperatingCheckDestroysGauge2Shape,
    "operating-check.beyond-scale": OperatingCheckBeyondScale2Shape,
    "operating-check.within-window": OperatingCheckWithinWindow2Shape,
    "operating-check.below-window": OperatingCheckBelowWindow2Shape,
    "operating-check.above-window": OperatingCheckAboveWindow2Shape,
    "operating-check.other-side": OperatingCheckOtherSide2Shape,
    "operating-check.too-close-to-call": OperatingCheckTooCloseToCall2Shape,
    "operating-check.approach-range-wide": OperatingCheckApproachRangeWide2Shape,
    "operating-check.approach-at-rest": OperatingCheckApproachAtRest2Shape,
    "operating-check.as-printed": OperatingCheckAsPrinted2Shape,
    "operating-check.steady-full-speed": OperatingCheckSteadyFullSpeed2Shape,
    "operating-check.approaches-as-stated": OperatingCheckApproachesAsStated2Shape,
    "operating-check.expands-outdoors": OperatingCheckExpandsOutdoors2Shape,
    "operating-check.exact-gauge": OperatingCheckExactGauge2Shape,
    "operating-check.mode-first": OperatingCheckModeFirst2Shape,
    "operating-check.hoses-lose-refrigerant": OperatingCheckHosesLoseRefrigerant2Shape,
    "operating-check.not-the-charge": OperatingCheckNotTheCharge2Shape,
    "operating-check.weigh-the-charge": OperatingCheckWeighTheCharge2Shape,
    "operating-check.stop-liquid": OperatingCheckStopLiquid2Shape,
    "operating-check.read-near-floor-again": OperatingCheckReadNearFloorAgain2Shape,
    "operating-check.use-rated-hose": OperatingCheckUseRatedHose2Shape,
    "operating-check.use-larger-gauge": OperatingCheckUseLargerGauge2Shape,
    "operating-check.check-mode-and-port": OperatingCheckCheckModeAndPort2Shape,
    "operating-check.find-the-cause": OperatingCheckFindTheCause2Shape,
    "operating-check.use-better-gauge": OperatingCheckUseBetterGauge2Shape,
    "operating-check.read-again-later": OperatingCheckReadAgainLater2Shape,
    "operating-check.state-approach": OperatingCheckStateApproach2Shape,
  },
};

export const ChargeByGaugeAssessmentCautionsItemShape: Shape = {
  type: "ChargeByGaugeAssessmentCautionsItem",
  by: "code",
  cases: {
    "refrigerants.table-needs-atmosphere": RefrigerantsTableNeedsAtmosphere2Shape,
    "refrigerants.number-of-rows": RefrigerantsNumberOfRows2Shape,
    "refrigerants.range-of": RefrigerantsRangeOf2Shape,
    "refrigerants.gauge-needs-atmosphere": RefrigerantsGaugeNeedsAtmosphere2Shape,
    "refrigerants.within-tolerance": RefrigerantsWithinTolerance2Shape,
    "refrigerants.above-tolerance": RefrigerantsAboveTolerance2Shape,
    "refrigerants.below-tolerance": RefrigerantsBelowTolerance2Shape,
    "refrigerants.below-saturation": RefrigerantsBelowSaturation2Shape,
    "refrigerants.too-close-to-call": RefrigerantsTooCloseToCall2Shape,
    "refrigerants.largest-uncertainty": RefrigerantsLargestUncertainty2Shape,
    "refrigerants.closer-than-the-model": RefrigerantsCloserThanTheModel2Shape,
    "refrigerants.target-out-of-reach": RefrigerantsTargetOutOfReach2Shape,
    "refrigerants.tolerance-wide": RefrigerantsToleranceWide2Shape,
    "refrigerants.tolerance-reaches-saturation": RefrigerantsToleranceReachesSaturation2Shape,
    "refrigerants.steady": RefrigerantsSteady2Shape,
    "refrigerants.nominal-composition": RefrigerantsNominalComposition2Shape,
    "refrigerants.saturation-uncertainty": RefrigerantsSaturationUncertainty2Shape,
    "refrigerants.exact-atmosphere": RefrigerantsExactAtmosphere2Shape,
    "refrigerants.looks-like-other-side": RefrigerantsLooksLikeOtherSide2Shape,
    "refrigerants.only-where-the-manual-charges-by-it":
      RefrigerantsOnlyWhereTheManualChargesByIt2Shape,
    "refrigerants.check-airflow-first": RefrigerantsCheckAirflowFirst2Shape,
    "refrigerants.correct-the-charge": RefrigerantsCorrectTheCharge2Shape,
    "refrigerants.check-both-readings": RefrigerantsCheckBothReadings2Shape,
    "refrigerants.use-better-probe": RefrigerantsUseBetterProbe2Shape,
    "refrigerants.adjust-to-target": RefrigerantsAdjustToTarget2Shape,
    "refrigerants.state-target": RefrigerantsStateTarget2Shape,
    "refrigerants.state-tolerance": RefrigerantsStateTolerance2Shape,
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
    "operating-check.by-superheat": OperatingCheckBySuperheatShape,
    "operating-check.by-subcooling": OperatingCheckBySubcoolingShape,
    "operating-check.no-target": OperatingCheckNoTargetShape,
    "operating-check.no-target-in-heating": OperatingCheckNoTargetInHeatingShape,
    "operating-check.superheat-below-floor": OperatingCheckSuperheatBelowFloorShape,
    "operating-check.superheat-near-floor": OperatingCheckSuperheatNearFloorShape,
    "operating-check.gauge-set-suits": OperatingCheckGaugeSetSuitsShape,
    "operating-check.above-hose-rating": OperatingCheckAboveHoseRatingShape,
    "operating-check.destroys-gauge": OperatingCheckDestroysGaugeShape,
    "operating-check.beyond-scale": OperatingCheckBeyondScaleShape,
    "operating-check.within-window": OperatingCheckWithinWindowShape,
    "operating-check.below-window": OperatingCheckBelowWindowShape,
    "operating-check.above-window": OperatingCheckAboveWindowShape,
    "operating-check.other-side": OperatingCheckOtherSideShape,
    "operating-check.too-close-to-call": OperatingCheckTooCloseToCallShape,
    "operating-check.approach-range-wide": OperatingCheckApproachRangeWideShape,
    "operating-check.approach-at-rest": OperatingCheckApproachAtRestShape,
    "operating-check.as-printed": OperatingCheckAsPrintedShape,
    "operating-check.steady-full-speed": OperatingCheckSteadyFullSpeedShape,
    "operating-check.approaches-as-stated": OperatingCheckApproachesAsStatedShape,
    "operating-check.expands-outdoors": OperatingCheckExpandsOutdoorsShape,
    "operating-check.exact-gauge": OperatingCheckExactGaugeShape,
    "operating-check.mode-first": OperatingCheckModeFirstShape,
    "operating-check.hoses-lose-refrigerant": OperatingCheckHosesLoseRefrigerantShape,
    "operating-check.not-the-charge": OperatingCheckNotTheChargeShape,
    "operating-check.weigh-the-charge": OperatingCheckWeighTheChargeShape,
    "operating-check.stop-liquid": OperatingCheckStopLiquidShape,
    "operating-check.read-near-floor-again": OperatingCheckReadNearFloorAgainShape,
    "operating-check.use-rated-hose": OperatingCheckUseRatedHoseShape,
    "operating-check.use-larger-gauge": OperatingCheckUseLargerGaugeShape,
    "operating-check.check-mode-and-port": OperatingCheckCheckModeAndPortShape,
    "operating-check.find-the-cause": OperatingCheckFindTheCauseShape,
    "operating-check.use-better-gauge": OperatingCheckUseBetterGaugeShape,
    "operating-check.read-again-later": OperatingCheckReadAgainLaterShape,
    "operating-check.state-approach": OperatingCheckStateApproachShape,
  },
};

export const ChargeByGaugeAssessmentShape: Shape = {
  type: "ChargeByGaugeAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["low", "high", "liquid-to-compressor"] },
    reasons: { list: ChargeByGaugeAssessmentReasonsItemShape },
    assumptions: { list: ChargeByGaugeAssessmentReasonsItemShape },
    cautions: { list: ChargeByGaugeAssessmentCautionsItemShape },
    "actions?": { list: ChargeByGaugeAssessmentReasonsItemShape },
    sources: { list: CitationShape },
    method: { words: ["superheat", "subcooling", "weigh"] },
    "result?": EstimateOfTemperatureDifferenceShape,
    "saturationTemperature?": EstimateOfTemperatureShape,
  },
  says: "The verdict on a charge by gauge.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    method: "What the charge is checked by.",
    result: "Superheat or subcooling; missing where the charge is weighed.",
    saturationTemperature:
      "Dew or bubble temperature at the thermometer; missing where the charge is weighed.",
  },
};

export const AssessGaugeSetInputShape: Shape = {
  type: "AssessGaugeSetInput",
  fields: {
    fullScale: "gaugePressure",
    "retardTo?": "gaugePressure",
    hoseWorkingPressure: "gaugePressure",
    highestPressure: "gaugePressure",
  },
  about: {
    fullScale: "End of the graduated scale, above 0.",
    retardTo:
      "Where the retarded part of the dial ends, not below the full scale: it survives, it does not measure.",
    hoseWorkingPressure: "Working pressure printed on the hose, above 0; not the burst pressure.",
    highestPressure: "The highest pressure that can come.",
  },
};

export const OperatingCheckStatementShape: Shape = {
  type: "OperatingCheckStatement",
  by: "code",
  cases: {
    "operating-check.by-superheat": OperatingCheckBySuperheat2Shape,
    "operating-check.by-subcooling": OperatingCheckBySubcooling2Shape,
    "operating-check.no-target": OperatingCheckNoTarget2Shape,
    "operating-check.no-target-in-heating": OperatingCheckNoTargetInHeating2Shape,
    "operating-check.superheat-below-floor": OperatingCheckSuperheatBelowFloor2Shape,
    "operating-check.superheat-near-floor": OperatingCheckSuperheatNearFloor2Shape,
    "operating-check.gauge-set-suits": OperatingCheckGaugeSetSuits2Shape,
    "operating-check.above-hose-rating": OperatingCheckAboveHoseRating2Shape,
    "operating-check.destroys-gauge": OperatingCheckDestroysGauge2Shape,
    "operating-check.beyond-scale": OperatingCheckBeyondScale2Shape,
    "operating-check.within-window": OperatingCheckWithinWindow2Shape,
    "operating-check.below-window": OperatingCheckBelowWindow2Shape,
    "operating-check.above-window": OperatingCheckAboveWindow2Shape,
    "operating-check.other-side": OperatingCheckOtherSide2Shape,
    "operating-check.too-close-to-call": OperatingCheckTooCloseToCall2Shape,
    "operating-check.approach-range-wide": OperatingCheckApproachRangeWide2Shape,
    "operating-check.approach-at-rest": OperatingCheckApproachAtRest2Shape,
    "operating-check.as-printed": OperatingCheckAsPrinted2Shape,
    "operating-check.steady-full-speed": OperatingCheckSteadyFullSpeed2Shape,
    "operating-check.approaches-as-stated": OperatingCheckApproachesAsStated2Shape,
    "operating-check.expands-outdoors": OperatingCheckExpandsOutdoors2Shape,
    "operating-check.exact-gauge": OperatingCheckExactGauge2Shape,
    "operating-check.mode-first": OperatingCheckModeFirst2Shape,
    "operating-check.hoses-lose-refrigerant": OperatingCheckHosesLoseRefrigerant2Shape,
    "operating-check.not-the-charge": OperatingCheckNotTheCharge2Shape,
    "operating-check.weigh-the-charge": OperatingCheckWeighTheCharge2Shape,
    "operating-check.stop-liquid": OperatingCheckStopLiquid2Shape,
    "operating-check.read-near-floor-again": OperatingCheckReadNearFloorAgain2Shape,
    "operating-check.use-rated-hose": OperatingCheckUseRatedHose2Shape,
    "operating-check.use-larger-gauge": OperatingCheckUseLargerGauge2Shape,
    "operating-check.check-mode-and-port": OperatingCheckCheckModeAndPort2Shape,
    "operating-check.find-the-cause": OperatingCheckFindTheCause2Shape,
    "operating-check.use-better-gauge": OperatingCheckUseBetterGauge2Shape,
    "operating-check.read-again-later": OperatingCheckReadAgainLater2Shape,
    "operating-check.state-approach": OperatingCheckStateApproach2Shape,
  },
};

export const AssessmentOfGaugeSetCauseOperatingCheckStatementCautionsItemShape: Shape = {
  type: "AssessmentOfGaugeSetCauseOperatingCheckStatementCautionsItem",
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
    "operating-check.by-superheat": OperatingCheckBySuperheatShape,
    "operating-check.by-subcooling": OperatingCheckBySubcoolingShape,
    "operating-check.no-target": OperatingCheckNoTargetShape,
    "operating-check.no-target-in-heating": OperatingCheckNoTargetInHeatingShape,
    "operating-check.superheat-below-floor": OperatingCheckSuperheatBelowFloorShape,
    "operating-check.superheat-near-floor": OperatingCheckSuperheatNearFloorShape,
    "operating-check.gauge-set-suits": OperatingCheckGaugeSetSuitsShape,
    "operating-check.above-hose-rating": OperatingCheckAboveHoseRatingShape,
    "operating-check.destroys-gauge": OperatingCheckDestroysGaugeShape,
    "operating-check.beyond-scale": OperatingCheckBeyondScaleShape,
    "operating-check.within-window": OperatingCheckWithinWindowShape,
    "operating-check.below-window": OperatingCheckBelowWindowShape,
    "operating-check.above-window": OperatingCheckAboveWindowShape,
    "operating-check.other-side": OperatingCheckOtherSideShape,
    "operating-check.too-close-to-call": OperatingCheckTooCloseToCallShape,
    "operating-check.approach-range-wide": OperatingCheckApproachRangeWideShape,
    "operating-check.approach-at-rest": OperatingCheckApproachAtRestShape,
    "operating-check.as-printed": OperatingCheckAsPrintedShape,
    "operating-check.steady-full-speed": OperatingCheckSteadyFullSpeedShape,
    "operating-check.approaches-as-stated": OperatingCheckApproachesAsStatedShape,
    "operating-check.expands-outdoors": OperatingCheckExpandsOutdoorsShape,
    "operating-check.exact-gauge": OperatingCheckExactGaugeShape,
    "operating-check.mode-first": OperatingCheckModeFirstShape,
    "operating-check.hoses-lose-refrigerant": OperatingCheckHosesLoseRefrigerantShape,
    "operating-check.not-the-charge": OperatingCheckNotTheChargeShape,
    "operating-check.weigh-the-charge": OperatingCheckWeighTheChargeShape,
    "operating-check.stop-liquid": OperatingCheckStopLiquidShape,
    "operating-check.read-near-floor-again": OperatingCheckReadNearFloorAgainShape,
    "operating-check.use-rated-hose": OperatingCheckUseRatedHoseShape,
    "operating-check.use-larger-gauge": OperatingCheckUseLargerGaugeShape,
    "operating-check.check-mode-and-port": OperatingCheckCheckModeAndPortShape,
    "operating-check.find-the-cause": OperatingCheckFindTheCauseShape,
    "operating-check.use-better-gauge": OperatingCheckUseBetterGaugeShape,
    "operating-check.read-again-later": OperatingCheckReadAgainLaterShape,
    "operating-check.state-approach": OperatingCheckStateApproachShape,
  },
};

export const AssessmentOfGaugeSetCauseOperatingCheckStatementShape: Shape = {
  type: "AssessmentOfGaugeSetCauseOperatingCheckStatement",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["hose-rating", "gauge-scale", "retard-only"] },
    reasons: { list: OperatingCheckStatementShape },
    assumptions: { list: OperatingCheckStatementShape },
    cautions: { list: AssessmentOfGaugeSetCauseOperatingCheckStatementCautionsItemShape },
    "actions?": { list: OperatingCheckStatementShape },
    sources: { list: CitationShape },
  },
  says: "The verdict that every module returns, to which it adds its own quantities. Deeply frozen.",
  about: {
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

export const ApproachRangeShape: Shape = {
  type: "ApproachRange",
  fields: { low: "temperatureDifference", high: "temperatureDifference" },
  says: "Smallest and largest difference between the air that enters a coil and the saturation temperature in it, both 0 to 60 K.",
  about: { low: "Smallest difference.", high: "Largest difference." },
};

export const ServiceReadingShape: Shape = {
  type: "ServiceReading",
  fields: {
    refrigerant: byDesignation,
    mode: { words: ["cooling", "heating"] },
    indoorTemperature: "temperature",
    outdoorTemperature: "temperature",
    evaporatorApproach: ApproachRangeShape,
    condenserApproach: ApproachRangeShape,
    atmosphere: "absolutePressure",
    pressure: "gaugePressure",
    "port?": { words: ["liquid", "vapor", "commonSuction"] },
    "expansion?": { words: ["outdoor-unit", "evaporating-unit"] },
    "gauge?": InstrumentOfGaugePressureShape,
    "confidence?": "number",
  },
  says: "A gauge reading on a running unit.",
  about: {
    refrigerant: "The refrigerant, of any kind.",
    mode: "What the unit does.",
    indoorTemperature: "Air that enters the indoor coil.",
    outdoorTemperature: "Air that enters the outdoor coil.",
    evaporatorApproach: "How far the evaporating temperature lies below the air at the evaporator.",
    condenserApproach: "How far the condensing temperature lies above the air at the condenser.",
    atmosphere: "Atmospheric pressure on site: gauges read against it.",
    pressure: "What the gauge shows.",
    port: "The port that it is on; the larger one, vapor, when left out.",
    expansion: "Where the refrigerant expands; in the outdoor unit when left out.",
    gauge: "What is known of the gauge; counted as exact when left out.",
    confidence: "How sure a pass or a fail has to be; 0.95 when left out.",
  },
};

export const SaturationWindowShape: Shape = {
  type: "SaturationWindow",
  fields: {
    from: "gaugePressure",
    to: "gaugePressure",
    fromTemperature: "temperature",
    toTemperature: "temperature",
  },
  says: "A window of pressure and the saturation temperatures behind it.",
  about: {
    from: "Lowest pressure to be expected.",
    to: "Highest pressure to be expected.",
    fromTemperature: "Saturation temperature at the lowest pressure.",
    toTemperature: "Saturation temperature at the highest pressure.",
  },
};

export const ExpectedPressuresShape: Shape = {
  type: "ExpectedPressures",
  fields: {
    low: SaturationWindowShape,
    high: SaturationWindowShape,
    vaporPort: { words: ["low", "high"] },
    assumptions: { list: OperatingCheckStatementShape },
    cautions: { list: GaugeCautionShape },
    sources: { list: CitationShape },
  },
  says: "What to expect on both sides of a running unit.",
  about: {
    low: "Low side: dew pressure in the evaporator.",
    high: "High side: bubble pressure in the condenser.",
    vaporPort: "Side that the larger (vapour) port shows in this mode.",
    assumptions: "What was assumed.",
    cautions: "What can hurt someone.",
    sources: "Where it stands.",
  },
};

export const ServiceReadingAssessmentShape: Shape = {
  type: "ServiceReadingAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["below-window", "above-window", "other-side"] },
    reasons: { list: OperatingCheckStatementShape },
    assumptions: { list: OperatingCheckStatementShape },
    cautions: { list: AssessmentOfGaugeSetCauseOperatingCheckStatementCautionsItemShape },
    "actions?": { list: OperatingCheckStatementShape },
    sources: { list: CitationShape },
    expected: ExpectedPressuresShape,
    side: { words: ["low", "high"] },
  },
  says: "The verdict on a gauge reading.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    cause: "What is behind it, where the module can tell.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    expected: "What was to be expected.",
    side: "The side that the port shows in this mode.",
  },
};

export const ChargedSystemShape: Shape = {
  type: "ChargedSystem",
  fields: {
    meteringDevice: { words: ["orifice", "thermostatic-valve", "electronic-valve"] },
    compressor: { words: ["single-speed", "inverter"] },
    mode: { words: ["cooling", "heating"] },
  },
  says: "What sets the flow of refrigerant, and how the compressor runs.",
  about: {
    meteringDevice: "Fixed orifice or capillary, thermostatic valve, or electronic valve.",
    compressor: "One speed, or an inverter.",
    mode: "What the unit does.",
  },
};

export const ChargingMethodShape: Shape = {
  type: "ChargingMethod",
  fields: {
    method: { words: ["superheat", "subcooling", "weigh"] },
    reason: OperatingCheckStatementShape,
  },
  says: "How a charge is checked.",
  about: { method: "By superheat, by subcooling, or by weight alone.", reason: "Why." },
};

export const RunningUnitShape: Shape = {
  type: "RunningUnit",
  fields: {
    refrigerant: byDesignation,
    mode: { words: ["cooling", "heating"] },
    indoorTemperature: "temperature",
    outdoorTemperature: "temperature",
    evaporatorApproach: ApproachRangeShape,
    condenserApproach: ApproachRangeShape,
    atmosphere: "absolutePressure",
  },
  says: "A running unit and the air around it.",
  about: {
    refrigerant: "The refrigerant, of any kind.",
    mode: "What the unit does.",
    indoorTemperature: "Air that enters the indoor coil.",
    outdoorTemperature: "Air that enters the outdoor coil.",
    evaporatorApproach: "How far the evaporating temperature lies below the air at the evaporator.",
    condenserApproach: "How far the condensing temperature lies above the air at the condenser.",
    atmosphere: "Atmospheric pressure on site: gauges read against it.",
  },
};

export const SuperheatChartShape: Shape = {
  type: "SuperheatChart",
  fields: {
    outdoorDryBulbs: { list: "temperature" },
    indoorWetBulbs: { list: "temperature" },
    targets: { list: { list: { either: ["temperatureDifference", { words: ["-"] }] } } },
  },
  says: "The chart of a manual: a row for each outdoor dry bulb, a column for each indoor wet bulb, a dash where the unit must not be charged by superheat.",
  about: {
    outdoorDryBulbs: "Outdoor dry bulbs, rising, at least two.",
    indoorWetBulbs: "Indoor wet bulbs, rising, at least two.",
    targets: "A row for each outdoor dry bulb, in it a cell for each wet bulb.",
  },
};

export const TargetSuperheatInputShape: Shape = {
  type: "TargetSuperheatInput",
  fields: {
    outdoorDryBulb: "temperature",
    indoorWetBulb: "temperature",
    "chart?": SuperheatChartShape,
  },
  about: {
    outdoorDryBulb: "Air that enters the outdoor coil.",
    indoorWetBulb: "Wet bulb of the air that enters the indoor coil.",
    chart: "The chart in the unit's manual.",
  },
};

export const ChargeToTargetShape: Shape = {
  type: "ChargeToTarget",
  fields: {
    instruction: { words: ["charge-to-target"] },
    target: "temperatureDifference",
    tolerance: "temperatureDifference",
  },
  about: {
    instruction: "Charge to the target.",
    target: "The superheat to charge to.",
    tolerance: "± 5 °F.",
  },
};

export const DoNotChargeBySuperheatShape: Shape = {
  type: "DoNotChargeBySuperheat",
  fields: { instruction: { words: ["do-not-charge-by-superheat"] } },
  about: { instruction: "The chart has a dash here." },
};

export const UsualPressuresInputShape: Shape = {
  type: "UsualPressuresInput",
  fields: { refrigerant: { words: ["R410A"] }, mode: { words: ["cooling", "heating"] } },
  about: { refrigerant: "Nothing is held for others.", mode: "What the unit does." },
};

export const UsualPressuresResultShape: Shape = {
  type: "UsualPressuresResult",
  fields: { from: "gaugePressure", to: "gaugePressure" },
  about: { from: "Lower end.", to: "Upper end." },
};
