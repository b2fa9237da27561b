// How do the figures of concentration, safety and warming of a refrigerant travel as JSON?
// Follows the types of charge-limit. Does not cover flammability in a room: charge-limit.ts.
import type {
  blendWarmingPotential,
  ConcentrationAnswer,
  ConcentrationAssessment,
  ConcentrationInput,
  ConcentrationRule,
  carbonDioxideEquivalent,
  concentrationChargeLimit,
  massConcentration,
  minimumRoomVolume,
  RefrigerantSafety,
  RoomInstruments,
  SafetyLimit,
  WarmingReport,
} from "../charge-limit/index.ts";
import type { Refrigerant, RefrigerantComponent, WarmingPotential } from "../refrigerants/index.ts";
import type { InputOf } from "./arguments-of.ts";
import { refrigerant, safetyClass } from "./charge-limit.ts";
import { type Codec, codecOf } from "./codec.ts";
import { byDesignation } from "./refrigerant-names.ts";
import { citation, instrument, statement, verdict } from "./verdict.ts";
import { either, type FieldsOf, list, type ObjectOf, of, words } from "./wire-shape.ts";

const rule = (): FieldsOf<ConcentrationRule> => ({
  refrigerant: refrigerant(),
  "concentrationLimit?": "density",
});

const safetyLimit = (): ObjectOf<SafetyLimit> =>
  of<SafetyLimit>({
    value: "density",
    "citation?": citation(),
    standing: words<SafetyLimit["standing"]>({
      published: true,
      "from-memory": true,
      stated: true,
    }),
  });

const byConcentration = <K extends "mass" | "volume">(value: K): ObjectOf<ConcentrationAnswer<K>> =>
  of<ConcentrationAnswer<"mass">>({
    value: value as "mass",
    basis: safetyLimit(),
    cautions: list(statement()),
  }) as unknown as ObjectOf<ConcentrationAnswer<K>>;

/** JSON of what `assessConcentration` takes. Source: the library's own format. */
export const assessConcentrationInput: Codec<ConcentrationInput> =
  /* @__PURE__ */ codecOf<ConcentrationInput>({
    name: "input",
    shape: () =>
      of<ConcentrationInput>({
        ...rule(),
        charge: "mass",
        volume: "volume",
        "instruments?": of<RoomInstruments<"volume">>({
          "charge?": instrument<"mass">("mass"),
          "size?": instrument<"volume">("volume"),
        }),
        "confidence?": "number",
      }),
  });

/** JSON of what `assessConcentration` gives. Source: the library's own format. */
export const assessConcentrationResult: Codec<ConcentrationAssessment> =
  /* @__PURE__ */ codecOf<ConcentrationAssessment>({
    name: "result",
    shape: () =>
      of<ConcentrationAssessment>({
        ...verdict(),
        "cause?": words<"room-too-small">({ "room-too-small": true }),
        limit: byConcentration("mass"),
      }),
  });

/** JSON of what `concentrationChargeLimit` takes. Source: the library's own format. */
export const concentrationChargeLimitInput: Codec<InputOf<typeof concentrationChargeLimit>> =
  /* @__PURE__ */ codecOf<InputOf<typeof concentrationChargeLimit>>({
    name: "room",
    shape: () => of<InputOf<typeof concentrationChargeLimit>>({ ...rule(), volume: "volume" }),
  });

/** JSON of what `concentrationChargeLimit` gives. Source: the library's own format. */
export const concentrationChargeLimitResult: Codec<ConcentrationAnswer<"mass">> =
  /* @__PURE__ */ codecOf<ConcentrationAnswer<"mass">>({
    name: "result",
    shape: () => byConcentration("mass"),
  });

/** JSON of what `minimumRoomVolume` takes. Source: the library's own format. */
export const minimumRoomVolumeInput: Codec<InputOf<typeof minimumRoomVolume>> =
  /* @__PURE__ */ codecOf<InputOf<typeof minimumRoomVolume>>({
    name: "unit",
    shape: () => of<InputOf<typeof minimumRoomVolume>>({ ...rule(), charge: "mass" }),
  });

/** JSON of what `minimumRoomVolume` gives. Source: the library's own format. */
export const minimumRoomVolumeResult: Codec<ConcentrationAnswer<"volume">> =
  /* @__PURE__ */ codecOf<ConcentrationAnswer<"volume">>({
    name: "result",
    shape: () => byConcentration("volume"),
  });

/** JSON of what `refrigerantSafety` gives. Source: the library's own format. */
export const refrigerantSafetyResult: Codec<RefrigerantSafety> =
  /* @__PURE__ */ codecOf<RefrigerantSafety>({
    name: "result",
    shape: () =>
      of<RefrigerantSafety>({
        safetyClass: safetyClass(),
        lowerFlammabilityLimits: list(safetyLimit()),
        concentrationLimits: list(safetyLimit()),
        concentrationLimitByVolume: "ratio",
      }),
  });

/** JSON of what `massConcentration` takes. Source: the library's own format. */
export const massConcentrationInput: Codec<InputOf<typeof massConcentration>> =
  /* @__PURE__ */ codecOf<InputOf<typeof massConcentration>>({
    name: "gas",
    shape: () =>
      of<InputOf<typeof massConcentration>>({
        volumeFraction: "ratio",
        molarMass: "number",
        temperature: "temperature",
        atmosphere: "absolutePressure",
      }),
  });

const report = () => words<WarmingReport>({ ar4: true, ar5: true });

const potential = (): ObjectOf<WarmingPotential> =>
  of<WarmingPotential>({
    value: "number",
    standing: words<WarmingPotential["standing"]>({
      published: true,
      computed: true,
      "from memory": true,
    }),
  });

/** JSON of what `carbonDioxideEquivalent` takes. Source: the library's own format. */
export const carbonDioxideEquivalentInput: Codec<InputOf<typeof carbonDioxideEquivalent>> =
  /* @__PURE__ */ codecOf<InputOf<typeof carbonDioxideEquivalent>>({
    name: "input",
    shape: () =>
      of<InputOf<typeof carbonDioxideEquivalent>>({
        refrigerant: either(
          byDesignation(),
          of<Pick<Refrigerant, "gwp">>({
            gwp: of<Refrigerant["gwp"]>({ ar4: potential(), ar5: potential() }),
          }),
        ),
        charge: "mass",
        report: report(),
      }),
  });

/** JSON of what `blendWarmingPotential` takes. Source: the library's own format. */
export const blendWarmingPotentialInput: Codec<InputOf<typeof blendWarmingPotential>> =
  /* @__PURE__ */ codecOf<InputOf<typeof blendWarmingPotential>>({
    name: "input",
    shape: () =>
      of<InputOf<typeof blendWarmingPotential>>({
        composition: list(of<RefrigerantComponent>({ designation: "text", massPercent: "number" })),
        report: report(),
      }),
  });
