// How do the figures of a conductor travel as JSON: ampacity, grounding, resistance, voltage drop?
// Follows the types of circuit-protection. Does not cover the whole circuit: circuit-protection.ts.
import type {
  AmpacityInput,
  ConductorInput,
  conductorResistance,
  conduitImpedance,
  EquipmentGrounding,
  equipmentGrounding,
  largestDeviceOnConductor,
  longestRun,
  minimumConductor,
  RuleFamily,
  UsableAmpacity,
  usableAmpacity,
  VoltageDrop,
  VoltageDropInput,
} from "../circuit-protection/index.ts";
import type { InputOf } from "./arguments-of.ts";
import {
  conduit,
  deviceKind,
  drop,
  equipmentKind,
  material,
  phases,
  rules,
  size,
  stranding,
  usable,
  wiring,
} from "./circuit-parts.ts";
import { grounding } from "./circuit-protection.ts";
import { type Codec, codecOf } from "./codec.ts";
import { type FieldsOf, of } from "./wire-shape.ts";

const conductor = (): FieldsOf<ConductorInput<RuleFamily>> => ({
  rules: rules(),
  size: size(),
  material: material(),
});

const route = (): FieldsOf<AmpacityInput<RuleFamily>> => ({
  rules: rules(),
  wiring: wiring(),
  phases: phases(),
  "deviceRating?": "current",
});

const run = (): FieldsOf<Omit<VoltageDropInput, "length">> => ({
  current: "current",
  voltage: "voltage",
  phases: phases(),
  resistance: "resistancePerLength",
  "reactance?": "resistancePerLength",
  "powerFactor?": "number",
});

/** JSON of what `usableAmpacity` takes. Source: the library's own format. */
export const usableAmpacityInput: Codec<InputOf<typeof usableAmpacity>> = /* @__PURE__ */ codecOf<
  InputOf<typeof usableAmpacity>
>({
  name: "input",
  shape: () => of<InputOf<typeof usableAmpacity>>({ ...route(), size: size() }),
});

/** JSON of what `usableAmpacity` gives. Source: the library's own format. */
export const usableAmpacityResult: Codec<UsableAmpacity> = /* @__PURE__ */ codecOf<UsableAmpacity>({
  name: "result",
  shape: usable,
});

/** JSON of what `minimumConductor` takes. Source: the library's own format. */
export const minimumConductorInput: Codec<InputOf<typeof minimumConductor>> =
  /* @__PURE__ */ codecOf<InputOf<typeof minimumConductor>>({
    name: "input",
    shape: () =>
      of<InputOf<typeof minimumConductor>>({
        ...route(),
        ampacity: "current",
        "device?": deviceKind(),
        "equipment?": equipmentKind(),
      }),
  });

/** JSON of what `minimumConductor` gives. Source: the library's own format. */
export const minimumConductorResult: Codec<UsableAmpacity> =
  /* @__PURE__ */ codecOf<UsableAmpacity>({ name: "result", shape: usable });

/** JSON of what `largestDeviceOnConductor` takes. Source: the library's own format. */
export const largestDeviceOnConductorInput: Codec<InputOf<typeof largestDeviceOnConductor>> =
  /* @__PURE__ */ codecOf<InputOf<typeof largestDeviceOnConductor>>({
    name: "input",
    shape: () =>
      of<InputOf<typeof largestDeviceOnConductor>>({
        ...conductor(),
        usable: "current",
        "device?": deviceKind(),
      }),
  });

/** JSON of what `equipmentGrounding` takes. Source: the library's own format. */
export const equipmentGroundingInput: Codec<InputOf<typeof equipmentGrounding>> =
  /* @__PURE__ */ codecOf<InputOf<typeof equipmentGrounding>>({
    name: "input",
    shape: () =>
      of<InputOf<typeof equipmentGrounding>>({
        rules: rules(),
        material: material(),
        "groundingMaterial?": material(),
        deviceRating: "current",
        minimumConductor: size(),
        "conductor?": size(),
      }),
  });

/** JSON of what `equipmentGrounding` gives. Source: the library's own format. */
export const equipmentGroundingResult: Codec<EquipmentGrounding> =
  /* @__PURE__ */ codecOf<EquipmentGrounding>({ name: "result", shape: grounding });

/** JSON of what `conductorResistance` takes. Source: the library's own format. */
export const conductorResistanceInput: Codec<InputOf<typeof conductorResistance>> =
  /* @__PURE__ */ codecOf<InputOf<typeof conductorResistance>>({
    name: "input",
    shape: () =>
      of<InputOf<typeof conductorResistance>>({
        ...conductor(),
        "stranding?": stranding(),
        "temperature?": "temperature",
      }),
  });

/** JSON of what `conduitImpedance` takes. Source: the library's own format. */
export const conduitImpedanceInput: Codec<InputOf<typeof conduitImpedance>> =
  /* @__PURE__ */ codecOf<InputOf<typeof conduitImpedance>>({
    name: "input",
    shape: () => of<InputOf<typeof conduitImpedance>>({ ...conductor(), conduit: conduit() }),
  });

/** JSON of what `conduitImpedance` gives. Source: the library's own format. */
export const conduitImpedanceResult: Codec<ReturnType<typeof conduitImpedance>> =
  /* @__PURE__ */ codecOf<ReturnType<typeof conduitImpedance>>({
    name: "result",
    shape: () =>
      of<ReturnType<typeof conduitImpedance>>({
        resistance: "resistancePerLength",
        reactance: "resistancePerLength",
      }),
  });

/** JSON of what `voltageDrop` takes. Source: the library's own format. */
export const voltageDropInput: Codec<VoltageDropInput> = /* @__PURE__ */ codecOf<VoltageDropInput>({
  name: "input",
  shape: () => of<VoltageDropInput>({ ...run(), length: "length" }),
});

/** JSON of what `voltageDrop` gives. Source: the library's own format. */
export const voltageDropResult: Codec<VoltageDrop> = /* @__PURE__ */ codecOf<VoltageDrop>({
  name: "result",
  shape: drop,
});

/** JSON of what `longestRun` takes. Source: the library's own format. */
export const longestRunInput: Codec<InputOf<typeof longestRun>> = /* @__PURE__ */ codecOf<
  InputOf<typeof longestRun>
>({
  name: "input",
  shape: () => of<InputOf<typeof longestRun>>({ ...run(), limit: "ratio" }),
});
