// Which refrigerants does the library carry, and what is known of each besides its curves?
// Follows ANSI/ASHRAE Standard 34 (designation, composition, safety class; its tables as the
// ASHRAE Handbook, Fundamentals, prints them, R-452B and R-454C from memory).
// Does not cover curves; those come from property-model by main.ts.
import type { SourceId } from "../../sources/bibliography.ts";
import type { Refrigerant } from "../refrigerant.ts";
import { componentOf, paperOf } from "./component.ts";

/** What is written by hand for each refrigerant. */
export interface Definition {
  /** Export name, also the file name in lower case. */
  readonly id: string;
  readonly designation: string;
  readonly name: string;
  readonly safetyClass: Refrigerant["safetyClass"];
  readonly model: Refrigerant["model"];
  /** Mass per cent by id of the component. */
  readonly composition: Readonly<Record<string, number>>;
  /** Critical point of the mixture model, K and Pa; the other models carry their own. */
  readonly mixtureCritical?: readonly [temperature: number, pressure: number];
  /** Highest temperature of the curves as a share of the critical one. */
  readonly reach: number;
  readonly sources: readonly SourceId[];
  readonly weakness: string;
}

type Class = Refrigerant["safetyClass"];

/** A pure substance; its curves reach to 0.999 of the critical temperature. */
function pure(id: string, name: string, safetyClass: Class, weakness: string): Definition {
  return {
    id,
    designation: componentOf(id).designation,
    name,
    safetyClass,
    model: "pure",
    composition: { [id]: 100 },
    reach: 0.999,
    sources: [paperOf(id)],
    weakness,
  };
}

/** A blend with a published pseudo-pure equation, which is what handbook tables print. */
function pseudoPure(
  id: string,
  composition: Definition["composition"],
  weakness: string,
): Definition {
  return {
    id,
    designation: id.replace("R", "R-"),
    name: "blend",
    safetyClass: "A1",
    model: "pseudo-pure",
    composition,
    reach: 0.995,
    sources: [paperOf(id)],
    weakness,
  };
}

/** A blend by the mixture model; its curves end at 0.98 of the critical temperature. */
function mixed(
  id: string,
  safetyClass: Class,
  composition: Definition["composition"],
  mixtureCritical: readonly [temperature: number, pressure: number],
  papers: readonly SourceId[],
  weakness: string,
  reach = 0.98,
): Definition {
  return {
    id,
    designation: id.replace("R", "R-"),
    name: "blend",
    safetyClass,
    model: "mixture",
    composition,
    mixtureCritical,
    reach,
    sources: [...Object.keys(composition).map(paperOf), ...papers],
    weakness,
  };
}

/** Of these, composition and safety class are remembered: the tables of the Handbook that were read end before them. */
export const remembered: readonly string[] = ["R452B", "R454C"];

const fine = "Typically 0.1 % in pressure and density; less sure near the critical point.";
const pseudo =
  "0.5 % in bubble and dew pressure, 0.1 % in density (paper); nothing between the two.";
const blend = "About 0.5 % in pressure; less sure near the critical point.";
const older =
  "About 0.5 % in pressure; tables printed before the 2023 mixture model differ by up to 0.9 %.";

// The last column of the mixtures is the critical point of the mixture model (K, Pa).
// biome-ignore format: kept as a table
export const definitions: readonly Definition[] = [
  pure("R22", "chlorodifluoromethane", "A1", fine),
  pure("R32", "difluoromethane", "A2L", "0.02 % in vapor pressure, 0.05 % in liquid density (paper)."),
  pure("R134a", "1,1,1,2-tetrafluoroethane", "A1", fine),
  pure("R290", "propane", "A3", fine),
  pure("R600a", "isobutane", "A3", fine),
  pure("R717", "ammonia", "B2L", fine),
  pure("R744", "carbon dioxide", "A1", "Begins at the triple point, -56.56 °C; above 30.98 °C there is no saturation."),
  pure("R1233zdE", "trans-1-chloro-3,3,3-trifluoropropene", "A1", fine),
  pure("R1234yf", "2,3,3,3-tetrafluoropropene", "A2L", fine),
  pure("R1234zeE", "trans-1,3,3,3-tetrafluoropropene", "A2L", fine),
  pseudoPure("R404A", { R125: 44, R143a: 52, R134a: 4 }, pseudo),
  pseudoPure("R407C", { R32: 23, R125: 25, R134a: 52 }, pseudo),
  pseudoPure("R410A", { R32: 50, R125: 50 }, pseudo),
  pseudoPure("R507A", { R125: 50, R143a: 50 }, pseudo),
  mixed("R407A", "A1", { R32: 20, R125: 40, R134a: 40 }, [355.396867, 4513894.305], ["lemmon-jacobsen-2004"], blend),
  mixed("R407F", "A1", { R32: 30, R125: 30, R134a: 40 }, [355.7537022, 4749227.884], ["lemmon-jacobsen-2004"], blend),
  mixed("R448A", "A1", { R32: 26, R125: 26, R1234yf: 20, R134a: 21, R1234zeE: 7 }, [355.9409032, 4605180.932], ["lemmon-jacobsen-2004", "bell-2022", "bell-2023", "bell-2025"], "About 0.5 % in pressure; the pair R-125/R-1234ze(E) has reducing parameters only."),
  mixed("R449A", "A1", { R32: 24.3, R125: 24.7, R1234yf: 25.3, R134a: 25.7 }, [355.6353008, 4516517.743], ["lemmon-jacobsen-2004", "bell-2022", "bell-2023"], blend),
  mixed("R450A", "A1", { R134a: 42, R1234zeE: 58 }, [378.5292475, 3897103.147], ["bell-2022"], blend),
  mixed("R452A", "A1", { R32: 11, R125: 59, R1234yf: 30 }, [348.2489669, 3983776.653], ["lemmon-jacobsen-2004", "bell-2023"], "About 0.5 % in pressure; the model has spurious solutions near the critical point.", 0.97),
  mixed("R452B", "A2L", { R32: 67, R125: 7, R1234yf: 26 }, [350.3198153, 5246318.153], ["lemmon-jacobsen-2004", "bell-2023"], older),
  mixed("R454A", "A2L", { R32: 35, R1234yf: 65 }, [356.7142762, 4719952.054], ["bell-2023"], older),
  mixed("R454B", "A2L", { R32: 68.9, R1234yf: 31.1 }, [351.4302134, 5304109.387], ["bell-2023"], older),
  mixed("R454C", "A2L", { R32: 21.5, R1234yf: 78.5 }, [360.7933599, 4370459.634], ["bell-2023"], older),
  mixed("R513A", "A1", { R1234yf: 56, R134a: 44 }, [368.5606762, 3655094.009], ["bell-2022"], blend),
];
