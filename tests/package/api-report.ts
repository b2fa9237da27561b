// What a subpath promises in types: its exports with their signatures, without the comments, in one text
// whose changes a reviewer can read.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import {
  CompilerState,
  Extractor,
  ExtractorConfig,
  ExtractorLogLevel,
  type IExtractorMessagesConfig,
} from "@microsoft/api-extractor";
import type { Program } from "typescript";

const silent = { default: { logLevel: ExtractorLogLevel.None } };
/** What the extractor remarks about comments, which TypeDoc looks at. */
const noise = /^ *\/\/ (@public|\(undocumented\)|@public \(undocumented\))\n/gm;
// Types that a module takes from another one stand in the other's report.
const messages: IExtractorMessagesConfig = {
  compilerMessageReporting: silent,
  extractorMessageReporting: silent,
  tsdocMessageReporting: silent,
};

/** Makes the reports of a package's built types into a scratch folder, by the name of the module. */
export function apiReports(
  root: string,
  modules: readonly string[],
  scratch: string,
): Map<string, string> {
  const typesOf = (module: string) => join(root, "dist", module, "index.d.ts");
  const compilerOptions = {
    target: "es2022",
    lib: ["es2022"],
    module: "esnext",
    moduleResolution: "bundler",
    strict: true,
    types: [],
    skipLibCheck: true,
  };
  const configOf = (module: string) =>
    ExtractorConfig.prepare({
      configObject: {
        projectFolder: root,
        mainEntryPointFilePath: typesOf(module),
        compiler: {
          overrideTsconfig: { compilerOptions, include: [join(root, "dist/**/*.d.ts")] },
        },
        apiReport: {
          enabled: true,
          reportFileName: `${module}.api.md`,
          reportFolder: scratch,
          reportTempFolder: join(scratch, "temp"),
        },
        newlineKind: "lf",
        messages,
      },
      configObjectFullPath: undefined,
      packageJsonFullPath: join(root, "package.json"),
    });
  const configs = new Map(modules.map((module) => [module, configOf(module)]));
  const [first] = configs.values();
  if (!first) throw new Error("no module to report on");
  const compilerState = CompilerState.create(first, {
    additionalEntryPoints: [...modules.map(typesOf), typesOf("")],
  });
  const reports = new Map([["index", namesOf(compilerState.program as Program, typesOf(""))]]);
  for (const [module, config] of configs) {
    Extractor.invoke(config, {
      localBuild: true,
      compilerState,
      messageCallback: (message) => {
        message.handled = true;
      },
    });
    const text = readFileSync(config.reportFilePath, "utf8");
    const [, code] = /```ts\n\n([\s\S]*)```/.exec(text) ?? [];
    if (code === undefined) throw new Error(`${module}: the report holds no types`);
    reports.set(module, `\`\`\`ts\n${code.replace(noise, "")}\`\`\`\n`);
  }
  return reports;
}

/** The root only passes on what the modules export: their names say all of it. */
function namesOf(program: Program, file: string): string {
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(file);
  const symbol = source && checker.getSymbolAtLocation(source);
  if (!symbol) throw new Error(`${file} is no module`);
  const names = checker.getExportsOfModule(symbol).map(({ name }) => name);
  return `${names.sort().join("\n")}\n`;
}
