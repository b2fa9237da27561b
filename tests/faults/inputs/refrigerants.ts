import {
  degC,
  degF,
  deltaC,
  deltaF,
  kPaa,
  kPag,
  psi,
  psig,
  standardAtmosphere,
} from "hvac-install-math/quantity";
import type * as refrigerants from "hvac-install-math/refrigerants";
import {
  pressureTemperatureTable,
  R32,
  R407C,
  R410A,
  saturationArray,
} from "hvac-install-math/refrigerants";
import type { Inputs } from "../catalogue.ts";

const atmosphere = standardAtmosphere;
const instruments = {
  pressure: { accuracy: psi(1), resolution: psi(0.1), repeatability: psi(0.1) },
  temperature: { accuracy: deltaF(1), resolution: deltaF(0.1) },
  atmosphere: { accuracy: psi(0.1) },
};
const suction = { pressure: psig(118), lineTemperature: degF(52), atmosphere };
const liquid = { pressure: psig(355), lineTemperature: degF(95), atmosphere };
const table = pressureTemperatureTable(R32, {
  from: degC(0),
  to: degC(10),
  step: deltaC(5),
  atmosphere,
});
const kelvins = Float64Array.of(273.15, 323.15);

export const inputs: Inputs<typeof refrigerants> = {
  assessSubcooling: [
    [R410A, { ...liquid, target: deltaF(12), tolerance: deltaF(5), instruments, confidence: 0.95 }],
  ],
  assessSuperheat: [
    [
      R410A,
      { ...suction, target: deltaF(12), tolerance: deltaF(5), instruments, confidence: 0.95 },
    ],
    [
      R407C,
      {
        pressure: kPaa(650),
        lineTemperature: degC(18),
        target: deltaF(12),
        tolerance: deltaF(5),
        instruments,
      },
    ],
  ],
  bubblePressure: [[R410A, degF(100)]],
  bubbleTemperature: [[R410A, psig(355), atmosphere] as never, [R410A, kPaa(2000)]],
  dewPressure: [[R407C, degC(0)]],
  dewTemperature: [[R407C, psig(80), atmosphere] as never, [R407C, kPaa(700)]],
  meanCoilTemperature: [[R407C, { pressure: psig(80), atmosphere, dewWeight: 0.6 }]],
  pressureTemperatureTable: [
    [
      R410A,
      { from: degF(40), to: degF(60), step: deltaF(5), atmosphere, pressureUnit: kPag },
    ] as never,
    [R410A, { from: degF(40), to: degF(60), step: deltaF(5), pressureUnit: kPaa }],
  ],
  refrigerantByDesignation: [["R-410A"]],
  saturatedLiquidDensity: [[R32, degC(50)]],
  saturatedVaporDensity: [[R32, degC(50)]],
  saturationArray: [
    [R32, "bubblePressure", kelvins, saturationArray(R32, "bubblePressure", kelvins)],
    [R32, "dewTemperature", Float64Array.of(8e5, 12e5)],
  ],
  subcooling: [[R410A, liquid]],
  superheat: [[R410A, suction]],
  tableAsCsv: [[table, 2]],
  tableAsMarkdown: [[table, 2]],
  temperatureGlide: [[R407C, { pressure: psig(80), atmosphere }]],
};
