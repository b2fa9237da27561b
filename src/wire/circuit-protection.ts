// How does the circuit of a unit travel as JSON, what is asked and what is found?
// Follows the types of circuit-protection. A rule set goes by its name.
// Does not cover its steps: circuit-conductors.ts, circuit-nameplate.ts.
import type {
  breakerConnection,
  CircuitAssessment,
  CircuitDrop,
  CircuitInput,
  CircuitPart,
  Connection,
  compareSupplies,
  EquipmentGrounding,
  FaultEnergy,
  FittedDevice,
  FittedDisconnect,
  InstalledCircuit,
  PermittedDevices,
  ProtectionMarking,
  RequiredDisconnect,
  ServiceReceptacle,
  SharedLoad,
  SupplyOption,
  Whip,
  WorkingSpace,
} from "../circuit-protection/index.ts";
import type { InputOf } from "./arguments-of.ts";
import {
  connection,
  deviceKind,
  drop,
  equipmentKind,
  material,
  rules,
  size,
  supply,
  tripCurve,
  usable,
  voltageRating,
  wiring,
} from "./circuit-parts.ts";
import { type Codec, codecOf } from "./codec.ts";
import { verdict } from "./verdict.ts";
import { either, type FieldsOf, list, type ObjectOf, of, words } from "./wire-shape.ts";

const workingSpace = (): FieldsOf<WorkingSpace> => ({
  depth: "length",
  width: "length",
  height: "length",
});

const installed = (): ObjectOf<InstalledCircuit> =>
  of<InstalledCircuit>({
    "device?": of<FittedDevice>({
      kind: deviceKind(),
      rating: "current",
      "poles?": { words: [1, 2, 3] },
      "voltageRating?": voltageRating(),
      "hacr?": "flag",
      "curve?": tripCurve(),
    }),
    "conductor?": size(),
    "whip?": of<Whip>({ conductor: size(), "wiring?": wiring() }),
    "aluminumTerminals?": "flag",
    "equipmentGrounding?": size(),
    "groundingMaterial?": material(),
    "groundingByRaceway?": "flag",
    "fault?": either(
      of<Extract<FaultEnergy, { current: unknown }>>({
        current: "current",
        clearingTime: "duration",
      }),
      of<Extract<FaultEnergy, { letThrough: unknown }>>({ letThrough: "number" }),
    ),
    "residualCurrent?": either("current", "flag") as never,
    "serviceReceptacle?": of<ServiceReceptacle>({ distance: "length", "onLoadSide?": "flag" }),
    "disconnect?": of<FittedDisconnect>({
      rating: "current",
      "fuse?": "current",
      "visible?": "flag",
      "distance?": "length",
      "readilyAccessible?": "flag",
      "inTheWay?": "flag",
      "lockable?": "flag",
      "onUnit?": "flag",
      "workingSpace?": of<NonNullable<FittedDisconnect["workingSpace"]>>({
        ...workingSpace(),
        "equipmentWidth?": "length",
        "condition?": { words: [1, 2, 3] },
      }),
    }),
  });

/** Smallest grounding conductor. */
export const grounding = (): ObjectOf<EquipmentGrounding> =>
  of<EquipmentGrounding>({
    size: size(),
    tableSize: size(),
    areaFactor: "number",
    "ambiguous?": "flag" as never,
  });

/**
 * JSON of what `circuitFromNameplate` takes. A rule set goes by its name in `circuitRules`; one that differs in
 * anything is refused, because it holds functions, which JSON has not.
 *
 * Source: the library's own format.
 *
 * @example
 * ```ts
 * import { type CircuitInput, nec2023 } from "hvac-install-math/circuit-protection";
 * import { ampere, volt } from "hvac-install-math/quantity";
 * import { circuitFromNameplateInput } from "hvac-install-math/wire";
 *
 * const input: CircuitInput = {
 *   rules: nec2023,
 *   minimumCircuitAmpacity: ampere(31.4),
 *   maximumOvercurrentProtection: ampere(50),
 *   supply: { voltage: volt(240), phases: 1 },
 *   wiring: { material: "copper", insulation: "75 °C" },
 * };
 * const text = circuitFromNameplateInput.stringify(input);
 * text.slice(0, 23); // => {"rules":"nfpa-70-2023"
 * circuitFromNameplateInput.parse(text).rules === nec2023; // => true
 * ```
 */
export const circuitFromNameplateInput: Codec<CircuitInput> = /* @__PURE__ */ codecOf<CircuitInput>(
  {
    name: "input",
    shape: () =>
      of<CircuitInput>({
        rules: rules(),
        "minimumCircuitAmpacity?": "current",
        "ratedCurrent?": "current",
        "maximumOvercurrentProtection?": "current",
        "maximumFuse?": "current",
        "printedTo?": "current",
        "nameplateReadAgain?": "flag",
        "largestLoadCurrent?": "current",
        "sharedWith?": list(
          of<SharedLoad>({
            kind: words<SharedLoad["kind"]>({ unit: true, other: true }),
            current: "current",
            "maximumOvercurrentProtection?": "current",
            "continuous?": "flag",
          }),
        ),
        "date?": "text",
        "powerConversion?": "flag",
        "groundFaultText?": "text",
        "earthing?": words<NonNullable<CircuitInput["earthing"]>>({ TN: true, TT: true }),
        "protectionMarking?": words<ProtectionMarking>({
          "fuse only": true,
          "fuse or HACR breaker": true,
          "fuse or breaker": true,
          "max overcurrent protection": true,
        }),
        "ratedLoadCurrent?": "current",
        "lockedRotorCurrent?": "current",
        "powerFactor?": "number",
        "equipment?": equipmentKind(),
        "occupancy?": words<NonNullable<CircuitInput["occupancy"]>>({
          dwelling: true,
          other: true,
        }),
        supply: supply(),
        wiring: wiring(),
        "installed?": installed(),
      }),
  },
);

/** JSON of what `circuitFromNameplate` gives. Source: the library's own format. */
export const circuitFromNameplateResult: Codec<CircuitAssessment> =
  /* @__PURE__ */ codecOf<CircuitAssessment>({
    name: "result",
    shape: () =>
      of<CircuitAssessment>({
        ...verdict(),
        "cause?": words<CircuitPart>({
          "device-rating": true,
          "device-kind": true,
          "device-poles": true,
          "device-voltage": true,
          conductor: true,
          "equipment-grounding": true,
          "disconnect-rating": true,
          "disconnect-fuse": true,
          "disconnect-place": true,
          "working-space": true,
          "voltage-drop": true,
          terminals: true,
          "service-receptacle": true,
          "residual-current": true,
        }),
        rules: "text",
        device: of<PermittedDevices & Connection>({
          rating: "current",
          ratings: list("current"),
          kind: words<PermittedDevices["kind"]>({ fuse: true, "fuse or breaker": true }),
          ...connection(),
        }),
        "conductor?": usable(),
        "fittedConductor?": usable(),
        "fittedWhip?": usable(),
        "equipmentGrounding?": grounding(),
        disconnect: of<RequiredDisconnect>({
          minimumRating: "current",
          "madeSize?": "current",
          nonFusedAllowed: "flag",
          "withinSight?": "length",
          "workingSpace?": of<WorkingSpace>(workingSpace()),
        }),
        "voltageDrop?": of<CircuitDrop>({
          running: drop(),
          "starting?": drop(),
          limit: "ratio",
          longestRun: "length",
          "conductorWithinLimit?": size(),
        }),
      }),
  });

/** JSON of what `compareSupplies` takes. Source: the library's own format. */
export const compareSuppliesInput: Codec<InputOf<typeof compareSupplies>> = /* @__PURE__ */ codecOf<
  InputOf<typeof compareSupplies>
>({
  name: "input",
  shape: () =>
    of<InputOf<typeof compareSupplies>>({
      rules: rules(),
      power: "power",
      "powerFactor?": "number",
      supplies: list(supply()),
      wiring: wiring(),
      "conductor?": size(),
    }),
});

/** JSON of what `compareSupplies` gives. Source: the library's own format. */
export const compareSuppliesResult: Codec<readonly SupplyOption[]> = /* @__PURE__ */ codecOf<
  readonly SupplyOption[]
>({
  name: "result",
  shape: () =>
    list(
      of<SupplyOption>({
        supply: supply(),
        connection: of<Connection>(connection()),
        current: "current",
        ampacity: "current",
        conductor: usable(),
        "drop?": drop(),
        "dropWithSameConductor?": drop(),
      }),
    ),
});

/** JSON of what `breakerConnection` takes. Source: the library's own format. */
export const breakerConnectionInput: Codec<InputOf<typeof breakerConnection>> =
  /* @__PURE__ */ codecOf<InputOf<typeof breakerConnection>>({
    name: "input",
    shape: () => of<InputOf<typeof breakerConnection>>({ rules: rules(), supply: supply() }),
  });

/** JSON of what `breakerConnection` gives. Source: the library's own format. */
export const breakerConnectionResult: Codec<Connection> = /* @__PURE__ */ codecOf<Connection>({
  name: "result",
  shape: () => of<Connection>(connection()),
});
