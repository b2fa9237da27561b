// Can the running unit be as it was read? Temperatures that no place has, a gauge that errs too much.
// Follows common practice, no source; a doubt leaves the operation open, it never fails it.
// Does not cover what the air says of the unit: see air-side.ts.
import type { Quantity } from "../quantity/quantity.ts";
import { rounded } from "../quantity/rounded.ts";
import { psi } from "../quantity/units/pressure.ts";
import { degC } from "../quantity/units/temperature.ts";
import { doubt } from "./doubt.ts";
import type { Job } from "./job.ts";
import { oddFigure } from "./odd-figure.ts";
import type { OperatingReading } from "./record-operation.ts";
import { say } from "./statements.ts";
import type { Trial } from "./step.ts";
import { fieldWord } from "./words.ts";

type Temperature = Quantity<"temperature">;

const usual: Readonly<Record<AirField, readonly [low: Temperature, high: Temperature]>> = {
  indoorTemperature: [/* @__PURE__ */ degC(-10), /* @__PURE__ */ degC(50)],
  outdoorTemperature: [/* @__PURE__ */ degC(-50), /* @__PURE__ */ degC(60)],
};

type AirField = "indoorTemperature" | "outdoorTemperature";

/** What cannot be right of the air. */
export const doubtsOfAir = (reading: OperatingReading, path: string): Trial[] =>
  (Object.keys(usual) as AirField[]).flatMap((field) =>
    oddFigure(`${path}.${field}`, reading[field], usual[field]),
  );

/** Error of a gauge per reading, and the error that no reading is too low for. */
const largestError = 0.1;
const smallError = /* @__PURE__ */ psi(5);

/** What cannot be right of the gauge: an error that leaves little of its reading. */
export function doubtsOfGauge({ record }: Job, { pressure }: OperatingReading): Trial[] {
  const accuracy = record.instruments?.serviceGauge?.accuracy;
  if (!pressure || !accuracy) return [];
  const most = Math.max(largestError * pressure.si, smallError.si);
  if (accuracy.si <= most) return [];
  const path = "instruments.serviceGauge.accuracy";
  const limit = rounded(most, accuracy.unit, 3);
  const values = { field: fieldWord(path), value: accuracy, limit };
  return [doubt(path, say("commissioning.value-too-high", values))];
}
