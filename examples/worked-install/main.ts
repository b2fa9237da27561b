// Plans an installation, judges its record and prints a commissioning summary.
//
//   npm start                              plan and verdict of the three heads in examples/three-heads
//   npm start -- plan [folder]             the plan, by plan.json or record.json
//   npm start -- judge [folder]            the verdict on a folder with a record.json; the word may be left out
//   npm start -- report [folder]           the report as Markdown
//   npm start -- --units SI                in SI units; inch-pound when left out
//   npm start -- --language es             in Spanish, as a document; es-ES, fr and fr-FR too
//   npm start -- --all                     with every source
//   npm start -- --report report.html      writes the report, or the plan, too, as .html or .md
//   npm start -- --no-appendix             leaves the appendix out of the report
//
// Exit code 0: every step passed or was declared not applicable. 1: a step failed or is undecided. 2: bad
// input. Nothing is written unless --report asks for it, and a file that exists only with --overwrite.

import { existsSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { explain } from "hvac-install-math/assessment";
import { assessInstallation, circuitRules } from "hvac-install-math/commissioning";
import type { UnitSystem } from "hvac-install-math/display";
import { english } from "hvac-install-math/language/en";
import { spanish, spanishOfSpain } from "hvac-install-math/language/es";
import { french, frenchOfFrance } from "hvac-install-math/language/fr";
import { planInstallation } from "hvac-install-math/planning";
import { recordPlots } from "hvac-install-math/plots";
import { htmlReport, markdownReport, planSheet } from "hvac-install-math/report";
import { BadInput } from "./bad-input.ts";
import { planText } from "./plan-text.ts";
import { readInstallation, readPlan } from "./read-installation.ts";
import { summary } from "./summary.ts";

/** What the program prints and returns, so that it can be tested without a process. */
export interface Run {
  readonly exitCode: 0 | 1 | 2;
  /** For standard output. */
  readonly output: string;
  /** For standard error: what was wrong with the input. */
  readonly errors: string;
}

/** An app that works under one edition passes that one alone. */
const rules = Object.values(circuitRules);

/** The languages, each by the tag that the command line takes. */
const languages: Readonly<Record<string, typeof english>> = {
  en: english,
  es: spanish,
  "es-ES": spanishOfSpain,
  fr: french,
  "fr-FR": frenchOfFrance,
};

/** The installation of the main job. */
const example = join(import.meta.dirname, "../three-heads");

/** Runs the program with its command-line arguments. */
export function run(args: readonly string[]): Run {
  try {
    const given = readArguments(args);
    const { command, folder, system, report } = given;
    if (command === "plan") return planned(given);
    if (command !== undefined || folder !== undefined) {
      return judged({ ...given, folder: folder ?? example });
    }
    // The main job: the plan, the record, and the report where it is asked for.
    const plan = planned({ ...given, folder: example, report: undefined });
    const { output, ...verdict } = judged({ ...given, folder: example, system, report });
    return { ...verdict, output: `${plan.output}\n${output}` };
  } catch (error) {
    if (!(error instanceof BadInput)) throw error;
    return { exitCode: 2, output: "", errors: error.message };
  }
}

/** What to bring, to set, to check, to ask. */
function planned({ folder = example, system, report, overwrite, language }: Arguments): Run {
  const record = readPlan(folder);
  const options = { language, system, printedAt: now(), rules } as const;
  const output =
    language === english
      ? planText(record, planInstallation(record, { rules }), system)
      : planSheet(record, { ...options, format: "markdown" });
  if (report === undefined) return { exitCode: 0, output, errors: "" };
  const format = report.endsWith(".md") ? "markdown" : "html";
  const sheet = planSheet(record, { ...options, format });
  const done = write(report, sheet, overwrite);
  return { exitCode: 0, output: `${output}\nPlan ${done}: ${report}`, errors: "" };
}

/** The verdict on a record. */
function judged(given: Arguments & { readonly folder: string }): Run {
  const { command, folder, system, all, report, overwrite, language, appendix } = given;
  const { record, placeOf } = readInstallation(folder);
  const result = assessInstallation(record, { rules });
  const options = { language, system, printedAt: now(), rules, appendix } as const;
  const isSummary = command !== "report" && language === english;
  const output = isSummary
    ? summary(record, result, system, all)
    : markdownReport(record, { ...options, appendix: appendix && command === "report" });
  const problems = result.steps.flatMap((step) => step.problems);
  if (problems.length > 0) {
    const errors = problems.map(
      ({ path, reason, hint }) =>
        `${placeOf(path)}: ${[reason, ...(hint ? [hint] : [])].map((one) => explain(one, language)).join(" ")}`,
    );
    return { exitCode: 2, output, errors: [...new Set(errors)].join("\n") };
  }
  const exitCode = result.outcome === "pass" ? 0 : 1;
  if (report === undefined) return { exitCode, output, errors: "" };
  const text = report.endsWith(".md")
    ? markdownReport(record, options)
    : htmlReport(record, { ...options, plots: recordPlots });
  const done = write(report, text, overwrite);
  return { exitCode, output: `${output}\nReport ${done}: ${report}`, errors: "" };
}

/** The library has no clock; an app has. */
const now = () => `${new Date().toISOString().slice(0, 16).replace("T", " ")} UTC`;

/** Writes a file that does not exist yet, unless it may be overwritten; says what was done. */
function write(path: string, text: string, overwrite: boolean): "written" | "replaced" {
  const done = existsSync(path) ? "replaced" : "written";
  try {
    writeFileSync(path, text, { flag: overwrite ? "w" : "wx" });
    return done;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "EEXIST") {
      throw new BadInput(`--report ${path}: exists and was left as it is; add --overwrite`);
    }
    throw new BadInput(`--report ${path}: cannot be written (${code})`);
  }
}

/** What the program can be told to do. */
const commands = ["plan", "judge", "report"] as const;

interface Arguments {
  /** What is asked for; plan and verdict of the main job when left out. */
  readonly command: (typeof commands)[number] | undefined;
  readonly folder: string | undefined;
  readonly system: UnitSystem;
  readonly language: typeof english;
  readonly all: boolean;
  readonly appendix: boolean;
  readonly report: string | undefined;
  readonly overwrite: boolean;
}

function readArguments(args: readonly string[]): Arguments {
  const usage =
    "usage: npm start -- [plan|judge|report] [folder] [--units inch-pound|SI] [--language en|es|es-ES|fr|fr-FR] [--all] [--no-appendix] [--report file.html|file.md] [--overwrite]";
  try {
    const { positionals, values } = parseArgs({
      args: [...args],
      options: {
        units: { type: "string" },
        language: { type: "string" },
        all: { type: "boolean" },
        "no-appendix": { type: "boolean" },
        report: { type: "string" },
        overwrite: { type: "boolean" },
      },
      allowPositionals: true,
    });
    const { units: system = "inch-pound", all = false, report, overwrite = false } = values;
    const command = commands.find((one) => one === positionals[0]);
    const [folder, more] = command ? positionals.slice(1) : positionals;
    if (more !== undefined) throw new Error(`"${more}" is one folder too many`);
    const { language: tag = "en" } = values;
    const language = Object.hasOwn(languages, tag) ? languages[tag] : undefined;
    if (!language) throw new Error(`--language "${tag}"`);
    if (system !== "inch-pound" && system !== "SI") throw new Error(`--units "${system}"`);
    if (report !== undefined && !/\.(html|md)$/.test(report))
      throw new Error(`--report "${report}"`);
    const appendix = !values["no-appendix"];
    return { command, folder, system, language, all, appendix, report, overwrite };
  } catch (error) {
    throw new BadInput(`${(error as Error).message}; ${usage}`);
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  const { exitCode, output, errors } = run(process.argv.slice(2));
  if (output) process.stdout.write(`${output}\n`);
  if (errors) process.stderr.write(`${errors}\n`);
  process.exitCode = exitCode;
}
