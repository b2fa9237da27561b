// English of superheat and subcooling: sentences and words.
import type { RefrigerantsStatements, RefrigerantsWord } from "../../refrigerants/statements.ts";
import { type CatalogueOf, type Define, define, type Words } from "../define.ts";

type Said = RefrigerantsStatements & Words<RefrigerantsWord>;
const catalogue: Define<Said> = define;

/** What `refrigerants` says, in American English. */
export const refrigerants: CatalogueOf<Said> = /* @__PURE__ */ catalogue("en-US", {
  "refrigerants.table-needs-atmosphere":
    "Gauge pressures need the atmosphere. Without it the table is absolute.",
  "refrigerants.number-of-rows": "That is how many rows the table would have. Change the step.",
  "refrigerants.check-designation":
    "Read the designation from the nameplate again. If it is right, the library has no data for it.",
  "refrigerants.range-of": "This is the saturation range of {refrigerant}.",
  "refrigerants.gauge-needs-atmosphere":
    "A gauge reads above the air around it. Give the atmosphere of the site: a barometer’s reading or the altitude.",

  "refrigerants.within-tolerance":
    "{figure} {value} ± {uncertainty}: within {tolerance} of the target, {target}.",
  "refrigerants.above-tolerance":
    "{figure} {value} ± {uncertainty}: more than {tolerance} above the target, {target}.",
  "refrigerants.below-tolerance":
    "{figure} {value} ± {uncertainty}: more than {tolerance} below the target, {target}.",
  "refrigerants.below-saturation": {
    by: "figure",
    superheat:
      "{figure} {value} ± {uncertainty}: below zero. The readings contradict each other, or liquid is in the line.",
    other:
      "{figure} {value} ± {uncertainty}: below zero. The readings contradict each other, or vapor is in the line.",
  },
  "refrigerants.too-close-to-call":
    "Too close to call: {figure} {value} ± {uncertainty}, target {target} ± {tolerance}.",
  "refrigerants.largest-uncertainty":
    "Most of the standard uncertainty of {now} comes from the {probe}.",
  "refrigerants.closer-than-the-model":
    "The reading is so near a limit that no better probe would decide.",
  "refrigerants.target-out-of-reach": "{figure}: {target} is no target. Targets stay below {most}.",
  "refrigerants.tolerance-wide":
    "A tolerance of {tolerance} around {target} lets a wrong charge pass. At most {largest} is usable.",
  "refrigerants.tolerance-reaches-saturation":
    "A tolerance of {tolerance} around {target} reaches saturation, where the figure says nothing about the charge.",

  "refrigerants.steady": "The system runs steadily. The probe is clean, tight and insulated.",
  "refrigerants.nominal-composition": "The refrigerant is pure or has its nominal composition.",
  "refrigerants.saturation-uncertainty":
    "The saturation pressure itself has a standard uncertainty of {share}.",
  "refrigerants.exact-atmosphere":
    "No accuracy was given for the atmosphere, so it is taken as exact.",

  "refrigerants.looks-like-other-side": {
    by: "figure",
    superheat:
      "Saturated at {saturation}, this looks like the high side. Superheat is read on the low side.",
    other:
      "Saturated at {saturation}, this looks like the low side. Subcooling is read on the high side.",
  },
  "refrigerants.only-where-the-manual-charges-by-it":
    "{figure}: inverter and electronic-valve systems are charged by weight unless their manual says otherwise.",

  "refrigerants.check-airflow-first": "Check filters, coils and airflow first.",
  "refrigerants.correct-the-charge":
    "{figure}: correct the charge by the manual until it is near {target}, then read again.",
  "refrigerants.check-both-readings":
    "Check the refrigerant, the gauge’s port and the probe’s contact, then read again.",
  "refrigerants.use-better-probe":
    "Read again with a better {probe}: a standard uncertainty of {needed} would decide.",
  "refrigerants.adjust-to-target": "Adjust toward {target} and read again.",
  "refrigerants.state-target": "{figure}: enter the target from the nameplate or the manual.",
  "refrigerants.state-tolerance": "{figure}: enter the tolerance from the manual.",

  "refrigerants.figure.superheat": "Superheat",
  "refrigerants.figure.subcooling": "Subcooling",
  "refrigerants.probe.pressure": "pressure probe",
  "refrigerants.probe.temperature": "temperature probe",
  "refrigerants.cause.low": "below target",
  "refrigerants.cause.high": "above target",
});
