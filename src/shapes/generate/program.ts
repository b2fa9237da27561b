// How does the compiler see the library? The program of its public faces, and of a file that exists only in memory.
// Follows the compiler API of TypeScript 5.9. Does not cover what is read from it.
import { fileURLToPath } from "node:url";
import ts from "typescript";

/** The folder of the project. */
export const root: string = fileURLToPath(new URL("../../..", import.meta.url)).replace(/\/$/, "");

/** A compiled view of files, and of one more with the given text. */
export function programOf(
  files: readonly string[],
  memory: { readonly path: string; readonly text: string } | undefined,
  old?: ts.Program,
): ts.Program {
  const { config } = ts.readConfigFile(`${root}/tsconfig.json`, ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
  const host = ts.createCompilerHost(options, true);
  const { getSourceFile, fileExists } = host;
  if (memory) {
    host.fileExists = (path) => path === memory.path || fileExists(path);
    host.getSourceFile = (path, ...rest) =>
      path === memory.path
        ? ts.createSourceFile(path, memory.text, ts.ScriptTarget.ES2022, true)
        : getSourceFile(path, ...rest);
  }
  const names = memory ? [...files, memory.path] : files;
  return ts.createProgram(names, options, host, old);
}
