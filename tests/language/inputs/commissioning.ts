// What else it takes to hear what the verdict on an installation says: sound records, those of the examples, and
// each part of the complete one missing or of no use.
import { readFileSync } from "node:fs";
import type * as commissioning from "hvac-install-math/commissioning";
import type { InstallationRecord } from "hvac-install-math/commissioning";
import {
  ampere,
  degF,
  ft,
  hour,
  MPag,
  newtonMeter,
  oz,
  psig,
  volt,
} from "hvac-install-math/quantity";
import { recordCodec } from "hvac-install-math/wire";
import { rules } from "../../commissioning/assess.ts";
import { type Change, changed } from "../../commissioning/changed.ts";
import { complete } from "../../commissioning/complete-record.ts";
import { threeHeads } from "../../commissioning/three-heads.ts";
import { casaQuattroFloor, sound } from "../../commissioning/twelve.ts";
import type { Inputs } from "../../faults/catalogue.ts";

const examples = ["worked", "failing", "half-finished"].map((name) =>
  recordCodec.parse(
    readFileSync(new URL(`../../../examples/${name}-install/record.json`, import.meta.url), "utf8"),
  ),
);

/** Changes of a sound record, most of which break it. */
const changes: readonly Change[] = [
  { "runs[0].joints[0]": { kind: "flare", tube: "1/4", torque: newtonMeter(5) } },
  { "runs[0].joints[3]": undefined },
  { "runs[0].tubing.length": ft(500) },
  { "runs[0].tubing.lift": ft(200) },
  { "pressureTests[0].readings[1].pressure": MPag(2.9) },
  { "pressureTests[0].readings[0].elapsed": hour(20) },
  { "equipment.manual.testHold": hour(1000) },
  { "equipment.manual.testPressure": psig(900) },
  { "equipment.lowestMarkedPressure": psig(100) },
  { "equipment.refrigerant": "R-999" },
  { "site.altitude": ft(60_000) },
  { "charge.added": oz(40) },
  { "charge.tolerance": oz(50) },
  { "charge.fedAs": "vapor" },
  { "power.circuits[0].installed.device.rating": ampere(90) },
  { "power.energizedAt": "2026-01-01T11:00" },
  { "power.supply.readings[0].voltage": volt(330) },
  { valvesOpenedAt: "2026-01-01T11:00" },
  { "operation[0].airSide.supplyAir": degF(20), "operation[0].mode": "heating" },
  { "operation[0].airSide.fullSpeed": false },
  { signatures: undefined },
];
const records: readonly InstallationRecord[] = [complete, threeHeads, ...Object.values(sound)];
const attempts = records.flatMap((record) =>
  changes.flatMap((change) => {
    try {
      return [changed(change, record)];
    } catch {
      return []; // the record has no such place
    }
  }),
);
const without = Object.keys(complete)
  .filter((key) => key !== "version")
  .map((key) => ({ ...complete, [key]: undefined }) as unknown as InstallationRecord);

export const inputs: Partial<Inputs<typeof commissioning>> = {
  assessInstallation: [...records, casaQuattroFloor, ...examples, ...without, ...attempts].map(
    (record) => [record, { rules }],
  ) as never,
};
