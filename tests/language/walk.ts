// Every verdict of a module over many inputs: what it says is declared, worded and whole, and all that is declared is
// said. What a text for a reader (a report, a picture, a figure) takes from the language is heard as it is written.
import { type Catalogue, explain, type Statement } from "hvac-install-math/assessment";
import { english } from "hvac-install-math/language/en";
import { describe, expect, it } from "vitest";
import { later } from "../../src/quantity/later.ts";
import { listening } from "./listening.ts";
import { type Further, resultsOf } from "./results.ts";
import { isStatement, isVerdict, namesIn, partsOf, wordsOf } from "./said.ts";

/** A module that says something, and what it takes to hear all of it. */
export interface Spoken {
  /** The module, by its subpath. */
  readonly module: string;
  /** What it may say. */
  readonly catalogue: Catalogue;
  /** Inputs beyond those of the fault tests. */
  readonly further?: Further;
  /** Other modules that say a part of it, with their further inputs. */
  readonly also?: readonly (readonly [module: string, further: Further])[];
  /** Writes what a reader sees in a language. */
  readonly write?: (language: typeof english) => void;
  /** Codes of what a result names elsewhere than in a sentence, for a report or a table of an app. */
  readonly named?: (results: readonly object[]) => readonly string[];
}

const all: Catalogue = english;

/** Tells whether the module says all that it declares, and nothing else. */
export function walk({
  module,
  catalogue,
  further,
  also = [],
  write,
  named = () => [],
}: Spoken): void {
  describe(`what ${module} says`, () => {
    const { language, heard } = listening();
    const parts = later(() => [
      ...partsOf([[module, further] as const, ...also].flatMap((one) => resultsOf(...one))),
    ]);
    // Each sentence with each set of figures once: a hundred records say most of theirs alike.
    const statements = later(() => [
      ...new Map(
        parts()
          .filter(isStatement)
          .map((one) => [explain(one, language), one]),
      ).values(),
    ]);
    const verdicts = () => parts().filter(isVerdict);

    it("has a sentence with exactly its values", () => {
      const said = parts().filter(isStatement);
      const names = ({ code, values }: Statement) => `${code}: ${Object.keys(values).sort()}`;
      for (const one of new Map(said.map((one) => [names(one), one])).values()) {
        expect(Object.hasOwn(all.messages, one.code), one.code).toBe(true);
        expect(Object.keys(one.values).sort(), one.code).toEqual(namesIn(all.messages[one.code]));
      }
    });

    it("reads as a sentence, without a gap or a sentence of its own", () => {
      for (const said of statements()) {
        const sentence = explain(said, all);
        expect(sentence).not.toMatch(/[{}]|undefined|NaN|\[object/);
        expect(sentence).toMatch(/^[A-Z0-9°−-].*[.?]$/);
        const own = Object.values(said).filter((one) => typeof one === "string" && /\s/.test(one));
        expect(own).toEqual([]);
      }
    });

    it("is all that is declared", () => {
      write?.(language);
      const causes = verdicts().flatMap(({ cause }) => (cause ? [`${module}.cause.${cause}`] : []));
      // The parts of an uncertainty stand in the result, whichever of them a sentence names.
      const budget = parts().flatMap((part) =>
        "part" in part && "standardUncertainty" in part ? [`${module}.part.${part.part}`] : [],
      );
      const reached = new Set([
        ...heard,
        ...statements().flatMap(wordsOf),
        ...causes,
        ...budget,
        ...named(parts()),
      ]);
      expect(Object.keys(catalogue.messages).filter((code) => !reached.has(code))).toEqual([]);
    });

    it("names what to do next where a verdict does not pass, and nothing where it does", () => {
      for (const { outcome, reasons, actions = [] } of verdicts()) {
        const said = reasons.map(({ code }) => code).join();
        expect(reasons.length).toBeGreaterThan(0);
        if (outcome === "pass") expect(actions, said).toEqual([]);
        else expect(actions.length, said).toBeGreaterThan(0);
      }
    });

    it("has findings, dangers, then one sentence on who governs, and nothing twice", () => {
      const order = ["finding", "danger", "governing"];
      for (const { cautions } of verdicts()) {
        const kinds = cautions.map(({ kind = "" }) => order.indexOf(kind));
        expect(kinds).toEqual([...kinds].sort());
        expect(kinds.filter((kind) => kind === 2)).toEqual([2]);
        const sentences = cautions.map((said: Statement) => explain(said, all));
        expect(new Set(sentences).size).toBe(sentences.length);
      }
    });

    it("is frozen through and through", () => {
      const all = verdicts();
      const thawed = [...partsOf(all)].filter((part) => part !== all && !Object.isFrozen(part));
      expect(thawed).toEqual([]);
    });
  });
}
