// What is done next? The actions of a verdict in order: every fail and every inconclusive has at least one.
// Find it by bubbles: 1e-5 Pa·m³/s in 30 s to 60 s, from leak-testing handbooks; by foam to 1e-6, from memory.
// Does not cover where to look first: joints, valve cores and caps, flares; the hoses of the test itself.
import { Quantity } from "../quantity/quantity.ts";
import { paM3PerS } from "../quantity/units/flow.ts";
import { hour, minute, second } from "../quantity/units/time.ts";
import { ceilingOf } from "./criterion.ts";
import type { Evidence, Found } from "./evidence.ts";
import { asWait, shown } from "./figures.ts";
import { inUnit } from "./reasons.ts";
import { type PressureTestStatement, say } from "./statements.ts";
import type { Share, UncertaintyPart } from "./uncertainty-part.ts";

/** How far the gas has to be from the temperature of the first reading to be worth waiting for, K; common practice, no source. */
const notable = 2;

/** What to do next, in order; nothing on a pass. */
export function actionsFor(evidence: Evidence, found: Found): PressureTestStatement[] {
  const { outcome, cause, ruling, further, inVain, leak } = found;
  const { doubts, first, last, shares, unit, thermometer } = evidence;
  if (outcome === "pass") return [];
  const asked = doubts.map(({ action }) => action);
  if (cause === "leak") return [findLeak(leak), say("pressure-test.repair-and-retest"), ...asked];
  if (cause === "unexplained-rise") return [say("pressure-test.close-supply"), ...asked];
  const actions = [...asked];
  if (ruling === "none") {
    const largest = inUnit(ceilingOf(first.pressure - first.atmosphere), unit);
    actions.push(say("pressure-test.state-limit", { largest }));
  }
  if (ruling === "across") actions.push(...betterEvidence(evidence));
  const [worst] = shares;
  // Where the first reading has to be taken again, no hold goes on from it.
  const [start = 0] = first.temperatures;
  const away = Math.abs((last.temperatures[0] ?? start) - start) > notable;
  if (inVain && away && actions.length === 0) {
    const temperature = new Quantity(start, thermometer);
    actions.push(say("pressure-test.read-at-first-temperature", { temperature }));
  } else if (further > 0 && actions[0]?.code !== "pressure-test.settle-first") {
    actions.push(say("pressure-test.hold-longer", { further: asWait(further) }));
  } else if (worst && actions.length === 0) {
    const part = `pressure-test.part.${worst.part}` as const;
    actions.push(say("pressure-test.reduce-uncertainty", { part, share: inUnit(worst.u, unit) }));
  }
  return actions;
}

/** What the user can say or do about what was assumed on the safe side, where that is much of the uncertainty. */
function betterEvidence({ shares, gas }: Evidence): PressureTestStatement[] {
  const [worst] = shares;
  const isMuch = (part: UncertaintyPart) =>
    shares.some((share) => share.part === part && share.u > (worst as Share).u / 2);
  // An hour lets gas and tubing settle within what an instrument shows; common practice, no source.
  return [
    ...(isMuch("settling") ? [say("pressure-test.settle-first", { settle: hour(1) })] : []),
    ...(gas.asksElsewhere && isMuch("gas-temperature")
      ? [say("pressure-test.state-elsewhere")]
      : []),
  ];
}

/** Smallest leak that bubble solution shows in a minute, and by foam in ten; Pa·m³/s. */
const BUBBLES = 1e-5;
const FOAM = 1e-6;

/** The method for a leak, Pa·m³/s at the test pressure; undefined when volume or time are unknown. */
function findLeak(size: number | undefined): PressureTestStatement {
  const watch = minute(1);
  if (size === undefined) return say("pressure-test.find-of-unknown-size", { watch });
  const leak = shown(size, paM3PerS);
  if (size >= BUBBLES) return say("pressure-test.find-by-bubbles", { leak, watch });
  if (size >= FOAM) return say("pressure-test.find-by-foam", { leak, watch: minute(10) });
  // Detectors answer within seconds; as long again for the gas to come out of the joint: from memory.
  return say("pressure-test.find-by-tracer", { leak, watch: second(10) });
}
