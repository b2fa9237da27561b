// English of the vacuum decay: sentences and words.
import type { VacuumDecayStatements, VacuumDecayWord } from "../../vacuum-decay/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = VacuumDecayStatements & Words<VacuumDecayWord>;
const catalogue: Define<Said> = define;

/** What `vacuum-decay` says, in American English. */
export const vacuumDecay: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "vacuum-decay.dry-and-tight":
    "Dry and tight, as far as a vacuum shows: a leak above {smallest} would have been seen.",
  "vacuum-decay.leak": "Leak: the pressure keeps rising by {leak} ({low} to {high}).",
  "vacuum-decay.moisture":
    "Moisture: about {water} of water vapor. A leak above {high} would have been seen.",
  "vacuum-decay.leak-and-moisture":
    "Leak and moisture: {leak} ({low} to {high}) besides about {water} of water vapor.",
  "vacuum-decay.moisture-leak-not-excluded":
    "Moisture: about {water} of water vapor. A leak of up to {high} could hide behind it.",
  "vacuum-decay.outgassing":
    "Outgassing: {water} from walls or oil, slowing down. A leak above {high} would have been seen.",
  "vacuum-decay.not-determined": "Cause not determined: the readings fit more than one.",

  "vacuum-decay.leak-proven": "A leak is proven: {low} to {high}. Allowed: {limit}.",
  "vacuum-decay.leak-within-limit":
    "The limit of {limit} allows it, but a leak is proven: {low} to {high}.",
  "vacuum-decay.leak-not-excluded":
    "A leak above {limit} is not excluded: it could be up to {high}.",
  "vacuum-decay.moisture-proven": "Moisture is proven: about {water} of water vapor.",
  "vacuum-decay.leak-or-moisture":
    "The system leaks or is wet: each explains the rise, nothing harmless does.",
  "vacuum-decay.moisture-not-excluded":
    "Moisture is not excluded: up to about {water} of water vapor.",
  "vacuum-decay.still-rising":
    "The pressure still rises by {rate}: more than in a dry and tight system.",
  "vacuum-decay.pressure-within-limit":
    "{value} at {at} ({low} to {high}): within the limit of {limit}.",
  "vacuum-decay.pressure-above-limit":
    "{value} at {at} ({low} to {high}): above the limit of {limit}.",
  "vacuum-decay.pressure-too-close":
    "{value} at {at} ({low} to {high}): too close to the limit of {limit} to call.",
  "vacuum-decay.pressure-forecast":
    "The hold lasts to {at}. Forecast: {value} ({low} to {high}). Limit: {limit}.",
  "vacuum-decay.rise-within-limit":
    "The rise to {at} is {value} ({low} to {high}): within the limit of {limit}.",
  "vacuum-decay.rise-above-limit":
    "The rise to {at} is {value} ({low} to {high}): above the limit of {limit}.",
  "vacuum-decay.rise-too-close":
    "The rise to {at} is {value} ({low} to {high}): too close to the limit of {limit} to call.",
  "vacuum-decay.rise-forecast":
    "The hold lasts to {at}. Forecast of the rise: {value} ({low} to {high}). Limit: {limit}.",
  "vacuum-decay.last-reading-above-limit":
    "The last reading, {pressure}, is above the limit of {limit}.",
  "vacuum-decay.too-few-readings": {
    by: "rows",
    one: "Too few readings: {rows} usable, {needed} needed to tell shapes apart.",
    other: "Too few readings: {rows} usable, {needed} needed to tell shapes apart.",
  },
  "vacuum-decay.target-missed": "The test began at {start}: above the target of {target}.",
  "vacuum-decay.over-range-failed": "The gauge went above its range of {range}: above the limit.",
  "vacuum-decay.over-range": "The gauge went above its range of {range}, before the limit.",
  "vacuum-decay.ice-not-excluded":
    "Ice is not excluded: at {coldest} it levels off at {saturation}, no higher than the readings.",
  "vacuum-decay.below-gauge":
    "{lowest} is not believed: a field gauge and pump reach {believed} at best. Is the unit right?",
  "vacuum-decay.display-still":
    "The display stood at {pressure} from {since} on: steadier than any real hold.",
  "vacuum-decay.pressure-falls":
    "The pressure fell by {fall}. Something still pulls: the pump, or its valve.",
  "vacuum-decay.too-flat":
    "The pressure stopped rising: {change} in the second half. A pump valve that weeps looks like this, also with a leak.",
  "vacuum-decay.rise-stops":
    "The rise stopped at once at {elapsed}, {missing} short: leaks, water and walls only slow down. Was a valve to the gauge closed?",
  "vacuum-decay.rise-quickens":
    "The rise gets faster: the last readings lie {late} above every curve.",
  "vacuum-decay.course-unexplained":
    "Neither a leak nor moisture explains this curve: it is off by {off} on average.",
  "vacuum-decay.step-before":
    "The pressure jumped at {elapsed}. The hold starts again there and is not over.",
  "vacuum-decay.found-before-step":
    "Before the jump the system leaked or was wet: {low} to {high} of steady rise.",

  "vacuum-decay.above-saturation":
    "The plateau of {plateau} is above the saturation of water at the coldest part: not water alone.",
  "vacuum-decay.readings-excluded": {
    by: "excluded",
    one: "{excluded} of {rows} readings was set aside: {why}.",
    other: "{excluded} of {rows} readings were set aside: {why}.",
  },
  "vacuum-decay.step": "Jump of {change} at {elapsed}: a valve, a hose or the gauge.",

  "vacuum-decay.isolated": "The pump was shut off by a valve at the system at time 0.",
  "vacuum-decay.gauge-at-the-system": "The gauge sits at the system, not at the pump.",
  "vacuum-decay.no-cold-spot": "No part is colder than {ambient}.",
  "vacuum-decay.usual-volume": "The volume is {volume}.",
  "vacuum-decay.gauge-accuracy": "The gauge is accurate to ±{accuracy} of the reading.",
  "vacuum-decay.hoses-unknown": "Hoses of unknown make let in up to {allowance}.",
  "vacuum-decay.no-slow-water":
    "No water takes longer than {duration} to evaporate: in this log it would rise as steadily as a leak.",
  "vacuum-decay.typed-by-hand": {
    by: "rows",
    one: "{rows} row written by hand, rounded to {step}.",
    other: "{rows} rows written by hand, rounded to {step}.",
  },

  "vacuum-decay.not-a-pressure-test":
    "A vacuum does not prove tightness; only the pressure test does. A leak of {limit}, which may pass, would lose {least} to {most} in use.",
  "vacuum-decay.display-steps":
    "The display stood still, and a rise within its step of {step} does not show.",

  "vacuum-decay.watch-longer": {
    by: "rows",
    one: "Watch {duration} more, with at least {rows} more reading.",
    other: "Watch {duration} more, with at least {rows} more readings.",
  },
  "vacuum-decay.hold-again": "Start a new hold of {hold} and touch nothing.",
  "vacuum-decay.keep-gauge-open":
    "Keep every valve between the gauge and the system open, and hold again for {hold}.",
  "vacuum-decay.state-isolation":
    "State how the pump was shut off: an isolation valve at the system, the hose removed, or the pump’s valve.",
  "vacuum-decay.isolate-at-the-system":
    "Shut the system off at its own valve, take the pump off and repeat the test.",
  "vacuum-decay.blank-test":
    "Shut hoses and gauge off from the system, watch them alone, and enter how much they rise.",
  "vacuum-decay.find-with-bubbles":
    "Pressurize with dry nitrogen and brush every joint with bubble solution. Watch each for {least} to {most}.",
  "vacuum-decay.find-with-tracer":
    "If no bubbles show, use a tracer gas and its electronic detector.",
  "vacuum-decay.repair-leak":
    "Repair the leak, repeat the pressure test, then evacuate and test again.",
  "vacuum-decay.dry-and-repeat":
    "Break the vacuum with dry nitrogen, evacuate again with the system warm, and repeat the test.",
  "vacuum-decay.warm-and-repeat": "Warm the part at {coldest}, evacuate and repeat the test.",
  "vacuum-decay.evacuate-deeper": "Evacuate further below {target} and repeat the test.",
  "vacuum-decay.check-the-gauge":
    "Check the gauge: its unit, its range, whether its display is held and its valve is open.",
  "vacuum-decay.better-gauge": "Hold longer, evacuate deeper, or use a more accurate gauge.",

  "vacuum-decay.cause.dry-and-tight": "dry and tight",
  "vacuum-decay.cause.leak": "leak",
  "vacuum-decay.cause.moisture": "moisture",
  "vacuum-decay.cause.leak-and-moisture": "leak and moisture",
  "vacuum-decay.cause.moisture-leak-not-excluded": "moisture, leak not excluded",
  "vacuum-decay.cause.outgassing": "outgassing",
  "vacuum-decay.cause.not-determined": "not determined",
  "vacuum-decay.exclusion.zero": "zero or below",
  "vacuum-decay.exclusion.over-range": "above the gauge’s range",
  "vacuum-decay.exclusion.before-isolation": "before isolation",
  "vacuum-decay.exclusion.repeated-time": "time repeated",
  "vacuum-decay.exclusion.out-of-order": "out of order",
  "vacuum-decay.exclusion.spike": "spike",
  "vacuum-decay.exclusion.unconfirmed-jump": "jump not yet confirmed",
});
