// How do tubes and what they hold travel as JSON?
// Follows the types of line-set. A refrigerant goes by its designation.
// Does not cover charges (line-set-charge.ts) and flows (line-set-flow.ts).
import type {
  AstmB280Choice,
  AstmB280Size,
  AstmB280Temper,
  En12735Size,
  en12735Tube,
  FilledTube,
  fullLineMass,
  fullLineRate,
  identifyLines,
  insulatedDiameter,
  JisH3300Size,
  jisH3300Tube,
  LineContents,
  LinePair,
  LiquidFilledTube,
  lineContents,
  RoundItem,
  smallestSleeve,
  Tube,
  TubeSize,
  tubeVolume,
} from "../line-set/index.ts";
import type { ArgumentsOf, InputOf } from "./arguments-of.ts";
import { type Codec, codecOf } from "./codec.ts";
import { filledTube, liquidFilledTube, standardTube, tubeSize } from "./line-set-parts.ts";
import { either, type FieldsOf, list, of, words } from "./wire-shape.ts";

/** JSON of what `boreArea` takes. Source: the library's own format. */
export const boreAreaInput: Codec<TubeSize> = /* @__PURE__ */ codecOf<TubeSize>({
  name: "tube",
  shape: tubeSize,
});

/** JSON of what `copperMassPerLength` takes. Source: the library's own format. */
export const copperMassPerLengthInput: Codec<TubeSize> = /* @__PURE__ */ codecOf<TubeSize>({
  name: "tube",
  shape: tubeSize,
});

/** JSON of what `insideDiameter` takes. Source: the library's own format. */
export const insideDiameterInput: Codec<TubeSize> = /* @__PURE__ */ codecOf<TubeSize>({
  name: "tube",
  shape: tubeSize,
});

/** JSON of what `tubeVolume` takes. Source: the library's own format. */
export const tubeVolumeInput: Codec<ArgumentsOf<typeof tubeVolume, ["tube", "length"]>> =
  /* @__PURE__ */ codecOf<ArgumentsOf<typeof tubeVolume, ["tube", "length"]>>({
    name: "input",
    shape: () =>
      of<ArgumentsOf<typeof tubeVolume, ["tube", "length"]>>({
        tube: tubeSize(),
        length: "length",
      }),
  });

/** JSON of what `insulatedDiameter` takes. Source: the library's own format. */
export const insulatedDiameterInput: Codec<
  ArgumentsOf<typeof insulatedDiameter, ["tube", "thickness"]>
> = /* @__PURE__ */ codecOf<ArgumentsOf<typeof insulatedDiameter, ["tube", "thickness"]>>({
  name: "input",
  shape: () =>
    of<ArgumentsOf<typeof insulatedDiameter, ["tube", "thickness"]>>({
      tube: tubeSize(),
      thickness: "length",
    }),
});

/** JSON of what `smallestSleeve` takes. Source: the library's own format. */
export const smallestSleeveInput: Codec<
  ArgumentsOf<typeof smallestSleeve, ["items", "clearance"]>
> = /* @__PURE__ */ codecOf<ArgumentsOf<typeof smallestSleeve, ["items", "clearance"]>>({
  name: "input",
  shape: () =>
    of<ArgumentsOf<typeof smallestSleeve, ["items", "clearance"]>>({
      items: list(of<RoundItem>({ label: "text", diameter: "length" })),
      "clearance?": "length",
    }),
});

/**
 * JSON of what `astmB280Tube` takes.
 *
 * Source: the library's own format.
 *
 * @example
 * ```ts
 * import { astmB280Tube } from "hvac-install-math/line-set";
 * import { astmB280TubeInput, astmB280TubeResult } from "hvac-install-math/wire";
 *
 * const choice = astmB280TubeInput.parse('{"size":"1/4","temper":"annealed"}');
 * const tube = astmB280TubeResult.stringify(astmB280Tube(choice));
 * astmB280TubeResult.parse(tube).designation; // => 1/4 in
 * ```
 */
export const astmB280TubeInput: Codec<AstmB280Choice> = /* @__PURE__ */ codecOf<AstmB280Choice>({
  name: "choice",
  shape: () =>
    of<AstmB280Choice>({
      size: words<AstmB280Size>({
        "1/4": true,
        "5/16": true,
        "3/8": true,
        "1/2": true,
        "5/8": true,
        "3/4": true,
        "7/8": true,
        "1-1/8": true,
      }),
      temper: words<AstmB280Temper>({ annealed: true, drawn: true }),
      "wall?": "length",
    }),
});

/** JSON of what `astmB280Tube` gives. Source: the library's own format. */
export const astmB280TubeResult: Codec<Tube> = /* @__PURE__ */ codecOf<Tube>({
  name: "result",
  shape: standardTube,
});

const en12735Sizes: Readonly<Record<En12735Size, true>> = {
  6: true,
  6.35: true,
  7.94: true,
  8: true,
  9.52: true,
  10: true,
  12: true,
  12.7: true,
  15: true,
  15.87: true,
  16: true,
  18: true,
  19.06: true,
  22: true,
  22.2: true,
  28: true,
  28.57: true,
};

/** JSON of what `en12735Tube` takes. Source: the library's own format. */
export const en12735TubeInput: Codec<ArgumentsOf<typeof en12735Tube, ["size", "wall"]>> =
  /* @__PURE__ */ codecOf<ArgumentsOf<typeof en12735Tube, ["size", "wall"]>>({
    name: "input",
    shape: () =>
      of<ArgumentsOf<typeof en12735Tube, ["size", "wall"]>>({
        size: { words: Object.keys(en12735Sizes).map(Number) as En12735Size[] },
        wall: "length",
      }),
  });

/** JSON of what `en12735Tube` gives. Source: the library's own format. */
export const en12735TubeResult: Codec<Tube> = /* @__PURE__ */ codecOf<Tube>({
  name: "result",
  shape: standardTube,
});

/** JSON of what `jisH3300Tube` takes. Source: the library's own format. */
export const jisH3300TubeInput: Codec<ArgumentsOf<typeof jisH3300Tube, ["size", "wall"]>> =
  /* @__PURE__ */ codecOf<ArgumentsOf<typeof jisH3300Tube, ["size", "wall"]>>({
    name: "input",
    shape: () =>
      of<ArgumentsOf<typeof jisH3300Tube, ["size", "wall"]>>({
        size: words<JisH3300Size>({
          "6.35": true,
          "9.52": true,
          "12.70": true,
          "15.88": true,
          "19.05": true,
        }),
        "wall?": "length",
      }),
  });

/** JSON of what `jisH3300Tube` gives. Source: the library's own format. */
export const jisH3300TubeResult: Codec<Tube> = /* @__PURE__ */ codecOf<Tube>({
  name: "result",
  shape: standardTube,
});

/** A tube of a standard, or just its size. Source: none; the library's own type. */
export type AnyTube = Tube | TubeSize;
/** Two tubes to tell apart. Source: none; the library's own type. */
export type TwoTubes = ArgumentsOf<typeof identifyLines<AnyTube>, ["a", "b"]>;
const anyTube = () => either(standardTube(), tubeSize());

/** JSON of what `identifyLines` takes. Source: the library's own format. */
export const identifyLinesInput: Codec<TwoTubes> = /* @__PURE__ */ codecOf<TwoTubes>({
  name: "input",
  shape: () => of<TwoTubes>({ a: anyTube(), b: anyTube() }),
});

/** JSON of what `identifyLines` gives. Source: the library's own format. */
export const identifyLinesResult: Codec<LinePair<AnyTube>> = /* @__PURE__ */ codecOf<
  LinePair<AnyTube>
>({ name: "result", shape: () => of<LinePair<AnyTube>>({ liquid: anyTube(), vapor: anyTube() }) });

/** JSON of what `fullLineRate` takes. Source: the library's own format. */
export const fullLineRateInput: Codec<InputOf<typeof fullLineRate>> = /* @__PURE__ */ codecOf<
  InputOf<typeof fullLineRate>
>({
  name: "filled",
  shape: () => either(of<FilledTube>(filledTube()), of<LiquidFilledTube>(liquidFilledTube())),
});

/** JSON of what `fullLineMass` takes. Source: the library's own format. */
export const fullLineMassInput: Codec<InputOf<typeof fullLineMass>> = /* @__PURE__ */ codecOf<
  InputOf<typeof fullLineMass>
>({
  name: "filled",
  shape: () => {
    type Length = Omit<InputOf<typeof fullLineMass>, keyof FilledTube | keyof LiquidFilledTube>;
    const length: FieldsOf<Length> = { length: "length" };
    return either(
      of<FilledTube & Length>({ ...filledTube(), ...length }),
      of<LiquidFilledTube & Length>({ ...liquidFilledTube(), ...length }),
    );
  },
});

/** JSON of what `lineContents` takes. Source: the library's own format. */
export const lineContentsInput: Codec<InputOf<typeof lineContents>> = /* @__PURE__ */ codecOf<
  InputOf<typeof lineContents>
>({
  name: "input",
  shape: () =>
    of<InputOf<typeof lineContents>>({
      liquid: either(of<FilledTube>(filledTube()), of<LiquidFilledTube>(liquidFilledTube())),
      vapor: of<FilledTube>(filledTube()),
      length: "length",
    }),
});

/** JSON of what `lineContents` gives. Source: the library's own format. */
export const lineContentsResult: Codec<LineContents> = /* @__PURE__ */ codecOf<LineContents>({
  name: "result",
  shape: () => of<LineContents>({ liquid: "mass", vapor: "mass", total: "mass" }),
});
