// How do a nameplate's figures and the ceilings of a protective device travel as JSON?
// Follows the types of circuit-protection. Does not cover the whole circuit: circuit-protection.ts.
import type {
  assessNameplate,
  CompressorProtection,
  compressorProtection,
  Load,
  NameplateAssessment,
  NameplateFromParts,
  NameplateMode,
  NameplateStandard,
  ProtectionCeiling,
  TripBand,
  tripBand,
} from "../circuit-protection/index.ts";
import type { InputOf } from "./arguments-of.ts";
import { loads, modes, rules, tripCurve } from "./circuit-parts.ts";
import { type Codec, codecOf } from "./codec.ts";
import { citation, statement, verdict } from "./verdict.ts";
import { list, type ObjectOf, of, words } from "./wire-shape.ts";

const fromParts = (): ObjectOf<NameplateFromParts> =>
  of<NameplateFromParts>({
    minimumCircuitAmpacity: "current",
    maximumOvercurrentProtection: "current",
    disconnectRating: "current",
    modes: list(
      of<NameplateMode>({
        mode: words<NameplateMode["mode"]>({ ...modes, any: true }),
        minimumCircuitAmpacity: "current",
        calculatedProtection: "current",
        maximumOvercurrentProtection: "current",
        ratedLoadCurrent: "current",
        steps: list(statement()),
      }),
    ),
    assumptions: list(statement()),
    cautions: list(statement()),
    sources: list(citation()),
  });

/** JSON of what `nameplateFromParts` takes. Source: the library's own format. */
export const nameplateFromPartsInput: Codec<readonly Load[]> = /* @__PURE__ */ codecOf<
  readonly Load[]
>({ name: "loads", shape: loads });

/** JSON of what `nameplateFromParts` gives. Source: the library's own format. */
export const nameplateFromPartsResult: Codec<NameplateFromParts> =
  /* @__PURE__ */ codecOf<NameplateFromParts>({ name: "result", shape: fromParts });

/** JSON of what `minimumCircuitAmpacity` takes. Source: the library's own format. */
export const minimumCircuitAmpacityInput: Codec<readonly Load[]> = /* @__PURE__ */ codecOf<
  readonly Load[]
>({ name: "loads", shape: loads });

/** JSON of what `maximumOvercurrentProtection` takes. Source: the library's own format. */
export const maximumOvercurrentProtectionInput: Codec<readonly Load[]> = /* @__PURE__ */ codecOf<
  readonly Load[]
>({ name: "loads", shape: loads });

/** JSON of what `assessNameplate` takes. Source: the library's own format. */
export const assessNameplateInput: Codec<InputOf<typeof assessNameplate>> = /* @__PURE__ */ codecOf<
  InputOf<typeof assessNameplate>
>({
  name: "input",
  shape: () =>
    of<InputOf<typeof assessNameplate>>({
      loads: loads(),
      minimumCircuitAmpacity: "current",
      maximumOvercurrentProtection: "current",
      "printedTo?": "current",
      "standard?": words<NameplateStandard>({ "UL 1995": true, "UL 60335-2-40": true }),
    }),
});

/** JSON of what `assessNameplate` gives. Source: the library's own format. */
export const assessNameplateResult: Codec<NameplateAssessment> =
  /* @__PURE__ */ codecOf<NameplateAssessment>({
    name: "result",
    shape: () =>
      of<NameplateAssessment>({
        ...verdict(),
        "cause?": words<NonNullable<NameplateAssessment["cause"]>>({
          "ampacity-too-low": true,
          "protection-too-high": true,
        }),
        calculated: fromParts(),
      }),
  });

/** JSON of what `compressorProtection` takes. Source: the library's own format. */
export const compressorProtectionInput: Codec<InputOf<typeof compressorProtection>> =
  /* @__PURE__ */ codecOf<InputOf<typeof compressorProtection>>({
    name: "input",
    shape: () => of<InputOf<typeof compressorProtection>>({ rules: rules(), loads: loads() }),
  });

const ceiling = (): ObjectOf<ProtectionCeiling> =>
  of<ProtectionCeiling>({ calculated: "current", rating: "current" });

/** JSON of what `compressorProtection` gives. Source: the library's own format. */
export const compressorProtectionResult: Codec<CompressorProtection> =
  /* @__PURE__ */ codecOf<CompressorProtection>({
    name: "result",
    shape: () => of<CompressorProtection>({ normal: ceiling(), "ifItWillNotStart?": ceiling() }),
  });

/** JSON of what `tripBand` takes. Source: the library's own format. */
export const tripBandInput: Codec<InputOf<typeof tripBand>> = /* @__PURE__ */ codecOf<
  InputOf<typeof tripBand>
>({
  name: "input",
  shape: () =>
    of<InputOf<typeof tripBand>>({ rules: rules(), rating: "current", curve: tripCurve() }),
});

/** JSON of what `tripBand` gives. Source: the library's own format. */
export const tripBandResult: Codec<TripBand> = /* @__PURE__ */ codecOf<TripBand>({
  name: "result",
  shape: () =>
    of<TripBand>({
      noTrip: "current",
      trip: "current",
      instantaneousFrom: "current",
      instantaneousTo: "current",
    }),
});
