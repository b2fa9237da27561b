// The slip catalogue: every slip, module by module, and last those of the record as a whole.
import { chargeSlips } from "./charge.ts";
import { chargeLimitSlips } from "./charge-limit.ts";
import { circuitSlips } from "./circuit-protection.ts";
import { condensateSlips } from "./condensate.ts";
import { flareJointSlips } from "./flare-joint.ts";
import { lineSetSlips } from "./line-set.ts";
import { logSlips } from "./logs.ts";
import { operatingSlips } from "./operating-check.ts";
import { pressureTestSlips } from "./pressure-test.ts";
import { readQuantitySlips } from "./read-quantity.ts";
import { recordSlips } from "./record.ts";
import { refrigerantSlips } from "./refrigerants.ts";
import type { Slip } from "./slip.ts";
import { supplySlips } from "./supply-voltage.ts";
import { sweptSlips } from "./swept.ts";
import { vacuumDecaySlips } from "./vacuum-decay.ts";

/** Every slip. */
export const slips: readonly Slip[] = [
  ...lineSetSlips,
  ...chargeSlips,
  ...pressureTestSlips,
  ...vacuumDecaySlips,
  ...flareJointSlips,
  ...circuitSlips,
  ...supplySlips,
  ...condensateSlips,
  ...chargeLimitSlips,
  ...operatingSlips,
  ...refrigerantSlips,
  ...readQuantitySlips,
  ...logSlips,
  ...recordSlips,
  ...sweptSlips,
];
