// Which pressure, how long, what is accepted? The rules in print, side by side.
// Follows the works cited in each row; a row from memory says so. Does not cover local amendments.

import { type Citation, cite } from "../assessment/assessment.ts";
import { frozen } from "../quantity/frozen.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { MPag, psig } from "../quantity/units/pressure.ts";
import { hour, minute } from "../quantity/units/time.ts";

/** How a rule was come by. */
export type RuleStanding = "published" | "from memory" | "common practice";

/** A rule for the test pressure, the hold and what is accepted. Source: stands in the row. */
export interface HoldRule {
  /** Name to choose it by. */
  readonly name: string;
  /** What the pressure is to be. */
  readonly pressure: string;
  /** Lowest stated test pressure, where the rule states a figure. */
  readonly testPressure?: Quantity<"gaugePressure"> | undefined;
  /** Shortest stated hold. */
  readonly hold?: Quantity<"duration"> | undefined;
  /** What passes. */
  readonly accept: string;
  /** Where it is printed. */
  readonly source: Citation;
  /** Read, remembered or habit. */
  readonly standing: RuleStanding;
}

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
 * holdRules.find(({ name }) => name === "guide specification, refrigerant piping")?.hold?.toString(); // => 24 h
 * ```
 */
export const holdRules: readonly HoldRule[] = /* @__PURE__ */ (() =>
  frozen([
    {
      name: "ASHRAE 15, field test",
      pressure: "each side: at least the lower of design pressure and relief setting",
      accept: "proved tight",
      source: cite("ashrae-15-2022", "field leak test; clause numbers vary by edition"),
      standing: "published",
    },
    {
      name: "ASHRAE 15, small A1 systems",
      pressure: "own charge at saturation of 68 °F or more: A1, site-erected, copper to 0.62 in OD",
      accept: "proved tight",
      source: cite("ashrae-15-2022", "exception, from a field checklist"),
      standing: "published",
    },
    {
      name: "ASHRAE 15-2022, standing pressure",
      pressure: "as for the field test",
      hold: minute(60),
      accept: "no drop",
      source: cite("ashrae-15-2022", "low confidence: verify before use"),
      standing: "from memory",
    },
    {
      name: "mechanical code checklist",
      pressure: "as for ASHRAE 15",
      hold: minute(10),
      accept: "no drop",
      source: cite("umc"),
      standing: "published",
    },
    {
      name: "IMC",
      pressure: "as ASHRAE 15; signed declaration of test above 55 lb of charge",
      accept: "proved tight",
      source: cite("imc-2021", "1110; 1108 to 2018"),
      standing: "from memory",
    },
    {
      name: "ASME B31.5, pneumatic",
      pressure: "at least 1.1 times design; relief so that nothing exceeds 130 % of design",
      accept: "leak test at design pressure; preliminary test at most 25 psig",
      source: cite("asme-b31-5-2022", "538.4.2; 1.1 and 538.4.3 from memory"),
      standing: "published",
    },
    {
      name: "EN 378-2",
      pressure: "strength 1.1 PS (1.43 PS by the component route); tightness at most PS",
      accept: "tight",
      source: cite("en-378-2"),
      standing: "from memory",
    },
    {
      name: "ISO 5149-2",
      pressure: "as EN 378-2",
      accept: "tight",
      source: cite("iso-5149-2"),
      standing: "from memory",
    },
    {
      name: "guide specification, refrigerant piping",
      pressure: "10 psig with bubble solution, then ASHRAE 15 pressure, at most 25 % above",
      hold: hour(24),
      accept: "corrected pressure unchanged",
      source: cite("ufgs-15182"),
      standing: "published",
    },
    {
      name: "guide specification, piping and equipment",
      pressure: "300 psi high side, 150 psi low side",
      testPressure: psig(150),
      hold: hour(2),
      accept: "no drop",
      source: cite("ufgs-15741n"),
      standing: "published",
    },
    {
      name: "guide specification, hermetic compressors",
      pressure: "at most 150 psig on hermetic compressors unless the nameplate says otherwise",
      accept: "proved tight",
      source: cite("ufgs-15730n"),
      standing: "published",
    },
    {
      name: "makers' manuals, R410A splits",
      pressure: "0.3 MPa for 3 min, 1.5 MPa for 3 to 5 min, then 3.73 to 4.3 MPa",
      testPressure: MPag(3.73),
      hold: hour(24),
      accept: "no drop after correction for temperature",
      source: cite("manufacturer-manuals"),
      standing: "published",
    },
    {
      name: "city code",
      pressure: "test pressure of the code",
      hold: hour(1),
      accept: "no detectable change",
      source: cite("municipal-code"),
      standing: "published",
    },
    {
      name: "small high-pressure splits",
      pressure: "300 to 600 psig, never above the nameplate limits",
      testPressure: psig(300),
      hold: minute(15),
      accept: "no drop; overnight when possible",
      source: cite("common-practice"),
      standing: "common practice",
    },
  ]))();
