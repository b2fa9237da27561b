// Which pressure, how long, what is accepted? The rules in print, side by side.
// Follows the works cited in each row; a row from memory says so. Does not cover local amendments.

import { type Citation, cite } from "../assessment/assessment.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { MPag, psig } from "../quantity/units/pressure.ts";
import { hour, minute } from "../quantity/units/time.ts";

/** How a rule was come by: read, remembered or habit. */
export type RuleStanding = "published" | "from-memory" | "common-practice";

/** The rules, by name. */
export type HoldRuleName =
  | "ashrae-15-field"
  | "ashrae-15-small-a1"
  | "ashrae-15-standing"
  | "mechanical-code-checklist"
  | "imc"
  | "asme-b31-5-pneumatic"
  | "en-378-2"
  | "iso-5149-2"
  | "guide-specification-piping"
  | "guide-specification-equipment"
  | "guide-specification-hermetic"
  | "split-manuals-r410a"
  | "city-code"
  | "small-splits";

/** What a rule accepts. */
export type HoldRuleAccepts =
  | "proved-tight"
  | "no-drop"
  | "design-pressure"
  | "corrected-no-drop"
  | "no-detectable-change"
  | "no-drop-overnight";

/**
 * The words of the rules: what each is called, the pressure that it asks for, what it accepts and how it was come by.
 * `label(`pressure-test.rule-pressure.${name}`, holdRules)` with `hvac-install-math/language/en`.
 */
export type HoldRuleWord =
  | `pressure-test.${"rule" | "rule-pressure"}.${HoldRuleName}`
  | `pressure-test.rule-accepts.${HoldRuleAccepts}`
  | `pressure-test.rule-standing.${RuleStanding}`;

/** A rule for the test pressure, the hold and what is accepted. Source: stands in the row. */
export interface HoldRule {
  /** Name to choose it by; the catalogue words it, and the pressure that it asks for. */
  readonly name: HoldRuleName;
  /** Lowest stated test pressure, where the rule states a figure. */
  readonly testPressure?: Quantity<"gaugePressure"> | undefined;
  /** Shortest stated hold. */
  readonly hold?: Quantity<"duration"> | undefined;
  /** What passes. */
  readonly accept: HoldRuleAccepts;
  /** Where it is printed. */
  readonly source: Citation;
  /** Read, remembered or habit. */
  readonly standing: RuleStanding;
}

/** What standards and codes ask for. */
const ofCodes = (): readonly HoldRule[] => [
  {
    name: "ashrae-15-field",
    accept: "proved-tight",
    source: cite("ashrae-15-2022", "field leak test; clause numbers vary by edition"),
    standing: "published",
  },
  {
    name: "ashrae-15-small-a1",
    accept: "proved-tight",
    source: cite("ashrae-15-2022", "exception, from a field checklist"),
    standing: "published",
  },
  {
    name: "ashrae-15-standing",
    hold: minute(60),
    accept: "no-drop",
    source: cite("ashrae-15-2022", "low confidence: verify before use"),
    standing: "from-memory",
  },
  {
    name: "mechanical-code-checklist",
    hold: minute(10),
    accept: "no-drop",
    source: cite("umc"),
    standing: "published",
  },
  {
    name: "imc",
    accept: "proved-tight",
    source: cite("imc-2021", "1110; 1108 to 2018"),
    standing: "from-memory",
  },
  {
    name: "asme-b31-5-pneumatic",
    accept: "design-pressure",
    source: cite("asme-b31-5-2022", "538.4.2; 1.1 and 538.4.3 from memory"),
    standing: "published",
  },
  {
    name: "en-378-2",
    accept: "proved-tight",
    source: cite("en-378-2"),
    standing: "from-memory",
  },
  {
    name: "iso-5149-2",
    accept: "proved-tight",
    source: cite("iso-5149-2"),
    standing: "from-memory",
  },
  {
    name: "city-code",
    hold: hour(1),
    accept: "no-detectable-change",
    source: cite("municipal-code"),
    standing: "published",
  },
];

/** What specifications, manuals and the trade ask for. */
const ofSpecifications = (): readonly HoldRule[] => [
  {
    name: "guide-specification-piping",
    hold: hour(24),
    accept: "corrected-no-drop",
    source: cite("ufgs-15182"),
    standing: "published",
  },
  {
    name: "guide-specification-equipment",
    testPressure: psig(150),
    hold: hour(2),
    accept: "no-drop",
    source: cite("ufgs-15741n"),
    standing: "published",
  },
  {
    name: "guide-specification-hermetic",
    accept: "proved-tight",
    source: cite("ufgs-15730n"),
    standing: "published",
  },
  {
    name: "split-manuals-r410a",
    testPressure: MPag(3.73),
    hold: hour(24),
    accept: "corrected-no-drop",
    source: cite("manufacturer-manuals"),
    standing: "published",
  },
  {
    name: "small-splits",
    testPressure: psig(300),
    hold: minute(15),
    accept: "no-drop-overnight",
    source: cite("common-practice"),
    standing: "common-practice",
  },
];

/**
 * Rules for pressure and hold found in print. "No drop" is not something that an instrument can show:
 * state a limit with it, and take the hold from `holdTime`. What the nameplate, the maker and the local
 * code say goes first.
 *
 * Source: the citation of each row; rows from memory are marked and have to be checked before use.
 *
 * @example
 * ```ts
 * import { holdRules } from "hvac-install-math/pressure-test";
 *
 * holdRules.find(({ name }) => name === "guide-specification-piping")?.hold?.toString(); // => 24 h
 * ```
 */
export const holdRules: readonly HoldRule[] = /* @__PURE__ */ (() =>
  frozen([...ofCodes(), ...ofSpecifications()]))();
