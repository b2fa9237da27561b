// How do the inputs and results of the nitrogen test travel as JSON?
// Follows the types of pressure-test; a field that changes there no longer compiles here.
// Does not cover functions that take or give one quantity: that writes and reads itself.
//
// The pattern of every such file: a function of the module has the codecs `<function>Input` and
// `<function>Result`. Their shapes are arrow functions, so that importing costs nothing; `of<T>` names every
// field of `T`, with `?` where it may be missing. Shared parts stand above in the order in which they are used.
import type {
  AbsoluteChange,
  CorrectedPoint,
  DropLimit,
  GasThermometer,
  GaugeChange,
  LeakGas,
  LeakLimit,
  LogAssessment,
  LogReading,
  PressureTest,
  PressureTestAssessment,
  PressureTestCause,
  PressureTestLog,
  PressureTestSetup,
  RefrigerantEquivalent,
  RefrigerantInService,
  TestGauge,
  TestInstruments,
  TestPressure,
  TestReading,
  TestTemperature,
  TwoReadingAssessment,
  UncertaintyPart,
  UncertaintyShare,
  Wall,
} from "../pressure-test/index.ts";
import { type Codec, codecOf } from "./codec.ts";
import { estimate, statement, verdict } from "./verdict.ts";
import {
  either,
  type FieldsOf,
  type FormOf,
  list,
  type ObjectOf,
  of,
  words,
} from "./wire-shape.ts";

/** What a gauge or a sensor shows. */
export const pressure = (): FormOf<TestPressure> => either("gaugePressure", "absolutePressure");

/** One temperature, or one for each zone. */
export const temperature = (): FormOf<TestTemperature> =>
  either("temperature", list("temperature"));

const volume = () => either("volume", list("volume"));
const wall = () => words<Wall>({ rigid: true, copper: true, aluminum: true });

/** What the instruments of a test leave open. */
export const testInstruments = (): ObjectOf<TestInstruments> =>
  of<TestInstruments>({
    pressure: of<TestGauge>({
      "accuracy?": "pressureDifference",
      "resolution?": "pressureDifference",
      "repeatability?": "pressureDifference",
      "drift?": "pressureDifference",
      "separateInstruments?": "flag",
    }),
    temperature: of<GasThermometer>({
      "accuracy?": "temperatureDifference",
      "resolution?": "temperatureDifference",
      "repeatability?": "temperatureDifference",
      "followsGasWithin?": "temperatureDifference",
      "separateInstruments?": "flag",
    }),
    "volumeUncertainty?": "ratio",
  });

const reading = (): FieldsOf<TestReading> => ({
  pressure: pressure(),
  temperature: temperature(),
  "elapsed?": "duration",
  "atmosphere?": "absolutePressure",
});

/** A gas that can leak. */
export const gas = (): ObjectOf<LeakGas> =>
  of<LeakGas>({ gramsPerMole: "number", viscosity: "number" });

/** What is common to all readings of a test. */
export const setup = (): FieldsOf<PressureTestSetup> => ({
  instruments: testInstruments(),
  atmosphere: "absolutePressure",
  "volume?": volume(),
  "criterion?": either(
    of<DropLimit>({ maximumDrop: "pressureDifference", "per?": "duration" }),
    of<LeakLimit>({ maximumLeakRate: "throughput" }),
  ),
  "confidence?": "number",
  "refrigerant?": of<RefrigerantInService>({ gas: gas(), pressure: "absolutePressure" }),
  "wall?": wall(),
});

/** What makes up an uncertainty. */
export const uncertaintyShare = (): ObjectOf<UncertaintyShare> =>
  of<UncertaintyShare>({
    part: words<UncertaintyPart>({
      "gauge reading": true,
      "gauge drift": true,
      "gauge error": true,
      "thermometer reading": true,
      "thermometer error": true,
      "gas temperature": true,
      barometer: true,
      "wall expansion": true,
      "zone volumes": true,
      scatter: true,
    }),
    standardUncertainty: "pressureDifference",
  });

/** A leak as refrigerant. */
export const refrigerantEquivalentShape = (): ObjectOf<RefrigerantEquivalent> =>
  of<RefrigerantEquivalent>({
    viscous: "massFlow",
    molecular: "massFlow",
    low: "massFlow",
    high: "massFlow",
    referenceTemperature: "temperature",
    cautions: list(statement()),
  });

const assessment = (): FieldsOf<PressureTestAssessment> => ({
  ...verdict(),
  "cause?": words<PressureTestCause>({ leak: true, "unexplained rise": true }),
  correctedDrop: estimate("pressureDifference", "pressureDifference"),
  uncertaintyBudget: list(uncertaintyShare()),
  "limit?": "pressureDifference",
  "conformanceProbability?": "number",
  smallestProvableDrop: "pressureDifference",
  noLeakAbove: "pressureDifference",
  "leakRate?": estimate("throughput", "throughput"),
  "nitrogenLoss?": estimate("massFlow", "massFlow"),
  "smallestProvableLeak?": "throughput",
  "refrigerantLoss?": refrigerantEquivalentShape(),
  "refrigerantLossAtMost?": refrigerantEquivalentShape(),
  "furtherHold?": "duration",
});

const change = (): FieldsOf<Omit<AbsoluteChange, "pressure">> => ({
  temperature: temperature(),
  laterTemperature: temperature(),
  "volume?": volume(),
  "wall?": wall(),
});

/** JSON of what `expectedTestPressure` takes. Source: the library's own format. */
export const expectedTestPressureInput: Codec<GaugeChange | AbsoluteChange> =
  /* @__PURE__ */ codecOf<GaugeChange | AbsoluteChange>({
    name: "change",
    shape: () =>
      either(
        of<GaugeChange>({
          ...change(),
          pressure: "gaugePressure",
          atmosphere: "absolutePressure",
          "laterAtmosphere?": "absolutePressure",
        }),
        of<AbsoluteChange>({ ...change(), pressure: "absolutePressure" }),
      ),
  });

/**
 * JSON of what `assessPressureTest` takes.
 *
 * Source: the library's own format.
 *
 * @example
 * ```ts
 * import { assessPressureTestInput } from "hvac-install-math/wire";
 *
 * assessPressureTestInput.jsonSchema().required; // => start,end,instruments,atmosphere
 * ```
 */
export const assessPressureTestInput: Codec<PressureTest> = /* @__PURE__ */ codecOf<PressureTest>({
  name: "test",
  shape: () =>
    of<PressureTest>({
      start: of<TestReading>(reading()),
      end: of<TestReading>(reading()),
      ...setup(),
    }),
});

/** JSON of what `assessPressureTest` gives. Source: the library's own format. */
export const assessPressureTestResult: Codec<TwoReadingAssessment> =
  /* @__PURE__ */ codecOf<TwoReadingAssessment>({
    name: "result",
    shape: () => of<TwoReadingAssessment>({ ...assessment(), expectedPressure: pressure() }),
  });

/** JSON of what `assessPressureLog` takes. Source: the library's own format. */
export const assessPressureLogInput: Codec<PressureTestLog> =
  /* @__PURE__ */ codecOf<PressureTestLog>({
    name: "log",
    shape: () => {
      const { "elapsed?": elapsed, ...rest } = reading();
      const readings = list(of<LogReading>({ ...rest, elapsed }));
      return of<PressureTestLog>({ readings, ...setup() });
    },
  });

/** JSON of what `assessPressureLog` gives. Source: the library's own format. */
export const assessPressureLogResult: Codec<LogAssessment> = /* @__PURE__ */ codecOf<LogAssessment>(
  {
    name: "result",
    shape: () =>
      of<LogAssessment>({
        ...assessment(),
        corrected: list(of<CorrectedPoint>({ elapsed: "duration", pressure: pressure() })),
        misfit: "number",
      }),
  },
);
