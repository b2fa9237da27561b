// What is possible and rare, so that it is more often a slip? A finding, which leaves the outcome as it is.
// Follows common practice, no source. Does not cover what cannot be: the files named …-doubts do.

import { m } from "../quantity/units/geometry.ts";
import { degC } from "../quantity/units/temperature.ts";
import type { InstallationRecord } from "./record.ts";
import { type CommissioningStatement, say } from "./statements.ts";

/** Nobody cools in frost or heats in such heat but for a try, or a room of machines. */
const frost = /* @__PURE__ */ degC(0);
const heat = /* @__PURE__ */ degC(35);

/** A circuit begins at a panel, which is seldom beside the unit. */
const shortest = /* @__PURE__ */ m(2);

/** The weather of the operation, and the lengths of the circuits. */
export function unusual({ operation = [], power }: InstallationRecord): CommissioningStatement[] {
  const weather = operation.flatMap(({ mode, outdoorTemperature: outdoor }) => {
    if (!mode || !outdoor) return [];
    const odd = mode === "cooling" ? outdoor.si < frost.si : outdoor.si > heat.si;
    const word = { mode: `commissioning.mode.${mode}` } as const;
    return odd ? [say("commissioning.weather-unusual", { ...word, outdoor })] : [];
  });
  const cables = (power?.circuits ?? []).flatMap(({ wiring }) => {
    const length = wiring?.length;
    return length && length.si < shortest.si ? [say("commissioning.cable-short", { length })] : [];
  });
  return [...weather, ...cables];
}
