// Is the date of a circuit that of this work? It decides which rules with dates apply, so a slip of it can waive a duty.
// Follows NFPA 70, 210.8(F), whose duty begins on a day; what is long before is common practice, no source.
// Does not cover which day an authority counts: that of the permit, or that of the installation.
import { type Dated, type IsoTime, surelyBefore } from "../shapes/index.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import { fieldWord, verbatim } from "./words.ts";

/** Three months: a circuit that waits longer for its unit is rare. */
const long = 92 * 86_400_000; // ms

/** The circuits that are dated long before the first other work. */
export function circuitsLongBefore(work: readonly Dated[]): CommissioningStatement[] {
  const dated = work.filter((one): one is [string, IsoTime] => one[1] !== undefined);
  const isCircuit = ([path]: Dated) => path.startsWith("power.circuits");
  const others = dated.filter((one) => !isCircuit(one));
  let [first] = others;
  for (const one of others) if (first && surelyBefore(one[1], first[1])) first = one;
  if (!first) return [];
  const [path, at] = first;
  return dated.filter(isCircuit).flatMap(([, circuit]) =>
    surelyBefore(circuit, at, -long)
      ? [
          say("commissioning.circuit-long-before", {
            circuit: verbatim(circuit.slice(0, 10)),
            first: verbatim(at.slice(0, 10)),
            field: fieldWord(path),
          }),
        ]
      : [],
  );
}
