// May each room hold the whole charge of the system?
// Follows charge-limit, which decides. Does not cover the room of a branch box, unless it is recorded.
import { assessConcentration, assessRoomCharge } from "../charge-limit/index.ts";
import { isInvalidInputError } from "../quantity/errors.ts";
import { type Later, later } from "../quantity/later.ts";
import { Quantity } from "../quantity/quantity.ts";
import { kg } from "../quantity/units/mass.ts";
import { hasRule, ruleNeeds, ruleOf, rulePaths } from "./charge-rule.ts";
import { errorsOf } from "./instrument-errors.ts";
import { type Job, refrigerantOf } from "./job.ts";
import type { Room } from "./record-run.ts";
import { doubtsOfRoom } from "./room-doubts.ts";
import { runsOf, servesIndoorUnit } from "./runs.ts";
import { type CommissioningStatement, say } from "./statements.ts";
import { present, type Trial, type Tried, tryAll } from "./step.ts";

/** May each room hold it? */
export function tryRoomLimit(job: Job): Tried {
  const burns = /^A[23]/.test(job.refrigerant?.safetyClass ?? "");
  const all = { ...job, runs: runsOf(job.record) }; // the whole charge counts in each room
  const total = later(() => totalOf(all));
  const isWhole = job.construction === "monobloc"; // only a room that it stands in
  const rooms = job.runs.filter((one) => (servesIndoorUnit(one) && !isWhole) || one.run.room);
  const trials = rooms.flatMap(({ run, path }): Trial[] => {
    const { room = {} } = run;
    const place = `${path}.room`;
    const judged = burns
      ? floorTrial(all, room, place, total)
      : volumeTrial(all, room, place, total);
    return [judged, ...doubtsOfRoom(room, place, burns)];
  });
  return tryAll("room-limit", trials);
}

/** That a monobloc stands in no room, because none is recorded. */
export const standsOutdoors = ({ construction, runs }: Job): CommissioningStatement[] =>
  construction === "monobloc" && !runs.some(({ run }) => run.room)
    ? [say("commissioning.stands-outdoors")]
    : [];

function needsOf(job: Job): Record<string, unknown> {
  const { equipment, charge } = job.record;
  return {
    "equipment.refrigerant": equipment?.refrigerant,
    "equipment.factoryCharge": equipment?.factoryCharge,
    ...(charge?.added || job.construction !== "split" ? {} : ruleNeeds(job)),
  };
}

const pathsOf = (job: Job, place: string, size: "volume" | "floorArea") => ({
  ...rulePaths(job),
  charge: "equipment.factoryCharge",
  volume: `${place}.volume`,
  floorArea: `${place}.floorArea`,
  "instruments.charge": "instruments.scale",
  "instruments.size.accuracy": `${place}.${size}Accuracy`,
});

function floorTrial(job: Job, room: Room, place: string, total: Total): Trial {
  const { floorArea, place: unit, installationHeight, edition, floorAreaAccuracy } = room;
  return {
    name: "room-charge",
    path: place,
    needs: {
      ...needsOf(job),
      [`${place}.floorArea`]: floorArea,
      [`${place}.place`]: unit ?? installationHeight,
    },
    paths: pathsOf(job, place, "floorArea"),
    run: () =>
      assessRoomCharge(
        present({
          refrigerant: refrigerantOf(job),
          charge: total(),
          floorArea,
          place: unit,
          installationHeight,
          edition,
          altitude: job.record.site?.altitude,
          instruments: present({
            charge: errorsOf(job.record.instruments?.scale),
            size: floorAreaAccuracy && { accuracy: floorAreaAccuracy },
          }),
        }),
      ),
  };
}

function volumeTrial(job: Job, room: Room, place: string, total: Total): Trial {
  const { volume, volumeAccuracy } = room;
  return {
    name: "room-concentration",
    path: place,
    needs: { ...needsOf(job), [`${place}.volume`]: volume },
    paths: pathsOf(job, place, "volume"),
    run: () =>
      assessConcentration(
        present({
          refrigerant: refrigerantOf(job),
          charge: total(),
          volume,
          instruments: present({
            charge: errorsOf(job.record.instruments?.scale),
            size: volumeAccuracy && { accuracy: volumeAccuracy },
          }),
        }),
      ),
  };
}

type Total = Later<Quantity<"mass">>;

/** The larger of what was weighed in and what the rule asks for, on top of the factory charge. */
function totalOf(job: Job): Quantity<"mass"> {
  const { factoryCharge = kg(0) } = job.record.equipment ?? {};
  const added = job.record.charge?.added?.si ?? -Infinity;
  const asked = hasRule(job) ? (planned(job) ?? -Infinity) : -Infinity;
  // Nothing is added to a circuit that is not opened on site.
  const most = job.construction === "split" ? Math.max(added, asked) : 0;
  return new Quantity(factoryCharge.si + most, factoryCharge.unit);
}

function planned(job: Job): number | undefined {
  try {
    return ruleOf(job).additionalCharge.si;
  } catch (error) {
    // What is wrong with the rule is named by the charge step; a weighed charge can still be judged.
    if (isInvalidInputError(error) && job.record.charge?.added) return undefined;
    throw error;
  }
}
