// How do gauge readings on a running unit travel as JSON, and what is expected there?
// Follows the types of operating-check. A refrigerant goes by its designation.
// Does not cover charging by superheat or subcooling: charging-by-gauge.ts.
import type { Assessment } from "../assessment/assessment.ts";
import type {
  ApproachRange,
  assessGaugeSet,
  ExpansionPlace,
  ExpectedPressures,
  GaugeSetCause,
  RunningMode,
  RunningUnit,
  SaturationWindow,
  ServicePortRole,
  ServicePorts,
  ServiceReading,
  ServiceReadingAssessment,
  ServiceReadingCause,
  servicePorts,
  usualPressures,
} from "../operating-check/index.ts";
import type { InputOf } from "./arguments-of.ts";
import { type Codec, codecOf } from "./codec.ts";
import { byDesignation } from "./refrigerant-names.ts";
import { citation, instrument, statement, verdict } from "./verdict.ts";
import { type FieldsOf, list, type ObjectOf, of, words } from "./wire-shape.ts";

const mode = () => words<RunningMode>({ cooling: true, heating: true });
const expansion = () => words<ExpansionPlace>({ "outdoor-unit": true, "evaporating-unit": true });

/** JSON of what `servicePorts` takes. Source: the library's own format. */
export const servicePortsInput: Codec<InputOf<typeof servicePorts>> = /* @__PURE__ */ codecOf<
  InputOf<typeof servicePorts>
>({
  name: "unit",
  shape: () => of<InputOf<typeof servicePorts>>({ mode: mode(), expansion: expansion() }),
});

const role = (): ObjectOf<ServicePortRole> =>
  of<ServicePortRole>({
    side: words<ServicePortRole["side"]>({ low: true, high: true }),
    shows: words<ServicePortRole["shows"]>({
      suction: true,
      discharge: true,
      liquid: true,
      expanded: true,
    }),
  });

/** JSON of what `servicePorts` gives. Source: the library's own format. */
export const servicePortsResult: Codec<ServicePorts> = /* @__PURE__ */ codecOf<ServicePorts>({
  name: "result",
  shape: () =>
    of<ServicePorts>({
      vapor: role(),
      liquid: role(),
      commonSuction: role(),
      cautions: list(statement()),
    }),
});

/** JSON of what `usualPressures` takes. Source: the library's own format. */
export const usualPressuresInput: Codec<InputOf<typeof usualPressures>> = /* @__PURE__ */ codecOf<
  InputOf<typeof usualPressures>
>({
  name: "unit",
  shape: () =>
    of<InputOf<typeof usualPressures>>({
      refrigerant: words<"R410A">({ R410A: true }),
      mode: mode(),
    }),
});

/** JSON of what `usualPressures` gives. Source: the library's own format. */
export const usualPressuresResult: Codec<ReturnType<typeof usualPressures>> =
  /* @__PURE__ */ codecOf<ReturnType<typeof usualPressures>>({
    name: "result",
    shape: () =>
      of<ReturnType<typeof usualPressures>>({ from: "gaugePressure", to: "gaugePressure" }),
  });

const approach = (): ObjectOf<ApproachRange> =>
  of<ApproachRange>({ low: "temperatureDifference", high: "temperatureDifference" });

const unit = (): FieldsOf<RunningUnit> => ({
  refrigerant: byDesignation(),
  mode: mode(),
  indoorTemperature: "temperature",
  outdoorTemperature: "temperature",
  evaporatorApproach: approach(),
  condenserApproach: approach(),
  atmosphere: "absolutePressure",
});

/** JSON of what `expectedPressures` takes. Source: the library's own format. */
export const expectedPressuresInput: Codec<RunningUnit> = /* @__PURE__ */ codecOf<RunningUnit>({
  name: "unit",
  shape: () => of<RunningUnit>(unit()),
});

const window = (): ObjectOf<SaturationWindow> =>
  of<SaturationWindow>({
    from: "gaugePressure",
    to: "gaugePressure",
    fromTemperature: "temperature",
    toTemperature: "temperature",
  });

const expected = (): ObjectOf<ExpectedPressures> =>
  of<ExpectedPressures>({
    low: window(),
    high: window(),
    vaporPort: words<ExpectedPressures["vaporPort"]>({ low: true, high: true }),
    assumptions: list(statement()),
    cautions: list(statement()),
    sources: list(citation()),
  });

/** JSON of what `expectedPressures` gives. Source: the library's own format. */
export const expectedPressuresResult: Codec<ExpectedPressures> =
  /* @__PURE__ */ codecOf<ExpectedPressures>({ name: "result", shape: expected });

/** JSON of what `assessServiceReading` takes. Source: the library's own format. */
export const assessServiceReadingInput: Codec<ServiceReading> =
  /* @__PURE__ */ codecOf<ServiceReading>({
    name: "reading",
    shape: () =>
      of<ServiceReading>({
        ...unit(),
        pressure: "gaugePressure",
        "port?": words<NonNullable<ServiceReading["port"]>>({
          liquid: true,
          vapor: true,
          commonSuction: true,
        }),
        "expansion?": expansion(),
        "gauge?": instrument<"gaugePressure">("pressureDifference"),
        "confidence?": "number",
      }),
  });

/** JSON of what `assessServiceReading` gives. Source: the library's own format. */
export const assessServiceReadingResult: Codec<ServiceReadingAssessment> =
  /* @__PURE__ */ codecOf<ServiceReadingAssessment>({
    name: "result",
    shape: () =>
      of<ServiceReadingAssessment>({
        ...verdict(),
        "cause?": words<ServiceReadingCause>({
          "below-window": true,
          "above-window": true,
          "other-side": true,
        }),
        expected: expected(),
        side: words<ServiceReadingAssessment["side"]>({ low: true, high: true }),
      }),
  });

/** JSON of what `assessGaugeSet` takes. Source: the library's own format. */
export const assessGaugeSetInput: Codec<InputOf<typeof assessGaugeSet>> = /* @__PURE__ */ codecOf<
  InputOf<typeof assessGaugeSet>
>({
  name: "input",
  shape: () =>
    of<InputOf<typeof assessGaugeSet>>({
      fullScale: "gaugePressure",
      "retardTo?": "gaugePressure",
      hoseWorkingPressure: "gaugePressure",
      highestPressure: "gaugePressure",
    }),
});

/** JSON of what `assessGaugeSet` gives. Source: the library's own format. */
export const assessGaugeSetResult: Codec<Assessment<GaugeSetCause>> = /* @__PURE__ */ codecOf<
  Assessment<GaugeSetCause>
>({
  name: "result",
  shape: () =>
    of<Assessment<GaugeSetCause>>({
      ...verdict(),
      "cause?": words<GaugeSetCause>({
        "hose-rating": true,
        "gauge-scale": true,
        "retard-only": true,
      }),
    }),
});
