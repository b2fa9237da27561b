// English of what to do next about an installation.
import type { CommissioningActions } from "../../commissioning/statements.ts";
import { type CatalogueOf, type Define, define } from "../define.ts";

const catalogue: Define<CommissioningActions> = define;

/** What to do next, in American English. */
export const commissioningActions: CatalogueOf<CommissioningActions> = /* @__PURE__ */ catalogue(
  "en-US",
  {
    "commissioning.record-fields": "Record: {fields}.",
    "commissioning.correct-field": "Correct the value for {field}.",
    "commissioning.withdraw-waiver": "Withdraw the waiver, or correct the record.",
    "commissioning.correct-construction":
      "Correct the construction, or remove what does not belong to it.",
    "commissioning.cover-run": "Do it for run {run} too and record it: {step}.",
    "commissioning.state-times": {
      by: "hold",
      "open-valves": "Record date and time of the tests and of the opening of the valves.",
      "add-charge": "Record date and time of the tests and of the charge.",
      other: "Record date and time of the circuit inspection, the supply readings and the start.",
    },
    "commissioning.shorten-runs": "Shorten the runs to {most} or less in total.",
    "commissioning.connect-less":
      "Connect indoor units of {limit} or less together, as the manual allows.",
    "commissioning.connect-more":
      "Connect indoor units of {limit} or more together, as the manual requires.",
    "commissioning.bring-indoor-units-closer":
      "Hang the indoor units at most {most} apart in height.",
    "commissioning.measure-runs-better": "Measure the runs more accurately.",
    "commissioning.recover-and-charge-anew":
      "Recover the charge and weigh in a new one, as liquid.",
    "commissioning.read-air-again": "Read supply and return air again and correct the record.",
    "commissioning.run-at-full-speed":
      "Run the unit at full speed, or in the manual’s test mode, for 15 minutes and read again.",
    "commissioning.see-filter-and-fan": "Check filter, fan speed and doors, then read again.",
    "commissioning.state-air-difference": "Record the manual’s range of the air difference.",
    "commissioning.stop-and-find-current":
      "Stop the unit and find out why the current is too high.",
    "commissioning.read-current-again":
      "Read the current again at full speed and check the nameplate.",
    "commissioning.pass-rules": "Check the record again with rule set {rules}.",
    "commissioning.put-right": {
      by: "hold",
      "open-valves":
        "Find out why the valves were opened. If the date is right, recover the refrigerant and test and evacuate again.",
      "add-charge":
        "Find out why refrigerant was added. If the date is right, recover it and test and evacuate again.",
      other:
        "Find out why the unit was energized. If the date is right, de-energize it and have circuit and supply checked.",
    },
    "commissioning.finish-first": {
      by: "hold",
      "open-valves": "Close the valves and go no further until this passes: {steps}.",
      "add-charge": "Add no more refrigerant until this passes: {steps}.",
      other: "De-energize the unit until this passes: {steps}.",
    },
    "commissioning.read-vacuum-again":
      "Read the vacuum gauge again before breaking a vacuum that stood for days. Evacuate again where it rose.",
    "commissioning.repeat-step": "Do it again and record it: {step}.",
    "commissioning.see-which-line": "Check which line is which and correct the record.",
    "commissioning.record-each-joint": {
      by: "count",
      one: "Record the joint once.",
      other: "Record each of the {count} joints once, by its own name.",
    },
    "commissioning.remake-joint": "Remake the joint and record it.",
    "commissioning.see-joints-of-line": "Check the joints on the {line} and record each of them.",
    "commissioning.hold-longer": "Hold the pressure for {required} or longer.",
    "commissioning.lower-pressure":
      "Lower the pressure to {limit} or less. Ask the manufacturer about every part that was above its marking.",
    "commissioning.test-higher":
      "Check the manual’s test pressure, then test at {limit} or more, within the lowest marked pressure.",
    "commissioning.correct-charge": "Correct the added charge to {asked}, within {tolerance}.",
    "commissioning.weigh-better": "Weigh the charge with a more accurate scale.",
    "commissioning.recover-down-to": "Recover refrigerant until the total is at most {most}.",
    "commissioning.state-tolerance": "Record the manufacturer’s tolerance of the charge.",
    "commissioning.lower-drain": "Lead the drain lower, or fit a pump.",
    "commissioning.clear-drain": "Clear the drain, then pour water again.",
    "commissioning.pass-what-is-on-file": "Supply what is on file under that name.",
  },
);
