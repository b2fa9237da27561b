// How do saturation, superheat, subcooling and their verdicts travel as JSON?
// Follows the types of refrigerants. A refrigerant goes by its designation.
// Does not cover saturationArray, whose figures have no units, and tables: pressure-temperature-table.ts.
import type { Quantity } from "../quantity/quantity.ts";
import type {
  assessSubcooling,
  assessSuperheat,
  bubblePressure,
  CoilReading,
  dewPressure,
  LineAssessment,
  LineAssessmentInput,
  LineReading,
  meanCoilTemperature,
  ReadPressure,
  Refrigerant,
  saturatedLiquidDensity,
  saturatedVaporDensity,
  subcooling,
  superheat,
  temperatureGlide,
} from "../refrigerants/index.ts";
import type { ArgumentsOf } from "./arguments-of.ts";
import { type Codec, codecOf } from "./codec.ts";
import { byDesignation } from "./refrigerant-names.ts";
import { estimate, instrument, verdict } from "./verdict.ts";
import { either, type FieldsOf, type FormOf, type ObjectOf, of, words } from "./wire-shape.ts";

/** A refrigerant at a temperature. Source: none; the library's own type. */
export type AtTemperature = ArgumentsOf<
  | typeof bubblePressure
  | typeof dewPressure
  | typeof saturatedLiquidDensity
  | typeof saturatedVaporDensity,
  ["refrigerant", "temperature"]
>;
const atTemperature = () =>
  of<AtTemperature>({ refrigerant: byDesignation(), temperature: "temperature" });

/** JSON of what `bubblePressure` takes. Source: the library's own format. */
export const bubblePressureInput: Codec<AtTemperature> = /* @__PURE__ */ codecOf<AtTemperature>({
  name: "input",
  shape: atTemperature,
});

/** JSON of what `dewPressure` takes. Source: the library's own format. */
export const dewPressureInput: Codec<AtTemperature> = /* @__PURE__ */ codecOf<AtTemperature>({
  name: "input",
  shape: atTemperature,
});

/** JSON of what `saturatedLiquidDensity` takes. Source: the library's own format. */
export const saturatedLiquidDensityInput: Codec<AtTemperature> =
  /* @__PURE__ */ codecOf<AtTemperature>({ name: "input", shape: atTemperature });

/** JSON of what `saturatedVaporDensity` takes. Source: the library's own format. */
export const saturatedVaporDensityInput: Codec<AtTemperature> =
  /* @__PURE__ */ codecOf<AtTemperature>({ name: "input", shape: atTemperature });

/** A refrigerant at an absolute pressure. Source: none; the library's own type. */
export interface AtAbsolutePressure {
  readonly refrigerant: Refrigerant;
  readonly pressure: Quantity<"absolutePressure">;
}
/** A refrigerant at a pressure as it was read, with the atmosphere around the gauge. Source: none; the library's own type. */
export interface AtPressure {
  readonly refrigerant: Refrigerant;
  readonly pressure: ReadPressure;
  readonly atmosphere: Quantity<"absolutePressure">;
}
const atPressure = (): FormOf<AtPressure | AtAbsolutePressure> =>
  either(
    of<AtPressure>({
      refrigerant: byDesignation(),
      pressure: either("gaugePressure", "absolutePressure"),
      atmosphere: "absolutePressure",
    }),
    of<AtAbsolutePressure>({ refrigerant: byDesignation(), pressure: "absolutePressure" }),
  );

/** JSON of what `bubbleTemperature` takes. Source: the library's own format. */
export const bubbleTemperatureInput: Codec<AtPressure | AtAbsolutePressure> =
  /* @__PURE__ */ codecOf<AtPressure | AtAbsolutePressure>({ name: "input", shape: atPressure });

/** JSON of what `dewTemperature` takes. Source: the library's own format. */
export const dewTemperatureInput: Codec<AtPressure | AtAbsolutePressure> = /* @__PURE__ */ codecOf<
  AtPressure | AtAbsolutePressure
>({ name: "input", shape: atPressure });

type Absolute = Extract<CoilReading, { pressure: Quantity<"absolutePressure"> }>;
type Gauge = Extract<CoilReading, { pressure: Quantity<"gaugePressure"> }>;
const absolute = (): FieldsOf<Absolute> => ({
  pressure: "absolutePressure",
  "atmosphere?": "absolutePressure",
});
const gauge = (): FieldsOf<Gauge> => ({
  pressure: "gaugePressure",
  atmosphere: "absolutePressure",
});

/** JSON of what `temperatureGlide` takes. Source: the library's own format. */
export const temperatureGlideInput: Codec<
  ArgumentsOf<typeof temperatureGlide, ["refrigerant", "reading"]>
> = /* @__PURE__ */ codecOf<ArgumentsOf<typeof temperatureGlide, ["refrigerant", "reading"]>>({
  name: "input",
  shape: () =>
    of<ArgumentsOf<typeof temperatureGlide, ["refrigerant", "reading"]>>({
      refrigerant: byDesignation(),
      reading: either(of<Absolute>(absolute()), of<Gauge>(gauge())),
    }),
});

/** What the mean temperature of a coil is told from. Source: none; the library's own type. */
export type MeanCoil = ArgumentsOf<typeof meanCoilTemperature, ["refrigerant", "reading"]>;

/** JSON of what `meanCoilTemperature` takes. Source: the library's own format. */
export const meanCoilTemperatureInput: Codec<MeanCoil> = /* @__PURE__ */ codecOf<MeanCoil>({
  name: "input",
  shape: () => {
    type Weight = Omit<MeanCoil["reading"], keyof CoilReading>;
    const weight: FieldsOf<Weight> = { "dewWeight?": "number" };
    return of<MeanCoil>({
      refrigerant: byDesignation(),
      reading: either(
        of<Absolute & Weight>({ ...absolute(), ...weight }),
        of<Gauge & Weight>({ ...gauge(), ...weight }),
      ),
    });
  },
});

/** A refrigerant and a reading at a line. Source: none; the library's own type. */
export type AtLine = ArgumentsOf<typeof superheat | typeof subcooling, ["refrigerant", "reading"]>;
const atLine = (): ObjectOf<AtLine> => {
  type Line = Omit<LineReading, keyof CoilReading>;
  const line: FieldsOf<Line> = { lineTemperature: "temperature" };
  return of<AtLine>({
    refrigerant: byDesignation(),
    reading: either(
      of<Absolute & Line>({ ...absolute(), ...line }),
      of<Gauge & Line>({ ...gauge(), ...line }),
    ),
  });
};

/**
 * JSON of what `superheat` takes.
 *
 * Source: the library's own format.
 *
 * @example
 * ```ts
 * import { degF, psig, standardAtmosphere } from "hvac-install-math/quantity";
 * import { R410A, superheat } from "hvac-install-math/refrigerants";
 * import { superheatInput } from "hvac-install-math/wire";
 *
 * const reading = { pressure: psig(118), lineTemperature: degF(52), atmosphere: standardAtmosphere };
 * const sent = superheatInput.stringify({ refrigerant: R410A, reading });
 * sent.slice(0, 34); // => {"refrigerant":"R-410A","reading":
 * const back = superheatInput.parse(sent);
 * superheat(back.refrigerant, back.reading).toString(undefined, 1); // => 12.2 Δ°F
 * ```
 */
export const superheatInput: Codec<AtLine> = /* @__PURE__ */ codecOf<AtLine>({
  name: "input",
  shape: atLine,
});

/** JSON of what `subcooling` takes. Source: the library's own format. */
export const subcoolingInput: Codec<AtLine> = /* @__PURE__ */ codecOf<AtLine>({
  name: "input",
  shape: atLine,
});

/** What the two probes at a line leave open. */
export const probes = (): ObjectOf<LineAssessmentInput["instruments"]> =>
  of<LineAssessmentInput["instruments"]>({
    pressure: instrument<"gaugePressure">("pressureDifference"),
    temperature: instrument<"temperature">("temperatureDifference"),
    "atmosphere?": instrument<"absolutePressure">("pressureDifference"),
  });

/** What a verdict on superheat or subcooling is told from. Source: none; the library's own type. */
export type JudgedLine = ArgumentsOf<
  typeof assessSuperheat | typeof assessSubcooling,
  ["refrigerant", "input"]
>;
const judged = (): ObjectOf<JudgedLine> => {
  type Target = Omit<LineAssessmentInput, keyof CoilReading>;
  const target: FieldsOf<Target> = {
    lineTemperature: "temperature",
    target: "temperatureDifference",
    tolerance: "temperatureDifference",
    instruments: probes(),
    "confidence?": "number",
  };
  return of<JudgedLine>({
    refrigerant: byDesignation(),
    input: either(
      of<Absolute & Target>({ ...absolute(), ...target }),
      of<Gauge & Target>({ ...gauge(), ...target }),
    ),
  });
};
const judgement = (): ObjectOf<LineAssessment> =>
  of<LineAssessment>({
    ...verdict(),
    "cause?": words<NonNullable<LineAssessment["cause"]>>({ low: true, high: true }),
    result: estimate("temperatureDifference", "temperatureDifference"),
    saturationTemperature: estimate("temperature", "temperatureDifference"),
    conformanceProbability: "number",
  });

/** JSON of what `assessSuperheat` takes. Source: the library's own format. */
export const assessSuperheatInput: Codec<JudgedLine> = /* @__PURE__ */ codecOf<JudgedLine>({
  name: "input",
  shape: judged,
});

/** JSON of what `assessSuperheat` gives. Source: the library's own format. */
export const assessSuperheatResult: Codec<LineAssessment> = /* @__PURE__ */ codecOf<LineAssessment>(
  { name: "result", shape: judgement },
);

/** JSON of what `assessSubcooling` takes. Source: the library's own format. */
export const assessSubcoolingInput: Codec<JudgedLine> = /* @__PURE__ */ codecOf<JudgedLine>({
  name: "input",
  shape: judged,
});

/** JSON of what `assessSubcooling` gives. Source: the library's own format. */
export const assessSubcoolingResult: Codec<LineAssessment> =
  /* @__PURE__ */ codecOf<LineAssessment>({ name: "result", shape: judgement });
