// Is this figure what such a part has? A doubt that names the field and the usual range.
// Follows common practice, no source; a doubt leaves its step open, it never fails it.
// Does not cover limits of a manual or a code: the modules decide those.
import { isAtLeast, isAtMost } from "../quantity/limit.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { doubt } from "./doubt.ts";
import type { CommissioningStatement } from "./statements.ts";
import type { Trial } from "./step.ts";
import { fieldWord } from "./words.ts";

const codes = {
  length: "commissioning.length-odd",
  volume: "commissioning.volume-odd",
  temperature: "commissioning.temperature-odd",
  gaugePressure: "commissioning.pressure-odd",
  mass: "commissioning.mass-odd",
  area: "commissioning.area-odd",
  power: "commissioning.power-odd",
  voltage: "commissioning.voltage-odd",
} as const;

/** A doubt where a figure, if there is one, is not between two usual ones. */
export function oddFigure<K extends keyof typeof codes>(
  path: string,
  value: Quantity<K> | undefined,
  [low, high]: readonly [low: Quantity<K>, high: Quantity<K>],
  action?: CommissioningStatement,
): Trial[] {
  if (!value || (isAtLeast(value.si, low.si) && isAtMost(value.si, high.si))) return [];
  const values = { field: fieldWord(path), value, low, high };
  const reason = { code: codes[high.kind], values } as unknown as CommissioningStatement;
  return [doubt(path, reason, action)];
}
