// How much refrigerant has to come out, how much may stay, and does it fit the cylinder?
// Follows the total on the label and the mass that the lines hold; common practice, no source.
// Does not cover recovery levels that the law asks for, nor cylinder limits other than the one marked.
import { cite, verdict } from "../assessment/assessment.ts";
import { caution } from "../assessment/caution.ts";
import { objectOf, siOf } from "../quantity/check.ts";
import { frozen } from "../quantity/frozen.ts";
import { isAtMost } from "../quantity/limit.ts";
import { Quantity } from "../quantity/quantity.ts";
import { g, oz } from "../quantity/units/mass.ts";
import { decide, type Finding } from "./decide.ts";
import { type FilledTube, fillOf, type LiquidFilledTube } from "./full-line.ts";
import { refrigerantCautions, type SafetyClass } from "./line-cautions.ts";
import { say, type Verdict } from "./statements.ts";
import { isImperial, lengthOf } from "./tube.ts";

/**
 * What the two lines hold.
 *
 * Source: plane geometry.
 */
export interface LineContents {
  /** Mass in the liquid line. */
  readonly liquid: Quantity<"mass">;
  /** Mass in the vapor line. */
  readonly vapor: Quantity<"mass">;
  /** Both. */
  readonly total: Quantity<"mass">;
}

/**
 * Mass of refrigerant in the two lines, each full of fluid of one density: what opening them would let
 * out. After a pump-down take the density of vapor at the pressure left for both.
 *
 * @param input - Liquid line, vapor line, their `length` of 0 to 1000 m.
 * @returns The masses, in ounces for a length in feet or inches, else in grams.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or impossible.
 * Caution: recover it before you open a line; never vent.
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { jisH3300Tube, lineContents } from "hvac-install-math/line-set";
 * import { g, kgPerM3, m } from "hvac-install-math/quantity";
 *
 * const held = lineContents({
 *   liquid: { tube: jisH3300Tube("6.35"), density: kgPerM3(961) },
 *   vapor: { tube: jisH3300Tube("9.52"), density: kgPerM3(28) },
 *   length: m(8),
 * });
 * held.total.toString(g, 0); // => 147 g
 * ```
 */
export function lineContents(input: {
  /** Liquid line. */ readonly liquid: FilledTube | LiquidFilledTube;
  /** Vapor line. */ readonly vapor: FilledTube;
  /** Length of both, one way. */ readonly length: Quantity<"length">;
}): LineContents {
  const length = lengthOf("length", objectOf("input", input).length);
  const unit = isImperial(input.length) ? oz : g;
  const liquid = fillOf(input.liquid, "liquid.") * length;
  const vapor = fillOf(input.vapor, "vapor.") * length;
  return frozen({
    liquid: new Quantity(liquid, unit),
    vapor: new Quantity(vapor, unit),
    total: new Quantity(liquid + vapor, unit),
  });
}

/**
 * A system that is opened, moved or taken away.
 */
export interface RecoveryInput {
  /** Total charge by the label; leave out when it is not known or some has leaked. */
  readonly chargeInSystem?: Quantity<"mass"> | undefined;
  /** Charge that the system shall have afterwards: 0 to take it away, the new total for another line length. */
  readonly chargeToKeep: Quantity<"mass">;
  /** Recovery cylinder. */
  readonly cylinder?:
    | {
        /** Most refrigerant that may be in it, as marked for this refrigerant. */
        readonly maximumFill: Quantity<"mass">;
        /** What is in it already. */
        readonly contents: Quantity<"mass">;
      }
    | undefined;
  /** Safety class of the refrigerant, for the cautions. */
  readonly safetyClass?: SafetyClass | undefined;
}

/**
 * The verdict on a recovery.
 */
export interface RecoveryAssessment extends Verdict {
  /** Mass to take out; absent when the charge is not known. */
  readonly toRecover?: Quantity<"mass"> | undefined;
  /** Mass to add where the system shall hold more; absent when the charge is not known. */
  readonly toAdd?: Quantity<"mass"> | undefined;
  /** What the cylinder still takes, where one was given. */
  readonly cylinderRoom?: Quantity<"mass"> | undefined;
}

/**
 * Mass of refrigerant to recover, or to add, so that the system holds what it shall, and whether the
 * cylinder takes it.
 *
 * Assumes that the label's total is what is in the system. When it is not known, the answer is to
 * recover everything and weigh it.
 *
 * @param input - Charge in the system, charge to keep, cylinder.
 * @returns The verdict. `fail` when the cylinder would be overfilled, `inconclusive` when the charge is
 * not known.
 * @throws {@link InvalidInputError} when an argument is missing, of another kind or negative, or the
 * cylinder holds more than its marked fill.
 * Cautions: an overfilled cylinder bursts when it warms up; never mix refrigerants; recovery machine and
 * cylinder rated for flammables where the refrigerant burns; licensed practice.
 *
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { assessRecovery } from "hvac-install-math/line-set";
 * import { g, kg } from "hvac-install-math/quantity";
 *
 * const recovery = assessRecovery({
 *   chargeInSystem: g(1100),
 *   chargeToKeep: g(0),
 *   cylinder: { maximumFill: kg(9), contents: kg(8.2) },
 * });
 * recovery.outcome; // => fail
 * recovery.toRecover?.toString(); // => 1100 g
 * ```
 */
export function assessRecovery(input: RecoveryInput): RecoveryAssessment {
  const { chargeInSystem, chargeToKeep, cylinder, safetyClass } = objectOf("input", input);
  const keep = siOf("chargeToKeep", chargeToKeep, "mass", { min: 0 });
  const held =
    chargeInSystem === undefined
      ? undefined
      : siOf("chargeInSystem", chargeInSystem, "mass", { above: 0 });
  const unit = chargeInSystem?.unit ?? chargeToKeep.unit;
  let room: number | undefined;
  if (cylinder !== undefined) {
    const { maximumFill, contents } = objectOf("cylinder", cylinder);
    const most = siOf("cylinder.maximumFill", maximumFill, "mass", { above: 0 });
    room = most - siOf("cylinder.contents", contents, "mass", { min: 0, max: most });
  }
  const cylinderRoom = room === undefined ? undefined : new Quantity(room, unit);
  const base = {
    assumptions: [
      ...(held === undefined ? [] : [say("line-set.charge-as-labeled")]),
      ...(cylinder ? [] : [say("line-set.cylinder-not-checked")]),
    ],
    cautions: [
      ...refrigerantCautions(safetyClass),
      caution("danger", say("line-set.overfilled-cylinder")),
      caution("danger", say("line-set.mixed-refrigerants")),
      caution("danger", say("line-set.never-vent")),
    ],
    sources: [cite("common-practice")],
    ...(cylinderRoom && { cylinderRoom }),
  };
  if (held === undefined) {
    const anew = say("line-set.charge-by-weight", { keep: chargeToKeep });
    const unknown: Finding = {
      outcome: "inconclusive",
      said: say("line-set.charge-not-known"),
      actions: [say("line-set.recover-all"), ...(keep > 0 ? [anew] : [])],
    };
    return verdict({ ...decide([unknown]), ...base });
  }
  const toRecover = new Quantity(Math.max(0, held - keep), unit);
  const toAdd = new Quantity(Math.max(0, keep - held), unit);
  const findings: Finding[] = [
    {
      outcome: "pass",
      said:
        held < keep
          ? say("line-set.to-add", { mass: toAdd, keep: chargeToKeep })
          : say("line-set.to-recover", { mass: toRecover, keep: chargeToKeep }),
    },
  ];
  if (cylinderRoom && !isAtMost(toRecover.si, cylinderRoom.si)) {
    const mass = toRecover;
    findings.push({
      outcome: "fail",
      said: say("line-set.cylinder-too-small", { room: cylinderRoom, mass }),
      actions: [say("line-set.other-cylinder", { mass })],
    });
  }
  return verdict({ ...decide(findings), ...base, toRecover, toAdd });
}
