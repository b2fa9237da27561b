// Is the nameplate read right? Checks of its figures against each other.
// Follows NFPA 70 (2023), 440.4(B), 240.6(A); UL 1995, 37.14 and 37.15, for the ceiling.
// Does not cover the short-circuit current rating on the nameplate.
import { ampere } from "../quantity/units/electricity.ts";
import type { CheckedCircuit } from "./check-circuit.ts";
import { assumed, type Finding, noted, open } from "./findings.ts";
import type { CircuitSizes } from "./size-circuit.ts";
import { say } from "./statements.ts";

/** Judges the figures of the nameplate. */
export function judgeNameplate(
  { rules, input, plate }: CheckedCircuit,
  { load, equipment }: CircuitSizes,
): Finding[] {
  const { maximum, own, shared } = plate;
  const ampacity = ampere(own);
  const found: Finding[] = [];
  if (input.protectionMarking === undefined) {
    found.push(assumed(say("circuit-protection.marking-assumed")));
  }
  if (shared > 0) found.push(noted(say("circuit-protection.shared-circuit", { count: shared })));
  if (load.by === "ampacity") {
    found.push(assumed(say("circuit-protection.rated-load-assumed", { ampacity })));
  }
  const { ratedLoadCurrent } = input;
  if (load.by === "disbelieved" && ratedLoadCurrent) {
    found.push(
      noted(say("circuit-protection.rated-load-low", { load: ratedLoadCurrent, ampacity })),
    );
  }
  if (equipment.by === "nameplate") {
    found.push(
      assumed(
        say("circuit-protection.compressor-inferred", { maximum: ampere(maximum), ampacity }),
      ),
    );
  }
  return [...found, ...judgeMaximum({ rules, input, plate })];
}

/** The marked maximum: there at all, a size that is made, and not more than belongs to the ampacity. */
function judgeMaximum({
  rules,
  input,
  plate,
}: Pick<CheckedCircuit, "rules" | "input" | "plate">): Finding[] {
  const { own, rounding, shared } = plate;
  if (!Number.isFinite(plate.maximum)) {
    return [
      open(say("circuit-protection.maximum-not-stated"), say("circuit-protection.state-maximum")),
    ];
  }
  const maximum = ampere(plate.maximum);
  const found: Finding[] = [];
  const { breaker, fuse } = rules.ratings;
  if (![...breaker, ...fuse].includes(plate.maximum) || plate.maximum < rules.smallestRating) {
    found.push(noted(say("circuit-protection.not-a-usual-size", { maximum })));
  }
  // From MOP ≤ 2.25·L1 + rest and MCA ≥ 1.25·L1 + rest: MOP ≤ 1.8·MCA, or the floor of UL 1995, 37.15. The size
  // that reaches the ampacity, the other floor there, is below 1.8 times it all along the list from 10 A.
  const { compressorProtection, ampacityFactor, smallestRating } = rules;
  if (!compressorProtection || shared > 0) return found;
  const ceiling = Math.max((2.25 / ampacityFactor) * (own + rounding), smallestRating);
  if (plate.maximum <= ceiling) return found;
  const values = { maximum, ampacity: ampere(own) };
  return [
    ...found,
    input.nameplateReadAgain
      ? noted(say("circuit-protection.maximum-confirmed", values))
      : open(
          say("circuit-protection.maximum-too-high", values),
          say("circuit-protection.read-nameplate-again"),
        ),
  ];
}
