// Reads the files of four invented loggers and judges what they hold: `npm start` in this folder. For each file it
// prints what the text tells, what it leaves in doubt with the answer of the person who knows, and the verdict.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import {
  type Assessment,
  type Catalogue,
  explain,
  type Statement,
} from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { findFill, findIsolation, guessLog, type Log, readLog } from "hvac-install-math/logs";
import { assessPressureLog } from "hvac-install-math/pressure-test";
import {
  atmosphereAtAltitude,
  degC,
  deltaF,
  kPa,
  m,
  percent,
  psi,
  second,
  volt,
} from "hvac-install-math/quantity";
import { voltageLogStatistics } from "hvac-install-math/supply-voltage";
import { acceptancePolicies, assessVacuumDecay } from "hvac-install-math/vacuum-decay";

const language: Catalogue = english;
const textOf = (file: string) => readFileSync(join(import.meta.dirname, file), "utf8");
const say = (line: string) => process.stdout.write(`${line}\n`);
const list = (title: string, said: readonly Statement[]) => {
  for (const one of said) say(`  ${title}: ${explain(one, language)}`);
};

/** What the guess says, and the answer to its doubts. */
function offer(
  file: string,
  guess: { reasons: readonly Statement[]; doubts: readonly Statement[] },
  answer: string,
) {
  say(`\n${file}`);
  list("told", guess.reasons);
  list("doubt", guess.doubts);
  say(`  answer: ${answer}`);
}

function read<C>({ rows, refused, notes }: Log<C>): void {
  say(`  ${rows.length} rows`);
  list("refused", refused);
  list("noticed", notes);
}

function verdict({ outcome, reasons }: Assessment<string>): void {
  const [reason] = reasons;
  say(`  ${outcome.toUpperCase()}${reason ? `: ${explain(reason, language)}` : ""}`);
}

const atmosphere = atmosphereAtAltitude(m(1600));

/** A night under nitrogen: the gauge is a gauge, and the clock stood in Denver, where it was set back at night. */
function overnight(): void {
  const text = textOf("overnight.csv");
  const guess = guessLog(text, { pressure: "gaugePressure", temperature: "temperature" });
  offer("overnight.csv", guess, "gauge pressure; America/Denver");
  const { format } = guess;
  if (format?.time.written !== "date-time") return;
  const log = readLog(text, { ...format, time: { ...format.time, zone: "America/Denver" } });
  read(log);
  const hold = findFill(log.rows);
  list("found", [...hold.reasons, ...hold.doubts]);
  verdict(
    assessPressureLog({
      readings: hold.rows.slice(6), // half an hour for the gas to settle
      atmosphere,
      instruments: {
        pressure: { accuracy: psi(1), resolution: psi(0.1) },
        // strapped to the line under insulation, as invented as the rest
        temperature: {
          accuracy: deltaF(1),
          resolution: deltaF(0.1),
          followsGasWithin: deltaF(0.7),
        },
      },
      criterion: { maximumDrop: psi(5) },
    }),
  );
}

/** An evacuation: the time counts from the start of the log, not from midnight. */
function vacuum(): void {
  const text = textOf("vacuum.txt");
  const guess = guessLog(text, { pressure: "absolutePressure" });
  offer("vacuum.txt", guess, "time since the start");
  if (!guess.format) return;
  const log = readLog(text, guess.format);
  read(log);
  const watch = findIsolation(log.rows);
  list("found", [...watch.reasons, ...watch.doubts]);
  const policy = acceptancePolicies.splitManualA;
  const gauge = { accuracy: percent(10) };
  verdict(assessVacuumDecay({ readings: watch.rows, policy, ambient: degC(20), gauge }));
}

/** A service over two hours: blank cells are what the logger missed, and are left out. */
function supply(): void {
  const text = textOf("supply.tsv");
  const guess = guessLog(text, { voltage: "voltage" });
  offer("supply.tsv", guess, "--- is a blank cell; leave such rows out");
  if (!guess.format) return;
  const log = readLog(text, { ...guess.format, blank: "skip", blankCells: ["---"] });
  read(log);
  const range = { minimum: volt(207), maximum: volt(253) };
  const { minimum, maximum, timeBelow, timeAbove } = voltageLogStatistics({
    readings: log.rows,
    range,
  });
  const outside = timeBelow.plus(timeAbove).toString(second);
  say(
    `  ${minimum.toString(volt, 1)} to ${maximum.toString(volt, 1)}; outside 207 V to 253 V for ${outside}`,
  );
}

/** A hold that leaks: the log states its zone and its zero, and nothing is left in doubt. */
function hold(): void {
  const text = textOf("hold.csv");
  const guess = guessLog(text, { pressure: "gaugePressure", temperature: "temperature" });
  offer("hold.csv", guess, "none needed");
  if (!guess.format) return;
  const log = readLog(text, guess.format);
  read(log);
  verdict(
    assessPressureLog({
      readings: log.rows,
      atmosphere,
      instruments: {
        pressure: { accuracy: kPa(7), resolution: kPa(1) },
        temperature: { accuracy: deltaF(1), resolution: deltaF(0.2) },
      },
      criterion: { maximumDrop: kPa(35) },
    }),
  );
}

say("Four invented loggers; no such instrument was ever built and no such reading taken.");
overnight();
vacuum();
supply();
hold();
say("\nNitrogen and refrigerant under pressure, and line voltage, can hurt. The nameplate, the");
say("manufacturer's instructions, local codes and licensed practice come first.");
