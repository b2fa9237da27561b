import type { CircuitRules, RuleFamily, WiringOf } from "./rules/circuit-rules.ts";
import type { AnyWiring } from "./usable-ampacity.ts";

/** What the tables were read with because it was not stated, in words; empty when all was. */
export function assumedWiring<F extends RuleFamily>(
  rules: CircuitRules<F>,
  wiring: WiringOf<F>,
): string {
  const { aboveRoof, ambient, cable, terminations, currentCarryingConductors, groupedCircuits } =
    (wiring ?? {}) as AnyWiring;
  const list = [!ambient && "30 °C around it"];
  if (rules.family === "awg") {
    list.push(!terminations && "terminations not marked 75 °C");
    list.push(!cable && "no NM cable", !aboveRoof && "not just above a roof");
    list.push(!currentCarryingConductors && "at most 3 loaded conductors together");
  } else list.push(!groupedCircuits && "no other circuit beside it");
  return list.filter(Boolean).join(", ");
}
