// What will the running unit show? Gauges by mode and weather, or air and current where no gauge belongs.
// Follows operating-check; air and current by commissioning. Does not cover the charge: a window does not tell it.
import { cite } from "../assessment/assessment.ts";
import {
  circuitRulesNamed,
  holdsAhead,
  type OperatingReading,
  usualAirDifference,
} from "../commissioning/index.ts";
import { expectedPressures, type RunningUnit } from "../operating-check/index.ts";
import type { Quantity } from "../quantity/quantity.ts";
import { type Job, stated } from "./job.ts";
import { item, type Share, shareOf, together } from "./share.ts";
import { say } from "./statements.ts";

/** What has to wait until its proof is there, and what to expect of every reading that is planned. */
export function operationShare(job: Job): Share {
  const { record, construction } = job;
  const planned: readonly OperatingReading[] = record.operation?.length ? record.operation : [{}];
  const holds = holdsAhead(construction).map((one) =>
    item("operation", one, [cite("common-practice")]),
  );
  return together([
    { set: holds },
    ...planned.map((one, i) =>
      construction !== "split" || one.airSide
        ? airShare(one, `operation[${i}]`)
        : gaugeShare(job, one, `operation[${i}]`),
    ),
    currentShare(job),
  ]);
}

function gaugeShare(
  { refrigerant, atmosphere }: Job,
  reading: OperatingReading,
  path: string,
): Share {
  const { mode, indoorTemperature, outdoorTemperature, evaporatorApproach, condenserApproach } =
    reading;
  const needs = {
    [`${path}.mode`]: mode,
    "equipment.refrigerant": refrigerant,
    "site.altitude": atmosphere,
    [`${path}.indoorTemperature`]: indoorTemperature,
    [`${path}.outdoorTemperature`]: outdoorTemperature,
    [`${path}.evaporatorApproach`]: evaporatorApproach,
    [`${path}.condenserApproach`]: condenserApproach,
  };
  const make = (): Share => {
    const unit = stated<RunningUnit>({
      refrigerant,
      atmosphere,
      mode,
      indoorTemperature,
      outdoorTemperature,
      evaporatorApproach,
      condenserApproach,
    });
    const { low, high, vaporPort, sources, cautions } = expectedPressures(unit);
    const said = say(`planning.expect-pressures-${vaporPort}`, {
      mode: `planning.mode.${mode as "cooling" | "heating"}`,
      lowFrom: low.from,
      lowTo: low.to,
      highFrom: high.from,
      highTo: high.to,
      indoor: indoorTemperature as Quantity<"temperature">,
      outdoor: outdoorTemperature as Quantity<"temperature">,
    });
    return { set: [item("operation", said, sources, path)], cautions };
  };
  return shareOf("operation", needs, make, {
    indoorTemperature: `${path}.indoorTemperature`,
    outdoorTemperature: `${path}.outdoorTemperature`,
    evaporatorApproach: `${path}.evaporatorApproach`,
    condenserApproach: `${path}.condenserApproach`,
  });
}

function airShare({ mode, airSide = {} }: OperatingReading, path: string): Share {
  return shareOf("operation", { [`${path}.mode`]: mode }, () => {
    const usual = usualAirDifference(mode as "cooling" | "heating");
    const { least: low = usual.low, largest: high = usual.high } = airSide;
    const said = say("planning.expect-air", {
      mode: `planning.mode.${mode as "cooling" | "heating"}`,
      low,
      high,
    });
    const ofManual = airSide.least && airSide.largest;
    const source =
      mode === "cooling" || ofManual ? cite("manufacturer-manuals") : cite("common-practice");
    return { set: [item("operation", said, [source], path)] };
  });
}

/** Current at full speed: about the rated load, never above the ampacity of the plate; one rated current for both where it prints that. */
function currentShare({ equipment, record, rules }: Job): Share {
  const { ratedCurrent, minimumCircuitAmpacity: most = ratedCurrent } = equipment;
  const { ratedLoadCurrent: rated = ratedCurrent ?? most } = equipment;
  const isMetric = record.power?.circuits?.some(
    ({ rules: name }) => name && circuitRulesNamed(name, rules)?.family === "metric",
  );
  const needs = isMetric
    ? { "equipment.ratedCurrent": most }
    : { "equipment.ratedLoadCurrent": rated, "equipment.minimumCircuitAmpacity": most };
  return shareOf("operation", needs, () => {
    const said = say("planning.expect-current", {
      rated: rated as Quantity<"current">,
      most: most as Quantity<"current">,
    });
    return { set: [item("operation", said, [cite("common-practice")])] };
  });
}
