// Every verdict of a module over many inputs: what it says is declared, worded and whole, and all that is
// declared is said. A module joins by a line of `spoken` and, where the inputs of the fault tests do not reach
// every code, a file of further inputs.
import { gzipSync } from "node:zlib";
import { type Catalogue, explain, type Statement } from "hvac-install-math/assessment";
import * as en from "hvac-install-math/language/en";
import { describe, expect, it } from "vitest";
import * as ofChargeLimit from "./inputs/charge-limit.ts";
import * as ofCommissioning from "./inputs/commissioning.ts";
import * as ofCondensate from "./inputs/condensate.ts";
import * as ofFlareJoint from "./inputs/flare-joint.ts";
import * as ofLineSet from "./inputs/line-set.ts";
import * as ofLogs from "./inputs/logs.ts";
import * as ofOperatingCheck from "./inputs/operating-check.ts";
import * as ofPressureTest from "./inputs/pressure-test.ts";
import * as ofRefrigerants from "./inputs/refrigerants.ts";
import * as ofVacuumDecay from "./inputs/vacuum-decay.ts";
import { type Further, resultsOf } from "./results.ts";
import { codesOf, isStatement, isVerdict, namesIn, partsOf, wordsOf } from "./said.ts";

interface Spoken {
  readonly module: string;
  readonly catalogue: Catalogue;
  readonly further?: Further;
  /** Set where the inputs do not yet reach every code: what is said is looked at, what is not said is not. */
  readonly partly?: true;
  /** The bytes that it may take where these are more than 3 kB; each says why. */
  readonly most?: number;
}

const spoken: readonly Spoken[] = [
  // A device, conductor, grounding, disconnect and space are judged apart, by nine rule sets: 200 sentences and words.
  { module: "circuit-protection", catalogue: en.circuitProtection, partly: true, most: 4300 },
  // With the names of some 500 fields of the record, which take 4.7 kB by themselves.
  {
    module: "commissioning",
    catalogue: en.commissioning,
    further: ofCommissioning.inputs,
    partly: true,
    most: 11_100,
  },
  { module: "supply-voltage", catalogue: en.supplyVoltage, partly: true },
  { module: "charge-limit", catalogue: en.chargeLimit, further: ofChargeLimit.inputs },
  { module: "condensate", catalogue: en.condensate, further: ofCondensate.inputs },
  { module: "flare-joint", catalogue: en.flareJoint, further: ofFlareJoint.inputs },
  { module: "line-set", catalogue: en.lineSet, further: ofLineSet.inputs },
  { module: "logs", catalogue: en.logs, further: ofLogs.inputs },
  { module: "operating-check", catalogue: en.operatingCheck, further: ofOperatingCheck.inputs },
  { module: "refrigerants", catalogue: en.refrigerants, further: ofRefrigerants.inputs },
  { module: "pressure-test", catalogue: en.pressureTest, further: ofPressureTest.inputs },
  { module: "vacuum-decay", catalogue: en.vacuumDecay, further: ofVacuumDecay.inputs },
];

const all: Catalogue = en.english;

describe.each(spoken)(
  "what $module says",
  ({ module, catalogue, further, partly, most = 3000 }) => {
    const results = resultsOf(module, further);
    const parts = [...new Set(results.flatMap((result) => [...partsOf(result)]))];
    // Each sentence with each set of figures once: a hundred records say most of theirs alike.
    const statements = [
      ...new Map(parts.filter(isStatement).map((one) => [explain(one, all), one])).values(),
    ];
    const verdicts = parts.filter(isVerdict);

    it("has a sentence with exactly its values", () => {
      expect(statements.length).toBeGreaterThan(0);
      for (const { code, values } of statements) {
        expect(Object.hasOwn(all.messages, code), code).toBe(true);
        expect(Object.keys(values).sort(), code).toEqual(namesIn(all.messages[code]));
      }
    });

    it("reads as a sentence, without a gap or a sentence of its own", () => {
      for (const said of statements) {
        const sentence = explain(said, all);
        expect(sentence).not.toMatch(/[{}]|undefined|NaN|\[object/);
        expect(sentence).toMatch(/^[A-Z0-9−-].*[.?]$/);
        const keys = ["code", "values", "kind", "step", "part"];
        expect(keys).toEqual(expect.arrayContaining(Object.keys(said)));
      }
    });

    it.skipIf(partly)("is all that is declared", () => {
      const own = (code: string) => code.startsWith(`${module}.`);
      const causes = verdicts.flatMap(({ cause }) => (cause ? [`${module}.cause.${cause}`] : []));
      // The parts of an uncertainty stand in the result, whichever of them a sentence names.
      const budget = parts.flatMap((part) =>
        "part" in part && "standardUncertainty" in part ? [`${module}.part.${part.part}`] : [],
      );
      const reached = new Set([
        ...statements.map(({ code }) => code).filter(own),
        ...statements.flatMap(wordsOf).filter(own),
        ...causes,
        ...budget,
      ]);
      expect([...reached].sort()).toEqual(codesOf(catalogue, module).sort());
    });

    it(`takes at most ${most} bytes in one language`, () => {
      expect(gzipSync(JSON.stringify(catalogue.messages)).length).toBeLessThanOrEqual(most);
    });

    it("names what to do next where a verdict does not pass, and nothing where it does", () => {
      for (const { outcome, reasons, actions = [] } of verdicts) {
        const said = reasons.map(({ code }) => code).join();
        expect(reasons.length).toBeGreaterThan(0);
        if (outcome === "pass") expect(actions, said).toEqual([]);
        else expect(actions.length, said).toBeGreaterThan(0);
      }
    });

    it("has findings, dangers, then one sentence on who governs, and nothing twice", () => {
      const order = ["finding", "danger", "governing"];
      for (const { cautions } of verdicts) {
        const kinds = cautions.map(({ kind = "" }) => order.indexOf(kind));
        expect(kinds).toEqual([...kinds].sort());
        expect(kinds.filter((kind) => kind === 2)).toEqual([2]);
        const sentences = cautions.map((said: Statement) => explain(said, all));
        expect(new Set(sentences).size).toBe(sentences.length);
      }
    });

    it("is frozen through and through", () => {
      const verdictParts = verdicts.flatMap((verdict) => [...partsOf(verdict)]);
      for (const part of verdictParts) expect(Object.isFrozen(part)).toBe(true);
    });
  },
);
