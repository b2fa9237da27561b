import { frozenInPlace } from "../../quantity/frozen.ts";
import type { CircuitRules, RuleFamily } from "./circuit-rules.ts";

/** A rule set that no caller can change; made in a function, so that a bundler drops it where nobody uses it. */
export const ruleSet = <F extends RuleFamily>(make: () => CircuitRules<F>): CircuitRules<F> =>
  frozenInPlace(make());
