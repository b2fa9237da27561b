// Reads a pasted log: a header that names time and pressure with their units, such as
// `elapsed [s],pressure [micron]`, then a row for each reading. Lines that start with # are remarks.
import { typedUnits } from "hvac-install-math/field-text";
import { isInvalidInputError, type Kind, type Unit } from "hvac-install-math/quantity";
import type { DecayReading } from "hvac-install-math/vacuum-decay";

/** What is wrong with a line, and where it stands in the text. */
export interface LogProblem {
  readonly problem: string;
  readonly place: readonly [from: number, to: number];
}

/** The readings, or the first line that cannot be read. */
export function readLog(text: string): readonly DecayReading[] | LogProblem {
  const readings: DecayReading[] = [];
  let units: readonly [Unit<"duration">, Unit<"absolutePressure">] | undefined;
  let from = 0;
  for (const [i, line] of text.split("\n").entries()) {
    const place = [from, from + line.length] as const;
    const wrong = (problem: string) => ({ problem: `Line ${i + 1}: ${problem}`, place });
    from += line.length + 1;
    if (line.trim() === "" || line.startsWith("#")) continue;
    const cells = line.split(/[,;\t]/).map((cell) => cell.trim());
    if (!units) {
      const time = unitIn(cells[0], "duration");
      const pressure = unitIn(cells[1], "absolutePressure");
      if (!time || !pressure)
        return wrong("name both columns, as in elapsed [s],pressure [micron]");
      units = [time, pressure];
      continue;
    }
    const [t, p] = cells.map((cell) => (cell === "" ? Number.NaN : Number(cell)));
    if (cells.length !== 2 || !Number.isFinite(t) || !Number.isFinite(p)) {
      return wrong("two numbers are needed, time and pressure");
    }
    try {
      readings.push({ elapsed: units[0](t as number), pressure: units[1](p as number) });
    } catch (error) {
      if (!isInvalidInputError(error)) throw error;
      return wrong(`${error.value} is not possible; allowed: ${error.allowed}`);
    }
  }
  if (readings.length > 0) return readings;
  return { problem: "Paste a header and at least one reading.", place: [0, 0] };
}

/** The unit in the brackets of a column's name. */
function unitIn<K extends Kind>(title: string | undefined, kind: K): Unit<K> | undefined {
  const name = /\[(.+)\]/.exec(title ?? "")?.[1];
  return typedUnits(kind).find(({ names }) => name !== undefined && names.includes(name))?.unit;
}
