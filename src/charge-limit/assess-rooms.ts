// Is the charge right for every room that a system serves? One verdict per room, and one for all.
// Follows IEC 60335-2-40: a leak in any room can let out the charge of the whole system.
// Does not cover shut-off valves that part the charge: state the charge that can leave as the charge of the system.

import {
  type Assessment,
  type Citation,
  overallOutcome,
  verdict,
} from "../assessment/assessment.ts";
import { listOf, objectOf, refuse, textOf } from "../quantity/check.ts";
import { namingArguments } from "../quantity/naming-arguments.ts";
import {
  assessRoomCharge,
  type RoomChargeAssessment,
  type RoomChargeCause,
  type RoomChargeInput,
} from "./assess-room-charge.ts";
import { type ChargeLimitStatement, say, verbatim } from "./statements.ts";

/** What all rooms share, by its name in the input of one room. */
const sharedFields = [
  "refrigerant",
  "charge",
  "lowerFlammabilityLimit",
  "edition",
  "altitude",
  "confidence",
] as const;

/** What all rooms of a system share. */
export type SharedByRooms = Pick<
  RoomChargeInput,
  "refrigerant" | "charge" | "lowerFlammabilityLimit" | "edition" | "altitude" | "confidence"
>;

/**
 * One room that the system serves.
 */
export interface ServedRoom extends Omit<RoomChargeInput, keyof SharedByRooms> {
  /** Its name, once in the list. */
  readonly name: string;
}

/**
 * The verdict on all rooms of a system.
 *
 * Source: see {@link assessRooms}.
 */
export interface RoomsAssessment extends Assessment<RoomChargeCause, ChargeLimitStatement> {
  /** The verdict on each room, in the order given. */
  readonly rooms: readonly {
    /** Its name. */
    readonly name: string;
    /** Its verdict. */
    readonly assessment: RoomChargeAssessment;
  }[];
}

/**
 * Judges the charge of a system in every room that it serves: the whole charge counts in each.
 *
 * @param system - Refrigerant, total charge, edition, and the rooms, 1 to 100, each with a name of its own.
 * @returns A verdict per room, and that of all: a fail in one room fails.
 * @throws {@link InvalidInputError} as {@link assessRoomCharge}, by the path in `system`, and when rooms are missing,
 * share a name, or one of them states for itself what all rooms share.
 *
 * Cautions: see {@link assessRoomCharge}.
 *
 * Source: see {@link assessRoomCharge}.
 *
 * @example
 * ```ts
 * import { assessRooms } from "hvac-install-math/charge-limit";
 * import { kg, m2 } from "hvac-install-math/quantity";
 * import { R32 } from "hvac-install-math/refrigerants";
 *
 * const rooms = [
 *   { name: "living room", place: "wall", floorArea: m2(30) },
 *   { name: "study", place: "wall", floorArea: m2(6) },
 * ] as const;
 * const { outcome, rooms: each } = assessRooms({ refrigerant: R32, charge: kg(2.4), rooms });
 * outcome; // => fail
 * each.map(({ name, assessment }) => `${name}: ${assessment.outcome}`).join(", "); // => living room: pass, study: fail
 * ```
 */
export function assessRooms(
  system: SharedByRooms & {
    /** The rooms. */
    readonly rooms: readonly ServedRoom[];
  },
): RoomsAssessment {
  const { rooms, ...shared } = objectOf("system", system);
  const names = listOf("rooms", rooms, 100, 1).map((room, i) =>
    textOf(`rooms[${i}].name`, objectOf(`rooms[${i}]`, room).name),
  );
  const twice = names.findIndex((name, i) => names.indexOf(name) < i);
  if (twice >= 0) {
    refuse(`rooms[${twice}].name`, names[twice], "a name that no other room has", "other-name");
  }
  for (const [i, room] of rooms.entries()) requireOwn(`rooms[${i}]`, room);
  const judged = rooms.map(({ name, ...room }, i) => ({
    name,
    assessment: namingArguments(
      (argument) => (isShared(argument) ? argument : `rooms[${i}].${argument}`),
      () => assessRoomCharge({ ...room, ...shared }),
    ),
  }));
  const outcome = overallOutcome(judged.map(({ assessment }) => assessment.outcome));
  const decisive = judged.filter(({ assessment }) => assessment.outcome === outcome);
  const all = <T>(of: (one: RoomChargeAssessment) => readonly T[]): T[] => [
    ...new Map(
      judged.flatMap(({ assessment }) => of(assessment)).map((one) => [JSON.stringify(one), one]),
    ).values(),
  ];
  const cause = decisive[0]?.assessment.cause;
  return verdict({
    outcome,
    ...(cause && { cause }),
    reasons:
      outcome === "pass"
        ? [say("charge-limit.every-room-passes", { count: judged.length })]
        : decisive.flatMap(({ name, assessment }) => {
            const room = verbatim(name);
            const said =
              outcome === "fail"
                ? say("charge-limit.room-fails", { room })
                : say("charge-limit.room-inconclusive", { room });
            return [said, ...assessment.reasons];
          }),
    assumptions: all((one) => one.assumptions),
    cautions: all((one) => one.cautions),
    actions:
      outcome === "pass"
        ? []
        : decisive.flatMap(({ name, assessment }) => [
            say("charge-limit.act-on-room", { room: verbatim(name) }),
            ...(assessment.actions ?? []),
          ]),
    sources: all<Citation>((one) => one.sources),
    rooms: judged,
  });
}

/** What all rooms share is stated once: of a room it would be dropped without a word, or hold for that room alone. */
function requireOwn(path: string, room: object): void {
  for (const field of sharedFields) {
    const stated = (room as Record<string, unknown>)[field];
    if (stated === undefined) continue;
    refuse(`${path}.${field}`, stated, "nothing: it is stated once, for all rooms", "nothing");
  }
}

/** Whether an argument of the verdict on a room is stated once, for all rooms. */
const isShared = (argument: string): boolean =>
  sharedFields.some((field) => field === argument.split(".")[0]);
