// Type-checks a project that uses the installed package, as strictly as anyone may: with the library's own
// declarations checked too, with exact optional properties, and without the DOM but for the subpath that needs
// zod, whose declarations name URL.
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";

/** How an app sets up its modules. */
export type ModuleSetup = readonly [file: string, module: string, resolution: string];

/** The setups that the types have to resolve under. */
export const moduleSetups: readonly ModuleSetup[] = [
  ["esm.mts", "nodenext", "nodenext"],
  ["commonjs.cts", "nodenext", "nodenext"],
  ["bundled.ts", "esnext", "bundler"],
];

const use = `
import { assessPressureTest, type PressureTestAssessment } from "hvac-install-math/pressure-test";
import { atmosphereAtAltitude, degF, deltaF, ft, psi, psia, psig, type Quantity } from "hvac-install-math/quantity";

const verdict: PressureTestAssessment = assessPressureTest({
  start: { pressure: psig(500), temperature: degF(64) },
  end: { pressure: psig(480.6), temperature: degF(46) },
  atmosphere: atmosphereAtAltitude(ft(5000)),
  instruments: { pressure: { accuracy: psi(2.5) }, temperature: { accuracy: deltaF(0.5) } },
});
export const drop: Quantity<"pressureDifference"> = verdict.correctedDrop.value;
// @ts-expect-error a gauge and an absolute pressure do not add
psig(1).plus(psia(1));
// @ts-expect-error a length is no altitude of the atmosphere in psi
atmosphereAtAltitude(psi(1));
`;

/** What a compiler says about such a project; nothing when all is well. */
export function typeComplaints(
  compiler: string,
  consumer: string,
  subpaths: readonly string[],
  [file, module, resolution]: ModuleSetup,
): string {
  const imports = subpaths.map(
    (name, i) => `import * as m${i} from "${name}"; export const k${i}: typeof m${i} = m${i};`,
  );
  writeFileSync(join(consumer, file), `${imports.join("\n")}\n${use}`);
  const strictness = ["--strict", "--exactOptionalPropertyTypes", "--noUncheckedIndexedAccess"];
  const lib = subpaths.some((one) => one.endsWith("/zod")) ? "es2022,dom" : "es2022";
  const surroundings = ["--lib", lib, "--skipLibCheck", "false"];
  const modules = ["--target", "es2022", "--module", module, "--moduleResolution", resolution];
  const args = [compiler, "--noEmit", ...strictness, ...surroundings, ...modules, file];
  try {
    return execFileSync("node", args, { cwd: consumer, encoding: "utf8" });
  } catch (error) {
    return String((error as { stdout?: string }).stdout || error);
  }
}
