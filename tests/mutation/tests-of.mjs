// The test files that hold one module: its own, and those of what it says and of its rows against outside sources.
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";

// Thousands of simulated logs, drawn texts or records without one of their parts, and times on a clock, say little for
// what they cost, mutant by mutant; a changed source weighs more than the code that is shipped. What is generated takes
// minutes and none of what is changed.
const leftOut = [
  /\/(simulated.*|hostile-text\.prop|speed|size|mathjs-apart|(each|long)-.*|generated)\.test\.ts$/,
  /^tests\/wire\/(codecs|zod)\.test\.ts$/, // 250 codecs over one walk, which the others take too
  /^tests\/wire\/named-rules\.test\.ts$/, // loads modules anew, which one script cannot
];

// The codecs of wire read and write the shapes; what parseQuantity refuses is refused by the reader below it.
const folders = { wire: ["wire", "shapes"], "read-quantity": ["read-quantity", "field-text"] };

/**
 * @param {string} root
 * @param {string} module
 * @returns {string[]} paths below the root
 */
export const testsOf = (root, module) => {
  const own = (folders[module] ?? [module]).flatMap((folder) =>
    readdirSync(join(root, "tests", folder), { recursive: true }).map(
      (path) => `tests/${folder}/${path}`,
    ),
  );
  const said = `tests/language/${module}.test.ts`; // whether what it says has all of its values
  const published = existsSync(join(root, `tests/published/${module}.json`));
  return [...new Set([...own, said, ...(published ? ["tests/published/published.test.ts"] : [])])]
    .filter((path) => path.endsWith(".test.ts") && existsSync(join(root, path)))
    .filter((path) => !leftOut.some((pattern) => pattern.test(path)));
};
