// Which breaker or fuses, conductor, grounding and disconnect for each circuit, and how far does its voltage drop?
// Follows circuit-protection by the adopted rules. Does not cover fault levels and permits.
import type { Single } from "../assessment/statement.ts";
import {
  type CircuitAssessment,
  type CircuitInput,
  type CircuitRules,
  circuitFromNameplate,
} from "../circuit-protection/index.ts";
import { type Circuit, circuitRulesNamed } from "../commissioning/index.ts";
import { known } from "../quantity/known.ts";
import { isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { percent } from "../quantity/units/ratio.ts";
import { type Job, stated } from "./job.ts";
import type { PlanCheck } from "./plan.ts";
import { check, item, question, type Share, shareOf, together } from "./share.ts";
import { say, verbatim } from "./statements.ts";

/** All circuits. */
export function circuitShare(job: Job): Share {
  const { circuits = [] } = job.record.power ?? {};
  const own: readonly Circuit[] = circuits.length > 0 ? circuits : [{}];
  const outdoor = own.find(({ plate }) => plate === undefined);
  return together(own.map((one, i) => shareOfOne(job, one, i, one === outdoor)));
}

function shareOfOne(job: Job, circuit: Circuit, place: number, isOutdoor: boolean): Share {
  const path = `power.circuits[${place}]`;
  const { voltage, phases } = job.record.power ?? {};
  // Only one circuit feeds the outdoor unit: every other one has a plate of its own.
  const [plate, at] = isOutdoor
    ? [job.equipment, "equipment"]
    : [circuit.plate ?? {}, `${path}.plate`];
  const { rules: name } = circuit;
  const rules = name && circuitRulesNamed(name, job.rules);
  const called = circuit.name === undefined ? place + 1 : verbatim(circuit.name);
  if (name && !rules) {
    const said = say("planning.rules-not-passed", { circuit: called, rules: verbatim(name) });
    return { ask: [{ ...said, path: `${path}.rules`, changes: ["circuit"] }] };
  }
  // Metric nameplates print a rated current and a largest fuse instead.
  const metric = rules?.family === "metric";
  const ampacity =
    metric && !plate.minimumCircuitAmpacity ? "ratedCurrent" : "minimumCircuitAmpacity";
  const largest =
    metric && !plate.maximumOvercurrentProtection ? "maximumFuse" : "maximumOvercurrentProtection";
  const needs = {
    [`${path}.rules`]: rules,
    [`${at}.${ampacity}`]: plate[ampacity],
    [`${at}.${largest}`]: plate[largest],
    "power.voltage": voltage,
    "power.phases": phases,
    [`${path}.wiring`]: circuit.wiring,
    [`${path}.wiring.length`]: circuit.wiring?.length,
  };
  const make = () =>
    sized(circuit, called, path, rules, (fitted) => {
      const { protectionMarking, ratedLoadCurrent } = plate;
      return circuitFromNameplate(
        stated({
          rules,
          [ampacity]: plate[ampacity],
          [largest]: plate[largest],
          protectionMarking,
          ratedLoadCurrent,
          lockedRotorCurrent: isOutdoor ? job.equipment.lockedRotorCurrent : undefined,
          supply: stated<CircuitInput["supply"]>({
            voltage,
            phases,
            system: job.record.power?.system,
          }),
          wiring: circuit.wiring,
          powerFactor: circuit.powerFactor,
          occupancy: circuit.occupancy,
          sharedWith: circuit.sharedWith?.[0] && circuit.sharedWith,
          earthing: circuit.earthing,
          groundFaultText: circuit.groundFaultText,
          verifications: circuit.verifications,
          nameplateReadAgain: circuit.nameplateReadAgain,
          equipment: circuit.feeds,
          date: circuit.at?.slice(0, 10),
          installed: fitted,
        }),
      );
    });
  return shareOf("circuit", needs, make, { wiring: `${path}.wiring`, supply: "power.voltage" });
}

type Size = NonNullable<NonNullable<CircuitInput["installed"]>["conductor"]>;

/**
 * The drop to plan for, where the rules allow more: NFPA 70, 210.19, informational note, 3 % of 5 % on the branch circuit.
 * Elsewhere the 5 % count from the origin of the installation, so that the same share is left for what lies ahead.
 */
const plannedDrop = 0.03;

/** The circuit with the smallest conductor from the one needed that keeps the drop; nothing where that is it, or none does. */
function withinDrop(
  { conductor, voltageDrop }: CircuitAssessment,
  sizes: readonly Size[],
  circuitWith: (installed: CircuitInput["installed"]) => CircuitAssessment,
): CircuitAssessment | undefined {
  const keeps = ({ running, limit }: NonNullable<typeof voltageDrop>) =>
    isAtMost(running.ratio.si, Math.min(limit.si, plannedDrop));
  if (!conductor || !voltageDrop || keeps(voltageDrop)) return undefined;
  for (const size of sizes.slice(sizes.indexOf(conductor.size) + 1)) {
    const found = circuitWith({ conductor: size });
    if (found.voltageDrop && keeps(found.voltageDrop)) return found;
  }
  return undefined;
}

/** The field that decides whether a device against residual current is needed, where that is open. */
const decidedBy: Readonly<Record<string, "at" | "groundFaultText" | "earthing">> = {
  "circuit-protection.ground-fault-by-date": "at",
  "circuit-protection.ground-fault-open": "groundFaultText",
  "circuit-protection.residual-current-not-stated": "earthing",
};

/**
 * The clauses that will be left to check by their text: asked of the circuit as it stands once everything is fitted as
 * planned. A conductor, where the rules have no table to size it by, may be any: its size decides no clause.
 */
function clausesAhead(
  {
    device,
    conductor,
    equipmentGrounding,
    disconnect,
    residualCurrent,
    toVerify,
  }: CircuitAssessment,
  { installed }: Circuit,
  sizes: readonly Size[],
  circuitWith: (installed: CircuitInput["installed"]) => CircuitAssessment,
): readonly string[] {
  const size = conductor?.size ?? sizes.at(-1);
  const [rating] = device.ratings;
  if (!size || !rating) return toVerify;
  const fitted: NonNullable<CircuitInput["installed"]> = {
    device: { kind: device.kind === "fuse" ? "fuse" : "breaker", rating, poles: device.poles },
    conductor: size,
    equipmentGrounding: equipmentGrounding?.size ?? size,
    disconnect: {
      rating: disconnect.madeSize ?? disconnect.minimumRating,
      visible: true,
      lockable: true,
    },
    residualCurrent: residualCurrent ?? false,
  };
  const planned = { ...fitted, ...installed } as CircuitInput["installed"];
  return known(() => circuitWith(planned))?.toVerify ?? toVerify;
}

/** Sizes by ampacity, and the next conductor that keeps the drop where that one does not. */
function sized(
  circuit: Circuit,
  called: Single,
  path: string,
  rules: CircuitRules | undefined,
  circuitWith: (installed: CircuitInput["installed"]) => CircuitAssessment,
): Share {
  const sizes = rules?.conductors.rows.map(([size]) => size) ?? [];
  const least = circuitWith(circuit.installed as CircuitInput["installed"]);
  const { conductor, voltageDrop } = least;
  const found = (!circuit.installed?.conductor && withinDrop(least, sizes, circuitWith)) || least;
  const within = found.fittedConductor?.size;
  const larger = found !== least && within !== undefined && conductor;
  const { device, disconnect, equipmentGrounding: grounding, residualCurrent: limit } = found;
  const { sources } = found;
  const on = { circuit: called };
  const { minimumRating, madeSize = minimumRating, nonFusedAllowed } = disconnect;
  const ratings = { least: minimumRating, made: madeSize };
  const kinds =
    device.kind === "fuse"
      ? (["planning.device.fuse"] as const)
      : (["planning.device.breaker", "planning.device.fuse"] as const);
  const { drop, limit: most } = dropOf(voltageDrop);
  const goal = percent(Math.min(most.in(percent), 100 * plannedDrop));
  const said = [
    say("planning.device", { ...on, ratings: device.ratings, kinds, poles: device.poles }),
    ...(conductor
      ? [
          say("planning.conductor", {
            ...on,
            size: verbatim(conductor.size),
            usable: conductor.usable,
          }),
        ]
      : []),
    ...(larger
      ? [
          say("planning.conductor-for-drop", {
            ...on,
            drop,
            limit: goal,
            size: verbatim(within),
            smallest: verbatim(conductor.size),
          }),
        ]
      : []),
    ...(grounding ? [say("planning.grounding", { ...on, size: verbatim(grounding.size) })] : []),
    ...(limit
      ? [
          say(`planning.${rules?.groundFault ? "ground-fault" : "residual-current"}`, {
            ...on,
            limit,
          }),
        ]
      : []),
    say(nonFusedAllowed ? "planning.disconnect" : "planning.fused-disconnect", {
      ...on,
      ...ratings,
    }),
  ];
  const clauses = clausesAhead(found, circuit, sizes, circuitWith);
  return {
    bring: said.map((one) => item("circuit", one, sources, path)),
    check: [
      ...dropChecks(found, called, path),
      ...clauses.map((clause) => {
        const where = { rules: verbatim(found.rules), clause: verbatim(clause) };
        const one = say("planning.verify-clause", { ...on, ...where });
        return check("inconclusive", "circuit", one, sources, `${path}.verifications`);
      }),
    ],
    ask: [
      ...found.reasons.flatMap(({ code }) => {
        const field = decidedBy[code];
        const known = field === undefined || circuit[field] !== undefined;
        return known ? [] : [question(`${path}.${field}`, "circuit")];
      }),
      ...(clauses.length ? [question(`${path}.verifications`, "circuit")] : []),
    ],
    cautions: found.cautions,
  };
}

const rounded = (ratio: Quantity<"ratio">) => percent(Number(ratio.in(percent).toFixed(2)));

const dropOf = (drop: CircuitAssessment["voltageDrop"]) => ({
  drop: rounded(drop?.running.ratio ?? percent(0)),
  limit: rounded(drop?.limit ?? percent(0)),
});

function dropChecks(
  { voltageDrop, sources }: CircuitAssessment,
  circuit: Single,
  path: string,
): PlanCheck[] {
  if (!voltageDrop) return [];
  const { drop, limit } = dropOf(voltageDrop);
  const within = isAtMost(voltageDrop.running.ratio.si, voltageDrop.limit.si);
  const { starting } = voltageDrop;
  const said = say(`planning.drop-${within ? "within" : "above"}`, { circuit, drop, limit });
  return [
    check(within ? "pass" : "fail", "circuit", said, sources, path),
    ...(starting
      ? [
          check(
            "inconclusive",
            "circuit",
            say("planning.drop-at-start", { circuit, drop: rounded(starting.ratio) }),
            sources,
            path,
          ),
        ]
      : []),
  ];
}
