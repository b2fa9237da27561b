// How is a proven leak found? The methods that show one of its size, in the order of their effort.
// Follows published sensitivities of leak detection: bubbles by immersion about 1e-4 mbar·L/s, watched for 30 s to
// 60 s; a bubble of 1 mm a second about 1e-3 mbar·L/s; electronic detectors 5 g a year (EN 14624, from memory).
// Does not cover leaks that open only when they are warm or vibrate.
import { second } from "../quantity/units/time.ts";
import { say, type VacuumDecayStatement } from "./statements.ts";

/** Nitrogen of 300 psig drives at least this many times what one atmosphere drives: molecular flow. */
const underPressure = 20;
/** Leak that makes a bubble of 1 mm a second, Pa·m³/s. */
const bubbleASecond = 1e-4;

/** Where to look for a leak that lets in a throughput, Pa·m³/s, and what to do then. */
export function findLeak(throughput: number): VacuumDecayStatement[] {
  const large = throughput * underPressure > bubbleASecond;
  const watch = { least: second(large ? 10 : 60), most: second(large ? 30 : 120) };
  return [
    say("vacuum-decay.find-with-bubbles", watch),
    ...(large ? [] : [say("vacuum-decay.find-with-tracer")]),
    say("vacuum-decay.repair-leak"),
  ];
}
