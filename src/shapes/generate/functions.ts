// Which codecs are there? One for what each public function takes and one for what it gives, where that is more
// than a single figure or word. Follows the public faces of the modules. Does not cover their shapes: derive.ts.
import ts from "typescript";
import { root } from "./program.ts";
import { besides, instead, modules, stays } from "./settings.ts";

/** A codec that is to be made. */
export interface Wanted {
  /** Name of the codec. */
  readonly name: string;
  /** The module of its function. */
  readonly module: string;
  /** What the whole is called in errors. */
  readonly whole: string;
  /** The type, as source text. */
  readonly type: string;
  /** What it is for, as a doc comment. */
  readonly doc: string;
  /** Whether a figure or a word alone needs no codec. */
  readonly onlyIfMore: boolean;
}

/** The face of a module. */
export const faceOf = (module: string): string => `${root}/src/${module}/index.ts`;

/** The exports of a module by name, with the symbols behind them. */
export function exportsOf(program: ts.Program, module: string): ReadonlyMap<string, ts.Symbol> {
  const checker = program.getTypeChecker();
  const face = program.getSourceFile(faceOf(module));
  const symbol = face && checker.getSymbolAtLocation(face);
  const all = symbol ? checker.getExportsOfModule(symbol) : [];
  return new Map(
    all.map((one) => [
      one.name,
      one.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(one) : one,
    ]),
  );
}

const source = "Source: the library's own format.";

/** Every codec, but for what a shape alone shows to be needless. */
export function wanted(program: ts.Program): Wanted[] {
  const checker = program.getTypeChecker();
  const ofModule = (module: string) =>
    [...exportsOf(program, module)].flatMap(([name, symbol]): Wanted[] => {
      if (!(symbol.flags & ts.SymbolFlags.Function) || name in stays) return [];
      const signatures = checker.getTypeOfSymbol(symbol).getCallSignatures();
      const names = signatures.map(({ parameters }) => parameters.map((one) => one.name));
      const longest = names.reduce((a, b) => (b.length > a.length ? b : a), []);
      const several = longest.length > 1;
      const list = longest.map((one) => JSON.stringify(one)).join(", ");
      const input: Wanted = {
        name: `${name}Input`,
        module,
        whole: several ? "input" : (longest[0] ?? "input"),
        type: several ? `ArgumentsOf<typeof ${name}, [${list}]>` : `InputOf<typeof ${name}>`,
        doc: `JSON of what \`${name}\` takes. ${source}`,
        onlyIfMore: !several,
      };
      const result: Wanted = {
        name: `${name}Result`,
        module,
        whole: "result",
        type: `ResultOf<typeof ${name}>`,
        doc: `JSON of what \`${name}\` gives. ${source}`,
        onlyIfMore: true,
      };
      return longest.length > 0 ? [input, result] : [result];
    });
  const more = Object.entries(besides).map(([name, { module, type }]): Wanted => {
    const whole = name.replace(/Codec$/, "");
    const doc = `JSON of a {@link ${type}}. ${source}`;
    return { name, module, whole, type, doc, onlyIfMore: false };
  });
  return [...modules.slice(modules.indexOf("refrigerants")).flatMap(ofModule), ...more]
    .filter(({ name }) => !(name in stays))
    .map((one) => ({ ...one, type: instead[one.name] ?? one.type }));
}
