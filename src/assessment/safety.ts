// What can hurt someone in this work? The dangers that several modules warn of, each with one code.
// Follows manufacturers' published manuals and ANSI/ASHRAE 15, in our own words.
// Does not cover first aid, transport or the law on refrigerants and electrical work.
import { frozen } from "../quantity/frozen.ts";
import { type Caution, caution, inOrder } from "./caution.ts";
import { type None, type Say, type Statement, type StatementOf, sayer } from "./statement.ts";

/**
 * What every module may say: who governs, and the dangers of the trade.
 *
 * Source: manufacturers' published manuals; ANSI/ASHRAE Standard 15 for the field test; common practice, no source,
 * for the rest.
 */
export interface SafetyStatements {
  "safety.others-govern": None;
  "safety.dry-nitrogen-only": None;
  "safety.regulator-and-relief": None;
  "safety.raise-in-stages": None;
  "safety.lowest-rating": None;
  "safety.nitrogen-suffocates": None;
  "safety.open-under-pressure": None;
  "safety.refrigerant-contact": None;
  "safety.flammable-refrigerant": None;
  "safety.toxic-refrigerant": None;
  "safety.refrigerant-suffocates": None;
  "safety.charge-tight-system": None;
  "safety.refrigerant-air-mixture": None;
  "safety.compressor-in-vacuum": None;
  "safety.line-voltage": None;
  "safety.meter-category": None;
  "safety.running-unit": None;
  "safety.work-at-height": None;
}

/** One of these statements. Source: see {@link SafetyStatements}. */
export type SafetyStatement = StatementOf<SafetyStatements>;

const say: Say<SafetyStatements> = /* @__PURE__ */ sayer();

/** Nameplate, manual, local code and license come first: said once by every verdict. */
const othersGovern: Caution<SafetyStatement> = /* @__PURE__ */ caution(
  "governing",
  /* @__PURE__ */ say("safety.others-govern"),
);

/** One of the dangers that modules share. */
export function danger(
  code: Exclude<keyof SafetyStatements, "safety.others-govern">,
): Caution<SafetyStatement> {
  return caution("danger", say(code));
}

/** Cautions as a result carries them: in order, each said once, and who governs last; frozen. */
export function heed<S extends Statement>(
  cautions: readonly Caution<S>[],
): readonly Caution<S | SafetyStatement>[] {
  return frozen(inOrder<S | SafetyStatement>([...cautions, othersGovern]));
}
