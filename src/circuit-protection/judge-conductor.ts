// Do the fitted conductors carry the unit, are they protected, and do they fit the terminals?
// Follows NFPA 70 (2023), 110.14, 240.4, 310.15, 440.35; CSA C22.1, 4-004, 4-006, 14-104; IEC 60364-4-43:2008, 433.1.
// Does not cover what they are made of beyond the stated material, and their condition.
import { ampere } from "../quantity/units/electricity.ts";
import type { CheckedCircuit } from "./check-circuit.ts";
import { clauseOf, type Finding, judged, open, toVerify } from "./findings.ts";
import { carries, isProtected, type PlainDemand } from "./minimum-conductor.ts";
import type { CircuitRules, RuleFamily, RulePoint, SizeOf } from "./rules/index.ts";
import type { CircuitSizes, SizedSection } from "./size-circuit.ts";
import { type CircuitProtectionStatement, type Section, say, verbatim } from "./statements.ts";
import { cellIn } from "./table.ts";
import type { UsableAmpacity } from "./usable-ampacity.ts";

/** Judges run, whip and terminals. */
export function judgeConductors<F extends RuleFamily>(
  circuit: CheckedCircuit<F>,
  sizes: CircuitSizes<F>,
): Finding[] {
  const { installed } = circuit;
  const { conductor, whip } = installed;
  return [
    ...(conductor ? judgeSection(circuit, sizes, sizes.run, "run", conductor) : []),
    ...(whip && sizes.whip ? judgeSection(circuit, sizes, sizes.whip, "whip", whip.conductor) : []),
    ...judgeTerminals(circuit),
  ];
}

/** One section: enough ampacity as it runs, and protected by its device where that is asked for. */
function judgeSection<F extends RuleFamily>(
  { rules }: CheckedCircuit<F>,
  { equipment }: CircuitSizes<F>,
  { route, demand, fitted, smallest }: SizedSection<F>,
  section: Section,
  size: SizeOf<F>,
): Finding[] {
  if (fitted === undefined) return [notJudged(rules, size)];
  const values = {
    section: `circuit-protection.section.${section}` as const,
    size: verbatim(size),
    usable: fitted.usable,
    ampacity: ampere(demand.ampacity),
    rating: ampere(demand.rating),
  };
  const { ampacity: _, ...unprotected } = values;
  const larger = remedyOf(smallest);
  const met = say("circuit-protection.conductor-met", values);
  const found = judged(
    rules,
    pointsOf(rules, route.points, demand, fitted.size),
    "conductor",
    carries(fitted, demand),
    {
      met,
      broken: say("circuit-protection.conductor-too-small", values),
      actions: [larger],
    },
  );
  if (found[0]?.as !== "pass" || isProtected(rules, fitted, demand)) return found;
  const asCompressor = { ...demand, equipment: "motor-compressor" as const };
  if (equipment.by === "unknown" && isProtected(rules, fitted, asCompressor)) {
    const { rating } = values;
    return [
      open(
        say("circuit-protection.equipment-not-stated", { size: values.size, rating }),
        say("circuit-protection.state-equipment"),
      ),
    ];
  }
  return judged(rules, ["overload"], "conductor", false, {
    met,
    broken: say("circuit-protection.conductor-unprotected", unprotected),
    actions: [larger],
  });
}

const remedyOf = <F extends RuleFamily>(
  smallest: UsableAmpacity<F> | undefined,
): CircuitProtectionStatement =>
  smallest
    ? say("circuit-protection.fit-conductor", { size: verbatim(smallest.size) })
    : say("circuit-protection.fit-larger-conductor");

/** A size for which the rule set has no confirmed table. */
function notJudged(rules: CircuitRules, size: string): Finding {
  const clause = clauseOf(rules, "ampacity");
  const values = { size: verbatim(size), clause: verbatim(clause) };
  const said = say("circuit-protection.conductor-not-judged", values);
  const actions = [
    say("circuit-protection.size-conductor-elsewhere", { clause: verbatim(clause) }),
  ];
  return { ...toVerify(rules, clause, "conductor", said), actions };
}

/** Rating up to which a gG fuse's conventional fusing current is 2.1 In; IEC 60269-2, from memory. */
const smallFuse = 4; // A

/**
 * The points that the judgment rests on. A missing cap of sheathed cable matters only where the cap would bind, the
 * fusing current of small fuses only behind one.
 */
function pointsOf<F extends RuleFamily>(
  rules: CheckedCircuit<F>["rules"],
  points: readonly RulePoint[],
  { ampacity, material, device, rating }: PlainDemand,
  size: SizeOf<F>,
): RulePoint[] {
  const capped = cellIn(rules.ampacity ?? [], size, `${material} 60 °C`) ?? 0;
  const idle = !rules.sheathedCableColumn && capped >= ampacity;
  const small =
    rules.points["small-fuse"] && device === "fuse" && rating > 0 && rating <= smallFuse;
  return [
    ...points.filter((point) => point !== "sheathed-cable" || !idle),
    ...(small ? (["small-fuse"] as const) : []),
  ];
}

/** Aluminum needs terminals that are marked for it. */
function judgeTerminals({ rules, input, installed, whipWiring }: CheckedCircuit): Finding[] {
  const materials = [input.wiring.material, whipWiring.material];
  if (!materials.includes("aluminum")) return [];
  const { aluminumTerminals: marked } = installed;
  if (marked === undefined) {
    return [
      open(
        say("circuit-protection.aluminum-terminals-not-stated"),
        say("circuit-protection.look-at-terminals"),
      ),
    ];
  }
  return judged(rules, ["aluminum-terminals"], "terminals", marked, {
    met: say("circuit-protection.aluminum-terminals-met"),
    broken: say("circuit-protection.aluminum-terminals-missing"),
    actions: [say("circuit-protection.fit-aluminum-terminals")],
  });
}
