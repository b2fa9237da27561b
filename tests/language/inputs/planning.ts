// Plans that together say all that a plan can say: those of the tests of planning, of the example, and some that go wrong.
import type { InstallationRecord } from "hvac-install-math/commissioning";
import type * as planning from "hvac-install-math/planning";
import { ft, psig, watt } from "hvac-install-math/quantity";
import { plan as threeHeads } from "../../../examples/three-heads/make-records.ts";
import { rules } from "../../commissioning/assess.ts";
import { changed } from "../../commissioning/changed.ts";
import type { Inputs } from "../../faults/catalogue.ts";
import { planned } from "../../planning/installations.ts";
import * as own from "../../planning/own.ts";

const cabin = planned["Heron Cabin"] as InstallationRecord;
const [run] = cabin.runs ?? [];
/** Plans that go wrong somewhere. */
const odd: readonly InstallationRecord[] = [
  changed({ "runs[0].tubing.way": ft(150) }, cabin),
  changed(
    {
      "runs[0].tubing.liquid": run?.tubing?.vapor,
      "runs[0].tubing.vapor": run?.tubing?.liquid,
    },
    cabin,
  ),
  changed({ "equipment.manual.leastConnected": watt(9000) }, own.tooMuch),
  changed({ "equipment.protectionMarking": "fuse only" }, cabin),
  changed({ "power.circuits[0].installed": { conductor: "14 AWG" } }, own.longFeed),
  changed({ "plan.fillPressure": psig(100) }, cabin),
  changed({ "equipment.manual.shortLineRule": "add-and-subtract" }, own.shortLines),
  changed({ "equipment.manual.testPressure": psig(-3), "plan.fillPressure": undefined }, cabin),
];

/** Indoor units on two floors, as far apart as the manual allows, and further. */
const floors = [ft(3), ft(12)].map((limit) =>
  changed(
    { "runs[1].tubing.lift": ft(15), "equipment.manual.maximumIndoorLift": limit },
    planned["Three Finches"] as InstallationRecord,
  ),
);

/** The records that are planned. */
export const plans: readonly InstallationRecord[] = [
  ...Object.values(planned),
  ...Object.values(own),
  ...odd,
  ...floors,
  threeHeads,
];

export const inputs: Inputs<typeof planning> = {
  planInstallation: [...plans.map((plan) => [plan, { rules }] as const), [cabin, { rules: [] }]],
};
