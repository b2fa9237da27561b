// What is done next? The actions of a verdict in order: every fail and every inconclusive has at least one.
// Find it by bubbles: 1e-5 Pa·m³/s in 30 s to 60 s, from leak-testing handbooks; by foam to 1e-6, from memory.
// Does not cover where to look first: joints, valve cores and caps, flares; the hoses of the test itself.
import { Quantity } from "../quantity/quantity.ts";
import { paM3PerS } from "../quantity/units/flow.ts";
import { percent } from "../quantity/units/ratio.ts";
import { minute, second } from "../quantity/units/time.ts";
import { ceilingOf } from "./criterion.ts";
import { combined } from "./drop.ts";
import type { Evidence, Found } from "./evidence.ts";
import { asTime, asWait, followToDecide, settleTo, shown } from "./figures.ts";
import { inUnit } from "./reasons.ts";
import { type PressureTestStatement, say } from "./statements.ts";
import type { UncertaintyPart } from "./uncertainty-part.ts";

/** How far the gas has to be from the temperature of the first reading to be worth waiting for, K; common practice, no source. */
const notable = 2;

/** The least distance from the gas that is worth asking for, K: a tenth of it is what thermometers show; common practice, no source. */
const near = 0.2;

/** What to do next, in order; nothing on a pass. */
export function actionsFor(evidence: Evidence, found: Found): PressureTestStatement[] {
  const { outcome, cause, ruling, leak } = found;
  const { doubts, first, unit } = evidence;
  if (outcome === "pass") return [];
  const asked = doubts.map(({ action }) => action);
  if (cause === "leak") return [findLeak(leak), say("pressure-test.repair-and-retest"), ...asked];
  if (cause === "unexplained-rise") return [say("pressure-test.close-supply"), ...asked];
  const largest = inUnit(ceilingOf(first.pressure - first.atmosphere), unit);
  const limit = ruling === "none" ? [say("pressure-test.state-limit", { largest })] : [];
  const stated = ruling === "across" ? betterEvidence(evidence) : [];
  const before = [...asked, ...limit, ...stated];
  return [...before, ...laterEvidence(evidence, found, before)];
}

/** What the user can say, and do at once, about what was assumed on the safe side and is much of the uncertainty: the soonest first. */
function betterEvidence(evidence: Evidence): PressureTestStatement[] {
  const { gas } = evidence;
  const of = (part: UncertaintyPart) =>
    evidence.shares.find((share) => share.part === part)?.u ?? 0;
  const most = (...but: UncertaintyPart[]) =>
    evidence.shares.reduce((u, share) => (but.includes(share.part) ? u : Math.max(u, share.u)), 0);
  // The warmth goes by itself: what is left beside it counts.
  const isGasMuch = of("gas-temperature") > most("settling") / 2;
  const actions: PressureTestStatement[] = [];
  if (gas.asks.elsewhere && isGasMuch) {
    actions.push(say("pressure-test.state-elsewhere"));
  }
  if (gas.asks.change && isGasMuch) {
    const share = percent(Number((100 * gas.elsewhere).toPrecision(3)));
    actions.push(say("pressure-test.measure-elsewhere", { share }));
  }
  if (of("settling") > most() / 2) {
    // Until it is not much beside the others.
    const settle = asTime(settleTo(most("settling") / 2, evidence));
    actions.push(
      gas.asks.sinceFill
        ? say("pressure-test.state-since-fill", { settle })
        : say("pressure-test.settle-first", { settle }),
    );
  }
  return actions;
}

/** What takes another reading: nearer to the gas, at the first temperature, or later; else what is least sure. */
function laterEvidence(
  evidence: Evidence,
  { further, inVain, U, ruling }: Found,
  before: readonly PressureTestStatement[],
): PressureTestStatement[] {
  const { first, last, shares, unit, thermometer, gas } = evidence;
  const isAlone = before.length === 0;
  const [worst] = shares;
  const actions: PressureTestStatement[] = [];
  const within = followToDecide(evidence, U / combined(shares));
  if (
    isAlone &&
    ruling === "across" &&
    gas.asks.within &&
    worst?.part === "gas-temperature" &&
    within > near
  ) {
    const { difference } = thermometer;
    const tenths = Math.floor((10 * within) / difference.scale) / 10;
    actions.push(say("pressure-test.state-follows-gas", { within: difference(tenths) }));
  }
  // Where the first reading has to be taken again, no hold goes on from it.
  const isAgain = before.some(({ code }) => settles.includes(code));
  const [start = 0] = first.temperatures;
  const away = Math.abs((last.temperatures[0] ?? start) - start) > notable;
  if (inVain && away && isAlone) {
    const temperature = new Quantity(start, thermometer);
    actions.push(say("pressure-test.read-at-first-temperature", { temperature }));
  } else if (further > 0 && !isAgain) {
    actions.push(say("pressure-test.hold-longer", { further: asWait(further) }));
  } else if (worst && isAlone && actions.length === 0) {
    const part = `pressure-test.part.${worst.part}` as const;
    actions.push(say("pressure-test.reduce-uncertainty", { part, share: inUnit(worst.u, unit) }));
  }
  return actions;
}

/** The actions that ask for another first reading. */
const settles: readonly string[] = ["pressure-test.settle-first", "pressure-test.state-since-fill"];

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
