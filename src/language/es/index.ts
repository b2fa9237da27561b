/**
 * Sentences and words of the library in Spanish (of the Americas): the pressure test, and what all verdicts
 * share. Hand one to `explain`, or both as `spanish`.
 *
 * @module language/es
 */
import type { Catalogue } from "../../assessment/catalogue.ts";
import { type CodeOf, join } from "../define.ts";
import { assessment } from "./assessment.ts";
import { pressureTest } from "./pressure-test.ts";

export { assessment, pressureTest };

/** What there is in Spanish. */
export const spanish: Catalogue<CodeOf<Module>> = /* @__PURE__ */ join<Module>([
  assessment,
  pressureTest,
]);

type Module = typeof assessment | typeof pressureTest;
