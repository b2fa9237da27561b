// How do the run of a line set, its stock length and the opening that it goes through travel as JSON?
// Follows the types of line-set.
// Does not cover tubes, charges and flows: line-set-tubes.ts, line-set-charge.ts, line-set-flow.ts.
import type {
  LineFitAssessment,
  LineFitInput,
  LineOpening,
  LineRunAssessment,
  LineRunInput,
  RoundItem,
  RunLimits,
  StockLengthAssessment,
  StockLengthInput,
} from "../line-set/index.ts";
import { type Codec, codecOf } from "./codec.ts";
import { verdict } from "./verdict.ts";
import { either, list, of, words } from "./wire-shape.ts";

type Sleeve = Extract<LineOpening, { readonly diameter: unknown }>;
type Duct = Exclude<LineOpening, Sleeve>;

/** JSON of what `assessLineFit` takes. Source: the library's own format. */
export const assessLineFitInput: Codec<LineFitInput> = /* @__PURE__ */ codecOf<LineFitInput>({
  name: "input",
  shape: () =>
    of<LineFitInput>({
      items: list(of<RoundItem>({ label: "text", diameter: "length" })),
      opening: either(
        of<Sleeve>({ diameter: "length" }),
        of<Duct>({ width: "length", height: "length" }),
      ),
      "clearance?": "length",
    }),
});

/** JSON of what `assessLineFit` gives. Source: the library's own format. */
export const assessLineFitResult: Codec<LineFitAssessment> =
  /* @__PURE__ */ codecOf<LineFitAssessment>({
    name: "result",
    shape: () =>
      of<LineFitAssessment>({
        ...verdict(),
        layout: list(
          of<LineFitAssessment["layout"][number]>({ label: "text", x: "length", y: "length" }),
        ),
        fill: "number",
      }),
  });

/** JSON of what `assessLineRun` takes. Source: the library's own format. */
export const assessLineRunInput: Codec<LineRunInput> = /* @__PURE__ */ codecOf<LineRunInput>({
  name: "input",
  shape: () =>
    of<LineRunInput>({
      length: "length",
      lift: "length",
      outdoorUnit: words<LineRunInput["outdoorUnit"]>({ above: true, below: true, level: true }),
      "bends?": "number",
      "standardUncertainty?": "length",
      limits: of<RunLimits>({
        "maximumLength?": "length",
        "minimumLength?": "length",
        "maximumLift?": "length",
        "maximumLiftOutdoorAbove?": "length",
        "maximumBends?": "number",
        "bendEquivalentLength?": "length",
        "oilTraps?": of<NonNullable<RunLimits["oilTraps"]>>({ above: "length", spacing: "length" }),
        "extraOil?": of<NonNullable<RunLimits["extraOil"]>>({
          beyond: "length",
          per: "length",
          volume: "volume",
        }),
      }),
    }),
});

/** JSON of what `assessLineRun` gives. Source: the library's own format. */
export const assessLineRunResult: Codec<LineRunAssessment> =
  /* @__PURE__ */ codecOf<LineRunAssessment>({
    name: "result",
    shape: () =>
      of<LineRunAssessment>({
        ...verdict(),
        equivalentLength: "length",
        oilTraps: "number",
        extraOil: "volume",
      }),
  });

/** JSON of what `chooseStockLength` takes. Source: the library's own format. */
export const chooseStockLengthInput: Codec<StockLengthInput> =
  /* @__PURE__ */ codecOf<StockLengthInput>({
    name: "input",
    shape: () =>
      of<StockLengthInput>({
        run: "length",
        "slack?": "length",
        "serviceLoop?": "length",
        stock: list("length"),
        cuttable: "flag",
        "minimumLength?": "length",
        "maximumLength?": "length",
      }),
  });

/** JSON of what `chooseStockLength` gives. Source: the library's own format. */
export const chooseStockLengthResult: Codec<StockLengthAssessment> =
  /* @__PURE__ */ codecOf<StockLengthAssessment>({
    name: "result",
    shape: () =>
      of<StockLengthAssessment>({
        ...verdict(),
        neededLength: "length",
        "stockLength?": "length",
        "surplus?": "length",
        "surplusUse?": words<NonNullable<StockLengthAssessment["surplusUse"]>>({
          cut: true,
          coil: true,
          none: true,
        }),
        "installedLength?": "length",
      }),
  });
