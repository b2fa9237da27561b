// Reads an installation: its record, and the logs that the instruments delivered beside it.
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { explain } from "hvac-install-math/assessment";
import type { InstallationRecord } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { type Columns, guessLog, type Log, type LogGuess, readLog } from "hvac-install-math/logs";
import { isInvalidInputError } from "hvac-install-math/quantity";
import { recordCodec } from "hvac-install-math/wire";
import { BadInput, textOf } from "./bad-input.ts";

const recordFile = "record.json";
const planFile = "plan.json";

/** Each log, and the readings of the record that it holds. */
const logs = {
  "nitrogen-hold.csv": "pressureTests[0].readings",
  "vacuum-decay.csv": "evacuations[0].readings",
  "supply.csv": "power.supply.readings",
} as const;

const state = { column: "state", words: { rest: "rest", load: "load", start: "start" } } as const;

/** A record, and where in the files a field of it stands. */
export interface Installation {
  readonly record: InstallationRecord;
  readonly placeOf: (path: string) => string;
}

/** Reads what was planned: `plan.json` of a folder, or the record where there is none. */
export function readPlan(folder: string): InstallationRecord {
  const file = existsSync(join(folder, planFile)) ? planFile : recordFile;
  return recordOf(textOf(folder, file), file);
}

/** Reads `record.json` of a folder, and the logs that lie beside it. */
export function readInstallation(folder: string): Installation {
  const record = recordOf(textOf(folder, recordFile));
  for (const file of readdirSync(folder)) {
    if (!file.endsWith(".csv") || file in logs) continue;
    throw new BadInput(`${file}: no such log; allowed: ${Object.keys(logs).join(", ")}`);
  }
  const hold = logOf(folder, "nitrogen-hold.csv", (text) =>
    guessLog(text, { pressure: "gaugePressure", temperature: "temperature" }),
  );
  const decay = logOf(folder, "vacuum-decay.csv", (text) =>
    guessLog(text, { pressure: "absolutePressure" }),
  );
  const supply = logOf(folder, "supply.csv", (text) => {
    const { format, ...guess } = guessLog(text, { voltage: "voltage" });
    return format
      ? { ...guess, format: { ...format, columns: { ...format.columns, state } } }
      : guess;
  });
  const { pressureTests = [], evacuations = [], power } = record;
  const [pressureTest] = pressureTests;
  const [evacuation] = evacuations;
  refuseTwice("nitrogen-hold.csv", hold, pressureTest?.readings);
  refuseTwice("vacuum-decay.csv", decay, evacuation?.readings);
  refuseTwice("supply.csv", supply, power?.supply?.readings);
  const read = { "nitrogen-hold.csv": hold, "vacuum-decay.csv": decay, "supply.csv": supply };
  return {
    record: {
      ...record,
      ...(hold && {
        pressureTests: [{ ...pressureTest, readings: hold.rows }, ...pressureTests.slice(1)],
      }),
      ...(decay && {
        evacuations: [{ ...evacuation, readings: decay.rows }, ...evacuations.slice(1)],
      }),
      ...(supply && { power: { ...power, supply: { ...power?.supply, readings: supply.rows } } }),
    },
    placeOf: (path) => {
      for (const [file, part] of Object.entries(logs)) {
        const log = read[file as keyof typeof logs];
        if (!log || !path.startsWith(part)) continue;
        const [, row, field] = /^\[(\d+)\]\.?(.*)$/.exec(path.slice(part.length)) ?? [];
        if (row === undefined) return file;
        return `${file}, line ${log.lines[Number(row)]}${field && `, ${field}`}`;
      }
      return `${recordFile}, ${path}`;
    },
  };
}

function recordOf(text: string, file: string = recordFile): InstallationRecord {
  try {
    return recordCodec.parse(text);
  } catch (error) {
    if (!isInvalidInputError(error)) throw error;
    const { argument, value, allowed, hint } = error;
    throw new BadInput(`${file}, ${argument}: ${value}; allowed: ${allowed}${hint && `. ${hint}`}`);
  }
}

/**
 * Reads the log of an instrument, or nothing where there is no such file. Nobody is there to answer, so a log that
 * leaves anything in doubt, and one with a line that cannot be taken, is bad input.
 */
function logOf<C extends Columns>(
  folder: string,
  file: keyof typeof logs,
  offer: (text: string) => LogGuess<C>,
): Log<C> | undefined {
  if (!existsSync(join(folder, file))) return undefined;
  const text = textOf(folder, file);
  const { format, doubts } = offer(text);
  const [doubt] = doubts;
  if (!format || doubt)
    throw new BadInput(`${file}: ${doubt ? explain(doubt, english) : "no log"}`);
  const log = readLog(text, format);
  const [wrong] = log.refused;
  if (wrong) throw new BadInput(`${file}: ${explain(wrong, english)}`);
  return log;
}

/** Nobody could say which of the two was read. */
function refuseTwice(file: keyof typeof logs, log: object | undefined, inRecord: unknown) {
  if (!log || inRecord === undefined) return;
  throw new BadInput(`${file}: ${recordFile} has ${logs[file]} too; keep one of the two`);
}
