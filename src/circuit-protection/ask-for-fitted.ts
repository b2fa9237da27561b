// What may be fitted, where device or conductor is not stated, as before the work?
// Follows the sizes that the rules give. Does not cover grounding and disconnect: those are results of their own.
import { ampere } from "../quantity/units/electricity.ts";
import type { CheckedCircuit } from "./check-circuit.ts";
import { decides, type Finding, open } from "./findings.ts";
import { word } from "./judge-device.ts";
import type { CircuitSizes } from "./size-circuit.ts";
import { say, verbatim } from "./statements.ts";

/** Asks for device and conductor, and says which are allowed; a conductor only where every point that it rests on decides. */
export function askForFitted(
  { rules, connection: { poles }, installed }: CheckedCircuit,
  { permitted: { ratings, kind }, ahead, run: { smallest, route } }: CircuitSizes,
): Finding[] {
  const asked = (["device", "conductor"] as const).filter((part) => !installed[part]);
  const found: Finding[] = asked.map((part) =>
    open(say(`circuit-protection.${part}-not-stated`), say(`circuit-protection.state-${part}`)),
  );
  if (!asked[0] || !ratings[0]) return found;
  const kinds = (kind === "fuse" ? [kind] : (["breaker", "fuse"] as const)).map(word);
  const device = { kinds, ratings, poles };
  const allowed =
    smallest && route.points.every((point) => decides(rules, point))
      ? say("circuit-protection.allowed", {
          ...device,
          size: verbatim(smallest.size),
          rating: ampere(ahead),
        })
      : say("circuit-protection.device-allowed", device);
  return [...found, open(allowed)];
}
