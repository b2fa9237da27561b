// Works through an installation from its files and prints a commissioning summary.
//
//   npm start                        the invented installation beside this file, in inch-pound units
//   npm start -- --units SI          the same in SI units
//   npm start -- path/to/folder      another folder with an install.json
//
// Exit code 0: every step passed. 1: a step failed or is undecided. 2: bad input. Nothing is written.
import { pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { overallOutcome } from "hvac-install-math/assessment";
import { BadInput } from "./input.ts";
import { summary } from "./print.ts";
import { printerFor, type UnitSystem } from "./reader-units.ts";
import { workThrough } from "./steps.ts";

/** What the program prints and returns, so that it can be tested without a process. */
export interface Run {
  readonly exitCode: 0 | 1 | 2;
  readonly output: string;
}

/** Runs the program with its command-line arguments. */
export function run(args: readonly string[]): Run {
  try {
    const { folder, units } = readArguments(args);
    const installation = workThrough(folder);
    const outcome = overallOutcome(installation.steps.map(({ verdict }) => verdict.outcome));
    return {
      exitCode: outcome === "pass" ? 0 : 1,
      output: summary(installation, outcome, printerFor(units)),
    };
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    return { exitCode: 2, output: error.message };
  }
}

function readArguments(args: readonly string[]): { folder: string; units: UnitSystem } {
  const usage = "usage: npm start -- [folder] [--units inch-pound|SI]";
  let parsed: { positionals: string[]; values: { units?: string | undefined } };
  try {
    parsed = parseArgs({
      args: [...args],
      options: { units: { type: "string" } },
      allowPositionals: true,
    });
  } catch (error) {
    throw new BadInput(`${(error as Error).message}; ${usage}`);
  }
  const { positionals, values } = parsed;
  const units = values.units ?? "inch-pound";
  if (positionals.length > 1)
    throw new BadInput(`"${positionals[1]}" is one folder too many; ${usage}`);
  if (units !== "inch-pound" && units !== "SI")
    throw new BadInput(`--units "${units}" is not known; ${usage}`);
  return { folder: positionals[0] ?? import.meta.dirname, units };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  const { exitCode, output } = run(process.argv.slice(2));
  (exitCode === 2 ? process.stderr : process.stdout).write(`${output}\n`);
  process.exitCode = exitCode;
}
