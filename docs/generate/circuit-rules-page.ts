// Which rule of which country is confirmed, secondary, from memory or missing? The points of every rule set as a table.
// Reads the rule sets themselves, so that the page cannot say more than they do. Does not cover their figures.
import {
  asNzs3000Australia,
  asNzs3000NewZealand,
  bs7671,
  type CircuitRules,
  cec2024,
  iec60364,
  japan,
  nec2020,
  nec2023,
  nec2026,
  type RulePoint,
} from "hvac-install-math/circuit-protection";
import { english } from "hvac-install-math/language/en";
import { type Page, page, plain, table, wholeWidth } from "./page.ts";

const sets: readonly CircuitRules[] = [
  nec2020,
  nec2023,
  nec2026,
  cec2024,
  iec60364,
  bs7671,
  asNzs3000Australia,
  asNzs3000NewZealand,
  japan,
];

/** The page. */
export function circuitRulesPage(): Page {
  const points = [...new Set(sets.flatMap((set) => Object.keys(set.points) as RulePoint[]))];
  return page("circuit-rules.md", "Circuit rules by country", [
    "# Circuit rules by country",
    wholeWidth,
    "Each point on which a circuit is judged, by its clause and by how the rule came into the rule set. **confirmed**: two or more public texts agree, or the law was read. **secondary**: one transcription, or a text of the trade. **memory**: remembered, not read. **missing**: the rule exists, its content was not found. A dash: not judged under these rules. Outside the United States and the IEC a point that is not confirmed decides nothing; there a verdict stays inconclusive and names the clause.",
    table(["point", ...sets.map(({ name }) => name)], points.map(row)),
    table(
      ["rule set", "held against its source on", "unconfirmed points decide"],
      sets.map(({ name, reviewed, onlyConfirmed }) => [
        name,
        reviewed,
        onlyConfirmed ? "no" : "yes, with a finding that says so",
      ]),
    ),
  ]);
}

function row(point: RulePoint): string[] {
  const word = english.messages[`circuit-protection.point.${point}`];
  return [
    plain(String(word)),
    ...sets.map(({ points }) => {
      const found = points[point];
      return found ? `**${found.standing}**<br><small>${plain(found.clause)}</small>` : "–";
    }),
  ];
}
