// How do the parts of a supply check travel as JSON, each on its own: nameplate, sag, log, week, unbalance?
// Follows the types of supply-voltage. Does not cover the verdict on the whole: supply-voltage.ts.
import type {
  assessSupplyWeek,
  currentUnbalance,
  LoggedVoltage,
  NameplateVoltageRange,
  PhaseUnbalance,
  resistanceHeatAt,
  SupplyRange,
  SupplySag,
  SupplySagInput,
  SupplyWeekAssessment,
  supplyVoltageRanges,
  VoltageLogStatistics,
  VoltageMonitorSettings,
  VoltageNameplate,
  VoltageRange,
  VoltageUnbalance,
  voltageLogStatistics,
  voltageMonitorSettings,
  voltageUnbalance,
} from "../supply-voltage/index.ts";
import type { ArgumentsOf, InputOf } from "./arguments-of.ts";
import { type Codec, codecOf } from "./codec.ts";
import {
  currentUnbalanceShape,
  measuredAt,
  monitorSettings,
  nameplate,
  nameplateRange,
  nominalSupply,
  range,
  sag,
  statistics,
  supplyRange,
  voltageUnbalanceShape,
  voltmeter,
  week,
} from "./supply-voltage.ts";
import { list, of } from "./wire-shape.ts";

const logged = () => list(of<LoggedVoltage>({ elapsed: "duration", voltage: "voltage" }));

/** JSON of what `assessSupplyWeek` takes. Source: the library's own format. */
export const assessSupplyWeekInput: Codec<InputOf<typeof assessSupplyWeek>> =
  /* @__PURE__ */ codecOf<InputOf<typeof assessSupplyWeek>>({
    name: "input",
    shape: () => of<InputOf<typeof assessSupplyWeek>>({ nominal: "voltage", readings: logged() }),
  });

/** JSON of what `assessSupplyWeek` gives. Source: the library's own format. */
export const assessSupplyWeekResult: Codec<SupplyWeekAssessment> =
  /* @__PURE__ */ codecOf<SupplyWeekAssessment>({ name: "result", shape: week });

/** JSON of what `nameplateVoltageRange` takes. Source: the library's own format. */
export const nameplateVoltageRangeInput: Codec<VoltageNameplate> =
  /* @__PURE__ */ codecOf<VoltageNameplate>({ name: "nameplate", shape: nameplate });

/** JSON of what `nameplateVoltageRange` gives. Source: the library's own format. */
export const nameplateVoltageRangeResult: Codec<NameplateVoltageRange> =
  /* @__PURE__ */ codecOf<NameplateVoltageRange>({ name: "result", shape: nameplateRange });

/** What the ranges of a standard are asked for. Source: none; the library's own type. */
export type RangesOf = ArgumentsOf<typeof supplyVoltageRanges, ["supply", "measuredAt"]>;

/** JSON of what `supplyVoltageRanges` takes. Source: the library's own format. */
export const supplyVoltageRangesInput: Codec<RangesOf> = /* @__PURE__ */ codecOf<RangesOf>({
  name: "input",
  shape: () => of<RangesOf>({ supply: nominalSupply(), measuredAt: measuredAt() }),
});

/** JSON of what `supplyVoltageRanges` gives. Source: the library's own format. */
export const supplyVoltageRangesResult: Codec<readonly SupplyRange[]> = /* @__PURE__ */ codecOf<
  readonly SupplyRange[]
>({
  name: "result",
  shape: () => list(supplyRange()),
});

/** JSON of what `resistanceHeatAt` takes. Source: the library's own format. */
export const resistanceHeatAtInput: Codec<InputOf<typeof resistanceHeatAt>> =
  /* @__PURE__ */ codecOf<InputOf<typeof resistanceHeatAt>>({
    name: "input",
    shape: () => of<InputOf<typeof resistanceHeatAt>>({ rated: "voltage", actual: "voltage" }),
  });

/** JSON of what `resistanceHeatAt` gives. Source: the library's own format. */
export const resistanceHeatAtResult: Codec<ReturnType<typeof resistanceHeatAt>> =
  /* @__PURE__ */ codecOf<ReturnType<typeof resistanceHeatAt>>({
    name: "result",
    shape: () =>
      of<ReturnType<typeof resistanceHeatAt>>({ powerShare: "number", currentShare: "number" }),
  });

/** JSON of what `supplySag` takes. Source: the library's own format. */
export const supplySagInput: Codec<SupplySagInput> = /* @__PURE__ */ codecOf<SupplySagInput>({
  name: "input",
  shape: () =>
    of<SupplySagInput>({
      rest: "voltage",
      load: "voltage",
      "loadCurrent?": "current",
      "restCurrent?": "current",
      "phases?": { words: [1, 3] },
      "meter?": voltmeter(),
      "atCurrent?": "current",
    }),
});

/** JSON of what `supplySag` gives. Source: the library's own format. */
export const supplySagResult: Codec<SupplySag> = /* @__PURE__ */ codecOf<SupplySag>({
  name: "result",
  shape: sag,
});

/** JSON of what `voltageLogStatistics` takes. Source: the library's own format. */
export const voltageLogStatisticsInput: Codec<InputOf<typeof voltageLogStatistics>> =
  /* @__PURE__ */ codecOf<InputOf<typeof voltageLogStatistics>>({
    name: "input",
    shape: () =>
      of<InputOf<typeof voltageLogStatistics>>({
        readings: logged(),
        range: of<VoltageRange>(range()),
      }),
  });

/** JSON of what `voltageLogStatistics` gives. Source: the library's own format. */
export const voltageLogStatisticsResult: Codec<VoltageLogStatistics> =
  /* @__PURE__ */ codecOf<VoltageLogStatistics>({ name: "result", shape: statistics });

/** JSON of what `voltageMonitorSettings` takes. Source: the library's own format. */
export const voltageMonitorSettingsInput: Codec<InputOf<typeof voltageMonitorSettings>> =
  /* @__PURE__ */ codecOf<InputOf<typeof voltageMonitorSettings>>({
    name: "input",
    shape: () =>
      of<InputOf<typeof voltageMonitorSettings>>({
        nameplate: nameplate(),
        supply: nominalSupply(),
      }),
  });

/** JSON of what `voltageMonitorSettings` gives. Source: the library's own format. */
export const voltageMonitorSettingsResult: Codec<VoltageMonitorSettings> =
  /* @__PURE__ */ codecOf<VoltageMonitorSettings>({ name: "result", shape: monitorSettings });

/** JSON of what `voltageUnbalance` takes. Source: the library's own format. */
export const voltageUnbalanceInput: Codec<InputOf<typeof voltageUnbalance>> =
  /* @__PURE__ */ codecOf<InputOf<typeof voltageUnbalance>>({
    name: "readings",
    shape: () => list("voltage"),
  });

/** JSON of what `voltageUnbalance` gives. Source: the library's own format. */
export const voltageUnbalanceResult: Codec<VoltageUnbalance> =
  /* @__PURE__ */ codecOf<VoltageUnbalance>({ name: "result", shape: voltageUnbalanceShape });

/** JSON of what `currentUnbalance` takes. Source: the library's own format. */
export const currentUnbalanceInput: Codec<InputOf<typeof currentUnbalance>> =
  /* @__PURE__ */ codecOf<InputOf<typeof currentUnbalance>>({
    name: "readings",
    shape: () => list("current"),
  });

/** JSON of what `currentUnbalance` gives. Source: the library's own format. */
export const currentUnbalanceResult: Codec<PhaseUnbalance<"current">> = /* @__PURE__ */ codecOf<
  PhaseUnbalance<"current">
>({
  name: "result",
  shape: currentUnbalanceShape,
});
