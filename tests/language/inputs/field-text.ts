// Texts that are refused, one for each thing that can be said of a text; and one without a unit for every kind.
import type * as fieldText from "hvac-install-math/field-text";
import { type Kind, percent } from "hvac-install-math/quantity";
import type { Inputs } from "../../faults/catalogue.ts";
import { allUnits } from "../../field-text/catalogue.ts";

type Call = Parameters<typeof fieldText.parseQuantity>;
const as = (kind: Kind, ...texts: readonly string[]) =>
  texts.map((text) => [text, { kind }] as never as Call);
const within = (locale: string, ...texts: readonly string[]) =>
  texts.map((text) => [text, { kind: "length", locale }] as Call);

const texts: readonly Call[] = [
  ...as("gaugePressure", "118 psi", "20 inHg vac", "118 psia", "118 psig + 2 psig", "2 × 118 psig"),
  ...as("gaugePressure", "118 psig + 2 psia", "118 psig − 2 psia", "118/355 psig"),
  ...as("absolutePressure", "118 psig", "-3 psia", "118 lb"),
  ...as("temperature", "70 °F + 5 °F", "70 °F − 5 °F", "72°", "72", "300 k"),
  ...as("temperatureDifference", "95 °F − 20 °C", "5 °F"),
  ...as(
    "length",
    "12 ft-6 in",
    "12 ft 14 in",
    "12.5 ft 6 in",
    "6 ft / 1/2",
    "1-1/4 × 2",
    "1−1/4 in",
  ),
  ...as(
    "length",
    "1/2/3 in",
    "12 ft + 9",
    "12 6 in",
    "1 234 mm",
    "1,234 mm",
    "1 234,5 mm",
    "",
    "5",
  ),
  ...as("length", "ft", "5 ft +", "(5 ft", "5 ft)", "2(3 ft)", "(3 ft) in", "--5 ft", "5. ft"),
  ...as("length", "1.2.3 ft", "1 5/4 in", "1/0 in", "1e400 ft", "1e300 ft × 1e300", "5 furlongs"),
  ...as(
    "length",
    "5 ft 3 lb",
    "5 ft + 3 lb",
    "5 ft × 3 ft",
    "5 ft × 3 s",
    "5 ft / 3 lb",
    "3 / (5 ft)",
  ),
  ...as(
    "length",
    "sin(3 ft)",
    "x",
    `5 ft${" ".repeat(197)}`,
    `${"(".repeat(11)}1 ft${")".repeat(11)}`,
  ),
  ...within("de", "1.234 mm", "0.5 mm"),
  ...within("fr", "0.5 mm", "0 123 mm"),
  ...within("de-CH", "1'234 mm"),
  [`3-1/2`, { kind: "ratio", defaultUnit: percent }] as never,
];
/** A text of each kind where another one is wanted. */
const ofEachKind = [...new Map(allUnits.map(({ kind, symbol }) => [kind, symbol]))].flatMap(
  ([kind, symbol]) => as(kind === "mass" ? "length" : "mass", `1 ${symbol}`),
);

export const inputs: Pick<Inputs<typeof fieldText>, "parseQuantity"> = {
  parseQuantity: [...texts, ...ofEachKind],
};
