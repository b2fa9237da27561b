// How do the inputs and results of pressure-test travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import type {
  assessPressureLog,
  assessPressureTest,
  compareTemperatureRules,
  expectedTestPressure,
  holdTime,
  massFlowOfThroughput,
  nitrogenNeeded,
  pressurizationPlan,
  refrigerantEquivalent,
  scaleLeak,
  testVolume,
  throughputOfDrop,
} from "../../pressure-test/index.ts";
import type { InputOf, ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import {
  AbsoluteChangeShape,
  CompareTemperatureRulesInputShape,
  EitherChangeShape,
  HoldPlanShape,
  HoldTimeShape,
  LogAssessmentShape,
  MassFlowOfThroughputInputShape,
  NitrogenNeededInputShape,
  NitrogenNeedShape,
  PressureTestLogShape,
  PressureTestShape,
  PressurizationPlanInputShape,
  PressurizationPlanShape,
  RefrigerantEquivalentInputShape,
  RefrigerantEquivalentShape,
  RuleComparisonShape,
  ScaledLeakShape,
  ScaleLeakInputShape,
  TestVolumeInputShape,
  ThroughputOfDropInputShape,
  TwoReadingAssessmentShape,
} from "./pressure-test.shapes.ts";

/** JSON of what `assessPressureLog` takes. Source: the library's own format. */
export const assessPressureLogInput: Codec<InputOf<typeof assessPressureLog>> =
  /* @__PURE__ */ codecOf({
    id: "assessPressureLogInput",
    name: "test",
    shape: PressureTestLogShape,
  });

/** JSON of what `assessPressureLog` gives. Source: the library's own format. */
export const assessPressureLogResult: Codec<ResultOf<typeof assessPressureLog>> =
  /* @__PURE__ */ codecOf({
    id: "assessPressureLogResult",
    name: "result",
    shape: LogAssessmentShape,
  });

/** JSON of what `assessPressureTest` takes. Source: the library's own format. */
export const assessPressureTestInput: Codec<InputOf<typeof assessPressureTest>> =
  /* @__PURE__ */ codecOf({
    id: "assessPressureTestInput",
    name: "test",
    shape: PressureTestShape,
  });

/** JSON of what `assessPressureTest` gives. Source: the library's own format. */
export const assessPressureTestResult: Codec<ResultOf<typeof assessPressureTest>> =
  /* @__PURE__ */ codecOf({
    id: "assessPressureTestResult",
    name: "result",
    shape: TwoReadingAssessmentShape,
  });

/** JSON of what `expectedTestPressure` takes. Source: the library's own format. */
export const expectedTestPressureInput: Codec<InputOf<typeof expectedTestPressure>> =
  /* @__PURE__ */ codecOf({
    id: "expectedTestPressureInput",
    name: "change",
    shape: () => ({ either: [AbsoluteChangeShape(), EitherChangeShape()] }),
  });

/** JSON of what `expectedTestPressure` gives. Source: the library's own format. */
export const expectedTestPressureResult: Codec<ResultOf<typeof expectedTestPressure>> =
  /* @__PURE__ */ codecOf({
    id: "expectedTestPressureResult",
    name: "result",
    shape: () => ({ either: ["absolutePressure", "gaugePressure"] }),
  });

/** JSON of what `holdTime` takes. Source: the library's own format. */
export const holdTimeInput: Codec<InputOf<typeof holdTime>> = /* @__PURE__ */ codecOf({
  id: "holdTimeInput",
  name: "plan",
  shape: HoldPlanShape,
});

/** JSON of what `holdTime` gives. Source: the library's own format. */
export const holdTimeResult: Codec<ResultOf<typeof holdTime>> = /* @__PURE__ */ codecOf({
  id: "holdTimeResult",
  name: "result",
  shape: HoldTimeShape,
});

/** JSON of what `nitrogenNeeded` takes. Source: the library's own format. */
export const nitrogenNeededInput: Codec<InputOf<typeof nitrogenNeeded>> = /* @__PURE__ */ codecOf({
  id: "nitrogenNeededInput",
  name: "fill",
  shape: NitrogenNeededInputShape,
});

/** JSON of what `nitrogenNeeded` gives. Source: the library's own format. */
export const nitrogenNeededResult: Codec<ResultOf<typeof nitrogenNeeded>> = /* @__PURE__ */ codecOf(
  { id: "nitrogenNeededResult", name: "result", shape: NitrogenNeedShape },
);

/** JSON of what `pressurizationPlan` takes. Source: the library's own format. */
export const pressurizationPlanInput: Codec<InputOf<typeof pressurizationPlan>> =
  /* @__PURE__ */ codecOf({
    id: "pressurizationPlanInput",
    name: "plan",
    shape: PressurizationPlanInputShape,
  });

/** JSON of what `pressurizationPlan` gives. Source: the library's own format. */
export const pressurizationPlanResult: Codec<ResultOf<typeof pressurizationPlan>> =
  /* @__PURE__ */ codecOf({
    id: "pressurizationPlanResult",
    name: "result",
    shape: PressurizationPlanShape,
  });

/** JSON of what `refrigerantEquivalent` takes. Source: the library's own format. */
export const refrigerantEquivalentInput: Codec<InputOf<typeof refrigerantEquivalent>> =
  /* @__PURE__ */ codecOf({
    id: "refrigerantEquivalentInput",
    name: "leak",
    shape: RefrigerantEquivalentInputShape,
  });

/** JSON of what `refrigerantEquivalent` gives. Source: the library's own format. */
export const refrigerantEquivalentResult: Codec<ResultOf<typeof refrigerantEquivalent>> =
  /* @__PURE__ */ codecOf({
    id: "refrigerantEquivalentResult",
    name: "result",
    shape: RefrigerantEquivalentShape,
  });

/** JSON of what `scaleLeak` takes. Source: the library's own format. */
export const scaleLeakInput: Codec<InputOf<typeof scaleLeak>> = /* @__PURE__ */ codecOf({
  id: "scaleLeakInput",
  name: "leak",
  shape: ScaleLeakInputShape,
});

/** JSON of what `scaleLeak` gives. Source: the library's own format. */
export const scaleLeakResult: Codec<ResultOf<typeof scaleLeak>> = /* @__PURE__ */ codecOf({
  id: "scaleLeakResult",
  name: "result",
  shape: ScaledLeakShape,
});

/** JSON of what `compareTemperatureRules` takes. Source: the library's own format. */
export const compareTemperatureRulesInput: Codec<InputOf<typeof compareTemperatureRules>> =
  /* @__PURE__ */ codecOf({
    id: "compareTemperatureRulesInput",
    name: "change",
    shape: CompareTemperatureRulesInputShape,
  });

/** JSON of what `compareTemperatureRules` gives. Source: the library's own format. */
export const compareTemperatureRulesResult: Codec<ResultOf<typeof compareTemperatureRules>> =
  /* @__PURE__ */ codecOf({
    id: "compareTemperatureRulesResult",
    name: "result",
    shape: () => ({ list: RuleComparisonShape() }),
  });

/** JSON of what `testVolume` takes. Source: the library's own format. */
export const testVolumeInput: Codec<InputOf<typeof testVolume>> = /* @__PURE__ */ codecOf({
  id: "testVolumeInput",
  name: "parts",
  shape: TestVolumeInputShape,
});

/** JSON of what `massFlowOfThroughput` takes. Source: the library's own format. */
export const massFlowOfThroughputInput: Codec<InputOf<typeof massFlowOfThroughput>> =
  /* @__PURE__ */ codecOf({
    id: "massFlowOfThroughputInput",
    name: "leak",
    shape: MassFlowOfThroughputInputShape,
  });

/** JSON of what `throughputOfDrop` takes. Source: the library's own format. */
export const throughputOfDropInput: Codec<InputOf<typeof throughputOfDrop>> =
  /* @__PURE__ */ codecOf({
    id: "throughputOfDropInput",
    name: "loss",
    shape: ThroughputOfDropInputShape,
  });
