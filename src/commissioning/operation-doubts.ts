// Can the air be as it was read? Temperatures that no room and no place outdoors has.
// Follows common practice, no source; a doubt leaves the operation open, it never fails it.
// Does not cover what the air says of the unit: see air-side.ts.
import type { Quantity } from "../quantity/quantity.ts";
import { degC } from "../quantity/units/temperature.ts";
import { oddFigure } from "./odd-figure.ts";
import type { OperatingReading } from "./record-operation.ts";
import type { Trial } from "./step.ts";

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
