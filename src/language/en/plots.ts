// English of the pictures: headings, axes, legends, labels.
import type { PlotStatements, PlotWord } from "../../plots/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = PlotStatements & Words<PlotWord>;
const catalogue: Define<Said> = define;

/** What the pictures of `plots` say, in American English. */
export const plots: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "plots.pressure-test": "Nitrogen pressure test",
  "plots.vacuum-decay": "Vacuum decay after isolation",
  "plots.saturation": "Saturation of {designation}",
  "plots.supply-voltage": "Supply voltage",
  "plots.room-limit": "Charge and room limit",

  "plots.pressure-axis": "Pressure, {unit}",
  "plots.gas-temperature-axis": "Gas temperature, {unit}",
  "plots.temperature-axis": "Temperature, {unit}",
  "plots.time-axis": "Time, {unit}",
  "plots.time-since-isolation-axis": "Time since isolation, {unit}",
  "plots.voltage-axis": "Voltage, {unit}",
  "plots.charge-axis": "Charge, {unit}",
  "plots.time-not-recorded": "Time not recorded",
  "plots.start": "start",
  "plots.end": "end",

  "plots.colon": ":",
  "plots.outcome": "Result: {outcome}.",
  "plots.drop-with-limit": "drop {drop} ± {uncertainty}, limit {limit}",
  "plots.drop-without-limit": "drop {drop} ± {uncertainty}, no limit given",
  "plots.course": "{course}",
  "plots.leak-course": "keeps rising, a leak, {rate}",
  "plots.absolute-pressure": "absolute pressure",
  "plots.gauge-pressure": "gauge pressure where the air is at {atmosphere}",
  "plots.voltage-range": { by: "readings", one: "{low}", other: "{low} to {high}" },
  "plots.charge-of-limit": "charge {charge}, limit {limit}",

  "plots.readings": "readings",
  "plots.explained-by-temperature": "explained by temperature",
  "plots.found-at-end": "found at the end, ±{uncertainty}",
  "plots.limit": "limit {limit}",
  "plots.zone": "zone {zone}",
  "plots.limit-at": "limit {limit} at {at}",
  "plots.rise-limit-at": "rise to {limit} at {at}",
  "plots.fails-from": "fails from {limit}",
  "plots.target": "target {target}",
  "plots.levels-off": "levels off near {plateau}",
  "plots.fitted-curve": "fitted curve",
  "plots.fitted-curve-and-forecast": "fitted curve and forecast",
  "plots.set-aside": "set aside",
  "plots.valve-moved": "valve or hose moved",
  "plots.accepted": "accepted",
  "plots.at-hold-end": "at the end of the hold",
  "plots.bubble": "bubble: liquid begins to boil",
  "plots.dew": "dew: vapor begins to condense",
  "plots.in-balance": "liquid and vapor in balance",
  "plots.nameplate-range": "nameplate, {low} to {high}",
  "plots.standard-range": "{name}, {low} to {high}",
  "plots.lowest-and-highest": "lowest and highest reading",
  "plots.charge": "charge",
  "plots.charge-limit": "limit {limit}",

  "plots.test-shown":
    "Shown: {count} readings over {span}, from {first} at {firstTemperature} to {last} at {lastTemperature}, beside the pressure that temperature alone explains.",
  "plots.untimed-test-shown":
    "Shown: {count} readings, from {first} at {firstTemperature} to {last} at {lastTemperature}, beside the pressure that temperature alone explains.",
  "plots.decay-shown": {
    by: "count",
    one: "Shown: {count} reading, {first}.",
    other: "Shown: {count} readings from {first} to {last}.",
  },
  "plots.pure-point": "At {temperature}: {pressure}.",
  "plots.blend-point": "At {temperature}: bubble {bubble}, dew {dew}.",

  "plots.course.dry-and-tight": "flat, dry and tight",
  "plots.course.moisture": "levels off, moisture",
  "plots.course.leak-and-moisture": "bends, then keeps rising: leak and moisture",
  "plots.course.moisture-leak-not-excluded": "levels off, moisture; a leak is not excluded",
  "plots.course.outgassing": "slows down, outgassing",
  "plots.course.not-determined": "cause not determined",
});
