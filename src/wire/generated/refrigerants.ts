// How do the inputs and results of refrigerants travel as JSON?
// Derived from the types by `npm run generate`; a test holds it current. Not edited by hand.

import type {
  assessSubcooling,
  assessSuperheat,
  bubblePressure,
  bubbleTemperature,
  dewPressure,
  dewTemperature,
  meanCoilTemperature,
  pressureTemperatureTable,
  saturatedLiquidDensity,
  saturatedVaporDensity,
  subcooling,
  superheat,
  temperatureGlide,
} from "../../refrigerants/index.ts";
import type { ArgumentsOf, ResultOf } from "../arguments-of.ts";
import { type Codec, codecOf } from "../codec.ts";
import {
  AssessSubcoolingInputShape,
  AssessSuperheatInputShape,
  BubblePressureInputShape,
  BubbleTemperatureInput1Shape,
  BubbleTemperatureInput2Shape,
  DewPressureInputShape,
  DewTemperatureInput1Shape,
  DewTemperatureInput2Shape,
  LineAssessmentShape,
  MeanCoilTemperatureInputShape,
  PressureTemperatureTableInput1Shape,
  PressureTemperatureTableInput2Shape,
  PressureTemperatureTableOfAbsolutePressureShape,
  PressureTemperatureTableOfGaugePressureShape,
  SaturatedLiquidDensityInputShape,
  SaturatedVaporDensityInputShape,
  SubcoolingInputShape,
  SuperheatInputShape,
  TemperatureGlideInputShape,
} from "./refrigerants.shapes.ts";

/** JSON of what `meanCoilTemperature` takes. Source: the library's own format. */
export const meanCoilTemperatureInput: Codec<
  ArgumentsOf<typeof meanCoilTemperature, ["refrigerant", "reading"]>
> = /* @__PURE__ */ codecOf({
  id: "meanCoilTemperatureInput",
  name: "input",
  shape: MeanCoilTemperatureInputShape,
});

/** JSON of what `temperatureGlide` takes. Source: the library's own format. */
export const temperatureGlideInput: Codec<
  ArgumentsOf<typeof temperatureGlide, ["refrigerant", "reading"]>
> = /* @__PURE__ */ codecOf({
  id: "temperatureGlideInput",
  name: "input",
  shape: TemperatureGlideInputShape,
});

/** JSON of what `assessSubcooling` takes. Source: the library's own format. */
export const assessSubcoolingInput: Codec<
  ArgumentsOf<typeof assessSubcooling, ["refrigerant", "input"]>
> = /* @__PURE__ */ codecOf({
  id: "assessSubcoolingInput",
  name: "input",
  shape: AssessSubcoolingInputShape,
});

/** JSON of what `assessSubcooling` gives. Source: the library's own format. */
export const assessSubcoolingResult: Codec<ResultOf<typeof assessSubcooling>> =
  /* @__PURE__ */ codecOf({
    id: "assessSubcoolingResult",
    name: "result",
    shape: LineAssessmentShape,
  });

/** JSON of what `assessSuperheat` takes. Source: the library's own format. */
export const assessSuperheatInput: Codec<
  ArgumentsOf<typeof assessSuperheat, ["refrigerant", "input"]>
> = /* @__PURE__ */ codecOf({
  id: "assessSuperheatInput",
  name: "input",
  shape: AssessSuperheatInputShape,
});

/** JSON of what `assessSuperheat` gives. Source: the library's own format. */
export const assessSuperheatResult: Codec<ResultOf<typeof assessSuperheat>> =
  /* @__PURE__ */ codecOf({
    id: "assessSuperheatResult",
    name: "result",
    shape: LineAssessmentShape,
  });

/** JSON of what `subcooling` takes. Source: the library's own format. */
export const subcoolingInput: Codec<ArgumentsOf<typeof subcooling, ["refrigerant", "reading"]>> =
  /* @__PURE__ */ codecOf({ id: "subcoolingInput", name: "input", shape: SubcoolingInputShape });

/** JSON of what `superheat` takes. Source: the library's own format. */
export const superheatInput: Codec<ArgumentsOf<typeof superheat, ["refrigerant", "reading"]>> =
  /* @__PURE__ */ codecOf({ id: "superheatInput", name: "input", shape: SuperheatInputShape });

/** JSON of what `bubblePressure` takes. Source: the library's own format. */
export const bubblePressureInput: Codec<
  ArgumentsOf<typeof bubblePressure, ["refrigerant", "temperature"]>
> = /* @__PURE__ */ codecOf({
  id: "bubblePressureInput",
  name: "input",
  shape: BubblePressureInputShape,
});

/** JSON of what `bubbleTemperature` takes. Source: the library's own format. */
export const bubbleTemperatureInput: Codec<
  ArgumentsOf<typeof bubbleTemperature, ["refrigerant", "pressure", "atmosphere"]>
> = /* @__PURE__ */ codecOf({
  id: "bubbleTemperatureInput",
  name: "input",
  shape: () => ({ either: [BubbleTemperatureInput1Shape(), BubbleTemperatureInput2Shape()] }),
});

/** JSON of what `dewPressure` takes. Source: the library's own format. */
export const dewPressureInput: Codec<
  ArgumentsOf<typeof dewPressure, ["refrigerant", "temperature"]>
> = /* @__PURE__ */ codecOf({
  id: "dewPressureInput",
  name: "input",
  shape: DewPressureInputShape,
});

/** JSON of what `dewTemperature` takes. Source: the library's own format. */
export const dewTemperatureInput: Codec<
  ArgumentsOf<typeof dewTemperature, ["refrigerant", "pressure", "atmosphere"]>
> = /* @__PURE__ */ codecOf({
  id: "dewTemperatureInput",
  name: "input",
  shape: () => ({ either: [DewTemperatureInput1Shape(), DewTemperatureInput2Shape()] }),
});

/** JSON of what `pressureTemperatureTable` takes. Source: the library's own format. */
export const pressureTemperatureTableInput: Codec<
  ArgumentsOf<typeof pressureTemperatureTable, ["refrigerant", "options"]>
> = /* @__PURE__ */ codecOf({
  id: "pressureTemperatureTableInput",
  name: "input",
  shape: () => ({
    either: [PressureTemperatureTableInput1Shape(), PressureTemperatureTableInput2Shape()],
  }),
});

/** JSON of what `pressureTemperatureTable` gives. Source: the library's own format. */
export const pressureTemperatureTableResult: Codec<ResultOf<typeof pressureTemperatureTable>> =
  /* @__PURE__ */ codecOf({
    id: "pressureTemperatureTableResult",
    name: "result",
    shape: () => ({
      either: [
        PressureTemperatureTableOfGaugePressureShape(),
        PressureTemperatureTableOfAbsolutePressureShape(),
      ],
    }),
  });

/** JSON of what `saturatedLiquidDensity` takes. Source: the library's own format. */
export const saturatedLiquidDensityInput: Codec<
  ArgumentsOf<typeof saturatedLiquidDensity, ["refrigerant", "temperature"]>
> = /* @__PURE__ */ codecOf({
  id: "saturatedLiquidDensityInput",
  name: "input",
  shape: SaturatedLiquidDensityInputShape,
});

/** JSON of what `saturatedVaporDensity` takes. Source: the library's own format. */
export const saturatedVaporDensityInput: Codec<
  ArgumentsOf<typeof saturatedVaporDensity, ["refrigerant", "temperature"]>
> = /* @__PURE__ */ codecOf({
  id: "saturatedVaporDensityInput",
  name: "input",
  shape: SaturatedVaporDensityInputShape,
});
