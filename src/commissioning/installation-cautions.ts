// What has to be heeded about the whole? The findings of the steps that no other step has settled, and each danger once.
// Follows assessment/safety.ts and the cautions of the modules; grouped by what they are about, so that all are read.
// Does not cover what governs: assessment adds it.
import { type Caution, caution } from "../assessment/caution.ts";
import type { StepName } from "./names.ts";
import type { Placed } from "./placed.ts";
import { say } from "./statements.ts";
import type { InstallationStep } from "./step.ts";

/** A group of cautions: whether they can hurt, and the cautions of the modules that it says. */
type Group = readonly [kind: "danger" | "finding", codes: readonly string[]];

/** What the whole says once for several steps. */
export const groups: Readonly<Record<`commissioning.heed-${GroupName}`, Group>> = {
  "commissioning.heed-nitrogen": [
    "danger",
    [
      "safety.dry-nitrogen-only",
      "safety.regulator-and-relief",
      "safety.raise-in-stages",
      "safety.lowest-rating",
      "safety.nitrogen-suffocates",
    ],
  ],
  "commissioning.heed-refrigerant": [
    "danger",
    [
      "safety.refrigerant-contact",
      "safety.refrigerant-suffocates",
      "safety.open-under-pressure",
      "safety.charge-tight-system",
      "safety.refrigerant-air-mixture",
      "safety.compressor-in-vacuum",
    ],
  ],
  "commissioning.heed-voltage": [
    "danger",
    ["safety.line-voltage", "safety.meter-category", "safety.running-unit"],
  ],
  "commissioning.heed-gauges": [
    "danger",
    ["operating-check.mode-first", "operating-check.hoses-lose-refrigerant"],
  ],
  "commissioning.heed-drain": [
    "finding",
    [
      "condensate.discharge",
      "condensate.sweating",
      "condensate.sunlight",
      "condensate.freezing",
      "condensate.overflow",
      "condensate.pump-failure",
    ],
  ],
};

type GroupName = "nitrogen" | "refrigerant" | "voltage" | "gauges" | "drain";

/** Findings that say what another step proves, once that step has passed. */
const settledBy: Readonly<Record<string, StepName>> = {
  "flare-joint.not-a-leak-test": "pressure-test",
  "vacuum-decay.not-a-pressure-test": "pressure-test",
  "line-set.charge-after-tests": "charge",
  "operating-check.not-the-charge": "charge",
};

/** Findings that each of several tests has, with figures of its own: the first stands for all. */
const saidOnce: ReadonlySet<string> = /* @__PURE__ */ new Set([
  "pressure-test.smallest-leak",
  "pressure-test.smallest-drop-rate",
]);

const groupOf: ReadonlyMap<string, keyof typeof groups> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ Object.entries(groups).flatMap(([group, [, codes]]) =>
    codes.map((code) => [code, group as keyof typeof groups] as const),
  ),
);

/** The cautions of the steps as the whole says them. */
export function ofSteps(
  steps: readonly InstallationStep[],
  cautions: readonly Caution<Placed>[],
): readonly Caution<Placed>[] {
  const passed = new Set<StepName | undefined>(
    steps.filter(({ outcome }) => outcome === "pass").map(({ name }) => name),
  );
  const told = new Set<string>();
  return cautions.flatMap((one) => {
    const { code } = one;
    if (passed.has(settledBy[code]) || (saidOnce.has(code) && told.has(code))) return [];
    told.add(code);
    const group = groupOf.get(code);
    return [group ? caution<Placed>(groups[group][0], say(group)) : one];
  });
}
