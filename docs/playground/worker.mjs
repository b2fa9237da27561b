// Runs the code of the playground: its imports become the modules of the built package, and each line that ends in
// `// =>` reports its value. Imports of types are dropped; other types are not understood.
import { packageModules } from "package-modules"; // written by docs/plugins/playground-bundle.mjs

const importLine = /import\s+(type\s+)?\{([^}]*)\}\s*from\s*["']([^"']+)["'];?/g;

/** What stands for an import, and the names of the modules that are needed. */
export function withoutImports(code) {
  const needed = [];
  const text = code.replaceAll(importLine, (_, type, names, from) => {
    if (type) return "";
    needed.push(from);
    const values = names
      .split(",")
      .map((name) => name.trim())
      .filter((name) => name !== "" && !name.startsWith("type "));
    return `const { ${values.map((name) => name.replace(/\s+as\s+/, ": ")).join(", ")} } = modules[${JSON.stringify(from)}];`;
  });
  return { text, needed };
}

/** Lines `value; // => text` report what the value is. */
export function withReports(code) {
  return code
    .split("\n")
    .map((line) => {
      const found = /^(\s*)(?:(?:const|let) (\w+) = )?(.+?);?\s*\/\/ =>.*$/.exec(line);
      if (!found) return line;
      const [, indent, name, value] = found;
      const what = JSON.stringify(name ?? value);
      return name
        ? `${indent}const ${name} = ${value}; report(${what}, ${name});`
        : `${indent}report(${what}, ${value});`;
    })
    .join("\n");
}

function shown(value) {
  if (value === null || typeof value !== "object") return String(value);
  const text = String(value);
  return text.startsWith("[object") ? JSON.stringify(value, null, 1) : text;
}

const AsyncFunction = (async () => {}).constructor;

async function run(code) {
  const results = [];
  const report = (what, value) => results.push({ what, value: shown(value) });
  try {
    const { text, needed } = withoutImports(code);
    const modules = {};
    for (const name of needed) {
      const open = packageModules[name];
      if (!open)
        throw new Error(
          `${name} is not here. There are: ${Object.keys(packageModules).join(", ")}`,
        );
      modules[name] = await open();
    }
    const log = (...values) => report("console.log", values.map(shown).join(" "));
    await new AsyncFunction("modules", "report", "console", withReports(text))(modules, report, {
      log,
    });
    return { results };
  } catch (error) {
    return { results, error: `${error?.name ?? "Error"}: ${error?.message ?? error}` };
  }
}

self.onmessage = async ({ data }) => self.postMessage(await run(data));
