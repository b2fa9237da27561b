// Can a room be as it is recorded? Area, volume and heights held against each other.
// Follows geometry and the sizes of rooms; common practice, no source. A doubt leaves the room open, it never fails it.
// Does not cover the limit of the charge: charge-limit decides it.
import { m, m2, m3 } from "../quantity/units/geometry.ts";
import { doubt } from "./doubt.ts";
import { oddFigure } from "./odd-figure.ts";
import type { Room } from "./record-run.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";

/** Rooms with one indoor unit. */
const areas = [/* @__PURE__ */ m2(4), /* @__PURE__ */ m2(60)] as const;
const volumes = [/* @__PURE__ */ m3(5), /* @__PURE__ */ m3(180)] as const;
const [lowestCeiling, highestCeiling] = [2, 4.5]; // m
const highestUnit = 4; // m

/** What cannot be right of a room, or is too small or too large to be taken without a second figure. */
export function doubtsOfRoom(room: Room, path: string, burns: boolean): Trial[] {
  const { floorArea, volume, ceilingHeight, installationHeight } = room;
  const doubts: Trial[] = [];
  const height = floorArea && volume && volume.si / floorArea.si;
  const usual = { low: m(lowestCeiling), high: m(highestCeiling) };
  if (height !== undefined && (height < lowestCeiling || height > highestCeiling)) {
    const reason = say("commissioning.room-height-odd", { height: m(round(height)), ...usual });
    doubts.push(doubt(`${path}.${burns ? "floorArea" : "volume"}`, reason));
  }
  if (ceilingHeight && (ceilingHeight.si < 1.5 || ceilingHeight.si > 12)) {
    const reason = say("commissioning.ceiling-odd", { height: ceilingHeight, ...usual });
    doubts.push(doubt(`${path}.ceilingHeight`, reason));
  }
  // A room of another size is what one looks like in the wrong unit: a second figure shows which it is.
  const [second, own] = burns ? ([volume, "volume"] as const) : ([floorArea, "floorArea"] as const);
  if (!second) {
    const fields = [`commissioning.field.runs.room.${own}`] as const;
    const action = say("commissioning.record-fields", { fields });
    doubts.push(
      ...(burns
        ? oddFigure(`${path}.floorArea`, floorArea, areas, action)
        : oddFigure(`${path}.volume`, volume, volumes, action)),
    );
  }
  if (installationHeight && installationHeight.si > highestUnit) {
    const reason = say("commissioning.unit-high", {
      height: installationHeight,
      usual: m(highestUnit),
    });
    doubts.push(doubt(`${path}.installationHeight`, reason));
  }
  return doubts;
}

const round = (value: number) => Number(value.toPrecision(3));
