// Which forms do tubes, what fills them, and charge rates have on the wire?
// Follows the types of line-set. Does not cover whole inputs and results: the files line-set-….ts.
import type {
  ChargeRate,
  FilledTube,
  LiquidFilledTube,
  MassPerStep,
  Tube,
  TubeFlow,
  TubeSize,
} from "../line-set/index.ts";
import { byDesignation } from "./refrigerant-names.ts";
import { citation } from "./verdict.ts";
import { either, type FieldsOf, type FormOf, list, type ObjectOf, of } from "./wire-shape.ts";

/** Outside diameter and wall. */
export const tubeSize = (): ObjectOf<TubeSize> =>
  of<TubeSize>({ outsideDiameter: "length", wall: "length" });

/** A tube of a standard. */
export const standardTube = (): ObjectOf<Tube> =>
  of<Tube>({
    designation: "text",
    outsideDiameter: "length",
    wall: "length",
    sources: list(citation()),
  });

/** A tube full of a fluid of one density. */
export const filledTube = (): FieldsOf<FilledTube> => ({ tube: tubeSize(), density: "density" });

/** A tube full of a refrigerant's saturated liquid. */
export const liquidFilledTube = (): FieldsOf<LiquidFilledTube> => ({
  tube: tubeSize(),
  refrigerant: byDesignation(),
  temperature: "temperature",
});

/** A flow through a tube. */
export const tubeFlow = (): FieldsOf<TubeFlow> => ({
  tube: tubeSize(),
  massFlow: "massFlow",
  density: "density",
});

/** Mass per length, or a mass for every so many feet or metres. */
export const chargeRate = (): FormOf<ChargeRate> =>
  either("massPerLength", of<MassPerStep>({ mass: "mass", per: "length" }));
