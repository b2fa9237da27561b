// Which shapes have the types of line-set?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type { Shape } from "../../shapes/index.ts";
import { byDesignation } from "../named.ts";
import { CitationShape } from "./assessment.shapes.ts";
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

export const MassPerStepShape: Shape = {
  type: "MassPerStep",
  fields: { mass: "mass", per: "length" },
  says: "A rate as some manuals print it: 3 oz for every 5 ft.",
  about: { mass: "Mass, 0 or more.", per: "For this much length, more than 0." },
};

export const AdditionalChargeInputShape: Shape = {
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
    rate: { either: ["massPerLength", MassPerStepShape] },
    shortLineRule: { words: ["add-only", "add-and-subtract", "not-stated"] },
  },
  says: "One liquid line and the rule for it.",
  about: {
    factoryCharge: "Charge that the unit came with, for the total on the label.",
    maximumLength: "Longest run (all lines together) that the manual allows.",
    minimumLength: "Shortest run that the manual allows.",
    maximumCharge:
      "Most that the unit or the room may hold, from the manual or from the room limit for flammables.",
    scaleResolution: "Smallest step of the scale; the answer is rounded to it.",
    lengthUncertainty: "Standard uncertainty (k = 1) of each length; taken as exact when left out.",
    safetyClass: "Safety class of the refrigerant, for the cautions.",
    length: "Length of liquid line as installed, one way, with what is coiled up; 0 to 1000 m.",
    preChargedLength: "Length that the factory charge covers, from nameplate or manual.",
    rate: "Mass per length for this size of liquid line, from nameplate or manual.",
    shortLineRule: "What happens below preChargedLength, from the manual.",
  },
};

export const LineSetRateUnitShape: Shape = {
  type: "LineSetRateUnit",
  fields: {
    code: { words: ["line-set.rate-unit"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetViscosityUnitShape: Shape = {
  type: "LineSetViscosityUnit",
  fields: {
    code: { words: ["line-set.viscosity-unit"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetWithinMaximumValuesShape: Shape = {
  type: "LineSetWithinMaximumValues",
  fields: {
    figure: {
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
    },
    value: { either: ["mass", "pressureDifference", "length"] },
    limit: { either: ["mass", "pressureDifference", "length"] },
  },
};

export const LineSetWithinMaximumShape: Shape = {
  type: "LineSetWithinMaximum",
  fields: {
    code: { words: ["line-set.within-maximum"] },
    values: LineSetWithinMaximumValuesShape,
    "text?": "text",
  },
};

export const LineSetAboveMaximumShape: Shape = {
  type: "LineSetAboveMaximum",
  fields: {
    code: { words: ["line-set.above-maximum"] },
    values: LineSetWithinMaximumValuesShape,
    "text?": "text",
  },
};

export const LineSetNearMaximumValuesShape: Shape = {
  type: "LineSetNearMaximumValues",
  fields: {
    uncertainty: { either: ["mass", "pressureDifference", "length"] },
    figure: {
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
    },
    value: { either: ["mass", "pressureDifference", "length"] },
    limit: { either: ["mass", "pressureDifference", "length"] },
  },
};

export const LineSetNearMaximumShape: Shape = {
  type: "LineSetNearMaximum",
  fields: {
    code: { words: ["line-set.near-maximum"] },
    values: LineSetNearMaximumValuesShape,
    "text?": "text",
  },
};

export const LineSetAboveMinimumShape: Shape = {
  type: "LineSetAboveMinimum",
  fields: {
    code: { words: ["line-set.above-minimum"] },
    values: LineSetWithinMaximumValuesShape,
    "text?": "text",
  },
};

export const LineSetBelowMinimumShape: Shape = {
  type: "LineSetBelowMinimum",
  fields: {
    code: { words: ["line-set.below-minimum"] },
    values: LineSetWithinMaximumValuesShape,
    "text?": "text",
  },
};

export const LineSetNearMinimumShape: Shape = {
  type: "LineSetNearMinimum",
  fields: {
    code: { words: ["line-set.near-minimum"] },
    values: LineSetNearMaximumValuesShape,
    "text?": "text",
  },
};

export const LineSetBendsWithinMaximumValuesShape: Shape = {
  type: "LineSetBendsWithinMaximumValues",
  fields: { count: "number", most: "number" },
};

export const LineSetBendsWithinMaximumShape: Shape = {
  type: "LineSetBendsWithinMaximum",
  fields: {
    code: { words: ["line-set.bends-within-maximum"] },
    values: LineSetBendsWithinMaximumValuesShape,
    "text?": "text",
  },
};

export const LineSetBendsAboveMaximumValuesShape: Shape = {
  type: "LineSetBendsAboveMaximumValues",
  fields: { count: "number", most: "number" },
};

export const LineSetBendsAboveMaximumShape: Shape = {
  type: "LineSetBendsAboveMaximum",
  fields: {
    code: { words: ["line-set.bends-above-maximum"] },
    values: LineSetBendsAboveMaximumValuesShape,
    "text?": "text",
  },
};

export const LineSetBendsNotCountedValuesShape: Shape = {
  type: "LineSetBendsNotCountedValues",
  fields: { most: "number" },
};

export const LineSetBendsNotCountedShape: Shape = {
  type: "LineSetBendsNotCounted",
  fields: {
    code: { words: ["line-set.bends-not-counted"] },
    values: LineSetBendsNotCountedValuesShape,
    "text?": "text",
  },
};

export const LineSetBendLengthNotCountedValuesShape: Shape = {
  type: "LineSetBendLengthNotCountedValues",
  fields: { bend: "length" },
};

export const LineSetBendLengthNotCountedShape: Shape = {
  type: "LineSetBendLengthNotCounted",
  fields: {
    code: { words: ["line-set.bend-length-not-counted"] },
    values: LineSetBendLengthNotCountedValuesShape,
    "text?": "text",
  },
};

export const LineSetAddValuesShape: Shape = {
  type: "LineSetAddValues",
  fields: {
    charge: "mass",
    length: "length",
    difference: "length",
    preCharged: "length",
    rate: "massPerLength",
  },
};

export const LineSetAddShape: Shape = {
  type: "LineSetAdd",
  fields: { code: { words: ["line-set.add"] }, values: LineSetAddValuesShape, "text?": "text" },
};

export const LineSetTakeOutShape: Shape = {
  type: "LineSetTakeOut",
  fields: {
    code: { words: ["line-set.take-out"] },
    values: LineSetAddValuesShape,
    "text?": "text",
  },
};

export const LineSetNothingToAddValuesShape: Shape = {
  type: "LineSetNothingToAddValues",
  fields: { length: "length", preCharged: "length" },
};

export const LineSetNothingToAddShape: Shape = {
  type: "LineSetNothingToAdd",
  fields: {
    code: { words: ["line-set.nothing-to-add"] },
    values: LineSetNothingToAddValuesShape,
    "text?": "text",
  },
};

export const LineSetShortLineRuleNotKnownValuesShape: Shape = {
  type: "LineSetShortLineRuleNotKnownValues",
  fields: { length: "length", difference: "length", preCharged: "length" },
};

export const LineSetShortLineRuleNotKnownShape: Shape = {
  type: "LineSetShortLineRuleNotKnown",
  fields: {
    code: { words: ["line-set.short-line-rule-not-known"] },
    values: LineSetShortLineRuleNotKnownValuesShape,
    "text?": "text",
  },
};

export const LineSetAllowancesValuesShape: Shape = {
  type: "LineSetAllowancesValues",
  fields: { mass: "mass" },
};

export const LineSetAllowancesShape: Shape = {
  type: "LineSetAllowances",
  fields: {
    code: { words: ["line-set.allowances"] },
    values: LineSetAllowancesValuesShape,
    "text?": "text",
  },
};

export const LineSetTotalNotKnownValuesShape: Shape = {
  type: "LineSetTotalNotKnownValues",
  fields: { limit: "mass" },
};

export const LineSetTotalNotKnownShape: Shape = {
  type: "LineSetTotalNotKnown",
  fields: {
    code: { words: ["line-set.total-not-known"] },
    values: LineSetTotalNotKnownValuesShape,
    "text?": "text",
  },
};

export const LineSetRatePlausibleValuesShape: Shape = {
  type: "LineSetRatePlausibleValues",
  fields: {
    rate: "massPerLength",
    full: "massPerLength",
    ratio: "number",
    low: "number",
    high: "number",
  },
};

export const LineSetRatePlausibleShape: Shape = {
  type: "LineSetRatePlausible",
  fields: {
    code: { words: ["line-set.rate-plausible"] },
    values: LineSetRatePlausibleValuesShape,
    "text?": "text",
  },
};

export const LineSetRateImplausibleShape: Shape = {
  type: "LineSetRateImplausible",
  fields: {
    code: { words: ["line-set.rate-implausible"] },
    values: LineSetRatePlausibleValuesShape,
    "text?": "text",
  },
};

export const LineSetRateFitsOtherDeviceShape: Shape = {
  type: "LineSetRateFitsOtherDevice",
  fields: {
    code: { words: ["line-set.rate-fits-other-device"] },
    values: LineSetRatePlausibleValuesShape,
    "text?": "text",
  },
};

export const LineSetTwoPhaseLiquidLineShape: Shape = {
  type: "LineSetTwoPhaseLiquidLine",
  fields: {
    code: { words: ["line-set.two-phase-liquid-line"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetRatePerFootShape: Shape = {
  type: "LineSetRatePerFoot",
  fields: {
    code: { words: ["line-set.rate-per-foot"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetRatePerMeterShape: Shape = {
  type: "LineSetRatePerMeter",
  fields: {
    code: { words: ["line-set.rate-per-meter"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetSubcoolingEnoughValuesShape: Shape = {
  type: "LineSetSubcoolingEnoughValues",
  fields: {
    available: "temperatureDifference",
    needed: "temperatureDifference",
    loss: "pressureDifference",
  },
};

export const LineSetSubcoolingEnoughShape: Shape = {
  type: "LineSetSubcoolingEnough",
  fields: {
    code: { words: ["line-set.subcooling-enough"] },
    values: LineSetSubcoolingEnoughValuesShape,
    "text?": "text",
  },
};

export const LineSetSubcoolingTooLowShape: Shape = {
  type: "LineSetSubcoolingTooLow",
  fields: {
    code: { words: ["line-set.subcooling-too-low"] },
    values: LineSetSubcoolingEnoughValuesShape,
    "text?": "text",
  },
};

export const LineSetSubcoolingNearValuesShape: Shape = {
  type: "LineSetSubcoolingNearValues",
  fields: {
    available: "temperatureDifference",
    needed: "temperatureDifference",
    loss: "pressureDifference",
    uncertainty: "temperatureDifference",
  },
};

export const LineSetSubcoolingNearShape: Shape = {
  type: "LineSetSubcoolingNear",
  fields: {
    code: { words: ["line-set.subcooling-near"] },
    values: LineSetSubcoolingNearValuesShape,
    "text?": "text",
  },
};

export const LineSetSubcoolingNotKnownValuesShape: Shape = {
  type: "LineSetSubcoolingNotKnownValues",
  fields: { needed: "temperatureDifference", loss: "pressureDifference" },
};

export const LineSetSubcoolingNotKnownShape: Shape = {
  type: "LineSetSubcoolingNotKnown",
  fields: {
    code: { words: ["line-set.subcooling-not-known"] },
    values: LineSetSubcoolingNotKnownValuesShape,
    "text?": "text",
  },
};

export const LineSetLiquidVelocityWithinValuesShape: Shape = {
  type: "LineSetLiquidVelocityWithinValues",
  fields: { velocity: "speed", least: "speed", most: "speed" },
};

export const LineSetLiquidVelocityWithinShape: Shape = {
  type: "LineSetLiquidVelocityWithin",
  fields: {
    code: { words: ["line-set.liquid-velocity-within"] },
    values: LineSetLiquidVelocityWithinValuesShape,
    "text?": "text",
  },
};

export const LineSetLiquidVelocityHighValuesShape: Shape = {
  type: "LineSetLiquidVelocityHighValues",
  fields: { velocity: "speed", most: "speed" },
};

export const LineSetLiquidVelocityHighShape: Shape = {
  type: "LineSetLiquidVelocityHigh",
  fields: {
    code: { words: ["line-set.liquid-velocity-high"] },
    values: LineSetLiquidVelocityHighValuesShape,
    "text?": "text",
  },
};

export const LineSetLiquidVelocityLowValuesShape: Shape = {
  type: "LineSetLiquidVelocityLowValues",
  fields: { velocity: "speed", least: "speed" },
};

export const LineSetLiquidVelocityLowShape: Shape = {
  type: "LineSetLiquidVelocityLow",
  fields: {
    code: { words: ["line-set.liquid-velocity-low"] },
    values: LineSetLiquidVelocityLowValuesShape,
    "text?": "text",
  },
};

export const LineSetLossNotKnownValuesShape: Shape = {
  type: "LineSetLossNotKnownValues",
  fields: { limit: "pressureDifference" },
};

export const LineSetLossNotKnownShape: Shape = {
  type: "LineSetLossNotKnown",
  fields: {
    code: { words: ["line-set.loss-not-known"] },
    values: LineSetLossNotKnownValuesShape,
    "text?": "text",
  },
};

export const LineSetOilReturnsValuesShape: Shape = {
  type: "LineSetOilReturnsValues",
  fields: { velocity: "speed", least: "speed" },
};

export const LineSetOilReturnsShape: Shape = {
  type: "LineSetOilReturns",
  fields: {
    code: { words: ["line-set.oil-returns"] },
    values: LineSetOilReturnsValuesShape,
    "text?": "text",
  },
};

export const LineSetOilStaysValuesShape: Shape = {
  type: "LineSetOilStaysValues",
  fields: { velocity: "speed", oil: "speed" },
};

export const LineSetOilStaysShape: Shape = {
  type: "LineSetOilStays",
  fields: {
    code: { words: ["line-set.oil-stays"] },
    values: LineSetOilStaysValuesShape,
    "text?": "text",
  },
};

export const LineSetOilReturnOpenRiserValuesShape: Shape = {
  type: "LineSetOilReturnOpenRiserValues",
  fields: { velocity: "speed", least: "speed", oil: "speed" },
};

export const LineSetOilReturnOpenRiserShape: Shape = {
  type: "LineSetOilReturnOpenRiser",
  fields: {
    code: { words: ["line-set.oil-return-open-riser"] },
    values: LineSetOilReturnOpenRiserValuesShape,
    "text?": "text",
  },
};

export const LineSetOilReturnOpenLevelValuesShape: Shape = {
  type: "LineSetOilReturnOpenLevelValues",
  fields: { velocity: "speed", least: "speed" },
};

export const LineSetOilReturnOpenLevelShape: Shape = {
  type: "LineSetOilReturnOpenLevel",
  fields: {
    code: { words: ["line-set.oil-return-open-level"] },
    values: LineSetOilReturnOpenLevelValuesShape,
    "text?": "text",
  },
};

export const LineSetVaporNoiseValuesShape: Shape = {
  type: "LineSetVaporNoiseValues",
  fields: { velocity: "speed", most: "speed" },
};

export const LineSetVaporNoiseShape: Shape = {
  type: "LineSetVaporNoise",
  fields: {
    code: { words: ["line-set.vapor-noise"] },
    values: LineSetVaporNoiseValuesShape,
    "text?": "text",
  },
};

export const LineSetStockLengthValuesShape: Shape = {
  type: "LineSetStockLengthValues",
  fields: { stock: "length", needed: "length" },
};

export const LineSetStockLengthShape: Shape = {
  type: "LineSetStockLength",
  fields: {
    code: { words: ["line-set.stock-length"] },
    values: LineSetStockLengthValuesShape,
    "text?": "text",
  },
};

export const LineSetSurplusToCutValuesShape: Shape = {
  type: "LineSetSurplusToCutValues",
  fields: { surplus: "length" },
};

export const LineSetSurplusToCutShape: Shape = {
  type: "LineSetSurplusToCut",
  fields: {
    code: { words: ["line-set.surplus-to-cut"] },
    values: LineSetSurplusToCutValuesShape,
    "text?": "text",
  },
};

export const LineSetCoilToMinimumValuesShape: Shape = {
  type: "LineSetCoilToMinimumValues",
  fields: { coiled: "length", installed: "length" },
};

export const LineSetCoilToMinimumShape: Shape = {
  type: "LineSetCoilToMinimum",
  fields: {
    code: { words: ["line-set.coil-to-minimum"] },
    values: LineSetCoilToMinimumValuesShape,
    "text?": "text",
  },
};

export const LineSetCoilSurplusValuesShape: Shape = {
  type: "LineSetCoilSurplusValues",
  fields: { coiled: "length", installed: "length" },
};

export const LineSetCoilSurplusShape: Shape = {
  type: "LineSetCoilSurplus",
  fields: {
    code: { words: ["line-set.coil-surplus"] },
    values: LineSetCoilSurplusValuesShape,
    "text?": "text",
  },
};

export const LineSetNoStockLengthValuesShape: Shape = {
  type: "LineSetNoStockLengthValues",
  fields: { needed: "length", longest: "length" },
};

export const LineSetNoStockLengthShape: Shape = {
  type: "LineSetNoStockLength",
  fields: {
    code: { words: ["line-set.no-stock-length"] },
    values: LineSetNoStockLengthValuesShape,
    "text?": "text",
  },
};

export const LineSetItemsFitValuesShape: Shape = {
  type: "LineSetItemsFitValues",
  fields: { fill: "ratio" },
};

export const LineSetItemsFitShape: Shape = {
  type: "LineSetItemsFit",
  fields: {
    code: { words: ["line-set.items-fit"] },
    values: LineSetItemsFitValuesShape,
    "text?": "text",
  },
};

export const LineSetOpeningTooSmallValuesShape: Shape = {
  type: "LineSetOpeningTooSmallValues",
  fields: { sleeve: "length" },
};

export const LineSetOpeningTooSmallShape: Shape = {
  type: "LineSetOpeningTooSmall",
  fields: {
    code: { words: ["line-set.opening-too-small"] },
    values: LineSetOpeningTooSmallValuesShape,
    "text?": "text",
  },
};

export const LineSetNoLayoutFoundValuesShape: Shape = {
  type: "LineSetNoLayoutFoundValues",
  fields: { sleeve: "length" },
};

export const LineSetNoLayoutFoundShape: Shape = {
  type: "LineSetNoLayoutFound",
  fields: {
    code: { words: ["line-set.no-layout-found"] },
    values: LineSetNoLayoutFoundValuesShape,
    "text?": "text",
  },
};

export const LineSetToRecoverValuesShape: Shape = {
  type: "LineSetToRecoverValues",
  fields: { mass: "mass", keep: "mass" },
};

export const LineSetToRecoverShape: Shape = {
  type: "LineSetToRecover",
  fields: {
    code: { words: ["line-set.to-recover"] },
    values: LineSetToRecoverValuesShape,
    "text?": "text",
  },
};

export const LineSetToAddValuesShape: Shape = {
  type: "LineSetToAddValues",
  fields: { mass: "mass", keep: "mass" },
};

export const LineSetToAddShape: Shape = {
  type: "LineSetToAdd",
  fields: {
    code: { words: ["line-set.to-add"] },
    values: LineSetToAddValuesShape,
    "text?": "text",
  },
};

export const LineSetChargeNotKnownShape: Shape = {
  type: "LineSetChargeNotKnown",
  fields: {
    code: { words: ["line-set.charge-not-known"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetCylinderTooSmallValuesShape: Shape = {
  type: "LineSetCylinderTooSmallValues",
  fields: { room: "mass", mass: "mass" },
};

export const LineSetCylinderTooSmallShape: Shape = {
  type: "LineSetCylinderTooSmall",
  fields: {
    code: { words: ["line-set.cylinder-too-small"] },
    values: LineSetCylinderTooSmallValuesShape,
    "text?": "text",
  },
};

export const LineSetLimitsOfTheManualShape: Shape = {
  type: "LineSetLimitsOfTheManual",
  fields: {
    code: { words: ["line-set.limits-of-the-manual"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetMaximumLengthNotCheckedShape: Shape = {
  type: "LineSetMaximumLengthNotChecked",
  fields: {
    code: { words: ["line-set.maximum-length-not-checked"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetMinimumLengthNotCheckedShape: Shape = {
  type: "LineSetMinimumLengthNotChecked",
  fields: {
    code: { words: ["line-set.minimum-length-not-checked"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetRoomLimitNotCheckedShape: Shape = {
  type: "LineSetRoomLimitNotChecked",
  fields: {
    code: { words: ["line-set.room-limit-not-checked"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetSaturatedLiquidShape: Shape = {
  type: "LineSetSaturatedLiquid",
  fields: {
    code: { words: ["line-set.saturated-liquid"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetNoHeatGainShape: Shape = {
  type: "LineSetNoHeatGain",
  fields: {
    code: { words: ["line-set.no-heat-gain"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetExpansionIndoorsShape: Shape = {
  type: "LineSetExpansionIndoors",
  fields: {
    code: { words: ["line-set.expansion-indoors"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetLiquidOnlyShape: Shape = {
  type: "LineSetLiquidOnly",
  fields: {
    code: { words: ["line-set.liquid-only"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetLossNotCheckedShape: Shape = {
  type: "LineSetLossNotChecked",
  fields: {
    code: { words: ["line-set.loss-not-checked"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetSameDensityShape: Shape = {
  type: "LineSetSameDensity",
  fields: {
    code: { words: ["line-set.same-density"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetGuideMinimumVelocityValuesShape: Shape = {
  type: "LineSetGuideMinimumVelocityValues",
  fields: { least: "speed" },
};

export const LineSetGuideMinimumVelocityShape: Shape = {
  type: "LineSetGuideMinimumVelocity",
  fields: {
    code: { words: ["line-set.guide-minimum-velocity"] },
    values: LineSetGuideMinimumVelocityValuesShape,
    "text?": "text",
  },
};

export const LineSetGuideMaximumVelocityValuesShape: Shape = {
  type: "LineSetGuideMaximumVelocityValues",
  fields: { most: "speed" },
};

export const LineSetGuideMaximumVelocityShape: Shape = {
  type: "LineSetGuideMaximumVelocity",
  fields: {
    code: { words: ["line-set.guide-maximum-velocity"] },
    values: LineSetGuideMaximumVelocityValuesShape,
    "text?": "text",
  },
};

export const LineSetNoSlackShape: Shape = {
  type: "LineSetNoSlack",
  fields: {
    code: { words: ["line-set.no-slack"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetNoServiceLoopShape: Shape = {
  type: "LineSetNoServiceLoop",
  fields: {
    code: { words: ["line-set.no-service-loop"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetRoundAndStiffShape: Shape = {
  type: "LineSetRoundAndStiff",
  fields: {
    code: { words: ["line-set.round-and-stiff"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetNoClearanceShape: Shape = {
  type: "LineSetNoClearance",
  fields: {
    code: { words: ["line-set.no-clearance"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetChargeAsLabeledShape: Shape = {
  type: "LineSetChargeAsLabeled",
  fields: {
    code: { words: ["line-set.charge-as-labeled"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetCylinderNotCheckedShape: Shape = {
  type: "LineSetCylinderNotChecked",
  fields: {
    code: { words: ["line-set.cylinder-not-checked"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetChargeAfterTestsShape: Shape = {
  type: "LineSetChargeAfterTests",
  fields: {
    code: { words: ["line-set.charge-after-tests"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetNoKinksShape: Shape = {
  type: "LineSetNoKinks",
  fields: {
    code: { words: ["line-set.no-kinks"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetDrainFallsOutwardShape: Shape = {
  type: "LineSetDrainFallsOutward",
  fields: {
    code: { words: ["line-set.drain-falls-outward"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetDrillingShape: Shape = {
  type: "LineSetDrilling",
  fields: {
    code: { words: ["line-set.drilling"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetOverfilledCylinderShape: Shape = {
  type: "LineSetOverfilledCylinder",
  fields: {
    code: { words: ["line-set.overfilled-cylinder"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetMixedRefrigerantsShape: Shape = {
  type: "LineSetMixedRefrigerants",
  fields: {
    code: { words: ["line-set.mixed-refrigerants"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetNeverVentShape: Shape = {
  type: "LineSetNeverVent",
  fields: {
    code: { words: ["line-set.never-vent"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetMeasureBetterValuesShape: Shape = {
  type: "LineSetMeasureBetterValues",
  fields: {
    figure: {
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
    },
  },
};

export const LineSetMeasureBetterShape: Shape = {
  type: "LineSetMeasureBetter",
  fields: {
    code: { words: ["line-set.measure-better"] },
    values: LineSetMeasureBetterValuesShape,
    "text?": "text",
  },
};

export const LineSetShortenLineValuesShape: Shape = {
  type: "LineSetShortenLineValues",
  fields: { limit: "length" },
};

export const LineSetShortenLineShape: Shape = {
  type: "LineSetShortenLine",
  fields: {
    code: { words: ["line-set.shorten-line"] },
    values: LineSetShortenLineValuesShape,
    "text?": "text",
  },
};

export const LineSetLengthenLineShape: Shape = {
  type: "LineSetLengthenLine",
  fields: {
    code: { words: ["line-set.lengthen-line"] },
    values: LineSetShortenLineValuesShape,
    "text?": "text",
  },
};

export const LineSetReduceHeightShape: Shape = {
  type: "LineSetReduceHeight",
  fields: {
    code: { words: ["line-set.reduce-height"] },
    values: LineSetShortenLineValuesShape,
    "text?": "text",
  },
};

export const LineSetFewerBendsValuesShape: Shape = {
  type: "LineSetFewerBendsValues",
  fields: { most: "number" },
};

export const LineSetFewerBendsShape: Shape = {
  type: "LineSetFewerBends",
  fields: {
    code: { words: ["line-set.fewer-bends"] },
    values: LineSetFewerBendsValuesShape,
    "text?": "text",
  },
};

export const LineSetCountBendsShape: Shape = {
  type: "LineSetCountBends",
  fields: {
    code: { words: ["line-set.count-bends"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetEnterShortLineRuleShape: Shape = {
  type: "LineSetEnterShortLineRule",
  fields: {
    code: { words: ["line-set.enter-short-line-rule"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetReduceChargeShape: Shape = {
  type: "LineSetReduceCharge",
  fields: {
    code: { words: ["line-set.reduce-charge"] },
    values: LineSetTotalNotKnownValuesShape,
    "text?": "text",
  },
};

export const LineSetEnterFactoryChargeShape: Shape = {
  type: "LineSetEnterFactoryCharge",
  fields: {
    code: { words: ["line-set.enter-factory-charge"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetReadRateAgainShape: Shape = {
  type: "LineSetReadRateAgain",
  fields: {
    code: { words: ["line-set.read-rate-again"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetEnterExpansionDeviceShape: Shape = {
  type: "LineSetEnterExpansionDevice",
  fields: {
    code: { words: ["line-set.enter-expansion-device"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetMeasureSubcoolingShape: Shape = {
  type: "LineSetMeasureSubcooling",
  fields: {
    code: { words: ["line-set.measure-subcooling"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetReduceLossShape: Shape = {
  type: "LineSetReduceLoss",
  fields: {
    code: { words: ["line-set.reduce-loss"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetNoExtraChargeShape: Shape = {
  type: "LineSetNoExtraCharge",
  fields: {
    code: { words: ["line-set.no-extra-charge"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetWiderLiquidLineShape: Shape = {
  type: "LineSetWiderLiquidLine",
  fields: {
    code: { words: ["line-set.wider-liquid-line"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetAskLineSizeShape: Shape = {
  type: "LineSetAskLineSize",
  fields: {
    code: { words: ["line-set.ask-line-size"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetEnterLossShape: Shape = {
  type: "LineSetEnterLoss",
  fields: {
    code: { words: ["line-set.enter-loss"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetSmallerRiserShape: Shape = {
  type: "LineSetSmallerRiser",
  fields: {
    code: { words: ["line-set.smaller-riser"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetAskOilReturnShape: Shape = {
  type: "LineSetAskOilReturn",
  fields: {
    code: { words: ["line-set.ask-oil-return"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetWiderVaporLineShape: Shape = {
  type: "LineSetWiderVaporLine",
  fields: {
    code: { words: ["line-set.wider-vapor-line"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetOtherStockValuesShape: Shape = {
  type: "LineSetOtherStockValues",
  fields: { needed: "length", limit: "length" },
};

export const LineSetOtherStockShape: Shape = {
  type: "LineSetOtherStock",
  fields: {
    code: { words: ["line-set.other-stock"] },
    values: LineSetOtherStockValuesShape,
    "text?": "text",
  },
};

export const LineSetTakeFromRollShape: Shape = {
  type: "LineSetTakeFromRoll",
  fields: {
    code: { words: ["line-set.take-from-roll"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetLargerOpeningValuesShape: Shape = {
  type: "LineSetLargerOpeningValues",
  fields: { sleeve: "length" },
};

export const LineSetLargerOpeningShape: Shape = {
  type: "LineSetLargerOpening",
  fields: {
    code: { words: ["line-set.larger-opening"] },
    values: LineSetLargerOpeningValuesShape,
    "text?": "text",
  },
};

export const LineSetRecoverAllShape: Shape = {
  type: "LineSetRecoverAll",
  fields: {
    code: { words: ["line-set.recover-all"] },
    values: RefrigerantsTableNeedsAtmosphereValuesShape,
    "text?": "text",
  },
};

export const LineSetChargeByWeightValuesShape: Shape = {
  type: "LineSetChargeByWeightValues",
  fields: { keep: "mass" },
};

export const LineSetChargeByWeightShape: Shape = {
  type: "LineSetChargeByWeight",
  fields: {
    code: { words: ["line-set.charge-by-weight"] },
    values: LineSetChargeByWeightValuesShape,
    "text?": "text",
  },
};

export const LineSetOtherCylinderValuesShape: Shape = {
  type: "LineSetOtherCylinderValues",
  fields: { mass: "mass" },
};

export const LineSetOtherCylinderShape: Shape = {
  type: "LineSetOtherCylinder",
  fields: {
    code: { words: ["line-set.other-cylinder"] },
    values: LineSetOtherCylinderValuesShape,
    "text?": "text",
  },
};

export const LineSetStatementShape: Shape = {
  type: "LineSetStatement",
  by: "code",
  cases: {
    "line-set.rate-unit": LineSetRateUnitShape,
    "line-set.viscosity-unit": LineSetViscosityUnitShape,
    "line-set.within-maximum": LineSetWithinMaximumShape,
    "line-set.above-maximum": LineSetAboveMaximumShape,
    "line-set.near-maximum": LineSetNearMaximumShape,
    "line-set.above-minimum": LineSetAboveMinimumShape,
    "line-set.below-minimum": LineSetBelowMinimumShape,
    "line-set.near-minimum": LineSetNearMinimumShape,
    "line-set.bends-within-maximum": LineSetBendsWithinMaximumShape,
    "line-set.bends-above-maximum": LineSetBendsAboveMaximumShape,
    "line-set.bends-not-counted": LineSetBendsNotCountedShape,
    "line-set.bend-length-not-counted": LineSetBendLengthNotCountedShape,
    "line-set.add": LineSetAddShape,
    "line-set.take-out": LineSetTakeOutShape,
    "line-set.nothing-to-add": LineSetNothingToAddShape,
    "line-set.short-line-rule-not-known": LineSetShortLineRuleNotKnownShape,
    "line-set.allowances": LineSetAllowancesShape,
    "line-set.total-not-known": LineSetTotalNotKnownShape,
    "line-set.rate-plausible": LineSetRatePlausibleShape,
    "line-set.rate-implausible": LineSetRateImplausibleShape,
    "line-set.rate-fits-other-device": LineSetRateFitsOtherDeviceShape,
    "line-set.two-phase-liquid-line": LineSetTwoPhaseLiquidLineShape,
    "line-set.rate-per-foot": LineSetRatePerFootShape,
    "line-set.rate-per-meter": LineSetRatePerMeterShape,
    "line-set.subcooling-enough": LineSetSubcoolingEnoughShape,
    "line-set.subcooling-too-low": LineSetSubcoolingTooLowShape,
    "line-set.subcooling-near": LineSetSubcoolingNearShape,
    "line-set.subcooling-not-known": LineSetSubcoolingNotKnownShape,
    "line-set.liquid-velocity-within": LineSetLiquidVelocityWithinShape,
    "line-set.liquid-velocity-high": LineSetLiquidVelocityHighShape,
    "line-set.liquid-velocity-low": LineSetLiquidVelocityLowShape,
    "line-set.loss-not-known": LineSetLossNotKnownShape,
    "line-set.oil-returns": LineSetOilReturnsShape,
    "line-set.oil-stays": LineSetOilStaysShape,
    "line-set.oil-return-open-riser": LineSetOilReturnOpenRiserShape,
    "line-set.oil-return-open-level": LineSetOilReturnOpenLevelShape,
    "line-set.vapor-noise": LineSetVaporNoiseShape,
    "line-set.stock-length": LineSetStockLengthShape,
    "line-set.surplus-to-cut": LineSetSurplusToCutShape,
    "line-set.coil-to-minimum": LineSetCoilToMinimumShape,
    "line-set.coil-surplus": LineSetCoilSurplusShape,
    "line-set.no-stock-length": LineSetNoStockLengthShape,
    "line-set.items-fit": LineSetItemsFitShape,
    "line-set.opening-too-small": LineSetOpeningTooSmallShape,
    "line-set.no-layout-found": LineSetNoLayoutFoundShape,
    "line-set.to-recover": LineSetToRecoverShape,
    "line-set.to-add": LineSetToAddShape,
    "line-set.charge-not-known": LineSetChargeNotKnownShape,
    "line-set.cylinder-too-small": LineSetCylinderTooSmallShape,
    "line-set.limits-of-the-manual": LineSetLimitsOfTheManualShape,
    "line-set.maximum-length-not-checked": LineSetMaximumLengthNotCheckedShape,
    "line-set.minimum-length-not-checked": LineSetMinimumLengthNotCheckedShape,
    "line-set.room-limit-not-checked": LineSetRoomLimitNotCheckedShape,
    "line-set.saturated-liquid": LineSetSaturatedLiquidShape,
    "line-set.no-heat-gain": LineSetNoHeatGainShape,
    "line-set.expansion-indoors": LineSetExpansionIndoorsShape,
    "line-set.liquid-only": LineSetLiquidOnlyShape,
    "line-set.loss-not-checked": LineSetLossNotCheckedShape,
    "line-set.same-density": LineSetSameDensityShape,
    "line-set.guide-minimum-velocity": LineSetGuideMinimumVelocityShape,
    "line-set.guide-maximum-velocity": LineSetGuideMaximumVelocityShape,
    "line-set.no-slack": LineSetNoSlackShape,
    "line-set.no-service-loop": LineSetNoServiceLoopShape,
    "line-set.round-and-stiff": LineSetRoundAndStiffShape,
    "line-set.no-clearance": LineSetNoClearanceShape,
    "line-set.charge-as-labeled": LineSetChargeAsLabeledShape,
    "line-set.cylinder-not-checked": LineSetCylinderNotCheckedShape,
    "line-set.charge-after-tests": LineSetChargeAfterTestsShape,
    "line-set.no-kinks": LineSetNoKinksShape,
    "line-set.drain-falls-outward": LineSetDrainFallsOutwardShape,
    "line-set.drilling": LineSetDrillingShape,
    "line-set.overfilled-cylinder": LineSetOverfilledCylinderShape,
    "line-set.mixed-refrigerants": LineSetMixedRefrigerantsShape,
    "line-set.never-vent": LineSetNeverVentShape,
    "line-set.measure-better": LineSetMeasureBetterShape,
    "line-set.shorten-line": LineSetShortenLineShape,
    "line-set.lengthen-line": LineSetLengthenLineShape,
    "line-set.reduce-height": LineSetReduceHeightShape,
    "line-set.fewer-bends": LineSetFewerBendsShape,
    "line-set.count-bends": LineSetCountBendsShape,
    "line-set.enter-short-line-rule": LineSetEnterShortLineRuleShape,
    "line-set.reduce-charge": LineSetReduceChargeShape,
    "line-set.enter-factory-charge": LineSetEnterFactoryChargeShape,
    "line-set.read-rate-again": LineSetReadRateAgainShape,
    "line-set.enter-expansion-device": LineSetEnterExpansionDeviceShape,
    "line-set.measure-subcooling": LineSetMeasureSubcoolingShape,
    "line-set.reduce-loss": LineSetReduceLossShape,
    "line-set.no-extra-charge": LineSetNoExtraChargeShape,
    "line-set.wider-liquid-line": LineSetWiderLiquidLineShape,
    "line-set.ask-line-size": LineSetAskLineSizeShape,
    "line-set.enter-loss": LineSetEnterLossShape,
    "line-set.smaller-riser": LineSetSmallerRiserShape,
    "line-set.ask-oil-return": LineSetAskOilReturnShape,
    "line-set.wider-vapor-line": LineSetWiderVaporLineShape,
    "line-set.other-stock": LineSetOtherStockShape,
    "line-set.take-from-roll": LineSetTakeFromRollShape,
    "line-set.larger-opening": LineSetLargerOpeningShape,
    "line-set.recover-all": LineSetRecoverAllShape,
    "line-set.charge-by-weight": LineSetChargeByWeightShape,
    "line-set.other-cylinder": LineSetOtherCylinderShape,
  },
};

export const LineSetRateUnit2Shape: Shape = {
  type: "LineSetRateUnit2",
  fields: {
    code: { words: ["line-set.rate-unit"] },
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

export const LineSetViscosityUnit2Shape: Shape = {
  type: "LineSetViscosityUnit2",
  fields: {
    code: { words: ["line-set.viscosity-unit"] },
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

export const LineSetWithinMaximum2Shape: Shape = {
  type: "LineSetWithinMaximum2",
  fields: {
    code: { words: ["line-set.within-maximum"] },
    values: LineSetWithinMaximumValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetAboveMaximum2Shape: Shape = {
  type: "LineSetAboveMaximum2",
  fields: {
    code: { words: ["line-set.above-maximum"] },
    values: LineSetWithinMaximumValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetNearMaximum2Shape: Shape = {
  type: "LineSetNearMaximum2",
  fields: {
    code: { words: ["line-set.near-maximum"] },
    values: LineSetNearMaximumValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetAboveMinimum2Shape: Shape = {
  type: "LineSetAboveMinimum2",
  fields: {
    code: { words: ["line-set.above-minimum"] },
    values: LineSetWithinMaximumValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetBelowMinimum2Shape: Shape = {
  type: "LineSetBelowMinimum2",
  fields: {
    code: { words: ["line-set.below-minimum"] },
    values: LineSetWithinMaximumValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetNearMinimum2Shape: Shape = {
  type: "LineSetNearMinimum2",
  fields: {
    code: { words: ["line-set.near-minimum"] },
    values: LineSetNearMaximumValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetBendsWithinMaximum2Shape: Shape = {
  type: "LineSetBendsWithinMaximum2",
  fields: {
    code: { words: ["line-set.bends-within-maximum"] },
    values: LineSetBendsWithinMaximumValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetBendsAboveMaximum2Shape: Shape = {
  type: "LineSetBendsAboveMaximum2",
  fields: {
    code: { words: ["line-set.bends-above-maximum"] },
    values: LineSetBendsAboveMaximumValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetBendsNotCounted2Shape: Shape = {
  type: "LineSetBendsNotCounted2",
  fields: {
    code: { words: ["line-set.bends-not-counted"] },
    values: LineSetBendsNotCountedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetBendLengthNotCounted2Shape: Shape = {
  type: "LineSetBendLengthNotCounted2",
  fields: {
    code: { words: ["line-set.bend-length-not-counted"] },
    values: LineSetBendLengthNotCountedValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetAdd2Shape: Shape = {
  type: "LineSetAdd2",
  fields: {
    code: { words: ["line-set.add"] },
    values: LineSetAddValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetTakeOut2Shape: Shape = {
  type: "LineSetTakeOut2",
  fields: {
    code: { words: ["line-set.take-out"] },
    values: LineSetAddValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetNothingToAdd2Shape: Shape = {
  type: "LineSetNothingToAdd2",
  fields: {
    code: { words: ["line-set.nothing-to-add"] },
    values: LineSetNothingToAddValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetShortLineRuleNotKnown2Shape: Shape = {
  type: "LineSetShortLineRuleNotKnown2",
  fields: {
    code: { words: ["line-set.short-line-rule-not-known"] },
    values: LineSetShortLineRuleNotKnownValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetAllowances2Shape: Shape = {
  type: "LineSetAllowances2",
  fields: {
    code: { words: ["line-set.allowances"] },
    values: LineSetAllowancesValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetTotalNotKnown2Shape: Shape = {
  type: "LineSetTotalNotKnown2",
  fields: {
    code: { words: ["line-set.total-not-known"] },
    values: LineSetTotalNotKnownValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetRatePlausible2Shape: Shape = {
  type: "LineSetRatePlausible2",
  fields: {
    code: { words: ["line-set.rate-plausible"] },
    values: LineSetRatePlausibleValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetRateImplausible2Shape: Shape = {
  type: "LineSetRateImplausible2",
  fields: {
    code: { words: ["line-set.rate-implausible"] },
    values: LineSetRatePlausibleValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetRateFitsOtherDevice2Shape: Shape = {
  type: "LineSetRateFitsOtherDevice2",
  fields: {
    code: { words: ["line-set.rate-fits-other-device"] },
    values: LineSetRatePlausibleValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetTwoPhaseLiquidLine2Shape: Shape = {
  type: "LineSetTwoPhaseLiquidLine2",
  fields: {
    code: { words: ["line-set.two-phase-liquid-line"] },
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

export const LineSetRatePerFoot2Shape: Shape = {
  type: "LineSetRatePerFoot2",
  fields: {
    code: { words: ["line-set.rate-per-foot"] },
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

export const LineSetRatePerMeter2Shape: Shape = {
  type: "LineSetRatePerMeter2",
  fields: {
    code: { words: ["line-set.rate-per-meter"] },
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

export const LineSetSubcoolingEnough2Shape: Shape = {
  type: "LineSetSubcoolingEnough2",
  fields: {
    code: { words: ["line-set.subcooling-enough"] },
    values: LineSetSubcoolingEnoughValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetSubcoolingTooLow2Shape: Shape = {
  type: "LineSetSubcoolingTooLow2",
  fields: {
    code: { words: ["line-set.subcooling-too-low"] },
    values: LineSetSubcoolingEnoughValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetSubcoolingNear2Shape: Shape = {
  type: "LineSetSubcoolingNear2",
  fields: {
    code: { words: ["line-set.subcooling-near"] },
    values: LineSetSubcoolingNearValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetSubcoolingNotKnown2Shape: Shape = {
  type: "LineSetSubcoolingNotKnown2",
  fields: {
    code: { words: ["line-set.subcooling-not-known"] },
    values: LineSetSubcoolingNotKnownValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetLiquidVelocityWithin2Shape: Shape = {
  type: "LineSetLiquidVelocityWithin2",
  fields: {
    code: { words: ["line-set.liquid-velocity-within"] },
    values: LineSetLiquidVelocityWithinValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetLiquidVelocityHigh2Shape: Shape = {
  type: "LineSetLiquidVelocityHigh2",
  fields: {
    code: { words: ["line-set.liquid-velocity-high"] },
    values: LineSetLiquidVelocityHighValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetLiquidVelocityLow2Shape: Shape = {
  type: "LineSetLiquidVelocityLow2",
  fields: {
    code: { words: ["line-set.liquid-velocity-low"] },
    values: LineSetLiquidVelocityLowValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetLossNotKnown2Shape: Shape = {
  type: "LineSetLossNotKnown2",
  fields: {
    code: { words: ["line-set.loss-not-known"] },
    values: LineSetLossNotKnownValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetOilReturns2Shape: Shape = {
  type: "LineSetOilReturns2",
  fields: {
    code: { words: ["line-set.oil-returns"] },
    values: LineSetOilReturnsValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetOilStays2Shape: Shape = {
  type: "LineSetOilStays2",
  fields: {
    code: { words: ["line-set.oil-stays"] },
    values: LineSetOilStaysValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetOilReturnOpenRiser2Shape: Shape = {
  type: "LineSetOilReturnOpenRiser2",
  fields: {
    code: { words: ["line-set.oil-return-open-riser"] },
    values: LineSetOilReturnOpenRiserValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetOilReturnOpenLevel2Shape: Shape = {
  type: "LineSetOilReturnOpenLevel2",
  fields: {
    code: { words: ["line-set.oil-return-open-level"] },
    values: LineSetOilReturnOpenLevelValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetVaporNoise2Shape: Shape = {
  type: "LineSetVaporNoise2",
  fields: {
    code: { words: ["line-set.vapor-noise"] },
    values: LineSetVaporNoiseValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetStockLength2Shape: Shape = {
  type: "LineSetStockLength2",
  fields: {
    code: { words: ["line-set.stock-length"] },
    values: LineSetStockLengthValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetSurplusToCut2Shape: Shape = {
  type: "LineSetSurplusToCut2",
  fields: {
    code: { words: ["line-set.surplus-to-cut"] },
    values: LineSetSurplusToCutValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetCoilToMinimum2Shape: Shape = {
  type: "LineSetCoilToMinimum2",
  fields: {
    code: { words: ["line-set.coil-to-minimum"] },
    values: LineSetCoilToMinimumValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetCoilSurplus2Shape: Shape = {
  type: "LineSetCoilSurplus2",
  fields: {
    code: { words: ["line-set.coil-surplus"] },
    values: LineSetCoilSurplusValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetNoStockLength2Shape: Shape = {
  type: "LineSetNoStockLength2",
  fields: {
    code: { words: ["line-set.no-stock-length"] },
    values: LineSetNoStockLengthValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetItemsFit2Shape: Shape = {
  type: "LineSetItemsFit2",
  fields: {
    code: { words: ["line-set.items-fit"] },
    values: LineSetItemsFitValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetOpeningTooSmall2Shape: Shape = {
  type: "LineSetOpeningTooSmall2",
  fields: {
    code: { words: ["line-set.opening-too-small"] },
    values: LineSetOpeningTooSmallValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetNoLayoutFound2Shape: Shape = {
  type: "LineSetNoLayoutFound2",
  fields: {
    code: { words: ["line-set.no-layout-found"] },
    values: LineSetNoLayoutFoundValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetToRecover2Shape: Shape = {
  type: "LineSetToRecover2",
  fields: {
    code: { words: ["line-set.to-recover"] },
    values: LineSetToRecoverValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetToAdd2Shape: Shape = {
  type: "LineSetToAdd2",
  fields: {
    code: { words: ["line-set.to-add"] },
    values: LineSetToAddValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetChargeNotKnown2Shape: Shape = {
  type: "LineSetChargeNotKnown2",
  fields: {
    code: { words: ["line-set.charge-not-known"] },
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

export const LineSetCylinderTooSmall2Shape: Shape = {
  type: "LineSetCylinderTooSmall2",
  fields: {
    code: { words: ["line-set.cylinder-too-small"] },
    values: LineSetCylinderTooSmallValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetLimitsOfTheManual2Shape: Shape = {
  type: "LineSetLimitsOfTheManual2",
  fields: {
    code: { words: ["line-set.limits-of-the-manual"] },
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

export const LineSetMaximumLengthNotChecked2Shape: Shape = {
  type: "LineSetMaximumLengthNotChecked2",
  fields: {
    code: { words: ["line-set.maximum-length-not-checked"] },
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

export const LineSetMinimumLengthNotChecked2Shape: Shape = {
  type: "LineSetMinimumLengthNotChecked2",
  fields: {
    code: { words: ["line-set.minimum-length-not-checked"] },
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

export const LineSetRoomLimitNotChecked2Shape: Shape = {
  type: "LineSetRoomLimitNotChecked2",
  fields: {
    code: { words: ["line-set.room-limit-not-checked"] },
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

export const LineSetSaturatedLiquid2Shape: Shape = {
  type: "LineSetSaturatedLiquid2",
  fields: {
    code: { words: ["line-set.saturated-liquid"] },
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

export const LineSetNoHeatGain2Shape: Shape = {
  type: "LineSetNoHeatGain2",
  fields: {
    code: { words: ["line-set.no-heat-gain"] },
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

export const LineSetExpansionIndoors2Shape: Shape = {
  type: "LineSetExpansionIndoors2",
  fields: {
    code: { words: ["line-set.expansion-indoors"] },
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

export const LineSetLiquidOnly2Shape: Shape = {
  type: "LineSetLiquidOnly2",
  fields: {
    code: { words: ["line-set.liquid-only"] },
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

export const LineSetLossNotChecked2Shape: Shape = {
  type: "LineSetLossNotChecked2",
  fields: {
    code: { words: ["line-set.loss-not-checked"] },
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

export const LineSetSameDensity2Shape: Shape = {
  type: "LineSetSameDensity2",
  fields: {
    code: { words: ["line-set.same-density"] },
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

export const LineSetGuideMinimumVelocity2Shape: Shape = {
  type: "LineSetGuideMinimumVelocity2",
  fields: {
    code: { words: ["line-set.guide-minimum-velocity"] },
    values: LineSetGuideMinimumVelocityValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetGuideMaximumVelocity2Shape: Shape = {
  type: "LineSetGuideMaximumVelocity2",
  fields: {
    code: { words: ["line-set.guide-maximum-velocity"] },
    values: LineSetGuideMaximumVelocityValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetNoSlack2Shape: Shape = {
  type: "LineSetNoSlack2",
  fields: {
    code: { words: ["line-set.no-slack"] },
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

export const LineSetNoServiceLoop2Shape: Shape = {
  type: "LineSetNoServiceLoop2",
  fields: {
    code: { words: ["line-set.no-service-loop"] },
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

export const LineSetRoundAndStiff2Shape: Shape = {
  type: "LineSetRoundAndStiff2",
  fields: {
    code: { words: ["line-set.round-and-stiff"] },
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

export const LineSetNoClearance2Shape: Shape = {
  type: "LineSetNoClearance2",
  fields: {
    code: { words: ["line-set.no-clearance"] },
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

export const LineSetChargeAsLabeled2Shape: Shape = {
  type: "LineSetChargeAsLabeled2",
  fields: {
    code: { words: ["line-set.charge-as-labeled"] },
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

export const LineSetCylinderNotChecked2Shape: Shape = {
  type: "LineSetCylinderNotChecked2",
  fields: {
    code: { words: ["line-set.cylinder-not-checked"] },
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

export const LineSetChargeAfterTests2Shape: Shape = {
  type: "LineSetChargeAfterTests2",
  fields: {
    code: { words: ["line-set.charge-after-tests"] },
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

export const LineSetNoKinks2Shape: Shape = {
  type: "LineSetNoKinks2",
  fields: {
    code: { words: ["line-set.no-kinks"] },
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

export const LineSetDrainFallsOutward2Shape: Shape = {
  type: "LineSetDrainFallsOutward2",
  fields: {
    code: { words: ["line-set.drain-falls-outward"] },
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

export const LineSetDrilling2Shape: Shape = {
  type: "LineSetDrilling2",
  fields: {
    code: { words: ["line-set.drilling"] },
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

export const LineSetOverfilledCylinder2Shape: Shape = {
  type: "LineSetOverfilledCylinder2",
  fields: {
    code: { words: ["line-set.overfilled-cylinder"] },
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

export const LineSetMixedRefrigerants2Shape: Shape = {
  type: "LineSetMixedRefrigerants2",
  fields: {
    code: { words: ["line-set.mixed-refrigerants"] },
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

export const LineSetNeverVent2Shape: Shape = {
  type: "LineSetNeverVent2",
  fields: {
    code: { words: ["line-set.never-vent"] },
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

export const LineSetMeasureBetter2Shape: Shape = {
  type: "LineSetMeasureBetter2",
  fields: {
    code: { words: ["line-set.measure-better"] },
    values: LineSetMeasureBetterValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetShortenLine2Shape: Shape = {
  type: "LineSetShortenLine2",
  fields: {
    code: { words: ["line-set.shorten-line"] },
    values: LineSetShortenLineValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetLengthenLine2Shape: Shape = {
  type: "LineSetLengthenLine2",
  fields: {
    code: { words: ["line-set.lengthen-line"] },
    values: LineSetShortenLineValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetReduceHeight2Shape: Shape = {
  type: "LineSetReduceHeight2",
  fields: {
    code: { words: ["line-set.reduce-height"] },
    values: LineSetShortenLineValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetFewerBends2Shape: Shape = {
  type: "LineSetFewerBends2",
  fields: {
    code: { words: ["line-set.fewer-bends"] },
    values: LineSetFewerBendsValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetCountBends2Shape: Shape = {
  type: "LineSetCountBends2",
  fields: {
    code: { words: ["line-set.count-bends"] },
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

export const LineSetEnterShortLineRule2Shape: Shape = {
  type: "LineSetEnterShortLineRule2",
  fields: {
    code: { words: ["line-set.enter-short-line-rule"] },
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

export const LineSetReduceCharge2Shape: Shape = {
  type: "LineSetReduceCharge2",
  fields: {
    code: { words: ["line-set.reduce-charge"] },
    values: LineSetTotalNotKnownValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetEnterFactoryCharge2Shape: Shape = {
  type: "LineSetEnterFactoryCharge2",
  fields: {
    code: { words: ["line-set.enter-factory-charge"] },
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

export const LineSetReadRateAgain2Shape: Shape = {
  type: "LineSetReadRateAgain2",
  fields: {
    code: { words: ["line-set.read-rate-again"] },
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

export const LineSetEnterExpansionDevice2Shape: Shape = {
  type: "LineSetEnterExpansionDevice2",
  fields: {
    code: { words: ["line-set.enter-expansion-device"] },
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

export const LineSetMeasureSubcooling2Shape: Shape = {
  type: "LineSetMeasureSubcooling2",
  fields: {
    code: { words: ["line-set.measure-subcooling"] },
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

export const LineSetReduceLoss2Shape: Shape = {
  type: "LineSetReduceLoss2",
  fields: {
    code: { words: ["line-set.reduce-loss"] },
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

export const LineSetNoExtraCharge2Shape: Shape = {
  type: "LineSetNoExtraCharge2",
  fields: {
    code: { words: ["line-set.no-extra-charge"] },
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

export const LineSetWiderLiquidLine2Shape: Shape = {
  type: "LineSetWiderLiquidLine2",
  fields: {
    code: { words: ["line-set.wider-liquid-line"] },
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

export const LineSetAskLineSize2Shape: Shape = {
  type: "LineSetAskLineSize2",
  fields: {
    code: { words: ["line-set.ask-line-size"] },
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

export const LineSetEnterLoss2Shape: Shape = {
  type: "LineSetEnterLoss2",
  fields: {
    code: { words: ["line-set.enter-loss"] },
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

export const LineSetSmallerRiser2Shape: Shape = {
  type: "LineSetSmallerRiser2",
  fields: {
    code: { words: ["line-set.smaller-riser"] },
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

export const LineSetAskOilReturn2Shape: Shape = {
  type: "LineSetAskOilReturn2",
  fields: {
    code: { words: ["line-set.ask-oil-return"] },
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

export const LineSetWiderVaporLine2Shape: Shape = {
  type: "LineSetWiderVaporLine2",
  fields: {
    code: { words: ["line-set.wider-vapor-line"] },
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

export const LineSetOtherStock2Shape: Shape = {
  type: "LineSetOtherStock2",
  fields: {
    code: { words: ["line-set.other-stock"] },
    values: LineSetOtherStockValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetTakeFromRoll2Shape: Shape = {
  type: "LineSetTakeFromRoll2",
  fields: {
    code: { words: ["line-set.take-from-roll"] },
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

export const LineSetLargerOpening2Shape: Shape = {
  type: "LineSetLargerOpening2",
  fields: {
    code: { words: ["line-set.larger-opening"] },
    values: LineSetLargerOpeningValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetRecoverAll2Shape: Shape = {
  type: "LineSetRecoverAll2",
  fields: {
    code: { words: ["line-set.recover-all"] },
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

export const LineSetChargeByWeight2Shape: Shape = {
  type: "LineSetChargeByWeight2",
  fields: {
    code: { words: ["line-set.charge-by-weight"] },
    values: LineSetChargeByWeightValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const LineSetOtherCylinder2Shape: Shape = {
  type: "LineSetOtherCylinder2",
  fields: {
    code: { words: ["line-set.other-cylinder"] },
    values: LineSetOtherCylinderValuesShape,
    "text?": "text",
    "kind?": { words: ["finding", "danger", "governing"] },
  },
  about: {
    code: "Stable and machine-readable: the module and the sentence, pressure-test.within-limit.",
    values: "What stands in the sentence, by name.",
    kind: "Whether it is found in this case, can hurt someone, or governs.",
  },
};

export const ChargeAssessmentCautionsItemShape: Shape = {
  type: "ChargeAssessmentCautionsItem",
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
    "line-set.rate-unit": LineSetRateUnit2Shape,
    "line-set.viscosity-unit": LineSetViscosityUnit2Shape,
    "line-set.within-maximum": LineSetWithinMaximum2Shape,
    "line-set.above-maximum": LineSetAboveMaximum2Shape,
    "line-set.near-maximum": LineSetNearMaximum2Shape,
    "line-set.above-minimum": LineSetAboveMinimum2Shape,
    "line-set.below-minimum": LineSetBelowMinimum2Shape,
    "line-set.near-minimum": LineSetNearMinimum2Shape,
    "line-set.bends-within-maximum": LineSetBendsWithinMaximum2Shape,
    "line-set.bends-above-maximum": LineSetBendsAboveMaximum2Shape,
    "line-set.bends-not-counted": LineSetBendsNotCounted2Shape,
    "line-set.bend-length-not-counted": LineSetBendLengthNotCounted2Shape,
    "line-set.add": LineSetAdd2Shape,
    "line-set.take-out": LineSetTakeOut2Shape,
    "line-set.nothing-to-add": LineSetNothingToAdd2Shape,
    "line-set.short-line-rule-not-known": LineSetShortLineRuleNotKnown2Shape,
    "line-set.allowances": LineSetAllowances2Shape,
    "line-set.total-not-known": LineSetTotalNotKnown2Shape,
    "line-set.rate-plausible": LineSetRatePlausible2Shape,
    "line-set.rate-implausible": LineSetRateImplausible2Shape,
    "line-set.rate-fits-other-device": LineSetRateFitsOtherDevice2Shape,
    "line-set.two-phase-liquid-line": LineSetTwoPhaseLiquidLine2Shape,
    "line-set.rate-per-foot": LineSetRatePerFoot2Shape,
    "line-set.rate-per-meter": LineSetRatePerMeter2Shape,
    "line-set.subcooling-enough": LineSetSubcoolingEnough2Shape,
    "line-set.subcooling-too-low": LineSetSubcoolingTooLow2Shape,
    "line-set.subcooling-near": LineSetSubcoolingNear2Shape,
    "line-set.subcooling-not-known": LineSetSubcoolingNotKnown2Shape,
    "line-set.liquid-velocity-within": LineSetLiquidVelocityWithin2Shape,
    "line-set.liquid-velocity-high": LineSetLiquidVelocityHigh2Shape,
    "line-set.liquid-velocity-low": LineSetLiquidVelocityLow2Shape,
    "line-set.loss-not-known": LineSetLossNotKnown2Shape,
    "line-set.oil-returns": LineSetOilReturns2Shape,
    "line-set.oil-stays": LineSetOilStays2Shape,
    "line-set.oil-return-open-riser": LineSetOilReturnOpenRiser2Shape,
    "line-set.oil-return-open-level": LineSetOilReturnOpenLevel2Shape,
    "line-set.vapor-noise": LineSetVaporNoise2Shape,
    "line-set.stock-length": LineSetStockLength2Shape,
    "line-set.surplus-to-cut": LineSetSurplusToCut2Shape,
    "line-set.coil-to-minimum": LineSetCoilToMinimum2Shape,
    "line-set.coil-surplus": LineSetCoilSurplus2Shape,
    "line-set.no-stock-length": LineSetNoStockLength2Shape,
    "line-set.items-fit": LineSetItemsFit2Shape,
    "line-set.opening-too-small": LineSetOpeningTooSmall2Shape,
    "line-set.no-layout-found": LineSetNoLayoutFound2Shape,
    "line-set.to-recover": LineSetToRecover2Shape,
    "line-set.to-add": LineSetToAdd2Shape,
    "line-set.charge-not-known": LineSetChargeNotKnown2Shape,
    "line-set.cylinder-too-small": LineSetCylinderTooSmall2Shape,
    "line-set.limits-of-the-manual": LineSetLimitsOfTheManual2Shape,
    "line-set.maximum-length-not-checked": LineSetMaximumLengthNotChecked2Shape,
    "line-set.minimum-length-not-checked": LineSetMinimumLengthNotChecked2Shape,
    "line-set.room-limit-not-checked": LineSetRoomLimitNotChecked2Shape,
    "line-set.saturated-liquid": LineSetSaturatedLiquid2Shape,
    "line-set.no-heat-gain": LineSetNoHeatGain2Shape,
    "line-set.expansion-indoors": LineSetExpansionIndoors2Shape,
    "line-set.liquid-only": LineSetLiquidOnly2Shape,
    "line-set.loss-not-checked": LineSetLossNotChecked2Shape,
    "line-set.same-density": LineSetSameDensity2Shape,
    "line-set.guide-minimum-velocity": LineSetGuideMinimumVelocity2Shape,
    "line-set.guide-maximum-velocity": LineSetGuideMaximumVelocity2Shape,
    "line-set.no-slack": LineSetNoSlack2Shape,
    "line-set.no-service-loop": LineSetNoServiceLoop2Shape,
    "line-set.round-and-stiff": LineSetRoundAndStiff2Shape,
    "line-set.no-clearance": LineSetNoClearance2Shape,
    "line-set.charge-as-labeled": LineSetChargeAsLabeled2Shape,
    "line-set.cylinder-not-checked": LineSetCylinderNotChecked2Shape,
    "line-set.charge-after-tests": LineSetChargeAfterTests2Shape,
    "line-set.no-kinks": LineSetNoKinks2Shape,
    "line-set.drain-falls-outward": LineSetDrainFallsOutward2Shape,
    "line-set.drilling": LineSetDrilling2Shape,
    "line-set.overfilled-cylinder": LineSetOverfilledCylinder2Shape,
    "line-set.mixed-refrigerants": LineSetMixedRefrigerants2Shape,
    "line-set.never-vent": LineSetNeverVent2Shape,
    "line-set.measure-better": LineSetMeasureBetter2Shape,
    "line-set.shorten-line": LineSetShortenLine2Shape,
    "line-set.lengthen-line": LineSetLengthenLine2Shape,
    "line-set.reduce-height": LineSetReduceHeight2Shape,
    "line-set.fewer-bends": LineSetFewerBends2Shape,
    "line-set.count-bends": LineSetCountBends2Shape,
    "line-set.enter-short-line-rule": LineSetEnterShortLineRule2Shape,
    "line-set.reduce-charge": LineSetReduceCharge2Shape,
    "line-set.enter-factory-charge": LineSetEnterFactoryCharge2Shape,
    "line-set.read-rate-again": LineSetReadRateAgain2Shape,
    "line-set.enter-expansion-device": LineSetEnterExpansionDevice2Shape,
    "line-set.measure-subcooling": LineSetMeasureSubcooling2Shape,
    "line-set.reduce-loss": LineSetReduceLoss2Shape,
    "line-set.no-extra-charge": LineSetNoExtraCharge2Shape,
    "line-set.wider-liquid-line": LineSetWiderLiquidLine2Shape,
    "line-set.ask-line-size": LineSetAskLineSize2Shape,
    "line-set.enter-loss": LineSetEnterLoss2Shape,
    "line-set.smaller-riser": LineSetSmallerRiser2Shape,
    "line-set.ask-oil-return": LineSetAskOilReturn2Shape,
    "line-set.wider-vapor-line": LineSetWiderVaporLine2Shape,
    "line-set.other-stock": LineSetOtherStock2Shape,
    "line-set.take-from-roll": LineSetTakeFromRoll2Shape,
    "line-set.larger-opening": LineSetLargerOpening2Shape,
    "line-set.recover-all": LineSetRecoverAll2Shape,
    "line-set.charge-by-weight": LineSetChargeByWeight2Shape,
    "line-set.other-cylinder": LineSetOtherCylinder2Shape,
  },
};

export const ChargeAssessmentShape: Shape = {
  type: "ChargeAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    reasons: { list: LineSetStatementShape },
    assumptions: { list: LineSetStatementShape },
    cautions: { list: ChargeAssessmentCautionsItemShape },
    "actions?": { list: LineSetStatementShape },
    sources: { list: CitationShape },
    additionalCharge: "mass",
    unroundedCharge: "mass",
    "totalCharge?": "mass",
    "expandedUncertainty?": "mass",
  },
  says: "The verdict on the added charge: pass when it follows from the rule and breaks no stated limit.",
  about: {
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
};

export const TubeSizeShape: Shape = {
  type: "TubeSize",
  fields: { outsideDiameter: "length", wall: "length" },
  says: "Outside diameter and wall of a round tube: all that its volume needs. Measure both when the tube is not marked; tube sold in line sets is often thinner than the standard.",
  about: {
    outsideDiameter: "Outside diameter, 1 mm to 300 mm.",
    wall: "Wall thickness, more than 0 and less than half the outside diameter.",
  },
};

export const FrictionLossInputShape: Shape = {
  type: "FrictionLossInput",
  fields: {
    tube: TubeSizeShape,
    massFlow: "massFlow",
    density: "density",
    length: "length",
    viscosityMicropascalSecond: "number",
    "roughness?": "length",
  },
  says: "Single-phase flow with what friction depends on.",
  about: {
    tube: "Outside diameter and wall.",
    massFlow: "Mass flow of refrigerant, 0 to 200 kg/s.",
    density: "Density in the line, up to 3000 kg/m³.",
    length: "Length of tube with the equivalent length of bends and fittings.",
    viscosityMicropascalSecond:
      "Dynamic viscosity in µPa·s, 1 to 100 000: R410A liquid at 40 °C is about 100, its vapor at 5 °C about 12.5 (from memory).",
    roughness: "Roughness of the bore; drawn copper, 1.5 µm, when left out.",
  },
};

export const FrictionLossShape: Shape = {
  type: "FrictionLoss",
  fields: {
    pressureLoss: "pressureDifference",
    velocity: "speed",
    reynolds: "number",
    frictionFactor: "number",
  },
  says: "What the flow is like and what it loses.",
  about: {
    pressureLoss: "Pressure lost to friction.",
    velocity: "Mean velocity.",
    reynolds: "Reynolds number.",
    frictionFactor: "Darcy friction factor.",
  },
};

export const TubeFlowShape: Shape = {
  type: "TubeFlow",
  fields: { tube: TubeSizeShape, massFlow: "massFlow", density: "density" },
  says: "Single-phase flow in a tube.",
  about: {
    tube: "Outside diameter and wall.",
    massFlow: "Mass flow of refrigerant, 0 to 200 kg/s.",
    density: "Density in the line, up to 3000 kg/m³.",
  },
};

export const FullLineMassInput1Shape: Shape = {
  type: "FullLineMassInput1",
  fields: { tube: TubeSizeShape, density: "density", length: "length" },
  about: {
    tube: "Outside diameter and wall.",
    density: "Density of the refrigerant in it, up to 3000 kg/m³.",
    length: "Length of tube.",
  },
};

export const FullLineMassInput2Shape: Shape = {
  type: "FullLineMassInput2",
  fields: {
    tube: TubeSizeShape,
    refrigerant: byDesignation,
    temperature: "temperature",
    length: "length",
  },
  about: {
    tube: "Outside diameter and wall.",
    refrigerant: "A refrigerant of hvac-install-math/refrigerants.",
    temperature: "Temperature of the liquid, within the refrigerant's range.",
    length: "Length of tube.",
  },
};

export const FilledTubeShape: Shape = {
  type: "FilledTube",
  fields: { tube: TubeSizeShape, density: "density" },
  says: "A tube full of a fluid of one density.",
  about: {
    tube: "Outside diameter and wall.",
    density: "Density of the refrigerant in it, up to 3000 kg/m³.",
  },
};

export const LiquidFilledTubeShape: Shape = {
  type: "LiquidFilledTube",
  fields: { tube: TubeSizeShape, refrigerant: byDesignation, temperature: "temperature" },
  says: "A tube full of a refrigerant's saturated liquid.",
  about: {
    tube: "Outside diameter and wall.",
    refrigerant: "A refrigerant of hvac-install-math/refrigerants.",
    temperature: "Temperature of the liquid, within the refrigerant's range.",
  },
};

export const TubeVolumeInputShape: Shape = {
  type: "TubeVolumeInput",
  fields: { tube: TubeSizeShape, length: "length" },
};

export const AstmB280SizeShape: Shape = {
  type: "AstmB280Size",
  words: ["1/4", "5/16", "3/8", "1/2", "5/8", "3/4", "7/8", "1-1/8"],
};

export const AstmB280ChoiceShape: Shape = {
  type: "AstmB280Choice",
  fields: { size: AstmB280SizeShape, temper: { words: ["annealed", "drawn"] }, "wall?": "length" },
  says: "Which tube of ASTM B280.",
  about: {
    size: "Nominal size in inches.",
    temper: "Soft coil or hard straight length.",
    wall: "Wall, where the standard has two, or where the tube at hand is thinner or thicker.",
  },
};

export const TubeShape: Shape = {
  type: "Tube",
  fields: {
    outsideDiameter: "length",
    wall: "length",
    designation: "text",
    sources: { list: CitationShape },
  },
  says: "A tube of a standard.",
  about: {
    outsideDiameter: "Outside diameter, 1 mm to 300 mm.",
    wall: "Wall thickness, more than 0 and less than half the outside diameter.",
    designation: "Nominal size as the trade says it: 3/8 in, 9.52 mm.",
    sources: "The standard it follows.",
  },
};

export const FlowConditionShape: Shape = {
  type: "FlowCondition",
  fields: { reynolds: "number", relativeRoughness: "number" },
  says: "Reynolds number and roughness of a flow.",
  about: {
    reynolds: "Reynolds number, ρ·v·d/μ, more than 0, up to 1e9.",
    relativeRoughness: "Roughness over inside diameter, 0 (smooth) to 0.05.",
  },
};

export const IdentifyLinesInputShape: Shape = {
  type: "IdentifyLinesInput",
  fields: { a: { either: [TubeSizeShape, TubeShape] }, b: { either: [TubeSizeShape, TubeShape] } },
};

export const IdentifyLinesResultShape: Shape = {
  type: "IdentifyLinesResult",
  fields: {
    liquid: { either: [TubeSizeShape, TubeShape] },
    vapor: { either: [TubeSizeShape, TubeShape] },
  },
};

export const InsulatedDiameterInputShape: Shape = {
  type: "InsulatedDiameterInput",
  fields: { tube: TubeSizeShape, thickness: "length" },
};

export const RoundItemShape: Shape = {
  type: "RoundItem",
  fields: { label: "text", diameter: "length" },
  says: "Something round that goes through. Take the larger dimension of a flat cable.",
  about: {
    label: "Name for messages and for the layout.",
    diameter: "Outside diameter with insulation.",
  },
};

export const SmallestSleeveInputShape: Shape = {
  type: "SmallestSleeveInput",
  fields: { items: { list: RoundItemShape }, "clearance?": "length" },
};

export const LineFitInputOpening1Shape: Shape = {
  type: "LineFitInputOpening1",
  fields: { diameter: "length" },
};

export const LineFitInputOpening2Shape: Shape = {
  type: "LineFitInputOpening2",
  fields: { width: "length", height: "length" },
  about: { width: "Inside width of a duct.", height: "Inside height of a duct." },
};

export const LineFitInputShape: Shape = {
  type: "LineFitInput",
  fields: {
    items: { list: RoundItemShape },
    opening: { either: [LineFitInputOpening1Shape, LineFitInputOpening2Shape] },
    "clearance?": "length",
  },
  says: "What has to go through which opening.",
  about: {
    items: "Up to eight items.",
    opening: "Inside dimensions.",
    clearance: "Room to keep between items and to the wall; none when left out.",
  },
};

export const LineFitAssessmentLayoutItemShape: Shape = {
  type: "LineFitAssessmentLayoutItem",
  fields: { label: "text", x: "length", y: "length" },
  about: { label: "The item's label.", x: "To the right.", y: "Upwards." },
};

export const LineFitAssessmentShape: Shape = {
  type: "LineFitAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    reasons: { list: LineSetStatementShape },
    assumptions: { list: LineSetStatementShape },
    cautions: { list: ChargeAssessmentCautionsItemShape },
    "actions?": { list: LineSetStatementShape },
    sources: { list: CitationShape },
    layout: { list: LineFitAssessmentLayoutItemShape },
    fill: "number",
  },
  says: "The verdict on the opening.",
  about: {
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
};

export const RunLimitsOilTrapsShape: Shape = {
  type: "RunLimitsOilTraps",
  fields: { above: "length", spacing: "length" },
  about: { above: "Lift that still needs none.", spacing: "Height between traps." },
};

export const RunLimitsExtraOilShape: Shape = {
  type: "RunLimitsExtraOil",
  fields: { beyond: "length", per: "length", volume: "volume" },
  about: {
    beyond: "Length that the factory's oil covers.",
    per: "Step of length.",
    volume: "Oil for a step.",
  },
};

export const RunLimitsShape: Shape = {
  type: "RunLimits",
  fields: {
    "maximumLength?": "length",
    "minimumLength?": "length",
    "maximumLift?": "length",
    "maximumLiftOutdoorAbove?": "length",
    "maximumBends?": "number",
    "bendEquivalentLength?": "length",
    "oilTraps?": RunLimitsOilTrapsShape,
    "extraOil?": RunLimitsExtraOilShape,
  },
  says: "What the manual allows. Only what is given is checked.",
  about: {
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
};

export const LineRunInputShape: Shape = {
  type: "LineRunInput",
  fields: {
    length: "length",
    lift: "length",
    outdoorUnit: { words: ["above", "below", "level"] },
    "bends?": "number",
    "standardUncertainty?": "length",
    limits: RunLimitsShape,
  },
  says: "The run as it is or will be.",
  about: {
    length: "Length of tube one way, coils included, 0 to 1000 m.",
    lift: "Height difference of the units, 0 or more.",
    outdoorUnit: "Where the outdoor unit stands.",
    bends: "Number of bends, a whole number from 0 to 1000.",
    standardUncertainty: "Standard uncertainty (k = 1) of length and lift, 0 when left out.",
    limits: "What the manual allows.",
  },
};

export const LineRunAssessmentShape: Shape = {
  type: "LineRunAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    reasons: { list: LineSetStatementShape },
    assumptions: { list: LineSetStatementShape },
    cautions: { list: ChargeAssessmentCautionsItemShape },
    "actions?": { list: LineSetStatementShape },
    sources: { list: CitationShape },
    equivalentLength: "length",
    oilTraps: "number",
    extraOil: "volume",
  },
  says: "The verdict on a run.",
  about: {
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
};

export const LiquidChargePlausibilityInput1Shape: Shape = {
  type: "LiquidChargePlausibilityInput1",
  fields: {
    tube: TubeSizeShape,
    density: "density",
    rate: { either: ["massPerLength", MassPerStepShape] },
    expansionDevice: { words: ["indoor", "outdoor", "not-known"] },
  },
  about: {
    tube: "Outside diameter and wall.",
    density: "Density of the refrigerant in it, up to 3000 kg/m³.",
    rate: "The nameplate's rate for this size of liquid line.",
    expansionDevice: "Where the unit expands the liquid in cooling.",
  },
};

export const LiquidChargePlausibilityInput2Shape: Shape = {
  type: "LiquidChargePlausibilityInput2",
  fields: {
    tube: TubeSizeShape,
    refrigerant: byDesignation,
    temperature: "temperature",
    rate: { either: ["massPerLength", MassPerStepShape] },
    expansionDevice: { words: ["indoor", "outdoor", "not-known"] },
  },
  about: {
    tube: "Outside diameter and wall.",
    refrigerant: "A refrigerant of hvac-install-math/refrigerants.",
    temperature: "Temperature of the liquid, within the refrigerant's range.",
    rate: "The nameplate's rate for this size of liquid line.",
    expansionDevice: "Where the unit expands the liquid in cooling.",
  },
};

export const LiquidChargePlausibilityShape: Shape = {
  type: "LiquidChargePlausibility",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    "cause?": { words: ["per-foot-taken-as-per-meter", "per-meter-taken-as-per-foot"] },
    reasons: { list: LineSetStatementShape },
    assumptions: { list: LineSetStatementShape },
    cautions: { list: ChargeAssessmentCautionsItemShape },
    "actions?": { list: LineSetStatementShape },
    sources: { list: CitationShape },
    fullLineRate: "massPerLength",
    ratio: "number",
  },
  says: "The verdict on a rate: pass plausible, inconclusive plausible only with the device elsewhere, fail read the nameplate again.",
  about: {
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
};

export const LiquidLineSubcoolingInputShape: Shape = {
  type: "LiquidLineSubcoolingInput",
  fields: {
    "available?": "temperatureDifference",
    liquidPressure: "absolutePressure",
    losses: { list: "pressureDifference" },
    margin: "temperatureDifference",
    "standardUncertainty?": "temperatureDifference",
    refrigerant: byDesignation,
  },
  about: {
    available: "Subcooling found or promised at the outdoor unit.",
    liquidPressure: "Absolute pressure where the liquid leaves the outdoor unit.",
    losses:
      "Every loss on the way: static head (negative where the liquid falls), friction, drier, valve.",
    margin: "Subcooling that shall be left at the expansion device, 0 or more.",
    standardUncertainty: "Standard uncertainty (k = 1) of available, 0 when left out.",
  },
};

export const LiquidSubcoolingAssessmentShape: Shape = {
  type: "LiquidSubcoolingAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    reasons: { list: LineSetStatementShape },
    assumptions: { list: LineSetStatementShape },
    cautions: { list: ChargeAssessmentCautionsItemShape },
    "actions?": { list: LineSetStatementShape },
    sources: { list: CitationShape },
    pressureLoss: "pressureDifference",
    temperatureLoss: "temperatureDifference",
    neededSubcooling: "temperatureDifference",
  },
  says: "The verdict on the subcooling.",
  about: {
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
};

export const LiquidVelocityInputShape: Shape = {
  type: "LiquidVelocityInput",
  fields: {
    tube: TubeSizeShape,
    massFlow: "massFlow",
    density: "density",
    solenoidValve: "flag",
    "pressureLoss?": "pressureDifference",
    "maximumLoss?": "pressureDifference",
  },
  says: "The liquid line at full capacity.",
  about: {
    tube: "Outside diameter and wall.",
    massFlow: "Mass flow of refrigerant, 0 to 200 kg/s.",
    density: "Density in the line, up to 3000 kg/m³.",
    solenoidValve:
      "Whether a solenoid valve closes the line: then 300 ft/min is the most, against liquid hammer.",
    pressureLoss: "Loss of friction, head and fittings together.",
    maximumLoss: "Most that the manual or guideLosses allows.",
  },
};

export const LiquidVelocityAssessmentShape: Shape = {
  type: "LiquidVelocityAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    reasons: { list: LineSetStatementShape },
    assumptions: { list: LineSetStatementShape },
    cautions: { list: ChargeAssessmentCautionsItemShape },
    "actions?": { list: LineSetStatementShape },
    sources: { list: CitationShape },
    velocity: "speed",
  },
  says: "The verdict on the liquid line.",
  about: {
    outcome: "Proven good, proven bad, or inconclusive.",
    reasons: "Why, the deciding reason first.",
    assumptions: "What was assumed because it was not given.",
    cautions:
      "What this case hides, what can hurt someone, and what overrides the result, in this order.",
    actions: "What to do next, in order; empty on a clean pass.",
    sources: "Where the rules and figures come from.",
    velocity: "Mean velocity.",
  },
};

export const En12735SizeShape: Shape = {
  type: "En12735Size",
  words: [12, 6, 8, 10, 15, 16, 18, 22, 28, 6.35, 7.94, 9.52, 12.7, 15.87, 19.06, 22.2, 28.57],
};

export const En12735TubeInputShape: Shape = {
  type: "En12735TubeInput",
  fields: { size: En12735SizeShape, wall: "length" },
};

export const JisH3300SizeShape: Shape = {
  type: "JisH3300Size",
  words: ["6.35", "9.52", "12.70", "15.88", "19.05"],
};

export const JisH3300TubeInputShape: Shape = {
  type: "JisH3300TubeInput",
  fields: { size: JisH3300SizeShape, "wall?": "length" },
};

export const IndoorUnitLineShape: Shape = {
  type: "IndoorUnitLine",
  fields: {
    length: "length",
    rate: { either: ["massPerLength", MassPerStepShape] },
    "preChargedLength?": "length",
    "allowance?": "mass",
  },
  says: "The liquid line of one indoor unit.",
  about: {
    length: "Length of liquid line as installed, one way.",
    rate: "Mass per length for this size of liquid line.",
    preChargedLength:
      "Length that the factory charge covers on this line; leave out when one covers the sum.",
    allowance: "Mass that the manual adds for this indoor unit, whatever the length.",
  },
};

export const MultiSplitChargeInputShape: Shape = {
  type: "MultiSplitChargeInput",
  fields: {
    "factoryCharge?": "mass",
    "maximumLength?": "length",
    "minimumLength?": "length",
    "maximumCharge?": "mass",
    "scaleResolution?": "mass",
    "lengthUncertainty?": "length",
    "safetyClass?": { words: ["A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3"] },
    lines: { list: IndoorUnitLineShape },
    "preChargedTotal?": "length",
    shortLineRule: { words: ["add-only", "add-and-subtract", "not-stated"] },
  },
  says: "Several indoor units on one outdoor unit.",
  about: {
    factoryCharge: "Charge that the unit came with, for the total on the label.",
    maximumLength: "Longest run (all lines together) that the manual allows.",
    minimumLength: "Shortest run that the manual allows.",
    maximumCharge:
      "Most that the unit or the room may hold, from the manual or from the room limit for flammables.",
    scaleResolution: "Smallest step of the scale; the answer is rounded to it.",
    lengthUncertainty: "Standard uncertainty (k = 1) of each length; taken as exact when left out.",
    safetyClass: "Safety class of the refrigerant, for the cautions.",
    lines: "One entry per indoor unit.",
    preChargedTotal:
      "Length that the factory charge covers for the sum of all lines; needs one rate for all.",
    shortLineRule: "What happens below the pre-charged length, from the manual.",
  },
};

export const RateRowShape: Shape = {
  type: "RateRow",
  fields: { outsideDiameter: "length", rate: { either: ["massPerLength", MassPerStepShape] } },
  says: "A row of the nameplate's table of rates.",
  about: {
    outsideDiameter: "Outside diameter of the liquid line, metric or in inches.",
    rate: "Rate for this size.",
  },
};

export const RateForLiquidLineInputShape: Shape = {
  type: "RateForLiquidLineInput",
  fields: { rows: { list: RateRowShape }, tube: TubeSizeShape },
};

export const LineContentsInputShape: Shape = {
  type: "LineContentsInput",
  fields: {
    liquid: { either: [FilledTubeShape, LiquidFilledTubeShape] },
    vapor: FilledTubeShape,
    length: "length",
  },
  about: { liquid: "Liquid line.", vapor: "Vapor line.", length: "Length of both, one way." },
};

export const LineContentsShape: Shape = {
  type: "LineContents",
  fields: { liquid: "mass", vapor: "mass", total: "mass" },
  says: "What the two lines hold.",
  about: { liquid: "Mass in the liquid line.", vapor: "Mass in the vapor line.", total: "Both." },
};

export const RecoveryInputCylinderShape: Shape = {
  type: "RecoveryInputCylinder",
  fields: { maximumFill: "mass", contents: "mass" },
  about: {
    maximumFill: "Most refrigerant that may be in it, as marked for this refrigerant.",
    contents: "What is in it already.",
  },
};

export const RecoveryInputShape: Shape = {
  type: "RecoveryInput",
  fields: {
    "chargeInSystem?": "mass",
    chargeToKeep: "mass",
    "cylinder?": RecoveryInputCylinderShape,
    "safetyClass?": { words: ["A1", "A2L", "A2", "A3", "B1", "B2L", "B2", "B3"] },
  },
  says: "A system that is opened, moved or taken away.",
  about: {
    chargeInSystem: "Total charge by the label; leave out when it is not known or some has leaked.",
    chargeToKeep:
      "Charge that the system shall have afterwards: 0 to take it away, the new total for another line length.",
    cylinder: "Recovery cylinder.",
    safetyClass: "Safety class of the refrigerant, for the cautions.",
  },
};

export const RecoveryAssessmentShape: Shape = {
  type: "RecoveryAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    reasons: { list: LineSetStatementShape },
    assumptions: { list: LineSetStatementShape },
    cautions: { list: ChargeAssessmentCautionsItemShape },
    "actions?": { list: LineSetStatementShape },
    sources: { list: CitationShape },
    "toRecover?": "mass",
    "toAdd?": "mass",
    "cylinderRoom?": "mass",
  },
  says: "The verdict on a recovery.",
  about: {
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
};

export const LiquidColumnShape: Shape = {
  type: "LiquidColumn",
  fields: { density: "density", lift: "length" },
  says: "A column of liquid.",
  about: {
    density: "Density of the liquid, up to 3000 kg/m³.",
    lift: "How far the liquid rises to the indoor unit, −300 m to 300 m; negative where it falls.",
  },
};

export const StockLengthInputShape: Shape = {
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
  says: "The run and the line sets at hand.",
  about: {
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
};

export const StockLengthAssessmentShape: Shape = {
  type: "StockLengthAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    reasons: { list: LineSetStatementShape },
    assumptions: { list: LineSetStatementShape },
    cautions: { list: ChargeAssessmentCautionsItemShape },
    "actions?": { list: LineSetStatementShape },
    sources: { list: CitationShape },
    neededLength: "length",
    "stockLength?": "length",
    "surplus?": "length",
    "surplusUse?": { words: ["none", "cut", "coil"] },
    "installedLength?": "length",
  },
  says: "The verdict on the stock.",
  about: {
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
};

export const RefrigerantMassFlowInputShape: Shape = {
  type: "RefrigerantMassFlowInput",
  fields: { capacity: "power", enthalpyDifference: "specificEnergy" },
  about: {
    capacity: "Cooling capacity.",
    enthalpyDifference:
      "Enthalpy of the vapor leaving less that of the liquid entering the evaporator.",
  },
};

export const OilRiserShape: Shape = {
  type: "OilRiser",
  fields: { tube: TubeSizeShape, vaporDensity: "density", oilDensity: "density" },
  says: "What decides whether oil climbs a riser.",
  about: {
    tube: "Outside diameter and wall.",
    vaporDensity: "Density of the vapor, up to 500 kg/m³.",
    oilDensity: "Density of the oil with refrigerant in it, about 900 to 1050 kg/m³.",
  },
};

export const VaporLineInputShape: Shape = {
  type: "VaporLineInput",
  fields: {
    tube: TubeSizeShape,
    vaporDensity: "density",
    oilDensity: "density",
    direction: { words: ["horizontal", "riser"] },
    fullMassFlow: "massFlow",
    minimumMassFlow: "massFlow",
    "minimumVelocity?": "speed",
    "maximumVelocity?": "speed",
  },
  says: "The vapor line at full and at least capacity.",
  about: {
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
};

export const VaporLineAssessmentShape: Shape = {
  type: "VaporLineAssessment",
  fields: {
    outcome: { words: ["pass", "fail", "inconclusive"] },
    reasons: { list: LineSetStatementShape },
    assumptions: { list: LineSetStatementShape },
    cautions: { list: ChargeAssessmentCautionsItemShape },
    "actions?": { list: LineSetStatementShape },
    sources: { list: CitationShape },
    fullVelocity: "speed",
    minimumCapacityVelocity: "speed",
    entrainmentVelocity: "speed",
  },
  says: "The verdict on the vapor line.",
  about: {
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
};
