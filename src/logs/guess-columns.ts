// What does each column hold? The kind and unit that its title names, with what the title leaves open.
// Common practice of loggers, no source; the names are those of read-quantity.
// Does not cover titles without a unit: their columns are not offered.
import type { Kind } from "../quantity/kinds.ts";
import type { Findings, Layout } from "./guess-cells.ts";
import type { AnyUnit, ColumnPlace } from "./log-format.ts";
import { unitNamed, writtenKinds } from "./reading-units.ts";
import { filled } from "./row-taker.ts";
import { say } from "./statements.ts";

/** A column with what its title says. */
export interface TitledColumn {
  readonly at: number;
  readonly place: ColumnPlace;
  readonly title: string;
  readonly kind?: Kind | undefined;
  readonly unit?: AnyUnit | undefined;
  /** False where a pressure does not state its zero. */
  readonly zero?: boolean | undefined;
}

/** Every column with the unit in its title. */
export function titledColumns({ titles, unitTitles, rows }: Layout): TitledColumn[] {
  const width = Math.max(0, ...rows.map(({ cells }) => filled(cells)));
  return Array.from({ length: width }, (_, at) => {
    const own = titles[at] ?? "";
    const unique = own !== "" && titles.filter((other) => other === own).length === 1;
    const column = { at, place: unique ? own : at + 1, title: own || String(at + 1) };
    return { ...column, ...unitIn(unitTitles[at] ?? "") };
  });
}

/** The unit of a title: in brackets, behind the last comma, slash or underscore, or its last word. */
function unitIn(title: string): Pick<TitledColumn, "kind" | "unit" | "zero"> {
  const words = title.split(/\s+/);
  const names = [
    ...[...title.matchAll(/[[({]([^\])}]+)[\])}]/g)].map(([, inside = ""]) => inside).reverse(),
    ...title
      .split(/[,/_:]\s*/)
      .slice(1)
      .reverse(),
    words.slice(-2).join(" "),
    words.slice(-1).join(""),
  ];
  for (const name of names) {
    const [found] = kindsOf(name);
    if (found) return found;
  }
  return {};
}

function kindsOf(name: string): { kind: Kind; unit: AnyUnit; zero: boolean }[] {
  return writtenKinds.flatMap((kind) => {
    const found = unitNamed(name, kind);
    return found ? [{ kind, unit: found.unit as unknown as AnyUnit, zero: found.zero }] : [];
  });
}

/** The names that rows give to columns of a kind, where the caller asks for none. */
const usualNames: Readonly<Partial<Record<Kind, string>>> = {
  temperature: "temperature",
  gaugePressure: "pressure",
  absolutePressure: "pressure",
  voltage: "voltage",
  current: "current",
  power: "power",
  ratio: "ratio",
};

/** The column for each name that is wanted, or for each kind that is there. */
export function chooseColumns(
  columns: readonly TitledColumn[],
  wanted: Readonly<Record<string, Kind>> | undefined,
  { reasons, doubts }: Findings,
): Record<string, { column: ColumnPlace; unit: AnyUnit }> {
  const chosen: Record<string, { column: ColumnPlace; unit: AnyUnit }> = {};
  const take = (name: string, { title, place, zero }: TitledColumn, unit: AnyUnit) => {
    const said = { column: { verbatim: title }, unit: { verbatim: unit.symbol } };
    if (zero === false) doubts.push(say("logs.zero-not-stated", said));
    else reasons.push(say("logs.unit", said));
    chosen[name] = { column: place, unit };
  };
  for (const [name, kind] of Object.entries(wanted ?? {})) {
    const fits = columns.flatMap((column) => {
      const { unit, zero } = column;
      if (!unit) return [];
      if (column.kind === kind) return [{ column, unit }];
      const named = zero ? undefined : unitNamed(unit.difference.symbol, kind);
      return named ? [{ column, unit: named.unit as unknown as AnyUnit }] : [];
    });
    const [first] = fits;
    if (first) take(name, first.column, first.unit);
    else doubts.push(say("logs.column-missing", { name: { verbatim: name } }));
    if (fits.length > 1) {
      const titles = fits.map(({ column }) => ({ verbatim: column.title }));
      doubts.push(say("logs.two-columns", { name: { verbatim: name }, columns: titles }));
    }
  }
  if (wanted) return chosen;
  for (const column of columns) {
    const { kind, unit, title } = column;
    const usual = kind && usualNames[kind];
    if (!usual || !unit) {
      if (!kind) doubts.push(say("logs.unit-unknown", { column: { verbatim: title } }));
      continue;
    }
    let name = usual;
    for (let i = 2; Object.hasOwn(chosen, name); i++) name = `${usual}${i}`;
    take(name, column, unit);
  }
  return chosen;
}
