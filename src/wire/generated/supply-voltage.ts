// How do the inputs and results of supply-voltage travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import type {
  assessSupplyVoltage,
  assessSupplyWeek,
  currentUnbalance,
  nameplateVoltageRange,
  resistanceHeatAt,
  supplySag,
  supplyVoltageRanges,
  voltageLogStatistics,
  voltageMonitorSettings,
  voltageUnbalance,
} from "../../supply-voltage/index.ts";
import type { ArgumentsOf, InputOf, ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import {
  AssessSupplyWeekInputShape,
  NameplateVoltageRangeShape,
  PhaseUnbalanceOfCurrentShape,
  ResistanceHeatAtInputShape,
  ResistanceHeatAtResultShape,
  SupplyRangeShape,
  SupplySagInputShape,
  SupplySagShape,
  SupplyVoltageAssessmentShape,
  SupplyVoltageInputShape,
  SupplyVoltageRangesInputShape,
  SupplyWeekAssessmentShape,
  VoltageLogStatisticsInputShape,
  VoltageLogStatisticsShape,
  VoltageMonitorSettingsInputShape,
  VoltageMonitorSettingsShape,
  VoltageNameplateShape,
  VoltageUnbalanceShape,
} from "./supply-voltage.shapes.ts";

/** JSON of what `assessSupplyVoltage` takes. Source: the library's own format. */
export const assessSupplyVoltageInput: Codec<InputOf<typeof assessSupplyVoltage>> =
  /* @__PURE__ */ codecOf({
    id: "assessSupplyVoltageInput",
    name: "input",
    shape: SupplyVoltageInputShape,
  });

/** JSON of what `assessSupplyVoltage` gives. Source: the library's own format. */
export const assessSupplyVoltageResult: Codec<ResultOf<typeof assessSupplyVoltage>> =
  /* @__PURE__ */ codecOf({
    id: "assessSupplyVoltageResult",
    name: "result",
    shape: SupplyVoltageAssessmentShape,
  });

/** JSON of what `assessSupplyWeek` takes. Source: the library's own format. */
export const assessSupplyWeekInput: Codec<InputOf<typeof assessSupplyWeek>> =
  /* @__PURE__ */ codecOf({
    id: "assessSupplyWeekInput",
    name: "input",
    shape: AssessSupplyWeekInputShape,
  });

/** JSON of what `assessSupplyWeek` gives. Source: the library's own format. */
export const assessSupplyWeekResult: Codec<ResultOf<typeof assessSupplyWeek>> =
  /* @__PURE__ */ codecOf({
    id: "assessSupplyWeekResult",
    name: "result",
    shape: SupplyWeekAssessmentShape,
  });

/** JSON of what `nameplateVoltageRange` takes. Source: the library's own format. */
export const nameplateVoltageRangeInput: Codec<InputOf<typeof nameplateVoltageRange>> =
  /* @__PURE__ */ codecOf({
    id: "nameplateVoltageRangeInput",
    name: "nameplate",
    shape: VoltageNameplateShape,
  });

/** JSON of what `nameplateVoltageRange` gives. Source: the library's own format. */
export const nameplateVoltageRangeResult: Codec<ResultOf<typeof nameplateVoltageRange>> =
  /* @__PURE__ */ codecOf({
    id: "nameplateVoltageRangeResult",
    name: "result",
    shape: NameplateVoltageRangeShape,
  });

/** JSON of what `resistanceHeatAt` takes. Source: the library's own format. */
export const resistanceHeatAtInput: Codec<InputOf<typeof resistanceHeatAt>> =
  /* @__PURE__ */ codecOf({
    id: "resistanceHeatAtInput",
    name: "input",
    shape: ResistanceHeatAtInputShape,
  });

/** JSON of what `resistanceHeatAt` gives. Source: the library's own format. */
export const resistanceHeatAtResult: Codec<ResultOf<typeof resistanceHeatAt>> =
  /* @__PURE__ */ codecOf({
    id: "resistanceHeatAtResult",
    name: "result",
    shape: ResistanceHeatAtResultShape,
  });

/** JSON of what `supplyVoltageRanges` takes. Source: the library's own format. */
export const supplyVoltageRangesInput: Codec<
  ArgumentsOf<typeof supplyVoltageRanges, ["supply", "measuredAt"]>
> = /* @__PURE__ */ codecOf({
  id: "supplyVoltageRangesInput",
  name: "input",
  shape: SupplyVoltageRangesInputShape,
});

/** JSON of what `supplyVoltageRanges` gives. Source: the library's own format. */
export const supplyVoltageRangesResult: Codec<ResultOf<typeof supplyVoltageRanges>> =
  /* @__PURE__ */ codecOf({
    id: "supplyVoltageRangesResult",
    name: "result",
    shape: () => ({ list: SupplyRangeShape() }),
  });

/** JSON of what `supplySag` takes. Source: the library's own format. */
export const supplySagInput: Codec<InputOf<typeof supplySag>> = /* @__PURE__ */ codecOf({
  id: "supplySagInput",
  name: "input",
  shape: SupplySagInputShape,
});

/** JSON of what `supplySag` gives. Source: the library's own format. */
export const supplySagResult: Codec<ResultOf<typeof supplySag>> = /* @__PURE__ */ codecOf({
  id: "supplySagResult",
  name: "result",
  shape: SupplySagShape,
});

/** JSON of what `voltageLogStatistics` takes. Source: the library's own format. */
export const voltageLogStatisticsInput: Codec<InputOf<typeof voltageLogStatistics>> =
  /* @__PURE__ */ codecOf({
    id: "voltageLogStatisticsInput",
    name: "input",
    shape: VoltageLogStatisticsInputShape,
  });

/** JSON of what `voltageLogStatistics` gives. Source: the library's own format. */
export const voltageLogStatisticsResult: Codec<ResultOf<typeof voltageLogStatistics>> =
  /* @__PURE__ */ codecOf({
    id: "voltageLogStatisticsResult",
    name: "result",
    shape: VoltageLogStatisticsShape,
  });

/** JSON of what `voltageMonitorSettings` takes. Source: the library's own format. */
export const voltageMonitorSettingsInput: Codec<InputOf<typeof voltageMonitorSettings>> =
  /* @__PURE__ */ codecOf({
    id: "voltageMonitorSettingsInput",
    name: "input",
    shape: VoltageMonitorSettingsInputShape,
  });

/** JSON of what `voltageMonitorSettings` gives. Source: the library's own format. */
export const voltageMonitorSettingsResult: Codec<ResultOf<typeof voltageMonitorSettings>> =
  /* @__PURE__ */ codecOf({
    id: "voltageMonitorSettingsResult",
    name: "result",
    shape: VoltageMonitorSettingsShape,
  });

/** JSON of what `currentUnbalance` takes. Source: the library's own format. */
export const currentUnbalanceInput: Codec<InputOf<typeof currentUnbalance>> =
  /* @__PURE__ */ codecOf({
    id: "currentUnbalanceInput",
    name: "readings",
    shape: () => ({ list: "current" }),
  });

/** JSON of what `currentUnbalance` gives. Source: the library's own format. */
export const currentUnbalanceResult: Codec<ResultOf<typeof currentUnbalance>> =
  /* @__PURE__ */ codecOf({
    id: "currentUnbalanceResult",
    name: "result",
    shape: PhaseUnbalanceOfCurrentShape,
  });

/** JSON of what `voltageUnbalance` takes. Source: the library's own format. */
export const voltageUnbalanceInput: Codec<InputOf<typeof voltageUnbalance>> =
  /* @__PURE__ */ codecOf({
    id: "voltageUnbalanceInput",
    name: "readings",
    shape: () => ({ list: "voltage" }),
  });

/** JSON of what `voltageUnbalance` gives. Source: the library's own format. */
export const voltageUnbalanceResult: Codec<ResultOf<typeof voltageUnbalance>> =
  /* @__PURE__ */ codecOf({
    id: "voltageUnbalanceResult",
    name: "result",
    shape: VoltageUnbalanceShape,
  });
