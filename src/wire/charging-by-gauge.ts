// How do a charge judged by gauge, its method and its target travel as JSON?
// Follows the types of operating-check. A refrigerant goes by its designation.
// Does not cover pressures that are expected at the ports: operating-check.ts.
import type {
  ChargeByGaugeAssessment,
  ChargeByGaugeCause,
  ChargeByGaugeInput,
  ChargedSystem,
  ChargingMethod,
  ChartDash,
  RunningMode,
  SuperheatChart,
  TargetSuperheat,
  targetSuperheat,
} from "../operating-check/index.ts";
import type { InputOf } from "./arguments-of.ts";
import { type Codec, codecOf } from "./codec.ts";
import { byDesignation } from "./refrigerant-names.ts";
import { probes } from "./refrigerants.ts";
import { estimate, statement, verdict } from "./verdict.ts";
import { either, type FieldsOf, list, of, words } from "./wire-shape.ts";

const system = (): FieldsOf<ChargedSystem> => ({
  meteringDevice: words<ChargedSystem["meteringDevice"]>({
    orifice: true,
    "thermostatic-valve": true,
    "electronic-valve": true,
  }),
  compressor: words<ChargedSystem["compressor"]>({ "single-speed": true, inverter: true }),
  mode: words<RunningMode>({ cooling: true, heating: true }),
});

const method = () =>
  words<ChargingMethod["method"]>({ superheat: true, subcooling: true, weigh: true });

/** JSON of what `chargingMethod` takes. Source: the library's own format. */
export const chargingMethodInput: Codec<ChargedSystem> = /* @__PURE__ */ codecOf<ChargedSystem>({
  name: "system",
  shape: () => of<ChargedSystem>(system()),
});

/** JSON of what `chargingMethod` gives. Source: the library's own format. */
export const chargingMethodResult: Codec<ChargingMethod> = /* @__PURE__ */ codecOf<ChargingMethod>({
  name: "result",
  shape: () => of<ChargingMethod>({ method: method(), reason: statement() }),
});

/**
 * JSON of what `assessChargeByGauge` takes.
 *
 * Source: the library's own format.
 *
 * @example
 * ```ts
 * import { assessChargeByGaugeInput } from "hvac-install-math/wire";
 *
 * const { required } = assessChargeByGaugeInput.jsonSchema();
 * String(required).slice(0, 31); // => meteringDevice,compressor,mode,
 * ```
 */
export const assessChargeByGaugeInput: Codec<ChargeByGaugeInput> =
  /* @__PURE__ */ codecOf<ChargeByGaugeInput>({
    name: "input",
    shape: () =>
      of<ChargeByGaugeInput>({
        ...system(),
        refrigerant: byDesignation(),
        pressure: "gaugePressure",
        lineTemperature: "temperature",
        atmosphere: "absolutePressure",
        "pressureDrop?": "pressureDifference",
        "target?": "temperatureDifference",
        "tolerance?": "temperatureDifference",
        instruments: probes(),
        "confidence?": "number",
      }),
  });

/** JSON of what `assessChargeByGauge` gives. Source: the library's own format. */
export const assessChargeByGaugeResult: Codec<ChargeByGaugeAssessment> =
  /* @__PURE__ */ codecOf<ChargeByGaugeAssessment>({
    name: "result",
    shape: () =>
      of<ChargeByGaugeAssessment>({
        ...verdict(),
        "cause?": words<ChargeByGaugeCause>({
          low: true,
          high: true,
          "liquid-to-compressor": true,
        }),
        method: method(),
        "result?": estimate("temperatureDifference", "temperatureDifference"),
        "saturationTemperature?": estimate("temperature", "temperatureDifference"),
      }),
  });

/** JSON of what `targetSuperheat` takes. Source: the library's own format. */
export const targetSuperheatInput: Codec<InputOf<typeof targetSuperheat>> = /* @__PURE__ */ codecOf<
  InputOf<typeof targetSuperheat>
>({
  name: "conditions",
  shape: () =>
    of<InputOf<typeof targetSuperheat>>({
      outdoorDryBulb: "temperature",
      indoorWetBulb: "temperature",
      "chart?": of<SuperheatChart>({
        outdoorDryBulbs: list("temperature"),
        indoorWetBulbs: list("temperature"),
        targets: list(list(either("temperatureDifference", words<ChartDash>({ "-": true })))),
      }),
    }),
});

type Target = Extract<TargetSuperheat, { readonly target: unknown }>;
type NoTarget = Exclude<TargetSuperheat, Target>;

/** JSON of what `targetSuperheat` gives. Source: the library's own format. */
export const targetSuperheatResult: Codec<TargetSuperheat> =
  /* @__PURE__ */ codecOf<TargetSuperheat>({
    name: "result",
    shape: () =>
      either(
        of<Target>({
          instruction: words<Target["instruction"]>({ "charge-to-target": true }),
          target: "temperatureDifference",
          tolerance: "temperatureDifference",
        }),
        of<NoTarget>({
          instruction: words<NoTarget["instruction"]>({ "do-not-charge-by-superheat": true }),
        }),
      ),
  });
