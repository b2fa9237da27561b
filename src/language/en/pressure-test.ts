// English of the nitrogen pressure test: sentences and words.
import type { PressureTestStatements, PressureTestWord } from "../../pressure-test/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = PressureTestStatements & Words<PressureTestWord>;
const catalogue: Define<Said> = define;

/** What `pressure-test` says, in American English. */
export const pressureTest: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "pressure-test.within-limit":
    "The pressure drop, {drop} ± {uncertainty}, is within the {limit} limit.",
  "pressure-test.above-limit":
    "The pressure drop, {drop} ± {uncertainty}, is above the {limit} limit.",
  "pressure-test.across-limit":
    "Too close to call: the drop is {drop} ± {uncertainty}, the limit {limit}.",
  "pressure-test.leak-within-limit":
    "There is a leak, although it is within the {limit} limit: {drop} ± {uncertainty}.",
  "pressure-test.limit-lowered":
    "The stated limit, {stated}, is above 1 % of the fill pressure, {pressure}. Judged by {limit}.",
  "pressure-test.leak-proven":
    "Leak proven: the drop, {drop}, is larger than its uncertainty, {uncertainty}.",
  "pressure-test.no-leak-above": "A pressure drop, if there is one, is at most {above}.",
  "pressure-test.unexplained-rise":
    "The pressure is {rise} ± {uncertainty} above what the temperature explains. Gas was fed in, or the thermometer does not follow the gas.",
  "pressure-test.no-limit-stated": "No limit was given, so the test cannot pass.",
  "pressure-test.weather-alone":
    "Temperature alone changes the pressure by {temperature}. It changed by {change}.",
  "pressure-test.weather-and-barometer-alone":
    "Temperature alone changes the pressure by {temperature}, the barometer by {barometer}. It changed by {change}.",

  "pressure-test.hold-time-unknown": "No time was given between the readings.",
  "pressure-test.short-hold": "Held for {hold}; the shortest published hold is {shortest}.",
  "pressure-test.hold-below-manual": "Held for {hold}; the manual requires {required}.",
  "pressure-test.hold-below-step":
    "Held too short: in {hold}, a leak of 1 % of the fill pressure per hour moves the gauge less than one step, {step}.",
  "pressure-test.gauge-without-error": "The gauge was entered as exact. No gauge is.",
  "pressure-test.thermometer-without-error":
    "The thermometer was entered as exact. No thermometer is.",
  "pressure-test.fill-below-manual": "Tested at {pressure}; the manual requires {required}.",
  "pressure-test.fill-below-service":
    "Tested at {pressure}: below the {service} that the refrigerant itself reaches.",
  "pressure-test.above-marked":
    "The pressure reached {pressure}: above the lowest marked pressure, {marked}.",
  "pressure-test.pressure-still":
    "The gauge hardly moved, although temperature and barometer alone change the pressure by {moved}.",
  "pressure-test.zones-swapped":
    "In the reading at {elapsed} the temperatures changed places: {from} to {to}, and back on the other thermometer.",
  "pressure-test.zones-swapped-at-end":
    "At the end the temperatures had changed places: {from} to {to}, and back on the other thermometer.",
  "pressure-test.log-misfit":
    "The readings scatter {misfit} times as much as the stated errors explain.",
  "pressure-test.last-reading-above-limit":
    "The last reading shows a drop of {drop}: above the {limit} limit.",
  "pressure-test.falls-faster":
    "The pressure fell faster at the end of the hold: {lost} more than the course before explains.",
  "pressure-test.jump":
    "At {elapsed} the pressure changed by {change}, more than temperature and instruments explain.",

  "pressure-test.below-limit":
    "{fill} becomes {warm} when warmest: within the marked limit ({part}), {limit}.",
  "pressure-test.lowered-to-limit":
    "Stop at {fill}. When warmest it becomes {warm}: the marked limit ({part}), {limit}.",

  "pressure-test.gauge-drift": "The zero of the gauge moved by at most ±{drift}.",
  "pressure-test.rigid-walls":
    "The tubing kept its volume; the expansion of copper is counted as uncertainty.",
  "pressure-test.volume-exact": "The volume is taken as exact.",
  "pressure-test.fill-unchecked":
    "The fill was as high as the manual and the refrigerant require: neither was given.",
  "pressure-test.barometer-unchanged": "The barometer changed by at most about ±{change}.",
  "pressure-test.gas-settled":
    "The gas had settled after the fill before the first reading was taken.",
  "pressure-test.follows-gas":
    "The thermometer followed the gas within ±{within} and {missed} of the temperature change.",
  "pressure-test.gas-elsewhere-unknown":
    "Some of the gas may be away from the thermometer: ±{within} and {missed} of the temperature change are counted as uncertainty.",
  "pressure-test.warm-from-fill":
    "The first reading was taken right after the fill, while the gas was still warm.",
  "pressure-test.all-limits-given": "Every marked limit of what stays connected was given.",

  "pressure-test.smallest-leak":
    "The smallest leak this test could prove is {smallest}. A hold of {hold} would prove about half of that.",
  "pressure-test.smallest-drop-rate":
    "The smallest drop this test could prove is {smallest} in {held}. A hold of {hold} would prove about half of that rate.",
  "pressure-test.smallest-drop": "The smallest drop this test could prove is {smallest}.",
  "pressure-test.no-margin":
    "The plan leaves no margin for gauge error or a relief device that opens early. Stop lower by both.",
  "pressure-test.water-volume":
    "The water volume is stamped on the cylinder. Cylinders are sold by the gas in them: 40 ft³ of gas is about 8 L of water.",
  "pressure-test.cylinder-cools":
    "A cylinder that empties fast is cold and shows less. Read it again when it is warm.",
  "pressure-test.order-of-magnitude":
    "This is an order of magnitude: the shape of the leak decides which law holds.",
  "pressure-test.liquid-leaks-more": "Liquid refrigerant at the leak loses several times more.",

  "pressure-test.state-limit":
    "Enter the drop that the manual allows, at most {largest} (1 % of the fill pressure).",
  "pressure-test.find-by-bubbles":
    "Find the leak, {leak} in all: put bubble solution on every joint and watch each for {watch}.",
  "pressure-test.find-by-foam":
    "Find the leak, {leak} in all: watch the bubble solution on each joint for {watch}, or use a tracer gas and its detector.",
  "pressure-test.find-by-tracer":
    "Find the leak, {leak} in all. It is too small for bubbles: use a nonflammable tracer gas and hold its detector at each joint for {watch}.",
  "pressure-test.find-of-unknown-size":
    "Find the leak: put bubble solution on every joint and watch each for {watch}. If none shows, use a tracer gas and its detector.",
  "pressure-test.repair-and-retest": "Vent the nitrogen, repair the leak and retest.",
  "pressure-test.close-supply":
    "Disconnect the nitrogen supply, let the temperatures settle and retest.",
  "pressure-test.read-at-first-temperature":
    "Read again when the gas is at {temperature}, as at the start.",
  "pressure-test.hold-longer": "Hold about {further} longer.",
  "pressure-test.hold-at-least": "Hold for at least {hold} and record both times.",
  "pressure-test.state-gauge": "Enter the accuracy and the resolution of the gauge.",
  "pressure-test.state-thermometer": "Enter the accuracy and the resolution of the thermometer.",
  "pressure-test.fill-higher": "Retest at {required} or more, if every marked pressure allows it.",
  "pressure-test.lower-pressure":
    "Lower the pressure below {marked}. Ask the manufacturer before the unit is used.",
  "pressure-test.check-thermometers":
    "Check which thermometer each temperature belongs to, and correct the reading.",
  "pressure-test.open-to-system":
    "Open the valve between gauge and system, release a held display, fasten the thermometer to the tubing and retest.",
  "pressure-test.look-at-plot":
    "Look at the plot for gas fed in, a closed valve, sun or a wrong row. Judge the log from the last change on.",
  "pressure-test.read-again": "Read pressure and temperature again now.",
  "pressure-test.hold-again": "Find out what changed, then start a new hold.",
  "pressure-test.state-elsewhere":
    "Enter how much of the gas lies away from the thermometer (0 if none), or measure there too.",
  "pressure-test.measure-elsewhere":
    "Put a second thermometer where the other {share} of the gas lies, or enter how much its temperature may have changed.",
  "pressure-test.state-since-fill":
    "Enter how long after the fill the first reading was taken. If less than {settle}, let the gas settle that long and take a new first reading.",
  "pressure-test.settle-first":
    "Let the gas settle for {settle} after the fill, take a new first reading and enter that time.",
  "pressure-test.state-follows-gas":
    "Put the thermometer on the tubing, under the insulation, and enter how far it may be from the gas. ±{within} or less is required to decide.",
  "pressure-test.reduce-uncertainty":
    "Holding longer will not decide. Reduce the largest uncertainty: {part}, {share}.",

  "pressure-test.part.gauge-reading": "gauge reading",
  "pressure-test.part.gauge-drift": "drift of the gauge",
  "pressure-test.part.gauge-error": "error of the gauge",
  "pressure-test.part.thermometer-reading": "thermometer reading",
  "pressure-test.part.thermometer-error": "error of the thermometer",
  "pressure-test.part.gas-temperature": "gas temperature",
  "pressure-test.part.settling": "gas still warm from the fill",
  "pressure-test.part.barometer": "barometer",
  "pressure-test.part.wall-expansion": "expansion of the tubing",
  "pressure-test.part.zone-volumes": "volumes of the zones",
  "pressure-test.part.scatter": "scatter of the readings",
  "pressure-test.marked.low side": "low side",
  "pressure-test.marked.high side": "high side",
  "pressure-test.marked.component": "component",
  "pressure-test.marked.relief device": "relief device",
  "pressure-test.cause.leak": "leak",
  "pressure-test.cause.unexplained-rise": "unexplained rise",

  "pressure-test.no-loss-not-shown":
    "No instrument can show that nothing was lost. Enter a limit that it can show.",
  "pressure-test.rate-needs-it": "The limit is a rate, so this is required.",
  "pressure-test.station-pressure":
    "This is the station pressure of the site, from a barometer or from the altitude.",
  "pressure-test.zones-need-volumes":
    "Zones at different temperatures need their volumes or their shares of the gas, in the same order.",
  "pressure-test.gas-leaks-outward": "The pressure inside has to be above the pressure outside.",
});
