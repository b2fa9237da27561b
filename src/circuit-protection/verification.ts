// Who checked a clause by the text of the standard, where this library does not know it, and what does that settle?
// Follows the standing of the rules: an answer is taken for the clauses that were asked for, and for no others.
// Does not cover whether the person may certify: licensed practice and the authority say that.
import { dayOf, flagOf, listOf, objectOf, refuse, textOf } from "../quantity/check.ts";
import { type Finding, noted, open } from "./findings.ts";
import { say, verbatim } from "./statements.ts";

/**
 * What a person found who checked the circuit by the text of a clause that this library does not know well enough.
 */
export interface ClauseVerification {
  /** The clause, as the verdict names it in `toVerify`. */
  readonly clause: string;
  /** Whether the circuit complies with it. */
  readonly complies: boolean;
  /** Name of who checked it. */
  readonly by: string;
  /** The day on which it was checked, as "2026-11-29", or a time of that day. */
  readonly at: string;
}

/** Checks the form of verifications. */
export function checkVerifications(argument: string, given: readonly ClauseVerification[]): void {
  for (const [i, one] of listOf(argument, given, 100).entries()) {
    const path = `${argument}[${i}]`;
    const { clause, complies, by, at } = objectOf(path, one);
    textOf(`${path}.clause`, clause);
    flagOf(`${path}.complies`, complies);
    if (!/\p{L}/u.test(textOf(`${path}.by`, by))) refuse(`${path}.by`, by, "a name", "text");
    dayOf(`${path}.at`, textOf(`${path}.at`, at).slice(0, 10));
  }
}

/** The findings, with what was verified in the place of what was asked for. */
export function verified(
  rules: string,
  findings: readonly Finding[],
  verifications: readonly ClauseVerification[],
): readonly Finding[] {
  const asked = new Set(findings.flatMap((one) => (one.as === "unconfirmed" ? [one.clause] : [])));
  const answered = findings.flatMap((one): readonly Finding[] => {
    if (one.as !== "unconfirmed") return [one];
    const own = verifications.filter(({ clause }) => clause === one.clause);
    // One who found it wrong outweighs all who found it right.
    const answer = own.find(({ complies }) => !complies) ?? own[0];
    if (!answer) return [one];
    const { clause, complies, by, at } = answer;
    const where = { rules: verbatim(rules), clause: verbatim(clause) };
    const word = { ...where, by: verbatim(by), date: verbatim(at.slice(0, 10)) };
    if (complies) return [noted(say("circuit-protection.verified", word)), ...one.besides];
    return [
      {
        as: "fail",
        part: one.part,
        said: say("circuit-protection.found-not-to-comply", word),
        actions: [say("circuit-protection.comply-and-verify", where)],
      },
    ];
  });
  const others = verifications.filter(({ clause }) => !asked.has(clause));
  return [
    ...answered,
    // More than was asked for settles nothing; but nobody's "does not comply" is passed over.
    ...others.map(({ clause: text, complies }) => {
      const clause = verbatim(text);
      const said = say("circuit-protection.clause-not-asked-for", { clause });
      if (complies) return noted(said);
      return open(said, say("circuit-protection.withdraw-verification", { clause }));
    }),
  ];
}
