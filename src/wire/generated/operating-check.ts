// How do the inputs and results of operating-check travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import type {
  assessChargeByGauge,
  assessGaugeSet,
  assessServiceReading,
  chargingMethod,
  expectedPressures,
  servicePorts,
  targetSuperheat,
  usualPressures,
} from "../../operating-check/index.ts";
import type { InputOf, ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import {
  AssessGaugeSetInputShape,
  AssessmentOfGaugeSetCauseOperatingCheckStatementShape,
  ChargeByGaugeAssessmentShape,
  ChargeByGaugeInputShape,
  ChargedSystemShape,
  ChargeToTargetShape,
  ChargingMethodShape,
  DoNotChargeBySuperheatShape,
  ExpectedPressuresShape,
  RunningUnitShape,
  ServicePortsInputShape,
  ServicePortsShape,
  ServiceReadingAssessmentShape,
  ServiceReadingShape,
  TargetSuperheatInputShape,
  UsualPressuresInputShape,
  UsualPressuresResultShape,
} from "./operating-check.shapes.ts";

/** JSON of what `servicePorts` takes. Source: the library's own format. */
export const servicePortsInput: Codec<InputOf<typeof servicePorts>> = /* @__PURE__ */ codecOf({
  id: "servicePortsInput",
  name: "unit",
  shape: ServicePortsInputShape,
});

/** JSON of what `servicePorts` gives. Source: the library's own format. */
export const servicePortsResult: Codec<ResultOf<typeof servicePorts>> = /* @__PURE__ */ codecOf({
  id: "servicePortsResult",
  name: "result",
  shape: ServicePortsShape,
});

/** JSON of what `assessChargeByGauge` takes. Source: the library's own format. */
export const assessChargeByGaugeInput: Codec<InputOf<typeof assessChargeByGauge>> =
  /* @__PURE__ */ codecOf({
    id: "assessChargeByGaugeInput",
    name: "input",
    shape: ChargeByGaugeInputShape,
  });

/** JSON of what `assessChargeByGauge` gives. Source: the library's own format. */
export const assessChargeByGaugeResult: Codec<ResultOf<typeof assessChargeByGauge>> =
  /* @__PURE__ */ codecOf({
    id: "assessChargeByGaugeResult",
    name: "result",
    shape: ChargeByGaugeAssessmentShape,
  });

/** JSON of what `assessGaugeSet` takes. Source: the library's own format. */
export const assessGaugeSetInput: Codec<InputOf<typeof assessGaugeSet>> = /* @__PURE__ */ codecOf({
  id: "assessGaugeSetInput",
  name: "input",
  shape: AssessGaugeSetInputShape,
});

/** JSON of what `assessGaugeSet` gives. Source: the library's own format. */
export const assessGaugeSetResult: Codec<ResultOf<typeof assessGaugeSet>> = /* @__PURE__ */ codecOf(
  {
    id: "assessGaugeSetResult",
    name: "result",
    shape: AssessmentOfGaugeSetCauseOperatingCheckStatementShape,
  },
);

/** JSON of what `assessServiceReading` takes. Source: the library's own format. */
export const assessServiceReadingInput: Codec<InputOf<typeof assessServiceReading>> =
  /* @__PURE__ */ codecOf({
    id: "assessServiceReadingInput",
    name: "reading",
    shape: ServiceReadingShape,
  });

/** JSON of what `assessServiceReading` gives. Source: the library's own format. */
export const assessServiceReadingResult: Codec<ResultOf<typeof assessServiceReading>> =
  /* @__PURE__ */ codecOf({
    id: "assessServiceReadingResult",
    name: "result",
    shape: ServiceReadingAssessmentShape,
  });

/** JSON of what `chargingMethod` takes. Source: the library's own format. */
export const chargingMethodInput: Codec<InputOf<typeof chargingMethod>> = /* @__PURE__ */ codecOf({
  id: "chargingMethodInput",
  name: "system",
  shape: ChargedSystemShape,
});

/** JSON of what `chargingMethod` gives. Source: the library's own format. */
export const chargingMethodResult: Codec<ResultOf<typeof chargingMethod>> = /* @__PURE__ */ codecOf(
  { id: "chargingMethodResult", name: "result", shape: ChargingMethodShape },
);

/** JSON of what `expectedPressures` takes. Source: the library's own format. */
export const expectedPressuresInput: Codec<InputOf<typeof expectedPressures>> =
  /* @__PURE__ */ codecOf({ id: "expectedPressuresInput", name: "unit", shape: RunningUnitShape });

/** JSON of what `expectedPressures` gives. Source: the library's own format. */
export const expectedPressuresResult: Codec<ResultOf<typeof expectedPressures>> =
  /* @__PURE__ */ codecOf({
    id: "expectedPressuresResult",
    name: "result",
    shape: ExpectedPressuresShape,
  });

/** JSON of what `targetSuperheat` takes. Source: the library's own format. */
export const targetSuperheatInput: Codec<InputOf<typeof targetSuperheat>> = /* @__PURE__ */ codecOf(
  { id: "targetSuperheatInput", name: "conditions", shape: TargetSuperheatInputShape },
);

/** JSON of what `targetSuperheat` gives. Source: the library's own format. */
export const targetSuperheatResult: Codec<ResultOf<typeof targetSuperheat>> =
  /* @__PURE__ */ codecOf({
    id: "targetSuperheatResult",
    name: "result",
    shape: () => ({
      by: "instruction",
      cases: {
        "charge-to-target": ChargeToTargetShape(),
        "do-not-charge-by-superheat": DoNotChargeBySuperheatShape(),
      },
    }),
  });

/** JSON of what `usualPressures` takes. Source: the library's own format. */
export const usualPressuresInput: Codec<InputOf<typeof usualPressures>> = /* @__PURE__ */ codecOf({
  id: "usualPressuresInput",
  name: "unit",
  shape: UsualPressuresInputShape,
});

/** JSON of what `usualPressures` gives. Source: the library's own format. */
export const usualPressuresResult: Codec<ResultOf<typeof usualPressures>> = /* @__PURE__ */ codecOf(
  { id: "usualPressuresResult", name: "result", shape: UsualPressuresResultShape },
);
