// Room limit, added charge, valves: how much refrigerant goes in, and may it?
// Follows charge-limit and line-set, which decide; the weighed charge against the rule by JCGM 106:2012, 8.3.
// Does not cover a charge by superheat or subcooling: see the operation.
import { type Assessment, cite, overallOutcome, statement } from "../assessment/assessment.ts";
import { conformity } from "../assessment/conformity.ts";
import { standardUncertainty } from "../assessment/uncertainty.ts";
import { assessConcentration, assessRoomCharge } from "../charge-limit/index.ts";
import { additionalCharge, type ChargeAssessment } from "../line-set/index.ts";
import { siOf } from "../quantity/check.ts";
import { isInvalidInputError } from "../quantity/errors.ts";
import { Quantity } from "../quantity/quantity.ts";
import { kg } from "../quantity/units/mass.ts";
import { refrigerantByDesignation } from "../refrigerants/index.ts";
import { refrigerantOf, stated } from "./job.ts";
import type { InstallationRecord } from "./record.ts";
import { given, type Trial, type Tried, tryAll } from "./step.ts";
import { doubtedRate } from "./try-rate.ts";
import { errorsOf } from "./try-tightness.ts";

/** What the manual's rule needs. */
function ruleNeeds({ tubing, equipment }: InstallationRecord): Record<string, unknown> {
  const { preChargedLength, chargeRate, shortLineRule } = equipment?.manual ?? {};
  return {
    "tubing.length": tubing?.length,
    "equipment.manual.preChargedLength": preChargedLength,
    "equipment.manual.chargeRate": chargeRate,
    "equipment.manual.shortLineRule": shortLineRule,
    "equipment.factoryCharge": equipment?.factoryCharge,
  };
}

const rulePaths = {
  length: "tubing.length",
  preChargedLength: "equipment.manual.preChargedLength",
  rate: "equipment.manual.chargeRate",
  shortLineRule: "equipment.manual.shortLineRule",
  factoryCharge: "equipment.factoryCharge",
  maximumCharge: "equipment.maximumCharge",
  maximumLength: "equipment.manual.run.maximumLength",
  minimumLength: "equipment.manual.run.minimumLength",
  scaleResolution: "instruments.scale.resolution",
  designation: "equipment.refrigerant",
  refrigerant: "equipment.refrigerant",
  instrument: "instruments.scale",
};

/** The manual's rule for this run. */
function ruleOf({ tubing, equipment, instruments }: InstallationRecord): ChargeAssessment {
  const { preChargedLength, chargeRate, shortLineRule, run } = equipment?.manual ?? {};
  return additionalCharge(
    given({
      safetyClass:
        equipment?.refrigerant === undefined ? undefined : safetyClassOf(equipment.refrigerant),
      length: tubing?.length,
      preChargedLength,
      rate: chargeRate,
      shortLineRule,
      factoryCharge: equipment?.factoryCharge,
      maximumCharge: equipment?.maximumCharge,
      // A stated limit with bends is one of equivalent length: the run is judged by it, not this.
      maximumLength: run?.bendEquivalentLength ? undefined : run?.maximumLength,
      minimumLength: run?.minimumLength,
      scaleResolution: instruments?.scale?.resolution,
    }),
  );
}

/** Its safety class, where the name is one that the library knows: only the cautions hang on it. */
export function safetyClassOf(
  name: string,
): ReturnType<typeof refrigerantOf>["safetyClass"] | undefined {
  try {
    return refrigerantByDesignation(name).safetyClass;
  } catch {
    return undefined;
  }
}

/** The larger of what was weighed in and what the rule asks for, on top of the factory charge, kg. */
function totalOf(record: InstallationRecord): Quantity<"mass"> {
  const { factoryCharge } = record.equipment ?? {};
  const added = record.charge?.added?.si;
  const factory = factoryCharge?.si ?? 0;
  const asked = hasAll(ruleNeeds(record)) ? planned(record) : undefined;
  const most = Math.max(added ?? -Infinity, asked ?? -Infinity);
  return new Quantity(factory + most, factoryCharge?.unit ?? kg);
}

function planned(record: InstallationRecord): number | undefined {
  try {
    return ruleOf(record).additionalCharge.si;
  } catch (error) {
    // What is wrong with the rule is named by the charge step; a weighed charge can still be judged.
    if (isInvalidInputError(error) && record.charge?.added) return undefined;
    throw error;
  }
}

const hasAll = (needs: Record<string, unknown>) =>
  Object.values(needs).every((value) => value !== undefined);

/** May the room hold it? */
export function tryRoomLimit(record: InstallationRecord): Tried {
  const { room, equipment, charge, instruments } = record;
  const scale = errorsOf(instruments?.scale);
  const { refrigerant } = equipment ?? {};
  const burns = /^A[23]/.test((refrigerant && safetyClassOf(refrigerant)) ?? "");
  const needs = {
    "equipment.refrigerant": refrigerant,
    "equipment.factoryCharge": equipment?.factoryCharge,
    ...(charge?.added ? {} : ruleNeeds(record)),
  };
  const paths = {
    ...rulePaths,
    charge: "equipment.factoryCharge",
    volume: "room.volume",
    floorArea: "room.floorArea",
  };
  const trials: Trial[] = [];
  if (burns) {
    const { floorArea, place, installationHeight, edition, floorAreaAccuracy } = room ?? {};
    trials.push({
      name: "room-charge",
      path: "room",
      needs: {
        ...needs,
        "room.floorArea": floorArea,
        "room.place": place ?? installationHeight,
      },
      paths,
      run: () =>
        assessRoomCharge(
          given({
            refrigerant: refrigerantOf(record),
            charge: totalOf(record),
            floorArea,
            place,
            installationHeight,
            edition,
            instruments: given({
              charge: scale,
              size: floorAreaAccuracy && { accuracy: floorAreaAccuracy },
            }),
          }),
        ),
    });
  }
  if (!burns) {
    const { volume, volumeAccuracy } = room ?? {};
    trials.push({
      name: "room-concentration",
      path: "room",
      needs: { ...needs, "room.volume": volume },
      paths,
      run: () =>
        assessConcentration(
          given({
            refrigerant: refrigerantOf(record),
            charge: totalOf(record),
            volume,
            instruments: given({
              charge: scale,
              size: volumeAccuracy && { accuracy: volumeAccuracy },
            }),
          }),
        ),
    });
  }
  return tryAll("room-limit", trials);
}

/** Was the right charge weighed in? */
export function tryCharge(record: InstallationRecord): Tried {
  const { charge } = record;
  const needs = ruleNeeds(record);
  return tryAll("charge", [
    {
      name: "additional-charge",
      path: "charge",
      needs,
      paths: rulePaths,
      run: () => ruleOf(record),
    },
    {
      name: "weighed-charge",
      path: "charge",
      needs: {
        "charge.added": charge?.added,
        "charge.tolerance": charge?.tolerance,
        "instruments.scale": record.instruments?.scale,
        ...needs,
      },
      paths: {
        ...rulePaths,
        tolerance: "charge.tolerance",
        value: "charge.added",
      },
      run: () => weighed(record),
    },
    ...doubtedRate(record),
  ]);
}

/** Share of the whole charge within which a weighed charge decides anything; common practice, no source. */
const largestTolerance = 0.1;

/** What was weighed in against the rule and the tolerance. */
function weighed(record: InstallationRecord): Assessment {
  const asked = ruleOf(record).unroundedCharge;
  const added = record.charge?.added as Quantity<"mass">;
  const tolerance = record.charge?.tolerance as Quantity<"mass">;
  const scale = errorsOf(record.instruments?.scale);
  const u = scale ? standardUncertainty(scale, kg) : kg(0);
  const factory = record.equipment?.factoryCharge as Quantity<"mass">;
  // Within the whole charge of a unit anything would be right.
  siOf("tolerance", tolerance, "mass", { min: 0, below: factory.si });
  const low = asked.minus(tolerance);
  const high = asked.plus(tolerance);
  const most = record.equipment?.maximumCharge;
  const total = factory.plus(added);
  const over = most
    ? conformity({ value: total, standardUncertainty: u, upperLimit: most }).outcome
    : "pass";
  const { outcome } = conformity({
    value: added,
    standardUncertainty: u,
    lowerLimit: low,
    upperLimit: high,
  });
  const words = { pass: "is within", fail: "is not within", inconclusive: "may not be within" };
  const shown = new Quantity(Number(asked.si.toPrecision(4)), asked.unit);
  const reasons = [
    statement(
      `weighed-${outcome}`,
      `{added} was weighed in, which ${words[outcome]} {tolerance} of {asked}.`,
      { added, tolerance, asked: shown },
    ),
  ];
  if (over !== "pass") {
    const verb = over === "fail" ? "is" : "may be";
    reasons.unshift(
      statement("over-maximum-charge", `The total of {total} ${verb} above {most}.`, {
        total,
        most: most as Quantity<"mass">,
      }),
    );
  }
  const whole = factory.plus(asked);
  const isWide = tolerance.si > largestTolerance * whole.si * (1 + 1e-12);
  if (isWide) {
    reasons.unshift(
      statement(
        "tolerance-wide",
        "±{tolerance} on a charge of {whole} lets a wrong charge pass; at most a tenth of it: state the manufacturer's figure.",
        { tolerance, whole: new Quantity(Number(whole.si.toPrecision(4)), whole.unit) },
      ),
    );
  }
  return {
    outcome: overallOutcome([over, outcome, ...(isWide ? (["inconclusive"] as const) : [])]),
    reasons,
    assumptions: scale ? [] : [statement("scale-exact", "The scale counts as exact.")],
    cautions: [],
    sources: [cite("manufacturer-manuals"), cite("jcgm-106-2012", "8.3")],
  };
}

/** Were the valves opened? Whether they were allowed to be is a hold point. */
export function tryValves({ valves }: InstallationRecord): Tried {
  const openedAt = valves?.openedAt;
  return tryAll("valves", [
    {
      name: "valves-opened",
      path: "valves",
      needs: { "valves.openedAt": openedAt },
      run: () =>
        stated("pass", "valves-opened", "The valves were opened at {openedAt}.", {
          openedAt: openedAt ?? "",
        }),
    },
  ]);
}
