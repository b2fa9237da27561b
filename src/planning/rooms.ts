// May each room take the whole charge, and how large has it to be?
// Follows charge-limit. Does not cover rooms that are joined or watched by sensors, and the room of a branch box.
import { cite } from "../assessment/assessment.ts";
import {
  assessConcentration,
  assessRoomCharge,
  minimumFloorArea,
  type RoomUnit,
} from "../charge-limit/index.ts";
import type { Room } from "../commissioning/index.ts";
import { known } from "../quantity/known.ts";
import { Quantity } from "../quantity/quantity.ts";
import type { Refrigerant } from "../refrigerants/index.ts";
import { ruleOf } from "./charge.ts";
import { type Job, type PlannedRun, servesIndoorUnit, stated } from "./job.ts";
import type { PlanCheck } from "./plan.ts";
import { check, item, type Share, shareOf, together } from "./share.ts";
import { say } from "./statements.ts";

type Mass = Quantity<"mass">;

/** Every room with an indoor unit, against factory charge and what is added. */
export function roomShare(job: Job): Share {
  const { construction, equipment, refrigerant } = job;
  const { factoryCharge } = equipment;
  if (construction === "monobloc" && !job.runs.some(({ run }) => run.room)) {
    const needs = { "equipment.factoryCharge": factoryCharge };
    return shareOf("room", needs, () => {
      const said = say("planning.outdoor-zone", { charge: factoryCharge as Mass });
      return { set: [item("room", said, [cite("manufacturer-manuals")])] };
    });
  }
  const total = factoryCharge && totalOf(job, factoryCharge);
  const burns = /^[AB][23]/.test(refrigerant?.safetyClass ?? "");
  return together(
    job.runs.filter(servesIndoorUnit).map((one) => {
      const { room = {} } = one.run;
      const at = `${one.path}.room`;
      const size = burns
        ? {
            [`${at}.floorArea`]: room.floorArea,
            [`${at}.place`]: room.place ?? room.installationHeight,
          }
        : { [`${at}.volume`]: room.volume };
      const needs = {
        "equipment.refrigerant": refrigerant,
        "equipment.factoryCharge": factoryCharge,
        ...(refrigerant && size),
      };
      const make = (): Share => {
        if (!total || !refrigerant) return {};
        return burns
          ? byFloor(job.record.site ?? {}, one, room, refrigerant, total)
          : byVolume(one, room, refrigerant, total);
      };
      return shareOf("room", needs, make, {
        charge: "equipment.factoryCharge",
        place: `${at}.place`,
        installationHeight: `${at}.installationHeight`,
      });
    }),
  );
}

/** Factory charge and what the rule adds; the factory charge alone where the rule can't be followed yet. */
function totalOf(job: Job, factory: Mass): Mass {
  const added =
    job.construction === "split" ? known(() => ruleOf(job))?.assessment?.additionalCharge.si : 0;
  return new Quantity(factory.si + Math.max(0, added ?? 0), factory.unit);
}

function byFloor(
  { altitude }: { readonly altitude?: Quantity<"length"> | undefined },
  { called, path }: PlannedRun,
  room: Room,
  refrigerant: Refrigerant,
  charge: Mass,
): Share {
  const { floorArea, place, installationHeight, edition } = room;
  const unit = stated<RoomUnit & { readonly charge: Mass }>({
    refrigerant,
    charge,
    place,
    installationHeight,
    edition,
    altitude,
  });
  const { outcome, reasons, sources, cautions } = assessRoomCharge({
    ...unit,
    floorArea: floorArea as Quantity<"area">,
  });
  const needed = known(() => minimumFloorArea(unit));
  const area = needed?.area.si
    ? [
        check(
          outcome,
          "room",
          say("planning.room-needs", {
            run: called,
            area: inUnitOf(needed.area, floorArea),
            charge,
          }),
          sources,
          path,
        ),
      ]
    : [];
  const judged = reasons.map((one): PlanCheck => check(outcome, "room", one, sources, path));
  return { check: [...area, ...judged], cautions };
}

const inUnitOf = (area: Quantity<"area">, like: Quantity<"area"> | undefined): Quantity<"area"> => {
  const unit = like?.unit ?? area.unit;
  return unit(Number(area.in(unit).toPrecision(4)));
};

function byVolume(
  { path }: PlannedRun,
  { volume }: Room,
  refrigerant: Refrigerant,
  charge: Mass,
): Share {
  const { outcome, reasons, sources, cautions } = assessConcentration({
    refrigerant,
    charge,
    volume: volume as Quantity<"volume">,
  });
  return { check: reasons.map((one) => check(outcome, "room", one, sources, path)), cautions };
}
