// Which rule of which country is confirmed, secondary, from memory or missing? The points of every rule set as a table.
// Reads the rule sets themselves, so that the page cannot say more than they do. Does not cover their figures.
import type { CircuitRules, RulePoint } from "hvac-install-math/circuit-protection";
import { circuitRules } from "hvac-install-math/commissioning";
import { english } from "hvac-install-math/language/en";
import { type Page, page, plain, table, wholeWidth } from "./page.ts";

const sets: readonly CircuitRules[] = Object.values(circuitRules);

/** The page. */
export function circuitRulesPage(): Page {
  const points = [...new Set(sets.flatMap((set) => Object.keys(set.points) as RulePoint[]))];
  return page("circuit-rules.md", "Circuit rules by country", [
    "# Circuit rules by country",
    wholeWidth,
    "Each point on which a circuit is judged, by its clause and by how the rule came into the rule set. **confirmed**: two or more public texts agree, or the law was read. **secondary**: one transcription, or a text of the trade. **memory**: remembered, not read. **missing**: the rule exists, its content was not found. A dash: not judged under these rules. Outside the United States and the IEC a point that is not confirmed decides nothing; there a verdict stays inconclusive and names the clause. A check by the text of the standard (`verifications`) names a clause as the verdict's `toVerify` does: as it stands here, several together where several stand here.",
    table(["point", ...sets.map(({ name }) => name)], points.map(row)),
    table(
      ["rule set", "held against its source on", "unconfirmed points decide"],
      sets.map(({ name, reviewed, onlyConfirmed }) => [
        name,
        reviewed,
        onlyConfirmed ? "no" : "yes, with a finding that says so",
      ]),
    ),
    "## Adopted texts on ground-fault protection",
    "What `groundFaultText` may be, where the adopted text decides: one of these, or `not adopted`.",
    table(
      ["rule set", "texts"],
      sets
        .filter(({ groundFault }) => groundFault)
        .map(({ name, groundFault }) => [
          name,
          (groundFault?.texts ?? []).map((text) => `\`${text.name}\``).join(", "),
        ]),
    ),
    "## Rules that are missing",
    "Rules that exist, that an app may look for here, and that no function judges.",
    table(["country", "rule", "why it is missing"], missing),
  ]);
}

/** What no function judges, and why. */
const missing: readonly (readonly string[])[] = [
  [
    "Japan",
    "Earth of class D: at most 100 Ω, or 500 Ω where a leakage breaker trips within 0.5 s (Interpretation, art. 17)",
    "The figures were read in one country's pages of the trade; the input has no resistance of an earth. The result tells of the duty and judges only the size of the wire.",
  ],
  [
    "United States",
    "Largest charge of a room by ASHRAE 15.2-2022, residential tables",
    "The tables were not found in a public text. ASHRAE 15 and UL 60335-2-40 are judged instead.",
  ],
  [
    "United States",
    "Leak repair by 40 CFR 84.106 and 40 CFR 82, subpart F",
    "From memory: from 15 lb of an HFC, residential and light commercial air conditioning exempt; from 50 lb of an ozone-depleting refrigerant. A law that was not read decides nothing.",
  ],
];

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
