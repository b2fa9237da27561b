import { nec2023 } from "hvac-install-math/circuit-protection";
import type * as commissioning from "hvac-install-math/commissioning";
import { amend } from "hvac-install-math/commissioning";
import { ft, inch, mm } from "hvac-install-math/quantity";
import { complete } from "../../commissioning/complete-record.ts";
import type { Inputs } from "../catalogue.ts";

const change = {
  path: "runs[0].tubing.length",
  value: ft(38),
  by: "N. N.",
  at: "2026-05-05",
  reason: "measured again",
};
const amended = amend({ version: 2, runs: [{ tubing: { length: ft(36) } }] }, change);

/** The complete record with a short log: each place of it is tried. */
const [evacuation] = complete.evacuations ?? [];
const short = {
  ...complete,
  evacuations: [{ ...evacuation, readings: evacuation?.readings?.slice(0, 3) ?? [] }],
};
const small = {
  version: 2,
  runs: [{ tubing: { length: ft(36), lift: ft(9), outdoorUnit: "below" } }],
  equipment: { manual: { run: { maximumLength: ft(66), maximumLift: ft(33) } } },
} as const;

export const inputs: Inputs<typeof commissioning> = {
  amend: [[{ version: 2, runs: [{ tubing: { length: ft(36) } }] }, change]],
  assessInstallation: [[small, { rules: [nec2023] }]],
  circuitRulesNamed: [["nfpa-70-2023", [nec2023]]],
  holdsAhead: [["split"], ["quick-connect"], ["monobloc"]],
  hasNominalLength: [[small, 0]],
  indoorLift: [[{ version: 2, runs: [...small.runs, ...small.runs] }]],
  manualCharge: [[small]],
  portSize: [[inch(0.875)], [mm(6.35)]],
  usualAirDifference: [["cooling"], ["heating"]],
  checkRecord: [[short as never], [amended]],
  completeRecord: [[small, {}]],
  fromVersion1: [[{ version: 1, tubing: { bends: 4 } }]],
  recordRevision: [[amended, 0]],
  recordText: [[small]],
};
