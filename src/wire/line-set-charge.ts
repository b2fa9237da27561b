// How do added charge, its plausibility and recovery travel as JSON?
// Follows the types of line-set. A refrigerant goes by its designation.
// Does not cover what tubes hold: line-set-tubes.ts.
import type {
  AdditionalChargeInput,
  ChargeAssessment,
  ExpansionDevice,
  FilledTube,
  IndoorUnitLine,
  LiquidChargePlausibility,
  LiquidChargePlausibilityInput,
  LiquidFilledTube,
  MultiSplitChargeInput,
  RateRow,
  RateSlip,
  RecoveryAssessment,
  RecoveryInput,
  rateForLiquidLine,
  ShortLineRule,
} from "../line-set/index.ts";
import type { ArgumentsOf } from "./arguments-of.ts";
import { safetyClass } from "./charge-limit.ts";
import { type Codec, codecOf } from "./codec.ts";
import { chargeRate, filledTube, liquidFilledTube, tubeSize } from "./line-set-parts.ts";
import { verdict } from "./verdict.ts";
import { either, type FieldsOf, list, type ObjectOf, of, words } from "./wire-shape.ts";

const rules = (): FieldsOf<
  Omit<AdditionalChargeInput, "length" | "preChargedLength" | "rate">
> => ({
  shortLineRule: words<ShortLineRule>({
    "add-only": true,
    "add-and-subtract": true,
    "not-stated": true,
  }),
  "factoryCharge?": "mass",
  "maximumLength?": "length",
  "minimumLength?": "length",
  "maximumCharge?": "mass",
  "scaleResolution?": "mass",
  "lengthUncertainty?": "length",
  "safetyClass?": safetyClass(),
});

const charge = (): ObjectOf<ChargeAssessment> =>
  of<ChargeAssessment>({
    ...verdict(),
    additionalCharge: "mass",
    unroundedCharge: "mass",
    "totalCharge?": "mass",
    "expandedUncertainty?": "mass",
  });

/**
 * JSON of what `additionalCharge` takes.
 *
 * Source: the library's own format.
 *
 * @example
 * ```ts
 * import { ft, ozPerFt } from "hvac-install-math/quantity";
 * import { additionalChargeInput } from "hvac-install-math/wire";
 *
 * const rate = ozPerFt(0.21);
 * const line = { length: ft(36), preChargedLength: ft(25), rate, shortLineRule: "add-only" } as const;
 * additionalChargeInput.parse(additionalChargeInput.stringify(line)).rate.toString(); // => 0.21 oz/ft
 * ```
 */
export const additionalChargeInput: Codec<AdditionalChargeInput> =
  /* @__PURE__ */ codecOf<AdditionalChargeInput>({
    name: "input",
    shape: () =>
      of<AdditionalChargeInput>({
        length: "length",
        preChargedLength: "length",
        rate: chargeRate(),
        ...rules(),
      }),
  });

/** JSON of what `additionalCharge` gives. Source: the library's own format. */
export const additionalChargeResult: Codec<ChargeAssessment> =
  /* @__PURE__ */ codecOf<ChargeAssessment>({ name: "result", shape: charge });

/** JSON of what `multiSplitCharge` takes. Source: the library's own format. */
export const multiSplitChargeInput: Codec<MultiSplitChargeInput> =
  /* @__PURE__ */ codecOf<MultiSplitChargeInput>({
    name: "input",
    shape: () =>
      of<MultiSplitChargeInput>({
        lines: list(
          of<IndoorUnitLine>({
            length: "length",
            rate: chargeRate(),
            "preChargedLength?": "length",
            "allowance?": "mass",
          }),
        ),
        "preChargedTotal?": "length",
        ...rules(),
      }),
  });

/** JSON of what `multiSplitCharge` gives. Source: the library's own format. */
export const multiSplitChargeResult: Codec<ChargeAssessment> =
  /* @__PURE__ */ codecOf<ChargeAssessment>({ name: "result", shape: charge });

/** JSON of what `rateForLiquidLine` takes. Source: the library's own format. */
export const rateForLiquidLineInput: Codec<
  ArgumentsOf<typeof rateForLiquidLine, ["rows", "tube"]>
> = /* @__PURE__ */ codecOf<ArgumentsOf<typeof rateForLiquidLine, ["rows", "tube"]>>({
  name: "input",
  shape: () =>
    of<ArgumentsOf<typeof rateForLiquidLine, ["rows", "tube"]>>({
      rows: list(of<RateRow>({ outsideDiameter: "length", rate: chargeRate() })),
      tube: tubeSize(),
    }),
});

/** JSON of what `liquidChargePlausibility` takes. Source: the library's own format. */
export const liquidChargePlausibilityInput: Codec<LiquidChargePlausibilityInput> =
  /* @__PURE__ */ codecOf<LiquidChargePlausibilityInput>({
    name: "input",
    shape: () => {
      type Printed = Omit<LiquidChargePlausibilityInput, keyof FilledTube | keyof LiquidFilledTube>;
      const printed: FieldsOf<Printed> = {
        rate: chargeRate(),
        expansionDevice: words<ExpansionDevice>({ indoor: true, outdoor: true, "not-known": true }),
      };
      return either(
        of<FilledTube & Printed>({ ...filledTube(), ...printed }),
        of<LiquidFilledTube & Printed>({ ...liquidFilledTube(), ...printed }),
      );
    },
  });

/** JSON of what `liquidChargePlausibility` gives. Source: the library's own format. */
export const liquidChargePlausibilityResult: Codec<LiquidChargePlausibility> =
  /* @__PURE__ */ codecOf<LiquidChargePlausibility>({
    name: "result",
    shape: () =>
      of<LiquidChargePlausibility>({
        ...verdict(),
        "cause?": words<RateSlip>({
          "per-foot-taken-as-per-meter": true,
          "per-meter-taken-as-per-foot": true,
        }),
        fullLineRate: "massPerLength",
        ratio: "number",
      }),
  });

/** JSON of what `assessRecovery` takes. Source: the library's own format. */
export const assessRecoveryInput: Codec<RecoveryInput> = /* @__PURE__ */ codecOf<RecoveryInput>({
  name: "input",
  shape: () =>
    of<RecoveryInput>({
      "chargeInSystem?": "mass",
      chargeToKeep: "mass",
      "cylinder?": of<NonNullable<RecoveryInput["cylinder"]>>({
        maximumFill: "mass",
        contents: "mass",
      }),
      "safetyClass?": safetyClass(),
    }),
});

/** JSON of what `assessRecovery` gives. Source: the library's own format. */
export const assessRecoveryResult: Codec<RecoveryAssessment> =
  /* @__PURE__ */ codecOf<RecoveryAssessment>({
    name: "result",
    shape: () =>
      of<RecoveryAssessment>({
        ...verdict(),
        "toRecover?": "mass",
        "toAdd?": "mass",
        "cylinderRoom?": "mass",
      }),
  });
