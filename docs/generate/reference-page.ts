// Which fluid was compared with how many reference values, and how far off is the worst?
// Every state of the fluids that have no pressure-temperature page of their own stands here too.
// Does not cover the states of the refrigerants: pressure-temperature-page.ts.
import { figure } from "./figures.ts";
import { count, type Page, page, table, wholeWidth } from "./page.ts";
import { bounds, type FluidStates, idOf, largest, type State } from "./reference-rows.ts";

/** The page of all fluids. */
export function referencePage(fluids: readonly FluidStates[]): Page {
  return page(
    "validation/reference-values.md",
    "Refrigerants against reference values",
    [
      "# Refrigerants against reference values",
      wholeWidth,
      referenceSummary(fluids),
      "The model is the published equation of state as `property-model` computes it. The curves are the Chebyshev series that apps import. “Component” fluids are parts of blends and have no curves; “-mix” is the mixture model of a blend whose curves come from a pseudo-pure equation. A figure in bold is beyond what it may be.",
      table(
        [
          "fluid",
          "states",
          "model, all four",
          "curve, pressure",
          "curve, density",
          "curve, temperature in K",
        ],
        [...fluids].sort((a, b) => worst(b) - worst(a)).map(summaryRow),
        ["left", "right", "right", "right", "right", "right"],
      ),
      `May be: model ${bounds.model}, curve ${bounds.pressure} in pressure, ${bounds.density} in density, ${figure(bounds.temperature)} K in temperature.`,
      "## States of the fluids without a table of their own",
      ...fluids
        .filter(({ refrigerant }) => refrigerant === undefined)
        .flatMap(({ id, states }) => [`### ${id}`, stateTable(states)]),
    ],
    { search: "title" },
  );
}

/** One paragraph that counts them and names the failures. */
export function referenceSummary(fluids: readonly FluidStates[]): string {
  const states = fluids.flatMap((fluid) => fluid.states);
  const failing = fluids.filter((fluid) => worst(fluid) > 1).map(({ id }) => id);
  const model = largest(states, (state) => state.model) ?? 0;
  const verdict =
    failing.length === 0 ? "None fails." : `**Beyond their bounds: ${failing.join(", ")}.**`;
  return `${count(states.length, "state")} of ${count(fluids.length, "fluid")}, four values each, computed elsewhere from the same published equations: by CoolProp (commit ea27c6394887) and by a second, independent solver. ${verdict} The worst relative deviation of the model is ${figure(model, 1)}. This shows that the equations are computed rightly, not that they are true: the papers' own uncertainty is thousands of times larger and stands on each refrigerant's page.`;
}

/** The states of one fluid as a table, the worst first. */
export function stateTable(states: readonly State[]): string {
  const curves = states.some(({ shipped }) => shipped !== undefined);
  return table(
    [
      "T, K",
      "bubble p, kPa",
      "dew p, kPa",
      "liquid ρ, kg/m³",
      "vapor ρ, kg/m³",
      "model off by",
      ...(curves ? ["curve, p", "curve, ρ", "curve, T in K"] : []),
    ],
    [...states]
      .sort((a, b) => shareOf(b) - shareOf(a))
      .map((state) => [
        figure(state.temperature),
        figure(state.bubble / 1e3, 10),
        figure(state.dew / 1e3, 10),
        figure(state.liquid, 10),
        figure(state.vapor, 10),
        off(state.model, bounds.model),
        ...(curves ? shippedCells(state) : []),
      ]),
    Array.from({ length: 9 }, () => "right" as const),
  );
}

function shippedCells({ shipped }: State): string[] {
  if (shipped === undefined) return ["–", "–", "–"];
  return [
    off(shipped.pressure, bounds.pressure),
    off(shipped.density, bounds.density),
    off(shipped.temperature, bounds.temperature),
  ];
}

function summaryRow({ id, refrigerant, states }: FluidStates): string[] {
  const name = refrigerant
    ? `[${refrigerant.designation}](../pressure-temperature/${idOf(refrigerant.designation)}.md)`
    : id;
  return [
    name,
    String(states.length),
    off(
      largest(states, (state) => state.model),
      bounds.model,
    ),
    off(
      largest(states, (state) => state.shipped?.pressure),
      bounds.pressure,
    ),
    off(
      largest(states, (state) => state.shipped?.density),
      bounds.density,
    ),
    off(
      largest(states, (state) => state.shipped?.temperature),
      bounds.temperature,
    ),
  ];
}

/** A deviation to one digit, bold when it is beyond its bound. */
function off(deviation: number | undefined, bound: number): string {
  if (deviation === undefined) return "–";
  const text = figure(deviation, 1);
  return deviation > bound ? `**${text}**` : text;
}

function shareOf({ model, shipped }: State): number {
  return Math.max(
    model / bounds.model,
    (shipped?.pressure ?? 0) / bounds.pressure,
    (shipped?.density ?? 0) / bounds.density,
    (shipped?.temperature ?? 0) / bounds.temperature,
  );
}

function worst({ states }: FluidStates): number {
  return Math.max(...states.map(shareOf));
}
