// How do moist air and the condensate that comes of it travel as JSON?
// Follows the types of condensate.
// Does not cover where it runs off: condensate.ts.
import type {
  AirState,
  CoilAir,
  CondensateFlow,
  CondensateRate,
  condensateFromLoad,
  condensateRuleOfThumb,
  humidityRatio,
} from "../condensate/index.ts";
import type { ArgumentsOf, InputOf } from "./arguments-of.ts";
import { type Codec, codecOf } from "./codec.ts";
import { type ObjectOf, of } from "./wire-shape.ts";

const air = (): ObjectOf<AirState> =>
  of<AirState>({
    dryBulb: "temperature",
    "relativeHumidity?": "ratio",
    "wetBulb?": "temperature",
    "dewPoint?": "temperature",
  });

/** JSON of what `humidityRatio` takes. Source: the library's own format. */
export const humidityRatioInput: Codec<ArgumentsOf<typeof humidityRatio, ["air", "atmosphere"]>> =
  /* @__PURE__ */ codecOf<ArgumentsOf<typeof humidityRatio, ["air", "atmosphere"]>>({
    name: "input",
    shape: () =>
      of<ArgumentsOf<typeof humidityRatio, ["air", "atmosphere"]>>({
        air: air(),
        atmosphere: "absolutePressure",
      }),
  });

/** JSON of what `condensateRate` takes. Source: the library's own format. */
export const condensateRateInput: Codec<CoilAir> = /* @__PURE__ */ codecOf<CoilAir>({
  name: "coil",
  shape: () =>
    of<CoilAir>({
      entering: air(),
      leaving: air(),
      airFlow: "volumeFlow",
      atmosphere: "absolutePressure",
    }),
});

/** JSON of what `condensateRate` gives. Source: the library's own format. */
export const condensateRateResult: Codec<CondensateRate> = /* @__PURE__ */ codecOf<CondensateRate>({
  name: "result",
  shape: () =>
    of<CondensateRate>({
      dryAirFlow: "massFlow",
      enteringHumidityRatio: "ratio",
      leavingHumidityRatio: "ratio",
      totalCooling: "power",
      sensibleHeatRatio: "ratio",
      massFlow: "massFlow",
      volumeFlow: "volumeFlow",
    }),
});

/** JSON of what `condensateFromLoad` takes. Source: the library's own format. */
export const condensateFromLoadInput: Codec<InputOf<typeof condensateFromLoad>> =
  /* @__PURE__ */ codecOf<InputOf<typeof condensateFromLoad>>({
    name: "load",
    shape: () =>
      of<InputOf<typeof condensateFromLoad>>({ totalCooling: "power", sensibleHeatRatio: "ratio" }),
  });

/** JSON of what `condensateFromLoad` gives. Source: the library's own format. */
export const condensateFromLoadResult: Codec<CondensateFlow> =
  /* @__PURE__ */ codecOf<CondensateFlow>({
    name: "result",
    shape: () => of<CondensateFlow>({ massFlow: "massFlow", volumeFlow: "volumeFlow" }),
  });

/** JSON of what `condensateRuleOfThumb` gives. Source: the library's own format. */
export const condensateRuleOfThumbResult: Codec<ReturnType<typeof condensateRuleOfThumb>> =
  /* @__PURE__ */ codecOf<ReturnType<typeof condensateRuleOfThumb>>({
    name: "result",
    shape: () =>
      of<ReturnType<typeof condensateRuleOfThumb>>({ low: "volumeFlow", high: "volumeFlow" }),
  });
