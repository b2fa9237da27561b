// A second language needs one folder and no change of logic: the pressure test in Spanish, beside its English.
import { type Catalogue, explain } from "hvac-install-math/assessment";
import * as en from "hvac-install-math/language/en";
import * as es from "hvac-install-math/language/es";
import { assessPressureTest } from "hvac-install-math/pressure-test";
import { describe, expect, it } from "vitest";
import { inputs } from "./inputs/pressure-test.ts";
import { resultsOf } from "./results.ts";
import { isStatement, namesIn, partsOf } from "./said.ts";

const spanish: Catalogue = es.spanish;

describe("Spanish", () => {
  it("has the codes of the English pressure test, all of them", () => {
    const codes = ({ messages }: Catalogue) => Object.keys(messages).sort();
    expect(codes(es.pressureTest)).toEqual(codes(en.pressureTest));
  });

  it.each([
    ["pressure-test", en.pressureTest, es.pressureTest],
    ["assessment", en.assessment, es.assessment],
  ] as [string, Catalogue, Catalogue][])("of %s has the values of English", (_, english, other) => {
    for (const [code, message] of Object.entries(other.messages)) {
      expect(namesIn(message), code).toEqual(namesIn(english.messages[code]));
    }
    expect(other.locale).toBe("es-419");
  });

  it("words all that a pressure test and its plan say", () => {
    const results = resultsOf("pressure-test", inputs);
    const statements = results.flatMap((result) => [...partsOf(result)].filter(isStatement));
    expect(statements.length).toBeGreaterThan(500);
    for (const said of statements) {
      expect(explain(said, spanish)).not.toMatch(/[{}]|undefined|NaN|\[object/);
    }
  });

  it("prints figures as they are handed to it", () => {
    const [test] = inputs.assessPressureTest?.[1] ?? [];
    const [reason] = assessPressureTest(test as never).reasons;
    // Sentence of the trade in Spanish, from memory.
    expect(reason && explain(reason, spanish, () => "3 psi")).toBe(
      "La caída de presión, 3 psi ± 3 psi, supera el límite de 3 psi.",
    );
  });
});
