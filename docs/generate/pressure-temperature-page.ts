// What does a pressure-temperature chart of this refrigerant say at sea level, and how sure is it?
// Tables by the library itself for the U.S. Standard Atmosphere; the equation's paper is named on the page.
// Does not cover other altitudes: the guide of refrigerants says how to make such a table.
import type { Citation } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { saturationPlot } from "hvac-install-math/plots";
import { degC, degF, type Quantity, standardAtmosphere } from "hvac-install-math/quantity";
import type { Refrigerant } from "hvac-install-math/refrigerants";
import { sourceById } from "hvac-install-math/sources";
import { chartTables, hasGlide } from "./chart-tables.ts";
import { figure } from "./figures.ts";
import { count, type Page, page, plain, table } from "./page.ts";
import { stateTable } from "./reference-page.ts";
import { bounds, type FluidStates, idOf, largest } from "./reference-rows.ts";

/** A fluid that ships with the library. */
export type ShippedFluid = FluidStates & { readonly refrigerant: Refrigerant };

/** The page of one refrigerant. */
export function pressureTemperaturePage({ refrigerant, states }: ShippedFluid): Page {
  const { designation, composition, sources } = refrigerant;
  const parts = composition.map((one) => `${one.massPercent} % ${one.designation}`).join(", ");
  const [inchPound, si] = chartTables(refrigerant);
  const glide = hasGlide(refrigerant)
    ? "Bubble is where the liquid begins to boil: subcooling is measured from it. Dew is where the vapor begins to condense: superheat is measured from it."
    : "Bubble and dew are one: the table has one column for superheat and subcooling.";
  const curve = (of: "pressure" | "density" | "temperature") =>
    figure(largest(states, ({ shipped }) => shipped?.[of]) ?? 0, 1);
  return page(
    `pressure-temperature/${idOf(designation)}.md`,
    designation,
    [
      `# ${plain(designation)}: pressure and temperature`,
      `${refrigerant.name === "blend" ? `A blend by mass of ${parts}` : plain(refrigerant.name)}; safety class ${refrigerant.safetyClass} (from memory of ANSI/ASHRAE Standard 34). ${glide}`,
      "Gauge pressures **at sea level**: atmosphere 101.325 kPa (14.696 psia), U.S. Standard Atmosphere, 1976. Below zero the system is under the atmosphere. A gauge higher up reads more for the same temperature: at 5000 ft about 2.5 psi (17 kPa). [Make the table for your altitude](../../guides/refrigerants.md#a-table-for-this-place).",
      `<div class="plot">${saturationPlot(refrigerant, { language: english, system: "inch-pound", from: degF(-40), to: lowerOf(refrigerant.range.max, degF(150)), atmosphere: standardAtmosphere, width: 640 })}</div>`,
      "## Fahrenheit and psi",
      inchPound,
      "## Celsius and kilopascal",
      si,
      "## Range and accuracy",
      [
        `- **Range** of the functions: ${both(refrigerant.range.min)} to ${both(refrigerant.range.max)}. Beyond, an \`OutOfRangeError\` states it. Critical point ${both(refrigerant.criticalPoint.temperature)}.`,
        `- **Equation of state** (${refrigerant.model}): ${sources.map(cited).join("; ")}.`,
        `- **Against nature**: ${plain(refrigerant.weakness)}`,
        `- **Against the model**: at ${count(states.length, "reference state")} the curves are off by at most ${curve("pressure")} of the pressure, ${curve("density")} of a density and ${curve("temperature")} K.`,
        "- Nominal composition, no oil, no air. The plate and the manufacturer's chart come first where they differ.",
      ].join("\n"),
      "## Every reference state",
      `Computed elsewhere from the same equations ([how](../how-do-we-know.md#refrigerants-against-reference-values)); the worst first. May be off: model ${bounds.model}; curve ${bounds.pressure} in pressure, ${bounds.density} in density, ${figure(bounds.temperature)} K in temperature.`,
      stateTable(states),
    ],
    { search: "title" },
  );
}

/** The page that the pages of the refrigerants hang below. */
export function pressureTemperatureIndex(fluids: readonly ShippedFluid[]): Page {
  const file = ({ refrigerant }: ShippedFluid) =>
    `pressure-temperature/${idOf(refrigerant.designation)}.md`;
  return page(
    "pressure-temperature.md",
    "Pressure and temperature",
    [
      "# Pressure-temperature tables",
      "Bubble and dew pressure of every refrigerant of the library at sea level, in °F with psi and °C with kPa, with a plot, the source of the equation and its accuracy. In an app, `pressureTemperatureTable` makes them for any altitude, step and unit.",
      table(
        ["refrigerant", "class", "model", "from", "to"],
        fluids.map((fluid) => {
          const { designation, safetyClass, model, range } = fluid.refrigerant;
          const link = `[${plain(designation)}](${file(fluid)})`;
          return [link, safetyClass, model, both(range.min), both(range.max)];
        }),
      ),
    ],
    {
      children: Object.fromEntries(
        fluids.map((fluid) => [fluid.refrigerant.designation, file(fluid)]),
      ),
    },
  );
}

function lowerOf<T>(a: T, b: T): T {
  return a < b ? a : b;
}

function both(temperature: Quantity<"temperature">): string {
  return `${temperature.in(degC).toFixed(1)} °C (${temperature.in(degF).toFixed(1)} °F)`;
}

function cited({ source, clause }: Citation): string {
  const { title, edition } = sourceById(source);
  return `${plain(title)}, ${plain(edition)}${clause ? `, ${plain(clause)}` : ""}`;
}
