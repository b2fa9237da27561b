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
  groundFaultProtection,
  heaterCurrent,
  largestDeviceOnConductor,
  longestRun,
  longestRunByFaultLoop,
  maximumOvercurrentProtection,
  minimumCircuitAmpacity,
  minimumConductor,
  minimumDisconnect,
  nameplateFromParts,
  protectiveConductorArea,
  tripBand,
  usableAmpacity,
  voltageDrop,
} from "../../circuit-protection/index.ts";
import type { ArgumentsOf, InputOf, ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import {
  AssessNameplateInputShape,
  BreakerConnectionInputShape,
  CircuitFromNameplateInputShape,
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
  EquipmentGroundingResultShape,
  GroundFaultAnswerShape,
  GroundFaultInputShape,
  HeaterCurrentInputShape,
  LargestDeviceOnConductorInputShape,
  LoadShape,
  LongestRunByFaultLoopInputShape,
  LongestRunInputShape,
  MinimumConductorInputShape,
  MinimumConductorResultShape,
  MinimumDisconnectInputShape,
  NameplateAssessmentShape,
  NameplateFromPartsInputShape,
  NameplateFromPartsShape,
  ProtectiveConductorAreaInputShape,
  ProtectiveConductorAreaResultShape,
  TripBandInputShape,
  TripBandShape,
  UsableAmpacityInputShape,
  VoltageDropInputShape,
  VoltageDropShape,
} from "./circuit-protection.shapes.ts";

/** JSON of what `protectiveConductorArea` takes. Source: the library's own format. */
export const protectiveConductorAreaInput: Codec<InputOf<typeof protectiveConductorArea>> =
  /* @__PURE__ */ codecOf({
    id: "protectiveConductorAreaInput",
    name: "input",
    shape: ProtectiveConductorAreaInputShape,
  });

/** JSON of what `protectiveConductorArea` gives. Source: the library's own format. */
export const protectiveConductorAreaResult: Codec<ResultOf<typeof protectiveConductorArea>> =
  /* @__PURE__ */ codecOf({
    id: "protectiveConductorAreaResult",
    name: "result",
    shape: ProtectiveConductorAreaResultShape,
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
    shape: EquipmentGroundingResultShape,
  });

/** JSON of what `longestRunByFaultLoop` takes. Source: the library's own format. */
export const longestRunByFaultLoopInput: Codec<InputOf<typeof longestRunByFaultLoop>> =
  /* @__PURE__ */ codecOf({
    id: "longestRunByFaultLoopInput",
    name: "input",
    shape: LongestRunByFaultLoopInputShape,
  });

/** JSON of what `groundFaultProtection` takes. Source: the library's own format. */
export const groundFaultProtectionInput: Codec<InputOf<typeof groundFaultProtection>> =
  /* @__PURE__ */ codecOf({
    id: "groundFaultProtectionInput",
    name: "input",
    shape: GroundFaultInputShape,
  });

/** JSON of what `groundFaultProtection` gives. Source: the library's own format. */
export const groundFaultProtectionResult: Codec<ResultOf<typeof groundFaultProtection>> =
  /* @__PURE__ */ codecOf({
    id: "groundFaultProtectionResult",
    name: "result",
    shape: GroundFaultAnswerShape,
  });

/** JSON of what `heaterCurrent` takes. Source: the library's own format. */
export const heaterCurrentInput: Codec<InputOf<typeof heaterCurrent>> = /* @__PURE__ */ codecOf({
  id: "heaterCurrentInput",
  name: "input",
  shape: HeaterCurrentInputShape,
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

/** JSON of what `minimumDisconnect` takes. Source: the library's own format. */
export const minimumDisconnectInput: Codec<InputOf<typeof minimumDisconnect>> =
  /* @__PURE__ */ codecOf({
    id: "minimumDisconnectInput",
    name: "input",
    shape: MinimumDisconnectInputShape,
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

/** JSON of what `longestRun` takes. Source: the library's own format. */
export const longestRunInput: Codec<InputOf<typeof longestRun>> = /* @__PURE__ */ codecOf({
  id: "longestRunInput",
  name: "input",
  shape: LongestRunInputShape,
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
    shape: () => ({ list: CompareSuppliesResultItemShape() }),
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

/** JSON of what `nameplateFromParts` takes. Source: the library's own format. */
export const nameplateFromPartsInput: Codec<
  ArgumentsOf<typeof nameplateFromParts, ["loads", "standard"]>
> = /* @__PURE__ */ codecOf({
  id: "nameplateFromPartsInput",
  name: "input",
  shape: NameplateFromPartsInputShape,
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
    shape: () => ({ list: LoadShape() }),
  });

/** JSON of what `maximumOvercurrentProtection` takes. Source: the library's own format. */
export const maximumOvercurrentProtectionInput: Codec<
  InputOf<typeof maximumOvercurrentProtection>
> = /* @__PURE__ */ codecOf({
  id: "maximumOvercurrentProtectionInput",
  name: "loads",
  shape: () => ({ list: LoadShape() }),
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
