// How do the inputs and results of circuit-protection travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.
import type {
  assessNameplate,
  breakerConnection,
  circuitFromNameplate,
  compareSupplies,
  compressorProtection,
  conductorResistance,
  conduitImpedance,
  equipmentGrounding,
  largestDeviceOnConductor,
  longestRun,
  maximumOvercurrentProtection,
  minimumCircuitAmpacity,
  minimumConductor,
  nameplateFromParts,
  tripBand,
  usableAmpacity,
  voltageDrop,
} from "../../circuit-protection/index.ts";
import type { InputOf, ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import {
  AssessNameplateInputShape,
  BreakerConnectionInputShape,
  CircuitFromNameplateInputShape,
  CircuitFromNameplateResultEquipmentGroundingShape,
  CircuitFromNameplateResultShape,
  CompareSuppliesInputShape,
  CompareSuppliesResultItemShape,
  CompressorProtectionInputShape,
  CompressorProtectionShape,
  ConductorResistanceInputShape,
  ConduitImpedanceInputShape,
  ConduitImpedanceResultShape,
  ConnectionShape,
  EquipmentGroundingInputShape,
  LargestDeviceOnConductorInputShape,
  LoadShape,
  LongestRunInputShape,
  MinimumConductorInputShape,
  MinimumConductorResultShape,
  NameplateAssessmentShape,
  NameplateFromPartsShape,
  TripBandInputShape,
  TripBandShape,
  UsableAmpacityInputShape,
  VoltageDropInputShape,
  VoltageDropShape,
} from "./circuit-protection.shapes.ts";

/** JSON of what `breakerConnection` takes. Source: the library's own format. */
export const breakerConnectionInput: Codec<InputOf<typeof breakerConnection>> =
  /* @__PURE__ */ codecOf({
    id: "breakerConnectionInput",
    name: "input",
    shape: BreakerConnectionInputShape,
  });

/** JSON of what `breakerConnection` gives. Source: the library's own format. */
export const breakerConnectionResult: Codec<ResultOf<typeof breakerConnection>> =
  /* @__PURE__ */ codecOf({
    id: "breakerConnectionResult",
    name: "result",
    shape: ConnectionShape,
  });

/** JSON of what `largestDeviceOnConductor` takes. Source: the library's own format. */
export const largestDeviceOnConductorInput: Codec<InputOf<typeof largestDeviceOnConductor>> =
  /* @__PURE__ */ codecOf({
    id: "largestDeviceOnConductorInput",
    name: "input",
    shape: LargestDeviceOnConductorInputShape,
  });

/** JSON of what `minimumConductor` takes. Source: the library's own format. */
export const minimumConductorInput: Codec<InputOf<typeof minimumConductor>> =
  /* @__PURE__ */ codecOf({
    id: "minimumConductorInput",
    name: "input",
    shape: MinimumConductorInputShape,
  });

/** JSON of what `minimumConductor` gives. Source: the library's own format. */
export const minimumConductorResult: Codec<ResultOf<typeof minimumConductor>> =
  /* @__PURE__ */ codecOf({
    id: "minimumConductorResult",
    name: "result",
    shape: MinimumConductorResultShape,
  });

/** JSON of what `usableAmpacity` takes. Source: the library's own format. */
export const usableAmpacityInput: Codec<InputOf<typeof usableAmpacity>> = /* @__PURE__ */ codecOf({
  id: "usableAmpacityInput",
  name: "input",
  shape: UsableAmpacityInputShape,
});

/** JSON of what `usableAmpacity` gives. Source: the library's own format. */
export const usableAmpacityResult: Codec<ResultOf<typeof usableAmpacity>> = /* @__PURE__ */ codecOf(
  { id: "usableAmpacityResult", name: "result", shape: MinimumConductorResultShape },
);

/** JSON of what `assessNameplate` takes. Source: the library's own format. */
export const assessNameplateInput: Codec<InputOf<typeof assessNameplate>> = /* @__PURE__ */ codecOf(
  { id: "assessNameplateInput", name: "input", shape: AssessNameplateInputShape },
);

/** JSON of what `assessNameplate` gives. Source: the library's own format. */
export const assessNameplateResult: Codec<ResultOf<typeof assessNameplate>> =
  /* @__PURE__ */ codecOf({
    id: "assessNameplateResult",
    name: "result",
    shape: NameplateAssessmentShape,
  });

/** JSON of what `circuitFromNameplate` takes. Source: the library's own format. */
export const circuitFromNameplateInput: Codec<InputOf<typeof circuitFromNameplate>> =
  /* @__PURE__ */ codecOf({
    id: "circuitFromNameplateInput",
    name: "input",
    shape: CircuitFromNameplateInputShape,
  });

/** JSON of what `circuitFromNameplate` gives. Source: the library's own format. */
export const circuitFromNameplateResult: Codec<ResultOf<typeof circuitFromNameplate>> =
  /* @__PURE__ */ codecOf({
    id: "circuitFromNameplateResult",
    name: "result",
    shape: CircuitFromNameplateResultShape,
  });

/** JSON of what `compareSupplies` takes. Source: the library's own format. */
export const compareSuppliesInput: Codec<InputOf<typeof compareSupplies>> = /* @__PURE__ */ codecOf(
  { id: "compareSuppliesInput", name: "input", shape: CompareSuppliesInputShape },
);

/** JSON of what `compareSupplies` gives. Source: the library's own format. */
export const compareSuppliesResult: Codec<ResultOf<typeof compareSupplies>> =
  /* @__PURE__ */ codecOf({
    id: "compareSuppliesResult",
    name: "result",
    shape: { list: CompareSuppliesResultItemShape },
  });

/** JSON of what `compressorProtection` takes. Source: the library's own format. */
export const compressorProtectionInput: Codec<InputOf<typeof compressorProtection>> =
  /* @__PURE__ */ codecOf({
    id: "compressorProtectionInput",
    name: "input",
    shape: CompressorProtectionInputShape,
  });

/** JSON of what `compressorProtection` gives. Source: the library's own format. */
export const compressorProtectionResult: Codec<ResultOf<typeof compressorProtection>> =
  /* @__PURE__ */ codecOf({
    id: "compressorProtectionResult",
    name: "result",
    shape: CompressorProtectionShape,
  });

/** JSON of what `conductorResistance` takes. Source: the library's own format. */
export const conductorResistanceInput: Codec<InputOf<typeof conductorResistance>> =
  /* @__PURE__ */ codecOf({
    id: "conductorResistanceInput",
    name: "input",
    shape: ConductorResistanceInputShape,
  });

/** JSON of what `conduitImpedance` takes. Source: the library's own format. */
export const conduitImpedanceInput: Codec<InputOf<typeof conduitImpedance>> =
  /* @__PURE__ */ codecOf({
    id: "conduitImpedanceInput",
    name: "input",
    shape: ConduitImpedanceInputShape,
  });

/** JSON of what `conduitImpedance` gives. Source: the library's own format. */
export const conduitImpedanceResult: Codec<ResultOf<typeof conduitImpedance>> =
  /* @__PURE__ */ codecOf({
    id: "conduitImpedanceResult",
    name: "result",
    shape: ConduitImpedanceResultShape,
  });

/** JSON of what `equipmentGrounding` takes. Source: the library's own format. */
export const equipmentGroundingInput: Codec<InputOf<typeof equipmentGrounding>> =
  /* @__PURE__ */ codecOf({
    id: "equipmentGroundingInput",
    name: "input",
    shape: EquipmentGroundingInputShape,
  });

/** JSON of what `equipmentGrounding` gives. Source: the library's own format. */
export const equipmentGroundingResult: Codec<ResultOf<typeof equipmentGrounding>> =
  /* @__PURE__ */ codecOf({
    id: "equipmentGroundingResult",
    name: "result",
    shape: CircuitFromNameplateResultEquipmentGroundingShape,
  });

/** JSON of what `nameplateFromParts` takes. Source: the library's own format. */
export const nameplateFromPartsInput: Codec<InputOf<typeof nameplateFromParts>> =
  /* @__PURE__ */ codecOf({
    id: "nameplateFromPartsInput",
    name: "loads",
    shape: { list: LoadShape },
  });

/** JSON of what `nameplateFromParts` gives. Source: the library's own format. */
export const nameplateFromPartsResult: Codec<ResultOf<typeof nameplateFromParts>> =
  /* @__PURE__ */ codecOf({
    id: "nameplateFromPartsResult",
    name: "result",
    shape: NameplateFromPartsShape,
  });

/** JSON of what `minimumCircuitAmpacity` takes. Source: the library's own format. */
export const minimumCircuitAmpacityInput: Codec<InputOf<typeof minimumCircuitAmpacity>> =
  /* @__PURE__ */ codecOf({
    id: "minimumCircuitAmpacityInput",
    name: "loads",
    shape: { list: LoadShape },
  });

/** JSON of what `maximumOvercurrentProtection` takes. Source: the library's own format. */
export const maximumOvercurrentProtectionInput: Codec<
  InputOf<typeof maximumOvercurrentProtection>
> = /* @__PURE__ */ codecOf({
  id: "maximumOvercurrentProtectionInput",
  name: "loads",
  shape: { list: LoadShape },
});

/** JSON of what `tripBand` takes. Source: the library's own format. */
export const tripBandInput: Codec<InputOf<typeof tripBand>> = /* @__PURE__ */ codecOf({
  id: "tripBandInput",
  name: "input",
  shape: TripBandInputShape,
});

/** JSON of what `tripBand` gives. Source: the library's own format. */
export const tripBandResult: Codec<ResultOf<typeof tripBand>> = /* @__PURE__ */ codecOf({
  id: "tripBandResult",
  name: "result",
  shape: TripBandShape,
});

/** JSON of what `voltageDrop` takes. Source: the library's own format. */
export const voltageDropInput: Codec<InputOf<typeof voltageDrop>> = /* @__PURE__ */ codecOf({
  id: "voltageDropInput",
  name: "input",
  shape: VoltageDropInputShape,
});

/** JSON of what `voltageDrop` gives. Source: the library's own format. */
export const voltageDropResult: Codec<ResultOf<typeof voltageDrop>> = /* @__PURE__ */ codecOf({
  id: "voltageDropResult",
  name: "result",
  shape: VoltageDropShape,
});

/** JSON of what `longestRun` takes. Source: the library's own format. */
export const longestRunInput: Codec<InputOf<typeof longestRun>> = /* @__PURE__ */ codecOf({
  id: "longestRunInput",
  name: "input",
  shape: LongestRunInputShape,
});
