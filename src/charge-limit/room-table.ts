// How is a manual's table of areas and charges read? By rows, never between them.
// Follows manufacturers' manuals that print IEC 60335-2-40 tables: the row of the smaller area counts for
// a room, the row of the larger charge for a unit. Does not cover charts.

import { listOf, objectOf, siOf } from "../quantity/check.ts";
import { OutOfRangeError } from "../quantity/errors.ts";
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";

/**
 * A row of a manual's table: a floor area and the charge that goes with it.
 *
 * Source: the unit's manual.
 */
export interface RoomTableRow {
  /** Floor area, rising from row to row. */
  readonly area: Quantity<"area">;
  /** Charge, not falling from row to row. */
  readonly charge: Quantity<"mass">;
}

/**
 * The largest charge that a manual's table allows in a room: that of the last row whose area the room has.
 *
 * @param table - The rows and the room's floor area.
 * @returns The charge of that row.
 * @throws {@link OutOfRangeError} when the room is smaller than the first row.
 * @throws {@link InvalidInputError} when there are no rows or they are not in order.
 *
 * Cautions: see {@link roomChargeLimit}.
 *
 * Source: manufacturers' published manuals.
 *
 * @example
 * ```ts
 * import { chargeFromRoomTable } from "hvac-install-math/charge-limit";
 * import { kg, m2 } from "hvac-install-math/quantity";
 *
 * const rows = [{ area: m2(10), charge: kg(0.24) }, { area: m2(20), charge: kg(0.34) }];
 * chargeFromRoomTable({ rows, floorArea: m2(15) }).toString(); // => 0.24 kg
 * ```
 */
export function chargeFromRoomTable(table: {
  /** The manual's rows. */
  readonly rows: readonly RoomTableRow[];
  /** Floor area of the room. */
  readonly floorArea: Quantity<"area">;
}): Quantity<"mass"> {
  objectOf("table", table);
  const rows = rowsOf(table.rows);
  const area = siOf("floorArea", table.floorArea, "area", { above: 0 });
  siOf("floorArea", table.floorArea, "area", { min: rows[0]?.area.si }, OutOfRangeError);
  const row = rows.filter((one) => isAtMost(one.area.si, area)).at(-1);
  return (row as RoomTableRow).charge;
}

/**
 * The smallest floor area that a manual's table asks for: that of the first row whose charge is not below
 * the unit's.
 *
 * @param table - The rows and the total charge.
 * @returns The area of that row.
 * @throws {@link OutOfRangeError} when the charge is above the last row.
 * @throws {@link InvalidInputError} when there are no rows or they are not in order.
 *
 * Cautions: see {@link roomChargeLimit}.
 *
 * Source: manufacturers' published manuals.
 *
 * @example
 * ```ts
 * import { areaFromRoomTable } from "hvac-install-math/charge-limit";
 * import { kg, m2 } from "hvac-install-math/quantity";
 *
 * const rows = [{ area: m2(10), charge: kg(0.24) }, { area: m2(20), charge: kg(0.34) }];
 * areaFromRoomTable({ rows, charge: kg(0.3) }).toString(); // => 20 m²
 * ```
 */
export function areaFromRoomTable(table: {
  /** The manual's rows. */
  readonly rows: readonly RoomTableRow[];
  /** Total charge. */
  readonly charge: Quantity<"mass">;
}): Quantity<"area"> {
  objectOf("table", table);
  const rows = rowsOf(table.rows);
  const charge = siOf("charge", table.charge, "mass", { above: 0 });
  siOf("charge", table.charge, "mass", { max: rows.at(-1)?.charge.si }, OutOfRangeError);
  const row = rows.find((one) => isAtLeast(one.charge.si, charge));
  return (row as RoomTableRow).area;
}

function rowsOf(rows: readonly RoomTableRow[]): readonly RoomTableRow[] {
  listOf("rows", rows, Infinity, 1);
  let area = 0;
  let charge = 0;
  rows.forEach((row: RoomTableRow, i) => {
    area = siOf(`rows[${i}].area`, row?.area, "area", { above: area });
    charge = siOf(`rows[${i}].charge`, row.charge, "mass", { min: charge });
  });
  return rows;
}
